/**
 * Numbers of the trade, each defined once, with its unit in its name. Sentences are made from them.
 * Each says what it rests on: published, common practice, from memory, or our choice.
 */

/** Published: USDA Complete Guide to Home Canning, Guide 1. Steam before a canner is closed. */
export const VENT_MINUTES = 10;

/**
 * From memory: current national-center wording. At zero, before a pressure canner's lid is lifted;
 * the 1994 guide says two, and the longer is kept.
 */
export const LID_WAIT_MINUTES = 10;

/** Published: USDA Complete Guide, Guide 1. Heat off and lid off, before jars are lifted. */
export const SETTLE_MINUTES = 5;

/** Published: USDA Complete Guide, Guide 1. Jars stand untouched before their seals are checked. */
export const COOL_HOURS = { min: 12, max: 24 } as const;

/** Our choice: after an evening's canning the seals are checked at breakfast. */
export const COOL_USUAL_HOURS = 13;

/**
 * Published: USDA Complete Guide, Guide 1. Until then a jar that did not seal may be processed
 * again.
 */
export const REPROCESS_WITHIN_HOURS = 24;

/** Common practice: food off its process for longer is not started over. */
export const OFF_PROCESS_HOURS = 2;

/** Our choice: total unwatched time during one process that is written down without a question. */
export const UNWATCHED_ALLOWED_SECONDS = 30;

/** Our choice: more than this over the tested time is a matter of quality. */
export const LONG_MINUTES = 10;

/** Published: USDA Complete Guide, Guide 1. A dial that is off by more has to be replaced. */
export const DIAL_OFF_PSI = 2;

/** Published: USDA Complete Guide, Guide 1. Water in a pressure canner. */
export const PRESSURE_WATER_IN = { min: 2, max: 3 } as const;

/** Published: USDA Complete Guide, Guide 1. Water over the lids of a boiling-water canner. */
export const COVER_IN = { least: 1, deep: 2 } as const;

/** Published: USDA Complete Guide, Guide 1. A longer boiling-water process needs the deep cover. */
export const DEEP_COVER_ABOVE_MINUTES = 30;

/** Published: USDA Complete Guide, Guide 1. Canner water when jars go in, by their pack. */
export const WATER_START_F = { raw: 140, hot: 180 } as const;

/** Published: USDA Complete Guide, Guide 1. A shorter process needs sterile jars. */
export const STERILE_BELOW_MINUTES = 10;

/** Published: Oklahoma State University Extension. Any longer, and a steam canner boils dry. */
export const STEAM_LIMIT_MINUTES = 45;

/** Published: USDA Complete Guide, Guide 6. The vinegar that pickles were tested with. */
export const VINEGAR_PERCENT = 5;

/** Published: National Center for Home Food Preservation, garlic in oil. In the refrigerator. */
export const IN_OIL_DAYS = 4;

/** Published: USDA Complete Guide, Guide 6: above it a ferment softens and spoils. */
export const WARMEST_FERMENT_F = 80;

/**
 * Published: USDA Farmers' Bulletin 1438, salometer table: 40 degrees, 10.6 percent, is where
 * souring becomes slow; of all that is in the crock, by weight.
 */
export const STRONGEST_BRINE_PERCENT = 10.6;

/** Published: USDA Complete Guide, Guide 6. Low-temperature pasteurization of pickles. */
export const LOW_TEMPERATURE_F = { min: 180, max: 185 } as const;

/** Published: USDA Complete Guide, Guide 6. Canner water when jars go in for pasteurization. */
export const LOW_TEMPERATURE_START_F = 140;

/** Our choice: how often the water of a pasteurization is read. */
export const LOW_TEMPERATURE_READ_MINUTES = 5;

/** Published: USDA Complete Guide, Guide 1. Room to swell in a freezer. */
export const FREEZER_HEADSPACE_IN = 1.5;

/**
 * Published: USDA Complete Guide, Guide 1. A doubtful jar is boiled under water before it is thrown
 * out.
 */
export const DISCARD_BOIL_MINUTES = 30;

/** Our choice: what a canner is taken to hold until somebody says so. */
export const USUAL_CANNER_JARS = { pint: 9, quart: 7 } as const;

/** Our choice: a cold canner to its starting temperature. */
export const CANNER_WARM_UP_MINUTES = 60;

/** Our choice: a canner unloaded within this time is still hot, and how soon it warms up again. */
export const STILL_HOT_MINUTES = 60;
export const HOT_CANNER_MINUTES = 10;

/** Published: USDA Complete Guide, Guide 1. Between jars that cool. */
export const COOLING_APART_IN = 1;

/** Our choice: jars lowered in, and lifted out. */
export const LOAD_MINUTES = 5;
export const UNLOAD_MINUTES = 5;

/** Our choice: the lid on, to a full boil or steady steam. */
export const COME_UP_MINUTES = 20;

/** Our choice: vent closed, to the tested pressure. */
export const TO_PRESSURE_MINUTES = 5;

/** Our choice: heat off, to zero by itself. */
export const TO_ZERO_MINUTES = 45;

/** Our choice: a year on the shelf is the best of what is canned (USDA Complete Guide, Guide 1). */
export const BEST_BY_DAYS = 365;

/** From memory: common practice, how long what is frozen is at its best. */
export const FROZEN_BEST_DAYS = 365;

/** Our choice: filled jars, and food that is to be packed hot, wait no longer than this. */
export const HOT_WITHIN_MINUTES = 10;

/**
 * Published: USDA Food Safety and Inspection Service, the danger zone of 40 to 140 degrees: food
 * may stand in it for two hours at most, or one where the air is above 90.
 */
export const STAND_HOURS = { usual: 2, hot: 1 } as const;
export const HOT_AIR_F = 90;

/** Our choice: an alarm sounds this long before the limit. */
export const STAND_WARNING_MINUTES = 15;

/** Our choice: a probe that shows the same tenth for this long, even over a full boil, is stuck. */
export const PROBE_STUCK_MINUTES = 3;

/** Our choice: after this long without a line a probe counts as silent. */
export const PROBE_SILENT_SECONDS = 30;
