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
        [(<it>|{target})] (is|are) <no-longer> (boiling|at a boil|at a full boil|on the boil|at a
        rolling boil|rolling) [<any-more>] [<when>]
      `,
      "(<it>|{target}) (is|are) not boiling (any more|any longer|now|right now) [<when>]",
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
      "the boiling [has|is|just|has just] (stopped|quit|died down|ended|gone|died|let up) [<when>]",
      `
        [(<it>|{target})] [has|just|has just|is] (went|gone|dropped|come|fell|fallen|died|dying|
        calmed|settled|dropping|down) [back] [down] to (a|just a|only a|nothing but a|barely a|
        bare) (simmer|bare simmer) [<when>]
      `,
      "(<it>|{target}) (is|are) (only|just|barely|merely) (simmering|a simmer) [<when>]",
      "(<it>|{target}) (has|have) gone (flat|still|quiet) [<when>]",
      "no [more] boil [any more|any longer|now|in {target}] [<when>]",
      "there is no [longer a] boil [any more|now] [<when>]",
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
        [<gauge>] <reads> [about|around|exactly|just over|just about|a steady] {value:number}
        <psi> {unit=psi} [on <gauge>|in {target}|now|steady|even|holding|of pressure] [<when>]
      `,
      `
        [<gauge>] <reads> [about|around|a steady] {value:number} <kpa> {unit=kPa} [on <gauge>|in
        {target}|now] [<when>]
      `,
      `
        <gauge-name> <reads> [about|around|exactly|a steady] {value:number} [even|steady|now|flat]
        [<when>]
      `,
      `
        [<we>|<it>] [am|is|are|have|has] [now|up|back|back up|down|finally|holding|steady|sitting|
        still] [at|to|on|reached|hit|got|got to|holding at|steady at|made|have|seeing|reading|
        showing|come up to|come to|climbed to|right at|made it to|running at|running] [about|
        around|exactly|a steady] {value:number} <psi> {unit=psi} [on <gauge>|in {target}|now|
        steady|even|holding|<still>|of pressure] [<when>]
      `,
      `
        [<we>|<it>] [am|is|are|have|has] [now|up|back|back up|down|finally|holding|steady|sitting|
        still] [at|to|on|reached|hit|got|got to|holding at|steady at|made|have|seeing|reading|
        showing|come up to|come to|climbed to|right at|made it to|running at|running] [about|
        around|exactly|a steady] {value:number} <kpa> {unit=kPa} [on <gauge>|in {target}|now|
        steady] [<when>]
      `,
      `
        (<got>) [a steady|about|exactly] {value:number} <psi> {unit=psi} (on <gauge>|of pressure|
        now|in {target}|showing) [<when>]
      `,
      "<got> {value:number} <psi> {unit=psi} [on <gauge>]",
      "<got> [a steady] {value:number} <kpa> {unit=kPa} [on <gauge>]",
      "<got> {value:number} on <gauge-name>",
      "{value:number} on <gauge-name> [<when>]",
      "{value:number} [<psi>] {unit=psi} [and] (holding|steady|holding steady) [on <gauge>]",
      "(pressure|the pressure) {value:number} [<psi>] {unit=psi}",
      `
        (we have reached|reached|we are up to|we hit|up to|we have got|holding) [target|full]
        pressure [of|at] {value:number} [<psi>] {unit=psi}
      `,
      `
        <gauge-name> (climbed|came|rose|crept|went|got|has climbed|has risen|has crept|has come)
        [up] to {value:number} [<psi>] {unit=psi} [<when>]
      `,
      `
        <gauge-name> (climbed|came|rose|crept|went|got|has climbed|has risen) [up] to
        {value:number} <kpa> {unit=kPa} [<when>]
      `,
      `
        (canner|the canner|{target}) (is|has) [at|up to|holding|reached|holding at|come up to]
        {value:number} <psi> {unit=psi} [<when>]
      `,
      `
        (canner|the canner|{target}) (is|has) [at|up to|holding|reached|holding at] {value:number}
        <kpa> {unit=kPa} [<when>]
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
        [<the>] (pressure|gauge|needle|dial|canner|{target}|it) <dropped> [back] [down] (below|
        under|less than) [the] [target|pressure|{value:number}] [<psi>|pressure|mark] [<when>]
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
      "(lost|losing|just lost) [the|our|all] pressure [in {target}] [<when>]",
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
      "(not|no longer) (at|up to|holding) pressure [any more] [<when>]",
      `
        (<it>|{target}) is [not|no longer] (at|holding|holding its|up to) pressure (any more|any
        longer|now) [<when>]
      `,
      `
        (<it>|{target}) is (no longer|not) (holding|holding its|holding the|keeping|at) pressure
        [any more|any longer|now] [<when>]
      `,
      "the pressure (will not|does not|would not|did not) hold [<when>]",
      "the pressure did not (hold|stay up|stay) [<when>]",
      "[the] weight [has] (stopped|quit) (rocking|jiggling|dancing|rattling|moving) [<when>]",
      "[the] (jiggler|regulator|rocker) [has] (stopped|quit) [rocking|jiggling|rattling] [<when>]",
      `
        the weight is (not|no longer) (rocking|jiggling|rattling|dancing|moving) [any more|any
        longer] [<when>]
      `,
    ],
  },
  {
    intent: "weight-rocking",
    phrases: [
      `
        [<the>] (weight|weights|jiggler|regulator|rocker|pressure regulator|weighted gauge|
        counterweight|petcock|rocker weight) [is|are|has|has started|started|has begun|began|is
        now|just started|has just started|begun] [to] [now] [<still>] (rocking|jiggling|dancing|
        rattling|rock|jiggle|dance|rattle|wobbling|swinging|ticking|going|moving|chattering|rocks|
        jiggles|bouncing|jittering|clattering|hissing and rocking|rocking gently|rocking steadily|
        swaying) [now|steadily|gently|nicely|away|well|a few times a minute|like mad|good|along|
        like it should|slowly|back and forth|about a few times a minute] [<when>|<lasting>]
      `,
      `
        [<the>] (weight|jiggler|regulator|rocker|weighted gauge) (jiggled|rocked|started rocking|
        started jiggling|has begun rocking|started up|has started|started|got going|took off|came
        alive|has come alive) [<when>]
      `,
      `
        <it> (is|has|has started|started|has begun|just started|began) (rocking|jiggling|to rock|
        to jiggle|rocking steadily|jiggling steadily|rocking gently|jiggling away|rocking nicely|
        rocking now|jiggling now|rocking away) [<when>|<lasting>]
      `,
      "rocking [steadily|nicely|gently|now|away]",
      "jiggling [steadily|nicely|gently|now|away]",
      `
        (<we>|i) (have|got|have got|hear) [a|the] (rocking|jiggling|weight rocking|jiggle|steady
        rocking|weight jiggling|steady rock|rattle|rocking weight|good rock|steady jiggle)
      `,
      "[there goes|there is] the (jiggler|weight|rocker)",
    ],
  },
  {
    intent: "venting",
    phrases: [
      `
        [(<it>|{target}|<we>|the vent|the petcock|the pipe|the vent pipe)] [is|are|has|has
        started|started|has begun|just started|begun|have started|are now|is now] [to] [now]
        (venting|vent|exhausting) [now|steadily|well|steam|hard|good|nicely|freely|strongly|air]
        [<when>|<lasting>]
      `,
      `
        [<got>] [a|the] [good|nice|strong|steady|full|solid|hard|healthy|big|continuous] [good|
        steady|strong|solid] (steam|stream of steam|column of steam|jet of steam|plume of steam|
        plume|flow of steam|head of steam|funnel of steam|funnel|steam stream|steam column|steady
        steam) [is|now] [coming|pouring|rushing|blowing|shooting|going|streaming|flowing|escaping]
        [out|steadily] [of] [the|from the] [vent|petcock|vent pipe|canner|pipe|vent port|port|
        steam vent|lid|top] [now|steadily|hard|strong] [<when>|<lasting>]
      `,
      `
        [the] steam (is|has) [now] [started] [steadily|really|finally] (coming|pouring|blowing|
        rushing|shooting|streaming|venting|flowing|coming out|going|escaping|puffing) [out]
        [steady|steadily|hard|freely|strongly|good|strong|now|in a steady stream|in a column] [of|
        from] [the] [vent|petcock|vent pipe|canner|pipe|vent port|port] [steadily|now|hard|strong]
        [<when>|<lasting>]
      `,
      `
        (<it>|{target}|the vent|the petcock|the vent pipe|the pipe) (is|has) [now|started|really]
        (steaming|blowing|blowing steam|steaming hard|letting off steam|puffing|putting out steam|
        steaming steadily|throwing steam|spouting steam|venting steam|blowing a steady stream|
        pouring steam|shooting steam|pouring out steam|blowing steadily|blowing steam steadily|
        steaming away|whistling steam|steaming freely) [now|steadily|hard|well|freely|out of the
        vent|from the vent] [<when>|<lasting>]
      `,
      "full steam",
      `
        (<we>|i) (have|see|have got|got) [a|good|steady|full|some] [good|steady|full|solid|strong]
        (steam|head of steam|column of steam|steam now|stream of steam|steam column|steady steam)
        [coming out|from the vent|out of the vent|coming|going] [<when>]
      `,
      "[the] vent is (open and steaming|going|blowing|running|steaming)",
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
        are|went|have gone|got) [all|now|already|safely|back] in [<when>] [and the lid is on]
      `,
      `
        (everything|the load|the rack|the first load|the second load|the next load|the last load)
        (is|went|has gone|has gone back) [now|all] in [<when>]
      `,
      `
        [<the>] (canner|pot|load|rack|{target}|water bath|pressure canner) is [now|all|fully]
        (loaded|loaded up|full of jars|full|filled with jars|loaded and ready|all loaded) [<when>]
      `,
      `
        [<we>|i] [have|just|have just] (put|loaded|lowered|set|placed|dropped|got|lower|put in|
        loaded in|eased|slid) [<the>|all the|all|all of the] [{count:whole}] (jars|load|rack|
        pints|quarts|half pints|last jar|first load|second load|next load|last load) [down] (in|
        into|in the canner|into the canner|into the water|in the water|in the pot|into the pot|in
        the bath|into the bath|down|in the water bath|in the pressure canner|into the water bath|
        into the pressure canner|into the hot water) [now] [<when>]
      `,
      `
        [<we>|i] [have|just|have just] (loaded|filled|loaded up|finished loading|done loading|got
        loaded) [<the>] (canner|pot|water bath|rack|pressure canner|kettle) [up] [<when>]
      `,
      "[<we>|i] [am|are|have] (done|finished) loading [<the>|up] [canner|pot|jars] [<when>]",
      "[all] (loaded|loaded up|loaded in) [now|and ready] [<when>]",
      "(jars|all jars|pints|quarts|load) [is|are] in [the canner|the pot|the water|the bath]",
      "[the] load [{number}|one|two|three] is in [the canner|the pot] [<when>]",
      "[<the>] canner [has] [got] (its|it is|all its|all the|the|a full) (load|jars) [in it|in]",
      "[the] jars are (down|lowered|submerged) [in the canner] [<when>]",
      `
        [<we>|i] (have|got|have got) [<the>] [all the] jars in [the canner|the water|the pot]
        [<when>]
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
    ],
  },
  {
    intent: "water-low",
    phrases: [
      `
        [<the>] water [level] [is|has|has gotten|has got|has gone|is getting|looks|seems|in
        {target} is|in {target} has gone|in {target} is getting|in {target} looks] [really|a bit|a
        little|very|too|awfully|pretty|now|quite|kind of|rather|getting] (low|down|short|too low|
        getting low|going down|boiled down|boiled away|running low|running out|down a lot|dropped|
        down too far|dropping|lower than it was) [<when>]
      `,
      `
        [<the>] water [level] [in {target}] [is|has|has gone|went|dropped|fell|has dropped|has
        fallen|is down|has boiled|boiled] [down|now] (below|under|beneath|past|down past|down to)
        [<the>|the top of the|the tops of the] (lids|jars|tops|lid|tops of the jars|jar tops|rims|
        necks) [<when>]
      `,
      `
        (<we>|{target}|<it>|i) (am|is|are|has|have) [really|a bit|a little|getting|running|getting
        a little|getting a bit] (low|short|running low|getting low|running short|running out|low
        now) [of|on] water [<when>]
      `,
      "(running|getting|we are running|we are getting) (low|short|dry) [of|on] [water] [<when>]",
      `
        <lids> (is|are) [now|all|no longer|not] [starting to be] (showing|uncovered|exposed|
        sticking out|poking out|peeking out|above the water|out of the water|above water|not
        covered|coming out of the water|poking up|sticking up|sticking out of the water|poking out
        of the water|poking through|no longer covered|bare|dry|visible above the water|high and
        dry) [any more|of the water|now] [<when>]
      `,
      `
        <lids> (is|are) (no longer|not) (covered|under water|under the water|under) [any more|any
        longer|now|with water] [<when>]
      `,
      `
        (i|we|you) can see (the|all the|some of the|some) (lids|jar tops|tops of the jars|tops|
        lids above the water|lids out of the water|tops of the lids|jars sticking out) [<when>]
      `,
      `
        (some of the|a few of the|a couple of|one of the|two|some|a few|one|the tops of the)
        (lids|jars|lid|jar|jar tops) (is|are) (showing|uncovered|exposed|sticking out|poking out|
        out of the water|above the water|not covered|no longer covered|bare) [<when>]
      `,
      "the lids have come (out of the water|uncovered|up out of the water) [<when>]",
      `
        (there is not|not) enough water [in {target}|over <the> (lids|jars)|left] [any more]
        [<when>]
      `,
      "[the] water does not cover <the> (lids|jars) [any more] [<when>]",
      "low [on] water [in {target}] [<when>]",
      `
        [<the>] water (is|has) (not|no longer) (covering|over) <the> (lids|jars) [any more]
        [<when>]
      `,
      `
        [<the>] {target} (is|has) [almost|nearly|about] (boiled dry|boiling dry|out of water|dry|
        boiled down|going dry|run dry|gone dry) [<when>]
      `,
      "the water needs topping up [<when>]",
      "[<the>] {target} (needs|could use) [more|some|some more] water [<when>]",
    ],
  },
  {
    intent: "temperature",
    phrases: [
      `
        <it> (reads|says|shows|is reading|is showing|reading) [about|exactly] {value:temperature}
        [<degrees>] [now]
      `,
      `
        [<temp-subject>] <temp-reads> [about|around|exactly|right at|just about|just over|just
        under|a steady] {value:temperature} [<degrees>] [{unit=F} <fahrenheit>] [now|even|steady|
        on the thermometer|on the dot|holding|exactly|flat|right now] [<when>]
      `,
      `
        [<temp-subject>] <temp-reads> [about|around|exactly|right at|a steady] {value:number}
        [<degrees>] {unit=C} <celsius> [now|even|steady|on the thermometer] [<when>]
      `,
      `
        [<temp-subject>] <temp-reads> [about|around|exactly|right at|a steady] {value:number}
        <degrees> [now|even|steady|on the thermometer|exactly|on the dot|holding|flat|in {target}|
        on {target}] [<when>]
      `,
      `
        [<temp-subject>] <temp-reads> [about|around|exactly|a steady] {value:number} [<degrees>]
        {unit=F} <fahrenheit> [now|even|steady|on the thermometer|in {target}] [<when>]
      `,
      `
        [<it>|<we>] [is|are|am|have|has] [now|up|down|holding|sitting|still] [at|to|up to|down to|
        reached|hit|holding at|reading|showing|got to|got|come up to|come down to|steady at]
        [about|around|exactly|right at|a steady] {value:number} <degrees> [{unit=F} <fahrenheit>|
        {unit=C} <celsius>] [now|on the thermometer|in {target}|for {target}|on {target}|even|
        steady|exactly|holding|right on the dot] [<when>]
      `,
      `
        [<it>|<we>] [is|are|am|have|has] [now|up|down] [at|to|up to|reached|hit|holding at]
        [about|around|exactly] {value:number} ({unit=C} <celsius>|{unit=F} <fahrenheit>) [now|in
        {target}] [<when>]
      `,
      `
        (<it>|<we>) (is|are|am|has|have) [now|up|down|holding|sitting|still] [at|to|up to|down to|
        reached|hit|holding at] [about|around|exactly] {value:temperature} [now|on the
        thermometer|in {target}] [<when>]
      `,
      "<got> [a] {value:temperature} [<degrees>] (in|on|for|at) ({target}|the thermometer)",
      `
        <got> [a reading of|a temperature of] {value:number} <degrees> [{unit=F} <fahrenheit>|
        {unit=C} <celsius>] [in {target}|on the thermometer]
      `,
      `
        <got> a (reading|temperature) of {value:number} [<degrees>] [{unit=F} <fahrenheit>|
        {unit=C} <celsius>] [in {target}|on the thermometer|on {target}]
      `,
      "{value:temperature} on the thermometer",
      `
        (temperature|temp|reading) [of] [<the>] {target} [is|at|reads] {value:number} [<degrees>]
        [{unit=F} <fahrenheit>|{unit=C} <celsius>]
      `,
      `
        <the> (temperature|temp) (of|in) {target} <temp-reads> [about|around] {value:number}
        [<degrees>] [{unit=F} <fahrenheit>|{unit=C} <celsius>]
      `,
      `
        [<the>] {target} [temperature|temp] {value:number} <degrees> [{unit=F} <fahrenheit>|
        {unit=C} <celsius>]
      `,
      `
        (measured|i measured|i get|getting|i am getting|i read|read|took a reading of)
        {value:number} [<degrees>] [{unit=F} <fahrenheit>|{unit=C} <celsius>] [in {target}|on the
        thermometer]
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
      [(<it>|{target}|we|everything|things) <be>] [<still>] <boiling> [<hard>] [again|now] [over
      here]
    `,
    "[(<it>|{target}|we|everything|things) <be>] [<still>] boiling",
    "(<it>|{target}|everything) (boils|boil) [<hard>] [again|now]",
    `
      [<it>|{target}|we|everything] [<still>] [have|has|is|are] [<still>] <arrive> <boil> [again|
      now] [over here]
    `,
    `
      [<it>|{target}|we|everything|things] [<be>] [<still>] (at|to|on|back at|back to|back on|up
      to) <boil> [again|now|and holding]
    `,
    `
      [<it>|{target}|we|everything] [<still>] [has|have] [just] (started|begun|began|commenced)
      (boiling|to boil|rolling|to roll|bubbling hard|boil) [<hard>] [again|now]
    `,
    `
      (<it>|{target}|<we>|everything) (came|come|got|went|rolled) [right|back|all the way] [up] to
      <boil> [again|now]
    `,
    `
      <got> [<us>] [back] [<full>] <boil> [again|now] [going|on|on {target}|in {target}|here|at
      last]
    `,
    "<got> [<the>] {target} [back] [up] (boiling|at <boil>|to <boil>|rolling) [again|now|<hard>]",
    `
      (<got>|<we> have) [it|them|that|everything] [back] [up] (boiling|at <boil>|to <boil>)
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
    "{target} (temperature|temp|thermometer)",
    "<the> (temperature|temp|reading) (of|in|on|for) {target}",
    "the water in {target}",
  ],
  "temp-reads": [
    "reads",
    "says",
    "shows",
    "reading",
    "is reading",
    "is showing",
    "is at",
    "is",
    "are at",
    "is up to",
    "is holding at",
    "at",
    "is holding",
    "has reached",
    "reached",
    "hit",
    "has hit",
    "is now",
    "is now at",
    "is down to",
    "is back to",
    "is back at",
    "came up to",
    "has come up to",
    "has come to",
    "came to",
    "has come down to",
    "got to",
    "has got to",
    "has gotten to",
    "are up to",
    "is sitting at",
    "holding at",
    "are",
    "stands at",
    "is up at",
    "is steady at",
    "holds at",
    "just hit",
    "just reached",
    "is right at",
    "climbed to",
    "has climbed to",
    "has climbed up to",
    "has dropped to",
    "dropped to",
    "fell to",
    "is around",
    "is about",
    "has cooled to",
    "cooled to",
    "has warmed to",
    "went up to",
    "now reads",
    "now says",
    "is running at",
    "measures",
    "registers",
    "is staying at",
    "has made it to",
    "is back up to",
    "is still at",
    "is still",
    "is cooling to",
    "is only",
    "is only at",
    "comes to",
    "is over",
    "is under",
    "has fallen to",
    "has risen to",
    "rose to",
    "is already at",
    "is already",
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
