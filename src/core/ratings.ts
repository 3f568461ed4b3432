import type { Kind, Span, Tolerance } from "./part.js";

/**
 * One new part, or one piece of a made-up value: base units; `technology` is an id of the technology table (`metal_film`).
 *
 * `kind` stands where the piece is of another kind than the part it helps to replace (balancing and series resistors).
 */
export type Piece = {
  readonly kind?: Kind;
  readonly value: number | null;
  readonly tolerance: Tolerance | null;
  readonly watts: number | null;
  readonly volts: number | null;
  readonly technology: string;
};

/**
 * What to fit: one piece, or several that make one value up.
 *
 * `text` reads back: "470 k", "1.6 M + 1.6 M" (in series), "220 p || 30 p" (in parallel).
 */
export type Aim = { readonly pieces: readonly Piece[]; readonly text: string };

/** Whether a new body goes into its room, and why in words. */
export type FitSaid = { readonly fit: "fits" | "tight" | "unknown"; readonly because: string };

/** Something weighed and turned down, with the reason. */
export type Rejected = { readonly what: string; readonly why: string };

/**
 * The limits that a replacement has to meet, and the standard part aimed at.
 *
 * `window` is what the new nominal value may be, `old` what the old part's tolerance spanned, `range` what that of the aim
 * spans; `gate` says which of the
 * two an offer is held to. `leastWatts`, `leastVolts` (a resistor's body limit, a capacitor's working volts) are what
 * must be met. `technologies` are ids in order of preference; `safety` names the class a line place demands. `choices`
 * are answers among which the user has to choose before there is an aim; `decides` is the limit that decided the aim, or what has to be known before there is one, in a
 * few words; `room` is what there is, `spanMetres` from tag to tag; `fit` says how the usual body of the aim goes into it;
 * `figures` what was worked out on the way (`lostWatts`, `leakAmps`, `warmUpVolts`), in base units.
 */
export type Ratings = {
  readonly kind: Kind;
  readonly wanted: number | null;
  readonly window: Span | null;
  readonly old: Span | null;
  readonly range?: Span | null;
  readonly gate: "contained" | "nominal" | "none";
  readonly leastWatts: number | null;
  readonly wantWatts: number | null;
  readonly mostWatts: number | null;
  readonly leastVolts: number | null;
  readonly wantVolts: number | null;
  readonly voltsKind: "dc" | "ac";
  readonly tolerance: Tolerance | null;
  readonly technologies: readonly string[];
  readonly safety: "X" | "Y" | null;
  readonly temperatureCoefficient: string | null;
  readonly taper: string | null;
  readonly room: {
    readonly lengthMetres: number | null;
    readonly diameterMetres: number | null;
    readonly spanMetres?: number | null;
  } | null;
  readonly aim: Aim | null;
  readonly rejected: readonly Rejected[];
  readonly because: readonly string[];
  readonly decides?: string | null;
  readonly fit?: FitSaid | null;
  readonly choices?: readonly string[];
  readonly figures?: Readonly<Record<string, number>>;
};
