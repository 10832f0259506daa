/** Those who want to be told of something, in the order in which they came. */
export class Listeners<Told extends unknown[] = []> {
  private readonly all = new Set<(...told: Told) => void>();

  /** The function returned takes the listener away again. */
  add(listener: (...told: Told) => void): () => void {
    this.all.add(listener);
    return () => void this.all.delete(listener);
  }

  tell(...told: Told): void {
    for (const listener of this.all) listener(...told);
  }
}
