import { Unzip, UnzipInflate, unzipSync } from "fflate";
import { PartsError } from "../core/index.js";

const MOST_BYTES = 400_000_000;
const STEP = 1 << 16;

/**
 * The wanted files of a zip archive, inflated within a limit.
 *
 * Sizes are checked twice: as the archive declares them, before anything is inflated, and as they come out, for an
 * archive may lie.
 *
 * @param wanted Which of the archive's names to inflate.
 * @throws PartsError "too-much" for an archive that swells beyond the limit, "unreadable" for a broken one.
 */
export function unzipWithin(
  bytes: Uint8Array,
  wanted: (name: string) => boolean,
  mostBytes = MOST_BYTES,
): ReadonlyMap<string, Uint8Array> {
  refuseDeclared(bytes, wanted, mostBytes);
  const files = new Map<string, Uint8Array>();
  let total = 0;
  const unzip = new Unzip((file) => {
    if (!wanted(file.name)) return;
    const chunks: Uint8Array[] = [];
    file.ondata = (error, chunk, final) => {
      if (error) throw asProblem(error);
      total += chunk.length;
      if (total > mostBytes) throw tooMuch(mostBytes);
      chunks.push(chunk);
      if (final) files.set(file.name, joined(chunks));
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  pushAll(unzip, bytes);
  return files;
}

function refuseDeclared(bytes: Uint8Array, wanted: (name: string) => boolean, mostBytes: number): void {
  let declared = 0;
  try {
    unzipSync(bytes, {
      filter: (file) => {
        if (wanted(file.name)) declared += file.originalSize;
        return false;
      },
    });
  } catch {
    throw broken();
  }
  if (declared > mostBytes) throw tooMuch(mostBytes);
}

function pushAll(unzip: Unzip, bytes: Uint8Array): void {
  try {
    for (let at = 0; at < bytes.length; at += STEP) {
      unzip.push(bytes.subarray(at, at + STEP), at + STEP >= bytes.length);
    }
  } catch (error) {
    throw asProblem(error);
  }
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

/** What went wrong inside the library comes back through its callbacks, ours too. */
const asProblem = (error: unknown) => (error instanceof PartsError ? error : broken());
const broken = () => new PartsError("unreadable", "this archive", "It is damaged or cut short; fetch it again.");
const tooMuch = (most: number) =>
  new PartsError("too-much", "What this archive unpacks to", `The limit is ${Math.round(most / 1e6)} MB.`);
