import { alternatives } from "./grammar/pattern.ts";
import { textOf } from "./words.ts";

function phrasesIn(text: string): readonly string[] {
  return alternatives(text).flatMap((phrase) => spelledOut(phrase.trim().replace(/\s+/g, " ")));
}

/** Each phrase that one with choices in it stands for: `(a|b) c` is `a c` and `b c`. */
function spelledOut(phrase: string): string[] {
  const choice = /\(([^()]*)\)/.exec(phrase);
  if (!choice) return [phrase];
  return (choice[1] ?? "")
    .split("|")
    .flatMap((side) => spelledOut(phrase.replace(choice[0], side)));
}

/** What only hurries or begs: part of no order, and of no name. */
export const URGES = phrasesIn(`
  chop chop|(and |so |now )get a move on|get a move on|
  (as |)(quick|fast|soon) as you (like|can|please)|
  if you please|if you would|if you will|look (lively|sharp|alive)|sharpish|snap to it|hop to it|
  jump to it|on the double|step on it|make it (snappy|quick)|hurry (up|it up|along)|
  be quick( about it|)|
  quick (march|sharp|smart|about it)|at the double|pronto|without delay|
  there is a (dear|love|good lad|good girl|good thing)|if it is all the same to you|
  pretty please|right away|straight away|no dawdling|no messing|and sharp about it|
  let us (be having you|crack on|get cracking|get going|get on with it)|get cracking|crack on
`);

/**
 * Words that say nothing by themselves and may be skipped anywhere in a phrase. Nothing that could
 * turn a report into a question, a wish, a doubt or its opposite may be listed here.
 */
export const FILLERS = [
  ...URGES,
  ...phrasesIn(`
  um|uh|er|erm|ah|aw|whew|phew|ooh|yay|ha|welp|heck|dang|dang it|rats|whoa|hallelujah|at long
  last|i will be darned|well i will be|oh|hmm|mm|well|so|please|kindly|just|now|then|actually|
  really|finally|right|okay|hey|all right|here|there|nicely|already|anyway|anyhow|honestly|
  basically|
  look|listen|you know|i mean|for me|for us|over here|over there|at last|at this point|as of
  now|right now|by now|at the moment|by the way|good news|bad news|guess
  what|you know what|do you know what|i tell you what|tell you what|if you would|if
  you could|if you please|if you will|if you do not mind|if you can|when you can|thank you|
  thanks|thank goodness|thank heavens|dear|my love|then love|please love|thanks love|now love|
  mum|bother|oh bother|right then|righto|now then|lord|good lord|mercy|mercy me|my goodness|
  goodness me|bless me|dear me|oh dear me|i declare|i tell a lie|gone and|went and|gone ahead
  and|went ahead and|would you believe it|would you believe|believe it or
  not|sure enough|lo and behold|friend|hon|honey|sweetie|darling|buddy|bud|pal|mate|partner|
  dude|kiddo|my dear|sir|maam|folks|everyone|brine bell|quickly|real quick|will you|would you|i
  am afraid|i see|i can see|darn it|darn|drat|shoot|oh no|oh dear|oh good|oh boy|boy|man|gosh|
  goodness|great|good|wow|hooray|sorry|and|also|today|again|officially|as well|i am pleased to
  say|happy to say|happy to report|for the record|let me tell you|i have to say|heads up|
  attention|update|quick update|news flash|fyi|damn|damned|damn it|damn thing|goddamn|god damn|
  goddamn it|god damn it|bloody|bloody hell|blasted|blessed|blinking|blooming|flipping|flaming|
  freaking|frigging|effing|ruddy|sodding|wretched|dratted|confounded|cussed|danged|darned|
  stinking|stupid|crap|hell|oh hell|what the hell|bugger it|oh bugger|sod it|christ|jesus|jesus
  christ|lord almighty|god almighty|good god|my god|oh my god|oh god|thank god|thank christ|
  thank the lord|thank heaven|praise be|praise the lord|glory be|bless it|bless her|bless him|
  bless them|bless your heart|bless you|for (god|pete|goodness|heaven|christ|hell) is sake|for
  crying out loud|sweetheart|lovey|ducky|pet|lass|lassie|laddie|old girl|old boy|old thing|old
  son|chum|boss|chief|cap|doll|babe|petal|my lovely|my girl|my boy|my friend|you all|i can tell
  you|i can report|i am (glad|happy|pleased|delighted) to (say|report|tell you)|you will be (glad|
  pleased|happy) to (hear|know)|just to let you know|just so you know|so you know|for your
  records|for your information|i have to admit|i must say|i must admit|i do declare|ta da|yippee|
  yahoo|woohoo|voila|presto|bingo|hurrah|hurray|huzzah|amen|jeez|geez|sheesh|cripes|crikey|blimey|
  gee|golly|my word|oh my word|my stars|heavens|good heavens|great scott|you would not believe it
`),
];

/** Skipped only at the beginning: politeness before an order, a yes before a report. */
export const OPENERS = phrasesIn(`
  can you|could you|would you|will you|can you please|could you please|would you please|would
  you mind|do you mind|i would like you to|i want you to|i need you to|i would appreciate it if
  you would|go ahead and|do me a favor and|be so kind as to|be a dear and|oops|whoops|yes|yeah|
  yep|yup|no|nope|nah|but|see|okay so|hello|hi|you can|you could|we could|say|it is time to|
  sure|first|next|correction|wait|hold on|hang on|we need to|i need to|maybe you could|perhaps
  you could|how about you|why do not you|you had better|you may|you should
`);

/**
 * Skipped at the beginning, but what follows is less certain: the person thinks so and does not
 * know.
 */
export const HEDGES = phrasesIn(`
  i think|i think that|i believe|i guess|i would say|i reckon|i am pretty sure|i am fairly sure|
  i am quite sure|i am certain|fairly sure|i am guessing|i figure|i suspect|pretty sure|i am
  sure|as far as i can tell|as far as i can see|from what i can see|apparently|i do believe|
  looks to me like|surely|looks like|it looks like|it looks as though|it looks as if|seems like|
  it seems like|it seems
`);

/**
 * Side remarks around a command, as one pattern: whole clauses that say nothing the kitchen has to
 * know. Nothing may be listed here that could be a question, a wish, a doubt, a story or the
 * opposite of a report.
 */
export const ASIDES = `
    (there|here) (we|it|she|he|they|you) (go|goes|are|is)|
    (there|here) it comes|
    that is (it|that|all|good|great|better|more like it|right|a relief|good news|all there is)|
    that is (for sure|a fact|my girl|the stuff|the way|the ticket|how it goes|all for now)|
    (oh|uh|ah) (my|boy|wow|yes|no|oh|goodness|gosh|dear|good|great|shoot|well|man|lord|
    heavens)|
    (my|oh my) (goodness|gosh|word|oh my|stars|lord|heavens)|
    (good|great|very good|nice|lovely|perfect|wonderful|excellent|fantastic|awesome|super)|
    (about|just) time|(it is|it was) about time [too]|and about time [too]|at (long last|last|
    least)|
    [that|it|this] (took|has taken) (forever|long enough|a while|ages|some time|its time)|
    [that|it] took it is time|sorry about (that|it|this|the noise|the delay)|(i am|so|very)
    sorry|
    (thank|thanks) (you|to you|so much|a lot|a bunch|a million|again|very much)|
    thank (goodness|heavens|god|the lord|you so much|you very much)|
    (by the way|you know|you see|mind you|i tell you|i swear|i promise|believe me)|
    (look|would you look) at that|
    (what do you know|would not you know it|how about that|well i never|well well)|
    (here is|this is|that is) (the|an|a) (update|news|latest|report)|
    (just|i am just|just so you know|so you know) (letting you know|saying|telling you)|
    (for your|just for your) information|
    (ladies and gentlemen|everybody|everyone|folks|all)|
    (hey|hi|hello|okay|listen|excuse me|pardon me) [there|brine bell|you]|
    i am (back|here|at the stove|listening|so happy|so glad|so pleased|happy|glad|sorry)|
    (we are|i am) (good|all good|fine|okay|in business|cooking with gas|ready|all set)|
    (we are|i am) (getting|moving|rolling) (there|along|now)|
    (i have got|i have|got) (it|this|that) [now]|(let me|let us) see [here|now]|
    (all right|okay|right) (then|now|so|here we go|everyone)|
    (here|off) we go|
    there she blows|praise (be|the lord)|that is all she wrote|[all] (by myself|on my own)|
    [that is] (the end|one down|one more down|another one down)|
    (what a|such a) (day|relief|mess|racket|job|pain|shame|pity|bother|nuisance)|
    (too bad|darn it|dang it|darn|dang|shoot|drat|rats|bummer|phew|whew|finally|hallelujah)|
    (no problem|no worries|no trouble|not to worry|never fear)|
    (my|the) (hands are|hands are all) (full|wet|sticky|messy|busy|dirty|covered)|
    (would|will|could|can|if) you [please|would|will|could|do not mind]|
    (please|pretty please|when you get a chance|when you have a moment|if it is no trouble)|
    for (now|me|us|sure|real|once|today|good measure|you|the moment|the record|the log)|
    (i|we) (do not|did not) (need|want) (it|that|them) (any more|any longer|now)|
    (i|we) can not believe it|
    (and|so) (that is that|there you have it|there you are|there it is|there you go)|
    (in|from) (the|my|our) kitchen|
    as (expected|usual|planned|you can see|promised|you asked|i said|always)|
    (nice|easy) and (easy|steady|slow)|(i have|i) changed my mind|
    i forgot (to say|to tell you|to mention it|to mention|about that)|
    (one more|last|another) thing|(next|first|last|second) thing|
    everything is (ready|fine|good|okay|under control)|
    (it is|it is all|all) under control|(it|this) is (hot|loud|noisy) in here|(today is|it is)
    the day|
    (i am|we are) (tired|beat|worn out|done in|bushed) [now|today]|
    (looking|looks|sounds|sounding|smells|smelling) (good|great|fine|nice|lovely|right|okay)|
    (it|that|they) (looks|look|sounds|sound|smells|smell) (good|great|fine|nice|lovely|
    wonderful)|
    (i was|i have been|i am|we were) [just|rather|so|too] (busy|up to my (elbows|wrists|eyes|neck|
    ears|armpits) in (it|skins|peels|beans|beets|tomatoes|jam|sugar|dishes|pears|peaches|brine|
    juice|muck|corn|cucumbers|tomato skins))|
    (i had|had|i have|having) [got] (my|the|both) hands full [of|with] [the] [skins|skin|tomatoes|
    beans|beets|peels|it|jars|baby|them|that]|
    my hands (were|are|was|is) (full|all sticky|sticky|wet|busy|covered|all wet)|
    [and] [i] (clean|plum|plumb|quite|just|clear|nearly|completely) forgot [to (say|tell you|mention
    it|let you know)]|
    [and] i forgot to let you know|[but] i (should|ought to) have (said|told you|mentioned it) [so]
    [sooner|before|earlier|at the time|then]|
    [i am] [so] sorry (i am|for being|to be|that i am) [so] late [(telling you|saying|with that|
    saying so|to say|to tell you)]|
    i (am late telling you|say it late|am slow to say)|
    my (back|feet|arms|legs|knees) (is|are|was|were) (killing me|aching|sore|done for|dead)|
    that is what (you|we) (wanted|were after|were waiting for|have been waiting for|asked for)|
    (you may|you can) (go ahead|carry on)
`;

const OPENING = new RegExp(
  "^((so|well|oh|ah|now|and) )*(um|uh|er|hm|mm|hmm|okay|all right|right|righto|fine|" +
    "good|great|lovely|very well|sure|thanks|thank you|cheers|ta|well|sorry|listen|look|" +
    "whatever|hello|hi|hey|" +
    "(hang|hold) on( (a|one|just a) (minute|second|moment|bit))?|" +
    "good (morning|afternoon|evening)|((do )?you know|guess|(i )?tell you) what)" +
    "( (then|now|so|there|again|you|everyone|love|(my|old) (friend|dear|love)|friend|dear))*$",
);

/** Whether words do no more than open a sentence: "okay", "well hello again", "you know what". */
export function opensOnly(words: readonly { word: string }[]): boolean {
  return OPENING.test(textOf(words));
}
