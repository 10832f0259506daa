import type { MeaningOf } from "./meaning.ts";

/** A full column of steam comes from the vent. */
export const venting: MeaningOf<"venting"> = {
  cost: "clearing",
  tellsOf: { about: "pressure", comes: true },
  plainly: true,
  report: true,
  shaken: {
    clause: [
      /\b(a (bit|little|wisp|puff) of|little puffs|but|though|weak|thin|wisps?|kettle is)\b/,
    ],
  },
  when: ["load:in-steam"],
  slots: { target: "name", at: "instant" },
  example: "steam is coming out",
  wordings: [
    `[<see-steam>] [a|an|the|that|all the|some|much|lots of|plenty of|a lot of] [<steam-kind>]
    [<steam-kind>] [<steam-kind>] [<steam-kind>] <steam-noun> [<it>] [is|are|has|have|has been]
    [<still>] [started|begun|been|starts|began] [to] [<still>] [<steaming>] [<steam-how>]
    [<from-vent>] [<steam-how>] [<from-vent>] [<when>|<lasting>]`,
    `[<it>|{target}|<vent-thing>] [is|are|has|have|has been|been] [has started|started|begun|just
    started|began] [<still>] [to] (venting|vent|exhausting|blowing off|steaming|<letting-out>
    [a|the|an|that|some] [<steam-kind>] [<steam-kind>] <steam-noun>) [<steam-how>] [<from-vent>]
    [<steam-how>] [<when>|<lasting>]`,
    `(<it>|{target}|<vent-thing>) [is|has|has started|started] [<still>] (blowing|puffing)
    [<steam-how>] [<from-vent>] [<steam-how>] [<when>|<lasting>]`,
    "<vent-thing> [is] (open and steaming|going|running) [<steam-how>] [<when>|<lasting>]",
    "(<we>|i) (have|got|see|have got) [the] (canner|vent) (venting|steaming) [<steady>]",
  ],
  spoken: ["steam is coming out", "it is venting", "a full column of steam"],
  bags: [
    {
      beside: true,
      must: ["steam|venting|steaming", "<steaming>|<from-vent>|venting|steaming"],
      may: `
        <said-of-it>|<steady>|<from-vent>|<when>|<lasting>|good|nice|strong|solid|full|plume|
        column|stream|jet|of|canner|vent|out|started|begun|to|can see|i see|i|lots of|plenty of|
        a lot of|here comes|there comes|comes|coming
      `,
    },
  ],
  lists: {
    "see-steam": `
      <got>|<we> see|i (can see|see)|(now|there|here) [is] (is|comes|goes|coming)|here comes|it is|
      now is coming|is coming|(there|now) (we have|we have got)
    `,
    "steam-noun": `
      steam|(stream|jet|column|plume|cloud|funnel|blast|flow|roar|head|line|whoosh|pillar|feather)
      of [<steam-kind>] [<steam-kind>] steam|(steam|steady) (stream|column|plume)|plume|funnel
    `,
    "vent-thing": `
      [the|that|my|our] [there] (vent|petcock|vent pipe|pipe|valve|vent port|spout)|that there
      canner
    `,
    "letting-out": `
      (blowing|puffing|throwing|letting|putting|spouting|venting|pouring|shooting|whistling|
      spitting|pushing|sending|giving|pumping) [off|out|up]
    `,
    "steam-kind": `
      good|nice|strong|steady|full|solid|hard|healthy|big|continuous|constant|thick|proper|great|
      real|straight|fat|white|regular|lovely|mighty|loud|powerful|unbroken|long|right
    `,
    "steam-how": `
      <steady>|straight up|straight out|straight|in a (steady|full|strong|solid|good|constant|thick|
      straight|nice) [steady|strong] (stream|jet|column|plume|line|cloud|funnel)|<like>|good and
      (strong|steady|hard)|full (on|blast|force|bore)|real (good|hard|strong)|very (strong|
      strongly|hard)|in a column
    `,
    steaming: `
      (coming|pouring|blowing|rushing|shooting|streaming|venting|flowing|going|escaping|
      puffing|spouting|hissing|billowing|pumping|jetting|rolling|come|exhausting|issuing|
      gushing|spewing|whistling|comes|pours|blows|shoots) [out|up|off|through]
    `,
    "from-vent": `
      [out|up|through|off] (of|from|out|through|off) [of] [the|that] (vent|petcock|vent pipe|
      canner|pipe|vent port|port|steam vent|lid|top|valve|vent hole|hole|spout) [pipe] [(in|on) the
      (lid|top)]|
      at the (vent|petcock|vent pipe|vent port)
    `,
  },
};
