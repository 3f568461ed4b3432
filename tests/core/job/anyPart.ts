import fc from "fast-check";
import {
  DEFAULTS_IN_FORCE,
  type ListedPart,
  type Part,
  type Rule,
  type RulesInForce,
  type Settings,
} from "../../../src/core/index.js";
import { completedUnder } from "../rate/partOf.js";

const idsOf = (scope: Rule["scope"]) =>
  DEFAULTS_IN_FORCE.rules.filter((rule) => rule.scope === scope).map(({ id }) => id);

/** The 49 types and the 30 uses. */
export const TYPES = idsOf("class");
export const USES = idsOf("role");

/** The default rows with settings changed. */
export const underSettings = (settings: Settings): RulesInForce => ({
  ...DEFAULTS_IN_FORCE,
  settings: { ...DEFAULTS_IN_FORCE.settings, ...settings },
});

/** A part of any of the 49 types in any of the 30 uses or none, with figures as lists print them. */
export type Bought = { readonly type: string; readonly use: string | null; readonly stated: Partial<ListedPart> };
/** The kind of a type's row. */
export const kindOf = (type: string) => DEFAULTS_IN_FORCE.rules.find(({ id }) => id === type)?.kind ?? null;
/** What no list prints an ohm or a farad of. */
const WITHOUT_VALUE: readonly (string | null)[] = ["fuse", "lamp", "rectifier", "tube", "switch", "other", null];
/** True for a type of which a list prints ohms, farads or henries. */
export const hasValue = (type: string) => !WITHOUT_VALUE.includes(kindOf(type));
/** Values as lists print them, in farads and in ohms. */
export const FIGURES = {
  capacitor: [1e-11, 2.5e-10, 5e-9, 5e-8, 1e-6, 2e-5],
  other: [4.7, 250, 1e3, 47e3, 470e3, 1e7],
};

/** Any part: of any type, in any use or none. */
export const anyPart: fc.Arbitrary<Bought> = fc
  .record({
    type: fc.constantFrom(...TYPES),
    use: fc.option(fc.constantFrom(...USES)),
    size: fc.nat(5),
    volts: fc.constantFrom(null, 25, 150, 350, 400, 450, 600),
    watts: fc.constantFrom(null, 0.5, 1, 10),
  })
  .map(({ type, use, size, volts, watts }) => {
    const figures = FIGURES[kindOf(type) === "capacitor" ? "capacitor" : "other"];
    return { type, use, stated: { value: figures[size]!, volts, watts } };
  });

/** The part completed under rules. */
export const partUnder = (inForce: RulesInForce, { type, use, stated }: Bought): Part =>
  completedUnder(inForce, type, use, stated);

/** A part of every type and of every use: what laws over all rows are held against. */
export const ofEveryRow = fc.constantFrom<Pick<Bought, "type" | "use">>(
  ...TYPES.map((type) => ({ type, use: null })),
  ...TYPES.flatMap((type) => USES.map((use) => ({ type, use }))),
);
