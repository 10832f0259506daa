import { crc32 } from "node:zlib";
import type { ClockReading } from "../ports/clock.ts";
import type { Disk, DiskAnswer } from "../ports/disk.ts";

/**
 * The clocks as last read while the program ran, and the number of the journal's last line then.
 */
export type Heartbeat = {
  reading: ClockReading;
  lastN: number;
  /** Kitchen time at that reading, ms; older files do not have it. */
  kitchenMs?: number;
};

const NAME = "clocks.json";

/** Writes the side file of clocks, replacing the previous one. */
export function writeHeartbeat(disk: Disk, folder: string, beat: Heartbeat): DiskAnswer {
  const { wallMs, monoMs, bootMs, bootId, zone } = beat.reading;
  const { lastN, kitchenMs } = beat;
  const body = JSON.stringify({ wallMs, monoMs, bootMs, bootId, zone, lastN, kitchenMs });
  return disk.replace(`${folder}/${NAME}`, Buffer.from(`${body}\n${crc32(body)}\n`));
}

/** The last heartbeat; undefined where the file is missing, torn or damaged. */
export function readHeartbeat(disk: Disk, folder: string): Heartbeat | undefined {
  const answer = disk.read(`${folder}/${NAME}`);
  if (!answer.ok) return undefined;
  const [body = "", sum = ""] = Buffer.from(answer.bytes).toString("utf8").split("\n");
  if (String(crc32(body)) !== sum) return undefined;
  try {
    return heartbeatOf(JSON.parse(body));
  } catch {
    return undefined;
  }
}

function heartbeatOf(found: Record<string, unknown>): Heartbeat | undefined {
  const { wallMs, monoMs, bootMs, bootId, zone, lastN, kitchenMs } = found;
  if (![wallMs, monoMs, bootMs, lastN].every(Number.isFinite)) return undefined;
  if (typeof bootId !== "string" || typeof zone !== "string") return undefined;
  const reading = { wallMs, monoMs, bootMs, bootId, zone } as ClockReading;
  const known = Number.isFinite(kitchenMs) ? { kitchenMs: kitchenMs as number } : {};
  return { reading, lastN: lastN as number, ...known };
}
