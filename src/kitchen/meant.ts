/** What a name stands for, as `language/` resolved it. */
import type { Meant, Ref, Sort } from "./command.ts";
import { type LotOf, lotsIn } from "./jars/lots.ts";
import type { Owner } from "./owners.ts";
import type { Batch, StageRun, State, Timer } from "./state.ts";

/** Whether any of these is the stage, or its batch or load as a whole. */
export function standsFor(refs: readonly Ref[], owner: Owner, run: StageRun): boolean {
  return refs.some(
    (ref) =>
      "owner" in ref && ref.owner === owner.id && (ref.stage === undefined || ref.stage === run.id),
  );
}

/** Ids of the batches and loads among these, including those of which only a stage was named. */
export function ownerIds(refs: readonly Ref[]): Set<string> {
  return new Set(refs.flatMap((ref) => ("owner" in ref ? [ref.owner] : [])));
}

/** The batches among these, in their order. */
export function batchesOf(state: State, refs: readonly Ref[]): Batch[] {
  return [...ownerIds(refs)].flatMap((id) => state.batches[id] ?? []);
}

/** The lots among these: the one named, or all of a batch that was named as a whole. */
export function lotsOf(state: State, refs: readonly Ref[]): LotOf[] {
  const all = refs.flatMap((ref): LotOf[] => {
    const batch = "owner" in ref ? state.batches[ref.owner] : undefined;
    if (!batch || !("owner" in ref)) return [];
    return lotsIn(batch).filter(({ lot }) => ref.lot === undefined || lot.id === ref.lot);
  });
  return all.filter(({ lot }, index) => all.findIndex((one) => one.lot === lot) === index);
}

/** The timers among these. */
export function timersOf(state: State, refs: readonly Ref[]): Timer[] {
  return refs.flatMap((ref) => ("timer" in ref ? (state.timers[ref.timer] ?? []) : []));
}

/** Whether one of these sorts of things was named, with or without which. */
export function namesSort(ref: Meant | undefined, ...sorts: Sort[]): boolean {
  return ref?.sorts.some((one) => sorts.includes(one)) ?? false;
}

/** Whether nothing but one of these sorts of things was named. */
export function namesOnlySort(ref: Meant | undefined, ...sorts: Sort[]): boolean {
  return ref?.sortAlone === true && namesSort(ref, ...sorts);
}
