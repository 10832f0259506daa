/** What a sentence says of jars that are named by what is on them, or of lots by when they were. */
import { type Command, type Meant, type Ref, withSlots } from "../kitchen/command.ts";
import type { Context } from "./context.ts";
import { MEANINGS } from "./intents/all.ts";
import type { JarsNamed, NamedJar } from "./values/jar-names.ts";

function isAmong(ref: Ref, refs: readonly Ref[]): boolean {
  if (!("owner" in ref)) return false;
  return refs.some((one) => {
    if (!("owner" in one) || one.owner !== ref.owner) return false;
    return one.lot === undefined || ref.lot === undefined || one.lot === ref.lot;
  });
}

/** What stands for lots, as if their name had been said. */
function meantLots(recorded: readonly Ref[], context: Context): Meant {
  const running = context.running.map(({ id: owner, lot }) => {
    return lot === undefined ? { owner } : { owner, lot };
  });
  return {
    running: recorded.filter((ref) => isAmong(ref, running)),
    recorded,
    vessels: [],
    parts: [],
    sorts: [],
    sortAlone: false,
  };
}

function nameOf(refs: readonly Ref[], { said }: NamedJar): string {
  const [only] = refs;
  if (!only || refs.length > 1 || !("owner" in only)) return said;
  return only.lot ?? only.owner;
}

/** Numbers that stand for jars in a command: in its list of jars, or in place of a name. */
function placesIn({ slots }: Command, jars: JarsNamed["jars"]): number[] {
  const listed = "jars" in slots && Array.isArray(slots.jars) ? slots.jars : [];
  const target = "target" in slots ? slots.target : undefined;
  const named = /^(?:jars? |number )?(\d\d)$/.exec(target ?? "")?.[1];
  return [...listed, ...(named ? [Number(named)] : [])].filter((number) => jars.has(number));
}

type Lots = { refs: readonly Ref[]; jars: NamedJar[] };

function byLots(places: readonly number[], named: JarsNamed, within: readonly Ref[]): Lots[] {
  const lots = new Map<string, Lots>();
  for (const place of places) {
    const jar = named.jars.get(place);
    if (!jar) continue;
    const narrow = jar.refs.filter((ref) => isAmong(ref, within));
    const refs = narrow.length > 0 ? narrow : jar.refs;
    const key = JSON.stringify(refs);
    lots.set(key, { refs, jars: [...(lots.get(key)?.jars ?? []), jar] });
  }
  // What has to be asked about comes last: nothing else waits for the answer.
  return [...lots.values()].sort((a, b) => a.refs.length - b.refs.length);
}

/** One command for each lot; of a sentence that has nothing to do with jars, none. */
function commandsFor(command: Command, named: JarsNamed, context: Context): Command[] {
  const places = placesIn(command, named.jars);
  if (places.length === 0) return [];
  const hasJars = "jars" in MEANINGS[command.intent].slots;
  const lots = byLots(places, named, command.ref?.recorded ?? []);
  const sure = lots.every(({ refs }) => refs.length === 1);
  const inCanner = (context.loads ?? []).length > 0;
  const others = "othersSealed" in command.slots && sure && inCanner;
  const each = lots.map(({ refs, jars }): Command => {
    const [first] = jars;
    const target = first ? nameOf(refs, first) : undefined;
    const {
      jars: _jars,
      count: _count,
      othersSealed,
      ...rest
    } = command.slots as Record<string, unknown>;
    const numbers = hasJars ? { jars: [...new Set(jars.map(({ number }) => number))] } : {};
    const kept = othersSealed && !others ? { othersSealed } : {};
    const slots = { ...rest, ...kept, target, ...numbers };
    return { ...command, slots, ref: meantLots(refs, context) } as Command;
  });
  // "All sealed but D four" is said of every lot in the canner.
  const all: Command = { intent: "sealed", slots: { all: true }, confidence: command.confidence };
  return others ? [...each, all] : each;
}

/** A jar that is put right at once: "P four, no wait, P five". A "no" alone may be of its seal. */
const PUT_RIGHT = new RegExp(
  "\\bjar (\\d\\d),? (?:no,? wait|no,? sorry|wait,? no|sorry|i mean|i meant|make that|make it|" +
    "scratch that|or rather|correction),? (?:it (?:is|was) |that (?:is|was) )?jar (\\d\\d)\\b",
  "gi",
);

/** The same without jars that were taken back for another. */
export function withoutPutRight(named: JarsNamed): JarsNamed {
  const jars = new Map(named.jars);
  const text = named.text.replace(PUT_RIGHT, (_, first: string, meant: string) => {
    jars.delete(Number(first));
    return `jar ${meant}`;
  });
  return { text, jars };
}

/** Whether jars beside a report that was understood without them are what it is about. */
function mayBeAbout({ intent, slots, ref }: Command, { jars }: JarsNamed): boolean {
  const { cost, slots: has, ofRecord } = MEANINGS[intent];
  // "S five, I think, yes, S five" is one jar.
  const each = new Set(
    [...jars.values()].map(({ refs, number }) => JSON.stringify([refs, number])),
  );
  const others = "count" in slots && slots.count !== each.size;
  // "The bottom fell out of one in the pot": a vessel is no lot.
  const named = "target" in slots && (ref?.recorded.length ?? 0) > 0;
  const ofJars = "jars" in has || ("target" in has && ofRecord === true);
  return ofJars && cost !== "clearing" && !named && !others;
}

/** The commands with the jars they are about; undefined where one of those named is in none. */
export function withJars(
  commands: readonly Command[],
  named: JarsNamed,
  context: Context,
): Command[] | undefined {
  const used = new Set(commands.flatMap((command) => placesIn(command, named.jars)));
  const [only] = commands;
  // "I dropped one and it smashed, it was J five" tells of one thing twice.
  const one = commands.every(({ intent }) => intent === only?.intent);
  if (only && one && used.size === 0 && commands.every((each) => mayBeAbout(each, named))) {
    const jars = [...named.jars.keys()];
    return commandsFor(withSlots(only, { jars }), named, context);
  }
  if (commands.length === 0 || used.size < named.jars.size) return undefined;
  const each = commands.flatMap((command) => {
    const about = commandsFor(command, named, context);
    return about.length > 0 ? about : [command];
  });
  // "Nineteen sealed, D three didn't": the nineteen are those that are left then.
  const sealed = each.filter(({ intent }) => intent === "sealed");
  return [...each.filter(({ intent }) => intent !== "sealed"), ...sealed];
}

/** The commands about those of the lots that fit; undefined where none is about lots on record. */
export function withLots(
  commands: readonly Command[],
  when: { said: string; fits: (ref: Ref) => boolean },
  context: Context,
): Command[] | undefined {
  const isOfLots = ({ intent, ref }: Command) => {
    return MEANINGS[intent].ofRecord && ref?.recorded.some((one) => "owner" in one);
  };
  if (!commands.some(isOfLots)) return undefined;
  return commands.map((command) => {
    const { ref, slots } = command;
    if (!ref || !isOfLots(command) || !("target" in slots)) return command;
    const meant = meantLots(ref.recorded.filter(when.fits), context);
    const target = `${slots.target} ${when.said}`;
    return { ...withSlots(command, { target }), ref: meant };
  });
}

/** A piece of the sentence in the person's own words. */
export function asNamed(piece: string, { jars }: JarsNamed): string {
  return piece.replace(/(?:jar )?(\d\d)/g, (whole, number: string) => {
    return jars.get(Number(number))?.said ?? whole;
  });
}

/** "P three and B one didn't", or nothing but jars where those are asked for. */
export function sealsMeant(text: string, { question }: Context): string {
  const whole = text.replace(/\b(jar [\d and]+ (?:didn['’]?t|did not))\s*[.!]*$/i, "$1 seal");
  if (question?.kind !== "jars" && question?.key !== "seals") return whole;
  return whole.replace(/^((?:just |only )?jar [\d and]+)[.!]*$/i, "$1 did not seal");
}
