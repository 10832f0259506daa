/** The batch log as Markdown, for pasting. */
import type { BatchLog } from "./batch-log.ts";
import { processWords } from "./pages/batch-page.ts";
import { dateAndTime, likedWords, spanOf, tastingWords, windowOf } from "./report-words.ts";

/** Escapes what Markdown would read as its own marks, or as HTML. */
function plain(value: string | number): string {
  return String(value)
    .replace(/\s+/g, " ")
    .replace(/[\\`*_{}[\]<>|#~&!]/g, (one) => `\\${one}`);
}

function table(heads: string[], rows: (string | number)[][]): string {
  const line = (cells: (string | number)[]) => `| ${cells.map(plain).join(" | ")} |\n`;
  return `${line(heads)}|${heads.map(() => " --- |").join("")}\n${rows.map(line).join("")}\n`;
}

export function batchMarkdown(log: BatchLog): string {
  const name = [log.title, log.lot.variety].filter(Boolean).join(", ");
  const facts = [
    `Batch ${log.id}, lids marked ${log.mark}, ${log.state}`,
    log.sharesWith.length > 0 ? `Shared its pots with ${log.sharesWith.join(", ")}` : "",
    log.lot.weightLb === null ? "" : `${log.lot.weightLb} lb`,
    [log.jar, log.pack && `${log.pack} pack`, log.method].filter(Boolean).join(", "),
    log.altitudeFt === null ? "" : `${log.altitudeFt} ft`,
    log.source,
    processWords(log) ?? "",
  ].filter(Boolean);
  const stages = log.stages.map((one) => [
    one.title,
    windowOf(one.planned),
    dateAndTime(one.startedAt),
    one.startedAt === null ? one.state : spanOf(one.minutes),
    one.restarts || "",
  ]);
  const parts = [
    `# ${plain(name)}\n\n`,
    facts.map((fact) => `- ${plain(fact)}\n`).join(""),
    `\n**${plain(log.verdict)}**\n\n`,
    log.reasons.map((reason) => `- ${plain(reason)}\n`).join(""),
    "\n## Stages\n\n",
    table(["Stage", "Planned", "Began", "Took", "Restarts"], stages),
  ];
  if (log.deviations.length > 0) {
    const rows = log.deviations.map((one) => [
      one.code,
      dateAndTime(one.at),
      one.detail,
      one.disposition,
    ]);
    parts.push("## Departures\n\n", table(["What", "When", "Detail", "Done"], rows));
  }
  if (log.jars) {
    const { filled, processed, sealed, failed, setAside, broken, spoiled } = log.jars;
    const row = [filled, processed, sealed, failed, setAside, broken, spoiled];
    const heads = [
      "Filled",
      "Processed",
      "Sealed",
      "Did not seal",
      "Set aside",
      "Broken",
      "Spoiled",
    ];
    parts.push("## Jars\n\n", table(heads, [row]));
  }
  return [...parts, ...since(log)].join("");
}

/** What was opened, tasted and noted. */
function since(log: BatchLog): string[] {
  const parts: string[] = [];
  if (log.opened.length > 0) {
    const rows = log.opened.map(({ at, count, jars }) => [dateAndTime(at), count, jars.join(", ")]);
    parts.push("## Opened\n\n", table(["When", "Jars", "Which"], rows));
  }
  if (log.tastings.length + log.preferred.length > 0) {
    const scored = log.tastings.map((one) => [dateAndTime(one.at), tastingWords(one)]);
    const liked = log.preferred.map((one) => [dateAndTime(one.at), likedWords(one)]);
    parts.push("## Tastings\n\n", table(["When", "What was said"], [...scored, ...liked]));
  }
  if (log.notes.length > 0) {
    const list = log.notes.map((note) => `- ${dateAndTime(note.at)} ${plain(note.text)}\n`);
    parts.push("## Notes\n\n", ...list);
  }
  return parts;
}
