/**
 * Bugs planted in the rules of the record, one at a time: each wraps one export of the program, or
 * one kind of fact. The world's days, or a named property of them, must show it. A bug whose place
 * is gone fails aloud, so that it is planted anew.
 */
import type { Mishap } from "./mishaps.ts";
import {
  asFact,
  asHeard,
  inKept,
  looksUp,
  neverAsks,
  overlooks,
  type Planted,
} from "./planting.ts";

const LOST: Mishap[][] = [["flame-out"], ["turned-down"]];
const BOILS = ["pickled-beets", "crushed-tomatoes", "peaches", "applesauce"];
const PRESSED = ["snap-beans", "carrots"];
const MINUTE_MS = 60_000;

type Kept = { needMinutes: number; stretches: { from: number; to?: number }[] };

export const PLANTED: readonly Planted[] = [
  {
    name: "a boil that is lost is not taken in",
    rule: "a loss stops the clock at once",
    ...asFact("boil-lost", () => undefined),
    mishaps: LOST,
    cards: BOILS,
  },
  {
    name: "a pressure that is lost is not taken in",
    rule: "a loss stops the clock at once",
    ...asFact("pressure-lost", () => undefined),
    mishaps: LOST,
    cards: PRESSED,
  },
  {
    name: "a low reading of the gauge is taken for one at the mark",
    rule: "a reading in the log is evidence",
    ...asFact("pressure", (event) => ({ ...event, psi: Number(event.psi) + 5 })),
    mishaps: LOST,
    cards: PRESSED,
  },
  {
    name: "lids that stand out of the water are taken for covered",
    rule: "covered lids are cleared only by a plain clause",
    ...asHeard(/lids (are not|aren't) covered/, "boiling", { covered: true }),
    mishaps: [["water-low"]],
    cards: BOILS,
  },
  {
    name: "a no to a factor is written as a yes",
    rule: "safety is asked in values",
    ...asFact("confirmed", (event) => ({ ...event, held: true })),
    mishaps: [["used-lids"], ["overfull"], ["weak-vinegar"]],
  },
  {
    name: "a no at the end is written as a yes",
    rule: "no answer or a no to the end is not as-tested",
    ...asFact("end-answer", (event) => ({ ...event, yes: true })),
    mishaps: LOST,
    cards: BOILS,
    quiet: true,
  },
  {
    name: "the answer at the end is never written",
    rule: "right days stay as-tested",
    ...asFact("end-answer", () => undefined),
    mishaps: [[]],
    cards: BOILS,
  },
  {
    name: "unwatched time is not taken in",
    rule: "what was not watched does not count by itself",
    ...asFact("gap", () => undefined),
    mishaps: [["asleep"]],
    cards: BOILS,
  },
  {
    name: "a no to unwatched time is taken for a yes",
    rule: "what was not watched does not count by itself",
    ...asFact("vouched", (event) => ({ ...event, held: true })),
    mishaps: [["asleep"]],
    cards: BOILS,
  },
  {
    name: "a boil is dated five minutes back",
    rule: "an end is never before the true end",
    ...asFact("boil", (event) => ({ ...event, t: Number(event.t) - 5 * MINUTE_MS })),
    mishaps: [[]],
    cards: BOILS,
  },
  {
    name: "a pressure is dated five minutes back",
    rule: "an end is never before the true end",
    ...asFact("pressure", (event) => ({ ...event, t: Number(event.t) - 5 * MINUTE_MS })),
    mishaps: [[]],
    cards: PRESSED,
  },
  {
    name: "a dial that reads high is taken for true",
    rule: "no near match sets a safety fact",
    ...asFact("gauge-set", (event) => {
      return { ...event, gauge: { ...(event.gauge as object), readsHighPsi: 0 } };
    }),
    mishaps: [["gauge-high"]],
    cards: PRESSED,
  },
  {
    name: "jars that come out early count as whole",
    rule: "minutes count to heat off or unloading",
    ...inKept("lose", (real) => (kept, at, ended) => {
      if ((ended as string) !== "out") real(kept, at, ended);
    }),
    mishaps: [["early-off"]],
    cards: BOILS,
  },
  {
    name: "a restart does not start the time over",
    rule: "the longest unbroken stretch",
    ...inKept("start", (real) => (kept, at) => {
      const first = (kept as Kept).stretches[0];
      real(kept, (first ? Math.min(first.from, at) : at) as never);
    }),
    mishaps: LOST,
    cards: BOILS,
  },
  {
    name: "stretches are added up",
    rule: "the longest unbroken stretch",
    ...inKept("completesAt", (real) => (kept) => {
      const { stretches, needMinutes } = kept as Kept;
      const first = stretches[0];
      return first && stretches.length > 1 ? first.from + needMinutes * MINUTE_MS : real(kept);
    }),
    mishaps: LOST,
    cards: BOILS,
  },
  {
    name: "the time is full a minute early",
    rule: "a tested time is never about",
    ...inKept("newKept", (real) => (minutes, every) => real((minutes - 1) as never, every)),
    mishaps: [[]],
  },
  {
    name: "unwatched time asks nothing",
    rule: "what was not watched does not count by itself",
    module: "src/kitchen/questions/gap-questions.ts",
    export: "gapQuestions",
    wrap: () => () => [],
    mishaps: [["asleep"]],
    cards: BOILS,
  },
  {
    name: "a loss is a moment after the full time",
    rule: "a loss stops the clock at once",
    ...inKept("lose", (real) => (kept, at, ended) => {
      const { stretches, needMinutes } = kept as Kept;
      const from = stretches.at(-1)?.from ?? at;
      real(kept, Math.max(at, from + needMinutes * MINUTE_MS) as never, ended);
    }),
    mishaps: [["flame-out"]],
    cards: BOILS,
  },
  {
    name: "the sea's minutes are used everywhere",
    rule: "the highest altitude known by the end",
    ...looksUp((wish) => ({ wish: { ...wish, altitudeFt: 0, altitudeUncertaintyFt: 0 } })),
    mishaps: [[]],
  },
  {
    name: "five minutes fewer than the table says",
    rule: "a tested time is looked up",
    ...looksUp((_, terms) => ({ terms: { minutes: Number(terms.minutes) - 5 } })),
    mishaps: [[]],
  },
  {
    name: "two pounds fewer than the table says",
    rule: "a tested time is looked up",
    ...looksUp((_, { pressurePsi }) => {
      return typeof pressurePsi === "number" ? { terms: { pressurePsi: pressurePsi - 2 } } : {};
    }),
    mishaps: [[]],
    cards: PRESSED,
  },
  {
    name: "the vinegar is never asked about",
    rule: "a safe jar needs its critical factors on record",
    ...neverAsks("vinegar"),
    mishaps: [[], ["weak-vinegar"]],
    cards: ["pickled-beets", "dilled-green-beans"],
  },
  {
    name: "sterile jars are never asked about",
    rule: "a safe jar needs its critical factors on record",
    ...neverAsks("sterile"),
    mishaps: [[], ["unsterile"]],
    cards: ["dilled-green-beans", "berry-jam"],
  },
  {
    name: "acid in every jar is never asked about",
    rule: "a safe jar needs its critical factors on record",
    ...neverAsks("acid"),
    mishaps: [[], ["no-acid"]],
    cards: ["crushed-tomatoes"],
  },
  {
    name: "a hot pack is never asked about",
    rule: "a safe jar needs its critical factors on record",
    ...neverAsks("hot"),
    mishaps: [[], ["filled-cold"]],
    cards: BOILS,
  },
  {
    name: "a verdict overlooks a factor that nobody confirmed",
    rule: "one that nobody confirmed is never as-tested",
    ...overlooks("critical-unrecorded"),
    mishaps: [["used-lids"], ["weak-vinegar"], ["early-start"]],
  },
  {
    name: "a verdict overlooks the headspace",
    rule: "one that nobody confirmed is never as-tested",
    ...overlooks("headspace"),
    mishaps: [["overfull"]],
  },
  {
    name: "a lost boil is heard as a boil",
    rule: "heard in three strengths",
    ...asHeard(/stopped boiling|lost its boil|boil stopped|not boiling/, "boiling", {
      covered: true,
    }),
    mishaps: LOST,
    cards: BOILS,
  },
  {
    name: "a question stops the clock",
    rule: "questions never act",
    ...asHeard(/what if it stops boiling/, "boil-lost"),
    chatter: ["what if it stops boiling"],
    mishaps: [[]],
    cards: BOILS,
  },
  {
    name: "another's lost boil stops the clock",
    rule: "reports of another's words never act",
    ...asHeard(/my sister says she lost her boil/, "boil-lost"),
    chatter: ["my sister says she lost her boil last week"],
    mishaps: [[]],
    cards: BOILS,
  },
  {
    name: "the past stops the clock",
    rule: "the past never acts",
    ...asHeard(/last year the flame went out/, "boil-lost"),
    chatter: ["last year the flame went out on me twice"],
    mishaps: [[]],
    cards: BOILS,
  },
  {
    name: "a no is heard as a yes",
    rule: "a reply goes to the question that is shown",
    ...asHeard(/^(no|nope)\b/, "yes"),
    mishaps: LOST,
    cards: BOILS,
    quiet: true,
  },
  {
    name: "a jar is counted twice",
    rule: "counted once",
    module: "src/kitchen/jars/canner-room.ts",
    export: "jarCounts",
    wrap: (real) => (state, batch) => {
      const counts = real(state, batch) as { processed: number };
      return { ...counts, processed: counts.processed + 1 };
    },
    mishaps: [[]],
  },
  {
    name: "what was not tested is begun as the nearest that was",
    rule: "the food gate begins nothing untested",
    module: "src/recipe/foods/food-gate.ts",
    export: "gateBegin",
    wrap: (real) => (library, text, answered) => {
      const gate = real(library, text, answered) as { is: string };
      const recipe = / jam$/.test(text) ? "berry-jam" : "applesauce";
      return gate.is === "untested" ? { is: "tested", recipe, foods: [], options: [] } : gate;
    },
    mishaps: [["wrong-food"]],
    cards: ["berry-jam", "applesauce"],
    quiet: true,
  },
  {
    name: "whatever is added is a seasoning",
    rule: "what is said to be added is held against what was tested",
    module: "src/recipe/foods/addition-gate.ts",
    export: "gateAddition",
    wrap: () => (_recipe, _tables, said) => ({ is: "seasoning", said }),
    mishaps: [["wrong-food"]],
  },
  {
    name: "jars that stood for hours went in at once",
    rule: "past two hours between 40 and 140 F never as-tested",
    module: "src/kitchen/loads/standing.ts",
    export: "stoodOver",
    wrap: () => () => 0,
    mishaps: [["jars-stood"]],
  },
  {
    name: "a guess is heard as a yes",
    rule: "I don't know is an answer, and leaves the doubt",
    ...asHeard(/^(I think so|I don't know|probably)$/, "yes"),
    mishaps: LOST,
    cards: BOILS,
    quiet: true,
  },
  {
    name: "what is taken back stays confirmed",
    rule: "taken back is taken back",
    ...asFact("confirmed", (event) => (event.held === true ? event : undefined)),
    mishaps: [["taken-back"]],
  },
  {
    name: "words that raise a doubt are not kept",
    rule: "a trace is kept with its words",
    ...asFact("heard", () => undefined),
    mishaps: LOST,
    cards: BOILS,
  },
  {
    name: "a higher altitude raises no time that runs",
    rule: "the highest altitude known by the end",
    module: "src/kitchen/loads/next-load.ts",
    export: "refreshTerms",
    wrap: () => () => [],
    mishaps: [["altitude-off"]],
    cards: [...BOILS, ...PRESSED],
  },
  {
    name: "a dial counts of which nobody said how far it is off",
    rule: "no near match sets a safety fact",
    module: "src/kitchen/loads/gauge-target.ts",
    export: "dialDoubt",
    wrap: () => () => undefined,
    mishaps: [["gauge-high"]],
    cards: PRESSED,
  },
  {
    name: "a pressure of zero says that the dial reads true",
    rule: "a reply goes to the question that is shown, and to no other",
    ...asHeard(/pressure is (down to )?zero|at zero pounds/, "answer", {
      value: 0,
      readsHighPsi: 0,
    }),
    mishaps: [["gauge-high"]],
    cards: PRESSED,
  },
];
