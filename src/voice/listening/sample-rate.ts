/** Sound as the recognizer wants it: samples a second. */
export const SAMPLE_RATE = 16_000;
