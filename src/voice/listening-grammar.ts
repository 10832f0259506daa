import type { EarsGrammar } from "../ports/ears.ts";

/** The words a grammar uses, without rule names, weights and tags. */
export function grammarWords(rules: string): Set<string> {
  const plain = rules
    .replace(/<[^>]*>/g, " ")
    .replace(/\{[^}]*\}/g, " ")
    .replace(/\/[\d.]+\//g, " ");
  return new Set(plain.split(/[\s=|()[\];*+]+/).filter((word) => word !== ""));
}

/** The whole grammar of a moment: the wake words, where there are any, then one command. */
export function wholeGrammar(grammar: EarsGrammar, wakeWords: readonly string[]): string {
  const wake = wakeWords.join(" ");
  return [
    "#JSGF V1.0;",
    "grammar kitchen;",
    grammar.rules,
    `public <utterance> = ${wake} <${grammar.command}>;`,
  ].join("\n");
}
