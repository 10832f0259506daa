/** The terminal's bell: the sound that every terminal has. */
export type BellPort = {
  /** Rings once. Never throws, never waits. */
  ring(): void;
};
