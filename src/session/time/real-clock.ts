import { readFileSync } from "node:fs";
import { uptime } from "node:os";
import { isRecordable } from "../../kitchen/time.ts";
import type { Clock, ClockReading } from "../../ports/clock.ts";
import { machineZone } from "./machine-zone.ts";

/** The longest wait a Node timer can take; a longer one fires at once. */
const LONGEST_TIMER_MS = 2 ** 31 - 1;

/**
 * The machine's clocks. Where the system has no name for its start (anything but Linux), the wall
 * time of the start stands in, taken once, so that it holds while this program runs.
 */
export function realClock(): Clock {
  const bootId = bootIdOfThisMachine();
  return {
    read: () => ({
      wallMs: Date.now(),
      monoMs: Number(process.hrtime.bigint() / 1000n) / 1000,
      bootMs: Math.round(uptime() * 1000),
      bootId,
      zone: machineZone(),
    }),
    after: waitFor,
  };
}

/** Why no kitchen can be opened by what the clocks show; undefined where it can. */
export function clockFault({ wallMs }: ClockReading): string | undefined {
  if (isRecordable(wallMs)) return undefined;
  const year = new Date(wallMs).getUTCFullYear();
  return `this machine's clock shows the year ${year}; set it and open the kitchen again`;
}

/** Names the present start of the machine: the kernel's own name, or `started-<epoch ms>`. */
export function bootIdOfThisMachine(): string {
  try {
    return readFileSync("/proc/sys/kernel/random/boot_id", "utf8").trim();
  } catch {
    return `started-${Math.round(Date.now() - uptime() * 1000)}`;
  }
}

function waitFor(ms: number, run: () => void): () => void {
  let left = Math.max(0, ms);
  let timer: ReturnType<typeof setTimeout>;
  const arm = (): void => {
    const step = Math.min(left, LONGEST_TIMER_MS);
    left -= step;
    timer = setTimeout(left > 0 ? arm : run, step);
  };
  arm();
  return () => clearTimeout(timer);
}
