/** What jars on the shelf and seed in the drawer will need in the months to come. */
import { lotsIn } from "../../kitchen/jars/lots.ts";
import { wallFor } from "../../kitchen/places.ts";
import { batchName, lotName } from "../../kitchen/spoken-names.ts";
import type { State } from "../../kitchen/state.ts";
import { DAY_MS, localFields, parseIso } from "../../kitchen/time.ts";
import { addDays, dateOf } from "../dates.ts";
import { openedOf } from "./pantry.ts";
import { DAY_HOUR, nextSpring } from "./reminder-hours.ts";
import { shelfJars } from "./shelf-jars.ts";
import { KEEPING, type Keep } from "./shelf-life.ts";
import type { FoundReminder } from "./upcoming.ts";

/** Jars past their best, by where they are kept; those that keep the shortest are eaten first. */
export function shelf(state: State, now: number, wallNow: number): FoundReminder[] {
  return Object.values(state.batches)
    .flatMap(lotsIn)
    .flatMap((one) => {
      let opened = openedOf(one.lot);
      const byKeep = new Map<Keep, FoundReminder>();
      const { groups } = shelfJars(state, one, now);
      const order: Keep[] = ["refrigerate", "freeze", "shelf"];
      for (const group of groups.sort((a, b) => order.indexOf(a.keep) - order.indexOf(b.keep))) {
        const left = Math.max(0, group.jars - opened);
        opened -= group.jars - left;
        const { days, words } = KEEPING[group.rule];
        const by = addDays(dateOf(wallFor(state, one.batch.id, group.since), state.zone), days);
        const at = parseIso(`${by}T${String(DAY_HOUR).padStart(2, "0")}:00`, state.zone);
        if (left < 1 || at === undefined || at < wallNow - DAY_MS || byKeep.has(group.keep))
          continue;
        const lead = group.keep === "refrigerate" ? "Use up" : "Best by";
        const title = `${lead}: ${lotName(one)}`;
        const detail = group.why ? `${group.why}; ${words}` : words;
        const { id: batch } = one.lot;
        const id = `${batch}/${group.keep}`;
        byKeep.set(group.keep, { id, at, title, detail, batch, owner: one.batch.id });
      }
      return [...byKeep.values()];
    });
}

/** Seed lots, and seed batches without a lot, once each spring until tested that year. */
export function seedReminders(state: State, wallNow: number): FoundReminder[] {
  const lots = Object.values(state.seeds).map((seed) => {
    const last = seed.tests.at(-1);
    const name = [seed.variety, seed.crop].filter(Boolean).join(" ");
    const tested = last ? wallFor(state, seed.id, last.at) : undefined;
    return { id: seed.id, name, savedAt: seed.savedAt, tested, batch: seed.batch };
  });
  const known = new Set(lots.map((lot) => lot.batch));
  const batches = Object.values(state.batches)
    .filter((one) => one.recipe.class === "seed" && one.state === "complete" && !known.has(one.id))
    .map((one) => {
      const savedAt = wallFor(state, one.id, one.endedAt ?? one.begunAt);
      return { id: one.id, name: batchName(one), savedAt, tested: undefined, batch: one.id };
    });
  return [...lots, ...batches].map(({ id, name, savedAt, tested, batch }): FoundReminder => {
    const at = nextSpring(Math.max(savedAt, tested ?? 0, wallNow - 30 * DAY_MS), state.zone);
    return {
      id: `${id}/germination/${localFields(at, state.zone).year}`,
      at,
      title: `Test the seed: ${name}`,
      detail:
        "Fifty seeds in a damp towel, warm, for a week or so; fewer tell little. How many sprout?",
      batch,
      owner: id,
    };
  });
}
