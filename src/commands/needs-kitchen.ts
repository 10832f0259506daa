/** Commands for which a folder without a kitchen is no empty kitchen. */
import { noKitchenIn } from "../session/data-folder.ts";
import { type CommandResult, failed } from "./call/command-result.ts";
import { complain } from "./call/print.ts";
import type { Machine } from "./machine.ts";

/** Names a folder that was chosen and holds no kitchen; a failed result where it is not there. */
export function needsKitchen(
  name: string,
  { chosen, folder }: Pick<Machine, "chosen" | "folder">,
): CommandResult | undefined {
  const odd = chosen ? noKitchenIn(folder) : undefined;
  if (odd?.missing) return failed(3, `${name}: ${odd.message}`);
  if (odd) complain(`brinebell ${name}: ${odd.message}`);
  return undefined;
}
