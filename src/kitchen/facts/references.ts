/** Which fields of a fact refer to something that another fact began: derived from the schemas. */
import type * as z from "zod/mini";
import { fieldsOf, type KitchenEvent } from "../events.ts";
import { FACTS, type FactType } from "./all-facts.ts";
import { defOf } from "./checker.ts";
import { type RefKind, refKindOf } from "./fields.ts";

/** The field, and within it the field of each item where it is a list of objects. */
type Ref = { field: string; kind: RefKind; within?: string };

function refsIn(field: string, schema: z.ZodMiniType): Ref[] {
  const kind = refKindOf(schema);
  if (kind) return [{ field, kind }];
  const { innerType, element } = defOf(schema);
  if (innerType) return refsIn(field, innerType);
  if (!element) return [];
  const item = refKindOf(element);
  if (item) return [{ field, kind: item }];
  return Object.entries(defOf(element).shape ?? {}).flatMap(([within, one]) => {
    const named = refKindOf(one);
    return named ? [{ field, kind: named, within }] : [];
  });
}

const known = new Map<FactType, Ref[]>();

function refsOf(type: FactType): Ref[] {
  let refs = known.get(type);
  if (!refs) {
    refs = Object.entries(FACTS[type].fields).flatMap(([field, schema]) => refsIn(field, schema));
    known.set(type, refs);
  }
  return refs;
}

/** The fields in which a kind of fact names what other facts began, or a command. */
export function namingFields(type: FactType): string[] {
  return refsOf(type).flatMap(({ field, kind }) => (kind === "key" ? [] : [field]));
}

/** A value with every name in it as `renamed` gives it: a name, or a list of names or objects. */
function renamedIn(
  value: unknown,
  within: string | undefined,
  renamed: (name: string) => string,
): unknown {
  if (typeof value === "string") return renamed(value);
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map((item) => renamedIn(item, within, renamed));
  if (within === undefined) return value;
  const fields: Readonly<Record<string, unknown>> = { ...value };
  return { ...fields, [within]: renamedIn(fields[within], undefined, renamed) };
}

/** The names of some kinds that an event holds, in the order of its fields. */
export function namesIn(event: KitchenEvent, kinds: ReadonlySet<RefKind>): string[] {
  const names: string[] = [];
  for (const { field, kind, within } of refsOf(event.type)) {
    if (!kinds.has(kind)) continue;
    renamedIn(fieldsOf(event)[field], within, (name) => {
      names.push(name);
      return name;
    });
  }
  return names;
}

/** The event with every name in it as `renamed` gives it. */
export function withNames<E extends KitchenEvent>(
  event: E,
  renamed: (name: string, kind: RefKind) => string,
): E {
  const changed = refsOf(event.type).flatMap(({ field, kind, within }) => {
    const value = fieldsOf(event)[field];
    if (value === undefined) return [];
    return [[field, renamedIn(value, within, (name) => renamed(name, kind))]];
  });
  return { ...event, ...Object.fromEntries(changed) };
}

const OWNERS: ReadonlySet<RefKind> = new Set(["batch", "load", "owner"]);

/** Batches and loads that an event mentions. */
export function idsOf(event: KitchenEvent): string[] {
  return namesIn(event, OWNERS);
}
