/** Listeners for something, in order of arrival. */
export class Listeners<Told extends unknown[] = []> {
  private readonly all = new Set<(...told: Told) => void>();

  /** The function returned removes the listener again. */
  add(listener: (...told: Told) => void): () => void {
    this.all.add(listener);
    return () => void this.all.delete(listener);
  }

  tell(...told: Told): void {
    for (const listener of this.all) listener(...told);
  }
}
