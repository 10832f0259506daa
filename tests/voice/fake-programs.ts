import { chmodSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A folder of little shell scripts that stand for programs. */
export class FakePrograms {
  readonly folder = mkdtempSync(join(tmpdir(), "voice-"));

  /** Writes one and returns its path. */
  add(name: string, body: string): string {
    const path = join(this.folder, name);
    writeFileSync(path, `#!/bin/sh\n${body}\n`);
    chmodSync(path, 0o755);
    return path;
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}
