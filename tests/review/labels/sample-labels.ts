/** Labels of a made-up mountain pantry: short names and long ones, for the shelf and not for it. */
import { type LabelWords, labelWords } from "../../../src/review/pages/label-words.ts";
import type { Label } from "../../../src/review/shelf/labels.ts";

export const JAR: Label = {
  batch: "270814-1",
  jar: 1,
  id: null,
  mark: "D",
  keep: "shelf",
  title: "Dilled green beans",
  variety: "Dragon Tongue",
  putUp: "2027-08-14",
  by: "2028-08-13",
  verdict: "as tested",
  process: { method: "boiling-water", minutes: 15, pressurePsi: null, altitudeFt: 6200 },
  notes: [],
};

export const COLD: Label = {
  ...JAR,
  keep: "refrigerate",
  by: "2027-08-21",
  verdict: "did not seal",
  process: null,
};

export const LONG = {
  title: "Whole or halved tomatoes packed raw, no liquid",
  variety: "Striped Late Mountain Paste from the Upper Garden",
};

const PRESSURE = { method: "pressure", minutes: 90, pressurePsi: 14, altitudeFt: 6200 };

export const SEED: Label = {
  ...JAR,
  batch: "S1",
  jar: null,
  mark: null,
  keep: "seed",
  title: "bean seed",
  variety: "Provider",
  by: null,
  verdict: null,
  process: null,
  notes: ["18 of 20 sprouted, 1 Oct 2027", "good until about 2030"],
};

const ALL: readonly Label[] = [
  JAR,
  { ...JAR, id: "K7QF" },
  COLD,
  { ...COLD, keep: "freeze", verdict: "not as tested" },
  { ...JAR, ...LONG, mark: "ST", process: PRESSURE },
  { ...COLD, ...LONG, mark: "ST", id: "K7QF" },
  { ...JAR, variety: null, mark: "S", title: "Stock", process: PRESSURE },
  { ...JAR, variety: "Đậu đũa Ế Ữ", title: "Огурцы по-деревенски" },
  { ...JAR, variety: "Łódzka żółta", title: "Αγγουράκια τουρσί" },
  { ...JAR, variety: "Donaudampfschifffahrtsgurke" },
  SEED,
];

/** So many labels, one of each kind after the other, each jar with its number. */
export function sampleLabels(count: number): LabelWords[] {
  return Array.from({ length: count }, (_, index) => {
    const label = ALL[index % ALL.length] ?? JAR;
    return labelWords({ ...label, jar: label.jar && index + 1 }, "us");
  });
}
