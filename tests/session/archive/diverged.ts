/**
 * Pairs of data folders that were one and went their own ways, made by seeded code: a season as
 * both have it, and what each wrote after that by itself.
 */
import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import { DAY_MS, MINUTE_MS } from "../../../src/kitchen/time.ts";
import { dice, moved, opening } from "../../review/demo-season.ts";

export type Diverged = { common: KitchenEvent[]; one: KitchenEvent[]; other: KitchenEvent[] };

const YEARS_BACK = -5 * 366;

/** A batch that a side may tell of: where it stands, and what was said of it. */
type Told = { batch: string; load: string | undefined; jars: number; cmds: string[] };

function toldOf(events: readonly KitchenEvent[]): Told[] {
  return events.flatMap((event) => {
    if (event.type !== "batch-begun" && event.type !== "lot-added") return [];
    const lot = event.type === "lot-added" ? event.id : event.batch;
    const loaded = events.find((one) => {
      return one.type === "loaded" && one.parts.some(({ batch }) => batch === lot);
    });
    const load = loaded?.type === "loaded" ? loaded.load : undefined;
    const about = (one: KitchenEvent) => {
      const fields: Readonly<Record<string, unknown>> = one;
      return [fields.batch, fields.owner, fields.load].some((id) => id === lot || id === load);
    };
    const cmds = events.filter((one) => about(one) && one !== event).map(({ cmd }) => cmd);
    const part =
      loaded?.type === "loaded" ? loaded.parts.find(({ batch }) => batch === lot) : undefined;
    const jars = part?.jars ?? 0;
    return [{ batch: lot, load, jars, cmds: [...new Set(cmds)] }];
  });
}

/** The same events some ms later, under commands of their own unless they happen to be the same. */
function later(events: readonly KitchenEvent[], ms: number, mark: string): KitchenEvent[] {
  return events.map((event) => {
    const gap = event.type === "gap" ? { from: event.from + ms, to: event.to + ms } : {};
    const own = { cmd: `${event.cmd}${mark}`, t: event.t + ms, w: event.w + ms };
    return { ...event, ...gap, ...own } as KitchenEvent;
  });
}

type Die = () => number;

/** What one side writes by itself from `from` on. */
function ownWay(
  common: readonly KitchenEvent[],
  rest: readonly KitchenEvent[],
  plays: readonly KitchenEvent[][],
  { from, side, die }: { from: number; side: string; die: Die },
): KitchenEvent[] {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(die() * list.length)] as T;
  const mark = die() < 0.3 ? "" : `.${side}`;
  const shift = 1 + Math.floor(die() * 3) * 1000;
  // A batch that ran when the copy was made goes on here, or it does not.
  const list: KitchenEvent[] = die() < 0.6 ? later(rest, shift, mark) : [];
  const day = Math.ceil((from - (plays[0]?.[0]?.t ?? 0)) / DAY_MS) + 1;
  for (let n = Math.floor(die() * 3); n > 0; n--) {
    const play = pick(plays);
    list.push(...later(moved(play, day + Math.floor(die() * 3), 1), shift, mark));
  }
  const known = toldOf([...common, ...list]);
  let t = Math.max(from, ...list.map(({ w }) => w));
  const count = 2 + Math.floor(die() * 8);
  for (let n = 0; n < count; n++) {
    t += Math.floor(die() * 5 * DAY_MS) + (die() < 0.2 ? 0 : 1);
    const stamp = { cmd: die() < 0.1 ? `c${n}` : `c${n}.${side}`, t, w: t };
    const fact = ownFact(pick(known), n, { die, t, side });
    if (fact)
      list.push({ ...fact, ...stamp, ...("t" in fact ? { t: fact.t } : {}) } as KitchenEvent);
    const last = list.at(-1);
    if (die() < 0.15 && last && last.type !== "withdrawn" && last.type !== "opened") {
      list.push({ type: "withdrawn", target: last.cmd, cmd: `u${n}.${side}`, t, w: t });
    }
  }
  return list.sort((a, b) => a.w - b.w);
}

type Own = { die: Die; t: number; side: string };

function ownFact(told: Told | undefined, n: number, { die, t, side }: Own): object | undefined {
  if (!told) return { type: "note", owner: null, text: `nothing yet, ${side}` };
  const { batch, load, jars, cmds } = told;
  const number = 1 + Math.floor(die() * Math.max(1, jars));
  const target = cmds[Math.floor(die() * cmds.length)];
  const facts: (object | undefined)[] = [
    { type: "jar-opened", batch, count: 1, jars: [number] },
    { type: "jar-opened", batch, count: 1 },
    { type: "jars-given", batch, count: 1, jars: [number], to: null },
    { type: "jars-returned", batch, count: 1, jars: die() < 0.5 ? [number] : [] },
    { type: "jars-discarded", batch, count: 1, jars: [number] },
    { type: "lids-marked", batch, mark: side.charAt(1).toUpperCase() },
    { type: "brew-made", batch, ...(die() < 0.5 ? { counted: true } : {}) },
    { type: "brew-told", batch, jars: [number], brew: 1 },
    { type: "lot-abandoned", batch },
    { type: "lot-restored", batch },
    { type: "tasted", batch, taster: null, scores: {}, words: `fine, says ${side}` },
    { type: "tasted", batch, taster: side, scores: { crunch: 1 + Math.floor(die() * 5) } },
    { type: "jars-moved", batch, place: die() < 0.5 ? "cellar" : `shelf ${side}` },
    { type: "preferred", batch, over: null, taster: side },
    { type: "labeled", batch },
    { type: "spoiled", batch, load: load ?? null, count: 1, jars: [number], sign: "leaked" },
    load !== undefined ? { type: "seal-failed", load, batch, count: 1, jars: [number] } : undefined,
    load !== undefined ? { type: "sealed", load, batch, count: jars } : undefined,
    { type: "clock-set", byMs: Math.round((die() - 0.5) * 120) * MINUTE_MS },
    { type: "gap", from: t - 1000, to: t, cause: "closed", byWall: false },
    { type: "kitchen-set", altitudeFt: 5000 + Math.floor(die() * 1000) },
    { type: "log-failed", from: t - 1000, to: t, events: 2 },
    { type: "timer-set", timer: `T${n}`, label: side, minutes: 5 },
    { type: "seed-saved", ...SEED, seed: `S${n}`, crop: side },
    target !== undefined ? { type: "withdrawn", target } : undefined,
    target !== undefined
      ? { type: "amended", target, t: t - Math.floor(die() * DAY_MS) }
      : undefined,
    { type: "note", owner: batch, text: `seen by ${side}` },
  ];
  return facts[Math.floor(die() * facts.length)];
}

const SEED = {
  ...{ variety: null, isolation: null, fermentDays: null, dryWeightG: 40, storage: null },
  batch: null,
};

/** One pair; the same seed gives the same. */
export function diverged(plays: readonly KitchenEvent[][], seed: number): Diverged {
  const die = dice(seed);
  const days = [...plays.keys()].filter(() => die() < 0.6);
  const season = days.flatMap((i) => moved(plays[i] ?? [], YEARS_BACK + i * 2, 1));
  const start = season[0]?.t ?? moved(plays[0] ?? [], YEARS_BACK, 1)[0]?.t ?? 0;
  const whole = [...opening(start), ...season];
  // Mostly the copy is made between batches, now and then in the middle of one.
  const cut = die() < 0.3 ? 2 + Math.floor(die() * season.length) : whole.length;
  const common = die() < 0.1 ? [] : whole.slice(0, cut);
  const begun = new Set(common.flatMap((one) => (one.type === "batch-begun" ? one.batch : [])));
  const next = whole.findIndex((one, at) => at >= cut && one.type === "batch-begun");
  const rest = begun.size > 0 ? whole.slice(cut, next < 0 ? undefined : next) : [];
  const from = Math.max(start, ...common.map(({ w }) => w));
  const side = (name: string) => {
    const own = ownWay(common, rest, plays, { from, side: name, die });
    return common.length > 0 ? own : [...later(opening(start), die() * 9999, ""), ...own];
  };
  return { common, one: side("one"), other: side("other") };
}
