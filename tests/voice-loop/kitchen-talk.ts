// data table
/**
 * What is spoken to the recognizer: commands with their grammar, and talk that is not a command.
 */
import type { EarsGrammar } from "../../src/ports/ears.ts";

/** Twenty-five forms of command, numbers only where they are plausible. */
export const KITCHEN_GRAMMAR: EarsGrammar = {
  command: "command",
  rules: `
<many> = beans | beets | pickles | tomatoes;
<sole> = brine | syrup | canner | kraut;
<batch> = <many> | <sole>;
<batch-is> = <many> are | <sole> is;
<one-to-twenty> = one | <two-to-twenty>;
<two-to-twenty> = two | three | four | five | six | seven | eight | nine | ten | eleven |
  twelve | thirteen | fourteen | fifteen | sixteen | seventeen | eighteen | nineteen | twenty;
<minutes> = two | three | four | five | six | seven | eight | nine | ten | eleven | twelve |
  fifteen | twenty | twenty five | thirty | forty | forty five | fifty | sixty | ninety;
<pressure> = five | six | seven | eight | nine | ten | eleven | twelve | thirteen | fourteen |
  fifteen;
<size> = pints | quarts | half pints;
<recipe> = pickled beets | dilled green beans | crushed tomatoes | sauerkraut | berry jam |
  bread and butter pickles | snap beans;
<command> = start [the] <recipe> | [the] <batch-is> (done | finished) | that's done |
  next | say [that | it] again | what now | what's next |
  how long [for the <batch>] | how much longer for the <batch> | when [do | will] the jars come out |
  what's running | it's boiling | the <batch-is> boiling | it stopped boiling |
  the boil is lost | it went off the boil | <pressure> pounds [on the gauge] |
  <two-to-twenty> <size> filled | (all | they're all) sealed |
  jar <one-to-twenty> (did not | didn't) seal |
  [set a] timer for <minutes> minutes | add <minutes> minutes | cancel the timer |
  hold the <batch> | carry on | undo that | that was <minutes> minutes ago | got it |
  hush [for <minutes> minutes] | speak up | abandon the <batch> | yes | no | help |
  take the jars out | put it in the fridge;
`,
};

export const COMMANDS: string[] = [
  "start the pickled beets",
  "start the dilled green beans",
  "start crushed tomatoes",
  "start the sauerkraut",
  "start berry jam",
  "start the bread and butter pickles",
  "the beans are done",
  "the syrup is finished",
  "that's done",
  "next",
  "say that again",
  "say it again",
  "what now",
  "what's next",
  "how long for the beets",
  "how much longer for the canner",
  "when do the jars come out",
  "what's running",
  "it's boiling",
  "the brine is boiling",
  "the canner is boiling",
  "it stopped boiling",
  "the boil is lost",
  "it went off the boil",
  "eleven pounds",
  "thirteen pounds on the gauge",
  "ten pounds on the gauge",
  "seven pints filled",
  "nine pints filled",
  "six quarts filled",
  "thirteen half pints filled",
  "all sealed",
  "they're all sealed",
  "jar four didn't seal",
  "jar eleven did not seal",
  "set a timer for twelve minutes",
  "set a timer for forty five minutes",
  "timer for ninety minutes",
  "add five minutes",
  "add ten minutes",
  "cancel the timer",
  "hold the beets",
  "hold the pickles",
  "carry on",
  "undo that",
  "that was ten minutes ago",
  "that was twenty minutes ago",
  "got it",
  "hush",
  "hush for fifteen minutes",
  "speak up",
  "abandon the kraut",
  "take the jars out",
  "put it in the fridge",
];

/** Talk in a kitchen, read aloud as chatter: none of it begins with the wake words. */
export const CHATTER: string[] = [
  "Could you hand me the big colander from under the sink?",
  "We picked these before the sun got over the ridge, so they are still cool.",
  "I think the neighbours are coming by with more cucumbers later this afternoon.",
  "Last year the hail took half of the tomatoes and we bought the rest at the market.",
  "Do not forget to leave the window open, it is getting steamy in here.",
  "The dog has been sitting under the table waiting for a bean to drop.",
  "My grandmother used to keep her crocks in the root cellar with a plate on top.",
  "Are there any clean towels left, or did they all go in the wash?",
  "This knife needs sharpening, it keeps slipping off the skins.",
  "I read somewhere that the altitude changes how long the rice takes too.",
  "Let us have lunch before we begin with the second crate.",
  "The radio says there may be thunderstorms tonight, with wind from the west.",
  "How many of those little jars did we give away at Christmas?",
  "It smells wonderful in here, like vinegar and dill and mustard seed.",
  "Someone left the gate open again and the chickens got into the lettuce.",
  "When the kettle is hot, would you make a pot of tea for everybody?",
  "Those purple streaks disappear when you cook them, which is a pity.",
  "We should write down which row these came from, they were the best so far.",
  "The water bill was higher than I expected, but then again it has been dry.",
  "Bring me the belt from the old dryer, I want to see what size it is.",
  "There is a nice breeze on the porch if you want to snap beans out there.",
  "I never liked the sweet ones, but the children eat them like candy.",
  "He said he would be back at ten past four with the truck.",
  "Put the lid on the bucket or the fruit flies will find it.",
  "We rang the school and they said the bus would be fifteen minutes late.",
  "The recipe card is so stained that I can hardly read the numbers any more.",
  "Some people boil theirs for an hour, but I would not eat those mushy things.",
  "Which of the pans has the heavy bottom, the one with the loose handle?",
  "If it does not rain by Monday we will have to water the whole hill.",
  "She sells her jam at the fair and always comes home with an empty table.",
  "Turn that music down a little, I cannot hear myself think.",
  "The seeds from this one are worth saving, look how straight it grew.",
  "Our stove takes forever, especially the burner at the back on the left.",
  "I will sweep the floor while you wipe the counter.",
  "There were nine of us at the table and only seven chairs.",
  "You can see the snow on the peaks from here until the end of June.",
  "Bright bells were ringing down in the valley when we drove past the church.",
  "The brine was too salty the first time, so we poured it out and began again.",
  "Ring the bell when supper is ready and they will all come running.",
  "That is the third pair of gloves I have lost this summer.",
];

/** Words close to the wake words, said where a command might follow. */
export const NEAR_WAKE: string[] = [
  "Brian Bell started the beets last year.",
  "Bring the bell, start the tomatoes later.",
  "Rhine belle is the name of a boat.",
  "The brine, well, it is boiling I suppose.",
  "Fine, tell them it's boiling.",
  "Mind the belt, it stopped.",
  "Brine will do for the beans.",
  "Buying bells for the goats is next.",
];
