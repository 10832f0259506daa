import type { Intent } from "../kitchen/command.ts";
import { wordSet } from "./grammar/word-set.ts";
import { MEANINGS } from "./intents/all.ts";
import { textOf, type Utterance } from "./words.ts";

/**
 * The second line of defense after phrases that have to match as a whole: nothing asked, wished,
 * planned, doubted or told about another day is ever a report.
 */

const ASKING = wordSet(
  "is are was were do does did has have can could will would should shall might may am why who",
  "whose",
);
const DOUBT = wordSet(
  "if whether unless until wish hope hoping hopefully might should would could almost nearly",
  "maybe perhaps probably suppose supposing imagine pretend when once tomorrow yesterday used",
  "soon wonder wondering waiting guess supposed",
);
/** Subjects that turn a verb before them into a question: "is it", "have the beets". */
const SUBJECTS = wordSet(
  "it that this they these those we you i the my our he she all any everything both each every",
  "a an your his her their there jars lids jar lid some one number",
);
/** Words that can also begin a statement: "have filled nine", "were at eleven" for "we're". */
const MAY_STATE = wordSet("have has were will");
const BEFORE_ASKING = wordSet(
  "so and okay well now hey um uh er oh but then right hmm wait hi hello",
);

/** True where the words begin like a question; "wasn't ever off" does not. */
export function beginsAsking(words: readonly string[]): boolean {
  const from = words.findIndex((word) => !BEFORE_ASKING.has(word));
  const [first = "", ...rest] = words.slice(Math.max(from, 0));
  const subject = rest[0] === "not" ? rest[1] : rest[0];
  const states = MAY_STATE.has(first) || rest[0] === "not" || first === "had";
  return ASKING.has(first) && (!states || SUBJECTS.has(subject ?? ""));
}

/** What somebody else says is not a report of one's own. */
const HEARSAY = new RegExp(
  "\\b(he|she|they|somebody|someone|everybody|people|book|recipe|guide|mom|dad|grandma) " +
    "(say|says|said|told|tell|tells|thinks|thought|swears|claims|reckons|figures)\\b",
);

/** What is somebody else's, or said to be nothing at all, or still to be done. */
const NOT_OURS = /\b(?<!bless )your (?!records)|\b(damn|sod|bugger|naff) all\b/;
const TO_BE_DONE = /\b(i|we) (will|shall) (?!not\b|be (darned|damned|them|the)\b)/;
/** "All but one": not all. */
const ALL_BUT =
  /\b(all|every\w*|each|jars?|lids?|one|them) (but|except|excepting|save|bar|apart)\b/;
/** A little is not the thing itself. */
const MERELY =
  /\b(just|only|merely|barely|hardly|but) (steam|steaming|wisps|a wisp|a puff|puffs)\b/;

/** A boil that goes away, unlike one that boils away. */
const FADING = new RegExp(
  "\\b(boil|steam) (is |has |was )?(going|gone|goes|went) (away|back|off|down)\\b|" +
    "\\bboil (is |has )?(going|gone|goes|went) out\\b",
);

/** True where the words ask, wish, doubt or plan, whatever they matched. */
export function isNoReport(said: Utterance, intent: Intent): boolean {
  const { report, unasked, doubting } = MEANINGS[intent];
  if (said.asked && unasked) return !isRequest(said);
  if (!report) return false;
  if (said.asked) return true;
  if (said.words.some(({ word }) => DOUBT.has(word) && !doubting?.includes(word))) return true;
  const text = textOf(said.words);
  if (HEARSAY.test(text) || NOT_OURS.test(text) || TO_BE_DONE.test(text)) return true;
  if (intent === "sealed" && ALL_BUT.test(text)) return true;
  if (intent === "venting" && MERELY.test(text)) return true;
  if ((intent === "venting" || intent === "boiling") && FADING.test(text)) return true;
  // "It's hot in here" is about the room.
  if (intent !== "temperature" && /\bin here\b/.test(text)) return true;
  const first = said.words.findIndex(({ word }) => !BEFORE_ASKING.has(word));
  const [one, other] = said.words.slice(Math.max(first, 0));
  if (one !== undefined && /^(after|before|till)$/.test(one.word)) return true;
  if (one === undefined || !ASKING.has(one.word)) return false;
  return !MAY_STATE.has(one.word) || SUBJECTS.has(other?.word ?? "");
}

/** "Can we start the beets?" asks for it to be done. */
function isRequest(said: Utterance): boolean {
  return /^(can|could|would|will|shall|may|how|why|please)$/.test(said.words[0]?.word ?? "");
}

/** Words that are never skipped as unexpected: they can change everything. */
export const TELLING: ReadonlySet<string> = new Set([
  ...DOUBT,
  ...ASKING,
  ...wordSet(
    "not no never none nothing without but except instead than because so that who he she his her",
    "they their him them mom dad mother father grandma yesterday last ago week month year years",
    "weeks day days night ever always usually sometimes used was were had did said told thought",
    "think know like love want need hate before after while boil boils boiling boiled seal seals",
    "sealed pressure done finished",
  ),
]);
