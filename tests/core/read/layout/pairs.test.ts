import { expect, test } from "vitest";
import { partOf, readText } from "../readText.js";

test("entries side by side may each go on below, without any head", () => {
  const text = `R2    Resistor, 47,000 ohms           C2    Capacitor, 20 uF,
        +-10%, 1 watt                         25 V, electrolytic
R3    Resistor, 470 ohms              C3    Same as C1
        +-10%, 1/2 watt
R5    Potentiometer, 500,000          L1    Choke, 10 henries
        ohms, audio taper`;
  expect(readText(text).parts.map((part) => part.designators[0])).toEqual(["R2", "R3", "R5", "C2", "C3", "L1"]);
  expect(partOf(text, "R2")).toMatchObject({ value: 47e3, watts: 1, tolerance: { minus: 0.1, plus: 0.1 } });
  expect(partOf(text, "C2")).toMatchObject({ value: 20e-6, volts: 25, watts: null, dielectric: "electrolytic" });
  expect(partOf(text, "R5")).toMatchObject({ kind: "potentiometer", value: 500e3 });
});

test("a dash between a name and its value makes no range", () => {
  const text = `R1 - 2 megohms                 C1 - 0.01 uf, mica
R3 - 250,000 ohms, 1/2 watt    C3, C4 - 8 uf, 450 volts`;
  expect(partOf(text, "R1")).toMatchObject({ value: 2e6, quantity: 1 });
  expect(partOf(text, "C4")).toMatchObject({ value: 8e-6, volts: 450, quantity: 2 });
  expect(partOf(text, "R3").volts).toBeNull();
});

test("a name and a number that look like pages are a part and its value", () => {
  const text = " R-1   5M           C-1   .02\n R-2   100M  1W     C-2   47";
  expect(readText(text).parts.map((part) => part.designators[0])).toEqual(["R-1", "C-1", "R-2", "C-2"]);
});
