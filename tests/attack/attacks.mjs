/** All attacks, by name. */
import { damagedJournal } from "./damaged-journal.mjs";
import { escapes } from "./escapes.mjs";
import { lostTerminal } from "./lost-terminal.mjs";
import { archives, locks, typing, zones } from "./odds.mjs";
import { fullDevices, namedFiles, outputs } from "./outputs.mjs";
import { stalledTerminal } from "./stalled-terminal.mjs";
import { swappedFiles } from "./swapped-files.mjs";
import { watches } from "./watches.mjs";
import { windows } from "./windows.mjs";

export const ATTACKS = {
  "stalled-terminal": stalledTerminal,
  "lost-terminal": lostTerminal,
  "swapped-files": swappedFiles,
  "damaged-journal": damagedJournal,
  zones,
  locks,
  outputs,
  "full-devices": fullDevices,
  "named-files": namedFiles,
  typing,
  escapes,
  archives,
  watches,
  windows,
};
