// data table
/**
 * The foods a recipe may name, as far as the safety check tells them apart. Each has its own
 * name, the kind it belongs to, and the other ways it is written, every one in the singular.
 * Which of them are low in acid: USDA Complete Guide to Home Canning, Guide 1; which varieties
 * belong to which food is common knowledge of the garden.
 */

export type FoodKind =
  | "vegetable"
  | "fruit"
  | "any meat"
  | "poultry"
  | "any fish"
  | "other animal food"
  | "bone"
  | "broth"
  | "water"
  /** A word that holds a food's name and is none, or none that matters: celery seed. */
  | "no food";

export type Food = { name: string; kind: FoodKind; also?: readonly string[]; acid?: boolean };

/** Whether it may be canned in boiling water by itself, as far as its own acid goes. */
export function isLowAcid({ kind, acid }: Food): boolean {
  return !acid && kind !== "water" && kind !== "no food";
}

/** Grams of one, where a recipe counts pieces: USDA Standard Reference household weights. */
export const PIECE_GRAMS: Readonly<Record<string, number>> = {
  onion: 110,
  tomato: 123,
  cucumber: 301,
  beet: 82,
  cabbage: 908,
  corn: 102,
  garlic: 3,
};

const list = (text: string) => text.split(", ");

export const FOODS: readonly Food[] = [
  {
    name: "seasoning",
    kind: "no food",
    also: [
      ...list("celery seed, mustard seed, dill seed, coriander seed, fennel seed, caraway seed"),
      ...list("celery salt, garlic salt, onion salt, garlic powder, onion powder, chile powder"),
      ...list("chili powder, pepper flake, chile flake, chili flake, ground pepper, black pepper"),
      ...list("white pepper, cracked pepper, cayenne pepper, ground cayenne, ground red pepper"),
      ...list("dried pepper, dried red pepper, dried chile, dried chili, dried red chile"),
      ...list("vanilla bean, cream of tartar, lemon zest, orange zest, lemon peel, orange peel"),
      ...list("lemon juice, lime juice, lemon or lime juice, corn syrup, peppercorn, celery leaf"),
      ...list("grape leaf, cherry leaf, currant leaf, oak leaf, raspberry leaf"),
      ...list("bone taken out, bone removed, bone out, lemon balm, lemon thyme, lemon verbena"),
      ...list("dried celery, dried onion, dried garlic, dried mushroom powder, fat, bay, mint"),
      ...list("pickling lime, hydrated lime, slaked lime, food grade lime, pea-sized"),
    ],
  },
  { name: "water", kind: "water", also: ["ice"] },
  { name: "broth", kind: "broth", also: list("stock, bouillon, meat juice, dripping") },
  {
    name: "bean",
    kind: "vegetable",
    also: list("snap bean, green bean, wax bean, yellow bean, string bean, runner bean"),
  },
  {
    name: "shell bean",
    kind: "vegetable",
    also: list("lima bean, lima, butter bean, fava bean, broad bean, edamame, soybean, soya bean"),
  },
  {
    name: "dry bean",
    kind: "vegetable",
    also: [
      ...list(
        "dried bean, pinto bean, dried pinto bean, black bean, navy bean, kidney bean, pinto",
      ),
      ...list(
        "white bean, great northern bean, cannellini, cannellini bean, garbanzo, garbanzo bean",
      ),
      ...list("chickpea, lentil, split pea, dried pea, dry pea, black-eyed pea, cowpea, mung bean"),
      ...list("bean soaked, soaked bean, red bean, pink bean, tepary bean, soldier bean, lupin"),
      ...list("adzuki bean, cranberry bean, borlotti bean, dried kidney bean, dried navy bean"),
      ...list("dry pinto bean, dried black bean, dry black bean, dry kidney bean, dry navy bean"),
    ],
  },
  { name: "pea", kind: "vegetable", also: list("snow pea, snap pea, sugar snap, shelled pea") },
  {
    name: "corn",
    kind: "vegetable",
    also: list("sweet corn, corn kernel, maize, hominy, corn on the cob"),
  },
  {
    name: "cream-style corn",
    kind: "vegetable",
    also: list("cream corn, creamed corn, cream style corn, cream-style sweet corn"),
  },
  { name: "carrot", kind: "vegetable" },
  { name: "beet", kind: "vegetable", also: list("beetroot, chioggia") },
  { name: "asparagus", kind: "vegetable" },
  { name: "okra", kind: "vegetable" },
  {
    name: "greens",
    kind: "vegetable",
    also: list("spinach, kale, chard, collard, lettuce, arugula, nettle, watercress, bok choy"),
  },
  {
    name: "mushroom",
    kind: "vegetable",
    also: list("chanterelle, morel, porcini, shiitake, bolete, truffle"),
  },
  {
    name: "potato",
    kind: "vegetable",
    also: list("sweet potato, yam, cassava, taro, sunchoke, jicama"),
  },
  {
    name: "summer squash",
    kind: "vegetable",
    also: list("squash, zucchini, yellow squash, courgette"),
  },
  {
    name: "winter squash",
    kind: "vegetable",
    also: [
      ...list("pumpkin, butternut, butternut squash, acorn squash, hubbard, hubbard squash"),
      ...list("spaghetti squash, delicata, kabocha, buttercup squash"),
    ],
  },
  {
    name: "cucumber",
    kind: "vegetable",
    also: list("lemon cucumber, gherkin, cornichon, cuke, kirby, pickle"),
  },
  { name: "cabbage", kind: "vegetable", also: list("sauerkraut, kraut, napa, brussels sprout") },
  {
    name: "pepper",
    kind: "vegetable",
    also: [
      ...list("chile, chili, chilli, chile pepper, chili pepper, jalapeno, jalapeño, habanero"),
      ...list("serrano, poblano, anaheim, cayenne, pimento, pimiento, paprika pepper, ancho"),
      ...list(
        "banana pepper, cherry pepper, bell pepper, padron, shishito, capsicum, sandia, big jim, hatch",
      ),
    ],
  },
  {
    name: "onion",
    kind: "vegetable",
    also: list("shallot, leek, scallion, spring onion, green onion, ramp, wild ramp, chive"),
  },
  { name: "garlic", kind: "vegetable", also: list("garlic clove, scape, garlic scape") },
  { name: "celery", kind: "vegetable", also: list("celeriac, celery stalk, celery root") },
  {
    name: "other vegetable",
    kind: "vegetable",
    also: [
      ...list("cauliflower, broccoli, eggplant, turnip, rutabaga, parsnip, radish, artichoke"),
      ...list("kohlrabi, fennel bulb, bamboo shoot, water chestnut, olive, avocado, sprout"),
      ...list("vegetable, tofu, seaweed, cactus, nopal, peanut, nut, chestnut"),
    ],
  },
  {
    name: "tomato",
    kind: "vegetable",
    acid: true,
    also: [
      ...list("roma, san marzano, plum tomato, cherry tomato, grape tomato, pear tomato"),
      ...list("brandywine, amish paste, green tomato, yellow pear tomato"),
    ],
  },
  { name: "tomato juice", kind: "vegetable", acid: true },
  { name: "tomatillo", kind: "vegetable", acid: true, also: ["ground cherry"] },
  { name: "rhubarb", kind: "fruit", acid: true },
  {
    name: "apple",
    kind: "fruit",
    acid: true,
    also: list("cider, apple cider, apple juice, applesauce, granny smith"),
  },
  { name: "crabapple", kind: "fruit", acid: true, also: list("crab apple, crab-apple") },
  { name: "pear", kind: "fruit", acid: true, also: list("bartlett, bartlett pear") },
  // Needs added acid; the guide's time for pears was tested for the European kind.
  {
    name: "Asian pear",
    kind: "fruit",
    also: list("asian ripe pear, nashi, nashi pear, apple pear, sand pear, chinese pear"),
  },
  { name: "peach", kind: "fruit", acid: true },
  { name: "white peach", kind: "fruit", also: list("white-fleshed peach, white flesh peach") },
  { name: "apricot", kind: "fruit", acid: true },
  { name: "nectarine", kind: "fruit", acid: true },
  { name: "plum", kind: "fruit", acid: true, also: list("prune, damson, greengage") },
  { name: "cherry", kind: "fruit", acid: true },
  { name: "grape", kind: "fruit", acid: true, also: list("concord, concord grape") },
  { name: "cranberry", kind: "fruit", acid: true },
  { name: "berry", kind: "fruit", acid: true },
  { name: "strawberry", kind: "fruit", acid: true },
  { name: "raspberry", kind: "fruit", acid: true },
  { name: "blackberry", kind: "fruit", acid: true },
  { name: "boysenberry", kind: "fruit", acid: true },
  { name: "blueberry", kind: "fruit", acid: true },
  { name: "gooseberry", kind: "fruit", acid: true },
  { name: "dewberry", kind: "fruit", acid: true },
  { name: "loganberry", kind: "fruit", acid: true },
  { name: "youngberry", kind: "fruit", acid: true },
  { name: "mulberry", kind: "fruit", acid: true },
  { name: "huckleberry", kind: "fruit", acid: true },
  { name: "currant", kind: "fruit", acid: true },
  { name: "elderberry", kind: "fruit", acid: true },
  { name: "fruit", kind: "fruit", acid: true },
  {
    name: "other fruit",
    kind: "fruit",
    acid: true,
    also: [
      ...list(
        "pineapple, lemon, orange pulp, grapefruit, mandarin, lime fruit, kiwi, quince, guava",
      ),
      ...list("pomegranate, raisin, citrus fruit, tangerine, kumquat, passion fruit"),
    ],
  },
  {
    // Beyond bananas, figs and melons from memory.
    name: "low-acid fruit",
    kind: "fruit",
    also: list("banana, fig, melon, watermelon, cantaloupe, mango, papaya, persimmon, coconut"),
  },
  {
    name: "meat",
    kind: "any meat",
    also: [
      ...list("beef, pork, lamb, veal, venison, bear, elk, moose, goat, mutton, game, steak"),
      ...list("brisket, roast beef, stew meat"),
    ],
  },
  {
    name: "ground meat",
    kind: "any meat",
    also: [
      ...list("ground beef, ground pork, ground venison, ground lamb, ground veal, ground elk"),
      ...list("ground fresh chilled meat, minced meat, mince, minced beef, hamburger, burger"),
      ...list("sausage, chopped meat, ground bear"),
    ],
  },
  {
    name: "cured meat",
    kind: "other animal food",
    also: list("ham, bacon, corned beef, chorizo, salami, pepperoni, jerky, liver, pate"),
  },
  { name: "chicken", kind: "poultry", also: list("hen, rooster, poultry") },
  { name: "rabbit", kind: "poultry" },
  {
    name: "other bird",
    kind: "poultry",
    also: list("turkey, duck, goose, quail, pheasant, grouse"),
  },
  {
    name: "bone",
    kind: "bone",
    also: [
      ...list("beef bone, pork bone, chicken bone, turkey bone, veal bone, lamb bone, meat bone"),
      ...list("soup bone, marrow bone, venison bone, carcass, chicken carcass, turkey carcass"),
      ...list("chicken back, chicken neck"),
    ],
  },
  {
    name: "fish",
    kind: "any fish",
    also: list("salmon, trout, steelhead, mackerel, bluefish, whitefish, shad, herring"),
  },
  {
    name: "seafood",
    kind: "any fish",
    also: [
      ...list("tuna, shrimp, prawn, clam, crab, oyster, lobster, mussel, scallop, squid, octopus"),
      ...list("smoked fish, smoked salmon, smoked trout, anchovy, sardine"),
    ],
  },
  {
    name: "egg or milk",
    kind: "other animal food",
    also: list(
      "egg, hard-boiled egg, milk, cream, heavy cream, cheese, yogurt, yoghurt, buttermilk",
    ),
  },
];
