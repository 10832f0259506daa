/**
 * One desk for everything that is said: what goes first, what goes together, what is said short
 * because the whole was said today, what is not true any more. Pure: the moment is handed in.
 */
import { listed } from "../kitchen/spoken-names.ts";
import { Alarms } from "./alarms.ts";
import { type Askable, type AskMoment, waitsTill } from "./asking.ts";
import {
  type DeskDecision,
  type LinePart,
  RANKS,
  type SaidCaution,
  type SpokenLine,
  type Want,
  wholeOf,
} from "./want.ts";

/** The moment in which the desk decides. */
export type DeskMoment = Pick<AskMoment, "now" | "asleepUntil"> & {
  /** The date in the kitchen; what was said yesterday is said whole again. */
  day: string;
  /** All that rings, as it is said now. */
  ringing: readonly Want[];
  /** The cook knows it all: only the short forms are said. */
  short?: boolean;
};

type Lesson = NonNullable<Want["lesson"]>;

/** A name that was said holds for so long, as long as nothing else is talked of. */
const TOPIC_MS = 300_000;

/** What may follow from something that was done, and says it too. */
const FOLLOWS: ReadonlySet<Want["rank"]> = new Set(["question", "prompt"]);

/** Wants that are said in one breath where they come together. */
const MERGED: ReadonlySet<Want["rank"]> = new Set(["alarm", "prompt", "news"]);

export class Desk {
  private readonly alarms = new Alarms();
  private said = new Map<string, string>();
  /** News that came at night, for the morning. */
  private held: Want[] = [];
  private putOffTill = new Map<string, number>();
  private log: DeskDecision[] = [];
  /** Who was named last, and when. */
  private topic: { name: string; at: number } | undefined;

  /** When an alarm is to be said again, kitchen time; Infinity where none rings. */
  nextAt(ringing: readonly string[]): number {
    return this.alarms.nextAt(ringing);
  }

  /** The lines to be said now, in this order. */
  decide(wants: readonly Want[], moment: DeskMoment): SpokenLine[] {
    const { now, ringing } = moment;
    const waking = this.hold(wants, moment);
    const current = this.withoutTwins(waking, now).filter((want) => this.stillTrue(want, now));
    const kept = this.withoutEcho(current, moment);
    const keyed = new Set(kept.map(({ key }) => key));
    const fresh = kept.filter(({ rank, key }) => rank === "alarm" && key !== undefined);
    for (const { key = "", broken } of fresh) this.alarms.spoke(key, now, broken);
    const again = this.alarms
      .due(ringing, now)
      .filter(({ key }) => !keyed.has(key))
      .map((want) => (this.alarms.has(want.key) ? withToDo(want) : want));
    for (const { key = "", broken } of again) this.alarms.spoke(key, now, broken);
    const all = [...again, ...kept];
    const lines = RANKS.flatMap((rank) => {
      const ofRank = all.filter((want) => want.rank === rank);
      return MERGED.has(rank) ? together(ofRank) : ofRank.map((want) => [want]);
    });
    const made = lines.map((group) => this.line(group, moment));
    return this.namedOnce(
      made.filter(({ parts }) => parts.length > 0),
      now,
    );
  }

  /** What the talk is of is not named again for a while; an alarm always has its name. */
  private namedOnce(lines: SpokenLine[], now: number): SpokenLine[] {
    for (const line of lines) {
      for (const part of line.parts) {
        const { name } = part;
        const { topic } = this;
        const same = name !== undefined && name === topic?.name && now - topic.at < TOPIC_MS;
        this.topic = name === undefined ? undefined : { name, at: now };
        if (same && line.rank !== "alarm") delete part.name;
      }
    }
    return lines;
  }

  /** Whether a question is asked now; one that waits is written down as put off. */
  mayAsk(asked: Askable, moment: AskMoment): boolean {
    const waits = waitsTill(asked, moment);
    if (waits) this.putOff(asked.text, moment.now, waits.till, waits.why);
    return waits === undefined;
  }

  /** What is kept for later, told once for each time it is put off. */
  putOff(wanted: string, at: number, deferredTill: number, why: string): void {
    if (this.putOffTill.get(wanted) === deferredTill) return;
    this.putOffTill.set(wanted, deferredTill);
    this.log.push(decision(wanted, at, { deferredTill, why }));
  }

  /** News waits until somebody is up; nothing else does here. */
  private hold(wants: readonly Want[], { now, asleepUntil }: DeskMoment): Want[] {
    if (asleepUntil === undefined) {
      const all = [...this.held, ...wants];
      this.held = [];
      return all;
    }
    const news = wants.filter(({ rank }) => rank === "news");
    this.held.push(...news);
    for (const want of news) this.putOff(wholeOf(want), now, asleepUntil, "night");
    return wants.filter(({ rank }) => rank !== "news");
  }

  /** What was decided since the last time. */
  decisions(): DeskDecision[] {
    const { log } = this;
    this.log = [];
    return log;
  }

  private withoutTwins(wants: readonly Want[], now: number): Want[] {
    return wants.filter((want, index) => {
      const later = wants.slice(index + 1);
      const twin = later.some((one) => one.rank === want.rank && isTwin(one, want));
      if (twin) this.drop(want, now, "said once");
      return !twin;
    });
  }

  private stillTrue(want: Want, now: number): boolean {
    const holds = want.until === undefined || now < want.until;
    if (!holds) this.drop(want, now, "no longer true");
    return holds;
  }

  /**
   * That something was done goes without saying where what follows of the same one is said at
   * once: a question, or a prompt, which is then the answer.
   */
  private withoutEcho(wants: readonly Want[], moment: DeskMoment): Want[] {
    const followerOf = ({ plain, name }: Want) => {
      const follows = (one: Want) => FOLLOWS.has(one.rank) && one.name === name;
      return plain && wants.find((one) => follows(one) && this.hasWords(one, moment));
    };
    const echoes = wants.filter(followerOf);
    for (const want of echoes) this.drop(want, moment.now, "what follows says it");
    const answers = new Set(echoes.map(followerOf));
    return wants
      .filter((want) => !echoes.includes(want))
      .map((want) => {
        if (!answers.has(want) || want.rank !== "prompt") return want;
        return { ...want, rank: "answer", instructs: true };
      });
  }

  /** Whether anything is left to say of it, once what is known is left out. */
  private hasWords({ lesson, brief, cautions = [] }: Want, { day, short }: DeskMoment): boolean {
    const saidToday = (id: string) => this.said.get(id) === day;
    if (!lesson) return true;
    if (brief) return !saidToday(told(lesson));
    const known = short || saidToday(lesson.id);
    const left = cautions.some((one) => one.short !== undefined || !saidToday(one.text));
    return !known || lesson.short !== "" || left;
  }

  private drop(want: Want, now: number, why: string): void {
    this.log.push(decision(wholeOf(want), now, { dropped: true, why }));
  }

  private line(group: readonly Want[], moment: DeskMoment): SpokenLine {
    const forms = group.map((want) => this.form(want, moment));
    const parts = sameOnce(forms.filter(({ text }) => text !== ""));
    const keys = group.flatMap(({ key }) => key ?? []);
    const wholes = group.map(wholeOf);
    wholes.forEach((whole, index) => {
      const said = forms[index]?.text ?? "";
      this.log.push(
        decision(whole, moment.now, {
          said: said || null,
          dropped: said === "",
          mergedWith: wholes.filter((one) => one !== whole),
          why: said === whole ? null : said ? "short for now" : "told today",
        }),
      );
    });
    const guards = group.some((want) => want.guards);
    const refuses = group.some((want) => want.refuses);
    const instructs = group.some((want) => want.instructs);
    const rank = group[0]?.rank ?? "news";
    const isShort = forms.some(({ text }, index) => text !== wholes[index]);
    const whole = isShort ? wholes.join(" ") : undefined;
    return { rank, parts, keys, whole, guards, refuses, instructs };
  }

  /** A want as it is said now: whole the first time of a day, short after. */
  private form(want: Want, { day, short = false }: DeskMoment): LinePart {
    const { name, text, task, lesson, cautions = [], brief } = want;
    const of = { ...(name === undefined ? {} : { name }), ...(task ? { task } : {}) };
    if (brief && lesson) return { ...of, text: this.once(lesson, day) };
    const known = lesson !== undefined && (short || this.said.get(lesson.id) === day);
    if (lesson) this.said.set(lesson.id, day);
    const words = [known ? lesson.short : text];
    for (const caution of cautions) words.push(...this.caution(caution, day));
    return { ...of, text: words.filter(Boolean).join(" ") };
  }

  /** What its time will come for is told once a day. */
  private once(lesson: Lesson, day: string): string {
    if (this.said.get(told(lesson)) === day) return "";
    this.said.set(told(lesson), day);
    return lesson.short;
  }

  private caution({ text, short }: SaidCaution, day: string): string[] {
    const known = this.said.get(text) === day;
    this.said.set(text, day);
    if (!known) return [text];
    return short === undefined ? [] : [short];
  }
}

/** Under which name it is kept that what its time will come for was told. */
function told({ id }: Lesson): string {
  return `${id}/told`;
}

function withToDo({ todo, ...want }: Want): Want {
  return todo ? { ...want, text: `${want.text} ${todo}` } : want;
}

function isTwin(one: Want, other: Want): boolean {
  if (one.key !== undefined || other.key !== undefined) return one.key === other.key;
  return one.name === other.name && wholeOf(one) === wholeOf(other);
}

function together(wants: Want[]): Want[][] {
  return wants.length > 0 ? [wants] : [];
}

/** What is said of several in the same words is said once, naming all. */
function sameOnce(forms: readonly LinePart[]): LinePart[] {
  const alike = (form: LinePart) => (one: LinePart) =>
    one === form || (form.name !== undefined && one.name !== undefined && one.text === form.text);
  return forms.flatMap((form) => {
    const all = forms.filter(alike(form));
    if (all[0] !== form) return [];
    return form.name === undefined ? form : { ...form, name: listed(all.map(nameOf)) };
  });
}

function nameOf({ name = "" }: LinePart): string {
  return name;
}

function decision(
  wanted: string,
  at: number,
  came: Partial<Omit<DeskDecision, "wanted" | "at">>,
): DeskDecision {
  return {
    at,
    wanted,
    said: null,
    mergedWith: [],
    deferredTill: null,
    dropped: false,
    why: null,
    ...came,
  };
}
