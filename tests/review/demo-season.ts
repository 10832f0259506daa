/**
 * A season of a mountain kitchen, made by seeded code: batches played by the rehearsal's cook, set
 * one to a day from the first of July 2027, with readings, jars opened, tastings and seed lots.
 */

import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { historyOf } from "../../src/kitchen/events.ts";
import { DAY_MS, MINUTE_MS, parseIso } from "../../src/kitchen/time.ts";
import type { Library } from "../../src/recipe/library.ts";
import { readScript } from "../../src/session/rehearsal/rehearsal-script.ts";
import { Rehearsal } from "../../src/session/rehearsal/rehearse.ts";

export const ZONE = "America/Denver";
const FROM = "2027-08-14T08:00:00";
const ALTITUDE_FT = 6200;
const SETTINGS = {
  type: "kitchen-set" as const,
  altitudeFt: ALTITUDE_FT,
  canners: [
    {
      id: "canner",
      name: "canner",
      holds: { pint: 9, quart: 7 },
      gauge: { kind: "dial" as const, testedSeason: 2027, readsHighPsi: 0 },
    },
  ],
  burners: 4,
};

export type Wanted = {
  recipe: string;
  variety?: string;
  weightLb?: number;
  jar?: "pint" | "quart" | "half-pint";
  /** Without one the ideal cook does it all. */
  script?: string;
};

export const LOST_BOIL = `
+0:00 [cook until process]
+0:10 it's boiling and the lids are covered
+0:04 we lost the boil
+0:02 it's boiling again and the lids are covered
+0:00 [cook until done]
`;

export const BAD_SEAL = `
+0:00 [cook until seal-check]
+0:05 jar 3 did not seal
+0:01 all the others sealed
+0:01 put it in the fridge
+0:00 [cook until done]
`;

const STUFF: Wanted[] = [
  { recipe: "dilled-green-beans", variety: "Dragon Tongue", weightLb: 4, jar: "pint" },
  { recipe: "dilled-green-beans", variety: "Provider", weightLb: 4, jar: "pint" },
  {
    recipe: "dilled-green-beans",
    variety: "Blue Lake",
    weightLb: 5,
    jar: "pint",
    script: BAD_SEAL,
  },
  { recipe: "pickled-beets", variety: "Chioggia", weightLb: 7, jar: "pint", script: LOST_BOIL },
  { recipe: "pickled-beets", variety: "Detroit", weightLb: 7, jar: "pint" },
  { recipe: "crushed-tomatoes", variety: "Roma", weightLb: 22, jar: "quart" },
  { recipe: "snap-beans", variety: "Provider", weightLb: 9, jar: "pint" },
  { recipe: "bread-and-butter-pickles", weightLb: 6, jar: "pint" },
  { recipe: "berry-jam", jar: "half-pint" },
  { recipe: "sauerkraut", weightLb: 25 },
];

/** Numbers from 0 to 1 that depend only on the seed (mulberry32). */
export function dice(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/**
 * Plays one batch and returns its events, without the session's own; throws where it gets stuck.
 */
export async function playedEvents(library: Library, wanted: Wanted): Promise<KitchenEvent[]> {
  const script = wanted.script === undefined ? undefined : readScript(wanted.script);
  if (script && !script.ok) throw new Error(script.message);
  const { variety, weightLb, jar } = wanted;
  const rehearsal = new Rehearsal({
    library,
    recipes: [wanted.recipe],
    begin: {
      ...(variety === undefined ? {} : { variety }),
      ...(weightLb === undefined ? {} : { weightLb }),
      ...(jar === undefined ? {} : { jar }),
    },
    startMs: parseIso(FROM, ZONE) ?? 0,
    zone: ZONE,
    setUp: [{ ...SETTINGS, t: 0 }],
    demoAltitudeFt: ALTITUDE_FT,
    version: "0.0.0",
    ...(script ? { script: script.lines } : {}),
  });
  const { kitchen, trouble } = await rehearsal.play();
  if (trouble) throw new Error(`${wanted.recipe}: ${trouble}`);
  const own = new Set(["opened", "closed", "kitchen-set"]);
  return historyOf(kitchen.session.state).filter((event) => !own.has(event.type));
}

const ID = /\b(27\d\d)(\d\d)-([A-Z]?)(\d+)/g;

/** The same batch on another day, with its own ids. */
export function moved(events: readonly KitchenEvent[], days: number, mark: number): KitchenEvent[] {
  const shift = days * DAY_MS;
  return events.map((event) => {
    const text = JSON.stringify(event).replace(ID, (_all, month, day, letter, number) => {
      const at = new Date(Date.UTC(2027, Number(String(month).slice(2)) - 1, Number(day) + days));
      const date = at.toISOString().slice(2, 10).replaceAll("-", "");
      return `${date}-${letter}${Number(number) + (letter === "" ? 0 : mark)}`;
    });
    const made = JSON.parse(text) as KitchenEvent;
    const other = { cmd: `${event.cmd}.${mark}`, t: event.t + shift, w: event.w + shift };
    const gap = made.type === "gap" ? { from: made.from + shift, to: made.to + shift } : {};
    return { ...made, ...other, ...gap } as KitchenEvent;
  });
}

/** Opens the kitchen for real, with its settings, at an instant. */
export function opening(t: number): KitchenEvent[] {
  const stamp = { cmd: "~open", t, w: t };
  return [
    { type: "opened", version: "0.0.0", zone: ZONE, offsetMs: 0, rehearsal: false, ...stamp },
    { ...SETTINGS, ...stamp },
  ];
}

/** `count` readings, evenly between the sign that began a process and what ended it. */
function readings(events: readonly KitchenEvent[], count: number, die: () => number) {
  const load = events.find((event) => event.type === "load-opened");
  const id = load?.type === "load-opened" ? load.load : "";
  const sign = events.findLast((one) => {
    const own = ("load" in one && one.load === id) || ("owner" in one && one.owner === id);
    return (
      own && ["boil", "pressure", "steam"].includes(one.type) && !("psi" in one && one.psi < 5)
    );
  });
  const [first, last] = [events[0] as KitchenEvent, events.at(-1) as KitchenEvent];
  const minutes = load?.type === "load-opened" ? load.terms.minutes : 0;
  const from = (sign ?? first).t + 1000;
  const to = sign ? sign.t + minutes * MINUTE_MS - 1000 : Math.min(last.t, first.t + DAY_MS);
  const pounds = load?.type === "load-opened" ? load.terms.pressurePsi : null;
  return Array.from({ length: count }, (_, i): KitchenEvent => {
    const t = Math.round(from + ((to - from) * (i + 0.5)) / count);
    const stamp = { cmd: `r${t}.${i}`, t, w: t };
    if (load?.type === "load-opened" && pounds !== null) {
      return {
        type: "pressure",
        load: load.load,
        psi: pounds + Math.round(die() * 10) / 10,
        ...stamp,
      };
    }
    const owner = load?.type === "load-opened" ? load.load : null;
    const batch = first.type === "batch-begun" ? first.batch : null;
    const temperatureF = Math.round((200.5 + die() * 1.5) * 10) / 10;
    return { type: "temperature", owner: owner ?? batch, what: "water", temperatureF, ...stamp };
  });
}

/** What is eaten, tasted, moved and saved in the months after. */
function afterwards(begun: KitchenEvent[], die: () => number): KitchenEvent[] {
  const tasters = ["June", "Ray", "Opal", "Walt", "Ines", "Bert"];
  return begun.flatMap((event, i): KitchenEvent[] => {
    if (event.type !== "batch-begun") return [];
    const { batch } = event;
    const at = (days: number, n: number) => {
      const t = event.t + days * DAY_MS + n * 1000;
      return { cmd: `a${i}.${n}`, t, w: t };
    };
    const list: KitchenEvent[] = [
      { type: "jars-moved", batch, place: i % 3 === 0 ? "cellar" : "pantry", ...at(30, 1) },
    ];
    for (let n = 2; n < 2 + Math.floor(die() * 6); n++) {
      const spoiled = die() < 0.03;
      list.push({ type: "jar-opened", batch, count: 1, spoiled, ...at(30 + 25 * n, n) });
    }
    for (const [n, taster] of tasters.entries()) {
      const scores = { crunch: 1 + Math.floor(die() * 5), flavor: 1 + Math.floor(die() * 5) };
      if (die() < 0.3) list.push({ type: "tasted", batch, taster, scores, ...at(90, 20 + n) });
    }
    return list;
  });
}

const BATCHES = 60;

/** Sixty batches and some number of events in total, in the order they were written. */
export async function demoSeason(
  library: Library,
  wantedEvents: number,
  seed = 7,
): Promise<KitchenEvent[]> {
  const die = dice(seed);
  const plays = await Promise.all(STUFF.map((wanted) => playedEvents(library, wanted)));
  const start = parseIso("2027-07-01T07:00:00", ZONE) ?? 0;
  const day0 = -44;
  const groups = Array.from({ length: BATCHES }, (_, i) => {
    return moved(plays[i % plays.length] ?? [], day0 + i, i + 1);
  });
  const begun = groups.flatMap((events) => events.filter((one) => one.type === "batch-begun"));
  const base = [...opening(start), ...groups.flat(), ...afterwards(begun, die), ...seeds(start)];
  const missing = Math.max(0, wantedEvents - base.length);
  const each = groups.map(
    (_, i) => Math.floor(missing / BATCHES) + (i < missing % BATCHES ? 1 : 0),
  );
  const filled = groups.flatMap((events, i) => readings(events, each[i] ?? 0, die));
  return [...base, ...filled].sort((a, b) => a.w - b.w || a.t - b.t);
}

function seeds(start: number): KitchenEvent[] {
  const t = start + 100 * DAY_MS;
  const later = t + 150 * DAY_MS;
  return [
    {
      type: "seed-saved",
      seed: "271009-S1",
      crop: "beans",
      variety: "Provider",
      isolation: "20 ft from the others",
      fermentDays: null,
      dryWeightG: 210,
      storage: "jar, cellar",
      batch: null,
      cmd: "s1",
      t,
      w: t,
    },
    {
      type: "germination",
      seed: "271009-S1",
      sprouted: 18,
      of: 20,
      days: 7,
      cmd: "s2",
      t: later,
      w: later + MINUTE_MS,
    },
  ];
}
