/** `brinebell review`: what actually happened, one batch, all of them, or a season. */

import { type LotOf, lotsIn } from "../../kitchen/jars/lots.ts";
import type { State } from "../../kitchen/state.ts";
import { learnedOf, learnedReport } from "../../plan/learning/learned-report.ts";
import { findRecipe } from "../../recipe/find-recipe.ts";
import { metricText } from "../../reckon/metric-words.ts";
import { batchLog, review } from "../../review/batch-log.ts";
import { compareLots } from "../../review/compare.ts";
import { batchCsv, batchesCsv, comparisonCsv } from "../../review/csv.ts";
import { listedLot } from "../../review/lot-lines.ts";
import { batchMarkdown } from "../../review/markdown.ts";
import { batchPage } from "../../review/pages/batch-page.ts";
import { comparePage } from "../../review/pages/compare-page.ts";
import { seasonPage } from "../../review/pages/season-page.ts";
import { batchesOfSeason, seasonOf } from "../../review/season.ts";
import { jarReport } from "../../review/shelf/jar-records.ts";
import { shownBatches } from "../../review/shelf/pantry.ts";
import { timelineOf } from "../../review/timeline.ts";
import type { ReadKitchen } from "../../session/reading/read-kitchen.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, type Options, optionValue, parseOptions } from "../call/options.ts";
import { comparisonText } from "./compare-text.ts";
import { jarText } from "./jar-text.ts";
import { type JarFound, jarNamed } from "./named-jar.ts";
import {
  kitchenFor,
  lotsNamed,
  printed,
  printedForPrograms,
  printedJson,
  type ReviewIo,
  seasonFrom,
  withNotices,
  writtenOutput,
} from "./review-io.ts";
import { batchText, listText } from "./review-text.ts";
import { seasonText } from "./season-text.ts";
import { timelineText } from "./timeline-text.ts";

const FORMS = ["json", "html", "csv", "markdown"];

export async function reviewCommand(args: string[], io: ReviewIo): Promise<CommandResult> {
  const parsed = parseOptions(args, CALLS.review.options);
  if (!parsed.ok) return failed(2, `review: ${parsed.error}`);
  const options = parsed.value;
  const forms = FORMS.filter((form) => isOn(options, form));
  if (forms.length > 1) {
    return failed(2, `review: one of ${forms.map((form) => `--${form}`).join(" and ")} at a time`);
  }
  const season = seasonFrom(optionValue(options, "season"));
  if (!season.ok) return failed(2, `review: ${season.message}`);
  const read = kitchenFor("review", io);
  if (!read.ok) return read.result;
  const result = reviewed(options, read.kitchen, io, season.season);
  return withNotices(result, "review", read.kitchen);
}

function reviewed(
  options: Options,
  kitchen: ReadKitchen,
  io: ReviewIo,
  season: number | undefined,
): CommandResult {
  const recipe = optionValue(options, "compare");
  const [word] = options.words;
  if (recipe !== undefined && word !== undefined) {
    const mend = "leave one of the two out";
    return failed(
      2,
      `review: ${JSON.stringify(word)} is one batch, but --compare is about many; ${mend}`,
    );
  }
  if (recipe !== undefined) return compared(options, kitchen, io, recipe, season);
  if (options.words.length > 0) {
    const jar = jarNamed(kitchen, options.words.join(" "));
    if (jar) return oneJar(options, kitchen, jar);
    const found = lotsNamed(kitchen.state, options.words.join(" "), season, kitchen.nowMs);
    if (!found.ok) return failed(2, `review: ${found.message}`);
    return oneBatch(options, kitchen, io, found.lots);
  }
  return season === undefined
    ? allBatches(options, kitchen)
    : wholeSeason(options, kitchen, io, season);
}

/** A page in the units of the kitchen. */
function inUnits({ kitchen }: State, content: string): string {
  return kitchen.units === "metric" ? metricText(content) : content;
}

function page(options: Options, io: ReviewIo, path: string, content: string): CommandResult {
  return writtenOutput("review", io, options, { path, content, kind: "page" });
}

function oneBatch(
  options: Options,
  { state, nowMs }: ReadKitchen,
  io: ReviewIo,
  named: [LotOf, ...LotOf[]],
): CommandResult {
  const [{ batch }] = named;
  const lots = named.map(({ lot }) => lot);
  const file = optionValue(options, "html");
  if (file !== undefined)
    return page(options, io, file, inUnits(state, batchPage(state, batch, nowMs, lots)));
  const learned = () => learnedOf(state, batch.recipe.id);
  if (isOn(options, "json")) {
    return printedJson({ ...review(state, nowMs, [batch]), learned: learned() });
  }
  const logs = lots.map((lot) => batchLog(state, batch, nowMs, lot));
  if (isOn(options, "csv")) return printedForPrograms(batchCsv(logs));
  if (isOn(options, "markdown")) return printed(logs.map(batchMarkdown).join("\n"));
  const times = learned().map(({ sentence }) => `  ${sentence}\n`);
  const lengths = times.length > 0 ? `\nHow long it takes here:\n${times.join("")}` : "";
  const line = timelineText(timelineOf(state, batch, nowMs, lots));
  return printed(`${logs.map(batchText).join("\n")}\n${line}${lengths}`);
}

function oneJar(options: Options, { state, nowMs }: ReadKitchen, jar: JarFound): CommandResult {
  if (!jar.ok) return failed(2, `review: ${jar.message}`);
  const other = FORMS.find((form) => form !== "json" && isOn(options, form));
  if (other) return failed(2, `review: --${other} takes a batch; name it without a jar`);
  const report = jarReport(state, jar.found, nowMs);
  if (!report) return failed(1, "review: that jar was emptied, to be filled again");
  return isOn(options, "json") ? printedJson({ jar: report }) : printed(jarText(report));
}

function allBatches(options: Options, { state, nowMs }: ReadKitchen): CommandResult {
  if (isOn(options, "html")) {
    return failed(2, "review: --html needs a batch, --season or --compare");
  }
  const all = () => review(state, nowMs);
  if (isOn(options, "json")) return printedJson(all());
  if (isOn(options, "csv")) return printedForPrograms(batchesCsv(all().batches));
  if (isOn(options, "markdown")) {
    return printed(all().batches.map(batchMarkdown).join("\n"));
  }
  const lots = Object.values(state.batches).flatMap(lotsIn);
  return printed(listText(lots.map((one) => listedLot(state, one, nowMs))));
}

function wholeSeason(
  options: Options,
  { state, nowMs }: ReadKitchen,
  io: ReviewIo,
  year: number,
): CommandResult {
  const learned = learnedReport(state).stages.map(({ title, sentence }) => {
    return { stage: title, sentence };
  });
  const season = seasonOf(state, year, nowMs, learned);
  const file = optionValue(options, "html");
  if (file !== undefined) return page(options, io, file, inUnits(state, seasonPage(season)));
  const all = () => review(state, nowMs, batchesOfSeason(state, year));
  if (isOn(options, "json")) return printedJson({ season, ...all() });
  if (isOn(options, "csv")) return printedForPrograms(batchesCsv(all().batches));
  if (isOn(options, "markdown")) return printed(all().batches.map(batchMarkdown).join("\n"));
  return printed(seasonText(season));
}

function compared(
  options: Options,
  { state, nowMs }: ReadKitchen,
  io: ReviewIo,
  said: string,
  season: number | undefined,
): CommandResult {
  if (isOn(options, "markdown")) {
    return failed(2, "review: --compare goes with --json, --html or --csv, or prints text");
  }
  const made = new Map(shownBatches(state).map(({ recipe }) => [recipe.id, recipe]));
  const recipe = findRecipe(made.values(), said);
  const comparison = recipe && compareLots(state, recipe.id, nowMs, season);
  if (!comparison) {
    const known = [...made.keys()].join(", ") || "nothing yet";
    const asked = JSON.stringify(said);
    return failed(2, `review: no batches of ${asked} to compare; there is ${known}`);
  }
  const file = optionValue(options, "html");
  if (file !== undefined) return page(options, io, file, inUnits(state, comparePage(comparison)));
  if (isOn(options, "json")) return printedJson(comparison);
  if (isOn(options, "csv")) return printedForPrograms(comparisonCsv(comparison));
  return printed(comparisonText(comparison));
}
