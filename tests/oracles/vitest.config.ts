import { defineConfig } from "vitest/config";

/**
 * Checks against other people's programs: `npm run test:oracles`. Those that come with the packages are part of `npm test`
 * too; `*.oracle.ts` want the circuit simulator and are not.
 */
export default defineConfig({
  test: { include: ["tests/oracles/**/*.{oracle,test}.ts"], testTimeout: 120_000 },
});
