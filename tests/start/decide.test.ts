import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { DEFAULTS_IN_FORCE } from "../../src/core/index.js";
import type { Answer } from "../../src/start/cases/answer.js";
import { casesOf } from "../../src/start/cases/case.js";
import { decideCase } from "../../src/start/cases/decideCase.js";

const fixtures = casesOf(readFileSync(path.join(import.meta.dirname, "fixtures/cases.json"), "utf8"));
const answer = (id: string, from = fixtures): Answer =>
  decideCase(from.find((one) => one.id === id)!, DEFAULTS_IN_FORCE);
const valuesOf = ({ values }: Answer) => (values as { value: number | null }[]).map(({ value }) => value);

describe("the command decide", () => {
  // Common practice; figures worked by hand are in the reason.
  test.each<[string, string, Answer]>([
    ["E02", "low in place says nothing", { action: "lift", verdict: "says nothing", value: 100e3 }],
    [
      "E04",
      "150 M where the next grid asks for 235 M",
      { action: "replace", verdict: "OUT", value: 2.2e-8, volts: 630 },
    ],
    ["E10", "across the line: class X", { action: "replace", value: 1e-7, volts: 275, voltsKind: "ac" }],
    ["E10b", "near the original, class Y", { action: "replace", value: 4.7e-9, volts: 250, voltsKind: "ac" }],
    ["E12", "a rectifier tube stays", { action: "keep" }],
    ["E14", "a silver mica that crackles goes", { action: "replace", value: 1.1e-10, volts: 500 }],
    ["E16", "a coded ceramic that reads true stays", { action: "keep", value: 4.7e-11 }],
    ["E18", "one section of three leaks: a bathtub is one part", { action: "replace" }],
    ["E20", "7 W of wire becomes 10 W", { action: "replace", value: 2500, watts: 10 }],
    ["E22", "fusible: same ohms, same watts", { action: "replace", value: 7.5, watts: 5 }],
    ["E24", "a resistance cord goes, the school is the user's", { action: "replace", value: "ask" }],
    ["E24b", "123 V less 68.9 V of heaters at 0.3 A is 180 ohms", { action: "test", value: 180 }],
    ["E26", "a control is cleaned and tried first", { action: "test", value: 500e3 }],
    ["E28", "a lamp stays while it lights", { action: "keep" }],
    ["E30", "0.9 V forward is no germanium any more", { action: "replace" }],
    ["E32", "a bias filter: not below, 160 V", { action: "replace", value: 1e-5, volts: 160 }],
    ["E34", "a cathode bypass: not below, 50 V stock", { action: "replace", value: 1e-5, volts: 50 }],
    ["E36", "a stopper that drifted", { action: "replace", verdict: "OUT", value: 1000 }],
    ["E38", "an output plate kicks", { action: "replace", value: 4.7e-9, volts: 1000 }],
    ["E40", "boost 550 V and a 900 V pulse: 1,600 V", { action: "replace", value: 1e-7, volts: 1600 }],
    ["E41", "a shunt that reads true stays", { action: "keep", verdict: "IN" }],
    ["E42", "a reformed electrolytic that passes stays", { action: "keep", policy: "conservator" }],
    ["E43", "new old stock is held to its mark", { action: "replace", verdict: "OUT", value: 4700 }],
    ["E48", "nobody knows what it is", { action: "ask" }],
    ["E49", "4.7 ohms of wire of unknown use keeps its watts", { action: "test", value: 4.7, watts: 5 }],
  ])("%s: %s", (id, _why, expected) => {
    expect(answer(id)).toMatchObject(expected);
  });

  test("a can's sections are decided one by one: pairs for 520 V, a single part for the bypass", () => {
    const { values } = answer("E08") as { values: { of: string; value: number; volts: number }[] };
    const of = (name: string) => values.filter((piece) => piece.of === name);
    expect(of("section 1").map(({ value }) => value)).toEqual([68e-6, 68e-6, 470e3, 470e3]);
    expect(of("section 3")).toMatchObject([{ value: 22e-6, volts: 50 }]);
  });

  test("a section at the line is class Y whatever the block is", () => {
    const { values } = answer("E50") as { values: { technology: string }[] };
    expect(values.at(-1)?.technology).toBe("y_class");
  });

  test("what is turned down says why", () => {
    const said = (id: string) => (answer(id).rejected as { what: string }[]).map(({ what }) => what);
    expect(said("E30")).toContain("a silicon diode");
    expect(said("E22")).toContain("the same ohms at more watts");
    expect(said("E10b")).toContain("a part marked class X alone");
  });

  test("a file that holds no cases says what cases look like", () => {
    expect(() => casesOf('{"cases":[{"id":"A"}]}')).toThrow(/Cases look like/);
  });
});

const SHARED = path.resolve(import.meta.dirname, "../../../shared/trade/cases.json");
const present = existsSync(SHARED);
if (!present) console.log("Skipped: the worked cases beside the project are not here.");

describe.skipIf(!present)("the worked cases beside the project", () => {
  const cases = present ? casesOf(readFileSync(SHARED, "utf8")) : [];
  const shared = (id: string) => answer(id, cases);

  test.each<[string, Answer]>([
    ["K01", { action: "replace", value: 470e3, watts: 1, volts: 350 }],
    ["K03", { action: "replace", value: 220e3 }],
    ["K05", { action: "replace", value: 4.7e-8, volts: 630 }],
    ["K07", { action: "replace", value: 1.8e-5, volts: 450 }],
    ["K09", { action: "replace", value: 1e-8, volts: 250, voltsKind: "ac" }],
    ["K11", { action: "replace", watts: 5, volts: 1000 }],
    ["K13", { action: "keep", verdict: "IN" }],
    ["K15", { action: "replace", volts: 2000 }],
    ["K17", { action: "test" }],
    ["K21", { action: "replace", verdict: "says nothing", value: 1e-7, volts: 630 }],
    ["K23", { value: 2.2e-5, volts: 400 }],
    ["K25", { value: 250, watts: 2 }],
    ["K27", { action: "keep", verdict: "IN" }],
    ["K29", { byPolicy: { trade: "replace", conservator: "keep", overhaul: "replace" } }],
    ["K31", { value: "ask", technology: ["y_class"] }],
    ["K33", { action: "replace", value: 1.6, volts: 250 }],
    ["K35", { action: "replace", verdict: "OUT" }],
    ["K39", { value: 4.7e-8, volts: 630, quantity: 14, pickAlone: "B", pickIfOrdersExist: "A" }],
  ])("%s", (id, expected) => {
    expect(shared(id)).toMatchObject(expected);
  });

  test.each<[string, RegExp]>([
    ["K01", /250 V across it.*a body for 312.5 V/],
    ["K03", /parallel paths only lower it: a high reading convicts/],
    ["K05", /any leak kills AVC/],
    ["K07", /peak current of the rectifier/],
    ["K09", /a short makes the chassis live.*0.464 mA/],
    ["K11", /4.3 V to make up at 65 mA; peaks burn 1.15 W/],
    ["K13", /keeps its value; leave it unless it is proved bad/],
    ["K15", /tuned to the vibrator.*two make up 0.0074 µF/],
    ["K17", /each section carries its own current/],
    ["K19", /900 V across it.*3 equal ones in series/],
    ["K21", /says nothing.*replaced as "replace the known bad" has it/],
    ["K23", /the warm-up peak is 375 V/],
    ["K25", /it burns 0.506 W/],
    ["K27", /reads 58.8 k, \+18 %: good/],
    ["K29", /replaced as "replace the known bad" has it although it passes/],
    ["K31", /passes 9.27 mA/],
    ["K33", /same current and same speed.*250 V or more breaks the arc/],
    ["K35", /\+2.2 %: bad.*two make up 990 k/],
    ["K37", /nobody makes it; its pieces are ordinary parts/],
    ["K39", /wax paper leaks/],
  ])("%s says what decides it", (id, phrase) => {
    expect([shared(id).because].flat().join("; ")).toMatch(phrase);
  });

  test.each<[string, readonly (number | null)[]]>([
    ["K11", [null, 68]],
    ["K15", [4.7e-9, 2.7e-9]],
    ["K17", [5000, 1500, 250]],
    ["K19", [1.6e6, 1.6e6, 1.6e6]],
    ["K35", [681e3, 309e3]],
    ["K37", [249e3, 499e3, 4.7e-9, 2.4e-10]],
  ])("%s is split or made up", (id, values) => {
    expect(valuesOf(shared(id))).toEqual(values);
  });
});
