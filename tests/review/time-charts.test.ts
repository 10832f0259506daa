import { describe, expect, it } from "vitest";
import { reviewCommand } from "../../src/commands/record/review.ts";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
import { DAY_MS, HOUR_MS } from "../../src/kitchen/time.ts";
import { opening, playedEvents, type Wanted } from "./demo-season.ts";
import { ioFor, LIBRARY } from "./kitchen-files.ts";
import { kitchenFolder } from "./kitchen-folder.ts";

type More = (events: readonly KitchenEvent[]) => KitchenEvent[];

/** The page of one batch as its charts, each with its name and its texts in order. */
async function chartsOf(wanted: Wanted, now: string, more: More = () => []) {
  const events = await playedEvents(LIBRARY, wanted);
  const all = [...events, ...more(events)].sort((a, b) => a.w - b.w);
  const kitchen = kitchenFolder([...opening(events[0]?.t ?? 0), ...all]);
  const page = (await reviewCommand(["270814-1", "--html", "-"], ioFor(kitchen.folder, now)))
    .stdout;
  kitchen.done();
  return [...page.matchAll(/aria-label="(Days|Timeline) of[\s\S]*?<\/figure>/g)].map(
    ([svg, name]) => {
      const ticks = /<g class="paper">(.*?)<g class="phone">/s.exec(svg)?.[1] ?? "";
      const words = [...ticks.matchAll(/>([^<]+)<\/text>/g)].map(([, word]) => word);
      return { name, svg, words };
    },
  );
}

const BEETS: Wanted = { recipe: "pickled-beets", weightLb: 7, jar: "pint" };

/** Readings of a thermometer in the crock, each half day. */
const inCrock: More = ([begun]) => {
  if (begun?.type !== "batch-begun") return [];
  return Array.from({ length: 50 }, (_, i) => {
    const t = begun.t + 4 * HOUR_MS + (i * DAY_MS) / 2;
    const reading = { temperatureF: 68 + (i % 5), what: "crock", owner: begun.batch };
    return { type: "temperature", ...reading, cmd: `k${i}`, t, w: t };
  });
};

/** Readings in the canner, each minute from when its water boils. */
const inCanner: More = (events) => {
  const boil = events.findLast((event) => event.type === "boil");
  if (boil?.type !== "boil") return [];
  return Array.from({ length: 20 }, (_, i) => {
    const t = boil.t + i * 60_000 + 1000;
    const reading = { temperatureF: 201 + (i % 2), what: "water", owner: boil.owner };
    return { type: "temperature", ...reading, cmd: `k${i}`, t, w: t };
  });
};

describe("the charts of a batch", () => {
  it("are one in hours, with its day, where it takes a morning", async () => {
    const charts = await chartsOf(BEETS, "2027-09-20T12:00:00");
    expect(charts.map(({ name }) => name)).toEqual(["Timeline"]);
    expect(charts[0]?.words.slice(0, 3)).toEqual(["14 Aug", "08:00", "09:00"]);
    // The seal check is after midnight, behind the wait drawn short.
    expect(charts[0]?.words).toContain("15 Aug");
  });

  it("are in days with dates, too, where a cure goes on for weeks", async () => {
    const cure = { recipe: "bread-and-butter-pickles", weightLb: 6, jar: "pint" } as const;
    const charts = await chartsOf(cure, "2027-09-04T12:00:00");
    expect(charts.map(({ name }) => name)).toEqual(["Days", "Timeline"]);
    const [days, hours] = charts;
    expect(days?.words[0]).toBe("2027");
    expect(days?.words.slice(1).every((one) => /^\d+ (Aug|Sep)$/.test(one ?? ""))).toBe(true);
    // Three weeks of a cure of five at most.
    expect(days?.svg).toMatch(/cure: 2027-08-15 02:20, 20 days so far<\/title><rect[^>]*/);
    const [, , wide] = /cure: .*?x="([\d.]+)%".*?width="([\d.]+)%"/.exec(days?.svg ?? "") ?? [];
    expect(Number(wide)).toBeCloseTo((100 * 20.4) / 35.76, 0);
    expect(hours?.svg).not.toContain("cure:");
    expect(hours?.words).toContain("08:00");
  });

  it("are in days where a crock ferments for weeks, and its readings with them", async () => {
    const kraut = { recipe: "sauerkraut", weightLb: 25 };
    const [days, hours] = await chartsOf(kraut, "2027-12-01T12:00:00", inCrock);
    expect(days?.name).toBe("Days");
    expect(days?.svg).toContain("crock, °F");
    expect(hours?.svg).not.toContain("crock, °F");
    const dots = [...(days?.svg ?? "").matchAll(/class="dot" cx="([\d.]+)%"/g)].map(([, x]) => x);
    expect(dots).toHaveLength(50);
    expect(Number(dots[49]) - Number(dots[47])).toBeCloseTo(Number(dots[2]) - Number(dots[0]), 1);
  });

  it("show stages and readings over one axis: the process is where its readings are", async () => {
    const [chart] = await chartsOf(BEETS, "2027-09-20T12:00:00", inCanner);
    const svg = chart?.svg ?? "";
    expect(svg.match(/class="grid"/g)).toHaveLength(1);
    const [, bar] = /<title>process: .*?<rect class="done" x="([\d.]+)%"/.exec(svg) ?? [];
    const [, band] = /<rect class="band" x="([\d.]+)%"/.exec(svg) ?? [];
    const [, dot] = /class="dot" cx="([\d.]+)%"/.exec(svg) ?? [];
    expect(Number(band)).toBe(Number(bar));
    expect(Number(dot)).toBeCloseTo(Number(band), 0);
    expect(Number(dot)).toBeGreaterThan(Number(band));
  });
});
