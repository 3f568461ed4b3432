/** TABLE: figures of safety at the line and of stored charge, as published or worked out. */
import {
  bleedTime,
  faradsForLeak,
  impulseVolts,
  lineLeak,
  loadOf,
  storedEnergy,
  voltsAfter,
  xyClass,
} from "../../src/core/index.js";
import { type Check, table } from "./table.js";

const WORKED = "worked out in the reference files from the inputs beside it";

/** "0.01 uF, 120 V 60 Hz" and the like, in base units. */
const figuresOf = (text: string): number[] => [...text.matchAll(/[\d.]+/g)].map(([figure]) => Number(figure));

const IMPULSE: readonly Check[] = [
  ...table(
    {
      of: "impulse test, volts peak up to 1 µF",
      source: "IEC 60384-14 as in techoverflow.net 2019-08-07 and a capacitor maker's safety page",
    },
    (safetyClass: string) => impulseVolts({ safetyClass, farads: 1e-7 }),
    [
      ["X1", 4000],
      ["X2", 2500],
      ["Y1", 8000],
      ["Y2", 5000],
      ["Y4", 2500],
    ],
  ),
  ...table(
    { of: "impulse test", source: "thejourneymanwizard, safety capacitors: Y3 has none" },
    (safetyClass: string) => impulseVolts({ safetyClass, farads: 1e-7 }),
    [["Y3", null]],
  ),
  ...table(
    { of: "impulse test, volts peak", source: "IEC 60384-14 as in techoverflow.net 2019-08-07", within: 5e-4 },
    ([safetyClass, farads]: readonly [string, number]) => impulseVolts({ safetyClass, farads }),
    [
      [["X2", 2.2e-6], 1685],
      [["Y1", 4e-6], 8000],
      [["Y4", 4e-6], 2500],
    ],
  ),
];

const CLASSES: readonly Check[] = [
  ...table(
    {
      of: "first class between two sides of the line, and line to chassis",
      source: "a capacitor maker's safety page; a slide of another",
    },
    (place: string) => xyClass(place).classes[0]![0],
    [
      ["line to line", "X"],
      ["line to metal", "Y"],
    ],
  ),
  ...table(
    { of: "whether the class serves there", source: "everycircuit; thejourneymanwizard: Y for X, never X for Y" },
    ([place, name]: readonly [string, string]) => xyClass(place).classes.includes(name),
    [
      [["line to line", "Y2"], true],
      [["line to metal", "X2"], false],
      [["line to metal", "X1"], false],
    ],
  ),
  ...table(
    { of: "whether one part bridges double insulation", source: "film-capacitor.com; a UL note: Y1 double, Y2 basic" },
    (name: string) => xyClass("line to hand").classes.includes(name),
    [
      ["Y1", true],
      ["Y2", false],
    ],
  ),
];

const FALL: readonly Check[] = [
  ...table(
    { of: "share left after one time constant", source: WORKED, status: "computed", within: 1e-5 },
    (seconds: number) => voltsAfter({ farads: 1, ohms: 1, fromVolts: 1, seconds }),
    [[1, 0.36788]],
  ),
  ...table(
    { of: "time constants from the line's peak to 34 V", source: WORKED, status: "computed", within: 5e-5 },
    (rms: number) => bleedTime({ farads: 1, ohms: 1, fromVolts: Math.SQRT2 * rms, toVolts: 34 }),
    [
      [120, 1.6077],
      [132, 1.703],
      [230, 2.2583],
      [240, 2.3009],
      [253, 2.3536],
      [264, 2.3962],
    ],
  ),
  ...table(
    { of: "volts left of the line's peak after one time constant", source: WORKED, status: "computed", within: 1e-3 },
    (rms: number) => voltsAfter({ farads: 1, ohms: 1, fromVolts: Math.SQRT2 * rms, seconds: 1 }),
    [
      [120, 62.4],
      [132, 68.7],
      [230, 119.7],
      [240, 124.9],
      [253, 131.6],
      [264, 137.3],
    ],
  ),
];

const LEAK: readonly Check[] = [
  ...table(
    { of: "milliamperes through the capacitor", source: WORKED, status: "computed", within: 5e-4 },
    (text: string) => {
      const [microfarads, volts, hertz] = figuresOf(text) as [number, number, number];
      return lineLeak({ farads: microfarads * 1e-6, volts, hertz }) * 1e3;
    },
    [
      ["0.0022 uF, 120 V 60 Hz", 0.0995],
      ["0.0047 uF, 120 V 60 Hz", 0.2126],
      ["0.01 uF, 120 V 60 Hz", 0.4524],
      ["0.02 uF, 120 V 60 Hz", 0.9048],
      ["0.047 uF, 120 V 60 Hz", 2.1262],
      ["0.05 uF, 120 V 60 Hz", 2.2619],
      ["0.1 uF, 120 V 60 Hz", 4.5239],
      ["0.0022 uF, 132 V 60 Hz", 0.1095],
      ["0.0047 uF, 132 V 60 Hz", 0.2339],
      ["0.01 uF, 132 V 60 Hz", 0.4976],
      ["0.02 uF, 132 V 60 Hz", 0.9953],
      ["0.047 uF, 132 V 60 Hz", 2.3389],
      ["0.05 uF, 132 V 60 Hz", 2.4881],
      ["0.1 uF, 132 V 60 Hz", 4.9763],
      ["0.0022 uF, 230 V 50 Hz", 0.159],
      ["0.0047 uF, 230 V 50 Hz", 0.3396],
      ["0.01 uF, 230 V 50 Hz", 0.7226],
      ["0.02 uF, 230 V 50 Hz", 1.4451],
      ["0.047 uF, 230 V 50 Hz", 3.3961],
      ["0.05 uF, 230 V 50 Hz", 3.6128],
      ["0.1 uF, 230 V 50 Hz", 7.2257],
      ["0.0022 uF, 253 V 50 Hz", 0.1749],
      ["0.0047 uF, 253 V 50 Hz", 0.3736],
      ["0.01 uF, 253 V 50 Hz", 0.7948],
      ["0.02 uF, 253 V 50 Hz", 1.5896],
      ["0.047 uF, 253 V 50 Hz", 3.7357],
      ["0.05 uF, 253 V 50 Hz", 3.9741],
      ["0.1 uF, 253 V 50 Hz", 7.9482],
    ],
  ),
  ...table(
    { of: "milliamperes through the capacitor", source: "mathjs with units", status: "computed" },
    (text: string) => {
      const [microfarads, volts, hertz] = figuresOf(text) as [number, number, number];
      return lineLeak({ farads: microfarads * 1e-6, volts, hertz }) * 1e3;
    },
    [["0.01 uF, 120 V 60 Hz", 0.4523893421]],
  ),
  ...table(
    { of: "largest nanofarads for the current", source: WORKED, status: "computed", within: 2e-4 },
    (text: string) => {
      const [milliamperes, volts, hertz] = figuresOf(text) as [number, number, number];
      return faradsForLeak({ amperes: milliamperes / 1e3, volts, hertz }) * 1e9;
    },
    [
      ["0.25 mA at 120 V 60 Hz", 5.526],
      ["0.5 mA at 120 V 60 Hz", 11.052],
      ["0.75 mA at 120 V 60 Hz", 16.579],
      ["3.5 mA at 120 V 60 Hz", 77.367],
      ["0.25 mA at 132 V 60 Hz", 5.024],
      ["0.5 mA at 132 V 60 Hz", 10.048],
      ["0.75 mA at 132 V 60 Hz", 15.071],
      ["3.5 mA at 132 V 60 Hz", 70.334],
      ["0.25 mA at 230 V 50 Hz", 3.46],
      ["0.5 mA at 230 V 50 Hz", 6.92],
      ["0.75 mA at 230 V 50 Hz", 10.38],
      ["3.5 mA at 230 V 50 Hz", 48.438],
      ["0.25 mA at 253 V 50 Hz", 3.145],
      ["0.5 mA at 253 V 50 Hz", 6.291],
      ["0.75 mA at 253 V 50 Hz", 9.436],
      ["3.5 mA at 253 V 50 Hz", 44.035],
    ],
  ),
];

const CHARGE: readonly Check[] = [
  ...table(
    { of: "joules", source: WORKED, status: "computed" },
    (text: string) => {
      const [microfarads, volts] = figuresOf(text) as [number, number];
      return storedEnergy({ farads: microfarads * 1e-6, volts });
    },
    [
      ["8 uF at 450 V", 0.81],
      ["20 uF at 450 V", 2.025],
      ["40 uF at 450 V", 4.05],
      ["16 uF at 475 V", 1.805],
      ["80 uF at 450 V", 8.1],
      ["100 uF at 350 V", 6.125],
      ["0.1 uF at 600 V", 0.018],
    ],
  ),
  ...table(
    { of: "seconds down to 50 V", source: WORKED, status: "computed", within: 2e-5 },
    (text: string) => {
      const [microfarads, fromVolts, ohms] = figuresOf(text) as [number, number, number];
      return bleedTime({ farads: microfarads * 1e-6, ohms, fromVolts, toVolts: 50 });
    },
    [
      ["20 uF, 450 V, 100000 ohm", 4.3944],
      ["40 uF, 450 V, 220000 ohm", 19.3356],
      ["80 uF, 450 V, 100000 ohm", 17.5778],
    ],
  ),
  ...table(
    { of: "watts of the bleeder", source: WORKED, status: "computed", within: 1e-4 },
    (text: string) => {
      const [, volts, ohms] = figuresOf(text) as [number, number, number];
      return loadOf({ ohms, watts: 1 }, { volts }).watts;
    },
    [
      ["20 uF, 450 V, 100000 ohm", 2.025],
      ["40 uF, 450 V, 220000 ohm", 0.9205],
      ["80 uF, 450 V, 100000 ohm", 2.025],
    ],
  ),
];

/** All checks on safety and charge. */
export const SAFETY = [...IMPULSE, ...CLASSES, ...FALL, ...LEAK, ...CHARGE];
