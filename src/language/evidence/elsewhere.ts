/** Whether a sentence speaks of something that no jar at stake has to do with. */
import { wordSet } from "../grammar/word-set.ts";
import type { Utterance } from "../words.ts";

/** Things on the stove that hold nothing at stake. */
const ELSEWHERE = wordSet(
  "kettle coffee tea pasta soup eggs toast bacon rice bath shower dinner supper lunch breakfast",
  "laundry dishwasher roast cake cookies",
);
/** Who and what is outside the kitchen, or has nothing to do with jars. */
const OUTSIDE = wordSet(
  "kids children dog dogs cat cats yard porch radio television mail mailman school washer dryer",
  "homework movie dishes washing plumber lawn",
);

/** After these comes a comparison or a place, not what is reported. */
const COMPARES = wordSet(
  "like than for was were as since before after until till while through with at from over bar",
  "except",
);
/** Before "to make his eggs" it is what is meant to be done, and not why something else was. */
const MEANS_TO = wordSet("going want wants need needs have has had got trying ready time about");

const MEALS = wordSet("supper dinner lunch breakfast");
/** "Rice vinegar", "the rice cooker": no dish. */
const OURS = wordSet("vinegar cooker");

/** Beside these a dish, a bath or a meal is only part of the story. */
const AT_STAKE = wordSet(
  "jar jars lid lids canner vinegar brine gauge needle lemon acid headspace petcock vent knob",
  "burner flame weight rack tomatoes beans beets pickles bench chunk each",
);

/** "Shoved the pan off the ring to do his eggs": a dish that is only what it was done for. */
function isPurpose(words: readonly string[], at: number): boolean {
  const to = words.lastIndexOf("to", at);
  return to > 1 && at - to <= 4 && !MEANS_TO.has(words[to - 1] ?? "");
}

/** Whether something on the stove is named that holds nothing at stake. */
export function isOnTheStove(words: readonly string[]): boolean {
  if (words.some((word) => AT_STAKE.has(word))) return false;
  return words.some((word, at) => {
    const meal = words[at - 1] === "for" && MEALS.has(word);
    const other = isBeside(words, at) || OURS.has(words[at + 1] ?? "");
    return ELSEWHERE.has(word) && (meal || !other);
  });
}

/** Whether it is only what something is like, where or when it was, or what it was done for. */
function isBeside(words: readonly string[], at: number): boolean {
  const before = words.slice(Math.max(0, at - 3), at);
  return before.some((one) => COMPARES.has(one)) || isPurpose(words, at);
}

/** Whether the words speak of something that no jar at stake has to do with. */
export function isElsewhere(said: Utterance): boolean {
  const words = said.words.map(({ word }) => word);
  return isOnTheStove(words) || words.some((word, at) => OUTSIDE.has(word) && !isBeside(words, at));
}

/** "The soup's gone off the boil", "the fire in the parlor": no pot or fire that jars hang on. */
export function isOfAnotherFire({ words }: Utterance): boolean {
  const all = words.map(({ word }) => word);
  if (all.some((word) => AT_STAKE.has(word) || word === "water")) return false;
  const subject = all.slice(0, 3).some((word, at) => ELSEWHERE.has(word) && !isBeside(all, at));
  return subject || ROOM.test(all.join(" "));
}

const ROOM = new RegExp(
  "\\b(in|of|at) (the|my|our) (parlou?r|lounge|hall|hallway|bathroom|bedroom|living room|" +
    "sitting room|den|grate|fireplace|wood stove)\\b",
);
