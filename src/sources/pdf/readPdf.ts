import type { TextItem } from "pdfjs-dist/types/src/display/api.js";
import { PartsError, type SourceLine } from "../../core/index.js";
import type { LinePlace, ReadOptions, Source, SourcePage } from "../source.js";
import { type PageLine, type PageText, pageLines } from "./pageLines.js";

const MOST_PAGES = 500;

/**
 * The text layer of a PDF as lines, page after page, columns rebuilt from where the text stands.
 *
 * Needs no browser: the library's worker runs in whatever thread this runs in.
 *
 * @throws PartsError "unreadable" for a damaged or locked file, "not-a-list" where no page has text, "too-much" beyond 500 pages.
 */
export async function readPdf(bytes: Uint8Array, name: string, options: ReadOptions = {}): Promise<Source> {
  const document = await opened(bytes, name);
  const lines: SourceLine[] = [];
  const pages: SourcePage[] = [];
  const places: LinePlace[] = [];
  if (document.numPages > MOST_PAGES) {
    throw new PartsError("too-much", `${document.numPages} pages`, `Give at most ${MOST_PAGES} pages at a time.`);
  }
  try {
    for (let number = 1; number <= document.numPages; number++) {
      options.signal?.throwIfAborted();
      options.onProgress?.((number - 1) / document.numPages, `page ${number} of ${document.numPages}`);
      const page = await document.getPage(number);
      const { height, width } = page.getViewport({ scale: 1 });
      const { items } = await page.getTextContent();
      pages.push({ name: `page ${number}`, firstLine: lines.length + 1 });
      for (const line of pageLines(items.filter((item) => "str" in item).map(pieceOf))) {
        lines.push({ number: lines.length + 1, text: line.text, cells: null });
        places.push(placeOf(line, lines.length, number, { width, height }));
      }
      page.cleanup();
    }
  } finally {
    await document.loadingTask.destroy();
  }
  if (lines.length === 0) {
    throw new PartsError("not-a-list", name, "Its pages are pictures without text: give them as PNG or JPEG.");
  }
  return { form: "pdf", lines, pages, places, doubtful: [] };
}

async function opened(bytes: Uint8Array, name: string) {
  const { getDocument, VerbosityLevel } = await import("pdfjs-dist/legacy/build/pdf.mjs");
  await loadWorkerHere();
  try {
    return await getDocument({
      data: bytes.slice(),
      verbosity: VerbosityLevel.ERRORS,
      isEvalSupported: false,
      disableFontFace: true,
      useSystemFonts: false,
    }).promise;
  } catch (error) {
    const locked = error instanceof Error && error.name === "PasswordException";
    throw new PartsError("unreadable", name, locked ? "Unlock it first." : "The PDF is damaged or cut short.");
  }
}

/**
 * Makes the library's worker run in this thread. In a thread that is not the page's it would take this thread's messages
 * for its own as soon as it is loaded; it leaves them alone where there is a window.
 */
async function loadWorkerHere(): Promise<void> {
  const here = globalThis as { pdfjsWorker?: unknown; window?: unknown };
  if (here.pdfjsWorker) return;
  const isThread = here.window === undefined;
  if (isThread) here.window = here;
  try {
    here.pdfjsWorker = await import("pdfjs-dist/legacy/build/pdf.worker.mjs");
  } finally {
    if (isThread) delete here.window;
  }
}

/** The letters of a line reach about a quarter of their height below where it stands. */
const BELOW = 0.25;

function placeOf(line: PageLine, number: number, page: number, size: { width: number; height: number }): LinePlace {
  const base = 1 - line.y / size.height;
  const letters = line.height / size.height;
  const [left, right] = [line.left / size.width, line.right / size.width];
  return { line: number, page, top: base - letters, bottom: base + BELOW * letters, left, right };
}

function pieceOf(item: TextItem): PageText {
  const [, , , , x, y] = item.transform as number[];
  return { text: item.str, x: x!, y: y!, width: item.width, height: item.height };
}
