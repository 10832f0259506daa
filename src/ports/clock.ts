/**
 * The clocks. One reading takes all of them at once, since what happened to a machine (set clock,
 * sleep, standstill) shows only in how they moved relative to each other.
 */
export type ClockReading = {
  /** Wall clock, epoch milliseconds. Anybody may set it. */
  wallMs: number;
  /**
   * Milliseconds of the clock that timers use, comparable between programs within one start of the
   * machine. On Linux it stops during sleep.
   */
  monoMs: number;
  /** Milliseconds since the machine started, sleep included. Nobody can set it. */
  bootMs: number;
  /** Which start of the machine `bootMs` counts from. */
  bootId: string;
  /** IANA name of the zone the wall clock is read in, such as "America/Denver". */
  zone: string;
};

/** The only door to the time. Never throws, never waits. */
export type Clock = {
  read(): ClockReading;
  /**
   * Calls back once after this many milliseconds (0 or more, of any size); the function returned
   * cancels it. The call may come late, and later still after sleep: read the clock again then.
   */
  after(ms: number, run: () => void): () => void;
};
