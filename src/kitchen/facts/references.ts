/** Which fields of a fact refer to something that another fact began: derived from the schemas. */
import type * as z from "zod/mini";
import type { KitchenEvent } from "../events.ts";
import { FACTS, type FactType } from "./all-facts.ts";
import { type RefKind, refKindOf } from "./fields.ts";

/** The field, and within it the field of each item where it is a list of objects. */
type Ref = { field: string; kind: RefKind; list: boolean; within?: string };

type Def = {
  type: string;
  innerType?: z.ZodMiniType;
  element?: z.ZodMiniType;
  shape?: Record<string, z.ZodMiniType>;
};

function defOf(schema: z.ZodMiniType): Def {
  return schema._zod.def as unknown as Def;
}

function refsIn(field: string, schema: z.ZodMiniType): Ref[] {
  const kind = refKindOf(schema);
  if (kind) return [{ field, kind, list: false }];
  const { innerType, element } = defOf(schema);
  if (innerType) return refsIn(field, innerType);
  if (!element) return [];
  const item = refKindOf(element);
  if (item) return [{ field, kind: item, list: true }];
  return Object.entries(defOf(element).shape ?? {}).flatMap(([within, one]) => {
    const named = refKindOf(one);
    return named ? [{ field, kind: named, list: true, within }] : [];
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

/** An event's fields by name. */
type Bag = Record<string, unknown>;

/** The fields in which a kind of fact names what other facts began, or a command. */
export function namingFields(type: FactType): string[] {
  return refsOf(type).flatMap(({ field, kind }) => (kind === "key" ? [] : [field]));
}

/** The names of some kinds that an event holds, in the order of its fields. */
export function namesIn(event: KitchenEvent, kinds: ReadonlySet<RefKind>): string[] {
  return refsOf(event.type).flatMap(({ field, kind, list, within }) => {
    const value = (event as Bag)[field];
    if (!kinds.has(kind) || value === null || value === undefined) return [];
    if (!list) return [value as string];
    const items = value as (string | Bag)[];
    return within ? items.map((one) => (one as Bag)[within] as string) : (items as string[]);
  });
}

/** The event with every name in it as `renamed` gives it. */
export function withNames(
  event: KitchenEvent,
  renamed: (name: string, kind: RefKind) => string,
): KitchenEvent {
  const made: Bag = { ...event };
  for (const { field, kind, list, within } of refsOf(event.type)) {
    const value = made[field];
    if (value === null || value === undefined) continue;
    if (!list) made[field] = renamed(value as string, kind);
    else {
      made[field] = (value as (string | Bag)[]).map((one) =>
        within
          ? { ...(one as Bag), [within]: renamed((one as Bag)[within] as string, kind) }
          : renamed(one as string, kind),
      );
    }
  }
  return made as KitchenEvent;
}

const OWNERS: ReadonlySet<RefKind> = new Set(["batch", "load", "owner"]);

/** Batches and loads that an event mentions. */
export function idsOf(event: KitchenEvent): string[] {
  return namesIn(event, OWNERS);
}
