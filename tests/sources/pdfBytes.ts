/** A text at a place on a page, in points from the lower left corner. */
type Placed = { readonly x: number; readonly y: number; readonly text: string };

/** A small PDF with these texts on its pages, set in Courier 10 on Letter paper. @see ISO 32000-1, 7.5 (file structure) */
export function pdfBytes(pages: readonly (readonly Placed[])[]): Uint8Array {
  const kids = pages.map((_, i) => `${4 + 2 * i} 0 R`).join(" ");
  const objects = [
    "<< /Type /Catalog /Pages 2 0 R >>",
    `<< /Type /Pages /Kids [${kids}] /Count ${pages.length} >>`,
    "<< /Type /Font /Subtype /Type1 /BaseFont /Courier >>",
    ...pages.flatMap((page, i) => [pageObject(5 + 2 * i), streamObject(page)]),
  ];
  let text = "%PDF-1.4\n";
  const offsets = objects.map((body, i) => {
    const at = text.length;
    text += `${i + 1} 0 obj\n${body}\nendobj\n`;
    return at;
  });
  const table = offsets.map((at) => `${String(at).padStart(10, "0")} 00000 n \n`).join("");
  const size = objects.length + 1;
  text += `xref\n0 ${size}\n0000000000 65535 f \n${table}trailer\n<< /Size ${size} /Root 1 0 R >>\nstartxref\n${text.length}\n%%EOF\n`;
  return new TextEncoder().encode(text);
}

const pageObject = (contents: number) =>
  `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 612 792] /Resources << /Font << /F1 3 0 R >> >> /Contents ${contents} 0 R >>`;

function streamObject(page: readonly Placed[]): string {
  const shown = page
    .map(({ x, y, text }) => `BT /F1 10 Tf ${x} ${y} Td (${text.replace(/[()\\]/g, "\\$&")}) Tj ET`)
    .join("\n");
  return `<< /Length ${shown.length} >>\nstream\n${shown}\nendstream`;
}
