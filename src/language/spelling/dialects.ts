// data table
/**
 * Spellings of what is said in Scots, in the North of England and in the South of the United
 * States, as the words that everything else is written in. Only what can hardly be anything else:
 * "fur" may grow on a jar, and a peach has a "pit".
 */

const PAIRS = `
  oot: out| aboot: about| doon: down| roon: round| roond: round| noo: now| hoo: how| aff: off|
  tae: to| frae: from| fae: from| wi: with| wid: would| wis: was| wur: were| wull: will|
  cud: could| shid: should| hae: have| hiv: have| huv: have| hud: had| haed: had| gie: give|
  gied: gave| gies: give me| gien: given| tak: take| taks: takes| taen: taken| maks: makes|
  dae: do| daein: doing| daen: doing| gaun: going| gaed: went| cam: came| haud: hold| hauds: holds|
  stoap: stop| stapped: stopped| drapped: dropped| brak: broke| ken: know| kens: knows| kent: knew|
  telt: told| whit: what| whaur: where| wha: who| whae: who| thae: those| thon: that| yon: that|
  yin: one| yins: ones| wan: one| twa: two| fower: four| seeven: seven| eicht: eight|
  hunner: hundred| hunnerd: hundred| hunderd: hundred| thoosan: thousand| meenit: minute|
  meenits: minutes| mibbe: maybe| mebbe: maybe| nae: no| naw: no| nay: no| nah: no| aye: yes|
  och: oh| ach: oh| nane: none| naebody: nobody| naething: nothing| nuthin: nothing| nowt: nothing|
  nowt's: nothing is| owt: anything| summat: something| ye: you| yer: your| yese: you| yous: you|
  youse: you| masel: myself| yersel: yourself| itsel: itself| himsel: himself| hersel: herself|
  oor: our| oors: ours| awa: away| a'thing: everything| awthing: everything| auld: old|
  cauld: cold| hauf: half| hale: whole| lang: long| mair: more| maist: most| muckle: big|
  wee: little| guid: good| richt: right| nicht: night| licht: light| ticht: tight| nixt: next|
  efter: after| efternoon: afternoon| afore: before| fore: before| ower: over| abune: above|
  ablow: below| atween: between| ahint: behind| anither: another| ither: other| ithers: others|
  ony: any| onything: anything| mony: many| muny: many| jist: just| jus: just| iver: ever|
  niver: never| nivver: never| ivery: every| watter: water| bile: boil| biled: boiled|
  biles: boils| bilin: boiling| biling: boiling| byle: boil| heid: head| haun: hand| hauns: hands| jaur: jar|
  jaurs: jars| jarr: jar| tattie: potato| tatties: potatoes| saut: salt| soor: sour| pund: pounds|
  pun: pounds| poond: pound| poonds: pounds| bairn: child| lass: girl| lassie: girl| hoose: house|
  hame: home| wrang: wrong| stane: stone| bane: bone| stoot: stout| cannae: can not|
  canna: can not| dinnae: do not| dinna: do not| didnae: did not| didna: did not| disnae: does not|
  isnae: is not| isna: is not| arenae: are not| arena: are not| wisnae: was not| wasnae: was not|
  wasna: was not| werenae: were not| hasnae: has not| hasna: has not| havnae: have not|
  havenae: have not| hadnae: had not| wilnae: will not| willnae: will not| wullnae: will not|
  winna: will not| wouldnae: would not| widnae: would not| couldnae: could not|
  shouldnae: should not| neednae: need not| doesnae: does not| thee: you| thou: you| thy: your|
  thine: yours| tha: you| hast: have| dost: do| amn't: am not| amnt: am not| outta: out of|
  inta: into| offa: off of| sorta: sort of| lotta: lot of| coulda: could have|
  shoulda: should have| woulda: would have| oughta: ought to| hafta: have to| needa: need to|
  tryna: trying to| gonnae: going to| intae: into| finna: going to| fixin: going| innit: is it not| cuz: because| cos: because|
  coz: because| 'cause: because| yall: you all| yonder: there| reckons: thinks| agin: again|
  het: hot| bust: broke| busted: broke| sumpin: something| leastways: at least| t'other: the other|
  tother: the other| dat: that| dese: these| dose: those| ze: the| zis: this| zat: that| zey: they|
  iz: is| vill: will| und: and| ma: my| mak: make| git: get| fer: for|
  thoom: thumb| gairden: garden| fu: full| stert: start| sterted: started| yestreen: last night|
  maun: must| twinty: twenty| thirtie: thirty| eeleven: eleven| eleeven: eleven| eleevin: eleven|
  nobbut: only| reet: right| tek: take| teks: takes| mek: make| meks: makes| allus: always|
  gi: give| gie's: give me| brocht: brought| thocht: thought| dreepin: dripping| drap: drop|
  drooned: drowned| heids: heads| bairns: children| thegither: together| thae: those| theday: today|
  the'day: today| the'morn: tomorrow| awfy: awfully| faither: father| mither: mother| breid: bread|
  swole: swollen| kilt: killed| het: hot| holt: hold| chimbley: chimney| hit's: it is| them's: those are|
  rinsin: rinsing| pressin: pressing| ketch: catch| clumb: climbed| et: ate| fetcht: fetched| wisht: wish|
  'appen: maybe| aboot: about| reckoned: thought
`;

const SPELLED: Readonly<Record<string, string>> = Object.fromEntries(
  PAIRS.split("|").map((pair) => {
    const [spelled = "", meant = ""] = pair.trim().split(": ");
    return [spelled, meant] as const;
  }),
);

/** What is left of a word whose end is swallowed, where an apostrophe says so: "o'", "wi'". */
const SWALLOWED: Readonly<Record<string, string>> = {
  o: "of",
  wi: "with",
  an: "and",
  th: "the",
  ol: "old",
  t: "the",
};

/** A word with an apostrophe for its swallowed end: "boilin'" is "boiling". */
export function unswallowed(word: string): string {
  if (Object.hasOwn(SWALLOWED, word)) return SWALLOWED[word] ?? word;
  return /[a-z]{2}in$/.test(word) ? `${word}g` : word;
}

/** The words that a dialect spelling stands for; undefined where it is not one. */
export function fromDialect(word: string): string | undefined {
  return Object.hasOwn(SPELLED, word) ? SPELLED[word] : undefined;
}
