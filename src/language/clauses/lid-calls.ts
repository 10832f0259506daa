/**
 * Lids that are told one by one or lot by lot: "P one yes, P two no", "Provider all good, Blue Lake
 * all but B two, which gives when I press it".
 */
import { commandOf } from "../../kitchen/command.ts";
import { type Context, type NamedBatch, runs } from "../context.ts";
import { refFor } from "../values/finish-slots.ts";
import { textOf, type Utterance } from "../words.ts";
import { type Call, Calls, isTotal, type Some } from "./lid-words.ts";
import type { LotWords } from "./lot-counts.ts";

/** With one of these no lid was pressed, or nobody is sure of what was felt. */
const UNSURE = new RegExp(
  "\\b(if|think|thought|guess|maybe|perhaps|probably|might|may|hope|hopefully|should|would|could|" +
    "will|wish|looks?|looking|seems?|trust|sure|almost|nearly|never mind|what|why|who|how|where|" +
    "reckon|suppose|suspect|wait|load|loads|yesterday|last)\\b",
);

/** Whether jars are out of a canner and wait for their lids to be pressed. */
function isOut({ loads = [], question }: Context): boolean {
  return question?.kind === "jars" || runs(loads, ({ ofCanner }) => ofCanner === "after");
}

/** The jars a call is not about, by their lots. */
function exceptions({ but, lots: [only] }: Call): Some[] {
  if (!but) return [];
  const { lots, count } = but;
  if (count === undefined) return lots;
  const [one, another] = lots;
  if (one && !another && one.count === undefined) return [{ lot: one.lot, count }];
  return lots.length > 0 ? lots : only ? [{ lot: only, count }] : [];
}

/** The commands of calls: what failed comes first, so that what held is the rest. */
function commandsOf(calls: readonly Call[], said: Utterance, context: Context) {
  const failed = calls.flatMap((one) => [
    ...(one.said === "failed" && !one.but ? one.jars : []),
    ...(one.but?.jars ?? []),
  ]);
  const held = calls.flatMap((one) => (one.said === "held" && !one.but ? one.jars : []));
  if (held.some((jar) => failed.includes(jar))) return undefined;
  const named = (lot: NamedBatch) => {
    const target = lot.variety?.toLowerCase() ?? "";
    return { target, ref: refFor(target, "sealed", said, context) };
  };
  const counted = calls.flatMap((one) => {
    const { lots: of, said: says } = one;
    const whole = hasFailed(one) ? { all: true as const } : undefined;
    const total = calls.find(isTotal)?.count;
    const count = one.count ?? (calls.length === 2 && of.length === 1 ? total : undefined);
    const how = whole ?? (count === undefined ? undefined : { count });
    if (!how) return [];
    return of.map((lot) => {
      const { target, ref } = named(lot);
      const held = says === "held" && !whole;
      return held
        ? commandOf("sealed", { target, ...how }, { ref })
        : commandOf("seal-failed", { target, ...how }, { ref });
    });
  });
  const without = calls.flatMap(exceptions).map(({ lot, count = 0 }) => {
    const { target, ref } = named(lot);
    return commandOf("seal-failed", { target, count }, { ref });
  });
  const whole = calls.filter((one) => {
    const counts = one.count !== undefined || one.none;
    return one.but !== undefined || (one.said === "held" && !counts);
  });
  const lots = [...new Set(whole.flatMap((one) => one.lots))].map((lot) => {
    const { target, ref } = named(lot);
    return commandOf("sealed", { target, all: true as const }, { ref });
  });
  const everything = whole.some(({ all, others, lots: of }) => (all || others) && of.length === 0);
  return [
    ...(failed.length > 0 ? [commandOf("seal-failed", { jars: failed })] : []),
    ...without,
    ...counted.toSorted((one, other) => one.intent.localeCompare(other.intent)),
    ...(held.length > 0 ? [commandOf("sealed", { jars: held })] : []),
    ...(everything ? [commandOf("sealed", { all: true as const })] : lots),
  ];
}

/** A whole lot that failed: "the Blue Lake both failed", "none of the Blue Lake sealed". */
function hasFailed({ said, but, none, all, lots, jars, count }: Call): boolean {
  if (but || lots.length === 0 || jars.length > 0 || count !== undefined) return false;
  return none ? said === "held" : all === true && said === "failed";
}

/** A total that is not what is named behind it. */
function isOff(calls: readonly Call[]): boolean {
  const total = calls.find(isTotal);
  if (!total) return false;
  const others = calls.filter((one) => one !== total);
  // "Two duds, both Provider": a lot alone has them all.
  const alone = others.length === 1 ? total.count : 0;
  const named = others.reduce((sum, { jars, lots, count }) => {
    return sum + jars.length + (count ?? (lots.length === 1 ? (alone ?? 0) : lots.length));
  }, 0);
  return named !== total.count || others.some(({ said }) => said !== total.said);
}

/** Calls that leave open who is meant, or how many. */
function isOpen(calls: readonly Call[]): boolean {
  const unchecked = calls.some(({ said }) => said === "unchecked");
  return calls.some((call) => {
    const { lots, jars, all, others, but, said, count } = call;
    const rest = (all || others) && lots.length === 0;
    const except = call.but ? exceptions(call) : [];
    const uncounted = except.some((one) => (one.count ?? 0) < 1);
    const total = except.reduce((sum, one) => sum + (one.count ?? 0), 0);
    const odd = but?.count !== undefined && but.count !== total;
    const empty = but && but.jars.length + except.length === 0;
    const unmarked = said === "failed" && !but && jars.length === 0 && count === undefined;
    const whole = unmarked && !hasFailed(call) && !calls.some(isTotal);
    const stray = others && rest && calls.length === 1;
    const odds = count !== undefined && (count < 1 || said === "unchecked" || but !== undefined);
    const nobody = call.none && (lots.length === 0 || said !== "held");
    return odds || nobody || odd || (rest && unchecked) || uncounted || empty || whole || stray;
  });
}

/**
 * What is reported about several lids; undefined where a word says something else, where who is
 * meant is left open, and where a wording of one report says it all.
 */
export function lidCalls(said: Utterance, context: Context): LotWords | undefined {
  if (said.asked || said.cut || !isOut(context) || UNSURE.test(textOf(said.words)))
    return undefined;
  const calls = new Calls(said, context).read();
  if (!calls || isOpen(calls) || isOff(calls)) return undefined;
  if (calls.length < 2 && !calls.some((one) => one.but || hasFailed(one))) return undefined;
  const commands = commandsOf(calls, said, context);
  if (!commands || commands.length === 0) return undefined;
  return { commands, clauses: [said], others: [], accounted: true };
}
