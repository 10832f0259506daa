/** What a number of days shows, with how sure it is. */
import type { DayResult, Excuse } from "./day.ts";
import type { Strength } from "./wordings.ts";

/** 95 % by Wilson's score interval: low and high, as shares. */
export function wilson(hits: number, of: number): [number, number] {
  if (of === 0) return [0, 1];
  const z = 1.959964;
  const share = hits / of;
  const middle = share + (z * z) / (2 * of);
  const half = z * Math.sqrt((share * (1 - share)) / of + (z * z) / (4 * of * of));
  const whole = 1 + (z * z) / of;
  return [Math.max(0, (middle - half) / whole), Math.min(1, (middle + half) / whole)];
}

/** The value under which so large a share of the values lie; zero of none. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? 0;
}

export type Share = { hits: number; of: number };

export type Figures = {
  days: number;
  /** Wrong and as-tested, of the days whose world was wrong. */
  wrongNoFalseWord: Share;
  wrongWithReflex: Share;
  wrongInGoodFaith: Share;
  toldAndLost: Record<Strength, Share>;
  interruptionsRight: Share;
  extraMedian: number;
  extra95: number;
  questionsMean: number;
  rightAsTested: Share;
  muted: Share;
  notBegun: number;
  notFinished: number;
};

const BLAME: Record<Excuse, number> = {
  none: 0,
  hedged: 0,
  "taken back": 0,
  reflex: 1,
  "good faith": 2,
  "false report": 2,
};

/**
 * Whose fault an as-tested day is: 0 where something was wrong and no false word was said of it, 1
 * where only a reflex said it was right, 2 where whoever spoke meant it; undefined where all was
 * right, or the day is not as-tested.
 */
export function blame(day: DayResult): number | undefined {
  if (day.verdict !== "as-tested" || day.wrongs.length === 0) return undefined;
  return Math.min(...day.wrongs.map((one) => BLAME[one.excuse]));
}

const share = (hits: number, of: number): Share => ({ hits, of });

export function figures(days: readonly DayResult[]): Figures {
  const wrong = days.filter((day) => day.wrongs.length > 0);
  const right = days.filter((day) => day.mishaps.length === 0);
  const begun = days.filter((day) => day.state !== "not begun");
  const blamed = (most: number) => {
    const hits = wrong.filter((day) => (blame(day) ?? 9) <= most).length;
    return share(hits, wrong.length);
  };
  const interruptions = days.flatMap((day) => day.interruptions);
  const told = days.flatMap((day) => day.told);
  const lost = (strength: Strength) => {
    const of = told.filter((one) => one.strength === strength);
    return share(of.filter((one) => one.kept === "nothing").length, of.length);
  };
  return {
    days: days.length,
    wrongNoFalseWord: blamed(0),
    wrongWithReflex: blamed(1),
    wrongInGoodFaith: blamed(2),
    toldAndLost: { loss: lost("loss"), suspicion: lost("suspicion"), trace: lost("trace") },
    interruptionsRight: share(
      interruptions.filter((one) => one.right).length,
      interruptions.length,
    ),
    extraMedian: quantile(
      begun.map((day) => day.extraQuestions),
      0.5,
    ),
    extra95: quantile(
      begun.map((day) => day.extraQuestions),
      0.95,
    ),
    questionsMean: begun.reduce((sum, day) => sum + day.questions, 0) / Math.max(1, begun.length),
    rightAsTested: share(right.filter((day) => day.verdict === "as-tested").length, right.length),
    muted: share(days.filter((day) => day.muted).length, days.length),
    notBegun: days.length - begun.length,
    notFinished: begun.filter((day) => !["complete", "abandoned"].includes(day.state)).length,
  };
}

export function shareText({ hits, of }: Share): string {
  const [low, high] = wilson(hits, of);
  const percent = (part: number) => `${(100 * part).toFixed(1)} %`;
  const found = percent(of === 0 ? 0 : hits / of);
  return `${hits} of ${of}: ${found} (${percent(low)} to ${percent(high)})`;
}

/** The figures of one policy, a line each. */
export function figureLines(one: Figures): string[] {
  return [
    `as-tested, world wrong, no false word of it:  ${shareText(one.wrongNoFalseWord)}`,
    `  the same or a false reflex answer:          ${shareText(one.wrongWithReflex)}`,
    `  the same or a false word in good faith:     ${shareText(one.wrongInGoodFaith)}`,
    `told plainly, neither loss nor doubt:         ${shareText(one.toldAndLost.loss)}`,
    `told in likely words, the same:               ${shareText(one.toldAndLost.suspicion)}`,
    `told as a trace, the same:                    ${shareText(one.toldAndLost.trace)}`,
    `interruptions that were right:                ${shareText(one.interruptionsRight)}`,
    `extra questions a load: median ${one.extraMedian}, 95th percentile ${one.extra95}; ` +
      `all questions, mean ${one.questionsMean.toFixed(1)}`,
    `right days that end as-tested:                ${shareText(one.rightAsTested)}`,
    `days on which it was muted:                   ${shareText(one.muted)}`,
    `days not begun ${one.notBegun}, begun and not finished ${one.notFinished}`,
  ];
}

/** Wrong things that were called as tested, by what they were: how often, how told, which seeds. */
export function gapLines(days: readonly DayResult[], seeds = 6): string[] {
  const groups = new Map<string, number[]>();
  for (const day of days) {
    if (day.verdict !== "as-tested") continue;
    for (const { topic, excuse, told } of day.wrongs) {
      const key = `${topic}: ${told ? "told" : "not told"}, ${FALSE_WORD[excuse]}`;
      groups.set(key, [...(groups.get(key) ?? []), day.seed]);
    }
  }
  return [...groups]
    .sort(([, a], [, b]) => b.length - a.length)
    .map(
      ([key, list]) =>
        `${String(list.length).padStart(5)}  ${key}; seeds ${list.slice(0, seeds).join(" ")}`,
    );
}

const FALSE_WORD: Record<Excuse, string> = {
  none: "no false word",
  hedged: "a hedged answer",
  "taken back": "a false word that was taken back",
  reflex: "a false reflex answer",
  "good faith": "a false answer in good faith",
  "false report": "a false report",
};
