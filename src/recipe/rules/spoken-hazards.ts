import { producedFoods } from "../foods/tested-foods.ts";
import { type CheckedRecipe, PUBLICATIONS } from "./finding.ts";
import { isLowAcidFood } from "./keeping.ts";
import type { Statement } from "./statements.ts";

/*
 * Dangers that a sentence tells of, each declared once: what has to stand in the sentence, where it
 * counts, what is wrong and how it is mended. `spoken-rules.ts` finds them.
 */

export type SpokenHazard = {
  rule: string;
  /** All of these stand in one sentence; the first is the danger's own word. */
  says: readonly RegExp[];
  /** What makes the sentence speak of something else. */
  unless?: RegExp;
  when?: (subject: CheckedRecipe, said: Statement) => boolean;
  /** What is wrong and how to mend it; gets the danger's own word. */
  message: (word: string) => string;
  source: string;
};

const JARS = /\b(?:jars?|jarred|pints?|quarts?|half-pints?|lids?|bottles?|tumblers?)\b/;
const JAR_OR_CANNING = new RegExp(
  `${JARS.source}|\\b(?:i|we|you|to|then|and) can\\b(?= (?:these|them|it|the|my|our|in))|` +
    "\\bcan (?:these|them)\\b|\\b(?:canned|canning|process(?:ed|ing)?|seal(?:s|ed|ing)?|" +
    "instead of (?:a |the |any )?(?:canner|canning|water bath|boiling water)|no canner)\\b",
);
/** Jars that are only washed, warmed or drained before they are filled. */
const EMPTY =
  /\b(?:empty|wash(?:ed|ing)?(?! boiler)|clean(?:ed|ing)?|rins\w+|steriliz\w+|drain\w*|until (?:\w+ ){0,3}(?:fill\w*|wanted|needed|ready))\b/;
const DURATION = /\b\d[\d.]*[- ]*(?:mins?|minutes?|h|hrs?|hours?)\b/;
const CLASS_TESTED = (name: "boiling-water" | "pressure") => (subject: CheckedRecipe) =>
  subject.recipe.processes.some(({ method }) => method === name);
const byPressure = CLASS_TESTED("pressure");
const byWater = CLASS_TESTED("boiling-water");
const unprocessed = ({ recipe }: CheckedRecipe) => recipe.processes.length === 0;
const onShelf = ({ keeping }: CheckedRecipe) => keeping.place === "shelf";
const afterFilling = ({ recipe, kinds }: CheckedRecipe, { stage }: Statement) => {
  const filled = recipe.stages.findIndex(({ kind }) => kinds[kind].role === "filling");
  return stage !== undefined && filled >= 0 && recipe.stages.indexOf(stage) > filled;
};

/** Something needed that is left out, lessened or called needless. */
const without = (needed: string) =>
  new RegExp(
    [
      `\\b(?:skip|omit|forget|drop|leave out|leave off|ignore|cut|halve|thin|dilute|weaken|reduce)\\w*(?: \\w+){0,2} (?:${needed})\\b`,
      `\\b(?:leave|left|leaving|cut|water)(?: \\w+){0,2} (?:${needed}) (?:out|off|down|in 0\\.5|away|altogether)\\b`,
      `\\b(?:no need|needn't|(?:don't|doesn't|do not|never|not) (?:\\w+ )?(?:need|bother)\\w*)(?: \\w+){0,3} (?:${needed})\\b`,
      `\\bneeds? no (?:\\w+ )?(?:${needed})\\b|\\bwithout (?:the |any )?(?:${needed})\\b`,
      `\\b(?:less|(?:only )?0\\.\\d+(?: of)? the|0\\.5 as much) (?:${needed})\\b`,
      `\\b(?:${needed})(?: \\w+){0,2} (?:is|are) (?:\\w+ )?(?:waste|not needed|unneeded|unnecessary|needless|optional|nonsense|for worriers)\\b`,
    ].join("|"),
  );

const NO_CANNER = (word: string) =>
  `${word}: this is no canner, and no tested time stands behind it; process the jars in a ` +
  "boiling-water or pressure canner by the recipe's table, or refrigerate or freeze the food";

/** Ways of treating or closing jars that take the place of the tested process. */
const NO_PROCESS: SpokenHazard[] = [
  {
    rule: "process-skipped",
    says: [/\b(?:ovens?(?![- ]mitts?)|dish ?washers?|microwav\w*|zap(?:ped)?)\b/, JAR_OR_CANNING],
    unless: new RegExp(
      `${EMPTY.source}|\\bwhile the canner\\b|\\b(?:from|out of) the (?:\\w+ )?(?:oven|dish ?washer|microwave)\\b`,
    ),
    message: NO_CANNER,
    source: PUBLICATIONS.principles,
  },
  {
    rule: "process-skipped",
    says: [
      /\b(?:multi-?cookers?|electric pressure (?:cooker|canner)s?|pressure (?:cooker|saucepan)s?|slow cookers?|rice cookers?|air fryers?)\b/,
      JAR_OR_CANNING,
    ],
    unless: EMPTY,
    message: (word) =>
      `${word}: a cooker is no canner, too small and too unsteady for the tested times; take a pressure canner that ` +
      "holds at least four quart jars, or freeze the food",
    source: "National Center for Home Food Preservation, electric multi-cookers",
  },
  {
    rule: "process-skipped",
    says: [
      /\b(?:in (?:the |full |bright |hot )*sun(?:light|shine)?|sun[- ]?cann\w+|solar \w+|(?:tin|hot|black) roof|hot car)\b/,
      JAR_OR_CANNING,
    ],
    unless: new RegExp(`${EMPTY.source}|\\b(?:dry|dried|out of|keep)\\b`),
    message: NO_CANNER,
    source: PUBLICATIONS.principles,
  },
  {
    rule: "process-skipped",
    says: [
      /\b(?:upside[- ]down|lids?(?:[- ]side)?[- ]down|inver(?:t|ts|ted|ting|sion)|on (?:their|its) (?:heads?|lids?|tops?))\b|\b(?:turn|flip)\w*(?: \w+){0,2} (?:jars?|lids?|pints?|bottles?|them|it|each|1)(?: \w+){0,2} over\b|\bflip\w*(?: \w+){0,2} (?:jars?|pints?|bottles?|them)\b/,
    ],
    unless: new RegExp(`${EMPTY.source}|\\btowels? until\\b|\\bdissolv|\\bpancake`),
    when: ({ keeping }) => keeping.place === "shelf",
    message: (word) =>
      `${word}: a jar turned over draws its lid down but was never processed; process it by a ` +
      "tested table, or keep it in the refrigerator",
    source: PUBLICATIONS.inversion,
  },
  {
    rule: "process-skipped",
    says: [/\bopen[- ]kettle\b/, /\b(?:cann\w+|can|method|jars?|jarred|way|style)\b/],
    message: (word) =>
      `${word}: food boiled in a pot and closed in jars is not processed; use the tested table`,
    source: PUBLICATIONS.principles,
  },
  {
    rule: "wax-seal",
    says: [
      /\b(?:paraffin|(?:hot |melted |bees ?|sealing )?wax)\b(?! ?(?:beans?|paper|pod))/,
      /\b(?:pour\w*|seal\w*|cover\w*|top\w*|cap\w*|layer\w*|melt\w*|over|runs?|under)\b/,
    ],
    when: ({ keeping }) => keeping.place !== "dry",
    message: (word) =>
      `${word} is no seal: mold and worse grow under it; use lids and the tested process, or ` +
      "the refrigerator",
    source: PUBLICATIONS.jams,
  },
  {
    rule: "canning-powder",
    says: [
      /\b(?:aspirins?|(?:acetyl)?salicylic|(?:canning|preserving) (?:powder|acid))\b/,
      /\b(?:jars?|quarts?|pints?|tablets?|crush\w*|add|drops?|each|every|instead|replac\w*|powder|corn|beans?|tomato\w*)\b/,
    ],
    message: (word) =>
      `${word} neither acidifies enough nor takes the place of the process; leave it out and use ` +
      "the tested acid and time",
    source: PUBLICATIONS.principles,
  },
  {
    rule: "vacuum-packed",
    says: [
      /\bvacuum(?:[- ](?:pack|seal|bag|pouch|sealer)\w*| (?:the|it|them)\b|ed\b)|\bsuck\w* (?:\w+ ){0,3}air\b|\bpump (?:pulls|draws|sucks)|\bsealer\b/,
    ],
    when: ({ keeping }) => keeping.place === "shelf",
    message: () =>
      "vacuum packing preserves nothing, and botulism grows best without air: refrigerate or " +
      "freeze what is packed so, or process it by a tested table",
    source: PUBLICATIONS.vacuum,
  },
  {
    rule: "process-skipped",
    says: [
      /\b(?:no need (?:to|for|of) (?:\w+ )?(?:process\w*|can(?:ning|ner)?|water bath)|(?:skip|without|instead of|in place of|forget) (?:the |any |a )?(?:canner|canning|process(?:ing)?|(?:boiling[- ])?water bath)|no (?:water bath|process(?:ing)?|canner|canning) (?:is )?(?:needed|necessary|required))\b/,
    ],
    unless: /\b(?:not safe|shelf|refrigerat\w*|fridge|freez\w*)\b/,
    when: onShelf,
    message: (word) =>
      `${word}: jars that seal without the tested process are not safe on a shelf; process them`,
    source: PUBLICATIONS.principles,
  },
  {
    rule: "process-skipped",
    says: [
      /\bself[- ]seal\w*|\bseal (?:\w+ )?(?:by )?(?:itself|themselves)\b|\bheat (?:\w+ )?seals\b|\bseal\w* (?:\w+ ){0,3}as (?:they|it) cools?\b|\b(?:pop|ping|draw|suck)s? (?:\w+ )?(?:down|shut|tight)\b|\bfor the (?:ping|pop)\b/,
    ],
    when: (subject, { stage }) =>
      onShelf(subject) &&
      (unprocessed(subject) || stage === undefined || notCooling(subject, stage)),
    message: () =>
      "jars that seal without the tested process are not safe on a shelf: process them by a " +
      "tested table, or refrigerate or freeze the food",
    source: PUBLICATIONS.principles,
  },
];

const notCooling = ({ kinds }: CheckedRecipe, stage: NonNullable<Statement["stage"]>) => {
  const { role } = kinds[stage.kind];
  return role !== "cooling" && role !== "seals";
};

const SAME =
  /\b(?:same|no matter|whatever|regardless|everywhere|anywhere|wherever|(?:any|every|all) (?:altitude|elevation|height)s?|however high|(\d+) (?:pounds|psi) is \1)\b/;
const HEIGHT =
  /\b(?:altitudes?|elevations?|feet|high|higher|height|live|mountains?|beach|coast|sea level)\b/;
const ALTITUDE =
  "altitudes?(?: (?:chart|table|adjustment)s?)?|elevation|(?:extra|more) (?:time|minutes)|(?:add|adjust)\\w*(?: \\w+){0,2} (?:time|minutes|pressure|altitude)";
/** The setting differs, or is looked up. */
const LOOKED_UP = /\b(?:look\w* up|tables?|charts?|adjust\w*|differs?|changes?|is not|add)\b/;
const oneTime = () =>
  "one time or pressure for every altitude: water boils cooler the higher the kitchen; take " +
  "minutes and pressure from the table for your altitude";

/** What is done wrong in a process that is done. */
const IN_PROCESS: SpokenHazard[] = [
  {
    rule: "low-acid-boiling-water",
    says: [
      /\b(?:water[- ]?bath\w*|boil(?:s|ed|er|ing)?|kettle|roll(?:ing)?|steam(?:ed|ing)?)\b/,
      new RegExp(`${DURATION.source}|\\bhours?\\b`),
    ],
    unless: new RegExp(`${EMPTY.source}|\\bbones?\\b|\\bblanch`),
    when: (subject, said) =>
      isLowAcidFood(subject.recipe) &&
      onShelf(subject) &&
      (JARS.test(said.text) || /\bwater ?-?bath/.test(said.text) || afterFilling(subject, said)) &&
      !(subject.recipe.processes.length > 0 && /\bsoak|\bsteriliz/.test(said.text)),
    message: () =>
      "low-acid food boiled in jars: no time at boiling, not even three hours, kills botulism; " +
      "use a pressure canner and its tested table, or freeze it",
    source: PUBLICATIONS.principles,
  },
  {
    rule: "pressure-released",
    says: [
      /\b(?:cold (?:water|tap)|under the (?:\w+ )?tap|hose|in(?:to)? (?:the )?(?:sink|snow|creek)|wet (?:towel|cloth|rag)|snow|a fan|quick[- ]?releas\w+|(?:lift|pull|take|tip|flip|open|crack|nudge|jiggle)\w* (?:\w+ ){0,2}(?:weight|petcock|vent|valve|regulator)|let the (?:steam|pressure) out|releas\w+ (?:\w+ )?(?:pressure|steam))\b/,
      /\b(?:pressure|canner|cooker|weight|petcock|vent|valve|regulator|steam|quick[- ]?release)\b/,
    ],
    unless:
      /\b(?:zero|fallen|by itself|all gone|after (?:it|the pressure)|to vent|venting|heat up|before the)\b/,
    when: (subject, { stage }) =>
      byPressure(subject) && (!stage || subject.kinds[stage.kind].role !== "venting"),
    message: () =>
      "the pressure is let out or the canner cooled by force: jars break, lose liquid and are " +
      "processed short; take it off the heat and let the pressure fall by itself",
    source: PUBLICATIONS.principles,
  },
  {
    rule: "one-setting",
    says: [SAME, /\b(?:pounds?|lbs?|psi|pressure)\b/],
    unless: LOOKED_UP,
    when: byPressure,
    message: () =>
      "one pressure for every altitude: the higher the kitchen, the more pressure the same heat " +
      "takes; take the setting from the table for your altitude and gauge",
    source: PUBLICATIONS.principles,
  },
  {
    rule: "one-setting",
    says: [SAME, HEIGHT, /\b(?:minutes?|time|times|hours?)\b/],
    unless: LOOKED_UP,
    when: byWater,
    message: oneTime,
    source: PUBLICATIONS.principles,
  },
  {
    rule: "one-setting",
    says: [without(ALTITUDE)],
    when: ({ recipe }) => recipe.processes.length > 0,
    message: oneTime,
    source: PUBLICATIONS.principles,
  },
  {
    rule: "process-shortened",
    says: [
      /\b(?:shorten|cut|halve|trim|shave|knock)\w*\b(?: \w+){0,4} (?:minutes?|time|process)\b|\b(?:give|process) (?:them|it|the jars) (?:only |just )?\d+\b|\bless time\b|\b\d+ minutes? (?:is|are|will be) (?:\w+ )?(?:plenty|enough)\b/,
    ],
    unless: /\btime (?:in the kitchen|at|you|it takes|for peeling)\b|\b(?:simmer|soak|blanch|peel)/,
    when: ({ recipe }, { stage }) => recipe.processes.length > 0 && stage === undefined,
    message: () =>
      "a process time is written into the words: a tested time is never shortened or guessed; " +
      "it comes from the table for jar and altitude",
    source: PUBLICATIONS.principles,
  },
  {
    rule: "vent-skipped",
    says: [without("vent(?:ing)?")],
    when: byPressure,
    message: () =>
      "venting is skipped: air left in the canner makes it cooler than the gauge shows; let " +
      "steam out for ten minutes before the weight goes on",
    source: PUBLICATIONS.principles,
  },
  {
    rule: "lids-reused",
    says: [
      /\b(?:re-?us(?:e|ed|ing)|used|second[- ]hand|last (?:year|season|summer)'?s?|old|again|another round|twice|(?:2|second) times?|take again|save|\d+ (?:seasons?|years?)|season after season|over and over|running)\b/,
      /\blids?\b|\bflats\b/,
    ],
    unless:
      /\b(?:new (?:flat )?lids?|lids? (?:are |is )?new|used to|(?:is|are) used|heat\w* (?:up )?again)\b/,
    when: onShelf,
    message: () =>
      "lids that were on a jar before do not seal safely again; use new flat lids (bands may " +
      "be used again)",
    source: PUBLICATIONS.principles,
  },
];

const OTHER_MIX = (word: string) =>
  `"${word}" changes the acid or water that the ingredients give; keep the tested amounts`;

/** Acid and salt that the words take away. */
const IN_MIX: SpokenHazard[] = [
  {
    rule: "vinegar-strength",
    says: [
      /\b[0-4](?:\.\d+)? ?(?:%|per ?cent)(?=.*\bvinegar)|\bvinegar\b[^,]*\b[0-4](?:\.\d+)? ?(?:%|per ?cent)|\b(?:home-?made|own|homebrewed)\b(?: \w+){0,2} vinegar\b/,
    ],
    when: ({ recipe }) => recipe.ingredients.some(({ role }) => role === "acid"),
    message: () =>
      "vinegar under 5 percent, or of a strength nobody knows: use bought vinegar of 5 percent",
    source: PUBLICATIONS.pickles,
  },
  {
    rule: "fresh-juice",
    says: [
      /\b(?:fresh(?:ly)?|squeez\w+|off the tree|home-?grown|from the (?:garden|yard|tree))\b/,
      /\b(?:lemon|lime)s?\b/,
    ],
    when: ({ recipe, shelf }) =>
      shelf && recipe.ingredients.some(({ name }) => /\bbottled\b/i.test(name)),
    message: () =>
      "fresh lemons and limes vary in acid; the tested amount is of bottled juice: use that",
    source: PUBLICATIONS.tomatoes,
  },
  {
    rule: "amounts-in-words",
    says: [without("vinegar|(?:bottled )?(?:lemon|lime) juice|citric acid|lemons?")],
    when: ({ shelf, recipe }) => shelf && recipe.ingredients.some(({ role }) => role === "acid"),
    message: OTHER_MIX,
    source: PUBLICATIONS.pickles,
  },
  {
    rule: "amounts-in-words",
    says: [/\b(?:twice|double|triple|2 times|more|extra)(?: of)?(?: the| as much)? water\b/],
    when: ({ shelf, recipe }) => shelf && recipe.class === "acidified",
    message: OTHER_MIX,
    source: PUBLICATIONS.pickles,
  },
  {
    // A pickle's jars are filled up with its own brine.
    rule: "amounts-in-words",
    says: [/\b(?:top|fill|thin|add|cover)\w*\b.*\bwater\b/],
    when: ({ shelf, recipe, kinds }, { stage }) =>
      shelf &&
      recipe.class === "acidified" &&
      stage !== undefined &&
      kinds[stage.kind].role === "filling",
    message: OTHER_MIX,
    source: PUBLICATIONS.pickles,
  },
  {
    rule: "ferment-salt",
    says: [without("salt")],
    when: ({ recipe }) => recipe.class === "ferment",
    message: () =>
      "the salt of a ferment is cut: salt is what lets only the right bacteria grow; use all of it",
    source: PUBLICATIONS.ferment,
  },
];

/** A form that takes another time than pieces. */
const IN_FORM: SpokenHazard[] = [
  {
    rule: "untested-form",
    says: [
      /\b(?:pur[eé]e(?:s|d)?|mash(?:ed|es)?|food mill|(?:stick )?blend(?:ed|er)?|blitz\w*|baby food|to a paste|smooth)\b/,
    ],
    when: ({ recipe }) =>
      recipe.class === "low-acid" && recipe.processes.length > 0 && !isSmooth(recipe),
    message: (word) =>
      `${word}: the table was tested for pieces in liquid; mashed or smooth, heat does not reach ` +
      "the middle in that time. Can pieces, and mash them when the jar is opened, or freeze it",
    source: PUBLICATIONS.vegetables,
  },
];

/** Tomatoes and broth are sieved and strained by their own tables. */
const isSmooth = (recipe: CheckedRecipe["recipe"]) =>
  producedFoods(recipe).main.some(({ name, kind }) => name === "tomato" || kind === "bone");

export const SPOKEN_HAZARDS: readonly SpokenHazard[] = [
  ...NO_PROCESS,
  ...IN_PROCESS,
  ...IN_MIX,
  ...IN_FORM,
];
