/** `rehearse` on a real machine: on the screen in a terminal, as text or JSON elsewhere. */
import type { CommandResult } from "./command-result.ts";
import type { Machine } from "./machine.ts";
import { type RehearseIo, rehearseCommand } from "./rehearse.ts";

export async function rehearseOnMachine(args: string[], machine: Machine): Promise<CommandResult> {
  const io: RehearseIo = {
    library: machine.library,
    readFile: machine.readFile,
    readStdin: machine.readStdin,
    version: machine.version,
  };
  const home = machine.home === undefined ? [] : ["--home", machine.home];
  return rehearseCommand([...args, ...home], io);
}
