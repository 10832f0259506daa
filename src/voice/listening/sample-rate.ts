/** The sample rate the recognizer needs, samples per second. */
export const SAMPLE_RATE = 16_000;
