import type { BrowserContext } from "playwright-core";

/** How a page is typed: a picture so wide and high, in dots; 300 dots an inch make 10 point type 42 dots high. */
export type Typed = {
  readonly width: number;
  readonly height: number;
  readonly margin: number;
  readonly leading: number;
};

/** Lines as a typist's page, photographed: a PNG picture. */
export async function typedPage(context: BrowserContext, lines: readonly string[], typed: Typed): Promise<Buffer> {
  const sheet = await context.newPage();
  await sheet.setViewportSize({ width: typed.width, height: typed.height });
  const rows = lines.map((line) => `<div>${line || "&nbsp;"}</div>`).join("");
  const style = `background:white;color:black;margin:${typed.margin}px;font:42px 'Open Sans';line-height:${typed.leading}`;
  await sheet.setContent(`<body style="${style}">${rows}</body>`);
  const picture = await sheet.screenshot({ type: "png" });
  await sheet.close();
  return picture;
}
