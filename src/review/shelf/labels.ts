/** What a jar's label says. Only a sealed jar of an as-tested load is labeled for the shelf. */
import { type Batch, type State, wallOf } from "../../kitchen/state.ts";
import { addDays, dateOf, dateWords } from "../dates.ts";
import { KEEPING, type Keep } from "./keeping.ts";
import { shelfJars } from "./shelf-jars.ts";

export type Label = {
  batch: string;
  /** The jar's number; null where it is not known which jar it is. */
  jar: number | null;
  keep: Keep;
  title: string;
  variety: string | null;
  putUp: string;
  by: string;
  /** The lines as printed, the first the largest. */
  lines: string[];
};

/** Labels of a batch's jars, in the order of their numbers; none for jars thrown out or waiting. */
export function labelsOf(state: State, batch: Batch, now: number): Label[] {
  const labels = shelfJars(state, batch, now).groups.flatMap((group) => {
    const putUp = dateOf(wallOf(state, group.since), state.zone);
    const by = addDays(putUp, KEEPING[group.rule].days);
    return Array.from({ length: group.jars }, (_, index): Label => {
      const jar = group.numbers?.[index] ?? null;
      const base = {
        batch: batch.id,
        jar,
        keep: group.keep,
        title: batch.recipe.title,
        variety: batch.lot.variety,
        putUp,
        by,
      };
      return { ...base, lines: linesOf(base) };
    });
  });
  const unknown = Number.MAX_SAFE_INTEGER;
  return labels.sort((a, b) => (a.jar ?? unknown) - (b.jar ?? unknown));
}

function linesOf(label: Omit<Label, "lines">): string[] {
  const { title, variety, putUp, by, batch, jar, keep } = label;
  const until = {
    shelf: `best by ${dateWords(by)}`,
    refrigerate: `REFRIGERATE, use by ${dateWords(by)}`,
    freeze: `FREEZE, best by ${dateWords(by)}`,
  }[keep];
  return [
    title,
    ...(variety ? [variety] : []),
    `put up ${dateWords(putUp)}`,
    until,
    `batch ${batch}${jar === null ? "" : `, jar ${jar}`}`,
  ];
}
