/**
 * Merges another kitchen's events into this one. What is already here is recognized by its content,
 * whatever its id; an id that means something else here is replaced by a new one, the same each
 * time. The other kitchen's settings, sessions and clock are left out: this kitchen has its own.
 */
import { fieldsOf, type KitchenEvent } from "../../kitchen/events.ts";
import { declarationOf } from "../../kitchen/facts/all-facts.ts";
import { withNames } from "../../kitchen/facts/references.ts";

type Merge = {
  /** Events to be added, in order, with their ids here. */
  events: KitchenEvent[];
  /** Batches' ids there and here. */
  batches: Map<string, string>;
  known: number;
  leftBehind: number;
  rehearsed: number;
  renamed: { from: string; to: string }[];
};

/** JSON with the fields in one order, so that equal content is equal text. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "null";
  const fields = Object.entries(value).filter(([, inner]) => inner !== undefined);
  return `{${fields
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([name, inner]) => `${JSON.stringify(name)}:${canonical(inner)}`)
    .join(",")}}`;
}

/** An event's content without its command, and without its own id where it begins something. */
function contentOf(event: KitchenEvent, withoutId: boolean): string {
  const { begins } = declarationOf(event.type);
  const id = withoutId && begins !== undefined ? { [begins]: undefined } : {};
  return canonical({ ...event, ...id, cmd: undefined });
}

/** Events from sessions that were not rehearsals. */
function lived(events: readonly KitchenEvent[]): KitchenEvent[] {
  let rehearsal = false;
  return events.filter((event) => {
    if (event.type === "opened") rehearsal = event.rehearsal;
    return !rehearsal;
  });
}

/** What in `theirs` is new to `ours`. */
export function mergeEvents(ours: readonly KitchenEvent[], theirs: readonly KitchenEvent[]): Merge {
  const real = lived(theirs);
  const wanted = real.filter((event) => !declarationOf(event.type).stays);
  const merge: Merge = {
    events: [],
    batches: new Map(),
    known: 0,
    leftBehind: real.length - wanted.length,
    rehearsed: theirs.length - real.length,
    renamed: [],
  };
  const ids = idsFor(ours, wanted, merge);
  const mapped = wanted.map((event) => withIds(event, ids));
  const here = new Map<string, string[]>();
  for (const event of ours) {
    const key = contentOf(event, false);
    here.set(key, [...(here.get(key) ?? []), event.cmd]);
  }
  const commands = commandsFor(ours, mapped, here);
  for (const event of mapped) {
    const renamed = withCommand(event, commands);
    const copies = here.get(contentOf(renamed, false));
    if (copies && copies.length > 0) {
      copies.pop();
      merge.known += 1;
    } else merge.events.push(renamed);
  }
  return merge;
}

/** Ids there as ids here: equal where it is the same thing, new where an id is taken. */
function idsFor(
  ours: readonly KitchenEvent[],
  theirs: readonly KitchenEvent[],
  merge: Merge,
): Map<string, string> {
  const taken = new Set<string>();
  const byContent = new Map<string, string[]>();
  for (const event of ours) {
    const id = idBegun(event);
    if (id === undefined) continue;
    taken.add(id);
    const key = contentOf(event, true);
    byContent.set(key, [...(byContent.get(key) ?? []), id]);
  }
  const theirIds = new Set(theirs.flatMap((event) => idBegun(event) ?? []));
  const ids = new Map<string, string>();
  for (const event of theirs) {
    const id = idBegun(event);
    if (id === undefined || ids.has(id)) continue;
    const same = byContent.get(contentOf(withIds(event, ids), true)) ?? [];
    let to = same.includes(id) ? id : same[0];
    if (to === undefined) {
      to = id;
      for (let n = 2; taken.has(to) || (to !== id && theirIds.has(to)); n++) to = `${id}-${n}`;
      if (to !== id) merge.renamed.push({ from: id, to });
    } else same.splice(same.indexOf(to), 1);
    taken.add(to);
    ids.set(id, to);
    if (event.type === "batch-begun") merge.batches.set(id, to);
  }
  return ids;
}

function idBegun(event: KitchenEvent): string | undefined {
  const field = declarationOf(event.type).begins;
  const id = field === undefined ? undefined : fieldsOf(event)[field];
  return typeof id === "string" ? id : undefined;
}

/** An event, with the ids it names as they are here. */
function withIds(event: KitchenEvent, ids: ReadonlyMap<string, string>): KitchenEvent {
  const here = (id: string) => ids.get(id) ?? id;
  return withNames(event, (name, kind) => {
    if (kind === "cmd") return name;
    return kind === "key" ? name.split("/").map(here).join("/") : here(name);
  });
}

/** Commands there as commands here; one that means something else here gets another name. */
function commandsFor(
  ours: readonly KitchenEvent[],
  theirs: readonly KitchenEvent[],
  here: ReadonlyMap<string, readonly string[]>,
): Map<string, string> {
  const taken = new Set(ours.map((event) => event.cmd));
  const commands = new Map<string, string>();
  for (const event of theirs) {
    if (commands.has(event.cmd)) continue;
    const same = here.get(contentOf(event, false)) ?? [];
    let to = same.includes(event.cmd) ? event.cmd : same[0];
    if (to === undefined) {
      to = event.cmd;
      for (let n = 2; taken.has(to); n++) to = `${event.cmd}-${n}`;
    }
    taken.add(to);
    commands.set(event.cmd, to);
  }
  return commands;
}

function withCommand(event: KitchenEvent, commands: ReadonlyMap<string, string>): KitchenEvent {
  const here = (cmd: string) => commands.get(cmd) ?? cmd;
  const named = withNames(event, (name, kind) => (kind === "cmd" ? here(name) : name));
  return { ...named, cmd: here(event.cmd) };
}
