/**
 * Whole days under a made-up clock, with delays, wrong orders and a cook who is away: at every
 * minute Hands, the key, what now, what next, the gate and the course of the day say the same.
 */
import { describe, expect, it } from "vitest";
import { startByWordAt } from "../../../src/kitchen/agenda.ts";
import { handsNow } from "../../../src/kitchen/day/coming.ts";
import { courseStep } from "../../../src/kitchen/day/course.ts";
import { allFilled, ready } from "../../../src/kitchen/jars/lots.ts";
import { isLoad } from "../../../src/kitchen/owners.ts";
import { questions } from "../../../src/kitchen/questions/questions.ts";
import { heldForCanner } from "../../../src/kitchen/settle.ts";
import { keyOffer, shelves } from "../../../src/kitchen/shelves.ts";
import type { State } from "../../../src/kitchen/state.ts";
import { HOUR_MS, MINUTE_MS } from "../../../src/kitchen/time.ts";
import { isLost } from "../../../src/kitchen/unbroken-time.ts";
import { seededRandom } from "../../../src/plan/solver/random.ts";
import type { MadeUpKitchen } from "../../../src/session/rehearsal/made-up-kitchen.ts";
import { view } from "../../../src/session/view/view.ts";
import { prompt } from "../../../src/speech/prompts.ts";
import { whatNow } from "../../../src/speech/telling.ts";
import { EIGHT, saturdayKitchen } from "../../scenarios/saturday-kitchen.ts";
import { DrawnCook } from "../drawn-cook.ts";

const SOON_MS = 10 * MINUTE_MS;

function contradictions(kitchen: MadeUpKitchen): string[] {
  const { state } = kitchen.session;
  const now = kitchen.session.now();
  const [first, ...others] = handsNow(state, now);
  const found: string[] = [];
  const lost = shelves(state, now).some(({ run }) => run.kept && isLost(run.kept));
  const asked = questions(state).some(({ key }) => state.asked[key] !== undefined);
  if (first && !lost && !asked) {
    const said = prompt(state, first.owner, first.run, now);
    if (!whatNow(state, now).startsWith(said)) found.push("what now is not what Hands shows");
  }
  const shown = view(state, now, { lines: [], notRecorded: false }).hands[0]?.id;
  if (first && shown !== `${first.owner.id}/${first.run.id}`) found.push(`shown is ${shown}`);
  if (first?.offer && keyOffer(state, now)?.run !== first.run) found.push("the key does another");
  for (const { owner, run } of first ? [first, ...others] : []) {
    if (!isLoad(owner) && heldForCanner(state, owner, run, now))
      found.push(`${run.id} is in Hands, and the gate holds it back`);
  }
  return [...found, ...againstTheCourse(state, now)];
}

/** Of two works that could be done now, the one that is to begin sooner is shown first. */
function againstTheCourse(state: State, now: number): string[] {
  const begins = handsNow(state, now).flatMap(({ owner, run }) => {
    if (isLoad(owner) || run.state !== "running") return [];
    const step = courseStep(state, owner, run);
    return step ? [run.spec.window ? step.to : step.from] : [];
  });
  return begins.some((at, n) => n > 0 && at < (begins[n - 1] ?? 0)) ? [`order ${begins}`] : [];
}

/** Pots that were called for before they were wanted. */
class EarlyCalls {
  readonly early: string[] = [];
  private readonly called = new Set<string>();
  private seen = 0;

  look(kitchen: MadeUpKitchen): void {
    const { state } = kitchen.session;
    const now = kitchen.session.now();
    const lines = kitchen.lines.slice(this.seen).map(({ text }) => text);
    this.seen = kitchen.lines.length;
    for (const batch of Object.values(state.batches)) {
      for (const run of batch.stages) {
        const key = `${batch.id}/${run.id}`;
        if (run.spec.start !== "word" || run.state !== "waiting" || this.called.has(key)) continue;
        const words = [run.spec.say, `Start the ${run.spec.pot} any time now`];
        if (!lines.some((line) => words.some((word) => line.includes(word)))) continue;
        this.called.add(key);
        const at = startByWordAt(state, batch, run, now);
        if (at !== undefined && at > now + SOON_MS) this.early.push(key);
      }
    }
  }
}

function isOver(batches: number): (state: State) => boolean {
  return (state) => {
    const all = Object.values(state.batches);
    const filled = all.every((batch) => allFilled(batch) && ready(batch) === 0);
    const out = Object.values(state.loads).every((load) => load.unloadedAt !== undefined);
    return all.length === batches && filled && out;
  };
}

/** A day of a cook with drawn times, who is away for half an hour now and then. */
function day(words: string[], seed: number, batches: number, patient: boolean) {
  const kitchen = saturdayKitchen();
  for (const said of words) kitchen.session.hear(said);
  const cook = new DrawnCook(kitchen, seed, 0.3, patient);
  const random = seededRandom(seed + 100);
  const early = new EarlyCalls();
  const over = isOver(batches);
  const found: string[] = [];
  let minutes = 0;
  while (kitchen.session.now() < EIGHT + 16 * HOUR_MS && !over(kitchen.session.state)) {
    if (random() < 0.004) kitchen.clock.advance(30 * MINUTE_MS);
    cook.live(kitchen.session.now() + MINUTE_MS, over);
    minutes += 1;
    early.look(kitchen);
    for (const one of contradictions(kitchen)) found.push(`${minutes}: ${one}`);
  }
  expect(over(kitchen.session.state)).toBe(true);
  return { found, early: early.early, minutes };
}

const PLANNED = [
  "plan eight pounds of Provider dilly beans, seven pounds of pickled beets and six pounds of " +
    "bread and butter pickles",
  "yes",
];
const BY_ITSELF = [
  "start the pickled beets, seven pounds",
  "start eight pounds of Provider dilly beans",
];
const ALONE = ["start the crushed tomatoes, twenty-eight pounds"];

describe("the kitchen's word at every minute of a day", () => {
  it.each([
    ["by an agreed plan", PLANNED, 3, 1, true],
    ["by an agreed plan, in a wrong order", PLANNED, 3, 2, false],
    ["of two batches nobody planned", BY_ITSELF, 2, 3, true],
    ["of one batch of several loads", ALONE, 1, 4, true],
  ] as const)(
    "is one %s",
    (_, words, batches, seed, patient) => {
      const { found, early, minutes } = day([...words], seed, batches, patient);
      expect(minutes).toBeGreaterThan(200);
      expect(found).toEqual([]);
      expect(early).toEqual([]);
    },
    120_000,
  );
});
