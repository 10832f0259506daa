import { readFileSync } from "node:fs";
import { rehearseCommand } from "../../src/commands/rehearse/rehearse.ts";
import type { Library } from "../../src/recipe/library.ts";
import type { BatchLog, Review, StageLog } from "../../src/review/batch-log.ts";
import { wholeLibrary } from "../recipe/library-files.ts";
import { contradictions } from "./own-figures.ts";

/** A line of the conversation as `rehearse --json` gives it. */
export type Said = { at: string; rank: string; text: string };
/** What became of one want, as `rehearse --json` gives it. */
export type Decided = {
  at: string;
  wanted: string;
  said: string | null;
  mergedWith: string[];
  deferredTill: string | null;
  dropped: boolean;
  why: string | null;
};
/** One event as `rehearse --json` prints it: the fields every event has, and its own. */
export type Written = { at: string; written: string; t: number; w: number; cmd: string } & {
  type: string;
  [field: string]: unknown;
};

export type Played = {
  review: Review;
  said: Said[];
  asked: { at: string; text: string }[];
  refused: { at: string; text: string; reason: string }[];
  desk: Decided[];
  journal: Written[];
  trouble?: string;
  code: number;
  /** The JSON as it was printed. */
  text: string;
};

/** Options of the command without their dashes: `{ altitude: "1000ft", gauge: "weighted" }`. */
export type PlayOptions = Record<string, string>;

let library: Library | undefined;

/** The library of the recipes folder, read once. */
export function theLibrary(): Library {
  library ??= wholeLibrary();
  return library;
}

/** Plays recipes through the rehearse command as a stranger would call it, and reads its JSON. */
export async function play(
  recipes: string | string[],
  script?: string,
  options: PlayOptions = {},
  library = theLibrary,
): Promise<Played> {
  const args = [...(Array.isArray(recipes) ? recipes : recipes.split(" ")), "--json"];
  for (const [name, value] of Object.entries(options)) args.push(`--${name}`, value);
  if (script !== undefined) args.push("--script", "-");
  const result = await rehearseCommand(args, {
    library,
    readFile: (path) => (path === "-" ? (script ?? "") : readFileSync(path, "utf8")),
    version: "0.0.0",
  });
  if (result.stdout === "") throw new Error(`code ${result.code}: ${result.stderr}`);
  const played: Played = { ...JSON.parse(result.stdout), code: result.code, text: result.stdout };
  const faults = contradictions(played.review);
  if (faults.length > 0) throw new Error(`a verdict against its own figures: ${faults.join("; ")}`);
  return played;
}

/** The only batch there is; throws where there are several or none. */
export function onlyBatch(played: Played): BatchLog {
  const [batch, more] = played.review.batches;
  if (!batch || more) throw new Error(`${played.review.batches.length} batches`);
  return batch;
}

export function stageOf(batch: BatchLog, id: string): StageLog {
  const found = batch.stages.find((stage) => stage.id === id);
  if (!found) throw new Error(`no stage ${id} in ${batch.stages.map((one) => one.id)}`);
  return found;
}

/** The codes of a batch's deviations, in order. */
export function codes(batch: BatchLog): string[] {
  return batch.deviations.map((one) => one.code);
}

/** Everything said, in one text. */
export function allSaid(played: Played): string {
  return played.said.map((one) => one.text).join("\n");
}

/** How often a text was said with a rank, where one is given. */
export function timesSaid(played: Played, text: string | RegExp, rank?: string): number {
  const fits = (said: string) => (typeof text === "string" ? said.includes(text) : text.test(said));
  return played.said.filter((one) => fits(one.text) && (!rank || one.rank === rank)).length;
}
