/** Watches in the background: one for each kitchen, asked about, stopped, killed. */
import { spawn } from "node:child_process";
import * as fs from "node:fs";
import { join } from "node:path";
import { Kitchen } from "./kitchen.mjs";
import { journal, must, PROGRAM, run, until, wait } from "./tally.mjs";

function watch(home, ...args) {
  const told = run(["watch", ...args, "--json", "--home", home], { ms: 20_000 });
  const { pid } = told.status === 0 || told.stdout ? JSON.parse(told.stdout) : {};
  return { ...told, pid };
}

function kitchen(home) {
  run(["kitchen", "--altitude", "6200ft", "--home", home]);
}

const MANY = 6;

export async function watches(tally) {
  await tally.case("begins, says its number, and ends when asked", async (home, end) => {
    kitchen(home);
    end(() => watch(home, "--stop"));
    must(watch(home, "--status").status === 1, "somebody watches already");
    const begun = watch(home, "--background", "--silent");
    must(begun.status === 0 && begun.pid > 0, `it does not begin: ${begun.stderr}`);
    must(watch(home, "--status").pid === begun.pid, "another one watches");
    const second = watch(home, "--background");
    must(second.status === 1, `a second one gives ${second.status}`);
    must(watch(home, "--stop").status === 0, "it is not stopped");
    must(watch(home, "--status").status === 1, "it still watches");
    must(!fs.existsSync(join(home, "watch", "lock")), "its lock is left");
  });
  await tally.case(`of ${MANY} at once one watches`, async (home, end) => {
    kitchen(home);
    end(() => watch(home, "--stop"));
    const words = [PROGRAM, "watch", "--background", "--silent", "--home", home];
    const codes = await Promise.all(
      Array.from({ length: MANY }, () => {
        const child = spawn(process.execPath, words, { stdio: "ignore" });
        return new Promise((resolve) => child.on("close", resolve));
      }),
    );
    must(codes.filter((code) => code === 0).length === 1, `they give ${codes}`);
    must(
      codes.every((code) => code === 0 || code === 1),
      `they give ${codes}`,
    );
  });
  await tally.case("one that is killed is followed by another", async (home, end) => {
    kitchen(home);
    end(() => watch(home, "--stop"));
    const { pid } = watch(home, "--background", "--silent");
    process.kill(pid, "SIGKILL");
    await until(() => watch(home, "--status").status === 1, "it is said to watch");
    const next = watch(home, "--background", "--silent");
    must(next.status === 0 && next.pid !== pid, `none follows: ${next.stderr}`);
  });
  await tally.case(
    "announces once, after the terminal it was begun on is gone",
    async (home, end) => {
      const day = await new Kitchen(home).opened();
      await day.tell("remind me in 8 seconds to turn the crock");
      await day.close();
      end(() => watch(home, "--stop"));
      must(watch(home, "--background", "--silent").status === 0, "it does not begin");
      const due = () => journal(home).filter(({ type }) => type === "due").length;
      await until(() => due() === 1, "it announces nothing", 45_000);
      await wait(1000);
      must(due() === 1, "it announces twice");
    },
  );
}
