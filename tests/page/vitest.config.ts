import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/page/**/*.test.ts"],
    testTimeout: 120_000,
    hookTimeout: 120_000,
    env: { TZ: "America/Denver" },
  },
});
