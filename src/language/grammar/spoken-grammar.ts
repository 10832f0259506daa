import type { Intent } from "../../kitchen/command.ts";
import type { Context } from "../context.ts";
import { meanings } from "../intents/all.ts";
import { type Pattern, parsePattern } from "./pattern.ts";
import { answersTo, type SpokenMoment, slotRules } from "./spoken-slots.ts";
import { runTogether } from "./spoken-words.ts";

/**
 * The commonest phrases of understanding as rules of a speech grammar (JSGF), made for the moment:
 * the intents that make sense now, the names of what is running, numbers in their plausible
 * range. Slots that take any words at all (notes, texts of reminders) are left to the keyboard.
 */

export type SpokenGrammarOptions = SpokenMoment & {
  /** Only these intents; all that can be spoken where missing. */
  intents?: readonly Intent[];
  /** How many phrases of each meaning, the commonest first; all where missing. */
  phrasesEach?: number;
};

/** Writes patterns as right-hand sides of rules; undefined where a slot cannot be spoken now. */
class Writer {
  readonly used = new Set<string>();

  constructor(private readonly speakable: ReadonlyMap<string, string>) {}

  write(pattern: Pattern): string | undefined {
    switch (pattern.is) {
      case "word":
        return pattern.word;
      case "fixed":
        return "";
      case "slot":
        return this.rule(`${pattern.slot}:${pattern.kind}`) ?? this.rule(pattern.kind);
      case "list":
        return this.rule(pattern.name);
      case "sequence": {
        const parts = pattern.parts.map((part, at) => {
          const before = pattern.parts[at - 1];
          const after = pattern.parts[at + 1];
          if (isSlot(part, "target") && isBeing(after)) return this.rule("target:being");
          if (isSlot(before, "target") && isBeing(part)) return "";
          const several = isSlot(part, "whole") && isPlural(after);
          return several ? this.rule("whole:several") : this.write(part);
        });
        return parts.includes(undefined) ? undefined : parts.filter(Boolean).join(" ");
      }
      case "choice":
        return this.choice(pattern.of);
    }
  }

  private choice(of: readonly Pattern[]): string | undefined {
    const all = of.map((one) => this.write(one));
    const said = all.filter((one) => one !== undefined && one !== "");
    if (said.length === 0) return all.includes("") ? "" : undefined;
    const body = said.join(" | ");
    return all.includes("") ? `[ ${body} ]` : `( ${body} )`;
  }

  private rule(name: string): string | undefined {
    if (!this.speakable.has(name)) return undefined;
    this.used.add(name);
    return `<${ruleName(name)}>`;
  }
}

function isSlot(pattern: Pattern | undefined, kind: string): boolean {
  return pattern?.is === "slot" && pattern.kind === kind;
}

/** `(is|are)`: the name before it takes one of the two. */
function isBeing(pattern: Pattern | undefined): boolean {
  if (pattern?.is !== "choice") return false;
  return pattern.of.every((one) => one.is === "word" && /^(?:is|are)$/.test(one.word));
}

/** A plural, counted from two: otherwise the recognizer would hear "one pints" for "nine pints". */
function isPlural(pattern: Pattern | undefined): boolean {
  return isSlot(pattern, "size") || (pattern?.is === "word" && pattern.word === "jars");
}

function ruleName(slot: string): string {
  return `slot_${slot.replace(/\W/g, "_")}`;
}

/**
 * Rules for everything that can be said now, with the name of the rule to begin at. The rules come
 * without a header or a public rule.
 */
export function spokenGrammar(
  context: Context,
  options: SpokenGrammarOptions = {},
): { rules: string; command: string } {
  const { intents, phrasesEach } = options;
  const speakable = slotRules(context, options);
  const writer = new Writer(speakable);
  const commands = meanings()
    .filter(([intent]) => !intents || intents.includes(intent))
    .flatMap(([, { spoken = [] }]) => [
      spoken.filter((one) => typeof one === "string"),
      ...spoken.flatMap((one) => (typeof one === "string" ? [] : [one.phrases])),
    ])
    .flatMap((family) => family.slice(0, phrasesEach))
    .flatMap((phrase) => writer.write(parsePattern(phrase)) ?? [])
    .map(runTogether);
  const said = [...commands, ...answersTo(context.question)];
  const rules = [
    ...[...writer.used].map((name) => `<${ruleName(name)}> = ${speakable.get(name)};`),
    `<command> = ${said.length > 0 ? said.join("\n  | ") : "<VOID>"};`,
  ];
  return { rules: rules.join("\n"), command: "command" };
}
