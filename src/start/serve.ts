import "./oldNode.js";
import { existsSync, readFileSync } from "node:fs";
import { createServer } from "node:net";
import path from "node:path";
import webpack from "webpack";
import DevServer, { type Configuration } from "webpack-dev-server";
import { MANIFEST_URL } from "./bundle/baseUrl.js";
import { configuration } from "./bundle/bundle.js";

/** `npm start`: the page with the embedded spreadsheet. `npm run start:excel`: the same over https, for Excel. */
async function serve(): Promise<void> {
  const forExcel = process.argv.includes("--excel");
  const compiler = webpack(await configuration({ mode: "development" }));
  const port = forExcel ? Number(new URL(MANIFEST_URL).port) : await freePort(Number(process.env.PORT ?? 3000));
  const server = new DevServer(
    {
      host: "localhost",
      port,
      server: forExcel ? { type: "https", options: await certificates() } : "http",
      headers: { "Access-Control-Allow-Origin": "*" },
      client: { overlay: false, logging: "none" },
      hot: false,
      devMiddleware: { stats: "errors-warnings" },
      setupExitSignals: true,
    },
    compiler,
  );
  console.log("Preparing Underchassis.");
  await server.start();
  await new Promise((done) => server.middleware?.waitUntilValid(done));
  console.log(forExcel ? howToSideload(port) : `\nUnderchassis is ready: http://localhost:${port}/\n\nCtrl+C ends it.`);
}

function howToSideload(port: number): string {
  const manifest = path.resolve("manifest.xml");
  return `\nUnderchassis for Excel: https://localhost:${port}/\nAdd it to Excel with the manifest ${manifest}; README.md says where.\n\nCtrl+C ends it.`;
}

/** The port wanted, or the next free one. */
async function freePort(wanted: number): Promise<number> {
  for (let port = wanted; port < wanted + 100; port++) if (await isFree(port)) return port;
  throw new Error(`No free port from ${wanted} to ${wanted + 99}.`);
}

function isFree(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once("error", () => resolve(false));
    probe.listen(port, "localhost", () => probe.close(() => resolve(true)));
  });
}

type Https = Extract<Configuration["server"], { options?: unknown }>["options"];

/** A certificate that this machine trusts: made by office-addin-dev-certs, or named by CERT_FILE and KEY_FILE. */
async function certificates(): Promise<Https> {
  const { CERT_FILE, KEY_FILE } = process.env;
  if (CERT_FILE && KEY_FILE && existsSync(CERT_FILE) && existsSync(KEY_FILE)) {
    return { cert: readFileSync(CERT_FILE), key: readFileSync(KEY_FILE) };
  }
  const { getHttpsServerOptions } = await import("office-addin-dev-certs");
  return getHttpsServerOptions();
}

await serve();
