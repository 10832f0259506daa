import { hasRole } from "../../kitchen/stages/kinds.ts";
import { formatMinutes } from "../../recipe/duration.ts";
import { memoryNote, sourceLine } from "../../recipe/process-table.ts";
import type { Stage } from "../../recipe/recipe.ts";
import type { Scaled } from "../../recipe/scale.ts";
import { countWords } from "../../reckon/number-words.ts";
import { withCommas } from "../../reckon/reckoned.ts";
import { STERILE_BELOW_MINUTES } from "../../reckon/trade-numbers.ts";
import type { WorkedOut } from "./work-out-recipe.ts";

const WIDTH = 80;

/** Text broken at words to the page's width, later lines indented. */
function wrapped(text: string, indent: string): string {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/)) {
    if (line !== "" && `${indent}${line} ${word}`.length > WIDTH) {
      lines.push(line);
      line = word;
    } else {
      line = line === "" ? word : `${line} ${word}`;
    }
  }
  return [...lines, line].map((one) => `${indent}${one}`).join("\n");
}

function ingredientLines(scaled: Scaled): string[] {
  return scaled.ingredients.map((one) => {
    const share = one.perJar ? `${one.perJar} in each ${scaled.jar ?? "jar"}` : "";
    const amount = [one.amount, share].filter((part) => part).join("; ");
    const into = one.into ? ` [${one.into}]` : "";
    return `  ${amount}  ${one.name}${into}${one.optional ? " (optional)" : ""}`;
  });
}

function stageTime(stage: Stage): string {
  const { window, typicalMinutes, heat } = stage;
  if (hasRole(stage, "treatment")) return "the tested time";
  if (window) {
    const low = window.minMinutes > 0 ? `${formatMinutes(window.minMinutes)} to ` : "up to ";
    return low + formatMinutes(window.maxMinutes);
  }
  const held = heat && heat.holdMinutes > 0 ? `, held ${formatMinutes(heat.holdMinutes)}` : "";
  return `about ${formatMinutes(typicalMinutes)}${held}`;
}

function stageLines(worked: WorkedOut, words: Words): string[] {
  return worked.recipe.stages.flatMap((stage, index) => [
    `${index + 1}. ${stage.title} (${stageTime(stage)})`,
    wrapped(words([stage.say, ...stage.cautions].join(" ")), "   "),
  ]);
}

function processLines({ process, reason }: WorkedOut, words: Words): string[] {
  if (!process) return [`Process: ${reason}`];
  const psi =
    process.pressurePsi === null ? "" : ` at ${process.pressurePsi} psi (${process.gauge})`;
  const { altitudeUncertaintyFt } = process;
  const off = altitudeUncertaintyFt ? `, give or take ${withCommas(altitudeUncertaintyFt)}` : "";
  const lines = [
    `Process: ${process.minutes} min${psi}, ${process.method}, ` +
      `${process.pack} pack, ${process.jar}`,
    `  ${process.band}; kitchen at ${withCommas(process.altitudeFt)} ft${off}`,
  ];
  if (process.jarTested !== process.jar) lines.push(`  the time tested for ${process.jarTested}`);
  if (process.sterileJars)
    lines.push(`  under ${countWords(STERILE_BELOW_MINUTES, "minute")}: sterilize the empty jars`);
  if (process.coverIn > 0) lines.push(`  ${process.coverIn} inch of water over the lids`);
  if (process.note) lines.push(`  ${process.note}`);
  const memory = memoryNote(process);
  if (memory) lines.push(wrapped(words(memory), "  "));
  if (process.locator?.disagrees) lines.push(wrapped(words(process.locator.disagrees), "  "));
  return [...lines.map(words), wrapped(`source: ${process.source}`, "  ")];
}

function yieldLines(scaled: Scaled): string[] {
  if (!scaled.jars) return [];
  const { expected, low, high } = scaled.jars;
  const loads = scaled.loads === null ? "" : `, ${scaled.loads} canner load(s)`;
  return [`Makes about ${expected} ${scaled.jar} jars (${low} to ${high})${loads}`];
}

/** Puts a text into the kitchen's units. */
type Words = (text: string) => string;

/** A recipe worked out, as a page of plain text. */
export function recipeText(worked: WorkedOut, words: Words): string {
  const { recipe, scaled } = worked;
  const weight = Math.round(scaled.weightLb * 100) / 100;
  const pots = scaled.batches > 1 ? `, ${scaled.batches} pots` : "";
  return [
    `${recipe.title} (${recipe.id})`,
    words(`For ${weight} lb of ${recipe.yield.produce}${pots}`),
    ...yieldLines(scaled),
    ...processLines(worked, words),
    ...(recipe.headspaceIn ? [words(`Headspace: ${recipe.headspaceIn} inch`)] : []),
    "",
    scaled.batches > 1 ? "Ingredients for one pot" : "Ingredients",
    ...ingredientLines(scaled).map(words),
    "",
    "To buy",
    ...scaled.buy.map((one) => words(`  ${one.amount}  ${one.item}`)),
    ...scaled.notes.map((note) => `  ${note}`),
    "",
    "Stages",
    ...stageLines(worked, words),
    "",
    wrapped(`Source: ${sourceLine(recipe.source)}`, ""),
    ...(recipe.note ? [wrapped(words(`Note: ${recipe.note}`), "")] : []),
    "",
  ].join("\n");
}
