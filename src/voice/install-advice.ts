/** What is needed: a voice, ears, or a way to record. */
export type AdviceFor = "voice" | "ears" | "microphone";

/** What is known of the machine, passed in so that tests can be any system. */
type SystemFacts = {
  platform: NodeJS.Platform;
  /** PATH, to see which package manager is there. */
  hasProgram: (name: string) => boolean;
};

type Installer = { program: string; install: string; packages: Record<AdviceFor, string> };

const INSTALLERS: Installer[] = [
  {
    program: "apt",
    install: "sudo apt install",
    packages: {
      voice: "espeak-ng",
      ears: "libpocketsphinx3 pocketsphinx-en-us",
      microphone: "alsa-utils",
    },
  },
  {
    program: "dnf",
    install: "sudo dnf install",
    packages: { voice: "espeak-ng", ears: "pocketsphinx-libs", microphone: "alsa-utils" },
  },
  {
    program: "pacman",
    install: "sudo pacman -S",
    packages: { voice: "espeak-ng", ears: "pocketsphinx", microphone: "alsa-utils" },
  },
  {
    program: "brew",
    install: "brew install",
    packages: { voice: "espeak-ng", ears: "cmu-pocketsphinx", microphone: "sox" },
  },
];

const NAMES: Record<AdviceFor, string> = {
  voice: "a voice",
  ears: "listening",
  microphone: "a way to record",
};

/** One sentence: the command that installs what is missing on this system. */
export function installAdvice(what: AdviceFor, system: SystemFacts): string {
  if (system.platform === "win32") {
    if (what === "voice")
      return "For a voice, turn on Windows speech (PowerShell must be on PATH).";
    if (what === "microphone") return "For a way to record: winget install ffmpeg";
    return "Listening needs the pocketsphinx library, which has no installer for Windows yet.";
  }
  const found = INSTALLERS.find((each) => system.hasProgram(each.program));
  const installed = found ?? (system.platform === "darwin" ? INSTALLERS[3] : INSTALLERS[0]);
  if (!installed) return "";
  return `For ${NAMES[what]}: ${installed.install} ${installed.packages[what]}`;
}
