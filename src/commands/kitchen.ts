/** `brinebell kitchen`: shows and sets what this kitchen is. */
import type { CommandResult } from "./command-result.ts";
import type { Machine } from "./run.ts";

export async function kitchenCommand(_args: string[], machine: Machine): Promise<CommandResult> {
  return { code: 0, stdout: `${machine.folder}\n`, stderr: "" };
}
