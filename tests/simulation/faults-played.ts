/** How often each thing that can go wrong was played, so that one that never is shows. */
import type { Direction } from "../../src/session/rehearsal/rehearsal-script.ts";

const HOUR_MS = 3_600_000;

/** Everything that a simulation is to play; each kind of length on its own. */
export const FAULTS = [
  "crash",
  "closed for seconds",
  "closed for minutes",
  "closed for hours",
  "closed for days",
  "asleep for seconds",
  "asleep for minutes",
  "asleep for hours",
  "asleep for days",
  "stands still for seconds",
  "stands still for minutes",
  "stands still for hours",
  "stands still for days",
  "power cut for seconds",
  "power cut for minutes",
  "power cut for hours",
  "power cut for days",
  "clock set forward",
  "clock set back",
  "dies at a write",
  "dies at half of a write",
  "died in the midst of a call",
  "write fails",
  "sync fails",
  "torn line",
  "repeated line",
  "another program",
  "another program looks in",
  "another program wrote meanwhile",
  "disk full",
  "disk slow",
  "opened without its lock",
  "voice gone",
  "voice hangs",
  "voice late",
  "microphone gone",
  "microphone ok",
  "heard surely",
  "heard in doubt",
  "not heard",
  "probe",
  "over a change to summer time",
  "over a change to winter time",
] as const;

export type Fault = (typeof FAULTS)[number];

function length(ms: number): "seconds" | "minutes" | "hours" | "days" {
  if (ms < 60_000) return "seconds";
  if (ms < HOUR_MS) return "minutes";
  return ms < 24 * HOUR_MS ? "hours" : "days";
}

/** What a direction is counted as; undefined for words that are typed, and for what is mended. */
export function faultOf(direction: Direction): Fault | undefined {
  switch (direction.kind) {
    case "closed":
    case "asleep":
      return `${direction.kind} for ${length(direction.ms)}`;
    case "stands-still":
      return `stands still for ${length(direction.ms)}`;
    case "power-cut":
      return `power cut for ${length(direction.ms)}`;
    case "clock-set":
      return direction.byMs > 0 ? "clock set forward" : "clock set back";
    case "dies-at-write":
      return direction.half ? "dies at half of a write" : "dies at a write";
    case "write-fails":
      return direction.call === "sync" ? "sync fails" : "write fails";
    case "bad-end":
      return direction.end === "torn" ? "torn line" : "repeated line";
    case "another-program":
      return direction.stays ? "another program" : "another program looks in";
    case "disk":
      return direction.full ? "disk full" : undefined;
    case "slow-disk":
      return "disk slow";
    case "voice":
      return direction.mood === "well" ? undefined : `voice ${direction.mood}`;
    case "microphone":
      return direction.gone ? "microphone gone" : "microphone ok";
    case "crash":
    case "probe":
      return direction.kind;
    default:
      return undefined;
  }
}

/** How far a zone's clocks are from UTC then, minutes. */
function offsetMinutes(wallMs: number, zone: string): number {
  const parts = new Intl.DateTimeFormat("en-US", { timeZone: zone, timeZoneName: "longOffset" });
  const name = parts.formatToParts(wallMs).find((part) => part.type === "timeZoneName")?.value;
  const [, sign, hours, minutes] = /GMT([+-])(\d\d):(\d\d)/.exec(name ?? "") ?? [];
  return (sign === "-" ? -1 : 1) * (Number(hours ?? 0) * 60 + Number(minutes ?? 0));
}

/** A change of the clocks between two moments. */
export function clockChange(fromMs: number, toMs: number, zone: string): Fault | undefined {
  const moved = offsetMinutes(toMs, zone) - offsetMinutes(fromMs, zone);
  if (moved === 0) return undefined;
  return moved > 0 ? "over a change to summer time" : "over a change to winter time";
}
