/** A season as text. */

import { jarsInWords } from "../../review/pages/season-page.ts";
import { counted } from "../../review/report-words.ts";
import type { Season } from "../../review/season.ts";
import { varietyText } from "./compare-text.ts";

export function seasonText(season: Season): string {
  const { year, batches, verdicts, methods, deviations, lost, learned, varieties, use } = season;
  const records = Object.entries(verdicts).map(([verdict, count]) => `${count} ${verdict}`);
  const lines = [
    `The season of ${year}: ${counted(batches, "batch")} (${records.join(", ") || "none"})`,
  ];
  lines.push("", "Put up");
  for (const one of methods) {
    const pounds = one.weightLb > 0 ? `, ${one.weightLb} lb` : "";
    const cold = one.coldJars > 0 ? `, ${one.coldJars} kept cold` : "";
    lines.push(
      `  ${one.method.padEnd(16)} ${counted(one.batches, "batch")}${pounds}; on the shelf ` +
        `${jarsInWords(one.shelfJars)}${cold}; hands-on ${one.handsOnHours} h of ${one.hours} h`,
    );
  }
  lines.push("", "Departures");
  if (deviations.length === 0) lines.push("  none on record");
  for (const one of deviations) {
    lines.push(
      `  ${one.code.padEnd(20)} ${one.count} in ${counted(one.batches, "batch")}. ${one.avoiding}`,
    );
  }
  lines.push(
    "",
    `Jars lost: ${lost.failed} did not seal, ${lost.broken} broke, ${lost.discarded} thrown out, ` +
      `${lost.spoiled} spoiled when opened`,
  );
  if (varieties.length > 0) lines.push("", "Varieties");
  for (const one of varieties) lines.push(`  ${one.title},${varietyText(one).slice(1)}`);
  if (learned.length > 0) lines.push("", "Learned", ...learned.map((one) => `  ${one.sentence}`));
  if (use.length > 0) lines.push("", "Eaten, and next year");
  for (const one of use) {
    const name = [one.title, one.variety].filter(Boolean).join(", ");
    const counts = `${one.putUp} put up, ${one.opened} opened, ${one.left} left`;
    lines.push(`  ${name}: ${counts}; ${one.advice}`);
  }
  return `${lines.join("\n")}\n`;
}
