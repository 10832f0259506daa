/** Where the kitchen's data lives. */
import { join } from "node:path";
import envPaths from "env-paths";

/** `--home`, else BRINEBELL_HOME, else the platform's own data folder. */
export function dataFolder(
  home: string | undefined,
  env: Readonly<Record<string, string | undefined>>,
): string {
  const chosen = home ?? env.BRINEBELL_HOME;
  return chosen || envPaths("brinebell", { suffix: "" }).data;
}

/** The person's own recipes, beside the journal. */
export function ownRecipes(folder: string): string {
  return join(folder, "recipes");
}
