import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.{ts,tsx}"],
    exclude: ["tests/bench/**", "tests/voice-loop/**", "tests/page/**"],
    testTimeout: 20_000,
    env: { TZ: "America/Denver" },
  },
});
