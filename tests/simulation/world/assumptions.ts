/**
 * How the world's cooks are taken to be. None of this is measured on people; what is compared must
 * come out in the same order with every rate halved and doubled.
 */
export type Assumed = {
  /** By this share falls the chance of a considered answer with each further question of a load. */
  fallPerQuestion: number;
  /** The chance of a reflex answer to the first of them. */
  reflexAtFirst: number;
  /** The share of reflex answers to a question for a value that are looked up after all. */
  valueLookedUp: number;
  /** The chance that trouble on the stove is never seen. */
  neverSeen: number;
  /** Otherwise the mean number of minutes until it is seen. */
  seenAfterMinutes: number;
  /** The chance that what was seen or is known is said. */
  tells: number;
  /** The chance that it is said in free wording rather than a usual phrase. */
  ownWords: number;
  /** After each needless interruption but the first, the chance that the program is muted. */
  mutes: number;
  /** The chance that a question is left unanswered. */
  leavesQuestion: number;
  /** Each time there is nothing to do, something else is said. */
  chatters: number;
};

/**
 * The fall of 30 percent with each further reminder is of alerts to clinicians (one study, 2017);
 * the other figures are guesses.
 */
export const ASSUMED: Assumed = {
  fallPerQuestion: 0.3,
  reflexAtFirst: 0.03,
  valueLookedUp: 0.4,
  neverSeen: 0.25,
  seenAfterMinutes: 6,
  tells: 0.7,
  ownWords: 0.5,
  mutes: 0.2,
  leavesQuestion: 0.05,
  chatters: 0.2,
};

const SURELY = 0.95;

/** Every rate (or one of them) times a factor; a chance stays under 95 in 100. */
export function scaled(factor: number, only?: keyof Assumed): Assumed {
  const entries = Object.entries(ASSUMED).map(([name, value]) => {
    if (only !== undefined && name !== only) return [name, value];
    const times = value * factor;
    return [name, name === "seenAfterMinutes" ? times : Math.min(SURELY, times)];
  });
  return Object.fromEntries(entries) as Assumed;
}

/** What a day is: right, or with one thing that goes wrong, or with two. */
export const DAY_MIX = { right: 0.4, two: 0.12 } as const;
/** The shares of what is told in a plain clause and in likely words; the rest is a trace. */
export const STRENGTH_MIX = { loss: 0.5, suspicion: 0.3 } as const;
