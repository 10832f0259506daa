import { STEAM_LIMIT_MINUTES, STERILE_BELOW_MINUTES } from "../../reckon/trade-numbers.ts";
import { pasteurizes } from "../choose-process.ts";
import type { ProcessTable } from "../process-table.ts";
import { sourceLine } from "../process-table.ts";
import { JAR_SIZES } from "../recipe.ts";
import { danger, type Finding, optionPlace, PUBLICATIONS, type Rule, warning } from "./finding.ts";

/** Every process points to a tested table made for this food and pack, and gives no time itself. */
export const untestedProcess: Rule = ({ recipe, tables }) =>
  recipe.processes.flatMap((option): Finding[] => {
    const where = optionPlace(option);
    if (option.writtenMinutes !== undefined) {
      const message = `${option.writtenMinutes} minutes are written here; times come from a table`;
      return [danger("untested-time", where, message, PUBLICATIONS.principles)];
    }
    const table = tables.tables[option.table];
    if (!table) {
      const message = `no tested table is called ${option.table}: no tested time stands behind it`;
      return [danger("untested-time", where, message, PUBLICATIONS.principles)];
    }
    const source = sourceLine(table.source);
    const findings: Finding[] = [];
    const method = option.method === "steam" ? "boiling-water" : option.method;
    if (table.method !== method) {
      const message = `the table ${table.id} is for ${table.method}, not ${option.method}`;
      findings.push(danger("untested-method", where, message, source));
    }
    if (!table.packs.includes(option.pack)) {
      const message = `${option.pack} pack was not tested for ${table.food}`;
      findings.push(danger("untested-pack", where, message, source));
    }
    if (!table.classes.includes(recipe.class)) {
      const message = `the table was tested for ${table.food}, not for ${recipe.class} food`;
      findings.push(danger("untested-food", where, message, source));
    }
    return findings;
  });

/** A shelf process needs a published source; without one the food stays in the refrigerator. */
export const noTestedSource: Rule = ({ recipe, shelf }) => {
  // The danger that keeps a tested recipe off the shelf is found by its own rule.
  if (recipe.tested || recipe.heldBack) return [];
  const message = shelf
    ? "no tested source is named, so it has no shelf-stable process: keep it refrigerated"
    : "no tested source is named: a refrigerator food, never shelf-stable";
  const severity = shelf ? "danger" : "note";
  return [
    {
      rule: "no-tested-source",
      severity,
      where: "source",
      message,
      source: PUBLICATIONS.principles,
    },
  ];
};

/** Publishers whose recipes and times were tested; no other name vouches for a recipe. */
const TESTERS =
  /\b(USDA|National Center for Home Food Preservation|Extension|So Easy to Preserve)\b/i;

/** A publication that is not a known tested source does not vouch for a recipe. */
export const unknownSource: Rule = ({ recipe, shelf }) => {
  const { publication } = recipe.source;
  if (!recipe.tested || !shelf || TESTERS.test(publication)) return [];
  const message = `${publication} is not a tested source known here; follow the table's own recipe`;
  return [warning("unknown-source", "source", message, PUBLICATIONS.principles)];
};

/** Jars no larger than the largest its table was tested with. */
export const jarTooLarge: Rule = ({ recipe, known }) =>
  known.flatMap(({ option, table }) => {
    const largest = Math.max(...table.rows.flatMap((r) => r.jars.map((j) => JAR_SIZES.indexOf(j))));
    return recipe.jars
      .filter((jar) => JAR_SIZES.indexOf(jar) > largest)
      .filter((jar) => !anotherTakes(jar, known, table))
      .map((jar) =>
        danger(
          "jar-too-large",
          "jars",
          `${jar} jars are larger than ${table.food} was tested in (${option.method})`,
          sourceLine(table.source),
        ),
      );
  });

/** Whether another option's table was tested with the jar: then this table merely lacks it. */
function anotherTakes(jar: string, known: { table: ProcessTable }[], table: ProcessTable): boolean {
  return known.some(
    (one) =>
      one.table !== table &&
      // The recipe's own table decides what may be pasteurized, and in which jars.
      one.table.method !== "low-temperature" &&
      one.table.rows.some((row) => row.jars.some((j) => j === jar)),
  );
}

/** Headspace as the table was tested with. */
export const headspace: Rule = ({ recipe, known }) => {
  const off = known.find(({ table }) => table.headspaceIn !== recipe.headspaceIn);
  if (!off) return [];
  return [
    danger(
      "headspace",
      "headspaceIn",
      `headspace is ${recipe.headspaceIn ?? "not given"} in; ${off.table.food} was tested at ` +
        `${off.table.headspaceIn} in`,
      sourceLine(off.table.source),
    ),
  ];
};

/** Steam runs dry after 45 minutes, altitude's addition included. */
export const steamTooLong: Rule = ({ known }) =>
  known
    .filter(({ option }) => option.method === "steam")
    .flatMap(({ option, table }) => {
      const shortest = Math.min(...table.rows.map((row) => row.minutes[0] ?? 0));
      const longest = Math.max(...table.rows.flatMap((row) => row.minutes));
      if (longest <= STEAM_LIMIT_MINUTES) return [];
      const message =
        `up to ${longest} minutes are needed; a steam canner may run ` +
        `${STEAM_LIMIT_MINUTES} at most`;
      const make = shortest > STEAM_LIMIT_MINUTES ? danger : warning;
      return [make("steam-too-long", optionPlace(option), message, PUBLICATIONS.steam)];
    });

/** Low-temperature pasteurization only where the tested recipe offers it. */
export const pasteurization: Rule = ({ recipe, tables }) => {
  if (pasteurizes(recipe, tables)) return [];
  return recipe.processes
    .filter((option) => option.method === "low-temperature")
    .map((option) =>
      danger(
        "pasteurization",
        optionPlace(option),
        "low-temperature pasteurization is only for the cucumber pickles whose recipe offers it",
        PUBLICATIONS.pasteurization,
      ),
    );
};

/** Jars sterilized empty wherever a process may be under ten minutes. */
export const sterileJars: Rule = ({ recipe, known }) => {
  const short = known.find(
    ({ option, table }) =>
      (option.method === "boiling-water" || option.method === "steam") &&
      table.rows.some((row) => row.minutes.some((m) => m < STERILE_BELOW_MINUTES)),
  );
  if (!short || recipe.critical.some((factor) => factor.id === "sterile-jars")) return [];
  return [
    danger(
      "sterile-jars",
      "stages",
      `a process under ${STERILE_BELOW_MINUTES} minutes needs sterile jars; no stage asks for them`,
      PUBLICATIONS.principles,
    ),
  ];
};
