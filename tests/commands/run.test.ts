import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { CALLS, type Call, RECKONINGS } from "../../src/commands/call/calls.ts";
import { completionScript, SHELLS } from "../../src/commands/call/completion.ts";
import { commandHelp } from "../../src/commands/call/help.ts";
import { RUNNERS } from "../../src/commands/command-table.ts";
import { helpFor } from "../../src/commands/run.ts";
import { STAGE_KINDS } from "../../src/recipe/recipe.ts";
import { BURNERS } from "../../src/reckon/burner.ts";
import { SALT_BASES, SALT_KINDS } from "../../src/reckon/salt.ts";

const help = (name: string, ...words: string[]) => helpFor(name, words, "1")?.stdout;

const README = readFileSync(join(import.meta.dirname, "../../README.md"), "utf8");

describe("README", () => {
  it("names every command, every reckoning and every kind of stage", () => {
    const rows = README.split("\n").filter((line) => line.startsWith("| `brinebell"));
    const heads = rows.map((line) => line.split(" | ")[0]).join("\n");
    for (const name of Object.keys(RUNNERS)) expect(heads).toMatch(new RegExp(`[ \`]${name}[ \`]`));
    for (const name of [...Object.keys(RECKONINGS), ...STAGE_KINDS]) {
      expect(README).toContain(`\`${name}\``);
    }
  });
});

describe("the help of a command", () => {
  it.each(["--help", "-h"])("is asked for by %s, and by the word help", (flag) => {
    expect(help("plan", flag)).toMatch(/^brinebell plan "RECIPE.*\n {2}plan several batches/);
    expect(help("help", "plan")).toBe(help("plan", flag));
    expect(help("reckon", "brine", flag)).toContain("--salt-kind");
    expect(help("help", "reckon", "brine")).toBe(help("reckon", "brine", flag));
    expect(help("seeds", "add", flag)).toContain("add CROP");
  });

  it("is not asked for by words after a --, nor without it", () => {
    expect(help("tell", "--", "--help")).toBeUndefined();
    expect(help("plan", "rhubarb 7lb")).toBeUndefined();
  });

  it("does not exist for names that every object has; a wrong name suggests the nearest", () => {
    for (const name of ["constructor", "toString", "__proto__"]) {
      expect(help(name, "--help")).toBeUndefined();
    }
    expect(helpFor("help", ["rehears"], "1")?.stderr).toContain("did you mean rehearse?");
  });

  const calls: [string, Call][] = [...Object.entries(CALLS), ...Object.entries(RECKONINGS)];
  it.each(calls)("of %s names every option and an example within 100 columns", (name, call) => {
    const text = commandHelp(name) ?? commandHelp("reckon", [name]) ?? "";
    for (const option of Object.keys(call.options)) expect(text).toContain(`--${option}`);
    expect(text).toContain(`Example: brinebell ${call.example}`);
    for (const line of text.split("\n")) expect(line.length).toBeLessThanOrEqual(100);
  });

  it("exists for every command that runs, and every one runs", () => {
    const called = Object.keys(CALLS).filter((name) => name !== "open" && name !== "help");
    expect(Object.keys(RUNNERS).sort()).toEqual(called.sort());
    const program = help("--help") ?? "";
    for (const name of called) expect(program).toContain(`brinebell ${name} `);
  });

  it("names every salt, base and burner that reckon knows", () => {
    expect(RECKONINGS.brine.options["salt-kind"]?.of).toEqual(SALT_KINDS);
    expect(RECKONINGS.salt.options.of?.of).toEqual(SALT_BASES);
    expect(RECKONINGS["heat-up"].options.burner?.of).toEqual(BURNERS);
  });
});

describe("completion", () => {
  /** What bash would offer for the last word of a call. */
  function offered(...words: string[]): string[] {
    const script = `${completionScript("bash", ["pickled-beets", "pears"])}
COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _brinebell; printf '%s\\n' "\${COMPREPLY[@]}"`;
    const out = execFileSync("bash", ["-c", script, "-", "brinebell", ...words], {
      encoding: "utf8",
    });
    return out.split("\n").filter((line) => line !== "");
  }

  it("offers commands, recipes, options and the values of an option", () => {
    expect(offered("reh")).toEqual(["rehearse"]);
    expect(offered("rehearse", "pick")).toEqual(["pickled-beets"]);
    expect(offered("rehearse", "--alt")).toEqual(["--altitude"]);
    expect(offered("rehearse", "--gauge", "")).toEqual(["dial", "weighted"]);
    expect(offered("reckon", "boil")).toEqual(["boiling-point"]);
    expect(offered("reckon", "brine", "--salt-")).toEqual(["--salt-kind"]);
  });

  it("offers after an option only what it takes", () => {
    expect(offered("review", "--compare", "")).toEqual(["pickled-beets", "pears"]);
    expect(offered("rehearse", "--jar", "qu")).toEqual(["quart"]);
    expect(offered("rehearse", "--altitude", "")).toEqual([]);
    expect(offered("rehearse", "--script", "READ")).toEqual(["README.md"]);
    expect(offered("rehearse", "--script", "=", "READ")).toEqual(["README.md"]);
    expect(offered("import", "READ")).toEqual(["README.md"]);
  });

  it("knows the command behind --home DIR", () => {
    expect(offered("--home", "sr")).toEqual(["src"]);
    expect(offered("--home", "/tmp", "revi")).toEqual(["review"]);
    expect(offered("--home", "=", "/tmp", "review", "--comp")).toEqual(["--compare"]);
  });

  it.each(SHELLS)("for %s names every command and option", (shell) => {
    const script = completionScript(shell, []);
    for (const [name, call] of Object.entries<Call>(CALLS)) {
      if (name !== "open") expect(script).toContain(name);
      for (const option of Object.keys(call.options)) expect(script).toContain(option);
    }
  });
});
