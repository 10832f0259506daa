import { isTarget, namedIn } from "../values/named-recipe.ts";
import { ACT_PATTERNS, topicIn } from "../values/topic-patterns.ts";
import { textOf, type Utterance } from "../words.ts";
import type { MeaningOf } from "./meaning.ts";

/** What is done to a pot or a canner, and so to the batch that is named. */
const OF_A_POT = /^(heat-off|open|stop)$/;

/** Of a food with nothing said of what is done, it is asked whether it can be begun. */
function toBegin(target: unknown, { words }: Utterance): "begin" | undefined {
  const named = isTarget(target) && target.meaning.recipes.length + target.meaning.batches.length;
  return named && BEGUN.test(textOf(words)) ? "begin" : undefined;
}

const BEGUN = new RegExp(
  "\\b((go|going|put|get|getting) (in|on)|put .* on|time to|do (the|my|some)|in (yet|now|next)|" +
    "(peel|scrub|wash|prep|cook)\\w*)\\b",
);

/** Whether something may be done now, and what happens if it is. */
export const mayI: MeaningOf<"may-i"> = {
  cost: "harmless",
  asked: true,
  supposing: true,
  when: ["always"],
  slots: { target: "name", what: "text", act: "word" },
  example: "can I turn the heat off now",
  finish: (raw, context, plain, said) => {
    const act = raw.act ?? topicIn(said.words, ACT_PATTERNS) ?? toBegin(raw.target, said);
    // Questions about anything not known to be done to jars are not for this program.
    if (act === undefined && raw.what !== undefined) return undefined;
    const of =
      raw.target ?? (OF_A_POT.test(String(act)) ? namedIn(said, context, plain) : undefined);
    const named = of === undefined ? {} : { target: of };
    return { slots: act === undefined ? raw : { ...raw, ...named, act } };
  },
  wordings: [
    {
      set: { act: "begin" },
      phrases: [
        `(can|may|could|should|shall) (i|we) [already] (begin|start|get going on|put on) [<the>]
        {target} (now|yet|already|at the same time|meanwhile|in the meantime)`,
        `is it [still] (okay|all right|time|too early|too soon|too late|a good time) to (begin|
        start|get going on|put on) [<the>] {target} [now|yet|already]`,
        `(is there time|have we time|do we have time|is the canner free) to (begin|start) [<the>]
        {target} [now]`,
        "when (can|may|should) (i|we) (begin|start) [<the>] {target}",
      ],
    },
    {
      set: { act: "heat-off" },
      phrases: [
        `(can|may|could|should|shall) (i|we) [now|just] (turn|shut|switch) (off [<the>] (heat|
        burner|gas|stove|canner|flame|{target})|[<the>] (heat|burner|gas|stove|canner|flame|it|
        that|this|her|{target}) (off|down)) [now|yet|already]`,
        "(can|may|could) (the|this) (heat|burner|gas|stove|flame) (go|come|be) off [now|yet]",
        "is it time to turn [<the>] (it|heat|burner|gas|stove|canner) off",
      ],
    },
    {
      set: { act: "open" },
      phrases: [
        `(can|may|could|should|shall) (i|we) [now|just] (open|lift|take off|unlock|raise) [<the>]
        (canner|lid|dome|it|her|{target}) [off|up] [now|yet|already|and look|for a look]`,
        `(can|may|could) (i|we) (take|lift|get) [<the>] (lid|dome) off [<the>] [canner] [now|yet]`,
        "(can|may) (the|her) lid (come|be) off [now|yet]",
        "(can|may|could) i [have a] (peek|look inside)",
      ],
    },
    {
      set: { act: "stop" },
      phrases: [
        `what [happens|will happen|would happen|do i do] if [the] (it|canner|boil|water|{target})
        (stops|stopped|goes off|quits|stops boiling|goes off the boil|stopped boiling|loses the
        boil) [boiling]`,
        `what [happens|will happen|would happen] if (i|we) (stop|stopped|stop early|interrupt it|
        lose the boil|lost the boil|take a break|stop it|turn it off|turn the heat off) [now|early|
        too early|for a minute|for a bit]`,
        `what [happens|will happen|would happen|do i do] if the (pressure|needle|gauge) (drops|
        falls|goes down|dropped|fell) [too low|below]`,
        "(can|may|could|should) (i|we) (stop|stop early|quit early|interrupt it|cut it short)",
      ],
    },
    `(can|may|could|should|shall|dare|must) (i|we) [now|just|safely|still] {what:text}`,
    "(do|did) (i|we) [really|still] (have to|need to|got to) {what:text}",
    `is it [still|really] (okay|all right|fine|allowed|too late|too early|too soon|time|possible)
    (to|if i|if we|for me to) {what:text}`,
    "(am i|are we) (allowed|supposed|too late|too early|in time) to {what:text}",
    `what [happens|will happen|would happen] (if|when) {what:text}`,
  ],
};
