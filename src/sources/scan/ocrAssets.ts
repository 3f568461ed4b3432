/** Where the parts of the character reader lie: its worker, its core and the language data. Nothing comes from outside. */
export type OcrAssets = {
  readonly workerPath: string | undefined;
  readonly corePath: string | undefined;
  readonly langPath: string;
};

/** Folder beside the page that the build copies the character reader to. */
const FOLDER = "ocr/";
const LANGUAGE = "../../../node_modules/@tesseract.js-data/eng/4.0.0_best_int";

/** The assets beside the page, or in Node those of the installed packages. */
export function ocrAssets(): OcrAssets {
  const page = (globalThis as { location?: { href: string } }).location;
  if (!page) return { workerPath: undefined, corePath: undefined, langPath: besideThisFile(LANGUAGE) };
  const base = new URL(FOLDER, page.href).href;
  return { workerPath: `${base}worker.min.js`, corePath: base.slice(0, -1), langPath: base.slice(0, -1) };
}

function besideThisFile(path: string): string {
  const here = import.meta.url;
  return decodeURIComponent(new URL(path, here).pathname);
}
