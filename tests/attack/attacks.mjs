/** All attacks, by name. */
import { lostTerminal } from "./lost-terminal.mjs";
import { stalledTerminal } from "./stalled-terminal.mjs";

export const ATTACKS = {
  "stalled-terminal": stalledTerminal,
  "lost-terminal": lostTerminal,
};
