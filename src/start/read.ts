import { readFileSync } from "node:fs";
import path from "node:path";
import { type ListedPart, PartsError, problemText, readList } from "../core/index.js";
import { readSource } from "../sources/readSource.js";

/** One part as printed by `npm run -s read`: the listed part with its tolerance in two fields and its warnings as codes. */
function plainPart(part: ListedPart) {
  const { tolerance, warnings, ...rest } = part;
  return {
    ...rest,
    toleranceMinus: tolerance?.minus ?? null,
    tolerancePlus: tolerance?.plus ?? null,
    warnings: [...new Set(warnings.map((warning) => warning.code))],
    remarks: warnings.map((warning) => warning.text),
  };
}

/** The reading of one file as one line of JSON; a file that cannot be read gives its problem in the same place. */
async function readingOf(file: string): Promise<string> {
  try {
    const { lines } = await readSource(path.basename(file), readFileSync(file));
    const { parts, furniture, unread, questions } = readList(lines);
    return JSON.stringify({
      parts: parts.map(plainPart),
      furniture,
      unread: unread.map(({ line }) => line),
      questions,
    });
  } catch (error) {
    if (!(error instanceof PartsError)) throw error;
    return JSON.stringify({ parts: [], furniture: [], unread: [], questions: [], problem: problemText(error.problem) });
  }
}

const files = process.argv.slice(2);
if (files.length === 0) {
  console.error("Name at least one parts list: npm run -s read -- LIST...");
  process.exitCode = 1;
}
for (const file of files) console.log(await readingOf(file));
