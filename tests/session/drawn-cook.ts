import type { Command, Intent } from "../../src/kitchen/command.ts";
import { largestLoad } from "../../src/kitchen/jars/canner-room.ts";
import { filled, jarsExpected, weightLb } from "../../src/kitchen/jars/lots.ts";
import { openLoad } from "../../src/kitchen/loads/open-load.ts";
import { activeOwners, isLoad, type Owner } from "../../src/kitchen/owners.ts";
import { questions } from "../../src/kitchen/questions/questions.ts";
import { heldForCanner } from "../../src/kitchen/settle.ts";
import { shelves } from "../../src/kitchen/shelves.ts";
import { isOver } from "../../src/kitchen/stage-run.ts";
import type { Batch, StageRun, State } from "../../src/kitchen/state.ts";
import { MINUTE_MS } from "../../src/kitchen/time.ts";
import { current } from "../../src/kitchen/unbroken-time.ts";
import { seededRandom } from "../../src/plan/solver/random.ts";
import type { MadeUpKitchen } from "../../src/session/rehearsal/made-up-kitchen.ts";

type Work = { owner: string; run: StageRun; from: number; to: number };

/** Hot food or filled jars that stood longer than this have gone cold. */
const WINDOW_MS = 10 * MINUTE_MS;

/**
 * A cook with one pair of hands, who does what Hands shows first and takes a randomly drawn time.
 * Records when hands were at each stage, which a report of its end alone does not show.
 */
export class DrawnCook {
  readonly done: Work[] = [];
  private readonly random: () => number;
  private readonly drawn = new Map<string, number>();
  private readonly lit = new Map<string, number>();
  private work: Work | undefined;

  /** @param patient false for a cook who heats hot packs without waiting for the canner. */
  constructor(
    readonly kitchen: MadeUpKitchen,
    seed: number,
    private readonly spread: number,
    private readonly patient: boolean,
  ) {
    this.random = seededRandom(seed);
  }

  /** Works on, minute by minute, until nothing is in the canner or to come, or the time is over. */
  live(untilMs: number, isDone: (state: State) => boolean): void {
    const { kitchen } = this;
    while (kitchen.session.now() < untilMs && !isDone(kitchen.session.state)) {
      this.look();
      kitchen.clock.advance(MINUTE_MS);
    }
  }

  private minutes(owner: Owner, run: StageRun, typical: number): number {
    const key = `${owner.id}/${run.id}`;
    const known = this.drawn.get(key);
    if (known !== undefined) return known;
    const normal =
      Math.sqrt(-2 * Math.log(1 - this.random())) * Math.cos(2 * Math.PI * this.random());
    const made = Math.max(1, Math.round(typical * Math.exp(this.spread * normal)));
    this.drawn.set(key, made);
    return made;
  }

  private say(intent: Intent, slots: object, owner?: Owner, stage?: string): void {
    const command = { intent, slots, confidence: 1 } as Command;
    const ref = owner && (stage === undefined ? { owner: owner.id } : { owner: owner.id, stage });
    const wish = ref ? { command, chosen: [ref] } : { command };
    this.kitchen.session.carry({ wish, words: intent });
  }

  private look(): void {
    const { session } = this.kitchen;
    for (let n = 0; n < 5 && questions(session.state)[0]; n++) {
      const [question] = questions(session.state);
      if (question?.kind === "seals") break;
      if (question?.kind === "disposition") this.say("disposition", { what: "refrigerate" });
      else this.say("yes", {});
    }
    for (const owner of activeOwners(session.state)) {
      for (const run of owner.stages) this.heat(owner, run);
    }
    const { work } = this;
    if (work && session.now() >= work.to) this.finish(work);
    if (!this.work) this.takeUp();
  }

  /** What heats up by itself, in its drawn time. */
  private heat(owner: Owner, run: StageRun): void {
    const startedAt = run.startedAt ?? this.litAnyway(owner, run);
    if (startedAt === undefined || isOver(run) || run.spec.kind !== "heat") return;
    const since = (this.kitchen.session.now() - startedAt) / MINUTE_MS;
    const hold = run.kept?.needMinutes ?? 0;
    const boils = since >= this.minutes(owner, run, Math.max(1, run.spec.typicalMinutes - hold));
    if (!boils || (run.kept && current(run.kept))) return;
    if (!isLoad(owner)) this.say("boiling", {}, owner, run.id);
    else if (run.id === "canner") this.say("done", {}, owner, run.id);
    else this.say("boiling", { covered: true }, owner, "process");
  }

  /** When an impatient cook put on what the kitchen said should wait. */
  private litAnyway(owner: Owner, run: StageRun): number | undefined {
    const { state } = this.kitchen.session;
    const now = this.kitchen.session.now();
    if (this.patient || isLoad(owner) || !heldForCanner(state, owner, run, now)) return undefined;
    const key = `${owner.id}/${run.id}`;
    if (!this.lit.has(key)) this.lit.set(key, now);
    return this.lit.get(key);
  }

  private takeUp(): void {
    const { session } = this.kitchen;
    const now = session.now();
    const { state } = session;
    const item = shelves(state, now).find((one) => one.shelf === "hands" && this.canDo(state, one));
    if (!item) return;
    const { owner, run } = item;
    if (item.offer === "begin") {
      this.say("begin", { named: run.id }, owner, run.id);
      return;
    }
    if (run.spec.kind === "rest") {
      this.say("done", {}, owner, run.id);
      return;
    }
    const beyond = isLoad(owner)
      ? 0
      : Math.max(0, (weightLb(owner) ?? 0) - owner.recipe.yield.weightLb);
    const typical = run.spec.typicalMinutes + (run.spec.minutesPerLb ?? 0) * beyond;
    const minutes = this.minutes(owner, run, Math.max(1, typical));
    this.work = { owner: owner.id, run, from: now, to: now + minutes * MINUTE_MS };
  }

  private canDo(state: State, { owner, run }: { owner: Owner; run: StageRun }): boolean {
    if (run.spec.kind === "seal-check" || run.spec.kind === "cool") return false;
    if (run.spec.kind !== "fill" || isLoad(owner)) return true;
    const canner = openLoad(state, owner)?.stages.find((one) => one.id === "canner");
    return canner?.state === "complete";
  }

  private finish(work: Work): void {
    this.work = undefined;
    this.done.push(work);
    const { state } = this.kitchen.session;
    const owner = state.batches[work.owner] ?? state.loads[work.owner];
    if (!owner) return;
    if (isLoad(owner)) {
      if (work.run.id === "load") this.say("loaded", {}, state.batches[owner.batch]);
      else if (work.run.id === "unload") this.say("done", { target: "jars" }, owner);
      else this.say("done", {}, owner, work.run.id);
      return;
    }
    if (work.run.spec.kind !== "fill") {
      this.say("done", {}, owner, work.run.id);
      return;
    }
    const holds = owner.jar ? largestLoad(state, owner.jar) : 9;
    const left = Math.max(1, (jarsExpected(owner) ?? holds) - filled(owner));
    this.say("jars-filled", { count: Math.min(holds, left), size: owner.jar }, owner);
    this.drawn.delete(`${owner.id}/${work.run.id}`);
  }

  /** Hot packs that stood before they were filled, and filled jars that stood before the canner. */
  brokenWindows(): string[] {
    const { state } = this.kitchen.session;
    const broken: string[] = [];
    for (const batch of Object.values(state.batches)) {
      const fills = this.done.filter(
        (one) => one.owner === batch.id && one.run.spec.kind === "fill",
      );
      const hot = lastHeat(batch);
      const [first] = fills;
      if (hot !== undefined && first && first.from - hot > WINDOW_MS) {
        broken.push(
          `${batch.recipe.id} stood hot ${Math.round((first.from - hot) / MINUTE_MS)} min`,
        );
      }
      for (const fill of fills) {
        const loads = this.done.filter((one) => one.run.id === "load" && one.from >= fill.to);
        const next = loads.find((one) =>
          state.loads[one.owner]?.parts.some((p) => p.batch === batch.id),
        );
        const stood = next ? next.from - fill.to : 0;
        if (stood > WINDOW_MS)
          broken.push(`${batch.recipe.id} jars stood ${stood / MINUTE_MS} min`);
      }
    }
    return broken;
  }
}

/** When the food that is packed hot was ready; undefined for a raw pack. */
function lastHeat(batch: Batch): number | undefined {
  if (batch.option?.pack !== "hot") return undefined;
  const fill = batch.stages.find((run) => run.spec.kind === "fill");
  const heats = batch.stages.filter((run) => {
    return run.spec.kind === "heat" && fill?.spec.after.some((after) => after.stage === run.id);
  });
  const ends = heats.flatMap((run) => run.endedAt ?? []);
  return ends.length > 0 ? Math.max(...ends) : undefined;
}
