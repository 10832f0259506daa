/**
 * What a kind of stage says about itself. One mechanism runs them all (`../stage-run.ts`), and no
 * other file asks for a kind by its name: what is particular to one is a property here, and a kind
 * that lacks a property does not compile.
 */
import type { KindInRecipe } from "../../recipe/kind-in-recipe.ts";
import type { ProcessTerms, StageKind } from "../../recipe/recipe.ts";
import type { DeviationCode } from "../deviation-codes.ts";

type Method = ProcessTerms["method"];

export type StageRules = KindInRecipe & {
  kind: StageKind;
  /** Where its work waits on the screen. */
  shelf: "hands" | "heat" | "rest";
  /** Where the food is: on the table, in a pot, in jars, or spread out or put away. */
  food: "table" | "pot" | "jars" | "away";
  /** What starts its clock: its beginning, or a sign someone reports. */
  clock: "none" | "at-begin" | "at-sign";
  /**
   * How it ends: on a person's word; on a sign (with a hold after it, where the recipe has one);
   * after its kept time; on a word inside its window; after a fixed wait from a sign; when a count
   * adds up; or never, being only a date.
   */
  ends: "word" | "sign" | "kept-time" | "window" | "wait-after-sign" | "count" | "date";
  /** Time nobody watched must be vouched for, and its alarms are spoken even when hushed. */
  watched: boolean;
  /** What comes due of it, where it lasts long, can wait for the morning: nothing is hot. */
  waits: boolean;
  /** Whether its length depends on this cook and this stove, and may be learned. */
  learned: boolean;
  /** Only words or a labeled key end it, never the bare one. */
  guarded: boolean;
  /** Its window; null where leaving it means nothing. */
  window: {
    /** The deviations of ending before the window opens and of going on after it has closed. */
    short: DeviationCode | null;
    long: DeviationCode | null;
    /** How it is announced that it may end. */
    opens: "alarm" | "prompt";
    /** Listed among the reminders beforehand, where it is long. */
    reminded: boolean;
  } | null;
  /** Which end of its window is the date that counts, for a kind that is only a date. */
  date: "from" | "until" | null;
  /** The condition it keeps; null where there is none to lose. */
  condition: {
    loss: (method: Method | undefined) => DeviationCode;
    /** "Did ... all that time?" */
    held: (method: Method) => string;
    /** Minutes it must be kept in a load; undefined where the stage itself says. */
    minutes: (terms: ProcessTerms) => number | undefined;
    /** The most minutes from one reading to the next, where only readings show it. */
    readEvery: (terms: ProcessTerms) => number | undefined;
  } | null;
  /** What it takes of the kitchen, and for how long hands are really busy. */
  plan: {
    /** When it needs hands, where the recipe does not say that it is attended throughout. */
    hands: "start" | "none";
    /** Needs hands whatever the recipe says; or can be left lying without holding anything up. */
    work: "always" | "if-attended" | "can-wait";
    burner: boolean;
    /** Takes longer the more jars there are. */
    byJars: boolean;
    /** Its end can be foreseen within a day. */
    foreseeable: boolean;
    /** Somebody has to be up and in the kitchen while it goes on. */
    present: boolean;
    /** How often it wants a look, where hands are busy with something else; null for never. */
    lookMinutes: number | null;
  };
  /** Which sentences announce it; `speech/` has the words. */
  says: {
    turn: "recipe" | "how-many-jars" | "when-to-check";
    lost: "boil" | "process" | "steam";
    opens: "may-go-on" | "check-seals" | "ready-to-open";
    closes: "go-on" | "check-seals" | "past-best";
    ends: "is-up" | "time-is-full" | "steam-had" | "lid-may-come-off";
  };
  /** What the key is said to do, and what to say where it does nothing. */
  shows: { done: string | null; needed: string | null };
};

// What goes for most kinds and touches no safety: a kind's file names what differs.

export const NOTHING_USUAL: StageRules["usual"] = {
  title: null,
  say: null,
  sayUnprocessed: null,
  minutes: null,
  window: null,
  attended: false,
  uses: [],
};

export const USUALLY_PLANNED: StageRules["plan"] = {
  hands: "none",
  work: "if-attended",
  burner: false,
  byJars: false,
  foreseeable: true,
  present: false,
  lookMinutes: null,
};

export const USUALLY_SAID: StageRules["says"] = {
  turn: "recipe",
  lost: "boil",
  opens: "may-go-on",
  closes: "go-on",
  ends: "is-up",
};

export const NOTHING_SHOWN: StageRules["shows"] = { done: null, needed: null };
