import { textOf } from "../words.ts";
import type { MeaningOf } from "./meaning.ts";
import { takingBack } from "./taking-back.ts";

const TAKES_BACK = new RegExp(
  "\\b(undo|back|scratch|cancel|strike|erase|reverse|delete|revoke|rescind|void|nix|belay|" +
    "unsay|retract|withdraw|forget|ignore|disregard|never ?mind|mistake|mistaken|wrong|oops|" +
    "whoops|misspoke|misheard|misunderstood|mean|accident|correction|happened?|premature|" +
    "(i|you) (did|do|never|have) not|not (that|me|it|for you)|jumped|jump|as you were|too soon|" +
    "false alarm|error|said|heard|wipe\\w*|scrub|backtrack|unrecord|" +
    "(pull|take|leave|cross|rub|strike|remove)\\b" +
    "( it| that| this| the (last|note|entry|report)\\b.*)( out| off)?)\\b",
);
/** "Bring the cat back in": what is fetched is nothing that was said. */
const FETCHES = new RegExp(
  "\\b(take|bring|put|get|carry) (the|my|your|his|her|our) " +
    "(?!last|note|entry|report|count|step|boil|heat|whole|bit)\\w+( \\w+){0,2} (back|out|off)\\b",
);

/** Takes back the latest command, or the latest report of what is named. */
export const undo: MeaningOf<"undo"> = {
  cost: "changing",
  // "That last one was too salty" takes nothing back.
  finish: (raw, _context, _plain, { words }) =>
    TAKES_BACK.test(textOf(words)) && !(raw.about === undefined && FETCHES.test(textOf(words)))
      ? { slots: raw }
      : undefined,
  when: ["always"],
  slots: { about: "word" },
  example: "undo that",
  givesWay: ["correct-time"],
  wordings: [
    {
      set: { about: "boil" },
      phrases: takingBack("[<full>] [<full>] (boil|boiling)|[it|that] (boiling|being at a boil)"),
    },
    { set: { about: "pressure" }, phrases: takingBack("pressure|needle|pounds|weight rocking") },
    { set: { about: "steam" }, phrases: takingBack("steam|venting|vent|steaming") },
    {
      set: { about: "burner" },
      phrases: takingBack("heat|burner|flame|stove|fire|heat [being] off"),
    },
    `(forget|ignore|disregard|scratch|never mind) (what i|what i have|that thing i|the last thing
    i) [just] (told you|said|told|told to you|reported)`,
    `(that is wrong|that was wrong|no|oops|whoops|sorry|wait|mistake|my mistake|that is not
    right|no wait|no sorry|i was wrong|i misspoke) (take it back|take that back|undo it|undo
    that|undo|scratch that|cancel that|strike that|forget that|go back|delete that|erase that|
    ignore that|back up|forget it)`,
    `(forget|ignore|disregard|never mind) (i said that|i said anything|i said it|what i said|
    what i just said|that one|i said so|i ever said that)`,
    `(take|turn|roll|bring|walk) (that|it|this|that last one|the last one|that one|the last
    thing|that last thing|that last bit) back`,
    `[<let>] (take back|undo|reverse|cancel|scratch|strike|erase|delete|
    unsay|withdraw|retract|scrub|remove|revoke|roll back|back out|belay|void|rescind|wipe out|
    wipe|nix|backtrack|unrecord) (that|it|this|the last|the last one|the last thing|
    my last|that last one|that last thing|that last bit|the last thing i said|what i said|what i
    just said|that last command|that one|the last entry|the last command|the last report|my last
    report|that entry|the last bit|that report|that last report|the last step|my last command|
    that last step|what i said last|my last words|that last|the previous one|the last note|that
    note|that last note|the previous command|that from the record|that from the log|that last
    entry|that command)`,
    `(undo|oops|whoops|my mistake|my bad|that was a mistake|that was wrong|that is wrong|that is
    not right|that was not right|that is not what i meant|that is not what i said|i did not mean
    that|i did not mean to say that|i misspoke|i made a mistake|i was mistaken|mistake|wrong|i
    take that back|i take it back|i was wrong|that was an error|it was a mistake|belay that|go
    back one|step back|go back a step|back up one|back up a step|back up|go back|go one back|
    never happened|that did not happen|that never happened|i did not say that|you misheard me|
    you misheard|you heard me wrong|you heard wrong|you got that wrong|you got it wrong|you
    misunderstood|you misunderstood me|i spoke too soon|spoke too soon|false alarm|correction|i
    said that wrong|i said it wrong|strike that from the record|as you were|i did not mean it|i
    did not say done|i pressed that by accident|i hit that by accident|that was by accident|
    that was an accident|by mistake|pressed by mistake|i hit the wrong key|wrong key|wrong
    button|wrong one|wrong batch|that was premature|one step back|that was the wrong one|that
    was the wrong batch|not that|that was not me|not that one|i jumped the gun|jumped the gun|
    that was not for you|not for you|i was not talking to you|i was not talking to you then)
    [please|sorry|oops|undo that|undo it|undo|there|please undo|take that back|scratch that]`,
  ],
  spoken: ["undo that"],
  bags: [
    {
      asking: true,
      must: [
        `undo|take back|take (that|it|this) back|scratch|cancel|strike|erase|reverse|delete|back
        up|go back|mistake|wrong|(did not|do not) mean|misspoke`,
        "that|it|last|this|what|one|mistake",
      ],
      may: `
        i|you|was|is|a|the|my|thing|one|said|say|just|what|command|report|entry|part|bit|to|
        please|me|no|let us|want to|last|an error|oops|whoops|by|made|that|it|not|right|wait|
        sorry|step|from the log|heard|got|wrong|actually|all|undo|back
      `,
    },
  ],
};
