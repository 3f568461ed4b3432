import fc from "fast-check";
import { expect, test } from "vitest";
import { bodyFits } from "../../../src/core/index.js";

const film = { lengthMetres: 0.019, diameterMetres: 0.008 };

test("a film capacitor goes into the shell of a wax one", () => {
  const fit = bodyFits(film, { lengthMetres: 0.038, diameterMetres: 0.014 });
  expect(fit.fits).toBe(true);
  expect(fit.lengthLeftMetres).toBeCloseTo(0.019, 12);
});

test("room for sleeving can make it too tight, and it says by how much", () => {
  const fit = bodyFits(film, { lengthMetres: 0.038, diameterMetres: 0.0085 }, 0.0005);
  expect(fit.fits).toBe(false);
  expect(fit.diameterLeftMetres).toBeCloseTo(-0.0005, 12);
});

test("a room that is larger by as much as is to stay clear fits as a room without: whatever the sizes", () => {
  const metres = fc.double({ min: 1e-3, max: 0.2, noNaN: true });
  fc.assert(
    fc.property(
      metres,
      metres,
      metres,
      metres,
      fc.double({ min: 0, max: 0.01, noNaN: true }),
      (l, d, room, bore, clear) => {
        const body = { lengthMetres: l, diameterMetres: d };
        const bare = bodyFits(body, { lengthMetres: room, diameterMetres: bore });
        const larger = bodyFits(body, { lengthMetres: room + 2 * clear, diameterMetres: bore + 2 * clear }, clear);
        expect(larger.lengthLeftMetres).toBeCloseTo(bare.lengthLeftMetres, 12);
        expect(larger.diameterLeftMetres).toBeCloseTo(bare.diameterLeftMetres, 12);
        expect(bare.fits).toBe(l <= room && d <= bore);
      },
    ),
  );
});
