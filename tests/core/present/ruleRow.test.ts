import { describe, expect, test } from "vitest";
import {
  DEFAULTS_IN_FORCE,
  defaultRules,
  defaultSettingRows,
  emptyRow,
  PROJECTS_SHEET,
  RULES_SHEET,
  rowOfRule,
  rowsOf,
  ruleOfRow,
  rulesInForce,
  SETTINGS_SHEET,
  tableOf,
} from "../../../src/core/index.js";

const written = rowsOf(RULES_SHEET, tableOf(RULES_SHEET, defaultRules().map(rowOfRule)));
const settings = rowsOf(SETTINGS_SHEET, tableOf(SETTINGS_SHEET, defaultSettingRows()));

describe("rules as rows", () => {
  test.each(defaultRules().map((rule, index) => [`${rule.scope} ${rule.id}`, rule, written[index]!] as const))(
    "%s comes back as it went, so that every column of it can be edited",
    (_, rule, row) => expect(ruleOfRow(row)).toEqual(rule),
  );

  test("all rows and settings together are the defaults", () => {
    expect(rulesInForce(written, settings, null, DEFAULTS_IN_FORCE)).toEqual(DEFAULTS_IN_FORCE);
  });

  test("a row switched off decides nothing", () => {
    const off = written.map((row) => (row.id === "avc" ? { ...row, off: true } : row));
    expect(rulesInForce(off, settings, null, DEFAULTS_IN_FORCE).rules).toHaveLength(defaultRules().length - 1);
  });

  test("a set's own row says how far to go and what its line is", () => {
    const project = {
      ...emptyRow(PROJECTS_SHEET),
      howFar: "conservator" as const,
      voltsNow: 231,
      hertz: 50,
    };
    const { settings: own } = rulesInForce(written, settings, project, DEFAULTS_IN_FORCE);
    expect([own.policy, own.line_now_V, own.line_hz, own.film_floor_V]).toEqual(["conservator", 231, 50, 630]);
  });
});
