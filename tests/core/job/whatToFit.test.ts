import { describe, expect, test } from "vitest";
import {
  chainOf,
  complete,
  DEFAULTS_IN_FORCE,
  fitRow,
  newText,
  oneLine,
  type Part,
  questionOfUse,
  type RulesInForce,
  stagesOfPart,
  whatToFit,
} from "../../../src/core/index.js";
import { listed } from "../listed.js";

const ask = (listed: string | number, more: { type?: string; usedAs?: string; volts?: number } = {}) =>
  whatToFit({ listed, ...more, inForce: DEFAULTS_IN_FORCE });
const row = (...asked: Parameters<typeof ask>) => fitRow(ask(...asked)[0]!, true);

describe("what to fit for one line", () => {
  // Common practice; the explanation of each stands in the rules.
  test.each<[string, string | number, Parameters<typeof ask>[1], unknown[]]>([
    [
      "a line of a list",
      "R7 470K 1/2W",
      { usedAs: "plate load", volts: 250 },
      ["test", "470 k", "±5 %", 1, 350, "Metal film"],
    ],
    ["a line without a name", ".05 mfd 400 V", {}, ["replace", "0.047 µF", "±10 %", "", 630, "Polyester film"]],
    [
      "a fuse without a name",
      "fuse 1.6 A slow",
      {},
      ["test", "1.6 A slow, 250 V", "", "", 250, "Same type, used or old stock"],
    ],
    ["a bare value", "470K", {}, ["test", "470 k", "±5 %", 1, 350, "Metal film"]],
    ["a bare number below 0.1 is farads", 4.7e-8, {}, ["replace", "0.047 µF", "±10 %", "", 630, "Polyester film"]],
    [
      "a type by its label",
      "C1 .1 400V",
      { type: "Moulded paper" },
      ["replace", "0.1 µF", "±10 %", "", 630, "Polyester film"],
    ],
    [
      "a use in words",
      "C17 .01 400V",
      { usedAs: "line to chassis" },
      ["replace", "0.01 µF", "±20 %", "", 250, "Safety capacitor class Y (Y1/Y2)"],
    ],
    [
      "no answer to compute",
      "C4 .2 400V",
      { type: "paper_wax", usedAs: "float_ground" },
      ["replace", "choose", "", "", "", ""],
    ],
  ])("%s", (_why, line, more, cells) => {
    expect(row(line, more).slice(0, 6)).toEqual(cells);
  });

  test("a can gives an answer for each of its sections", () => {
    expect(ask("C30 20-20 mf 450V electrolytic").map(({ ratings }) => ratings.aim?.text)).toEqual(["22 µF", "22 µF"]);
  });

  // Common practice: what a list says of a part's place stands above every rule, and no value is made up.
  test.each<[string, string, string, RegExp]>([
    ["nothing is fitted", "R5 not fitted", "keep", /none is fitted/],
    ["inside another part", "R5 part of T3", "check", /part of T3/],
    ["inside another part, with a value of its own", "R5 470K part of T3", "test", /^composition drifts/],
    ["chosen when the set was tested", "R4 selected in test", "ask", /measure the old one/],
    [
      "chosen within limits: the old one is read against them",
      "R9 47-100 ohms selected in test",
      "test",
      /what the old one is marked, or reads lifted/,
    ],
    [
      "two values printed",
      "C7 .1 or .15 mfd 200 v",
      "replace",
      /nothing to aim at yet, because its value is known within limits/,
    ],
    ["a string whose volts decide", "R30 4.7 megohm 2W focus", "test", /because the volts across it are not known/],
    ["a value that nobody knows", "R6 carbon 1/2W", "ask", /value is not known/],
    ["an M that may mean either", "R7 2M", "ask", /what M means: 2M is 2000 ohms or 2 megohms/],
  ])("%s: nothing is aimed at that nobody knows", (_why, line, action, reason) => {
    const [done, value, , , , , because] = row(line);
    expect(done).toBe(action);
    expect(because).toMatch(reason);
    if (!line.includes("470K")) expect(["", "choose"]).toContain(value);
  });

  test("a value that the user gives is worked with, wherever the part sits", () => {
    const part = { ...ask("R4 selected in test")[0]!.part, value: { value: 47e3, from: "user", at: "you" } as const };
    expect(stagesOfPart(part, DEFAULTS_IN_FORCE).ratings.aim?.text).toBe("47 k");
  });

  test.each([
    ["R1 47OK 1W", /hard to read: .*; taken for carbon composition resistor, likely; by/],
    ["C9 5", /unit taken for granted: .*; taken for moulded mica \(stacked foil\), a guess; by/],
  ])("what is unsure of %s is said in its reason", (line, said) => {
    expect(String(row(line)[6])).toMatch(said);
  });

  test("what the line says plainly, and a type that the user gives, are not called into doubt", () => {
    expect(row("C3 .05 mfd 400V moulded paper")[6]).not.toMatch(/taken for/);
    expect(row("R7 470K 1/2W", { type: "carbon_comp" })[6]).not.toMatch(/taken for/);
  });

  test("the reason says that the rules are the defaults", () => {
    expect(row("470K")[6]).toMatch(/by the default rules, replace the known bad$/);
  });

  test("what is neither a line nor a value, and a type or use that no rule has, are said", () => {
    expect(() => ask("?")).toThrow(/Can't read/);
    expect(() => ask("470K", { type: "papr" })).toThrow(/"papr" is not known/);
    expect(() => ask("470K", { usedAs: "nowhere" })).toThrow(/"nowhere" is not known/);
  });

  test("one line that a restorer would write", () => {
    expect(oneLine(ask("R7 470K 1/2W", { usedAs: "plate_load", volts: 250 })[0]!)).toBe(
      "R7 470 k 1/2 W carbon composition resistor, plate load: composition drifts upward with age and heat; about half that get tested are out of tolerance, test; if it goes: 470 k ±5 % 1 W metal film, 350 V body, because 250 V would be all of a 1/2 W body's limit",
    );
  });

  test("the chain names where each fact comes from", () => {
    const chain = chainOf(ask("R7 470K", {})[0]!);
    expect(chain).toContainEqual(["value", "470 k", "the list, line 1"]);
    expect(chain).toContainEqual(["watts", "0.5 W", "a default, type Carbon composition resistor"]);
  });
});

const whose = (id: string, inForce: RulesInForce = DEFAULTS_IN_FORCE) => ({ id, document: "factory", inForce });
const paper = complete(listed({ kind: "capacitor", value: 1e-8, volts: 400 }), whose("HL-1"));
const carbon = complete(listed({ value: 47e3 }), whose("HL-2"));
const lamp = complete(listed({ kind: "lamp", printed: "No. 47" }), whose("HL-3"));

describe("questions about use", () => {
  test("are asked where the answer would change, and say what it would change", () => {
    const question = questionOfUse(paper, DEFAULTS_IN_FORCE);
    const line = question?.choices.find(({ role }) => role === "line_to_chassis");
    expect(line?.comesTo).toMatch(/class Y/);
    expect(question?.choices.at(-1)).toMatchObject({ role: null, label: "don't know yet" });
  });

  test("are not asked where nothing would change, nor where the use is known", () => {
    expect(questionOfUse(lamp, DEFAULTS_IN_FORCE)).toBeNull();
    const known = { ...paper, role: { value: "avc", from: "user", at: "you" } as const };
    expect(questionOfUse(known, DEFAULTS_IN_FORCE)).toBeNull();
  });

  test("stand once for all uses that come to the same", () => {
    const outcomes =
      questionOfUse(paper, DEFAULTS_IN_FORCE)
        ?.choices.slice(0, -1)
        .map(({ comesTo }) => comesTo) ?? [];
    expect(new Set(outcomes).size).toBe(outcomes.length);
  });
});

describe("a rule edited", () => {
  const edited = (scope: "class" | "role", id: string, change: object): RulesInForce => ({
    ...DEFAULTS_IN_FORCE,
    rules: DEFAULTS_IN_FORCE.rules.map((rule) =>
      rule.scope === scope && rule.id === id ? { ...rule, ...change } : rule,
    ),
  });
  const answer = (part: Part, inForce: RulesInForce) => {
    const { decision, ratings } = stagesOfPart(part, inForce);
    return `${decision.action}: ${newText(ratings)}`;
  };
  const changed = (after: RulesInForce) =>
    [paper, carbon, lamp].filter((part) => answer(part, after) !== answer(part, DEFAULTS_IN_FORCE)).map(({ id }) => id);

  test("changes only parts of its type", () => {
    const after = edited("class", "paper_wax", { technologies: ["polypropylene"] });
    expect(changed(after)).toEqual(["HL-1"]);
    expect(answer(paper, after)).toBe("replace: 0.01 µF ±10 % polypropylene film, 630 V");
  });

  test("of a use that no part has changes nothing", () => {
    expect(
      changed(edited("role", "buffer", { action: { trade: "keep", conservator: "keep", overhaul: "keep" } })),
    ).toEqual([]);
  });

  test("a setting changes all that rest on it", () => {
    const settings = { ...DEFAULTS_IN_FORCE.settings, unknown_power_steps: 0 };
    expect(changed({ ...DEFAULTS_IN_FORCE, settings })).toEqual(["HL-2"]);
  });
});
