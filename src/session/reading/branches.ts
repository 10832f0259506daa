/**
 * The log of a data folder and of those that it took in, as a tree. Copies of a folder have facts
 * in common up to where they parted; from there on each has a branch of its own. The tree is the
 * same in every folder, whoever took in whom, and what is lived through follows from the tree
 * alone: so folders that took each other in are alike.
 *
 * In the file a branch begins with a `joined`, and its facts say which `branch` they are of, under
 * the ids that they were written with. Every branch keeps the order of its own facts; between
 * branches, what was written first by the wall clock comes first.
 */
import { createHash } from "node:crypto";
import { fieldsOf, type KitchenEvent } from "../../kitchen/events.ts";
import { declarationOf } from "../../kitchen/facts/all-facts.ts";
import { withNames } from "../../kitchen/facts/references.ts";

/** A fact in its branch. */
export type Step = {
  event: KitchenEvent;
  /** Its content: equal facts are equal text, in whatever folder. */
  text: string;
  /** What it is known by in every folder. */
  id: string;
  /** When it was written by the wall clock of its folder, never before the step before it. */
  wallMs: number;
};

export type Branch = {
  /** "" for this data folder's own. */
  name: string;
  parent: Branch | undefined;
  /** From the first fact on; what is before `from` it has in common with its parent. */
  path: Step[];
  from: number;
};

/** JSON with the fields in one order. */
function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(",")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value) ?? "null";
  const fields = Object.entries(value).filter(([, inner]) => inner !== undefined);
  return `{${fields
    .sort(([one], [other]) => (one < other ? -1 : 1))
    .map(([name, inner]) => `${JSON.stringify(name)}:${canonical(inner)}`)
    .join(",")}}`;
}

function digestOf(text: string): string {
  return createHash("sha256").update(text).digest("hex");
}

/** Whether events hold facts of other data folders. */
export function isMerged(events: readonly { type?: unknown }[]): boolean {
  return events.some(({ type }) => type === "joined");
}

/** The branches of a log, each after the one that it left. */
export function branchesOf(events: readonly KitchenEvent[]): Branch[] {
  const own = new Grower("", undefined, null);
  const all = new Map([["", own]]);
  for (const event of events) {
    if (event.type === "joined") {
      const { branch = "", parent, after } = event;
      if (!all.has(branch)) all.set(branch, new Grower(branch, all.get(parent) ?? own, after));
      continue;
    }
    const { branch: by = "", ...fact } = event;
    // Where the line that began a branch is damaged, it is taken to have nothing in common.
    if (!all.has(by)) all.set(by, new Grower(by, own, null));
    all.get(by)?.add(fact as KitchenEvent);
  }
  return [...all.values()].map(({ branch }) => branch);
}

/** Adds steps to a branch. */
class Grower {
  readonly branch: Branch;
  private readonly times = new Map<string, number>();
  private offsetMs = 0;
  private wallMs = 0;

  constructor(name: string, parent: Grower | undefined, after: string | null) {
    const whole = parent?.branch.path ?? [];
    const from = after === null ? 0 : 1 + whole.findLastIndex(({ id }) => id === after);
    let left = parent?.branch;
    while (left?.parent && from < left.from) left = left.parent;
    this.branch = { name, parent: left, path: [], from };
    for (const { event, text } of whole.slice(0, from)) this.add(event, text);
  }

  add(event: KitchenEvent, text = canonical(event)): void {
    const time = (this.times.get(text) ?? 0) + 1;
    this.times.set(text, time);
    if (event.type === "opened") this.offsetMs = event.offsetMs;
    if (event.type === "clock-set") this.offsetMs += event.byMs;
    const wall = event.type === "merged" ? event.until : event.w + this.offsetMs;
    this.wallMs = Math.max(this.wallMs, wall);
    const id = `${digestOf(text).slice(0, 16)}.${time}`;
    this.branch.path.push({ event, text, id, wallMs: this.wallMs });
  }
}

/** The next step of a branch that is still to come. */
type Head = { branch: Branch; at: number };

/** The branches' facts in the order in which they are lived through. */
function* inOrder(
  branches: readonly Branch[],
): Generator<{ branch: Branch; step: Step } | { joined: Branch }> {
  let heads: Head[] = [];
  const start = function* (of: (branch: Branch) => boolean) {
    for (const branch of branches.filter(of)) {
      if (branch.parent) yield { joined: branch };
      heads.push({ branch, at: branch.from });
    }
  };
  yield* start(({ from }) => from === 0);
  for (;;) {
    heads = heads.filter(({ branch, at }) => at < branch.path.length);
    const [first, ...others] = heads;
    if (!first) return;
    const next = others.reduce((one, other) => (comesBefore(other, one) ? other : one), first);
    const { branch, at } = next;
    yield { branch, step: branch.path[at] as Step };
    next.at += 1;
    yield* start(({ parent, from }) => parent === branch && from === next.at && from > 0);
  }
}

/** By the wall clock; at one moment by what they say, up to where that differs. */
function comesBefore(one: Head, other: Head): boolean {
  for (let i = 0; ; i++) {
    const [a, b] = [one.branch.path[one.at + i], other.branch.path[other.at + i]];
    if (!a || !b) return b !== undefined;
    if (a.wallMs !== b.wallMs) return a.wallMs < b.wallMs;
    if (a.text !== b.text) return a.text < b.text;
  }
}

/**
 * The events that lead to the state of the kitchen: those of all branches, each once, in their
 * order. An id that two branches gave to different things is known by the beginning of its first
 * fact's digest as well, in every folder: `270815-1.3fa9c`.
 */
export function mergedEvents(events: readonly KitchenEvent[]): KitchenEvent[] {
  const names = new Names();
  const lived: { branch: Branch; event: KitchenEvent }[] = [];
  const seen = new Set<string>();
  for (const next of inOrder(branchesOf(events))) {
    if ("joined" in next) {
      const { joined } = next;
      names.join(joined);
      const before = joined.path[joined.from - 1];
      const w = before?.event.w ?? 0;
      const parent = joined.parent?.name ?? "";
      const stamp = { cmd: OF_IMPORT, t: w, w };
      const event = { type: "joined", parent, after: before?.id ?? null, ...stamp } as const;
      lived.push({ branch: joined, event });
      continue;
    }
    const { branch, step } = next;
    names.add(branch, step);
    if (seen.has(step.id)) continue;
    seen.add(step.id);
    // Only the order follows from it.
    if (step.event.type === "merged") continue;
    lived.push({ branch, event: step.event });
  }
  return lived.map(({ branch, event }) => names.resolved(branch, event));
}

/** The command of what an import writes of itself. */
export const OF_IMPORT = "~import";

const SHORT = 5;

/** What ids and commands stand for in each branch. */
class Names {
  /** For each branch, what begins under a name there. */
  private readonly known = new Map<Branch, Map<string, string>>();
  /** For each name, everything that began under it, in order. */
  private readonly begun = new Map<string, Set<string>>();
  private readonly long = new Map<string, string>();

  private of(branch: Branch): Map<string, string> {
    const known = this.known.get(branch) ?? new Map<string, string>();
    this.known.set(branch, known);
    return known;
  }

  join(branch: Branch): void {
    const common = branch.from > 0 && branch.parent ? this.of(branch.parent) : [];
    this.known.set(branch, new Map(common));
  }

  add(branch: Branch, { event, id }: Step): void {
    this.begin(branch, commandName(event.cmd), id);
    const { begins } = declarationOf(event.type);
    const name = begins === undefined ? undefined : fieldsOf(event)[begins];
    // A damaged line is named for its file, in every folder alike.
    if (typeof name === "string" && begins !== "seal") this.begin(branch, name, id);
  }

  private begin(branch: Branch, name: string, id: string): void {
    const known = this.of(branch);
    if (known.has(name)) return;
    known.set(name, id);
    const all = this.begun.get(name);
    if (all) all.add(id);
    else this.begun.set(name, new Set([id]));
    this.long.set(longName(name, id), name);
  }

  /** The event as it is lived through: with its branch, and names that are one thing's only. */
  resolved(branch: Branch, event: KitchenEvent): KitchenEvent {
    const here = (name: string) => this.resolve(branch, name);
    const command = (cmd: string) => here(commandName(cmd)).slice(COMMAND.length);
    const named = withNames(event, (name, kind) => {
      if (kind === "cmd") return command(name);
      return kind === "key" ? name.split("/").map(here).join("/") : here(name);
    });
    const of = branch.name === "" ? {} : { branch: branch.name };
    return { ...named, cmd: command(event.cmd), ...of };
  }

  private resolve(branch: Branch, name: string): string {
    const own = this.of(branch).get(name);
    const all = this.begun.get(name);
    // What another folder began is meant where this one began nothing of the name.
    const id = own ?? (all && [...all][0]);
    if (id !== undefined) return all && all.size > 1 ? longName(name, id) : name;
    const plain = this.long.get(name);
    const alone = plain !== undefined && this.begun.get(plain)?.size === 1;
    return alone ? plain : name;
  }
}

const COMMAND = "cmd ";
const commandName = (cmd: string) => `${COMMAND}${cmd}`;

function longName(name: string, id: string): string {
  return `${name}${name.startsWith(COMMAND) ? "~" : "."}${id.slice(0, SHORT)}`;
}
