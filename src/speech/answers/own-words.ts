/** Which of a person's own words have been learned, a few at a time. */
import type { State } from "../../kitchen/state.ts";
import type { Answer, Known } from "./known.ts";

/** Sayings in one breath. */
const AT_ONCE = 3;

export function ownWordsAnswer({ ownWords }: State, known: Known): Answer {
  if (ownWords.length === 0) {
    return "None yet. When I ask what you mean and you say yes, I keep your words for next time.";
  }
  const each = ownWords.map(({ words, intent }, at) => {
    const example = known.exampleOf(intent) ?? intent;
    return `Number ${at + 1}, "${words}", as in "${example}".`;
  });
  const pages: string[] = [];
  for (let at = 0; at < each.length; at += AT_ONCE) {
    pages.push(each.slice(at, at + AT_ONCE).join(" "));
  }
  return { pages, paced: false };
}
