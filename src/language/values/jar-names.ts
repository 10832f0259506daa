/**
 * Jars by what is on them: the marks on their lids, their short ids, and a batch's id with a
 * number: "D three didn't seal", "opened clover 42", "260814-1:3 is open".
 */
import type { Ref } from "../../kitchen/command.ts";
import { WRITER_WORDS, wordOf } from "../../kitchen/jars/jar-ids.ts";
import type { Context, NamedBatch } from "../context.ts";
import { wordSet } from "../grammar/word-set.ts";
import { type Utterance, utteranceOf } from "../words.ts";
import { smallWholeAt } from "./spoken-numbers.ts";

/** A jar as it was said: the lots it may be of, and the number on its lid. */
export type NamedJar = { refs: readonly Ref[]; number: number; said: string };

/** The same words with plain numbers for the jars, and which jar each number stands for. */
export type JarsNamed = { text: string; jars: ReadonlyMap<number, NamedJar> };

/** Spellings of spoken letters; none of them is an ordinary word. */
const LETTERS: ReadonlyMap<string, string> = new Map(
  "bee=b sea=c dee=d ef=f eff=f gee=g jay=j kay=k pee=p cue=q queue=q ess=s tea=t tee=t vee=v ex=x"
    .split(" ")
    .map((pair) => pair.split("=") as [string, string]),
);
/** Letters that sound like words of every sentence: only in a list of jars, or after "jar". */
const WORDS_TOO: ReadonlyMap<string, string> = new Map(
  "be=b see=c are=r you=u why=y oh=o".split(" ").map((pair) => pair.split("=") as [string, string]),
);
const JAR_WORDS = wordSet("jar jars lid lids number numbers");
const JOINS = wordSet("and or plus nor");
const ANSWERS = wordSet("yes yep yeah no nope good fine down up");
const THINKING = wordSet("um uh hm hmm er ah oh well");
const CALLED: ReadonlySet<string> = new Set([...ANSWERS, ...THINKING]);
/** A number before one of these counts something. */
const COUNTED = wordSet(
  "jar jars lid lids pint pints quart quarts of more others pound pounds minutes minute hours hour",
  "percent degrees psi feet days day weeks more batches loads out",
);
const WRITERS: ReadonlySet<string> = new Set(WRITER_WORDS);

/** `ranged`: one of those up to a number, which stand together in one place. */
type JarSaid = NamedJar & { from: number; next: number; ranged?: true };

/** Numbers of two digits that stand for jars; a sentence names few. */
const FIRST_PLACE = 61;
const MOST_JARS = 30;

function recordOf(context: Context): readonly NamedBatch[] {
  return context.onRecord?.batches ?? context.running;
}

export function refOfLot({ id: owner, lot }: NamedBatch): Ref {
  return lot === undefined ? { owner } : { owner, lot };
}

/** The lot among these that is meant. */
export function lotOfRef(ref: Ref, lots: readonly NamedBatch[]): NamedBatch | undefined {
  const key = JSON.stringify(ref);
  return lots.find((lot) => JSON.stringify(refOfLot(lot)) === key);
}

/** Lots with this mark; those that have a jar of the number, where any has. */
function marked(mark: string, number: number, context: Context): Ref[] {
  const lots = recordOf(context).filter((one) => one.mark?.toLowerCase() === mark);
  const having = lots.filter(({ jars }) => jars?.some((jar) => jar.number === number));
  return (having.length > 0 ? having : lots).map(refOfLot);
}

class Names {
  private readonly said: Utterance;
  private readonly marks: ReadonlySet<string>;

  constructor(
    private readonly text: string,
    private readonly context: Context,
    private readonly wholeIds: ReadonlyMap<number, string>,
  ) {
    this.said = utteranceOf(text);
    this.marks = new Set(recordOf(context).flatMap(({ mark }) => mark?.toLowerCase() ?? []));
  }

  all(): JarSaid[] {
    const found: JarSaid[] = [];
    for (let at = 0; at < this.said.words.length; at += 1) {
      const last = found.at(-1);
      const one = this.at(at, last) ?? this.further(at, last);
      if (!one) continue;
      const range = this.range(one);
      found.push(one, ...range);
      at = (range.at(-1) ?? one).next - 1;
    }
    return found;
  }

  private word(at: number): string {
    return this.said.words[at]?.word ?? "";
  }

  /** Whether a place follows a jar in a list, or the word for one. */
  private isExpected(at: number, last: JarSaid | undefined): boolean {
    const before = this.word(at - 1);
    return JAR_WORDS.has(before) || (last !== undefined && this.follows(at, last));
  }

  private follows(at: number, last: JarSaid): boolean {
    return at === last.next || (at === last.next + 1 && JOINS.has(this.word(last.next)));
  }

  private at(at: number, last: JarSaid | undefined): JarSaid | undefined {
    const number = smallWholeAt(this.said.words, at + 1);
    if (!number || number.value < 1) return undefined;
    const { value, next } = number;
    const word = this.word(at);
    const said = this.text.slice(this.said.words[at]?.start, this.endOf(next - 1));
    const place = { from: at, next, number: value, said };
    if (WRITERS.has(word)) {
      const jar = this.byId(word, value, this.wholeIds.get(this.said.words[at]?.start ?? 0));
      return jar && { ...place, ...jar };
    }
    // "Threw P four out", but "p four out of six".
    const counts = this.word(next) === "out" ? this.word(next + 1) === "of" : true;
    const isCount = counts && COUNTED.has(this.word(next));
    if (isCount && !JAR_WORDS.has(this.word(at - 1))) return undefined;
    const mark = this.markOf(word, at, last);
    return mark === undefined || value > 99
      ? undefined
      : { ...place, refs: marked(mark, value, this.context) };
  }

  /** "P one yes, two yes, three no": what stands between and behind are answers. */
  private isCalled(at: number, last: JarSaid): boolean {
    const between = this.said.words.slice(last.next, at).map(({ word }) => word);
    if (between.length === 0 || !between.every((word) => CALLED.has(word))) return false;
    const behind = this.said.words.slice(at + 1).find(({ word }) => !THINKING.has(word));
    return between.some((word) => ANSWERS.has(word)) && ANSWERS.has(behind?.word ?? "");
  }

  /** "P three and five": a number after a jar is another of that mark. */
  private further(at: number, last: JarSaid | undefined): JarSaid | undefined {
    if (!last || !(this.follows(at, last) || this.isCalled(at, last))) return undefined;
    const number = smallWholeAt(this.said.words, at);
    if (!number || number.value < 1 || number.value > 99) return undefined;
    if (COUNTED.has(this.word(number.next))) return undefined;
    const letters = /^[a-z]+/i.exec(last.said)?.[0] ?? "";
    const mark = this.markOf(letters.toLowerCase(), last.from, last);
    if (mark === undefined) return undefined;
    const { value, next } = number;
    const refs = marked(mark, value, this.context);
    return { from: at, next, number: value, said: `${letters} ${value}`, refs };
  }

  /** "D one through four": the jars up to the second number. */
  private range({ next, number, said, from }: JarSaid): JarSaid[] {
    const letters = /^[a-z]+/i.exec(said)?.[0] ?? "";
    // "P one to P five": its mark once more.
    const behind = this.word(next + 1) === letters.toLowerCase() ? next + 2 : next + 1;
    const last = smallWholeAt(this.said.words, behind);
    if (!/^(through|thru|to)$/.test(this.word(next)) || !last || last.value > 99) return [];
    const mark = this.markOf(letters.toLowerCase(), from, undefined);
    if (mark === undefined || COUNTED.has(this.word(last.next))) return [];
    return Array.from({ length: Math.max(0, last.value - number) }, (_, index): JarSaid => {
      const each = number + index + 1;
      const refs = marked(mark, each, this.context);
      const place = { from: last.next, next: last.next, ranged: true as const };
      return { ...place, number: each, said: `${letters} ${each}`, refs };
    });
  }

  /** Where a word ends in the text, without the "is" that may be bound to it: "four's". */
  private endOf(at: number): number | undefined {
    const { start, end } = this.said.words[at] ?? {};
    const bound = end !== undefined && /['’]s$/.test(this.text.slice(start, end));
    return bound ? end - 2 : end;
  }

  private markOf(word: string, at: number, last: JarSaid | undefined): string | undefined {
    const start = this.said.words[at]?.start ?? 0;
    // "A 3" is a mark, "a 3" an article and a number.
    if (/^[ai]$/.test(word) && !/[AI]/.test(this.text.charAt(start))) return undefined;
    if (this.marks.has(word)) return word;
    const heard =
      LETTERS.get(word) ?? (this.isExpected(at, last) ? WORDS_TOO.get(word) : undefined);
    return heard !== undefined && this.marks.has(heard) ? heard : undefined;
  }

  /** Undefined too where a short id fits jars with different numbers on their lids. */
  private byId(
    word: string,
    number: number,
    whole: string | undefined,
  ): Pick<NamedJar, "refs" | "number"> | undefined {
    const meant = (id: string) => {
      return whole === undefined ? wordOf(id) === word && id.endsWith(`-${number}`) : id === whole;
    };
    const found = recordOf(this.context).flatMap((lot) =>
      (lot.jars ?? [])
        .filter(({ id }) => meant(id))
        .map((jar) => ({ ref: refOfLot(lot), number: jar.number })),
    );
    const [first] = found;
    if (!first || first.number === 0) return undefined;
    if (found.some((one) => one.number !== first.number)) return undefined;
    return { refs: found.map(({ ref }) => ref), number: first.number };
  }

  /** The text with the jars as plain numbers. */
  written(found: readonly JarSaid[]): JarsNamed {
    const { words } = this.said;
    const jars = new Map<number, NamedJar>();
    let text = "";
    let end = 0;
    for (const [index, one] of found.entries()) {
      const before = found[index - 1];
      const listed = before && (one.ranged || this.follows(one.from, before));
      const named = JAR_WORDS.has(this.word(one.from - 1));
      const number = FIRST_PLACE + index;
      jars.set(number, one);
      text += listed ? " and " : this.text.slice(end, words[one.from]?.start);
      text += listed || named ? `${number}` : `jar ${number}`;
      end = this.endOf(one.next - 1) ?? end;
    }
    // "B1's in the fridge".
    const rest = (text + this.text.slice(end)).replace(/(?<=\bjar \d\d)['’]s\b/g, " is");
    return { text: rest, jars };
  }
}

const WITH_BATCH = /\b(\d{6}-\d{1,3}):(\d{1,2})\b/g;
const WHOLE_ID = /\b[a-z]+-[a-z0-9]+-\d+\b/g;

/** Batches' ids and jars' whole ids as short ids, and the whole id for each by its place. */
function withShortIds(
  text: string,
  context: Context,
): { plain: string; wholeIds: ReadonlyMap<number, string> } {
  const lots = recordOf(context);
  const marks = text.replace(WITH_BATCH, (said, id: string, number: string) => {
    const lot = lots.find((one) => (one.lot ?? one.id) === id);
    const jar = lot?.jars?.find((one) => one.number === Number(number));
    return jar ? jar.id : said;
  });
  const wholeIds = new Map<number, string>();
  let shorter = 0;
  const plain = marks.replace(WHOLE_ID, (whole, at: number) => {
    if (!lots.some(({ jars }) => jars?.some(({ id }) => id === whole))) return whole;
    const short = `${wordOf(whole)} ${whole.slice(whole.lastIndexOf("-") + 1)}`;
    wholeIds.set(at - shorter, whole);
    shorter += whole.length - short.length;
    return short;
  });
  return { plain, wholeIds };
}

/** Undefined where no jar is named by what is on it. */
export function jarsNamed(text: string, context: Context): JarsNamed | undefined {
  const { plain, wholeIds } = withShortIds(text, context);
  const names = new Names(plain, context, wholeIds);
  const found = names.all();
  return found.length > 0 && found.length <= MOST_JARS ? names.written(found) : undefined;
}
