/** What must hold of any desk, asked of the one that is handed in. */
import type { Desk, DeskMoment } from "../../src/desk/desk.ts";
import { RANKS, type SpokenLine, type Want } from "../../src/desk/want.ts";
import { type Dice, dice as diceOf } from "../simulation/dice.ts";

type Made = new () => Desk;

const NAMES = ["Provider", "Dragon Tongue", "Beets"] as const;
const STEPS = 300;
const SECOND = 1000;

/** One day of wants by chance, with what was said at each of its moments. */
type Played = { wants: Want[]; moment: DeskMoment; lines: SpokenLine[]; desk: Desk };

function play(Made: Made, seed: number): Played[] {
  const dice = diceOf(seed);
  const desk = new Made();
  const played: Played[] = [];
  let now = 0;
  let ringing: Want[] = [];
  for (let step = 0; step < STEPS; step++) {
    now += dice.whole(1, 40) * SECOND;
    if (ringing.length === 0 && dice.chance(0.05)) now += 400 * SECOND;
    const name = dice.pick(NAMES);
    const alarm: Want = {
      rank: "alarm",
      key: `a${step}`,
      name,
      text: `alarm ${step}.`,
      guards: true,
    };
    if (dice.chance(0.06)) ringing = [...ringing, { ...alarm, broken: dice.chance(0.5) }];
    if (dice.chance(0.05)) ringing = ringing.slice(1);
    const asleepUntil = step > 200 && step < 250 ? 1e9 : undefined;
    const wants = [...Array(dice.whole(0, 3))].map((_, n) => want(dice, name, `${step}.${n}`, now));
    const moment = { now, day: step < 150 ? "one" : "two", ringing, asleepUntil };
    played.push({ wants, moment, lines: desk.decide(wants, moment), desk });
  }
  return played;
}

function want(dice: Dice, name: string, id: string, now: number): Want {
  const rank = dice.pick(RANKS.slice(1));
  const named = dice.chance(0.8) ? { name } : {};
  const plain = rank === "answer" && dice.chance(0.5) ? { plain: true } : {};
  const base: Want = { rank, ...named, ...plain, key: `k${id}`, text: `text ${id}.` };
  if (rank !== "prompt") return base;
  const until = dice.chance(0.2) ? { until: dice.chance(0.5) ? now - 1 : now + 1 } : {};
  if (dice.chance(0.2)) {
    return { ...base, text: "whole quiet.", lesson: { id: "quiet", short: "" } };
  }
  const lesson = `l${dice.whole(1, 4)}`;
  return {
    ...base,
    ...until,
    text: `whole ${lesson}.`,
    lesson: { id: lesson, short: `short ${lesson}.` },
    cautions: [{ text: "Steam burns.", short: "Mind the steam." }, { text: "It is sharp." }],
  };
}

function text(lines: readonly SpokenLine[]): string {
  return lines.flatMap(({ parts }) => parts.map((part) => part.text)).join(" ");
}

type Must = (name: string, holds: boolean) => void;

/** What does not hold, by name; empty where all does. */
export function brokenProperties(Made: Made, seed = 1): string[] {
  const broken = new Set<string>();
  const must: Must = (name, holds) => void (holds || broken.add(name));
  const played = play(Made, seed);
  const rang = new Map<string, number[]>();
  const whole = new Set<string>();
  const wanted = played.flatMap(({ wants }) => wants);
  const own = wanted.filter(({ rank }) => rank !== "prompt");
  const nameOf = new Map(own.map(({ text: said, name }) => [said, name]));
  const heard: Heard = { at: 0 };
  for (const one of played) {
    const order = one.lines.map(({ rank }) => RANKS.indexOf(rank));
    must("a name that is left out was just said", namesKnown(one, nameOf, heard));
    const inOrder = order.every((at, i) => i === 0 || at >= (order[i - 1] ?? 0));
    must("ranks are kept in order", inOrder);
    alarmsHold(one, rang, must);
    for (const each of one.wants) wantHolds(each, one, whole, must);
  }
  const log = played[0]?.desk.decisions() ?? [];
  const read = log.some((one) => one.said !== null);
  must("every decision can be read", read);
  const reasoned = log.every((one) => !one.dropped || one.why !== null);
  must("what was dropped says why", reasoned);
  must("what was put off is said later", putOffIsSaid(played, log));
  must("unanswered alarms grow rarer", growsRarer(played, rang));
  must("cautions are said once a day", onceADay(played));
  return [...broken];
}

/** Who was talked of last, and when. */
type Heard = { name?: string | undefined; at: number };

/** A listener knows of whom each line is: it says so, or the talk was just of that one. */
function namesKnown(
  { lines, moment: { now } }: Played,
  nameOf: ReadonlyMap<string, string | undefined>,
  heard: Heard,
): boolean {
  return lines
    .flatMap(({ parts }) => parts)
    .every(({ name, text: said }) => {
      const own = nameOf.get(said);
      const leftOut = name === undefined && own !== undefined;
      const known = !leftOut || (own === heard.name && now - heard.at < 300 * SECOND);
      // Sentences that several wants share tell nothing of whose they are.
      const shared = name === undefined && !nameOf.has(said);
      if (!shared) heard.name = name ?? own;
      heard.at = now;
      return known;
    });
}

function alarmsHold({ moment, lines }: Played, rang: Map<string, number[]>, must: Must): void {
  const { now, ringing } = moment;
  const alarms = lines.filter(({ rank }) => rank === "alarm");
  for (const key of alarms.flatMap(({ keys }) => keys)) {
    rang.set(key, [...(rang.get(key) ?? []), now]);
    const rings = ringing.some((one) => one.key === key);
    must("only what rings is said", rings);
  }
  for (const { key = "", name, text: own, broken } of ringing) {
    const times = rang.get(key) ?? [];
    must("what rings is said at once", times.length > 0);
    const since = now - (times.at(-1) ?? Number.NEGATIVE_INFINITY);
    // Moments lie up to 40 seconds apart.
    const longest = broken ? 30 * SECOND : 300 * SECOND;
    must("what rings is said again", since < longest + 40 * SECOND);
    if (times.at(-1) !== now) continue;
    const parts = alarms.flatMap((line) => line.parts);
    const named = parts.some((part) => part.name === name && part.text.includes(own));
    must("an alarm has its name", named);
    const guards = alarms.some((line) => line.guards);
    must("an alarm that guards says so", guards);
  }
}

function wantHolds(want: Want, played: Played, whole: Set<string>, must: Must): void {
  const { moment, lines, wants } = played;
  const { now, day, asleepUntil } = moment;
  const said = text(lines);
  const isSaid = lines.some(({ keys }) => keys.includes(want.key ?? ""));
  const past = want.until !== undefined && want.until <= now;
  const waits = want.rank === "news" && asleepUntil !== undefined;
  if (want.lesson?.short === "" && whole.has(`${day} ${want.lesson.id}`)) return;
  if (past) must("what is not true is not said", !isSaid);
  else if (waits) must("news waits at night", !isSaid);
  else must("nothing is lost", isSaid || isEchoed(want, played));
  if (want.plain) must("what follows says it", isSaid !== isEchoed(want, played));
  if (!want.lesson || past) return;
  const { id } = want.lesson;
  const first = !whole.has(`${day} ${id}`);
  whole.add(`${day} ${id}`);
  must("the first of a day is whole", !first || said.includes(want.text));
  const once = wants.filter(({ lesson }) => lesson?.id === id).length === 1;
  must("what comes after is short", first || !once || !said.includes(want.text));
  const steam = want.cautions === undefined || /Steam burns|Mind the steam/.test(said);
  must("a caution about steam is never left out", steam);
}

/** That it was done is told by a question or an answer that says what follows of the same one. */
function isEchoed({ plain, name }: Want, { lines, wants }: Played): boolean {
  const follows = wants.filter((one) => {
    return (one.rank === "prompt" || one.rank === "question") && one.name === name;
  });
  const said = lines.filter(({ rank }) => rank === "answer" || rank === "question");
  const keys = said.flatMap((line) => line.keys);
  return plain === true && follows.some(({ key = "" }) => keys.includes(key));
}

function putOffIsSaid(
  played: readonly Played[],
  log: readonly { wanted: string; said: string | null; deferredTill: number | null }[],
): boolean {
  const all = text(played.flatMap(({ lines }) => lines));
  const put = log.filter(({ deferredTill }) => deferredTill !== null);
  return put.length > 0 && put.every(({ wanted }) => all.includes(wanted));
}

function growsRarer(played: readonly Played[], rang: ReadonlyMap<string, number[]>): boolean {
  const unbroken = played.flatMap(({ moment }) => moment.ringing).filter(({ broken }) => !broken);
  return [...new Set(unbroken.map(({ key = "" }) => key))].every((key) => {
    const times = rang.get(key) ?? [];
    const pauses = times.map((at, i) => at - (times[i - 1] ?? at)).slice(1);
    return pauses.length < 4 || (pauses.at(-1) ?? 0) > 2 * (pauses[0] ?? 0);
  });
}

function onceADay(played: readonly Played[]): boolean {
  for (const day of ["one", "two"]) {
    const lines = played.filter(({ moment }) => moment.day === day).flatMap((one) => one.lines);
    if (text(lines).split("It is sharp.").length - 1 > 1) return false;
  }
  return true;
}
