// data table
/**
 * What vegetables bring to a pickle's acidity, per kilogram fresh. pH: FDA approximate pH of
 * foods (LACF list; onions and peppers from memory). Water: USDA Standard Reference, from memory.
 * Malate, citrate, phosphate and protein carboxyl groups (mmol) are assumptions: phosphate from
 * the phosphorus content, carboxyl 15 mmol for each percent of protein, organic acids typical of
 * the crop. Only the measured pH of finished pickles bounds them, so every pH computed from them
 * carries a wide range.
 */

export type ProduceBuffer = {
  names: readonly string[];
  /** Share of the fresh weight that is water. */
  water: number;
  /** Lowest and highest natural pH. */
  ph: readonly [number, number];
  malateMmol: number;
  citrateMmol: number;
  phosphateMmol: number;
  carboxylMmol: number;
};

function row(
  names: string,
  water: number,
  ph: readonly [number, number],
  mmol: readonly [number, number, number, number],
): ProduceBuffer {
  const [malateMmol, citrateMmol, phosphateMmol, carboxylMmol] = mmol;
  return {
    names: names.split(","),
    water,
    ph,
    malateMmol,
    citrateMmol,
    phosphateMmol,
    carboxylMmol,
  };
}

export const PRODUCE_BUFFERS: readonly ProduceBuffer[] = [
  row("cucumber,cucumbers", 0.952, [5.12, 5.78], [18, 1, 7.7, 10]),
  row("onion,onions", 0.891, [5.3, 5.8], [12, 2, 9.4, 15]),
  row("bean,beans,snap-beans,green-beans", 0.903, [5.3, 5.7], [13, 1, 12, 27]),
  row("beet,beets", 0.876, [5.3, 6.6], [3, 10, 13, 24]),
  row("cabbage", 0.922, [5.2, 6.8], [12, 4, 8.4, 19]),
  row("carrot,carrots", 0.883, [5.88, 6.4], [18, 1, 11, 14]),
  row("pepper,peppers", 0.939, [4.65, 5.45], [4, 14, 6.5, 13]),
  row("cauliflower", 0.921, [5.5, 5.7], [15, 11, 14, 29]),
];

/** The row for a vegetable as named, by its last word where there are several. */
export function findProduceBuffer(name: string): ProduceBuffer | undefined {
  const key = name.trim().toLowerCase().replace(/\s+/g, "-");
  const last = key.split("-").at(-1) ?? "";
  return PRODUCE_BUFFERS.find(({ names }) => names.includes(key) || names.includes(last));
}
