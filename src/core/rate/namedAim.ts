import { figures } from "../quantity/figures.js";
import type { Aim, Rejected } from "../ratings.js";
import { DIAL_LAMPS, type DialLamp } from "../rules/dialLamps.js";
import type { Need } from "./need.js";

/** A part that is bought by its name: fuse by amperes and speed, lamp by type number. */
export type NamedAim = {
  readonly aim: Aim;
  readonly rejected: readonly Rejected[];
  readonly because: readonly string[];
};

/** Amperes that fuses are made for, after IEC 60127 (R10 steps) and the older fractions of the trade (from memory). */
const FUSE_AMPS = [
  0.1, 0.125, 0.15, 0.16, 0.2, 0.25, 0.3, 0.315, 0.375, 0.4, 0.5, 0.63, 0.75, 0.8, 1, 1.25, 1.5, 1.6, 2, 2.5, 3, 3.15,
  4, 5, 6.3, 7.5, 8, 10, 15, 20,
];

/** What a fuse's line says: amperes, and slow or fast where it says so. */
export type FuseSays = { readonly amps: number | null; readonly speed: "slow" | "fast" | null };

/** Amperes and speed of a fuse from its line. @example fuseSays("F1 1.6A slow 125V") // { amps: 1.6, speed: "slow" } */
export function fuseSays(printed: string): FuseSays {
  const match = /(?<![A-Za-z\d.])(\d+\s+)?(\d*\.?\d+)(?:\/(\d+))?\s*(ma|milliamp|a|amp)/i.exec(printed);
  const slow = /slow|lag|delay|\bT\s?\d|\bslo/i.test(printed);
  const fast = /fast|quick|\bF\s?\d+(\.\d+)?\s*m?A/i.test(printed);
  if (!match) return { amps: null, speed: slow ? "slow" : fast ? "fast" : null };
  const number = Number(match[1] ?? 0) * (match[3] ? 1 : 0) + Number(match[2]) / Number(match[3] ?? 1);
  const amps = /^m/i.test(match[4]!) ? number / 1000 : number;
  return { amps, speed: slow ? "slow" : fast ? "fast" : null };
}

/** The fuse as it was: same amperes, same speed, volts for today's line. */
export function fuseAim(need: Need): NamedAim | null {
  const { amps, speed } = fuseSays(need.part.printed);
  if (amps === null) return null;
  const volts = need.volts.want;
  const piece = { value: amps, tolerance: null, watts: null, volts, technology: "same" };
  const named = [`${figures(amps)} A`, speed ?? ""].join(" ").trim();
  const next = FUSE_AMPS.find((each) => each > amps * 1.001);
  const other = speed === "slow" ? "fast" : speed === "fast" ? "slow" : null;
  const rejected = [
    ...(next
      ? [
          {
            what: `${next} A ${speed ?? ""}`.trim(),
            why: "a higher current no longer protects what this one protected",
          },
        ]
      : []),
    ...(other
      ? [{ what: `${figures(amps)} A ${other}`, why: other === "fast" ? "it opens at switch-on" : "it opens too late" }]
      : []),
    { what: "wire or foil", why: "it never opens" },
  ];
  const because = speed === null ? ["the list does not say slow or fast: see the old one or the holder's label"] : [];
  return { aim: { pieces: [piece], text: `${named}, ${volts} V` }, rejected, because };
}

/** The lamps that a line can mean: the one of its type number, else those of its amperes and its bead's colour. */
function lampsMeant(printed: string): readonly DialLamp[] {
  const numbers = [...printed.matchAll(/(?<![.\d])(\d{2,3})\b/g)].map(([, number]) => Number(number));
  const typed = DIAL_LAMPS.find(({ type }) => numbers.includes(type));
  if (typed) return [typed];
  const { amps } = fuseSays(printed);
  const alike = DIAL_LAMPS.filter((lamp) => lamp.amps === amps);
  const beaded = alike.filter(({ bead }) => printed.toLowerCase().includes(bead));
  return beaded.length > 0 ? beaded : alike;
}

/**
 * The lamp as it was, by its type number or by its amperes; null where the line tells none that the table knows, or where
 * its amperes leave several volts.
 */
export function lampAim(need: Need): NamedAim | null {
  const lamps = lampsMeant(need.part.printed);
  const [lamp] = lamps;
  if (!lamp || lamps.some(({ volts }) => volts !== lamp.volts)) return null;
  const types = lamps.map(({ type, base }) => `${type} (${base})`).join(" or ");
  const rejected = DIAL_LAMPS.filter((other) => other.volts === lamp.volts && !lamps.includes(other)).map((other) => ({
    what: `type ${other.type}`,
    why:
      other.amps === lamp.amps
        ? `a ${other.base} base does not go into its socket`
        : `${other.amps} A: another current in a string or a tap`,
  }));
  const piece = { value: null, tolerance: null, watts: null, volts: null, technology: "same" };
  const text =
    lamps.length === 1
      ? `type ${lamp.type}: ${lamp.volts} V ${lamp.amps} A, ${lamp.base}, ${lamp.bead} bead`
      : `type ${types}: ${lamp.volts} V ${lamp.amps} A, ${lamp.bead} bead`;
  const because = lamps.length === 1 ? [] : ["the base of its socket tells which"];
  return { aim: { pieces: [piece], text }, rejected, because };
}
