/**
 * Canners in a plan: each is lit once, is hot from then on, and is held for a load from the first
 * of its jars that is filled until the last is lifted out. So none is warmed for one food while
 * another is in it, and none that is hot is warmed anew.
 */
import { CANNER_WARM_UP_MINUTES, HOT_CANNER_MINUTES } from "../reckon/trade-numbers.ts";
import type { ProjectDraft } from "./project-draft.ts";

/** A load to come: its steps in the draft, and how long its filling takes, in grid steps. */
type LoadToCome = { fill: string; process: string; fillLength: number; processLength: number };

const HANDS_MINUTES = 5;

/** The part of a load that holds the canner. */
export const HOLD = "hold";

/** What the lighting of a canner is called in the draft. */
const LIGHTING = "lighting";

export class HotCanners {
  private readonly loads: LoadToCome[] = [];
  /** What may not begin before a canner is hot, and by how many grid steps sooner it may. */
  private readonly waiting: { activity: string; sooner: number }[] = [];
  /** Loads whose canner is being warmed or is hot for them. */
  private readonly claims: LoadToCome[] = [];

  constructor(
    private readonly draft: ProjectDraft,
    private readonly up: (minutes: number) => number,
  ) {}

  /** A load that has not gone in; `claimed` where a canner is being made hot for it. */
  add(load: LoadToCome, claimed: boolean, holds: Record<string, number>): void {
    const { draft } = this;
    const { fill, process, fillLength, processLength } = load;
    this.loads.push(load);
    if (claimed) this.claims.push(load);
    // A canner that was just unloaded is topped up while its next jars are filled.
    const ahead = Math.max(fillLength, this.up(HOT_CANNER_MINUTES));
    draft.follow(fill, process, ahead);
    draft.follow(process, fill, -ahead);
    const part = { name: HOLD, offset: -ahead, duration: ahead + processLength };
    draft.pinned(process, part, holds);
    this.wait(fill, 0);
  }

  wait(activity: string, sooner: number): void {
    this.waiting.push({ activity, sooner });
  }

  /**
   * Lights the canners that are cold and are needed, and keeps the claimed ones for their loads.
   * Returns the activity of each lighting; the second and further ones are lit after the first.
   */
  light(hot: number, holds: Record<string, number>, now: number): string[] {
    const { draft } = this;
    const canners = draft.capacities.canner ?? Number.POSITIVE_INFINITY;
    const count = Math.min(canners, this.loads.length) - hot;
    const length = this.up(CANNER_WARM_UP_MINUTES);
    const lit: string[] = [];
    for (let n = 1; n <= count; n++) {
      const id = `${LIGHTING}${n}`;
      const alike = { earliest: now, outsideEnd: true, common: true };
      draft.add({ id, duration: length, demands: holds, ...alike });
      const hands = this.up(HANDS_MINUTES);
      draft.add({ id: `${id}#hands`, duration: hands, demands: { hands: 1 }, ...alike });
      draft.follow(id, `${id}#hands`, 0);
      draft.follow(`${id}#hands`, id, 0);
      const [first] = lit;
      if (first !== undefined) draft.follow(first, id, hands);
      lit.push(id);
    }
    const [first] = lit;
    if (first !== undefined && hot === 0) {
      for (const { activity, sooner } of this.waiting) {
        draft.follow(first, activity, length - sooner);
      }
    }
    if (canners === 1) this.keepClaims();
    return lit;
  }

  private keepClaims(): void {
    const [claimed] = this.claims;
    if (!claimed) return;
    for (const { fill } of this.loads) {
      if (fill === claimed.fill) continue;
      this.draft.follow(claimed.process, fill, claimed.processLength);
    }
  }
}
