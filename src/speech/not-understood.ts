/** The answer to words that mean nothing here: what is waited for, and how to say that. */

const MOST_EXAMPLES = 2;

/**
 * @param examples sentences that mean something at this moment, the likeliest first
 * @param misses how many sentences in a row were not understood before this one
 */
export function notUnderstood(examples: readonly string[], misses: number): string {
  const some = examples.slice(0, MOST_EXAMPLES).map((one) => `"${one}"`);
  const instead = some.length > 0 ? ` Just now I take ${some.join(" or ")}.` : "";
  const key = misses > 0 ? " The space bar does what Hands says; help tells more." : "";
  const help = instead === "" && key === "" ? " Say help to hear what I understand." : "";
  return `I did not get that.${instead}${key}${help}`;
}
