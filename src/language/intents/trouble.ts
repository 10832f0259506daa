import type { Command } from "../../kitchen/command.ts";
import { TROUBLE_PATTERNS, topicIn } from "../values/topic-patterns.ts";
import type { MeaningOf } from "./meaning.ts";

/** What tells that a jar may not be as it should; the rest is only looks. */
const LOSSES: ReadonlySet<unknown> = new Set([
  "siphoned",
  "lid-wont-close",
  "buckled-lid",
  "cloudy",
]);

export const isLoss = ({ intent, slots }: Command) =>
  intent === "trouble" && "what" in slots && LOSSES.has(slots.what);

/** Something looks odd in a pot or a jar. */
export const trouble: MeaningOf<"trouble"> = {
  cost: "harmless",
  tellsOf: { about: "jars" },
  when: ["always"],
  slots: { what: "word" },
  parts: ["target"],
  example: "the brine is cloudy",
  finish: (raw, _context, _plain, said) => {
    const what = raw.what ?? topicIn(said.words, TROUBLE_PATTERNS);
    return { slots: what === undefined ? {} : { what } };
  },
  wordings: [
    {
      set: { what: "foam" },
      phrases: [
        `(there is|i have|it has|i have got|we have got) [a lot of|so much|lots of|too much|all
        this] (foam|froth|scum foam) [on top|on (it|<pot-food>)|in the pot]`,
        "[<pot-food>|it] (is foaming|foams|is frothing|is all foam|foaming) [a lot|like mad|up]",
        "(what do i do|what should i do) (about|with) (the|this|all this) (foam|froth)",
        "(do|should|must) i skim [off] the (foam|froth) [off]",
      ],
    },
    {
      set: { what: "cloudy" },
      phrases: [
        `[why (is|are)|the|my] [<jar-food>] (liquid|brine|water|juice|syrup|jar|jars|pickles|beans
        |beets|kraut) [is|are|has|have|looks|look] [gone|turned|all|a bit|kind of] (cloudy|milky|
        murky|hazy)`,
        "why (is|are|has|have) (it|they|[<the>] <jar-food>) [gone|turned] (cloudy|milky|murky)",
        `(one|two|some) of (them|the jars) (is|are|has|have|looks|look) [gone|turned] (cloudy|
        milky|murky)`,
        "(it|they) (is|are|has|have|looks|look) [all|gone|turned] (cloudy|milky|murky)",
      ],
    },
    {
      set: { what: "buckled-lid" },
      phrases: [
        `[the|a|one] (lid|lids|one lid|lid on {number:number}|one of the lids|a couple of lids)
        (is|are|has|have|looks) [all|gone] (buckled|warped|bent|crinkled|wrinkled|dented|puckered
        |creased)`,
        "[i have|there is|i have got] (a|one) (buckled|warped|bent|crinkled|puckered) lid",
        "why (did|has|is) (the|a|this) lid (buckle|buckled|warp|warped|bend|bent)",
        "(the|a|one) lid (buckled|warped|crinkled|puckered) [up] [in the canner]",
      ],
    },
    {
      set: { what: "lid-wont-close" },
      phrases: [
        `[the|this|a|one] (lid|lids|band|bands|ring|rings|top) (will not|would not|does not|do not)
        (close|go on|screw on|screw down|seat|fit|sit right|sit flat|catch|tighten|thread|go on
        straight) [right|properly|on|down]`,
        "i can not (get|close|screw|put) [on] (the|this) (lid|band|ring) [on|down|to close|shut]",
        "[the|this] (band|ring|lid) is cross threaded",
      ],
    },
    {
      set: { what: "siphoned" },
      phrases: [
        `(the|my|one of the|some of the|two of the|these|a few) (jar|jars|pints|quarts) (lost|have
        lost|has lost|leaked|siphoned|have siphoned|has siphoned) [some|half|a lot] [of] [the|it is|
        their] [liquid|juice|brine|syrup|water]`,
        `(they|it|one) [have|has] (siphoned|lost (liquid|juice|brine|syrup|half the liquid|some
        liquid|half it is liquid))`,
        `the (liquid|level|brine|syrup|juice|water) (is low|is down|dropped|has dropped|went down|
        has gone down|leaked out|came out|boiled out) in (one|some|two|a few|the) [of the] [jar|
        jars]`,
        "(one|some|two|a few) of the jars (is|are) (half empty|low on liquid|not full any more)",
        "why (is|did) (there so little|the) liquid (go|in the jars|low|left the jars)",
      ],
    },
    {
      set: { what: "floating" },
      phrases: [
        `(the|my|all the|why (are|is|do|does|did) the|why (are|is|do|does|did) my) [<jar-food>]
        (is|are|fruit|pickles|berries|slices)  [all|is|are] (floating|float|floats|floated|rising
        to the top|all at the top)`,
        "[the|my|all the|why do the|why are the] <jar-food> (floating|float|floats|floated)",
        "[the|my|all the] <jar-food> [is|are|has|have] [all] (floating|floated) [to the top|up]",
        "(it|they) (is|are) [all] floating",
        "(fruit|everything) (floats|is floating|floated) [in the jar|in the jars|to the top]",
      ],
    },
    {
      set: { what: "wont-set" },
      phrases: [
        `(what|what do i do|what happens) (if|when) [the|my] (it|jam|jelly) (does not|will not|do
        not|did not) (set|set up|gel|jell|thicken)`,
        `[the|my|this] (jam|jelly|it|preserves|{target:target}) (will not|did not|has not|does not|
        is not|never|would not|not) (set|setting|set up|gel|gelled|jell|jelled|gelling|thicken|
        setting up)`,
        "[the|my|this] (jam|jelly|it) is [still|too|all] (runny|thin|soupy|liquid|syrup|loose)",
        "why (is|did|does) [the|my] (jam|jelly|it) (runny|not set|so runny|not setting|too thin)",
      ],
    },
    {
      set: { what: "scum" },
      phrases: [
        `there is [a|some] [white|grey|gray|thin] (scum|film|skin|stuff|bloom) on (top|it|the
        (brine|kraut|sauerkraut|pickles|crock|cabbage|surface|top)) [of] [the] [kraut|brine|crock]`,
        `[the] (kraut|sauerkraut|brine|crock|pickles|it) (has|have|has got|got) [a|some] [white|
        thin] (scum|film|skin|bloom) [on|on top|on it]`,
        "(what do i do|what should i do) (about|with) the (scum|film|white stuff)",
        "(do|should|must) i skim [off] the (scum|film) [off]|(is|what is) that white (film|scum)",
      ],
    },
    {
      set: { what: "scorched" },
      phrases: [
        "[the|my] (it|jam|bottom|sauce|butter|pot|{target:target}) [has|is] (scorched|scorching)",
        "[the|my] (jam|sauce|apple butter|salsa|it) (stuck|caught|burned|burnt) (on|to) the bottom",
      ],
    },
  ],
  lists: {
    "pot-food": "[the|my|this] (jam|jelly|syrup|juice|pot|preserves|marmalade|strawberries|sugar)",
    "jar-food": `
      (fruit|peaches|pears|berries|apples|tomatoes|pickles|slices|beans|beets|cucumbers|cukes|
      strawberries|kraut|cabbage|brine|liquid|syrup)
    `,
  },
};
