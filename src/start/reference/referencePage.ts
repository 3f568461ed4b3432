import type { Cell } from "../../core/index.js";
import type { CellFunction, Parameter } from "./catalogue.js";
import { inChapters } from "./chapters.js";
import { readExample } from "./example.js";
import { signature } from "./functionTable.js";
import { STYLE } from "./style.js";

/** The reference of all cell functions as one page without scripts; each function's anchor is its id, where help links point. */
export function referencePage(functions: readonly CellFunction[]): string {
  const chapters = inChapters(functions);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Underchassis: cell functions</title>
<style>${STYLE}</style>
</head>
<body>
<header>
<h1>Cell functions</h1>
<p>Each takes single cells or whole ranges and spills its answer. A blank stays blank. Values may be numbers in ohms,
farads or henries, or text in old or new notation. Arguments in brackets may be left out.</p>
</header>
<nav aria-label="Functions">
${chapters.map(({ title, functions }) => `<p><strong>${title}</strong> ${functions.map(link).join(" ")}</p>`).join("\n")}
</nav>
<main>
${chapters.map(({ title, functions }) => `<h2>${title}</h2>\n${functions.map(entry).join("\n")}`).join("\n")}
</main>
</body>
</html>
`;
}

function link({ id }: CellFunction): string {
  return `<a href="#${id}">${id}</a>`;
}

function entry(one: CellFunction): string {
  const { formula, gives } = readExample(one.example);
  return `<section id="${one.id}">
<h3>${one.id}</h3>
<p>${escaped(one.description)}</p>
<p><code>${escaped(signature(one))}</code></p>
<dl>
${one.parameters.map(term).join("\n")}
${one.returns ? `<dt>gives</dt><dd>${escaped(one.returns)}</dd>` : ""}
</dl>
<figure>
<figcaption>Example: <code>${escaped(formula)}</code></figcaption>
<table><tbody>
${gives.map((row) => `<tr>${row.map((cell) => `<td>${escaped(shown(cell))}</td>`).join("")}</tr>`).join("\n")}
</tbody></table>
</figure>
</section>`;
}

function term({ name, description, optional, choices }: Parameter): string {
  const list = choices.length > 0 ? ` One of: ${choices.join(", ")}.` : "";
  return `<dt>${optional ? `[${name}]` : name}</dt><dd>${escaped(description + list)}</dd>`;
}

function shown(cell: Cell): string {
  if (typeof cell === "boolean") return String(cell).toUpperCase();
  return cell === null ? "" : String(cell);
}

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}
