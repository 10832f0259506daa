// data table
/**
 * The fields of every event, for checking one that comes from elsewhere. `?` may be missing,
 * `|null` may be null; an object or list is looked into by whoever works it out.
 */
import type { EventType } from "../../kitchen/events.ts";

/** `count`: a whole number of at least one. */
type Kind = "text" | "number" | "count" | "flag" | "list" | "object";
type Field = Kind | `${Kind}?` | `${Kind}|null`;
export type EventShape = Readonly<Record<string, Field>>;

const STAGE: EventShape = { owner: "text", stage: "text" };
const LOAD: EventShape = { load: "text" };
const BATCH: EventShape = { batch: "text" };
const COUNTED: EventShape = { batch: "text", count: "number" };

export const EVENT_SHAPES: Readonly<Record<EventType, EventShape>> = {
  opened: { version: "text", zone: "text", offsetMs: "number", rehearsal: "flag" },
  closed: {},
  gap: { from: "number", to: "number", cause: "text", byWall: "flag" },
  "clock-set": { byMs: "number" },
  "log-failed": { from: "number", to: "number", events: "number" },
  due: { key: "text", rings: "flag" },
  asked: { key: "text", text: "text" },
  acknowledged: { keys: "list" },
  hushed: { until: "number|null" },
  unhushed: {},
  "kitchen-set": {
    altitudeFt: "number?",
    altitudeUncertaintyFt: "number?",
    canners: "list?",
    burners: "number?",
    units: "text?",
  },
  "gauge-set": { canner: "text", gauge: "object" },
  "batch-begun": {
    batch: "text",
    recipe: "object",
    lot: "object",
    jar: "text|null",
    pack: "text|null",
    option: "object|null",
    terms: "object|null",
    expectedJars: "number|null",
    mark: "text",
  },
  "stage-begun": STAGE,
  "stage-done": STAGE,
  "stage-skipped": STAGE,
  held: BATCH,
  resumed: BATCH,
  abandoned: BATCH,
  focused: { owner: "text" },
  confirmed: { batch: "text", factor: "text", held: "flag" },
  note: { owner: "text|null", text: "text" },
  "ingredient-changed": { batch: "text", detail: "text" },
  "day-planned": {
    items: "list",
    agreedAt: "number",
    finishAt: "number",
    finishBy: "number|null",
    quiet: "object|null",
  },
  "day-plan-dropped": {},
  boil: { ...STAGE, covered: "flag|null" },
  "boil-lost": { ...STAGE, uncovered: "flag" },
  cover: { load: "text", covered: "flag" },
  "water-low": LOAD,
  steam: LOAD,
  "steam-lost": LOAD,
  pressure: { load: "text", psi: "number" },
  rocking: LOAD,
  "pressure-lost": LOAD,
  temperature: { owner: "text|null", what: "text", temperatureF: "number" },
  vouched: { load: "text", gap: "number", held: "flag", by: "text?" },
  probe: { owner: "text", what: "text", unit: "text", samples: "list" },
  "end-answer": { load: "text", yes: "flag" },
  "altitude-doubt": { owner: "text|null", detail: "text", why: "text?" },
  "load-opened": {
    load: "text",
    canner: "text",
    batch: "text",
    terms: "object",
    gauge: "object|null",
  },
  "load-terms": { load: "text", terms: "object", gauge: "object|null", raised: "flag?" },
  "jars-filled": { ...COUNTED, size: "text|null" },
  "all-filled": BATCH,
  "set-aside": COUNTED,
  "jar-broken": COUNTED,
  loaded: { load: "text", parts: "list" },
  unloaded: { load: "text", early: "flag" },
  sealed: { load: "text", ...COUNTED },
  "seal-failed": { load: "text", ...COUNTED, jars: "list" },
  disposed: {
    owner: "text",
    code: "text",
    what: "text",
    count: "number|null",
    batch: "text?",
    option: "object|null",
  },
  "timer-set": { timer: "text", label: "text|null", minutes: "number" },
  "timer-added": { timer: "text", minutes: "number" },
  "timer-cancelled": { timer: "text" },
  "reminder-set": { reminder: "text", wallMs: "number", text: "text" },
  "reminder-cancelled": { reminder: "text" },
  amended: { target: "text" },
  withdrawn: { target: "text" },
  tasted: { batch: "text", taster: "text|null", scores: "object" },
  preferred: { batch: "text", over: "text|null", taster: "text|null" },
  "jar-opened": { batch: "text", count: "count", spoiled: "flag" },
  "jars-moved": { batch: "text", place: "text" },
  "seed-saved": {
    seed: "text",
    crop: "text",
    variety: "text|null",
    isolation: "text|null",
    fermentDays: "number|null",
    dryWeightG: "number|null",
    storage: "text|null",
    batch: "text|null",
  },
  germination: { seed: "text", sprouted: "number", of: "number", days: "number|null" },
};

/** What is wrong with a value as an event, in a few words; undefined where nothing is. */
export function faultOfEvent(value: unknown): string | undefined {
  if (typeof value !== "object" || value === null) return "its event is none";
  const event = value as Record<string, unknown>;
  const { type, cmd, t, w } = event;
  if (typeof type !== "string" || !Object.hasOwn(EVENT_SHAPES, type)) {
    return `an event of the unknown type ${JSON.stringify(type)}; a later version may know it`;
  }
  if (typeof cmd !== "string" || !isTime(t) || !isTime(w)) return `its ${type} lacks its stamp`;
  const shape = EVENT_SHAPES[type as EventType];
  const wrong = faultyField(shape, event);
  return wrong === undefined ? undefined : `the field ${wrong} of its ${type} is off`;
}

/** The first field of a shape that an object lacks or has otherwise; undefined where none. */
export function faultyField(
  shape: EventShape,
  found: Readonly<Record<string, unknown>>,
): string | undefined {
  return Object.entries(shape).find(([name, field]) => {
    return !fits(Object.hasOwn(found, name) ? found[name] : undefined, field);
  })?.[0];
}

/** Instants a kitchen can have lived: the years 1970 to 9999. */
function isTime(value: unknown): boolean {
  return typeof value === "number" && value >= 0 && value < 253_402_300_800_000;
}

function fits(value: unknown, field: Field): boolean {
  if (field.endsWith("?") && value === undefined) return true;
  if (field.endsWith("|null") && value === null) return true;
  switch (field.replace(/\?$|\|null$/, "")) {
    case "text":
      return typeof value === "string";
    case "number":
      return typeof value === "number" && Number.isFinite(value);
    case "count":
      return Number.isInteger(value) && Number(value) >= 1;
    case "flag":
      return typeof value === "boolean";
    case "list":
      return Array.isArray(value);
    default:
      return typeof value === "object" && value !== null && !Array.isArray(value);
  }
}
