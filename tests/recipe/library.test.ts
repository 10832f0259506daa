import { describe, expect, it } from "vitest";
import { parseLibraryFile } from "../../src/kitchen/read-library.ts";
import { findRecipe } from "../../src/recipe/find-recipe.ts";
import { libraryOf, methodsOf } from "../../src/recipe/library.ts";
import { recipeFile, recipeOf, wholeLibrary } from "./library-files.ts";

const library = wholeLibrary();

/** Every recipe other programs may count on. */
const PROMISED = [
  "bread-and-butter-pickles dilled-green-beans pickled-beets crushed-tomatoes sauerkraut",
  "berry-jam snap-beans cucumber-seed quick-fresh-pack-dills fermented-dills sweet-gherkins",
  "quick-sweet-pickles pickle-relish whole-tomatoes tomato-juice peaches pears sliced-apples",
  "applesauce apple-butter apple-jelly grape-jelly peach-jam apricot-jam chile-salsa",
  "choice-salsa cranberry-sauce rhubarb whole-berries carrots whole-kernel-corn beets dry-beans",
  "asparagus meat-chunks chicken fish stock tomato-seed bean-seed",
]
  .join(" ")
  .split(" ");

describe("the library", () => {
  it("holds every promised recipe, each under its file's name", () => {
    expect([...library.recipes.keys()]).toEqual(expect.arrayContaining(PROMISED));
    for (const id of library.recipes.keys()) {
      expect(recipeFile(`${id}.yaml`)).toMatch(new RegExp(`^id: ${id}$`, "m"));
    }
  });

  it("gives every recipe a source, something to say at each stage, and an end", () => {
    for (const recipe of library.recipes.values()) {
      expect(recipe.source.publication.length, recipe.id).toBeGreaterThan(5);
      for (const stage of recipe.stages) {
        expect(stage.say.length, `${recipe.id} ${stage.id}`).toBeGreaterThan(5);
      }
      expect(["cure", "store"], recipe.id).toContain(recipe.stages.at(-1)?.kind);
    }
  });

  it("is plain data: parsed files are the same after a trip through JSON", () => {
    const parsed = parseLibraryFile("berry-jam.yaml", recipeFile("berry-jam.yaml"));
    expect(JSON.parse(JSON.stringify(parsed))).toEqual(parsed);
    const tables = parseLibraryFile("tables.yaml", recipeFile("tables.yaml"));
    expect(JSON.parse(JSON.stringify(tables))).toEqual(tables);
  });

  it("leaves out a file that cannot be read, and says where it fails", () => {
    const files = [
      parseLibraryFile("tables.yaml", recipeFile("tables.yaml")),
      parseLibraryFile("berry-jam.yaml", recipeFile("berry-jam.yaml")),
      parseLibraryFile("mine.yaml", "id: mine\nkind: x\n"),
    ];
    const small = libraryOf(files);
    expect([...small.recipes.keys()]).toEqual(["berry-jam"]);
    expect(small.problems.join("\n")).toMatch(/^mine\.yaml:\d+: /m);
  });

  it("leaves out a recipe whose table is missing, or whose id is taken", () => {
    const tables = parseLibraryFile("tables.yaml", recipeFile("tables.yaml"));
    const jam = parseLibraryFile("berry-jam.yaml", recipeFile("berry-jam.yaml"));
    const wrong = parseLibraryFile(
      "wrong.yaml",
      recipeFile("pears.yaml").replace("table: pears}", "table: pares}"),
    );
    const small = libraryOf([tables, jam, { ...jam, name: "twin.yaml" }, wrong]);
    expect([...small.recipes.keys()]).toEqual(["berry-jam"]);
    expect(small.problems).toEqual([
      "twin.yaml: the id berry-jam is another file's",
      "wrong.yaml: no tested table is called pares",
    ]);
  });

  it("without its tables has no shelf-stable recipe", () => {
    const jam = parseLibraryFile("berry-jam.yaml", recipeFile("berry-jam.yaml"));
    const seed = parseLibraryFile("cucumber-seed.yaml", recipeFile("cucumber-seed.yaml"));
    const bare = libraryOf([jam, seed]);
    expect([...bare.recipes.keys()]).toEqual(["cucumber-seed"]);
    expect(bare.problems[0]).toMatch(/tables\.yaml.*missing/);
  });

  it("knows how each recipe can be kept", () => {
    expect(methodsOf(recipeOf(library, "snap-beans"))).toEqual(["pressure", "refrigerator"]);
    expect(methodsOf(recipeOf(library, "sauerkraut"))).toEqual([
      "boiling-water",
      "steam",
      "ferment",
    ]);
    expect(methodsOf(recipeOf(library, "cucumber-seed"))).toEqual(["seed"]);
  });
});

describe("a recipe is found", () => {
  it.each([
    ["dilled-green-beans", "dilled-green-beans"],
    ["Dilly Beans", "dilled-green-beans"],
    ["bread & butters", "bread-and-butter-pickles"],
    ["Pickled Beet", "pickled-beets"],
    ["kraut", "sauerkraut"],
    ["peach preserves", "peach-jam"],
  ])("by %s", (said, id) => {
    expect(findRecipe(library.recipes.values(), said)?.id).toBe(id);
  });

  it.each([["pie"], [""], ["  "], ["__proto__"]])("not by %s", (said) => {
    expect(findRecipe(library.recipes.values(), said)).toBeUndefined();
  });

  it("by no name that two recipes share", () => {
    const [beets, jam] = [recipeOf(library, "pickled-beets"), recipeOf(library, "berry-jam")];
    const both = [
      { ...beets, names: ["summer jar"] },
      { ...jam, names: ["summer jars"] },
    ];
    expect(findRecipe(both, "summer jar")).toBeUndefined();
  });
});
