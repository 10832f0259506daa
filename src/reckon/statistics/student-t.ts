/** Quantiles of Student's t, for intervals from few observations. */

const LANCZOS = [
  76.18009172947146, -86.50532032941678, 24.01409824083091, -1.231739572450155,
  0.1208650973866179e-2, -0.5395239384953e-5,
];

function logGamma(x: number): number {
  let series = 1.000000000190015;
  LANCZOS.forEach((coefficient, index) => {
    series += coefficient / (x + index + 1);
  });
  const shifted = x + 5.5;
  return (x + 0.5) * Math.log(shifted) - shifted + Math.log((2.5066282746310002 * series) / x);
}

/** Continued fraction of the incomplete beta function, by Lentz's method. */
function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const away = (value: number) => (Math.abs(value) < tiny ? tiny : value);
  let c = 1;
  let d = 1 / away(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m <= 300; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / away(1 + even * d);
    c = away(1 + even / c);
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / away(1 + odd * d);
    c = away(1 + odd / c);
    fraction *= d * c;
    if (Math.abs(d * c - 1) < 1e-14) break;
  }
  return fraction;
}

/** Regularized incomplete beta function, x from 0 to 1; about 1e-10. */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(
    logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x),
  );
  if (x < (a + 1) / (a + b + 2)) return (front * betaFraction(x, a, b)) / a;
  return 1 - (front * betaFraction(1 - x, b, a)) / b;
}

/** The t below which a share of the distribution lies; share 0.5 to 0.9999, freedom above 0. */
export function studentTQuantile(share: number, freedom: number): number {
  const below = (t: number) =>
    1 - incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5) / 2;
  let low = 0;
  let high = 1;
  while (below(high) < share && high < 1e6) high *= 2;
  for (let step = 0; step < 80; step++) {
    const middle = (low + high) / 2;
    if (below(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
