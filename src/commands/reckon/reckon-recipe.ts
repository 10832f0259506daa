import { chooseProcess, defaultJar, refusedJar } from "../../recipe/choose-process.ts";
import { publishedYield } from "../../recipe/jar-volume.ts";
import type { Library } from "../../recipe/library.ts";
import { memoryNote, sourceLine } from "../../recipe/process-table.ts";
import type { GaugeKind, ProcessTerms, Recipe } from "../../recipe/recipe.ts";
import { jarsFromProduce } from "../../reckon/jars.ts";
import { countWords } from "../../reckon/number-words.ts";
import { quoted } from "../../reckon/quantity.ts";
import type { Reckoned } from "../../reckon/reckoned.ts";
import type { Result } from "../../reckon/result.ts";
import { fail, ok } from "../../reckon/result.ts";
import { STERILE_BELOW_MINUTES } from "../../reckon/trade-numbers.ts";
import { RECKONINGS } from "../call/calls.ts";
import type { CommandResult } from "../call/command-result.ts";
import { failed } from "../call/command-result.ts";
import {
  altitudeOfCall,
  holdsOf,
  type KitchenWish,
  readKitchenOptions,
} from "../call/kitchen-options.ts";
import { isOn, optionValue, parseOptions } from "../call/options.ts";
import { type KeptKitchen, type RecipeIo, recipeNamed } from "../recipes/recipe-io.ts";
import { reckonedJson, reckonedText } from "./reckon-output.ts";

type Call = { wish: KitchenWish; recipe: Recipe; library: Library; json: boolean };

async function readCall(
  what: "process" | "jars",
  args: string[],
  io: RecipeIo,
): Promise<{ call: Call } | { result: CommandResult }> {
  const off = (error: string) => ({ result: failed(2, `reckon ${what}: ${error}`) });
  const options = parseOptions(args, RECKONINGS[what].options);
  if (!options.ok) return off(options.error);
  const stray = options.value.words[0];
  if (stray !== undefined) return off(`${quoted(stray)} belongs to no option; write --recipe ID`);
  const wish = readKitchenOptions(options.value);
  if (!wish.ok) return off(wish.error);
  const id = optionValue(options.value, "recipe");
  if (id === undefined) return off("--recipe is missing; add it, such as --recipe pickled-beets");
  const library = await io.library(id);
  const recipe = recipeNamed(library, id);
  if (!recipe.ok) return off(recipe.error);
  const json = isOn(options.value, "json");
  return { call: { wish: wish.value, recipe: recipe.value, library, json } };
}

function printed(reckoned: Reckoned, json: boolean): CommandResult {
  const stdout = json ? reckonedJson(reckoned) : reckonedText(reckoned);
  return { code: 0, stdout, stderr: "", ...(json ? { forPrograms: true } : {}) };
}

/** The terms in the form of every result, with the fields of `reckon process`. */
function termsReckoned(terms: ProcessTerms): Reckoned & Record<string, unknown> {
  const notes = [`${terms.pack} pack, ${terms.jar}, ${terms.method}, ${terms.band}`];
  if (terms.pressurePsi !== null) notes.push(`${terms.pressurePsi} psi, ${terms.gauge} gauge`);
  if (terms.jarTested !== terms.jar) notes.push(`the time of the ${terms.jarTested}, as tested`);
  if (terms.altitudeUncertaintyFt) {
    notes.push(
      `the altitude may be off by ${terms.altitudeUncertaintyFt} ft: the higher end counts`,
    );
  }
  if (terms.sterileJars)
    notes.push(`under ${countWords(STERILE_BELOW_MINUTES, "minute")}: sterilize the empty jars`);
  if (terms.coverIn > 0) notes.push(`${terms.coverIn} in of water over the lids`);
  if (terms.note) notes.push(terms.note);
  const memory = memoryNote(terms);
  if (memory) notes.push(memory);
  if (terms.locator?.disagrees) notes.push(terms.locator.disagrees);
  return {
    value: terms.minutes,
    unit: "min",
    range: null,
    estimate: false,
    source: terms.source,
    locator: terms.locator,
    reading: terms.reading,
    notes,
    pressurePsi: terms.pressurePsi,
    band: terms.band,
    jarTested: terms.jarTested,
    method: terms.method,
    pack: terms.pack,
    jar: terms.jar,
    gauge: terms.gauge,
    altitudeFt: terms.altitudeFt,
    sterileJars: terms.sterileJars,
    coverIn: terms.coverIn,
  };
}

/** `brinebell reckon process`: the tested time, or the reason there is none (code 1). */
export async function reckonProcess(args: string[], io: RecipeIo): Promise<CommandResult> {
  const read = await readCall("process", args, io);
  if ("result" in read) return read.result;
  const { wish, recipe, library, json } = read.call;
  const kept = wish.altitudeFt === undefined ? await io.kitchen() : {};
  const { altitudeFt, altitudeUncertaintyFt } = altitudeOfCall(wish, kept);
  if (altitudeFt === undefined) {
    return failed(2, "reckon process: --altitude is missing; add it, such as --altitude 6200ft");
  }
  const choose = (gauge?: GaugeKind) => {
    const here = { altitudeFt, altitudeUncertaintyFt, gauge };
    return chooseProcess(recipe, library.tables, { ...wish, ...here });
  };
  let choice = choose(wish.gauge);
  if (!choice.ok && choice.missing) choice = choose((await io.kitchen()).gauge);
  if (choice.ok) return printed(termsReckoned(choice.terms), json);
  const mend = choice.missing ? "; add --gauge dial or --gauge weighted" : "";
  return failed(choice.missing ? 2 : 1, `reckon process: ${choice.reason}${mend}`);
}

function jarsOutcome(recipe: Recipe, wish: KitchenWish, kitchen: KeptKitchen): Result<Reckoned> {
  if (wish.forLb === undefined) return fail("--for is missing; add it, such as --for 12lb");
  const jar = wish.jar ?? defaultJar(recipe);
  const yielded = jar && publishedYield(recipe, jar);
  if (!jar || !yielded) {
    return { ok: false, error: `${recipe.title} is not kept in jars`, refused: true };
  }
  const tooLarge = refusedJar(recipe, jar);
  if (tooLarge) return { ok: false, error: tooLarge, refused: true };
  const cannerHolds = holdsOf(wish.cannerHolds ?? kitchen.cannerHolds, jar);
  if (wish.cannerHolds && cannerHolds === undefined) {
    return fail(
      `--canner-holds says nothing about ${jar} jars; add how many it holds, such as 7${jar}`,
    );
  }
  const outcome = jarsFromProduce({
    weightLb: wish.forLb,
    publishedLb: yielded.weightLb,
    publishedJars: yielded.jars,
    cannerHolds,
    source: sourceLine(recipe.source),
  });
  if (!outcome.ok || recipe.scaling !== "one-batch") return outcome;
  const pots = `made one pot of at most ${recipe.yield.weightLb} lb at a time`;
  return ok({ ...outcome.value, notes: [...outcome.value.notes, pots] });
}

/** `brinebell reckon jars`: jars and canner loads from a weight of produce. */
export async function reckonJars(args: string[], io: RecipeIo): Promise<CommandResult> {
  const read = await readCall("jars", args, io);
  if ("result" in read) return read.result;
  const { wish, recipe, json } = read.call;
  const outcome = jarsOutcome(recipe, wish, await io.kitchen());
  if (outcome.ok) return printed(outcome.value, json);
  return failed(outcome.refused ? 1 : 2, `reckon jars: ${outcome.error}`);
}
