/** The one thing we ask of this package, which brings no types. */
declare module "jsdom" {
  export class JSDOM {
    constructor(html: string);
    readonly window: Pick<typeof globalThis, "DOMParser" | "XMLSerializer">;
  }
}
