import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, test } from "vitest";
import {
  BODY_VOLTS,
  CAUTIONS,
  DIAL_LAMPS,
  defaultRules,
  defaultSettings,
  electrolyticLeakAmps,
  IN_CIRCUIT_TRUTH,
  LADDERS,
  type Rule,
  SET_CAUTIONS,
  TECHNOLOGIES,
} from "../../../src/core/index.js";

const named = (values: readonly { readonly id: string }[]) => new Set(values.map(({ id }) => id));

describe("the default rows", () => {
  test("there are 49 types and 30 uses, each once", () => {
    const ids = defaultRules().map(({ scope, id }) => `${scope} ${id}`);
    expect(new Set(ids).size).toBe(79);
    expect(ids.filter((id) => id.startsWith("class")).length).toBe(49);
  });

  test.each(defaultRules().map((rule) => [rule.scope, rule.id, rule] as const))(
    "%s %s says why, cites a source, and names only what stands in the tables",
    (_scope, _id, rule) => {
      expect(rule.because.length).toBeGreaterThan(4);
      expect(rule.source).toMatch(/^(published|seen|common practice|from memory)/);
      expect(rule.cautions.filter((id) => !named(CAUTIONS).has(id))).toEqual([]);
      expect(rule.technologies.filter((id) => !named(TECHNOLOGIES).has(id))).toEqual([]);
      if (rule.ladder) expect(LADDERS).toHaveProperty(rule.ladder);
    },
  );

  test("every type has an action under every policy", () => {
    const silent = defaultRules().filter(
      (rule) => rule.scope === "class" && Object.values(rule.action).some((action) => action === null),
    );
    expect(silent).toEqual([]);
  });

  test("ladders rise", () => {
    for (const rungs of Object.values(LADDERS)) expect([...rungs].sort((a, b) => a - b)).toEqual(rungs);
  });

  test("cautions of the set are cautions that exist", () => {
    expect(SET_CAUTIONS.flatMap(({ cautions }) => cautions).filter((id) => !named(CAUTIONS).has(id))).toEqual([]);
  });

  test.each([
    // farads, volts, amperes, worked by hand from the formula of JAN-C-62: K x microfarads + 0.3 milliamperes
    [20e-6, 450, 1.1e-3],
    [8e-6, 350, 0.5e-3],
    [10e-6, 25, 0.4e-3],
  ])("an old electrolytic of %d farads at %d volts may leak %d amperes", (farads, volts, amps) => {
    expect(electrolyticLeakAmps({ farads, volts })).toBeCloseTo(amps, 9);
  });

  test("above 500 volts the leakage formula says nothing", () => {
    expect(electrolyticLeakAmps({ farads: 8e-6, volts: 600 })).toBeNull();
  });
});

const TRADE = path.resolve(import.meta.dirname, "../../../../shared/trade/rules.json");
const present = existsSync(TRADE);
if (!present) console.log("Skipped: the trade tables beside the project are not here, the rows are not compared.");

describe.skipIf(!present)("the default rows against the trade's tables", () => {
  const trade = present ? JSON.parse(readFileSync(TRADE, "utf8")) : null;
  const percent = (ratio: number | "marked" | null) =>
    typeof ratio === "number" ? Math.round(ratio * 1e6) / 1e4 : ratio;
  const flat = (rule: Rule) => ({
    scope: rule.scope,
    id: rule.id,
    label: rule.label,
    kind: rule.kind ?? "",
    trade: rule.action.trade,
    conservator: rule.action.conservator,
    overhaul: rule.action.overhaul,
    powerMode: rule.powerMode,
    ladder: rule.ladder,
    valueMode: rule.valueMode,
    lowPct: percent(rule.low),
    highPct: percent(rule.high),
    gate: rule.gate,
    series: rule.series,
    driftLimitPct: percent(rule.driftLimit),
    tech1to5: rule.technologies.join(" > "),
    leastVolts: rule.leastVolts,
    wantVolts: rule.wantVolts,
    unstatedLowPct: percent(rule.unstatedLow),
    unstatedHighPct: percent(rule.unstatedHigh),
    unstatedWatts: rule.unstatedWatts,
    unstatedVolts: rule.unstatedVolts,
    keepBecomesTest: rule.keepBecomesTest ? "yes" : null,
    cautions: rule.cautions.join(" "),
    because: rule.because,
  });
  const blank = (row: Record<string, unknown>) =>
    Object.fromEntries(Object.entries(row).map(([key, value]) => [key, value === "" ? null : value]));

  /** Columns in which ours say what the trade's longer texts say and their flat rows leave out. */
  const SAID_BY_US: Readonly<Record<string, Record<string, unknown>>> = {
    printed_rc: { wantVolts: "film_floor_V" },
    ceramic_disc: { wantVolts: 1000 },
    elec_bias: { wantVolts: 50 },
    tantalum: { leastVolts: "twice_working" },
    cathode_bypass: { wantVolts: 50 },
    across_line: { wantVolts: 275 },
    meter: { driftLimitPct: "marked" },
  };

  test.each(defaultRules().map((rule, i) => [rule.scope, rule.id, i] as const))(
    "%s %s is carried over",
    (_s, _i, index) => {
      const { source: _source, ...row } = trade.worksheetRows.rows[index];
      expect(blank(flat(defaultRules()[index]!))).toEqual({ ...blank(row), ...SAID_BY_US[row.id] });
    },
  );

  test("settings, ladders, body limits, cautions, lamps and what a reading in place proves are carried over", () => {
    expect(defaultSettings).toMatchObject(
      Object.fromEntries(trade.settings.map((row: { key: string; value: unknown }) => [row.key, row.value])),
    );
    expect(LADDERS).toEqual(trade.ladders);
    expect(CAUTIONS).toEqual(trade.cautions);
    expect(DIAL_LAMPS).toEqual(
      trade.dialLamps.rows.map((row: { volts: unknown }) => ({ ...row, volts: String(row.volts) })),
    );
    expect(IN_CIRCUIT_TRUTH).toEqual(trade.inCircuitTruth);
    for (const [technology, rows] of Object.entries<Record<string, number | string>>(trade.resistorVoltageLimit.volts))
      for (const [watts, volts] of Object.entries(rows))
        expect(BODY_VOLTS[technology]).toContainEqual([Number(watts), typeof volts === "number" ? volts : null]);
  });

  test("technologies are carried over", () => {
    const plain = TECHNOLOGIES.map(({ kind: _kind, tolerances: _tolerances, finest: _finest, made, ...row }) => ({
      ...row,
      made: made && (made.watts ? made : { min: made.min, max: made.max }),
    }));
    expect(plain).toEqual(trade.technologies);
  });
});
