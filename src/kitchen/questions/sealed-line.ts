/** A place in the journal that cannot be relied on, and the batches and loads it touches. */
export type SealedLine = {
  seal: string;
  file: string;
  /** 0 is the file as a whole. */
  line: number;
  reason: string;
  at: number;
  touches: string[];
  /** Whether a person knows that nothing went wrong there; missing until one says so. */
  held?: boolean;
};
