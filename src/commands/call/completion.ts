/** Completion scripts for shells, made from the table of calls. */
import { CALLS, type Call, inAll, type OptionCalls, RECKONINGS } from "./calls.ts";

export const SHELLS = ["bash", "zsh", "fish"] as const;
type Shell = (typeof SHELLS)[number];

/** What may stand somewhere: one of these words, or the name of a file or folder. */
type Offer = { words: readonly string[]; names?: "files" | "folders" };

/** One place in a command line: after which words, what may stand there, and which options. */
type Place = { after: string; offer: Offer; options: OptionCalls };

const NOTHING: Offer = { words: [] };

/** What may follow an option, by what stands for its value in the help. */
function offerOf({ value, of }: OptionCalls[string], recipes: readonly string[]): Offer {
  if (of) return { words: of };
  if (value === "FILE") return { words: [], names: "files" };
  if (value === "DIR") return { words: [], names: "folders" };
  return value === "RECIPE" ? { words: recipes } : NOTHING;
}

function places(recipes: readonly string[]): Place[] {
  const named = Object.keys(CALLS).filter((name) => name !== "open");
  const known = { recipes, commands: named };
  const place = (after: string, { completes = [], options, words = "" }: Call): Place => {
    const list = typeof completes === "string" ? known[completes] : completes;
    const files = words.startsWith("FILE") ? { names: "files" as const } : {};
    return { after, offer: { words: list, ...files }, options: inAll(options) };
  };
  const { open, ...commands } = CALLS;
  return [
    place("", { ...open, completes: named }),
    ...Object.entries<Call>(commands).map(([name, call]) => place(name, call)),
    ...Object.entries(RECKONINGS).map(([kind, call]) => place(`reckon ${kind}`, call)),
  ];
}

/** Places in a completion script, by what is offered there. */
function byOffer(list: readonly Place[], recipes: readonly string[]): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const { after, options } of list) {
    for (const [name, call] of Object.entries(options)) {
      if (call.takes === "switch") continue;
      const does = bashOffer(offerOf(call, recipes));
      found.set(does, [...(found.get(does) ?? []), JSON.stringify(`${after} --${name}`)]);
    }
  }
  return found;
}

function bashOffer({ words, names }: Offer): string {
  return `words=${JSON.stringify(words.join(" "))}; names=${names ?? ""}`;
}

function bash(list: readonly Place[], recipes: readonly string[]): string {
  const cases = list.map(({ after, offer, options }) => {
    const all = [...offer.words, ...Object.keys(options).map((name) => `--${name}`)];
    return `    ${JSON.stringify(after)}) ${bashOffer({ ...offer, words: all })};;`;
  });
  const values = [...byOffer(list, recipes)].map(([does, at]) => `    ${at.join("|")}) ${does};;`);
  return `_brinebell() {
  local word="\${COMP_WORDS[COMP_CWORD]}" before="\${COMP_WORDS[COMP_CWORD-1]}"
  local words="" names="" at="" i=1
  if [ "$word" = "=" ]; then word=""
  elif [ "$before" = "=" ]; then before="\${COMP_WORDS[COMP_CWORD-2]}"
  fi
  while [ "$i" -lt "$COMP_CWORD" ]; do
    case "\${COMP_WORDS[i]}" in
      --home) [ "\${COMP_WORDS[i+1]}" = "=" ] && i=$((i+1)); i=$((i+1));;
      -*) break;;
      *) at="\${at:+$at }\${COMP_WORDS[i]}"; [ "$at" = reckon ] || break;;
    esac
    i=$((i+1))
  done
  case "$at" in
${cases.join("\n")}
  esac
  case "$at $before" in
${values.join("\n")}
  esac
  COMPREPLY=($(compgen -W "$words" -- "$word"))
  [ "$names" = files ] && COMPREPLY+=($(compgen -f -- "$word"))
  [ "$names" = folders ] && COMPREPLY+=($(compgen -d -- "$word"))
  return 0
}
complete -o filenames -F _brinebell brinebell
`;
}

const FISH_AT = `function __brinebell_at
  set -l given (commandline -opc)
  set -l at
  set -e given[1]
  while set -q given[1]
    switch $given[1]
      case --home
        set -e given[1]
      case '-*'
        string match -q -- '--home=*' $given[1]; or break
      case '*'
        set -a at $given[1]
        test "$at" = reckon; or break
    end
    set -e given[1]
  end
  test "$at" = "$argv"
end
`;

function fish(list: readonly Place[], recipes: readonly string[]): string {
  const quoted = (text: string) => `'${text.replaceAll("\\", "\\\\").replaceAll("'", "\\'")}'`;
  const lines = list.flatMap(({ after, offer, options }) => {
    const head = `complete -c brinebell -n ${quoted(`__brinebell_at ${after}`.trim())}`;
    const each = Object.entries(options).map(([name, call]) => {
      const { words, names } = offerOf(call, recipes);
      const folders = names === "folders" ? " -a '(__fish_complete_directories)'" : "";
      const these = words.length > 0 ? ` -a ${quoted(words.join(" "))}` : folders;
      const value = call.takes === "switch" ? "" : names === "files" ? " -r -F" : ` -x${these}`;
      return `${head} -l ${name}${value} -d ${quoted(call.about)}`;
    });
    const plain = offer.words.length > 0 ? [`${head} -a ${quoted(offer.words.join(" "))}`] : [];
    return [`${head} ${offer.names === "files" ? "-F" : "-f"}`, ...plain, ...each];
  });
  return `${FISH_AT}${lines.join("\n")}\n`;
}

/**
 * The script that completes Brinebell's calls in a shell.
 * @param recipes ids that may stand where a recipe is named
 */
export function completionScript(shell: Shell, recipes: readonly string[]): string {
  const list = places(recipes);
  if (shell === "fish") return fish(list, recipes);
  if (shell === "bash") return bash(list, recipes);
  // zsh can run bash's completion functions.
  return `autoload -U +X bashcompinit && bashcompinit\n${bash(list, recipes)}`;
}
