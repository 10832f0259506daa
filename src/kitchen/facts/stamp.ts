/** What every event carries, whatever its kind. */

/**
 * When it happened and when it was written, in kitchen time (epoch-like ms), and by which command.
 */
export type Stamp = {
  cmd: string;
  t: number;
  w: number;
  /** The branch of the log that it is from, where another data folder wrote it. */
  branch?: string | undefined;
};

/** An event as far as the state knows it: what kinds there are is declared in `facts/`. */
export type Written = { type: string } & Stamp;
