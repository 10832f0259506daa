/** What is there to be put up: what it is to become, and heaps of which nobody said that yet. */

/** A batch to be planned, as it was said. */
export type LotToPlan = { recipe: string; variety?: string; weightLb?: number };

/** A heap of produce: a food by its name in the food table, and its weight, where that was said. */
export type HeapSaid = { food: string; weightLb?: number };

/** What a heap may be made into, once that is worked out. */
export type HeapOffer = { recipe: string; foods: string[]; weightLb?: number };
