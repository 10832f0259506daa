import fc from "fast-check";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { historyOf } from "../../src/kitchen/events.ts";
import { readScript } from "../../src/session/rehearsal/rehearsal-script.ts";
import { Rehearsal } from "../../src/session/rehearsal/rehearse.ts";
import { theLibrary } from "../scenarios/play.ts";
import { EIGHT } from "./story.ts";

/** What a person may say at any moment, fitting or not, and some that mean nothing. */
const WORDS = [
  "done",
  "it's boiling",
  "it's boiling and the lids are covered",
  "it's boiling again",
  "it went off the boil",
  "it went off the boil two minutes ago",
  "the lids are uncovered",
  "the water is low",
  "yes",
  "no",
  "okay",
  "got it",
  "undo",
  "that was five minutes ago",
  "that was ten minutes ago",
  "8 pints filled",
  "3 pints filled",
  "the jars are in",
  "take the jars out",
  "the jars are out",
  "heat's off",
  "it's venting",
  "14 pounds",
  "12 pounds",
  "the pressure is zero",
  "it's at 182",
  "it's at 171",
  "all sealed",
  "jar 3 did not seal",
  "all the others sealed",
  "a jar broke",
  "set one jar aside",
  "reprocess them",
  "put them in the fridge",
  "throw them out",
  "hold",
  "resume",
  "abandon the batch",
  "start the brine",
  "start the dilly beans, Provider, 2 pounds",
  "timer for 3 minutes",
  "cancel the timer",
  "we're at 500 feet",
  "we're at 6500 feet",
  "note the lid was hot",
  "what now",
  "one",
  "the canner",
  "the moon is made of green cheese",
  "",
];

const DIRECTIONS = [
  "[crash]",
  "[closed for 0:00:12]",
  "[closed for 0:04]",
  "[closed for 2:30]",
  "[asleep for 0:03]",
  "[clock set +0:20]",
  "[clock set -0:45]",
  "[disk full]",
  "[disk ok]",
];

const COOK = ["process", "fill", "cool", "seal-check", "vent", "done"].map(
  (kind) => `[cook until ${kind}]`,
);

export type Step = { after: string; what: string };

const WAITS = ["+0:00", "+0:00:07", "+0:01", "+0:04", "+0:11", "+0:40", "+3:00"];

/** A step of a day: time passes, and then something is said, pressed or done to the program. */
const step: fc.Arbitrary<Step> = fc.record({
  after: fc.constantFrom(...WAITS),
  what: fc.oneof(
    { weight: 12, arbitrary: fc.constantFrom(...WORDS) },
    { weight: 3, arbitrary: fc.constantFrom(...DIRECTIONS) },
    { weight: 2, arbitrary: fc.constantFrom(...COOK) },
    { weight: 2, arbitrary: fc.constant("<key>") },
  ),
});

export type Day = { recipes: string[]; gauge: "dial" | "weighted"; steps: Step[] };

/** A random day in a kitchen that is mostly brought to its canner first. */
export const day: fc.Arbitrary<Day> = fc.record({
  recipes: fc.constantFrom(
    ["dilled-green-beans"],
    ["snap-beans"],
    ["dilled-green-beans", "pickled-beets"],
    ["bread-and-butter-pickles"],
  ),
  gauge: fc.constantFrom("dial" as const, "weighted" as const),
  steps: fc
    .tuple(
      fc.constantFrom("[cook until process]", "[cook until fill]", "[cook until cool]", "what now"),
      fc.array(step, { minLength: 3, maxLength: 18 }),
    )
    .map(([first, rest]) => [{ after: "+0:00", what: first }, ...rest]),
});

/** What matters while a canner is on: its sign, its loss, time nobody watched, and the answers. */
const AT_THE_CANNER = [
  "it's boiling and the lids are covered",
  "it's boiling",
  "it went off the boil",
  "it went off the boil two minutes ago",
  "the lids are uncovered",
  "yes",
  "no",
  "undo",
  "that was five minutes ago",
  "take the jars out",
  "14 pounds",
  "12 pounds",
  "it's at 182",
  "it's at 171",
  "what now",
  "[crash]",
  "[closed for 0:00:20]",
  "[closed for 0:04]",
  "[asleep for 0:03]",
  "[clock set +0:20]",
];

/** A random hour at a canner that is loaded and has had its sign. */
export const hour: fc.Arbitrary<Day> = fc.record({
  recipes: fc.constantFrom(["dilled-green-beans"], ["snap-beans"], ["bread-and-butter-pickles"]),
  gauge: fc.constant("dial" as const),
  steps: fc
    .array(
      fc.record({
        after: fc.constantFrom("+0:00", "+0:01", "+0:04", "+0:11", "+0:17"),
        what: fc.constantFrom(...AT_THE_CANNER),
      }),
      { minLength: 2, maxLength: 14 },
    )
    .map((rest) => [
      { after: "+0:00", what: "[cook until process]" },
      { after: "+0:00", what: "it's boiling and the lids are covered" },
      { after: "+0:00", what: "14 pounds" },
      ...rest,
    ]),
});

/** Lives through a day with the program, and returns what it wrote and the state it reached. */
export async function live({ recipes, gauge, steps }: Day): Promise<{
  history: KitchenEvent[];
  rehearsal: Rehearsal;
}> {
  const canner = { id: "canner", name: "canner", holds: { pint: 9, quart: 7 } };
  const rehearsal = new Rehearsal({
    library: theLibrary(),
    recipes,
    begin: {},
    startMs: EIGHT,
    zone: "America/Denver",
    setUp: [
      {
        type: "kitchen-set",
        altitudeFt: 6200,
        canners: [{ ...canner, gauge: { kind: gauge } }],
        t: 0,
      },
    ],
    demoAltitudeFt: 6200,
    version: "0",
  });
  await rehearsal.begin();
  for (const { after, what } of steps) {
    if (what === "<key>") {
      rehearsal.kitchen.session.press();
      continue;
    }
    if (what === "") {
      rehearsal.kitchen.session.hear("");
      continue;
    }
    const script = readScript(`${after} ${what}`);
    if (!script.ok) throw new Error(script.message);
    // A cook that is refused or at the end stops; the day goes on.
    for (const line of script.lines) await rehearsal.playLine(line);
  }
  return { history: [...historyOf(rehearsal.kitchen.session.state)], rehearsal };
}
