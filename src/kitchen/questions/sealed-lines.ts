/**
 * Lines of the journal that cannot be relied on. What they touch is not as-tested until a person
 * has said whether anything is missing there.
 */
import type { Batch, State } from "../state.ts";
import type { SealedLine } from "./sealed-line.ts";

/** Sealed lines that touch one of these and that nobody has vouched for. */
export function sealedOver(state: State, ids: readonly string[]): SealedLine[] {
  if (state.sealedLines.length === 0) return [];
  return state.sealedLines.filter(
    (line) => line.held !== true && line.touches.some((id) => ids.includes(id)),
  );
}

/** The line in a sentence: "line 7 of journal-2027.jsonl". */
export function sealedName({ file, line }: SealedLine): string {
  return line > 0 ? `line ${line} of ${file}` : file;
}

/** The batches a line touches, by themselves or through their loads. */
export function touchedBatches(state: State, { touches }: SealedLine): Batch[] {
  return Object.values(state.batches).filter((batch) =>
    [batch.id, ...batch.loads].some((id) => touches.includes(id)),
  );
}
