/**
 * Ids of jars: the writer that gave it and a number, never used again. A writer's name begins with
 * a garden word, which with the number is the jar's short form: "clover 42".
 */
import type { Stamp } from "../facts/stamp.ts";
import type { State } from "../state.ts";
import type { Jar } from "./jar.ts";
import { lotsIn } from "./lots.ts";

/** Plants and birds of the garden that go into no jar, and sound unlike each other. */
export const WRITER_WORDS: readonly string[] = [
  "clover willow maple juniper aster larkspur yarrow marigold foxglove columbine bluebell snowdrop",
  "crocus jasmine wisteria gentian trellis heather lupine zinnia dahlia peony primrose tulip lilac",
  "poppy violet daisy cedar aspen alder magnolia begonia petunia hyacinth sparrow robin magpie",
  "heron falcon swallow cricket dragonfly ladybug firefly tortoise hedgehog badger otter beaver",
].flatMap((line) => line.split(" "));

/** A number from a text, the same on every machine: FNV-1a, 32 bits. */
function digestOf(text: string): number {
  let digest = 0x811c9dc5;
  for (const sign of text) digest = Math.imul(digest ^ (sign.codePointAt(0) ?? 0), 0x01000193);
  return digest >>> 0;
}

/** A writer's name from a number; a word that is `taken` is not used while another is free. */
export function writerNamed(number: number, taken: ReadonlySet<string> = new Set()): string {
  const free = WRITER_WORDS.filter((word) => !taken.has(word));
  const words = free.length > 0 ? free : WRITER_WORDS;
  return `${words[number % words.length]}-${Math.floor(number).toString(36)}`;
}

/** Whom older journals, which name no writer, have their jars' ids from: their first event. */
export function earlierWriter({ cmd, t, w }: Stamp): string {
  return writerNamed(digestOf(`${cmd} ${t} ${w}`));
}

/** The ids an event names for its new jars. */
export type Ids = { writer: string; from: number };

/** Gives an id to each new jar of an event. */
export function idsFor({ jarIds }: State, ids?: Ids): () => string {
  const writer = ids?.writer ?? jarIds.earlier;
  let number = ids?.from ?? jarIds.used + 1;
  return () => {
    const id = `${writer}-${number}`;
    number += 1;
    return id;
  };
}

/** Whoever gave ids to the jars on record. */
function writersOfJars(state: State): Set<string> {
  const lots = Object.values(state.batches).flatMap((batch) => lotsIn(batch));
  return new Set(lots.flatMap(({ lot }) => lot.jars.map(({ id }) => writerOf(id))));
}

/** Those, and the writers of all folders known here, whether they gave an id yet or not. */
export function writersIn(state: State): Set<string> {
  const places = [state, ...Object.values(state.elsewhere)].flatMap(({ jarIds }) => {
    return [jarIds.earlier, jarIds.writer ?? ""];
  });
  return new Set([...writersOfJars(state), ...places.filter((name) => name !== "")]);
}

/** The word a writer goes by. */
export function wordOf(writer: string): string {
  return writer.slice(0, writer.indexOf("-"));
}

function writerOf(id: string): string {
  return id.slice(0, id.lastIndexOf("-"));
}

/** "clover 42": a jar by itself; its whole id where jars of two writers share the word. */
export function shortForms(state: State): (jar: Pick<Jar, "id">) => string {
  const words = [...writersOfJars(state)].map(wordOf);
  const shared = new Set(words.filter((word, at) => words.indexOf(word) !== at));
  return ({ id }) => {
    const word = wordOf(id);
    return shared.has(word) ? id : `${word} ${id.slice(id.lastIndexOf("-") + 1)}`;
  };
}
