/**
 * A quick test made once from a schema, for journals of a hundred thousand lines: parsing would
 * copy every one. It accepts what the schema accepts, except keys named `__proto__` and deeply
 * nested unknown values. A schema of a kind that is not known here is asked itself.
 */
import * as z from "zod/mini";

export type Checker = (value: unknown) => boolean;

type Def = {
  type: string;
  check?: string;
  checks?: { _zod: { def: CheckDef } }[];
  innerType?: z.ZodMiniType;
  element?: z.ZodMiniType;
  items?: z.ZodMiniType[];
  options?: z.ZodMiniType[];
  entries?: Record<string, unknown>;
  values?: unknown[];
  shape?: Record<string, z.ZodMiniType>;
  catchall?: z.ZodMiniType;
  keyType?: z.ZodMiniType;
  valueType?: z.ZodMiniType;
  rest?: unknown;
};

type CheckDef = {
  check: string;
  value?: number;
  inclusive?: boolean;
  minimum?: number;
  maximum?: number;
  pattern?: RegExp;
  format?: string;
  fn?: (value: unknown) => unknown;
};

/** The one place where a schema is taken apart: its own type does not say of which kind it is. */
export function defOf(schema: z.ZodMiniType): Def {
  return schema._zod.def as unknown as Def;
}

const made = new Map<z.ZodMiniType, Checker>();

/** The test for a schema, made when it is first used. */
export function checkerOf(schema: z.ZodMiniType): Checker {
  let checker = made.get(schema);
  if (!checker) {
    checker = checkerFor(schema);
    made.set(schema, checker);
  }
  return checker;
}

function checkerFor(schema: z.ZodMiniType): Checker {
  const def = defOf(schema);
  const checks = (def.checks ?? []).map(({ _zod }) => _zod.def);
  if (def.check !== undefined) checks.unshift(def as CheckDef);
  const tests = [BASES[def.type]?.(def), ...checks.map(testOf)];
  if (tests.includes(undefined)) return (value) => z.safeParse(schema, value).success;
  return (tests as Checker[]).reduce((before, test) => (value) => before(value) && test(value));
}

/** The test for what a schema asks beyond its type. */
function testOf(def: CheckDef): Checker | undefined {
  const { check, value = 0, inclusive, minimum = 0, maximum = 0, pattern, format, fn } = def;
  switch (check) {
    case "greater_than":
      return inclusive ? (it) => Number(it) >= value : (it) => Number(it) > value;
    case "less_than":
      return inclusive ? (it) => Number(it) <= value : (it) => Number(it) < value;
    case "number_format":
      return format === "safeint" ? Number.isSafeInteger : undefined;
    case "max_length":
      return (it) => (it as string | unknown[]).length <= maximum;
    case "min_length":
      return (it) => (it as string | unknown[]).length >= minimum;
    case "string_format":
      return format === "regex" && pattern ? (it) => pattern.test(it as string) : undefined;
    case "custom":
      return fn && ((it) => Boolean(fn(it)));
    default:
      return undefined;
  }
}

const BASES: Record<string, (def: Def) => Checker | undefined> = {
  string: () => (value) => typeof value === "string",
  boolean: () => (value) => typeof value === "boolean",
  number: () => Number.isFinite,
  enum: ({ entries }) => {
    const known = new Set(Object.values(entries ?? {}));
    return (value) => known.has(value);
  },
  literal: ({ values }) => {
    const known = new Set(values);
    return (value) => known.has(value);
  },
  nullable: ({ innerType }) => {
    const inner = checkerOf(innerType as z.ZodMiniType);
    return (value) => value === null || inner(value);
  },
  optional: ({ innerType }) => {
    const inner = checkerOf(innerType as z.ZodMiniType);
    return (value) => value === undefined || inner(value);
  },
  union: ({ options = [] }) => {
    const tests = options.map(checkerOf);
    return (value) => tests.some((test) => test(value));
  },
  array: ({ element }) => {
    const item = checkerOf(element as z.ZodMiniType);
    return (value) => {
      if (!Array.isArray(value)) return false;
      // By index, since `every` skips holes.
      for (let at = 0; at < value.length; at += 1) if (!item(value[at])) return false;
      return true;
    };
  },
  tuple: ({ items = [], rest }) => {
    const tests = items.map(checkerOf);
    if (rest) return undefined;
    return (value) =>
      Array.isArray(value) &&
      value.length === tests.length &&
      tests.every((test, at) => test(value[at]));
  },
  record: ({ keyType, valueType }) => {
    const key = checkerOf(keyType as z.ZodMiniType);
    const item = checkerOf(valueType as z.ZodMiniType);
    return (value) =>
      isPlain(value) && Object.keys(value).every((one) => key(one) && item(value[one]));
  },
  object: ({ shape = {}, catchall }) => {
    const strict = catchall !== undefined;
    // Only a shape that refuses other keys, or accepts any, is known here.
    if (strict && (catchall._zod.def as { type: string }).type !== "never") return undefined;
    return objectChecker(shape, strict);
  },
};

/** Tests an object's own fields; those in `also` may be present too, whatever they hold. */
export function objectChecker(
  shape: Record<string, z.ZodMiniType>,
  strict: boolean,
  also: readonly string[] = [],
): Checker {
  const fields = new Map(also.map((name) => [name, { test: ANYTHING, needed: 0 }]));
  let needed = 0;
  for (const [name, schema] of Object.entries(shape)) {
    const field = { test: checkerOf(schema), needed: 0 };
    if (!field.test(undefined)) field.needed = 1;
    needed += field.needed;
    fields.set(name, field);
  }
  return (value) => {
    if (!isPlain(value)) return false;
    let present = 0;
    for (const key in value) {
      const field = fields.get(key);
      if (field) {
        if (!field.test(value[key])) return false;
        present += field.needed;
      } else if (strict || key === "__proto__" || !isShallow(value[key], DEEPEST_UNKNOWN)) {
        return false;
      }
    }
    return present === needed;
  };
}

const ANYTHING: Checker = () => true;

/** Unknown values are kept and passed on, which recurses once for each level of nesting. */
const DEEPEST_UNKNOWN = 8;

function isShallow(value: unknown, levels: number): boolean {
  if (typeof value !== "object" || value === null) return true;
  return levels > 0 && Object.values(value).every((one) => isShallow(one, levels - 1));
}

/** Whether it is an object that inherits only what every object has. */
function isPlain(value: unknown): value is Record<string, unknown> {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return false;
  const above = Object.getPrototypeOf(value);
  return above === Object.prototype || above === null;
}
