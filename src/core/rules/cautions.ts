/** TABLE: cautions: what to watch where the work is done, with the level of each. */

/** How a caution is shown: a stop is ticked before the part is marked fitted, a look is read, a note stands by. */
export type CautionLevel = "stop" | "look" | "note";
export type Caution = { readonly id: string; readonly level: CautionLevel; readonly text: string };

/** All cautions that a rule or a set can call for. Source: common practice, worded here. */
export const CAUTIONS: readonly Caution[] = [
  {
    id: "discharge",
    level: "stop",
    text: "Unplug. Discharge every filter through a resistor and prove zero with the meter before a hand or an ohmmeter goes in.",
  },
  {
    id: "mains",
    level: "stop",
    text: "Line-powered part. Follow local wiring rules; have a qualified person check work you are not licensed or trained to do.",
  },
  {
    id: "live_chassis",
    level: "stop",
    text: "This chassis can be at line potential. Isolation transformer on the bench (a variable autotransformer does not isolate); knobs, screws and back fitted before use.",
  },
  {
    id: "line_leak",
    level: "look",
    text: "Current that this capacitor passes from line to metal: see the figure. Two-wire plugs turned over make it worse.",
  },
  {
    id: "y_class",
    level: "stop",
    text: "Only a class Y part here. A dc-rated film capacitor of any voltage is not a substitute, nor is class X.",
  },
  { id: "x_class", level: "stop", text: "Only a class X (or Y) part here." },
  {
    id: "coupling_leak",
    level: "look",
    text: "Leakage here biases the next tube on. Prove zero volts on the grid with the tube drawing current.",
  },
  {
    id: "grid_max",
    level: "look",
    text: "A grid resistor above the sheet's limit lets an output tube run away. Measure it, do not assume it.",
  },
  { id: "stored_charge", level: "stop", text: "Can hold a dangerous charge for days. Bleed, then short, then prove." },
  {
    id: "hv",
    level: "stop",
    text: "Thousands of volts. One hand, dry floor, second person near; picture tube anode stays charged.",
  },
  {
    id: "implosion",
    level: "stop",
    text: "A picture tube can implode. Eye cover and gloves, never lift it by the neck, no scratch on the glass.",
  },
  {
    id: "xray",
    level: "stop",
    text: "Raised high voltage makes X-rays. Set it to the documented figure with a proper probe, cage and shields on.",
  },
  {
    id: "pcb_oil",
    level: "look",
    text: "Oil of this age may hold PCB. Do not open, heat or bin it; gloves for seeps; local waste rules.",
  },
  {
    id: "asbestos",
    level: "look",
    text: "Sheet, cord or sleeving may be asbestos. Do not sand, cut or brush dry; local rules for removal.",
  },
  {
    id: "selenium_fume",
    level: "look",
    text: "A failing stack gives poisonous fumes with a foul smell. Switch off, air the room.",
  },
  { id: "lead_paint", level: "look", text: "Old solder, paint and cadmium plate: wash hands, no food on the bench." },
  { id: "hot_tube", level: "look", text: "Some rectifier tubes hold mercury; broken glass is hazardous waste." },
  {
    id: "radioactive_tube",
    level: "look",
    text: "Some gas tubes and glowing dials hold radioactive matter. Leave sealed, do not scrape.",
  },
  {
    id: "fire",
    level: "stop",
    text: "This part is or replaces a fire barrier. Like for like, stood off, nothing that burns nearby.",
  },
  {
    id: "res_voltage",
    level: "look",
    text: "Check volts, not only watts: the new body may be rated lower. Use two or more in series.",
  },
  {
    id: "res_pulse",
    level: "look",
    text: "Average watts do not show pulses. Film parts can open here; use bulk or wirewound types.",
  },
  {
    id: "heat_standoff",
    level: "look",
    text: "Stand it 5-10 mm off boards and away from wax and capacitors; long leads carry less heat to joints.",
  },
  {
    id: "ww_inductance",
    level: "look",
    text: "Wirewound is a coil. Not where radio frequency or parasitic stopping matters.",
  },
  { id: "fusible_same", level: "stop", text: "Do not raise the wattage: it must still open." },
  { id: "fuse_same", level: "stop", text: "Same current and same speed as documented." },
  {
    id: "first_filter_limit",
    level: "look",
    text: "More capacitance means higher peak current in the rectifier and transformer. Stay within its published limit.",
  },
  {
    id: "warmup_peak",
    level: "look",
    text: "Before the tubes draw current the supply rises to its peak. Rate the capacitor for that.",
  },
  { id: "polarity", level: "stop", text: "Check which end is positive: bias supplies are reversed." },
  {
    id: "bias_first",
    level: "stop",
    text: "Prove the negative bias at the empty sockets before the output tubes go in.",
  },
  {
    id: "can_insulated",
    level: "look",
    text: "This can is not at chassis potential: keep its insulation. The upper can of a series pair too: sleeve it.",
  },
  {
    id: "cut_old",
    level: "look",
    text: "Cut the old part out of circuit: a new one bridged across it leaves its leakage in place.",
  },
  {
    id: "tantalum_fault",
    level: "look",
    text: "Tantalum fails short and can burn; wet types hold acid. Rate at twice the working volts.",
  },
  { id: "reform", level: "look", text: "Old stock: bring up slowly through a resistor and log the leakage." },
  {
    id: "outside_foil",
    level: "note",
    text: "Outer-foil end goes to the low-impedance side; a printed band today may not mean it.",
  },
  { id: "tuned_exact", level: "look", text: "Resonant or timing part: do not round to the nearest stock value." },
  { id: "tc_match", level: "look", text: "Same temperature coefficient, or the set will drift." },
  { id: "realign", level: "note", text: "Realign this stage after the change; note slug and trimmer positions first." },
  {
    id: "class2_loss",
    level: "note",
    text: "High-K ceramic loses capacitance with volts and heat and can sing in audio stages.",
  },
  { id: "vhf_leads", level: "note", text: "Lead length is part of the circuit: copy it to the millimetre." },
  { id: "dvdt", level: "look", text: "Needs a stated pulse (dv/dt) and ac rating, film and foil preferred." },
  {
    id: "buffer_first",
    level: "stop",
    text: "Fit the new buffer before any power: its failure takes the transformer.",
  },
  {
    id: "heater_string",
    level: "stop",
    text: "Every part in the string carries the same current: one wrong part overruns the rest.",
  },
  { id: "plastic_dial_heat", level: "note", text: "A hotter lamp marks the dial. Same current type only." },
  { id: "pot_tap", level: "look", text: "Tapped control: an untapped one drops the loudness network." },
  {
    id: "pot_dc",
    level: "look",
    text: "Scratching after cleaning means dc on the track: suspect the capacitor before it.",
  },
  { id: "bypass_check", level: "note", text: "Lift the bypass before judging this resistor." },
  { id: "network_pins", level: "look", text: "Copy the pin map before removal; networks of one look differ inside." },
  {
    id: "tar_heat",
    level: "look",
    text: "Warm tar fumes: outdoors or strong ventilation, never an open flame or the kitchen.",
  },
  { id: "line_parts_in_block", level: "stop", text: "Blocks can hide line-filter sections: those need class Y or X." },
  {
    id: "solder_heat_styrene",
    level: "note",
    text: "Styrene softens at soldering heat: clip a heat shunt on the lead.",
  },
  { id: "solder_heat_glass", level: "note", text: "Clip a heat shunt on glass diodes and early transistors." },
  { id: "chassis_insulation", level: "look", text: "Body is bolted to metal: prove insulation at 500 V." },
  { id: "meter_cal", level: "note", text: "Recalibrate after the change and log both readings." },
  { id: "neon_timing", level: "note", text: "Strike volts set the timing or regulation." },
  {
    id: "transformer_load",
    level: "note",
    text: "Judge it only after known-bad loads (filters, rectifier) are lifted.",
  },
];
