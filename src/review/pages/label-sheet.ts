/** Labels laid out in their places on sheets. */
import { PT_PER_MM } from "../../reckon/units.ts";
import { type LabelLayout, layoutLabel, type Measure } from "./label-layout.ts";
import type { LabelWords } from "./label-words.ts";
import { placeOf, type Sheet } from "./sheet.ts";

/** A label on its page, with the left top of what may be printed on; lengths are points. */
export type PlacedLabel = { page: number; left: number; top: number; layout: LabelLayout };

/**
 * Labels from a place on the first sheet, 1 being the first; undefined in place of one whose words
 * do not fit.
 */
export function placeLabels(
  labels: readonly LabelWords[],
  sheet: Sheet,
  start: number,
  measure: Measure,
): (PlacedLabel | undefined)[] {
  const room = {
    width: (sheet.widthMm - 2 * sheet.freeXMm) * PT_PER_MM,
    height: (sheet.heightMm - 2 * sheet.freeYMm) * PT_PER_MM,
    round: sheet.round,
  };
  const known = remembered(measure);
  return labels.map((words, index) => {
    const layout = layoutLabel(words, room, known);
    const { page, xMm, yMm } = placeOf(sheet, start - 1 + index);
    const [left, top] = [(xMm + sheet.freeXMm) * PT_PER_MM, (yMm + sheet.freeYMm) * PT_PER_MM];
    return layout && { page, left, top, layout };
  });
}

/** Labels of a sheet have most of their words in common. */
function remembered(measure: Measure): Measure {
  const known = new Map<string, number>();
  return (text, bold) => {
    const key = bold ? `b${text}` : text;
    const found = known.get(key) ?? measure(text, bold);
    known.set(key, found);
    return found;
  };
}
