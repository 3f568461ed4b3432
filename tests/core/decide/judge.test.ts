import { describe, expect, test } from "vitest";
import { judge, type ListedPart, type Place, type Reading, UNKNOWN_PLACE } from "../../../src/core/index.js";
import { partOf, ruled } from "../rate/partOf.js";

const PAPER: Partial<ListedPart> = { value: 2.2e-8, volts: 400 };

function judged(
  className: string,
  role: string,
  stated: Partial<ListedPart>,
  read: Partial<Reading>,
  known: Partial<Place> = {},
) {
  const part = partOf(className, role || null, stated);
  const from = { part, ...ruled(part), place: { ...UNKNOWN_PLACE, ...known }, given: {} };
  return judge({ quantity: "insulation", value: 1, inPlace: false, accuracy: null, ...read }, from);
}

describe("an insulation and a leak at the volts they were read at", () => {
  test("a leak is held to what its place allows at the volts of the test", () => {
    // A bypass is to have 50 MΩ (vintage-radio.com.au): 200 V over 50 MΩ are 4 µA.
    const leak = { quantity: "leakage", atVolts: 200 } as const;
    expect(judged("paper_wax", "screen_bypass", PAPER, { ...leak, value: 4.1e-6 }).verdict).toBe("bad");
    expect(judged("paper_wax", "screen_bypass", PAPER, { ...leak, value: 3.9e-6 }).verdict).toBe("good");
  });

  test("a moulded one may leak 3 µA, whatever its place allows", () => {
    // 3 µA as the wide limit of moulded paper at its working volts (TekWiki, 'Bumble Bee capacitors').
    const leak = { quantity: "leakage", atVolts: 400, value: 3.5e-6 } as const;
    expect(judged("paper_moulded", "screen_bypass", PAPER, leak).verdict).toBe("bad");
    expect(judged("paper_wax", "screen_bypass", PAPER, leak).verdict).toBe("good");
  });

  test("a hand meter's few volts acquit no paper capacitor", () => {
    // "A Simple Way to Test Capacitors": a meter at 3 to 9 V proves nothing about leakage.
    expect(judged("paper_wax", "screen_bypass", PAPER, { value: 500e6, atVolts: 9 }).verdict).toBe(
      "says nothing in place",
    );
    expect(judged("paper_wax", "screen_bypass", PAPER, { value: 1e6, atVolts: 9 }).verdict).toBe("bad");
  });

  test("the reason says the limit, which stands on no part", () => {
    // 250 V and 470 k at half a volt of shift ask for 235 MΩ, worked out in the domain's own figures.
    const found = judged("paper_wax", "coupling_grid", PAPER, { value: 200e6 }, { volts: 250, gridOhms: 470e3 });
    expect(found.because).toBe("at least 235 M is sound");
  });
});

test("a voltage-dependent resistor that an ohmmeter finds open is not condemned", () => {
  const open = { quantity: "resistance", value: Number.POSITIVE_INFINITY } as const;
  expect(judged("thermistor", "", { printed: "R9 VDR" }, open)).toMatchObject({ verdict: "says nothing in place" });
  expect(judged("thermistor", "", { printed: "R9 surge limiter" }, open)).toMatchObject({ verdict: "bad" });
});
