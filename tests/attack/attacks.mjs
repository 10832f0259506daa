/** All attacks, by name. */
import { damagedJournal } from "./damaged-journal.mjs";
import { lostTerminal } from "./lost-terminal.mjs";
import { archives, locks, outputs, typing, zones } from "./odds.mjs";
import { stalledTerminal } from "./stalled-terminal.mjs";
import { swappedFiles } from "./swapped-files.mjs";

export const ATTACKS = {
  "stalled-terminal": stalledTerminal,
  "lost-terminal": lostTerminal,
  "swapped-files": swappedFiles,
  "damaged-journal": damagedJournal,
  zones,
  locks,
  outputs,
  typing,
  archives,
};
