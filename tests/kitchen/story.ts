import type { Command, Intent, SlotsOf } from "../../src/kitchen/command.ts";
import { CarriedOut } from "../../src/kitchen/decide/carried-out.ts";
import { decide } from "../../src/kitchen/decide/decide.ts";
import type { Decision, Wish } from "../../src/kitchen/decide/decision.ts";
import { wake } from "../../src/kitchen/decide/wake.ts";
import type { DatedFact, Fact, KitchenEvent } from "../../src/kitchen/events.ts";
import { apply } from "../../src/kitchen/evolve.ts";
import { questionToAsk } from "../../src/kitchen/questions/questions.ts";
import { type Batch, initialState, type Load, type State } from "../../src/kitchen/state.ts";
import { MINUTE_MS } from "../../src/kitchen/time.ts";
import { meantBy } from "../../src/language/values/resolve-names.ts";
import { thingsOf } from "../../src/session/context-of.ts";
import { theLibrary } from "../scenarios/play.ts";

/** Eight in the morning of the day everything is told of, in the zone it is told in. */
export const EIGHT = Date.UTC(2027, 7, 14, 14);
const ZONE = "America/Denver";

/** The instant so many minutes after eight. */
export function at(minutes: number): number {
  return EIGHT + minutes * MINUTE_MS;
}

/** A command as it is understood in a kitchen: with what the names in its slots stand for. */
export function commandOf<I extends Intent>(state: State, intent: I, slots: SlotsOf[I]): Command {
  const { target, named = target, over } = slots as Record<string, string | undefined>;
  const around = { ...thingsOf(state), recipes: [] };
  return {
    ...{ intent, slots, confidence: 1 },
    ...(named === undefined ? {} : { ref: meantBy(named, around, true) }),
    ...(over === undefined ? {} : { overRef: meantBy(over, around, true) }),
  } as unknown as Command;
}

/**
 * A kitchen's day as a test tells it: what had happened (given), what a person says (when), and
 * what is written down for it or why it is refused (then). Times are minutes after eight.
 */
export class Story {
  readonly state: State = initialState();
  readonly events: KitchenEvent[] = [];
  private commands = 0;

  constructor(altitudeFt: number | null = 6200) {
    const opened = { version: "0", zone: ZONE, offsetMs: 0, rehearsal: true } as const;
    this.happened(0, { type: "opened", ...opened });
    if (altitudeFt !== null) this.happened(0, { type: "kitchen-set", altitudeFt });
  }

  /** Given: events as they were written at a minute. */
  happened(minute: number, ...facts: Fact[]): this {
    this.write(
      facts.map((fact) => ({ ...fact, t: at(minute) })),
      minute,
      "~",
    );
    return this;
  }

  /** When: a person says something; what comes of it is written down unless it is refused. */
  says<I extends Intent>(
    minute: number,
    intent: I,
    slots: SlotsOf[I] = {} as SlotsOf[I],
    more: Omit<Wish, "command"> & Pick<Command, "confirms" | "evidence"> = {},
  ): Decision {
    const { confirms = [], evidence, ...rest } = more;
    const beside = { confirms, ...(evidence ? { evidence } : {}) };
    const command = { ...commandOf(this.state, intent, slots), ...beside };
    const wish: Wish = { command, ...rest };
    const outcome = decide(this.state, wish, at(minute), theLibrary());
    const facts = outcome.kind === "done" ? this.carry(minute, outcome.facts) : [];
    this.ask(minute);
    return outcome.kind === "done" ? { ...outcome, facts } : outcome;
  }

  /** Time passes to a minute: what comes due is written down. */
  passes(minute: number): DatedFact[] {
    const woken = wake(this.state, at(minute), theLibrary(), () => this.mark(minute, "~"));
    if (woken) this.take(woken);
    this.ask(minute);
    return woken?.events ?? [];
  }

  /** A batch that is begun as a person begins it. */
  begins(minute: number, recipe: string, more: object = {}): Batch {
    const outcome = this.says(minute, "begin", { recipe, ...more });
    const facts = outcome.kind === "done" ? outcome.facts : [];
    const begun = facts.find(({ type }) => type === "batch-begun" || type === "lot-added");
    if (!begun || !("batch" in begun)) throw new Error(JSON.stringify(outcome));
    return this.batch(begun.batch ?? "");
  }

  /** Another batch of the same recipe with pots of its own. */
  apart(minute: number, like: Batch, variety: string, weightLb = 2): Batch {
    const { recipe, jar, pack, option, terms } = like;
    const made = { recipe, jar, pack, option, terms };
    const lot = { variety, weightLb, pickedAt: null };
    const of = { batch: `apart-${variety}`.replaceAll(" ", "-"), lot, mark: variety.slice(0, 1) };
    this.happened(minute, { type: "batch-begun", ...of, ...made, expectedJars: 2 * weightLb });
    return this.batch(of.batch);
  }

  /** Jars of a batch in the canner, everything before it done, confirmed and answered. */
  loads(minute: number, batch: Batch, jars: number): Load {
    for (const run of batch.stages) {
      if (run.spec.kind === "fill") break;
      this.happened(minute, { type: "stage-done", owner: batch.id, stage: run.id });
    }
    for (const factor of batch.recipe.critical) {
      this.happened(minute, { type: "confirmed", batch: batch.id, factor: factor.id, held: true });
    }
    this.passes(minute);
    const load = Object.values(this.state.loads).find((one) => one.batch === batch.id);
    if (!load) throw new Error("no load was opened");
    const { id } = load;
    this.happened(minute, { type: "stage-done", owner: id, stage: "canner" });
    this.happened(minute, { type: "jars-filled", batch: batch.id, count: jars, size: null });
    const parts = [{ batch: batch.id, jars, first: 1 }];
    this.happened(minute, { type: "loaded", load: id, parts });
    return load;
  }

  batch(id: string): Batch {
    const found = this.state.batches[id];
    if (!found) throw new Error(`no batch ${id}`);
    return found;
  }

  load(id: string): Load {
    const found = this.state.loads[id];
    if (!found) throw new Error(`no load ${id}`);
    return found;
  }

  private ask(minute: number): void {
    const open = questionToAsk(this.state, at(minute));
    if (open) this.happened(minute, { type: "asked", key: open.key, text: open.text });
  }

  private write(facts: DatedFact[], minute: number, who: "c" | "~"): void {
    this.take(new CarriedOut(this.state, this.mark(minute, who)).add(facts));
  }

  /** Facts, with what the kitchen does of its own accord after them. */
  private carry(minute: number, facts: DatedFact[]): DatedFact[] {
    const done = new CarriedOut(this.state, this.mark(minute, "c")).add(facts);
    this.take(done.follow(at(minute), theLibrary()));
    return done.events;
  }

  private mark(minute: number, who: "c" | "~") {
    this.commands += 1;
    return { cmd: `${who}${this.commands}`, w: at(minute) };
  }

  /** In place, so that what a test holds of the state stays a part of it. */
  private take({ events }: CarriedOut): void {
    for (const event of events) {
      this.events.push(event);
      apply(this.state, event);
    }
  }
}

/** What an outcome writes down, by type; the reason of a refusal; the text of a question. */
export function told(outcome: Decision): string | string[] {
  if (outcome.kind === "done") return outcome.facts.map((fact) => fact.type);
  if (outcome.kind === "refused") return outcome.reason;
  return outcome.kind === "ask" ? outcome.text : "tell";
}
