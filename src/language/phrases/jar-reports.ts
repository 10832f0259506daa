// data table
import type { Family } from "./family.ts";

/** Reports about jars: filled, sealed, failed, broken, opened, tasted; and work done. */
export const JAR_REPORTS: readonly Family[] = [
  {
    intent: "jars-filled",
    phrases: [
      "<tally> {count:whole} <filled-state> [now|so far]",
      `
        [and|so] <tally> [all|about|exactly|a total of|all of|only|just|another] {count:whole}
        [full|filled|packed|whole|good|even] <jars-or-size> [<filled-state>|filled|full|packed|ready|in all|all told|all
        together|altogether|total|done|up|ready to go|ready for the canner|all filled|filled up|
        packed and ready|lidded|all packed|capped|put up|ready to load|now|so far|of {target}|from
        {target}|for {target}|out of it|out of that|out of {target}|filled with {target}|in this
        batch|in total|from this batch|out of this batch|from that|on the counter|full]
      `,
      `
        [<we>|i] [have|just|have just] (filled|packed|filled up|got filled|ladled|got|made|ended
        up with|filled and lidded|put up|come out with|came out with|wound up with|managed|topped
        off|finished filling|finished packing|done filling|canned|ended with|finished with|come up
        with|came up with) [about|exactly|a total of|only|just|all|another] {count:whole} [full]
        [<jars-or-size>] [of {target}|with {target}|in all|all told|altogether|total|now|so far|
        from that|up|from this batch|out of it|out of that|in total|full]
      `,
      `
        [<the>|all] {count:whole} <jars-or-size> (is|are|got|have been) [all|now|already]
        (<filled-state>|filled|full|packed|filled up|filled and lidded|ready to go in|packed and
        lidded|lidded|filled and wiped|ready for the canner|topped up)
      `,
      `
        [all] {count:whole} [full] <jars-or-size> [all] (<filled-state>|filled|full|packed|in all|
        all told|altogether|in total|ready for the canner|filled and lidded|packed and lidded|so
        far) [of {target}]
      `,
      "[all] {count:whole} (are|have been) [all|now|already] (filled|full|packed|filled up|lidded)",
      `
        [<we>|i] [have] [ended up|wound up|just finished|finished] (filling|packing) [about|exactly]
        {count:whole} <jars-or-size> [in all|all told|of {target}]
      `,
      "{count:whole} <jars-or-size> [of {target}]",
      "{count:whole} (filled|full|packed)",
      "{size} {count:whole} [of them] [all] (filled|full|packed)",
      "filled {count:whole}",
      "(filled|packed|full) {count:whole} <jars-or-size>",
      `
        <it> (filled|made|came out to|came to|gave us|gave me|yielded|comes to|fills|makes|comes
        out to|came out at|works out to|fit in|fit into|went into|filled up|took|turned into|
        packed into|worked out to) [about|exactly|just|only] {count:whole} [full|filled|packed|
        even] [<jars-or-size>]
        [full|in all|altogether|of {target}]
      `,
      `
        {target} (filled|made|came out to|came to|gave us|gave me|yielded|comes to|fills|makes|
        packed into|fit in|fit into|went into) [about|exactly|just] {count:whole} [full]
        [<jars-or-size>]
      `,
      "<the> (last|final) one is filled [and] that (makes|is) {count:whole}",
      `
        (total|the total|the count|jar count|the jar count|count) [is|of] {count:whole}
        [<jars-or-size>] [filled]
      `,
      `
        [i|we] (count|counted|have counted) {count:whole} [full|filled] [<jars-or-size>] [filled|
        full]
      `,
    ],
  },
  {
    intent: "sealed",
    set: { all: true },
    phrases: [
      `
        <all-jars> [have|has|are|is|got] [all|now|finally|really] <sealed> [now|up|nice and tight|
        well|beautifully|too]
      `,
      "<all-jars> [just|all|have|has|have all] <went-down> [now|tight|nice and tight]",
      "<other-jars> [have|has|are|is|got] [all] (<sealed>|<went-down>|fine|good|okay) [now]",
      `
        [they are|it is|we are] all (sealed|down|tight|sealed up|sealed tight|popped down|sucked
        down)
      `,
      `
        all [<of-them>|the seals|seals] (sealed|are good|good|are fine|are tight|took|held|look
        good|are holding|sealed up|are sealed)
      `,
      `
        (<the>|all the|all|every) (seals|seal) (is|are|took|held|look|looks) [all] [good|fine|
        tight|down|sound|solid|great|okay]
      `,
      `
        [i checked|i have checked|checked] [all|every|the] [jars|lids|jar|seals|them] [and] (they
        are|they have|everything is|everything|all|all are|they|every one|every one is|each one
        is) [all] sealed
      `,
      "[we have|i have|got|we got|there are|i got] (a|one) hundred percent [sealed|seal|seals]",
      "[we have|we got|got|i have|i got] (all|every) (seals|lids|jars|lid|jar) (down|sealed|tight)",
      `
        (none|no jars|not one|no lids|not a single one|none of the lids|none of them|none of the
        jars|not a jar|no jar|nothing) [has|have] (failed|failed to seal|are unsealed|is unsealed|
        did not seal|came up|is loose|are loose)
      `,
      `
        (no failures|no failed seals|no bad seals|no duds|full seal|every lid is down|all down|all
        sealed)
      `,
      "the (whole|entire) (lot|batch|load) [has|is] (sealed|is sealed|sealed up)",
      "[the] (lids|jars) (have|are) [all] (sealed|popped|gone down|pinged|sealed up|down)",
    ],
  },
  {
    intent: "sealed",
    phrases: [
      `
        <some-jars> [have|has|are|is|got|of them have|of them are|more have] [all|now] <sealed>
        [now|so far|already]
      `,
      "<some-jars> [just|have|has|more] <went-down> [now|so far]",
      "{count} (good|sound|solid) (seals|seal)",
      `
        (<we>|i) (have|got|have got|count|counted) {count:whole} [jars|lids|pints|quarts] [that
        are|that have|that] <sealed> [so far|now]
      `,
      `
        (<we>|i) (have|got|have got|count) {count:whole} (sealed|good seals|good ones|down) [so
        far|now|already]
      `,
      `
        [that is|that makes|makes] {count:whole} [jars|of them|lids|pints|quarts] (sealed|sealed
        so far|sealed now|down)
      `,
      "<numbered> [have|has|are|is|got] [all|both|now|just] (<sealed>|<went-down>|fine) [now|too]",
      "the seal on <numbered> (is|took|has) [good|fine|tight|taken|held]",
      "{jars:jar-list} [have|are] [all|both|now|just] (<sealed>|<went-down>) [now|too]",
      "sealed {count:whole} [<of-them>|jars|so far]",
      "seals on {jars} [are good|took]",
    ],
  },
  {
    intent: "seal-failed",
    phrases: [
      "<numbered> [just|still|both|has|have] <failed>",
      "{jars:jar-list} [just|still|both|have] <failed>",
      "<some-jars> [still|just|has|have] <failed>",
      "[the] (lid|lids) (on|of) <numbered> [still|just|has|have|both] <failed>",
      `
        (<numbered>|{jars:jar-list}|<some-jars>) [just|still|both|has|have] <failed> [and|but|
        though] {othersSealed=true} [all] (the others|the rest|the other ones|all the others|
        everything else|all others|the rest of them|all the rest|the other jars) [all] [did|have|
        are|has|is] [all] (sealed|did|fine|down|good|went down|seal|sealed up|sealed fine) [fine]
      `,
      `
        [the] (seal|lid) [on|of|for] [the] [jar|jars|number|lid] {jars} [has|just] (failed|broke|
        did not take|did not hold|is bad|is no good|never took|let go|has let go|gave out|is
        broken|gave way|came loose|did not seal|popped|popped up|came up|was bad|is gone|has gone|
        went|has popped|is off)
      `,
      `
        [the|a|one|<got>] (bad|failed|broken|no) seal [on|at] [jar|number|jars|lid|jar number]
        {jars}
      `,
      `
        [<we>|i] [have|got|have got|had|found|there is|there are|there were] [a|the|one] {count}
        [<jars-or-size>|<of-them>|more|lids|lid] (that|which) [has|have] <failed>
      `,
      `
        (<we>|i|there is|there are|there were) [have|got|have got|had|found] {count} [bad|failed]
        (failed|failures|failure|bad seal|bad seals|unsealed|that failed|dud|duds|failed seals|
        failed seal|failed lids|unsealed jar|unsealed jars|failed jar|failed jars|jars unsealed|
        seal failure|seal failures|seals failed|lid up|lids up)
      `,
      `
        {count} (failed|failures|failure|bad seal|bad seals|unsealed|dud|duds|failed seal|failed
        seals|unsealed jars|unsealed jar|seal failure|seal failures|bad one|bad ones)
      `,
      `
        (no seal|failed seal|bad seal|failed|unsealed|did not seal|seal failed|seal failure) [on|
        is] [jar|jars|number|numbers|jar number|lid] {jars}
      `,
      "(the one|the jar) (that did not seal|that failed) is [jar|number|jar number] {jars}",
      "(the ones|the jars) (that did not seal|that failed) are [jars|numbers|number] {jars}",
      `
        [{othersSealed=true} all|everything|they all|every one|they] [of them|the jars|the lids]
        [are|have] (sealed|but) [except|but|apart from|except for|save for|all but|other than]
        [for|the] <not-sealed-tail>
      `,
      `
        {othersSealed=true} (all|everything|they all|every one|all of them|all the jars|all the
        lids|every jar|all of the jars|every lid|they have all|they are all) [have|are|is|has]
        (sealed|went down|down|sealed up|popped|good|pinged|popped down|gone down) (except|but|
        apart from|except for|save for|other than|but for|all but|minus) [for|the]
        <not-sealed-tail>
      `,
      `
        {othersSealed=true} (all but|everything but|every one but|all except|everything except|all
        jars but|all jars except|every jar but|every jar except) <not-sealed-tail> [have|has|are|
        is] (sealed|went down|down|sealed up|popped|good|popped down)
      `,
      "(jar|lid|number) {jars} (is|has) (not|no) [a] (sealed|seal|down|tight)",
      "{count} [of the|of them|of my|of our] [jars|lids|jar|lid] (is|are|has|have) not <sealed>",
      "one (lid|jar) [has|just|still] <failed>",
      "(a|a single) (lid|jar) [has|just|still] <failed>",
      "(we|i) (lost|have lost) (a|the|one) seal [on] [jar|number|jar number] {jars}",
      `
        [we have|i have|got|i found] [a] (dud|failed one) [at|on|is|it is] [jar|number|jar number]
        {jars}
      `,
    ],
  },
  {
    intent: "jar-broken",
    phrases: [
      "<numbered> [just|has|have|both] <broke>",
      "<some-jars> [just|has|have] <broke>",
      `
        (a|one|one of the|another|one of our|one of my) {count=1} (jar|jars|pint|quart|pints|
        quarts|half pint|pint jar|quart jar) [just|has] <broke>
      `,
      `
        [<we>|i] [have|got|have got|had|there is|there are|found] {count} (broken|cracked|busted|
        shattered) (jar|jars|one|ones|pint|quart|pints|quarts) [in the canner|here|in the pot|in
        the water]
      `,
      `
        [<we>|i] [have|just|have just] (broke|broken|cracked|dropped|dropped and broke|dropped and
        smashed|smashed) {count} (jar|jars|of the jars|of them|pint|quart|pints|quarts|jar on the
        floor)
      `,
      `
        [<we>|i] [have|just|have just] (broke|broken|cracked|smashed|dropped) (jar|number|jar
        number) {jars}
      `,
      `
        [<we>|i] [have|just|have just] (lost|had) {count} [jar|jars|pint|quart] (to breakage|in
        the canner|break|crack|shatter|break on me|to a crack|break in the canner|breakage|crack
        in the canner)
      `,
      `
        [<we>|i] [have] [just] lost {count} (jar|jars|pint|quart|pints|quarts) [[it|they|that one]
        [just] <broke>]
      `,
      `
        [the] bottom (fell|came|dropped|broke|cracked|blew|popped|has come|has fallen|has gone|
        went) (out|off|right out|clean off|clean out) [of] {count} (jar|jars|of the jars|of them|of
        them jars|of those jars|pint|quart)
      `,
      `
        [the] bottom (fell|came|dropped|broke|cracked|blew|popped) (out|off|right out) [of] [jar|
        number|jar number] {jars}
      `,
      `
        there is {count=1} (glass in the water|broken glass in the canner|broken glass in the
        water|a jar broken in the canner|a broken jar in there)
      `,
      "{count=1} (jar broke|broken jar|jar is broken|cracked jar|jar cracked|jar breakage)",
      "{count} (broken|cracked|broke) [jar|jars]",
    ],
  },
  {
    intent: "set-aside",
    phrases: [
      `
        [<we>|i|i will|i am|we will|let us] [have|just|am|are|have just] (set|put|setting|putting|
        kept|keeping|keep|leave|left|leaving|hold|held) {count} [jar|jars|pint|quart|half pint|
        <of-them>|pints|quarts] [aside|to one side|to the side|out|back|by|off to the side|out of
        the load|over|out of the canner] [for (supper|dinner|lunch|tonight|later|the fridge|eating)]
      `,
      `
        [<we>|i|i will|i am] [have|just|am] (set|put|setting|putting|kept|held|leave|left) (jar|
        jars|number|numbers|jar number) {jars} (aside|to one side|to the side|out|back|off to the
        side) [<not-full>]
      `,
      `
        [<we>|i|i will|i am] [have|just|am] (set|put|setting|putting) aside (jar|jars|number|
        numbers|jar number) {jars} [<not-full>]
      `,
      `
        [<we>|i|i will|i am] [have|just|am] (set|put|setting|putting|kept|held) {count=1} (it|
        that|that one|the last one|the last jar|the partial jar|the part filled jar|the half full
        one|the partial|the partial one|the short jar|the odd one|the odd jar|the leftover|the
        extra|the half full jar|the extra one|the extra jar|the part jar|this one|the short one)
        (aside|to one side|to the side|out|back|off to the side|out of the load)
      `,
      `
        <set-aside-one> [so] [it|that|that one|i] [is|goes|went|set it|put it|am setting it|i will
        set it|i set it|i put it|has been] [set] (aside|in the fridge|to the fridge|into the
        fridge|to one side)
      `,
      `
        [<the>] [last] {count=1} (jar|one|last one|last jar) was not [quite|all the way] full [so]
        [i] [have|just] (set|put) it (aside|to one side|in the fridge)
      `,
      `
        [<the>|a] {count=1} (half full|part full|partial|part filled) (jar|one) [so] (i am|i have|
        i) [just] (leaving|left|leave|setting|set|putting|put) it (out|aside|to one side)
      `,
      `
        [<the>] {count=1} (last jar|last one) is (only|just|not) [half|part|partly|quite] full [and|
        so] [i am|i will|i have|i] (setting|set|put|putting) it (aside|to one side|in the fridge)
      `,
      `
        [<the>] {count=1} (last jar|last one|partial jar|part filled jar|odd jar|short jar|
        partial) (is|goes|gets|went) [set] (aside|in the fridge|to the fridge|into the fridge|to
        one side)
      `,
      `
        {count} [jar|jars|pint|pints|quart|quarts] (set aside|left over|to set aside|aside|is set
        aside|are set aside|left out|goes in the fridge|for the fridge|only part full|part filled|
        partly filled|half full|is only half full|is not full|is only part full|is part full|is
        partly full)
      `,
      `
        [the] {count=1} last (jar|one) is (only|just|not|part|partly|only partly|only part|half)
        [half|part|partly] (full|filled|a full jar)
      `,
      `
        [i have|we have|there is|i have got|we have got] {count} (partial|part filled|half full|
        partly filled|half filled|part full|short|leftover|extra) [jar|jars|one|pint|left|left
        over]
      `,
      `
        [i have|we have|there is|there are|i have got] {count} [jar|jars|pint|half pint] (left
        over|too many|that is not full|that is only half full|that will not fit|that does not fit|
        extra|that would not fit|over|more than fits|more than will fit)
      `,
      "setting (one|{count}) aside",
    ],
  },
  {
    intent: "opened",
    phrases: [
      `
        [<we>|i|i have|we have|just|i just|we just] [just] (opened|used|used up|ate|finished|
        finished off|opened up|are opening|am opening|finished up|cracked open) {count=1} (the|
        our|my) [last|first|only] <jars-or-size> of [<the>] {target:open} [for (supper|dinner|
        lunch|breakfast)|tonight|today|last night|this (morning|afternoon|evening)|from the pantry]
      `,
      "{count} <jars-or-size> of [<the>] {target:open} (opened|used|gone|eaten)",
      `
        [<we>|i|i have|we have|just|i just|we just] [just] (opened|open|opening|cracked open|used|
        used up|ate|broke open|broke into|popped open|popped|finished|finished off|took|eaten|
        finished up|went through|opened up|am opening|are opening|am going to open|brought up|
        started|dipped into) [up] {count} <jars-or-size> of [<the>] {target:open} [for (supper|
        dinner|lunch|breakfast)|tonight|today|last night|this (morning|afternoon|evening)|from the pantry|from the shelf|off the shelf]
      `,
      `
        [<we>|i|i have|we have|just|i just|we just] [just] (opened|cracked open|used|used up|ate|
        broke open|popped open|finished|finished off|eaten|opened up|am opening|are opening)
        {count} [<jars-or-size>] [of] [{target}] [for (supper|dinner|lunch)|tonight|today|from the
        pantry|from the shelf]
      `,
      `
        [<we>|i|i have|we have|just] (opened|cracked open|used|opened up) {count} {target} (jar|
        jars|pint|pints|quart|quarts)
      `,
      `
        {count} <jars-or-size> of [<the>] {target:open} [is|are|got|was|were] (opened|open|used|
        eaten|used up|gone) [for (supper|dinner|lunch)|today]
      `,
      "take {count} <jars-or-size> of [<the>] {target:open} off the shelf",
      `
        <opening> {count} {spoiled=true} <gone-bad> <jars-or-size> of [<the>] {target:open} [<off>]
      `,
      `
        <opening> {count} <jars-or-size> of [<the>] {target:open} [and|but|which|that] [it|they|one]
        [is|are|was|were|had|has|looked|had been|smelled|smells] {spoiled=true} <gone-bad> [<off>]
      `,
      `
        [<came-upon>] {count} {spoiled=true} <gone-bad>
        <jars-or-size> of [<the>] {target:open} [<off>]
      `,
      `
        [<came-upon>] {count} <jars-or-size> of [<the>]
        {target:open} [that|which] [is|are|was|were|has|have|had] [gone] {spoiled=true} <gone-bad>
        [<off>]
      `,
    ],
  },
  {
    intent: "taste",
    phrases: [
      `
        <taste-lead> {target:open} [today] [gets|is|got|and it is|comes out at|i would say|i give
        it|scores|i say] {scores}
      `,
      "{target:open} <taste-word> [score|scores|is|gets] {scores}",
      `
        <taste-lead> [today] {target:open} [out] [gets|is|got|scores|we give it|they are|it is]
        {scores}
      `,
      "<taste-lead> {scores} (for|on) {target:open}",
      "{scores} (for|on) {target:open}",
      `
        [<taste-lead>] [the] {scoreName:score-name} (on|for|of|in) [<the>] {target:open} (is|gets|
        was|rates|got|are|scores) [a|at|about] {score:number}
      `,
      "[i|we] [would] (give|gave|rate|rated|score|scored) {target:open} [a|at|as] {scores}",
      "(for|on) [<the>] {target:open} [i|we] [would] [say|give|gave|rate|rated|score|scored] {scores}",
      "[the|its|their] {scores}",
      `
        {target:open} (get|gets|got|scored|score|scores|rate|rates|is|are|has|have|earn|earns) [a]
        {scores}
      `,
      "{target:open} {scores}",
      "<taste-lead> {scores}",
      `
        {taster:person} [would] (gives|gave|give|rates|rated|scores|scored|says|said|tasted|tried)
        [<the>] {target:open} [is|are|was|gets|got|a|at|as|and (gives|gave) it|and (says|said) [it
        is]] {scores}
      `,
      "<taste-lead> {target:open} (for|by|with) {taster:person} {scores}",
      "(for|from|by) {taster:person} [<the>] {target:open} [is|are|gets|got] {scores}",
      "{taster:person} <taste-word> [of] [<the>] {target:open} [is|are|gets|got] {scores}",
    ],
  },
  {
    intent: "done",
    phrases: [
      "[all] done with (this|that) [one|step|part|bit|job|stage|lot]",
      "that [about|just about|pretty much] (does|did) it [for (that|those|the {target}|now)]",
      `
        (i|we) (have|got|have got) [<the>] [all the] {target=jars} jars (out|up and out|out of the
        canner|on the rack|on the towel)
      `,
      `
        [<the>] ({target}|<things>) (are|is) [all|now] in (the jars|jars|the crock|the brine|the
        pot|ice|the ice|the freezer|the dehydrator|the fridge)
      `,
      "[<the>] ({target}|<things>) [all] <did> and <did>",
      "<things> and <things> (are|is) [all] (<done>|<did>|ready)",
      `
        {target=jars} (pulled|i pulled|we pulled|i have pulled|we have pulled|just pulled|i just
        pulled|unloaded|i unloaded|lifted|i lifted|we lifted|i have lifted|pulling|i am pulling|
        lifting|i am lifting|removing|removed|hoisting|taking|taking up|hauling) [<the>|all the|all] (jars|pints|quarts|half pints|load|rack)
        [<when>]
      `,
      "that takes care of (that|it|them|those|the {target}|that one)",
      "(onward|on) [to] (the next|the next one|next)",
      "on with (it|the next|the next one)",
      `
        {target=jars} [<the>] [{number}] (jars|pints|quarts) (are|is) (coming|going) out [of the
        canner|of the water] [now]
      `,
      `
        [<it>|<we>|i|everything|all] [am|is|are|has|have|got|all|has all] [been|now|just|all|
        finally|pretty much] <done> [with it|with that|with this|with those|with them|here|now|
        too|as well] [<when>]
      `,
      `
        [<we>|i|just|i just|we just|i have|we have|have|i have just] (finished|done|completed|got
        done|got through|finished up|wrapped up|got finished|got it|made it) [with] [it|that|this|
        them|those|those ones|that one|that step|this step|the step|that part|that bit|the last
        one|that job|that lot|with them|with it|up|up with that|the last of it|the last of them|
        everything] [<when>]
      `,
      "next [one|step|please|thing|up|job|task|stage|bit|part]",
      "(moving|move) (on|right along|right on|ahead)",
      `
        (move|moving|go|going|let us move|let us go|on|let us get|get) [on] to (the next|the next
        one|the next step|the next thing|the next stage|the next part|next|the next job|the next
        bit)
      `,
      `
        (done|finished|ready|i am ready|we are ready|all ready|i am all ready) [and ready] (for|to
        do|to go to|to move on to|with) (the next|the next one|the next step|what is next|more|the
        next thing|next|the next stage|the next job|whatever is next)
      `,
      `
        [i am|we are|all|i am all|it is|it is all|that is|everything is|they are|they are all]
        (ready|set|done and ready) [to go] [now|here]
      `,
      `
        that is (that|it|it then|the last one|the last of it|the last of them|them all|all of it|
        all of them|the lot|everything|all done|all|a wrap|me done|the end of that|everything
        done|the last of those|one done|job done|behind us|off the list)
      `,
      `
        (check|check that off|tick|tick that off|mark it done|mark that done|mark this done|check
        that one off|cross that off|cross that off the list|cross it off|consider it done|mark it
        finished|mark that as done|mark it as done|mark that complete|job done|mission
        accomplished|there we go|step done|all finished|stage done|step finished|step complete|
        stage complete|we are there|finito|and done|done here|nothing left to do here)
      `,
      `
        (mark|check off|tick off|cross off) [<the>] ({target}|<doing>) [as] [done|complete|
        finished|off|off the list]
      `,
      `
        [<the>] ({target}|<things>) (is|are|has|have|got|all) [been|now|just|all|both|finally|all
        now] (<done>|ready|<did>|in place|ready to go|all ready|<did> and <did>|<did> <did> and
        <did>) [now|too|as well|up] [<when>]
      `,
      `
        (everything|all|they|it|that|that one|this one|every one|all of them|all of it|the lot|we|
        those) [is|are|has|have] [been|now|all|both|finally] (<did>|<did> and <did>|<did> and
        ready|<did> <did> and <did>|in place|ready to go) [now|up] [<when>]
      `,
      "[all] <did> [and <did>] [now|up] [<when>]",
      "[all] <did> and ready [to go]",
      `
        [<we>|i|just|i just|we just|i have|we have|have|i have just|i am|we are|am|all] [just|all|
        now] (finished|done|through|done with|finished with|through with|completed|got done|got
        done with|finished up|wrapped up|am done with|got through|all done with|got finished|over
        with) [with] [all|up] [<the>] (<doing>|<doing> [up|of] [<the>] ({target}|<things>|them|it|
        those)|<doing> and <doing>|{target}|<doing> and <doing> [<the>] ({target}|<things>))
        [<when>]
      `,
      `
        [the] lids [are] [all] on [and] [the] bands [are] [all] on [and] [all] (done|finished|ready)
        [<when>]
      `,
      `
        (i am|we are|i believe i am|i am all) (through|finished|done) with (that|this) (bit|part|
        step|job|lot)
      `,
      `
        (that is|this is) me (finished|done|through) [with [<the>] ({target}|<things>|<doing>)]
        [<when>]
      `,
      `
        [<the>|all the|that is the|that is all the|that is] <doing> [of {target}] (is|are|has|has
        been) [been|now|all|finally] <done> [now] [<when>]
      `,
      "[the] <doing> [<the>] ({target}|<things>) is [all] <done> [<when>]",
      "that is [all] [<the>] (<doing>|{target}|<things>) [all] (<done>|<did>)",
      "[<the>] (<doing>|{target} <doing>) <done>",
      "[<the>] {target} <done>",
      `
        [i|we] [have] [just|all|now] [got] [all] (<did>) [all|up] [<the>] [all the] ({target}|
        <things>|them|it) [<when>]
      `,
      `
        [i|we] [have] [just] <did> and <did> [<the>] ({target}|<things>|them|it|everything)
        [<when>]
      `,
      "[i|we] have [just] <did> (everything|all of it|all of them|it all|them all)",
      `
        (got|i got|we got|i have got|we have got|i have|we have) [all] [<the>] ({target}|<things>|
        everything|them|it|them all|it all|all of it|all of them) [all] (<did>|<done>|ready) [up|
        now] [<when>]
      `,
      "[i am|we are] [all] (done|finished|through) <doing>",
      "[<the>] (stage|step|job|task|prep|batch|process|timer) is [now|all] <done>",
      "all the ({target}|<things>) are (<done>|<did>|<did> and <did>)",
      "<done-jars-out>",
      "[<the>] {target} is through",
      "i have <did> (<things>|{target}) and <did> (<things>|{target}|them)",
      "[<the>] ({target}|<things>) <did>",
    ],
  },
];

/** Lists that belong to these families alone. */
export const JAR_LISTS: Readonly<Record<string, readonly string[]>> = {
  "not-full": [
    "[because|since|as] (it is|they are) (not [quite] full|only half full|only part full|too low)",
  ],
  opening: [
    "[<we>|i|i have|we have|just|i just|we just] [just] (opened|opened up|cracked open|opening)",
  ],
  "came-upon": ["(there is|there was|i found|we found|i have|found)"],
  "gone-bad": [
    "(spoiled|spoilt|moldy|bulged|bulging|swollen|leaking|leaky|foaming|foamy|spurted|rotten)",
    "(bad|gone bad|gone off|went bad|off|unsealed|come unsealed|came unsealed|open already)",
    "(smelled bad|smells bad|smelled off|smells off|smelled wrong|not sealed|no longer sealed)",
  ],
  off: ["(on|from|off) the shelf", "(in|from) the (pantry|cellar|basement)", "today", "tonight"],
  "jars-or-size": [
    "{size}",
    "{size} jars",
    "jars",
    "jar",
    "{size} jar",
    "jars of {size}",
    "of them",
    "regular jars",
    "(jars|jar) {size}",
  ],
  "filled-state": ["<filled-word> [and] [<filled-word>] [and] [<filled-word>]"],
  "filled-word": [
    "filled",
    "full",
    "packed",
    "lidded",
    "capped",
    "ready",
    "wiped",
    "done",
    "ready to go",
    "topped up",
    "sealed up and ready",
    "ladled",
    "loaded up",
    "filled up",
    "ready for the canner",
    "waiting",
    "up",
    "good to go",
  ],
  tally: [
    "there is",
    "here is",
    "that is",
    "that makes",
    "makes",
    "it makes",
    "we have",
    "i have",
    "we have got",
    "i have got",
    "got",
    "there are",
    "here are",
    "that gives us",
    "that gives me",
    "it gave us",
    "it came to",
    "that comes to",
    "comes to",
    "we got",
    "i got",
    "we ended up with",
    "ended up with",
    "we made",
    "made",
    "i made",
    "we are at",
    "i am at",
    "it is",
    "they are",
    "so that is",
    "all together",
    "altogether",
    "in all",
    "we are up to",
    "that makes it",
    "that brings us to",
    "now we have",
    "that comes out to",
    "came out to",
    "it came out to",
    "came to",
    "it comes to",
    "came out with",
    "i come out with",
    "that would be",
    "that will be",
    "all told",
    "we are looking at",
    "looks like",
    "a total of",
    "total of",
    "that was",
    "gives us",
    "that fills",
  ],
  "not-sealed-tail": [
    "{count} [<of-them>|jar|jars|lid|lids]",
    "<numbered>",
    "[jar|jars|number|numbers] {jars}",
    "for <numbered>",
  ],
  "set-aside-one": [
    `
      {count=1} (the|my|our) (last|partial|odd|short|part filled|half full) (jar|one) [is] [only]
      [half full|part full|not full|short|did not fill|does not fill]
    `,
    `
      {count} [jar|jars|pint] (is|was|came up|came out|ended up) [only] (half full|part full|
      short|not full|partly full|half filled)
    `,
  ],
  "taste-lead": [
    "taste",
    "tasted",
    "tasting",
    "i tasted",
    "we tasted",
    "taste test",
    "tasting notes",
    "tasting notes for",
    "taste of",
    "taste score for",
    "taste scores for",
    "score for",
    "scores for",
    "taste test of",
    "taste test for",
    "the taste of",
    "tasting of",
    "taste notes",
    "tasting note for",
    "rate",
    "score",
    "rating for",
    "trying",
    "tried",
    "i tried",
    "we tried",
    "taste for",
    "taste rating for",
    "record taste for",
    "sampled",
    "i sampled",
    "just tasted",
    "record a taste of",
    "opinion on",
    "for",
  ],
  "taste-word": ["taste", "tasting", "taste test", "tasted"],
  "done-jars-out": [
    "{target=jars} <took> <jars-hot> <out-of> [<when>]",
    "{target=jars} <took> out <jars-hot> [<when>]",
    `
      {target=jars} (unload|unloaded|unloading|i unloaded|i am unloading|we unloaded|emptied|i
      have unloaded|i emptied|empty|i will unload|let us unload) [<the>] (canner|pot|load|jars|
      water bath|rack|pressure canner) [<when>]
    `,
    `
      {target=jars} [<the>|all|all the|my|our] [{number}] (jars|pints|quarts|half pints|load) (is|
      are|came|have come|have been taken|are all|are now|are safely|have been lifted) [all|now|
      safely] (<out-of>|on the towel|on the rack|on the counter|on the towels|on a towel|cooling|
      on the cooling rack|resting|on the table|out cooling) [<when>]
    `,
    `
      {target=jars} (everything|all of them|they|they all|the whole load|the lot) (is|are|came)
      [all|now] (<out-of>|on the towel|on the rack|on the counter) [<when>]
    `,
    `
      {target} (is|are|came|have come|has come) [all|now] (out of the canner|out of the water
      bath|out of the water|out of the pot|out of the canner now|out) [<when>]
    `,
    `
      <took> {target} (out of the canner|out of the water bath|out of the water|out of the pot|
      out) [<when>]
    `,
    "{target=jars} jars [are] (out|out now|out of the canner|on the towel)",
  ],
};
