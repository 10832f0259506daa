/** Commands for which a folder without a kitchen is no empty kitchen. */
import { noKitchenIn } from "../session/data-folder.ts";
import { complain } from "./call/print.ts";
import type { Machine } from "./machine.ts";

/** The data could not be read at all; whoever needed it ends with status 3. */
export class CannotRead extends Error {}

/**
 * Names a folder that was chosen and holds no kitchen. Throws `CannotRead` where it is not even
 * there.
 */
export function needsKitchen({ chosen, folder }: Pick<Machine, "chosen" | "folder">): void {
  const odd = chosen ? noKitchenIn(folder) : undefined;
  if (odd?.missing) throw new CannotRead(odd.message);
  if (odd) complain(`brinebell: ${odd.message}`);
}
