import type { MeaningOf } from "./meaning.ts";

/** Ends the silence. */
export const unhush: MeaningOf<"unhush"> = {
  cost: "harmless",
  when: ["always"],
  slots: {},
  example: "you can talk again",
  forgiving: true,
  wordings: [
    `[<want>] (speak|talk|start talking|start speaking|go back to talking|resume talking|be
    heard) (up again|again|to me again|up now|up|now|to me|out loud again|out loud)`,
    "you do not (need|have) to be (quiet|silent) (any more|any longer|now)",
    `you (can|may|could) [go ahead and] (speak|talk|start talking|make noise|pipe up|come back
    on|come back|speak up|talk to me|be loud|start speaking) [again|now|up again|up now|up|once
    more|to me again]`,
    `[<want>] (unmute|un mute|unhush|un hush|unsilence|end the quiet|stop hushing|come off mute|
    voice on|sound on|voice back on|sound back on|turn your voice on|turn the voice on|turn the
    sound on|turn the sound back on|turn your voice back on|turn the voice back on|turn on your
    voice|turn on the sound|stop being quiet|end quiet|no more quiet|no longer quiet|come out of
    hush|start talking again|start speaking again|switch the voice on|switch the voice back on|
    switch the sound on|bring your voice back|bring back the voice|turn the volume back on|turn
    yourself back on|make noise again|use your voice again|use your voice) [yourself|now|again]`,
    `(quiet time is over|hush is over|the quiet is over|quiet is over|end hush|hush off|mute off|
    quiet over|hush over|cancel the hush|cancel hush|enough quiet|that is enough quiet|enough
    silence|mute is off|cancel the mute|cancel mute|lift the hush|end of quiet|end the hush|
    undo the hush|stop the hush|i can hear you again|let me hear you again|let me hear you|i
    want to hear you again|talk to me)`,
  ],
  spoken: ["talk to me", "you can talk again"],
  bags: [
    {
      asking: true,
      must: [
        "talk|talking|speak|speaking|voice|sound|unmute|volume|chatting|chat",
        "again|now|back|on|up|can|may|start|unmute|resume",
      ],
      may: `
        you|your|the|to|me|us|it|is|okay|all right|fine|safe|go ahead|and|please|free|turn|
        come|start|i|want|need|hear|let|ready|for you|quiet|over|of|being|stop|time|would|could
      `,
    },
  ],
};
