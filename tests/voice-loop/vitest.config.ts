import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/voice-loop/**/*.test.ts"],
    // The commands of many moments take long: they are run where the whole loop is asked for.
    exclude:
      process.env.BRINEBELL_VOICE_LOOP === "full" ? [] : ["tests/voice-loop/moments.test.ts"],
    testTimeout: 3 * 3600_000,
    hookTimeout: 600_000,
    fileParallelism: false,
    disableConsoleIntercept: true,
    env: { TZ: "America/Denver" },
  },
});
