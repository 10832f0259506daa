import { SAFETY_PATTERNS, topicIn } from "../values/topic-patterns.ts";
import type { MeaningOf } from "./meaning.ts";

/** Whether something is safe, right or dangerous. */
export const isSafe: MeaningOf<"is-safe"> = {
  cost: "harmless",
  asked: true,
  supposing: true,
  when: ["always"],
  slots: { about: "text", topic: "word" },
  parts: ["asked"],
  example: "can I get botulism from pickles",
  finish: (raw, { question }, _plain, said) => {
    // "How do I find it", said to the question that waits.
    const ofAltitude = question?.kind === "altitude";
    if (raw.asked && !ofAltitude) return undefined;
    const named = raw.asked ? "altitude" : raw.topic;
    const topic = named ?? topicIn(said.words, SAFETY_PATTERNS);
    const { about } = raw;
    return { slots: { ...(about === undefined ? {} : { about }), ...(topic ? { topic } : {}) } };
  },
  wordings: [
    `(is it|would it be|is that|is this) [still|really] (safe|dangerous|risky|unsafe) [to]
    {about:text}`,
    "(is|are|was|were) {about:text} [still|really|any] (safe|dangerous|unsafe|risky|poisonous)",
    `(is|are) {about:text} [still] (safe|good|fit|fine|okay|all right) to (eat|keep|taste|use|serve
    |put on the shelf)`,
    `(is|are) (it|this|that|they|these|those) [still|really] (safe|dangerous|poisonous|okay to eat|
    safe to eat|fit to eat|good to eat)`,
    `(can|could|will|would|do|might) (i|we|you|somebody|people|anyone|it) (get|catch|give us|have|
    give me) (botulism|food poisoning|sick|ill|poisoned) [from|off|of|by] [{about:text}]`,
    `(am|are) (i|we) going to (get botulism|get sick|die|poison somebody|poison anyone|get ill|
    poison anybody) [from|off|with] [{about:text}]`,
    `(can|will|could|would) {about:text} (make|kill|poison|hurt) (me|us|somebody|anyone|people|them
    |anybody|the kids) [sick|ill]`,
    `(i am|we are) (afraid|scared|worried|nervous|frightened) (of|about|that) {about:text}`,
    `how (do|can|will|would) (i|we) (know|tell|be sure|see) (if|whether|that|when) {about:text} (is
    |are) [still] (safe|bad|spoiled|good|off|safe to eat)`,
    `how (do|can) i (avoid|prevent|keep from getting|be sure there is no) {about:text}`,
    `are you [really|quite|very] sure [(about|of|that|it is|that it is) {about:text}]`,
    "(is|are) {number:number} minutes [really|truly] (enough|long enough|right|correct|safe)",
    "is that [really|truly] (enough time|long enough|enough minutes|the right time|safe)",
    `(will|can|could|does|might) [the|my|a|this] (canner|pressure canner|pot|jar|it|jars) (explode|
    blow up|burst) [{about:text}]`,
    `what [do i do|happens] (if|when) [the|my] (power|electricity) (goes out|goes off|is cut|fails|
    is out|cuts out) [{about:text}]`,
    `(how do i|how can i|where do i|how would i) (find|find out|get|know|look up|learn) (my|the|our)
    (altitude|elevation)|(how high|at what altitude|what altitude|what elevation) (are we|am i)`,
    `(how|where) {asked=true} (do|would|could|can|am) (i|we) [supposed to|meant to] (find|look|get|
    know|learn) (it|that|this) [out|up]`,
    {
      set: { topic: "not-sealed" },
      phrases: [
        `[(do|should|can) (i|we)] (fridge|refrigerate|eat|keep|chill|freeze|toss|chuck|discard|feed)
        (it|them|that one|those) [to us] [now|directly|straight] or (redo|reprocess|process|run|
        fridge|refrigerate|toss|chuck|eat|do|can) (it|them|that one|those) [through|over] [again|
        out]`,
        `what (is|does) (a|one|somebody|anybody|i|we) [body] [to|supposed to|meant to] do with (a|
        the|one) (jar|lid|pint|quart) that (did not|has not|never|will not) (take|took|taken|
        seal|sealed)`,
      ],
    },
    `(can|may|should|could) (i|we) [still] (eat|taste|serve|trust|keep) {about:text}`,
    `(can|may|should|could) (i|we|the dog|the kids|they) (taste|eat|try) (it|this|that|them|some)
    [{about:text}]`,
    `is there [any|a] (danger|risk) (of|with|in|from|that) {about:text}`,
    "(does|is|do) [a|the] (jar|lid|it|they) (that|which) [is|are] sealed [always] [mean] safe",
    `(it|they|the jar|the lid|the jars|that jar) [has|have] (sealed|did seal) [so|and] (it is|is it|
    they are|are they) safe`,
  ],
};
