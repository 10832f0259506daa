/**
 * Twenty days, each with an order of work made by hand, as a cook would write it on the wall: every
 * step begins as soon as hands, canner and what is before it allow. The plan is never longer.
 */
import { describe, expect, it } from "vitest";
import { type PlanIo, planCommand } from "../../src/commands/day/plan.ts";
import { wholeLibrary } from "../recipe/library-files.ts";

const LIBRARY = wholeLibrary();
const HERE = ["--altitude", "6200ft", "--canner-holds", "9pint,7quart", "--gauge", "dial"];
const START = ["--start", "2027-08-14T08:00:00"];
/** Hot-packed food goes into jars within this, minutes. */
const HOT_WITHIN = 10;

type Task = { batch: string; stage: string; load?: number; start: string; end: string };
type Report = { feasible: boolean; minutes: number; tasks: Task[]; why: string[] };

const io: PlanIo = {
  library: () => LIBRARY,
  kitchen: () => undefined,
  zone: "America/Denver",
  nowMs: Date.UTC(2027, 7, 14, 12),
  elapsedMs: () => performance.now(),
  record: { folder: "" } as PlanIo["record"],
};

/** Names of batches on the wall, and what they are. */
const LOTS = {
  beans: "dilled-green-beans 4lb",
  morebeans: "dilled-green-beans 8lb",
  beets: "pickled-beets 7lb",
  tomatoes: "crushed-tomatoes 14lb",
  moretomatoes: "crushed-tomatoes 28lb",
  snap: "snap-beans 9lb",
  moresnap: "snap-beans 14lb",
} as const;

type Name = keyof typeof LOTS;

const BEANS = "beans trim, beans brine, beans fill, beans in, beans out";
const BEETS =
  "beets trim, beets cook, beets syrup, beets peel, beets simmer, beets fill, beets in, beets out";
const TOMATOES =
  "tomatoes peel, tomatoes crush, tomatoes boil, tomatoes fill, tomatoes in, tomatoes out";
const SNAP = "snap trim, snap boil, snap fill, snap in, snap out";
const TWO_LOADS = (name: string, ...first: string[]) =>
  [...first, ...["boil 1", "fill 1", "in 1", "boil 2", "out 1", "fill 2", "in 2", "out 2"]].map(
    (step) => `${name} ${step}`,
  );

/** In the order of the day; `light` is the canner, `in` and `out` are its jars. */
const DAYS: [string, Name[], string][] = [
  ["beans alone", ["beans"], `light, ${BEANS}`],
  ["beets alone", ["beets"], `light, ${BEETS}`],
  ["tomatoes alone", ["tomatoes"], `light, ${TOMATOES}`],
  ["snap beans alone", ["snap"], `light, ${SNAP}`],
  [
    "beans of two loads",
    ["morebeans"],
    "light, morebeans trim, morebeans brine, morebeans fill 1, morebeans in 1, morebeans out 1, " +
      "morebeans fill 2, morebeans in 2, morebeans out 2",
  ],
  [
    "tomatoes of two loads",
    ["moretomatoes"],
    `light, ${TWO_LOADS("moretomatoes", "peel", "crush").join(", ")}`,
  ],
  ["snap beans of two loads", ["moresnap"], `light, ${TWO_LOADS("moresnap", "trim").join(", ")}`],
  [
    "beans, and beets while they are in",
    ["beans", "beets"],
    "light, beans trim, beans brine, beans fill, beans in, beets trim, beans out, beets cook, " +
      "beets syrup, beets peel, beets simmer, beets fill, beets in, beets out",
  ],
  [
    "beets on the heat, and beans meanwhile",
    ["beets", "beans"],
    "light, beets trim, beets cook, beans trim, beans brine, beans fill, beans in, beets syrup, " +
      "beets peel, beans out, beets simmer, beets fill, beets in, beets out",
  ],
  [
    "beans, then tomatoes",
    ["beans", "tomatoes"],
    "light, beans trim, beans brine, beans fill, beans in, tomatoes peel, beans out, " +
      "tomatoes crush, tomatoes boil, tomatoes fill, tomatoes in, tomatoes out",
  ],
  [
    "tomatoes, then beans",
    ["tomatoes", "beans"],
    "light, tomatoes peel, tomatoes crush, tomatoes boil, tomatoes fill, tomatoes in, " +
      "beans trim, beans brine, tomatoes out, beans fill, beans in, beans out",
  ],
  [
    "snap beans, then dilly beans",
    ["snap", "beans"],
    "light, snap trim, snap boil, snap fill, snap in, beans trim, beans brine, snap out, " +
      "beans fill, beans in, beans out",
  ],
  [
    "dilly beans, then snap beans",
    ["beans", "snap"],
    "light, beans trim, beans brine, beans fill, beans in, snap trim, beans out, snap boil, " +
      "snap fill, snap in, snap out",
  ],
  [
    "beets, then tomatoes",
    ["beets", "tomatoes"],
    "light, beets trim, beets cook, beets syrup, beets peel, beets simmer, beets fill, beets in, " +
      "tomatoes peel, beets out, tomatoes crush, tomatoes boil, tomatoes fill, tomatoes in, " +
      "tomatoes out",
  ],
  [
    "tomatoes peeled while the beets cook",
    ["beets", "tomatoes"],
    "light, beets trim, beets cook, tomatoes peel, beets syrup, beets peel, beets simmer, " +
      "beets fill, beets in, tomatoes crush, beets out, tomatoes boil, tomatoes fill, " +
      "tomatoes in, tomatoes out",
  ],
  [
    "snap beans, and beets while they are in",
    ["snap", "beets"],
    "light, snap trim, snap boil, snap fill, snap in, beets trim, beets cook, beets syrup, " +
      "beets peel, snap out, beets simmer, beets fill, beets in, beets out",
  ],
  [
    "beans of two loads, and beets between",
    ["morebeans", "beets"],
    "light, morebeans trim, morebeans brine, morebeans fill 1, morebeans in 1, beets trim, " +
      "beets cook, morebeans out 1, morebeans fill 2, morebeans in 2, beets syrup, beets peel, " +
      "morebeans out 2, beets simmer, beets fill, beets in, beets out",
  ],
  [
    "beans, beets and tomatoes",
    ["beans", "beets", "tomatoes"],
    "light, beans trim, beans brine, beans fill, beans in, beets trim, beets cook, beans out, " +
      "beets syrup, beets peel, beets simmer, beets fill, beets in, tomatoes peel, beets out, " +
      "tomatoes crush, tomatoes boil, tomatoes fill, tomatoes in, tomatoes out",
  ],
  [
    "snap beans, beans and beets",
    ["snap", "beans", "beets"],
    "light, snap trim, snap boil, snap fill, snap in, beans trim, beans brine, beets trim, " +
      "snap out, beans fill, beans in, beets cook, beets syrup, beets peel, beans out, " +
      "beets simmer, beets fill, beets in, beets out",
  ],
  [
    "beans, snap beans and tomatoes",
    ["beans", "snap", "tomatoes"],
    "light, beans trim, beans brine, beans fill, beans in, snap trim, beans out, snap boil, " +
      "snap fill, snap in, tomatoes peel, tomatoes crush, snap out, tomatoes boil, " +
      "tomatoes fill, tomatoes in, tomatoes out",
  ],
];

/** Lives through an order made by hand; returns the minutes until the last jar is out. */
class ByHand {
  /** When hands are free, when each step ended, and when the canner is free and hot. */
  private hands = 0;
  private readonly ended = new Map<string, number>();
  private canner = 0;
  readonly broken: string[] = [];

  constructor(private readonly lengthOf: (batch: string, stage: string, load: number) => number) {}

  live(order: string): number {
    for (const step of order.split(", ")) this.take(step);
    return Math.max(...this.ended.values());
  }

  private take(step: string): void {
    if (step === "light") {
      this.canner = this.hands + 60;
      this.hands += 5;
      return;
    }
    const [name = "", what = "", load = "1"] = step.split(" ");
    const key = (stage: string, of = load) => `${name} ${stage} ${of}`;
    const end = (stage: string, of = load) => this.ended.get(key(stage, of));
    const minutes = (stage: string) => this.lengthOf(name, stage, Number(load));
    if (what === "out") {
      const at = Math.max(this.hands, (end("in") ?? 0) - 5);
      this.hands = at + 5;
      this.canner = this.hands;
      this.ended.set(key("out"), this.hands);
      return;
    }
    const all = [...this.ended].filter(([done]) => done.startsWith(`${name} `));
    // A pot boils beside everything else; all other work of a batch goes on from step to step.
    const pots = ["brine", "syrup"];
    const own = all.filter(([done]) => !/ (in|out|fill) /.test(done) || what === "in");
    const before = pots.includes(what) ? [] : own.map(([, at]) => at);
    const hot = what === "fill" || isPacked(what, load) ? this.canner : 0;
    // The next load's food is on just in time for the canner.
    const next = load === "1" || what !== "boil" ? 0 : (end("in", "1") ?? 0) - minutes(what) - 5;
    const at = Math.max(this.hands, hot, next, ...before);
    const heat = /^(cook|brine|syrup|simmer|boil)$/.test(what);
    const inside = what === "in";
    const length = minutes(inside ? "process" : what);
    if (inside) this.check(step, at - (end("fill") ?? 0), HOT_WITHIN);
    if (what === "fill") {
      const boiled = end("boil") ?? end("simmer");
      if (boiled !== undefined) this.check(step, at - boiled, HOT_WITHIN);
    }
    this.hands = at + (heat || inside ? 5 : length);
    this.ended.set(key(what), at + length);
  }

  private check(step: string, waited: number, most: number): void {
    if (waited > most) this.broken.push(`${step} after ${waited} min`);
  }
}

/** The first heating of a hot pack waits for the canner; the next is on while a load is in it. */
function isPacked(what: string, load: string): boolean {
  return (what === "boil" || what === "simmer") && load === "1";
}

describe("a plan against an order made by hand", () => {
  it.each(DAYS)("is no longer for %s", async (_, names, order) => {
    const lots = names.map((name) => LOTS[name]);
    const { stdout } = await planCommand([...lots, ...HERE, ...START, "--json"], io);
    const report: Report = JSON.parse(stdout);
    expect(report.feasible, report.why.join()).toBe(true);
    const byHand = new ByHand((name, stage, load) => {
      const id = LOTS[name as Name].split(" ")[0];
      const task = report.tasks.find((one) => {
        return one.batch === id && one.stage === stage && (one.load ?? 1) === load;
      });
      const single = task ?? report.tasks.find((one) => one.batch === id && one.stage === stage);
      if (!single) throw new Error(`${name} has no ${stage}`);
      return (Date.parse(single.end) - Date.parse(single.start)) / 60_000;
    });
    const minutes = byHand.live(order);
    expect(byHand.broken).toEqual([]);
    expect(report.minutes).toBeLessThanOrEqual(minutes);
  });
});
