/** Sound as the recogniser wants it: samples a second. */
export const SAMPLE_RATE = 16_000;
