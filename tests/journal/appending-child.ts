import { systemProcesses, takeLock } from "../../src/journal/lock.ts";
import { openJournal } from "../../src/journal/open-journal.ts";
import { realDisk } from "../../src/journal/real-disk.ts";

/**
 * A program for the tests: takes the lock of the folder it is given and appends, printing each
 * number once it is acknowledged, until it is killed. Without the lock it says so and ends.
 */
const [folder = "", bootId = ""] = process.argv.slice(2);
const disk = realDisk();
const self = { pid: process.pid, bootId, startedAt: new Date().toISOString() };
const taken = takeLock(disk, folder, self, systemProcesses);
if (!taken.ok) {
  console.log(`refused: ${taken.message}`);
  process.exit(0);
}
const { journal, found } = openJournal(disk, folder, {
  year: () => 2027,
  owns: taken.lock.owns,
});
process.stdout.write(`open ${found}\n`);
for (let i = 0; ; i += 1) {
  const pair = i % 3 === 0;
  const say = "x".repeat((i * 37) % 3000);
  const answer = journal.append(pair ? [{ say, pair }, { say }] : [{ say }]);
  process.stdout.write(answer.ok ? `${answer.lastN}\n` : `no: ${answer.message}\n`);
}
