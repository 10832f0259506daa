/**
 * How the world's cooks are taken to be. None of this is measured on people; what is compared must
 * come out in the same order with every rate halved and doubled.
 */
export type Assumed = {
  /** By this share falls the chance of a considered answer with each further question of a load. */
  fallPerQuestion: number;
  /** The chance of a reflex answer to the first of them. */
  reflexAtFirst: number;
  /** Of reflex answers to a question for a value, so many are looked up after all. */
  valueLookedUp: number;
  /** What goes wrong on the stove is never seen, so often. */
  neverSeen: number;
  /** Else it is seen after so many minutes, in the mean. */
  seenAfterMinutes: number;
  /** What was seen or is known is said, so often. */
  tells: number;
  /** And said in words of one's own rather than in a usual phrase, so often. */
  ownWords: number;
  /** After each needless interruption but the first, the chance that the program is muted. */
  mutes: number;
  /** A question is left lying, so often. */
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
/** Of what is told, so often in a plain clause, and in likely words; else in a trace. */
export const STRENGTH_MIX = { loss: 0.5, suspicion: 0.3 } as const;
