/** Makes names for commands and other things that need one nobody else has. Never throws. */
export type Ids = {
  /** A short name of letters, digits and hyphens, different at every call. */
  next(): string;
};
