import type { Activity, Lag, Project } from "../../src/plan/solver/model.ts";
import { seededRandom } from "../../src/plan/solver/random.ts";

export type KitchenOptions = {
  canners?: number;
  burners?: number;
  fridge?: number;
  gridMinutes?: number;
  /** Minutes from the origin in which nothing may need hands. */
  quiet?: readonly (readonly [number, number])[];
};

/**
 * A seeded kitchen: that many batches of pickles over one canner, one pair of hands, a few
 * burners and a fridge. Each is washed, sliced, salted and chilled 3 to 4 h, drained, its syrup
 * boiled, its jars heated, filled hot and taken into the canner within minutes, where loading
 * and unloading need hands at pinned offsets; then it cools undisturbed.
 */
export function seededKitchen(
  seed: number,
  batches: number,
  options: KitchenOptions = {},
): Project {
  const random = seededRandom(seed);
  const grid = options.gridMinutes ?? 5;
  const minutes = (from: number, to: number) =>
    (from + 5 * Math.floor(random() * ((to - from) / 5 + 1))) / grid;
  const activities: Activity[] = [];
  const lags: Lag[] = [];
  for (let b = 1; b <= batches; b++) addBatch(`b${b}`, minutes, grid, activities, lags);
  (options.quiet ?? []).forEach(([from, to], q) => {
    activities.push({
      id: `quiet${q + 1}`,
      duration: (to - from) / grid,
      demands: { hands: 1 },
      earliest: from / grid,
      latest: from / grid,
      outsideEnd: true,
    });
  });
  return {
    activities,
    lags,
    capacities: {
      hands: 1,
      canner: options.canners ?? 1,
      burner: options.burners ?? 4,
      fridge: options.fridge ?? 4,
    },
  };
}

function addBatch(
  name: string,
  minutes: (from: number, to: number) => number,
  grid: number,
  activities: Activity[],
  lags: Lag[],
): void {
  const lengths = new Map<string, number>();
  const add = (stage: string, duration: number, uses: string[], outsideEnd = false) => {
    lengths.set(stage, duration);
    const demands = Object.fromEntries(uses.map((resource) => [resource, 1]));
    activities.push({ id: `${name}.${stage}`, duration, demands, outsideEnd });
  };
  const after = (from: string, to: string, least: number, most?: number) => {
    const span = lengths.get(from) ?? 0;
    lags.push({ from: `${name}.${from}`, to: `${name}.${to}`, atLeast: span + least });
    if (most !== undefined)
      lags.push({ from: `${name}.${to}`, to: `${name}.${from}`, atLeast: -(span + most) });
  };
  add("wash", minutes(10, 20), ["hands"]);
  add("slice", minutes(20, 60), ["hands"]);
  add("chill", 180 / grid, ["fridge"]);
  add("drain", minutes(5, 10), ["hands"]);
  add("mix", minutes(5, 10), ["hands"]);
  add("syrup", minutes(15, 30), ["burner"]);
  add("jars", minutes(10, 20), ["burner"]);
  add("fill", minutes(15, 25), ["hands"]);
  const canner = minutes(60, 110);
  add("canner", canner, ["canner", "burner"]);
  add("load", 5 / grid, ["hands"]);
  add("unload", 10 / grid, ["hands"]);
  add("cool", 720 / grid, [], true);
  after("wash", "slice", 0, 60 / grid);
  after("slice", "chill", 0, 10 / grid);
  after("chill", "drain", 0, 60 / grid);
  after("mix", "syrup", 0, 10 / grid);
  after("drain", "fill", 0, 30 / grid);
  after("syrup", "fill", 0, 5 / grid);
  after("jars", "fill", 0, 15 / grid);
  after("fill", "canner", 0, 5 / grid);
  after("canner", "cool", 0, 0);
  pin("load", 0);
  pin("unload", canner - 10 / grid);
  function pin(bit: string, offset: number): void {
    lags.push({ from: `${name}.canner`, to: `${name}.${bit}`, atLeast: offset });
    lags.push({ from: `${name}.${bit}`, to: `${name}.canner`, atLeast: -offset });
  }
}
