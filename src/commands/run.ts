/** Which command the words of a call ask for. */
import type { CommandResult } from "./command-result.ts";
import { failed } from "./command-result.ts";
import { COMMANDS } from "./command-table.ts";
import { machineFor } from "./machine.ts";
import { nearestName } from "./nearest.ts";
import { safeOutput } from "./safe-output.ts";

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
  const none = "".padEnd(width);
  return [
    `Brinebell ${version}: a talking kitchen hand for putting food by.`,
    "",
    `  brinebell ${none}  open the kitchen (--plain: lines of text, --listen: be heard)`,
    ...list,
    "",
    "Every command that prints facts takes --json; --home DIR names the data folder.",
    "Follow a current tested recipe and your local extension service. This program keeps",
    "the record; it cannot see the jar.",
    "",
  ].join("\n");
}

function commandCalled(name: string | undefined): (typeof COMMANDS)[string] | undefined {
  return name !== undefined && Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
}

/** How a command is called, where `--help` stands among its words before a `--`. */
export function helpOf(name: string | undefined, words: readonly string[]): string | undefined {
  const command = commandCalled(name);
  const end = words.indexOf("--");
  const options = end < 0 ? words : words.slice(0, end);
  if (command?.call === undefined || !options.includes("--help")) return undefined;
  return `brinebell ${name} ${command.call}\n  ${command.about}\n`;
}

/** Runs a call; gives its exit status. */
export async function run(
  args: string[],
  version: string,
  build: string,
): Promise<number | undefined> {
  const { rest, home, missing } = takeHome(args);
  if (missing) return finish(failed(2, "--home needs a folder: --home DIR"));
  const [name, ...words] = rest;
  if (name === "--help" || name === "-h" || name === "help") {
    process.stdout.write(helpText(version));
    return 0;
  }
  const call = helpOf(name, words);
  if (call) return finish({ code: 0, stdout: call, stderr: "" });
  const machine = machineFor(home, version, build);
  if (name === undefined || name.startsWith("-")) {
    const { openCommand } = await import("./open.ts");
    return finish(await openCommand(rest, machine));
  }
  const command = commandCalled(name);
  if (!command) {
    const nearest = nearestName(name, Object.keys(COMMANDS));
    const mend = nearest ? `did you mean ${nearest}?` : "brinebell --help lists the commands";
    return finish(failed(2, `${JSON.stringify(name)}: there is no such command; ${mend}`));
  }
  return finish(await command.run(words, machine));
}

async function finish(result: number | CommandResult | undefined): Promise<number | undefined> {
  if (result === undefined || typeof result === "number") return result;
  if (result.stdout) process.stdout.write(await safeOutput(result.stdout));
  if (result.stderr) process.stderr.write(await safeOutput(result.stderr));
  return result.code;
}
