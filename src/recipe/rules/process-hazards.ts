import { producedFoods } from "../foods/tested-foods.ts";
import type { Recipe } from "../recipe.ts";
import { PUBLICATIONS } from "./finding.ts";
import { isLowAcidFood } from "./keeping.ts";
import { thinningCups, vinegarCups } from "./liquids.ts";
import { either, phrases, without } from "./phrases.ts";
import {
  afterFilling,
  byBoiling,
  byPressure,
  CANNING,
  EMPTY,
  isProcessed,
  JARS,
  onShelf,
  type SpokenHazard,
} from "./spoken-hazard.ts";

/*
 * What a sentence does wrong in a process that is done, and to the food it was tested for.
 */

const DURATION = /\b\d[\d.]*[- ]*(?:mins?|minutes?|h|hrs?|hours?)\b/;
const SAME = either(
  phrases(
    "same|no matter|whatever|regardless|everywhere|anywhere|wherever|however high",
    "high or low|it stays",
    "(any|every|all) (altitude|elevation|height)s?",
    "for every(one|body)",
    "(mountain|valley|coast)s? or (mountain|valley|coast)s?",
  ),
  /\b(\d+) (?:pounds|psi) is \1\b/,
);
const HEIGHT = phrases(
  "altitudes?|elevations?|feet|high|higher|height|live|mountains?|valleys?|beach|coast",
  "sea level",
);
const ALTITUDE =
  "bands|altitudes?( (chart|table|adjustment)s?)?|elevation|(extra|more) (time|minutes)|" +
  "(add|adjust)* ~2 (time|minutes|pressure|altitude)";
/** The setting differs, or is looked up. */
const LOOKED_UP = phrases("look* up|tables?|charts?|adjust*|differs?|changes?|is not|add");
const oneTime = () =>
  "one time or pressure for every altitude: water boils cooler the higher the kitchen; take " +
  "minutes and pressure from the table for your altitude";

const IN_PROCESS: SpokenHazard[] = [
  {
    rule: "low-acid-boiling-water",
    says: [
      phrases("water[- ]?bath*|boil(s|ed|er|ing)?|simmer*|kettle|roll(ing)?|steam(ed|ing)?"),
      either(
        DURATION,
        phrases("hours?", "all (day|night|morning|afternoon)", "from \\w+ (to|till|until) \\w+"),
      ),
    ],
    unless: either(EMPTY, phrases("bones?", "blanch*")),
    when: (subject, { text, stage }) =>
      isLowAcidFood(subject.recipe) &&
      onShelf(subject) &&
      (JARS.test(text) ||
        (CANNING.test(text) && /\bhours?\b/.test(text)) ||
        /\bwater ?-?bath/.test(text) ||
        afterFilling(subject, stage)) &&
      !(isProcessed(subject) && /\bsoak/.test(text)),
    message: () =>
      "low-acid food boiled in jars: no time at boiling, not even three hours, kills botulism; " +
      "use a pressure canner and its tested table, or freeze it",
    source: PUBLICATIONS.principles,
  },
  {
    rule: "pressure-released",
    says: [
      phrases(
        "cold (water|tap)|under the (\\w+ )?tap|hose|snow|a fan|wet (towel|cloth|rag)",
        "in(to)? (the )?(sink|creek|stream|brook|lake|tub)",
        "(dous|pour|spray|splash|dip)* ~4 water",
        "quick[- ]?releas*",
        "(lift|pull|take|tip|flip|nudge|jiggle)* ~2 (weight|regulator)",
        "(open|crack|pull|lift)* ~2 (petcock|vent|valve)",
        "let the (steam|pressure) out",
        "releas* (\\w+ )?(pressure|steam)",
      ),
      phrases(
        "pressure|canner|cooker|weight|petcock|vent|valve|regulator|steam|lid|quick[- ]?release",
      ),
    ],
    unless: phrases(
      "zero|fallen|by itself|all gone|after (it|the pressure)|to vent|venting|heat up|before the",
    ),
    when: (subject, { stage }) =>
      byPressure(subject) && (!stage || subject.kinds[stage.kind].role !== "venting"),
    message: () =>
      "the pressure is let out or the canner cooled by force: jars break, lose liquid and are " +
      "processed short; take it off the heat and let the pressure fall by itself",
    source: PUBLICATIONS.principles,
  },
  {
    rule: "one-setting",
    says: [SAME, phrases("pounds?|lbs?|psi|pressure|gauge")],
    unless: LOOKED_UP,
    when: byPressure,
    message: () =>
      "one pressure for every altitude: the higher the kitchen, the more pressure the same heat " +
      "takes; take the setting from the table for your altitude and gauge",
    source: PUBLICATIONS.principles,
  },
  {
    rule: "one-setting",
    says: [SAME, HEIGHT, phrases("minutes?|times?|hours?")],
    unless: LOOKED_UP,
    when: byBoiling,
    message: oneTime,
    source: PUBLICATIONS.principles,
  },
  {
    rule: "one-setting",
    says: [without(ALTITUDE)],
    when: isProcessed,
    message: oneTime,
    source: PUBLICATIONS.principles,
  },
  {
    rule: "process-shortened",
    says: [
      phrases(
        "(shorten|cut|halve|trim|shave|knock)* ~4 (minutes?|time|process)",
        "(give|process) (them|it|the jars) (only |just )?\\d+",
        "less time",
        "out after (only )?\\d+ minutes?",
        "\\d+ minutes? (is|are|will be) (\\w+ )?(plenty|enough)",
        "\\d+ minutes? (off|less)",
      ),
    ],
    unless: phrases(
      "time (in the kitchen|at|you|it takes|for peeling)",
      "(simmer|soak|blanch|peel)*",
    ),
    when: (subject, { stage }) => isProcessed(subject) && stage === undefined,
    message: () =>
      "a process time is written into the words: a tested time is never shortened or guessed; " +
      "it comes from the table for jar and altitude",
    source: PUBLICATIONS.principles,
  },
  {
    rule: "vent-skipped",
    says: [
      either(
        without("vent(ing)?|exhaust(ing)?"),
        phrases(
          "(close|shut|drop|put|set) ~3 (vent|petcock|weight|regulator) ~2 (as soon as|right away)",
          "(close|shut|drop|put|set) ~3 (vent|petcock|weight|regulator) ~2 (at once|immediately)",
        ),
      ),
    ],
    when: byPressure,
    message: () =>
      "venting is skipped: air left in the canner makes it cooler than the gauge shows; let " +
      "steam out for ten minutes before the weight goes on",
    source: PUBLICATIONS.principles,
  },
  {
    rule: "lids-reused",
    says: [
      phrases(
        "re-?us(e|ed|ing)|used|second[- ]hand|old|again|another round|twice|(2|second) times?|save",
        "last (year|season|summer)('s)?|go(es)? back on|came off",
        "\\d+ (seasons?|years?)|season after season|over and over|running",
      ),
      phrases("lids?", "flats"),
    ],
    unless: phrases(
      "new (flat )?lids?|lids? (are |is )?new|used to|(is|are) used|heat* (up )?again",
    ),
    when: onShelf,
    message: () =>
      "lids that were on a jar before do not seal safely again; use new flat lids (bands may " +
      "be used again)",
    source: PUBLICATIONS.principles,
  },
];

const otherMix = (word: string) =>
  `"${word}" changes the acid or water that the ingredients give; keep the tested amounts`;

const IN_MIX: SpokenHazard[] = [
  {
    rule: "vinegar-strength",
    says: [
      either(
        /\b[0-4](?:\.\d+)? ?(?:%|per ?cent)(?=.*\bvinegar)/,
        /\bvinegar\b.{0,25}?\b[0-4](?:\.\d+)? ?(?:%|per ?cent)/,
        phrases("(home-?made|own|homebrewed) ~2 vinegar"),
      ),
    ],
    when: ({ recipe }) => recipe.ingredients.some(({ role }) => role === "acid"),
    message: () =>
      "vinegar under 5 percent, or of a strength nobody knows: use bought vinegar of 5 percent",
    source: PUBLICATIONS.pickles,
  },
  {
    rule: "fresh-juice",
    says: [
      phrases("fresh(ly)?|squeez*|off the tree|home-?grown|from the (garden|yard|tree)"),
      phrases("(lemon|lime)s?"),
    ],
    when: ({ recipe, shelf }) =>
      shelf && recipe.ingredients.some(({ name }) => /\bbottled\b/i.test(name)),
    message: () =>
      "fresh lemons and limes vary in acid; the tested amount is of bottled juice: use that",
    source: PUBLICATIONS.tomatoes,
  },
  {
    rule: "amounts-in-words",
    says: [without("vinegar|(bottled )?(lemon|lime) juice|citric acid|lemons?")],
    when: ({ shelf, recipe }) => shelf && recipe.ingredients.some(({ role }) => role === "acid"),
    message: otherMix,
    source: PUBLICATIONS.pickles,
  },
  {
    rule: "amounts-in-words",
    says: [
      phrases(
        "(twice|double|triple|2 times|more|extra)( of)?( the| as much)? water",
        "(make|top|fill)* ~3 (with|using)( \\w+)? water",
        "0\\.\\d+ (vinegar|water) and 0\\.\\d+ (vinegar|water)",
      ),
    ],
    when: ({ shelf, recipe }) =>
      shelf && recipe.class === "acidified" && thinningCups(recipe) < vinegarCups(recipe),
    message: otherMix,
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
    message: otherMix,
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

/** Tomatoes and broth are sieved and strained by their own tables. */
const isSmooth = (recipe: Recipe) =>
  producedFoods(recipe).main.some(({ name, kind }) => name === "tomato" || kind === "bone");

const IN_FORM: SpokenHazard[] = [
  {
    rule: "untested-form",
    says: [
      phrases("pur[eé]e(s|d)?|mash(ed|es)?|food mill|ricer|(stick )?blend(ed|er)?|blitz*|smooth"),
    ],
    unless: phrases("freez*"),
    when: (subject) =>
      subject.recipe.class === "low-acid" && isProcessed(subject) && !isSmooth(subject.recipe),
    message: (word) =>
      `${word}: the table was tested for pieces in liquid; mashed or smooth, heat does not reach ` +
      "the middle in that time. Can pieces, and mash them when the jar is opened, or freeze it",
    source: PUBLICATIONS.vegetables,
  },
];

export const PROCESS_HAZARDS: readonly SpokenHazard[] = [...IN_PROCESS, ...IN_MIX, ...IN_FORM];
