/** TABLE: what a part is made of and how its body is, in English, French, Dutch and German; folded text. */

import type { Kind } from "../../part.js";

const RESISTIVE: readonly Kind[] = ["resistor", "potentiometer", "network"];
const CAPACITIVE: readonly Kind[] = ["capacitor"];
const RECTIFYING: readonly Kind[] = ["rectifier"];
const WIRED: readonly Kind[] = ["resistor", "capacitor", "rectifier", "thermistor", "network"];

/** A pattern, the words of our vocabulary it says, and the kinds of which it may say them. */
export type TechnologyRow = readonly [words: readonly string[], pattern: RegExp, of: readonly Kind[]];

/** Rows in order; one whose words stand in `INSTEAD_OF` of another that fits gives way to it. */
export const TECHNOLOGY_WORDS: readonly TechnologyRow[] = [
  [
    ["metal-oxide"],
    /metal[- ]?oxide?|oxyde? (de )?metal|metaal ?oxide|metall? ?oxid|metox\b|\bmox\b|\bmof\b|tin oxide|zinnoxid/,
    RESISTIVE,
  ],
  [
    ["metal-film"],
    /metal[- ]?film|couche (de )?metal|film metal|metaal ?film|metall ?(schicht|film)|metallschicht|metal glaze|(?<!\d ?)\bmfr?\b|\bfilm metallique/,
    RESISTIVE,
  ],
  [
    ["carbon-film"],
    /carbon[- ]?film|couche (de )?carbone?|film (de )?carbone|kool ?film|kohle ?(schicht|film)|\bcarb\.? film|cracked carbon|\bcfr?\b/,
    RESISTIVE,
  ],
  [
    ["composition"],
    /comp(osition|\.)|\bcarbon ?comp\b|\bcc\b|agglomer|kool ?massa|kohle ?masse|masse ?widerst|massa ?weerst|carbone aggl|\bcomp\b/,
    RESISTIVE,
  ],
  [
    ["wirewound"],
    /wire ?-?wound|\bww\b|\bw\.w\.|bobinee?s?\b|draad ?gewonden|draad ?weerst|draht ?(gewick|wid|pot)|\bdraht\b|\bdraad\b|gewickelt|gewonden|\bdraadpot|drahtpot/,
    RESISTIVE,
  ],
  [["fusible"], /fusib|sicherungswid|widerstand[,;]? sicherung|zekeringweer|smeltweer/, RESISTIVE],
  [
    ["flameproof"],
    /flame ?-?(proof|ret)|non ?-?(in)?flam|inin?flam|vlam(dov|vertr|werend)|flamm ?(hem|widr|fest)|unbrennbar|onbrandbaar|ignifug|incombust/,
    RESISTIVE,
  ],
  [
    ["silver-mica"],
    /silver(ed)?[- ]?mica|mica (argente|silver)|zilver ?mica|silber ?(glimmer|mica)|silberglimmer|glimmer.{0,4}silber|(glimmer|mica)\b.*\b(versilbert|verzilverd)|(versilbert|verzilverd)e?r?\b.*(glimmer|mica)|\bdipped mica/,
    CAPACITIVE,
  ],
  [["mica"], /mica|glimmer/, CAPACITIVE],
  [["paper"], /\bpaper|papier/, CAPACITIVE],
  [["oil"], /\boil|huile|\bolie|\bol(papier|kond|impr|getr)|\bol\b/, CAPACITIVE],
  [["film", "polypropylene"], /polyprop|\bm?[kf]kp\d*\b|\bmkp|\bfkp|\bkp\b|\bpp\b|\bp\.p\./, CAPACITIVE],
  [["film", "polyester"], /polyest|mylar|\bm?kt\b|\bmkt|\bmks|\bfks|\bfkt|\bpet\b|\bpetp\b/, CAPACITIVE],
  [["film", "polystyrene"], /polystyr|styrofle|styrol|\bks\b|\bps\b|\bstyrene/, CAPACITIVE],
  [["film"], /\bfilm\b|\bfolie|foliekond|foliecond|polycarb|\bmkc|kunststoff|plastic|plastique/, CAPACITIVE],
  [["ceramic"], /ceram|keram|\bcer\b|\bkerko|\bmlcc\b|door ?knob/, CAPACITIVE],
  [["tantalum"], /tantal|\btant\b/, CAPACITIVE],
  [
    ["electrolytic"],
    /electroly|\belect?\b\.?|elektroly|\blytics?\b|el[ck]os?\b|elyt\b|chimique|\bcap alum|\balum(ini?um)? (cap|elec|can)|electrochim/,
    CAPACITIVE,
  ],
  [["air"], /\bair\b|\bair ?(trimmer|variable|spaced|dielec|gang)|dielectric:? air|\ba air\b|luft|lucht/, CAPACITIVE],
  [["silicon"], /silicon\b|silici|silizi|\bsi\b/, RECTIFYING],
  [["selenium"], /selen/, RECTIFYING],
  [["germanium"], /german/, RECTIFYING],
  [["axial"], /axia/, WIRED],
  [["radial"], /radia|\bstehend|\bstaand/, WIRED],
  [["disc"], /\bdis[ck]s?\b|disque|schij(f|ven)|scheibe/, ["capacitor", "thermistor"]],
  [
    ["chassis"],
    /chassis|a visser|aanschroef|schroef|schraub|screw[- ](base|mount|can|type)|twist[- ]?(mount|lock|prong|tab)|\bcans?\b|\bbus\b|becher|bolt[- ]?down|stud[- ]mount/,
    ["resistor", "capacitor"],
  ],
  [["film"], /\bfilm\b(?! ?(cap|kond|cond))/, ["resistor"]],
];

/** A word that says more than another it contains: silver mica is only silver-mica, a metal oxide film no metal film. */
export const INSTEAD_OF: Readonly<Record<string, readonly string[]>> = {
  "silver-mica": ["mica"],
  "metal-oxide": ["metal-film", "film"],
  "metal-film": ["film"],
  "carbon-film": ["film"],
  tantalum: ["electrolytic"],
};
