import type { Activity, Lag } from "./solver/model.ts";

/** Somebody up and in the kitchen: nothing on the heat is left alone. */
export const PRESENCE = "presence";

/** Activities and lags as they are put together, in whole grid steps. */
export class ProjectDraft {
  readonly activities: Activity[] = [];
  readonly lags: Lag[] = [];

  constructor(readonly capacities: Record<string, number>) {}

  add(activity: Activity): void {
    this.activities.push(activity);
  }

  /** One starts so long after another has started, at least. */
  follow(from: string, to: string, atLeast: number): void {
    this.lags.push({ from, to, atLeast });
  }

  /** A part of an activity that begins at an offset from its start, before it where negative. */
  pinned(
    to: string,
    part: { name: string; offset: number; duration: number },
    demands: Record<string, number>,
  ): string {
    const { name, offset, duration } = part;
    const id = `${to}#${name}`;
    this.add({ id, duration, demands, outsideEnd: true });
    this.follow(to, id, offset);
    this.follow(id, to, -offset);
    return id;
  }

  /** Something that is in use at a fixed time. */
  occupy(id: string, at: number, duration: number, demands: Record<string, number>): void {
    if (duration <= 0) return;
    this.add({ id, duration, demands, earliest: at, latest: at, outsideEnd: true });
  }
}
