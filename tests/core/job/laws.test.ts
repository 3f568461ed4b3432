import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  decide,
  type Evidence,
  IN_PLACE_QUANTITIES,
  PartsError,
  type Place,
  POLICIES,
  type Policy,
  type Reading,
  type RulesInForce,
  ruleFor,
  stagesOfPart,
  UNKNOWN_PLACE,
  VERDICT_RULES,
} from "../../../src/core/index.js";
import {
  anyPart,
  type Bought,
  FIGURES,
  hasValue,
  kindOf,
  ofEveryRow,
  partUnder,
  TYPES,
  underSettings,
} from "./anyPart.js";

describe("a lifted reading of just what is printed", () => {
  const QUANTITY = { capacitor: "capacitance", inductor: "inductance", transformer: "resistance" } as const;
  test.each([...TYPES.filter(hasValue), "pot_switch"])("never condemns a part of the type %s", (type) => {
    const property = fc.property(
      anyPart,
      fc.constantFrom(0, 0.01, 0.05, 0.3),
      fc.constantFrom(...VERDICT_RULES),
      fc.constantFrom(...POLICIES),
      fc.constantFrom(null, { minus: 0.01, plus: 0.01 }, { minus: 0.2, plus: 0.8 }),
      ({ use, stated }, accuracy, guard, policy, tolerance) => {
        const inForce = underSettings({ guard, policy });
        const kind = kindOf(type) === "switch" ? "potentiometer" : (kindOf(type) ?? "other");
        const part = partUnder(inForce, { type, use, stated: { ...stated, tolerance, kind } });
        const rule = ruleFor(inForce, type, use);
        const quantity = QUANTITY[part.kind as keyof typeof QUANTITY] ?? "resistance";
        const reading: Reading = { quantity, value: part.value!.value, inPlace: false, accuracy };
        const unread = decide(part, rule, inForce.settings);
        const read = decide(part, rule, inForce.settings, { readings: [reading] });
        expect(read.verdict).not.toBe("bad");
        if (unread.action !== "replace") expect(read.action).not.toBe("replace");
      },
    );
    fc.assert(property, { numRuns: 20 });
  });
});

describe("a stricter policy", () => {
  /** From the one that keeps the most to the one that keeps the least. */
  const STRICTER: readonly Policy[] = ["conservator", "trade", "overhaul"];
  const anyReading: fc.Arbitrary<Reading> = fc.record({
    quantity: fc.constantFrom(...IN_PLACE_QUANTITIES),
    value: fc.oneof(
      fc.constantFrom(null, 0, Number.POSITIVE_INFINITY),
      fc.double({ min: 1e-12, max: 1e10, noNaN: true }),
      fc.constantFrom(...FIGURES.capacitor, ...FIGURES.other),
    ),
    inPlace: fc.boolean(),
    accuracy: fc.constantFrom(0, 0.01, 0.05),
  });
  const anyEvidence: fc.Arbitrary<Evidence> = fc.record({
    readings: fc.array(anyReading, { maxLength: 2 }),
    findings: fc.array(fc.record({ text: fc.constant("looked at"), bad: fc.boolean() }), { maxLength: 1 }),
  });

  test("never keeps more, of any type in any use, read or not", () => {
    fc.assert(
      fc.property(anyPart, ofEveryRow, anyEvidence, ({ stated }, row, evidence) => {
        const keeps = STRICTER.map((policy) => {
          const inForce = underSettings({ policy });
          const part = partUnder(inForce, { ...row, stated });
          return decide(part, ruleFor(inForce, row.type, row.use), inForce.settings, evidence).action === "keep";
        });
        expect([...keeps].sort().reverse()).toEqual(keeps);
      }),
      { numRuns: 1000 },
    );
  });
});

describe("a higher line", () => {
  const volts = (value: number | null) => value ?? 0;
  /** The volts a part is rated for, a string's together; null where nothing that is made serves. */
  function voltsRated(inForce: RulesInForce, bought: Bought, place: Partial<Place>) {
    try {
      const evidence = { place: { ...UNKNOWN_PLACE, ...place } };
      const { ratings } = stagesOfPart(partUnder(inForce, bought), inForce, evidence);
      const own = ratings.aim?.pieces.filter(({ kind }) => kind === undefined);
      const inAll = own?.reduce((sum, piece) => sum + volts(piece.volts), 0) ?? null;
      return { least: volts(ratings.leastVolts), want: volts(ratings.wantVolts), inAll };
    } catch (error) {
      if (error instanceof PartsError) return null;
      throw error;
    }
  }

  const anyPlace = fc.record({
    windingVolts: fc.constantFrom(null, 6.3, 117, 350, 385),
    volts: fc.constantFrom(null, 90, 250, 400),
  });
  test("never lowers a rating in volts, of any type in any use", () => {
    const line = fc.double({ min: 90, max: 260, noNaN: true });
    const times = fc.double({ min: 1, max: 1.5, noNaN: true });
    fc.assert(
      fc.property(anyPart, ofEveryRow, anyPlace, line, times, ({ stated }, row, place, line_now_V, more) => {
        const at = (now: number) => voltsRated(underSettings({ line_now_V: now }), { ...row, stated }, place);
        const [before, after] = [at(line_now_V), at(line_now_V * more)];
        if (before === null || after === null) return;
        expect(after.least).toBeGreaterThanOrEqual(before.least);
        expect(after.want).toBeGreaterThanOrEqual(before.want);
        if (before.inAll !== null && after.inAll !== null) expect(after.inAll).toBeGreaterThanOrEqual(before.inAll);
      }),
      { numRuns: 1000 },
    );
  });
});
