/** TABLE: by what the use of a part is recognised, from the words of a list's function column or of the line. */
import type { Clue } from "./recognised.js";

const R = ["resistor"] as const;
const C = ["capacitor"] as const;
const RC = ["resistor", "capacitor"] as const;

const said = "the list says so";

/**
 * Uses, most telling words first. Source: common practice.
 *
 * A "line bypass" or "line filter" may stand across the line or from line to chassis: it is taken for the second, since
 * a class Y part may stand in an X place and never the other way round (IEC 60384-14 practice).
 */
export const ROLE_CLUES: readonly Clue[] = [
  {
    id: "line_to_chassis",
    kinds: C,
    words: /(line|mains|a\.?c\.?|power).{0,8} to (chassis|ground|gnd|frame)|(chassis|ground) to (line|mains)/,
    sure: "sure",
    why: said,
  },
  {
    id: "across_line",
    kinds: C,
    words: /across.{0,10}(line|mains|switch|a\.?c\.?\b|primary)/,
    sure: "sure",
    why: said,
  },
  {
    id: "float_ground",
    kinds: C,
    words: /b ?(-|minus).{0,12}(chassis|ground|frame)|float.{0,10}ground|common neg.{0,12}chassis/,
    sure: "sure",
    why: said,
  },
  {
    id: "antenna_isolation",
    kinds: C,
    words: /(ant|antenna|aerial|ground|phono).{0,12}(isolat|block|terminal)|isolat.{0,12}(ant|aerial|ground|phono)/,
    sure: "likely",
    why: said,
  },
  {
    id: "line_to_chassis",
    kinds: C,
    words: /(line|mains) (by.?pass|filter|noise)/,
    sure: "a guess",
    why: "a line bypass: across the line or to chassis, taken for the stricter",
  },
  { id: "buffer", kinds: C, words: /buffer|vibrator/, sure: "sure", why: said },
  { id: "boost", kinds: RC, words: /\bboost|yoke/, sure: "sure", why: said },
  { id: "focus_hv", kinds: R, words: /focus|\beht\b|high.?voltage|2nd anode|second anode/, sure: "likely", why: said },
  { id: "feedback", kinds: RC, words: /feed.?back|inverse/, sure: "likely", why: said },
  {
    id: "bias_supply",
    kinds: RC,
    words: /bias (supply|filter|feed)|fixed bias|\bc ?- ?(supply|filter)/,
    sure: "likely",
    why: said,
  },
  {
    id: "first_filter",
    kinds: C,
    words: /(first|1st|input).{0,6}filter|filter.{0,4}(input|first)|reservoir/,
    sure: "sure",
    why: said,
  },
  { id: "later_filter", kinds: C, words: /(second|2nd|third|3rd|later|output).{0,6}filter/, sure: "sure", why: said },
  {
    id: "screen_bypass",
    kinds: C,
    words: /screen|plate (supply|by.?pass)|b ?\+ by.?pass|decoupl/,
    sure: "likely",
    why: said,
  },
  { id: "screen_drop", kinds: R, words: /screen/, sure: "likely", why: said },
  { id: "grid_stop", kinds: R, words: /stopper|parasitic|suppress|grid stop/, sure: "likely", why: said },
  { id: "cathode_bypass", kinds: C, words: /cath(ode|\.)?/, sure: "likely", why: said },
  { id: "avc", kinds: RC, words: /\ba\.?[vg]\.?c\b/, sure: "sure", why: said },
  { id: "tone", kinds: RC, words: /\btone/, sure: "likely", why: said },
  { id: "oscillator", kinds: C, words: /\bosc|padder/, sure: "likely", why: said },
  { id: "timing", kinds: RC, words: /sweep|timing|time.?base|multivib|saw.?tooth|\bhold\b/, sure: "likely", why: said },
  { id: "pulse", kinds: RC, words: /snubber|pulse|(horiz|vert)\w*.{0,3} output|damp/, sure: "likely", why: said },
  {
    id: "output_plate",
    kinds: C,
    words: /output.{0,10}plate|plate.{0,10}output|plate to (b ?\+|ground)|output trans/,
    sure: "likely",
    why: said,
  },
  { id: "meter", kinds: R, words: /meter|multiplier|\bshunt\b|attenuat/, sure: "likely", why: said },
  {
    id: "coupling_grid",
    kinds: C,
    words: /(audio|plate|grid|a\.?f\.?|interstage).{0,10}coupl|plate to grid|^coupl|blocking/,
    sure: "likely",
    why: said,
  },
  {
    id: "tuned",
    kinds: C,
    words: /\btuned|\btank|\btrap|resonat|\bi\.f\.|\bif (can|trap|trans|coil|stage)/,
    sure: "likely",
    why: said,
  },
  { id: "grid_leak", kinds: R, words: /grid/, sure: "likely", why: said },
  {
    id: "heater_drop",
    kinds: R,
    words: /(heater|filament).{0,10}(drop|series|string|ballast)/,
    sure: "sure",
    why: said,
  },
  { id: "b_plus_drop", kinds: R, words: /surge|b ?\+ ?drop|dropping/, sure: "likely", why: said },
  { id: "bleeder", kinds: R, words: /bleeder|voltage divider/, sure: "sure", why: said },
  { id: "plate_load", kinds: R, words: /plate|anode/, sure: "likely", why: said },
];
