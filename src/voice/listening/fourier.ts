/**
 * A fast Fourier transform in place, radix 2. One instance serves one size (a power of two).
 */
export class Fourier {
  readonly size: number;
  private readonly cosine: Float64Array;
  private readonly sine: Float64Array;
  private readonly order: Uint32Array;

  constructor(size: number) {
    this.size = size;
    this.cosine = Float64Array.from({ length: size / 2 }, (_, k) =>
      Math.cos((2 * Math.PI * k) / size),
    );
    this.sine = Float64Array.from({ length: size / 2 }, (_, k) =>
      Math.sin((2 * Math.PI * k) / size),
    );
    const bits = Math.log2(size);
    this.order = Uint32Array.from({ length: size }, (_, index) => {
      let reversed = 0;
      for (let bit = 0; bit < bits; bit++) reversed |= ((index >> bit) & 1) << (bits - 1 - bit);
      return reversed;
    });
  }

  /** Replaces the signal by its transform. */
  forward(re: Float64Array, im: Float64Array): void {
    for (let index = 0; index < this.size; index++) {
      const other = this.order[index] ?? 0;
      if (other <= index) continue;
      const swapRe = re[index] ?? 0;
      const swapIm = im[index] ?? 0;
      re[index] = re[other] ?? 0;
      im[index] = im[other] ?? 0;
      re[other] = swapRe;
      im[other] = swapIm;
    }
    for (let span = 1; span < this.size; span *= 2) this.combine(re, im, span);
  }

  /** Replaces a transform by its signal. */
  inverse(re: Float64Array, im: Float64Array): void {
    this.forward(im, re);
    for (let index = 0; index < this.size; index++) {
      re[index] = (re[index] ?? 0) / this.size;
      im[index] = (im[index] ?? 0) / this.size;
    }
  }

  private combine(re: Float64Array, im: Float64Array, span: number): void {
    const stride = this.size / (2 * span);
    for (let start = 0; start < this.size; start += 2 * span) {
      for (let k = 0; k < span; k++) {
        const a = start + k;
        const b = a + span;
        const c = this.cosine[k * stride] ?? 0;
        const s = this.sine[k * stride] ?? 0;
        const turnedRe = (re[b] ?? 0) * c + (im[b] ?? 0) * s;
        const turnedIm = (im[b] ?? 0) * c - (re[b] ?? 0) * s;
        re[b] = (re[a] ?? 0) - turnedRe;
        im[b] = (im[a] ?? 0) - turnedIm;
        re[a] = (re[a] ?? 0) + turnedRe;
        im[a] = (im[a] ?? 0) + turnedIm;
      }
    }
  }
}
