/**
 * A computed value, or one line saying what is wrong, where, and how to fix it. `refused` marks a
 * call that is well formed but whose answer is no (a burner too weak to boil a pot).
 */
export type Result<T> = { ok: true; value: T } | { ok: false; error: string; refused?: true };

export function ok<T>(value: T): Result<T> {
  return { ok: true, value };
}

export function fail(error: string): Result<never> {
  return { ok: false, error };
}

export function refuse(error: string): Result<never> {
  return { ok: false, error, refused: true };
}
