import type { BellPort } from "../../ports/bell.ts";

/** The bell of the terminal behind `write`; a terminal that has gone away is not an error. */
export function terminalBell(write: (text: string) => void): BellPort {
  return {
    ring() {
      try {
        write("\u0007");
      } catch {
        // Nobody is there to hear it.
      }
    },
  };
}
