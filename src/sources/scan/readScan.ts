import type { Block, Line, RecognizeResult, Worker } from "tesseract.js";
import { PartsError } from "../../core/index.js";
import type { LinePlace, ReadOptions, Source } from "../source.js";
import { doubtsOf } from "./doubts.js";
import { ocrAssets } from "./ocrAssets.js";
import { pictureSize } from "./pictureSize.js";
import { placeOf } from "./placeOf.js";
import { scannedText } from "./scannedText.js";

/** Seconds after which a reader that gives no sign is stopped: without WebAssembly it hangs in silence. */
const USUAL_LIMIT = 120;

/**
 * A photographed or scanned page as lines, read by tesseract as one block of text.
 *
 * Words that the reader was unsure of are listed, for a person to look at; nothing is corrected. Blanks between words
 * are kept, so that columns stay columns.
 *
 * @throws PartsError "unreadable" for a damaged picture or a page without a reader, "not-a-list" for one without text, "too-much" past the time limit.
 */
export async function readScan(bytes: Uint8Array, name: string, options: ReadOptions = {}): Promise<Source> {
  options.onProgress?.(0, "starting the character reader");
  const result = await recognised(bytes, name, options);
  const read = linesOf(result.data.blocks ?? []);
  if (read.length === 0) throw new PartsError("not-a-list", name, "No text could be made out in the picture.");
  const lines = read.map((line, i) => ({ number: i + 1, text: scannedText(line), cells: null }));
  const size = pictureSize(bytes);
  const places: readonly LinePlace[] = size ? read.map(({ bbox }, i) => placeOf(bbox, i + 1, size)) : [];
  return { form: "scan", lines, pages: [{ name, firstLine: 1 }], places, doubtful: doubtsOf(read, size) };
}

async function recognised(bytes: Uint8Array, name: string, options: ReadOptions): Promise<RecognizeResult> {
  let worker: Worker | null = null;
  let isOver = false;
  const reading = (async () => {
    const { createWorker, PSM } = await import("tesseract.js");
    worker = await createWorker("eng", undefined, {
      ...defined(ocrAssets()),
      workerBlobURL: false,
      cacheMethod: "none",
      gzip: true,
      errorHandler: () => {},
      logger: ({ progress, status }) => {
        if (status === "recognizing text") options.onProgress?.(progress, "reading characters");
      },
    });
    if (isOver) return worker.terminate() as never;
    await worker.setParameters({
      tessedit_pageseg_mode: PSM.SINGLE_BLOCK,
      preserve_interword_spaces: "1",
      user_defined_dpi: "300",
    });
    return worker.recognize(bytes as never, { rotateAuto: true }, { blocks: true, text: false });
  })();
  try {
    return await Promise.race([reading, stopOf(options)]);
  } catch (error) {
    if (error instanceof PartsError || options.signal?.aborted) throw error;
    throw new PartsError(
      "unreadable",
      name,
      "The picture is damaged, or of a kind that cannot be read: give PNG or JPEG.",
    );
  } finally {
    isOver = true;
    reading.catch(() => {});
    void (worker as Worker | null)?.terminate();
  }
}

/** Rejects when the user cancels or the time is over. */
function stopOf({ signal, timeLimit = USUAL_LIMIT }: ReadOptions): Promise<never> {
  return new Promise((_, reject) => {
    const late = () => reject(new PartsError("too-much", "This picture", `It took more than ${timeLimit} s to read.`));
    const timer = setTimeout(late, timeLimit * 1000);
    (timer as { unref?: () => void }).unref?.();
    signal?.addEventListener("abort", () => reject(signal.reason), { once: true });
  });
}

/** The library takes a key that is there but undefined for a value. */
const defined = <T extends object>(given: T) =>
  Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)) as Partial<T>;

const linesOf = (blocks: readonly Block[]): Line[] =>
  blocks.flatMap((block) => block.paragraphs.flatMap((paragraph) => paragraph.lines));
