// data table
/**
 * What a question or a report is about, by telling words: the first line that fits. Words are as
 * `utteranceOf` leaves them, with contractions expanded, separated by single spaces.
 */
import type { Act, Emergency, SafetyTopic, Shortage, Trouble } from "../../kitchen/topics.ts";
import { textOf, type Word } from "../words.ts";

type Topics<T extends string> = readonly (readonly [T, RegExp])[];

/** The first topic whose words were said; undefined where none was. */
export function topicIn<T extends string>(
  words: readonly Word[],
  topics: Topics<T>,
): T | undefined {
  const all = textOf(words);
  return topics.find(([, said]) => said.test(all))?.[0];
}

export const EMERGENCY_PATTERNS: Topics<Emergency> = [
  [
    "flame-out",
    /\b(relight|pilot|(burner|flame) (has |is |just )?(gone|went|goes|go) out|blew out the flame)\b/,
  ],
  ["gas", /\b(gas|propane|rotten eggs?)\b/],
  ["plug", /\b(plug|overpressure|over pressure|safety valve|canner (blew|burst|exploded))\b/],
  [
    "ill",
    /\b(double vision|seeing double|see double|blurry|blurred|swallow|swallowing|slurred|droopy|drooping|poison|poisoned|poisoning|throwing up|vomit|vomiting|ill|queasy|breathe|sick|tongue)\b|\bate\b|\b(words?|speech|talk\w*)( \w+){0,4} (funny|slurred|wrong|drunk|thick)|hold (my|his|her) head|eyelids|mouth .*\bdry\b|\b(lick|tast|swallow)\w*\b.*\b(swollen|bulg\w+|bad|off|spoiled)\b/,
  ],
  [
    "faint",
    /\b(faint|fainted|fainting|passed out|dizzy|collapsed|unconscious|woozy|light headed|lightheaded|fell down|blacked out|not answering)\b/,
  ],
  ["eye", /\b(my|his|her|the|in|an) eyes?\b/],
  ["fire", /\b(fire|cloth caught|flames|burning up|ablaze|alight|caught light)\b/],
  ["smoke", /\b(smoke|smoking|smoky)\b/],
  ["chile", /\b(chile|chili|chiles|chilies|pepper|peppers|jalapeno|jalapenos)\b/],
  [
    "scald",
    /\b(scald|scalded|scalding|steam|boiling (water|brine|syrup|jam))\b|\b(jam|brine|syrup|water|fat|it)\b.*\b(up|down|over|on) (my|me|his|him|her)\b/,
  ],
  ["burn", /\b(burn|burning|burned|burnt|burns|stings|hot hot|blister|blistered|blistering)\b/],
  ["cut", /\b(cut|bleeding|bleeds|blood|gash|gashed|sliced|thumb|deep|stitches|stabbed)\b/],
];

export const TROUBLE_PATTERNS: Topics<Trouble> = [
  [
    "scum",
    /\b(scum|film|bloom|kahm|pellicle|yeasty|white stuff|(pink|white) (patch|spots?)|(sort of|white|a) skin|skin on)\b/,
  ],
  [
    "wont-set",
    /\b(not (set|setting|gel|gelled|gelling|jell|jelled|jelling|jamming|thick|thicken|come together)|never set|runny|(stays?|still) (thin|liquid|runny|syrup)|syrupy|will not (set|gel|jell|thicken)|loose jam|soupy|(run|runs|ran|running) (right )?(off|like))\b/,
  ],
  [
    "scorched",
    /\b(scorched|scorching|(stuck|catching|caught|burned|burnt|sticking) (on|to) the (bottom|pot|pan|arse)|smells? (scorched|burned|burnt))\b/,
  ],
  [
    "lid-wont-close",
    /\b((lid|lids|band|bands|ring|rings|top) (is |will |would |does |do )*(not) (close|go on|go down|screw|seat|fit|fits|sit|catch|tighten|thread|lock)|cross threaded|thread is|can not (get|close|screw) .*(lid|band|ring)|(lid|band|ring) .*(sideways|crooked|skew)|nick(ed)? .*(rim|lip)|(rim|lip) .*nick(ed)?)\b/,
  ],
  [
    "buckled-lid",
    /\b(buckled|buckling|bent|warped|blister|blistered|dimpled|dull|dent|dented|crinkled|wrinkled|creased|puckered)\b/,
  ],
  [
    "siphoned",
    /\b(siphon|siphoned|siphoning|(liquid|juice|syrup|brine|broth) loss|lost (some |half |a lot |of |it is |their |the )*(liquid|juice|syrup|brine|water)|(half|some|most|all) (of )?(the |it is |their )?(liquid|juice|syrup|brine|broth|water) (is |has |have )*(gone|away|out|left)|(liquid|juice|syrup|brine|level|water) (is |has |have |went |gone )*(low|down|dropped|leaked|boiled|come out|came out|sunk|below)|low on liquid|(no|hardly any|little) (liquid|juice|brine) (left|hardly|in)|half empty|leaked some|below the (beans|fruit|food|beets|pickles)|not covered by (the )?(liquid|brine|syrup)|sucked out)\b/,
  ],
  [
    "floating",
    /\b(float|floats|floating|floated|(rising|risen|rose|gone|come|all) (all )?(up )?(to|at) the top)\b/,
  ],
  ["cloudy", /\b(cloudy|milky|murky|hazy|cloud|turbid|turbidity|like milk|gone (all )?white)\b/],
  ["foam", /\b(foam|foams|foaming|foamy|froth|frothy|frothing)\b/],
];

export const SAFETY_PATTERNS: Topics<SafetyTopic> = [
  [
    "freezer-power-cut",
    /\b(power|electricity).*(freezer|fridge|refrigerator)|(freezer|fridge|refrigerator).*(power|electricity)\b/,
  ],
  [
    "power-cut",
    /\b(power|electricity|outage|lights) (cut|is out|went out|goes out|go out|went|fails|failed|goes)|power outage|blackout\b/,
  ],
  ["garlic-in-oil", /\b(in|under) oil\b/],
  ["blue-garlic", /\b(blue|green|turquoise) garlic|garlic .*(blue|green|turquoise)\b/],
  [
    "bulged",
    /\b(bulged|bulging|bulge|bulges|swollen|swelled|domed|puffed|hissed|spurt|spurted|fizz|fizzed|fizzing|fizzy|bubbly|off smell|smells? (off|bad|funny|odd|sour|rotten|wrong)|stinks?|slimy)\b/,
  ],
  ["mold", /\b(mold|moldy|mould|mouldy|fuzz|fuzzy)\b/],
  [
    "not-sealed",
    /\b((did|do|does|has|have|is|are) not (seal|sealed)|unsealed|never sealed|not sealed|failed to seal|lid (popped|came) (up|off))\b/,
  ],
  [
    "seal-alone",
    /\b(it|they|lid|lids|jar|jars) (is |are |all |has |have )*(sealed|seal)|a seal|the seal|pinged|popped down\b/,
  ],
  [
    "explosion",
    /\b(explode|explodes|exploding|explosion|blow up|blowing up|blows up|burst|hurt me)\b/,
  ],
  [
    "boil-before-eating",
    /\bboil.* (before|ten minutes|10 minutes).*(eat|eating|serve|taste)|before (eating|we eat|i eat|serving)\b/,
  ],
  [
    "process-time",
    /\b(are you sure|sure (it is|that is|about)|really (only )?\w+ minutes|enough time|long enough|\w+ minutes (enough|right|really|safe|too short)|(time|minutes) (is |are )?(right|enough|correct)|is that (right|correct|the right time))\b/,
  ],
  [
    "touched",
    /\b((on|got) (my|his|her|the|our) (hands?|skin|fingers|counter|sleeve|apron|shirt)|touched|spilled|splashed)\b/,
  ],
  [
    "tasting",
    /\b(taste|tasted|tasting|lick|licked|sniff|smell it|a bite|a spoonful|try (a|some|one))\b/,
  ],
  ["animals", /\b(dog|dogs|cat|cats|hog|hogs|pig|pigs|chickens|hens|animals|pets|compost)\b/],
  [
    "jars-waiting",
    /\b((stood|stand|standing|sat|sit|sitting|left|wait|waiting|waited).*(hour|hours|overnight|night|counter|out|while|long)|overnight)\b/,
  ],
  [
    "old-jar",
    /\b((year|years|month|months) old|last year|year before|old (jar|jars|beans|tomatoes|jam|peaches)|from (19|20)\d\d|how long do(es)? .*(keep|last)|past (its|their) (best|date)|expired)\b/,
  ],
  ["old-lids", /\b(old|used|same|last year's) (lid|lids|flats)|(reuse|use).*(lid|lids)\b/],
  ["rust", /\b(rust|rusty|rusted)\b/],
  [
    "old-recipe",
    /\b((grandma|grandmother|mother|mom|mum|granny|nana|aunt|family|old|internet|online|web|video|neighbor).*(recipe|way|book|time|method)|(recipe|book) (from|off|of) (my|the|an))\b/,
  ],
  ["oven", /\b(oven|microwave|dishwasher|instant|air fryer|slow cooker)\b/],
  [
    "open-kettle",
    /\b(open kettle|upside down|turn(ed|ing)? (them|the jars|it) over|invert|without (processing|a water bath|canning)|not process)\b/,
  ],
  [
    "broken-jar",
    /\b((broke|broken|burst|cracked|shattered|smashed).*(jar|jars|canner|glass)|(jar|glass).*(broke|broken|burst|shattered|smashed)|broken glass|shards?)\b/,
  ],
  [
    "overfull",
    /\b(overfilled|overfull|too full|brimful|(right )?to the (very )?(top|brim|rim|lip))\b/,
  ],
  [
    "looks",
    /\b(tell|know|see|spot)\b.*\b(by look\w*|look at|bad|spoiled|gone off|off)\b|just by looking\b/,
  ],
  [
    "tested",
    /\b(who (says|tested|said|made|wrote)|says who|where .*(numbers|figures|times)|tested)\b/,
  ],
  ["chipped", /\b(chip|chips|chipped|nick|nicked|crack|cracked|scratched)\b/],
  ["altitude", /\b(altitude|elevation|how high|mountains?|feet up|up here)\b/],
  [
    "pressure-canner",
    /\b(water bath|boiling water|in a (pot|kettle)|without (a )?pressure|pressure can|need a pressure)\b/,
  ],
  [
    "home-vinegar",
    /\b((home ?made|home-made|own|homemade|weaker|weak) vinegar|vinegar (i|we) made|vinegar.*(four|4|weak) percent|four percent)\b/,
  ],
  [
    "botulism",
    /\b(botulism|botulinum|poison|poisoned|poisoning|make (us|me|somebody|anyone|them|people) (sick|ill)|(get|getting) (sick|ill)|die|kill|deadly|germs|bacteria|toxin|trust (it|this|these|you))\b/,
  ],
  ...TROUBLE_PATTERNS,
];

export const SHORTAGE_PATTERNS: Topics<Shortage> = [
  ["lemon-juice", /\b(lemon|lemons|lime juice)\b/],
  ["citric-acid", /\bcitric\b/],
  ["vinegar", /\bvinegar\b/],
  ["canning-salt", /\bsalt\b/],
  ["sugar", /\bsugar\b/],
  ["pectin", /\bpectin\b/],
  ["rack", /\b(rack|trivet)\b/],
  ["lids", /\b(lid|lids|flats)\b/],
  ["bands", /\b(band|bands|ring|rings)\b/],
  ["jars", /\b(jar|jars|pints|quarts|half pints)\b/],
  ["ice", /\bice\b/],
  ["dill", /\bdill\b/],
  ["garlic", /\bgarlic\b/],
  [
    "spice",
    /\b(mustard|celery seed|turmeric|cloves|cinnamon|allspice|pepper|peppercorns|spice|spices|pickling spice|horseradish)\b/,
  ],
  ["onion", /\b(onion|onions)\b/],
  ["brine", /\b(brine|pickling liquid)\b/],
  ["syrup", /\bsyrup\b/],
  ["pressure-canner", /\bpressure (canner|cooker|pot)\b/],
  ["thermometer", /\bthermometer\b/],
  ["canner", /\b(canner|canning pot|big pot|canning kettle|deep pot)\b/],
];

export const ACT_PATTERNS: Topics<Act> = [
  [
    "force-cool",
    /\b(cool|run|put|set|stand).*(canner|it).*(cold|under (the )?(tap|water|faucet)|in the (sink|snow))|cool (it|the canner) (down )?(faster|quick|quicker|with)|speed up the cooling|hurry the cooling\b/,
  ],
  [
    "tip-weight",
    /\b(tip|lift|took|take|pull|remove|nudge).*(weight|petcock|jiggler|regulator)|(weight|jiggler) off|let (the|some) (steam|pressure) out|open the (vent|petcock)\b/,
  ],
  [
    "skip-vent",
    /\bskip.*vent|(put|set|drop) (the |its )?(weight|regulator|jiggler)|weight (go |be |goes )?on|(enough|long enough).*steam|steam(ed|ing)? (long )?enough|close (it|the vent|the petcock)|vented (long )?enough|without venting|not vent|shorten the vent|vent (for )?less\b/,
  ],
  [
    "overnight-in-canner",
    /\bovernight in (the|that) (canner|water|pot)|leave (them|the jars|jars|it) (in|inside).*(canner|water|pot|overnight|night)|till morning in\b/,
  ],
  ["lid-on", /\b(keep|leave|have) (the )?lid on|(lid|dome) (be )?on\b/],
  [
    "open",
    /\b(open|opens|lift|take|pull|pop|raise|peek|unlock).*(canner|lid|dome)|(lid|dome) (off|come off|up)|look (in|inside)|peek|open (it|her)\b/,
  ],
  [
    "heat-off",
    /\b(turn|shut|switch|cut|kill|knock).*\b(off|down|low|it out)|(kill|douse|stop|cut|close|lower|put out) (the |my )?(heat|burner|gas|stove|flame|fire|hob)|(heat|burner|gas|stove|flame|fire) (off|down|out|be off)|take (it|the canner|the pot|her) off( the)?( heat| stove| burner)?\b/,
  ],
  [
    "take-out",
    /\b(take|lift|pull|get|fish|bring).*(jar|jars|them|it|pints|quarts|load).*out|(jars|pints|quarts|they) (come out|out|be out)|unload\b/,
  ],
  [
    "leave",
    new RegExp(
      "\\b((stay|stand|sit|wait|hang around|be|watch) (here|there|with|by|beside|next to|over)|" +
        "watch (it|them|the (pot|canner|stove|gauge))|(go|pop|step|run|nip) (out|outside|away|to)|" +
        "leave (the house|it|home|them alone|the kitchen|this alone|for)|" +
        "go to (bed|church|town|work|the store)|take a (nap|walk|shower)|sleep|lie down|" +
        "sit down|sit on|answer the (door|phone)|feed the)\\b",
    ),
  ],
  [
    "start-over",
    /\b(start|begin|time) (it |the time |the clock |all )?over|start again|start the time again|do it over|from the (start|beginning)|carry on where|get the boil back|bring it back\b/,
  ],
  [
    "reprocess",
    /\b(reprocess|process (it|them|that|those|the jars?) again|re-process|run (it|them) through again|redo (it|them|the jar|the jars)|can (it|them) again)\b/,
  ],
  [
    "tighten",
    /\b(tighten|tightening|retighten|screw).*(band|bands|ring|rings|lid|lids|them|down)|tighten\b/,
  ],
  [
    "turn-over",
    /\b(upside down|on (the|its|their) heads?|turn (them|it|the jars|jars) over|invert|flip)\b/,
  ],
  [
    "boil-lids",
    /\bboil (the |my )?(lid|lids|flats)|simmer (the )?lids|lids (need|have) to be boiled\b/,
  ],
  ["reuse-lids", /\b(reuse|re-use|use|old|used|same).*(lid|lids|flats)\b/],
  [
    "double",
    /\b(double|triple|doubled|doubling|twice (the|as much)|two batches (at once|in one)|half (the|a) (batch|recipe)|halve)\b/,
  ],
  [
    "less-sugar",
    /\b(less|half|no|without|cut|reduce|skip|leave out|sweetener|sugar free|sugar-free|honey)\b.*(sugar|sweet|sugar free|sweetener)|(honey|sweetener|stevia) (instead|for)|sweetener\b/,
  ],
  ["less-salt", /\b(less|half|no|without|cut|reduce|skip|leave out)\b.*salt\b/],
  ["fresh-lemon", /\bfresh (lemon|lemons|lime|limes|squeezed)|real lemons?|squeeze\b/],
  [
    "less-acid",
    /\b(less|half|no|without|cut|reduce|skip|leave out|forget|thin|water down|dilute|weaken|shift)\b.*(vinegar|lemon|lemon juice|citric|acid|lime juice)\b/,
  ],
  [
    "other-vinegar",
    /\b(cider|white|wine|rice|malt|balsamic|sherry|red|apple|home ?made|other|different|any) vinegar|vinegar (of|with) (four|six|4|6)\b/,
  ],
  [
    "table-salt",
    /\b(table|sea|kosher|iodized|ordinary|regular|rock|other|different) salt\b|\bsalt\b.*\b(sea|iodine|iodized|kosher|table)\b/,
  ],
  [
    "more-low-acid",
    /\b(more|extra|add|put in|throw in|sub|swap).*(onion|onions|pepper|peppers|garlic|corn|beans|celery|carrots?|vegetable|vegetables|cucumbers?|zucchini)\b/,
  ],
  [
    "thicken",
    /\b(thicken|flour|cornstarch|corn starch|starch|roux|cream|butter|milk|noodles|pasta|rice)\b/,
  ],
  [
    "spices",
    /\b(add|put|use|throw|swap|change|leave out|skip|more|less|extra).*(spice|spices|dill|cinnamon|cloves|mustard|bay|basil|tarragon|herbs?|pepper flakes|horseradish|ginger|turmeric|vanilla)\b/,
  ],
  ["smaller-jar", /\b(smaller (jar|jars)|half pints?|half-pints?|four ounce|jelly jars)\b/],
  ["bigger-jar", /\b(bigger|larger|half gallon|half-gallon|quarts?|quart jars?|big jars?)\b/],
  [
    "other-jars",
    /\b((mayonnaise|mayo|spaghetti|store|old|other|any|recycled|bail|clamp|peanut butter|pickle) (wire )?(jar|jars)|wire bail|jam jars from)\b/,
  ],
  ["stack", /\b(stack|stacked|stacking|on top of each other)\b/],
  [
    "skip-process",
    /\b(skip|without|not|no)\b.*(process|processing|water bath|canner|canning)|just let them seal\b/,
  ],
  ["skip-peel", /\b(peel|peels|peeling|skin|skins)\b/],
  ["cold-water", /\b(cold|tap|cool) water|top (up )?the canner|add (some |more )?water\b/],
  [
    "add-jar",
    /\b(slip|squeeze|stick|put|add|fit|pop|room for|space for).*\b(another|one more|two more|three more|more|other) (jar|jars|pint|pints|quart|quarts|one|glass)\b|(slip|squeeze|stick) .*\bin\b/,
  ],
  [
    "water-low",
    /\b(boil|boils|boiled|run|runs|ran|go|goes) (itself )?dry|(runs?|ran) out of water|water .*(low|down|below|under|drops|dropped|away)|(lids?|jars?) .*(uncovered|show|showing)\b/,
  ],
  [
    "top-up-jar",
    /\btop (up|off) (a|the|that|those|this)? ?(jar|jars|pint|quart)|top (it|them) up|fill (it|them) up|open (it|them) and (fill|top)\b/,
  ],
  ["bands-on", /\b(leave|store|keep|take).*(band|bands|ring|rings)\b/],
  [
    "boil-instead-of-pressure",
    /\b(boiling water|water bath|boil).*(instead|beans|corn|meat|low acid|vegetables)|water bath (the|these|it|them)|without (a )?pressure\b/,
  ],
  [
    "stop",
    /\b(stop|stops|stopped|interrupt|quit|early|pause|cut (it|the time) short|take a break|goes off the boil|lose the boil|loses the boil|pressure drops|drops below|falls below)\b/,
  ],
  [
    "begin",
    /\b(begin|start|starting|get going|getting on|get on with|getting going|do the next|next load|next batch|another batch)\b/,
  ],
];
