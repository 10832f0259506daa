/** Running lots that are given up: "drop the Blue Lake", "it's gone tough, leave it out". */
import { commandOf } from "../../kitchen/command.ts";
import type { Context, NamedBatch } from "../context.ts";
import { clausesIn } from "../evidence/split.ts";
import { wordSet } from "../grammar/word-set.ts";
import { beginsAsking } from "../guards.ts";
import { refFor } from "../values/finish-slots.ts";
import { runningLotAt } from "../values/running-lots.ts";
import { smallWholeAt } from "../values/spoken-numbers.ts";
import { textOf, type Utterance } from "../words.ts";
import type { LotWords } from "./lot-counts.ts";

/** What a whole clause comes to, with N for the lot and a pronoun for one named before it. */
const LEAD =
  "(?:(?:so|okay|right|well|oh|hell|please|let us|just|now|then|ach|better|" +
  "(?:i|we)(?: am| are| will| have)?) )*";
const REST = "(?: (?:now|then|please|altogether|for good|entirely|completely|after all|today))*";
const IT = "(?:N|it|them|those|these|that|(?:that|the|this) lot)";
const DROP =
  "(?:drop|skip|scrap|ditch|abandon|bin|dump|junk|chuck|toss|pitch|sling)(?:ping|ning|ing)?" +
  "(?: out| away)?";
const GIVEN_UP = [
  `(?:give|gave|giving) up (?:on )?${IT}|(?:give|giving) ${IT} up`,
  `${DROP} ${IT}(?: out| away| off)?|forget (?:about )?(?:N|them|those)`,
  `(?:throw|write)(?:ing)? (?:out|away|off) ${IT}|(?:throw|write)(?:ing)? ${IT} (?:out|away|off)`,
  "leave N",
  `(?:leave|leaving) (?:out ${IT}|${IT} out)|call ${IT} off|call off ${IT}`,
  "(?:(?:to |the )*hell with|no more(?: of)?|never mind|scratch|sod|bugger|stuff) N",
  `(?:the )?(?:chickens|hens|pigs|goats|ducks) (?:can|may|will) have ${IT}`,
  `(?:give|giving) (?:it |them |N )?to the (?:chickens|hens|pigs|goats|ducks|compost)`,
  "N (?:i|we) (?:do not|are not going to|will not) (?:do|make|bother with|finish)(?: any more)?",
  "(?:do not|not) (?:doing|do|making|bother with|finishing) N",
  "N (?:is|are|has been|have been) (?:a )?(?:lost cause|write off|goner|scrapped|given up)",
];
const WHOLE = new RegExp(`^${LEAD}(?:${GIVEN_UP.join("|")})${REST}$`);

/** The same for a lot that was given up before. */
const AGAIN_LEAD =
  "(?:(?:so|okay|right|well|oh|no|wait|actually|hang on|sorry|please|let us|just|now|then|and|" +
  "(?:i|we)(?: am| are| will| have)?) )*";
const TAKEN_UP = [
  "(?:put|bring|take|get|add|pick|keep|have)(?:ing|ting)? N (?:back|up|in)(?: (?:in|on|up|again))*",
  "(?:put|bring|take|get|add|pick)(?:ing|ting)? (?:back|up)(?: in| on)? N",
  "N (?:is|are|goes|go|comes|come)(?: back)?(?: (?:in|on))?(?: again| after all)*",
  "(?:do|doing|make|making|keep|keeping|use|using|fill|filling) N(?: after all| again)*",
  "N after all",
];
const AGAIN = new RegExp(`^${AGAIN_LEAD}(?:${TAKEN_UP.join("|")})${REST}$`);

/** With one of these nobody gives anything up here and now. */
const NOT_NOW = new RegExp(
  "\\b(if|should|would|could|might|may|wish|yesterday|tomorrow|last (year|week|time|summer)|" +
    "my|his|her|their|someone|some time|jars?|pints?|quarts?)\\b|" +
    "\\b(do not|not|never) (give|drop|scrap|ditch|abandon|forget|bin|dump|chuck|toss|throw|" +
    "leave)\\b",
);

/** Of what goes on, or why: nothing more is to be done for it. */
const REASONS = wordSet(
  "stringy tough soft hollow chickens hens pigs compost heap rotten limp woody mushy bitter rust",
  "beetles slugs bolted worth yellow moldy mouldy spotty seedy salsa supper dinner tonight rest",
  "others only keep carry finish continues goes lovely fine good bad gone enough time face cause",
);
const OF_THEM = new RegExp(
  "^(?:they|it|them|these|those|all|too|because|since|not worth|just|only|keep|carry|finish|" +
    "the (?:rest|others?)|for|out|with|gone|no good|(?:i )?can not)\\b",
);

type Clause = { said: Utterance; text: string; lots: NamedBatch[] };

/** A clause with its lots as N; an article or "all" before one goes with it. */
function withoutNames(clause: Utterance, running: Context["running"]): Clause {
  const lots: NamedBatch[] = [];
  const words: string[] = [];
  for (let at = 0; at < clause.words.length; ) {
    const lot = runningLotAt(clause, at, running);
    if (lot) lots.push(lot.value);
    words.push(lot ? "N" : (clause.words[at]?.word ?? ""));
    at = lot?.next ?? at + 1;
  }
  const text = words
    .join(" ")
    .replace(/\b(?:(?:the|them|those|these|all|of|that|lot) )+(?=N\b)/g, "");
  return { said: clause, text, lots };
}

/**
 * The one running lot that a clause gives up, by its name or by a pronoun after it; undefined for
 * anything else. The kitchen asks for a yes by its name.
 */
export function givenUpLot(said: Utterance, context: Context): LotWords | undefined {
  const all = textOf(said.words);
  if (said.asked || said.cut || beginsAsking(said.words.map(({ word }) => word))) return undefined;
  if (NOT_NOW.test(all)) return undefined;
  const clauses = clausesIn(said).map((clause) => withoutNames(clause, context.running));
  const at = clauses.findIndex(({ text }) => WHOLE.test(text));
  const found = clauses[at];
  if (!found) return undefined;
  const [lot, another] = found.lots.length > 0 ? found.lots : namedBefore(clauses.slice(0, at));
  if (!lot || another) return undefined;
  const target = lot.variety?.toLowerCase() ?? "";
  const ref = refFor(target, "abandon", said, context);
  const others = clauses.filter((one) => {
    const again = WHOLE.test(one.text) && (one.lots.length === 0 || one.lots[0] === lot);
    return one !== found && !again && !tellsWhy(one);
  });
  return {
    commands: [commandOf("abandon", { target }, { ref })],
    clauses: [found.said],
    others: others.map((one) => one.said),
  };
}

/** The lot that was given up and goes on after all; undefined for anything else. */
export function takenUpLot(said: Utterance, context: Context): LotWords | undefined {
  if (said.asked || said.cut || beginsAsking(said.words.map(({ word }) => word))) return undefined;
  const givenUp = context.running.filter((one) => one.givenUp);
  const clauses = clausesIn(said).map((clause) => withoutNames(clause, givenUp));
  const found = clauses.find(({ text, lots }) => lots.length === 1 && AGAIN.test(text));
  const [lot] = found?.lots ?? [];
  if (!found || !lot) return undefined;
  const target = lot.variety?.toLowerCase() ?? "";
  const ref = refFor(target, "resume", said, context);
  return {
    commands: [commandOf("resume", { target }, { ref })],
    clauses: [found.said],
    others: clauses.filter((one) => one !== found).map((one) => one.said),
  };
}

/** What a pronoun is for, unless jars were counted: "forget it" takes a count back. */
function namedBefore(clauses: readonly Clause[]): readonly NamedBatch[] {
  const counted = clauses.some(({ said: { words } }) => {
    return words.some((_, place) => smallWholeAt(words, place) !== undefined);
  });
  return counted ? [] : (clauses.findLast(({ lots }) => lots.length > 0)?.lots ?? []);
}

function tellsWhy({ text, said }: Clause): boolean {
  return OF_THEM.test(text) || said.words.some(({ word }) => REASONS.has(word));
}
