// data table
/**
 * What to do when somebody is hurt, ill or in danger. Where it is bad the emergency number comes
 * first. From published first aid and fire safety, restated; where sources differ, the longer time.
 */
import type { Emergency } from "../../kitchen/topics.ts";
import type { OwnText } from "./own-text.ts";

const BURN: OwnText = {
  text: "Cool running water on it now, for twenty minutes. No ice and no fat; take off rings and a watch. Bigger than a hand, deep, or on the face: call 911 or your local emergency number.",
  source: "the National Health Service",
};

export const EMERGENCIES: Readonly<Record<Emergency, OwnText>> = {
  burn: BURN,
  scald: BURN,
  chile: {
    text: "Wash it with plenty of soap; water alone doesn't take chile off. Keep your hands from your eyes, and wear gloves for the rest.",
    source: null,
  },
  eye: {
    text: "Rinse the eye with lukewarm tap water for at least fifteen minutes, lids held open. Take lenses out, and don't rub. Then see a doctor at once.",
    source: "a hospital's first-aid page",
  },
  cut: {
    text: "If blood spurts or won't stop, call 911 or your local emergency number. Press on it with a clean cloth for ten minutes, and hold it up. With glass in it, or if it gapes, see a doctor.",
    source: null,
  },
  smoke: {
    text: "If you see flames you can't cover, get out and call 911 or your local emergency number. Turn the heat off if you can reach it. Keep the lid or the oven door shut, and open a window.",
    source: null,
  },
  fire: {
    text: "If it grows, get out, shut the door, and call 911 or your local emergency number. If you can reach it, turn the heat off and slide a lid over it. Never put water on burning fat, and don't carry the pot.",
    source: "the National Fire Protection Association",
  },
  gas: {
    text: "If it's strong, everyone out now, touch no switch, and call 911 or your local emergency number from outside. If a burner only went out: gas off, air the room, no spark, then relight.",
    source: "the Pennsylvania Public Utility Commission",
  },
  "flame-out": {
    text: "Turn the gas off now. Air the room for five minutes, with no spark and no flame, and then relight. If jars are in the canner, tell me the flame went out.",
    source: "a gas utility's safety page",
  },
  plug: {
    text: "Turn the heat off if you can reach it safely, and keep away from the steam. Leave the canner shut until it has cooled by itself. The time doesn't count: tell me the pressure dropped.",
    source: null,
  },
  faint: {
    text: "If they don't wake at once, call 911 or your local emergency number. Turn the heat off, and lay them flat with their legs raised. With a gas or camp burner it may be carbon monoxide: everyone outside.",
    source: null,
  },
  ill: {
    text: "Double vision, or trouble swallowing, speaking or breathing: call 911 or your local emergency number at once. Say what was eaten, and keep the jar shut in a bag. Otherwise ask a doctor or poison control now: 1-800-222-1222.",
    source: "Washington State University Extension",
  },
};

/** Where nobody said what has happened. */
export const ANY_EMERGENCY =
  "If anyone is badly hurt, call 911 or your local emergency number now. " +
  "Turn the heat off if you can reach it. Then tell me: a burn, a cut, fire, gas, or somebody ill?";
