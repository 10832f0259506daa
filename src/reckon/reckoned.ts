/** One computed number, in the form in which every calculation is passed on and printed. */
export type Reckoned = {
  value: number;
  /** `F`, `kPa`, `psi`, `ft`, `%`, `g`, `min` or `jars`. */
  unit: string;
  /** Lowest and highest likely value; null where the arithmetic is exact. */
  range: [number, number] | null;
  /** True where the value rests on assumptions; then `range` is given. */
  estimate: boolean;
  /** The publications the equations and constants come from. */
  source: string;
  /** What was assumed, and what the number must not be used for. */
  notes: string[];
};

/** Said with every pH and every lethality. */
export const FOR_THE_RECORD = "estimate for the record; never a reason to change a tested process";

/** The value rounded to this many decimals, as a number. */
export function rounded(value: number, decimals: number): number {
  const factor = 10 ** decimals;
  return Math.round(value * factor) / factor;
}

/** A number with this many decimals and with commas at the thousands: `4,358`, `80.59`. */
export function withCommas(value: number, decimals = 0): string {
  const [whole = "", fraction] = value.toFixed(decimals).split(".");
  const grouped = whole.replace(/\B(?=(?:\d{3})+$)/g, ",");
  return fraction === undefined ? grouped : `${grouped}.${fraction}`;
}
