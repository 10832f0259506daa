/** Completion scripts for shells, made from the table of calls. */
import { CALLS, type Call, RECKONINGS } from "./calls.ts";

export const SHELLS = ["bash", "zsh", "fish"] as const;
type Shell = (typeof SHELLS)[number];

/** One place in a command line: after which words, and what may stand there. */
type Place = { after: string; words: readonly string[]; files: boolean; call: Call };

function optionNames(call: Call): string[] {
  return [...Object.keys(call.options), "help"].map((name) => `--${name}`);
}

function places(recipes: readonly string[]): Place[] {
  const named = Object.keys(CALLS).filter((name) => name !== "open");
  const known = { recipes, commands: named, files: [] as string[] };
  const place = ([name, call]: [string, Call]): Place => {
    const { completes = [] } = call;
    const words = typeof completes === "string" ? known[completes] : completes;
    return { after: name, words, files: completes === "files" || name === "check", call };
  };
  const reckonings = Object.entries(RECKONINGS).map(([kind, call]): [string, Call] => {
    return [`reckon ${kind}`, call];
  });
  const first: Call = { ...CALLS.open, completes: named };
  return [
    { ...place(["", first]), files: false },
    ...[...Object.entries<Call>(CALLS).filter(([name]) => name !== "open"), ...reckonings].map(
      place,
    ),
  ];
}

/** Options whose value is one of a few words, such as `--gauge` with `dial weighted`. */
function choices(list: readonly Place[]): Map<string, readonly string[]> {
  const found = new Map<string, readonly string[]>();
  for (const { call } of list) {
    for (const [name, { of }] of Object.entries(call.options)) if (of) found.set(`--${name}`, of);
  }
  return found;
}

function bash(list: readonly Place[]): string {
  const cases = list.map(({ after, words, files, call }) => {
    const all = [...words, ...optionNames(call)].join(" ");
    const offers = `words=${JSON.stringify(all)}; files=${files ? "yes" : ""}`;
    return `    ${JSON.stringify(after)}) ${offers};;`;
  });
  const values = [...choices(list)].map(([name, of]) => {
    const list = JSON.stringify(of.join(" "));
    return `    ${name}) COMPREPLY=($(compgen -W ${list} -- "$word")); return;;`;
  });
  return `_brinebell() {
  local word="\${COMP_WORDS[COMP_CWORD]}" before="\${COMP_WORDS[COMP_CWORD-1]}"
  local words="" files="" at=""
  [ "$COMP_CWORD" -gt 1 ] && at="\${COMP_WORDS[1]}"
  [ "$at" = reckon ] && [ "$COMP_CWORD" -gt 2 ] && at="reckon \${COMP_WORDS[2]}"
  case "$before" in
${values.join("\n")}
  esac
  case "$at" in
${cases.join("\n")}
  esac
  COMPREPLY=($(compgen -W "$words" -- "$word"))
  [ -n "$files" ] && COMPREPLY+=($(compgen -f -- "$word"))
}
complete -o filenames -F _brinebell brinebell
`;
}

function fish(list: readonly Place[]): string {
  const quoted = (text: string) => `'${text.replaceAll("\\", "\\\\").replaceAll("'", "\\'")}'`;
  const lines = list.flatMap(({ after, words, files, call }) => {
    const [command, kind] = after.split(" ");
    const seen = [command, kind].filter((word) => word !== undefined && word !== "");
    const when =
      seen.length === 0
        ? "__fish_use_subcommand"
        : seen.map((word) => `__fish_seen_subcommand_from ${word}`).join("; and ");
    const head = `complete -c brinebell -n ${quoted(when)}`;
    const options = Object.entries(call.options).map(([name, { takes, of, about }]) => {
      const value = takes === "switch" ? "" : of ? ` -x -a ${quoted(of.join(" "))}` : " -r";
      return `${head} -l ${name}${value} -d ${quoted(about)}`;
    });
    const plain = words.length > 0 ? [`${head} -a ${quoted(words.join(" "))}`] : [];
    return [...(files ? [] : [`${head} -f`]), ...plain, ...options];
  });
  return `${lines.join("\n")}\n`;
}

/**
 * The script that completes Brinebell's calls in a shell.
 * @param recipes ids that may stand where a recipe is named
 */
export function completionScript(shell: Shell, recipes: readonly string[]): string {
  const list = places(recipes);
  if (shell === "fish") return fish(list);
  if (shell === "bash") return bash(list);
  // zsh can run bash's completion functions.
  return `autoload -U +X bashcompinit && bashcompinit\n${bash(list)}`;
}
