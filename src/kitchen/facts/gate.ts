/**
 * The gate: what comes from a journal, an archive or another program is checked against its
 * declaration before anything is worked out from it. Old forms are upgraded first.
 */
import * as z from "zod/mini";
import { declarationOf, FACTS, type FactType, isFactType } from "./all-facts.ts";
import { type Checker, objectChecker } from "./checker.ts";
import type { Fields } from "./fact.ts";
import { commandId, instant, word } from "./fields.ts";

/** Fields that the journal adds to a line; the rest is the event. */
export const OF_THE_JOURNAL = ["n", "v", "left", "prev", "sum", "at", "written"] as const;

function shapeOf(type: FactType): Fields {
  const stamp = { cmd: commandId, t: instant, w: instant, branch: z.optional(word) };
  return { type: z.literal(type), ...stamp, ...FACTS[type].fields };
}

function formerOf(type: FactType): readonly string[] {
  return declarationOf(type).formerly ?? [];
}

/** The checker for each kind of fact, made when it is first used; undefined for an unknown kind. */
function checkers(also: readonly string[]): (type: unknown) => Checker | undefined {
  const made = new Map<unknown, Checker>();
  return (type) => {
    const known = made.get(type);
    if (known || !isFactType(type)) return known;
    const checker = objectChecker(shapeOf(type), true, [...also, ...formerOf(type)]);
    made.set(type, checker);
    return checker;
  };
}

const eventChecker = checkers([]);
const lineChecker = checkers(OF_THE_JOURNAL);

/** What is wrong with a value as an event, in a few words; undefined where nothing is. */
export function faultOfEvent(value: unknown): string | undefined {
  return faultOf(value, eventChecker);
}

/** The same for a journal's line, which has the journal's own fields beside the event's. */
export function faultOfLine(line: unknown): string | undefined {
  return faultOf(line, lineChecker);
}

function faultOf(value: unknown, checkerOf: typeof eventChecker): string | undefined {
  if (typeof value !== "object" || value === null) return "it holds no event";
  const { type } = value as { type?: unknown };
  if (checkerOf(type)?.(value)) return undefined;
  if (isFactType(type)) return wrongIn(type, value);
  return `an event of the unknown type ${shown(type)}; a later version may know it`;
}

/** Names the field that the schema refuses. */
function wrongIn(type: FactType, value: object): string {
  const own: Record<string, unknown> = { ...value };
  for (const name of [...OF_THE_JOURNAL, ...formerOf(type)]) delete own[name];
  const { error } = z.safeParse(z.strictObject(shapeOf(type)), own);
  const [issue] = error?.issues ?? [];
  if (!issue) return `its ${type} has a field that no event has`;
  if (issue.code === "unrecognized_keys") {
    return `its ${type} has the field ${shown(issue.keys[0])}, which it cannot have`;
  }
  return `the field ${issue.path.map(String).join(".")} of its ${type} holds what it cannot`;
}

/** A value from outside, to be shown in a sentence: short, and quoted as in JSON. */
function shown(value: unknown): string {
  return JSON.stringify(value)?.slice(0, 60) ?? "none";
}
