import { defineConfig } from "vitest/config";

/** Checks against other people's programs: `npm run test:oracles`. They are no part of `npm test`, which needs none of them. */
export default defineConfig({
  test: { include: ["tests/oracles/**/*.oracle.ts"], testTimeout: 120_000 },
});
