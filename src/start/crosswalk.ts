import { readFileSync } from "node:fs";
import path from "node:path";
import { crosswalk, type ListedPart, readList } from "../core/index.js";
import { readSource } from "../sources/readSource.js";

/** `npm run -s crosswalk -- FACTORY SERVICE`: which part of one list is which of the other, as one line of JSON. */
const [factory, service] = process.argv.slice(2);
if (factory === undefined || service === undefined) {
  console.error("Name the factory's list and the service document's list: npm run -s crosswalk -- FACTORY SERVICE");
  process.exitCode = 1;
} else {
  const { pairs, onlyFactory, onlyService } = crosswalk(await partsOf(factory), await partsOf(service));
  const printed = pairs.map(({ factory, service, confidence, disagree }) => ({
    factory: nameOf(factory),
    service: nameOf(service),
    confidence,
    disagree: disagree.map(({ field }) => field),
    details: disagree,
  }));
  console.log(
    JSON.stringify({ pairs: printed, onlyFactory: onlyFactory.map(nameOf), onlyService: onlyService.map(nameOf) }),
  );
}

async function partsOf(file: string): Promise<readonly ListedPart[]> {
  return readList((await readSource(path.basename(file), readFileSync(file))).lines).parts;
}

function nameOf({ section, designators }: ListedPart) {
  return { section, designators };
}
