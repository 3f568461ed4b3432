import { JSDOM } from "jsdom";

/** Gives Node the two classes of a browser that opening and saving an .xlsx need. */
export function lendXmlToNode(): void {
  const { DOMParser, XMLSerializer } = new JSDOM("").window;
  Object.assign(globalThis, { DOMParser, XMLSerializer });
}
