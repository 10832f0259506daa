/** One line of a probe: `2027-08-14T14:03:11 canner 211.3F`, or less of it. */
import { KPA_PER_PSI } from "../../reckon/units.ts";
import { isRecordable, parseIso } from "../time.ts";

export type ProbeReading = {
  kind: "temperature" | "pressure";
  /** Degrees Fahrenheit, or pounds per square inch by gauge. */
  value: number;
  /** Digits after the point: how finely the probe reads. */
  decimals: number;
  /** How fine it reads: the last digit shown, in degrees Fahrenheit or psi. */
  step: number;
  /** What it says it measures, lower case; undefined where it says nothing. */
  where?: string;
  /** The wall instant it gives, epoch ms. */
  wallMs?: number;
};

const TIME = /(?:(\d{4}-\d\d-\d\dT\d\d:\d\d(?::\d\d(?:\.\d{1,6})?)?(?:Z|[+-]\d\d:?\d\d)?)[\s,;]+)?/;
const WHERE = /(?:([a-z][a-z0-9 _-]{0,39}?)[\s,;:=]+)?/;
const FIGURE = /([+-]?\d{1,4}(?:\.(\d{1,6}))?)\s*(°?[fc]|psi|psig|lb|lbs|kpa)?/;
const LINE = new RegExp(`^${TIME.source}${WHERE.source}${FIGURE.source}$`, "i");

const LONGEST_LINE = 120;

/** What a kitchen sensor can really show; anything else is a fault. */
const PLAUSIBLE = { temperature: { min: -40, max: 480 }, pressure: { min: -2, max: 30 } };

/**
 * Reads one line; undefined where it is not one, or shows an impossible value (a broken wire reads
 * -196 or 1832) or time. A bare number is degrees Fahrenheit.
 * @param zone the zone of a time without an offset.
 */
export function readProbeLine(line: string, zone: string): ProbeReading | undefined {
  const text = line.trim();
  if (text.length > LONGEST_LINE) return undefined;
  const match = LINE.exec(text);
  if (!match) return undefined;
  const [, time, where, number = "", decimals = "", unitGiven = "f"] = match;
  const unit = unitGiven.toLowerCase().replace("°", "");
  const kind = unit === "f" || unit === "c" ? "temperature" : "pressure";
  const factor = unit === "kpa" ? 1 / KPA_PER_PSI : 1;
  const value = unit === "c" ? Number(number) * 1.8 + 32 : Number(number) * factor;
  const step = 10 ** -decimals.length * (unit === "c" ? 1.8 : factor);
  const range = PLAUSIBLE[kind];
  if (!(value >= range.min && value <= range.max)) return undefined;
  const wallMs = time === undefined ? undefined : parseIso(time, zone);
  if (time !== undefined && !isRecordable(wallMs ?? Number.NaN)) return undefined;
  return {
    kind,
    value,
    decimals: decimals.length,
    step,
    ...(where === undefined ? {} : { where: where.trim().toLowerCase() }),
    ...(wallMs === undefined ? {} : { wallMs }),
  };
}
