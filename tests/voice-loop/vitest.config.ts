import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/voice-loop/**/*.test.ts"],
    testTimeout: 3 * 3600_000,
    hookTimeout: 600_000,
    fileParallelism: false,
    disableConsoleIntercept: true,
    env: { TZ: "America/Denver" },
  },
});
