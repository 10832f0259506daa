// data table
/**
 * What cooks say of what went wrong, in three strengths: a plain clause (`loss`), a likely reading
 * (`suspicion`), and words that only hint (`trace`). Composed for these tests; `usual` ones are
 * phrases that the program was taught, all others stand in no phrase list.
 */
export type Strength = "loss" | "suspicion" | "trace";

/** What a sentence is about. */
export type Topic =
  | "boil"
  | "cover"
  | "vinegar"
  | "acid"
  | "food"
  | "stood"
  | "cold"
  | "lids"
  | "headspace"
  | "sterile"
  | "pressure"
  | "vent"
  | "gauge"
  | "altitude"
  | "early"
  | "forced";

type Said = Partial<Record<Strength, readonly string[]>>;

/** Phrases that are usual for it. */
export const USUAL: Partial<Record<Topic, readonly string[]>> = {
  boil: ["it stopped boiling", "it lost its boil", "the boil stopped", "it's not boiling anymore"],
  cover: ["the lids are not covered", "the water is low", "the lids aren't covered"],
  vinegar: ["the vinegar is not five percent", "the vinegar is only four percent"],
  acid: ["not every jar got its acid", "I forgot the acid"],
  food: ["I added {food}", "there's {food} in it"],
  stood: ["the jars have been waiting for three hours"],
  cold: ["it did not go into the jars hot"],
  lids: ["the lids are not new", "the lids are used"],
  headspace: ["the headspace is wrong", "the headspace was not checked"],
  sterile: ["the jars are not sterile"],
  pressure: ["the pressure dropped", "the pressure is low", "{psi} pounds", "it's at {psi} pounds"],
  vent: ["I did not vent it"],
  gauge: ["the gauge was not tested", "the dial gauge reads {high} pounds high"],
  altitude: ["we're at {feet} feet"],
  early: ["I took the jars out early"],
  forced: ["I opened the canner under pressure"],
};

export const OWN: Record<Topic, Said> = {
  boil: {
    loss: [
      "the flame has gone out",
      "the burner quit on me",
      "the gas ran out",
      "the pilot died and took the burner with it",
      "it has gone off the boil",
      "the water's gone flat, no bubbles at all",
      "there's no boil left in it",
      "I bumped the knob and it shut off",
      "my boy switched the stove off",
      "the breaker tripped and the stove is dead",
      "it's down to a simmer",
      "only a simmer now",
      "the pot went still",
      "somebody turned the ring off",
      "the propane tank is empty",
      "I turned the wrong burner off",
      "power's out, the stove is cold",
      "the boil died on us",
      "we lost the boil a few minutes back",
      "the canner is sitting there with no fire under it",
    ],
    suspicion: [
      "it's not really rolling",
      "I think it may have stopped",
      "it looks kind of lazy now",
      "barely a bubble coming up",
      "the bubbles got small",
      "it seems quieter than it was",
      "I don't see much steam",
      "the flame looks awful low",
      "it might have dropped under a boil",
      "something's up with the burner",
      "it's more of a shiver than a boil",
      "the heat seems to have sagged",
      "I'm not sure it kept going",
      "looks like it slowed right down",
      "the stove sputtered for a while",
    ],
    trace: [
      "it went awful quiet over there",
      "I can hear the kitchen clock again",
      "the window's not fogged any more",
      "funny, the lid stopped rattling",
      "the kitchen cooled off nicely",
      "that wind keeps getting at the stove",
      "the little blue crown isn't there",
      "the lights flickered a minute ago",
      "the tank felt light this morning",
      "had to fiddle with the knob again",
    ],
  },
  cover: {
    loss: [
      "the lids are sticking out of the water",
      "the water's below the lids",
      "the tops of the jars are dry",
      "it boiled down past the lids",
      "the jars are poking out",
      "I let the water get too low",
      "half of it has boiled away and the lids show",
      "there's no water over the lids",
      "the water only comes to the necks",
      "it's boiled down to the shoulders of the jars",
    ],
    suspicion: [
      "the water looks low",
      "I can nearly see the lids",
      "it's lost a good bit of water",
      "the water's gone down a lot",
      "it might need more water in there",
      "I'm not sure there's an inch over them",
      "a lid may be peeking out",
    ],
    trace: [
      "it's spitting all over the stove",
      "the stove top is swimming",
      "it boiled over a while back",
      "I hear the jars clinking",
      "the kettle is empty now",
      "that pot drinks water",
    ],
  },
  vinegar: {
    loss: [
      "the vinegar was only four percent",
      "the bottle says four percent",
      "this vinegar is 4 percent acidity",
      "it's homemade vinegar",
      "I made the vinegar myself",
      "I watered the vinegar down",
      "I ran short of vinegar and used water",
      "I used the four percent stuff",
      "we cut the vinegar by half",
      "the label says forty grain",
    ],
    suspicion: [
      "I don't think this is five percent",
      "the label looks like a four",
      "it's some vinegar from the farm stand",
      "the vinegar has no label",
      "it might be the weak kind of vinegar",
    ],
    trace: [
      "it tastes milder than usual",
      "the bottle is a different color",
      "my neighbor gave me the vinegar",
      "this brine hardly stings the nose",
    ],
  },
  acid: {
    loss: [
      "I forgot the lemon juice",
      "no lemon went into these",
      "two jars got no lemon juice",
      "I left out the citric acid",
      "the lemon juice ran out after five jars",
      "I squeezed fresh lemons instead",
    ],
    suspicion: [
      "I can't remember if I put the lemon in the last ones",
      "the lemon bottle looks as full as before",
      "I might have skipped a jar with the lemon",
    ],
    trace: ["the lemon juice is still in the fridge", "there's lemon left over, funny"],
  },
  food: {
    loss: [
      "it's {food} really",
      "I'm using {food} instead",
      "these are {food}, not {produce}",
      "half of it is {food}",
      "I threw in some {food} too",
      "{food} went in with it",
      "I ran out of {produce} so it's mostly {food}",
    ],
    suspicion: [
      "I've a bowl of {food} to get rid of in this",
      "there may be some {food} in there",
      "I might as well use up the {food}",
    ],
    trace: ["the {food} smells good in this", "the {food} made it thick"],
  },
  stood: {
    loss: [
      "the filled jars sat on the counter for three hours",
      "they stood all afternoon before I got to the canner",
      "I filled them this morning and only now have time",
      "the jars waited four hours",
      "I left the filled jars standing half the day",
      "they've been sitting since breakfast",
    ],
    suspicion: [
      "the jars have been sitting a good while",
      "they've cooled down on the counter",
      "it took me forever to get them in the canner",
      "the jars are stone cold now",
    ],
    trace: [
      "what a long phone call that was",
      "the little one had to go to the doctor",
      "the jars don't burn my fingers any more",
      "I lost track of the afternoon",
    ],
  },
  cold: {
    loss: [
      "the food had gone cold before I filled",
      "I filled from a cold pot",
      "the pot stood two hours before I got to the jars",
      "it was lukewarm when I packed it",
    ],
    suspicion: ["the pot had cooled some by the time I filled", "it wasn't all that hot going in"],
    trace: ["at least it didn't burn me this time"],
  },
  lids: {
    loss: [
      "those were last year's lids",
      "I reused the lids",
      "the lids have been used before",
      "I only had used lids",
      "two of the lids were old ones off opened jars",
    ],
    suspicion: [
      "the lids might be old ones",
      "some lids had dents from last time",
      "I'm not sure that box of lids was new",
    ],
    trace: ["these lids came from the drawer", "one lid has pickle written on it already"],
  },
  headspace: {
    loss: [
      "I filled them to the brim",
      "there's no headspace in these",
      "I filled right up to the rim",
      "I left only an eighth of an inch",
      "I forgot about the headspace",
      "they're overfull",
    ],
    suspicion: ["they look a little full", "I may have overfilled a few"],
    trace: ["it squeezed out when I set the lid", "I had to wipe the rims twice"],
  },
  sterile: {
    loss: ["I never boiled the jars", "the jars are just washed, not sterile"],
    suspicion: ["I'm not sure the jars were boiled long enough"],
    trace: ["the jars came straight from the cupboard"],
  },
  pressure: {
    loss: [
      "the pressure fell to eight",
      "the needle dropped under the mark",
      "it went down to ten pounds",
      "the weight quit rocking",
      "the dial is under the mark",
      "I let the pressure get away",
      "the flame went out under the canner",
      "it fell below for a few minutes",
      "the burner died and the gauge is sinking",
      "I turned it down too far and it dropped",
    ],
    suspicion: [
      "the needle's wobbling low",
      "the gauge looks lower than before",
      "the hissing has eased off",
      "I think it dipped",
      "it may have slipped a pound or two",
    ],
    trace: [
      "the canner's gone quiet",
      "I had to play with the flame",
      "steam's coming out around the handle",
      "the needle is dancing",
    ],
  },
  vent: {
    loss: [
      "I forgot to vent it",
      "I put the weight on straight away",
      "it only vented three minutes",
      "I closed the petcock early",
    ],
    suspicion: ["I may have put the weight on too soon"],
    trace: ["the weight was on before the coffee was done"],
  },
  gauge: {
    loss: ["the dial is off by {high} pounds", "the gauge shows {high} pounds too much"],
    suspicion: ["I don't trust that gauge", "the needle rests at {high} when it's cold"],
    trace: ["I dropped that lid last winter"],
  },
  altitude: {
    loss: ["this is the cabin, it's {feet} feet here", "we moved up to {feet} feet last month"],
    suspicion: ["we're a lot higher up than the old house", "we're at the cabin this week"],
    trace: ["water boils so quick up here", "the air is thin up here"],
  },
  early: {
    loss: [
      "I turned it off five minutes early",
      "I shut the heat off before the time",
      "the jars came out early",
      "I couldn't wait and pulled them early",
    ],
    suspicion: ["I think I pulled them a bit soon"],
    trace: ["I couldn't wait any longer"],
  },
  forced: {
    loss: [
      "I ran cold water over the canner",
      "I opened it while there was still pressure",
      "I cooled it in the sink",
      "I lifted the weight to let the steam out",
    ],
    suspicion: ["I hurried the cooling along a bit"],
    trace: ["the sink is full of hot water now"],
  },
};

/** Ordinary ways to report what was done; the first is the one that is fallen back on. */
export const REPORTS = {
  begin: ["start the {name}", "let's start the {name}", "we're making {name} today"],
  done: ["{title} done", "{title} is done"],
  pot: ["the {pot} is boiling", "the {pot} is at a boil", "the {pot} is boiling now"],
  startPot: ["start the {pot}"],
  canner: ["the canner's ready", "the canner is hot", "the canner's hot enough"],
  filled: ["{n} {jar}s filled", "I filled {n} {jar}s", "that's {n} {jar}s filled"],
  loaded: ["the jars are in", "all the jars are in the canner", "they're all in the canner"],
  boils: [
    "it's boiling and the lids are covered",
    "it's at a full boil and the lids are covered",
    "a full rolling boil, and the lids are covered",
  ],
  again: [
    "it's boiling again and the lids are covered",
    "it's boiling again, the lids are covered",
    "it's back at a full boil and the lids are covered",
  ],
  topped: ["the lids are covered again", "I topped it up, the lids are covered"],
  venting: ["it's venting steadily", "it's venting", "steam is pouring out of the vent"],
  pressure: ["{psi} pounds", "it's at {psi} pounds", "we're at {psi} pounds"],
  heatOff: ["heat's off", "the heat is off", "I turned the heat off"],
  zero: ["the pressure is zero", "the pressure is down to zero", "it's at zero pounds"],
  out: ["the jars are out", "all the jars are out", "the jars are out of the canner"],
  cooled: ["cooled"],
  sealed: ["all sealed", "they all sealed", "all of them sealed"],
  away: ["I was on the phone for twenty minutes", "I was out in the garden for a while"],
} as const;

/** Yes and no as they are said. */
export const YES: readonly string[] = ["yes", "yes it was", "yep", "yeah", "yes they are"];
export const NO: readonly string[] = ["no", "nope", "no, it wasn't", "no, not all of them"];
/** Neither: it leaves open what was asked. */
export const HEDGED: readonly string[] = ["I think so", "I don't know", "probably"];

/** Talk of a kitchen in which nothing is wrong. */
export const CHATTER: readonly string[] = [
  "what now",
  "how long have we got",
  "can you turn the radio down, honey",
  "the kids are out in the yard",
  "the bacon is spitting all over",
  "the tea kettle is boiling",
  "it smells wonderful in here",
  "my sister says she lost her boil last week",
  "hot in here today",
  "the dog wants out",
  "is the water supposed to look like that",
  "I wonder if the rain holds off",
  "last year the flame went out on me twice",
  "what if it stops boiling",
  "the dishwasher is done",
  "grandma always used paraffin",
  "could you hand me the tongs",
  "the potatoes for supper are simmering",
];
