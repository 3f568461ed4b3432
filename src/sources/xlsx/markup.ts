const NAMED: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** Text of an XML file with its entities read. @see XML 1.0, 4.6; ECMA-376 part 1, 22.9.2.19 for `_x000D_` */
export function plainText(markup: string): string {
  const text = markup.includes("&")
    ? markup.replace(/&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|(\w{2,4}));/gi, (whole, hex, decimal, name) => {
        if (name) return NAMED[name] ?? whole;
        const code = hex ? Number.parseInt(hex, 16) : Number(decimal);
        return code <= 0x10ffff ? String.fromCodePoint(code) : whole;
      })
    : markup;
  return text.includes("_x")
    ? text.replace(/_x([0-9a-f]{4})_/gi, (_, hex) => String.fromCharCode(Number.parseInt(hex, 16)))
    : text;
}

/** An attribute of a tag, or null. */
export function attribute(tag: string, name: string): string | null {
  const found = new RegExp(`(?:^|\\s)${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(tag);
  return found ? plainText(found[1] ?? found[2] ?? "") : null;
}

/** The inside of each element of this name, in order; elements of one name are taken not to stand in each other. */
export function* elements(markup: string, name: string): Generator<{ readonly tag: string; readonly inside: string }> {
  const open = new RegExp(`<(?:\\w+:)?${name}(?=[\\s/>])((?:[^>"']|"[^"]*"|'[^']*')*)>`, "g");
  const close = new RegExp(`</(?:\\w+:)?${name}\\s*>`, "g");
  for (let found = open.exec(markup); found; found = open.exec(markup)) {
    const tag = found[1]!;
    if (tag.endsWith("/")) {
      yield { tag, inside: "" };
      continue;
    }
    close.lastIndex = open.lastIndex;
    const end = close.exec(markup);
    yield { tag, inside: markup.slice(open.lastIndex, end?.index ?? markup.length) };
    open.lastIndex = end ? close.lastIndex : markup.length;
  }
}

/** The text of a string item: its runs joined, phonetic hints left out. */
export function runsText(markup: string): string {
  const spoken = markup.includes("rPh") ? markup.replace(/<(?:\w+:)?rPh[\s>][\s\S]*?<\/(?:\w+:)?rPh>/g, "") : markup;
  let text = "";
  for (const { inside } of elements(spoken, "t")) text += plainText(inside);
  return text;
}
