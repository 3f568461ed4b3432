import type { Kind, Warning } from "../../part.js";
import { type DecodedCode, decodeCode } from "../words/codes.js";
import type { Words } from "../words/words.js";
import type { ReadValues } from "./value.js";

/** The type designations in a part's texts, and the one that it is ordered by. */
export function codesOf(words: readonly Words[], partNumber: string | null): DecodedCode[] {
  const ordered = (partNumber ?? "").split(" ").flatMap((number) => decodeCode(number) ?? []);
  return [...words.flatMap((text) => text.codes), ...ordered];
}

/** A type designation gives what the words leave out; its value only where no other is printed. */
export function withCode(read: ReadValues, code: DecodedCode): ReadValues {
  if (read.value !== null || read.list || read.state === "range" || read.min !== null || read.warnings.length > 0)
    return read;
  return { ...read, value: code.value, state: "stated" };
}

/** Words against a code or colours: the words stand, with a warning. */
export function clashes(read: ReadValues, code: DecodedCode | null, words: readonly Words[], kind: Kind): Warning[] {
  const differs = (other: number | null | undefined) =>
    other != null && read.value !== null && Math.abs(other - read.value) > 0.001 * read.value;
  const colours = kind === "resistor" ? words.find((text) => text.colours)?.colours : null;
  const found = [
    differs(code?.value) ? "the type designation" : null,
    differs(colours?.ohms) ? "the colours" : null,
  ].filter(Boolean);
  return found.map((what) => ({
    code: "conflict",
    text: `the value and ${what} say different things; the value is taken`,
  }));
}

/** A resistor whose type designation is that of a control is one. */
export const kindByCode = (kind: Kind, codes: readonly DecodedCode[]): Kind =>
  kind === "resistor" && codes.some((code) => code.kind === "potentiometer") ? "potentiometer" : kind;
