import type { MeaningOf } from "./meaning.ts";

/** Gives up a batch. */
export const abandon: MeaningOf<"abandon"> = {
  cost: "changing",
  when: ["working"],
  slots: { target: "name" },
  example: "abandon the beets",
  unasked: true,
  topical: true,
  parts: ["when"],
  wordings: [
    `[<let>] (stop|end|quit|finish) [<the>|this] ({target}|batch|it) (for good|altogether|
    entirely|completely)`,
    `[<let>] (call|cancel) (the whole thing|the batch|this batch|the whole batch|everything|
    {target}|the whole lot) off`,
    "[<let>] call (this|the|that) [whole] (batch|lot|thing) off [<why-abandon>]",
    `[<let>] (toss|abandon|scrap|dump|throw out|throw away|give up on|ditch|give up|kill|drop|
    cancel|chuck|quit|call off|stop|bin|end|trash|discard|pitch|forget|forget about|get rid of|
    write off|scratch|bail on|bail out of|do away with|pull the plug on|junk|throw in the towel
    on) (<the>|this|that|the whole|this whole|that whole|the entire|the rest of the|the rest of
    this) (batch|lot|run|recipe|whole batch|session|thing|whole thing|whole lot|project) [out|
    away|off|altogether|entirely|for good|of {target}]`,
    `[<let>] (abandon|scrap|give up on|ditch|call off|give up|write off|throw out the batch of|
    forget|pull the plug on|forget about|stop making|dump|junk|throw out|bail on|toss out|
    trash|toss|chuck|do away with|cancel|quit|end) [<the>] {target} [batch|for good|altogether|
    entirely|out|off] [<why-abandon>]`,
    "[<let>] (abandon|scrap|call off|cancel|toss) [<the>] (batch|lot|load) [of] {target}",
    "[<let>] (pitch|tip|pour|chuck|sling|heave) [out] [<the>] {target} [out|away] [<why-abandon>]",
    `(i|we) [have] [already|just] (pitched|threw|tossed|dumped|scrapped|chucked|binned|poured|
    tipped|
    abandoned|gave up on|got rid of) [out|away] [<the>] {target} [batch] [out|away]
    [{when:ago}|already] [<why-abandon>]`,
    `[<let>] (abandon|scrap|call|throw) (it|this|this one|that|that one|everything) (off|
    altogether|for good|entirely|all)`,
    `[<let>] (abandon|scrap|call off|give up on|ditch|give up) (it|this|this one|that|that one|
    everything|it all) [<why-abandon>]`,
    `[<the>] {target} (is|are) [all|just] (ruined|spoiled|burnt|burned|scorched|no good|moldy|
    mush) (ditch|scrap|abandon|dump|forget) (it|them|the batch|that batch|the lot|the whole
    batch)`,
    `(i|we) (give up|quit|am giving up|are giving up|am giving up on {target}|am abandoning
    {target}|am giving up on this batch|am giving up on it|am scrapping it|am scrapping this
    batch|am calling it off)`,
    `(i am|we are) (giving up on|abandoning|scrapping|ditching|tossing|dumping|calling off|
    quitting|junking|chucking|pitching|writing off|bailing on) [<the>|this] (batch|{target}|
    whole batch|lot|whole thing) [batch|out]`,
    `(i am|we are) (giving up on|abandoning|scrapping|ditching|calling off|quitting|bailing on|
    calling) (it|this|this one|that one|everything|the whole thing) [off]`,
    "[<let>] (throw|toss|chuck|pitch|dump) [<the>|this|this whole|the whole] batch [out|away]",
    "[<let>] (throw|toss|chuck) [<the>] {target} batch [out|away]",
    "[<the>] {target} (is|are) a (write off|loss|lost cause|goner)",
    "this batch is (ruined|a loss|a write off|no good|done for|a goner|a lost cause)",
    "(toss|throw|chuck|pitch|dump) the whole (batch|lot) [out|away]",
    "we are not (doing|making|finishing|going to finish) [<the>] {target} [after all|any more]",
  ],
  spoken: ["abandon the {target}"],
  bags: [
    {
      must: [
        `abandon|abandoning|scrap|scrapping|give up|giving up|call off|calling off|toss|throw
        out|dump|ditch|bail|bailing|write off|calling it quits|throw away|throwing out|quit|
        quitting`,
        `(this|that|the|whole|entire|my|our) [whole|entire] (batch|lot|thing|run|load|project)|
        on {target}|<the> {target}|{target} batch|it all`,
      ],
      may: `
        <let>|i|we|am|are|going|to|on|off|of|out|away|for good|altogether|and|up|with|it|the|
        this|that|all|batch|want|just|will|have|had|enough|done|is|no good|ruined|entirely|
        completely|now|quits
      `,
    },
  ],
  lists: {
    "why-abandon": `
      [because|since|as] (they are|it is|they have|it has|that is) [all|gone|just|completely]
      (ruined|spoiled|burnt|burned|scorched|no good|bad|off|moldy|mush|a mess|a loss|wrecked|
      past saving|beyond saving|not worth it|done for|gone bad|gone off|gone)
    `,
  },
};
