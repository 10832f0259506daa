/** Values that several meanings take, found anywhere in a sentence. */
import type { Raw } from "../intents/meaning.ts";
import type { Target } from "../values/targets.ts";
import type { FoundValue, Scan } from "./scan.ts";

export type Finder = (scan: Scan) => Raw | undefined;

/** What is named: running things first, and exact names before those that only sound alike. */
export function target(scan: Scan): Raw {
  const list = scan.all<Target>("target");
  const named = list.filter(({ value }) => {
    return value.meaning.batches.length + value.meaning.timers.length > 0;
  });
  const exact = (from: readonly FoundValue<Target>[]) => from.filter(({ value }) => value.exact);
  const found = scan.chosen(exact(named)) ?? scan.chosen(named) ?? scan.chosen(exact(list));
  return found ? { target: found.value } : {};
}

/** Whose jars are meant: a food or a batch, not a thing in the kitchen. */
export function jarsOf(scan: Scan): Raw {
  const found = target(scan).target as Target | undefined;
  const { batches = [], recipes = [] } = found?.meaning ?? {};
  return found && batches.length + recipes.length > 0 ? { target: found } : {};
}

/** When it happened, where that was said. */
export function moment(scan: Scan): Raw {
  const found = scan.one<string>("past") ?? sinceLasting(scan);
  return found ? { at: found.value } : {};
}

/** "For ten minutes now", "these last ten minutes". */
function sinceLasting(scan: Scan): FoundValue<string> | undefined {
  return scan.one<string>("lasting", ({ at, next }) => {
    const before = scan.word(at - 1);
    return /^(last|past)$/.test(before) || (before === "for" && scan.word(next) === "now");
  });
}

/** The size of jar that was said. */
export function size(scan: Scan): Raw {
  const found = scan.one<string>("size");
  return found ? { size: found.value } : {};
}

/** A length of time, in minutes. */
export function minutes(scan: Scan): FoundValue<number> | undefined {
  return scan.one<number>("length");
}

/** "The beets, not the beans": what is denied is not what is meant. */
export function meantInstead(scan: Scan): Raw | undefined {
  const found = scan.all<Target>("target", ({ at }) => {
    return (
      scan.word(at - 1) !== "not" &&
      !/^(not (the|my|those|these))$/.test(`${scan.word(at - 2)} ${scan.word(at - 1)}`)
    );
  });
  const named = found.find(({ value }) => value.meaning.batches.length > 0) ?? found[0];
  // "Not the beans, I meant to ask": without what is meant nothing is moved, or taken back for it.
  const another = scan.has("other", "other one", "others");
  return named ? { target: named.value } : another ? {} : undefined;
}
