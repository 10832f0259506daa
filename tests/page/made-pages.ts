/** Pages of kitchens made for looking at them: plain, hostile, and with the longest of names. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { labelsCommand } from "../../src/commands/record/labels.ts";
import { reviewCommand } from "../../src/commands/record/review.ts";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { DAY_MS } from "../../src/kitchen/time.ts";
import {
  BAD_SEAL,
  demoSeason,
  LOST_BOIL,
  moved,
  opening,
  playedEvents,
} from "../review/demo-season.ts";
import { ioFor, LIBRARY } from "../review/kitchen-files.ts";
import { kitchenFolder } from "../review/kitchen-folder.ts";

const HOSTILE = `"><img src=x onerror=alert(1)><script>alert(2)</script><svg onload=alert(3)>`;

/** Names as long as people make them, and longer; a word that no line has room for. */
const LONG_WORD = "Grandmothersverylongnamedpolebeanfromtheuppermeadow".repeat(3);
const LONG_NAME =
  "Great-aunt Wilhelmina's half-runner from the north wall beside the old pump house, " +
  "second sowing, picked before the frost";

export type MadePage = { name: string; path: string };
export type MadePages = { pages: MadePage[]; done(): void };

type Begun = Extract<KitchenEvent, { type: "batch-begun" }>;

function begunOf(events: readonly KitchenEvent[]): Begun {
  const begun = events.find((event) => event.type === "batch-begun");
  if (begun?.type !== "batch-begun") throw new Error("no batch was begun");
  return begun;
}

/** The same batch with `words` in its title, its variety, its source and its stages. */
function renamed(events: readonly KitchenEvent[], words: string): KitchenEvent[] {
  return events.map((event) => {
    if (event.type !== "batch-begun") return event;
    const { recipe } = event;
    const source = { ...recipe.source, publication: `${recipe.source.publication} ${words}` };
    const stages = recipe.stages.map((one) => ({ ...one, title: `${one.title} ${words}` }));
    const title = `${recipe.title} ${words}`;
    const lot = { ...event.lot, variety: words };
    return { ...event, lot, recipe: { ...recipe, title, source, stages } };
  });
}

/** A batch of beets that lost its boil, with these words wherever a person can put them. */
async function wordyEvents(words: string): Promise<KitchenEvent[]> {
  const beets = { recipe: "pickled-beets", variety: words, weightLb: 7, jar: "pint" } as const;
  const named = renamed(await playedEvents(LIBRARY, { ...beets, script: LOST_BOIL }), words);
  const { batch, t: from } = begunOf(named);
  const t = named.at(-1)?.w ?? 0;
  const stamp = (n: number) => ({ cmd: `h${n}`, t: t + n, w: t + n });
  return [
    ...opening(from),
    ...named,
    { type: "note", owner: batch, text: words, ...stamp(1) },
    { type: "ingredient-changed", batch, detail: words, ...stamp(2) },
    { type: "tasted", batch, taster: words, scores: { crunch: 3 }, ...stamp(3) },
  ];
}

async function plainEvents(): Promise<KitchenEvent[]> {
  const beans = { recipe: "dilled-green-beans", weightLb: 4, jar: "pint" } as const;
  const lots = await Promise.all([
    playedEvents(LIBRARY, { ...beans, variety: "Dragon Tongue", script: BAD_SEAL }),
    playedEvents(LIBRARY, { ...beans, variety: "Provider" }),
  ]);
  return [...opening(lots[0]?.[0]?.t ?? 0), ...lots.flatMap((lot, i) => moved(lot, i, i + 1))];
}

/** Three lots that share their pots and fill three loads. */
async function sharedEvents(): Promise<KitchenEvent[]> {
  const script = `
0:01 start the Dragon Tongue dilly beans, 3 pounds
+0:00 start the Blue Lake dilly beans, 3 pounds
+0:00 [cook until done]
`;
  const beans = { recipe: "dilled-green-beans", variety: "Provider", weightLb: 4 } as const;
  const events = await playedEvents(LIBRARY, { ...beans, jar: "pint", script });
  return [...opening(begunOf(events).t), ...events];
}

/** Sauerkraut in its crock, whose temperature is read each morning and evening. */
async function crockEvents(days: number): Promise<KitchenEvent[]> {
  const events = await playedEvents(LIBRARY, { recipe: "sauerkraut", weightLb: 25 });
  const { batch, t: from } = begunOf(events);
  const readings = Array.from({ length: days * 2 }, (_, i): KitchenEvent => {
    const t = from + 4 * 3_600_000 + (i * DAY_MS) / 2;
    const temperatureF = 68 + ((i * 7) % 5);
    return {
      type: "temperature",
      owner: batch,
      what: "crock",
      temperatureF,
      cmd: `k${i}`,
      t,
      w: t,
    };
  });
  return [...opening(from), ...[...events, ...readings].sort((a, b) => a.w - b.w)];
}

async function playedAlone(recipe: string): Promise<KitchenEvent[]> {
  const events = await playedEvents(LIBRARY, { recipe, weightLb: 6, jar: "pint" });
  return [...opening(begunOf(events).t), ...events];
}

/** A season whose lots have long names, each a little different. */
function longNamed(events: readonly KitchenEvent[]): KitchenEvent[] {
  let count = 0;
  return events.flatMap((event) => {
    if (event.type !== "batch-begun") return [event];
    count += 1;
    return renamed([event], count % 3 === 0 ? `${LONG_WORD}${count}` : `${LONG_NAME} ${count}`);
  });
}

/** Writes every page into a folder of its own; `done` removes it. */
export async function makePages(): Promise<MadePages> {
  const folder = mkdtempSync(join(tmpdir(), "brinebell-pages-"));
  const kitchens: { done(): void }[] = [];
  const pages: MadePage[] = [];
  const kept = (events: readonly KitchenEvent[]) => {
    const kitchen = kitchenFolder(events);
    kitchens.push(kitchen);
    return kitchen.folder;
  };
  const make = async (
    name: string,
    home: string,
    args: string[],
    command: typeof labelsCommand = reviewCommand,
  ) => {
    const path = join(folder, `${name}.html`);
    const result = await command([...args, "--html", path], ioFor(home, "2027-12-01T12:00:00"));
    if (result.code !== 0) throw new Error(result.stderr);
    pages.push({ name, path });
  };
  const events = await demoSeason(LIBRARY, 20_000);
  const hostile = kept(await wordyEvents(HOSTILE));
  const plain = kept(await plainEvents());
  const season = kept(events);
  const long = kept(longNamed(events));
  const longest = kept(await wordyEvents(`${LONG_NAME} ${LONG_WORD}`));
  await make("hostile", hostile, ["270814-1"]);
  await make("hostile-compared", hostile, ["--compare", "pickled-beets"]);
  await make("seals", plain, ["270814-1"]);
  await make("labels", plain, ["270814-1"], labelsCommand);
  await make("pressure", season, ["270707-1"]);
  await make("restarted", season, ["270704-1"]);
  await make("compared", season, ["--compare", "dilled-green-beans"]);
  await make("season", season, ["--season", "2027"]);
  await make("longest", longest, ["270814-1"]);
  await make("longest-compared", long, ["--compare", "dilled-green-beans"]);
  await make("longest-season", long, ["--season", "2027"]);
  await make("lots", kept(await sharedEvents()), ["270814-1"]);
  await make("crock", kept(await crockEvents(28)), ["270814-1"]);
  await make("cure", kept(await playedAlone("bread-and-butter-pickles")), ["270814-1"]);
  const done = () => {
    for (const kitchen of kitchens) kitchen.done();
    rmSync(folder, { recursive: true, force: true });
  };
  return { pages, done };
}
