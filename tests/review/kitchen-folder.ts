/** A kitchen's data folder made of events. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openJournal } from "../../src/journal/open-journal.ts";
import { realDisk } from "../../src/journal/real-disk.ts";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { initialState } from "../../src/kitchen/state.ts";
import { recordOf } from "../../src/session/reading/journal-records.ts";
import { ZONE } from "./demo-season.ts";

/** A data folder with a journal of these events; `done` removes it. */
export function kitchenFolder(events: readonly KitchenEvent[]): {
  folder: string;
  done(): void;
} {
  const folder = mkdtempSync(join(tmpdir(), "brinebell-review-"));
  const { journal } = openJournal(realDisk(), folder, { year: () => 2027 });
  const state = { ...initialState(), zone: ZONE };
  for (let at = 0; at < events.length; at += 500) {
    const part = events.slice(at, at + 500).map((event) => recordOf(state, event));
    const added = journal.append(part);
    if (!added.ok) throw new Error(added.message);
  }
  journal.close();
  return { folder, done: () => rmSync(folder, { recursive: true, force: true }) };
}
