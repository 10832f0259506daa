/** The tested hot pack, if there is one, in which failed jars may be processed again. */
import { processOptions } from "../../recipe/choose-process.ts";
import type { ProcessOption } from "../../recipe/recipe.ts";
import type { Batch, Load, State } from "../state.ts";

/** Low-temperature jars are reprocessed in boiling water, all others by their own method. */
export function hotPackOf(batch: Batch, load: Load): ProcessOption | undefined {
  const method = load.terms?.method === "low-temperature" ? "boiling-water" : load.terms?.method;
  return processOptions(batch.recipe).find((one) => one.pack === "hot" && one.method === method);
}

/** Whether any batch in a load has a tested hot pack: else reprocessing is not offered. */
export function mayReprocess(state: State, load: Load): boolean {
  return load.parts.some((part) => {
    const batch = state.batches[part.batch];
    return batch !== undefined && hotPackOf(batch, load) !== undefined;
  });
}
