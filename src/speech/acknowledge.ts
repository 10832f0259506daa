import type { DatedFact, PlannedItem } from "../kitchen/events.ts";
import { jarCounts, loadsOf } from "../kitchen/jars.ts";
import { gaugeTargetPsi } from "../kitchen/loads/gauge-target.ts";
import { ownerOf, runOf, runOfRole } from "../kitchen/owners.ts";
import { factorOf } from "../kitchen/questions/factor-questions.ts";
import { batchName, timerName, upper } from "../kitchen/spoken-names.ts";
import { type State, wallOf } from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { disposalWords } from "../recipe/cautions.ts";
import { countWords } from "../reckon/number-words.ts";
import {
  COOL_HOURS,
  DIAL_OFF_PSI,
  DISCARD_BOIL_MINUTES,
  FREEZER_HEADSPACE_IN,
  REPROCESS_WITHIN_HOURS,
} from "../reckon/trade-numbers.ts";
import { altitudeSentence, doubtSentence, raisedSentence } from "./acknowledge-altitude.ts";
import { guideSentence, openingSentence } from "./acknowledge-begin.ts";
import { correctionSentence, warningSentence } from "./acknowledge-corrections.ts";
import {
  at,
  coverSentence,
  lostSentence,
  pressureSentence,
  signSentence,
  type Told,
  temperatureSentence,
  turnedOffSentence,
  vouchedSentence,
} from "./acknowledge-signs.ts";
import { fillPart } from "./prompts.ts";
import { durationWords, momentWords } from "./spoken-time.ts";

const DISCARD_BOIL = countWords(DISCARD_BOIL_MINUTES, "minute");

/** The answer to what was written down; empty where the prompts that follow say it all. */
export function acknowledgement(
  before: State,
  state: State,
  facts: DatedFact[],
  now: number,
): string {
  const sentences: string[] = [];
  // Lids out of the water say more than the water that is low.
  const uncovered = facts.some((fact) => fact.type === "cover");
  for (const fact of facts) {
    if (uncovered && fact.type === "water-low") continue;
    const sentence = factSentence({ state, before, now }, fact);
    if (sentence && !sentences.includes(sentence)) sentences.push(sentence);
  }
  return sentences.join(" ");
}

function factSentence(told: Told, fact: DatedFact): string {
  const { state, before } = told;
  switch (fact.type) {
    case "batch-begun":
      return openingSentence(told, fact.batch);
    case "stage-done":
      return stageDone(told, fact.owner, fact.stage);
    case "boil":
    case "rocking":
    case "steam":
      return signSentence(told, "load" in fact ? fact.load : fact.owner, fact);
    case "pressure":
      return pressureSentence(told, fact.load, fact.psi);
    case "heat-off":
      return turnedOffSentence(told, fact.load);
    case "boil-lost":
    case "pressure-lost":
    case "steam-lost":
      return lostSentence(
        told,
        "load" in fact ? fact.load : fact.owner,
        "stage" in fact ? fact.stage : undefined,
      );
    case "temperature":
      return temperatureSentence(told, fact.owner, fact.what, fact.temperatureF);
    case "cover":
      return coverSentence(told, fact.load, fact.covered);
    case "vouched":
      return vouchedSentence(told, fact.load, fact.held);
    case "end-answer":
      return fact.yes
        ? "Good. That is in the log."
        : "Then that load is not as tested; the log says so.";
    case "water-low":
      return "Top up with boiling water, around the jars, not on them.";
    case "held":
      return `${upper(batchName(before.batches[fact.batch] as never))} is held. Its clocks run on.`;
    case "resumed":
      return "Going on.";
    case "abandoned":
      return `${upper(batchName(before.batches[fact.batch] as never))} is abandoned.`;
    case "focused": {
      const batch = state.batches[fact.owner];
      return batch ? `${upper(batchName(batch))}.` : "";
    }
    case "withdrawn":
    case "batch-changed":
    case "stage-skipped":
    case "amended":
      return correctionSentence(told, fact);
    case "note":
      return fact.text.startsWith("heard before the seal check")
        ? `Noted. The seal check itself comes after ${countWords(COOL_HOURS.min, "hour")}.`
        : "Noted.";
    default:
      return otherSentence(told, fact);
  }
}

function otherSentence(told: Told, fact: DatedFact): string {
  const of = [jarSentence, timerSentence, doubtedSentence].map((sentence) => sentence(told, fact));
  return of.find((one) => one !== undefined) ?? kitchenSentence(told, fact);
}

/** What is answered to a report about jars; undefined where it is about something else. */
function jarSentence(told: Told, fact: DatedFact): string | undefined {
  switch (fact.type) {
    case "jars-filled":
      return filledSentence(told, fact.batch, fact.count);
    case "all-filled":
      return "All filled.";
    case "set-aside": {
      const left = told.state.batches[fact.batch]?.ready ?? 0;
      return `${fact.count} set aside for the refrigerator; ${left} to go in.`;
    }
    case "spoiled": {
      const food = told.state.batches[fact.batch]?.recipe.class ?? "low-acid";
      return `Written down as spoiled. ${disposalWords(food, fact.sign === "bulged")}`;
    }
    case "jar-broken":
      return `${fact.count} broken, written down. Throw its food and glass away.`;
    case "broken-inside":
      return (
        "Leave it in there: do not open the canner before it has come down by itself. " +
        "The rest go on. I ask how many broke when the jars are out."
      );
    case "loaded":
      return loadedSentence(told, fact);
    case "unloaded":
      return fact.early ? "Taken out early. That load is not as tested." : "";
    case "sealed":
    case "seal-failed":
      return sealSentence(told, fact);
    case "disposed":
      return disposedSentence(fact.what);
    default:
      return undefined;
  }
}

/** What is answered about timers and reminders; undefined where it is about something else. */
function timerSentence(told: Told, fact: DatedFact): string | undefined {
  const { state } = told;
  switch (fact.type) {
    case "timer-set": {
      const timer = state.timers[fact.timer];
      if (!timer) return "";
      const length = durationWords(timer.minutes * MINUTE_MS);
      return `${upper(timerName(timer))}, ${length}, ${at(told, timer.endsAt)}.`;
    }
    case "warning-set":
      return warningSentence(told, fact);
    case "timer-added": {
      const timer = state.timers[fact.timer];
      return timer ? `${upper(timerName(timer))} now ends ${at(told, timer.endsAt)}.` : "";
    }
    case "timer-cancelled": {
      const timer = state.timers[fact.timer];
      return timer ? `${upper(timerName(timer))} is off.` : "";
    }
    case "reminder-set": {
      const when = momentWords(fact.wallMs, wallOf(state, told.now), state.zone);
      return `I'll remind you ${when}: ${fact.text}.`;
    }
    default:
      return undefined;
  }
}

/** What is answered where something is denied, taken back or left open. */
function doubtedSentence(told: Told, fact: DatedFact): string | undefined {
  switch (fact.type) {
    case "confirmed":
      return fact.held ? "" : deniedSentence(told, fact.batch, fact.factor);
    case "factor-reopened":
    case "end-reopened":
      return "Then that answer no longer stands; the log says so.";
    case "ingredient-changed":
      return `That is not the tested recipe. ${whyOf(fact.detail)} ${COLD}`;
    case "left-open":
      return "Then that stays open.";
    default:
      return undefined;
  }
}

function kitchenSentence(told: Told, fact: DatedFact): string {
  switch (fact.type) {
    case "kitchen-set":
      return fact.altitudeFt === undefined ? "Changed." : altitudeSentence(told, fact.altitudeFt);
    case "line-settled":
      return fact.held
        ? "Good. That is in the log."
        : "Then what it touches is not as tested; the log says so.";
    case "load-terms":
      return fact.raised ? raisedSentence(told, fact.load) : "";
    case "guide-compared":
      return guideSentence(fact.row, fact.assumed === true);
    case "gauge-set":
      if (fact.gauge.kind === "weighted") return "A weighted gauge.";
      if (fact.gauge.untestedSeason !== undefined) {
        return (
          "An untested dial may read wrong: have it tested before you trust it. " +
          "It goes in the log."
        );
      }
      if (fact.gauge.readsHighPsi === undefined) return "";
      if (Math.abs(fact.gauge.readsHighPsi) > DIAL_OFF_PSI) return "";
      return fact.gauge.readsHighPsi > 0
        ? `It reads ${fact.gauge.readsHighPsi} high; I add that to the mark.`
        : "Good.";
    case "hushed":
      return fact.until === null
        ? "Quiet, but for alarms that guard a process."
        : `Quiet for ${durationWords(fact.until - told.now)}, but for alarms that guard a process.`;
    case "day-planned":
      return plannedSentence(told, fact.items);
    case "day-plan-dropped":
      return "The plan is dropped. What has begun goes on.";
    case "unhushed":
      return "Speaking again.";
    case "altitude-doubt":
      return doubtSentence(told, fact);
    case "tasted":
    case "preferred":
      return "Tasting noted.";
    case "jars-moved":
      return `Noted: in the ${fact.place}.`;
    case "seed-saved":
      return `Seed lot ${fact.seed} noted.`;
    case "germination":
      return "Germination noted.";
    case "jar-opened":
      return "Taken off the shelf. Enjoy it.";
    default:
      return "";
  }
}

/** A factor that does not hold: what to do now, by where the jars are. */
function deniedSentence({ state }: Told, id: string, factorId: string): string {
  const batch = state.batches[id];
  const factor = batch && factorOf(batch, factorId);
  const out = batch ? loadsOf(state, batch).some((load) => load.unloadedAt !== undefined) : false;
  const what = (out && factor?.later) || factor?.otherwise;
  return `Then it is not the tested recipe. ${what ?? COLD} The log says so.`;
}

/** The reason behind what went in. */
function whyOf(detail: string): string {
  return detail.slice(detail.indexOf(":") + 2);
}

const COLD = "Keep those jars in the refrigerator.";

function plannedSentence(told: Told, items: readonly PlannedItem[]): string {
  const next = items.toSorted((a, b) => a.beginAt - b.beginAt)[0];
  const first = next ? ` The ${next.title} ${beginWords(told, next.beginAt)}.` : "";
  return `I keep to the plan.${first}`;
}

function beginWords(told: Told, t: number): string {
  return t <= told.now + MINUTE_MS ? "begin now" : `begin ${at(told, t)}`;
}

/** A canner that is ready again while its batch is still being filled. */
function nextJars(told: Told, loadId: string): string {
  const load = told.state.loads[loadId];
  const batch = load && told.state.batches[load.batch];
  const fill = batch && runOfRole(batch, "filling");
  if (!batch || fill?.state !== "running" || batch.filled === 0 || batch.ready > 0) return "";
  const left = (batch.expectedJars ?? 0) - batch.filled;
  const about = left > 0 ? `, about ${left} more` : "";
  const part = fillPart(told.state, batch, left);
  const next = `Ready for the next jars of ${batchName(batch)}${about}.`;
  return `${next}${part} Tell me how many you fill.`;
}

function stageDone(told: Told, ownerId: string, stage: string): string {
  const run = runOf(ownerOf(told.state, ownerId), stage);
  if (!run || run.startedAt === undefined || run.endedAt === undefined) return "";
  const took = run.endedAt - run.startedAt;
  if (run.id === "canner") return nextJars(told, ownerId);
  if (run.endedShort && run.spec.window) {
    const wanted = durationWords(run.spec.window.minMinutes * MINUTE_MS);
    return (
      `${upper(run.spec.title)} ended after ${durationWords(took)}, ` +
      `under the ${wanted} it should have. The log says so; say undo to go on with it.`
    );
  }
  if (run.endedShort && run.kept)
    return `${upper(run.spec.title)} ended before its time was full. The log says so.`;
  const max = run.spec.window?.maxMinutes;
  if (max !== undefined && run.spec.window?.minMinutes !== max && took > max * MINUTE_MS) {
    const long = `${upper(run.spec.title)} took ${durationWords(took)}`;
    return `${long}, longer than it should. The log says so.`;
  }
  return "";
}

function filledSentence(told: Told, batchId: string, count: number): string {
  const batch = told.state.batches[batchId];
  if (!batch) return "";
  const size = batch.jar ? ` ${batch.jar}${count === 1 ? "" : "s"}` : "";
  const more =
    batch.allFilled || !batch.option
      ? ""
      : " That is a full load; the rest waits for the next one.";
  return `${count}${size}.${more}`;
}

function loadedSentence(told: Told, fact: Extract<DatedFact, { type: "loaded" }>): string {
  const load = told.state.loads[fact.load];
  if (!load) return "";
  const parts = fact.parts.map((part) => {
    const batch = told.state.batches[part.batch];
    return `${part.jars} of ${batch ? batchName(batch) : part.batch}`;
  });
  const left = fact.parts.reduce((n, part) => n + (told.state.batches[part.batch]?.ready ?? 0), 0);
  const rest =
    left > 0
      ? ` ${left} left for the next load: keep them in the refrigerator or fill them later.`
      : "";
  const terms = load.terms;
  const pounds = terms?.pressurePsi ? ` at ${gaugeTargetPsi(load)} pounds` : "";
  const time = terms
    ? ` The tested time here is ${durationWords(terms.minutes * MINUTE_MS)}${pounds}.`
    : "";
  return `${parts.join(" and ")} in the canner.${rest}${time}`;
}

function sealSentence(
  told: Told,
  fact: Extract<DatedFact, { type: "sealed" | "seal-failed" }>,
): string {
  const batch = told.state.batches[fact.batch];
  const load = told.state.loads[fact.load];
  if (!batch || !load) return "";
  const { sealed, failed } = jarCounts(told.state, batch);
  if (load.state === "complete")
    return `${upper(batchName(batch))}: ${sealed} sealed, ${failed} not.`;
  return fact.type === "sealed" ? `${fact.count} sealed.` : `${fact.count} not sealed.`;
}

function disposedSentence(what: string): string {
  switch (what) {
    case "reprocess":
      return (
        `Within ${REPROCESS_WITHIN_HOURS} hours: empty the jars, ` +
        "bring the food back to a boil, clean hot jars, " +
        "new lids, and the whole hot-pack time."
      );
    case "refrigerate":
      return "Into the refrigerator, and eat within several days.";
    case "freeze":
      return `Into the freezer, with ${FREEZER_HEADSPACE_IN} inches of headspace.`;
    case "discard":
      return (
        "Throw it out untasted. Low-acid food and tomatoes: " +
        `boil ${DISCARD_BOIL} under water first.`
      );
    default:
      return "";
  }
}
