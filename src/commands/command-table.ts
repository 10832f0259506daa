import { existsSync, realpathSync } from "node:fs";
import type { CommandName } from "./call/calls.ts";
import type { CommandResult } from "./call/command-result.ts";
import { complain, printLine, printText } from "./call/print.ts";
import type { Machine } from "./machine.ts";

type Runner = (args: string[], machine: Machine) => Promise<number | CommandResult | undefined>;

/** How each command is loaded and run; its options and help are in `call/calls.ts`. */
export const RUNNERS: Record<Exclude<CommandName, "open" | "help">, Runner> = {
  rehearse: async (args, machine) => {
    const { rehearseOnMachine } = await import("./rehearse/rehearse-on-machine.ts");
    return rehearseOnMachine(args, machine);
  },
  recipes: async (args, machine) => {
    if (args.some((arg) => /^--for(?:=|$)/.test(arg))) {
      const { asksOfHeap, heapCommand } = await import("./day/heap.ts");
      if (asksOfHeap(args)) return heapCommand(args, planIo(machine));
    }
    const { recipesCommand } = await import("./recipes/recipes.ts");
    return inUnits(machine, await recipesCommand(args, recipeIo(machine)));
  },
  check: async (args, machine) => {
    const { checkCommand } = await import("./recipes/check.ts");
    return inUnits(machine, await checkCommand(args, recipeIo(machine)));
  },
  reckon: async (args, machine) => {
    const [what, ...rest] = args;
    if (what === "process" || what === "jars") {
      const { reckonJars, reckonProcess } = await import("./reckon/reckon-recipe.ts");
      const reckoned = what === "jars" ? reckonJars : reckonProcess;
      return inUnits(machine, await reckoned(rest, recipeIo(machine)));
    }
    const { reckonCommand } = await import("./reckon/reckon.ts");
    return reckonCommand(args, {
      readFile: machine.readFile,
      get zone() {
        return machine.zone;
      },
    });
  },
  kitchen: async (args, machine) => {
    const { kitchenCommand } = await import("./open/kitchen.ts");
    return kitchenCommand(args, machine);
  },
  plan: async (args, machine) => {
    const { planCommand } = await import("./day/plan.ts");
    return planCommand(args, planIo(machine));
  },
  review: async (args, machine) =>
    (await import("./record/review.ts")).reviewCommand(args, machine),
  pantry: async (args, machine) =>
    (await import("./record/pantry.ts")).pantryCommand(args, machine),
  labels: async (args, machine) =>
    (await import("./record/labels.ts")).labelsCommand(args, machine),
  seeds: async (args, machine) => (await import("./record/seeds.ts")).seedsCommand(args, machine),
  words: async (args, machine) => (await import("./record/words.ts")).wordsCommand(args, machine),
  export: async (args, machine) =>
    (await import("./record/export.ts")).exportCommand(args, machine),
  import: async (args, machine) =>
    (await import("./record/import.ts")).importCommand(args, machine),
  reminders: async (args, machine) => {
    const { remindersCommand } = await import("./record/reminders.ts");
    return remindersCommand(args, machine);
  },
  watch: async (args, machine) => {
    const { watchCommand } = await import("./open/watch.ts");
    return watchCommand(args, {
      folder: machine.folder,
      chosen: machine.chosen,
      program: [process.execPath, realpathSync(process.argv[1] ?? "")],
      version: machine.version,
      library: machine.library,
      out: printLine,
      err: complain,
      ring: printText,
      platform: process.platform,
      env: process.env,
      ended: new Promise((resolve) => {
        for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) {
          process.once(signal, () => resolve());
        }
      }),
    });
  },
  tell: async (args, machine) => {
    const { tellCommand } = await import("./open/tell.ts");
    return tellCommand(args, { folder: machine.folder, out: printLine, err: complain });
  },
  soundcheck: async (args) => {
    const { soundcheckCommand } = await import("./open/soundcheck.ts");
    return soundcheckCommand(args, { searchPath: process.env.PATH ?? "", out: printLine });
  },
  understand: async (args, machine) => {
    const { understandCommand } = await import("./open/understand.ts");
    const { createInterface } = await import("node:readline");
    const library = await machine.library();
    return understandCommand(args, {
      lines: createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY }),
      zone: machine.zone,
      nowMs: Date.now(),
      library,
      out: printLine,
      err: complain,
    });
  },
  completion: async (args, machine) => {
    const { completionCommand } = await import("./call/completion-command.ts");
    const { recipes } = await machine.library();
    return completionCommand(args, [...recipes.keys()]);
  },
};

/** The data could not be read at all; whoever needed it ends with status 3. */
export class CannotRead extends Error {}

/** Commands that show what a kitchen holds, and make no sense where there is none. */
export const READERS: ReadonlySet<string> = new Set([
  ...["review", "pantry", "labels", "seeds", "words", "export", "reminders"],
]);

function planIo(machine: Machine): import("./day/plan.ts").PlanIo {
  return {
    library: machine.library,
    kitchen: () => keptState(machine),
    zone: machine.zone,
    nowMs: Date.now(),
    elapsedMs: () => performance.now(),
    record: machine,
  };
}

function recipeIo(machine: Machine): import("./recipes/recipe-io.ts").RecipeIo {
  const kitchen = () => keptKitchen(machine);
  return { library: machine.library, readFile: machine.readFile, kitchen };
}

/** A result with the units of the kitchen, where that can be read; a recipe needs no more of it. */
async function inUnits(machine: Machine, result: CommandResult): Promise<CommandResult> {
  const { folder, build } = machine;
  if (result.forPrograms || !existsSync(folder)) return result;
  const { readKitchen } = await import("../session/reading/read-kitchen.ts");
  return { ...result, units: readKitchen(folder, { build }).state.kitchen.units };
}

/** The kitchen replayed from its journal; undefined where there is none. */
async function keptState(
  machine: Machine,
): Promise<import("../kitchen/state.ts").State | undefined> {
  const { chosen, folder, build } = machine;
  if (!existsSync(folder)) {
    if (chosen) complain(`brinebell: there is no kitchen in ${folder}; nothing is taken from it`);
    return undefined;
  }
  const { readKitchen } = await import("../session/reading/read-kitchen.ts");
  const { state, notices, incomplete, unreadable } = readKitchen(folder, { build });
  if (unreadable !== undefined) throw new CannotRead(unreadable);
  for (const notice of notices) complain(`brinebell: ${notice}`);
  // The result may lack what is missing.
  if (incomplete) process.exitCode = 3;
  return state;
}

/**
 * What the journal says about this kitchen, where there is one; a call's own options override it.
 */
async function keptKitchen(
  machine: Machine,
): Promise<import("./recipes/recipe-io.ts").KeptKitchen> {
  const state = await keptState(machine);
  if (!state) return {};
  const { altitudeFt, altitudeUncertaintyFt, canners, units } = state.kitchen;
  const [first] = canners;
  return {
    units,
    ...(altitudeFt === null ? {} : { altitudeFt, altitudeUncertaintyFt }),
    ...(first?.gauge ? { gauge: first.gauge.kind } : {}),
    ...(first ? { cannerHolds: first.holds } : {}),
  };
}
