/** What a decision can be, and the small functions every decision uses. */

import type { Library } from "../../recipe/library.ts";
import type { Command, Intent, Ref } from "../command.ts";
import type { DatedFact } from "../events.ts";
import type { LotOf } from "../jars/lots.ts";
import { type Owner, ownerOf, runOf } from "../owners.ts";
import { batchName, listed, lotName } from "../spoken-names.ts";
import { type Batch, kitchenTimeOf, type StageRun, type State, wallOf } from "../state.ts";
import { localIso, MINUTE_MS, parseIso } from "../time.ts";

export type Choice = { label: string; ref: Ref };

/** A command with what an earlier question about it settled. */
export type Wish<I extends Intent = Intent> = {
  command: Command<I>;
  /** A yes to "really?"; a no only where the question was an either/or. */
  confirmed?: boolean;
  /** The number that was asked for; null where the answer was that it is not known. */
  amount?: number | null;
  /** Which of several was meant. */
  chosen?: Ref[];
};

export type Decision =
  /** `refusal`: facts are written down, but what was asked for is refused. */
  | { kind: "done"; facts: DatedFact[]; refusal?: string }
  | { kind: "refused"; reason: string }
  /** One short question; `wish` is decided again with the answer, `facts` are written at once. */
  | {
      kind: "ask";
      facts?: DatedFact[];
      text: string;
      wish: Wish;
      expects: "yes" | "either" | "minutes" | "heard" | "which" | "number" | "when";
      choices: Choice[];
    }
  /** The program closes. */
  | { kind: "leave" }
  /** Nothing changes: the answer comes from the state. */
  | { kind: "tell" };

/** A question back, with what is decided again once it is answered. */
export type Asked = Extract<Decision, { kind: "ask" }>;

/** Questions answered by a yes or a no. */
export const YES_NO: ReadonlySet<Asked["expects"]> = new Set(["yes", "either", "heard"]);

/** The present, in which something is decided. */
export type Present = {
  state: State;
  now: number;
  library: Library;
  /** The alarms that were said last, in one breath. */
  lastAlarms?: readonly string[];
};

/** A wish to be decided now; of any intent unless one is named. */
export type Deciding<I extends Intent = Intent> = Present & { wish: Wish<I> };

export function done(...facts: DatedFact[]): Decision {
  return { kind: "done", facts };
}

export function refused(reason: string): Decision {
  return { kind: "refused", reason };
}

/** An outcome with facts that are written down beside it, whatever else comes of it. */
export function withFacts(
  outcome: Decision,
  after: readonly DatedFact[],
  before: readonly DatedFact[] = [],
): Decision {
  if (after.length + before.length === 0) return outcome;
  const own = outcome.kind === "done" || outcome.kind === "ask" ? outcome.facts : [];
  const facts = [...before, ...(own ?? []), ...after];
  if (outcome.kind === "refused") return { kind: "done", facts, refusal: outcome.reason };
  return outcome.kind === "done" || outcome.kind === "ask" ? { ...outcome, facts } : done(...facts);
}

export function askYes(wish: Wish, text: string): Decision {
  return { kind: "ask", text, wish, expects: "yes", choices: [] };
}

/** A question for a length of time, to which "I don't know" is an answer. */
export function askMinutes(wish: Wish, text: string): Decision {
  return { kind: "ask", text, wish, expects: "minutes", choices: [] };
}

/** A question to which a no is an answer like a yes. */
export function askEither(wish: Wish, text: string): Decision {
  return { kind: "ask", text, wish, expects: "either", choices: [] };
}

export function askNumber(wish: Wish, text: string): Decision {
  return { kind: "ask", text, wish, expects: "number", choices: [] };
}

const THE = "the ";

/** "Which one: the brine or the canner?", "Which brine: Provider or Blue Lake?" */
export function askWhich(wish: Wish, lead: string, choices: Choice[]): Decision {
  const labels = choices.map((choice) => choice.label);
  const sort = lead === "Which one:" ? sharedEnd(labels) : undefined;
  const names =
    sort === undefined ? labels : labels.map((one) => one.slice(THE.length, -sort.length - 1));
  const said = sort === undefined ? lead : `Which ${sort}:`;
  const text = `${said} ${listed(names, "or")}?`;
  return { kind: "ask", text, wish, expects: "which", choices };
}

/** Which of these batches is meant, by their names or by labels that tell them further apart. */
export function askWhichBatch(
  wish: Wish,
  lead: string,
  batches: readonly Batch[],
  labelOf: (batch: Batch) => string = batchName,
): Decision {
  const choices = batches.map((one): Choice => ({ label: labelOf(one), ref: { owner: one.id } }));
  return askWhich(wish, lead, choices);
}

/** Which of these lots is meant, by their names or by labels that tell them further apart. */
export function askWhichLot(
  wish: Wish,
  lead: string,
  lots: readonly LotOf[],
  labelOf: (one: LotOf) => string = lotName,
): Decision {
  const choices = lots.map((one): Choice => ({ label: labelOf(one), ref: refOf(one) }));
  return askWhich(wish, lead, choices);
}

/** What stands for a lot: the batch alone where it is its only one. */
export function refOf({ batch, lot }: LotOf): Ref {
  return batch.lots.length > 1 ? { owner: batch.id, lot: lot.id } : { owner: batch.id };
}

/** The words that several names end with, where each has another before them besides "the". */
function sharedEnd(labels: readonly string[]): string | undefined {
  const [first = [], ...others] = labels.map((label) => label.split(" ").toReversed());
  const differs = first.findIndex((word, i) => others.some((other) => other[i] !== word));
  const shared = first.slice(0, differs).toReversed().join(" ");
  const whole = labels.some((label) => label === THE + shared || !label.startsWith(THE));
  return others.length > 0 && shared !== "" && !whole ? shared : undefined;
}

/** A report may lie at most this far in the future; clocks and people round. */
const AHEAD_MS = MINUTE_MS;

/** When a report says something happened, in kitchen time; now where it does not say. */
export function happenedAt(
  state: State,
  slots: { at?: string },
  now: number,
): { ok: true; t: number } | { ok: false; reason: string } {
  if (slots.at === undefined) return { ok: true, t: now };
  const wall = parseIso(slots.at, state.zone);
  if (wall === undefined) return { ok: false, reason: `I can't read the time ${slots.at}.` };
  const t = kitchenTimeOf(state, wall);
  if (t > now + AHEAD_MS) return { ok: false, reason: "That time has not come yet." };
  return { ok: true, t: Math.min(t, now) };
}

/** The owner and stage of a reference, as long as both exist. */
export function lookUp(state: State, ref: Ref): { owner: Owner; run?: StageRun } | undefined {
  if (!("owner" in ref)) return undefined;
  const owner = ownerOf(state, ref.owner);
  if (!owner) return undefined;
  const run = ref.stage === undefined ? undefined : runOf(owner, ref.stage);
  return run ? { owner, run } : { owner };
}

/** Local wall time of an instant, for sentences that name one. */
export function wallIso(state: State, t: number): string {
  return localIso(wallOf(state, t), state.zone);
}
