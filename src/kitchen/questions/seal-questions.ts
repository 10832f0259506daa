/** Which lids did not seal; once some are told of, whether the others of that batch did. */
import { liveParts, lotOf, sum, tally } from "../jars/lots.ts";
import { activeOwners, isLoad, runOfRole } from "../owners.ts";
import type { Load, LoadPart, State } from "../state.ts";
import { MINUTE_MS } from "../time.ts";
import type { Question } from "./question.ts";

/** A jar counts as sealed only once it has cooled for twelve hours. */
export function stillCooling(load: Load, now: number): boolean {
  const cool = runOfRole(load, "cooling");
  if (cool?.state !== "running" || cool.startedAt === undefined) return false;
  return now < cool.startedAt + (cool.spec.window?.minMinutes ?? 0) * MINUTE_MS;
}

type OfLoad = { load: Load; part: LoadPart };

/** What may be checked now of the batches that have jars in a load, in whichever loads it is. */
export function checkedWith(state: State, { parts }: Load, now: number): OfLoad[] {
  const batches = new Set(parts.map(({ batch }) => batch));
  const out = activeOwners(state)
    .filter(isLoad)
    .filter((load) => {
      return load.unloadedAt !== undefined && load.state === "running" && !stillCooling(load, now);
    });
  return out.flatMap((load) => {
    const own = liveParts(state, load).filter(({ batch }) => batches.has(batch));
    return own.map((part) => ({ load, part }));
  });
}

/** Jars nobody has counted yet of those that are checked together with a load's. */
export function leftToCheck(state: State, load: Load): number {
  const all = checkedWith(state, load, state.lastW);
  return sum(all, (one) => tally(state, one.load, one.part).unaccounted);
}

/** The question of a load whose seals are being checked. */
export function sealQuestion(state: State, load: Load): Question {
  const about = load.id;
  const kind = "seals";
  const all = checkedWith(state, load, state.lastW);
  const failed = sum(all, (one) => tally(state, one.load, one.part).failed);
  if (failed > 0) {
    const left = leftToCheck(state, load);
    const text = `Did the other ${left === 1 ? "one" : left} seal?`;
    const batches = [...new Set(all.map(({ part }) => part.batch))];
    return { key: `seals/${about}/${failed}`, kind, text, about, batches, takes: "yes-no" };
  }
  const lots = liveParts(state, load).flatMap((part) => lotOf(state, part.lot) ?? []);
  const [first] = lots;
  const names = lots.length > 1 && first ? `marks, like ${first.mark} 1` : "numbers";
  const text = `Which jars did not seal? Say their ${names}, or all sealed.`;
  return { key: `seals/${about}`, kind, text, short: "Which did not seal?", about };
}
