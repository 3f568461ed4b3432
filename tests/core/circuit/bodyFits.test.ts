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
