/** TABLE: cautions of the whole set, whatever its list holds. */

/** What a set is, as its card says: a television or picture tube, a live chassis. */
export type SetKind = "any" | "picture-tube" | "live-chassis" | "rectifier-to-silicon";

/** Cautions asked for the set (once a sitting, before the first reading, again after power or an hour's break) or on the part's card. */
export const SET_CAUTIONS: readonly {
  readonly when: SetKind;
  readonly cautions: readonly string[];
  readonly asked: "sitting" | "card";
}[] = [
  { when: "any", cautions: ["discharge", "mains"], asked: "sitting" },
  { when: "picture-tube", cautions: ["hv", "implosion", "xray"], asked: "sitting" },
  { when: "live-chassis", cautions: ["live_chassis"], asked: "sitting" },
  { when: "rectifier-to-silicon", cautions: ["xray"], asked: "card" },
];

/** The note that stands with every paper and on every page. */
export const STANDING_NOTE =
  "Figures here help you choose parts. They do not make a set safe or lawful. Follow local rules; leave line wiring to people licensed or trained for it; do not leave a restored set running unattended.";
