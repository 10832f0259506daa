/** How the mutants are made and tried; `run.mjs` names the files. */
export default {
  testRunner: "vitest",
  plugins: ["@stryker-mutator/vitest-runner", "./tests/mutation/tally.mjs"],
  vitest: { configFile: "tests/mutation/vitest.config.ts", related: true },
  mutate: (process.env.MUTATED ?? "").split(",").filter(Boolean),
  // The compiler of today has no interface to read its settings by.
  tsconfigFile: "none.json",
  coverageAnalysis: "perTest",
  ignoreStatic: true,
  concurrency: Number(process.env.MUTANT_JOBS ?? 1),
  // What is said is tested where it is said: here rules are.
  mutator: { excludedMutations: ["StringLiteral", "ObjectLiteral", "Regex", "TemplateLiteral"] },
  timeoutMS: 20_000,
  timeoutFactor: 3,
  dryRunTimeoutMinutes: 20,
  reporters: ["tally"],
  tempDirName: ".stryker",
  cleanTempDir: "always",
  disableTypeChecks: false,
  allowConsoleColors: false,
  logLevel: "warn",
};
