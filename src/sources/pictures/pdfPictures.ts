import type { PDFDocumentProxy } from "pdfjs-dist/types/src/display/api.js";
import { PartsError } from "../../core/index.js";
import type { PagePictures } from "./pagePictures.js";

/** Pixels a page is drawn wide: typed lines stay sharp when they are looked at closely in a narrow pane. */
const WIDTH = 1600;

/** Folder beside the page that the build copies fonts and picture decoders of the PDF library to. */
const FOLDER = "pdf/";

/** The pages of a PDF, each drawn once and when it is asked for; the file is taken apart in a thread of its own. */
export function pdfPictures(bytes: Uint8Array): PagePictures {
  const thread = new Worker(new URL("pdfjs-dist/legacy/build/pdf.worker.mjs", import.meta.url), { type: "module" });
  const opening = opened(bytes.slice(), thread);
  opening.catch(() => {});
  const drawn = new Map<number, Promise<string>>();
  return {
    page(number) {
      const picture = drawn.get(number) ?? opening.then((document) => draw(document, number));
      drawn.set(number, picture);
      return picture;
    },
    close() {
      for (const picture of drawn.values()) picture.then(URL.revokeObjectURL).catch(() => {});
      void opening
        .then((document) => document.loadingTask.destroy())
        .catch(() => {})
        .finally(() => thread.terminate());
    },
  };
}

async function opened(data: Uint8Array, port: Worker): Promise<PDFDocumentProxy> {
  const { getDocument, PDFWorker, VerbosityLevel } = await import("pdfjs-dist/legacy/build/pdf.mjs");
  const assets = new URL(FOLDER, document.baseURI).href;
  return getDocument({
    data,
    worker: new PDFWorker({ port: port as never }),
    verbosity: VerbosityLevel.ERRORS,
    isEvalSupported: false,
    disableFontFace: true,
    useSystemFonts: false,
    standardFontDataUrl: `${assets}standard_fonts/`,
    wasmUrl: `${assets}wasm/`,
  }).promise;
}

async function draw(file: PDFDocumentProxy, number: number): Promise<string> {
  const page = await file.getPage(number);
  const viewport = page.getViewport({ scale: WIDTH / page.getViewport({ scale: 1 }).width });
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = [Math.ceil(viewport.width), Math.ceil(viewport.height)];
  await page.render({ canvas, viewport }).promise;
  page.cleanup();
  const picture = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve));
  if (!picture) throw new PartsError("unreadable", `page ${number}`, "The page is too large to be drawn.");
  return URL.createObjectURL(picture);
}
