// data table
/** What looks odd in a pot or a jar: what it is, and what to look at before the jar is trusted. */
import type { Trouble } from "../../kitchen/topics.ts";
import { type OwnText, SOURCES } from "./own-text.ts";

export const TROUBLES: Readonly<Record<Trouble, OwnText>> = {
  foam: {
    text: "Foam on a boiling jam is only air: skim it off before you fill. Bubbles that rise in a sealed jar later mean it's spoiling. Don't taste that one.",
    source: SOURCES.general,
  },
  cloudy: {
    text: "Table salt, hard water or starch can cloud a jar, and in a ferment it's usual. Look for fizzing, a raised lid or a bad smell. With any of those, don't taste it, and throw it out.",
    source: SOURCES.pickles,
  },
  "buckled-lid": {
    text: "A lid buckles when its band was too tight, or the canner was cooled in a hurry. When it's cold, press the middle and look along the rim. If it gives or isn't flat, it's not sealed.",
    source: null,
  },
  "lid-wont-close": {
    text: "Look for a nick or food on the rim, and at the band's thread. Take a new lid and another band, or another jar if the rim is chipped. Fingertip tight, never forced.",
    source: SOURCES.general,
  },
  siphoned: {
    text: "Sealed, with less than half the liquid gone: keep it, and eat it first. More than half gone: refrigerate it, and use it in two or three days. Don't open it to top it up.",
    source: SOURCES.center,
  },
  floating: {
    text: "Raw fruit and pickles float when they hold air or are lighter than the liquid. That's looks, not safety. Packed hot, they float less.",
    source: null,
  },
  "wont-set": {
    text: "Give it a day; some jams set slowly. Unset it's as safe as set: use it as syrup. If you boil it again, fill clean jars with new lids and process them anew.",
    source: null,
  },
  scum: {
    text: "Skim it off every few days, and keep everything under the brine. If it's soft, slimy or smells bad, throw it out.",
    source: SOURCES.pickles,
  },
  scorched: {
    text: "Take it off the heat and don't scrape. Pour what's loose into a clean pot, and go by its taste before you go on.",
    source: null,
  },
};

/** Where it was not said what looks odd. */
export const ANY_TROUBLE =
  "I don't know that here. Look at the lid, the liquid and the smell, and don't taste it. " +
  "If you doubt the jar, throw it out or ask your extension service.";
