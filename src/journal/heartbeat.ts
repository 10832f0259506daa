import { crc32 } from "node:zlib";
import type { ClockReading } from "../ports/clock.ts";
import type { Disk, DiskAnswer } from "../ports/disk.ts";
import type { JournalLine } from "./line.ts";

/**
 * The clocks as last read while the program ran, and the number of the journal's last line then.
 */
export type Heartbeat = {
  reading: ClockReading;
  lastN: number;
  /** Its sum, which tells this log from another; older files do not have it. */
  lastSum?: number;
  /** Kitchen time at that reading, ms; older files do not have it. */
  kitchenMs?: number;
};

const NAME = "clocks.json";

/** Writes the side file of clocks, replacing the previous one. */
export function writeHeartbeat(disk: Disk, folder: string, beat: Heartbeat): DiskAnswer {
  const { wallMs, monoMs, bootMs, bootId, zone } = beat.reading;
  const { lastN, lastSum, kitchenMs } = beat;
  const clocks = { wallMs, monoMs, bootMs, bootId, zone };
  const body = JSON.stringify({ ...clocks, lastN, lastSum, kitchenMs });
  return disk.replace(`${folder}/${NAME}`, Buffer.from(`${body}\n${crc32(body)}\n`));
}

/** The last heartbeat; undefined where the file is missing, torn or damaged. */
export function readHeartbeat(disk: Disk, folder: string): Heartbeat | undefined {
  return lookAtHeartbeat(disk, folder).beat;
}

/** The last heartbeat, or why there is none though its file is there. */
export function lookAtHeartbeat(
  disk: Disk,
  folder: string,
): { beat?: Heartbeat; problem?: string } {
  const path = `${folder}/${NAME}`;
  const answer = disk.read(path);
  if (!answer.ok) return answer.why === "missing" ? {} : { problem: answer.message };
  const [body = "", sum = ""] = Buffer.from(answer.bytes).toString("utf8").split("\n");
  const beat = String(crc32(body)) === sum ? heartbeatIn(body) : undefined;
  return beat ? { beat } : { problem: `${path} is damaged` };
}

/** Whether the clocks were written beside this log; undefined where they do not say. */
export function isOfLog({ lastN, lastSum }: Heartbeat, lines: readonly JournalLine[]): boolean {
  const line = lines.findLast(({ n }) => n <= lastN);
  return lastSum === undefined || line?.n !== lastN || line.sum === lastSum;
}

function heartbeatIn(body: string): Heartbeat | undefined {
  try {
    return heartbeatOf(JSON.parse(body));
  } catch {
    return undefined;
  }
}

function heartbeatOf(found: Record<string, unknown>): Heartbeat | undefined {
  const { wallMs, monoMs, bootMs, bootId, zone, lastN, lastSum, kitchenMs } = found;
  if (![wallMs, monoMs, bootMs, lastN].every(Number.isFinite)) return undefined;
  if (typeof bootId !== "string" || typeof zone !== "string") return undefined;
  const reading = { wallMs, monoMs, bootMs, bootId, zone } as ClockReading;
  const known = typeof kitchenMs === "number" ? { kitchenMs } : {};
  const sum = typeof lastSum === "number" ? { lastSum } : {};
  return { reading, lastN: lastN as number, ...sum, ...known };
}
