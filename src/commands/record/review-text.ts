/** The batch log as plain text, for the terminal. */
import type { BatchLog, Review } from "../../review/batch-log.ts";
import type { ListedLot } from "../../review/lot-lines.ts";
import { counted, likedWords, spanOf, tastingWords } from "../../review/report-words.ts";

function clock(iso: string | null): string {
  return iso === null ? "" : `${iso.slice(0, 10)} ${iso.slice(11, 16)}`;
}

function planned({ minMinutes, maxMinutes }: { minMinutes: number; maxMinutes: number }): string {
  return minMinutes === maxMinutes
    ? spanOf(minMinutes)
    : `${spanOf(minMinutes)} to ${spanOf(maxMinutes)}`;
}

function kitchenWords({ jar, pack, method, altitudeFt }: BatchLog): string[] {
  const words = [jar, pack && `${pack} pack`, method, altitudeFt !== null && `${altitudeFt} ft`];
  return words.filter((word) => typeof word === "string").filter((word) => word !== "");
}

/** One batch, stage by stage, with its deviations, and the verdict with its reasons. */
export function batchText(batch: BatchLog): string {
  const lot = [batch.lot.variety, batch.lot.weightLb && `${batch.lot.weightLb} lb`].filter(Boolean);
  const lines = [
    `${batch.title}${lot.length > 0 ? ` (${lot.join(", ")})` : ""}  ${batch.id}  ${batch.state}`,
    `  ${batch.source}`,
    `  ${kitchenWords(batch).join(" · ")}`,
  ];
  for (const stage of batch.stages) {
    const again = stage.restarts > 0 ? `  restarted ${stage.restarts}×` : "";
    const took =
      stage.startedAt === null
        ? stage.state
        : `${spanOf(stage.minutes)} (planned ${planned(stage.planned)})`;
    const { agreed } = stage;
    const plan = agreed ? `  by the plan ${agreed.from.slice(11, 16)}` : "";
    const what = `${stage.title.padEnd(22)} ${took}${again}${plan}`;
    lines.push(`  ${clock(stage.startedAt).padEnd(16)}  ${what}`);
  }
  if (batch.process) {
    const { testedMinutes, achievedMinutes, pressurePsi, restarts } = batch.process;
    const pounds = pressurePsi === null ? "" : ` at ${pressurePsi} psi`;
    lines.push(
      `  process: tested ${testedMinutes} min${pounds}; ` +
        `unbroken ${achievedMinutes} min; restarts ${restarts}`,
    );
  }
  if (batch.jars) {
    const { filled, processed, sealed, failed, setAside, broken, spoiled } = batch.jars;
    lines.push(
      `  jars: ${filled} filled, ${processed} processed, ${sealed} sealed, ${failed} failed, ` +
        `${setAside} set aside, ${broken} broken, ${spoiled} spoiled`,
    );
  }
  if (batch.sharesWith.length > 0) {
    lines.push(`  lids marked ${batch.mark}; shared its pots with ${batch.sharesWith.join(", ")}`);
  }
  for (const { at, count, jars } of batch.opened) {
    const which = jars.length > 0 ? `: ${jars.join(", ")}` : "";
    lines.push(`  ${clock(at)}  opened ${counted(count, "jar")}${which}`);
  }
  for (const one of batch.tastings) lines.push(`  ${clock(one.at)}  ${tastingWords(one)}`);
  for (const one of batch.preferred) lines.push(`  ${clock(one.at)}  ${likedWords(one)}`);
  for (const one of batch.deviations) {
    lines.push(`  ${clock(one.at)}  ${one.code}: ${one.detail} → ${one.disposition}`);
  }
  for (const note of batch.notes) lines.push(`  ${clock(note.at)}  note: ${note.text}`);
  lines.push(`  verdict: ${batch.verdict}`, ...batch.reasons.map((reason) => `    ${reason}`));
  return `${lines.map(oneLine).join("\n")}\n`;
}

/** A note with a line end in it must not look like one of our lines. */
function oneLine(text: string): string {
  return text.replace(/[\r\n\u0085\u2028\u2029]+/g, " ");
}

/** Every batch of a review, in turn. */
export function reviewText(review: Review): string {
  if (review.batches.length === 0) return "No batches in the log.\n";
  return review.batches.map(batchText).join("\n");
}

/** One line per lot, for choosing one. */
export function listText(lots: readonly ListedLot[]): string {
  if (lots.length === 0) return "No batches in the log.\n";
  return lots
    .map(({ batch, begun, title, variety, state, sealed, verdict }) => {
      const jars = sealed === null ? "" : `  ${sealed} sealed`;
      const head = `${batch.padEnd(10)} ${begun}  ${title}${variety ? ` ${variety}` : ""}`;
      return `${oneLine(`${head}  ${state}${jars}  ${verdict}`)}\n`;
    })
    .join("");
}
