/** `brinebell recipes --for "10lb tomatoes"`: what can be made of what lies on the table. */
import { isoWithOffset } from "../../kitchen/time.ts";
import { heapsIn } from "../../language/values/heaps.ts";
import { eveningOf, fromHeaps, type HeapAnswer, type HeapWay, together } from "../../plan/heap.ts";
import { formatMinutes } from "../../recipe/duration.ts";
import { daysWords } from "../../reckon/number-words.ts";
import { quoted } from "../../reckon/quantity.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { readKitchenOptions } from "../call/kitchen-options.ts";
import { isOn, type Options, optionValue, parseOptions } from "../call/options.ts";
import type { PlanIo } from "./plan.ts";
import { CallFault, fault, grid, kitchenOf, momentOf } from "./plan-call.ts";

/** True where a call of `recipes` names no recipe and says what there is. */
export function asksOfHeap(args: readonly string[]): boolean {
  const options = parseOptions(args, CALLS.recipes.options);
  if (!options.ok || options.value.words.length > 0) return false;
  return /[a-z]{3}/i.test(heapText(options.value).replace(/\b(?:lbs?|pounds?|kilos?|oz)\b/gi, ""));
}

function heapText(options: Options): string {
  return optionValue(options, "for") ?? "";
}

/** Codes: 0 something can be made, 1 nothing can, 2 wrong usage. */
export async function heapCommand(
  args: string[],
  io: Pick<PlanIo, "library" | "kitchen" | "zone" | "nowMs">,
): Promise<CommandResult> {
  const parsed = parseOptions(args, CALLS.recipes.options);
  if (!parsed.ok) return failed(2, `recipes: ${parsed.error}`);
  const { for: _, ...rest } = Object.fromEntries(parsed.value.given);
  const wish = readKitchenOptions({ words: [], given: new Map(Object.entries(rest)) });
  if (!wish.ok) return failed(2, `recipes: ${wish.error}`);
  try {
    const text = heapText(parsed.value).replace(/(\d)([a-z])/gi, "$1 $2");
    const heaps = heapsIn(text, false);
    if (!heaps) fault(`--for: ${quoted(text)} is no food and weight; write "10lb tomatoes"`);
    const kept = await io.kitchen();
    const kitchen = kitchenOf(parsed.value, wish.value, kept);
    const startMs = grid(io.nowMs);
    const { zone } = io;
    const evening = eveningOf(startMs, zone, kept?.kitchen.quiet ?? null);
    const byMs = momentOf(parsed.value, "by", io) ?? evening;
    const library = await io.library();
    const here = { kitchen, canners: kept?.kitchen.canners ?? [], startMs, zone, byMs };
    const answers = fromHeaps(heaps, library, here);
    const all = together(answers, library, here);
    const code = answers.some(({ ways }) => ways.length > 0) ? 0 : 1;
    const iso = (ms: number) => isoWithOffset(ms, zone);
    if (isOn(parsed.value, "json")) {
      const report = {
        by: iso(byMs),
        altitudeFt: kitchen.altitudeKnown ? kitchen.altitudeFt : null,
        heaps: answers.map((answer) => heapJson(answer, iso)),
        together: all && {
          recipes: all.ways.map(({ recipe }) => recipe.id),
          fits: all.fits,
          finish: all.plan.feasible ? iso(all.plan.finishMs) : null,
        },
      };
      return { code, stdout: `${JSON.stringify(report)}\n`, stderr: "", forPrograms: true };
    }
    const lines = answers.flatMap((answer) => heapLines(answer, iso));
    if (!kitchen.altitudeKnown) {
      lines.push("The altitude is not known: add it for tested times, such as --altitude 6200ft");
    }
    if (all) {
      const names = all.ways.map(({ recipe }) => recipe.title).join(" and ");
      const does = all.fits ? `are done by ${clock(iso(all.plan.finishMs))}` : "do not fit the day";
      lines.push(`Together, ${names} ${does}`);
    }
    const stdout = `${lines.join("\n")}\n`;
    return { code, stdout, stderr: "", ...(kept ? { units: kept.kitchen.units } : {}) };
  } catch (error) {
    if (error instanceof CallFault) return failed(error.code, `recipes: ${error.message}`);
    throw error;
  }
}

function heapJson({ heap, ways, cannot }: HeapAnswer, iso: (ms: number) => string) {
  const { food, weightLb = null } = heap;
  return { food, weightLb, ways: ways.map((way) => wayJson(way, iso)), cannot };
}

function wayJson(way: HeapWay, iso: (ms: number) => string) {
  const { recipe, scaled, process } = way;
  return {
    recipe: recipe.id,
    title: recipe.title,
    method: way.method,
    weightLb: way.weightLb,
    jar: scaled.jar,
    jars: scaled.jars,
    loads: scaled.loads,
    process: process && { minutes: process.minutes, pressurePsi: process.pressurePsi },
    handsMinutes: way.handsMinutes,
    minutes: way.minutes,
    finish: iso(way.finishMs),
    fits: way.fits,
    buy: way.buy,
    keepsDays: way.keepsDays,
    readyDays: way.readyDays,
  };
}

/** A rest of days is told in days. */
function lengthWords(minutes: number): string {
  const days = minutes / (24 * 60);
  return days < 2 ? formatMinutes(minutes) : daysWords(Math.ceil(days));
}

/** The time of day of an ISO instant. */
function clock(iso: string): string {
  return iso.slice(11, 16);
}

function heapLines({ heap, ways, cannot }: HeapAnswer, iso: (ms: number) => string): string[] {
  const weight = heap.weightLb === undefined ? "" : `${heap.weightLb} lb of `;
  const lines = [`${weight}${heap.food}${ways.length === 0 ? ": nothing here was tested" : ""}`];
  for (const way of ways) {
    const { recipe, scaled, process } = way;
    const jars = scaled.jars ? `, about ${scaled.jars.expected} ${scaled.jar} jars` : "";
    const psi = process?.pressurePsi ? ` at ${process.pressurePsi} psi` : "";
    const treated = process ? `, ${process.minutes} min${psi}` : "";
    const done = way.fits ? `done by ${clock(iso(way.finishMs))}` : "does not fit the day";
    const best = way.keepsDays === null ? "" : `; best within ${daysWords(way.keepsDays)}`;
    const from = way.readyDays > 0 ? `; good from ${daysWords(way.readyDays)} on` : "";
    lines.push(
      `  ${recipe.title} (${recipe.id})${jars}; ${way.method}${treated}`,
      `    hands ${formatMinutes(way.handsMinutes)}, in all ${lengthWords(way.minutes)}, ${done}` +
        `${best}${from}`,
    );
    if (way.buy.length > 0) {
      const buy = way.buy.map(({ item, amount }) => `${amount} ${item}`);
      lines.push(`    to buy: ${buy.join("; ")}`);
    }
  }
  if (cannot.length > 0) lines.push("  Not, or not here:");
  for (const { what, why, source } of cannot) {
    lines.push(`    ${what}: ${why}${source ? ` [${source}]` : ""}`);
  }
  return lines;
}
