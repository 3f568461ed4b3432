import { describe, expect, test } from "vitest";
import {
  dcStringShare,
  type Network,
  networkValue,
  rippleOf,
  sharesOf,
  stringShare,
  voltsAfter,
  warmupPeak,
} from "../../src/core/index.js";
import { hasNgspice, simulate } from "./ngspice.js";

/** Elements of a network between two nodes, named by the element's letter; node names count up from `next`. */
function elementsOf(network: Network, letter: "R" | "C", from: string, to: string): string[] {
  let next = 0;
  const lines: string[] = [];
  lay(network, from, to);
  return lines;

  function lay(inner: Network, a: string, b: string): void {
    if ("part" in inner) {
      lines.push(`${letter}${lines.length} ${a} ${b} ${inner.part}`);
    } else if ("parallel" in inner) {
      for (const one of inner.parallel) lay(one, a, b);
    } else {
      const nodes = [a, ...inner.series.slice(1).map(() => `n${next++}`), b];
      inner.series.forEach((one, i) => {
        lay(one, nodes[i]!, nodes[i + 1]!);
      });
    }
  }
}

const near = (found: number | undefined, wanted: number, ratio: number) =>
  expect(Math.abs(found! / wanted - 1)).toBeLessThan(ratio);

describe.skipIf(!hasNgspice)("resistors, after the simulator", () => {
  const networks: Network[] = [
    { series: [{ part: 220_000 }, { part: 100_000 }] },
    { parallel: [{ series: [{ part: 47_000 }, { part: 33_000 }] }, { part: 100_000 }] },
    { series: [{ parallel: [{ part: 100 }, { part: 250 }] }, { parallel: [{ part: 350 }, { part: 200 }] }] },
    { series: [{ parallel: [{ series: [{ part: 10 }, { part: 22 }] }, { part: 47 }] }, { part: 68 }] },
  ];

  test.each(networks)("a network on 250 V draws and shares what we say: %j", (network) => {
    const elements = elementsOf(network, "R", "top", "0");
    const power = elements.map((_, i) => `print @r${i}[p]`);
    const found = simulate(["V1 top 0 250", ...elements], ["op", "print i(v1)", ...power]);
    const whole = 250 ** 2 / networkValue(network, "resistor");
    near(found.get("i(v1)"), -250 / networkValue(network, "resistor"), 1e-4);
    sharesOf(network, "resistor").forEach((share, i) => {
      near(found.get(`@r${i}[p]`), share.power * whole, 1e-4);
    });
  });
});

describe.skipIf(!hasNgspice)("capacitors, after the simulator", () => {
  test("8 and 16 uF in series share a rising 450 V by capacitance", () => {
    const circuit = ["V1 top 0 PWL(0 0 1m 450)", "C1 top mid 8u IC=0", "C2 mid 0 16u IC=0", "Rleak mid 0 1T"];
    const found = simulate(circuit, ["tran 10u 1m uic", "meas tran lower FIND v(mid) AT=1m"]);
    near(found.get("lower"), stringShare([8e-6, 16e-6], 450)[1]!, 1e-3);
  });

  test("at dc their leakage decides, and equal resistors across them pull them together", () => {
    const across = (balance: string[]) =>
      simulate(["V1 top 0 450", "R1 top mid 2Meg", "R2 mid 0 1Meg", ...balance], ["op", "print v(mid)"]).get("v(mid)");
    near(across([]), dcStringShare([2e6, 1e6], 450)[1]!, 1e-4);
    near(across(["R3 top mid 100k", "R4 mid 0 100k"]), dcStringShare([2e6, 1e6], 450, 100e3)[1]!, 1e-4);
  });

  test("20 uF empties through 100 k as we say, at one, two and five time constants", () => {
    const circuit = ["C1 top 0 20u IC=450", "R1 top 0 100k"];
    const times = [2, 4, 10];
    const found = simulate(circuit, ["tran 1m 10 uic", ...times.map((t) => `meas tran v${t} FIND v(top) AT=${t}`)]);
    for (const seconds of times) {
      near(found.get(`v${seconds}`), voltsAfter({ farads: 20e-6, ohms: 100e3, fromVolts: 450, seconds }), 2e-3);
    }
  });
});

describe.skipIf(!hasNgspice)("the ripple on a first filter capacitor, against the simulator", () => {
  const supplies = [
    { peakVolts: 350, ohms: 6000, farads: 16e-6, hertz: 60, fullWave: false, sourceOhms: 100, mostHigh: 0.25 },
    { peakVolts: 350, ohms: 6000, farads: 40e-6, hertz: 60, fullWave: false, sourceOhms: 100, mostHigh: 0.25 },
    { peakVolts: 165, ohms: 2500, farads: 50e-6, hertz: 60, fullWave: false, sourceOhms: 25, mostHigh: 0.25 },
    { peakVolts: 350, ohms: 6000, farads: 16e-6, hertz: 50, fullWave: true, sourceOhms: 100, mostHigh: 0.6 },
    { peakVolts: 425, ohms: 4000, farads: 20e-6, hertz: 60, fullWave: true, sourceOhms: 200, mostHigh: 0.6 },
  ];

  /** The estimate leaves out the time in which the rectifier conducts: it reads high by up to `mostHigh`, never low. */
  test.each(supplies)("the estimate is never low, and high by no more than we say: %j", (supply) => {
    const { top, low, mean } = filter(supply);
    const estimate = rippleOf({ ...supply, peakVolts: top, amperes: mean / supply.ohms });
    const high = estimate.peakToPeakVolts / (top - low) - 1;
    console.log(
      `ripple ${(top - low).toFixed(1)} V, estimate ${(high * 100).toFixed(0)} % high; mean ${mean.toFixed(1)} V`,
    );
    expect(high).toBeGreaterThan(0);
    expect(high).toBeLessThan(supply.mostHigh);
    near(estimate.meanVolts, mean, 0.03);
  });

  test("while no tube draws current the capacitor rises to the peak we say, as far as the rectifier lets it", () => {
    const [supply] = supplies;
    const windingVolts = supply!.peakVolts / Math.SQRT2;
    near(filter({ ...supply!, ohms: 100e6 }).top, warmupPeak({ windingVolts, lineVolts: 117, designVolts: 117 }), 0.01);
  });

  /** Highest, lowest and mean volts of the settled filter; the rectifier is nearly without drop, the winding is not. */
  function filter({ peakVolts, ohms, farads, hertz, fullWave, sourceOhms }: (typeof supplies)[number]) {
    const circuit = [
      `V1 a 0 SIN(0 ${peakVolts} ${hertz})`,
      "D1 a b rectifier",
      `V2 c 0 SIN(0 ${fullWave ? -peakVolts : -1} ${hertz})`,
      "D2 c b rectifier",
      `Rs b out ${sourceOhms}`,
      `C1 out 0 ${farads}`,
      `RL out 0 ${ohms}`,
      ".model rectifier D(N=0.05 RS=0.01)",
    ];
    const over = "from=1.9 to=2";
    const measures = [`top MAX v(out) ${over}`, `low MIN v(out) ${over}`, `mean AVG v(out) ${over}`];
    const found = simulate(circuit, ["tran 20u 2 1.9 20u uic", ...measures.map((measure) => `meas tran ${measure}`)]);
    return { top: found.get("top")!, low: found.get("low")!, mean: found.get("mean")! };
  }
});
