import { EMERGENCY_PATTERNS, topicIn } from "../values/topic-patterns.ts";
import { textOf } from "../words.ts";
import type { MeaningOf } from "./meaning.ts";

/** A fire that is too small, and food that was smoked, put nobody in danger. */
const OF_A_BURNER = new RegExp(
  "\\b(fire|flames?) (is|was|are|got|looks?) (\\w+ )?(small|low|weak|tiny|down|out)\\b|" +
    "\\bsmoked\\b(?!.*\\b(out|up|us|me|kitchen)\\b)",
);

/** Somebody is hurt, ill or in danger: it goes before everything else. */
export const emergency: MeaningOf<"emergency"> = {
  cost: "harmless",
  urgent: true,
  when: ["always"],
  slots: { what: "word" },
  parts: ["thing"],
  example: "I burned my hand",
  finish: (raw, _context, _plain, said) => {
    const what = raw.what ?? topicIn(said.words, EMERGENCY_PATTERNS);
    const ofStove = what === undefined || what === "fire" || what === "smoke";
    if (ofStove && OF_A_BURNER.test(textOf(said.words))) return undefined;
    return { slots: what === undefined ? {} : { what } };
  },
  wordings: [
    `[ow|ouch|help|damn|quick] (i|i have|she|he|she has|he has|the boy has|the girl has|<who> has|
    <who>) [just|badly|really|gone and] (burned|burnt|scalded|cut|sliced|gashed|blistered|stabbed)
    (my|his|her|the|a|their) [left|right|whole] <body> [<badly>] [on|with] [(a|the|some|that)
    <burner-thing>]`,
    `(i|she|he|<who>) [have|has] [just|badly|really|gone and] (burned|burnt|scalded|cut) (myself|
    herself|himself|themself) [<badly>] [on|with] [(a|the|some|that) <burner-thing>]`,
    `(my|his|her) [left|right] <body> (is|has|got) [badly|all] (burned|burnt|scalded|bleeding|
    blistered|blistering|cut|cut open|scalded badly|burning) [<badly>]`,
    `[(the|some|hot|boiling|that)] (steam|syrup|brine|jam|water|boiling water|boiling syrup|hot
    jam|hot brine|fat) (got|caught|hit|burned|scalded|splashed|splashed on|went all over|
    went on|spilled on|
    is on) [me on] (my|his|her|the) [left|right] <body>`,
    "[the] (steam|syrup|brine|jam|boiling water) (got|burned|scalded|splashed|caught) me",
    `what do i do (about|for|with|if i have) (a|this|the) (burn|scald|cut|bad cut|bad burn|grease
    fire)`,
    `(i am|she is|he is|<who> is|it is) [really|still] (bleeding|bleeding a lot|bleeding badly)
    [and it will not stop]|it will not stop bleeding|i need stitches`,
    `(something|syrup|vinegar|brine|juice|pepper|chile|lime|hot water) [got|is|splashed|squirted|
    went] in (my|his|her) (eye|eyes)`,
    `(my|his|her) (hands|fingers|skin|eyes) (are|is) (burning|on fire) from the (chiles|chilies|
    peppers|jalapenos|chile|chili)`,
    `(the|my|a|there is a|we have a|we have got a) [pot|pan|stove|oil|fat|grease|towel|oven|
    kitchen|potholder|mitt] [has|is] [caught] (fire|on fire|caught fire|in flames|burning|ablaze)
    [on the stove|in the kitchen|in here]`,
    "(fire|fire fire|there are flames|flames|something is on fire|it is on fire|grease fire)",
    `(there is|i see|we have got|it is) [a lot of|so much|lots of|black] (smoke|smoking)
    [everywhere|in the kitchen|in here|coming from the (stove|oven|pot|canner)|all over]`,
    "[the] (pot|pan|stove|oven|oil|fat|burner|mitt|towel) is (smoking|smoking badly)",
    `[i|we|it] (smell|can smell|smells|smells like|smells of|am smelling|there is a smell of|there
    is) [a] [strong] [smell of] (gas|propane) [in here|in the kitchen|everywhere|smell|leaking]`,
    "[the|there is a] (gas|propane) [is] (leaking|leak|smell|hissing)|gas leak|is that gas",
    `(the|my|a) (pilot|pilot light) (is out|went out|has gone out|blew out)|how do i relight [the|
    my|this] (burner|stove|pilot|flame|gas|it)|(can|may|should) i relight [the] (it|burner|gas|
    flame|stove)`,
    `[the] (overpressure plug|safety plug|plug|safety valve|rubber plug) [has|just] (popped|blew|
    blown|went|popped out|come out|came out|blew out|gone off)`,
    `(i|she|he|<who>) [have|has|just] (fainted|passed out|collapsed|blacked out|fell down and is
    not answering|is not answering me|is unconscious|will not wake up)`,
    `(i|i am|she|she is|he|he is|<who> is) [feel|feels|feeling] [very|really|a bit|kind of] (faint|
    dizzy|woozy|light headed|lightheaded)`,
    `(i|i am|she is|he is|she|he|<who> is) (seeing double|see double|sees double|have double vision|
    has double vision|having trouble swallowing|having trouble breathing|can not swallow|can not
    breathe|have blurry vision|has blurry vision|slurring)`,
    `(i|we|she|he|<who>) [just] (ate|tasted|eaten|have eaten|swallowed) [some of|from|a bit of|a
    spoonful of|a bite of] (a|that|the|some|one) (bad|spoiled|bulged|bulging|moldy|off|bad|
    suspect) (jar|one|beans|food|stuff|peaches|jam|tomatoes) [and <feel-ill>]`,
    `[i|she|he|<who>] (think|thinks) [i|we|she|he] (have|has|got) food poisoning|i have food
    poisoning|(i|she|he) (feel|feels) (sick|ill|odd|strange|funny) after eating [it|that|the
    {thing:thing}|some of it]`,
    "(emergency|call an ambulance|this is an emergency|we need an ambulance|help emergency)",
  ],
  lists: {
    body: `
      (hand|hands|arm|arms|finger|fingers|thumb|wrist|wrists|leg|legs|foot|feet|face|chin|forearm|
      palm|elbow|knuckles|neck|chest|belly|lip|mouth|toe|skin|cheek)
    `,
    badly: "badly|bad|pretty bad|pretty badly|deep|open|really bad|a little|again|to the bone",
    "burner-thing": `
      (stove|burner|pot|canner|lid|jar|steam|syrup|glass|knife|hot jar|hot water|broken glass|
      rack|oven|mandoline|slicer|broken jar|boiling water|jam|handle)
    `,
    "feel-ill": "(i feel|she feels|he feels|feel|feels) (sick|ill|odd|strange|funny|dizzy|queasy)",
  },
};
