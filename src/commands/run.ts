/** Finds and runs the command that a call asks for. */

import { CALLS } from "./call/calls.ts";
import { type CommandResult, failed, inItsUnits } from "./call/command-result.ts";
import { asksHelp, commandHelp, helpText } from "./call/help.ts";
import { nearestName } from "./call/nearest.ts";
import { printText } from "./call/print.ts";
import { safeOutput } from "./call/safe-output.ts";
import { CannotRead, READERS, RUNNERS } from "./command-table.ts";
import { machineFor } from "./machine.ts";
import { needsKitchen } from "./needs-kitchen.ts";

/** Takes `--home DIR` out of a call, anywhere before a `--`. */
function takeHome(args: string[]): { rest: string[]; home?: string; missing?: boolean } {
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

/** Help, where a call asks for it: for the program, or for one command. */
export function helpFor(
  name: string | undefined,
  words: readonly string[],
  version: string,
): CommandResult | undefined {
  const told = (stdout: string): CommandResult => ({ code: 0, stdout, stderr: "" });
  if (name === "--help" || name === "-h") return told(helpText(version));
  if (name === "help") {
    const [about, ...rest] = words;
    if (about === undefined || asksHelp(words)) return told(helpText(version));
    const help = commandHelp(about, rest);
    return help === undefined ? noCommand(about) : told(help);
  }
  const help = asksHelp(words) ? commandHelp(name, words) : undefined;
  return help === undefined ? undefined : told(help);
}

function noCommand(name: string): CommandResult {
  const nearest = nearestName(name, Object.keys(CALLS));
  const mend = nearest ? `did you mean ${nearest}?` : "brinebell --help lists the commands";
  return failed(2, `${JSON.stringify(name)}: there is no such command; ${mend}`);
}

/** Runs a call and returns its exit status. */
export async function run(
  args: string[],
  version: string,
  build: string,
): Promise<number | undefined> {
  const { rest, home, missing } = takeHome(args);
  if (missing) return finish(failed(2, "--home needs a folder: --home DIR"));
  const [name, ...words] = rest;
  const help = helpFor(name, words, version);
  if (help) return finish(help);
  const machine = machineFor(home, version, build);
  if (name === undefined || name.startsWith("-")) {
    const { openCommand } = await import("./open/open.ts");
    return finish(await openCommand(rest, machine));
  }
  const runner = Object.hasOwn(RUNNERS, name) ? RUNNERS[name as keyof typeof RUNNERS] : undefined;
  if (!runner) return finish(noCommand(name));
  const lacking = READERS.has(name) ? needsKitchen(name, machine) : undefined;
  if (lacking) return finish(lacking);
  try {
    const status = await finish(await runner(words, machine));
    // A command that had to do without part of the data has already set the status.
    return status === 0 || process.exitCode === 3 ? undefined : status;
  } catch (error) {
    if (!(error instanceof CannotRead)) throw error;
    return finish(failed(3, `${name}: ${error.message}`));
  }
}

async function finish(result: number | CommandResult | undefined): Promise<number | undefined> {
  if (result === undefined || typeof result === "number") return result;
  const { code, stdout, stderr } = await inItsUnits(result);
  if (stdout) printText(await safeOutput(stdout));
  if (stderr) process.stderr.write(await safeOutput(stderr));
  return code;
}
