import type { Intent } from "../kitchen/command.ts";
import type { Context } from "./context.ts";
import { type Pattern, parsePattern } from "./pattern.ts";
import { PatternFacts } from "./pattern-facts.ts";
import { ALL_LISTS, FAMILIES } from "./phrases/all-families.ts";
import { namesOf } from "./targets.ts";

/**
 * The phrases of understanding as rules of a speech grammar (JSGF), made for the moment: the
 * intents that make sense now, the names of what is running, numbers in their plausible range.
 * What can hold any words at all (notes, reminders' texts) is left to the keyboard.
 */

export type SpokenGrammarOptions = {
  /** Only these intents; all that can be spoken where missing. */
  intents?: readonly Intent[];
  /** Labels a new timer may be given, besides the names of the context. */
  labels?: readonly string[];
  /** Highest number of jars; 20 where missing. */
  mostJars?: number;
};

const UNITS = "one two three four five six seven eight nine".split(" ");
const TEENS =
  "ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(" ");
const TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ");

/** A whole number below 1,000 in words: 182 is "one hundred eighty two". */
export function numberInWords(value: number): string {
  if (value === 0) return "zero";
  const below = value % 100;
  const tens =
    below < 20
      ? ([...["", ...UNITS], ...TEENS][below] ?? "")
      : [TENS[Math.floor(below / 10) - 2], UNITS[(below % 10) - 1]].filter(Boolean).join(" ");
  const hundreds = value >= 100 ? `${UNITS[Math.floor(value / 100) - 1]} hundred` : "";
  return [hundreds, tens].filter((part) => part !== "").join(" ");
}

function range(from: number, to: number): string[] {
  return Array.from({ length: to - from + 1 }, (_, index) => numberInWords(from + index));
}

function oneOf(all: readonly string[]): string {
  return all.length === 0 ? "<VOID>" : `( ${all.join(" | ")} )`;
}

/** The rules of the slots that can be spoken; the others make their phrases unspeakable. */
function slotRules(context: Context, options: SpokenGrammarOptions): Map<string, string> {
  const names = namesOf(context);
  const spoken = (name: string) => /^[a-z' ]+$/.test(name);
  const running = names.fuzzy.map(({ name }) => name).filter(spoken);
  const recipes = [...names.byName.values()].filter(({ recipes }) => recipes.length > 0);
  const targets = oneOf([...new Set([...running, ...names.things])]);
  const labels = oneOf([...new Set([...running, ...(options.labels ?? []).filter(spoken)])]);
  const jars = oneOf(range(1, options.mostJars ?? 20));
  const minutes = `( ${oneOf(range(1, 60))} minutes | a minute | half an hour | an hour )`;
  const degrees = range(160, 230).flatMap((said) => [said, said.replace(" hundred", "")]);
  const hours = oneOf(range(1, 12));
  const parts = [`${oneOf(range(5, 55))} past`, "quarter past", "half past", "quarter to"];
  const clock = oneOf(parts.map((part) => `${part} ${hours}`));
  return new Map([
    ["target", `[ the ] ${targets}`],
    ["open", `[ the ] ${targets}`],
    ["timer", `[ the ] ${labels}`],
    ["thing", `[ the ] ${labels}`],
    ["number", `${oneOf(range(1, 20))} [ and a half | and a quarter ]`],
    ["count", jars],
    ["whole", jars],
    ["jars", `${jars} [ and ${jars} ]`],
    ["temperature", oneOf(degrees)],
    ["size", "( pint | pints | quart | quarts | half pint | half pints )"],
    ["duration", minutes],
    ["length", minutes],
    ["more", `${oneOf(range(1, 60))} more minutes`],
    ["lasting", minutes],
    ["ago", `${minutes} ago`],
    ["past", `( ${minutes} ago | at ${clock} )`],
    ["moment", `( ${minutes} ago | at ${clock} )`],
    ["lot", oneOf(recipes.map(({ name }) => name).filter(spoken))],
  ]);
}

/** Writes patterns as right-hand sides; nothing where a slot cannot be spoken. */
class Writer {
  readonly lists = new Map<string, string | undefined>();
  readonly slots = new Set<string>();

  constructor(
    private readonly facts: PatternFacts,
    private readonly speakable: ReadonlyMap<string, string>,
  ) {}

  write(pattern: Pattern): string | undefined {
    switch (pattern.is) {
      case "word":
        return pattern.word;
      case "fixed":
        return "";
      case "slot":
        if (!this.speakable.has(pattern.kind)) return undefined;
        this.slots.add(pattern.kind);
        return `<slot_${pattern.kind}>`;
      case "list":
        return this.writeList(pattern.name);
      case "sequence": {
        const parts = pattern.parts.map((part) => this.write(part));
        return parts.includes(undefined) ? undefined : parts.filter(Boolean).join(" ");
      }
      case "choice": {
        const all = pattern.of.map((one) => this.write(one));
        const said = all.filter((one) => one !== undefined && one !== "");
        if (said.length === 0) return all.includes("") ? "" : undefined;
        const body = said.join(" | ");
        return all.includes("") ? `[ ${body} ]` : `( ${body} )`;
      }
    }
  }

  private writeList(name: string): string | undefined {
    if (!this.lists.has(name)) this.lists.set(name, this.write(this.facts.list(name)));
    const body = this.lists.get(name);
    if (!body) return body;
    return `<${name.replaceAll("-", "_")}>`;
  }
}

/**
 * Rules for everything that can be said now, with the name of the rule to begin at. The rules
 * stand alone: no header, no public rule.
 */
export function spokenGrammar(
  context: Context,
  options: SpokenGrammarOptions = {},
): { rules: string; command: string } {
  const speakable = slotRules(context, options);
  const writer = new Writer(new PatternFacts(ALL_LISTS), speakable);
  const commands: string[] = [];
  for (const family of FAMILIES) {
    if (options.intents && !options.intents.includes(family.intent)) continue;
    for (const phrase of family.phrases) {
      const said = writer.write(parsePattern(phrase));
      if (said) commands.push(said);
    }
  }
  const rules = [
    ...[...writer.slots].map((kind) => `<slot_${kind}> = ${speakable.get(kind)};`),
    ...[...writer.lists].flatMap(([name, body]) =>
      !body ? [] : [`<${name.replaceAll("-", "_")}> = ${body};`],
    ),
    `<command> = ${commands.join("\n  | ")};`,
  ];
  return { rules: rules.join("\n"), command: "command" };
}
