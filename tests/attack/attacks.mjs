/** All attacks, by name. */
import { stalledTerminal } from "./stalled-terminal.mjs";

export const ATTACKS = {
  "stalled-terminal": stalledTerminal,
};
