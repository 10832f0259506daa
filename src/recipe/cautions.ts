// data table

/** Cautions said where work can hurt someone. Recipes point here by id; texts are our own. */
export const CAUTIONS: Record<string, string> = {
  botulism: "Low-acid food not pressure canned for its tested time can carry botulism.",
  "tested-only": "Change nothing in vinegar, food or water: the time was tested for this mix.",
  "hot-liquid": "Careful: it is boiling hot and clings. Keep children away from the stove.",
  "hot-sugar": "Careful: boiling sugar clings and burns deep. Use a long spoon and a dry cloth.",
  "hot-jars": "Hot jars break on cold. Set them on a towel, never on bare stone or metal.",
  steam: "Steam burns. Lift any lid away from you.",
  "pressure-lid": "Never open the canner before the pressure is back to zero by itself.",
  "never-taste": "If a jar seems doubtful, never taste it.",
  chiles: "Wear gloves for hot peppers, and keep your hands off your face.",
  lime: "Lime burns eyes and lungs. Do not breathe the dust, and rinse it all off.",
  peeling: "The fruit comes out of boiling water. Dip it cold before you touch it.",
  knife: "Wet hands, sharp knife: go slowly.",
};
