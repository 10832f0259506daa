import type { EarsGrammar } from "../../ports/ears.ts";

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

/**
 * Whether a text is a command of the grammar. Rules may refer to each other in any order, but never
 * in a circle; weights and tags are ignored.
 */
export function commandTest({ rules, command }: EarsGrammar): (text: string) => boolean {
  const bodies = new Map(
    rules.split(";").flatMap((rule): [string, string][] => {
      const [, name, body] = /<([^>]+)>\s*=([\s\S]*)/.exec(rule) ?? [];
      return name === undefined || body === undefined ? [] : [[name, body]];
    }),
  );
  const whole = new RegExp(`^${asPattern(command, bodies)}$`);
  return (text) => whole.test(`${text} `);
}

/** Every word is followed by a space in what is matched. */
function asPattern(name: string, bodies: ReadonlyMap<string, string>): string {
  const tokens = (bodies.get(name) ?? "")
    .replace(/\{[^}]*\}|\/[\d.]+\//g, " ")
    .match(/<[^>]+>|[()[\]|*+]|[^\s()[\]|*+<>]+/g);
  const pieces = (tokens ?? []).map((token) => {
    if (token.startsWith("<")) return asPattern(token.slice(1, -1), bodies);
    if (token === "(" || token === "[") return "(?:";
    if (token === "]") return ")?";
    return /^[)|*+]$/.test(token) ? token : `(?:${token} )`;
  });
  return `(?:${pieces.join("")})`;
}
