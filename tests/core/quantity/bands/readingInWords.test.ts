import { expect, test } from "vitest";
import { type BandCode, decodeBands, readingInWords } from "../../../../src/core/index.js";

test.each<[string, BandCode, string]>([
  ["yellow violet orange gold", "resistor", ""],
  ["brown black black red brown red", "resistor", "±50 ppm/K"],
  ["brown black black brown brown", "resistor", "from the other end 110 Ω ±1 %"],
  ["brown black red gold orange", "reliability", "0.01 % fail in 1000 h"],
  ["red red orange black yellow", "moulded paper", "400 V"],
  ["violet yellow violet brown green", "ceramic", "-750 ppm/K"],
  ["black green brown red gold brown", "mica, type first", "500 V; characteristic C; mica"],
])("%s (%s): %s", (colours, code, words) => {
  const { reading, turned } = decodeBands(colours, code);
  expect(readingInWords(reading, turned)).toBe(words);
});
