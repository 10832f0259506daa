/**
 * The pages on paper and on phones: nothing is cut, nothing lies over something else, nothing has
 * to be pushed sideways. On paper that is read from the PDF, since a page that scrolls hides it.
 */
import { spawnSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { CHROMIUM, openBrowser, openFile } from "./browser.ts";
import { type MadePages, makePages } from "./made-pages.ts";
import { missingOn, outsideMargins, overlapping, paperOf } from "./paper.ts";

const SHOTS = process.env.BRINEBELL_SHOTS;
/** The margin of `@page` in page.ts. */
const MARGIN_MM = 14;
/** What 11 px type is high; smaller is hard to read on paper. */
const LEAST_HEIGHT_PT = 9;

const POPPLER = spawnSync("pdftotext", ["-v"]).status === 0;
if (CHROMIUM && !POPPLER) console.log("paper tests skipped: there is no pdftotext (poppler)");

/** Every word that is shown, as the page's own text nodes have it. */
const SHOWN_WORDS = `(() => {
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const words = [];
  while (walk.nextNode()) {
    const node = walk.currentNode;
    if (node.parentElement.closest("title, style, defs")) continue;
    if (node.parentElement.getBoundingClientRect().width === 0) continue;
    words.push(...node.textContent.split(/\\s+/).filter(Boolean));
  }
  return words;
})()`;

/** Texts that reach over the edge of the window, or over each other, and boxes that scroll. */
const CUT_ON_SCREEN = `(() => {
  const faults = [];
  const places = [];
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walk.nextNode()) {
    const node = walk.currentNode;
    const { parentElement: parent } = node;
    if (!node.textContent.trim() || parent.closest("title, style, thead")) continue;
    if (parent.getBoundingClientRect().width === 0) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of range.getClientRects()) places.push({ box, text: node.textContent.trim() });
  }
  for (const { box, text } of places) {
    if (box.left < 0 || box.right > innerWidth) faults.push("over the edge: " + text);
  }
  places.sort((a, b) => a.box.top - b.box.top);
  places.forEach(({ box, text }, at) => {
    for (let next = at + 1; places[next]?.box.top < box.bottom; next++) {
      const other = places[next];
      const wide = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
      const high = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
      if (wide > 2 && high > 4) faults.push("over each other: " + text + " | " + other.text);
    }
  });
  for (const one of document.querySelectorAll("main, main *")) {
    const scrolls = !["visible", "clip"].includes(getComputedStyle(one).overflowX);
    const hidden = one.closest("thead");
    if (scrolls && !hidden && one.scrollWidth > one.clientWidth && !one.closest("svg")) {
      faults.push("scrolls: " + one.tagName);
    }
  }
  const wide = document.scrollingElement.scrollWidth;
  if (wide > innerWidth) faults.push("the page is " + wide + " wide on " + innerWidth);
  return faults;
})()`;

describe.skipIf(!CHROMIUM)("a page, wherever it is read", () => {
  let browser: Browser;
  let made: MadePages;

  beforeAll(async () => {
    if (SHOTS) mkdirSync(SHOTS, { recursive: true });
    browser = await openBrowser();
    made = await makePages();
  });
  afterAll(async () => {
    await browser?.close();
    made?.done();
  });

  /** Labels are printed on a sheet of their own measures. */
  const reviews = () => made.pages.filter(({ name }) => name !== "labels");

  async function printed(page: Page, format: "Letter" | "A4") {
    const pdf = await page.pdf({ format });
    return { pdf, paper: paperOf(pdf) };
  }

  describe.skipIf(!POPPLER)("on paper", () => {
    it.each(["Letter", "A4"] as const)("has every word inside the margins of %s", async (size) => {
      for (const { name, path } of reviews()) {
        const { page } = await openFile(browser, path, "light");
        const { pdf, paper } = await printed(page, size);
        if (SHOTS) writeFileSync(join(SHOTS, `${name}-${size}.pdf`), pdf);
        await page.emulateMedia({ media: "print" });
        const said = (await page.evaluate(SHOWN_WORDS)) as string[];
        expect(said.length, name).toBeGreaterThan(30);
        expect(missingOn(paper, said), name).toEqual([]);
        expect(outsideMargins(paper, MARGIN_MM), name).toEqual([]);
        expect(overlapping(paper), name).toEqual([]);
        const least = Math.min(...paper.words.map(({ top, bottom }) => bottom - top));
        expect(least, name).toBeGreaterThan(LEAST_HEIGHT_PT);
        await page.context().close();
      }
    });

    it("is noticed to be cut where a table is wider than the paper", async () => {
      const { page } = await openFile(browser, reviews()[0]?.path ?? "", "light");
      const said = (await page.evaluate(SHOWN_WORDS)) as string[];
      await page.addStyleTag({ content: "td { white-space: nowrap; min-width: 3.2cm; }" });
      const { paper } = await printed(page, "A4");
      const faults = [...missingOn(paper, said), ...outsideMargins(paper, MARGIN_MM)];
      const least = Math.min(...paper.words.map(({ top, bottom }) => bottom - top));
      expect(faults.length > 0 || least < LEAST_HEIGHT_PT).toBe(true);
      await page.context().close();
    });
  });

  it("is whole on phones and small screens", async () => {
    for (const { name, path } of reviews()) {
      const { page } = await openFile(browser, path, "light");
      for (const width of [320, 360, 390, 820]) {
        await page.setViewportSize({ width, height: 800 });
        expect(await page.evaluate(CUT_ON_SCREEN), `${name}, ${width} wide`).toEqual([]);
        if (SHOTS) {
          const picture = await page.screenshot({ fullPage: true });
          writeFileSync(join(SHOTS, `${name}-${width}.png`), picture);
        }
      }
      await page.context().close();
    }
  });

  it("is noticed to be cut where a line on a phone cannot be broken", async () => {
    const { page } = await openFile(browser, reviews()[0]?.path ?? "", "light");
    await page.setViewportSize({ width: 320, height: 800 });
    await page.addStyleTag({ content: "dd { white-space: nowrap; }" });
    expect(await page.evaluate(CUT_ON_SCREEN)).not.toEqual([]);
    await page.context().close();
  });
});
