/** Ways to plant a bug: a wrapper around one export of the program, or around one kind of fact. */
import type { Mishap } from "./mishaps.ts";

type Call = (...args: never[]) => unknown;
type Wrap = (real: Call) => Call;

export type Planted = {
  name: string;
  /** The rule of the record that it breaks. */
  rule: string;
  module: string;
  export: string;
  wrap: Wrap;
  /** The days that ought to show it. */
  mishaps?: Mishap[][];
  cards?: string[];
  /** What is talked of beside the work. */
  chatter?: string[];
  /** The cook answers, and tells nothing. */
  quiet?: true;
};

type Event = Record<string, unknown>;
type Declared = { evolve: (state: unknown, event: Event) => unknown };

/** A kind of fact that is taken in as something else, or not at all. */
export function asFact(type: string, change: (event: Event) => Event | undefined) {
  const wrap: Wrap = (real) => (asked) => {
    const declared = real(asked) as Declared;
    if ((asked as string) !== type) return declared;
    const evolve = (state: unknown, event: Event) => {
      const changed = change(event);
      return changed === undefined ? "noted" : declared.evolve(state, changed);
    };
    return { ...declared, evolve };
  };
  return { module: "src/kitchen/facts/all-facts.ts", export: "declarationOf", wrap };
}

/** Words that are heard as something else. */
export function asHeard(words: RegExp, intent: string, slots: object = {}) {
  const wrap: Wrap = (real) => (text, context) => {
    if (!words.test(text)) return real(text, context);
    const command = { intent, slots, confidence: 1, text };
    return { reading: "sure", commands: [command], candidates: [command], frame: "said" };
  };
  return { module: "src/language/hear.ts", export: "hear", wrap };
}

/** A verdict that overlooks some deviations. */
export function overlooks(code: string) {
  const wrap: Wrap = (real) => (state, batch, deviations) => {
    const left = (deviations as { code: string }[]).filter((one) => one.code !== code);
    return real(state, batch, left as never);
  };
  return { module: "src/review/verdict.ts", export: "judgeBatch", wrap };
}

/** A factor that is never asked for. */
export function neverAsks(factor: string) {
  const wrap: Wrap = (real) => (batch, asked) => {
    return !(asked as { id: string }).id.includes(factor) && real(batch, asked);
  };
  return { module: "src/kitchen/questions/factor-questions.ts", export: "applies", wrap };
}

/** A tested process that comes out otherwise. */
export function looksUp(change: (wish: Event, terms: Event) => { wish?: Event; terms?: Event }) {
  const wrap: Wrap = (real) => (recipe, tables, wish) => {
    const asked = change(wish as Event, {}).wish ?? wish;
    const choice = real(recipe, tables, asked as never) as { ok: boolean; terms: Event };
    if (!choice.ok) return choice;
    return { ...choice, terms: { ...choice.terms, ...change(wish as Event, choice.terms).terms } };
  };
  return { module: "src/recipe/choose-process.ts", export: "chooseProcess", wrap };
}

export const inKept = (name: string, wrap: Wrap) => {
  return { module: "src/kitchen/unbroken-time.ts", export: name, wrap };
};
