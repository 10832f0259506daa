import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { CommandResult } from "../../src/commands/call/command-result.ts";
import { exportCommand } from "../../src/commands/record/export.ts";
import { importCommand } from "../../src/commands/record/import.ts";
import { pantryCommand } from "../../src/commands/record/pantry.ts";
import { reviewCommand } from "../../src/commands/record/review.ts";
import type { ReviewIo } from "../../src/commands/record/review-io.ts";
import { seedsCommand } from "../../src/commands/record/seeds.ts";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { BAD_SEAL, moved, opening, playedEvents } from "../review/demo-season.ts";
import { ioFor, LIBRARY } from "../review/kitchen-files.ts";
import { kitchenFolder } from "../review/kitchen-folder.ts";

const NAME = "Fäßchen Łuk";
const open: { done(): void }[] = [];
let events: KitchenEvent[];

beforeAll(async () => {
  const beans = { recipe: "dilled-green-beans", weightLb: 4, jar: "pint" } as const;
  const lots = await Promise.all([
    playedEvents(LIBRARY, { ...beans, variety: NAME, script: BAD_SEAL }),
    playedEvents(LIBRARY, { ...beans, variety: "Provider" }),
    playedEvents(LIBRARY, { recipe: "pickled-beets", weightLb: 7, jar: "pint" }),
  ]);
  // In the past, so that what is written now comes after it.
  const days = -6 * 366;
  const [first] = moved(lots[0] ?? [], days, 1);
  events = [...opening(first?.t ?? 0), ...lots.flatMap((lot, i) => moved(lot, days + i, i + 1))];
});

afterAll(() => {
  for (const kitchen of open) kitchen.done();
});

function kitchen(now?: string): ReviewIo {
  const made = kitchenFolder(events);
  open.push(made);
  const io = ioFor(made.folder, now);
  if (now === undefined) delete io.nowMs;
  return io;
}

function idOf(index: number): string {
  const begun = events.filter((event) => event.type === "batch-begun");
  const event = begun[index];
  return event?.type === "batch-begun" ? event.batch : "";
}

function json(result: CommandResult) {
  expect(result.stderr).toBe("");
  expect(result.code).toBe(0);
  return JSON.parse(result.stdout);
}

describe("brinebell review", () => {
  it("lists batches, and shows the one with an id or a name", async () => {
    const io = kitchen();
    const list = await reviewCommand([], io);
    expect(list.stdout.trim().split("\n")).toHaveLength(3);
    const byId = await reviewCommand([idOf(1)], io);
    const byName = await reviewCommand(["Provider"], io);
    expect(byName.stdout).toBe(byId.stdout);
    expect(byId.stdout).toContain("verdict: as-tested");
    expect(byId.stdout).toMatch(/\d\d:\d\d process {16}\|.*=.*\| 15 min/);
  });

  it("gives one batch with only its loads, as the published JSON", async () => {
    const { batches, loads, timers } = json(await reviewCommand([idOf(0), "--json"], kitchen()));
    expect(batches).toHaveLength(1);
    expect(batches[0]).toMatchObject({ id: idOf(0), jars: { sealed: 7, failed: 1 } });
    expect(loads.map((load: { id: string }) => load.id)).toEqual(batches[0].loads);
    expect(timers).toEqual([]);
  });

  it("prints CSV that another parser reads", async () => {
    const rows = parse((await reviewCommand(["--csv"], kitchen())).stdout, { columns: true });
    expect(rows).toHaveLength(3);
    const one = parse((await reviewCommand([idOf(0), "--csv"], kitchen())).stdout);
    expect(new Set(one.map((row: string[]) => row.length)).size).toBe(1);
  });

  it("finds no batch by a name that every object has", async () => {
    for (const name of ["constructor", "__proto__", "toString"]) {
      const { code, stderr } = await reviewCommand([name], kitchen());
      expect(code).toBe(2);
      expect(stderr).toContain("no batch is called");
    }
  });

  it("says which words are wrong, and that several batches share a name", async () => {
    const io = kitchen();
    expect(await reviewCommand(["--jsn"], io)).toMatchObject({ code: 2 });
    expect(await reviewCommand(["--json", "--csv"], io)).toMatchObject({ code: 2 });
    expect(await reviewCommand(["--season", "soon"], io)).toMatchObject({ code: 2 });
    expect(await reviewCommand(["rutabaga"], io)).toMatchObject({ code: 2 });
    expect((await reviewCommand(["dilled green beans"], io)).stderr).toContain(idOf(1));
    expect(await reviewCommand([idOf(2), "--season", "2019"], io)).toMatchObject({ code: 2 });
    expect(await reviewCommand([idOf(2), "--compare", "beets"], io)).toMatchObject({ code: 2 });
    expect((await reviewCommand(["--compare", "peaches"], io)).stderr).toContain("pickled-beets");
  });

  it("compares lots, and sums a season up", async () => {
    const io = kitchen();
    const compared = json(await reviewCommand(["--compare", "dilled beans", "--json"], io));
    expect(compared.lots).toMatchObject([
      { variety: NAME, pintsPerLb: 2, failed: 1 },
      { variety: "Provider", pintsPerLb: 2, failed: 0 },
    ]);
    const year = Number(events[0] && new Date(events[0].t).getUTCFullYear());
    const { season } = json(await reviewCommand(["--season", String(year), "--json"], io));
    expect(season).toMatchObject({
      batches: 3,
      verdicts: { "as-tested": 3 },
      lost: { failed: 1 },
      methods: [{ method: "boiling-water", batches: 3, shelfJars: { pint: 23 } }],
    });
  });

  it("says that a kitchen is empty, or cannot be read", async () => {
    const io = ioFor("/nowhere/at/all");
    expect(await reviewCommand([], io)).toMatchObject({
      code: 0,
      stdout: "No batches in the log.\n",
    });
    const { folder } = kitchen();
    mkdirSync(join(folder, "journal-2099.jsonl"));
    expect(await reviewCommand([], ioFor(folder))).toMatchObject({ code: 3 });
  });
});

describe("brinebell pantry", () => {
  it("takes opened jars off and says what to do with a spoiled one", async () => {
    const io = kitchen();
    const opened = await pantryCommand(["--opened", `${idOf(2)}:2`], io);
    expect(opened.code).toBe(0);
    expect((await pantryCommand(["--opened", `${idOf(2)}:2`], io)).code).toBe(1);
    expect((await pantryCommand(["--opened", `${idOf(2)}:3`], io)).code).toBe(0);
    // What came due while nobody was there is announced first, exactly once.
    expect(opened.stdout).toMatch(/past its best time on the shelf[\s\S]*Taken off the shelf\./);
    const again = await pantryCommand(["--opened", idOf(2)], io);
    expect(again.stdout).toBe("Taken off the shelf. Enjoy it.\n");
    const spoiled = await pantryCommand(["--opened", idOf(2), "--spoiled"], io);
    expect(spoiled.stdout).toContain("Do not taste it");
    expect(spoiled.stdout).toContain("boil 30 minutes");
    const { lines, opened: list } = json(await pantryCommand(["beets", "--json"], io));
    expect(lines).toMatchObject([{ jars: 7, opened: 3, left: 4 }]);
    const spoilt = list.map((one: { spoiled: boolean }) => one.spoiled);
    expect(spoilt).toEqual([false, false, false, true]);
  });

  it("takes a jar by its mark, its short id or its batch and number", async () => {
    const io = kitchen();
    const { jar } = json(await reviewCommand([`${idOf(2)}:3`, "--json"], io));
    expect(jar).toMatchObject({ batch: idOf(2), fate: "shelf", place: "pantry" });
    expect(jar.mark).toMatch(/^[A-Z]+3$/);
    expect((await pantryCommand(["--place", `${jar.short}=cellar`], io)).code).toBe(0);
    expect(json(await pantryCommand([jar.id, "--json"], io)).jar.place).toBe("cellar");
    expect((await pantryCommand(["--opened", jar.short], io)).code).toBe(0);
    const { stdout } = await reviewCommand([`${idOf(2)}:3`], io);
    expect(stdout).toContain(`${jar.mark}  ${jar.short}  ${jar.id}`);
    expect(stdout).toMatch(/filled 20\d\d-[\s\S]*verdict: as-tested[\s\S]*opened, 20/);
    expect(await reviewCommand([`${idOf(2)}:40`], io)).toMatchObject({ code: 2 });
  });

  it("shows and counts what fits the words, and says where nothing does", async () => {
    const io = kitchen();
    expect((await pantryCommand(["half"], io)).stdout).toMatch(/^Nothing in store fits "half"/);
    expect((await pantryCommand(["pint"], io)).stdout).toContain("Provider");
    await pantryCommand(["--opened", idOf(2)], io);
    expect((await pantryCommand(["--eaten", "beets"], io)).stdout).toContain(idOf(2));
    expect((await pantryCommand(["--eaten", "provider"], io)).stdout).toMatch(/that these words/);
    expect((await pantryCommand(["--eaten", "--season", "2019"], io)).stdout).toMatch(/No jars/);
  });

  it("refuses more jars than there are, and words that make no sense", async () => {
    const io = kitchen();
    expect((await pantryCommand(["--opened", `${idOf(2)}:-1`], io)).code).toBe(2);
    expect((await pantryCommand(["--opened", `${idOf(2)}:9`], io)).code).toBe(2);
    expect((await pantryCommand(["--opened", `${idOf(2)}:0`], io)).code).toBe(2);
    expect((await pantryCommand(["--spoiled"], io)).code).toBe(2);
    expect((await pantryCommand(["--place", "cellar"], io)).code).toBe(2);
    const { lines } = json(await pantryCommand(["beets", "--json"], io));
    expect(lines).toMatchObject([{ left: 8 }]);
  });

  it("knows where jars were put", async () => {
    const io = kitchen();
    expect((await pantryCommand(["--place", "beets=cold cellar"], io)).code).toBe(0);
    const { lines } = json(await pantryCommand(["cold cellar", "--json"], io));
    expect(lines).toMatchObject([{ batch: idOf(2), place: "cold cellar" }]);
  });
});

describe("brinebell seeds", () => {
  it("keeps a lot and its test, with what the test can show", async () => {
    const io = kitchen();
    const words = ["add", "beans", "Provider", "--dry-weight", "7oz", "--storage", "jar, cellar"];
    const added = await seedsCommand(words, io);
    expect(added.stderr).toBe("");
    const id = /Seed lot (\S+) noted/.exec(added.stdout)?.[1] ?? "";
    const tested = await seedsCommand(["test", id, "18/20", "--days", "7"], io);
    expect(tested.stdout).toContain("70 to 97 %");
    const { seeds } = json(await seedsCommand(["--json"], io));
    expect(seeds).toMatchObject([
      {
        id,
        crop: "beans",
        variety: "Provider",
        dryWeightG: 198.45,
        tests: [{ sprouted: 18, of: 20 }],
      },
    ]);
    expect((await seedsCommand(["test", id, "21/20"], io)).code).toBe(2);
    expect((await seedsCommand(["test", "S9", "1/20"], io)).code).toBe(1);
    expect((await seedsCommand(["sow"], io)).code).toBe(2);
  });
});

describe("brinebell export and import", () => {
  it("carry a kitchen over", async () => {
    const from = kitchen();
    const to = ioFor(`${from.folder}/other`);
    const beside = mkdtempSync(join(tmpdir(), "moved-"));
    const file = join(beside, "kitchen.brinebell");
    expect((await exportCommand([file], from)).code).toBe(0);
    const done = json(await importCommand([file, "--json"], to));
    expect(done.batches).toBe(3);
    expect((await reviewCommand([], to)).stdout).toBe((await reviewCommand([], from)).stdout);
    expect((await importCommand([join(from.folder, "nothing")], to)).code).toBe(3);
    expect((await importCommand([], to)).code).toBe(2);
    rmSync(beside, { recursive: true });
  });
});
