import { describe, expect, test } from "vitest";
import { type Basket, firstPlans, vendorReasons, whyHere } from "../../../src/core/index.js";
import { basketOf, lineOf, offerOf, vendorOf } from "./makers.js";

const planOf = (basket: Basket) => [...firstPlans(basket)].at(-1)!;
describe("why a plan is as it is", () => {
  const parcel = basketOf(
    [vendorOf("A"), vendorOf("B")],
    [offerOf("A-1", 0.5), offerOf("A-2", 0.6), offerOf("B-2", 0.1)],
    [lineOf("R1", 3, ["A-1"]), lineOf("R2", 2, ["A-2", "B-2"])],
  );

  test("a parcel that costs more than it saves: 2 x 0.60 - 2 x 0.10 is 1.00, the parcel 4.00", () => {
    expect(whyHere(parcel, planOf(parcel), "A-2")).toBe("B-2 is 1.00 cheaper, but a parcel from B costs 4.00");
    expect(whyHere(parcel, planOf(parcel), "A-1")).toBe("the only offer that fits");
  });

  test("goods that keep shipping free: 9 x 1.00 + 2 x 1.00 at A reaches 10.00", () => {
    const basket = basketOf(
      [vendorOf("A", { freeFrom: 10 }), vendorOf("B", { shipping: 0 })],
      [offerOf("A-1", 1), offerOf("A-2", 1), offerOf("B-2", 0.9)],
      [lineOf("R1", 9, ["A-1"]), lineOf("R2", 2, ["A-2", "B-2"])],
    );
    const plan = {
      ...planOf(basket),
      orders: [
        { offer: "A-1", units: 9 },
        { offer: "A-2", units: 2 },
      ],
      supplies: [
        { offer: "A-1", line: "R1", pieces: 9 },
        { offer: "A-2", line: "R2", pieces: 2 },
      ],
    };
    expect(whyHere(basket, plan, "A-2")).toBe(
      "B-2 is 0.20 cheaper, but this keeps A above 10.00, from where shipping is free",
    );
  });

  test("goods that nobody wants are there for their vendor's threshold", () => {
    const extra = { ...planOf(parcel), orders: [...planOf(parcel).orders, { offer: "B-2", units: 1 }] };
    expect(whyHere(parcel, extra, "B-2")).toBe("fills the order up to what its vendor asks for");
  });

  test("a vendor is there for what only it has, or for what it spares", () => {
    expect(vendorReasons(parcel, planOf(parcel))).toEqual([{ vendor: "A", because: "Only A has R1." }]);
    const cheaper = basketOf(
      [vendorOf("A"), vendorOf("B")],
      [offerOf("A-1", 0.5), offerOf("B-1", 0.9)],
      [lineOf("R1", 10, ["A-1", "B-1"])],
    );
    // 10 x 0.90 instead of 10 x 0.50, shipping the same
    expect(whyHere(cheaper, planOf(cheaper), "A-1")).toBe("the cheapest that fits");
    expect(vendorReasons(cheaper, planOf(cheaper))).toEqual([
      { vendor: "A", because: "Without it the order is about 4.00 dearer." },
    ]);
  });
});
