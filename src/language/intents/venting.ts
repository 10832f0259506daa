import type { MeaningOf } from "./meaning.ts";

/** A full column of steam comes from the vent. */
export const venting: MeaningOf<"venting"> = {
  cost: "clearing",
  plainly: true,
  report: true,
  when: ["load:in-steam"],
  slots: { target: "name", at: "instant" },
  example: "steam is coming out",
  wordings: [
    `[(<it>|{target}|<we>|the vent|the petcock|the pipe|the vent pipe)] [is|are|has|have] [has
    started|started|begun|just started|began] [<still>] [to] (venting|vent|exhausting|blowing
    off|steaming) [<steady>] [steam|air] [<steady>] [<from-vent>] [<when>|<lasting>]`,
    `[<got>|<we> see|i can see] [a|the] [good|nice|strong|steady|full|solid|hard|healthy|big|
    continuous|constant] [good|steady|strong|solid] (steam|stream of steam|column of steam|jet
    of steam|plume of steam|plume|flow of steam|head of steam|funnel of steam|funnel|steam
    stream|steam column|steady steam|cloud of steam|steam plume) [is|are|now] [<steaming>]
    [<steady>] [<from-vent>] [<steady>] [<when>|<lasting>]`,
    `[<the>] steam (is|has|has been|are) [<still>] [started|begun|been] [to] [<still>] <steaming>
    [<steady>] [<from-vent>] [<steady>] [in a steady stream|in a column|in a steady column]
    [<from-vent>] [<when>|<lasting>]`,
    `(<it>|{target}|the vent|the petcock|the vent pipe|the pipe) (is|has|has started|started)
    [<still>] (steaming|blowing|blowing steam|letting off steam|puffing|putting out steam|
    puffing steam|throwing steam|spouting steam|venting steam|blowing a steady stream|pouring
    steam|shooting steam|pouring out steam|whistling steam|blowing off steam|letting out steam|
    letting steam out) [<steady>] [<from-vent>] [<steady>] [<when>|<lasting>]`,
    "steam [<from-vent>] [<steady>]",
    "[the] vent is (open and steaming|going|blowing|running|steaming) [<steady>]",
    "(<we>|i) (have|got|see|have got) [the] (canner|vent) (venting|steaming) [<steady>]",
    `[now|there is|there goes|we have|we have got|i have|i have got|got|i see|it is|she is|<it> is]
    [now|already|really|finally] [blowing|shooting|throwing|putting out|pushing|sending|pouring|
    letting out|spitting] [out] [a|the|an|that] <steam-kind> [<steam-kind>] (stream|jet|column|
    plume|cloud|funnel|blast|flow|roar|head|line|whoosh|pillar|feather) [of] [<steam-kind>] [steam]
    [is] [now] [<steaming>] [<steady>] [<from-vent>] [<steady>] [<when>|<lasting>]`,
    `[<the>|all the] steam [is|has] [<still>] [been|started|begun] [to] [<still>] <steaming>
    [<steam-how>]
    [<from-vent>] [<steam-how>] [<when>|<lasting>]`,
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
    "steam-kind": `
      good|nice|strong|steady|full|solid|hard|healthy|big|continuous|constant|thick|proper|great|
      real|straight|fat|white|regular|lovely|mighty|loud|powerful|unbroken
    `,
    "steam-how": `
      <steady>|straight up|straight out|straight|in a (steady|full|strong|solid|good|constant|thick|
      straight|nice) [steady|strong] (stream|jet|column|plume|line|cloud|funnel)|<like>|good and
      (strong|steady|hard)|full (on|blast|force|bore)
    `,
    steaming: `
      (coming|pouring|blowing|rushing|shooting|streaming|venting|flowing|going|escaping|
      puffing|spouting|hissing|billowing|pumping|jetting|rolling|come|exhausting|issuing|
      gushing|spewing) [out|up|off|through]
    `,
    "from-vent": `
      [out|up|through|off] (of|from|out|through) [of] [the|that] (vent|petcock|vent pipe|
      canner|pipe|vent port|port|steam vent|lid|top|valve|vent hole|spout) [pipe]|
      at the (vent|petcock|vent pipe|vent port)
    `,
  },
};
