import type { MeaningOf } from "./meaning.ts";

/** What is in the canner, and until when. */
export const cannerState: MeaningOf<"canner-state"> = {
  cost: "harmless",
  asked: true,
  when: ["always"],
  slots: {},
  example: "what's in the canner",
  wordings: [
    `what [all] (is|have we got|have i got|do we have|do i have) in [<the>] <a-canner> [now|right
    now]`,
    `(is|are) [<the>] <a-canner> [still] (free|empty|busy|full|taken|in use|available|occupied|
    clear|ready for the next load|in use) [now|yet|right now]`,
    "is [there] (anything|something|a load|any jars) [still] in [<the>] <a-canner> [now]",
    "(which|whose) (jars|batch|load|ones) (is|are) [that] in [<the>] <a-canner>",
    "(how full|how empty) is [<the>] <a-canner>|<a-canner> (free|empty|full)",
    "when (is|will) [<the>] <a-canner> [be] (free|empty|available) [again]",
    "(tell me|do you know|let me know) what is in [<the>] <a-canner>",
    "(who|what) is [next] for [<the>] <a-canner>|(who|what) goes in [<the>] <a-canner> next",
    "(is|are) (the jars|they|the beets|the beans|{target:target}) [still] in [<the>] <a-canner>",
    "what is (happening|going on) in [<the>] <a-canner>",
  ],
  parts: ["target"],
  lists: {
    "a-canner": "canner|pressure canner|big pot|water bath|big canner|canning pot|canners|kettle",
  },
};
