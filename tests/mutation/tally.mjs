/** Writes each mutant that was tried on a line of its own, so that a run may be cut short. */
import { appendFileSync } from "node:fs";
import { declareClassPlugin, PluginKind } from "@stryker-mutator/api/plugin";

class Tally {
  onMutantTested({ status, mutatorName, fileName, location, replacement }) {
    const { line } = location.start;
    const told = { status, mutatorName, file: fileName, line, replacement };
    appendFileSync(process.env.MUTANTS_TOLD ?? "/dev/null", `${JSON.stringify(told)}\n`);
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.Reporter, "tally", Tally)];
