/**
 * The pages in a browser: a quiet console, no requests, no scripts, nothing that axe-core objects
 * to, in light, in dark and on paper. With BRINEBELL_SHOTS=FOLDER the pictures are kept, to be
 * looked at.
 */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { labelsCommand } from "../../src/commands/record/labels.ts";
import { reviewCommand } from "../../src/commands/record/review.ts";
import type { KitchenEvent } from "../../src/kitchen/events.ts";
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
import { CHROMIUM, openBrowser, openFile } from "./browser.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const HOSTILE = `"><img src=x onerror=alert(1)><script>alert(2)</script><svg onload=alert(3)>`;
const SHOTS = process.env.BRINEBELL_SHOTS;

if (!CHROMIUM) console.log("page tests skipped: there is no Chromium; set CHROMIUM to its path");

/** A batch of beets that lost its boil, with hostile words wherever a person can put them. */
async function hostileEvents(): Promise<KitchenEvent[]> {
  const beets = await playedEvents(LIBRARY, {
    recipe: "pickled-beets",
    variety: HOSTILE,
    weightLb: 7,
    jar: "pint",
    script: LOST_BOIL,
  });
  const named = beets.map((event) => {
    if (event.type !== "batch-begun") return event;
    const { recipe } = event;
    const source = { ...recipe.source, publication: `${recipe.source.publication} ${HOSTILE}` };
    return { ...event, recipe: { ...recipe, title: `Beets ${HOSTILE}`, source } };
  });
  const begun = named[0] as Extract<KitchenEvent, { type: "batch-begun" }>;
  const t = named.at(-1)?.w ?? 0;
  const stamp = (n: number) => ({ cmd: `h${n}`, t: t + n, w: t + n });
  const { batch } = begun;
  return [
    ...opening(begun.t),
    ...named,
    { type: "note", owner: batch, text: HOSTILE, ...stamp(1) },
    { type: "ingredient-changed", batch, detail: HOSTILE, ...stamp(2) },
    { type: "tasted", batch, taster: HOSTILE, scores: { crunch: 3 }, ...stamp(3) },
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

/** What axe-core objects to on a page, as the ids of its rules. */
async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const found: { id: string }[] = await page.evaluate("axe.run().then((all) => all.violations)");
  return found.map((one) => one.id);
}

describe.skipIf(!CHROMIUM)("a page in a browser", () => {
  let browser: Browser;
  let folder: string;
  const kitchens: { done(): void }[] = [];
  const pages: { name: string; path: string }[] = [];

  async function pageOf(
    name: string,
    home: string,
    args: string[],
    command: typeof labelsCommand = reviewCommand,
  ) {
    const path = join(folder, `${name}.html`);
    const result = await command([...args, "--html", path], ioFor(home, "2027-12-01T12:00:00"));
    if (result.code !== 0) throw new Error(result.stderr);
    pages.push({ name, path });
  }

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "brinebell-pages-"));
    browser = await openBrowser();
    const hostile = kitchenFolder(await hostileEvents());
    const plain = kitchenFolder(await plainEvents());
    const season = kitchenFolder(await demoSeason(LIBRARY, 20_000));
    kitchens.push(hostile, plain, season);
    await pageOf("hostile", hostile.folder, ["270814-1"]);
    await pageOf("hostile-compared", hostile.folder, ["--compare", "pickled-beets"]);
    await pageOf("seals", plain.folder, ["270814-1"]);
    await pageOf("labels", plain.folder, ["270814-1"], labelsCommand);
    await pageOf("pressure", season.folder, ["270707-1"]);
    await pageOf("restarted", season.folder, ["270704-1"]);
    await pageOf("compared", season.folder, ["--compare", "dilled-green-beans"]);
    await pageOf("season", season.folder, ["--season", "2027"]);
  });

  afterAll(async () => {
    await browser?.close();
    for (const kitchen of kitchens) kitchen.done();
    if (folder) rmSync(folder, { recursive: true, force: true });
  });

  it("is under 300 kB, each of them", () => {
    for (const { name, path } of pages) {
      expect(statSync(path).size, name).toBeLessThan(300_000);
    }
  });

  it.each(["light", "dark"] as const)(
    "asks for nothing and says nothing, in %s",
    async (scheme) => {
      for (const { name, path } of pages) {
        const { page, troubles } = await openFile(browser, path, scheme);
        expect(await page.title(), name).not.toBe("");
        expect(await page.evaluate("document.querySelectorAll('script, img').length")).toBe(0);
        expect(troubles, name).toEqual([]);
        if (SHOTS) {
          mkdirSync(SHOTS, { recursive: true });
          const picture = join(SHOTS, `${name}-${scheme}.png`);
          writeFileSync(picture, await page.screenshot({ fullPage: true }));
        }
        await page.context().close();
      }
    },
  );

  it.each(["light", "dark"] as const)(
    "has nothing axe-core finds fault with, in %s",
    async (scheme) => {
      for (const { name, path } of pages) {
        const { page } = await openFile(browser, path, scheme);
        expect(await violations(page), name).toEqual([]);
        await page.context().close();
      }
    },
  );

  it("shows every word of a label on its label", async () => {
    const path = pages.find((one) => one.name === "labels")?.path ?? "";
    const { page } = await openFile(browser, path, "light");
    const off: string[] = await page.evaluate(`
      [...document.querySelectorAll(".label")].flatMap((label) => {
        const edge = label.getBoundingClientRect();
        return [...label.querySelectorAll("text")].filter((text) => {
          const box = text.getBoundingClientRect();
          return box.left < edge.left || box.right > edge.right ||
            box.top < edge.top || box.bottom > edge.bottom;
        }).map((text) => text.textContent);
      })`);
    expect(off).toEqual([]);
    const shown = await page.evaluate("document.querySelectorAll('.label text').length");
    expect(shown).toBeGreaterThan(20);
    await page.context().close();
  });

  it("would be objected to if a picture had no words", async () => {
    const { page } = await openFile(browser, pages[0]?.path ?? "", "light");
    await page.evaluate("document.querySelector('main').append(document.createElement('img'))");
    expect(await violations(page)).toContain("image-alt");
    await page.context().close();
  });

  it("prints on paper, whole", async () => {
    for (const { name, path } of pages) {
      const { page } = await openFile(browser, path, "dark");
      await page.emulateMedia({ media: "print" });
      const back = await page.evaluate("getComputedStyle(document.body).backgroundColor");
      expect(back, name).toBe("rgb(255, 255, 255)");
      const root = "document.documentElement";
      const wide = await page.evaluate(`${root}.scrollWidth - ${root}.clientWidth`);
      expect(wide, name).toBeLessThanOrEqual(0);
      const pdf = await page.pdf({ preferCSSPageSize: true });
      expect(pdf.byteLength, name).toBeGreaterThan(1000);
      if (SHOTS) writeFileSync(join(SHOTS, `${name}.pdf`), pdf);
      await page.context().close();
    }
  });
});
