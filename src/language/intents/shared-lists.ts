// data table
/** Pieces that wordings of several meanings are made of, each used as `<name>`. */
export const SHARED_LISTS: Readonly<Record<string, string>> = {
  it: `
    that part|that bit|that step|this step|this part|that job|that task|the last step|the step|
    that stage|this stage|this bit|the last bit|the last part|that whole part|it|that|this|
    they|these|those|she|he|that one|this one|mine|[the|this|that] thing
  `,
  the: "the|my|our|those|these|that|this|them|your|all the|all my|all our",
  we: "we|i",
  who: `
    (my|our|the) [little|oldest|youngest|other] (husband|wife|son|daughter|kid|kids|mother|mom|dad|
    father|sister|brother|boy|girl|friend|neighbor|baby|child|children|grandson|granddaughter|
    aunt|uncle|cousin|niece|nephew)|grandma|grandpa|mom|dad|somebody|someone
  `,
  got: `
    got|have|have got|we have|we have got|i have|i have got|we got|i got|there is|there are|
    here is
  `,
  let: `
    what do you say we|what do you say to|how would you like to|i guess it is time to|i think it
    is time to|i guess i will|i suppose we will|i would say we|we had best|i have got to|we have
    got to|we ought to|i plan to|we plan to|we are fixing to|i am fixing to|next i want to|
    today we|today i|now we|i had like to|how about we|why do not we|what if we|i think we
    should|i think i would like to|we would like to|i am here to|i am about to|we are about to|
    i have decided to|let us go ahead and|let us try to|next we will|next let us|i am all set
    to|we are all set to|i fancy|i feel like|i was going to|it is time we|let us|let me|i want
    to|i would like to|we want to|i would love to|we should|i am going to|i will|we will|we are
    going to|time to|it is time to|i need to|we need to|ready to|i am ready to|we are ready to|
    can we|could we|shall we|may we|can i|could i|may i|we can|we might as well|i might as well|
    i think i will|i think we will|i guess we will|help me|you can|we had better|i had better
  `,
  full: `
    full|rolling|hard|good|proper|real|true|strong|vigorous|nice|steady|big|complete|solid|
    lively|fast|mighty|furious|heavy|gentle|galloping|raging|roaring|thundering|wild|happy|
    honest|hearty|brisk|rapid|violent|decent|huge|great|tremendous|right|merry|robust|serious|
    energetic|lovely|beautiful
  `,
  hard: `
    hard|away|well|good|fine|steadily|strongly|properly|vigorously|nicely|great|fully|full on|
    full tilt|at a full roll|merrily|happily|<like>|it is head off|their heads off|fit to bust|to
    beat the band|right smart|real fierce|full
    blast|full force|at full tilt|full bore|full pelt|flat out|up a storm|strong|proper|good and
    (hard|proper|strong|steady)|real (good|hard|nice|big|strong)|right (well|hard|up|good)|for
    real|in earnest|something (fierce|awful)|furiously|ferociously|wildly|briskly|beautifully|
    lovely|all over|all the way|along|up|big|fast|super hard|so hard|very (hard|well|strong|
    strongly)|really [really] (hard|well|good)|pretty (hard|good|well)|just (like|as) before|same
    as (before|ever)|as (hard|strong|strongly|furious|furiously|much) as (before|ever|it was)
  `,
  like: `
    like (mad|crazy|a mad thing|the clappers|hell|the devil|the dickens|blazes|fury|thunder|
    anything|nobody is business|it should|it ought to|it was before|it did before|before|
    champions|gangbusters|wildfire|lava|niagara|niagara falls|billy o|stink|fun|a good one|
    there is no tomorrow|it means it|a boss)|
    like (a|an|the|my|some) [old|big|little|wild] (volcano|washing machine|hot tub|jacuzzi|geyser|
    train|steam train|storm|fountain|river|sea|cauldron|champ|champion|demon|house on fire|
    waterfall|thing possessed|locomotive|engine|motor|maniac|madman|kettle|freight train|hot
    spring|ocean|tornado|drum|mad dog)
  `,
  still: `
    still|now|already|finally|again|just|back|really|certainly|definitely|at last|once more|all
  `,
  lids: `
    <the> (lids|jars|tops|lid|jar tops)|lids|jars|they|everything|the jars and lids|all of them
  `,
  "i-see": `
    i see|i can see|i make (it|that)|i read|i get|i am (getting|reading|seeing)|we (read|see|get)|i
    (have|have got)|we (have|have got)|got|i am looking at
  `,
  when: "{at:past}|just now|a moment ago|this minute|right now|as of now|a second ago",
  lasting: "[for] [about] {at:lasting} [now|already]",
  psi: `
    (pounds|pound|psi|p s i|pounds of pressure|pounds pressure|psi of pressure|pounds per square
    inch|pounds steam|pounds of steam|psi gauge|psi pressure|pounds psi|pound of pressure)
  `,
  kpa: "(kpa|k p a|kilo pascals|kpa of pressure|kpa pressure|kpa gauge|kilos of pressure)",
  jar: `
    jar|jars|lid|lids|number|numbers|jar number|jars number|jars numbered|jar numbers|lid
    number|lids number|lid on number|the lid on number|lid on jar|the lid on jar|lids on|the
    lids on|the lids on jars|lids on jars|lid of jar|lid of number|the lid of jar|the lid on jar
    number|lid on jar number|the lid on
  `,
  numbered: "[the] <jar> {jars} is (lid|seal)|[the|my|our] <jar> {jars}",
  "of-them": `
    of them|of the jars|of those|of the lids|of mine|of the lot|
    of [the|our|my|those|these|all] {number:number} [jars|lids|pints|quarts]|
    out of {number:number} [jars|lids]|of the pints|of the quarts|of these|of ours
  `,
  "some-jars": `
    {count} [<of-them>]|
    {count} (jars|lids|pints|quarts|jar|lid|pint|quart|half pints|half pint|of the lids|more|
    more jars|other|others)|
    {count=1} one of (the|my|our) (jars|lids|pints|quarts)
  `,
  sealed: `
    (drawn|drawed|sucked|pulled|dimpled|dipped|caved|popped) (in|down) [nicely|tight|good|well]|
    [good and|nice and|good|really] (tight|solid) [as (a drum|a tick|ticks|drums|can be)]|sealed
    (up|down) (tight|nice|good|nicely|well)|sealed good|stuck down|tight shut|vacuum tight|
    (closed|shut) [up|down] [good|well|tight|properly|nicely]|[good and] airtight|
    sealed|sealed tight|sealed up|sealed fine|sealed down|sealed perfectly|sealed properly|a
    good seal|good seals|tight|sealed shut|sealed solid|sucked down|vacuum sealed|gone down|
    popped down|concave|down|down tight|pulled down|sealed beautifully|sealed airtight
  `,
  doing: `
    trimming|slicing|washing|packing|filling|peeling|chopping|salting|draining|rinsing|mixing|
    weighing|sorting|snapping|topping|tailing|topping and tailing|stemming|pitting|coring|
    blanching|skinning|shredding|pounding|tamping|cooking|wiping|ladling|cleaning|scrubbing|
    cutting|straining|stirring|measuring|icing|chilling|mashing|crushing|labeling|labelling|
    debubbling|adding|scalding|roasting|simmering|heating|warming|skimming|grinding|dicing|
    mincing|squeezing|scooping|spreading|tasting|testing|prepping|preparing|hulling|picking
    over|cutting up|washing up|lidding|capping|screwing the bands on|putting the lids on|wiping
    the rims|marking|marking the lids|husking|shelling|soaking|filling jars|packing jars|
    sterilizing|layering|pressing|weighing down|venting|measuring the headspace|checking the
    headspace|getting the bubbles out|removing the bubbles|tightening|tightening the bands|
    prep|the prep|loading|unloading|boiling|cooling|drying|fermenting|seal check|the seal check|
    the chill|the soak|chill|soak|checking seals|checking the seals
  `,
  "said-of-it": `
    (it|that|this|they|we|she|the|a|an|our|my|these|those|is|are|has|have|been|got|now|just|
    already|again|here|there|and|so|all|both|of|them|everything|one|ones|us|ourselves|another|
    every|each|any more|with)
  `,
  "asked-of-it": `
    (what|when|where|how|is|are|do|does|will|would|can|could|should|has|have|we|i|it|they|that|
    this|those|these|the|my|our|me|us|a|an|of|and|so|now|tell|give|show|to|about|got|am|you|
    all|at|then|there|going|just|let|know|them|us|for|must|shall|in|supposed|whole|right|here|
    again)
  `,
  "gauge-name": `
    [<the>] [there|here] [little|big|old|stupid|foreign|second|secondary|dial|pressure|steam|brass|
    other|round|canner] (gauge|dial|needle|pointer|arrow|pointy thing|dial gauge|indicator|meter|
    gage) [thing|thingy] [(on|of) <the> (canner|pot|lid|cooker)]|
    <the> gauge|gauge|<the> needle|<the> dial|<the> dial gauge|<the> pressure gauge|needle|
    dial|<the> pressure|pressure|the canner gauge
  `,
  "at-value": `
    [<is>] [<still>] [<still>] <shows> [me|us] [<still>] [<at>] [<approx>]|
    [<is>] [<still>] <climbed> [<still>] [<way>] <to> [<approx>]|
    <is> [<still>] [<still>] [<way>] [<at>] [<approx>]|
    [<still>] [<way>] <at> [<approx>]
  `,
  is: "is|are|am|has|have|has been|have been",
  shows: `
    (reads|says|shows|reading|saying|showing|read|holding|holds|sitting|sits|standing|stands|
    registers|registering|measuring|measures|indicates|indicating|hit|hits|hitting|reached|
    reaching|reaches|touching|touched|making|made|running|runs|steady|stuck|pointing|points|
    settled|resting|rests|steadied|parked|hovering|sat|stood|stays|remains|dead|right|smack|
    settling|setting|setting right|sits right|
    sitting right|stopped|pinned|level|staying|stays|clocking|telling|tells|topping out|leveled
    off|levelled off|crossed|passed|just hit|just reached|steadied out|holding steady|holding
    even|pegged|hanging|hangs|just made|seeing|getting|giving|gives|gave)
  `,
  climbed: `
    (come|came|comes|coming|climbed|climbing|climbs|got|gotten|gets|gone|went|risen|rose|crept|
    creeping|made it|worked it is way|crawled|shot|built|brought it|worked up|jumped|jumped up|
    leapt|shot|shot up|run up|ran up|overshot|crept up|crawled up|risen|
    arrived|made|pulled|dropped|dropped down|fell|fallen|sunk|sank|sagged|slid|drifted|slipped|
    settled in|settled
    down|gotten itself)
  `,
  at: "at|on|to|up to|up at|back at|back to|back up to|in at|it is|it is at|of",
  to: "to|at|up to|back to|back up to|all the way to|up at|on",
  way: "up|back|back up|right|all the way|all the way up|down",
  approx: `
    about|around|exactly|just over|just under|roughly|a steady|a solid|a good|a hair over|a hair
    under|a little over|a little under|a bit over|a touch over|near|a full|close to|the
  `,
  weight: `
    [<weight-kind>] [<weight-kind>] (weight|weights|jiggler|regulator|rocker|pressure regulator|
    weighted gauge|
    counterweight|petcock|rocker weight|pressure weight|wobbler|jiggle top|jiggler weight|
    rocking weight) [thing|thingy] [on (top|the lid|the canner)]|
    [<weight-kind>] (jiggly|rattly|wobbly|rocky|jiggling|rocking|jiggle|rattling) (thing|bit|thingy)
    [on (top|the lid|the canner)] [of the (lid|canner)]|
    [<weight-kind>] (thing|bit|thingy) (on top|on the lid) [of the (lid|canner)]
  `,
  "weight-kind": `
    little|old|big|metal|brass|silly|top|black|round|funny|heavy|wobbly|jiggly|rattly|wee|there|
    (five|ten|fifteen) pound
  `,
  rocking: `
    (rocking|jiggling|dancing|rattling|rock|jiggle|dance|rattle|wobbling|swinging|ticking|
    rocks|jiggles|bouncing|jittering|clattering|swaying|chattering|rattles|dances|rocked|
    jiggled|jiggly|wobble|wobbles|clicking|hissing|bobbing|hopping|moving|rattled|rocking and
    hissing)
  `,
  steady: `
    (steady|steadily|gently|gentle|nice and gentle|nice and gently|lovely|beautifully|nicely|
    away|well|good|along|now|regularly|freely|hard|strong|strongly|evenly|at last|a few times a
    minute|like mad|like it should|slowly|back and forth|about a few times a minute|pretty good|
    real good|nice and steady|good and steady|nice and even|good and hard|out|like crazy|at a
    good clip|fine|just right|as it should|like a clock|properly|just fine|up a storm|merrily|
    continuously|constantly|fully|full blast|hard now|full force)
  `,
  "jars-or-size": `
    {size}|{size} jars|jars|jar|{size} jar|jars of {size}|of them|regular jars|(jars|jar) {size}|
    [the|my|our|those] [little|wee|small|big|large|tall|cute|baby|bitty|good|mason|jam|jelly|tiny|
    other] [little|bitty] [{target}] (jars|jar|glasses|glass|ones|lads|fellows|babies|beauties|
    bastards|buggers|sods|devils)|
    {size} [jars] (of|with) [<the>] {target}|(jars|glasses) of [<the>] {target}|{target} {size}
    [jars]|
    of (the|my|our|those|these) [little|big|bitty|small|tall] (jars|ones|{size}|bastards|buggers|
    {target})
  `,
  "every-jar": `
    [that is] (all|all of) [of] (the|my|our|these|those|them) [{count:whole}] [little|big|stupid]
    (jars|{size}|glasses|ones|bastards|buggers|{target}|{target} jars)|
    [that is] all of (it|them|those|these)|(every|each) [single|last] (jar|one|{size}) [of them|of
    these|of those|of the lot]|
    everything|the (whole|entire) (lot|load|batch|bunch|rack|gang|crew)|the lot [of them]|
    they all|all <jars-or-size>
  `,
  vessel: `
    [the|my|our|this|that|it is] [big|old|hot|large|great|tall|deep|blue|pressure|canning|stock|
    water
    bath|boiling|enamel|{target}] (canner|pot|kettle|bath|water bath|water|hot water|boiling water|
    rack|basket|pan|cooker|tub|boiler|brute|beast|hot tub|tank|drink)
  `,

  "quiet-reason": `
    (the baby is (sleeping|asleep|crying)|[the] phone is ringing|there is somebody at the door|
    somebody at the door|i am on the (phone|telephone)|somebody is (here|at the door)|someone is
    (here|at the door)|i have company|i have a headache)
  `,
  "wants-to-know": `
    (mom|mum|dad|grandma|grandpa|nan|he|she|they|everybody|everyone|the kids|my (wife|husband|
    sister|brother|daughter|son|neighbor)) (wants|want|would like) to know
  `,
  want: `
    i want you to|i need you to|i would like you to|i want|i would like|i need|let us|go ahead
    and|we need|you can|i would like to|i want to|let me|you should|we want|i need to|do|you had
    better|we should|i will|time to
  `,
  "timer-for": `
    for|on|to|named|called|labeled|labelled|until|of|marked|for my|call it|till i|to check|
    label it|name it|with the label|about|with the name
  `,
};
