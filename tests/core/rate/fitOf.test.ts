import { describe, expect, test } from "vitest";
import { fitOf, type Piece } from "../../../src/core/index.js";

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
    expect(fitOf(what, kind, where).fit).toBe(fit);
  });

  test("thin leads are told: sleeve them and anchor both ends", () => {
    expect(fitOf(piece({ watts: 1, technology: "metal_film" }), "resistor", room(30, 10)).because).toMatch(/sleeve/);
  });
});
