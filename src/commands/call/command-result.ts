import type { Units } from "../../reckon/metric-words.ts";

/** What a command that prints once and ends returns to the program's entry. */
export type CommandResult = {
  /** 0 done; 1 refused, or danger found; 2 wrong usage; 3 data not readable. */
  code: 0 | 1 | 2 | 3;
  stdout: string;
  stderr: string;
  /** The units of the kitchen it tells of, in which its texts are to be worded. */
  units?: Units;
  /** Its output is read by programs, and keeps its own units. */
  forPrograms?: true;
};

/** A failed call: one line on standard error saying what, where and how to fix it. */
export function failed(code: 1 | 2 | 3, message: string): CommandResult {
  return { code, stdout: "", stderr: `brinebell ${message.replace(/\s*\n\s*/g, " ")}\n` };
}

/** A result with its texts in the units of its kitchen. */
export async function inItsUnits(result: CommandResult): Promise<CommandResult> {
  if (result.units !== "metric" || result.forPrograms) return result;
  const { metricText } = await import("../../reckon/metric-words.ts");
  const { stdout, stderr } = result;
  return { ...result, stdout: metricText(stdout), stderr: metricText(stderr) };
}
