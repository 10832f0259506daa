// data table
/** What words of the trade mean, in a sentence or two as they are spoken. */
export const GLOSSARY = {
  headspace:
    "Headspace is the air left in a jar between the food and the rim, so that the lid can pull down.",
  "raw-pack":
    "Raw pack means the food goes into the jars uncooked, and the boiling liquid is poured over it.",
  "hot-pack": "Hot pack means the food is cooked first and goes into the jars hot. It floats less.",
  "full-boil":
    "A full boil rolls over the whole surface and goes on when you stir it. A few bubbles at the edge are a simmer.",
  simmer:
    "A simmer is just under the boil: small bubbles come up here and there. It is too cool for a process.",
  process:
    "The process is the heating of filled jars in the canner that makes them safe to keep on a shelf.",
  "process-time":
    "The process time is the tested length of a process. It counts from a full boil, or from the full pressure, and never in pieces.",
  "come-up-time":
    "The come-up time is the time a canner takes to reach the boil or the pressure. It is not part of the process time.",
  venting:
    "Venting drives the air out of a pressure canner: steam streams from the open vent before the weight goes on. Air left inside makes it cooler than the gauge says.",
  canner:
    "A canner is a deep pot with a rack and a lid, in which filled jars are heated in boiling water or in steam.",
  "pressure-canner":
    "A pressure canner locks its lid and gets hotter than boiling water. Nothing else makes low-acid food safe on a shelf.",
  "dial-gauge":
    "A dial gauge shows the pressure with a needle. It drifts, so have it tested every year.",
  "weighted-gauge":
    "A weighted gauge holds the pressure by a weight, which rocks or jiggles when it is reached. It shows no number.",
  altitude:
    "The higher the kitchen, the cooler water boils. So a process there takes longer or needs more pressure.",
  "low-acid":
    "Low-acid food has a pH over 4.6: vegetables, meat, fish and soup. The germ of botulism can grow in it, so it needs a pressure canner.",
  acid: "Acid food has a pH of 4.6 or less: most fruit, and what is pickled by a tested recipe. With a tested recipe, boiling water is enough for it.",
  ph: "The pH says how sour something is: the lower, the sourer. Under 4.6 the germ of botulism does not grow.",
  botulism:
    "Botulism is a poisoning. Its germ grows without air, in low-acid food. You cannot see it, smell it or taste it, and it can kill.",
  "air-bubbles":
    "Air bubbles are freed by running a spatula around inside the filled jar. Left in, they lower the headspace and can spoil the seal.",
  "salt-and-chill": "Salt and ice draw water out of the slices, so that the pickles stay crisp.",
  siphoning:
    "Siphoning is liquid drawn out of the jars during or after a process, mostly because the heat changed too fast.",
  band: "The band is the ring that holds the lid while the jar is in the canner. It comes off for the shelf.",
  "fingertip-tight":
    "Fingertip tight means the band is screwed on with the fingertips until it resists, and no further, so that air can get out.",
  seal: "A jar is sealed when its lid is pulled down and does not give. The seal check comes when the jars are cold: press each lid in the middle.",
  "jelling-point":
    "The jelling point is the temperature a jelly must reach to set, a little above the boiling point of water in your kitchen.",
  pectin: "Pectin is what makes fruit set to a jelly, with sugar, acid and a boil.",
  brine:
    "Brine is salt in water, for pickles often with vinegar. Its strength is part of the recipe.",
  "canning-salt":
    "Canning salt is plain salt without iodine and without anything that keeps it from caking, so that the brine stays clear.",
  blanching:
    "Blanching is a short dip into boiling water and then into cold, to loosen skins or to keep color and bite.",
  curing: "Curing is the time on the shelf in which pickles develop their flavor.",
  load: "A load is the jars that go through the canner together.",
  lot: "A lot is produce of one variety from one picking.",
} as const;

/** A word of the trade that can be asked about. */
export type Term = keyof typeof GLOSSARY;
