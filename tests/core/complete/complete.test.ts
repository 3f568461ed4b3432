import { describe, expect, test } from "vitest";
import { complete, DEFAULTS_IN_FORCE, type Said } from "../../../src/core/index.js";
import { listed } from "../listed.js";

const whose = (said: Said = {}) => ({ id: "HL-1", document: "factory", inForce: DEFAULTS_IN_FORCE, era: 1948, said });

describe("what a list leaves unsaid", () => {
  test("a bare 470K is half a watt, 20 % and composition, each from its rule: common practice", () => {
    const part = complete(listed({ printed: "R7 470K", value: 470_000 }), whose());
    expect(part.watts).toEqual({ value: 0.5, from: "default", at: "type carbon_comp" });
    expect(part.tolerance).toEqual({ value: { minus: 0.2, plus: 0.2 }, from: "default", at: "type carbon_comp" });
    expect(part.className).toMatchObject({ value: "carbon_comp", sure: "likely" });
  });

  test("what is printed stands, whatever the rule would say", () => {
    const part = complete(listed({ value: 470_000, watts: 2, tolerance: { minus: 0.1, plus: 0.1 } }), whose());
    expect(part.watts).toMatchObject({ value: 2, from: "line", at: "line 1" });
    expect(part.tolerance).toMatchObject({ value: { minus: 0.1, plus: 0.1 }, from: "line" });
  });

  test("a note of the document is named as the source of what it states", () => {
    const part = complete(listed({ value: 470_000, watts: 1, from: { watts: { by: "note", at: "note 2" } } }), whose());
    expect(part.watts).toEqual({ value: 1, from: "note", at: "note 2" });
  });

  test("what the user says outranks line, note and rule", () => {
    const part = complete(
      listed({ value: 5e-8, kind: "capacitor", volts: 400 }),
      whose({ volts: 600, className: "paper_moulded", role: "coupling_grid" }),
    );
    expect(part.volts).toMatchObject({ value: 600, from: "user" });
    expect(part.className).toEqual({ value: "paper_moulded", from: "user", at: "you" });
    expect(part.role).toEqual({ value: "coupling_grid", from: "user", at: "you" });
    expect(part.tolerance).toMatchObject({ value: { minus: 0.1, plus: 0.1 }, at: "type paper_moulded" });
  });

  test("an electrolytic without a tolerance in its row takes that of its volts (from memory of old practice)", () => {
    const can = complete(
      listed({ kind: "capacitor", value: 1e-5, volts: 25, use: "cathode bypass" }),
      whose({ className: "elec_bias" }),
    );
    expect(can.tolerance?.value).toEqual({ minus: 0.1, plus: 2.5 });
  });

  test("a use that nobody states stays open", () => {
    expect(complete(listed({ value: 1000 }), whose()).role).toBeNull();
  });

  test("a guess is marked as one and rests on a default, not on the line", () => {
    const { className } = complete(listed({ kind: "capacitor", value: 2.5e-10 }), { ...whose(), era: null });
    expect(className).toMatchObject({ value: "mica_foil", from: "default", sure: "a guess" });
  });
});
