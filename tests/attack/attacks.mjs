/** All attacks, by name. */
import { lostTerminal } from "./lost-terminal.mjs";
import { stalledTerminal } from "./stalled-terminal.mjs";
import { swappedFiles } from "./swapped-files.mjs";

export const ATTACKS = {
  "stalled-terminal": stalledTerminal,
  "lost-terminal": lostTerminal,
  "swapped-files": swappedFiles,
};
