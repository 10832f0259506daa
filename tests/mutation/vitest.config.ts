import { defineConfig } from "vitest/config";

/**
 * The tests that hold the files a verdict rests on: each is quick, since a mutant runs all that
 * cover it. Whole days are left to the suite.
 */
export default defineConfig({
  test: {
    include: [
      "tests/kitchen/*.test.ts",
      "tests/review/verdict*.test.ts",
      "tests/published/process-*.test.ts",
      "tests/recipe/{choose-process,*-gate,near-neighbors,recipe-for,refused-and-offered}.test.ts",
      "tests/language/{clearing,answers/*}.test.ts",
    ],
    exclude: ["tests/kitchen/{life,shelf,plain-readings}.test.ts"],
    testTimeout: 60_000,
    isolate: false,
    env: { TZ: "America/Denver" },
  },
});
