/** Lots side by side as a page, with bars of yield and dots of scores. */
import type { Comparison, LotLine } from "../compare.ts";
import { spanOf } from "../report-words.ts";
import type { ScoreTable } from "../shelf/tasting.ts";
import { html, type Markup, table } from "./html.ts";
import { page } from "./page.ts";
import { drawing, element, svgText } from "./svg.ts";

const WIDTH = 960;
const LEFT = 190;
const ROW = 34;

export function comparePage(comparison: Comparison): string {
  const { title, lots, pairs, loose, scores, caution } = comparison;
  const sentences = [
    ...pairs.map((pair) => pair.sentence),
    ...loose.map((one) => `${one.count} liked ${one.variety}, without saying over which.`),
  ].map((sentence) => html`<li>${sentence}</li>\n`);
  const body = html`<h1>${title}: lots compared</h1>
${yieldChart(lots)}
${lotTable(lots)}
<h2>Liked better</h2>
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
    "Hands-on",
    "Departures",
    "Verdict",
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
    spanOf(lot.handsOnMinutes),
    lot.deviations.join(", "),
    lot.verdict,
  ]);
  return table("Lots side by side", heads, rows);
}

function yieldChart(lots: readonly LotLine[]): Markup | null {
  const known = lots.filter((lot) => lot.pintsPerLb !== null);
  if (known.length === 0) return null;
  const most = Math.max(...known.map((lot) => lot.pintsPerLb ?? 0));
  const bars = known.flatMap((lot, index) => {
    const y = index * ROW + 6;
    const value = lot.pintsPerLb ?? 0;
    const width = (value / most) * (WIDTH - LEFT - 90);
    return [
      svgText(LEFT - 10, y + 17, lot.variety, "end"),
      element("rect", { class: "done", x: LEFT, y, width, height: 24, rx: 2 }),
      svgText(LEFT + width + 8, y + 17, String(value), "start"),
    ];
  });
  const label = "Pints filled for each pound, by lot";
  return html`<figure>${drawing(label, WIDTH, known.length * ROW + 8, bars)}
<figcaption>${label}.</figcaption></figure>
`;
}

function scoreFigure(scores: ScoreTable): Markup {
  const top = Math.max(5, ...scores.rows.flatMap((row) => row.scores));
  const x = (score: number) => LEFT + (score / top) * (WIDTH - LEFT - 40);
  const bottom = scores.rows.length * ROW + 4;
  const ticks = Array.from({ length: Math.floor(top) + 1 }, (_, score) => [
    element("path", { class: "axis", d: `M${x(score).toFixed(1)} 0V${bottom}` }),
    svgText(x(score), bottom + 14, String(score), "middle", true),
  ]).flat();
  const rows = scores.rows.flatMap((row, index) => {
    const cy = index * ROW + 17;
    const seen = new Map<number, number>();
    const dots = row.scores.map((score) => {
      const before = seen.get(score) ?? 0;
      seen.set(score, before + 1);
      return element("circle", { class: "dot", cx: x(score) + before * 9, cy, r: 4 });
    });
    return [svgText(LEFT - 10, cy + 4, row.thing, "end"), ...dots];
  });
  const said = scores.rows.map((row) => `${row.thing} ${row.scores.join(", ")}`).join("; ");
  const label = `${scores.name}, each dot one score: ${said}`;
  return html`<figure>${drawing(label, WIDTH, bottom + 20, ticks, rows)}
<figcaption>${label}. ${scores.sentence}</figcaption></figure>
`;
}
