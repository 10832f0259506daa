import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { type UnitKind, watchUnit } from "../../src/commands/open/watch-units.ts";

const HARD = `/home/ana/my "kitchen" 100% $HOME \\ & <jars> 'é`;
const ARGS = ["/opt/brinebell/dist/brinebell.js", "watch", "--home", HARD];

function unit(kind: UnitKind, args: readonly string[] = ARGS): string {
  const made = watchUnit(kind, { program: "/usr/bin/node", args });
  if (!made.ok) throw new Error(made.error);
  return made.value;
}

/** Whether a program of this name can be run here. */
function has(program: string): boolean {
  return spawnSync(program, ["--version"]).status === 0;
}

describe("a unit that starts the watch", () => {
  it("is a plist that another reader reads as the same call", { skip: !has("python3") }, () => {
    const read =
      "import json, plistlib, sys; print(json.dumps(plistlib.loads(sys.stdin.buffer.read())))";
    const plist = execFileSync("python3", ["-c", read], { input: unit("launchd") });
    expect(JSON.parse(plist.toString())).toEqual({
      Label: "brinebell.watch",
      ProgramArguments: ["/usr/bin/node", ...ARGS],
      RunAtLoad: true,
      KeepAlive: { SuccessfulExit: false },
      ThrottleInterval: 60,
      ProcessType: "Background",
    });
  });

  it("is a service that systemd itself finds no fault with", {
    skip: !has("systemd-analyze"),
  }, () => {
    const folder = mkdtempSync(join(tmpdir(), "unit-"));
    const file = join(folder, "brinebell-watch.service");
    // systemd wants the program to be there.
    writeFileSync(file, unit("systemd").replace("/usr/bin/node", process.execPath));
    const env = { ...process.env, XDG_RUNTIME_DIR: folder };
    const told = spawnSync("systemd-analyze", ["--user", "verify", file], {
      env,
      encoding: "utf8",
    });
    rmSync(folder, { recursive: true });
    expect(told.stderr).toBe("");
    expect(told.status).toBe(0);
  });

  it("doubles what systemd would replace in an argument, and quotes each word", () => {
    expect(unit("systemd", ["a b", "50%", "$x", 'say "hi"', "back\\slash"])).toContain(
      'ExecStart="/usr/bin/node" "a b" "50%%" "$$x" "say \\"hi\\"" "back\\\\slash"\n',
    );
  });

  it("does not start again what was refused or called wrongly", () => {
    expect(unit("systemd")).toContain("Restart=on-failure\n");
    expect(unit("systemd")).toContain("RestartPreventExitStatus=1 2\n");
  });

  it("is not made for a name with a line end, which would be lines of its own", () => {
    for (const kind of ["systemd", "launchd"] as const) {
      const made = watchUnit(kind, { program: "/usr/bin/node", args: ["a\nExecStart=/bin/false"] });
      expect(made).toMatchObject({ ok: false });
    }
  });
});
