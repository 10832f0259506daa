/** How people take back what they told of something: "scratch what I said about the boil". */

/** The wordings for one subject, in the language of pattern.ts. */
export function takingBack(subject: string): string[] {
  const about = `(about|of|on|with) [<the>] (${subject})`;
  const told = "i [have] [just] (said|told you|told|reported|called|answered)";
  const before = "[earlier|before|just now]";
  const wrong = "(wrong|mistaken|not right|not true|not so|untrue|false|a mistake|an error)";
  const take = `(take back|takes back|took back|scratch|strike|forget|ignore|disregard|cancel|undo|
    retract|withdraw|unsay|revoke|scrap)`;
  return [
    `[sorry|no|wait|oops] [i|<let>] ${take} (what|that|all|everything|whatever) ${told} ${before}
    ${about} ${before}`,
    `[sorry|no|wait|oops] [i|<let>] ${take} (that|the bit|the thing|it|my word|my report|my answer|
    my last) ${about}`,
    `[sorry|no|wait|oops] [i|<let>] take (that|it|my word) back ${about}`,
    `[sorry|no|wait|oops] [i|<let>] take what ${told} ${about} back`,
    `[sorry|no|wait|oops] [i|<let>] (take back|undo|retract|withdraw|unsay|revoke) [<the>]
    (${subject}) [(that|which) ${told}|${told}]`,
    `[sorry|no|wait|oops] [<let>] take [<the>] (${subject}) back`,
    `(what|that|whatever) ${told} ${before} ${about} [${before}] (is|was) ${wrong}`,
    `(that|that bit|the bit|that thing|my report|my answer) ${about} (is|was) ${wrong}`,
    `[sorry|no|wait|oops] i (was|am) (wrong|mistaken|too quick|too hasty|lying) ${about}`,
    `[sorry|no|wait|oops] i (spoke too soon|misspoke|jumped the gun|got it wrong) ${about}`,
  ];
}
