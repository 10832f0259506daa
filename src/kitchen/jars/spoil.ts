/** Counts jars as spoiled, whatever they were counted as before. */
import type { SpoilSign } from "../facts/fields.ts";
import { chosen, toldBefore } from "./change-jars.ts";
import type { BatchLot, Jar } from "./jar.ts";
import { isReady, isUnaccounted, type LotOf } from "./lots.ts";

/** Whether a jar is still kept somewhere, so that it may be found spoiled. */
export function stands(jar: Jar): boolean {
  const what = jar.gone?.what;
  return what === undefined || what === "set-aside" || what === "aside";
}

/** Jars of a lot that are still kept somewhere and went through no canner. */
export function standingOutside(lot: BatchLot): Jar[] {
  return lot.jars.filter((jar) => jar.load === undefined && stands(jar));
}

type Spoiled = {
  load: string | null;
  count: number;
  jars: readonly number[];
  sign: SpoilSign;
  at: number;
};

/**
 * Jars of a load, or those that went through none. Without a load, those of all its loads come
 * first, the last load in front.
 */
export function spoil({ batch, lot }: LotOf, { load, count, jars, sign, at }: Spoiled): void {
  const ids = load === null ? [...batch.loads].reverse() : [load];
  const able = [
    ...ids.flatMap((id) => inOrder(lot.jars.filter((jar) => jar.load === id && stands(jar)))),
    ...(load === null ? outside(lot, batch.option !== null) : []),
  ];
  const told = toldBefore(lot.jars, jars, (jar) => jar.gone?.what === "spoiled");
  for (const jar of chosen(able, Math.max(0, count - told.length), jars)) {
    jar.gone = { what: "spoiled", at, sign };
  }
}

/** Jars nobody has counted yet go first, then sealed ones, then those kept cold, then open ones. */
function inOrder(jars: readonly Jar[]): Jar[] {
  const rank = (jar: Jar) => {
    if (jar.left) return 4;
    if (isUnaccounted(jar)) return 0;
    if (jar.gone) return 3;
    return jar.seal === "sealed" ? 1 : 2;
  };
  return jars.toReversed().sort((a, b) => rank(a) - rank(b));
}

function outside(lot: BatchLot, canned: boolean): Jar[] {
  const jars = standingOutside(lot);
  const aside = jars.filter((jar) => jar.gone);
  const full = jars.filter(isReady);
  return canned ? [...aside, ...full] : [...full, ...aside];
}
