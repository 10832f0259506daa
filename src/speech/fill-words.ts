/** What is said when jars are to be filled: how many, of which lot, how full, under what lids. */
import { largestLoad, nextFills } from "../kitchen/jars/canner-room.ts";
import type { BatchLot } from "../kitchen/jars/jar.ts";
import { fillingLot, isShared, jarsExpected, nextNumber, sum } from "../kitchen/jars/lots.ts";
import { openLoad } from "../kitchen/loads/open-load.ts";
import { activeOwners, isLoad } from "../kitchen/owners.ts";
import { calledLot, upper } from "../kitchen/spoken-names.ts";
import { isOver } from "../kitchen/stage-run.ts";
import type { Batch, StageRun, State } from "../kitchen/state.ts";
import { DAY_MS } from "../kitchen/time.ts";
import { INCHES, numberWords } from "../reckon/number-words.ts";

/** Jars are filled load by load, so that none stands before a canner that is full. */
export function fillPart(state: State, batch: Batch, left: number): string {
  const holds = batch.option && batch.jar ? largestLoad(state, batch.jar) : left;
  return left > holds ? ` Fill ${numberWords(holds)} now; keep the rest hot.` : "";
}

/** Lids are marked where jars of several lots could be taken for one another. */
function marksLids(state: State, batch: Batch): boolean {
  const others = activeOwners(state).some((one) => {
    return !isLoad(one) && one !== batch && one.option && !one.stages.slice(0, 1).some(isOver);
  });
  return others || batch.lots.some(({ variety }) => variety !== null);
}

/** The mark and number of a lot's next lid: "P 1". */
function nextMark(lot: BatchLot): string {
  return `${lot.mark} ${nextNumber(lot)}`;
}

/** "Provider: eight, lids from P 1; Dragon Tongue: one, from D 1." What is left waits hot. */
export function fillByLots(state: State, batch: Batch): string {
  const fills = nextFills(state, batch);
  const parts = fills.map(({ lot, count }, index) => {
    const name = upper(calledLot(state, { batch, lot }).replace(/^the /, ""));
    return `${name}: ${numberWords(count)}, ${index === 0 ? "lids " : ""}from ${nextMark(lot)}`;
  });
  return parts.length > 0 ? ` ${parts.join("; ")}.` : "";
}

/** How their lids are to be marked; how many there will be, where that was not told that day. */
export function marking(state: State, batch: Batch, now: number): string {
  const load = openLoad(state, batch);
  const told = now - batch.begunAt < DAY_MS / 2;
  const expected =
    jarsExpected(batch) && !told ? ` About ${jarsExpected(batch)} ${batch.jar}s.` : "";
  const more = (jarsExpected(batch) ?? 0) - sum(nextFills(state, batch), ({ count }) => count);
  const hot = more > 0 ? " Keep the rest hot." : "";
  const part = isShared(batch) ? hot : fillPart(state, batch, jarsExpected(batch) ?? 0);
  const lot = fillingLot(batch);
  const alone = lot && marksLids(state, batch) ? ` Mark the lids from ${nextMark(lot)}.` : "";
  const lids = isShared(batch) ? fillByLots(state, batch) : alone;
  const wait = load || !batch.option ? "" : " Wait for the canner.";
  return isShared(batch) ? `${wait}${lids}${part}` : `${wait}${expected}${part}${lids}`;
}

/** "Fill to half an inch, lids from D 1." */
export function briefFill(state: State, batch: Batch, { spec }: StageRun): string {
  const lot = fillingLot(batch);
  const shared = isShared(batch);
  const lids = lot && !shared && marksLids(state, batch) ? `, lids from ${nextMark(lot)}` : "";
  const part = shared ? fillByLots(state, batch) : fillPart(state, batch, jarsExpected(batch) ?? 0);
  const space = INCHES[batch.recipe.headspaceIn ?? 0];
  const fill = upper(spec.title);
  const to = space === undefined ? fill : `${fill.replace(/ the jars$/, "")} to ${space}`;
  return `${to}${lids}.${part}`;
}
