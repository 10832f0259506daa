/** Root mean square of the pink sum below, as measured. */
const PINK_RMS = 1.73;

/**
 * Faint pink noise from a counter, not from random numbers: the same every time. The recognizer's
 * own noise removal misjudges sound without any noise in it.
 */
export class ComfortNoise {
  private state = 1;
  private slow = 0;
  private middle = 0;
  private quick = 0;

  /** The samples with noise of this root mean square added. */
  over(samples: Int16Array, rms: number): Int16Array {
    const scale = rms / PINK_RMS;
    return samples.map((sample) => {
      const sum = sample + Math.round(this.next() * scale);
      return Math.max(-32768, Math.min(32767, sum));
    });
  }

  private next(): number {
    this.state = (Math.imul(this.state, 1664525) + 1013904223) >>> 0;
    const white = this.state / 2147483648 - 1;
    this.slow = 0.99765 * this.slow + white * 0.099046;
    this.middle = 0.963 * this.middle + white * 0.2965164;
    this.quick = 0.57 * this.quick + white * 1.0526913;
    return this.slow + this.middle + this.quick + white * 0.1848;
  }
}
