/** What a file is by its first bytes; text is what is left. */
export type Form = "zip" | "old-workbook" | "pdf" | "picture" | "text";

const SIGNATURES: readonly (readonly [form: Form, start: readonly number[]])[] = [
  ["zip", [0x50, 0x4b, 0x03, 0x04]],
  ["zip", [0x50, 0x4b, 0x05, 0x06]],
  ["old-workbook", [0xd0, 0xcf, 0x11, 0xe0]],
  ["pdf", [0x25, 0x50, 0x44, 0x46, 0x2d]],
  ["picture", [0x89, 0x50, 0x4e, 0x47]],
  ["picture", [0xff, 0xd8, 0xff]],
  ["picture", [0x42, 0x4d]],
  ["picture", [0x52, 0x49, 0x46, 0x46]],
];

/** What a file is, by the signature it starts with: the ending of its name may be wrong. @example formOf(pdf) // "pdf" */
export function formOf(bytes: Uint8Array): Form {
  const found = SIGNATURES.find(
    ([form, start]) => start.every((byte, i) => bytes[i] === byte) && plausible(form, bytes),
  );
  return found?.[0] ?? "text";
}

/** "BM" and "RIFF" are words too: a picture has bytes that text has not. */
const plausible = (form: Form, bytes: Uint8Array) => form !== "picture" || bytes.subarray(0, 64).includes(0);
