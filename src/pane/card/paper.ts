/** A printed sheet: its title, what stands above its table, heads and rows. */
export type Paper = {
  readonly title: string;
  readonly above: readonly string[];
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
};

const STYLE = `
  body { font: 11pt "Segoe UI", system-ui, sans-serif; margin: 15mm; color: #000; }
  h1 { font-size: 15pt; margin: 0 0 3mm; }
  table { border-collapse: collapse; width: 100%; }
  th, td { border: 0.3mm solid #888; padding: 1.5mm 2mm; text-align: left; vertical-align: top; font-size: 10pt; }
  thead { display: table-header-group; }
  tr { break-inside: avoid; }
  footer { margin-top: 5mm; font-size: 9pt; }
`;

const escaped = (text: string) =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

const cells = (name: "th" | "td", row: readonly string[]) =>
  `<tr>${row.map((text) => `<${name}>${escaped(text)}</${name}>`).join("")}</tr>`;

/** A paper as a page of its own. @param foot What stands at its foot, such as the standing note. */
export function paperHtml(paper: Paper, foot: string): string {
  const above = paper.above.map((line) => `<p>${escaped(line)}</p>`).join("");
  const table = `<table><thead>${cells("th", paper.heads)}</thead><tbody>${paper.rows.map((row) => cells("td", row)).join("")}</tbody></table>`;
  const title = escaped(paper.title);
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${title}</title><style>${STYLE}</style></head><body><h1>${title}</h1>${above}${table}<footer>${escaped(foot)}</footer></body></html>`;
}
