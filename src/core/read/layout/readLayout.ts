import { designatorsOf } from "../records/designators.js";
import type { SourceLine } from "../sourceLine.js";
import { withBesides } from "./besides.js";
import { withoutBraces } from "./braces.js";
import { headBlockAt } from "./headBlock.js";
import { isKindHeading } from "./headings.js";
import { withoutItemNumbers } from "./itemNumbers.js";
import { withNarrowGaps } from "./narrowGaps.js";
import { unfoldPanels } from "./panels.js";
import { isRule, type Strip, stripOf } from "./pieces.js";
import { readProse } from "./prose.js";
import type { Layout } from "./row.js";
import { takeLine } from "./takeLine.js";
import { finish, type ReadName, startWalk, type Walk } from "./walk.js";

/**
 * A document taken apart into rows of cells, notes, remarks on parts, and furniture: each filled source line ends in one.
 *
 * Layouts say where cells are, never what they mean. `readName` tells designators from other text.
 */
export function readLayout(lines: readonly SourceLine[], readName: ReadName = designatorsOf): Layout {
  const prose = readProse(lines);
  const printed = lines.filter((line) => !prose.lines.has(line.number)).map(stripOf);
  const strips = unfoldPanels(withNarrowGaps(withBesides(withoutItemNumbers(withoutBraces(printed)))));
  const walk = startWalk(readName);
  let at = 0;
  while (at < strips.length) at += step(walk, strips, at);
  const { rows, notes, furniture, ...rest } = finish(walk);
  return {
    ...rest,
    rows: [...rows, ...prose.rows],
    notes: [...notes, ...prose.notes],
    furniture: [...furniture, ...prose.lines],
  };
}

/** One step of the walk; gives how many strips it took. */
function step(walk: Walk, strips: readonly Strip[], at: number): number {
  const strip = strips[at]!;
  if (strip.pieces.every((piece) => piece.text.trim() === "")) {
    walk.blank = true;
    if (strip.text.trim() !== "") walk.furniture.push(...strip.numbers);
    return 1;
  }
  if (isRule(strip)) {
    walk.furniture.push(...strip.numbers);
    walk.ruled = true;
    return 1;
  }
  const block = headBlockAt(strips, at);
  if (block) {
    for (const taken of strips.slice(at, at + block.height)) walk.furniture.push(...taken.numbers);
    const isSame = walk.heads?.map((head) => head.role).join() === block.heads.map((head) => head.role).join();
    if (!isSame) walk.table++;
    walk.headed = isSame;
    [walk.heads, walk.numbered] = [block.heads, block.numbered];
    walk.heading = block.heads.map((head) => head.text).find(isKindHeading) ?? walk.heading;
    return block.height;
  }
  takeLine(walk, strip);
  [walk.blank, walk.ruled] = [false, false];
  return 1;
}
