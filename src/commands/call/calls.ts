// data table
import { JAR_SIZES, METHODS } from "../../recipe/choices.ts";

/**
 * How every command is called. The parser, `--help`, `brinebell help COMMAND`, suggestions for
 * misspelled words and shell completion are all made from this table.
 */

/**
 * What an option takes: nothing (`switch`), one text or several (`text`, `texts`: repeatable),
 * or a quantity, whose number and unit may be separate words (`quantity`, `quantities`).
 */
export type OptionKind = "switch" | "text" | "texts" | "quantity" | "quantities";

type OptionCall = {
  takes: OptionKind;
  about: string;
  /** What stands for its value in the help: `FILE`, `ALTITUDE`. */
  value?: string;
  /** All its values, where there are few. */
  of?: readonly string[];
};
export type OptionCalls = Readonly<Record<string, OptionCall>>;

export type Call = {
  /** The arguments after the name, besides options. */
  words?: string;
  about: string;
  example: string;
  options: OptionCalls;
  /** What its arguments may be, for completion. */
  completes?: "recipes" | "commands" | readonly string[];
};

const flag = (about: string): OptionCall => ({ takes: "switch", about });
const text = (value: string, about: string): OptionCall => ({ takes: "text", value, about });
const texts = (value: string, about: string): OptionCall => ({ takes: "texts", value, about });
const one = (of: readonly string[], about: string): OptionCall => {
  return { takes: "text", value: of.join("|"), of, about };
};
const quantity = (value: string, about: string): OptionCall => {
  return { takes: "quantity", value, about };
};

const listed = (value: string, of: readonly string[]): OptionCall => {
  return { takes: "text", value, of, about: of.join("|") };
};

/** A call's options, and those that every call may have, wherever in it. */
export function inAll(options: OptionCalls): OptionCalls {
  const home = text("DIR", "the folder of the kitchen");
  return { ...options, home: options.home ?? home, help: flag("show this and do nothing else") };
}

const JSON_OUT = { json: flag("print JSON") };
const ALTITUDE = quantity("ALTITUDE", "feet or meters above the sea: 6200ft, 1890m");
const WATER = quantity("WATER", "how much water, by volume or weight: 2L, 5 lb");
const FORCE = { force: flag("overwrite a file even if it is not an earlier output") };
const HTML = text("FILE", "write a page to print or send");

/** What this kitchen is and what goes into it. */
const KITCHEN_CALL = {
  altitude: ALTITUDE,
  jar: listed("SIZE", JAR_SIZES),
  pack: one(["raw", "hot"], "how the jars are packed"),
  method: listed("METHOD", METHODS),
  gauge: one(["dial", "weighted"], "the gauge of the pressure canner"),
  at: quantity("PRESSURE", "the pressure, where several were tested: 11psi"),
  for: quantity("WEIGHT", "how much produce there is: 12lb"),
  "canner-holds": text("JARS", "what the canner holds: 9, or 9pint,7quart"),
} as const satisfies OptionCalls;

const RECKON_CALLS = {
  "air-pressure": {
    about: "the air pressure at an altitude",
    example: "reckon air-pressure --altitude 6200ft",
    options: { altitude: ALTITUDE },
  },
  "boiling-point": {
    about: "the temperature at which water boils, by altitude or pressure",
    example: "reckon boiling-point --altitude 6200ft",
    options: { altitude: ALTITUDE, pressure: quantity("PRESSURE", "of the air: 80kPa") },
  },
  altitude: {
    about: "the altitude of a kitchen, by the temperature at which its water boils",
    example: "reckon altitude --boils-at 200.8F",
    options: { "boils-at": quantity("TEMPERATURE", "at which water boils: 200.8F") },
  },
  "jelling-point": {
    about: "the temperature at which jelly sets, by altitude",
    example: "reckon jelling-point --altitude 6200ft",
    options: { altitude: ALTITUDE },
  },
  "steam-temperature": {
    about: "the temperature of steam at a pressure",
    example: "reckon steam-temperature --gauge 14psi --altitude 6200ft",
    options: { gauge: quantity("PRESSURE", "what the gauge shows: 14psi"), altitude: ALTITUDE },
  },
  gauge: {
    about: "the pressure of steam at a temperature",
    example: "reckon gauge --steam-at 240F --altitude 6200ft",
    options: { "steam-at": quantity("TEMPERATURE", "of the steam: 240F"), altitude: ALTITUDE },
  },
  brine: {
    about: "how salty a brine is",
    example: 'reckon brine --salt "3 tbsp" --water 1qt',
    options: {
      salt: quantity("SALT", "how much salt, by weight or measure"),
      water: WATER,
      "salt-kind": one(
        ["canning-salt", "table-salt", "coarse-kosher-salt", "flake-salt"],
        "which salt, where it is measured by volume",
      ),
    },
  },
  salt: {
    about: "how much salt a given strength takes",
    example: "reckon salt --percent 2.25 --for 5lb",
    options: {
      percent: text("N", "the strength in percent by weight"),
      for: quantity("AMOUNT", "of what: 5lb"),
      of: one(["produce", "brine", "water"], "what the percentage is of"),
    },
  },
  syrup: {
    about: "how sweet a syrup is",
    example: 'reckon syrup --sugar "2 cups" --water "4 cups"',
    options: { sugar: quantity("SUGAR", "how much sugar"), water: WATER },
  },
  acid: {
    about: "how acid a pickle is once vinegar, water and food have evened out",
    example: "reckon acid --vinegar 1L --strength 5 --water 1L --produce cucumbers=2kg",
    options: {
      vinegar: quantity("VINEGAR", "how much vinegar"),
      strength: text("PERCENT", "its strength, from the label"),
      water: WATER,
      produce: {
        takes: "quantities",
        value: "NAME=WEIGHT",
        about: "what goes in; repeat for more",
      },
      sugar: quantity("SUGAR", "how much sugar"),
      salt: quantity("SALT", "how much salt"),
    },
  },
  lethality: {
    about: "the lethality of a process, from its temperature readings",
    example: "reckon lethality --readings FILE.csv --reference 250F --z 18F",
    options: {
      readings: text("FILE", "a column of times and one of temperatures; - reads standard input"),
      reference: quantity("TEMPERATURE", "the reference temperature: 250F"),
      z: quantity("DEGREES", "the difference that changes the rate tenfold: 18F"),
    },
  },
  "heat-up": {
    about: "how long water takes to heat, an estimate",
    example: "reckon heat-up --water 20L --from 60F --power 2500W --altitude 6200ft",
    options: {
      water: WATER,
      from: quantity("TEMPERATURE", "the temperature at the start: 60F"),
      power: quantity("POWER", "of the burner: 2500W"),
      to: text("TEMPERATURE", "the temperature to reach, or boil"),
      altitude: ALTITUDE,
      burner: one(["gas", "electric", "induction"], "the kind of burner"),
    },
  },
  process: {
    about: "the tested time and pressure of a recipe",
    example: "reckon process --recipe dilled-green-beans --jar pint --altitude 6200ft",
    options: { ...KITCHEN_CALL, recipe: text("RECIPE", "which recipe") },
  },
  jars: {
    about: "how many jars a weight fills, and how many loads",
    example: "reckon jars --recipe dilled-green-beans --for 12lb --jar pint",
    options: { ...KITCHEN_CALL, recipe: text("RECIPE", "which recipe") },
  },
} as const satisfies Record<string, Call>;

export type Reckoning = keyof typeof RECKON_CALLS;

/** The kinds of `brinebell reckon`, each with its own options. */
export const RECKONINGS = Object.fromEntries(
  Object.entries<Call>(RECKON_CALLS).map(([name, call]) => {
    return [name, { ...call, options: { ...call.options, ...JSON_OUT } }];
  }),
) as unknown as Readonly<Record<Reckoning, Call>>;

const WAKE_WORDS = text("WORDS", "the words it listens for first, or none");
const SOUND = text("FILE", "raw 16 kHz mono sound to hear instead of a microphone");
const SEASON = text("YEAR", "only one season");

/** `open` is the call without a name. */
export const CALLS = {
  open: {
    about: "open the kitchen",
    example: "--listen",
    options: {
      plain: flag("lines of text instead of a screen"),
      listen: flag("listen for spoken commands, without a network"),
      silent: flag("say nothing aloud"),
      probe: text("FILE", "a thermometer or gauge that writes lines: /dev/ttyUSB0"),
      "wake-words": WAKE_WORDS,
      sound: SOUND,
    },
  },
  rehearse: {
    words: "RECIPE...",
    about: "play a session against a simulated clock",
    example: "rehearse dilled-green-beans --altitude 6200ft --for 8lb",
    completes: "recipes",
    options: {
      ...KITCHEN_CALL,
      script: text("FILE", "what happens when, one line each; - reads standard input"),
      from: text("TIME", "when it begins: 2027-08-14T08:00:00"),
      home: text("DIR", "keep it in this folder, apart from a real kitchen"),
      speed: text("N", "how many times as fast as real time, or max"),
      plain: flag("lines of text instead of a screen"),
      ...JSON_OUT,
    },
  },
  recipes: {
    words: "[ID]",
    about: "list the recipes, show one worked out, or tell what can be made of what there is",
    example: "recipes dilled-green-beans --for 12lb",
    completes: "recipes",
    options: {
      ...KITCHEN_CALL,
      for: quantity("WEIGHT", 'how much there is: 12lb; without an ID "10lb tomatoes, 5lb beets"'),
      by: text("TIME", "when it has to be done: 9pm"),
      ...JSON_OUT,
    },
  },
  check: {
    words: "FILE-OR-ID...",
    about: "the safety check of a recipe; - reads standard input",
    example: "check my-recipe.yaml",
    completes: "recipes",
    options: JSON_OUT,
  },
  reckon: {
    words: "WHAT",
    about: "work out one number, with its source and range",
    example: "reckon boiling-point --altitude 6200ft",
    completes: Object.keys(RECKON_CALLS),
    options: JSON_OUT,
  },
  kitchen: {
    about: "show or set altitude, canners, gauge, burners and units",
    example: "kitchen --altitude 6200ft --canner-holds 9pint,7quart",
    options: {
      altitude: ALTITUDE,
      canner: {
        takes: "texts",
        value: "NAME=JARS",
        about: "a canner: big=9pint,7quart; repeat for more",
      },
      "canner-holds": KITCHEN_CALL["canner-holds"],
      gauge: KITCHEN_CALL.gauge,
      "reads-high": quantity("PRESSURE", "by how much the tested dial reads high: 1psi, 0psi"),
      untested: flag("the dial was not tested this season"),
      burners: text("N", "how many burners there are"),
      units: one(["us", "metric"], "the units to show and say"),
      quiet: text("HOURS", "the night, in which what can wait is silent: 22:00-06:00, or none"),
      talk: one(["whole", "short"], "prompts whole the first time of a day, or always short"),
      ...JSON_OUT,
    },
  },
  plan: {
    words: '"RECIPE WEIGHT [VARIETY]"...',
    about: "plan several batches in one kitchen with one pair of hands",
    example: 'plan "dilled-green-beans 8lb Provider" "pickled-beets 7lb" --finish-by 9pm',
    completes: "recipes",
    options: {
      ...KITCHEN_CALL,
      start: text("TIME", "when work may begin: 8am"),
      "finish-by": text("TIME", "when everything must be done: 9pm"),
      quiet: text("HOURS", "other quiet hours for this plan: 22:00-06:00, or none"),
      burners: text("N", "how many burners to plan for"),
      canners: text("N", "how many canners to plan for"),
      away: texts("HOURS", "out of the kitchen, with nothing on the heat: 14:00-15:00"),
      meal: texts("HOURS", "at the table, while what is on goes on: 12:00-12:30"),
      begin: flag("keep the plan, and begin its batches by it"),
      html: HTML,
      ...FORCE,
      ...JSON_OUT,
    },
  },
  review: {
    words: "[BATCH|JAR]",
    about: "what actually happened: all batches, one batch or jar, lots compared, a season",
    example: "review --compare dilled-green-beans",
    options: {
      ...FORCE,
      html: HTML,
      csv: flag("print rows for a spreadsheet"),
      markdown: flag("print Markdown"),
      season: SEASON,
      compare: text("RECIPE", "set the lots of a recipe side by side"),
      ...JSON_OUT,
    },
  },
  pantry: {
    words: "[WORDS]",
    about: "the jars on the shelf, and what should be eaten first",
    example: "pantry --opened 270814-1:1",
    options: {
      season: SEASON,
      eaten: flag("what was opened"),
      opened: text(
        "BATCH[:JAR]",
        "a jar that was opened: of a batch, or by its number or its mark",
      ),
      spoiled: flag("with --opened: they had spoiled"),
      place: text("BATCH[:JAR]=WHERE", "where the jars of a batch are kept, or one of them"),
      ...JSON_OUT,
    },
  },
  labels: {
    words: "BATCH|SEED-LOT...",
    about: "labels for jars and seed packets, to print",
    example: 'labels 270814-1 270814-2 --pdf labels.pdf --sheet "2 x 4 in" --start 4',
    options: {
      ...FORCE,
      pdf: text("FILE", "write a PDF to print at its actual size"),
      html: HTML,
      sheet: text("SIZE", "one label: 2 5/8 x 1 in, 2 x 4 in, 2in round, 63.5x38.1mm"),
      grid: text("NxN", "columns by rows on a sheet, where a size comes in several: 4x5"),
      paper: one(["letter", "a4"], "the paper, where the size does not tell"),
      start: text("N", "the first free place on a used sheet, counted along the rows"),
      copies: text("N", "how many copies of each label"),
      ...JSON_OUT,
    },
  },
  seeds: {
    words: "[add CROP | test LOT 18/20]",
    about: "seed lots saved, and their germination tests",
    example: 'seeds add beans --variety Provider --dry-weight "3 oz"',
    completes: ["add", "test"],
    options: {
      variety: text("NAME", "the variety"),
      isolation: text("HOW", "how it was kept apart from others"),
      "ferment-days": text("N", "how many days it fermented"),
      "dry-weight": quantity("WEIGHT", "what the dry seed weighs"),
      storage: text("WHERE", "where it is kept"),
      batch: text("BATCH", "the batch it was saved in"),
      days: text("N", "how many days the test ran"),
      ...JSON_OUT,
    },
  },
  words: {
    about: "your own words that were learned, and what they mean",
    example: "words --forget 2",
    options: {
      forget: text("N|all", "forget the words of this number, or all of them"),
      ...JSON_OUT,
    },
  },
  export: {
    words: "FILE",
    about: "write everything to one file, to move to another machine",
    example: "export kitchen.brinebell",
    options: { ...FORCE, ...JSON_OUT },
  },
  import: {
    words: "FILE",
    about: "add what another machine exported, without duplicates; - reads standard input",
    example: "import kitchen.brinebell",
    options: JSON_OUT,
  },
  reminders: {
    about: "what is due in the days to come, and a calendar file of it",
    example: "reminders --ics kitchen.ics",
    options: {
      days: text("N", "how many days ahead"),
      ...FORCE,
      ics: text("FILE", "write a calendar file"),
      ...JSON_OUT,
    },
  },
  watch: {
    about: "keep the reminders while no kitchen is open",
    example: "watch --background",
    options: {
      background: flag("go on without this terminal"),
      status: flag("say who watches this kitchen"),
      stop: flag("end the watch on this kitchen"),
      once: flag("check once and exit"),
      unit: one(["systemd", "launchd"], "print a unit that starts the watch at login"),
      silent: flag("say nothing aloud"),
      ...JSON_OUT,
    },
  },
  tell: {
    words: '"WORDS"',
    about: "pass words to the kitchen that is open",
    example: `tell "it's boiling"`,
    options: JSON_OUT,
  },
  soundcheck: {
    about: "try speaking and listening, and say what is missing",
    example: "soundcheck",
    options: { "wake-words": WAKE_WORDS, sound: SOUND, ...JSON_OUT },
  },
  understand: {
    words: "< lines.txt",
    about: "show how words are understood, line by line",
    example: "understand --json --running dilled-green-beans:Provider < lines.txt",
    options: {
      now: text("TIME", "when it is said: 2027-08-14T14:00:00"),
      running: text("ID[:VARIETY],...", "the batches that are running"),
      timers: text("NAME,...", "the timers that are running"),
      question: text("KEY", "the open question: vinegar-5-percent, end, gauge"),
      stage: text("ID:KIND", "what is under way: L1:process"),
      ...JSON_OUT,
    },
  },
  help: {
    words: "[COMMAND]",
    about: "list all commands, or show how to use one",
    example: "help rehearse",
    completes: "commands",
    options: {},
  },
  completion: {
    words: "bash|zsh|fish",
    about: "print the completion script of a shell",
    example: "completion bash > ~/.local/share/bash-completion/completions/brinebell",
    completes: ["bash", "zsh", "fish"],
    options: {},
  },
} as const satisfies Record<string, Call>;

export type CommandName = keyof typeof CALLS;
