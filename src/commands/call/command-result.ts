/** What a command that prints once and ends returns to the program's entry. */
export type CommandResult = {
  /** 0 done; 1 refused, or danger found; 2 wrong usage; 3 data not readable. */
  code: 0 | 1 | 2 | 3;
  stdout: string;
  stderr: string;
};

/** A failed call: one line on standard error saying what, where and how to fix it. */
export function failed(code: 1 | 2 | 3, message: string): CommandResult {
  return { code, stdout: "", stderr: `brinebell ${message.replace(/\s*\n\s*/g, " ")}\n` };
}
