import type { RuleFor } from "../../core/index.js";
import type { Given } from "./given.js";

/** How a case words the ways a value is chosen. */
const MODES: readonly (readonly [RegExp, RuleFor["valueMode"]])[] = [
  [/never.?below|not.?below/, "not_below"],
  [/never.?above|not.?above/, "not_above"],
  [/compose|made.?up|make.?up/, "compose"],
  [/exact/, "exact"],
  [/nearest/, "nearest"],
];

/** The columns of the rule that a case changes: how the value is chosen, from which series, strict or nominal. */
export function ruledByCase({ rest }: Given): Partial<RuleFor> {
  const said = (...keys: readonly string[]) =>
    keys.map((key) => rest[key]).find((cell): cell is string => typeof cell === "string") ?? "";
  const mode = MODES.find(([words]) =>
    words.test(said("valuePolicy", "valueMode", "value_policy", "mode").toLowerCase()),
  );
  const series = /E(?:6|12|24|96|192)/i.exec(said("series", "valueSeries"))?.[0].toUpperCase();
  const gate = /strict|contain/i.test(said("gate", "containment")) || rest.strict === true ? "contained" : null;
  return {
    ...(mode ? { valueMode: mode[1] } : {}),
    ...(series ? { series } : {}),
    ...(gate ? { gate } : {}),
  };
}
