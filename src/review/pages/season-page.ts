/** A season as a page. */

import { counted } from "../report-words.ts";
import type { Season } from "../season.ts";
import { varietyTable } from "./compare-page.ts";
import { html, type Markup, table } from "./html.ts";
import { page } from "./page.ts";
import { deviationWords, idWords, verdictWords } from "./plain-words.ts";

/** Jars by size in words: `24 pints, 7 quarts`. */
export function jarsInWords(jars: Readonly<Record<string, number>>): string {
  const parts = Object.entries(jars).map(([size, count]) => counted(count, size));
  return parts.join(", ") || "none";
}

export function seasonPage(season: Season): string {
  const { year, batches, verdicts, lost, learned } = season;
  const records = Object.entries(verdicts).map(
    ([verdict, count]) => `${count} ${verdictWords(verdict).toLowerCase()}`,
  );
  const title = `The season of ${year}`;
  const known = learned.map((one) => html`<li>${one.sentence}</li>\n`);
  const lostWords = [
    `${lost.failed} did not seal`,
    `${lost.broken} broke`,
    `${lost.discarded} thrown out`,
    `${lost.spoiled} spoiled when opened`,
  ];
  const body = html`<h1>${title}</h1>
<p>${counted(batches, "batch")}: ${records.join(", ") || "none"}.</p>
<h2>Put up</h2>
${methods(season)}
<h2>Departures, and what would have avoided them</h2>
${deviations(season)}
<h2>Jars lost</h2>
<p>${lostWords.join(", ")}.</p>
<h2>Varieties</h2>
${season.varieties.length > 0 ? varietyTable(season.varieties, true) : html`<p>None.</p>`}
<h2>Learned about this kitchen's times</h2>
${known.length > 0 ? html`<ul>\n${known}</ul>` : html`<p>Nothing yet.</p>`}
<h2>Eaten, and next year</h2>
${eaten(season)}
`;
  return page(title, body);
}

function methods(season: Season): Markup {
  const heads = ["Method", "Batches", "Pounds", "Shelf jars", "Kept cold", "Hands-on h", "Hours"];
  const rows = season.methods.map((one) => [
    idWords(one.method),
    one.batches,
    one.weightLb,
    jarsInWords(one.shelfJars),
    one.coldJars,
    one.handsOnHours,
    one.hours,
  ]);
  return table("What was put up, by method", heads, rows);
}

function deviations(season: Season): Markup {
  if (season.deviations.length === 0) return html`<p>None on record.</p>`;
  const rows = season.deviations.map((one) => [
    deviationWords(one.code),
    one.count,
    one.batches,
    one.avoiding,
  ]);
  return table("Deviations by kind", ["What", "Times", "Batches", "Avoided by"], rows);
}

function eaten(season: Season): Markup {
  if (season.use.length === 0) return html`<p>No sealed jars on record.</p>`;
  const rows = season.use.map((one) => [
    [one.title, one.variety].filter(Boolean).join(", "),
    one.putUp,
    one.opened,
    one.left,
    one.advice,
  ]);
  return table("Use, and what it says", ["What", "Put up", "Opened", "Left", "Next year"], rows);
}
