import type { LinePart, Want } from "../desk/want.ts";
import { nextCheck } from "../kitchen/day/checks.ts";
import type { DatedFact, EventType, FactOf, GaugeRecord, PlannedItem } from "../kitchen/events.ts";
import { loadsOf } from "../kitchen/jars/canner-room.ts";
import { batchOfLot, findLot, ready } from "../kitchen/jars/lots.ts";
import { isLoad, ownerOf, runOf } from "../kitchen/owners.ts";
import { factorOf } from "../kitchen/questions/factor-questions.ts";
import {
  batchName,
  hasTwin,
  leadName,
  lotName,
  severalRun,
  timerName,
  upper,
} from "../kitchen/spoken-names.ts";
import { type State, wallOf } from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { disposalWords } from "../recipe/cautions.ts";
import { countWords } from "../reckon/number-words.ts";
import { COOL_HOURS, DIAL_OFF_PSI } from "../reckon/trade-numbers.ts";
import { altitudeSentence, doubtSentence, raisedSentence } from "./acknowledge-altitude.ts";
import {
  addedSentence,
  changedSentence,
  givenUpSentence,
  guideSentence,
  newBrewSentence,
  openingSentence,
  takenUpSentence,
} from "./acknowledge-begin.ts";
import { warningSentence, withdrawnSentence } from "./acknowledge-corrections.ts";
import {
  brewToldSentence,
  DISPOSED,
  filledSentence,
  loadedSentence,
  nextJars,
  sealSentence,
} from "./acknowledge-jars.ts";
import { kitchenSentence, leftOpenSentence, setUpSentence } from "./acknowledge-set-up.ts";
import {
  at,
  coverSentence,
  lostSentence,
  pressureSentence,
  signSentence,
  temperatureSentence,
  turnedOffSentence,
  vouchedSentence,
} from "./acknowledge-signs.ts";
import { durationWords, exactDurationWords, momentWords } from "./spoken-time.ts";
import type { Told } from "./told.ts";

const COLD = "Keep those jars in the refrigerator.";
const LOGGED = "Logged.";
const REOPENED = "Then that answer no longer stands; the log says so.";
const INTO_THE_LOG = "It goes in the log.";

/** Until when what was looked at is left alone. */
function nextLook({ state }: Told, id: string, stage: string): string {
  const run = runOf(ownerOf(state, id), stage);
  const next = run?.spec.checks?.flatMap(({ cron }) => nextCheck(state, run, cron) ?? []) ?? [];
  if (next.length === 0) return "Noted.";
  const when = momentWords(Math.min(...next), wallOf(state, state.lastW), state.zone);
  return `Noted. Look again ${when}.`;
}

/** An answer; plain where it says no more than that something was done. */
export type Acknowledged = LinePart & Pick<Want, "plain">;

type Sentence<T extends EventType> = ((told: Told, fact: FactOf<T>) => string) | null;

/** The answer to each kind of fact; null where its consequences say it all. */
const SENTENCES: { readonly [T in EventType]: Sentence<T> } = {
  // --- batches
  "batch-begun": (told, { batch }) => openingSentence(told, batch),
  "batch-changed": (told, { batch }) => changedSentence(told, batch),
  "lot-added": (told, { id }) => addedSentence(told, id),
  "brew-made": (told, { batch }) => newBrewSentence(told, batch),
  "lot-abandoned": (told, { batch }) => givenUpSentence(told, batch),
  "lot-restored": (told, { batch }) => takenUpSentence(told, batch),
  "lids-marked": ({ state }, { batch, mark }) => {
    const found = findLot(state, batch);
    return found ? `${mark} on the lids of ${lotName(found)}.` : "";
  },
  "stage-begun": null,
  "stage-done": (told, { owner, stage }) => stageDone(told, owner, stage),
  looked: (told, { owner, stage }) => nextLook(told, owner, stage),
  "stage-skipped": () => "Left out. The log says so.",
  held: ({ before }, { batch }) => `${nameIn(before, batch)} is held. Its clocks run on.`,
  resumed: () => "Going on.",
  abandoned: ({ before }, { batch }) => `${nameIn(before, batch)} is abandoned.`,
  focused: ({ state }, { owner }) => (state.batches[owner] ? `${nameIn(state, owner)}.` : ""),
  confirmed: (told, { held, batch, factor }) => (held ? "" : deniedSentence(told, batch, factor)),
  "factor-reopened": () => REOPENED,
  note: (_, { text }) => {
    return text.startsWith("heard before the seal check")
      ? `Noted. The seal check itself comes after ${countWords(COOL_HOURS.min, "hour")}.`
      : "Noted.";
  },
  "ingredient-changed": (_, { detail }) => {
    return `That is not the tested recipe. ${whyOf(detail)} ${COLD}`;
  },
  // --- signs
  boil: (told, fact) => signSentence(told, fact.owner, fact),
  "boil-lost": (told, { owner, stage }) => lostSentence(told, owner, stage),
  cover: (told, { load, covered }) => coverSentence(told, load, covered),
  "water-low": () => "Top up with boiling water, around the jars, not on them.",
  steam: (told, fact) => signSentence(told, fact.load, fact),
  "steam-lost": (told, { load }) => lostSentence(told, load, undefined),
  pressure: (told, { load, psi }) => pressureSentence(told, load, psi),
  rocking: (told, fact) => signSentence(told, fact.load, fact),
  "pressure-lost": (told, { load }) => lostSentence(told, load, undefined),
  temperature: (told, { owner, what, temperatureF }) => {
    return temperatureSentence(told, owner, what, temperatureF);
  },
  probe: null,
  "probe-is": null,
  vouched: (told, { load, held }) => vouchedSentence(told, load, held),
  "heat-off": (told, { load }) => turnedOffSentence(told, load),
  "end-reopened": () => REOPENED,
  "end-answer": (_, { yes }) =>
    yes ? LOGGED : "Then that load is not as tested; the log says so.",
  heard: null,
  "heard-settled": null,
  // --- loads and jars
  "load-opened": null,
  "load-terms": (told, { raised, load }) => (raised ? raisedSentence(told, load) : ""),
  loaded: (told, fact) => loadedSentence(told, fact),
  unloaded: (_, { early }) =>
    early ? "Taken out early. That load is not as tested." : "Jars out.",
  "jars-filled": (told, { batch, count }) => filledSentence(told, batch, count),
  "all-filled": () => "All filled.",
  "set-aside": ({ state }, { batch, count }) => {
    const of = batchOfLot(state, batch);
    const left = of ? ready(of) : 0;
    return `${count} set aside for the refrigerator; ${left} to go in.`;
  },
  "jar-broken": (_, { count }) => {
    return `${count} broken, written down. Throw its food and glass away.`;
  },
  "broken-inside": () => {
    return (
      "Leave it in there: do not open the canner before it has come down by itself. " +
      "The rest go on. I ask how many broke when the jars are out."
    );
  },
  sealed: (told, fact) => sealSentence(told, fact),
  "seal-failed": (told, fact) => sealSentence(told, fact),
  spoiled: ({ state }, { batch, sign }) => {
    const food = state.batches[batch]?.recipe.class ?? "low-acid";
    return `Written down as spoiled. ${disposalWords(food, sign === "bulged")}`;
  },
  disposed: (_, { what }) => DISPOSED[what],
  // --- timers
  "timer-set": (told, { timer: id }) => {
    const timer = told.state.timers[id];
    if (!timer) return "";
    const length = exactDurationWords(timer.minutes * MINUTE_MS);
    return `${upper(timerName(timer))}, ${length}, ${at(told, timer.endsAt)}.`;
  },
  "timer-added": (told, { timer: id }) => {
    const timer = told.state.timers[id];
    return timer ? `${upper(timerName(timer))} now ends ${at(told, timer.endsAt)}.` : "";
  },
  "timer-cancelled": ({ state }, { timer: id }) => {
    const timer = state.timers[id];
    return timer ? `${upper(timerName(timer))} is off.` : "";
  },
  "warning-set": (told, fact) => warningSentence(told, fact),
  "reminder-set": ({ state, now }, { wallMs, text }) => {
    return `I'll remind you ${momentWords(wallMs, wallOf(state, now), state.zone)}: ${text}.`;
  },
  "reminder-cancelled": null,
  // --- corrections
  amended: (told, { t }) => `Corrected: ${at(told, t)}.`,
  withdrawn: (told, { target }) => withdrawnSentence(told, target),
  // --- the shelf
  tasted: () => "Tasting noted.",
  preferred: () => "Tasting noted.",
  "jar-opened": () => "Taken off the shelf. Enjoy it.",
  "jars-given": () => "Noted: given away.",
  "jars-returned": () => "Back in store. Press its lid first: one that gives is not for eating.",
  "brew-told": (told, fact) => brewToldSentence(told, fact),
  "jars-discarded": () => "Noted: thrown out.",
  labeled: () => "Noted: labeled.",
  "jars-moved": (_, { place }) => `Noted: in the ${place}.`,
  "seed-saved": (_, { seed }) => `Seed lot ${seed} noted.`,
  germination: () => "Germination noted.",
  // --- a person's own words
  "words-learned": null,
  "words-forgotten": () => "Forgotten: I ask about those words again.",
  // --- the session
  opened: null,
  joined: null,
  merged: null,
  closed: null,
  gap: null,
  "clock-set": null,
  "log-failed": null,
  "line-sealed": null,
  "line-settled": (_, { held }) => {
    return held ? LOGGED : "Then what it touches is not as tested; the log says so.";
  },
  due: null,
  asked: null,
  "left-open": (_, fact) => leftOpenSentence(fact),
  acknowledged: null,
  hushed: ({ now }, { until }) => {
    const quiet = until === null ? "Quiet" : `Quiet for ${durationWords(until - now)}`;
    return `${quiet}, safety alarms aside.`;
  },
  unhushed: () => "Speaking again.",
  // --- the kitchen
  "kitchen-set": (told, fact) => {
    const { altitudeFt } = fact;
    return altitudeFt === undefined
      ? kitchenSentence(told, fact)
      : altitudeSentence(told, altitudeFt);
  },
  "set-up": (_, fact) => setUpSentence(fact),
  "name-settled": null,
  "guide-compared": (_, { row, assumed }) => guideSentence(row, assumed === true),
  "gauge-set": (_, { gauge }) => gaugeSentence(gauge),
  "altitude-doubt": (told, fact) => doubtSentence(told, fact),
  "altitude-then": null,
  "day-planned": (told, { items }) => plannedSentence(told, items),
  "day-plan-dropped": () => "The plan is dropped. What has begun goes on.",
};

/** The answer to what was written down, and who it is about; empty where none is due. */
export function acknowledgement(
  before: State,
  state: State,
  facts: readonly DatedFact[],
  now: number,
): Acknowledged {
  const parts: Acknowledged[] = [];
  // Lids out of the water matter more than low water.
  const uncovered = facts.some((fact) => fact.type === "cover");
  // That they have cooled goes without saying once their seals are checked.
  const checked = facts.some(({ type }) => type === "sealed" || type === "seal-failed");
  for (const fact of byLots(facts)) {
    if (uncovered && fact.type === "water-low") continue;
    if (checked && fact.type === "stage-done") continue;
    const told = { state, before, now };
    const text = factSentence(told, fact.type, fact);
    if (text) parts.push({ ...whose(told, fact), text, plain: isPlain(fact, text) });
  }
  return inOne(parts);
}

/** Seals of one lot that were told of in several loads, told in one. */
function byLots(facts: readonly DatedFact[]): DatedFact[] {
  const told = new Map<string, DatedFact>();
  facts.forEach((fact, at) => {
    const seals = fact.type === "sealed" || fact.type === "seal-failed";
    const key = seals ? `${fact.type} ${fact.batch}` : `${at}`;
    const before = told.get(key);
    const alike = seals && before?.type === fact.type ? before : undefined;
    const count = (alike?.count ?? 0) + (seals ? fact.count : 0);
    const jars = seals ? [...(alike?.jars ?? []), ...(fact.jars ?? [])] : [];
    told.set(key, seals ? { ...fact, count, jars } : fact);
  });
  return [...told.values()];
}

/**
 * Said of one with its name in front of everything; of several, with each name in front of its
 * part.
 */
function inOne(parts: readonly Acknowledged[]): Acknowledged {
  const names = new Set(parts.map(({ name }) => name));
  const one = names.size === 1;
  const texts = parts.map(({ name, text }) => (one || !name ? text : `${name}: ${text}`));
  const [name] = names;
  const plain = parts.every((part) => part.plain);
  return { ...(one && name ? { name } : {}), text: [...new Set(texts)].join(" "), plain };
}

/** Answers that may say no more than that it was done; what is amiss takes a second sentence. */
const PLAIN: ReadonlySet<EventType> = new Set(["stage-done", "heat-off", "loaded", "unloaded"]);

function isPlain(fact: DatedFact, text: string): boolean {
  const several = fact.type === "loaded" && fact.parts.length > 1;
  return PLAIN.has(fact.type) && !several && !/[.!?;] /.test(text);
}

/** The answer to a person where the facts themselves have none. */
export function noted(state: State, facts: readonly DatedFact[]): Acknowledged {
  const names = new Set(facts.flatMap((fact) => whose({ state, before: state }, fact).name ?? []));
  const [name] = names;
  // A question of several had all their names.
  return { ...(name && names.size === 1 ? { name } : {}), text: "Noted.", plain: true };
}

/** In front of what does not say itself what it was done to, where several are running. */
function whose(told: Omit<Told, "now">, fact: DatedFact): Pick<LinePart, "name"> {
  const { state, before } = told;
  const subject = subjectOf(fact) ?? "";
  const owner = batchOfLot(state, subject) ?? ownerOf(state, subject);
  // One that this very fact ended still ran beside the others.
  if (!owner || !(severalRun(state) || severalRun(before))) return {};
  const asTwin = fact.type === "batch-begun" && !isLoad(owner) && hasTwin(state, owner);
  if (NAMES_ITSELF.has(fact.type) && !asTwin) return {};
  return { name: leadName(state, owner) };
}

function subjectOf(fact: DatedFact): string | undefined {
  const { batch, load, owner } = { batch: null, load: null, owner: null, ...fact };
  for (const id of [batch, load, owner]) if (typeof id === "string") return id;
  return undefined;
}

/** Facts whose sentences name the batch. */
const NAMES_ITSELF: ReadonlySet<EventType> = new Set([
  ...(["batch-begun", "batch-changed", "held", "abandoned", "focused"] as const),
  ...(["warning-set", "withdrawn", "load-terms"] as const),
]);

function factSentence<T extends EventType>(told: Told, type: T, fact: FactOf<T>): string {
  return SENTENCES[type]?.(told, fact) ?? "";
}

function nameIn({ batches }: State, id: string): string {
  const batch = batches[id];
  return batch ? upper(batchName(batch)) : id;
}

function gaugeSentence({ kind, untestedSeason, readsHighPsi }: GaugeRecord): string {
  if (kind === "weighted") return "A weighted gauge.";
  if (untestedSeason !== undefined) {
    return `An untested dial may read wrong: have it tested before you trust it. ${INTO_THE_LOG}`;
  }
  if (readsHighPsi === undefined || Math.abs(readsHighPsi) > DIAL_OFF_PSI) return "";
  return readsHighPsi > 0 ? `It reads ${readsHighPsi} high; I add that to the mark.` : "Good.";
}

/** A factor that does not hold: what to do now, by where the jars are. */
function deniedSentence({ state }: Told, id: string, factorId: string): string {
  const batch = state.batches[id];
  const factor = batch && factorOf(batch, factorId);
  const out = batch ? loadsOf(state, batch).some((load) => load.unloadedAt !== undefined) : false;
  const what = (out && factor?.later) || factor?.otherwise;
  return `Then it is not the tested recipe. ${what ?? COLD}`;
}

/** The reason behind what went in. */
function whyOf(detail: string): string {
  return detail.slice(detail.indexOf(":") + 2);
}

function plannedSentence(told: Told, items: readonly PlannedItem[]): string {
  const next = items.toSorted((a, b) => a.beginAt - b.beginAt)[0];
  const first = next ? ` The ${next.title} ${beginWords(told, next.beginAt)}.` : "";
  const finishAt = told.state.dayPlan?.finishAt;
  const done = finishAt === undefined ? "" : ` Done ${at(told, finishAt).replace(/^at /, "by ")}.`;
  return `I keep to the plan.${first}${done}`;
}

function beginWords(told: Told, t: number): string {
  return t <= told.now + MINUTE_MS ? "begin now" : `begin ${at(told, t)}`;
}

function stageDone(told: Told, ownerId: string, stage: string): string {
  const run = runOf(ownerOf(told.state, ownerId), stage);
  if (!run || run.startedAt === undefined || run.endedAt === undefined) return "";
  const took = run.endedAt - run.startedAt;
  if (run.spec.step === "canner") return nextJars(told, ownerId) || "Canner hot.";
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
  return run.spec.done ?? `${upper(run.spec.title)} done.`;
}
