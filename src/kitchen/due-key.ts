/** The key of a due moment, by which it is written down once: made here, and read here. */

/** What comes due of a stage. */
export const STAGE_DUES = [
  "min",
  "max",
  "end",
  "half",
  "read",
  "off",
  "check",
  "late",
  "start",
  "again",
  "stands",
  "stood",
  "warning",
  "evening",
] as const;
export type StageDue = (typeof STAGE_DUES)[number];

export type DueWhat = StageDue | "timer" | "reminder" | "warm-up" | "begin";

/** What a key of a stage says; timers and reminders come due under their ids. */
type StageDueKey = { owner: string; stage: string; what: StageDue };

const PLAN = "plan";
const WARM_UP = "warm-up";

/** @param rounds tell several of the same kind apart: which start, which reading, which load. */
export function stageDueKey(
  { owner, stage, what }: StageDueKey,
  ...rounds: readonly (string | number)[]
): string {
  return [owner, stage, what, ...rounds].join("/");
}

/** A canner to be lit for a batch that has sent off so many loads. */
export function warmUpKey(batch: string, loads: number): string {
  return `${batch}/${WARM_UP}/${loads}`;
}

/** A batch that the day's plan begins. */
export function planKey({ id }: { id: string }): string {
  return `${PLAN}/${id}`;
}

/** What a key says of a stage; undefined for that of anything else. */
export function readStageDue(key: string): StageDueKey | undefined {
  const [owner = "", stage = "", word] = key.split("/");
  const what = STAGE_DUES.find((one) => one === word);
  return what && { owner, stage, what };
}

/** Whether a key is of a batch or load, of the stage where one is named. */
export function isDueOf(key: string, owner: string, stage?: string): boolean {
  return key.startsWith(stage === undefined ? `${owner}/` : `${owner}/${stage}/`);
}
