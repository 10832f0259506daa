import type { Result } from "../../src/reckon/result.ts";

/** The value of a result that must be good; throws an error that says why it was not. */
export function good<T>(outcome: Result<T>): T {
  if (!outcome.ok) throw new Error(outcome.error);
  return outcome.value;
}

/** The message of a result that must be an error. */
export function wrong<T>(outcome: Result<T>): string {
  if (outcome.ok) throw new Error(`expected an error, got ${JSON.stringify(outcome.value)}`);
  return outcome.error;
}
