import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { JSDOM } from "jsdom";
import { describe, expect, test } from "vitest";
import { MANIFEST_URL } from "../src/start/bundle/baseUrl.js";
import { NAMESPACE } from "../src/start/namespace.js";

const root = path.resolve(import.meta.dirname, "..");
const text = readFileSync(path.join(root, "manifest.xml"), "utf8");
const manifest = new new JSDOM("").window.DOMParser().parseFromString(text, "text/xml");
const all = (name: string) => [...manifest.getElementsByTagNameNS("*", name)];
const attributes = (name: string) => [...manifest.querySelectorAll(`[${name}]`)].map((one) => one.getAttribute(name)!);
const resource = (id: string) => manifest.querySelector(`[id="${id}"]`)?.getAttribute("DefaultValue") ?? "";

/** Width and height in a PNG's header. */
function sizeOf(file: string): [number, number] {
  const bytes = readFileSync(file);
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}

describe("the manifest", () => {
  test("names every resource that it uses, and uses every one it names", () => {
    const used = new Set(attributes("resid"));
    const named = new Set(["Image", "Url", "String"].flatMap(all).map((one) => one.getAttribute("id") ?? ""));
    named.delete("");
    expect([...used].sort()).toEqual([...named].sort());
    expect([...named].filter((id) => id.length > 32)).toEqual([]);
  });

  test("asks for nothing that is not https and not ours", () => {
    const addresses = attributes("DefaultValue").filter((value) => value.includes("://"));
    expect(addresses.length).toBeGreaterThan(5);
    expect(addresses.filter((address) => !address.startsWith(MANIFEST_URL))).toEqual([]);
  });

  test.each([16, 32, 80])("every icon has its %d pixels", (size) => {
    for (const image of all("Image").filter((one) => one.getAttribute("size") === String(size))) {
      const file = resource(image.getAttribute("resid")!).replace(`${MANIFEST_URL}icons/`, "src/start/icons/");
      expect(sizeOf(path.join(root, file))).toEqual([size, size]);
    }
    expect(all("Image").filter((one) => one.getAttribute("size") === String(size)).length).toBe(2);
  });

  test("runs pane and functions in one runtime", () => {
    const page = all("Page")[0]!.firstElementChild!.getAttribute("resid");
    const residents = [all("Runtime")[0]!, all("FunctionFile")[0]!].map((one) => one.getAttribute("resid"));
    expect(residents).toEqual([page, page]);
    expect(all("Runtime")[0]!.getAttribute("lifetime")).toBe("long");
  });

  test("keeps to Excel's lengths", () => {
    const short = [...manifest.getElementsByTagNameNS("*", "ShortStrings")[0]!.children];
    expect(short.filter((one) => one.getAttribute("DefaultValue")!.length > 125)).toEqual([]);
  });

  test("gives the functions the namespace that the page gives them", () => {
    expect(resource("Functions.Namespace")).toBe(NAMESPACE);
  });

  const check = path.resolve(root, "../shared/office-xsd/check.sh");
  const xmllint = ["/usr/bin/xmllint", "/usr/local/bin/xmllint"].some((file) => existsSync(file));
  const missing = existsSync(check) && xmllint ? null : "the schemas (../shared/office-xsd) or xmllint are not here";
  test.skipIf(missing)(`is in the form that Excel's schema asks for${missing ? `: skipped, ${missing}` : ""}`, () => {
    expect(execFileSync(check, [path.join(root, "manifest.xml")], { encoding: "utf8" })).toContain("validates");
  });
});
