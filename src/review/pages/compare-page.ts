/** Lots side by side as a page, with bars of yield and dots of scores. */
import { scaleLinear } from "d3-scale";
import type { Comparison } from "../compare.ts";
import { type LotLine, sealWords, type VarietyLine } from "../lot-lines.ts";
import { spanOf } from "../report-words.ts";
import type { ScoreTable } from "../shelf/tasting.ts";
import { chart } from "./chart.ts";
import { html, type Markup, table } from "./html.ts";
import { page } from "./page.ts";
import { deviationWords, verdictWords } from "./plain-words.ts";
import { element, placed, share } from "./svg.ts";

const HEIGHT = 28;

export function comparePage(comparison: Comparison): string {
  const { title, lots, varieties, pairs, loose, scores, caution } = comparison;
  const sentences = [
    ...pairs.map((pair) => pair.sentence),
    ...loose.map((one) => `${one.count} liked ${one.variety}, without saying over which.`),
  ].map((sentence) => html`<li>${sentence}</li>\n`);
  const body = html`<h1>${title}: lots compared</h1>
${yieldChart(lots)}
${lotTable(lots)}${varietyTable(varieties, false)}${verdictTable(lots)}<h2>Liked better</h2>
${sentences.length > 0 ? html`<ul>\n${sentences}</ul>` : html`<p>No preferences on record.</p>`}
${scores.length > 0 && html`<h2>Scores</h2>`}${scores.map(scoreFigure)}
<p class="soft">${caution}</p>
`;
  return page(`${title}: lots compared`, body);
}

function lotTable(lots: readonly LotLine[]): Markup {
  const heads = [
    "Lot",
    "Batch",
    "Begun",
    "Pounds",
    "Jars",
    "Sealed",
    "Did not seal",
    "Pints a pound",
    "Opened",
    "Hands-on",
  ];
  const rows = lots.map((lot) => [
    lot.variety,
    lot.batch,
    lot.begun,
    lot.weightLb ?? "not weighed",
    `${lot.jars}${lot.jar ? ` ${lot.jar}` : ""}`,
    lot.sealed,
    lot.failed,
    lot.pintsPerLb ?? "",
    lot.opened,
    spanOf(lot.handsOnMinutes),
  ]);
  return table("Lots side by side", heads, rows);
}

/** Each variety over all its batches, with its recipe where there are several. */
export function varietyTable(varieties: readonly VarietyLine[], recipes: boolean): Markup {
  const heads = [
    ...["Variety", "Lots", "Pounds", "Jars", "Jars a pound", "Seals", "Opened", "Spoiled"],
    "Hands-on",
  ];
  const rows = varieties.map((one) => [
    [one.variety ?? "no variety", recipes && one.title].filter(Boolean).join(", "),
    one.lots,
    one.weightLb ?? "not weighed",
    `${one.jars}${one.jar ? ` ${one.jar}` : ""}`,
    one.jarsPerLb ?? "",
    sealWords(one),
    one.opened,
    one.spoiled,
    spanOf(one.handsOnMinutes),
  ]);
  return table("Varieties over all their lots", heads, rows);
}

function verdictTable(lots: readonly LotLine[]): Markup {
  const rows = lots.map((lot) => [
    lot.variety,
    lot.batch,
    verdictWords(lot.verdict),
    [...new Set(lot.deviations)].map((code) => deviationWords(code)).join(". "),
  ]);
  return table("How each lot went", ["Lot", "Batch", "Verdict", "Departures"], rows);
}

/** The part of the width that the longest bar takes, beside which its value stands. */
const WIDE = [0, 0.84];

function yieldChart(lots: readonly LotLine[]): Markup | null {
  const known = lots.filter((lot) => lot.pintsPerLb !== null);
  if (known.length === 0) return null;
  const x = scaleLinear([0, Math.max(...known.map((lot) => lot.pintsPerLb ?? 0))], WIDE);
  const rows = known.map(({ variety, pintsPerLb }) => {
    const value = pintsPerLb ?? 0;
    const wide = share(x(value));
    const bar = { class: "done", x: "0", y: 5, width: wide, height: 18, rx: 2 };
    const text = element("text", { x: wide, y: 19, dx: 8 }, String(value));
    return { name: variety, height: HEIGHT, parts: [element("rect", bar), text] };
  });
  const label = "Pints filled for each pound, by lot";
  return html`<figure>${chart(label, rows, [])}
<figcaption>${label}.</figcaption></figure>
`;
}

function scoreFigure(scores: ScoreTable): Markup {
  const top = Math.max(5, ...scores.rows.flatMap((row) => row.scores));
  const x = scaleLinear([0, top], WIDE);
  const ticks = x.ticks(top).map((score) => ({ at: x(score), words: String(score) }));
  const rows = scores.rows.map((row) => {
    const counts = new Map<number, number>();
    for (const score of row.scores) counts.set(score, (counts.get(score) ?? 0) + 1);
    const dots = [...counts].map(([score, count]) => scoreDot(x(score), count));
    return { name: row.thing, height: HEIGHT, parts: dots };
  });
  const said = scores.rows.map((row) => `${row.thing} ${row.scores.join(", ")}`).join("; ");
  const label = `${scores.name}, larger dots where more gave the same score: ${said}`;
  return html`<figure>${chart(label, rows, ticks)}
<figcaption>${label}. ${scores.sentence}</figcaption></figure>
`;
}

function scoreDot(at: number, count: number): Markup {
  const r = Math.min(10, 3 + Math.sqrt(count));
  const dot = element("circle", { class: "dot", cx: 0, cy: HEIGHT / 2, r });
  const times = element("text", { x: r + 3, y: HEIGHT / 2 + 4 }, `×${count}`);
  return placed(at, dot, count > 1 ? times : null);
}
