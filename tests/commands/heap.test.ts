import { describe, expect, it } from "vitest";
import { asksOfHeap, heapCommand } from "../../src/commands/day/heap.ts";
import { wholeLibrary } from "../recipe/library-files.ts";

const io = {
  library: async () => wholeLibrary(),
  kitchen: async () => undefined,
  zone: "America/Denver",
  nowMs: Date.UTC(2027, 7, 14, 14),
};

type Way = {
  recipe: string;
  process: { minutes: number; pressurePsi: number | null } | null;
  jars: { expected: number } | null;
  handsMinutes: number;
  minutes: number;
  finish: string;
  fits: boolean;
  buy: { item: string }[];
  keepsDays: number | null;
};

async function heaps(...args: string[]) {
  const { code, stdout, stderr } = await heapCommand([...args, "--json"], io);
  const report = stdout ? JSON.parse(stdout) : undefined;
  const ways = (at: number): Way[] => report.heaps[at].ways;
  const way = (id: string, at = 0) => ways(at).find(({ recipe }) => recipe === id) as Way;
  return { code, report, stderr, ways, way };
}

const HERE = ["--altitude", "6200ft"];

describe("what can be made of a heap", () => {
  it("is every tested recipe of the food, with its process in this kitchen", async () => {
    const { code, way } = await heaps("--for", "10lb tomatoes", ...HERE);
    expect(code).toBe(0);
    // USDA Complete Guide, Guide 3: crushed tomatoes, pints, above 6,000 feet.
    expect(way("crushed-tomatoes").process?.minutes).toBe(50);
    expect(way("crushed-tomatoes").jars?.expected).toBe(6);
    expect(way("crushed-tomatoes").handsMinutes).toBeGreaterThan(60);
    expect(way("crushed-tomatoes").minutes).toBeGreaterThan(way("crushed-tomatoes").handsMinutes);
    expect(way("crushed-tomatoes").keepsDays).toBe(365);
  });

  it("lists what has to be bought besides, other produce included", async () => {
    const { way } = await heaps("--for", "10lb tomatoes", ...HERE);
    const items = way("chile-salsa").buy.map(({ item }) => item);
    expect(items).toEqual(expect.arrayContaining(["onions", "new lids"]));
    expect(items.join()).not.toMatch(/tomato/);
  });

  it("fits the day or does not, by the time that is asked for", async () => {
    const late = await heaps("--for", "10lb tomatoes", "--by", "9pm", ...HERE);
    const soon = await heaps("--for", "10lb tomatoes", "--by", "10am", ...HERE);
    expect(late.way("crushed-tomatoes").fits).toBe(true);
    expect(soon.way("crushed-tomatoes").fits).toBe(false);
    expect(Date.parse(late.way("crushed-tomatoes").finish)).toBeLessThan(
      Date.parse(late.report.by),
    );
  });

  it("leaves out what has no tested process at this altitude, and says why", async () => {
    const high = await heaps("--for", "20lb beets", "--altitude", "8600ft");
    expect(high.ways(0).map(({ recipe }) => recipe)).not.toContain("beets");
    expect(high.report.heaps[0].cannot).toContainEqual(
      expect.objectContaining({ recipe: "beets", why: expect.stringContaining("8,000 ft") }),
    );
  });

  it("takes the processes that were tested for that food only", async () => {
    const { report, code } = await heaps("--for", "6lb bananas", ...HERE);
    expect(code).toBe(1);
    expect(report.heaps[0].ways).toEqual([]);
    expect(report.heaps[0].cannot[0].why).toMatch(/low in acid/i);
  });

  it("reads several heaps, and says whether the first way of each fits together", async () => {
    const { report, way } = await heaps("--for", "10lb tomatoes, 8 lb cucumbers", ...HERE);
    expect(report.heaps.map((heap: { food: string }) => heap.food)).toEqual(["tomato", "cucumber"]);
    expect(way("bread-and-butter-pickles", 1)).toBeDefined();
    expect(report.together.recipes).toHaveLength(2);
  });

  it("names no time where the altitude is not known", async () => {
    const { way } = await heaps("--for", "10lb tomatoes");
    expect(way("crushed-tomatoes").process).toBeNull();
  });

  it("refuses what is no food", async () => {
    expect((await heaps("--for", "10lb gravel", ...HERE)).code).toBe(2);
  });

  it("is meant only where a food is named and no recipe", () => {
    expect(asksOfHeap(["--for", "10lb tomatoes"])).toBe(true);
    expect(asksOfHeap(["--for", "12 lb"])).toBe(false);
    expect(asksOfHeap(["beets", "--for", "12lb"])).toBe(false);
  });
});
