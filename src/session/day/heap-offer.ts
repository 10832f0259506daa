/** What can be made of a heap that somebody tells of, and the question which of it to begin. */
import type { SlotsOf } from "../../kitchen/command.ts";
import type { HeapOffer } from "../../kitchen/day/wanted.ts";
import { answeredName } from "../../kitchen/decide/begin/begin-gate.ts";
import type { Decision, Wish } from "../../kitchen/decide/decision.ts";
import { capacity, largestLoad } from "../../kitchen/jars/canner-room.ts";
import { listed, lower, upper } from "../../kitchen/spoken-names.ts";
import { type State, wallOf } from "../../kitchen/state.ts";
import { MINUTE_MS, parseIso } from "../../kitchen/time.ts";
import { eveningOf, fromHeaps, type HeapAnswer, type HeapWay, together } from "../../plan/heap.ts";
import { plural } from "../../recipe/amount.ts";
import { titleWords } from "../../recipe/foods/near-recipes.ts";
import type { Library } from "../../recipe/library.ts";
import type { JarSize } from "../../recipe/recipe.ts";
import { countWords, daysWords } from "../../reckon/number-words.ts";
import { USUAL_CANNER_JARS } from "../../reckon/trade-numbers.ts";
import { clockWords, durationWords } from "../../speech/spoken-time.ts";

/** Of more ways than this, the rest are named only where they are asked for. */
const MOST_WAYS = { alone: 4, beside: 2 };
const MOST_NOT = 1;
/** Where no canner was named yet. */
const USUAL = { id: "canner", name: "canner", holds: USUAL_CANNER_JARS };
const STEP_MS = 5 * MINUTE_MS;

type HeapSlots = SlotsOf["heap"];

/** The offers for a heap; undefined where it is something else that is decided. */
export function heapOutcome(
  wish: Wish,
  state: State,
  library: Library,
  now: number,
): Decision | undefined {
  const { command } = wish;
  if (command.intent !== "heap" || command.slots.offers) return undefined;
  const { heaps = [] } = command.slots;
  const here = dayHere(state, command.slots, now);
  const answers = fromHeaps(heaps, library, here);
  const ways = answers.flatMap((answer) => answer.ways);
  const most = answers.length > 1 ? MOST_WAYS.beside : MOST_WAYS.alone;
  const words = answers.flatMap((answer) => answerWords(answer, state.zone, most));
  const all = together(answers, library, here);
  if (all) {
    const names = listed(all.ways.map(({ recipe }) => lower(recipe.title)));
    const end = clockWords(all.plan.finishMs, state.zone);
    const fit = all.fits ? `fit the day together, by ${end}` : "together are too much for the day";
    words.push(`${upper(names)} ${fit}.`);
  }
  if (!here.kitchen.altitudeKnown) words.push("Tell me the altitude for the tested times.");
  if (ways.length === 0) return { kind: "refused", reason: words.join(" ") };
  const offers = ways.map(({ recipe, heap }): HeapOffer => {
    const { food, weightLb } = heap;
    return { recipe: recipe.id, foods: [food], ...(weightLb === undefined ? {} : { weightLb }) };
  });
  const choices = ways.map(({ recipe }) => {
    return { label: lower(recipe.title), ref: { owner: recipe.id } };
  });
  return {
    kind: "ask",
    text: [...words, "Which shall I begin?"].join(" "),
    wish: { command: { ...command, slots: { ...command.slots, offers } } },
    expects: "which",
    choices,
  };
}

function dayHere(state: State, { finishBy }: HeapSlots, now: number) {
  const { altitudeFt, altitudeUncertaintyFt, burners, canners, quiet } = state.kitchen;
  const { zone } = state;
  const startMs = Math.ceil(wallOf(state, now) / STEP_MS) * STEP_MS;
  const byMs = finishBy === undefined ? undefined : parseIso(finishBy, zone);
  return {
    kitchen: {
      answered: answeredName(state),
      altitudeFt: altitudeFt ?? 0,
      altitudeKnown: altitudeFt !== null,
      altitudeUncertaintyFt,
      gauge: canners.find((one) => one.gauge)?.gauge?.kind ?? ("dial" as const),
      holds: (jar: JarSize) =>
        canners.length > 0 ? largestLoad(state, jar) : capacity(USUAL, jar),
      burners,
    },
    canners,
    startMs,
    zone,
    byMs: byMs ?? eveningOf(startMs, zone, quiet),
  };
}

function answerWords({ heap, ways, cannot }: HeapAnswer, zone: string, most: number): string[] {
  const { food, weightLb } = heap;
  const many = plural(food, 2);
  const what = weightLb === undefined ? many : `${countWords(weightLb, "pound")} of ${many}`;
  const told = apart(ways).slice(0, most);
  const lines = told.map((way) => wayWords(way, zone));
  const left = ways.filter((way) => !told.includes(way)).map(({ recipe }) => lower(recipe.title));
  const others = left.length > 0 ? [`Also ${listed(left)}.`] : [];
  const not = cannot.slice(0, MOST_NOT).map(({ what: name, why }) => `Not ${lower(name)}: ${why}.`);
  if (ways.length === 0) return [`Nothing here was tested for ${many}.`, ...not.map(once)];
  return [`${upper(what)}: ${lines.join("; ")}.`, ...others, ...not.map(once)];
}

/** The first of those that differ only in what they are packed in. */
function apart(ways: readonly HeapWay[]): HeapWay[] {
  const names = ways.map(({ recipe }) => titleWords(recipe.title));
  return ways.filter((_, at) => names.indexOf(names[at] ?? "") === at);
}

/** One full stop at the end. */
function once(text: string): string {
  return text.replace(/\.+$/, ".");
}

function wayWords(way: HeapWay, zone: string): string {
  const { recipe, scaled, handsMinutes, minutes } = way;
  const jars = scaled.jars && scaled.jar ? `, ${countWords(scaled.jars.expected, scaled.jar)}` : "";
  const hands = durationWords(handsMinutes * MINUTE_MS);
  const done = way.fits
    ? `done by ${clockWords(way.finishMs, zone)}`
    : `too long for the day, ${durationWords(minutes * MINUTE_MS)}`;
  const keeps = way.keepsDays === null ? "" : `, keeps ${daysWords(way.keepsDays)}`;
  return `${lower(recipe.title)}${jars}, ${hands} of hands, ${done}${keeps}`;
}
