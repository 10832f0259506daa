/** Lots side by side as text. */
import type { Comparison } from "../../review/compare.ts";
import { type LotLine, sealWords, type VarietyLine } from "../../review/lot-lines.ts";
import { counted, spanOf } from "../../review/report-words.ts";

const BAR = 24;

export function comparisonText(comparison: Comparison): string {
  const { title, lots, varieties, pairs, loose, scores, caution } = comparison;
  const most = Math.max(0, ...lots.map((lot) => lot.pintsPerLb ?? 0));
  const lines = [`${title}: lots compared`, ""];
  for (const lot of lots) {
    const jar = lot.jar ? ` ${lot.jar}` : "";
    const weight = lot.weightLb === null ? "not weighed" : `${lot.weightLb} lb`;
    const failed = lot.failed > 0 ? `, ${lot.failed} did not seal` : "";
    lines.push(
      `${lot.variety}  ${lot.batch}  ${lot.begun}  ${weight}`,
      `  ${lot.jars}${jar} jars, ${lot.sealed} sealed${failed}${gone(lot)}; hands-on ` +
        `${spanOf(lot.handsOnMinutes)}; ${lot.verdict}`,
    );
    if (lot.pintsPerLb !== null) {
      const bar = "#".repeat(Math.round((lot.pintsPerLb / most) * BAR));
      lines.push(`  ${bar.padEnd(BAR)} ${lot.pintsPerLb} pints a pound`);
    }
    if (lot.deviations.length > 0) lines.push(`  departures: ${lot.deviations.join(", ")}`);
  }
  lines.push("", "Varieties over all their lots", ...varieties.map(varietyText));
  lines.push("", "Liked better");
  if (pairs.length + loose.length === 0) lines.push("  no preferences on record");
  for (const pair of pairs) lines.push(`  ${pair.sentence}`);
  for (const one of loose) {
    lines.push(`  ${one.count} liked ${one.variety}, without saying over which.`);
  }
  for (const table of scores) {
    lines.push("", `Scores: ${table.name}`);
    for (const row of table.rows) lines.push(`  ${row.thing.padEnd(20)} ${row.scores.join(" ")}`);
    lines.push(`  ${table.sentence}`);
  }
  return `${[...lines, "", caution].join("\n")}\n`;
}

/** What left the shelf, eaten and spoiled. */
function gone({ opened, spoiled }: Pick<LotLine, "opened" | "spoiled">): string {
  return [opened > 0 && `, ${opened} opened`, spoiled > 0 && `, ${spoiled} spoiled`]
    .filter(Boolean)
    .join("");
}

/** One variety over all its lots, on one line. */
export function varietyText(line: VarietyLine): string {
  const { variety, lots, weightLb, jars, jar, jarsPerLb } = line;
  const yielded = jarsPerLb === null ? "" : `, ${jarsPerLb} a pound`;
  const pounds = weightLb === null ? "" : `, ${weightLb} lb`;
  const seals = sealWords(line);
  const parts = [
    `${variety ?? "no variety"}: ${counted(lots, "lot")}${pounds}`,
    `${jars}${jar ? ` ${jar}` : ""} jars${yielded}${gone(line)}`,
    ...(seals ? [seals] : []),
    `hands-on ${spanOf(line.handsOnMinutes)}`,
  ];
  return `  ${parts.join("; ")}`;
}
