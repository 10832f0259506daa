/**
 * How long hands were needed. One cook has one pair of them: a minute in which several stages
 * waited for hands belongs to the one that was finished first. What lots share is shared out.
 */
import { loadsOf } from "../kitchen/jars/canner-room.ts";
import type { Jar } from "../kitchen/jars/jar.ts";
import { filledOf, jarsIn, sum } from "../kitchen/jars/lots.ts";
import { runOfStep } from "../kitchen/owners.ts";
import { hasRole, rulesOf } from "../kitchen/stages/kinds.ts";
import type { Batch, Load, StageRun, State } from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import { lengthOf, type Span, without } from "../reckon/spans.ts";

/** How much of some work each of several lots took: jars, or one each where there are none. */
type Shares = { lot: string; jars: number }[];
type Work = { spans: Span[]; end: number; shares: Shares };

/** Minutes of work by the id of a lot; 0 for one that needed none. */
export type HandsOn = (lot: string) => number;

/** Preparing, filling, loading and checking of every batch, without waiting for a canner. */
export function handsOn(state: State): HandsOn {
  const minutes = new Map<string, number>();
  const taken: Span[] = [];
  for (const { spans, shares } of works(state).sort((a, b) => a.end - b.end)) {
    const from = Math.min(...spans.map((span) => span.from));
    const own = without(
      spans,
      taken.filter(({ to }) => to > from),
    );
    taken.push(...own);
    const all = sum(shares, ({ jars }) => jars);
    for (const { lot, jars } of shares) {
      const share = all > 0 ? jars / all : 1 / shares.length;
      minutes.set(lot, (minutes.get(lot) ?? 0) + (share * lengthOf(own)) / MINUTE_MS);
    }
  }
  return (lot) => minutes.get(lot) ?? 0;
}

function works(state: State): Work[] {
  const list: Work[] = [];
  const add = (run: StageRun, spans: Span[], shares: Shares) => {
    if (spans.length > 0) list.push({ spans, end: run.endedAt ?? 0, shares });
  };
  for (const batch of Object.values(state.batches)) {
    const shares = batch.lots.map((lot) => ({ lot: lot.id, jars: filledOf(lot) }));
    for (const run of batch.stages) {
      const isFill = hasRole(run.spec, "filling");
      const spans = isFill ? fillSpans(state, batch, run) : workSpans(run);
      add(run, without(spans, holdsOf(batch)), shares);
    }
  }
  for (const load of Object.values(state.loads)) {
    const shares = load.parts.map((part) => {
      return { lot: part.lot, jars: jarsIn(state, load, part).length };
    });
    for (const run of load.stages) add(run, workSpans(run), shares);
  }
  return list;
}

function holdsOf({ holds }: Batch): Span[] {
  return holds.map(({ from, to = Number.POSITIVE_INFINITY }) => ({ from, to }));
}

/** Work that can wait was done at the end of its stage, and took its usual time. */
function workSpans({ spec, startedAt, endedAt }: StageRun): Span[] {
  const { shelf, plan } = rulesOf(spec);
  if (shelf !== "hands" || startedAt === undefined || endedAt === undefined) return [];
  const usual = endedAt - spec.typicalMinutes * MINUTE_MS;
  const from = plan.work === "can-wait" ? Math.max(startedAt, usual) : startedAt;
  return endedAt > from ? [{ from, to: endedAt }] : [];
}

/**
 * A filling goes on until the last jar of the last load. While jars stand filled or are in the
 * canner, and while the canner is heated again, it only waits, unless jars were being filled.
 */
function fillSpans(state: State, batch: Batch, run: StageRun): Span[] {
  const [whole] = workSpans(run);
  if (!whole) return [];
  const waits = loadsOf(state, batch).flatMap((load, index) => {
    const jars = itsJars(state, batch, load);
    if (jars.length === 0) return [];
    const from = Math.min(...jars.map(({ filledAt }) => filledAt));
    const inside = { from, to: load.unloadedAt ?? whole.to };
    const canner = index === 0 ? undefined : runOfStep(load, "canner");
    const { startedAt, endedAt } = canner ?? {};
    const heating = startedAt === undefined ? [] : [{ from: startedAt, to: endedAt ?? from }];
    return [inside, ...heating];
  });
  const filling = batch.lots.flatMap(({ jars }) => {
    return jars.map(({ filledFrom, filledAt }) => ({ from: filledFrom, to: filledAt }));
  });
  return without([whole], without(waits, filling));
}

function itsJars(state: State, batch: Batch, load: Load): Jar[] {
  const parts = load.parts.filter((part) => part.batch === batch.id);
  return parts.flatMap((part) => jarsIn(state, load, part));
}
