/** What `--help` prints, made from the table of calls. */
import { CALLS, type Call, inAll, type OptionCalls, RECKONINGS } from "./calls.ts";

const HELP_WORDS: ReadonlySet<string> = new Set(["--help", "-h"]);

/** Whether help is asked for among the words of a call, before a `--`. */
export function asksHelp(words: readonly string[]): boolean {
  const end = words.indexOf("--");
  return (end < 0 ? words : words.slice(0, end)).some((word) => HELP_WORDS.has(word));
}

function lookUp<T>(table: Readonly<Record<string, T>>, name: string | undefined): T | undefined {
  return name !== undefined && Object.hasOwn(table, name) ? table[name] : undefined;
}

/** The entry for a command's words: each kind of `reckon` has one of its own. */
function callOf(name: string | undefined, words: readonly string[]): [string, Call] | undefined {
  const call = lookUp<Call>(CALLS, name);
  if (!call || name === undefined) return undefined;
  const kind = name === "reckon" ? lookUp<Call>(RECKONINGS, words[0]) : undefined;
  return kind ? [`reckon ${words[0]}`, kind] : [name === "open" ? "" : name, call];
}

function optionHead(name: string, { value }: OptionCalls[string]): string {
  return value === undefined ? `--${name}` : `--${name} ${value}`;
}

function rows(list: readonly (readonly [string, string])[]): string[] {
  const width = Math.min(30, Math.max(...list.map(([head]) => head.length)));
  return list.map(([head, about]) => {
    return head.length > width
      ? `  ${head}\n  ${"".padEnd(width)}  ${about}`
      : `  ${head.padEnd(width)}  ${about}`;
  });
}

/** How to call one command, with all its options and an example; undefined for an unknown one. */
export function commandHelp(
  name: string | undefined,
  words: readonly string[] = [],
): string | undefined {
  const found = callOf(name, words);
  if (!found) return undefined;
  const [title, call] = found;
  const options = Object.entries(inAll(call.options)).map(([option, one]) => {
    return [optionHead(option, one), one.about] as const;
  });
  const kinds = Object.entries(RECKONINGS).map(([kind, { about }]) => [kind, about] as const);
  const parts = [
    "brinebell",
    title,
    call.words ?? "",
    Object.keys(call.options).length > 0 ? "[OPTION...]" : "",
  ];
  return [
    parts.filter((part) => part !== "").join(" "),
    `  ${call.about}`,
    ...(title === "reckon" ? ["", ...rows(kinds)] : []),
    "",
    ...rows(options),
    "",
    `Example: brinebell ${call.example}`,
    "",
  ].join("\n");
}

/** All commands, one line each. */
export function helpText(version: string): string {
  const list = Object.entries(CALLS).map(([name, { about }]) => {
    return [`brinebell ${name === "open" ? "" : name}`, about] as const;
  });
  return [
    `Brinebell ${version}: a talking kitchen hand for putting food by.`,
    "",
    ...rows(list),
    "",
    "brinebell help COMMAND lists its options. Every command that prints facts takes",
    "--json; --home DIR names the data folder.",
    "Follow a current tested recipe and your local extension service. This program keeps",
    "the record; it cannot see the jar.",
    "",
  ].join("\n");
}
