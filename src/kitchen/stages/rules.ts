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
  /** What starts its clock: its beginning, or a sign someone reports. */
  clock: "none" | "at-begin" | "at-sign";
  /**
   * How it ends: a person's word; a sign (with a hold after it, where the recipe has one); its
   * kept time; its window, by a word inside it; a fixed wait after a sign; a count that adds up;
   * or never, being only a date.
   */
  ends: "word" | "sign" | "kept-time" | "window" | "wait-after-sign" | "count" | "date";
  /** A time nobody watched must be spoken for, and its alarms are said in a hush. */
  watched: boolean;
  /** Whether how long it takes is this cook's and stove's own, and may be learned. */
  learned: boolean;
  /** Only words or a labeled key end it, never the bare one. */
  guarded: boolean;
  /** Its window; null where leaving it means nothing. */
  window: {
    /** The deviation of ending before it opens, and of going on after it has closed. */
    short: DeviationCode | null;
    long: DeviationCode | null;
    /** How it is told that it may end. */
    opens: "alarm" | "prompt";
    /** Told beforehand among the reminders, where it is long. */
    reminded: boolean;
  } | null;
  /** Which end of its window is the date that counts, of a kind that is only a date. */
  date: "from" | "until" | null;
  /** The condition it keeps; null where there is none to lose. */
  condition: {
    loss: (method: Method | undefined) => DeviationCode;
    /** "Did ... all that time?" */
    held: (method: Method) => string;
    /** Minutes it is kept in a load; undefined where the stage itself says. */
    minutes: (terms: ProcessTerms) => number | undefined;
    /** At most so many minutes from one reading to the next, where only readings show it. */
    readEvery: (terms: ProcessTerms) => number | undefined;
  } | null;
  /** What the planner needs. */
  plan: {
    /** Hands, where the recipe does not say that it is attended throughout. */
    hands: "start" | "none";
    /** Needs hands whatever the recipe says; or can be left lying, and holds nobody up. */
    work: "always" | "if-attended" | "can-wait";
    burner: boolean;
    /** So much the longer, the more jars there are. */
    byJars: boolean;
    /** Its end can be foreseen within a day. */
    foreseeable: boolean;
  };
  /** Which sentences tell of it; `speech/` has the words. */
  says: {
    turn: "recipe" | "how-many-jars" | "when-to-check";
    began: "boiling" | "venting" | "processing";
    lost: "boil" | "process" | "steam";
    opens: "may-go-on" | "check-seals" | "ready-to-open";
    closes: "go-on" | "check-seals" | "past-best";
    ends: "is-up" | "time-is-full" | "steam-had" | "lid-may-come-off";
  };
  /** What the key is shown to do, and what is to be said where it does nothing. */
  shows: { done: string | null; needed: string | null };
};
