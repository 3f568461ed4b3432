import { expect, test } from "vitest";
import { readList } from "../../../../src/core/index.js";

const kindOf = (text: string) => readList([{ number: 1, text, cells: null }]).parts[0]?.kind;

test.each([
  // line, kind, why (common practice)
  ["R4 470K, plate load, first audio", "resistor", "the audio stage is a place, not a taper"],
  ["R8 1 MEG, audio output grid", "resistor", "so is its output"],
  ["R9 Volume control, 1 MEG, audio taper", "potentiometer", "here audio is the taper"],
  ["R10 500K, audio", "potentiometer", "a taper by itself makes a control"],
  ["R1 5.6 ohms, wirewound, 5 watts, surge limiter", "resistor", "wire does not change with heat"],
  ["R8 Vol. cont. 500K, with switch", "potentiometer", "the short word for a control"],
  ["R20 A500K", "potentiometer", "a letter for the taper is written to the value"],
  ["R2 50 ohms cold, surge limiter", "thermistor", "a surge limiter that is hot and cold"],
])("%s is a %s: %s", (line, kind) => expect(kindOf(line)).toBe(kind));
