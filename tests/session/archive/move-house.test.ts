import { readdirSync, readFileSync, statSync, truncateSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { lotsNamed } from "../../../src/commands/record/review-io.ts";
import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import { batchLog } from "../../../src/review/batch-log.ts";
import { shownBatches } from "../../../src/review/shelf/pantry.ts";
import { exportKitchen, importKitchen } from "../../../src/session/archive/move-house.ts";
import { readKitchen } from "../../../src/session/reading/read-kitchen.ts";
import { recipeFile } from "../../recipe/library-files.ts";
import { BAD_SEAL, LOST_BOIL, moved, opening, playedEvents } from "../../review/demo-season.ts";
import { LIBRARY } from "../../review/kitchen-files.ts";
import { kitchenFolder } from "../../review/kitchen-folder.ts";

// Years ago, since an import refuses events later than the machine's clock.
const YEARS_BACK = -5 * 366;
const LATER = Date.UTC(2025, 0, 1);
const open: { done(): void }[] = [];
let beans: KitchenEvent[];
let beets: KitchenEvent[];

beforeAll(async () => {
  const wanted = { weightLb: 4, jar: "pint" } as const;
  beans = moved(
    await playedEvents(LIBRARY, { ...wanted, recipe: "dilled-green-beans", script: BAD_SEAL }),
    YEARS_BACK,
    1,
  );
  beets = moved(
    await playedEvents(LIBRARY, { ...wanted, recipe: "pickled-beets", script: LOST_BOIL }),
    YEARS_BACK,
    1,
  );
});

afterEach(() => {
  for (const kitchen of open.splice(0)) kitchen.done();
});

function home(events: readonly KitchenEvent[]): string {
  const kitchen = kitchenFolder(
    events.length > 0 ? [...opening(events[0]?.t ?? 0), ...events] : [],
  );
  open.push(kitchen);
  return kitchen.folder;
}

function logs(folder: string) {
  const { state } = readKitchen(folder, { wallMs: 0 });
  return Object.values(state.batches).map((batch) => batchLog(state, batch, LATER));
}

function files(folder: string): Record<string, string> {
  const names = readdirSync(folder).filter((name) => name.endsWith(".jsonl"));
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(folder, name), "utf8")]));
}

async function imported(folder: string, text: string) {
  const answer = await importKitchen(folder, text);
  if (!answer.ok) throw new Error(answer.message);
  return answer.done;
}

describe("moving house", () => {
  it("carries everything into an empty kitchen, event by event", async () => {
    const from = home(beans);
    const to = home([]);
    const { text, events } = exportKitchen(from);
    expect((await imported(to, text)).added).toBe(events);
    expect(logs(to)).toEqual(logs(from));
    expect(readKitchen(to, { wallMs: 0 }).state).toEqual(readKitchen(from, { wallMs: 0 }).state);
    expect(exportKitchen(to).text).toBe(text);
  });

  it("says what could not be exported, including a torn end", () => {
    const from = home(beans);
    expect(exportKitchen(from).notices).toEqual([]);
    const [name = ""] = Object.keys(files(from));
    const path = join(from, name);
    truncateSync(path, statSync(path).size - 40);
    expect(exportKitchen(from).notices).toMatchObject([/cut short; what can be read is exported/]);
  });

  it("takes everything exactly once", async () => {
    const from = home(beans);
    const to = home([]);
    const { text } = exportKitchen(from);
    await imported(to, text);
    const before = files(to);
    const again = await imported(to, text);
    expect(again.added).toBe(0);
    expect(files(to)).toEqual(before);
  });

  it("knows two batches of one id by their first fact as well, alike in both", async () => {
    const ours = home(beans);
    const theirs = home(beets);
    const [bean] = logs(ours);
    const [beet] = logs(theirs);
    const id = bean?.id ?? "";
    expect(beet?.id).toBe(id);
    const first = await imported(ours, exportKitchen(theirs).text);
    const both = logs(ours);
    const names = both.map((log) => log.id);
    expect(names).toEqual([0, 1].map(() => expect.stringMatching(`^${id}\\.[0-9a-f]{5}$`)));
    expect(first.sharedIds).toEqual([{ id, names }]);
    const asGiven = JSON.stringify(both).replaceAll(/(220810-L?\d+)\.[0-9a-f]{5}/g, "$1");
    expect(JSON.parse(asGiven)).toEqual(expect.arrayContaining([bean, beet]));
    const { state } = readKitchen(ours, { wallMs: 0 });
    expect(lotsNamed(state, id)).toMatchObject({
      message: expect.stringContaining(names.join(", ")),
    });
    await imported(theirs, exportKitchen(ours).text);
    expect(logs(theirs)).toEqual(logs(ours));
    const before = files(ours);
    expect((await imported(ours, exportKitchen(theirs).text)).added).toBe(0);
    expect(files(ours)).toEqual(before);
  });

  it("brings what happened since the last time, and nothing else", async () => {
    const cut = beans.findIndex((event) => event.type === "unloaded") + 1;
    const from = home(beans.slice(0, cut));
    const to = home([]);
    await imported(to, exportKitchen(from).text);
    const later = home(beans);
    await imported(to, exportKitchen(later).text);
    const [log] = logs(to);
    const [whole] = logs(later);
    expect(log).toMatchObject({ state: whole?.state, verdict: whole?.verdict, jars: whole?.jars });
  });

  it("keeps its own settings, and shows no batch that was played in a rehearsal", async () => {
    const ours = home(beans);
    const [opened, ...settings] = opening(beets[0]?.t ?? 0);
    const theirs = kitchenFolder([
      { ...(opened as KitchenEvent), rehearsal: true } as KitchenEvent,
      ...settings.map((event) => ({ ...event, altitudeFt: 900 })),
      ...beets,
    ]);
    open.push(theirs);
    await imported(ours, exportKitchen(theirs.folder).text);
    const { state } = readKitchen(ours, { wallMs: 0 });
    expect(state.kitchen.altitudeFt).toBe(6200);
    expect(state.rehearsal).toBe(false);
    expect(shownBatches(state)).toHaveLength(1);
  });

  it("refuses a file with any byte changed or missing, and changes nothing", async () => {
    const from = home(beans);
    const to = home(beets);
    const bytes = Buffer.from(exportKitchen(from).text);
    const before = files(to);
    await fc.assert(
      fc.asyncProperty(fc.nat(bytes.length - 2), fc.boolean(), async (at, cut) => {
        const bad = Buffer.from(bytes);
        if (!cut) bad[at] = (bad[at] as number) ^ 0x01;
        const text = (cut ? bad.subarray(0, at) : bad).toString("utf8");
        const answer = await importKitchen(to, text);
        expect(answer.ok).toBe(false);
        expect(files(to)).toEqual(before);
      }),
      { numRuns: 150 },
    );
  });

  it("says what is in the way: which fact, on which line, and how to mend it", async () => {
    const ours = home(beans);
    const before = files(ours);
    const ahead = moved(beets, 9999, 2);
    const { archiveText } = await import("../../../src/session/archive/archive.ts");
    const text = archiveText({ zone: "UTC", events: ahead, recipes: [] });
    const [last] = ahead.toSorted((a, b) => b.w - a.w);
    const said = `^line \\d+: the fact "${last?.type}" was written at 20.*set the clock`;
    const answer = await importKitchen(ours, text);
    expect(answer).toMatchObject({ message: expect.stringMatching(said) });
    expect(files(ours)).toEqual(before);
    const loaded = beans.findIndex(({ type }) => type === "loaded") + 1;
    const inside = home(beans.slice(0, loaded));
    expect(await importKitchen(inside, exportKitchen(home(beets)).text)).toMatchObject({
      why: "busy",
      message: expect.stringMatching(/load 220810-L2 of batch 220810-1.*when they are out/),
    });
  });

  it("refuses a sound file whose events are invalid or of an unknown shape", async () => {
    const to = home([]);
    const { archiveText } = await import("../../../src/session/archive/archive.ts");
    const stamp = { cmd: "c", t: 1, w: 1 };
    for (const event of [
      { type: "unheard-of", ...stamp },
      { type: "pressure", load: "L", psi: "eleven", ...stamp },
      { type: "batch-begun", batch: "B", recipe: {}, ...stamp },
      { type: "note", owner: null, text: "x", cmd: "c", t: Number.NaN, w: 1 },
    ]) {
      const events = [event as unknown as KitchenEvent];
      const answer = await importKitchen(to, archiveText({ zone: "UTC", events, recipes: [] }));
      expect(answer).toMatchObject({ ok: false, why: "bad" });
    }
    const hollow = beans.map((event) =>
      event.type === "batch-begun" ? { ...event, recipe: { id: "x" } } : event,
    ) as unknown as KitchenEvent[];
    const answer = await importKitchen(
      to,
      archiveText({ zone: "UTC", events: hollow, recipes: [] }),
    );
    expect(answer).toMatchObject({ ok: false, why: "bad" });
    expect(files(to)).toEqual({});
  });

  it("carries own recipes, and saves one whose name is taken under another", async () => {
    const { archiveText } = await import("../../../src/session/archive/archive.ts");
    const to = home([]);
    const text = recipeFile("sauerkraut.yaml").replace("id: sauerkraut", "id: my-kraut");
    const archive = { zone: "UTC", events: [], recipes: [{ name: "my-kraut.yaml", text }] };
    expect((await imported(to, archiveText(archive))).recipes.added).toEqual(["my-kraut.yaml"]);
    expect((await imported(to, archiveText(archive))).recipes.known).toBe(1);
    const changed = { ...archive, recipes: [{ name: "my-kraut.yaml", text: `${text}\n` }] };
    const { recipes } = await imported(to, archiveText(changed));
    expect(recipes.beside).toEqual(["my-kraut.yaml.imported"]);
    expect(readFileSync(join(to, "recipes", "my-kraut.yaml"), "utf8")).toBe(text);
    const outside = { ...archive, recipes: [{ name: "../evil.yaml", text }] };
    expect(await importKitchen(to, archiveText(outside))).toMatchObject({ ok: false, why: "bad" });
  });
});
