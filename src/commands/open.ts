/** `brinebell`: opens the kitchen. */
import type { CommandResult } from "./command-result.ts";
import type { Machine } from "./run.ts";

export async function openCommand(_args: string[], machine: Machine): Promise<CommandResult> {
  return { code: 0, stdout: `${machine.folder}\n`, stderr: "" };
}
