import type { MeaningOf } from "./meaning.ts";

/** What a word of the trade means. */
export const explain: MeaningOf<"explain"> = {
  cost: "harmless",
  when: ["always"],
  slots: { term: "word" },
  example: "what is headspace",
  wordings: [
    "<term> (meaning|what is (that|it)|meaning what)|meaning of <term>",
    "what (is|are) [a|an] <term> [for|again|exactly|good for|in canning]",
    "what (does|do) [<the>|a|an] <term> (mean|do)|what is [<the>|a|an] <term> (for|good for)",
    "what (do you mean|is meant) by [<the>|a|an] <term>",
    "(explain|define) [to (me|us)] [<the>|a|an] <term> [to (me|us)]",
    "(explain|tell (me|us)) what [<the>|a|an] <term> (is|are|means|mean|is for|does)",
    "how (do|can|will|would) (i|we) (know|tell|see) [when|if|that] (it is|we are) <boiling-hard>",
  ],
  lists: {
    "boiling-hard": `
      {term=full-boil} (boiling hard|at a (full|rolling|full rolling) boil|boiling hard enough|
      boiling [properly])
    `,
    term: `
      headspace {term=headspace}|
      (raw|cold) (pack|packing) {term=raw-pack}|
      hot (pack|packing) {term=hot-pack}|
      [full|rolling|full rolling] boil {term=full-boil}|
      (simmer|simmering) {term=simmer}|
      (process|processing) {term=process}|
      (process|processing) time {term=process-time}|
      (come up|come-up) [time] {term=come-up-time}|
      (vent|venting) {term=venting}|
      (canner|water bath canner|boiling water canner) {term=canner}|
      pressure (canner|cooker) {term=pressure-canner}|
      dial [gauge] {term=dial-gauge}|
      weighted gauge {term=weighted-gauge}|
      altitude {term=altitude}|
      (low|low-) acid [food|foods] {term=low-acid}|low-acid [food|foods] {term=low-acid}|
      (acid|high acid|high-acid) [food|foods] {term=acid}|
      (ph|p h) {term=ph}|
      botulism {term=botulism}|
      siphoning {term=siphoning}|
      (band|bands|ring|rings) {term=band}|
      (fingertip|finger) tight {term=fingertip-tight}|
      (seal|seal check) {term=seal}|
      (jelling|gelling|jell|gel|setting) point {term=jelling-point}|
      pectin {term=pectin}|
      brine {term=brine}|
      (canning|pickling) salt {term=canning-salt}|
      (blanch|blanching) {term=blanching}|
      (cure|curing) {term=curing}|
      load {term=load}|
      lot {term=lot}|
      [free the|freeing the|free|running a knife round|the] [air] bubbles {term=air-bubbles}|
      [salt and|the salt and] ice {term=salt-and-chill}
    `,
  },
};
