/**
 * Notices on the desktop. Text goes to the system's program as an argument or in its environment,
 * never as part of a command line or a script, and without control characters.
 */
import { execFile } from "node:child_process";
import { findProgram } from "../voice/find-program.ts";

/** Shows a notice; false where it could not be shown. Settles within ten seconds or so. */
export type ShowNotice = (title: string, text: string) => Promise<boolean>;

const DEADLINE_MS = 15_000;
const LONGEST_TEXT = 500;

type Call = { program: string; args: string[]; env?: Record<string, string> };

const APPLESCRIPT = [
  "on run argv",
  "display notification (item 2 of argv) with title (item 1 of argv)",
  "end run",
];

const POWERSHELL = [
  "Add-Type -AssemblyName System.Windows.Forms",
  "$notice = New-Object System.Windows.Forms.NotifyIcon",
  "$notice.Icon = [System.Drawing.SystemIcons]::Information",
  "$notice.Visible = $true",
  "$notice.ShowBalloonTip(8000, $env:BRINEBELL_TITLE, $env:BRINEBELL_TEXT, 'Info')",
  "Start-Sleep -Seconds 8",
  "$notice.Dispose()",
].join("; ");

/** The call that shows a notice on a system, with its program at `program`. */
export function noticeCall(
  platform: NodeJS.Platform,
  program: string,
  title: string,
  text: string,
): Call {
  const [head, body] = [plain(title), plain(text)];
  if (platform === "darwin") {
    return { program, args: [...APPLESCRIPT.flatMap((line) => ["-e", line]), head, body] };
  }
  if (platform === "win32") {
    const args = ["-NoProfile", "-NonInteractive", "-Command", POWERSHELL];
    return { program, args, env: { BRINEBELL_TITLE: head, BRINEBELL_TEXT: body } };
  }
  // The body of a notice may contain markup, so what looks like markup is escaped.
  const shown = body.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
  return { program, args: ["--app-name=Brinebell", "--", head, shown] };
}

/** The way notices are shown on this system; undefined where its program is missing. */
export function desktopNotice(
  platform: NodeJS.Platform,
  searchPath: string,
  environment: Readonly<Record<string, string | undefined>>,
): ShowNotice | undefined {
  const names = { darwin: ["osascript"], win32: ["powershell"] }[platform as string];
  const program = findProgram(names ?? ["notify-send"], searchPath, platform);
  if (!program) return undefined;
  return (title, text) => {
    const call = noticeCall(platform, program, title, text);
    const env = { ...environment, ...call.env };
    return new Promise((resolve) => {
      const options = { env, timeout: DEADLINE_MS, windowsHide: true };
      execFile(call.program, call.args, options, (error) => resolve(error === null));
    });
  };
}

/** One line of limited length, without control characters or a leading dash. */
function plain(text: string): string {
  const line = text.replace(/[\p{Cc}\p{Cs}\u2028\u2029]+/gu, " ").trim();
  return line.replace(/^-+\s*/, "").slice(0, LONGEST_TEXT);
}
