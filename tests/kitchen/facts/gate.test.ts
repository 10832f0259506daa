/** What comes from outside is checked against its declaration. */
import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import { declarationOf, FACTS, type FactType } from "../../../src/kitchen/facts/all-facts.ts";
import { checkerOf } from "../../../src/kitchen/facts/checker.ts";
import type { RefKind } from "../../../src/kitchen/facts/fields.ts";
import { faultOfEvent, faultOfLine } from "../../../src/kitchen/facts/gate.ts";
import { namesIn } from "../../../src/kitchen/facts/references.ts";
import { dice } from "../../simulation/dice.ts";
import { GOLDEN, goldenEvents, LATER_EVENTS } from "./golden-journals.ts";
import { KEYS, mutated } from "./mutated-facts.ts";

const EVENTS = [...GOLDEN.flatMap(goldenEvents), ...LATER_EVENTS];

function first<T extends FactType>(type: T): Extract<KitchenEvent, { type: T }> {
  const found = EVENTS.find((event) => event.type === type);
  if (!found) throw new Error(`no ${type}`);
  return found as Extract<KitchenEvent, { type: T }>;
}

/** Parsed like a line's JSON, so that `__proto__` is a field like any other. */
function withField(event: object, json: string): object {
  return JSON.parse(`${JSON.stringify(event).slice(0, -1)},${json}}`);
}

describe("the gate", () => {
  it("lets through what the version before wrote", () => {
    expect(EVENTS.flatMap((event) => faultOfEvent(event) ?? [])).toEqual([]);
  });

  it.each<[string, FactType, object]>([
    ["a timer of a million million minutes", "timer-set", { minutes: 1e12 }],
    ["a timer of no minutes", "timer-set", { minutes: 0 }],
    ["a warning after the end", "warning-set", { minutes: -5 }],
    ["an altitude in words", "kitchen-set", { altitudeFt: "high" }],
    ["an altitude above every mountain", "kitchen-set", { altitudeFt: 90_000 }],
    ["an altitude off by less than nothing", "kitchen-set", { altitudeUncertaintyFt: -1 }],
    ["a burner and a half", "kitchen-set", { burners: 1.5 }],
    ["units nobody has", "kitchen-set", { units: "cubits" }],
    ["a batch that goes by a name of every object", "held", { batch: "constructor" }],
    ["a batch named __proto__", "held", { batch: "__proto__" }],
    ["a batch that is a path", "held", { batch: "../x" }],
    ["no batch", "held", { batch: "" }],
    ["a load that is a number", "unloaded", { load: 7 }],
    ["an instant in 1999", "note", { t: Date.UTC(2000, 0, 1) - 1 }],
    ["an instant in 2200", "note", { t: Date.UTC(2200, 0, 1) }],
    ["a reminder in 1970", "reminder-set", { wallMs: 0 }],
    ["a vinegar of 500 percent", "confirmed", { value: 500 }],
    ["a headspace of less than nothing", "confirmed", { value: -0.25 }],
    ["an instant that is none", "note", { w: Number.NaN }],
    ["an instant in words", "note", { t: "noon" }],
    ["a command that is none", "note", { cmd: "" }],
    ["a clock set by two thousand years", "clock-set", { byMs: -6.4e13 }],
    ["a time zone nobody knows", "opened", { zone: "Mars/Olympus" }],
    ["a pressure past every gauge", "pressure", { psi: 1000 }],
    ["a pressure without end", "pressure", { psi: Number.POSITIVE_INFINITY }],
    ["a temperature past every stove", "temperature", { temperatureF: 2000 }],
    ["half a jar", "sealed", { count: 0.5 }],
    ["less than no jars", "sealed", { count: -1 }],
    ["a jar number below one", "seal-failed", { jars: [0] }],
    ["a disposition nobody takes", "disposed", { what: "sell" }],
    ["jars of a part that are none", "loaded", { parts: [{ batch: "270701-1", jars: "six" }] }],
    ["a yes that is a word", "end-answer", { yes: "true" }],
    ["a reading without its instant", "probe", { samples: [[14.2]] }],
    ["a score over five", "tasted", { scores: { crunch: 6 } }],
    ["a score of nothing", "tasted", { scores: { toString: 3 } }],
    ["a season in words", "gauge-set", { gauge: { kind: "dial", testedSeason: "last" } }],
    ["a gauge of no kind", "gauge-set", { gauge: { kind: "digital" } }],
    [
      "a process of no minutes",
      "load-opened",
      { terms: { ...first("load-opened").terms, minutes: 0 } },
    ],
    ["a field it does not have", "boil", { raised: true }],
    ["a field it does not have that means something elsewhere", "note", { held: true }],
  ])("keeps out %s", (_what, type, change) => {
    const event = { ...first(type), ...change };
    expect(faultOfEvent(first(type))).toBeUndefined();
    expect(faultOfEvent(event)).toMatch(new RegExp(`its ${type}`));
    expect(faultOfLine(event)).toBe(faultOfEvent(event));
  });

  it.each(Object.keys(FACTS) as FactType[])("keeps out a %s without one of its fields", (type) => {
    const event = first(type);
    const { fields } = FACTS[type];
    for (const [name, schema] of Object.entries({ ...fields, cmd: z.string(), t: z.number() })) {
      const { [name as never]: _lost, ...rest } = event;
      const optional = (schema as { _zod: { optin?: string } })._zod.optin === "optional";
      expect([name, faultOfEvent(rest) === undefined]).toEqual([name, optional]);
    }
  });

  it("keeps out an empty recipe, and one with a stage of an unknown kind", () => {
    const begun = first("batch-begun");
    const { stages } = begun.recipe;
    for (const recipe of [
      { id: "x" },
      { ...begun.recipe, stages: [] },
      { ...begun.recipe, stages: [{ ...stages[0], kind: "guess" }] },
      { ...begun.recipe, yield: { produce: "beans", weightLb: Number.NaN } },
    ]) {
      expect(faultOfEvent({ ...begun, recipe })).toMatch(
        /field recipe.* of its batch-begun holds what it cannot/,
      );
    }
    const more = { ...begun, recipe: { ...begun.recipe, wasCalled: "dilly beans" } };
    expect(faultOfEvent(more)).toBeUndefined();
  });

  it("keeps out __proto__ at any depth", () => {
    const note = first("note");
    expect(faultOfEvent(withField(note, '"__proto__":{"polluted":true}'))).toBeDefined();
    const tasted = JSON.stringify(first("tasted")).replace(
      '"scores":{',
      '"scores":{"__proto__":3,',
    );
    expect(faultOfEvent(JSON.parse(tasted))).toBeDefined();
    const begun = JSON.stringify(first("batch-begun"));
    const recipe = begun.replace('"recipe":{', '"recipe":{"__proto__":{"id":"x"},');
    expect(faultOfEvent(JSON.parse(recipe))).toBeDefined();
  });

  it("keeps out endless nesting, anywhere", () => {
    const deep = JSON.parse(`${"[".repeat(50_000)}${"]".repeat(50_000)}`);
    const begun = first("batch-begun");
    expect(faultOfEvent({ ...begun, recipe: { ...begun.recipe, wasCalled: deep } })).toBeDefined();
    for (const name of ["recipe", "lot", "terms", "mark"]) {
      expect(faultOfEvent({ ...begun, [name]: deep })).toBeDefined();
    }
    expect(faultOfEvent({ ...first("loaded"), parts: deep })).toBeDefined();
  });

  it("accepts a field only where the object itself has it", () => {
    const { held: _held, ...confirmed } = first("confirmed");
    expect(faultOfEvent(Object.assign(Object.create({ held: true }), confirmed))).toBeDefined();
    expect(faultOfEvent(Object.create(first("note")))).toBeDefined();
  });

  it("names an unknown kind, and what is not an event at all", () => {
    expect(faultOfEvent({ ...first("note"), type: "wish" })).toContain('unknown type "wish"');
    expect(faultOfEvent({ ...first("note"), type: "constructor" })).toContain("unknown type");
    for (const none of [null, 7, "note", undefined]) expect(faultOfEvent(none)).toBeDefined();
    expect(faultOfEvent([])).toBeDefined();
  });

  it("allows the journal's own fields in a line, but not in an event", () => {
    const line = { ...first("note"), n: 7, v: 1, prev: 1, sum: 2, at: "x", written: "y", left: 1 };
    expect(faultOfLine(line)).toBeUndefined();
    expect(faultOfEvent(line)).toBeDefined();
  });

  it("allows extra fields of older lines, in the kinds that had them", () => {
    expect(faultOfEvent({ ...first("asked"), kind: "factor", about: null })).toBeUndefined();
    expect(faultOfEvent({ ...first("due"), about: null })).toBeDefined();
  });
});

/** The start of the year 3000: no number of a fact is as large, instants included. */
const LARGEST = 32_503_680_000_000;
/** Ids that are keys in the state; commands are none. */
const IDS = new Set<RefKind>(["batch", "load", "owner", "timer", "reminder", "seed", "key"]);

/** Numbers past all bounds and changed prototypes. Nothing reads what was added deeper down. */
function dangersIn(value: unknown, at = ""): string[] {
  if (typeof value === "number") return Math.abs(value) < LARGEST ? [] : [`${at} is ${value}`];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => {
    if (key === "__proto__") return [`${at} has a ${key}`];
    return at !== "" && KEYS.includes(key) ? [] : dangersIn(inner, `${at}.${key}`);
  });
}

/** What is wrong with a fact that the gate let through. */
function wrongIn(event: KitchenEvent): string[] {
  const odd = namesIn(event, IDS).filter((name) => !/^[\w~][\w.:~/+-]*$/.test(name) || name in {});
  const early = event.t >= 0 && event.w >= 0 ? [] : ["it is before 1970"];
  const former: readonly string[] = declarationOf(event.type).formerly ?? [];
  const read = Object.entries(event).filter(([field]) => !former.includes(field));
  const dangers = dangersIn(Object.fromEntries(read));
  return [...odd.map((name) => `${name} is no name`), ...early, ...dangers];
}

describe("100,000 facts that no program wrote", () => {
  it("are refused in a few words, or hold nothing that could break one", {
    timeout: 120_000,
  }, () => {
    const chance = dice(100);
    const kept = new Set<string>();
    let refused = 0;
    for (let left = 100_000; left > 0; left -= 1) {
      const json = JSON.stringify(mutated(chance, chance.pick(EVENTS), EVENTS));
      const fault = faultOfEvent(JSON.parse(json));
      if (fault !== undefined) {
        refused += 1;
        if (fault.length > 200) expect([fault, json]).toEqual(["a few words", json]);
        continue;
      }
      const event: KitchenEvent = JSON.parse(json);
      kept.add(event.type);
      const wrong = wrongIn(event);
      if (wrong.length > 0) expect([wrong, json]).toEqual([[], json]);
    }
    expect(refused).toBeGreaterThan(50_000);
    expect(kept.size).toBeGreaterThan(Object.keys(FACTS).length * 0.9);
  });
});

describe("the quick test made from a schema", () => {
  it("agrees with the schema itself about valid and invalid facts", {
    timeout: 60_000,
  }, () => {
    const chance = dice(12);
    let kept = 0;
    for (let left = 1500; left > 0; left -= 1) {
      const event = mutated(chance, chance.pick(EVENTS), EVENTS);
      const type = event.type as FactType;
      if (!Object.hasOwn(FACTS, String(type))) continue;
      for (const [name, schema] of Object.entries(FACTS[type].fields)) {
        const value = event[name];
        if (JSON.stringify(value)?.includes("__proto__")) continue;
        const quick = checkerOf(schema as z.ZodMiniType)(value);
        expect([type, name, value, quick]).toEqual([
          ...[type, name, value],
          z.safeParse(schema as z.ZodMiniType, value).success,
        ]);
        if (!quick) kept += 1;
      }
    }
    expect(kept).toBeGreaterThan(200);
  });
});
