/**
 * The pages in a browser: a quiet console, no requests, no scripts, nothing that axe-core objects
 * to, in light, in dark and on paper. With BRINEBELL_SHOTS=FOLDER the pictures are kept, to be
 * looked at.
 */
import { mkdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CHROMIUM, openBrowser, openFile } from "./browser.ts";
import { type MadePage, type MadePages, makePages } from "./made-pages.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
/** One page of each kind. */
const PHONE_PAGES = ["restarted", "compared", "season"];
const SHOTS = process.env.BRINEBELL_SHOTS;

if (!CHROMIUM) console.log("page tests skipped: there is no Chromium; set CHROMIUM to its path");

/** What axe-core objects to on a page, as the ids of its rules. */
async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const found: { id: string }[] = await page.evaluate("axe.run().then((all) => all.violations)");
  return found.map((one) => one.id);
}

describe.skipIf(!CHROMIUM)("a page in a browser", () => {
  let browser: Browser;
  let made: MadePages;
  let pages: MadePage[] = [];

  beforeAll(async () => {
    browser = await openBrowser();
    made = await makePages();
    // Long names make no other elements or colors: they are tried on paper and on phones.
    pages = made.pages.filter(({ name }) => !name.startsWith("longest"));
  });

  afterAll(async () => {
    await browser?.close();
    made?.done();
  });

  it("is under 300 kB, each of them", () => {
    for (const { name, path } of made.pages) {
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

  it("has nothing axe-core finds fault with on a phone, where rows become lists", async () => {
    for (const { name, path } of pages.filter((one) => PHONE_PAGES.includes(one.name))) {
      const { page } = await openFile(browser, path, "light");
      await page.setViewportSize({ width: 360, height: 800 });
      expect(await violations(page), name).toEqual([]);
      await page.context().close();
    }
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
