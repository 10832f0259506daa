/** Words that raised a doubt; `held` is the answer to it, where there was one. */
export type HeardDoubt = {
  at: number;
  text: string;
  /** A plain loss, a likely one, or words about a subject that fit nothing. */
  strength: "loss" | "suspicion" | "trace";
  about: "boil" | "water" | "lids" | "acid" | "gauge" | "pressure" | "food" | "jars";
  /** Whether it was asked about, on its own or in a closing question. */
  asked?: true;
  settledAt?: number;
  held?: boolean;
};
