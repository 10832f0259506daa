import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import { replay } from "../../../src/kitchen/evolve.ts";
import type { State } from "../../../src/kitchen/state.ts";
import { MINUTE_MS } from "../../../src/kitchen/time.ts";
import type { Recipe, Stage } from "../../../src/recipe/recipe.ts";

const FIRST_DAY = Date.parse("2027-06-05T14:00:00Z");
const DAY_MS = 86_400_000;

function stage(id: string, kind: Stage["kind"], more: Partial<Stage> = {}): Stage {
  const attended = kind === "hands-on";
  const rest = { after: [], start: "auto" as const, asks: [], cautions: [], uses: [] };
  return { id, kind, title: id, say: "", typicalMinutes: 20, attended, ...rest, ...more };
}

/** Pickles for the refrigerator: hands, a pot of known contents with a hold, a rest, hands. */
export const PICKLES: Recipe = {
  id: "shelf-pickles",
  title: "Shelf pickles",
  names: [],
  class: "acidified",
  source: { publication: "made up" },
  yield: { produce: "cucumbers", weightLb: 5 },
  scaling: "proportional",
  jars: [],
  ingredients: [
    { id: "vinegar", name: "vinegar", amount: "4 cups", role: "acid", into: "brine" },
    { id: "water", name: "water", amount: "4 cups", role: "water", into: "brine" },
  ],
  critical: [],
  processes: [],
  keptAs: "refrigerator",
  stages: [
    stage("slice", "hands-on", { typicalMinutes: 25, minutesPerLb: 5 }),
    stage("salt", "rest", {
      after: [{ stage: "slice" }],
      window: { minMinutes: 180, maxMinutes: 240 },
    }),
    stage("brine", "heat", {
      after: [{ stage: "slice" }],
      start: "word",
      typicalMinutes: 25,
      heat: { until: "boil", holdMinutes: 5 },
      pot: "brine",
    }),
    stage("pack", "hands-on", {
      after: [{ stage: "salt" }, { stage: "brine" }],
      typicalMinutes: 30,
    }),
  ],
  tested: true,
};

export type Day = {
  slice: number;
  /** Minutes the brine took to come to a boil. */
  boil: number;
  pack: number;
  weightLb?: number;
  salt?: number;
};

/** The state after days at the recipe, one batch a day, each stage in so many minutes. */
export function cooked(
  days: readonly Day[],
  { rehearsal = false, unfinished = false, altitudeFt = 0, more = [] as KitchenEvent[] } = {},
): State {
  const at = (ms: number) => ({ cmd: `c${ms}`, t: ms, w: ms });
  const open = { type: "opened", version: "0", zone: "America/Denver", offsetMs: 0 } as const;
  const events: KitchenEvent[] = [
    { ...open, rehearsal, ...at(FIRST_DAY - DAY_MS) },
    { type: "kitchen-set", altitudeFt, ...at(FIRST_DAY - DAY_MS + 1) },
  ];
  days.forEach((day, index) => {
    const batch = `day-${index + 1}`;
    let ms = FIRST_DAY + index * DAY_MS;
    const lot = { variety: null, weightLb: day.weightLb ?? 5, pickedAt: null };
    const given = { jar: null, pack: null, option: null, terms: null, expectedJars: null };
    events.push({
      type: "batch-begun",
      batch,
      recipe: PICKLES,
      lot,
      ...given,
      mark: "P",
      ...at(ms),
    });
    const done = (id: string, minutes: number) => {
      ms += minutes * MINUTE_MS;
      events.push({ type: "stage-done", owner: batch, stage: id, ...at(ms) });
    };
    done("slice", day.slice);
    events.push({ type: "stage-begun", owner: batch, stage: "brine", ...at(ms + 1) });
    ms += day.boil * MINUTE_MS;
    events.push({ type: "boil", owner: batch, stage: "brine", covered: null, ...at(ms + 1) });
    done("salt", (day.salt ?? 200) - day.boil);
    if (!unfinished) done("pack", day.pack);
  });
  return replay([...events, ...more].sort((a, b) => a.w - b.w));
}
