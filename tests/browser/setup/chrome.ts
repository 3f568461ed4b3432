import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";

/** What it takes to start the browser: its path and the environment it needs. */
export type Chrome = { readonly path: string; readonly env: Record<string, string> };

const TMP = path.resolve(import.meta.dirname, "../../../.tmp/chromium");

const ownEnvironment = () => process.env as Record<string, string>;

/**
 * A Chromium that `npm ci` alone brings, with the libraries and fonts that a bare system lacks; or the one at
 * `CHROME_PATH`. To be called once, before any test, for two at a time disturb each other's unpacking.
 */
export async function readyChrome(): Promise<Chrome> {
  if (process.env.CHROME_PATH) return { path: process.env.CHROME_PATH, env: ownEnvironment() };
  mkdirSync(TMP, { recursive: true });
  process.env.TMPDIR = TMP;
  process.env.AWS_LAMBDA_JS_RUNTIME = "nodejs20.x";
  const { default: chromium } = await import("@sparticuz/chromium");
  const executable = await chromium.executablePath();
  process.env.FONTCONFIG_FILE = fontsFile();
  delete process.env.FONTCONFIG_PATH;
  return { path: executable, env: ownEnvironment() };
}

/** The package's own list of fonts names a folder that is not ours; without one of its own, all text is invisible. */
function fontsFile(): string {
  const file = path.join(TMP, "fonts.conf");
  const folder = (name: string) => path.join(TMP, name);
  writeFileSync(
    file,
    `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${folder("fonts")}</dir><cachedir>${folder("font-cache")}</cachedir></fontconfig>`,
  );
  return file;
}
