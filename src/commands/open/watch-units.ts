/** Units that make a system start the watch at every login and again after a failure. */

import { fail, ok, type Result } from "../../reckon/result.ts";

/** How the watch is called: absolute paths, and one argument each. */
export type WatchCall = { program: string; args: readonly string[] };

export type UnitKind = "systemd" | "launchd";

/** Exit statuses that a restart would not change: a wrong call, or somebody watches already. */
const FINAL_STATUSES = "1 2";
const AGAIN_SECONDS = 60;
const LABEL = "brinebell.watch";

/** The unit's text, or why there is none: some characters have no form in a unit. */
export function watchUnit(kind: UnitKind, call: WatchCall): Result<string> {
  const odd = [call.program, ...call.args].find((word) =>
    /\p{Cc}|\p{Cs}|[\ufffe\uffff]/u.test(word),
  );
  if (odd !== undefined) {
    return fail(`${JSON.stringify(odd)} has a character that a unit cannot hold`);
  }
  return ok(kind === "systemd" ? systemdUnit(call) : launchdUnit(call));
}

/** For the user's own manager: systemd.service(5), systemd.unit(5). */
function systemdUnit({ program, args }: WatchCall): string {
  // Variables are replaced in arguments, not in the program's own path.
  const words = args.map((word) => systemdWord(word).replaceAll("$", "$$$$"));
  const call = [systemdWord(program), ...words].join(" ");
  return `# Save as ~/.config/systemd/user/brinebell-watch.service, then:
# systemctl --user daemon-reload && systemctl --user enable --now brinebell-watch
[Unit]
Description=Brinebell keeps the reminders of a kitchen

[Service]
ExecStart=${call}
Restart=on-failure
RestartSec=${AGAIN_SECONDS}
RestartPreventExitStatus=${FINAL_STATUSES}

[Install]
WantedBy=default.target
`;
}

/** Quoted, with the sign of systemd's specifiers doubled. */
function systemdWord(word: string): string {
  return `"${word.replace(/[\\"]/g, "\\$&").replaceAll("%", "%%")}"`;
}

/** For the user's own agents: launchd.plist(5). */
function launchdUnit({ program, args }: WatchCall): string {
  const words = [program, ...args].map((word) => `    <string>${xml(word)}</string>`);
  const type = '"-//Apple//DTD PLIST 1.0//EN" "http://www.apple.com/DTDs/PropertyList-1.0.dtd"';
  return `<?xml version="1.0" encoding="UTF-8"?>
<!-- Save as ~/Library/LaunchAgents/${LABEL}.plist, then:
     launchctl bootstrap gui/$(id -u) ~/Library/LaunchAgents/${LABEL}.plist -->
<!DOCTYPE plist PUBLIC ${type}>
<plist version="1.0">
<dict>
  <key>Label</key>
  <string>${LABEL}</string>
  <key>ProgramArguments</key>
  <array>
${words.join("\n")}
  </array>
  <key>RunAtLoad</key>
  <true/>
  <key>KeepAlive</key>
  <dict>
    <key>SuccessfulExit</key>
    <false/>
  </dict>
  <key>ThrottleInterval</key>
  <integer>${AGAIN_SECONDS}</integer>
  <key>ProcessType</key>
  <string>Background</string>
</dict>
</plist>
`;
}

function xml(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
}
