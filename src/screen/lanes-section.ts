/**
 * The day as a strip: what has been, where now is, and what is coming, one lane for each resource.
 */
import type { DayLane, LanePart, View } from "../ports/view.ts";
import { cells, clip, printable } from "./printable.ts";
import { DIM, type Look, type Row, span } from "./row.ts";
import type { Section } from "./sections.ts";

const NAME_WIDTH = 9;
/** Filled for the past, solid where it is running, light where it is only expected. */
const FILL: Record<LanePart["phase"], string> = { been: "▒", now: "█", coming: "░" };
const LOOKS: Record<LanePart["phase"], Look> = {
  been: DIM,
  now: { bold: true },
  coming: {},
};

export function lanesSection(view: View, turn: number): Section {
  const { lanes } = view.strip;
  return {
    draw: (width, height) => drawLanes(view, width, height),
    steps: lanes.length > 0 ? [{ to: lanes.length + 1, turn, whole: true }] : [],
  };
}

type Scale = { from: number; to: number; width: number };

function drawLanes(view: View, width: number, height: number): Row[] {
  const across = width - NAME_WIDTH;
  if (across < 20) return [];
  const { fromWallMs, toWallMs } = view.strip;
  const scale = { from: fromWallMs, to: toWallMs, width: across };
  const lanes = view.strip.lanes.slice(0, height - 1).map((lane) => laneRow(lane, scale));
  return [hoursRow(view, scale), ...lanes];
}

function place(at: number, { from, to, width }: Scale): number {
  return Math.max(0, Math.min(width, Math.round(((at - from) / (to - from)) * width)));
}

/** Hours along the top; now stands in front of any hour. */
function hoursRow(view: View, scale: Scale): Row {
  const cellsAcross: string[] = Array.from({ length: scale.width }, () => " ");
  const put = (at: number, text: string) => {
    const start = Math.min(place(at, scale), scale.width - text.length);
    for (const [index, character] of [...text].entries()) cellsAcross[start + index] = character;
  };
  const now = `▼${view.time}`;
  const taken = Math.min(place(view.nowWallMs, scale), scale.width - now.length);
  let free = 0;
  for (const { wallMs, text } of view.strip.hours) {
    const at = place(wallMs, scale);
    const clear = at + 6 <= taken || at >= taken + now.length + 1;
    if (at < free || !clear || at + 5 > scale.width) continue;
    put(wallMs, text);
    free = at + 8;
  }
  put(view.nowWallMs, now);
  return [span("the day".padEnd(NAME_WIDTH), DIM), span(cellsAcross.join(""))];
}

function laneRow(lane: DayLane, scale: Scale): Row {
  const row: Row = [span(clip(printable(lane.name), NAME_WIDTH - 1).padEnd(NAME_WIDTH), DIM)];
  let at = 0;
  let named = "";
  for (const part of lane.parts) {
    const start = Math.max(at, place(part.fromWallMs, scale));
    const end = Math.max(start, place(part.toWallMs, scale));
    if (end === start) continue;
    if (start > at) row.push(span(" ".repeat(start - at)));
    const label = part.label === named ? "" : part.label;
    const drawn = partText(label, end - start, FILL[part.phase]);
    if (drawn.labeled) named = part.label;
    row.push(span(drawn.text, LOOKS[part.phase]));
    at = end;
  }
  return row;
}

/** The name inside its stretch, where there is room for at least part of it. */
function partText(label: string, width: number, fill: string): { text: string; labeled: boolean } {
  const text = width >= 6 && label ? clip(printable(label), width - 2) : "";
  if (!text) return { text: fill.repeat(width), labeled: false };
  return { text: `${fill}${text}${fill.repeat(width - 1 - cells(text))}`, labeled: true };
}
