/** What is shown, with its quantities in metric units. */
import type { Item, LabeledKey, View } from "../../ports/view.ts";
import { metricWords } from "../../reckon/metric-words.ts";

/** A view in metric units; what was said before is in its units already. */
export function metricView(view: View): View {
  const { hands, heat, rest, timers, clock, question, key, keys, next, hint } = view;
  return {
    ...view,
    hands: hands.map(metricItem),
    heat: heat.map(metricItem),
    rest: rest.map(metricItem),
    timers: timers.map(metricItem),
    keys: keys.map(metricKey),
    next: next.map(metricWords),
    key: { ...key, text: metricWords(key.text) },
    ...(hint === undefined ? {} : { hint: metricWords(hint) }),
    ...(question
      ? {
          question: {
            ...question,
            text: metricWords(question.text),
            answer: metricWords(question.answer),
          },
        }
      : {}),
    ...(clock
      ? {
          clock: {
            ...clock,
            ...(clock.say ? { say: metricWords(clock.say) } : {}),
            keys: clock.keys.map(metricKey),
          },
        }
      : {}),
  };
}

function metricItem(item: Item): Item {
  const { say, brief, amounts, keys } = item;
  return {
    ...item,
    keys: keys.map(metricKey),
    ...(say ? { say: metricWords(say) } : {}),
    ...(brief ? { brief: metricWords(brief) } : {}),
    ...(amounts ? { amounts: amounts.map(metricWords) } : {}),
  };
}

function metricKey(key: LabeledKey): LabeledKey {
  return { ...key, label: metricWords(key.label) };
}
