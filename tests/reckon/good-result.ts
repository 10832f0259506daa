import type { Result } from "../../src/reckon/result.ts";

/** The value of an outcome that must be good, or a thrown error that says why it was not. */
export function good<T>(outcome: Result<T>): T {
  if (!outcome.ok) throw new Error(outcome.error);
  return outcome.value;
}

/** The message of an outcome that must be an error. */
export function wrong<T>(outcome: Result<T>): string {
  if (outcome.ok) throw new Error(`expected an error, got ${JSON.stringify(outcome.value)}`);
  return outcome.error;
}
