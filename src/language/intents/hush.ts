import type { MeaningOf } from "./meaning.ts";

/** Silence, except for alarms that guard a process. */
export const hush: MeaningOf<"hush"> = {
  cost: "changing",
  inPieces: true,
  when: ["always"],
  slots: { minutes: "number" },
  example: "hush for ten minutes",
  forgiving: true,
  wordings: [
    "[<want>] <stop-talking> [up|now|down|please] [for] {minutes:duration}",
    `[<want>] <stop-talking> [now|a while|for a while|for now|for a bit|for a minute|already|a
    bit|over there|there|will you|would you|a moment|for a moment|for the moment|a little while|
    for a little while]`,
    "[<want>] (leave|let) me (alone|be) for {minutes:duration}",
    `[<want>] (leave me alone|let me be|no more noise|turn the noise off|turn off the alarm|stop
    that noise|stop that racket|stop the noise|silence the alarm|stop ringing|stop the alarm|
    stop the bell|mute the alarm|quit ringing|turn that alarm off|quit beeping|quit that|turn
    that off|cut it out|cut the noise|turn that noise off|shut that off|stop that beeping|
    silence that)`,
    `[<want>] (give|get) me [some] {minutes:duration} (of|of some) (quiet|silence|peace|peace and
    quiet)`,
    "[i] [want|need] {minutes:duration} of (quiet|silence|peace|peace and quiet) [please]",
    "quiet time for {minutes:duration}|for {minutes:duration} <stop-talking>",
    "<quiet-reason> (hush|quiet|be quiet|shush)",
    "[<want>] <stop-talking> [now|for a bit|for a minute|a moment] <quiet-reason>",
    `[<want>] (do not (talk|speak|say (anything|a word))|no more talking) [for] [the next]
    [{minutes:duration}]`,
    "[you] (no|not) talk [now] [for] [{minutes:duration}] [okay]",
    "[<want>] keep (mum|schtum|your mouth shut) [for] [{minutes:duration}]",
    "[<want>] no more talking until i (say so|tell you|say)",
    `[<want>] (not a (peep|word|sound)|no (talking|noise|chatter)) [out of you|from you] [for
    {minutes:duration}]`,
  ],
  spoken: ["hush [for {minutes:duration}]", "be quiet"],
  bags: [
    {
      asking: true,
      must: [
        `quiet|hush|shush|silent|silence|mute|muted|stop talking|(do|not) not (talk|speak)|no
        talking|quit talking|pipe down|shut up|zip it|stop yakking|stop chattering|hold your
        tongue`,
      ],
      may: `
        <want>|be|stay|go|keep|for|a|the|while|bit|minute|moment|some|now|please|you|your|
        voice|me|us|i|{minutes:duration}|little|yourself|in here|need|would|could|can|it|on|of|
        time|down|up|will|to|and
      `,
    },
  ],
  lists: {
    "stop-talking": `
      hush|shush|shh|sh|quiet|be quiet|be silent|stay quiet|keep quiet|silence|mute|mute
      yourself|go quiet|quiet down|pipe down|stop talking|shut up|hush up|zip it|no more
      talking|stop the chatter|do not talk|do not speak|stop speaking|hold your tongue|keep it
      down|not a word|no talking|go silent|silent|simmer down|stop nagging|give it a rest|i need
      quiet|i need some quiet|can it|let me have some quiet|some quiet|peace and quiet|stop
      chattering|voice off|sound off|turn off your voice|turn your voice off|turn the voice off|
      turn off the sound|turn the sound off|stop beeping|be still|keep still|stay silent|do not
      say anything|say nothing|leave me in peace|quit talking|a little quiet|turn yourself off|
      stop yapping|keep silent|cut the chatter|pause the voice|i want quiet
    `,
  },
};
