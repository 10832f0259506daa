/** What the understanding may know besides the words: the moment, the place and what is running. */
export type Context = {
  /** Epoch milliseconds. */
  nowMs: number;
  /** IANA zone in which clock times and dates are meant. */
  zone: string;
  recipes: readonly { id: string; title: string; names: readonly string[] }[];
  running: readonly {
    id: string;
    recipe: string;
    variety?: string;
    title?: string;
    /** What its lids are marked with, before the number of the jar: "P" for Provider. */
    mark?: string;
    /** What its stages that are under way are called: "scrub and trim". */
    stages?: readonly string[];
  }[];
  timers: readonly { id: string; label: string }[];
  /** The question that waits for an answer, if one does. */
  question?: Question;
  /** The unit meant where a temperature is said without one; F where missing. */
  temperatureUnit?: "F" | "C";
  /** The unit meant where a gauge reading is said without one; psi where missing. */
  pressureUnit?: "psi" | "kPa";
};

/** `choices` are the names as they were offered, for a question of kind `choice`. */
export type Question = {
  kind: "yes-no" | "number" | "choice" | "altitude" | "jars" | "text";
  choices?: readonly string[];
};
