/** What is answered to a report: what was understood, and what follows from it. */
import { clockOf } from "../../kitchen/agenda.ts";
import { describe } from "../../kitchen/decide-corrections.ts";
import type { DatedFact } from "../../kitchen/events.ts";
import { gaugeTargetPsi } from "../../kitchen/evolve-signs.ts";
import { jarCounts } from "../../kitchen/jars.ts";
import { current, isLost } from "../../kitchen/kept.ts";
import { batchName, timerName } from "../../kitchen/names.ts";
import { isLoad, ownerOf, runOf, runOfKind } from "../../kitchen/owners.ts";
import { type Load, type StageRun, type State, wallOf } from "../../kitchen/state.ts";
import { MINUTE_MS } from "../../kitchen/time.ts";
import { judgeBoil } from "../../reckon/boiling.ts";
import { opening } from "./prompts.ts";
import { clockWords, durationWords, momentWords } from "./spoken-time.ts";

function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

type Told = { state: State; before: State; now: number };

/** The answer to what was written down; empty where the prompts that follow say it all. */
export function acknowledgement(
  before: State,
  state: State,
  facts: DatedFact[],
  now: number,
): string {
  const sentences: string[] = [];
  for (const fact of facts) {
    const sentence = factSentence({ state, before, now }, fact);
    if (sentence && !sentences.includes(sentence)) sentences.push(sentence);
  }
  return sentences.join(" ");
}

function at(told: Told, t: number): string {
  return momentWords(wallOf(told.state, t), wallOf(told.state, told.now), told.state.zone);
}

function clock(told: Told, t: number): string {
  return clockWords(wallOf(told.state, t), told.state.zone);
}

function factSentence(told: Told, fact: DatedFact): string {
  const { state, before } = told;
  switch (fact.type) {
    case "batch-begun": {
      const batch = state.batches[fact.batch];
      return batch ? opening(batch) : "";
    }
    case "stage-done":
      return stageDone(told, fact.owner, fact.stage);
    case "boil":
    case "rocking":
    case "steam":
      return signSentence(told, "load" in fact ? fact.load : fact.owner, fact);
    case "pressure":
      return pressureSentence(told, fact.load, fact.psi);
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
    case "jars-filled":
      return filledSentence(told, fact.batch, fact.count);
    case "all-filled":
      return "All filled.";
    case "set-aside": {
      const left = state.batches[fact.batch]?.ready ?? 0;
      return `${fact.count} set aside for the refrigerator; ${left} to go in.`;
    }
    case "jar-broken":
      return `${fact.count} broken, written down. Throw its food and glass away.`;
    case "loaded":
      return loadedSentence(told, fact);
    case "unloaded":
      return fact.early ? "Taken out early. That load is not as tested." : "";
    case "sealed":
    case "seal-failed":
      return sealSentence(told, fact);
    case "disposed":
      return disposedSentence(fact.what);
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
    case "withdrawn": {
      const events = before.history.filter((event) => event.cmd === fact.target);
      return `Taken back: ${describe(before, events)}.`;
    }
    case "amended":
      return `Corrected: ${at(told, fact.t)}.`;
    case "note":
      return fact.text.startsWith("heard before the seal check")
        ? "Noted. The seal check itself comes after twelve hours."
        : "Noted.";
    default:
      return kitchenSentence(told, fact);
  }
}

function kitchenSentence(told: Told, fact: DatedFact): string {
  const { state } = told;
  switch (fact.type) {
    case "kitchen-set":
      return fact.altitudeFt === undefined ? "Changed." : `Altitude ${fact.altitudeFt} feet.`;
    case "gauge-set":
      if (fact.gauge.kind === "weighted") return "A weighted gauge.";
      if (fact.gauge.untestedSeason !== undefined) {
        return "An untested dial may read wrong: have it tested before you trust it. It goes in the log.";
      }
      if (fact.gauge.readsHighPsi === undefined) return "";
      return fact.gauge.readsHighPsi > 0
        ? `It reads ${fact.gauge.readsHighPsi} high; I add that to the mark.`
        : "Good.";
    case "confirmed":
      return fact.held
        ? ""
        : "Then it is not the tested recipe. Keep those jars in the refrigerator; the log says so.";
    case "timer-set": {
      const timer = state.timers[fact.timer];
      return timer
        ? `${upper(timerName(timer))}, ${durationWords(timer.minutes * MINUTE_MS)}, ${at(told, timer.endsAt)}.`
        : "";
    }
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
    case "hushed":
      return fact.until === null
        ? "Quiet, but for alarms that guard a process."
        : `Quiet for ${durationWords(fact.until - told.now)}, but for alarms that guard a process.`;
    case "unhushed":
      return "Speaking again.";
    case "altitude-doubt":
      return `That does not fit the altitude I have. Check the thermometer, and tell me the altitude if it is wrong.`;
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
      return fact.spoiled
        ? "Taken off the shelf. Do not taste it. Low-acid food and tomatoes: boil half an hour under water before you throw them out, and wash what it touched."
        : "Taken off the shelf. Enjoy it.";
    default:
      return "";
  }
}

function stageDone(told: Told, ownerId: string, stage: string): string {
  const run = runOf(ownerOf(told.state, ownerId), stage);
  if (!run || run.startedAt === undefined || run.endedAt === undefined) return "";
  const took = run.endedAt - run.startedAt;
  if (run.endedShort && run.spec.window) {
    const wanted = durationWords(run.spec.window.minMinutes * MINUTE_MS);
    return `${upper(run.spec.title)} ended after ${durationWords(took)}, under the ${wanted} it should have. The log says so; say undo to go on with it.`;
  }
  if (run.endedShort && run.kept)
    return `${upper(run.spec.title)} ended before its time was full. The log says so.`;
  const max = run.spec.window?.maxMinutes;
  if (max !== undefined && run.spec.window?.minMinutes !== max && took > max * MINUTE_MS) {
    return `${upper(run.spec.title)} took ${durationWords(took)}, longer than it should. The log says so.`;
  }
  return "";
}

function signSentence(told: Told, ownerId: string, fact: DatedFact): string {
  const owner = ownerOf(told.state, ownerId);
  if (!owner) return "";
  const run =
    isLoad(owner) && fact.type === "steam"
      ? (runOfKind(owner, "vent") ?? runOfKind(owner, "process"))
      : "stage" in fact && typeof fact.stage === "string"
        ? runOf(owner, fact.stage)
        : runOfKind(owner as Load, "process");
  if (!run?.kept) return "";
  if (run.kept.unconfirmedAt !== undefined) return `Boiling ${at(told, run.kept.unconfirmedAt)}.`;
  return startedSentence(told, owner, run);
}

/** "Boiling. Twelve minutes, until ten past four." The whole time again after a loss. */
function startedSentence(told: Told, owner: Load | { id: string }, run: StageRun): string {
  const { kept } = run;
  if (!kept || kept.stretches.length === 0) return "";
  if (kept.needMinutes === 0) return "Boiling.";
  const shown = clockOf(run);
  if (!shown || shown.lost) return "";
  const again = kept.stretches.length > 1 ? "The whole time starts again: " : "";
  const length = durationWords(kept.needMinutes * MINUTE_MS);
  const what =
    run.spec.kind === "vent"
      ? "Venting"
      : run.spec.kind === "process"
        ? processWord(owner)
        : "Boiling";
  const body = `${length}, until ${clock(told, shown.dueAt)}`;
  return again ? `${what}. ${again}${body}.` : `${what}. ${upper(body)}.`;
}

function processWord(owner: Load | { id: string }): string {
  if (!("terms" in owner)) return "Boiling";
  if (owner.terms?.method === "pressure") return "At pressure";
  return owner.terms?.method === "boiling-water" ? "A full boil" : "Timed";
}

function pressureSentence(told: Told, loadId: string, psi: number): string {
  const load = told.state.loads[loadId];
  if (!load) return "";
  const process = runOfKind(load, "process");
  const old = told.before.loads[loadId];
  const was = old && runOfKind(old, "process")?.kept?.stretches.length;
  const zero = runOfKind(load, "depressurize");
  if (zero?.state === "running" && zero.kept) {
    const shown = current(zero.kept);
    return shown
      ? `At zero. Wait ten minutes before the lid comes off, until ${clock(told, shown.from + 10 * MINUTE_MS)}.`
      : `${psi} pounds; wait for zero.`;
  }
  if (!process?.kept) return `${psi} pounds.`;
  if (process.kept.stretches.length > (was ?? 0)) return startedSentence(told, load, process);
  const target = gaugeTargetPsi(load);
  if (isLost(process.kept) && old && runOfKind(old, "process")?.kept)
    return lostSentence(told, loadId, undefined);
  if (target !== undefined && psi < target)
    return `${psi} pounds. It wants ${target} at your altitude.`;
  return `${psi} pounds. Good.`;
}

function lostSentence(told: Told, ownerId: string, stage: string | undefined): string {
  const owner = ownerOf(told.state, ownerId);
  const run = stage
    ? runOf(owner, stage)
    : owner && (runOfKind(owner, "process") ?? runOfKind(owner, "vent"));
  if (!owner || !run?.kept) return "The clock is stopped.";
  const vent = isLoad(owner) ? runOfKind(owner, "vent") : undefined;
  if (vent?.kept && isLost(vent.kept) && vent.state === "running") {
    return "The clock is stopped. Bring the steam back; the ten minutes start again.";
  }
  if (run.kept.stretches.length === 0) return "Tell me when it is back.";
  const what = isLoad(owner) && owner.terms?.method === "pressure" ? "pressure" : "a full boil";
  const need = durationWords(run.kept.needMinutes * MINUTE_MS);
  return `The clock is stopped. Bring it back to ${what} and tell me; the whole ${need} start again.`;
}

function temperatureSentence(told: Told, owner: string | null, what: string, f: number): string {
  const load = owner === null ? undefined : told.state.loads[owner];
  const altitude = told.state.kitchen.altitudeFt;
  const process = load && runOfKind(load, "process");
  if (load?.terms?.method === "low-temperature" && process?.kept)
    return lowTemperature(told, load, process, f);
  if (
    load?.terms?.method === "boiling-water" &&
    process?.kept &&
    current(process.kept) &&
    altitude !== null
  ) {
    const judged = judgeBoil(f, altitude);
    const feet = Math.round(judged.rightForFt / 100) * 100;
    return judged.doubt
      ? `${f} at a full boil.`
      : `${f} at a full boil: right for about ${Math.max(0, feet)} feet.`;
  }
  return `${upper(what)} at ${f} degrees.`;
}

function lowTemperature(told: Told, load: Load, process: StageRun, f: number): string {
  if (f < 180) {
    const lost = process.kept && process.kept.stretches.length > 0;
    return lost
      ? `${f} is under 180. Bring it back; the whole thirty minutes start again.`
      : `${f}. It starts at 180.`;
  }
  const high = f > 185 ? " Over 185 the pickles soften; turn it down." : "";
  const old = told.before.loads[load.id];
  const was = (old && runOfKind(old, "process")?.kept?.stretches.length) ?? 0;
  const began = (process.kept?.stretches.length ?? 0) > was;
  const next = process.state === "complete" ? "" : " Read it again in five minutes.";
  return `${f}.${began ? ` ${startedSentence(told, load, process)}` : ""}${high}${next}`;
}

function coverSentence(told: Told, loadId: string, covered: boolean): string {
  const load = told.state.loads[loadId];
  const process = load && runOfKind(load, "process");
  if (!load || !process?.kept) return "";
  if (!covered) {
    const inches = load.terms?.coverIn ?? 1;
    return `Top up with boiling water to ${inches} ${inches === 1 ? "inch" : "inches"} over the lids. Tell me when it is a full boil again; the whole time counts from then.`;
  }
  const old = told.before.loads[loadId];
  const was = (old && runOfKind(old, "process")?.kept?.stretches.length) ?? 0;
  return process.kept.stretches.length > was ? startedSentence(told, load, process) : "Good.";
}

function vouchedSentence(told: Told, loadId: string, held: boolean): string {
  const load = told.state.loads[loadId];
  const run = load?.stages.find((one) => one.state === "running" && one.kept);
  if (!held)
    return "Then that time does not count. Bring it back and tell me; the whole time starts again.";
  const shown = run && clockOf(run);
  return shown ? `Good. It counts, until ${clock(told, shown.dueAt)}.` : "Good. It counts.";
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
      return "Within 24 hours: empty the jars, bring the food back to a boil, clean hot jars, new lids, and the whole hot-pack time.";
    case "refrigerate":
      return "Into the refrigerator, and eat within several days.";
    case "freeze":
      return "Into the freezer, with an inch and a half of headspace.";
    case "discard":
      return "Throw it out untasted. Low-acid food and tomatoes: boil half an hour under water first.";
    default:
      return "";
  }
}
