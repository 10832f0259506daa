/**
 * What a sentence may mean for jars at stake, apart from what is done about it: a likely loss, or
 * words about heat, water, lids, acid or a gauge that fit nothing else.
 */

import type { Command, Evidence, Intent } from "../../kitchen/command.ts";
import type { Sign } from "../../kitchen/facts/fields.ts";
import { foodsNamed } from "../../recipe/foods/name-foods.ts";
import { wordSet } from "../grammar/word-set.ts";
import { isIntent, MEANINGS } from "../intents/all.ts";
import type { Frame } from "../model/corpus.ts";
import type { Likely } from "../model/linear-model.ts";
import { textOf, type Utterance, utteranceOf } from "../words.ts";
import { isOnTheStove } from "./elsewhere.ts";
import { foodsIn, isAdded, putIn } from "./put-in.ts";

type Subject = Evidence["about"];

/** What is lost, where a meaning tells of a loss in a process. */
function lossBy(intent: Intent): Subject | undefined {
  const { tellsOf } = MEANINGS[intent];
  return tellsOf?.goes ? tellsOf.about : undefined;
}

/** Beginnings of words about a subject; the first subject with one of them is taken. */
const STEMS: readonly (readonly [Subject, readonly string[]])[] = [
  ["acid", stems("vinegar lemon lime citric acid percent grain sour powder sachet packet")],
  ["pressure", stems("pressur needle weight rock jiggl hiss pound psi steam")],
  ["gauge", stems("gauge dial")],
  [
    "boil",
    stems(
      "boil simmer bubbl roll flame burner fire gas heat hob stove spit sputter flicker power",
      "breaker fuse electric induction propane pilot knob fizz murmur shiver trembl shimmer sulk",
      "lukewarm tepid cook",
      "quiet calm low nudg",
    ),
  ],
  ["lids", stems("lid band rubber reused")],
  // What was done with the jars before they went in, and where the kitchen is.
  ["jars", stems("jar fill inch rim brim headspac overf steril altitud elevat cabin")],
  ["water", stems("water cover uncover poking sticking submerg dry")],
];

function stems(...lines: string[]): string[] {
  return lines.flatMap((line) => line.split(" "));
}

/** Whether a word is one of a stem's; a watermelon is no water. */
function isPartOf(word: string): (stem: string) => boolean {
  const food = foodsNamed(word).some(({ kind }) => kind !== "water");
  return (stem) => word.startsWith(stem) && !(stem === "water" && food);
}

/** Before what was not done, or perhaps not. */
const HARDLY =
  "\\b(not|only|never|nobody|forgot|skipped|missed|without|might|may|maybe|barely|hardly)\\b";

/** Pieces of a sentence that are a likely loss whatever surrounds them. */
const PIECES: readonly (readonly [Subject, RegExp])[] = [
  [
    "boil",
    /\b(flame|burner|gas|fire|stove|hob|heat|power)( \w+){0,3} (out|off|died|dead|gone|cut)\b/,
  ],
  ["boil", /\b(breaker|fuse|power)( \w+){0,3} (tripped|blew|blown|popped|went|kicked)\b/],
  ["boil", /\b(tripped|blew|popped|flipped)( \w+){0,2} (breaker|fuse)\b/],
  [
    "boil",
    /\b(leaned|leant|bumped|knocked|nudged|brushed|hit)( \w+){0,4} (knob|dial|burner|switch)\b/,
  ],
  ["boil", /\b(knob|dial|burner)( \w+){0,2} (got|was) (bumped|knocked|nudged|turned)\b/],
  ["boil", /\b(stopped|quit|ceased|off|lost|gave up)( \w+){0,2} (boil|boiling|bubbling)\b/],
  ["boil", /\b(ring|burner|stove|plate|element|hob)( \w+){0,3} cold\b/],
  [
    "boil",
    /\b(pan|pot|canner|it)( \w+){0,2} off (the|its) (ring|burner|heat|stove|hob|flame|plate)\b/,
  ],
  ["boil", /\bturned( \w+){0,3} (to nothing|all the way down|right down)\b/],
  ["boil", /\bboil(ing)?( \w+){0,2} (stopped|quit|died|gone|lost)\b/],
  ["boil", /\b(only|just|barely|hardly|scarcely)( \w+)? (simmer|simmering|bubbling)\b/],
  ["boil", /\bnot( \w+){0,3} (boil|boiling|bubbling)\b/],
  ["boil", /\b(turned|switched|shut|knocked)( \w+){0,3} off\b/],
  ["pressure", /\b(pressure|needle|dial|gauge)( \w+){0,3} (dropped|fell|down|low|gone|lost)\b/],
  ["pressure", /\b(lost|losing)( \w+){0,2} (pressure|steam)\b/],
  ["pressure", /\bweight( \w+){0,3} (stopped|still|quiet|quit)\b/],
  [
    "boil",
    /\b(may|might|could|think|sure|believe)( \w+){0,4} (stopped|quit|dropped|dipped|slipped)\b/,
  ],
  ["boil", /\bnot (sure|certain|know|swear|say|tell)( \w+){0,4} (kept|stayed|held|keep|stay)\b/],
  // A canner that was made to come down, or opened before it had.
  ["pressure", /\b(opened|cooled|hurried|rushed)( \w+){0,6} (pressure|sink|steam|cooling)\b/],
  ["pressure", /\b(cold water|ice|wet \w+)( \w+){0,3} (on|over|onto) (the|that|my) canner\b/],
  ["pressure", /\b(let|bled|released)( \w+){0,2} pressure (out|off|down)\b|\bdunked\b/],
  ["pressure", /\b(lifted|took|knocked|pulled)( \w+){0,2} weight\b/],
  // A vent that was closed before its time.
  ["pressure", /\b(weight|petcock|vent)( \w+){0,3} (on|closed|shut)( \w+)? (soon|early|before)\b/],
  ["pressure", /\b(weight|petcock)( \w+){0,2} on( \w+)? (away|once|immediately|first)\b/],
  ["pressure", /\b(closed|shut)( \w+){0,2} (petcock|vent)( \w+)? (soon|early|before)\b/],
  // Jars that were taken out, or heat that was taken off, before the time.
  [
    "boil",
    /\b(took|pulled|lifted|turned|shut|came|stopped|cut)( \w+){0,6} (early|too soon|a bit soon)\b/,
  ],
  ["boil", /\bcut( \w+){0,2} short\b|\bonly (had|got|went|ran)( \w+){0,2} minutes\b/],
  ["boil", /\b(before|short of)( \w+){0,2} time\b/],
  // Cold water takes the boil away.
  ["boil", /\b(cold|tap)( \w+)? water\b|\b(from|under) the (cold )?(tap|faucet)\b/],
  ["water", /\b(lids?|jars?|tops)( \w+){0,3} (uncovered|showing|exposed|out of the water)\b/],
  ["water", /\bwater( \w+){0,3} (low|below|boiled away|gone)\b/],
  ["lids", /\b(used|old|last year|reused)( \w+){0,2} lids?\b/],
  ["lids", /\blids?( \w+){0,3} (dents?|dented|bent)\b/],
  ["lids", /\blids?( \w+){0,3} (used|old|last year|reused)\b/],
  // Jars that were filled wrong, or cold, or stood before they went in.
  ["jars", /\b(overfull|overfilled|headspace)\b/],
  ["jars", /\b(brim|rim|too full|little full|no room)\b/],
  ["jars", /\b(cooled|cold|cool|lukewarm)( \w+){0,3} (before|when|by the time)\b/],
  [
    "jars",
    /\b(gone|stone|went|got) cold\b|\b(lukewarm|tepid)\b|\bcold pot\b|\bnot( \w+){0,3} hot\b/,
  ],
  [
    "jars",
    /\b(stood|sat|sitting|waiting|waited|standing)( \w+){0,5} (hours?|afternoon|breakfast)\b/,
  ],
  ["jars", /\b(stood|sat|sitting|waiting|waited|standing)( \w+){0,4} (day|good while|morning)\b/],
  [
    "jars",
    /\b(filled|packed|ladled)( \w+){0,3} (morning|yesterday|last night|hours? ago|breakfast)\b/,
  ],
  ["jars", /\b(had|left|sat|stood|been)( \w+){0,4} (counter|overnight|table)\b/],
  // What lay for days, or began to spoil, before it was put up.
  [
    "jars",
    new RegExp(
      "\\b(lay|lain|lying|left|been|were|sat|stood|kept|sitting|standing|had)( \\w+){0,9} " +
        "((since|from) (yesterday|last \\w+|monday|tuesday|wednesday|thursday|friday|saturday|" +
        "sunday|this morning)|for( \\w+){0,3} " +
        "(days?|weeks?|nights?|fortnight|months?)|overnight)\\b",
    ),
  ],
  ["jars", /\b(furry|fuzzy|mou?ldy|(bit|gone|went) fizzy|mushy|rotten|slimy|gone off)\b/],
  [
    "jars",
    /\b(let|left)( \w+){0,2} (pot|food|sauce|fruit|syrup|brine|jars)( \w+)? (cool|stand|sit)\b/,
  ],
  ["jars", new RegExp(`${HARDLY}.*\\bjars?\\b.*\\b(boiled|steril|scald)`)],
  ["jars", new RegExp(`${HARDLY}.*\\b(boiled|steril|scald).*\\bjars?\\b`)],
  ["jars", /\b(much|far|way|lot) higher\b|\bup the (mountain|hill)\b/],
  ["jars", /\bat the (lake|summer|mountain|ski) house\b/],
  // A place other than the one that was told: its altitude may differ.
  ["jars", /\bhigher up\b|\bat the (cabin|lodge)\b|\bup in the mountains\b|\bup here\b/],
  ["jars", /\b(moved|altitude|elevation)\b.*\bfeet\b|\bfeet (high|up|of (altitude|elevation))\b/],
  ["gauge", /\b(gauge|dial|needle)( \w+){0,4} (high|low|off|wrong|much|tested|trust|rests)\b/],
  ["gauge", /\b(gauge|dial) (test|check)\b/],
  ["gauge", /\b(gauge|dial|needle)( \w+){0,3} (stick|sticks|sticking|stuck|jumps|jumping|jumpy)\b/],
  ["gauge", new RegExp(`${HARDLY}.*\\b(gauge|dial)( \\w+){0,4} (checked|looked)\\b`)],
  ["gauge", /\b(gauge|dial)( \w+){0,3} (not|never)( \w+){0,3} (checked|looked|calibrated)\b/],
  [
    "gauge",
    /\b(not|never|nobody)( \w+){0,3} (test|check|tested|checked)( \w+){0,3} (gauge|dial)\b/,
  ],
  ["gauge", /\b(trust|believe)( \w+){0,2} (gauge|dial|needle)\b/],
  ["acid", /\b(forgot|without|left out|no)( \w+){0,3} (lemon|acid|citric|vinegar)\b/],
  ["acid", /\b(three|four)( and a half)? percent\b/],
  ["acid", /\b(halved|half|less)( \w+){0,2} vinegar\b|\bdoubled( \w+)? water\b/],
  ["acid", /\b(watered|thinned|diluted|stretched|cut|made|brewed)( \w+){0,3} vinegar\b/],
  ["acid", /\b(rice|wine|malt|balsamic|homemade|cleaning)( \w+){0,2} vinegar\b/],
  ["acid", /\b(half|third|skimped|reduced|less)( (the|as|of|on|much|than)){1,3} (vinegar|lemon)\b/],
  ["acid", /\b(squeezed|fresh)( \w+){0,2} (lemons?|limes?)\b/],
  ["jars", /\b(ran|run|short)( \w+){0,4} (used|instead)\b/],
  ["acid", /\blabel( \w+){0,4} (three|four|weak)\b/],
  ["food", /\bthickened\b/],
  // Of what is not known as a food here.
  ["food", /\b(half|most|part) of (it|this) (is|was) (?!not )\w+$/],
];

/** In the jars after all, whatever else is cooked of it. */
const IN_WITH_IT = new RegExp(
  "\\b(in|into|with) (it|this|there|these|those|them|the jars?)\\b|\\bin with\\b|^with\\b|" +
    "\\b(half|most|part) of (it|this)\\b|" +
    "\\b(mostly|instead|swapped|replaced|thickened|use up|using up)\\b",
);

const OF_FILLING: ReadonlySet<Subject> = new Set(["lids", "acid", "jars", "gauge"]);

/** What is over, or was true on another day. */
const OVER = wordSet(
  "was were had went stopped quit lost came ran fell dropped died turned forgot took pulled shut",
  "leaked did been boiled spilled steamed halved doubled",
  "lifted opened cooled hurried rushed knocked cut let dunked released bled put sat stood left",
);
const UNSURE = /\b(might|may|maybe|not sure|can not remember|do not (know|remember|think))\b/;
const UNREAL = /\b(what if|if|wish|almost|nearly|would|could have|should)\b/;
const OTHER_DAY =
  /\b(last|two|three|years?) (year|summer|week|month|season|years|summers|ago)\b(?! is\b)/;

/** Whether it tells of another day than this one. */
export function isOfAnotherDay({ words }: Utterance): boolean {
  return OTHER_DAY.test(textOf(words));
}

/** What is said in these frames is not about now, or is hearsay: it is only kept. */
const FAINT: ReadonlySet<Frame> = new Set(["wished", "imagined", "elsewhere", "idle", "asked"]);

/** How likely a meaning has to be for a doubt. */
const LIKELY = 0.2;

/** What the model takes a sentence to be. */
type Taken = {
  frame: Frame;
  intents: readonly Likely[];
};

/** The evidence in a plain report of a loss; undefined for anything else. */
export function lossIn({ intent }: Command, said: Utterance): Evidence | undefined {
  const about = lossBy(intent);
  const { text } = said;
  return about && { strength: "loss", about, text, intent, ...whenOf(said) };
}

/** That something came back: no pot at the back, nobody who came back, nothing said again. */
const BACK = new RegExp(
  "(?<!\\b(say|saying|said|tell|telling|told)( \\w+){0,3} )\\bagain\\b|" +
    "\\b(relit|relighted|restarted|rekindled|returned)\\b|" +
    "(?<!\\b(my|our|the|that|this) )(?<!\\bi( (am|have|just|came|come|got|ran|went|was)){0,3} )" +
    "\\bback\\b(?! (down|burner|ring|pot|pan|stove|left|right|one|door|side|corner|of)\\b)",
);
/** As people speak of something new; it says nothing about a reading. */
const ARRIVES = /\b(now|finally|at last|reached|hit|(come|came|got) (up )?to|there it (is|goes))\b/;
const NEVER_GONE = /\b(still|never stopped|all along|whole time|kept|keeps)\b/;

/** The doubt in a report that the heat is back. */
function returnIn({ intent }: Command, text: string): Evidence | undefined {
  const { tellsOf } = MEANINGS[intent];
  if (!tellsOf?.comes) return undefined;
  const all = textOf(utteranceOf(text).words);
  if (NEVER_GONE.test(all)) return undefined;
  const told = { about: tellsOf.about, text, intent, returned: true } as const;
  if (BACK.test(all)) return { strength: "suspicion", ...told };
  const read = intent === "pressure" || intent === "temperature";
  return !read && ARRIVES.test(all) ? { strength: "trace", ...told } : undefined;
}

/** A command with the doubt that it raises, in the words of its sentence. */
export function withEvidence(command: Command, text: string): Command {
  const evidence = command.evidence ?? returnIn(command, text);
  return evidence ? { ...command, evidence: { ...evidence, text } } : command;
}

/** What each sign of a canner tells of. */
const TELLS_OF: Readonly<Record<Sign, Subject>> = {
  boil: "boil",
  burner: "boil",
  steam: "pressure",
  pressure: "pressure",
};

/** What it never did, and no more. */
const STEADY = new RegExp(
  "^(?!.*\\b(but|until|till|except|then|only)\\b)" +
    ".*\\b(not|never) (budged|moved|wavered|dipped|flinched)\\b",
);

/** The doubt in a report that is taken back by its name, should that not be possible any more. */
export function doubtTakenBack(command: Command, { text }: Utterance): Evidence | undefined {
  if (command.intent !== "undo" || command.slots.about === undefined) return undefined;
  const about = TELLS_OF[command.slots.about];
  return { strength: "suspicion", about, text, past: true, earlier: true };
}

/** Some time ago, or for a while that is over. */
const EARLIER = new RegExp(
  "\\b(ago|back|earlier|during|at (first|(one|some) (point|time))|before that|once|halfway|" +
    "in the (middle|beginning)|" +
    "for a (little |short )?(while|bit|moment|minute|second|time|spell))\\b",
);

/** Whether it speaks of the past, and of some time ago. */
export function whenOf(said: Utterance): Pick<Evidence, "past" | "earlier"> {
  if (!isOver(said)) return {};
  return { past: true, ...(EARLIER.test(textOf(said.words)) ? { earlier: true } : {}) };
}

/** Whether it tells of this day's past. */
function isOver({ words }: Utterance): boolean {
  const all = textOf(words);
  return !OTHER_DAY.test(all) && words.some(({ word }) => OVER.has(word));
}

/**
 * The evidence in a sentence that nothing was done about.
 * @param answered it was a question, and has its answer
 */
export function doubtIn(said: Utterance, taken: Taken, answered: boolean): Evidence | undefined {
  const { text } = said;
  const words = said.words.map(({ word }) => word);
  const all = words.join(" ");
  if (isOnTheStove(words) && !IN_WITH_IT.test(all)) return undefined;
  if (STEADY.test(all)) return undefined;
  const told = { text, ...whenOf(said) };
  const faint = FAINT.has(taken.frame) || said.asked || OTHER_DAY.test(all);
  const piece = PIECES.find(([, pattern]) => pattern.test(all));
  // Words about lids, acid and filling say nothing about the heat.
  const ofFood = piece !== undefined && OF_FILLING.has(piece[0]);
  const intent = taken.intents
    .filter(({ probability }) => !ofFood && probability >= LIKELY)
    .map(({ name }) => name)
    .filter(isIntent)
    .find((name) => lossBy(name) !== undefined);
  if (faint && answered) return undefined;
  const foods = foodsIn(all);
  const here = !said.asked && !OTHER_DAY.test(all) && !UNREAL.test(all);
  const mixed = here ? putIn(all) : undefined;
  if (intent) {
    const weak = faint || taken.frame === "denied" || taken.frame === "past";
    const about = lossBy(intent) ?? "boil";
    return { strength: weak ? "trace" : "suspicion", about, intent, ...told, ...mixed };
  }
  if (piece) {
    return { strength: faint ? "trace" : "suspicion", about: piece[0], ...told, ...mixed };
  }
  if (mixed) return { strength: "suspicion", about: "food", ...mixed, ...told };
  const stem = STEMS.find(([, begin]) => words.some((word) => begin.some(isPartOf(word))));
  if (stem && answered) return undefined;
  if (stem) {
    // Whoever is not sure what went into the jars says that something may be wrong with them.
    const unsure = !faint && OF_FILLING.has(stem[0]) && UNSURE.test(all);
    const named = foods.length > 0 ? { foods } : {};
    const about = stem[0] === "boil" && isAdded(all) ? "jars" : stem[0];
    return { strength: unsure ? "suspicion" : "trace", about, ...told, ...named };
  }
  if (foods.length > 0) return { strength: "trace", about: "food", foods, ...told };
  return !answered && !faint && isAdded(all)
    ? { strength: "trace", about: "jars", ...told }
    : undefined;
}
