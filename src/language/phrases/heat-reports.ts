// data table
import type { Family } from "./family.ts";

/** Reports from the stove: boil, pressure, steam, water and temperature. */
export const HEAT_REPORTS: readonly Family[] = [
  {
    intent: "boiling",
    phrases: [
      "<boil-report> [<when>|<lasting>] [[<and>] {covered=true} <covered>]",
      "<covered> {covered=true} [and] <boil-report> [<when>]",
      "<boil-report> [and] [everything is|all is|all] {covered=true} covered [<when>]",
      "(since|as of) {at:past} <boil-report>",
      "{at:past} <boil-report>",
      "(at|on) [the] [full] [rolling] boil and holding",
      "(we have|there is) [got] lift off",
    ],
  },
  {
    intent: "boil-lost",
    phrases: [
      "(it|{target}) went (flat|still|quiet) [no more boil|there is no boil|no boil] [<when>]",
      `
        [(<it>|{target}|<we>)] [has|have|is|just|has just] (went|gone|fell|fallen|dropped|come|
        came|slipped|going|drifted|is|are|falling|dropping|coming) (off|out of|below|under|from)
        (the|a|its|it is|full|rolling|my) [<full>] (boil|boiling) [<when>]
      `,
      `
        [(<it>|{target}|<we>)] [has|have|just|has just|is] (went|fell|fallen|dropped|gone|
        dropping|falling|down) [back] [down] (below|under) (boiling|a boil|the boil|a rolling
        boil|the boiling point) [<when>]
      `,
      `
        [(<it>|{target}|<we>)] [has|have|just|has just] (stopped|quit|ceased) (boiling|bubbling|
        rolling) [<when>]
      `,
      `
        [(<it>|{target}|<we>)] [is|are] (no longer|no more) <boil-state> [<any-more>] [<when>]
      `,
      "(<it>|{target}|<we>) (is|are) not <boil-state> (any more|any longer) [<when>]",
      "not <boil-state> (any more|any longer) [<when>]",
      "[(<it>|{target})] no longer (boils|boiling) [<when>]",
      `
        <we> [have|just|have just] (lost|lose|are losing|losing) [the|our|my|its|it is] [<full>]
        [<full>] (boil|rolling boil|boiling) [<when>]
      `,
      `
        [just] (lost|losing) [the|our|my] [<full>] [<full>] boil [{target}|in {target}|on
        {target}] [<when>]
      `,
      `
        (<it>|{target}) [has|have|just|has just|is] (lost|losing|lost it is|lose) [the|its|it is|
        their] [<full>] [<full>] boil [<when>]
      `,
      `
        [the|our|my] [<full>] boil [has|is|has just|just] (<gone>|lost|stopped|over|went out|went
        off|went away|went down|went|been lost|broken|faltered|fell off|dropped|fell|fell away|
        gave out|given out|let up|gone out|gone down|gone off|gone away|gone flat) [<when>]
      `,
      `
        [<the>] boiling [has|is|just|has just] (stopped|quit|died down|ended|gone|died|let up|
        slowed down|ceased|died away|fizzled|fizzled out) [<when>]
      `,
      `
        [(<it>|{target})] [has|just|has just|is] (went|gone|dropped|come|fell|fallen|died|dying|
        calmed|settled|dropping|down) [back] [down] to (a|just a|only a|nothing but a|barely a|
        bare) (simmer|bare simmer) [<when>]
      `,
      `
        (<it>|{target}|<we>) (is|are) (back|down|back down) to [just|only|barely|hardly] [a|a bare]
        (simmer|simmering) [<when>]
      `,
      "(<it>|{target}) (has|have) gone (flat|still|quiet) [<when>]",
      "no [more] boil [any more|any longer|now|in {target}] [<when>]",
      "there is no [longer a] boil [any more|now] [<when>]",
      `
        (<we>|{target}|<it>) (do|does) not have [a|the|its|our] [<full>] [<full>] boil (any more|
        any longer) [<when>]
      `,
      "[the|our] [<full>] boil was (lost|gone|interrupted|broken) [<when>]",
      "<it> (stopped|quit) [boiling|bubbling] on (me|us) [<when>]",
      "boil (lost|gone|broken|interrupted) [in {target}|on {target}|{target}] [<when>]",
      "(<it>|{target}) (is|are) off the boil [<when>]",
      "off the boil [<when>]",
      "<boil-lost-core> <when>",
    ],
  },
  {
    intent: "pressure",
    phrases: [
      `
        [<gauge-subject>] <at-value> {value:number} <pressure-unit> [<gauge-tail>] [<gauge-tail>]
        [<when>]
      `,
      `
        [<gauge-subject>] [<got>|<got> a steady|<got> about] {value:number} <pressure-unit>
        [<gauge-tail>] [<gauge-tail>] [<when>]
      `,
      `
        <got> (it|her|him|them|everything|the canner) [<still>] [holding|running|sitting|steady]
        <at-value> {value:number} <pressure-unit> [<gauge-tail>] [<when>]
      `,
      "<gauge-name> [<at-value>] {value:number} [<gauge-tail>] [<gauge-tail>] [<when>]",
      `
        [<gauge-subject>] (<got>|<at-value>) {value:number} (on|showing on|by) <gauge-name>
        [<gauge-tail>] [<when>]
      `,
      "{value:number} (on|showing on) <gauge-name> [<gauge-tail>] [<when>]",
      "{value:number} [and] (holding|holding steady) [on <gauge-name>] [<when>]",
      `
        [<we>|<it>] [am|is|are|have|has] [<got>] <at-value> (target|full|working|our|the)
        [<gauge>] [pressure] [of|at|which is] {value:number} [<pressure-unit>] [<when>]
      `,
      `
        (we have reached|reached|we are up to|we hit|up to|we have got|holding|at) [target|full]
        pressure [of|at] {value:number} [<pressure-unit>] [<when>]
      `,
    ],
  },
  {
    intent: "pressure-lost",
    phrases: [
      `
        [<the>] (pressure|gauge|needle|dial|pressure gauge) <dropped> (off|away|down|low|too low|
        low on me|down on me|back|way down) [<when>]
      `,
      `
        [<the>] (pressure|gauge|needle|dial|pressure gauge) (dropped|fell|has dropped|has fallen|
        is dropping|is falling|sank|slipped|has slipped|drops|dipped|slid|went down|is sinking)
        [off|away|down|low] [on me|on us|again|too low|now|below target] [<when>]
      `,
      `
        [<the>] (pressure|gauge|needle|dial|{target}|it) <dropped> [back] [down] (below|
        under|less than) [the] [target|pressure|{value:number}|where it should be|where it needs to
        be|what we need|what it should be|where we need it] [<psi>|pressure|mark|line|target]
        [<when>]
      `,
      `
        [<the>] (pressure|gauge|needle) (dropped|fell|sank|slipped|dipped|has dropped|has fallen|
        has slipped|has dipped|slid|went down|dropped off|fell off) [down] to {value:number}
        [<psi>|<kpa>] [<when>]
      `,
      `
        <it> (dropped|fell|sank|slipped|has dropped|has fallen|dipped|has slipped) [down] to
        {value:number} (<psi>|<kpa>) [<when>]
      `,
      `
        <we> [have|just|have just|are] (lost|losing|lose) [the|our|all|some|all the] [steam]
        pressure [<when>]
      `,
      `
        [<we>|i] [have|are] [just] (lost|losing|lose) [the|our|all|our] pressure [in|on|at]
        [<the>] {target} [<when>]
      `,
      "(lost|losing|just lost) [the|our|all] pressure [<when>]",
      `
        (<it>|{target}) [has|just|has just|is] (lost|losing|lost it is|lost its) [its|it is|the|
        some|all] pressure [<when>]
      `,
      `
        [the] pressure (is|has) [been] (lost|gone|low|too low|gone down|dropping|falling|below
        target|off|under|not holding|going down|sinking|down|way down|slipping|gone low|fallen|
        dropped) [<when>]
      `,
      `
        (we are|it is|we are now|we have gone|it went|it has gone|it fell|it dropped|we dropped|we
        fell|we slipped|it slipped|we have dropped|it has dropped) (below|under) [the] (pressure|
        target|target pressure|{value:number} <psi>|pressure target) [<when>]
      `,
      "pressure (lost|drop|gone|down|dropped|fell) [<when>]",
      "no longer (at|up to|holding) pressure [any more] [<when>]",
      "not (at|up to|holding) pressure any more [<when>]",
      `
        (<it>|{target}|<we>) (is|are) not (at|holding|holding its|up to) pressure (any more|any
        longer) [<when>]
      `,
      `
        (<it>|{target}|<we>) (is|are) no longer (holding|holding its|holding the|keeping|at)
        pressure [any more|any longer|now] [<when>]
      `,
      "the pressure (will not|does not|would not|did not) hold [<when>]",
      "the pressure did not (hold|stay up|stay) [<when>]",
      `
        [<the>] (steam|steaming|venting|column of steam|plume of steam|plume) [has|have|just|has
        just|is|was] (stopped|quit|gone|died|died down|died away|lost|let up|ended|broken|gave
        out|petered out|faltered|dropped off) [coming|coming out] [on me|now] [<when>]
      `,
      `
        (<it>|{target}|<we>) [has|have|just|has just] (stopped|quit) (steaming|venting|blowing
        steam|letting off steam|putting out steam) [now] [<when>]
      `,
      "(no [more] steam|there is no [more] steam) [any more|any longer|now|coming out] [<when>]",
      `
        [<we>] [have|just|have just] (lost|losing) [the|our|all the] [column of] steam [<when>]
      `,
      "[<the>] <weight> [has|have|just|has just] (stopped|quit) [<rocking>] [on me] [<when>]",
      `
        [<the>] <weight> is (no longer <rocking>|not <rocking> (any more|any longer)) [<when>]
      `,
    ],
  },
  {
    intent: "weight-rocking",
    phrases: [
      `
        [<the>] <weight> [is|are|has|have|has been] [<still>] [started|begun|began|begins|starts]
        [to] [now] [<still>] <rocking> [<steady>] [<steady>] [<when>|<lasting>]
      `,
      `
        [<the>] <weight> [has|have|just|is|has just] (started|started up|got going|took off|came
        alive|come alive|going|moving|got moving|woke up|kicked in|come on) [<steady>] [<steady>]
        [<when>]
      `,
      `
        <it> (is|has|has started|started|has begun|just started|began|starts) [<still>] [to]
        <rocking> [<steady>] [<steady>] [<when>|<lasting>]
      `,
      "<rocking> [<steady>] [<steady>]",
      `
        (<we>|i|<got>) [have|got|have got|hear|see|can hear] [a|the|<the>] [<full>] [weight]
        (rocking|jiggling|weight rocking|jiggle|rock|weight jiggling|rattle|rocking weight|jiggler
        going|weight going|weight dancing|weight rattling) [<steady>] [<when>]
      `,
      "(there goes|here goes|there is) the <weight> [<rocking>] [<steady>]",
      "[<the>] <weight> is at a [<full>] (rock|jiggle|rattle|wobble) [<steady>]",
    ],
  },
  {
    intent: "venting",
    phrases: [
      `
        [(<it>|{target}|<we>|the vent|the petcock|the pipe|the vent pipe)] [is|are|has|have] [has
        started|started|begun|just started|began] [<still>] [to] (venting|vent|exhausting|blowing
        off|steaming) [<steady>] [steam|air] [<steady>] [<from-vent>] [<when>|<lasting>]
      `,
      `
        [<got>|<we> see|i can see] [a|the] [good|nice|strong|steady|full|solid|hard|healthy|big|
        continuous|constant] [good|steady|strong|solid] (steam|stream of steam|column of steam|jet
        of steam|plume of steam|plume|flow of steam|head of steam|funnel of steam|funnel|steam
        stream|steam column|steady steam|cloud of steam|steam plume) [is|are|now] [<steaming>]
        [<steady>] [<from-vent>] [<steady>] [<when>|<lasting>]
      `,
      `
        [<the>] steam (is|has|has been|are) [<still>] [started|begun|been] [to] [<still>]
        <steaming> [<steady>] [<from-vent>] [<steady>] [in a steady stream|in a column|in a steady
        column] [<from-vent>] [<when>|<lasting>]
      `,
      `
        (<it>|{target}|the vent|the petcock|the vent pipe|the pipe) (is|has|has started|started)
        [<still>] (steaming|blowing|blowing steam|letting off steam|puffing|putting out steam|
        puffing steam|throwing steam|spouting steam|venting steam|blowing a steady stream|pouring
        steam|shooting steam|pouring out steam|whistling steam|blowing off steam|letting out
        steam|letting steam out) [<steady>] [<from-vent>] [<steady>] [<when>|<lasting>]
      `,
      "full steam [<from-vent>]",
      "steam [<from-vent>] [<steady>]",
      "[the] vent is (open and steaming|going|blowing|running|steaming) [<steady>]",
      "(<we>|i) (have|got|see|have got) [the] (canner|vent) (venting|steaming) [<steady>]",
    ],
  },
  {
    intent: "loaded",
    phrases: [
      `
        [<the>|all <the>|all] [{count:whole}] (jars|pints|quarts|half pints) [are|is] [all|now]
        (loaded|loaded up|loaded in|in place|in the rack and down) [<when>]
      `,
      `
        [<all-in-canner>] (is|are|went|have gone|go|got|have been put|have been lowered|are now|
        are all|are all now|are down|are safely|has gone|have all gone|all went) [now|all|safely|
        already|lowered|loaded|down|back] (in|into|inside|down in|down into|in the water of|under
        water in) [the] [<the>] (canner|pot|water bath|bath|water|kettle|pressure canner|canning
        pot|water bath canner|hot water|big pot|rack) [now|and the lid is on|with the lid on|lid
        is on] [<when>]
      `,
      `
        [the|all the|all|all my|my|our] [{count:whole}] (jars|pints|quarts|half pints|load) (is|
        are|went|have gone|got) [all|now|already|safely|back] in [<when>] [<lid-on>]
      `,
      `
        (everything|the load|the rack|the first load|the second load|the next load|the last load)
        (is|went|has gone|has gone back) [now|all] in [<when>]
      `,
      `
        [<the>] (canner|pot|load|rack|{target}|water bath|pressure canner) [is|has been] [now|all|
        fully] (loaded|loaded up|full of jars|full|filled with jars|loaded and ready|all loaded)
        [<lid-on>] [<when>]
      `,
      `
        [<we>|i] [have|just|have just] (put|loaded|lowered|set|placed|dropped|got|lower|put in|
        loaded in|eased|slid) [<the>|all the|all|all of the] [{count:whole}] (jars|load|rack|
        pints|quarts|half pints|last jar|first load|second load|next load|last load) [down] (in|
        into|in the canner|into the canner|into the water|in the water|in the pot|into the pot|in
        the bath|into the bath|down|in the water bath|in the pressure canner|into the water bath|
        into the pressure canner|into the hot water) [now] [<lid-on>] [<when>]
      `,
      `
        [<we>|i] [have|just|have just] (loaded|filled|loaded up|finished loading|done loading|got
        loaded) [<the>] (canner|pot|water bath|rack|pressure canner|kettle) [up] [<lid-on>]
        [<when>]
      `,
      "[<we>|i] [am|are|have] (done|finished) loading [<the>|up] [canner|pot|jars] [<when>]",
      "[all] (loaded|loaded up|loaded in) [now|and ready] [<lid-on>] [<when>]",
      "(jars|all jars|pints|quarts|load) [is|are] in [the canner|the pot|the water|the bath]",
      "[the] load [{number}|one|two|three] is in [the canner|the pot] [<when>]",
      "[<the>] canner [has] [got] (its|it is|all its|all the|the|a full) (load|jars) [in it|in]",
      "[the] jars are (down|lowered|submerged) [in the canner] [<when>]",
      `
        [<we>|i] (have|got|have got) [<the>] [all the] jars in [the canner|the water|the pot]
        [<when>]
      `,
      `
        [<we>|i] [have|got|have got] [<the>] (canner|pot|rack|kettle|water bath|jars|load) [all]
        loaded [up] [<lid-on>] [<when>]
      `,
      `
        [<the>] rack (is|has been|has) (down|lowered|gone down|in|dropped) [in the water|in the
        canner] [with the jars] [<when>]
      `,
      "(<we>|i) [have|just] lowered the rack [of jars] [into the canner|in] [<when>]",
      `
        [<the>] {target} (is|are|went) (in|into) the (canner|water bath|pressure canner|pot|water|
        bath) [now] [<when>]
      `,
      "[<the>] (beets|beans|pickles|tomatoes) (is|are) in the canner",
      `
        (i|we) [have|just|have just] (put|got|set|lowered|loaded|placed) [all] [<the>] {target} [jars]
        [all] [down] (in|into) the (canner|water bath|pressure canner|bath) [now] [<when>]
      `,
    ],
  },
  {
    intent: "water-low",
    phrases: [
      `
        [<the>|{target}] water [level] [<in-pot>] [is|has|has gotten|has got|has gone|is getting|
        looks|seems|getting|gets|has become|has been] [<bit>] [<bit>] (low|down|short|too low|
        getting low|going down|boiled down|boiled away|running low|running out|down a lot|dropped|
        down too far|dropping|lower than it was|lower than it should be|low on me|sinking|boiling
        away|boiling off|boiling down|running down|disappearing|shallow|falling|going) [<in-pot>]
        [<when>]
      `,
      `
        [<the>] water [level] [<in-pot>] [is|has|has gone|went|dropped|fell|has dropped|has
        fallen|is down|has boiled|boiled|came|sank|has come|is getting|has sunk|got|has got] [<bit>]
        [down|now|lower] (below|under|beneath|past|down past|down to|than) [<the>|the top of the|
        the tops of the|the level of the] (lids|jars|tops|lid|tops of the jars|jar tops|rims|
        necks|lid tops|jar lids) [<when>]
      `,
      `
        (<we>|{target}|<it>|i) (am|is|are|has|have) [<bit>] [<bit>] [getting|running|gone|gotten]
        [<bit>] ((low|short|down|shy|dry) (of|on|in)|out of) water [level] [<in-pot>] [<when>]
      `,
      "[<bit>] (running|getting) [<bit>] (low|short|dry|down) [of|on] [water] [<in-pot>] [<when>]",
      `
        <lids> (is|are) [now|all|no longer|not] [starting to be|starting to|beginning to]
        (showing|show|uncovered|exposed|sticking out|poking out|peeking out|above the water|above
        water|not covered|poking up|sticking up|sticking out of the water|poking out of the water|
        poking through|no longer covered|visible above the water|above the waterline) [any more|
        of the water|now] [<when>]
      `,
      `
        [<the>|all the] (lids|lid|tops|jar tops|lid tops|tops of the jars) (is|are) [now|all]
        (out of the water|coming out of the water|bare|dry|high and dry|out of water|out) [now]
        [<when>]
      `,
      `
        <lids> (is|are) (no longer|not) (covered|under water|under the water|under) [any more|any
        longer|now|with water] [<when>]
      `,
      `
        (i|we|you) (can|could) see (the|all the|some of the|some) (lids|jar tops|tops of the jars|
        tops|lids above the water|lids out of the water|tops of the lids|jars sticking out|jar
        lids) [<when>]
      `,
      `
        (some of the|a few of the|a couple of|one of the|two|some|a few|one|the tops of the)
        (lids|jars|lid|jar|jar tops) (is|are) (showing|uncovered|exposed|sticking out|poking out|
        out of the water|above the water|not covered|no longer covered|bare) [<when>]
      `,
      "there is not enough water [in there] [left] to cover [<the>] (jars|lids|tops) [any more|now]",
      `
        [<the>] (tops of [the] (jars|lids)|jar tops|lids|jars) (is|are) [now|all|starting to be]
        (showing|sticking up|poking up|standing) (above|out of|over) the (water|waterline) [now]
        [<when>]
      `,
      "the lids have come (out of the water|uncovered|up out of the water) [<when>]",
      `
        [<the>] jars (are|is) (not|no longer) [all|quite|fully] (covered|under|under water|under the
        water|covered with water|covered by water) [any more|any longer|now] [<when>]
      `,
      `
        [<the>] water [level] was [<bit>] [<bit>] (low|down|short) [(so|and|but) i|i] [have|just|
        have just] (topped (it|it back|the canner|the pot|up)|added|filled|poured) [in|it|up|some|
        more|a little|boiling|hot|water|off|back|again] [boiling|hot|water|up|more] [water] [<when>]
      `,
      `
        i [have|just|have just] (topped it up|topped it off|topped up|topped off|added some|added
        more|added boiling water|topped it up with boiling water) [because|since|as] [<the>] water
        [level] was [<bit>] [<bit>] (low|down|short) [<when>]
      `,
      `
        (there is not|not|there is hardly) enough water [<in-pot>] [over <the> (lids|jars)|left]
        [any more] [<when>]
      `,
      "[the] water does not cover <the> (lids|jars) [any more] [<when>]",
      "low [on] water [<in-pot>] [<when>]",
      "low (in|on) [<the>] water [<when>]",
      `
        [<the>] water (is|has) (not|no longer) (covering|over) <the> (lids|jars) [any more]
        [<when>]
      `,
      `
        [<the>] {target} (is|has) [almost|nearly|about] (boiled dry|boiling dry|out of water|dry|
        boiled down|going dry|run dry|gone dry) [<when>]
      `,
      "the water needs topping up [<when>]",
      "[<the>] {target} (needs|could use|wants) [more|some|some more|a bit more] water [<when>]",
    ],
  },
  {
    intent: "temperature",
    phrases: [
      "<it> [<at-value>|<fell-to>] {value:temperature} [<degrees>] [<temp-tail>]",
      `
        <temp-subject> [<at-value>|<fell-to>] {value:temperature} [<degrees>] [{unit=F}
        <fahrenheit>] [<temp-tail>] [<temp-tail>] [<when>]
      `,
      `
        [<temp-subject>|<it>|<we>] [<at-value>|<fell-to>|<got>] [a reading of|a temperature of|a
        temp of|a] {value:number} <temp-unit> [<temp-tail>] [<temp-tail>] [<when>]
      `,
      `
        (<it>|<we>) (<at-value>|<fell-to>) {value:temperature} [<temp-tail>] [<temp-tail>]
        [<when>]
      `,
      `
        <got> [a] {value:temperature} [<degrees>] (in|on|for|at) ({target}|<thermometer>)
      `,
      `
        <got> a (reading|temperature|temp) of {value:number} [<temp-unit>] [<temp-tail>]
      `,
      "{value:temperature} (on|by|according to) <thermometer>",
      `
        (temperature|temp|reading) [of|in] [<the>] {target} [<at-value>] {value:number}
        [<temp-unit>]
      `,
      `
        <the> (temperature|temp) (of|in) {target} [<at-value>|<fell-to>] {value:number}
        [<temp-unit>] [<when>]
      `,
      "[<the>] {target} [temperature|temp] {value:number} <temp-unit>",
      `
        (measured|i measured|i get|getting|i am getting|i read|read|took a reading of|i see|i am
        reading|we are reading|we are getting|i am seeing) {value:number} [<temp-unit>]
        [<temp-tail>]
      `,
      `
        [<temp-subject>|<it>|<we>] [<at-value>|<got>] {value:temperature} [<temp-unit>] <at-boil>
        {boiling=true}
      `,
      `
        [<the> water|{target}|<it>|<we>] [<is>] [<still>] (boils|boiling|boil|boiled) (at|by)
        [<approx>] {value:temperature} [<temp-unit>] {boiling=true} [now]
      `,
      `
        [<it>|{target}|<we>] [<is>] [at] (a|the) [<full>] [<full>] boil (at|is at|is) [<approx>]
        {value:temperature} [<temp-unit>] {boiling=true}
      `,
      `
        [<it>|{target}|<we>] [<is>] (at|on) (a|the) [<full>] [<full>] boil [and] [at|reads]
        {value:number} <temp-unit> {boiling=true}
      `,
    ],
  },
];

/** Lists that belong to these families alone. */
export const HEAT_LISTS: Readonly<Record<string, readonly string[]>> = {
  "boil-report": [
    "there it (goes|is) <boil-now>",
    "(the|our) (canner|pot|water) is (there|up to it) <boil-now>",
    `
      [<boil-subject>] [<be>] [<still>] [<still>] <boiling> [<hard>] [<hard>] [again|now] [over
      here]
    `,
    "(<it>|{target}|everything) (boils|boil) [<hard>] [again|now]",
    `
      [<boil-subject>] [<still>] [have|has|is|are] [<still>] <arrive> <boil> [again|
      now] [over here]
    `,
    `
      [<boil-subject>] [<be>] [<still>] (at|to|on|back at|back to|back on|up to|up at|going at|
      going at it at|holding at|into|in) <boil> [again|now|and holding]
    `,
    `
      [<boil-subject>] [<still>] [has|have] [just] (started|begun|began|commenced|starts|gotten)
      [up] (boiling|to boil|rolling|to roll|bubbling hard|boil|to bubble hard) [<hard>] [again|
      now]
    `,
    `
      (<boil-subject>|<we>) [has|have] [<still>] (came|come|got|went|rolled|comes|gone|gotten|
      made it) [right|back|all the way] [up] [to|into|on] <boil> [again|now]
    `,
    `
      <got> [<us>] [back] [<full>] <boil> [again|now] [going|on|on {target}|in {target}|here|at
      last]
    `,
    "<got> [<the>] {target} [back] [up] (boiling|at <boil>|to <boil>|rolling) [again|now|<hard>]",
    `
      (<got>|<we> have) [it|them|that|everything|her|him|this] [back] [up] (boiling|at <boil>|to <boil>)
      [again|now|<hard>]
    `,
    "<full> [<full>] boil [going|on|reached|again|now|in {target}|on {target}|here|back]",
    `
      [a|the|our] [<full>] [<full>] boil (is|has) [been] [<still>] (on|back|up|going|here|reached|
      back on|back up|going again|underway|started|come|come back|returned|back now|come up|begun|
      good|rolling)
    `,
    "[the] boil [has] (came|come|started|returned|back) [back] [on|up|again]",
    "there (is|goes) (the|a|our|my) [<full>] [<full>] boil [at last|now]",
    "we have (boil|a boil|boiling|a rolling boil|a full boil)",
    "[the] boiling [has] (started|begun|resumed)",
    "[<it>|{target}] [is] (boiling|rolling) [<hard>] [in {target}]",
    "[the] bubbles are rolling",
    "<boil> (reached|achieved|on)",
    "boil started",
  ],
  "boil-subject": [
    "<it>",
    "{target}",
    "we",
    "everything",
    "things",
    "the whole (thing|pot|works)",
    "both (of them|pots|canners|kettles)",
    "[<the>] (water|pot|canner|kettle) (in|with|of) {target}",
  ],
  "boil-now": [
    "it is boiling",
    "boiling",
    "a boil",
    "a full boil",
    "a rolling boil",
    "the boil",
    "we are boiling",
    "at a boil",
  ],
  "boil-state": ["boiling [<hard>]", "rolling", "(at|on) (a|the) [<full>] [<full>] (boil|roll)"],
  us: ["us", "me", "ourselves", "myself"],
  "boil-lost-core": [
    "(it|{target}) (went|fell|came|dropped|has gone) off the boil",
    "(we|i) lost the [<full>] boil",
    "(it|{target}) (stopped|quit|has stopped) boiling",
    "the boil (stopped|died|dropped|went)",
  ],
  "gauge-name": [
    "<the> gauge",
    "gauge",
    "<the> needle",
    "<the> dial",
    "<the> dial gauge",
    "<the> pressure gauge",
    "needle",
    "dial",
    "<the> pressure",
    "pressure",
    "the canner gauge",
  ],
  "temp-subject": [
    "<thermometer>",
    "{target}",
    "<thermometer> (in|on|for) {target}",
    "{target} (in|on) [<the>] (canner|pot|kettle|crock|bath|pan|big pot|water bath)",
    "{target} (temperature|temp|thermometer)",
    "<the> (temperature|temp|reading) (of|in|on|for) {target}",
    "the water in {target}",
  ],
  "temp-unit": [
    "<degrees> [{unit=F} <fahrenheit>|{unit=C} <celsius>]",
    "{unit=F} <fahrenheit>",
    "{unit=C} <celsius>",
  ],
  "at-boil": [
    "[<still>] (at|on) (a|the) [<full>] [<full>] boil [now|here]",
    "[and] [<still>] boiling [<hard>] [now|here]",
  ],
  "temp-tail": [
    "now",
    "even",
    "steady",
    "on <thermometer>",
    "by <thermometer>",
    "on the dot",
    "right on the dot",
    "holding",
    "exactly",
    "flat",
    "right now",
    "and holding",
    "already",
    "(in|for|on) {target}",
    "and (rising|climbing|falling|dropping)",
  ],
  "fell-to": [
    `
      [has|have|is|are] [<still>] (fell|dropped|fallen|cooled|warmed|cooling|warming|heated|heating|
      falling|dropping|come down|came down|cooled down|warmed up|heated up|cooled off|brought|gone
      down|going down) [back] [up|down|all the way down] to [<approx>]
    `,
    "(is|are) [<still>] down to [<approx>]",
  ],
  // --- what a gauge or a thermometer shows
  "at-value": [
    "[<is>] [<still>] [<still>] <shows> [<still>] [<at>] [<approx>]",
    "[<is>] [<still>] <climbed> [<still>] [<way>] <to> [<approx>]",
    "<is> [<still>] [<still>] [<way>] [<at>] [<approx>]",
    "[<still>] [<way>] <at> [<approx>]",
  ],
  is: ["is", "are", "am", "has", "have", "has been", "have been"],
  shows: [
    `
      (reads|says|shows|reading|saying|showing|read|holding|holds|sitting|sits|standing|stands|
      registers|registering|measuring|measures|indicates|indicating|hit|hits|hitting|reached|
      reaching|reaches|touching|touched|making|made|running|runs|steady|stuck|pointing|points|
      settled|resting|rests|steadied|parked|hovering|staying|stays|clocking|topping out|leveled
      off|levelled off|crossed|passed|just hit|just reached|steadied out|holding steady|holding
      even|pegged|hanging|hangs|just made|seeing|getting|giving|gives|gave)
    `,
  ],
  climbed: [
    `
      (come|came|comes|coming|climbed|climbing|climbs|got|gotten|gets|gone|went|risen|rose|crept|
      creeping|made it|worked its way|crawled|shot|built|brought it|worked up|settled in|settled
      down|gotten itself)
    `,
  ],
  at: [
    "at",
    "on",
    "to",
    "up to",
    "right at",
    "right on",
    "up at",
    "back at",
    "back to",
    "back up to",
    "in at",
    "it is",
    "it is at",
    "of",
  ],
  to: ["to", "at", "up to", "back to", "back up to", "all the way to", "up at", "on"],
  way: ["up", "back", "back up", "right", "all the way", "all the way up", "right up", "down"],
  approx: [
    "about",
    "around",
    "exactly",
    "just over",
    "just about",
    "just under",
    "roughly",
    "right around",
    "a steady",
    "a solid",
    "a good",
    "a hair over",
    "a hair under",
    "a little over",
    "a little under",
    "a bit over",
    "a touch over",
    "right about",
    "near",
    "a full",
    "close to",
  ],
  "gauge-subject": [
    "<gauge>",
    "<it>",
    "<we>",
    "everything",
    "<gauge-name> (on|of|in) {target}",
    "{target} [<is>] [<still>] [holding|sitting|running|steady|holding steady|come|came|gotten|got]",
    "<gauge-name> on the canner",
  ],
  "gauge-tail": [
    "on <gauge>",
    "in {target}",
    "in the canner",
    "now",
    "steady",
    "even",
    "holding",
    "<still>",
    "of pressure",
    "pressure",
    "showing",
    "flat",
    "and holding",
    "and steady",
    "and holding steady",
    "and staying there",
    "up",
    "on the nose",
    "on the dot",
    "exactly",
    "gauge pressure",
  ],
  // --- steam
  weight: [
    `
      [little|old] (weight|weights|jiggler|regulator|rocker|pressure regulator|weighted gauge|counterweight|
      petcock|rocker weight|pressure weight|wobbler|jiggle top|jiggler weight|rocking weight)
    `,
  ],
  rocking: [
    `
      (rocking|jiggling|dancing|rattling|rock|jiggle|dance|rattle|wobbling|swinging|ticking|rocks|
      jiggles|bouncing|jittering|clattering|swaying|chattering|rattles|dances|rocked|jiggled|
      jiggly|wobble|wobbles|clicking|hissing|bobbing|hopping|moving|rattled|rocking and hissing)
    `,
  ],
  steady: [
    `
      (steady|steadily|gently|gentle|nice and gentle|nice and gently|lovely|beautifully|nicely|away|well|good|along|now|regularly|freely|hard|strong|
      strongly|evenly|at last|a few times a minute|like mad|like it should|slowly|back and forth|
      about a few times a minute|pretty good|real good|nice and steady|good and steady|nice and
      even|good and hard|out|like crazy|at a good clip|fine|just right|as it should|like a clock|
      properly|just fine|up a storm|merrily|continuously|constantly|fully|full blast|hard now|
      full force)
    `,
  ],
  steaming: [
    `
      (coming|pouring|blowing|rushing|shooting|streaming|venting|flowing|going|escaping|puffing|
      spouting|hissing|billowing|pumping|jetting|rolling|come|exhausting|issuing|gushing|spewing)
      [out|up|off|through]
    `,
  ],
  "from-vent": [
    `
      [out|up|through|off] (of|from|out|through) [of] [the|that] (vent|petcock|vent pipe|canner|
      pipe|vent port|port|steam vent|lid|top|valve|vent hole|spout) [pipe]
    `,
    "at the (vent|petcock|vent pipe|vent port)",
  ],
  "in-pot": [
    "(in|inside|down in) [<the>] (canner|pot|water bath|bath|kettle|pressure canner)",
    "(in|inside|down in) {target}",
    "in there",
    "in here",
  ],
  bit: [
    `
      (really|a bit|a little|very|too|awfully|pretty|now|quite|kind of|rather|getting|sort of|a
      tad|a touch|somewhat|way|looking|fairly|starting to get|starting to run|dangerously|getting
      a bit|getting a little|getting pretty|starting to look|on the)
    `,
  ],
  "lid-on": [
    "[and|with] (the lid|lid|the lids|lids) [is|are] (on|down|closed|locked|locked on|in place)",
    "and (covered|closed|locked|locked down|ready to go|ready)",
  ],
  "all-in-canner": [
    `
      [<the>|all|all of <the>|all the] [{count:whole}] (jars|pints|quarts|half pints|half pint
      jars|pint jars|quart jars|load)
    `,
    "everything",
    "they",
    "they all",
    "all of them",
    "the (first|second|third|next|last) load",
    "the rack",
    "the last of the jars",
    "the whole load",
    "it",
    "the last jar",
    "all",
  ],
};
