import type { Rule } from "../rule.js";

/** The name of a type or use on the screen, from its rule; an id that no rule has shows as it is. */
export function labelOf(rules: readonly Rule[], scope: Rule["scope"], id: string): string {
  return rules.find((rule) => rule.scope === scope && rule.id === id)?.label ?? id;
}

/** The rule's id that a cell names, by label or by id; null where no rule is called so. */
export function idOfLabel(rules: readonly Rule[], scope: Rule["scope"], text: string | null): string | null {
  if (text === null) return null;
  const wanted = text.trim().toLowerCase();
  const named = rules.filter((rule) => rule.scope === scope);
  const found = named.find((rule) => rule.label.toLowerCase() === wanted) ?? named.find((rule) => rule.id === wanted);
  return found?.id ?? null;
}
