import type { MeaningOf } from "./meaning.ts";

/** What can be said. */
export const help: MeaningOf<"help"> = {
  cost: "harmless",
  when: ["always"],
  slots: {},
  example: "what can I say",
  forgiving: true,
  wordings: [
    `what (do|can|could|will|would) you (know how to do|help with|help me with|offer|handle|
    manage|take care of|answer|tell me|do for me|do for us)`,
    `(what|which) (words|commands|phrases|things|sentences) (will|do|can|would|could|should|
    might) (you|i|we) (take|understand|know|use|say|recognize|have|follow|accept|listen for|
    give you)`,
    `how (do|should|can|would) i (talk|speak|use|work|run|ask|start|begin|get help) [to|with|
    for] [you|this|this thing|it|a batch|things|for help|help] [please]`,
    `(show|tell|teach|give) me (how to (use you|use this|work this|talk to you|start|begin)|what
    to say|the basics|a hint|some hints|the list|the list of commands|a list|everything you can
    do|everything i can say|what you know|what you understand|some help|the options|my choices|
    the possibilities)`,
    "(tell|show) me what you (can|are able to|know how to) (do|help with|help me with) [for me]",
    `i do not know how to (work|use|run|talk to) (this|you|it|this thing) [help me|can you help
    me|can you help|please help]`,
    `(help|help me|help please|i need help|i need some help|need help|need some help|i need a
    hand|give me a hand|help me out|can you help|can you help me|could you help me|help me out
    here|i am lost|i am stuck|i am confused|a little help|some help|show help|show me the help|
    instructions|show the commands|list the commands|list commands|show commands|commands|
    options|i am not sure what to say|i do not know what to say|i do not know how this works|i
    do not know how to use this|i do not know what i can say|i do not understand how this works|
    how do i use this|how do i use you|how do i work this|how do i do this|how does this work|
    how do you work|how does this thing work|how do i talk to you|how do i talk to this|how
    should i talk to you|how do i start|how do i begin|how do i get started|how do i start a
    batch|what are my options|what are my choices|what are the commands|what are the options|
    what can you do|what can i say|what can i ask|what can i ask you|what can i tell you|what
    can we say|what do you do|what do you understand|what do you know|what else can you do|what
    else can i say|what all can you do|what all can i say|what words do you know|what words can
    i use|what commands are there|what commands do you know|what commands do you have|what
    should i say|what should i say to you|what am i able to say|what am i allowed to say|what do
    i say|what do i say to you|what sort of things can i say|what kind of things can i say|what
    kinds of things can i say|what sorts of things can i say|what things can i say|what things
    can you do|what are you able to do|what are you for|what are you good for|what is it you do|
    what is it you can do|what is this|how can you help|how can you help me|how can i talk to
    you|tell me what you can do|tell me what i can say|tell me how this works|show me what you
    can do|show me what i can say|explain how this works|explain yourself|teach me|teach me how
    to use this|show me how this works|show me how to use this|show me the commands|show me my
    options|read me the commands|what can you help with|what can you help me with|what might i
    say|which words can i use|give me some help|give me the commands|give me a list of commands|
    give me some examples|list what i can say|list what you can do|list my options|what may i
    say|what can i do here|what can i do with you|what can i do|what do you listen for|what do
    you respond to|what phrases do you know|what could i say|i could use some help|i could use a
    hand|lend me a hand|i need assistance|assistance|user guide|show the guide|what is it i can
    say|how do i talk to it|what is possible) [here|now|again|with this|to you|please]`,
  ],
  spoken: ["help", "what can i say"],
  bags: [
    {
      asking: true,
      must: ["help|commands|options|instructions|(say|ask|tell) [to] [you]|use|work|works|choices"],
      may: `
        what|how|can|do|i|you|me|my|this|it|the|a|are|is|need|some|show|list|to|know|should|
        does|of|am|could|would|with|with you|here|thing|else|all|give|tell|understand|talk|for|
        things|kinds|sort|available|possible|be|say|please|will|supposed|we
      `,
    },
  ],
};
