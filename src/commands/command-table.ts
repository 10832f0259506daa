/** Every command by its name: what it is for, and how it is loaded and run. */
import { existsSync } from "node:fs";
import type { CommandResult } from "./command-result.ts";
import type { Machine } from "./machine.ts";

export type Runner = (
  args: string[],
  machine: Machine,
) => Promise<number | CommandResult | undefined>;

/** `call` is what follows the name; a command without it answers `--help` itself. */
export const COMMANDS: Record<string, { about: string; call?: string; run: Runner }> = {
  rehearse: {
    about: "play a session against a made-up clock",
    call: "RECIPE... [--script FILE|-] [--from T] [--altitude Q] [--jar SIZE] [--speed N|max]",
    run: async (args, machine) => {
      const { rehearseOnMachine } = await import("./rehearse-on-machine.ts");
      return rehearseOnMachine(args, machine);
    },
  },
  recipes: {
    about: "list the recipes, or show one worked out for this kitchen",
    run: async (args, machine) => {
      const { recipesCommand } = await import("./recipes.ts");
      return recipesCommand(args, recipeIo(machine));
    },
  },
  check: {
    about: "the safety check of a recipe",
    run: async (args, machine) => {
      const { checkCommand } = await import("./check.ts");
      return checkCommand(args, recipeIo(machine));
    },
  },
  reckon: {
    about: "one number worked out, with its source and its range",
    run: async (args, machine) => {
      const [what, ...rest] = args;
      if ((what === "process" || what === "jars") && !rest.includes("--help")) {
        const { reckonJars, reckonProcess } = await import("./reckon-recipe.ts");
        return (what === "jars" ? reckonJars : reckonProcess)(rest, recipeIo(machine));
      }
      const { reckonCommand } = await import("./reckon.ts");
      return reckonCommand(args, {
        readFile: machine.readFile,
        get zone() {
          return machine.zone;
        },
      });
    },
  },
  kitchen: {
    about: "show or set altitude, canners, gauge, burners and units",
    call: "[--altitude Q] [--gauge dial|weighted] [--canner-holds N] [--burners N] [--units U]",
    run: async (args, machine) => {
      const { kitchenCommand } = await import("./kitchen.ts");
      return kitchenCommand(args, machine);
    },
  },
  plan: {
    about: "several batches over one kitchen and one pair of hands",
    call: '"RECIPE WEIGHT [VARIETY]"... [--start T] [--finish-by T] [--quiet HOURS] [--begin]',
    run: async (args, machine) => {
      const { planCommand } = await import("./plan.ts");
      return planCommand(args, {
        library: machine.library,
        kitchen: () => keptState(machine),
        zone: machine.zone,
        nowMs: Date.now(),
        elapsedMs: () => performance.now(),
        record: machine,
      });
    },
  },
  review: {
    about: "what actually happened: batches, one batch, lots compared, a season",
    call: "[BATCH] [--html FILE] [--csv] [--markdown] [--season YEAR] [--compare RECIPE] [--json]",
    run: async (args, machine) => (await import("./review.ts")).reviewCommand(args, machine),
  },
  pantry: {
    about: "the jars on the shelf, and what should be eaten first",
    call: "[WORDS] [--season YEAR] [--eaten] [--opened BATCH [--spoiled]] [--place WHERE] [--json]",
    run: async (args, machine) => (await import("./pantry.ts")).pantryCommand(args, machine),
  },
  labels: {
    about: "labels for a batch's jars, to print",
    call: "BATCH [--html FILE] [--pdf FILE] [--sheet SIZE] [--paper SIZE] [--json]",
    run: async (args, machine) => (await import("./labels.ts")).labelsCommand(args, machine),
  },
  seeds: {
    about: "seed lots saved, and their germination tests",
    call: "[add CROP --variety NAME | test LOT 18/20 --days 7] [--json]",
    run: async (args, machine) => (await import("./seeds.ts")).seedsCommand(args, machine),
  },
  export: {
    about: "everything in one file, to move house with",
    call: "FILE [--json]",
    run: async (args, machine) => (await import("./export.ts")).exportCommand(args, machine),
  },
  import: {
    about: "take in what another machine exported, without doubling",
    call: "FILE [--json]",
    run: async (args, machine) => (await import("./import.ts")).importCommand(args, machine),
  },
  reminders: {
    about: "what is due in the days to come, and a calendar file of it (--ics FILE)",
    call: "[--days N] [--ics FILE] [--json]",
    run: async (args, machine) => {
      const { remindersCommand } = await import("./reminders.ts");
      return remindersCommand(args, machine);
    },
  },
  watch: {
    about: "stay in the background and keep the reminders",
    call: "[--once] [--silent] [--json]",
    run: async (args, machine) => {
      const { watchCommand } = await import("./watch.ts");
      return watchCommand(args, {
        folder: machine.folder,
        version: machine.version,
        library: machine.library,
        out: print,
        err: complain,
        ring: (text) => process.stdout.write(text),
        platform: process.platform,
        env: process.env,
        ended: new Promise((resolve) => {
          for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) {
            process.once(signal, () => resolve());
          }
        }),
      });
    },
  },
  tell: {
    about: "hand words to the kitchen that is open",
    call: '"WORDS" [--json]',
    run: async (args, machine) => {
      const { tellCommand } = await import("./tell.ts");
      return tellCommand(args, { folder: machine.folder, out: print, err: complain });
    },
  },
  soundcheck: {
    about: "try speaking and listening",
    call: "[--wake-words WORDS] [--sound FILE] [--json]",
    run: async (args) => {
      const { soundcheckCommand } = await import("./soundcheck.ts");
      return soundcheckCommand(args, { searchPath: process.env.PATH ?? "", out: print });
    },
  },
  understand: {
    about: "show how words are understood",
    call: "[--json] [--now T] [--running ID[:VARIETY],...] < lines.txt",
    run: async (args, machine) => {
      const { understandCommand } = await import("./understand.ts");
      const { createInterface } = await import("node:readline");
      const { recipes } = await machine.library();
      return understandCommand(args, {
        lines: createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY }),
        zone: machine.zone,
        nowMs: Date.now(),
        recipes: [...recipes.values()].map(({ id, title, names }) => ({ id, title, names })),
        out: print,
        err: complain,
      });
    },
  },
};

function recipeIo(machine: Machine): import("./recipe-io.ts").RecipeIo {
  const kitchen = () => keptKitchen(machine);
  return { library: machine.library, readFile: machine.readFile, kitchen };
}

/** The kitchen as its journal has it; undefined where there is none. */
async function keptState({
  folder,
  build,
}: Machine): Promise<import("../kitchen/state.ts").State | undefined> {
  if (!existsSync(folder)) return undefined;
  const { readKitchen } = await import("../session/reading/read-kitchen.ts");
  return readKitchen(folder, { build }).state;
}

/** What the journal says of this kitchen, where there is one; a call's own options go before it. */
async function keptKitchen(machine: Machine): Promise<import("./recipe-io.ts").KeptKitchen> {
  const state = await keptState(machine);
  if (!state) return {};
  const { altitudeFt, altitudeUncertaintyFt, canners } = state.kitchen;
  const [first] = canners;
  return {
    ...(altitudeFt === null ? {} : { altitudeFt, altitudeUncertaintyFt }),
    ...(first?.gauge ? { gauge: first.gauge.kind } : {}),
    ...(first ? { cannerHolds: first.holds } : {}),
  };
}

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}

function complain(line: string): void {
  process.stderr.write(`${line}\n`);
}
