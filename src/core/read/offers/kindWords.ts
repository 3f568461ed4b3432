/** TABLE: the nouns of catalogues in English, French, Dutch and German, folded; Dutch and German run them into compounds. */

import type { Kind } from "../../part.js";

/**
 * Noun -> kind; the first row that fits wins. Things that only go with a part (holders, sockets, knobs) stand before the
 * parts they name; parts whose names hold another part's word (Sicherungswiderstand) before that part.
 */
export const KIND_WORDS: readonly (readonly [kind: Kind, noun: RegExp])[] = [
  [
    "resistor",
    /(widerstand|weerstand|resistor|resistance)[,;]? (draht|draad|wire|bobinee?|sicherung|zekering)\b|fusible res|res(istance|istor|\.)? fusible|sicherungswiderstand|zekeringweerstand|smeltweerstand|fusible (metal|carbon)/,
  ],
  [
    "other",
    /socket|sockel|fassung|\bsupport\b|lampvoet|buisvoet|\bvoet\b|holder|(?<!sc)halter\b|houder|porte-?fusible|douille|\bknob|bouton|\bknop(pen)?\b|drehknopf|terminal|tag ?(strip|board)|soldeer|lotleiste|loststutz|\blot(zinn|ose)|cosse|plots\b|barrette|\bwire\b(?!.?wound)|\bcable\b|\bkabel\b|\bkabels?|\bfil\b|litze|\bdraht\b|montagedraad|snoer|\bcord\b|sleeving|tubing|schrumpf|krimpkous|gaine|isolier|grille?\b|cloth|stoff\b|\bstof\b|\btissu|\bbelt|riem\b|\bclips?\b(?! ?(mount|fix|type))|clamp(?! ?(mount|fix|type))|schelle|bracket|grommet|\btulle|passe-?fil|feet\b|washer|\bscrews\b|\bnuts?\b|^schrauben\b|vis\b(?!ser)|\bplug\b|stecker|stekker|\bfiche|\bjack|buchse|connector|speaker|haut-?parleur|luidspreker|lautsprecher|\bdecal|\bdial (cord|glass|plate|scale)|label|book\b|\bbuch\b|schaltplan|schematic|transistor|\bbattery|batterie|crystal|\bquarz|varistor|relay\b|\brelais(?! \d)\b|heat ?sink|kuhlkorper|koelprofiel|solder|prufspitze|meetsnoer|rivet|niete|eyelet|felt|filz|\bvilt|mica (washer|insul)|insulator|\bcabinet|shield|schirm/,
  ],
  ["thermistor", /thermist|\bntc\b|\bctn\b|\bptc\b|\bctp\b|inrush|heissleiter|kaltleiter|surge limiter/],
  ["fuse", /\bfus(e|es|ible|ibles)\b|zekering|sicherung|smeltveilig|schmelzeinsatz/],
  [
    "capacitor",
    /trimmer ?(cap|kond|cond)|cap\w*\.? trim|trimmkond|trimmerkond|cond\w*\.? (ajust|variab|trim)|padder|drehko|tuning (cap|cond)|variable (cap|cond)|afstemcond/,
  ],
  [
    "capacitor",
    /\bcaps?\b|capacitor|condens(er|at|ator)|\bcond\b|kondensator|\bkond\b|el[ck]os?\b|elyt|\belkos?|lytics?\b|chimique|electrolytique|electrolytic|elektrolyt|antiparasit|entstor|ontstoor|\bmk[pstch]\d*\b|\bfk[psc]\d*\b/,
  ],
  [
    "potentiometer",
    /\bpots?\b|potentiom|potmeter|poti\b|\bpotis\b|\btrimpot|drehwiderstand|instelpot|trimmer|trimmpot|einstellregler|\bregler\b|(volume|vol|tone|balance|gain|bias) ?control|lautstarkeregler|volumeregel|rheostat|\bcontrols?\b|\bpreset\b|regelbare weerstand|resistance (ajustable|variable)|rheostaat/,
  ],
  ["network", /network|\bnetwerk|\bnetzwerk|reseau|couplate|resistor array|weerstandsnet/],
  ["switch", /\bswitch(es)?\b|schalter\b|schakelaar|interrupteur|\binverseur|commutateur|\bspst\b|\bdpdt\b/],
  ["transformer", /transf|trafo|\btrafos?|ubertrager|autotransf|uitgangstraf|\bxfmr/],
  [
    "inductor",
    /choke|inductor|inductance|\bself(s|induct)?\b|smoorspoel|spoel\b|drossel|\bspule|\bcoil\b|\bbobine (d|de|hf|antenne|oscill)|reactor\b/,
  ],
  ["rectifier", /diode|rectif|\brect\b|redress|gleichrichter|gelijkricht|brugcel|\bbridge\b|bruckengl/],
  [
    "lamp",
    /\blamps?\b|lampes? (de |du )?(cadran|temoin|signal|neon)|\blampe\b(?=.*\d ?v)|lampje|\bbulb|ampoule|gluhlampe|gluhbirne|skalenlampe|lampchen|glimmlampe|schaallamp|neon\b|pilot light/,
  ],
  [
    "tube",
    /\btubes?\b(?! (cap|lytic|electro))|\bvalve|\brohre|elektronenrohre|radiobuis|\bbuis\b|\bbuizen|\blampe\b(?=.*\b[a-z]{1,4}\d{1,3}\b)/,
  ],
  ["resistor", /resist|\bres\b|weerstand|widerstand|\bbleeder\b|dropper/],
];
