import { readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { DEFAULTS_IN_FORCE, defaultRules } from "../../../src/core/index.js";
import { type Case, casesOf } from "../../../src/start/cases/case.js";
import { decideCase } from "../../../src/start/cases/decideCase.js";

/** What a restorer would answer, beside the plain fields of an answer. */
type Expected = Readonly<Record<string, unknown>> & {
  readonly technologyFirst?: string;
  readonly eachValue?: readonly (number | null)[];
  readonly eachWatts?: readonly number[];
  readonly eachVolts?: readonly number[];
  readonly pins?: readonly string[];
  readonly cautionsAmong?: readonly string[];
  readonly turnsDown?: readonly string[];
  readonly says?: string;
  readonly text?: string;
  readonly choicesCount?: number;
  readonly leastWattsOfOne?: number;
  readonly sumBetween?: readonly [number, number];
};
type Piece = { readonly value: number | null; readonly watts: number | null; readonly volts: number | null };

const FILE = path.resolve(import.meta.dirname, "../fixtures/restorer.json");
const CASES = casesOf(readFileSync(FILE, "utf8")) as readonly (Case & { reason: string; expect: Expected })[];

function answered(one: Case) {
  const answer = decideCase(one, DEFAULTS_IN_FORCE);
  const values = (answer.values ?? []) as readonly (Piece & { readonly pins?: string })[];
  const rejected = (answer.rejected ?? []) as readonly { what: string; why: string }[];
  const numbers = values.flatMap(({ value }) => value ?? []);
  return {
    ...answer,
    technologyFirst: (answer.technology as readonly string[] | undefined)?.[0],
    eachValue: values.map(({ value }) => value),
    eachWatts: values.map(({ watts }) => watts),
    eachVolts: values.map(({ volts }) => volts),
    pins: values.map(({ pins }) => pins),
    cautions: (answer.cautions ?? []) as readonly string[],
    turnsDown: rejected.map(({ what, why }) => `${what}: ${why}`).join("; "),
    says: (answer.because as readonly string[]).join("; "),
    choicesCount: (answer.choices as readonly string[] | undefined)?.length,
    largestWatts: Math.max(...values.map(({ watts }) => watts ?? 0)),
    text: String(answer.text ?? ""),
    sum: numbers.reduce((total, value) => total + value, 0) || Number(answer.value),
  };
}

describe("what a restorer would answer", () => {
  test.each(CASES.map((one) => [`${one.id}: ${one.cls} as ${one.role}: ${one.reason}`, one] as const))(
    "%s",
    (_title, { expect: expected, ...one }) => {
      const found = answered(one);
      const { cautionsAmong = [], turnsDown = [], says, text, sumBetween, leastWattsOfOne, ...plain } = expected;
      expect(found).toMatchObject(plain);
      expect(found.cautions).toEqual(expect.arrayContaining([...cautionsAmong]));
      for (const each of turnsDown) expect(found.turnsDown).toMatch(each);
      if (says) expect(found.says).toMatch(new RegExp(says));
      if (text) expect(found.text).toMatch(new RegExp(`^${text}`));
      if (leastWattsOfOne) expect(found.largestWatts).toBeGreaterThanOrEqual(leastWattsOfOne);
      if (sumBetween) {
        expect(found.sum).toBeGreaterThanOrEqual(sumBetween[0]);
        expect(found.sum).toBeLessThanOrEqual(sumBetween[1]);
      }
    },
  );

  test("the cases go over every type and every use", () => {
    const missing = (scope: "class" | "role", names: readonly (string | null | undefined)[]) =>
      defaultRules()
        .filter((rule) => rule.scope === scope && !names.includes(rule.id))
        .map(({ id }) => id);
    expect(
      missing(
        "class",
        CASES.map(({ cls }) => cls),
      ),
    ).toEqual([]);
    expect(
      missing(
        "role",
        CASES.map(({ role }) => role),
      ),
    ).toEqual([]);
  });
});
