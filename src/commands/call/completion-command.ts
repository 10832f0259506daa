/** `brinebell completion SHELL`: prints the script that completes calls in a shell. */
import { CALLS } from "./calls.ts";
import { type CommandResult, failed } from "./command-result.ts";
import { completionScript, SHELLS } from "./completion.ts";
import { parseOptions } from "./options.ts";

export function completionCommand(args: string[], recipes: readonly string[]): CommandResult {
  const parsed = parseOptions(args, CALLS.completion.options);
  if (!parsed.ok) return failed(2, `completion: ${parsed.error}`);
  const shell = SHELLS.find((name) => name === parsed.value.words[0]);
  if (!shell) return failed(2, `completion: name a shell, one of ${SHELLS.join(", ")}`);
  return { code: 0, stdout: completionScript(shell, recipes), stderr: "" };
}
