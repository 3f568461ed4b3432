import type { Rule } from "../rule.js";

/** The name of a type or use on the screen, from its rule; an id that no rule has shows as it is. */
export function labelOf(rules: readonly Rule[], scope: Rule["scope"], id: string): string {
  return rules.find((rule) => rule.scope === scope && rule.id === id)?.label ?? id;
}

/** The rule's id that a cell names, by label or by id; null where no rule is called so. */
export function idOfLabel(rules: readonly Rule[], scope: Rule["scope"], text: string | null): string | null {
  if (text === null) return null;
  let names = namesOf.get(rules);
  if (!names) {
    names = namesIn(rules);
    namesOf.set(rules, names);
  }
  return names.get(`${scope} ${text.trim().toLowerCase()}`) ?? null;
}

/** The names of a set of rules: a column of cells asks for one after the other. */
const namesOf = new WeakMap<readonly Rule[], ReadonlyMap<string, string>>();

/** Every label and every id with the id it stands for; a label outranks an id, the first of two equal ones the second. */
function namesIn(rules: readonly Rule[]): ReadonlyMap<string, string> {
  const names = new Map<string, string>();
  for (const name of ["id", "label"] as const) {
    for (const rule of [...rules].reverse()) names.set(`${rule.scope} ${rule[name].toLowerCase()}`, rule.id);
  }
  return names;
}

const ROW_NAME = /(?<=^|, )(type|use) (\w+)/;

/**
 * Where a fact or an answer is from, with a rule's row by its label instead of its id.
 *
 * @example fromInWords(rules, "type paper_wax") // "type Wax paper tubular"
 */
export function fromInWords(rules: readonly Rule[], from: string): string {
  return from.replace(ROW_NAME, (_, scope: string, id: string) => {
    return `${scope} ${labelOf(rules, scope === "type" ? "class" : "role", id)}`;
  });
}
