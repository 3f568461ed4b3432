/** TABLE: worked examples of textbooks on resistors, capacitors, dividers, charge and discharge. */
import {
  bleedTime,
  containment,
  dcStringShare,
  loadOf,
  type Network,
  networkValue,
  readTolerance,
  sharesOf,
  storedEnergy,
  stringShare,
  voltsAfter,
  windowOf,
  worstCase,
} from "../../src/core/index.js";
import { type Check, table } from "./table.js";

const COLLEGE = "OpenStax College Physics (commit fd1b25d)";
const UNIVERSITY = "OpenStax University Physics (commit d0ed34a)";
const LIEC = "Lessons in Electric Circuits vol I (mirror 594fe93)";
const WORKED = "worked out in the reference files from the inputs beside it";

const series = (...values: number[]): Network => ({ series: values.map((part) => ({ part })) });
const parallel = (...values: number[]): Network => ({ parallel: values.map((part) => ({ part })) });
const ohms = (network: Network) => networkValue(network, "resistor");
const farads = (network: Network) => networkValue(network, "capacitor");
const voltsOf = (network: Network, volts: number) => sharesOf(network, "resistor").map((share) => share.volts * volts);
const wattsOf = (network: Network, volts: number) =>
  sharesOf(network, "resistor").map((share) => (share.power * volts ** 2) / ohms(network));
const amperesOf = (network: Network, volts: number) =>
  sharesOf(network, "resistor").map((share) => (share.current * volts) / ohms(network));

const CAPACITORS: readonly Check[] = [
  ...table(
    { of: "microfarads", source: `${COLLEGE}; University Physics`, locator: "m42336; m58449", within: 1e-3 },
    farads,
    [
      [series(1, 5, 8), 0.755],
      [parallel(1, 5, 8), 14],
      [{ parallel: [series(1, 5), { part: 8 }] }, 8.833],
    ],
  ),
  ...table({ of: "microfarads", source: COLLEGE, locator: "m42336 exercises", within: 2e-3 }, farads, [
    [series(5, 8), 3.08],
    [parallel(5, 8), 13],
  ]),
  ...table(
    { of: "farads of a bank of 1.5 mF", source: COLLEGE, locator: "m42336 exercise", status: "computed" },
    (count: number) => farads(parallel(...Array<number>(count).fill(1.5e-3))),
    [[500, 0.75]],
  ),
  ...table({ of: "microfarads", source: UNIVERSITY, locator: "m58449" }, farads, [
    [{ series: [{ part: 12 }, parallel(2, 4)] }, 4],
  ]),
  ...table(
    { of: "volts on each across 12 V", source: UNIVERSITY, locator: "m58449" },
    (network: Network) => sharesOf(network, "capacitor").map((share) => share.volts * 12),
    [[{ series: [{ part: 12 }, parallel(2, 4)] }, [4, 8, 8]]],
  ),
  ...table(
    { of: "microcoulombs on each across 12 V", source: UNIVERSITY, locator: "m58449" },
    (network: Network) => sharesOf(network, "capacitor").map((share) => share.current * 12 * farads(network)),
    [[{ series: [{ part: 12 }, parallel(2, 4)] }, [48, 16, 32]]],
  ),
  ...table(
    {
      of: "microjoules in each across 12 V (130 is printed for 128)",
      source: UNIVERSITY,
      locator: "m58450",
      within: 0.016,
    },
    ([microfarads, volts]: readonly [number, number]) => storedEnergy({ farads: microfarads, volts }),
    [
      [[12, 4], 96],
      [[2, 8], 64],
      [[4, 8], 130],
    ],
  ),
  ...table(
    { of: "joules of 5.0 pF at 0.40 V", source: UNIVERSITY, locator: "m58450" },
    (volts: number) => storedEnergy({ farads: 5e-12, volts }),
    [[0.4, 4e-13]],
  ),
];

const RESISTORS: readonly Check[] = [
  ...table(
    { of: "ohms", source: COLLEGE, locator: "m42356", within: 2e-3 },
    ohms,
    [
      [series(1, 6, 13), 20],
      [parallel(1, 6, 13), 0.804],
      [series(36, 50, 700), 786],
      [parallel(36, 50, 700), 20.3],
    ].map(([network, value]) => [network as Network, value as number] as const),
  ),
  ...table(
    { of: "volts on each across 12 V", source: COLLEGE, locator: "m42356" },
    (each: Network) => voltsOf(each, 12),
    [[series(1, 6, 13), [0.6, 3.6, 7.8]]],
  ),
  ...table(
    { of: "watts of each across 12 V", source: COLLEGE, locator: "m42356", within: 3e-3 },
    (each: Network) => wattsOf(each, 12),
    [
      [series(1, 6, 13), [0.36, 2.16, 4.68]],
      [parallel(1, 6, 13), [144, 24, 11.1]],
    ],
  ),
  ...table(
    { of: "amperes of each across 12 V", source: COLLEGE, locator: "m42356", within: 4e-3 },
    (each: Network) => amperesOf(each, 12),
    [
      [series(1, 6, 13), [0.6, 0.6, 0.6]],
      [parallel(1, 6, 13), [12, 2, 0.92]],
    ],
  ),
  ...table(
    { of: "volts on each across 9 V", source: LIEC, locator: "s_and_p.sml" },
    (each: Network) => voltsOf(each, 9),
    [[series(3_000, 10_000, 5_000), [1.5, 5, 2.5]]],
  ),
  ...table({ of: "amperes at 9 V", source: LIEC, locator: "s_and_p.sml" }, (each: Network) => amperesOf(each, 9)[0], [
    [series(3_000, 10_000, 5_000), 500e-6],
  ]),
  ...table({ of: "ohms", source: LIEC, locator: "s_and_p.sml" }, ohms, [[parallel(10_000, 2_000, 1_000), 625]]),
  ...table(
    { of: "milliamperes of each across 9 V", source: LIEC, locator: "s_and_p.sml" },
    (each: Network) => amperesOf(each, 9).map((amperes) => amperes * 1e3),
    [[parallel(10_000, 2_000, 1_000), [0.9, 4.5, 9]]],
  ),
  ...table(
    { of: "volts on each across 24 V", source: LIEC, locator: "s_p.sml, SPICE listing", within: 5e-4 },
    (each: Network) => voltsOf(each, 24),
    [[{ series: [parallel(100, 250), parallel(350, 200)] }, [8.627, 8.627, 15.37, 15.37]]],
  ),
  ...table(
    { of: "milliamperes of each across 24 V", source: LIEC, locator: "s_p.sml, SPICE listing", within: 5e-4 },
    (each: Network) => amperesOf(each, 24).map((amperes) => amperes * 1e3),
    [[{ series: [parallel(100, 250), parallel(350, 200)] }, [86.27, 34.51, 43.92, 76.86]]],
  ),
  ...table(
    { of: "volts on 5 k of 22.5 k", source: LIEC, locator: "divider.sml" },
    (volts: number) => voltsOf(series(5_000, 17_500), volts)[0],
    [
      [45, 10],
      [180, 40],
    ],
  ),
  ...table(
    { of: "watts of each across 250 V", source: "ngspice 39; LibreOffice agrees", status: "computed", within: 1e-5 },
    (each: Network) => wattsOf(each, 250),
    [[series(220_000, 100_000), [0.134277, 0.0610352]]],
  ),
];

const charge = (fromVolts: number, ohms: number, farads: number, seconds: number) =>
  fromVolts - voltsAfter({ farads, ohms, fromVolts, seconds });
const timeConstant = (ohms: number, farads: number) => bleedTime({ farads, ohms, fromVolts: Math.E, toVolts: 1 });

const CHARGING: readonly Check[] = [
  ...table(
    { of: "volts after seconds, 15 V through 10 k into 100 µF", source: LIEC, locator: "time.sml table", within: 1e-4 },
    (seconds: number) => charge(15, 1e4, 1e-4, seconds),
    [
      [0.5, 5.902], // its own SPICE listing prints 5.881: a coarse time step
      [1, 9.482],
      [2, 12.97],
      [3, 14.253],
      [5, 14.899],
    ],
  ),
  ...table(
    { of: "microamperes after seconds", source: LIEC, locator: "time.sml", within: 1e-4 },
    (seconds: number) => voltsAfter({ farads: 1e-4, ohms: 1e4, fromVolts: 15, seconds }) * 100,
    [[1, 551.8]],
  ),
  ...table(
    { of: "seconds to 80 of 100 V at 5.05 s", source: UNIVERSITY, locator: "m58457", within: 1e-3 },
    (toVolts: number) => bleedTime({ farads: 1, ohms: 5.05, fromVolts: 100, toVolts }),
    [[20, 8.13]],
  ),
  ...table(
    { of: "seconds from 12 to 2 V on 10 mF", source: UNIVERSITY, locator: "m58457", within: 1e-4 },
    (ohms: number) => bleedTime({ farads: 0.01, ohms, fromVolts: 12, toVolts: 2 }),
    [
      [558.11, 10],
      [10_000, 179.18],
    ],
  ),
  ...table(
    { of: "milliamperes at first, 6.16 V into 500 ohms", source: UNIVERSITY, locator: "m58457 problem", within: 3e-3 },
    (volts: number) => (loadOf({ ohms: volts / (volts / 500), watts: 1 }, { volts }).watts / volts) * 1e3,
    [[6.16, 12.3]],
  ),
  ...table(
    {
      of: "volts after one time constant of 500 ohms and 1.50 µF",
      source: UNIVERSITY,
      locator: "m58457 problem",
      within: 1e-3,
    },
    (volts: number) => charge(volts, 500, 1.5e-6, 7.5e-4),
    [[6.16, 3.89]],
  ),
  ...table(
    { of: "milliamperes after one time constant", source: UNIVERSITY, locator: "m58457 problem", within: 1e-3 },
    (volts: number) => voltsAfter({ farads: 1.5e-6, ohms: 500, fromVolts: volts, seconds: 7.5e-4 }) * 2,
    [[6.16, 4.53]],
  ),
  ...table(
    { of: "time constant", source: UNIVERSITY, locator: "m58457 problems" },
    ([ohms, farads]: readonly [number, number]) => timeConstant(ohms, farads),
    [
      [[500, 1.5e-6], 7.5e-4],
      [[4e6, 0.5e-6], 2],
      [[30e6, 0.5e-6], 15],
      [[0.04, 2.5e-6], 1e-7],
      [[800e3, 2.5e-6], 2],
    ],
  ),
  ...table(
    { of: "time constant of a strobe", source: COLLEGE, locator: "m42363" },
    ([ohms, farads]: readonly [number, number]) => timeConstant(ohms, farads),
    [[[10, 16e-6], 1.6e-4]],
  ),
  ...table(
    {
      of: "time constant of 25 k, 100 k with 2.00, 7.50 µF",
      source: `${UNIVERSITY} problem`,
      locator: "m58457",
      status: "computed",
      within: 3e-6,
    },
    ([resistors, capacitors]: readonly [Network, Network]) => timeConstant(ohms(resistors), farads(capacitors)),
    [
      [[series(25e3, 100e3), series(2e-6, 7.5e-6)], 0.197368],
      [[series(25e3, 100e3), parallel(2e-6, 7.5e-6)], 1.1875],
      [[parallel(25e3, 100e3), series(2e-6, 7.5e-6)], 0.0315789],
      [[parallel(25e3, 100e3), parallel(2e-6, 7.5e-6)], 0.19],
    ],
  ),
];

const STRINGS: readonly Check[] = [
  ...table(
    { of: "volts on 8 and 16 µF across 450 V", source: WORKED, status: "computed" },
    (farads: readonly number[]) => stringShare(farads, 450),
    [
      [
        [8e-6, 16e-6],
        [300, 150],
      ],
    ],
  ),
  ...table(
    { of: "volts at dc by the ohms across each", source: "ngspice 39, .op", status: "computed" },
    (each: readonly number[]) => dcStringShare(each, 450),
    [
      [
        [2e6, 1e6],
        [300, 150],
      ],
      [
        [1e6, 1e6],
        [225, 225],
      ],
    ],
  ),
];

const within = ([old, oldTolerance, now, nowTolerance]: readonly [number, string, number, string]) =>
  containment(windowOf(now, readTolerance(nowTolerance)), windowOf(old, readTolerance(oldTolerance))).inside;

const WINDOWS: readonly Check[] = [
  ...table(
    { of: "tolerance at worst of two in series", source: WORKED, status: "computed" },
    (percent: number) => {
      const part = { part: { value: 100e3, tolerance: readTolerance(`${percent} %`) } };
      const { nominal, worst } = worstCase({ series: [part, part] }, "resistor");
      return (worst.max / nominal - 1) * 100;
    },
    [[5, 5]],
  ),
  ...table({ of: "whether the old window holds the new one", source: WORKED, status: "computed" }, within, [
    [[50e3, "20 %", 47e3, "5 %"], true],
    [[50e3, "20 %", 51e3, "5 %"], true],
    [[0.05, "20 %", 0.047, "20 %"], false],
    [[0.05, "20 %", 0.047, "10 %"], true],
    [[20, "+50/-10 %", 22, "20 %"], false],
  ]),
];

/** All checks on circuits. */
export const CIRCUITS = [...CAPACITORS, ...RESISTORS, ...CHARGING, ...STRINGS, ...WINDOWS];
