/**
 * What another data folder's log has that this one's does not, as events to be appended here. Facts
 * in common are recognized by their content, from the first on; a branch begins where they part.
 * Nothing is renamed: what an id stands for is worked out where the log is read.
 */
import type { KitchenEvent } from "../../kitchen/events.ts";
import { type Branch, branchesOf, OF_IMPORT, type Step } from "../reading/branches.ts";

type Taken = {
  /** To be appended, in order; without any, all of theirs is here already. */
  events: KitchenEvent[];
  /** Facts of theirs that are new here, and those that are not. */
  added: Step[];
  known: number;
};

/** A fact in the tree of branches, and the facts that follow it in one branch or another. */
type Node = { step: Step | undefined; branch: string; after: Map<string, Node> };

function follow(node: Node, step: Step, branch: string): Node {
  const made = { step, branch, after: new Map() };
  node.after.set(step.text, made);
  return made;
}

function treeOf(branches: readonly Branch[]): Node {
  const root: Node = { step: undefined, branch: "", after: new Map() };
  for (const { name, path } of branches) {
    let node = root;
    for (const step of path) node = node.after.get(step.text) ?? follow(node, step, name);
  }
  return root;
}

/** Both logs are given as they lie in their files. */
export function takeIn(ours: readonly KitchenEvent[], theirs: readonly KitchenEvent[]): Taken {
  const here = branchesOf(ours);
  const root = treeOf(here);
  const names = new Set(here.map(({ name }) => name));
  const taken: Taken = { events: [], added: [], known: 0 };
  for (const { path, from } of branchesOf(theirs)) {
    let node = root;
    path.forEach((step, at) => {
      const known = node.after.get(step.text);
      if (known) {
        node = known;
        if (at >= from) taken.known += 1;
        return;
      }
      const branch = goesOn(node) ? node.branch : leaves(node, step, names, taken.events);
      node = follow(node, step, branch);
      taken.events.push({ ...step.event, branch });
      taken.added.push(step);
    });
  }
  // That they had taken this folder in, and nothing since, is no news.
  const news = taken.added.some(({ event }) => event.type !== "merged");
  if (!news) return { events: [], added: [], known: taken.known };
  return { ...taken, events: [...taken.events, markOf(ours, taken)] };
}

/** Whatever is written here from now on comes after what was taken in, in every folder. */
function markOf(ours: readonly KitchenEvent[], { added }: Taken): KitchenEvent {
  const own = ours.filter(({ branch }) => branch === undefined);
  const w = Math.max(0, ...own.map((event) => event.w));
  const until = Math.max(...added.map(({ wallMs }) => wallMs));
  return { type: "merged", until, cmd: OF_IMPORT, t: w, w };
}

/** Whether what follows is of the same branch: this folder's own goes on only by its own facts. */
function goesOn({ branch, after }: Node): boolean {
  return branch !== "" && [...after.values()].every((node) => node.branch !== branch);
}

/** Begins a branch, named for its first fact. */
function leaves(node: Node, step: Step, names: Set<string>, events: KitchenEvent[]): string {
  const stem = step.id.slice(0, 8);
  let branch = stem;
  for (let n = 2; names.has(branch); n++) branch = `${stem}-${n}`;
  names.add(branch);
  const { w: t } = step.event;
  const after = node.step?.id ?? null;
  const stamp = { cmd: OF_IMPORT, t, w: t, branch };
  events.push({ type: "joined", parent: node.branch, after, ...stamp });
  return branch;
}
