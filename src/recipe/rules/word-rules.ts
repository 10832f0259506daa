import { JAR_SIZES, type Stage } from "../recipe.ts";
import { danger, PUBLICATIONS, type Rule } from "./finding.ts";
import { sentences } from "./said-numbers.ts";

/*
 * What the stages say aloud is what the cook does: words that contradict the recipe's own fields
 * are as dangerous as a wrong field.
 */

const place = (stage: Stage) => `stages.${stage.id}`;

const DURATION = /\d[- ]*(mins?|minutes?|h|hrs?|hours?|secs?|seconds?)\b/;
/** Jars worked on by a canner, and not a canner that is warmed or a whole afternoon's process. */
const CANNED = [
  /\bprocess(ed|ing)?\b/,
  /\b(water|canner) bath\b/,
  /\b(jars?|pints?|quarts?|them|it)\b.*\b(in|into) (the|a|your) (\w+ )?canner(?! kettle)\b/,
  /\b(boil|steam)(ed|ing)? (the |your |filled )*(jars|pints|quarts)\b/,
];
/** Other processes in a kitchen: of a whole day, of a machine, and the boiling of empty jars. */
const ANOTHER = [
  /\b(the|this|whole|entire) (whole |entire )?process\b/g,
  /.*\b(blender|food processor|steriliz\w*|empty)\b.*/g,
];

function speaksOfProcess(said: string): boolean {
  const text = ANOTHER.reduce((left, other) => left.replace(other, " "), said);
  return DURATION.test(text) && CANNED.some((pattern) => pattern.test(text));
}

/** A process time written or said in a stage instead of looked up in a table. */
export const minutesInStage: Rule = ({ recipe, kinds }) =>
  recipe.stages.flatMap((stage) => {
    const tested = kinds[stage.kind].length === "tested-table";
    const said = [...sentences(stage.title), ...sentences(stage.say)];
    const timed = (text: string) => {
      return tested ? DURATION.test(text) : speaksOfProcess(text);
    };
    const written = tested && stage.writtenMinutes !== undefined;
    if (!written && !said.some(timed)) return [];
    const message =
      "a process time stands in the stage; it depends on jar and altitude: use a table";
    return [danger("minutes-in-stage", place(stage), message, PUBLICATIONS.principles)];
  });

const BELOW =
  "(?:at|below|from|under|to) the (?:\\w+ )?(?:rim|top|lid)|(?:of )?head ?(?:space|room)";
const UNDER_THE_RIM = new RegExp(`(\\d*\\.?\\d+)[- ]*inch(?:es)? (?:${BELOW})`);
const TO_THE_RIM = /\b(?:to|with) the (?:very |jar's )?(?:rim|brim|top)s?\b/;

function spokenHeadspace(tested: readonly number[], stage: Stage): string | undefined {
  const wanted = `tested is ${tested.join(" or ")} in`;
  for (const said of sentences(stage.say)) {
    const inches = UNDER_THE_RIM.exec(said)?.[1];
    if (inches !== undefined && !tested.includes(Number(inches))) {
      return `a headspace of ${Number(inches)} in is said here; ${wanted}`;
    }
    if (inches === undefined && TO_THE_RIM.test(said)) {
      return `jars are filled to the rim here; ${wanted}`;
    }
  }
  return undefined;
}

/** A headspace told to the cook that differs from the one the tables were tested with. */
export const headspaceSaid: Rule = ({ recipe, known, kinds }) =>
  recipe.stages.flatMap((stage) => {
    const tested = [...new Set(known.map(({ table }) => table.headspaceIn))];
    if (tested.length === 0 || kinds[stage.kind].role !== "filling") return [];
    const fault = spokenHeadspace(tested, stage);
    return fault ? [danger("headspace", place(stage), fault, PUBLICATIONS.principles)] : [];
  });

const JAR_NAMES = /\b(half[- ]gallon|gallon|quart|pint|half[- ]pint)s?[- ]jars?\b/g;

/** A jar size told to the cook that is larger than any the recipe was tested in. */
export const jarSaid: Rule = ({ recipe, shelf, kinds }) =>
  recipe.stages.flatMap((stage) => {
    if (!shelf || recipe.jars.length === 0 || kinds[stage.kind].role !== "filling") return [];
    const sizes: readonly string[] = [...JAR_SIZES, "gallon"];
    const largest = Math.max(...recipe.jars.map((jar) => sizes.indexOf(jar)));
    const said = [...`${stage.title} ${stage.say}`.toLowerCase().matchAll(JAR_NAMES)]
      .map(([, name]) => (name ?? "").replace(" ", "-"))
      .find((name) => sizes.indexOf(name) > largest);
    if (!said) return [];
    const message = `${said} jars are said here; the recipe is for ${recipe.jars.join(" and ")}`;
    return [danger("jar-too-large", place(stage), message, PUBLICATIONS.principles)];
  });
