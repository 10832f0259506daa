import { PUBLICATIONS } from "./finding.ts";
import { either, phrases, without } from "./phrases.ts";
import { CANNING, EMPTY, isProcessed, onShelf, type SpokenHazard } from "./spoken-hazard.ts";

/*
 * Ways of treating or closing jars that take the place of the tested process.
 */

const noCanner = (word: string) =>
  `${word}: this is no canner, and no tested time stands behind it; process the jars in a ` +
  "boiling-water or pressure canner by the recipe's table, or refrigerate or freeze the food";
const unprocessed = () =>
  "jars that seal without the tested process are not safe on a shelf: process them by a tested " +
  "table, or refrigerate or freeze the food";

const MACHINES: SpokenHazard[] = [
  {
    rule: "process-skipped",
    says: [
      phrases(
        "ovens?(?![- ]mitts?)",
        "dish ?washers?",
        "microwav*",
        "zap(ped)?",
        "bak(e|ed|ing) ~3 jars",
      ),
      CANNING,
    ],
    unless: either(
      EMPTY,
      phrases(
        "while the canner",
        "(from|out of) the (\\w+ )?(oven|dish ?washer|microwave)",
        "jars? ~2 into the (\\w+ )?canner",
      ),
    ),
    message: noCanner,
    source: PUBLICATIONS.principles,
  },
  {
    rule: "process-skipped",
    says: [phrases("at (2[2-9]|3\\d)\\d( degrees)?"), CANNING],
    unless: EMPTY,
    message: (word) => noCanner(`${word}, the dry heat of an oven`),
    source: PUBLICATIONS.principles,
  },
  {
    rule: "process-skipped",
    says: [
      phrases(
        "multi-?cookers?",
        "electric (pressure )?(cooker|canner)s?",
        "pressure (cooker|saucepan)s?",
        "(slow|rice) cookers?",
        "air fryers?",
      ),
      CANNING,
    ],
    unless: EMPTY,
    message: (word) =>
      `${word}: a cooker is no canner, too small and too unsteady for the tested times; take a ` +
      "pressure canner that holds at least four quart jars, or freeze the food",
    source: "National Center for Home Food Preservation, electric multi-cookers",
  },
  {
    rule: "process-skipped",
    says: [
      phrases(
        "in (the |full |bright |hot ){0,3}sun(light|shine)?",
        "sun[- ]?cann*",
        "sunny (window|spot|porch|window ?sill)",
        "solar \\w+",
        "(tin|hot|black) roof",
        "hot car",
      ),
      CANNING,
    ],
    unless: either(EMPTY, phrases("dry|dried|out of|keep")),
    message: noCanner,
    source: PUBLICATIONS.principles,
  },
];

const SEALS: SpokenHazard[] = [
  {
    rule: "process-skipped",
    says: [
      phrases(
        "upside[- ]down",
        "lids?([- ]side)?[- ]down",
        "inver(t|ts|ted|ting|sion)",
        "on (their|its) (heads?|lids?|tops?)",
        "(turn|flip)* ~2 (jars?|lids?|pints?|bottles?|them|it|each|1) ~2 over",
        "flip* ~2 (jars?|pints?|bottles?|them|each|1|all)",
      ),
    ],
    unless: either(EMPTY, phrases("towels? until", "dissolv*")),
    when: onShelf,
    message: (word) =>
      `${word}: a jar turned over draws its lid down but was never processed; process it by a ` +
      "tested table, or keep it in the refrigerator",
    source: PUBLICATIONS.inversion,
  },
  {
    rule: "wax-seal",
    says: [
      /\b(?:paraffin|(?:hot |melted |bees ?|sealing )?wax)\b(?! ?(?:beans?|paper|pod))/,
      phrases("(pour|seal|cover|top|cap|layer|melt|coat)*", "over", "runs?", "under"),
    ],
    when: ({ keeping }) => keeping.place !== "dried",
    message: (word) =>
      `${word} is no seal: mold and worse grow under it; use lids and the tested process, or ` +
      "the refrigerator",
    source: PUBLICATIONS.jams,
  },
  {
    rule: "canning-powder",
    says: [
      phrases("aspirins?", "(acetyl)?salicylic", "(canning|preserving) (powder|acid)"),
      phrases(
        "jars?|quarts?|pints?|tablets?|crush*|add|drops?|each|every|instead|replac*|powder",
        "corn|beans?|tomato*",
      ),
    ],
    message: (word) =>
      `${word} neither acidifies enough nor takes the place of the process; leave it out and use ` +
      "the tested acid and time",
    source: PUBLICATIONS.principles,
  },
  {
    rule: "vacuum-packed",
    says: [
      phrases(
        "vacuum[- ](pack|seal|bag|pouch)*",
        "vacuum (the|it|them)",
        "vacuumed",
        "suck* ~3 air",
        "pump (pulls|draws|sucks)",
        "sealer",
      ),
    ],
    when: onShelf,
    message: () =>
      "vacuum packing preserves nothing, and botulism grows best without air: refrigerate or " +
      "freeze what is packed so, or process it by a tested table",
    source: PUBLICATIONS.vacuum,
  },
  {
    rule: "process-skipped",
    says: [
      /\bopen[- ]kettle\b/,
      phrases("cann*", "can", "method", "jars?", "jarred", "way", "style"),
    ],
    message: (word) =>
      `${word}: food boiled in a pot and closed in jars is not processed; use the tested table`,
    source: PUBLICATIONS.principles,
  },
  {
    rule: "process-skipped",
    says: [
      either(
        without("canner|canning|process(ing|ed)?|can|(boiling[- ])?water bath"),
        phrases("(instead|in place) of (the |any |a )?(\\w+ )?(canner|canning|process|water bath)"),
        phrases("lacking (the |any |a )?(\\w+ )?(canner|water bath)"),
        /(?<!(?:is|are|was|have|has|with) )\bno (?:canner|canning|(?:boiling[- ])?water bath)\b/,
      ),
    ],
    unless: phrases("not safe", "shelf", "refrigerat*", "fridge", "freez*"),
    when: onShelf,
    message: (word) => `${word}: ${unprocessed()}`,
    source: PUBLICATIONS.principles,
  },
  {
    rule: "process-skipped",
    says: [
      phrases(
        "self[- ]seal*",
        "seal (\\w+ )?(by )?(itself|themselves)",
        "heat (\\w+ )?seals",
        "seal* ~3 as (they|it) cools?",
        "(pop|ping|draw|suck)s? (\\w+ )?(down|shut|tight)",
        "for the (ping|pop)",
      ),
    ],
    when: (subject, { stage }) => {
      const role = stage && subject.kinds[stage.kind].role;
      // After a tested process, that a lid draws down is what is waited for.
      return (
        onShelf(subject) && !(isProcessed(subject) && (role === "cooling" || role === "seals"))
      );
    },
    message: unprocessed,
    source: PUBLICATIONS.principles,
  },
];

/** The specific before the general: one finding a rule is made of a sentence. */
export const SEALING_HAZARDS: readonly SpokenHazard[] = [...MACHINES, ...SEALS];
