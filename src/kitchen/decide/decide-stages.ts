/** Deciding on stages: what is done or begun, and what such words may mean at this moment. */

import { countWords, numberWords } from "../../reckon/number-words.ts";
import { commandOf, type Meant, type Ref } from "../command.ts";
import { cannerOf, capacity } from "../jars/canner-room.ts";
import { filled as jarsFilled, partOf, ready, readyOf } from "../jars/lots.ts";
import { namesSort, standsFor } from "../meant.ts";
import { activeOwners, isLoad, type Owner, runOf, runOfRole } from "../owners.ts";
import { heldForCanner, readyAt } from "../settle.ts";
import { shelves } from "../shelves.ts";
import { calledName, loadName, ownerName, potOf, upper } from "../spoken-names.ts";
import { farTooEarly, isOver } from "../stage-run.ts";
import { hasRole, isOfCanner, rulesOf } from "../stages/kinds.ts";
import { type Load, type StageRun, type State, wallOf } from "../state.ts";
import { HOUR_MS, MINUTE_MS, upToMinute } from "../time.ts";
import { completesAt, current, unanswered } from "../unbroken-time.ts";
import {
  askNumber,
  askWhich,
  askYes,
  type Choice,
  type Deciding,
  type Decision,
  done,
  happenedAt,
  type Present,
  refused,
  wallIso,
} from "./decision.ts";

export type Candidate = { owner: Owner; run: StageRun };

/** "the Provider brine", shorter where that is clear. */
function candidateLabel(state: State, candidate: Candidate): string {
  const { owner, run } = candidate;
  if (isLoad(owner)) return state.kitchen.canners.length > 1 ? owner.canner : "the canner";
  const pot = potOf(run);
  const others = activeOwners(state).filter((one) => !isLoad(one));
  return others.length > 1 ? `${calledName(state, owner)} ${pot}` : `the ${pot}`;
}

/** Stages of active batches and loads that pass a test, narrowed to what was named. */
export function candidateStages(
  deciding: Deciding,
  ref: Meant | undefined,
  test: (owner: Owner, run: StageRun) => boolean,
): Candidate[] {
  const { state, wish } = deciding;
  const all: Candidate[] = [];
  for (const owner of activeOwners(state)) {
    for (const run of owner.stages) if (test(owner, run)) all.push({ owner, run });
  }
  const { chosen } = wish;
  if (chosen) return all.filter((one) => standsFor(chosen, one.owner, one.run));
  return ref === undefined ? all : meant(state, ref, all);
}

/**
 * The stages a name means. A vessel that any of them may be in ("the water", "the pot") means them
 * all, so that the caller asks; a name that fits nothing as a whole may name a stage and its batch
 * together ("the Provider brine").
 */
function meant(state: State, ref: Meant, all: Candidate[]): Candidate[] {
  const named = all.filter((one) => isNamed(state, ref, one));
  if (named.some((one) => isLoad(one.owner))) return named;
  // Where a batch and one of its pots bear the name, that pot is meant: "the beets".
  const [pot, other] = named.filter((one) => standsFor(ref.parts, one.owner, one.run));
  if (pot && !other) return [pot];
  const either = all.filter(
    (one) => named.includes(one) || standsFor(ref.vessels, one.owner, one.run),
  );
  if (either.length > 0) return either;
  return all.filter(({ owner, run }) => standsFor(ref.parts, owner, run));
}

/** Whether a name may mean this stage: by itself, its pot, its batch, or its canner. */
function isNamed(state: State, ref: Meant, { owner, run }: Candidate): boolean {
  if (standsFor(ref.running, owner, run)) return true;
  return isLoad(owner) && ref.running.some((one) => goesInto(state, one, owner));
}

/** Whether the jars of a named batch are in this load or will go into it. */
function goesInto(state: State, ref: Ref, load: Load): boolean {
  const batch = "owner" in ref ? state.batches[ref.owner] : undefined;
  if (!batch || !("owner" in ref)) return false;
  // "The brine" is the batch's own pot, not the canner its jars go into.
  const stage = ref.stage === undefined ? undefined : runOf(batch, ref.stage);
  if (stage && !isOfCanner(stage.spec)) return false;
  const inIt = load.parts.some((part) => part.batch === batch.id);
  return inIt || (load.parts.length === 0 && load.batch === batch.id);
}

/** Names to choose from; two of the same name are distinguished by stage, then by id. */
export function choicesOf(state: State, list: Candidate[]): Choice[] {
  const named = list.map((one) => ({ one, label: candidateLabel(state, one) }));
  const alike = (label: string) => named.filter((other) => other.label === label).length > 1;
  for (const tell of [(one: Candidate) => one.run.spec.title, (one: Candidate) => one.owner.id]) {
    const same = named.filter(({ label }) => alike(label));
    const longer = same.map(({ one, label }) => `${label}, ${tell(one)}`);
    same.forEach((each, at) => {
      each.label = longer[at] ?? each.label;
    });
  }
  return named.map(({ one, label }) => {
    return { label, ref: { owner: one.owner.id, stage: one.run.id } };
  });
}

export function stageFact(type: "stage-done" | "stage-begun", one: Candidate, t: number) {
  return { type, owner: one.owner.id, stage: one.run.id, t } as const;
}

/** Whether a plain "done" may end this stage. */
function endsByDone(owner: Owner, run: StageRun): boolean {
  if (run.state !== "running" || rulesOf(run.spec).ends === "date") return false;
  if (rulesOf(run.spec).ends === "kept-time") return false;
  if (!isLoad(owner)) return owner.state === "running";
  return run.spec.step !== "come-up" && run.spec.step !== "pressurize";
}

export function decideDone(deciding: Deciding<"done">): Decision {
  const { state, now, wish } = deciding;
  const { slots, ref } = wish.command;
  const when = happenedAt(state, slots, now);
  if (!when.ok) return refused(when.reason);
  if (namesSort(ref, ...INSIDE) && activeOwners(state).some(isLoaded)) {
    return decideOut(deciding, when.t);
  }
  const open = candidateStages(deciding, ref, endsByDone);
  if (namesSort(ref, "jars") && namesSort(ref, "out")) {
    const cooling = open.some((one) => hasRole(one.run.spec, "cooling"));
    return refused(cooling ? "Those jars are out already." : "No jars are in a canner.");
  }
  if (open.length === 0 && ref !== undefined) {
    const out = candidateStages(deciding, ref, (_, run) => hasRole(run.spec, "treatment"));
    if (out.some((one) => isLoaded(one.owner))) return decideOut(deciding, when.t);
    // Turning it off breaks its time, where that runs; where it is lost or has not begun, nothing.
    const lit = candidateStages(deciding, ref, isHeatOff);
    const off = lit.find(isLit) ?? lit[0];
    if (off) return done({ type: "heat-off", load: off.owner.id, t: when.t });
    const waiting = candidateStages(deciding, ref, (owner, run) => {
      const waits = !isLoad(owner) && heldForCanner(state, owner, run, now);
      return waits || isReady(deciding, owner, run);
    });
    const [first] = waiting;
    if (first && waiting.length === 1) return endStage(deciding, first, when.t);
  }
  const one = pickForDone(deciding, open);
  const early = one && !wish.confirmed && earlyQuestion(deciding, one, when.t);
  if (early) return early;
  if (one) return endStage(deciding, one, when.t);
  if (open.length === 0) return refused(nothingToEnd(deciding));
  return askWhich(wish, "Which is done:", choicesOf(state, open));
}

const SHORT = [MINUTE_MS, "minute"] as const;
const SPANS = [[24 * HOUR_MS, "day"], [HOUR_MS, "hour"], SHORT] as const;

/** Asks before a stray "done" ends what has most of its time to go. */
function earlyQuestion(
  { state, wish }: Deciding<"done">,
  { owner, run }: Candidate,
  t: number,
): Decision | undefined {
  const early = farTooEarly(run, t);
  if (!early) return undefined;
  const [ms, unit] = SPANS.find(([span]) => early.of >= 2 * span) ?? SHORT;
  const whole = Math.floor(early.got / ms);
  const got = whole === 0 ? "none" : numberWords(whole);
  const of = countWords(Math.round(early.of / ms), unit);
  const name = isLoad(owner) ? loadName(state, owner) : ownerName(state, owner);
  const text = `${upper(run.spec.title)} of ${name} has had ${got} of at least ${of}.`;
  const chosen = [{ owner: owner.id, stage: run.id }];
  return askYes({ ...wish, chosen }, `${text} End it now all the same? Say yes or no.`);
}

function isLoaded(owner: Owner): boolean {
  return isLoad(owner) && owner.loadedAt !== undefined && owner.unloadedAt === undefined;
}

/** Whether a load's heat is still to go off. */
function isHeatOff(owner: Owner, run: StageRun): boolean {
  return run.spec.step === "heat-off" && run.state === "waiting" && isLoaded(owner);
}

function isLit({ owner }: Candidate): boolean {
  return owner.stages.some(({ kept, spec, state }) => {
    return state === "running" && kept && rulesOf(spec).watched && current(kept);
  });
}

function nothingToEnd(deciding: Deciding<"done">): string {
  const { ref } = deciding.wish.command;
  const { target } = deciding.wish.command.slots;
  const hot = (owner: Owner, run: StageRun) =>
    isLoad(owner) && !isLoaded(owner) && run.spec.step === "canner" && run.state === "complete";
  if (ref !== undefined && candidateStages(deciding, ref, hot).some(({ owner }) => isLoad(owner)))
    return "The canner is ready already.";
  if (target !== undefined)
    return `I have nothing running called ${target} that you can end by saying so.`;
  const process = activeOwners(deciding.state).find(
    (owner) => isLoad(owner) && runOfRole(owner, "treatment")?.state === "running",
  );
  if (process) return "The canner is processing; it ends by itself when its time is full.";
  return "Nothing is waiting for that.";
}

/** Whether a stage only waits for a person to say that it begins. */
export function isReady(deciding: Present, owner: Owner, run: StageRun): boolean {
  if (run.state !== "waiting" || isLoad(owner) || run.spec.start !== "word") return false;
  const at = readyAt(deciding.state, owner, run, deciding.now);
  return at !== undefined && at <= deciding.now;
}

/** "Done" with nothing named means what Hands shows, if that leaves one thing. */
function pickForDone(deciding: Deciding<"done">, open: Candidate[]): Candidate | undefined {
  if (open.length <= 1) return open[0];
  const { state, now } = deciding;
  // A batch's name means its own work; its warming canner goes by its own name.
  const { ref } = deciding.wish.command;
  const own = open.filter((one) => !isLoad(one.owner));
  if (ref && own.length === 1 && !namesSort(ref, "canner", "jars", "load")) return own[0];
  const shown = shelves(state, now)
    .filter((item) => item.shelf === "hands" && item.offer !== "begin")
    .map((item) => open.find((one) => one.run === item.run))
    .filter((one): one is Candidate => one !== undefined);
  if (shown.length === 1) return shown[0];
  if (shown.length > 1) {
    const mine = shown.filter((one) => one.owner.id === state.focus);
    return mine.length === 1 ? mine[0] : undefined;
  }
  const attended = open.filter((one) => rulesOf(one.run.spec).shelf !== "rest");
  return attended.length === 1 ? attended[0] : undefined;
}

/** Ends a stage the way its kind ends: some need a count or are facts of their own. */
function endStage(deciding: Present, one: Candidate, t: number): Decision {
  const { state } = deciding;
  const { owner, run } = one;
  if (hasRole(run.spec, "filling") && !isLoad(owner)) {
    if (jarsFilled(owner) > 0) return done({ type: "all-filled", batch: owner.id, t });
    const filled = commandOf("jars-filled", {});
    return askNumber(
      { command: filled },
      `How many jars did you fill of ${ownerName(state, owner)}?`,
    );
  }
  if (isLoad(owner)) {
    if (run.spec.step === "load") return loadedByWord(deciding, owner, t);
    if (run.spec.step === "heat-off") return done({ type: "heat-off", load: owner.id, t });
    if (run.spec.step === "unload")
      return done({ type: "unloaded", load: owner.id, early: false, t });
    if (hasRole(run.spec, "seals")) return refused("Tell me which jars sealed, or all sealed.");
    if (hasRole(run.spec, "coming-down") && !(run.kept && current(run.kept))) {
      return done({ type: "pressure", load: owner.id, psi: 0, t });
    }
  }
  const begun = run.state === "waiting" ? [stageFact("stage-begun", one, t)] : [];

  return done(...begun, stageFact("stage-done", one, t));
}

/** The jars that stand filled for this load go in. */
function loadedByWord(deciding: Present, load: Load, t: number): Decision {
  const batch = deciding.state.batches[load.batch];
  if (!batch || ready(batch) === 0) return refused("No jars are filled yet. Say how many are.");
  let room = capacity(cannerOf(deciding.state, load.canner), batch.jar ?? "pint");
  const parts = batch.lots.flatMap((lot) => {
    const jars = Math.min(room, readyOf(lot).length);
    room -= jars;
    return jars > 0 ? [partOf(lot, jars)] : [];
  });
  return done({ type: "loaded", load: load.id, parts, t });
}

/** Sorts of things that stand for the load that is in the canner. */
const INSIDE = ["jars", "processing", "canner"] as const;

/** Taking jars out: the plain end of a load, or early, which needs a warning and a yes. */
function decideOut(deciding: Deciding<"done">, t: number): Decision {
  const { state, wish } = deciding;
  const { ref } = wish.command;
  const inside = candidateStages(deciding, undefined, (owner, run) => {
    return isLoaded(owner) && hasRole(run.spec, "treatment");
  });
  const bySort = !ref || namesSort(ref, ...INSIDE);
  const named = bySort ? inside : inside.filter((one) => isNamed(state, ref, one));
  const [one] = named;
  if (!one || !isLoad(one.owner)) return refused("No jars are in a canner.");
  if (named.length > 1) return askWhich(wish, "Which canner:", choicesOf(state, named));
  const load = one.owner;
  const closed = isOver(one.run) ? stillClosed(deciding, load, t) : undefined;
  if (closed) return refused(closed);
  const full = isOver(one.run) && t >= (one.run.endedAt ?? t);
  if (full) return done({ type: "unloaded", load: load.id, early: false, t });
  // A time that was lost, or ended by turning the heat off, is not broken off by that.
  const { kept } = one.run;
  const stopped = kept && kept.stretches.length > 0 && !current(kept);
  const closedPot = load.terms?.method === "pressure";
  if (wish.confirmed || (stopped && !closedPot))
    return done({ type: "unloaded", load: load.id, early: true, t });
  return askYes(wish, earlyWarning(state, load, one.run, t));
}

/** Why a pressure canner may not be opened after its process; undefined where it may. */
function stillClosed(deciding: Present, load: Load, t: number): string | undefined {
  const zero = runOfRole(load, "coming-down");
  if (!zero || isOver(zero)) return undefined;
  const at = zero.kept && completesAt(zero.kept);
  if (at === undefined) {
    return (
      "The canner may still be under pressure. " +
      "Let it come to zero by itself, and tell me when it is."
    );
  }
  if (at <= t) return undefined;
  const wall = wallOf(deciding.state, at);
  const when = wallIso(deciding.state, at + upToMinute(wall) - wall).slice(11, 16);
  return `It has come to zero. Leave the lid on until ${when}, then lift it away from you.`;
}

/** The warning before jars come out of a process that is not full. */
function earlyWarning(state: State, load: Load, run: StageRun, t: number): string {
  const name = upper(loadName(state, load));
  const { kept } = run;
  const stretch = kept && current(kept);
  const got = stretch ? Math.floor((t - stretch.from) / MINUTE_MS) : 0;
  const so =
    kept && unanswered(kept).length > 0
      ? `${name} was unwatched for a time, and nobody said that it held.`
      : `${name} has had ${got} of ${kept?.needMinutes ?? 0} minutes.`;
  const zero =
    load.terms?.method === "pressure"
      ? " Heat off first, and never open a canner before it has come to zero by itself."
      : "";
  return `${so} Jars taken out now are not shelf-stable.${zero} Take them out anyway?`;
}

/** What the wet-hands key does: exactly what Hands shows. */
export function decideKey(
  deciding: Present,
  item: Candidate & { offer?: "done" | "begin" },
): Decision {
  if (item.offer === "begin") return done(stageFact("stage-begun", item, deciding.now));
  return endStage(deciding, item, deciding.now);
}
