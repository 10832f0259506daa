/**
 * Reports of what has been so for a while: "put the jars in at twenty past two, clean forgot to
 * say", "it's been rocking since about quarter to". The moment and the excuse are cut out of the
 * words, and what is left is the report.
 */
import type { Command, Intent } from "../kitchen/command.ts";
import { withSlots } from "../kitchen/command.ts";
import { localIso, MINUTE_MS } from "../kitchen/time.ts";
import type { Context } from "./context.ts";
import { wordSet } from "./grammar/word-set.ts";
import { MEANINGS } from "./intents/all.ts";
import { pastMomentsAt, shorterAt } from "./values/clock-times.ts";
import { durationsAt } from "./values/durations.ts";
import type { Parsed } from "./values/spoken-numbers.ts";
import { textOf, type Utterance, type Word, wordAt } from "./words.ts";

/** `ongoing`: it has been so ever since; else it may have been over again. */
type Moment = { at: number; from: number; next: number; ongoing: boolean; lasting: boolean };

/** The report without its moment; `present` is the same with "was" said as "is". */
type Late = { rest: Utterance; present?: Utterance; at: string; ongoing: boolean };

const YOU = "(?: (?:you|ye|it|so|that|anybody|anyone|a word|about it))*";
const SOONER = "(?: (?:so|sooner|before|earlier|then|at the time|right away|straight away))*";
const FORGOT =
  "(?:i |we )?(?:have |had )?(?:(?:clean|clear|plum|plumb|quite|just|completely|nearly|totally|" +
  "only) )?forgot(?:ten)?(?: all about it)?" +
  `(?: to (?:say|tell|mention|report|let you know|call it out|sing out)${YOU}| about (?:it|that))?`;
const MEANT =
  `(?:i |we )?(?:meant|was going|wanted|intended) to (?:say|tell|mention)${YOU}|` +
  "(?:i |we )?(?:should|ought to) have " +
  `(?:said|told|mentioned|spoken up|spoke up|sung out)${YOU}${SOONER}`;
const SORRY =
  "(?:i am )?(?:so |very |real )?sorry(?: (?:love|about that|hon|honey|dear|mate|" +
  "for not saying|for telling you late|i am late))?";
/** What the speaker was at meanwhile; no word of it may be about the kitchen's work. */
const DOING =
  "(?:was|were|had|got|went|looked|checked|came|noticed)" +
  "(?: (?!\\w*(?:boil|seal|lid|jar|gaug|dial|" +
  "weight|steam|vent|pot|canner|stov|burner|flam|fire|gas|heat|pressur|water|brine|bubbl|fill|" +
  "off|stop|quit|not|turn|lost|drop|only|until)\\w*\\b)\\w+){0,6}";
/** Before what is told, and behind it. */
const BEFORE = new RegExp(
  "^(?:(?:and|but|so|oh|well|uh|um|ah|hey|also) )*" +
    `(?:${FORGOT}|${MEANT}|${SORRY})(?: that)? (?=\\w)`,
);
const BEHIND = new RegExp(
  "(?: (?:and|but|so|oh|only|just))*" +
    ` (?:${FORGOT}|${MEANT}|${SORRY}|` +
    "(?:i |we )?(?:have )?(?:just |only )*(?:never|did not)(?: even)? " +
    `(?:say|said|tell|told|mention|` +
    `mentioned|let you know)${YOU}${SOONER}|(?:nobody|no one) (?:said|told|mentioned)${YOU}|` +
    "(?:i |we )?(?:have )?never let on|" +
    `(?:you know )?(?:when|while|as) (?:i|we) (?:last |just )?${DOING}|` +
    "it (?:clean |just |plumb )?slipped my mind|" +
    "(?:it is |that is )?my (?:own )?(?:fault|mistake)|" +
    "(?:i |we )?(?:have |had )?(?:only just|just now|only now|just) (?:saw|seen|noticed|spotted|" +
    "found|caught)(?: (?:it|that|so|out))?)$",
);

/** How long the words of an excuse are, at either end of what is said. */
function excusesOf(words: readonly Word[]): { from: number; next: number } {
  let [from, next] = [0, words.length];
  const count = (text: string) => text.trim().split(" ").length;
  for (;;) {
    const all = textOf(words.slice(from, next));
    const before = BEFORE.exec(all)?.[0];
    if (before) from += count(before);
    else {
      const behind = BEHIND.exec(all)?.[0];
      if (!behind) return { from, next };
      next -= count(behind);
    }
  }
}

/** An excuse alone, beside what was told. */
export function isExcuse({ words }: Pick<Utterance, "words">): boolean {
  return BEHIND.test(` ${textOf(words)}`);
}

/** A clock time is meant of this day, and of hours rather than of its other half. */
const LONGEST_AGO_MS = 9 * 60 * MINUTE_MS;

const ABOUT = wordSet("about around like maybe roughly good near nearly over a whole only just");
const AFTER = wordSet("now already solid straight");
const SPAN = wordSet("past last");

/** "For ten minutes now", "this past quarter hour", "since ten minutes". */
function lastingAt(words: readonly Word[], at: number, nowMs: number): Parsed<number> | undefined {
  let start = at;
  const lead = wordAt(words, start);
  const led = /^(for|these|this|the|since|already)$/.test(lead);
  if (led) start += 1;
  if (lead === "already" && wordAt(words, start) === "since") start += 1;
  if (lead === "for" && /^(the|these)$/.test(wordAt(words, start))) start += 1;
  const span = SPAN.has(wordAt(words, start));
  if (span) start += 1;
  const isAbout = (place: number) => {
    return ABOUT.has(wordAt(words, place)) && durationsAt(words, place).length === 0;
  };
  while (isAbout(start)) start += 1;
  const [length] = shorterAt(words, start);
  if (!length) return undefined;
  let { next } = length;
  const tailed = AFTER.has(wordAt(words, next));
  while (AFTER.has(wordAt(words, next))) next += 1;
  const been = words.slice(0, at).some(({ word }) => word === "been");
  const since = lead === "since" || (lead === "already" && start > at + 1);
  if (!(been || tailed || span || since || lead === "these")) return undefined;
  return { value: nowMs - length.value * MINUTE_MS, next };
}

const TAIL = /^(?:on the dot|or so|or thereabouts|thereabouts|give or take|ish|on|sharp)\b/;
const PAST = wordSet("was were had been came come got went hit reached started began were");

/** What stands behind a moment and says how exact it is, or that it lasts: "or so", "on". */
function behindMoment(words: readonly Word[], next: number): number {
  const tail = TAIL.exec(textOf(words.slice(next, next + 3)))?.[0];
  return tail ? next + tail.split(" ").length : next;
}

function momentAt(words: readonly Word[], at: number, context: Context): Moment | undefined {
  const { nowMs, zone } = context;
  const lasting = lastingAt(words, at, nowMs);
  if (lasting) {
    return { at: lasting.value, from: at, next: lasting.next, ongoing: true, lasting: true };
  }
  const by = wordAt(words, at) === "by" && words.slice(0, at).some(({ word }) => PAST.has(word));
  const [past] = pastMomentsAt(words, by ? at + 1 : at, nowMs, zone);
  const spoken = by && !past ? pastMomentsAt(asAt(words, at), at, nowMs, zone)[0] : past;
  if (!spoken) return undefined;
  const next = behindMoment(words, spoken.next);
  const lead = textOf(words.slice(at, spoken.next));
  const on = /\bfrom\b/.test(lead) && wordAt(words, spoken.next) === "on";
  const ongoing = by || on || /^(as of|.*\bsince)\b/.test(lead);
  return { at: spoken.value, from: at, next, ongoing, lasting: false };
}

/** "By half past two" is read as "at half past two". */
function asAt(words: readonly Word[], at: number): Word[] {
  return words.map((one, place) => (place === at ? { ...one, word: "at" } : one));
}

/** "At eleven" beside another moment is what a gauge shows. */
const MAYBE_HOUR = /^at (?!noon|midday)[a-z\d]+$/;

/** The only moment of some words; undefined where there is none, or more than one. */
function onlyMoment(words: readonly Word[], context: Context): Moment | undefined {
  const found: Moment[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const here = momentAt(words, at, context);
    if (!here) continue;
    found.push(here);
    at = here.next - 1;
  }
  const sure = found.filter(({ from, next }) => !MAYBE_HOUR.test(textOf(words.slice(from, next))));
  const meant = found.length > 1 ? sure : found;
  return meant.length === 1 ? meant[0] : undefined;
}

/** Words that a moment has at least one of: without them nothing is looked for. */
const TIMELY = wordSet(
  "ago back earlier since for past last to till after gone at now already these this",
  "minute minutes hour hours by of",
);

/** A clause that is nothing but a moment: "like three minutes ago". */
export function isMoment({ words }: Utterance, context: Context): boolean {
  const from = words.findIndex(({ word }) => !LEADING.has(word));
  const moment = from < 0 ? undefined : momentAt(words, from, context);
  return moment !== undefined && moment.next === words.length && !moment.lasting;
}

const LEADING = wordSet("oh uh um well no that was it or call say make so");

const late = new WeakMap<Utterance, { nowMs: number; late: Late | undefined }>();

/** The words without the moment they name; undefined where they name none. */
export function toldLate(said: Utterance, context: Context): Late | undefined {
  const known = late.get(said);
  if (known?.nowMs === context.nowMs) return known.late;
  const found = lateIn(said, context);
  late.set(said, { nowMs: context.nowMs, late: found });
  return found;
}

function lateIn(said: Utterance, context: Context): Late | undefined {
  if (said.asked || said.cut || !said.words.some(({ word }) => TIMELY.has(word))) return undefined;
  const { from, next } = excusesOf(said.words);
  const words = said.words.slice(from, next);
  const moment = onlyMoment(words, context);
  if (!moment || context.nowMs - moment.at > LONGEST_AGO_MS) return undefined;
  const left = words.filter((_, at) => at < moment.from || at >= moment.next);
  const inner = excusesOf(left);
  const kept = left.slice(inner.from, inner.next);
  if (kept.length === 0) return undefined;
  const rest: Utterance = { text: said.text, words: kept, asked: false, cut: false };
  const at = localIso(moment.at, context.zone);
  const present = inPresent(kept, moment);
  return {
    rest,
    ...(present ? { present: { ...rest, words: present } } : {}),
    at,
    ongoing: moment.ongoing,
  };
}

const IN_PRESENT: ReadonlyMap<string, string> = new Map([
  ["was", "is"],
  ["were", "are"],
  ["has", "is"],
  ["have", "are"],
]);

/** "The weight was rocking", "it's been boiling", "been venting": as it is said of now. */
function inPresent(words: readonly Word[], { lasting }: Moment): Word[] | undefined {
  const been = words.findIndex(({ word }) => word === "been");
  const was = lasting ? -1 : words.findIndex(({ word }) => word === "was" || word === "were");
  if (been < 0 && was < 0) return undefined;
  const verb = been < 0 ? was : been - 1;
  return words.flatMap((one, at) => {
    if (at === been) return [];
    return [at === verb ? { ...one, word: IN_PRESENT.get(one.word) ?? one.word } : one];
  });
}

/** "It was boiling at three": over again, for all that one knows. */
function mayBeOver(intent: Intent, { ongoing }: Late): boolean {
  const { cost, anyStep } = MEANINGS[intent];
  return !ongoing && cost === "clearing" && !anyStep;
}

/** What is told late, where the rest of the words is a report. */
export function lateReport(
  said: Utterance,
  context: Context,
  read: (rest: Utterance) => Command | undefined,
): Command | undefined {
  const told = toldLate(said, context);
  if (!told) return undefined;
  const plain = read(told.rest);
  const present = plain || !told.present ? undefined : read(told.present);
  const command = plain ?? present;
  if (!command || !MEANINGS[command.intent].report || "at" in command.slots) return undefined;
  if (told.present && mayBeOver(command.intent, told)) return undefined;
  return "at" in MEANINGS[command.intent].slots ? withSlots(command, { at: told.at }) : command;
}
