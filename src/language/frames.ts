/**
 * Frames that stop orders and clearing reports whatever else speaks for them: asked, wished,
 * imagined, denied, reported by others, about another day, or said to somebody else.
 */
import type { Command } from "../kitchen/command.ts";
import { wordSet } from "./grammar/word-set.ts";
import { MEANINGS } from "./intents/all.ts";
import { textOf, type Utterance } from "./words.ts";

type Stopping = "asked" | "wished" | "imagined" | "denied" | "reported" | "past" | "elsewhere";

const DAY = "(yesterday|last (year|week|month|summer|season|time|night)|the other (day|week))";

/** Whose word is not hearsay: one's own, and what is read off a thing. */
const OWN_WORD =
  "i|we|you|it|label|gauge|gage|dial|needle|thermometer|probe|bottle|jug|timer|clock|scale|" +
  "meter|pointer|thing|water|brine|syrup|canner|pot|lid|" +
  "just|already|have|had|all";
const SAYS = "says|said|thinks|thought|told|tells|claims|reckons|swears|figures";

const STOPS: readonly (readonly [Stopping, RegExp])[] = [
  ["elsewhere", /\b(hers|theirs)\b/],
  ["asked", /^(and |so |but )?(is it true|did you hear|why|how (would|do|did)|should (i|we))\b/],
  ["wished", /^(i|we) (wish|hope|hoped|am hoping|was hoping|were hoping)\b/],
  ["wished", /\b(some day|someday|one day|next (week|month|year|time|summer))$/],
  ["imagined", /^(and |so |but )?if (?!you (could|would|can|will|do|please))/],
  ["imagined", /^(suppose|supposing|imagine|let us say|in case|pretend)\b/],
  ["imagined", /\bwhat (if|happens (if|when))\b/],
  ["imagined", /\bso \w+ (that )?(i|we|you) could\b|\b(i|we) (almost|nearly) \w+\b/],
  ["imagined", /^(could|should|would|might) (have|of)\b|\bone of these days\b|\btill hell\b/],
  ["imagined", /^(give (it|her|them)|wait) (a|another|\w+) (more )?(minute|second|moment)s? and\b/],
  ["imagined", /\b(i|we) (would (rather|sooner)|(was|were) (going|about) to)\b/],
  ["denied", /^(please )?(do not|never)\b(?! mind)/],
  ["denied", /^(i|we) (never|(will|am|are|is|was|were|have|had|would|could|did|do) not)\b/],
  ["denied", /^(it is not true|it is not so|nobody|nothing|none)\b|\bnot (broken|cracked)\b/],
  ["reported", new RegExp(`\\b(?!(?:${OWN_WORD}) )\\w+ (${SAYS})\\b`)],
  ["past", new RegExp(`^${DAY}\\b|\\b${DAY}$|\\b(i|we) used to\\b`)],
  ["elsewhere", /^back (in|then|when)\b/],
  ["past", /^(do you )?remember (when|how|(the|that) (time|day|summer|year))\b|^(i|we) once\b/],
  ["past", /^(one|another) time\b|^once upon\b/],
  ["elsewhere", /\b(i|we) (told|asked|am telling|am asking|was telling|said to) (?!you\b)/],
  ["elsewhere", /^(no )?not you\b|^hold your horses\b/],
  [
    "elsewhere",
    /^(no |nope |nah )+you (put|get|take|do|throw|toss|carry|start|set|go|stop|wash)\b/,
  ],
  // What the program has no hands for.
  ["elsewhere", /^you (toss|throw|carry|wash|rinse|grab|peel|cut|stir|wipe|lift)\b/],
  ["imagined", /^(loaded|done|sealed|full) like an?\b|\bfork in me\b|\bdone deal\b/],
  ["elsewhere", /\b(you (two|three|lot|kids)|both of you|mister|missy|young (man|lady))\b/],
  ["elsewhere", /^(sweetie|honey|hon|love|dear|darling) go (?!ahead|on|back)/],
];

/** Words that may stand before a comma without being anybody's name. */
const NOBODY = wordSet(
  "ok okay please well right now so hey hi hello yes no yeah sorry dear darling love honey hon",
  "sweetie lovely alright actually brinebell sure thanks listen look oh ah um and but then first",
  "next done good great fine",
);
const SPOKEN_TO = /^([A-Z][a-z]+), (could|can|would|will|please|go|do|you)\b/;

/**
 * Whether a sentence has somebody's name in it: one to whom it is said, or a capital letter within
 * it that is none of the names the command holds.
 */
export function namesSomebody({ text }: Utterance, { slots }: Command): boolean {
  const spokenTo = /^\W*([A-Z][a-z]+),/.exec(text)?.[1]?.toLowerCase();
  if (spokenTo !== undefined && !NOBODY.has(spokenTo)) return true;
  const held = JSON.stringify(slots).toLowerCase();
  const names = text.match(/(?<=[a-z,;:] )[A-Z][a-z]+/g) ?? [];
  return names.some((name) => !held.includes(name.toLowerCase()));
}

/** Whoever is addressed by these is in the room. */
const OTHERS =
  /^\W*(?:hey |oh )?(kids|children|boys|girls|mom|mum|mommy|dad|daddy|grandma|son)[,.!]/i;

/** Children, when they are called behind what is said to them: "stop it, kids". */
const CALLED = /, (kids|children|boys|girls|baby|puppy|kitty)\s*([,.!]|$)/i;

/** Somebody's name, called behind what is said to them: "stop it, Rex, get down". */
const NAMED = /, ([A-Z][a-z]+)\s*(?:[,.!?]|$)/;

function callsSomebody({ text }: Utterance): boolean {
  const name = NAMED.exec(text)?.[1]?.toLowerCase() ?? /^\W*([A-Z][a-z]+),/.exec(text)?.[1];
  return name !== undefined && !NOBODY.has(name.toLowerCase());
}

/** The frame that says outright that nothing is ordered or reported as so here and now. */
function stoppingFrame(said: Utterance): Stopping | undefined {
  const name = SPOKEN_TO.exec(said.text)?.[1];
  if (name !== undefined && !NOBODY.has(name.toLowerCase())) return "elsewhere";
  if (OTHERS.test(said.text) || CALLED.test(said.text)) return "elsewhere";
  const all = textOf(said.words);
  return STOPS.find(([, pattern]) => pattern.test(all))?.[0];
}

/** Frames that take in the clauses beside them, too: a condition, hearsay, talk to others. */
const WIDE: ReadonlySet<string> = new Set(["imagined", "reported", "elsewhere"]);

/** The frame of a clause of a longer sentence, by its own words and by those around it. */
function clauseFrame(clause: Utterance, said: Utterance): Stopping | undefined {
  const around = stoppingFrame(said);
  if (around !== undefined && WIDE.has(around)) return around;
  return stoppingFrame({ ...clause, text: textOf(clause.words) });
}

/** What may be said of others, of other days or with a no in it, and is meant so. */
const OF_ITSELF = wordSet(
  "note remind taste prefer opened place seed-saved germination correct-time yes no answer",
  "acknowledge spoiled unknown",
);
const MOVED = /\bmoved\b/i;
/** A denial is not one of these. */
const DENIABLE = wordSet("opened place seed-saved");
/** What is raised is believed from anybody, but not of a jar of another year or kitchen. */
const BROKE_ELSEWHERE = new RegExp(
  "\\b(hers|theirs|not (broken|cracked)|remember (when|how|the|that)|used to|years? ago|" +
    "(last|that|one|another) (year|summer|season|time)|back (then|when|in))\\b",
);
/** Said to children, dogs and husbands as well. */
const TO_PEOPLE = wordSet("hold quit forget-it undo");
/** What did not happen after all. */
const NEARLY =
  /\b(near|nearly|almost|just about) (went and )?(dropped|broke|smashed|knocked|lost)\b/;
/** Harmless, but they change something. */
const WRITTEN = wordSet("hush unhush focus");

/**
 * Whether a command is stopped by the frame of its sentence.
 * @param whole a wording covers the sentence from its first word to its last
 * @param clause where the command stands in one clause of several
 */
export function isStopped(
  { intent, confirms, slots }: Command,
  said: Utterance,
  { whole, clause }: { whole: boolean; clause?: Utterance },
): boolean {
  const { cost, report } = MEANINGS[intent];
  if (TO_PEOPLE.has(intent) && !("target" in slots) && callsSomebody(said)) return true;
  if (cost === "raising") {
    if (intent !== "jar-broken") return false;
    const elsewhere = !whole && BROKE_ELSEWHERE.test(textOf(said.words));
    return elsewhere || NEARLY.test(textOf((clause ?? said).words));
  }
  const own = DENIABLE.has(intent) && !whole ? stoppingFrame(clause ?? said) : undefined;
  if (own === "denied" || own === "imagined" || own === "elsewhere") return true;
  if (OF_ITSELF.has(intent)) return false;
  if (cost === "harmless" && !WRITTEN.has(intent)) return false;
  if ((clause ?? said).asked && report) return true;
  const frame = clause ? clauseFrame(clause, said) : stoppingFrame(said);
  if (frame === undefined) return false;
  if (intent === "factor" && confirms?.some(({ held }) => held === "no")) return false;
  // Its wording covers whoever says it: "as the recipe says".
  if (intent === "factor" && whole && frame === "reported") return false;
  // Whoever has moved is still there.
  if (intent === "altitude" && frame === "past" && MOVED.test(said.text)) return false;
  return !(frame === "denied" && whole);
}
