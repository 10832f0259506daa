/** The answer to words that mean nothing here: what is waited for, and how to say that. */

const MOST_EXAMPLES = 2;

/** What is said about the clauses of a sentence that nothing was done about. */
export function notUsed(clauses: readonly string[]): string {
  return `I did not get ${clauses.map((one) => `"${one}"`).join(" or ")}.`;
}

type Here = {
  /** Sentences that mean something at this moment, the likeliest first. */
  examples: readonly string[];
  /** How the question that waits is answered. */
  answer: string | undefined;
  /** How many sentences in a row were not understood before this one. */
  misses: number;
};

export function notUnderstood({ examples, answer, misses }: Here): string {
  const some = examples.slice(0, MOST_EXAMPLES).map((one) => `"${one}"`);
  const taken = some.length > 0 ? [`Just now I take ${some.join(" or ")}.`] : [];
  const asked = answer === undefined ? taken : [`To what I asked, ${answer}.`];
  const key = misses > 0 ? ["The space bar does what Hands says; help tells more."] : [];
  const help =
    asked.length + key.length > 0
      ? []
      : ['Say what you are putting up, "start the dilly beans", or help.'];
  return ["I did not get that.", ...asked, ...key, ...help].join(" ");
}
