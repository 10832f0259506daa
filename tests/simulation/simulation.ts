/** Runs one seed: a kitchen by chance, its script, and what was broken in it. */
import type { Library } from "../../src/recipe/library.ts";
import { Cook } from "./cook.ts";
import { dice } from "./dice.ts";
import type { Fault } from "./faults-played.ts";
import { scenario } from "./scenario.ts";
import { shrink } from "./shrink.ts";
import { SimulatedKitchen } from "./simulated-kitchen.ts";

export type Run = {
  seed: number;
  args: string[];
  script: string[];
  livedMs: number;
  verdicts: string[];
  faults: Partial<Record<Fault, number>>;
  /** What did not hold; undefined for a good kitchen. */
  broken?: string;
};

/** Lines a kitchen is played for at most. */
const MOST_LINES = 90;

export async function runSeed(seed: number, library: Library): Promise<Run> {
  const chance = dice(seed);
  const args = scenario(chance, library);
  const kitchen = await SimulatedKitchen.open(args, library);
  const cook = new Cook(chance);
  const run = (broken?: string): Run => {
    const { script, livedMs, verdicts, faults } = kitchen;
    return { seed, args, script, livedMs, verdicts, faults, ...(broken ? { broken } : {}) };
  };
  try {
    for (let count = 0; count < MOST_LINES; count++) {
      const line = cook.next(kitchen.session);
      if (line === undefined) break;
      await kitchen.play(line);
    }
    await kitchen.finish();
    return run();
  } catch (error) {
    return run(error instanceof Error ? (error.stack ?? error.message) : String(error));
  }
}

/** Plays a written script; what was broken, or undefined. */
export async function runScript(
  args: string[],
  lines: readonly string[],
  library: Library,
): Promise<string | undefined> {
  const kitchen = await SimulatedKitchen.open(args, library);
  try {
    for (const line of lines) await kitchen.play(line);
    await kitchen.finish();
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

const rule = (broken: string): string => broken.replace(/^Error: /, "").split(":")[0] ?? "";

/** The shortest script with the same fault, for `brinebell rehearse ARGS --script -`. */
export async function shortest(run: Run, library: Library): Promise<string[]> {
  const same = rule(run.broken ?? "");
  return shrink(run.script, async (lines) => {
    const broken = await runScript(run.args, lines, library);
    return broken !== undefined && rule(broken) === same;
  });
}
