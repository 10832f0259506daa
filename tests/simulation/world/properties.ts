/** What must hold of every day in the world; a planted bug is caught when one of them breaks. */
import type { DayResult } from "./day.ts";
import { HELD } from "./known-gaps.ts";
import type { QuestionKind } from "./questions-read.ts";

/** Says what is wrong with a day; undefined where nothing is. */
type Property = (day: DayResult) => string | undefined;

/** Properties that the program does not keep yet, each with the reason. */
export const KNOWN_BROKEN: Record<string, string> = {};

const tested = (day: DayResult): boolean => day.verdict === "as-tested";
const slack = 0.3;

/** The factor that the record must have before a question of a kind counts as answered. */
const FACTORS: Partial<Record<QuestionKind, string>> = {
  vinegar: "vinegar",
  acid: "acid",
  hot: "hot-pack",
  headspace: "headspace",
  lids: "lids",
  sterile: "sterile",
};

const VINEGAR = new Set(["dilled-green-beans", "bread-and-butter-pickles", "pickled-beets"]);
const RAW = new Set(["dilled-green-beans"]);

/** The factors that the guide asks of a card's jars at the altitude that was told. */
function factorsOf(day: DayResult): QuestionKind[] {
  const short = day.world.markPsi === 0 && day.world.needToldMinutes < 10;
  return [
    "headspace",
    "lids",
    ...(VINEGAR.has(day.card) ? (["vinegar"] as const) : []),
    ...(day.card === "crushed-tomatoes" ? (["acid"] as const) : []),
    ...(RAW.has(day.card) ? [] : (["hot"] as const)),
    ...(short ? (["sterile"] as const) : []),
  ];
}

export const PROPERTIES: Record<string, Property> = {
  "nothing wrong is as-tested without a false word": (day) => {
    if (!tested(day)) return undefined;
    return day.wrongs.find((one) => HELD.includes(one.topic) && one.excuse === "none")?.topic;
  },
  "a right day is as-tested": (day) => {
    return day.mishaps.length > 0 || tested(day) ? undefined : day.reasons.join("; ");
  },
  "a usual phrase of the stove leaves a loss or a doubt": (day) => {
    const stove = ["boil", "cover", "pressure"];
    return day.told.find((one) => {
      const usual = !one.own && stove.includes(one.topic) && !atTheMark(one.text, day.askedPsi);
      return usual && one.inProcess && (one.kept === "nothing" || one.kept === "trace");
    })?.text;
  },
  "what is told plainly leaves a loss or a doubt": (day) => {
    return day.told.find((one) => one.strength === "loss" && one.kept === "nothing")?.text;
  },
  "likely words of the stove leave something while a process is timed": (day) => {
    const stove = ["boil", "cover", "pressure"];
    return day.told.find((one) => {
      const likely = one.strength === "suspicion" && stove.includes(one.topic);
      return likely && one.inProcess && one.kept === "nothing";
    })?.text;
  },
  "as-tested has the whole time": ({ record, ...day }) => {
    if (day.verdict !== "as-tested" || record.achieved >= record.tested - 0.01) return undefined;
    return `${record.achieved} of ${record.tested}`;
  },
  "the time and the pressure are the guide's": ({ record, world, ...day }) => {
    if (day.verdict !== "as-tested") return undefined;
    if (record.tested < world.needToldMinutes) return `${record.tested} minutes`;
    return (record.psi ?? 0) < world.markPsi ? `${record.psi} pounds` : undefined;
  },
  "no more minutes than there was heat, or than the clock ran": (day) => {
    const { record, world, mishaps, ranMinutes = Number.POSITIVE_INFINITY } = day;
    // Whoever takes jars out early has turned the heat off before, and may not have said so.
    const most = mishaps.includes("early-off") ? ranMinutes + slack : world.heatedMinutes + 1;
    return record.achieved > most ? `${record.achieved} minutes` : undefined;
  },
  "the clock runs for the whole time": ({ ranMinutes, record, mishaps }) => {
    // Where the altitude was raised days later, no clock ran for it.
    if (mishaps.includes("early-off") || mishaps.includes("altitude-off")) return undefined;
    if (ranMinutes === undefined || ranMinutes >= record.tested - slack) return undefined;
    return `${ranMinutes.toFixed(1)} of ${record.tested}`;
  },
  "no time is full that was lost": (day) => (day.fullWhileLost ? "it rang" : undefined),
  "a short process stands in the record": ({ record, ...day }) => {
    const over = ["complete", "abandoned"].includes(day.state) && record.tested > 0;
    if (!over || record.achieved >= record.tested - 0.01) return undefined;
    return record.codes.includes("process-short") ? undefined : `${record.achieved} minutes`;
  },
  "each factor was confirmed": (day) => {
    if (!tested(day)) return undefined;
    const has = (kind: QuestionKind) => {
      return day.record.confirmed.some((one) => one.includes(FACTORS[kind] ?? kind));
    };
    return factorsOf(day).find((kind) => !has(kind));
  },
  "what nobody answered, or answered with doubt, is not as-tested": (day) => {
    if (!tested(day)) return undefined;
    const plain = new Set(day.answers.filter(isPlain).map((one) => one.kind));
    return day.answers.find((one) => {
      const guards = FACTORS[one.kind] !== undefined || one.kind === "end" || one.kind === "gap";
      return guards && !plain.has(one.kind) && day.answers.length > 0;
    })?.kind;
  },
  "a no to the end is not as-tested": (day) => {
    const end = day.answers.filter((one) => one.kind === "end").at(-1);
    return tested(day) && end && /^no/.test(end.text) ? end.text : undefined;
  },
  "unwatched minutes are asked about": (day) => {
    if (!day.slept || day.answers.some((one) => one.kind === "gap")) return undefined;
    return "no question";
  },
  "unwatched minutes that were denied do not count": (day) => {
    const gap = day.answers.filter((one) => one.kind === "gap").at(-1);
    const { restarts, achieved, tested: whole } = day.record;
    const denied = gap !== undefined && /^no/.test(gap.text);
    return denied && restarts === 0 && achieved >= whole ? "no restart" : undefined;
  },
  "the end of a process that was cut short is not asked about": ({ record, ...day }) => {
    const raised = day.mishaps.includes("altitude-off");
    if (raised || record.achieved >= record.tested - 0.01) return undefined;
    return day.answers.find((one) => one.kind === "end")?.kind;
  },
  "talk leaves no loss": (day) => day.chatter.find((one) => one.kept === "loss")?.text,
  "a dial that reads high has its mark raised": (day) => {
    const off = day.answers.find((one) => one.kind === "gauge-off");
    const raise = off ? ["zero", "one", "two", "three", "four"].indexOf(off.text) : 0;
    return day.askedPsi < day.world.markPsi + raise ? `${day.askedPsi} pounds` : undefined;
  },
  "jars add up": ({ record, ...day }) => {
    if (day.mishaps.length > 0 || day.state !== "complete") return undefined;
    const same = record.filled === record.processed && record.processed === record.sealed;
    return same ? undefined : JSON.stringify(record);
  },
};

function isPlain({ is }: DayResult["answers"][number]): boolean {
  return is !== "left" && is !== "open";
}

/** A reading of a dial that shows what it is to show. */
function atTheMark(text: string, askedPsi: number): boolean {
  const psi = /(\d+) pounds/.exec(text)?.[1];
  return psi !== undefined && Number(psi) >= askedPsi;
}

/** What breaks on a day. */
export function broken(day: DayResult): { property: string; found: string }[] {
  return Object.entries(PROPERTIES).flatMap(([property, holds]) => {
    const found = holds(day);
    return found === undefined ? [] : [{ property, found }];
  });
}
