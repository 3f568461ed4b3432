import { readFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import {
  type ListedPart,
  type PartNumberTable,
  PartsError,
  plainNumber,
  problemText,
  readList,
  readPartNumbers,
} from "../core/index.js";
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
async function readingOf(file: string, partNumbers: PartNumberTable): Promise<string> {
  try {
    const { lines } = await readSource(path.basename(file), readFileSync(file));
    const { parts, furniture, unread, questions, numbersWithoutValue } = readList(lines, { partNumbers });
    return JSON.stringify({
      parts: parts.map(plainPart),
      furniture,
      unread: unread.map(({ line }) => line),
      questions,
      numbersWithoutValue,
    });
  } catch (error) {
    if (!(error instanceof PartsError)) throw error;
    return JSON.stringify({ parts: [], furniture: [], unread: [], questions: [], problem: problemText(error.problem) });
  }
}

/** The user's table of part numbers, from a file. */
async function tableOf(file: string | undefined): Promise<PartNumberTable> {
  if (file === undefined) return new Map();
  const { lines } = await readSource(path.basename(file), readFileSync(file));
  return new Map(readPartNumbers(lines).rows.map(({ number, description }) => [plainNumber(number), description]));
}

const { values, positionals } = parseArgs({ allowPositionals: true, options: { numbers: { type: "string" } } });
if (positionals.length === 0) {
  console.error("Name at least one parts list: npm run -s read -- [--numbers TABLE] LIST...");
  process.exitCode = 1;
}
const table = await tableOf(values.numbers);
for (const file of positionals) console.log(await readingOf(file, table));
