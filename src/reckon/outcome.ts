/**
 * A number worked out, or one line saying what is wrong, where, and how to mend it. `refused`
 * marks a call whose words are sound but whose answer is no (a burner too weak to boil a pot).
 */
export type Outcome<T> = { ok: true; value: T } | { ok: false; error: string; refused?: true };

export function ok<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

export function fail(error: string): Outcome<never> {
  return { ok: false, error };
}

export function refuse(error: string): Outcome<never> {
  return { ok: false, error, refused: true };
}
