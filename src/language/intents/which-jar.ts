import type { MeaningOf } from "./meaning.ts";

/** What is known of a jar: its lot, when it was put up, and what became of it. */
export const whichJar: MeaningOf<"which-jar"> = {
  cost: "harmless",
  asked: true,
  when: ["always"],
  ofRecord: true,
  slots: { target: "name", jars: "numbers" },
  example: "what is in jar three of the beets",
  wordings: [
    "(which|what) [jar|one|jars|ones] (is|are|was|were) [in] <numbered> <whose>",
    `(tell me about|show me|look up|what about|what do (we|you) (know|have) (of|about|on))
    <numbered> <whose>`,
    `(where|when) (is|are|was|were|did) [<we>] [put up|make|can|canned|filled] <numbered> <whose>
    [put up|canned|filled|stored|from|now]`,
    "(what|whatever) (happened|became|has become) (to|of) <numbered> <whose>",
    "where (is|are|has|have) <numbered> <whose> (got to|gone|gone to|at|standing|hiding)",
    `(is|are|was|were) <numbered> <whose> (sealed|good|still there|opened|open|as tested|still good|
    left|eaten|gone|on the shelf)`,
    "(did|has|have) <numbered> <whose> (seal|sealed|been opened|been eaten)",
    "what [batch|load|lot|variety|day|canner load] (is|was) <numbered> <whose> [from|in|of|out of]",
    "which (batch|load|lot|variety) (is|was|did) <numbered> <whose> [come] [from|in|of|out of]",
    "how old is <numbered> <whose>",
  ],
  lists: { whose: "[(of|from|in) [<the>] {target:open}]" },
};
