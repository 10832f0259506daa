// data table
/**
 * Words that stand for much the same in a kitchen, so that what is learned of one is known of the
 * others. They tell the model what is talked about, and decide nothing.
 */
const CONCEPTS: Readonly<Record<string, string>> = {
  jar: "jar jars pint pints quart quarts glass glasses mason bottle bottles half-pint jarful",
  lid: "lid lids cap caps disc discs disk disks flat flats top tops",
  band: "band bands ring rings screwband screwbands",
  heat:
    "burner gas flame fire stove hob heat cooker element range oven furnace propane pilot " +
    "induction electricity power" +
    " knob knobs matches lighter",
  pot:
    "pot pots pan kettle canner canners cooker bath cauldron stockpot saucepan vessel tub crock " +
    "crocks bucket basin bowl",
  water: "water waterline level",
  boils:
    "boil boils boiling boiled bubble bubbles bubbling bubbled roll rolling rolls rollin " +
    "tumbling seething galloping churning simmer simmering simmers",
  calm:
    "flat still calm quiet dead stopped quit died lost gone dropped cooled settled silent" +
    " limp lazy sulking sulky feeble weak asleep drowsy blip blips lukewarm tepid barely",
  out: "out off died dead quit gone cut blew blown tripped failed lost stopped killed",
  back: "back again relit restored returned returns recovered",
  steam:
    "steam vapor steaming vent vents venting petcock valve spout whistle whistling plume hiss " +
    "hissing blowing",
  gauge: "gauge dial needle pointer meter psi pounds pressure kpa kilopascals",
  weight:
    "weight jiggler rocker regulator jiggle jiggles jiggling rocks rocking dances dancing " +
    "wobbling ticking rattling",
  falls:
    "dropped drops drop dropping falls fell fallen falling sank sunk sinking slipped slid dips " +
    "dipped down lower sagging crept low",
  seals:
    "sealed seal seals pinged ping pings popped pop pops plinked clicked click clicks sucked " +
    "dipped concave tight indented dished",
  unsealed:
    "unsealed flexes springs bounces domed dome buckled loose" +
    " bounce bounces bouncing springy spring flex flexes flexing gives give jumping jumps wobbly clicky proud raised",
  broken:
    "broke broken break cracked crack cracks shattered split burst busted smashed exploded " +
    "chipped shards pieces",
  bad:
    "mold mould moldy mouldy slimy slime rotten stink stinks stinky fizz fizzing spurted bulging " +
    "bulged bulges swollen furry fuzz rancid off foul reeks leaking leaked leaks hissed sprayed" +
    " fur hairy fluff fluffy mossy swole pushed blown spat squirted fizzed weeping oozing seeping",
  odd:
    "cloudy foam foaming foamy scum film froth murky white floating floats siphoned siphoning " +
    "sediment specks brown pink",
  hurt: "burned burnt burn burns scalded scald cut bleeding blood faint dizzy smoke hurt hurts",
  fill: "filled fill filling packed pack packing ladled stuffed jarred poured topped",
  load: "loaded load loading lowered racked rack in went",
  take: "took taken out pulled lifted lift fished removed",
  acid: "vinegar lemon lime acid citric juice acidity",
  strength: "percent strength proof five label labeled says",
  new: "new fresh unused unopened brand box sleeve cellophane packet",
  used: "old used reused last year's secondhand",
  space:
    "headspace inch inches gap space room quarter half rim brim" +
    " daylight thumb finger fingers brimful",
  food:
    "beans bean beets beet tomatoes tomato cucumbers cucumber pickles pickle kraut sauerkraut " +
    "cabbage corn carrots peaches peach pears pear apples applesauce jam jelly salsa relish beetroot " +
    "okra peppers onions berries strawberries chicken meat venison soup chili sauce",
  spice: "dill garlic mustard salt sugar honey pepper spice spices cinnamon cloves basil bay",
  prep:
    "trimmed trim chopped sliced slice peeled peel cut washed wash scrubbed pitted snapped " +
    "shelled shredded cored rinsed drained soaked salted blanched blanch scalded skinned mashed " +
    "crushed strained" +
    " swilled swill swilling rinse rinsing sluiced dripping draining colander sieve strings shucked hulled stemmed",
  cold: "fridge refrigerator icebox freezer freeze cooler chill",
  throw:
    "throw threw toss tossed chuck chucked bin binned trash garbage compost dump dumped pigs hens",
  store:
    "shelf cellar pantry cupboard basement larder garage attic closet shed" +
    " attic loft garage rack safe",
  eat: "eat ate eaten opened open opening tasted taste crunch crunchy flavor sour salty",
  person:
    "she he her him his they them mother mum mom dad daddy father sister brother aunt uncle " +
    "husband wife neighbor neighbour grandma granny nan cousin daughter son kid kids boy girl friend " +
    "somebody nobody everybody preacher doctor",
  unreal: "would could might if wish suppose imagine hope maybe perhaps should shall dream",
  past: "was were had did used yesterday last ago once year years summer before earlier then",
  denial: "not no never none nothing neither nor without hardly",
  asking: "what when where which who why how is are can may do does should shall could",
  time: "minute minutes hour hours second seconds clock oclock noon midnight morning evening night",
  clock: "timer timers alarm clock countdown reminder remind",
  stop: "stop cancel kill quit drop scrap scratch undo delete forget abandon ditch end",
  wait: "wait hold pause hang",
  tell: "tell say read repeat remind warn shout holler call ping buzz let",
  quiet: "hush quiet shush silence mute shut wheesht",
  swear:
    "damn damned dammit hell bloody goddamn crap shit blasted bastard heck god lord jesus flaming",
  kin: "dear love darling hon honey sweetheart sweetie hen pet duck lass friend mate buddy",
  amount:
    "much many cups cup tablespoon tablespoons teaspoon pounds pound kilo kilos grams ounces " +
    "pints quarts liters litres gallon" +
    " spoon spoons spoonful dollop splash pinch glug",
  safe: "safe poison botulism sick dangerous danger harm risky okay allowed bad kill die",
  away:
    "away phone door store shop church school bathroom toilet garden yard barn outside gone " +
    "asleep nap" +
    " popping nipping fetch errand mailbox gate neighbor neighbour porch stepping gardens stairs",
  seed:
    "seed seeds sprouted germinated germination saved envelope" +
    " sprout sprouts germinate seedlings",
  finished: "done finished finish ready complete completed over through",
  plus: "another more extra also too add added plus",
};

const CONCEPT_OF = new Map<string, string[]>();
for (const [concept, words] of Object.entries(CONCEPTS)) {
  for (const word of words.split(" ")) {
    CONCEPT_OF.set(word, [...(CONCEPT_OF.get(word) ?? []), concept]);
  }
}

const NONE: readonly string[] = [];

/** What a word stands for; several things, or nothing. */
export function conceptsOf(word: string): readonly string[] {
  return CONCEPT_OF.get(word) ?? NONE;
}
