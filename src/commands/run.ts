/** Which command the words of a call ask for, and what it is handed of the machine. */
import { closeSync, openSync, readFileSync, readSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { CommandResult } from "./command-result.ts";
import { failed } from "./command-result.ts";
import { nearestName } from "./nearest.ts";

export type Machine = {
  version: string;
  home: string | undefined;
  folder: string;
  zone: string;
  library(): Promise<import("../recipe/library.ts").Library>;
  readFile(path: string, mostBytes?: number): string;
  writeFile(path: string, content: string | Uint8Array): void;
  readStdin(): Promise<string>;
};

type Runner = (args: string[], machine: Machine) => Promise<number | CommandResult | undefined>;

/** Where the built program and its recipes lie. */
const HERE = fileURLToPath(new URL(".", import.meta.url));

/** From a chunk of the build or from the source, the folder that holds `recipes/`. */
function programFolder(): string {
  for (const up of ["..", join("..", ".."), "."]) {
    const folder = join(HERE, up);
    try {
      readFileSync(join(folder, "recipes", "tables.yaml"));
      return folder;
    } catch {
      // Look one folder further up.
    }
  }
  return join(HERE, "..");
}

/** Reads a file up to a limit and one byte more, so that a huge one costs nothing. */
function readSome(path: string, mostBytes = Number.POSITIVE_INFINITY): string {
  if (mostBytes === Number.POSITIVE_INFINITY) return readFileSync(path, "utf8");
  const file = openSync(path, "r");
  try {
    const bytes = Buffer.alloc(mostBytes + 1);
    let length = 0;
    for (let more = 1; more > 0 && length < bytes.length; length += more) {
      more = readSync(file, bytes, length, bytes.length - length, null);
    }
    return bytes.toString("utf8", 0, length);
  } finally {
    closeSync(file);
  }
}

async function readStdin(): Promise<string> {
  let text = "";
  process.stdin.setEncoding("utf8");
  for await (const chunk of process.stdin) text += chunk;
  return text;
}

async function machineFor(home: string | undefined, version: string): Promise<Machine> {
  const { dataFolder, ownRecipes } = await import("../session/data-folder.ts");
  const folder = dataFolder(home, process.env);
  return {
    version,
    home,
    folder,
    zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    async library() {
      const { loadLibrary } = await import("../session/load-library.ts");
      const program = programFolder();
      const known = parsedByBuild(program);
      return loadLibrary([join(program, "recipes"), ownRecipes(folder)], known);
    },
    readFile: readSome,
    writeFile: (path, content) => writeFileSync(path, content, { mode: 0o600 }),
    readStdin,
  };
}

function parsedByBuild(program: string): import("../session/load-library.ts").ParsedByDigest {
  try {
    return JSON.parse(readFileSync(join(program, "dist", "recipes.json"), "utf8"));
  } catch {
    return {};
  }
}

const COMMANDS: Record<string, { about: string; run: Runner }> = {
  rehearse: {
    about: "play a session against a made-up clock",
    run: async (args, machine) => {
      const { rehearseOnMachine } = await import("./rehearse-on-machine.ts");
      return rehearseOnMachine(args, machine);
    },
  },
  recipes: {
    about: "list the recipes, or show one worked out for this kitchen",
    run: async (args, machine) => {
      const { recipesCommand } = await import("./recipes.ts");
      return recipesCommand(args, await recipeIo(machine));
    },
  },
  check: {
    about: "the safety check of a recipe",
    run: async (args, machine) => {
      const { checkCommand } = await import("./check.ts");
      return checkCommand(args, await recipeIo(machine));
    },
  },
  reckon: {
    about: "one number worked out, with its source and its range",
    run: async (args, machine) => {
      const { reckonCommand } = await import("./reckon.ts");
      return reckonCommand(args, {
        readFile: machine.readFile,
        zone: machine.zone,
        process: async (rest) => {
          const { reckonProcess } = await import("./reckon-recipe.ts");
          return reckonProcess(rest, await recipeIo(machine));
        },
        jars: async (rest) => {
          const { reckonJars } = await import("./reckon-recipe.ts");
          return reckonJars(rest, await recipeIo(machine));
        },
      });
    },
  },
  kitchen: {
    about: "show or set altitude, canners, gauge, burners and units",
    run: async (args, machine) => {
      const { kitchenCommand } = await import("./kitchen.ts");
      return kitchenCommand(args, machine);
    },
  },
  plan: {
    about: "several batches over one kitchen and one pair of hands",
    run: async (args, machine) => {
      const { planCommand } = await import("./plan.ts");
      return planCommand(args, {
        library: machine.library,
        kitchen: () => keptState(machine.folder),
        zone: machine.zone,
        nowMs: Date.now(),
        elapsedMs: () => performance.now(),
      });
    },
  },
  reminders: {
    about: "what is due in the days to come, and a calendar file of it (--ics FILE)",
    run: async (args, machine) => {
      const { remindersCommand } = await import("./reminders.ts");
      return remindersCommand(args, machine);
    },
  },
  watch: {
    about: "stay in the background and keep the reminders",
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
    run: async (args, machine) => {
      const { tellCommand } = await import("./tell.ts");
      return tellCommand(args, { folder: machine.folder, out: print, err: complain });
    },
  },
  understand: {
    about: "show how words are understood",
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

async function recipeIo(machine: Machine): Promise<import("./recipe-io.ts").RecipeIo> {
  const kitchen = await keptKitchen(machine.folder);
  return { library: machine.library, readFile: machine.readFile, ...(kitchen ? { kitchen } : {}) };
}

/** The kitchen as its journal has it; undefined where there is none. */
async function keptState(folder: string): Promise<import("../kitchen/state.ts").State | undefined> {
  const { existsSync } = await import("node:fs");
  if (!existsSync(folder)) return undefined;
  const { readKitchen } = await import("../session/read-kitchen.ts");
  return readKitchen(folder).state;
}

/** What the journal says of this kitchen, where there is one; a call's own options go before it. */
async function keptKitchen(folder: string): Promise<import("./recipe-io.ts").RecipeIo["kitchen"]> {
  const state = await keptState(folder);
  if (!state) return undefined;
  const { altitudeFt, canners } = state.kitchen;
  const [first] = canners;
  return {
    ...(altitudeFt === null ? {} : { altitudeFt }),
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

/** Takes `--home DIR` out of a call, wherever it stands before a `--`. */
export function takeHome(args: string[]): { rest: string[]; home?: string; missing?: boolean } {
  const rest: string[] = [];
  let home: string | undefined;
  for (let index = 0; index < args.length; index++) {
    const arg = args[index] ?? "";
    if (arg === "--") return { rest: [...rest, ...args.slice(index)], ...(home ? { home } : {}) };
    if (arg === "--home") {
      home = args[++index];
      if (!home || home.startsWith("--")) return { rest, missing: true };
    } else if (arg.startsWith("--home=")) home = arg.slice("--home=".length);
    else rest.push(arg);
  }
  return home ? { rest, home } : { rest };
}

function helpText(version: string): string {
  const width = Math.max(...Object.keys(COMMANDS).map((name) => name.length));
  const list = Object.entries(COMMANDS).map(([name, { about }]) => {
    return `  brinebell ${name.padEnd(width)}  ${about}`;
  });
  return [
    `Brinebell ${version}: a talking kitchen hand for putting food by.`,
    "",
    `  brinebell ${"".padEnd(width)}  open the kitchen (--plain: lines of text, --listen: be heard)`,
    ...list,
    "",
    "Every command that prints facts takes --json; --home DIR names the data folder.",
    "Follow a current tested recipe and your local extension service. This program keeps",
    "the record; it cannot see the jar.",
    "",
  ].join("\n");
}

/** Runs a call; gives its exit status. */
export async function run(args: string[], version: string): Promise<number | undefined> {
  const { rest, home, missing } = takeHome(args);
  if (missing) return finish(failed(2, "--home needs a folder: --home DIR"));
  const [name, ...words] = rest;
  if (name === "--help" || name === "-h" || name === "help") {
    process.stdout.write(helpText(version));
    return 0;
  }
  const machine = await machineFor(home, version);
  if (name === undefined || name.startsWith("-")) {
    const { openCommand } = await import("./open.ts");
    return finish(await openCommand(rest, machine));
  }
  const command = COMMANDS[name];
  if (!command) {
    const nearest = nearestName(name, Object.keys(COMMANDS));
    const mend = nearest ? `did you mean ${nearest}?` : "brinebell --help lists the commands";
    return finish(failed(2, `there is no command ${JSON.stringify(name)}; ${mend}`));
  }
  return finish(await command.run(words, machine));
}

function finish(result: number | CommandResult | undefined): number | undefined {
  if (result === undefined || typeof result === "number") return result;
  if (result.stdout) process.stdout.write(result.stdout);
  if (result.stderr) process.stderr.write(result.stderr);
  return result.code;
}
