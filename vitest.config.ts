import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.{ts,tsx}"],
    exclude: ["tests/bench/**", "tests/voice-loop/**", "tests/page/**"],
    testTimeout: 20_000,
    // One worker a core: by default one core is left idle, on two of them half.
    maxWorkers: "100%",
    // Files share their modules, which takes a third less time: no test may change what it imports.
    isolate: false,
    env: { TZ: "America/Denver" },
  },
});
