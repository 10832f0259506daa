/** What is said when a stage's turn comes. */

import { type SaidCaution, type Wording, wholeOf } from "../desk/want.ts";
import { startByWordAt } from "../kitchen/agenda.ts";
import { jarsExpected } from "../kitchen/jars/lots.ts";
import { openLoad } from "../kitchen/loads/open-load.ts";
import { tellAt } from "../kitchen/nights.ts";
import { activeOwners, isLoad, type Owner, ownerOf } from "../kitchen/owners.ts";
import { heldForCanner, readyAt } from "../kitchen/settle.ts";
import { batchName, hasTwin, leadName, severalRun, upper } from "../kitchen/spoken-names.ts";
import { isOfCanner, rulesOf } from "../kitchen/stages/kinds.ts";
import { type Batch, type StageRun, type State, wallOf } from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { shortCaution } from "../recipe/cautions.ts";
import { whyOffTheShelf } from "../recipe/choose-process.ts";
import { briefFill, marking } from "./fill-words.ts";
import { momentWords } from "./spoken-time.ts";

/** What is to be started within this many minutes is started now. */
const SOON_MINUTES = 10;

/** Stages that began, or whose turn to begin came, between two states, oldest owner first. */
export function newTurns(
  before: State,
  after: State,
  now: number,
): { owner: Owner; run: StageRun }[] {
  const turns: { owner: Owner; run: StageRun }[] = [];
  /** Whether a stage is ready, or held up by the canner alone, and was not before. */
  const became = (isSo: typeof isReady, batch: Batch, run: StageRun) => {
    if (!isSo(after, batch, run, now)) return false;
    const old = before.batches[batch.id];
    const oldRun = old?.stages.find((one) => one.id === run.id);
    return !old || !oldRun || !isSo(before, old, oldRun, now);
  };
  const isItsTurn = (batch: Batch, run: StageRun) => {
    const ready = became(isReady, batch, run) && !isToldWhenDue(after, batch, run, now);
    return ready || became(heldForCanner, batch, run);
  };
  for (const owner of activeOwners(after)) {
    const old = ownerOf(before, owner.id);
    for (const run of owner.stages) {
      const was = old?.stages.find((one) => one.id === run.id)?.state ?? "none";
      const began = run.state === "running" && was !== "running" && was !== "held";
      if (began || (!isLoad(owner) && isItsTurn(owner, run))) turns.push({ owner, run });
    }
  }
  return turns;
}

function isReady(state: State, owner: Batch, run: StageRun, now: number): boolean {
  if (run.state !== "waiting" || isOfCanner(run.spec)) return false;
  if (run.spec.start !== "word") return false;
  const at = readyAt(state, owner, run, now);
  return at !== undefined && at <= now;
}

/** When it is to be started is told when it comes due, and ahead of it only beside a long rest. */
function isToldWhenDue(state: State, batch: Batch, run: StageRun, now: number): boolean {
  const start = startByWordAt(state, batch, run, now);
  const soon = start !== undefined && start <= now + SOON_MINUTES * MINUTE_MS;
  return start !== undefined && (soon || !restsBeside(batch));
}

/** Whether a long rest goes on, so that there is a time to name. */
function restsBeside({ stages }: Batch): boolean {
  return stages.some(({ state, spec }) => {
    return state === "running" && spec.window && rulesOf(spec).ends === "window";
  });
}

/** The prompt of a stage as one sentence after another, whole. */
export function prompt(state: State, owner: Owner, run: StageRun, now: number): string {
  const wording = promptWording(state, owner, run, now);
  const text = wholeOf(wording);
  return wording.name === undefined || text === "" ? text : `${wording.name}: ${text}`;
}

/** The prompt of a stage: whose it is where several run, what to do, and the cautions. */
export function promptWording(state: State, owner: Owner, run: StageRun, now: number): Wording {
  const name = severalRun(state) ? { name: leadName(state, owner) } : {};
  const { text, short, brief, waits, once = [] } = sayOf(state, owner, run, now);
  if (text === "") return { text };
  const cautions = [...once, ...run.spec.cautions].map(asSaid);
  // What is done in a canner is the same for every recipe, but not by every method.
  const whole = isLoad(owner) ? `${owner.terms?.method}/${run.id}` : run.spec.say;
  const lesson = short === undefined ? {} : { lesson: { id: waits ? short : whole, short } };
  return { ...name, text, cautions, ...lesson, ...(brief ? { brief } : {}) };
}

/** What hurts by steam, pressure or lids is said at each load. */
function asSaid(text: string): SaidCaution {
  const short = shortCaution(text);
  return short === undefined ? { text } : { text, short };
}

/** What is said of a stage; `once` is how to tell of it, said once a day. */
type Said = Pick<Wording, "text" | "brief"> & { short?: string; waits?: boolean; once?: string[] };

function sayOf(state: State, owner: Owner, run: StageRun, now: number): Said {
  const { spec } = run;
  if (!isLoad(owner) && heldForCanner(state, owner, run, now))
    return waitingForCanner(state, owner, run);
  if (run.state === "waiting" && !isLoad(owner)) return waitingToStart(state, owner, run, now);
  const { turn } = rulesOf(spec).says;
  const short = spec.short ?? `${upper(spec.title)}.`;
  if (turn === "how-many-jars" && !isLoad(owner)) {
    const text = `${spec.say}${marking(state, owner, now)}`;
    return { text, short: briefFill(state, owner, run), once: ["Tell me how many."] };
  }
  if (turn === "when-to-check") return { text: `${spec.say}${sealTimes(state, run, now)}`, short };
  return { text: spec.say, short };
}

/** "No hurry to boil the syrup: starting at ten past twelve is soon enough." */
function waitingToStart(state: State, batch: Batch, run: StageRun, now: number): Said {
  const at = startByWordAt(state, batch, run, now);
  const wall = wallOf(state, now);
  if (at === undefined || at <= now + SOON_MINUTES * MINUTE_MS) {
    const { title, pot = title, say } = run.spec;
    const short = `Start the ${pot} any time now.`;
    return { text: `${say} Tell me when it boils.`, short, brief: true };
  }
  const when = momentWords(wallOf(state, at), wall, state.zone);
  return { text: `No hurry to ${run.spec.title}: starting ${when} is soon enough.` };
}

/** Food that is packed hot is not heated before there is a hot canner to take it. */
function waitingForCanner(state: State, batch: Batch, run: StageRun): Said {
  const short = `${upper(run.spec.title)} once the canner is hot.`;
  const text = openLoad(state, batch) ? `${short} Tell me when it is.` : short;
  return { text, short, waits: true };
}

/** The hours between are rounded to a quarter, inwards. */
const QUARTER_MS = 15 * MINUTE_MS;

/** When the seals may be checked: "from nine tonight to nine tomorrow morning". */
function sealTimes(state: State, run: StageRun, now: number): string {
  const { window } = run.spec;
  const { startedAt } = run;
  if (!window || startedAt === undefined) return "";
  const wall = wallOf(state, now);
  const opens = startedAt + window.minMinutes * MINUTE_MS;
  const closes = wallOf(state, startedAt + window.maxMinutes * MINUTE_MS);
  const to = momentWords(Math.floor(closes / QUARTER_MS) * QUARTER_MS, wall, state.zone);
  const by = to.replace(/^(at|on) /, "");
  // Where it opens at night, the morning tells of it.
  if (tellAt(state, opens, "min", run) > opens) return ` Check the seals by ${by}.`;
  const from = Math.ceil(wallOf(state, opens) / QUARTER_MS) * QUARTER_MS;
  const earliest = momentWords(from, wall, state.zone).replace(/^at /, "from ");
  return ` Check the seals ${earliest} to ${by}.`;
}

/**
 * Said when a batch begins: the canner comes first, since it takes an hour to heat. Where there
 * will be none because nobody tested it, that is said before the work is done.
 */
export function opening(state: State, batch: Batch): string {
  const about = jarsExpected(batch) ? `about ${jarsExpected(batch)} ${batch.jar}s.` : "";
  if (hasTwin(state, batch)) return about || "begun.";
  const jars = about && ` Expect ${about}`;
  const cold = batch.recipe.tested ? "" : ` ${whyOffTheShelf(batch.recipe)}.`;
  return `${upper(batchName(batch))}.${jars}${cold}`;
}
