/**
 * What is known for the label of a jar or of a seed packet. Only a sealed jar of an as-tested load
 * is labeled for the shelf.
 */
import { shortForms } from "../../kitchen/jars/jar-ids.ts";
import { type LotOf, lotsIn } from "../../kitchen/jars/lots.ts";
import { wallFor } from "../../kitchen/places.ts";
import type { Batch, SeedLot, State } from "../../kitchen/state.ts";
import { addDays, dateOf, dateWords } from "../dates.ts";
import { seedReport } from "./seeds.ts";
import { type JarGroup, shelfJars } from "./shelf-jars.ts";
import { KEEPING, type Keep } from "./shelf-life.ts";

export type Label = {
  /** The batch, or the seed lot. */
  batch: string;
  /** The jar's number; null where it is not known which jar it is. */
  jar: number | null;
  /** The jar's own short id, where it has one. */
  id: string | null;
  /** What is written on its lid. */
  mark: string | null;
  keep: Keep | "seed";
  title: string;
  variety: string | null;
  /** The date it was put up, or the seed was saved. */
  putUp: string;
  /** Best by, or in the refrigerator use by. */
  by: string | null;
  verdict: string | null;
  /** What made it keep, where that was done as tested. */
  process: LabelProcess | null;
  /** What else is to be said, a line each. */
  notes: string[];
};

export type LabelProcess = {
  method: string;
  minutes: number;
  pressurePsi: number | null;
  altitudeFt: number;
};

/** Labels of a batch's jars, in the order of their numbers; none for jars thrown out or waiting. */
export function labelsOf(state: State, batch: Batch, now: number): Label[] {
  return lotsIn(batch).flatMap((one) => labelsOfLot(state, one, now));
}

function labelsOfLot(state: State, one: LotOf, now: number): Label[] {
  const { batch, lot } = one;
  const shortOf = shortForms(state);
  const labels = shelfJars(state, one, now).groups.flatMap((group) => {
    const putUp = dateOf(wallFor(state, batch.id, group.since), state.zone);
    const by = addDays(putUp, KEEPING[group.rule].days);
    const { terms } = group;
    return group.members.map((jar, index): Label => {
      const number = group.numbers?.[index] ?? null;
      return {
        batch: lot.id,
        jar: number,
        id: number === null ? null : shortOf(jar),
        mark: number === null ? lot.mark : `${lot.mark}${number}`,
        keep: group.keep,
        title: batch.recipe.title,
        variety: lot.variety,
        putUp,
        by,
        verdict: batch.rehearsal ? "REHEARSAL ONLY" : verdictWords(group),
        process: terms && {
          method: terms.method,
          minutes: terms.minutes,
          pressurePsi: terms.pressurePsi,
          altitudeFt: terms.altitudeFt,
        },
        notes: [],
      };
    });
  });
  const unknown = Number.MAX_SAFE_INTEGER;
  return labels.sort((a, b) => (a.jar ?? unknown) - (b.jar ?? unknown));
}

/** What a label says of its jar; why in full is in the batch log. */
function verdictWords({ keep, why }: JarGroup): string {
  return keep === "shelf" ? "as tested" : (why.split(":")[0] ?? why);
}

/** The label of a packet of a seed lot. */
export function seedLabel(state: State, lot: SeedLot): Label {
  const { saved, tests, oldAfter, isolation } = seedReport(state, lot);
  const tested = tests.at(-1);
  const notes = [
    tested ? `${tested.sprouted} of ${tested.of} sprouted, ${dateWords(tested.on)}` : null,
    oldAfter ? `good until about ${oldAfter[0]}` : null,
    isolation,
  ];
  return {
    batch: lot.id,
    jar: null,
    id: null,
    mark: null,
    keep: "seed",
    title: `${lot.crop}, seed`,
    variety: lot.variety,
    putUp: saved,
    by: null,
    verdict: null,
    process: null,
    notes: notes.filter((note) => note !== null),
  };
}
