/**
 * Pronunciations the dictionary lacks: it knows "twenty" and "seventy" without their last t, and
 * would take a "ninety" said that way for one of them. In the dictionary's own phones.
 */
export const ALSO_SAID: Readonly<Record<string, readonly string[]>> = {
  ninety: ["N AY N D IY", "N AY N IY"],
  forty: ["F AO R D IY"],
  eighty: ["EY D IY"],
  reprocess: ["R IY P R AA S EH S", "R IY P R OW S EH S"],
};
