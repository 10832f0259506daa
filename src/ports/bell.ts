/** The terminal's bell: the sound that is always there. */
export type BellPort = {
  /** Rings once. Never throws, never waits. */
  ring(): void;
};
