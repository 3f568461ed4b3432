/** TABLE: the words of parts lists and what they mean; English and German, 1930 to today. A phrase is written without dots and hyphens. */

/**
 * What a phrase says. `kind` is the noun of the thing; `turns` are words that make a resistor a potentiometer; `other` a noun
 * that makes the thing none of our kinds; `mark` and `aside` tell how the amounts around them are meant.
 */
export type Field =
  | "kind"
  | "turns"
  | "other"
  | "construction"
  | "dielectric"
  | "taper"
  | "tolerance"
  | "coefficient"
  | "mark"
  | "aside"
  | "reference"
  | "count"
  | "shape";

/** field, what it says, phrases separated by "|" */
export const VOCABULARY: readonly (readonly [field: Field, value: string, phrases: string])[] = [
  [
    "kind",
    "resistor",
    "resistor|resistors|résistance|resistenza|résistances|résist|resistance|resistances|res|resist|festwiderstand|festwiderstände|widerstand|widerstände|widerstandswerte|bleeder|dropper",
  ],
  [
    "kind",
    "capacitor",
    "capacitor|capacitors|condenser|condensers|cap|caps|kap|capacity|capacities|capacitance|capacitances|cond|conds|kapazität|kapazitäten|kondensator|kondensatoren|kondensatorwerte|drehko|folgekondensator|trimmer|trimmers|padder|padders|padding condenser|drehkondensator|tauchtrimmer|condensateur|condensatore|condensateurs|condo|lufttrimmer|luftdrehko|becher|feedthru capacitor",
  ],
  [
    "kind",
    "potentiometer",
    "potentiometer|potentiometers|pot|pots|control|controls|rheostat|rheostats|volume control|tone control|volume controls|tone controls|volume and tone controls|vol cont|volume cont|tone cont|vol control|potmeter|potr|potrs|regler|einstellregler|drehwiderstand|trimmpoti|trimmer potentiometer|poti|taper|preset|hum balance|trimpot|potentiomètre|potentiomètres|pre set",
  ],
  [
    "turns",
    "",
    "volume|loudness|focus|treble|bass|contrast|brightness|brilliance|vert hold|vertical hold|hor hold|horiz hold|horizontal hold|height|vertical linearity|vert linearity|picture|sensitivity|bias adj|zero adj|hum adj",
  ],
  ["kind", "thermistor", "thermistor|thermistors|thermal|ntc|ptc|thermistance|heissleiter|heißleiter|surge limiter"],
  [
    "kind",
    "network",
    "network|networks|printed circuit|couplate|printed unit|printed audio unit|filter unit|rc network|packaged circuit|integrator",
  ],
  [
    "kind",
    "inductor",
    "coil|coils|choke|chokes|inductor|inductors|reactor|reactors|inductance|spule|drossel|siebdrossel|hf drossel|loop antenna|antenna loop|ferritstabspule|bobine|bobines|self|selfs|inductance d arrêt|speaker field|trap|toroid",
  ],
  [
    "kind",
    "transformer",
    "transformer|transformers|trans|xfmr|transfo|transformateur|netztransformator|transformator|übertrager|ausgangsübertrager|netztrafo|trafo",
  ],
  ["kind", "rectifier", "rectifier|rectifiers|diode|diodes|redresseur|selengleichrichter|gleichrichter"],
  ["kind", "fuse", "fuse|fuses|fusible|sicherung|feinsicherung|fuse link"],
  [
    "kind",
    "lamp",
    "lamp|lamps|pilot light|pilot lights|bulb|bulbs|dial light|lampe|ampoule|voyant|skalenlampe|glimmlampe|lämpchen|skalenlämpchen|glühlampe|neon",
  ],
  [
    "kind",
    "tube",
    "tube|tubes|valve|valves|röhre|röhren|tube électronique|pentode|pentodes|triode|triodes|tetrode|tetrodes|double triode|double triodes",
  ],
  ["kind", "switch", "switch|switches|sw|toggle|interrupteur|commutateur|inverseur|netzschalter|schalter"],
  [
    "other",
    "",
    "clamp|knob|knobs|socket|sockets|board|wafer|screw|screws|nut|nuts|lockwasher|lockwashers|washer|grommet|grommets|cord|plug|jack|jacks|holder|valveholder|valveholders|connector|crystal|xtal|relay|meter|speaker|vibrator|battery|cone|bracket|shield|terminal|terminal board|strip board|mounting|transistor|transistors|core|spark gap|handset|microphone|lug|lugs|spring|cabinet|knopf|fassung|stecker|buchse|quarz|lautsprecher|instrument|tape|insulation|post|posts|binding post",
  ],
  [
    "construction",
    "composition",
    "composition|comp|carbon|carbon composition|carbon comp|massewiderstand|masse|fixed composition|molded carbon|solid carbon|insulated carbon|cc|kohlemasse|kohle|impasto|aggloméré|agglomérée|agglomérées",
  ],
  [
    "construction",
    "carbon-film",
    "carbon film|deposited carbon|deposited carbon film|depos carbon|dep carbon|cracked carbon|high stab carbon film|high stability carbon|couche carbone|à couche|à couche de carbone|schichtwiderstand|kohleschicht|kohleschichtwiderstand|schicht|hi stab|cf",
  ],
  [
    "construction",
    "metal-film",
    "metal film|metalfilm|couche métallique|à couche métallique|metallschicht|metallschichtwiderstand|metallfilm|mf|fixed mf|fxd mf",
  ],
  ["construction", "film", "metal oxide|metal oxide film|oxide film|metalloxid|film|fixed film|tin oxide|mox"],
  [
    "construction",
    "wirewound",
    "wire wound|wirewound|ww|w w|wire wd|a filo|bobiné|bobinée|bobinées|drahtwiderstand|draht|wound wire|drahtgewickelt|wwound|power wirewound|vitreous enamel|candohm",
  ],
  [
    "dielectric",
    "paper",
    "paper|tubular paper|paper tubular|au papier|carta|a carta|papier|papierkondensator|rollkondensator|metallised paper|metallized paper|metalized paper|metallpapier|mp|molded paper|moulded paper|paper dielectric|wax paper|waxed paper|wax",
  ],
  ["dielectric", "mica", "mica|micas|glimmer|glimmerkondensator|au mica|mica dielectric|moulded mica|molded mica"],
  [
    "dielectric",
    "silver-mica",
    "silver mica|mica argenté|sil mica|silv mica|silvered mica|silver micas|s mica|silvered micas|sm|silverglimmer|dipped mica",
  ],
  [
    "dielectric",
    "ceramic",
    "ceramic|ceramics|cer|ceram|céramique|ceramico|céramiques|keramik|keramikkondensator|scheibenkondensator|rohrkondensator|keramisch|keram|ker|ceramic dielectric|disc|disk|disc ceramic|durchführungskondensator|ceramicon|cermic|kerko",
  ],
  [
    "dielectric",
    "electrolytic",
    "electrolytic|electrolytics|elect|elec|electro|lytic|électrolytique|elettrolitico|elettrolitici|électrochimique|chimique|elko|elkos|elektrolytkondensator|elektrolyt|becher elko|elyt|electrolytic dielectric|dry electrolytic|wet electrolytic",
  ],
  ["dielectric", "tantalum", "tantalum|ta|tantale|tant|tantal|tantalytic|tantalkondensator|tantalelko"],
  ["dielectric", "polyester", "polyester|polye|folienkondensator|mylar|mks|mkt|polyethylene terephthalate"],
  ["dielectric", "polystyrene", "polystyrene|polystyrol|styroflex|styroflexkondensator|styrol|poly styrene"],
  [
    "dielectric",
    "film",
    "plastic film|polycarbonate|polyc|teflon|ptfe|polykarbonat|kunstfolie|polypropylene|polypropylen|mkp|folie|plastic",
  ],
  ["dielectric", "oil", "oil|oil filled|oil paper|oil impregnated|öl"],
  ["dielectric", "air", "air|luft|lufttrimmer|luftdrehko|air spaced|air dielectric|air trimmer"],
  ["taper", "linear", "linear|lin|linéaire|linear taper|lin taper"],
  ["taper", "audio", "audio|log|logarithmique|logarithmic|audio taper|log taper|logarithmisch|positiv log"],
  ["taper", "reverse audio", "reverse audio|reverse log|rev log|reverse audio taper|antilog|c taper"],
  ["tolerance", "5", "gold|gold band|gold fourth band"],
  ["tolerance", "10", "silver|silver band"],
  ["tolerance", "20", "no band|no fourth band|no colour band|no color band"],
  ["tolerance", "gmv", "gmv|guaranteed minimum value|guaranteed minimum"],
  [
    "mark",
    "not-fitted",
    "not used|non monté|supprimé|not fitted|nf|not on this assy|not installed|omitted|omit|dni|dnp|deleted|entfällt|unused|no part|not assigned|not wired in|not supplied",
  ],
  [
    "mark",
    "selected",
    "selected|selected in test|selected at test|selected on test|selected in final test|select in test|select at test|select on test|sit|sat|sot|aot|factory selected|factory select|factory sel|see table|see chart|to suit|beim abgleich ausgesucht|ausgesucht|selected for|selected value|value selected|adjust on test|adjusted on test|chosen in test|select for best",
  ],
  ["mark", "nominal", "nom|nominal|nominally"],
  ["mark", "missing", "tbd|see note|unknown|na"],
  ["mark", "fixed", "fixed|fxd|fixd|fest"],
  [
    "mark",
    "variable",
    "ajustable|variable|var|adjustable|adj|gang|two gang|three gang|four gang|2fach|3fach|tuning|rotor",
  ],
  [
    "aside",
    "next",
    "tapped at|tapped|tap at|taps at|tap|taps|matched within|matched|within|linearity|wound on|shunted by|was|were|orig|original|originally|see also|replaces|for use with|in place of|instead of|primary|secondary|sec|pri|max temp|serial|after serial|ser|formerly|marked",
  ],
  [
    "aside",
    "previous",
    "test|essai|hot|peak|surge|dc resistance|resistance dc|cold resistance|dc|primary impedance|plate to plate|impedance|turns|turn|meter",
  ],
  ["aside", "either", "spitze"],
  ["reference", "same", "same as|identique à|comme|identical to|identical with|identical|like|as|wie|gleich|see"],
  ["reference", "same-except", "same as except"],
  [
    "reference",
    "part-of",
    "part of|partie de|p o|pt of|section of|incl in|included in|inside|in can of|teil von|element of|mounted on|on|auf",
  ],
  ["reference", "with", "with|incl|includes|including|mit|matched to|consists of|and"],
  [
    "count",
    "count",
    "gang|section|sections|sect|pole|pos|position|positions|turn|turns|pin|prong|lug|required|req|used|off|band|bands|pi|deck|meg cycles|tube|tubes|pair|deg|stage|pieces|pcs|each|ea|conductor|fach",
  ],
  [
    "shape",
    "",
    "tubular|tub|molded|moulded|dry|wet|can|metal|bathtub|insulated|uninsulated|precision|general purpose|high voltage|hv|power|dual|dipped|axial|radial|noninductive|block|carton|standard|type|dielectric|flexible|strip|miniature|insul|adj|semi|moulded case|plug in|upright|inverted|trimming|osc|oscillator|antenna|rf|if|af|filter|smoothing|mains|output|input|line|bypass|by pass|feedthru|feed thru|feedthrough|buffer|padding|compression|polarized|polarised|nonpolarized|non polarized|fusible|carton",
  ],
];
