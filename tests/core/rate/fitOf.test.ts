import { describe, expect, test } from "vitest";
import { type FitAsked, fitOf, type Piece, usualBody } from "../../../src/core/index.js";

const piece = (more: Partial<Piece>): Piece => ({
  value: null,
  tolerance: null,
  watts: null,
  volts: null,
  technology: "same",
  ...more,
});
const FILM = piece({ value: 4.7e-8, volts: 630, technology: "polyester" });
const room = (length: number, diameter: number) => ({ lengthMetres: length / 1000, diameterMetres: diameter / 1000 });

describe("whether a new body goes where the old one was", () => {
  // Usual body sizes, from memory: 0.047 µF 630 V film is 19 by 8 mm, 1 W film 11 by 5 mm, old wax paper 38 by 14 mm.
  test.each([
    ["a film in a wax paper's room", FILM, "capacitor", room(38, 14), "fits"],
    ["a body as long as the room leaves none for bends", FILM, "capacitor", room(19, 14), "tight"],
    ["a room that is too thin", FILM, "capacitor", room(38, 6), "tight"],
    ["a room that nobody measured", FILM, "capacitor", null, "unknown"],
    [
      "a technology whose size nobody knows",
      piece({ value: 1, technology: "thermistor" }),
      "thermistor",
      room(38, 14),
      "unknown",
    ],
    [
      "1 W of film in the room of 1/2 W of composition",
      piece({ watts: 1, technology: "metal_film" }),
      "resistor",
      room(9.5, 3.6),
      "tight",
    ],
  ] as const)("%s", (_why, what, kind, where, fit) => {
    expect(fitOf(what, kind, { room: where }).fit).toBe(fit);
  });

  const WATT = piece({ watts: 1, technology: "metal_film" });
  const says = (asked: FitAsked, what = WATT) => fitOf(what, "resistor", asked);

  test("thin leads are told: sleeve them and anchor both ends", () => {
    expect(says({ room: room(30, 12) }).because).toMatch(/leads 0.6 mm.*sleeve/);
  });

  // 1 W of film is 11 by 5 mm on leads of 0.6 mm, 1 W of composition 14.3 by 5.7 mm on leads of 0.92 mm (see the table of bodies).
  const OLD = usualBody("carbon_comp", { kind: "resistor", value: 1e5, watts: 1, volts: null });

  test("where nobody measured, a body no larger than the old one fits, and both are named", () => {
    expect(says({ room: null, old: OLD })).toMatchObject({ fit: "fits" });
    expect(says({ room: null, old: OLD }).because).toMatch(
      /11 mm by 5 mm, leads 0.6 mm \(the old one 14.3 mm by 5.7 mm, leads 0.9 mm\)/,
    );
    expect(says({ room: null, old: OLD }, piece({ watts: 5, technology: "wirewound" })).fit).toBe("unknown");
  });

  test.each([
    [16, "tight", "11 mm and two bends want 17 mm"],
    [18, "unknown", "the tags are far enough apart, its room is not known"],
    [70, "unknown", "leads of 25 mm reach over 61 mm"],
  ])("tags %d mm apart: %s, for %s", (span, fit, _why) => {
    const { fit: found, because } = says({
      room: { lengthMetres: null, diameterMetres: null, spanMetres: span / 1000 },
    });
    expect(found).toBe(fit);
    expect(/do not reach/.test(because)).toBe(span > 61);
  });

  test("a watt and more is stood off: 5 mm of air above a body of 5 mm", () => {
    expect(says({ room: room(30, 9) }).fit).toBe("tight");
    expect(says({ room: room(30, 10) })).toMatchObject({ fit: "fits" });
    expect(says({ room: room(30, 10) }).because).toMatch(/stand it 5 mm off/);
  });

  test("in the old shell there is neither bend nor stand-off", () => {
    expect(says({ room: room(11, 5), isShell: true }).fit).toBe("fits");
    expect(says({ room: null, isShell: true, old: OLD }).fit).toBe("unknown");
  });
});
