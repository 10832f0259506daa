/** Deciding on seals, and on what becomes of jars that failed or were not processed in full. */
import { processOptions } from "../recipe/choose-process.ts";
import type { BatchOption, DatedFact, Disposition } from "./events.ts";
import { batchName, find } from "./names.ts";
import {
  askNumber,
  askWhich,
  type Choice,
  type Deciding,
  done,
  type Outcome,
  refused,
} from "./outcome.ts";
import { activeOwners, isLoad, runOfKind } from "./owners.ts";
import { undecided } from "./questions.ts";
import type { Load, LoadPart } from "./state.ts";
import { HOUR_MS, MINUTE_MS } from "./time.ts";

/** Jars may be reprocessed within this of coming out (USDA Complete Guide, Guide 1). */
const REPROCESS_WITHIN_MS = 24 * HOUR_MS;

/** Jars of a part that nobody has said anything about. */
function remaining(part: LoadPart): number {
  const accounted = part.sealed + part.failed + part.broken + part.again - part.failedAgain;
  return Math.max(0, part.jars - accounted);
}

/** Loads whose jars are out and not all accounted for, narrowed to what was named. */
function openSeals(
  deciding: Deciding,
  target: string | undefined,
): { load: Load; part: LoadPart }[] {
  const { state, wish } = deciding;
  const loads = activeOwners(state).filter(isLoad);
  const all = loads
    .filter((load) => load.unloadedAt !== undefined && load.state === "running")
    .flatMap((load) => load.parts.map((part) => ({ load, part })));
  if (wish.chosen) {
    const ids = new Set(wish.chosen.map((ref) => ("owner" in ref ? ref.owner : "")));
    return all.filter((one) => ids.has(one.part.batch) || ids.has(one.load.id));
  }
  if (target === undefined || /\b(jars?|lids?|others?|rest|canner)\b/.test(target)) return all;
  const owners = find(state, target).flatMap((one) => ("owner" in one ? one.owner.id : []));
  return all.filter((one) => owners.includes(one.part.batch) || owners.includes(one.load.id));
}

function askWhichBatch(deciding: Deciding, open: { part: LoadPart }[], lead: string): Outcome {
  const choices = open.flatMap(({ part }): Choice[] => {
    const batch = deciding.state.batches[part.batch];
    return batch ? [{ label: batchName(batch), ref: { owner: batch.id } }] : [];
  });
  return askWhich(deciding.wish, lead, choices);
}

export function decideSealed(deciding: Deciding): Outcome {
  const { now, wish } = deciding;
  const slots = wish.command.slots as {
    target?: string;
    all?: true;
    count?: number;
    jars?: number[];
  };
  const open = openSeals(deciding, slots.target);
  if (open.length === 0) return refused("No jars are cooling or waiting for their seal check.");
  const cooling = open.filter(({ load }) => stillCooling(load, now));
  if (cooling.length === open.length) {
    const owner = open[0]?.part.batch ?? null;
    return done({
      type: "note",
      owner,
      text: `heard before the seal check: ${wish.command.text}`,
      t: now,
    });
  }
  const ready = open.filter((one) => !cooling.includes(one) && remaining(one.part) > 0);
  const finish = ready.flatMap(({ load }): DatedFact[] => endCooling(load, now));
  if (slots.all) {
    const facts = ready.map(({ load, part }): DatedFact => {
      const count = remaining(part);
      return { type: "sealed", load: load.id, batch: part.batch, count, t: now };
    });
    return facts.length > 0
      ? done(...unique(finish), ...facts)
      : refused("Those are all counted already.");
  }
  const [one] = ready;
  if (!one) return refused("Those are all counted already.");
  if (ready.length > 1) return askWhichBatch(deciding, ready, "Of which batch:");
  const count = slots.jars?.length ?? slots.count;
  if (count === undefined) return askNumber(wish, "How many sealed?");
  if (count > remaining(one.part)) {
    return refused(`Only ${remaining(one.part)} are not counted yet. How many sealed?`);
  }
  return done(...unique(finish), {
    type: "sealed",
    load: one.load.id,
    batch: one.part.batch,
    count,
    t: now,
  });
}

/** A jar is only sealed once it has cooled its twelve hours. */
function stillCooling(load: Load, now: number): boolean {
  const cool = runOfKind(load, "cool");
  if (cool?.state !== "running" || cool.startedAt === undefined) return false;
  return now < cool.startedAt + (cool.spec.window?.minMinutes ?? 0) * MINUTE_MS;
}

function endCooling(load: Load, now: number): DatedFact[] {
  const cool = runOfKind(load, "cool");
  if (cool?.state !== "running") return [];
  return [{ type: "stage-done", owner: load.id, stage: cool.id, t: now }];
}

function unique(facts: DatedFact[]): DatedFact[] {
  return [...new Map(facts.map((fact) => [JSON.stringify(fact), fact])).values()];
}

export function decideSealFailed(deciding: Deciding): Outcome {
  const { now, wish } = deciding;
  const slots = wish.command.slots as {
    target?: string;
    count?: number;
    jars?: number[];
    othersSealed?: true;
  };
  const all = openSeals(deciding, slots.target);
  const open = all.filter(({ part }) => part.jars > part.failed + part.broken);
  if (open.length === 0) return refused("No jars have come out of a canner yet.");
  const [one] = open;
  if (!one) return refused("Those are all counted already.");
  if (open.length > 1) return askWhichBatch(deciding, open, "Of which batch:");
  const { load, part } = one;
  const jars = slots.jars ?? [];
  const last = part.first + part.jars - 1;
  const wrong = jars.find((jar) => jar < part.first || jar > last);
  if (wrong !== undefined) {
    return refused(`Jar ${wrong} was not in that load; it had ${part.first} to ${last}.`);
  }
  const twice = jars.find((jar) => part.failedJars.includes(jar));
  if (twice !== undefined) return refused(`Jar ${twice} is down as failed already.`);
  const count = slots.jars?.length ?? slots.count ?? 1;
  if (count > part.jars - part.failed - part.broken)
    return refused("That is more jars than are left.");
  const facts: DatedFact[] = [
    { type: "seal-failed", load: load.id, batch: part.batch, count, jars, t: now },
  ];
  if (!stillCooling(load, now)) facts.unshift(...endCooling(load, now));
  const rest = remaining(part) - count;
  if (slots.othersSealed && rest > 0 && !stillCooling(load, now)) {
    facts.push({ type: "sealed", load: load.id, batch: part.batch, count: rest, t: now });
  }
  return done(...facts);
}

export function decideDisposition(deciding: Deciding): Outcome {
  const { state, now, wish } = deciding;
  const slots = wish.command.slots as { what: Disposition; count?: number; jars?: number[] };
  const open = Object.values(state.loads).flatMap((load) => {
    const what = undecided(state, load);
    return what ? [{ load, what }] : [];
  });
  const [one] = open;
  if (!one) return refused("No jars are waiting for that decision.");
  if (slots.what === "carried-on" || slots.what === "restarted" || slots.what === "undecided") {
    return refused("Say reprocess, refrigerate, freeze or discard.");
  }
  const { load, what } = one;
  const count = slots.jars?.length ?? slots.count ?? null;
  let option: BatchOption | null = null;
  if (slots.what === "reprocess") {
    const hot = hotPack(deciding, load);
    if (typeof hot === "string") return refused(hot);
    option = hot;
  }
  const { code } = what;
  return done({ type: "disposed", owner: load.id, code, what: slots.what, count, option, t: now });
}

/** The tested hot pack jars may go through again, or why they may not. */
function hotPack(deciding: Deciding, load: Load): BatchOption | string {
  const { state, now } = deciding;
  if (load.unloadedAt === undefined) return "Take the jars out first, then say reprocess.";
  if (now > load.unloadedAt + REPROCESS_WITHIN_MS) {
    return "It is over 24 hours, so these can't be reprocessed: discard them untasted.";
  }
  const batch = state.batches[load.parts[0]?.batch ?? ""];
  if (!batch) return "I don't know whose jars those are.";
  const method = load.terms?.method === "low-temperature" ? "boiling-water" : load.terms?.method;
  const option = processOptions(batch.recipe).find((one) => {
    return one.pack === "hot" && one.method === method;
  });
  if (!option) {
    return `No hot pack was tested for ${batchName(batch)}, so they can't be reprocessed: refrigerate or freeze them.`;
  }
  return option;
}
