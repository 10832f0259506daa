// data table
/**
 * What the world's physics and its judgment go by: published tables, typed in here and read between
 * their rows. Nothing is taken from `src/reckon` or `recipes/`, which are what is being tried.
 */

/** Standard atmosphere, feet and psia (U.S. Standard Atmosphere 1976, printed each 1,000 ft). */
export const AIR_PSIA: readonly (readonly [number, number])[] = [
  [0, 14.696],
  [1000, 14.175],
  [2000, 13.664],
  [3000, 13.173],
  [4000, 12.692],
  [5000, 12.23],
  [6000, 11.778],
  [7000, 11.341],
  [8000, 10.914],
  [9000, 10.506],
  [10_000, 10.108],
];

/** Saturated steam, degrees F and psia (Keenan and Keyes' steam tables; from memory). */
export const STEAM_PSIA: readonly (readonly [number, number])[] = [
  [150, 3.718],
  [160, 4.741],
  [170, 5.992],
  [180, 7.51],
  [190, 9.339],
  [200, 11.526],
  [210, 14.123],
  [220, 17.186],
  [230, 20.78],
  [240, 24.969],
  [250, 29.825],
  [260, 35.429],
];

/** Boiling points as extension sheets print them, feet and degrees F: the check of the two above. */
export const PRINTED_BOILING_F: readonly (readonly [number, number])[] = [
  [0, 212],
  [1000, 210.2],
  [2000, 208.5],
  [3000, 206.7],
  [4000, 204.9],
  [5000, 203],
];

/** Dial psi that keep 240 F, feet and psi (USDA Complete Guide to Home Canning, Guide 4). */
export const PRINTED_DIAL_PSI: readonly (readonly [number, number])[] = [
  [2000, 11],
  [4000, 12],
  [6000, 13],
  [8000, 14],
];

/**
 * A filled pint with its lid on in a room of 70 F: minutes and the share of its warmth above the
 * room that is left. Worked out with 10 W/m2K at the glass (free convection and radiation, from
 * memory of heat transfer texts), 0.6 kg of wet food and 450 cm2.
 */
export const PINT_COOLS: readonly (readonly [number, number])[] = [
  [0, 1],
  [15, 0.84],
  [30, 0.7],
  [60, 0.49],
  [90, 0.35],
  [120, 0.24],
  [180, 0.12],
  [300, 0.03],
  [600, 0],
];

/** How much slower or faster than a pint a jar cools, by weight over surface. */
export const COOLS_LIKE: Record<string, number> = { "half-pint": 0.75, pint: 1, quart: 1.35 };

/** Perishable food between these for longer than two hours is thrown out (FSIS). */
export const DANGER_ZONE_F = { from: 40, to: 140 } as const;
export const DANGER_MINUTES = 120;

export const ROOM_F = 72;
/** At least this strong, the vinegar of a tested pickle (USDA Complete Guide, Guide 6). */
export const VINEGAR_PERCENT = 5;
/** Jars for a process shorter than this are boiled first (USDA Complete Guide, Guide 1). */
export const STERILE_UNDER_MINUTES = 10;
/** Steam pours for so long before the weight goes on (USDA Complete Guide, Guide 1). */
export const VENT_MINUTES = 10;

/** Minutes by altitude: 0-1,000, 1,001-6,000, above; or 0-1,000, to 3,000, to 6,000, above. */
export const BANDS: Record<number, readonly number[]> = {
  3: [1000, 6000],
  4: [1000, 3000, 6000],
};
/** Dial pounds of low-acid food at 0-2,000, to 4,000, to 6,000, to 8,000 ft. */
export const DIAL_LOW_ACID: readonly number[] = [11, 12, 13, 14];
