import { createReadStream, existsSync, rmSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";
import { bundle } from "../../../src/start/bundle/bundle.js";

const ROOT = path.resolve(import.meta.dirname, "../../../.tmp/page");

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".wasm": "application/wasm",
  ".png": "image/png",
  ".woff2": "font/woff2",
};

/** The page built once, unminified, and served as plain files. */
export async function servePage(): Promise<{ readonly address: string; readonly close: () => void }> {
  rmSync(ROOT, { recursive: true, force: true });
  await bundle({ mode: "production", minimize: false, output: ROOT });
  const server = createServer((request, response) => {
    const wanted = new URL(request.url ?? "/", "http://localhost").pathname;
    const file = path.join(ROOT, path.normalize(wanted === "/" ? "/index.html" : wanted));
    if (!file.startsWith(ROOT) || !existsSync(file)) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { "Content-Type": TYPES[path.extname(file)] ?? "application/octet-stream" });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  return { address: addressOf(server), close: () => void server.close() };
}

const addressOf = (server: Server) => `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
