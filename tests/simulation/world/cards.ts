// data table
/**
 * The recipes that the world's cooks make, as the guides print them: what they were tested for and
 * for how long, typed from the USDA Complete Guide to Home Canning and apart from `recipes/`.
 */
export type Card = {
  id: string;
  /** What the cook calls it, and the food that it was tested for. */
  name: string;
  produce: string;
  method: "boiling-water" | "pressure";
  pack: "raw" | "hot";
  jar: "half-pint" | "pint";
  jars: number;
  /** By altitude band (three or four of them); one figure for pressure. */
  minutes: readonly number[];
  headspace: string;
  /** A recipe that lives by its vinegar, or by acid added to each jar. */
  acid?: "vinegar" | "each-jar";
  /** Inches of water over the lids that the guide asks for. */
  coverIn: 1 | 2;
  /** Stages that boil, and the pot that does. */
  pots: Record<string, string>;
  /** Pots that a word begins, and the stage that comes before. */
  startsByWord?: Record<string, string | undefined>;
  /** What it is called when the stranger is named. */
  named: string;
  /** What else turns up on the counter: no process was tested for these under this recipe. */
  strangers: readonly string[];
};

export const CARDS: readonly Card[] = [
  {
    id: "dilled-green-beans",
    name: "dilled green beans",
    produce: "green beans",
    method: "boiling-water",
    pack: "raw",
    jar: "pint",
    jars: 8,
    minutes: [5, 10, 15],
    headspace: "half an inch",
    acid: "vinegar",
    coverIn: 1,
    pots: { brine: "brine" },
    startsByWord: { brine: undefined },
    named: "start the dilled {food}",
    strangers: ["okra", "broccoli", "zucchini", "mushrooms", "garlic scapes", "shelled peas"],
  },
  {
    id: "bread-and-butter-pickles",
    name: "bread and butter pickles",
    produce: "cucumbers",
    method: "boiling-water",
    pack: "hot",
    jar: "pint",
    jars: 8,
    minutes: [10, 15, 20],
    headspace: "half an inch",
    acid: "vinegar",
    coverIn: 1,
    pots: { syrup: "syrup", combine: "syrup" },
    startsByWord: { syrup: "slice" },
    named: "start the {food} bread and butter pickles",
    strangers: ["cantaloupe", "eggplant", "cauliflower", "pumpkin"],
  },
  {
    id: "berry-jam",
    name: "berry jam",
    produce: "berries",
    method: "boiling-water",
    pack: "hot",
    jar: "half-pint",
    jars: 4,
    minutes: [5, 10, 15],
    headspace: "a quarter inch",
    coverIn: 1,
    pots: { cook: "jam" },
    named: "start the {food} jam",
    strangers: ["bananas", "figs", "mangoes", "carrots", "watermelon", "elderberries"],
  },
  {
    id: "pickled-beets",
    name: "pickled beets",
    produce: "beets",
    method: "boiling-water",
    pack: "hot",
    jar: "pint",
    jars: 8,
    minutes: [30, 35, 40, 45],
    headspace: "half an inch",
    acid: "vinegar",
    coverIn: 2,
    pots: { cook: "beets", syrup: "syrup", simmer: "syrup" },
    startsByWord: { syrup: "trim" },
    named: "start the pickled {food}",
    strangers: ["turnips", "parsnips", "rutabagas", "hard-boiled eggs", "celery root"],
  },
  {
    id: "crushed-tomatoes",
    name: "crushed tomatoes",
    produce: "tomatoes",
    method: "boiling-water",
    pack: "hot",
    jar: "pint",
    jars: 9,
    minutes: [35, 40, 45, 50],
    headspace: "half an inch",
    acid: "each-jar",
    coverIn: 2,
    pots: { boil: "tomatoes" },
    named: "start the crushed tomatoes with {food}",
    strangers: ["peppers", "zucchini", "eggplant", "celery", "mushrooms"],
  },
  {
    id: "peaches",
    name: "peaches",
    produce: "yellow peaches",
    method: "boiling-water",
    pack: "hot",
    jar: "pint",
    jars: 9,
    minutes: [20, 25, 30, 35],
    headspace: "half an inch",
    coverIn: 2,
    pots: { syrup: "syrup", heat: "syrup" },
    startsByWord: { syrup: undefined },
    named: "start the {food}",
    strangers: ["white peaches", "mangoes", "bananas", "papaya", "cantaloupe"],
  },
  {
    id: "applesauce",
    name: "applesauce",
    produce: "apples",
    method: "boiling-water",
    pack: "hot",
    jar: "pint",
    jars: 9,
    minutes: [15, 20, 20, 25],
    headspace: "half an inch",
    coverIn: 1,
    pots: { cook: "apples", reboil: "sauce" },
    named: "start the {food} sauce",
    strangers: ["pumpkin", "bananas", "sweet potatoes", "Asian pears"],
  },
  {
    id: "snap-beans",
    name: "snap beans",
    produce: "snap beans",
    method: "pressure",
    pack: "hot",
    jar: "pint",
    jars: 9,
    minutes: [20],
    headspace: "an inch",
    coverIn: 1,
    pots: { boil: "beans" },
    named: "start the snap beans with {food}",
    strangers: ["bacon", "potatoes", "okra", "shelled beans", "zucchini"],
  },
  {
    id: "carrots",
    name: "canned carrots",
    produce: "carrots",
    method: "pressure",
    pack: "hot",
    jar: "pint",
    jars: 9,
    minutes: [25],
    headspace: "an inch",
    coverIn: 1,
    pots: { simmer: "carrots" },
    named: "start the carrots and {food}",
    strangers: ["parsnips", "celery", "butter", "cabbage"],
  },
];
