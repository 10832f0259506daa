/** The system's Chromium, with everything it would fetch on its own turned off. */
import { existsSync } from "node:fs";
import { type Browser, chromium, type Page } from "playwright-core";

const PLACES = [process.env.CHROMIUM, "/usr/bin/chromium", "/usr/bin/chromium-browser"];

/** Where the browser is; undefined where there is none, and then the tests are skipped. */
export const CHROMIUM = PLACES.find((place) => place !== undefined && existsSync(place));

export function openBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: CHROMIUM ?? "",
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
}

export type Seen = { page: Page; troubles: string[] };

/** Opens a file, and keeps what the console, the page and the network say. */
export async function openFile(browser: Browser, path: string, scheme: "light" | "dark") {
  const context = await browser.newContext({
    colorScheme: scheme,
    viewport: { width: 1100, height: 900 },
  });
  const page = await context.newPage();
  const troubles: string[] = [];
  page.on("console", (message) => troubles.push(`console ${message.type()}: ${message.text()}`));
  page.on("pageerror", (error) => troubles.push(`error: ${error.message}`));
  page.on("dialog", (dialog) => {
    troubles.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on("request", (request) => {
    if (request.url() !== `file://${path}`) troubles.push(`request: ${request.url()}`);
  });
  await page.goto(`file://${path}`);
  return { page, troubles } satisfies Seen;
}
