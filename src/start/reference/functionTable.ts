import { NAMESPACE } from "../namespace.js";
import type { CellFunction } from "./catalogue.js";
import { inChapters } from "./chapters.js";
import { readExample } from "./example.js";

const START = "<!-- functions -->";
const END = "<!-- /functions -->";

/** How a function is called, with what may be left out in brackets: `=LUG.NEAREST_STD(wanted, [series], [rule])`. */
export function signature({ id, parameters }: CellFunction): string {
  return `=${NAMESPACE}.${id}(${parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ")})`;
}

/** The README's tables of functions, in Markdown, a chapter each: what each gives, and an example. */
export function functionTables(functions: readonly CellFunction[]): string {
  return inChapters(functions)
    .map(({ title, functions }) => `### ${title}\n\n${table(functions)}`)
    .join("\n\n");
}

function table(functions: readonly CellFunction[]): string {
  const rows = functions.map((one) => [`\`${one.id}\``, one.description, `\`${readExample(one.example).formula}\``]);
  const lines = [["function", "what it gives", "example"], ["---", "---", "---"], ...rows];
  return lines.map((line) => `| ${line.map((cell) => cell.replaceAll("|", "\\|")).join(" | ")} |`).join("\n");
}

/** A text with the tables in place of what stood between the two marks. */
export function withFunctionTables(text: string, functions: readonly CellFunction[]): string {
  const [start, end] = [text.indexOf(START), text.indexOf(END)];
  if (start < 0 || end < start) throw new Error(`The text has no ${START} ... ${END}.`);
  return `${text.slice(0, start + START.length)}\n\n${functionTables(functions)}\n\n${text.slice(end)}`;
}
