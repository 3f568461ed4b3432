import type { TestProject } from "vitest/node";
import { type Chrome, readyChrome } from "./chrome.js";
import { servePage } from "./site.js";

declare module "vitest" {
  export interface ProvidedContext {
    address: string;
    chrome: Chrome;
  }
}

/** Before the first browser test: the page stands at an address and the browser is unpacked. */
export default async function setup(project: TestProject): Promise<() => void> {
  const chrome = await readyChrome();
  const site = await servePage();
  project.provide("chrome", chrome);
  project.provide("address", site.address);
  return site.close;
}
