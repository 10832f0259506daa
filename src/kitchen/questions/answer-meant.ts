/** What is done about a deviation or a failed jar. */
export type DispositionWord =
  | "carried-on"
  | "restarted"
  | "reprocess"
  | "refrigerate"
  | "freeze"
  | "discard"
  | "undecided";

/** What an answer says, depending on the question it was given to. */
export type AnswerMeant = {
  /** Which kind of gauge a canner has. */
  gauge?: "dial" | "weighted";
  /** How many pounds a dial reads high, below zero where it reads low. */
  readsHighPsi?: number;
  /** What becomes of the jars. */
  what?: DispositionWord;
  /** Every jar sealed. */
  all?: true;
  /** Of two choices: whether the one taken says that all is as it should be. */
  held?: "yes" | "no";
  /** The units to show things in. */
  units?: "us" | "metric";
  /** It is left for later. */
  later?: true;
  /** How many jars of a size a canner holds. */
  halfPints?: number;
  pints?: number;
  quarts?: number;
  /** The number is only approximate. */
  about?: true;
  /** The gauge was never tested. */
  untested?: true;
  /** Only a guess, or "I don't know": it answers the question and leaves the doubt. */
  unsure?: true;
};
