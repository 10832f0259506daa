import { localIso } from "../../kitchen/time.ts";
import { foodsNamed } from "../../recipe/foods/name-foods.ts";
import type { Context } from "../context.ts";
import { futureMomentsAt } from "../values/future-times.ts";
import { heapsIn } from "../values/heaps.ts";
import { textOf, utteranceOf } from "../words.ts";
import type { Finish, MeaningOf } from "./meaning.ts";

const BY = / (?:(?:and|all|to|be|done|finished|ready) )*(?=(?:by|before) )/;

/** The heaps, and when all should be done; undefined where any of the words is neither. */
const finishHeap: Finish = ({ heap, wanted }, context) => {
  const text = String(heap ?? wanted);
  const by = BY.exec(text);
  const finishBy = by ? moment(text.slice(by.index + by[0].length), context) : undefined;
  if (by && finishBy === undefined) return undefined;
  const heaps = heapsIn(by ? text.slice(0, by.index) : text, heap !== undefined);
  // What is under way is told its weight, and not begun a second time.
  if (!heaps || heaps.some(({ food }) => isRunning(food, context))) return undefined;
  return { slots: { heaps, ...(finishBy === undefined ? {} : { finishBy }) } };
};

function moment(text: string, { nowMs, zone }: Context): string | undefined {
  const said = textOf(utteranceOf(text).words).replace(/^before /, "by ");
  const { words } = utteranceOf(said);
  const whole = futureMomentsAt(words, 0, nowMs, zone).find(({ next }) => next === words.length);
  return whole && localIso(whole.value, zone);
}

function isRunning(food: string, { running }: Context): boolean {
  return running.some(({ title = "", names = [] }) => {
    return foodsNamed([title, ...names].join(", ")).some(({ name }) => name === food);
  });
}

/** Produce is there, and nothing is said of what it is to become. */
export const heap: MeaningOf<"heap"> = {
  cost: "harmless",
  when: ["idle"],
  slots: { heaps: "heaps", finishBy: "instant", offers: "offers" },
  parts: ["heap", "wanted"],
  example: "I have ten pounds of tomatoes",
  finish: finishHeap,
  wordings: [
    `(i have|i have got|we have|we have got|here are|here is|i
    picked|we picked|i have picked|we have picked|i brought in|we brought in|i am looking at|i am
    sitting on|i bought|we bought|somebody gave me|somebody gave us) {heap:text}`,
    `what (can|could|should|shall|might|do) (i|we) (make|do|put up|can|preserve|cook) [up] (with|
    from|of|out of) {wanted:text}`,
    `what (can|could) be (made|done|put up|canned|preserved) (with|from|of|out of) {wanted:text}`,
    "what to (make|do|put up|can|preserve) (with|from|of|out of) {wanted:text}",
    "(what are|what is) {wanted:text} good for",
    "what (recipes|recipe) (do you have|have you got|are there|is there) for {wanted:text}",
  ],
};
