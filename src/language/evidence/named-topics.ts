// data table
/**
 * Which trade word, sign of spoiling or place a sentence mentions, by telling words: for
 * readings by the model, which are asked about and confirm nothing.
 */
import type { SpoilSign } from "../../kitchen/events.ts";
import type { Term } from "../../kitchen/glossary.ts";

type Topics<T extends string> = readonly (readonly [T, RegExp])[];

/** The first that fits is meant. */
export const TERM_TOPICS: Topics<Term> = [
  [
    "headspace",
    /\bhead ?(space|room)\b|\b(gap|space|air|room) (at|on|in|above) (the )?(top|rim|food)\b/,
  ],
  [
    "air-bubbles",
    /\b(free|poke|poking|run|running|get)\b.*\b(bubbles?|knife|stick|spatula|around|round)\b|\b(knife|stick|spatula)\b/,
  ],
  ["fingertip-tight", /\b(finger ?tip|finger) tight\b/],
  ["raw-pack", /\b(raw|cold)[ -]pack(ed|ing)?\b/],
  ["hot-pack", /\bhot[ -]pack(ed|ing)?\b/],
  ["jelling-point", /\b(jell?ing|gell?ing|jell|gel|setting) (point|stage|test)\b/],
  ["canning-salt", /\b(canning|pickling) salt\b/],
  ["weighted-gauge", /\b(weighted gauge|jiggler|rocker)\b/],
  ["dial-gauge", /\bdial\b/],
  ["pressure-canner", /\bpressure (canner|cooker|pot)\b/],
  [
    "venting",
    /\b(vent|vents|venting|vented|exhausting|(all|lose|losing|let) .*steam|steam (out|off))\b/,
  ],
  ["siphoning", /\bsiphon\w*\b/],
  ["botulism", /\bbotul\w*\b/],
  ["altitude", /\b(altitude|elevation|how high up|sea level)\b/],
  ["low-acid", /\blow[ -]acid\b/],
  ["ph", /\b(ph|p h)\b/],
  ["acid", /\b(acid|acidity|acidic)\b/],
  ["pectin", /\bpectin\b/],
  ["blanching", /\bblanch\w*\b/],
  ["curing", /\b(cure|cures|curing)\b/],
  ["come-up-time", /\bcome[ -]up\b/],
  ["simmer", /\bsimmer\w*\b/],
  ["full-boil", /\b(full|rolling|proper|real|hard) boil|\bboil(s|ing)?\b/],
  ["process-time", /\bprocess(ing)? times?\b/],
  ["process", /\b(process|processing|processed)\b/],
  ["canner", /\b(canner|water bath)\b/],
  ["seal", /\b(seal|seals|sealed|sealing|ping|pings|pinging|pop|pops|popped|popping)\b/],
  ["band", /\b(band|bands|ring|rings)\b/],
  ["salt-and-chill", /\b(salt|ice)\b.*\b(ice|salt|soak|faff|for)\b|\bice\b/],
  ["brine", /\bbrine\b/],
  ["load", /\bloads?\b/],
  ["lot", /\blots?\b/],
];

export const SPOIL_SIGNS: Topics<SpoilSign> = [
  ["bulged", /\b(bulg\w+|swollen|swell\w*|swelled|swole|puffed|domed|humped|balloon\w*|blown)\b/],
  [
    "spurted",
    /\b(spurt\w*|squirt\w*|spray\w*|foam\w*|fizz\w*|hiss\w*|gush\w*|bubbl\w*|shot (out|clear)|spit|spat)\b/,
  ],
  [
    "moldy",
    /\b(mold\w*|mould\w*|fuzz\w*|furry|fur|hairs?|hairy|whiskers|growing|white stuff|green stuff|black (spots?|stuff))\b/,
  ],
  ["leaked", /\b(leak\w*|seep\w*|ooz\w*|weep\w*|wept|sticky|dribbl\w*|drip\w*)\b/],
  ["unsealed", /\b(unsealed|not sealed|came open|come open|loose|popped open|lost its seal)\b/],
  [
    "off",
    /\b(spoil\w*|rott\w*|rancid|stink\w*|stank|smell\w* (bad|off|wrong|funny|foul|awful|rotten|horrible|odd|weird)|stench|reek\w*|pong\w*|whiff\w*|off|bad|slimy|cloudy)\b/,
  ],
];

/** Where jars are kept, by the pantry's names for it. */
export const PLACES: Topics<string> = [
  ["cellar", /\bcellar\b/],
  ["basement", /\bbasement\b/],
  ["pantry", /\b(pantry|larder)\b/],
  ["garage", /\bgarage\b/],
  ["cupboard", /\b(cupboard|closet|cabinet|press)\b/],
  ["cold room", /\bcold room\b/],
  ["store room", /\b(store ?room|storage room)\b/],
  ["shed", /\bshed\b/],
];
