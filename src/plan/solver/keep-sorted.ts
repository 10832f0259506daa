/** Sorts `order` by key, ascending and stable, in place; quick where it is nearly sorted. */
export function keepSorted(order: Int32Array, key: ArrayLike<number>): void {
  for (let i = 1; i < order.length; i++) {
    const item = order[i]!;
    const figure = key[item]!;
    let at = i - 1;
    while (at >= 0 && key[order[at]!]! > figure) {
      order[at + 1] = order[at]!;
      at--;
    }
    order[at + 1] = item;
  }
}
