import { readsOn } from "./continuation.js";
import type { Strip } from "./pieces.js";
import { takeNote, type Walk } from "./walk.js";

const REMARK = /^(?:[-*•]\s+|\*{1,2}\s*)\S/;

/** Whether a line explains a star set behind a part. */
export const isFootnote = (walk: Walk, strip: Strip) =>
  walk.rows.length > 0 && /^[*†‡]\s*\S/.test(strip.pieces[0]?.text ?? "");

const FEWEST_WORDS_OF_NOTE = 6;

/** Remarks on parts, notes, titles: all that is left. */
export function takeOther(walk: Walk, strip: Strip): void {
  const text = strip.pieces
    .map((piece) => piece.text.trim())
    .filter(Boolean)
    .join("  ");
  if (REMARK.test(text) && walk.rows.length > 0) {
    takeRemark(walk, strip);
    return;
  }
  const isBracket = /^\(.*\)$/.test(text.trim());
  const isNote = /[.:]$/.test(text.trim()) || text.split(/\s+/).length >= FEWEST_WORDS_OF_NOTE;
  takeNote(walk, strip, text);
  if (!isBracket && !isNote && strip.form !== "cells") walk.pending = null;
  if (!isBracket) walk.apart = true;
}

/** A remark goes on over lines that read on. */
export function takeRemark(walk: Walk, strip: Strip): void {
  const text = strip.pieces.map((piece) => piece.text.trim()).join(" ");
  const last = walk.remarks.at(-1);
  walk.furniture.push(...strip.numbers);
  if (last && !walk.blank && last.lines.at(-1) === strip.numbers[0]! - 1 && readsOn(text) && !/^[-*•]/.test(text)) {
    last.text = `${last.text} ${text}`;
    last.lines.push(...strip.numbers);
  } else walk.remarks.push({ lines: [...strip.numbers], text, section: walk.section });
}
