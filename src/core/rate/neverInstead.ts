/** TABLE: what is often fitted in place of a part and should not be, by its class or its use. */
import type { Rejected } from "../ratings.js";

/** Substitutes that are turned down whatever their figures. Source: common practice; safety classes after IEC 60384-14. */
export const NEVER_INSTEAD: Readonly<Record<string, readonly Rejected[]>> = {
  fusible: [
    { what: "the same ohms at more watts", why: "it must still open before something burns" },
    { what: "a plain film or wirewound resistor", why: "it does not open without flame" },
  ],
  thermistor: [{ what: "a larger body of the same cold ohms", why: "it runs cooler and drops more" }],
  ceramic_tc: [{ what: "NP0 in place of an N or P type", why: "the tuning drifts by the missing compensation" }],
  germanium_diode: [
    {
      what: "a silicon diode",
      why: "its 0.6 V drop loses a detector's tenths of a volt; only where signals are volts",
    },
  ],
  tube_rectifier: [
    {
      what: "silicon plugged in alone",
      why: "B+ rises at once and higher, and every filter sees the warm-up peak: a series resistor for each anode and a check of every capacitor come with it",
    },
  ],
  elec_nonpolar: [{ what: "a polarised electrolytic", why: "a.c. reverses it" }],
  line_cord_r: [{ what: "a motor-start capacitor", why: "it is made for seconds, not for hours" }],
  pot: [
    { what: "another taper", why: "the control works in one corner of its turn" },
    { what: "an untapped one for a tapped one", why: "the loudness network loses its tap" },
  ],
  grid_stop: [{ what: "a wirewound resistor", why: "it is a coil where parasitics are to be damped" }],
  vibrator: [{ what: "power before a new buffer", why: "a failed buffer takes vibrator and transformer" }],
};
