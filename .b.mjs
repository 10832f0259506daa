var __defProp = Object.defineProperty;
var __getOwnPropNames = Object.getOwnPropertyNames;
var __esm = (fn, res, err) => function __init() {
  if (err) throw err[0];
  try {
    return fn && (res = (0, fn[__getOwnPropNames(fn)[0]])(fn = 0)), res;
  } catch (e) {
    throw err = [e], e;
  }
};
var __export = (target, all) => {
  for (var name in all)
    __defProp(target, name, { get: all[name], enumerable: true });
};

// src/language/grammar/word-set.ts
function wordSet(...lines) {
  return new Set(lines.join(" ").split(" "));
}
var init_word_set = __esm({
  "src/language/grammar/word-set.ts"() {
    "use strict";
  }
});

// src/language/sound.ts
function soundKey(name) {
  const known2 = keys.get(name);
  if (known2 !== void 0) return known2;
  let key = name.toLowerCase();
  for (const [pattern, into] of SOUND_STEPS) key = key.replace(pattern, into);
  if (keys.size > MOST_KEYS) keys.clear();
  keys.set(name, key);
  return key;
}
function editDistance(a, b, limit) {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let before = [];
  let last2 = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j += 1) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let best2 = Math.min(last2[j - 1] + change, last2[j] + 1, row[j - 1] + 1);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        best2 = Math.min(best2, before[j - 2] + 1);
      }
      row.push(best2);
      if (best2 < least) least = best2;
    }
    if (least > limit) return limit + 1;
    before = last2;
    last2 = row;
  }
  return last2[b.length];
}
var SOUND_STEPS, keys, MOST_KEYS;
var init_sound = __esm({
  "src/language/sound.ts"() {
    "use strict";
    SOUND_STEPS = [
      [/[^a-z]/g, ""],
      [/ough/g, "o"],
      [/igh/g, "i"],
      [/ph/g, "f"],
      [/ck|q|x|c(?=[aoulrtk]|$)/g, "k"],
      [/tch|ch/g, "j"],
      [/c(?=[eiy])|z/g, "s"],
      [/c/g, "k"],
      [/dg|sh/g, "j"],
      [/wh/g, "w"],
      [/gh/g, "g"],
      [/kn/g, "n"],
      [/wr/g, "r"],
      [/mb$/g, "m"],
      [/d/g, "t"],
      [/g/g, "k"],
      [/b/g, "p"],
      [/v/g, "f"],
      [/(?!^)[aeiouyhw]/g, ""],
      [/^[aeiouyh]+/g, "a"],
      [/(.)\1+/g, "$1"]
    ];
    keys = /* @__PURE__ */ new Map();
    MOST_KEYS = 5e3;
  }
});

// src/reckon/number-words.ts
var UNITS, TEENS, TENS;
var init_number_words = __esm({
  "src/reckon/number-words.ts"() {
    "use strict";
    UNITS = {
      zero: 0,
      one: 1,
      two: 2,
      three: 3,
      four: 4,
      five: 5,
      six: 6,
      seven: 7,
      eight: 8,
      nine: 9
    };
    TEENS = {
      ten: 10,
      eleven: 11,
      twelve: 12,
      thirteen: 13,
      fourteen: 14,
      fifteen: 15,
      sixteen: 16,
      seventeen: 17,
      eighteen: 18,
      nineteen: 19
    };
    TENS = {
      twenty: 20,
      thirty: 30,
      forty: 40,
      fourty: 40,
      fifty: 50,
      sixty: 60,
      seventy: 70,
      eighty: 80,
      ninety: 90
    };
  }
});

// src/language/values/spoken-numbers.ts
function wordAt(words, at) {
  return words[at]?.word ?? "";
}
function own(table, word) {
  return Object.hasOwn(table, word) ? table[word] : void 0;
}
function ordinalAt(words, at) {
  const word = wordAt(words, at);
  const index = ORDINALS.indexOf(word);
  if (index >= 0) return { value: index + 1, next: at + 1 };
  if (word === "thirtieth") return { value: 30, next: at + 1 };
  const ending = wordAt(words, at + 1);
  if (/^\d{1,2}$/.test(word) && /^(st|nd|rd|th)$/.test(ending)) {
    return { value: Number(word), next: at + 2 };
  }
  const tens = own(TENS, word);
  const unit = ORDINALS.indexOf(ending);
  if ((tens === 20 || tens === 30) && unit >= 0 && unit < 9) {
    return { value: tens + unit + 1, next: at + 2 };
  }
  return void 0;
}
function smallWholeAt(words, at) {
  const word = wordAt(words, at);
  if (/^\d{1,5}$/.test(word)) return { value: Number(word), next: at + 1 };
  const single = own(UNITS, word) ?? own(TEENS, word);
  if (single !== void 0) return { value: single, next: at + 1 };
  const tens = own(TENS, word);
  if (tens === void 0) return void 0;
  const unit = own(UNITS, wordAt(words, at + 1));
  return unit ? { value: tens + unit, next: at + 2 } : { value: tens, next: at + 1 };
}
function lowerPairAt(words, at) {
  const word = wordAt(words, at);
  if (word === "oh" || word === "o") {
    const unit = own(UNITS, wordAt(words, at + 1));
    return unit === void 0 ? void 0 : { value: unit, next: at + 2 };
  }
  const small = smallWholeAt(words, at);
  return small && !/^\d/.test(word) && small.value >= 10 ? small : void 0;
}
function largeAt(words, at) {
  const first2 = wordAt(words, at);
  let head = smallWholeAt(words, at);
  if (!head && first2 === "a" && /^(hundred|thousand)$/.test(wordAt(words, at + 1))) {
    head = { value: 1, next: at + 1 };
  }
  if (!head) return void 0;
  const scale = wordAt(words, head.next);
  if (scale === "thousand") {
    const thousands = { value: head.value * 1e3, next: head.next + 1 };
    return addRest(words, thousands, 1e3);
  }
  if (scale === "hundred") {
    return addRest(words, { value: head.value * 100, next: head.next + 1 }, 100);
  }
  return runTogetherAt(words, head) ?? head;
}
function addRest(words, head, below) {
  const start = wordAt(words, head.next) === "and" ? head.next + 1 : head.next;
  if (/^(a|an)$/.test(wordAt(words, start))) return head;
  const rest = below > 100 ? largeAt(words, start) : smallWholeAt(words, start);
  const another = start > head.next && /^(hundred|thousand)$/.test(wordAt(words, rest?.next ?? start));
  if (another) return head;
  return rest && rest.value < below ? { value: head.value + rest.value, next: rest.next } : head;
}
function runTogetherAt(words, head) {
  if (/^\d/.test(wordAt(words, head.next - 1)) || head.value < 1) return void 0;
  const pair = lowerPairAt(words, head.next);
  if (pair && head.value < 10) return { value: head.value * 100 + pair.value, next: pair.next };
  const second = own(UNITS, wordAt(words, head.next));
  if (head.value < 10 && second && wordAt(words, head.next + 1) === "hundred") {
    return { value: head.value * 1e3 + second * 100, next: head.next + 2 };
  }
  const third = own(UNITS, wordAt(words, head.next + 1));
  if (head.value < 10 && second !== void 0 && third !== void 0) {
    return { value: head.value * 100 + second * 10 + third, next: head.next + 2 };
  }
  return void 0;
}
function fractionAt(words, at) {
  const word = wordAt(words, at);
  if (word === "point") {
    let next = at + 1;
    let digits = "";
    for (; ; ) {
      const said3 = wordAt(words, next);
      const digit = said3 === "oh" ? 0 : own(UNITS, said3);
      if (digit === void 0 && !/^\d+$/.test(said3)) break;
      digits += digit === void 0 ? said3 : String(digit);
      next += 1;
    }
    return digits ? { value: Number(`0.${digits}`), next } : void 0;
  }
  if (/^\d\/\d$/.test(word)) return { value: ratio(word), next: at + 1 };
  if (word !== "and") return void 0;
  return partAt(words, at + 1);
}
function ratio(text) {
  const [over = 0, under = 1] = text.split("/").map(Number);
  return under === 0 ? 0 : over / under;
}
function partAt(words, at) {
  const word = wordAt(words, at);
  const following = wordAt(words, at + 1);
  if (/^\d\/\d$/.test(word)) return { value: ratio(word), next: at + 1 };
  if (word === "half") return { value: 0.5, next: at + 1 };
  if (/^(a|one|1)$/.test(word) && following === "half") return { value: 0.5, next: at + 2 };
  if (/^(a|one|1)$/.test(word) && following === "quarter") return { value: 0.25, next: at + 2 };
  if (/^(three|3)$/.test(word) && /^quarters?$/.test(following))
    return { value: 0.75, next: at + 2 };
  return void 0;
}
function dozensAt(words, at) {
  const said3 = [0, 1, 2].map((step) => wordAt(words, at + step));
  if (said3[0] === "half" && said3[1] === "a" && said3[2] === "dozen") {
    return { value: 6, next: at + 3 };
  }
  if (said3[0] === "a" && said3[1] === "half" && said3[2] === "dozen") {
    return { value: 6, next: at + 3 };
  }
  if (said3[0] === "half" && said3[1] === "dozen") return { value: 6, next: at + 2 };
  const many = said3[0] === "a" ? 1 : own(UNITS, said3[0] ?? "");
  if (many && said3[1] === "dozen") return { value: many * 12, next: at + 2 };
  if (said3[0] === "dozen") return { value: 12, next: at + 1 };
  if (said3[0] === "a" && (said3[1] === "couple" || said3[1] === "pair")) {
    return { value: 2, next: said3[2] === "of" ? at + 3 : at + 2 };
  }
  return void 0;
}
function numbersAt(words, at) {
  const dozens = dozensAt(words, at);
  if (dozens) return [dozens];
  const word = wordAt(words, at);
  const found2 = [];
  const whole = /^\d{1,3}(,\d{3})+$/.test(word) ? { value: Number(word.replaceAll(",", "")), next: at + 1 } : /^\d{1,6}(\.\d{1,4})?$/.test(word) ? { value: Number(word), next: at + 1 } : void 0;
  for (const base of [
    whole ? scaledUp(words, whole) : void 0,
    largeAt(words, at),
    whole,
    smallWholeAt(words, at)
  ]) {
    if (!base || found2.some((known2) => known2.next === base.next)) continue;
    const part2 = fractionAt(words, base.next);
    if (part2) found2.push({ value: base.value + part2.value, next: part2.next });
    found2.push(base);
  }
  const part = partAt(words, at);
  if (found2.length === 0 && part) found2.push(part);
  return found2.sort((a, b) => b.next - a.next);
}
function scaledUp(words, head) {
  const scale = wordAt(words, head.next);
  if (scale === "thousand") {
    return addRest(words, { value: head.value * 1e3, next: head.next + 1 }, 1e3);
  }
  return void 0;
}
function jarListAt(words, at) {
  const found2 = [];
  const jars = [];
  let next = at;
  for (; ; ) {
    if (wordAt(words, next) === "number" || wordAt(words, next) === "jar") next += 1;
    const one = smallWholeAt(words, next);
    if (!one || one.value < 1 || one.value > 99) break;
    if (!jars.includes(one.value)) jars.push(one.value);
    next = one.next;
    const range = /^(through|thru)$/.test(wordAt(words, next));
    const last2 = range ? smallWholeAt(words, next + 1) : void 0;
    if (last2 && last2.value > one.value && last2.value < 100) {
      for (let jar = one.value + 1; jar <= last2.value; jar += 1) jars.push(jar);
      next = last2.next;
    }
    found2.push({ value: [...jars], next });
    if (/^(and|or|plus)$/.test(wordAt(words, next))) next += 1;
  }
  return found2.reverse();
}
var ORDINALS;
var init_spoken_numbers = __esm({
  "src/language/values/spoken-numbers.ts"() {
    "use strict";
    init_number_words();
    ORDINALS = [
      "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth",
      "fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth"
    ].join(" ").split(" ");
  }
});

// src/language/words.ts
function undrawn(word) {
  if (CLIPPED.has(word)) return `${word}g`;
  return DRAWN.find(([pattern]) => pattern.test(word))?.[1] ?? word;
}
function expand(raw, before) {
  const signs = Object.hasOwn(SIGNS, raw) ? SIGNS[raw] : void 0;
  if (signs)
    return raw.length === 1 && /[½¼¾]/.test(raw) && !isDigits(before) ? signs.slice(1) : signs;
  const folded = raw.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  const plain = folded.replace(/[’ʼ`´]/g, "'");
  const unit = Object.hasOwn(AFTER_NUMBER, plain) ? AFTER_NUMBER[plain] : void 0;
  if (unit && isDigits(before)) return [unit];
  const whole = Object.hasOwn(EXPANDED, plain) ? EXPANDED[plain] : void 0;
  if (whole !== void 0) return whole === "" ? [] : whole.split(" ");
  const quote = plain.lastIndexOf("'");
  if (quote < 0) return [undrawn(plain)];
  const stem = plain.slice(0, quote);
  const ending = plain.slice(quote + 1);
  if (ending === "t" && stem.endsWith("n")) return [stem.slice(0, -1), "not"];
  const full = Object.hasOwn(ENDINGS, ending) ? ENDINGS[ending] : void 0;
  return full ? [...stem.split("'"), full] : plain.split("'");
}
function isDigits(word) {
  return word !== void 0 && /^\d/.test(word);
}
function mendSounds(words) {
  if (words.length > 2 && words.at(-1)?.word === "love") {
    if (!LOVED_BY.has(words.at(-2)?.word ?? "")) words.pop();
  }
  const at = (place2) => words[place2]?.word ?? "";
  for (const [place2, { word }] of words.entries()) {
    const eight = word === "ate" && EIGHT_BEFORE.has(at(place2 - 1)) && EIGHT_OF.has(at(place2 + 1));
    const ofThem = at(place2 + 1) === "of" && /^(them|those|these)$/.test(at(place2 + 2));
    const count = ofThem && Object.hasOwn(COUNTS, word) ? COUNTS[word] : void 0;
    const you = word === "ya" && place2 > 0 ? "you" : void 0;
    const meant = eight ? "eight" : count ?? you;
    if (meant) words[place2] = { ...words[place2], word: meant };
  }
}
function wordsOf(text) {
  const read = text.slice(0, MAX_CHARACTERS);
  const words = [];
  let cut = text.length > MAX_CHARACTERS && text.slice(MAX_CHARACTERS).trim() !== "";
  let before;
  for (const match of read.matchAll(PIECE)) {
    const raw = match[0];
    const start = match.index;
    const end = start + raw.length;
    for (const word of expand(raw, before)) {
      const alt = raw.length > word.length && Object.hasOwn(ALTERNATIVES, word) ? ALTERNATIVES[word] : void 0;
      words.push(alt ? { word, alt, start, end } : { word, start, end });
    }
    before = raw;
    if (words.length > MAX_WORDS) {
      cut = true;
      words.length = MAX_WORDS;
      break;
    }
  }
  mendSounds(words);
  return { text, words, asked: /\?\s*["'”’)]*\s*$/.test(text.slice(-40)), cut };
}
var MAX_CHARACTERS, MAX_WORDS, PIECE, SIGNS, EXPANDED, ENDINGS, ALTERNATIVES, AFTER_NUMBER, CLIPPED, COUNTS, EIGHT_BEFORE, EIGHT_OF, DRAWN, LOVED_BY;
var init_words = __esm({
  "src/language/words.ts"() {
    "use strict";
    init_word_set();
    MAX_CHARACTERS = 600;
    MAX_WORDS = 60;
    PIECE = /(?<=^|\s)[-−](?=\d)|\d+(?:[.,:/]\d+)*|[\p{L}\p{M}]+(?:['’ʼ`´][\p{L}\p{M}]+)*|[½¼¾⅓⅔⅛#°%&]/gu;
    SIGNS = {
      "\xBD": ["and", "a", "half"],
      "\xBC": ["and", "a", "quarter"],
      "\xBE": ["and", "three", "quarters"],
      "#": ["number"],
      "\xB0": ["degrees"],
      "%": ["percent"],
      "&": ["and"],
      "-": ["minus"],
      "\u2212": ["minus"]
    };
    EXPANDED = {
      its: "it is",
      thats: "that is",
      whats: "what is",
      whens: "when is",
      hows: "how is",
      wheres: "where is",
      theres: "there is",
      lets: "let us",
      "let's": "let us",
      im: "i am",
      ive: "i have",
      weve: "we have",
      itll: "it will",
      theyll: "they will",
      thatll: "that will",
      id: "i would",
      ill: "i will",
      youll: "you will",
      shouldnt: "should not",
      couldnt: "could not",
      everybodys: "everybody is",
      theyre: "they are",
      theyve: "they have",
      youre: "you are",
      dont: "do not",
      doesnt: "does not",
      didnt: "did not",
      isnt: "is not",
      arent: "are not",
      wasnt: "was not",
      havent: "have not",
      hasnt: "has not",
      cant: "can not",
      cannot: "can not",
      wont: "will not",
      wouldnt: "would not",
      "can't": "can not",
      "won't": "will not",
      "ain't": "is not",
      aint: "is not",
      em: "them",
      bout: "about",
      gonna: "going to",
      gotta: "got to",
      wanna: "want to",
      lemme: "let me",
      gimme: "give me",
      dunno: "do not know",
      kinda: "kind of",
      "o'clock": "oclock",
      "y'all": "you all",
      "ma'am": "",
      "'til": "till",
      til: "till",
      ok: "okay",
      okey: "okay",
      alright: "all right",
      yea: "yeah",
      flavour: "flavor",
      colour: "color",
      thankyou: "thank you",
      another: "another",
      halfpint: "half pint",
      halfpints: "half pints",
      gotcha: "gotcha",
      anymore: "any more",
      brinebell: "brine bell",
      lbs: "pounds",
      lb: "pounds",
      kg: "kilos",
      kgs: "kilos",
      kilograms: "kilos",
      kilogram: "kilos",
      min: "minutes",
      mins: "minutes",
      hr: "hours",
      hrs: "hours",
      sec: "second",
      secs: "seconds",
      ft: "feet",
      qt: "quart",
      qts: "quarts",
      pt: "pint",
      pts: "pints",
      metres: "meters",
      metre: "meters",
      meter: "meters",
      kilopascal: "kpa",
      kilopascals: "kpa",
      kilopascales: "kpa",
      towards: "toward",
      tonite: "tonight"
    };
    ENDINGS = {
      s: "is",
      re: "are",
      ve: "have",
      ll: "will",
      d: "would",
      m: "am"
    };
    ALTERNATIVES = { is: "has", would: "had" };
    AFTER_NUMBER = {
      m: "meters",
      f: "fahrenheit",
      c: "celsius",
      h: "hours",
      p: "pints",
      q: "quarts",
      g: "grams"
    };
    CLIPPED = wordSet(
      "boilin rollin bubblin simmerin sittin rockin jigglin steamin ventin holdin showin readin",
      "coolin goin doin startin gettin makin puttin takin fillin packin peelin slicin choppin",
      "washin trimmin leakin hittin runnin comin droppin sealin pingin cookin heatin climbin risin",
      "fallin losin workin waitin finishin loadin stirrin drainin rinsin soakin settin somethin",
      "nothin tellin sayin lookin blowin"
    );
    COUNTS = { too: "two", to: "two", for: "four", won: "one" };
    EIGHT_BEFORE = wordSet("filled packed loaded have got makes is");
    EIGHT_OF = wordSet("pints quarts jars half pounds");
    DRAWN = [
      [/^u+m+$/, "um"],
      [/^u+h+$/, "uh"],
      [/^e+r+m*$/, "er"],
      [/^h+m+$/, "hmm"],
      [/^m{2,}$/, "mm"],
      [/^a+h+$/, "ah"],
      [/^o+h{2,}$/, "oh"],
      [/^so{2,}$/, "so"],
      [/^we+ll{2,}$/, "well"]
    ];
    LOVED_BY = wordSet("i we you they to would with of in much my the");
  }
});

// src/language/choosing.ts
function core(said3) {
  return said3.words.map(({ word }) => word).filter((word) => !NOTHING_SAID.has(word));
}
function wordsIn(choice) {
  return wordsOf(choice).words.map(({ word }) => word);
}
function namedBy(said3, choices) {
  const limit = choices.length <= 3 ? 2 : 1;
  const fits = (choice, near) => {
    const words = wordsIn(choice);
    return said3.every(
      (word) => words.some(
        (known2) => known2 === word || near && word.length > 3 && (soundKey(known2) === soundKey(word) || editDistance(known2, word, limit) <= Math.min(limit, Math.floor(word.length / 3)))
      )
    );
  };
  for (const near of [false, true]) {
    const found2 = choices.flatMap((choice, index) => fits(choice, near) ? [index] : []);
    const exact = found2.filter((index) => wordsIn(choices[index]).join(" ") === said3.join(" "));
    if (exact.length === 1) return exact;
    if (found2.length > 0) return found2;
  }
  return [];
}
function pickChoices(text, choices) {
  const said3 = wordsOf(text);
  const words = core(said3);
  const all = words.join(" ");
  const every = choices.map((_, index) => index);
  if (/^(both|all|everything|every|both them|all both)$/.test(all)) {
    return all === "both" && choices.length !== 2 ? void 0 : every;
  }
  if (/^(neither|none|nothing|not either|neither nor)$/.test(all)) return [];
  const place2 = placeOf(said3, choices.length);
  if (place2 !== void 0) return [place2];
  if (words.length === 0) return void 0;
  const picked = /* @__PURE__ */ new Set();
  for (const part of all.split(/ (?:and|plus|both) | and /)) {
    const found2 = namedBy(
      part.split(" ").filter((word) => word !== "and"),
      choices
    );
    if (found2.length !== 1) return void 0;
    picked.add(found2[0]);
  }
  return [...picked].sort((a, b) => a - b);
}
function placeOf(said3, count) {
  const words = said3.words.filter(
    ({ word }) => !NOTHING_SAID.has(word) || word === "one" || word === "number"
  );
  const first2 = words[0]?.word;
  if (first2 === "last" || first2 === "latter") return count - 1;
  if (first2 === "former") return 0;
  const rest = words.slice(words[0]?.word === "number" ? 1 : 0);
  const ordinal = ordinalAt(rest, 0) ?? smallWholeAt(rest, 0);
  const left = ordinal && rest.slice(ordinal.next).filter(({ word }) => word !== "one");
  if (!ordinal || left?.length !== 0) return void 0;
  return ordinal.value >= 1 && ordinal.value <= count ? ordinal.value - 1 : void 0;
}
function choiceIn(said3, choices) {
  const all = core(said3).join(" ");
  const several = /^(both|neither|none|all|either)$/.exec(all);
  if (several) return several[0];
  const picked = pickChoices(said3.text, choices);
  if (!picked || picked.length === 0) return void 0;
  return picked.map((index) => choices[index]).join(" and ");
}
var NOTHING_SAID;
var init_choosing = __esm({
  "src/language/choosing.ts"() {
    "use strict";
    init_word_set();
    init_sound();
    init_spoken_numbers();
    init_words();
    NOTHING_SAID = wordSet(
      "the my our that this those these it is i mean meant one ones please um uh well just okay yes",
      "no actually said was for with go let us do batch load timer of them choice option number",
      "want think say would be talking about we are am now oh sorry"
    );
  }
});

// src/language/answers.ts
function bareNumber(said3) {
  const { words } = said3;
  let from = 0;
  while (from < words.length) {
    for (const number of numbersAt(words, from)) {
      const rest = words.slice(number.next);
      if (rest.every(({ word }) => AROUND.has(word))) return number.value;
    }
    if (!AROUND.has(words[from]?.word ?? "")) return void 0;
    from += 1;
  }
  return /^(none|nothing|no jars)$/.test(words.map(({ word }) => word).join(" ")) ? 0 : void 0;
}
function noneAtAll(said3) {
  const all = said3.words.map(({ word }) => word).join(" ");
  return /^(none|none of them|not one|not a single one|not any|zero)$/.test(all);
}
function answer(said3, value, confidence) {
  return { intent: "answer", slots: { value }, confidence, text: said3.text };
}
function lostBoil(said3) {
  const all = said3.words.map(({ word }) => word).join(" ");
  if (!/^(no )?(it|we) (has |have )?lost (the|its|our) boil$/.test(all)) return void 0;
  return { intent: "no", slots: {}, confidence: 1, text: said3.text };
}
function answerTo(said3, question) {
  if (question.kind === "choice" || question.choices) {
    const chosen = choiceIn(said3, question.choices ?? []);
    if (chosen !== void 0) return answer(said3, chosen, 1);
  }
  if (question.kind === "yes-no") return lostBoil(said3);
  const number = bareNumber(said3);
  if (number !== void 0 && !hasFeet(said3)) return answer(said3, number, 1);
  if (question.kind !== "text" && noneAtAll(said3)) return answer(said3, 0, 0.9);
  return void 0;
}
function hasFeet(said3) {
  return said3.words.some(({ word }) => word === "feet" || word === "meters");
}
function bareAnswer(said3) {
  if (said3.asked) return void 0;
  const number = numbersAt(said3.words, 0).find(({ next }) => next === said3.words.length);
  if (number) return answer(said3, number.value, 0.5);
  const all = said3.words.map(({ word }) => word).join(" ");
  const known2 = /^(the )?(both|neither|none|all|first|second|third|last)( one| of them)?$/.exec(
    all
  );
  return known2 ? answer(said3, known2[2] ?? all, 0.5) : void 0;
}
var AROUND;
var init_answers = __esm({
  "src/language/answers.ts"() {
    "use strict";
    init_choosing();
    init_word_set();
    init_spoken_numbers();
    AROUND = wordSet(
      "um uh er well so oh just about maybe make it i say would think that is we have at the please",
      "okay sir only exactly around feet jars of them there are got say like probably my our"
    );
  }
});

// src/language/intents/abandon.ts
var abandon;
var init_abandon = __esm({
  "src/language/intents/abandon.ts"() {
    "use strict";
    abandon = {
      cost: "changing",
      when: ["working"],
      slots: { target: "name" },
      example: "abandon the beets",
      unasked: true,
      topical: true,
      wordings: [
        `[<let>] (stop|end|quit|finish) [<the>|this] ({target}|batch|it) (for good|altogether|
    entirely|completely)`,
        `[<let>] (call|cancel) (the whole thing|the batch|this batch|the whole batch|everything|
    {target}|the whole lot) off`,
        "[<let>] call (this|the|that) [whole] (batch|lot|thing) off [<why-abandon>]",
        `[<let>] (toss|abandon|scrap|dump|throw out|throw away|give up on|ditch|give up|kill|drop|
    cancel|chuck|quit|call off|stop|bin|end|trash|discard|pitch|forget|forget about|get rid of|
    write off|scratch|bail on|bail out of|do away with|pull the plug on|junk|throw in the towel
    on) (<the>|this|that|the whole|this whole|that whole|the entire|the rest of the|the rest of
    this) (batch|lot|run|recipe|whole batch|session|thing|whole thing|whole lot|project) [out|
    away|off|altogether|entirely|for good|of {target}]`,
        `[<let>] (abandon|scrap|give up on|ditch|call off|give up|write off|throw out the batch of|
    forget|pull the plug on|forget about|stop making|dump|junk|throw out|bail on|toss out|
    trash|toss|chuck|do away with|cancel|quit|end) [<the>] {target} [batch|for good|altogether|
    entirely|out|off] [<why-abandon>]`,
        "[<let>] (abandon|scrap|call off|cancel|toss) [<the>] (batch|lot|load) [of] {target}",
        `[<let>] (abandon|scrap|call|throw) (it|this|this one|that|that one|everything) (off|
    altogether|for good|entirely|all)`,
        `[<let>] (abandon|scrap|call off|give up on|ditch|give up) (it|this|this one|that|that one|
    everything|it all) [<why-abandon>]`,
        `[<the>] {target} (is|are) [all|just] (ruined|spoiled|burnt|burned|scorched|no good|moldy|
    mush) (ditch|scrap|abandon|dump|forget) (it|them|the batch|that batch|the lot|the whole
    batch)`,
        `(i|we) (give up|quit|am giving up|are giving up|am giving up on {target}|am abandoning
    {target}|am giving up on this batch|am giving up on it|am scrapping it|am scrapping this
    batch|am calling it off)`,
        `(i am|we are) (giving up on|abandoning|scrapping|ditching|tossing|dumping|calling off|
    quitting|junking|chucking|pitching|writing off|bailing on) [<the>|this] (batch|{target}|
    whole batch|lot|whole thing) [batch|out]`,
        `(i am|we are) (giving up on|abandoning|scrapping|ditching|calling off|quitting|bailing on|
    calling) (it|this|this one|that one|everything|the whole thing) [off]`,
        "[<let>] (throw|toss|chuck|pitch|dump) [<the>|this|this whole|the whole] batch [out|away]",
        "[<let>] (throw|toss|chuck) [<the>] {target} batch [out|away]",
        "[<the>] {target} (is|are) a (write off|loss|lost cause|goner)",
        "this batch is (ruined|a loss|a write off|no good|done for|a goner|a lost cause)",
        "(toss|throw|chuck|pitch|dump) the whole (batch|lot) [out|away]",
        "we are not (doing|making|finishing|going to finish) [<the>] {target} [after all|any more]"
      ],
      spoken: ["abandon the {target}"],
      bags: [
        {
          must: [
            `abandon|abandoning|scrap|scrapping|give up|giving up|call off|calling off|toss|throw
        out|dump|ditch|bail|bailing|write off|calling it quits|throw away|throwing out|quit|
        quitting`,
            `(this|that|the|whole|entire|my|our) [whole|entire] (batch|lot|thing|run|load|project)|
        on {target}|<the> {target}|{target} batch|it all`
          ],
          may: `
        <let>|i|we|am|are|going|to|on|off|of|out|away|for good|altogether|and|up|with|it|the|
        this|that|all|batch|want|just|will|have|had|enough|done|is|no good|ruined|entirely|
        completely|now|quits
      `
        }
      ],
      lists: {
        "why-abandon": `
      [because|since|as] (they are|it is|they have|it has|that is) [all|gone|just|completely]
      (ruined|spoiled|burnt|burned|scorched|no good|bad|off|moldy|mush|a mess|a loss|wrecked|
      past saving|beyond saving|not worth it|done for|gone bad|gone off|gone)
    `
      }
    };
  }
});

// src/language/intents/acknowledge.ts
var acknowledge;
var init_acknowledge = __esm({
  "src/language/intents/acknowledge.ts"() {
    "use strict";
    acknowledge = {
      cost: "changing",
      when: ["always"],
      slots: {},
      example: "got it",
      givesWay: "all",
      wordings: [
        `(okey (doke|dokey|dokie)|okay (doke|dokey|dokie)|okie dokie|righty ho|right you are|right
    oh|very good|fair enough|will do|jolly good|i hear you|much obliged)`,
        `[<ack>] <ack> [<ack>] [then|there|now|that|you|so much|very much|much|a lot|kindly|for that|
    sir|maam|to know|enough|for telling me|for the warning|for the reminder|for letting me know|
    for the heads up|for reminding me|dear|friend|on that]`
      ],
      spoken: ["got it", "thank you"],
      lists: {
        ack: `
      right you are|right enough|good to hear|got you|sure okay|okay|all right|got it|i got it|
      got that|thanks|thank you|many thanks|i hear you|heard|heard you|understood|roger|roger
      that|will do|noted|on it|i am on it|copy|copy that|gotcha|sounds good|good|fine|very well|
      i know|i see|cheers|good to know|right|right o|righto|okey dokey|okie dokie|great|good
      enough|all righty|ten four|i heard you|i heard that|i heard|loud and clear|message
      received|received|acknowledged|that is fine|that is good|that is okay|all good|fair
      enough|cool|lovely|perfect|excellent|much obliged|appreciate it|i appreciate it|
      wonderful|thanks a lot|thanks very much|yes i heard|yes i heard you|yes i know|i know i
      know|i am coming|coming|i am going|i have got it|i understand|makes sense|sounds fine|
      sure thing boss|works for me|fine by me|fine with me|that works|very good|good job|well
      done|nice|nice work|splendid|aye aye|done and noted|consider it noted|i will do that|i
      will get to it|i will see to it|i am listening|i am here|that will do|super|terrific|no
      problem|no worries|heard that|point taken|i will get on it|right away|right on|okey doke|
      you are right|good thinking|i got you|on my way|i will|thanks for that|ta|alrighty|yes got
      it|yes okay|yeah okay|yeah got it|yep got it|seen|i saw|i saw that|i see that|i see it|
      taken care of thanks|duly noted|good call|thank you very much|i will remember|i will
      remember that
    `
      }
    };
  }
});

// src/language/intents/altitude.ts
function asLarge(low, high) {
  if (low >= 100 || high < 1e3) return low;
  return low * (high % 1e3 === 0 ? 1e3 : 100);
}
var FEET_PER_METRE, finishAltitude, altitude;
var init_altitude = __esm({
  "src/language/intents/altitude.ts"() {
    "use strict";
    FEET_PER_METRE = 3.280839895;
    finishAltitude = (raw) => {
      const unit = raw.metres === void 0 ? 1 : FEET_PER_METRE;
      const inFeet = (value) => Math.round(Number(value) * unit);
      const spans = raw.low !== void 0 && raw.high !== void 0;
      const high = inFeet(spans ? raw.high : raw.metres ?? raw.feet);
      const low = spans ? inFeet(asLarge(Number(raw.low), Number(raw.high))) : high;
      const feet = spans ? Math.round((low + high) / 2) : high;
      if (feet < -1500 || feet > 2e4 || low > high) return void 0;
      const uncertaintyFt = spans ? high - feet : inFeet(raw.off);
      return { slots: { feet, ...uncertaintyFt > 0 ? { uncertaintyFt } : {} } };
    };
    altitude = {
      cost: "changing",
      when: ["asked:altitude"],
      slots: { feet: "number", uncertaintyFt: "number" },
      parts: ["metres", "low", "high", "off"],
      example: "we're at six thousand two hundred feet",
      forgiving: true,
      unasked: true,
      finish: finishAltitude,
      wordings: [
        `[<we>|it|this|here|the kitchen|our kitchen|my kitchen|this kitchen|our place|the house|this
    place|our house|home|the ranch|the farm|the cabin] [am|is|are|live|lives|sit|sits|cook|
    lies|stands|is up|are up|am up|live up|can|are sitting|are located|is located|are cooking|
    are living|put up food] [up|here|at|around] [at] [about|around|roughly|an altitude of|an
    elevation of|nearly|almost|close to|some|just over|just under|exactly|right at]
    {feet:number} feet [up|high|above sea level|elevation|of elevation|altitude|of altitude|in
    elevation|in altitude|above the sea|in the air|here|up here] [<within>]`,
        `[<we>|it|this|here|the kitchen|our kitchen|my kitchen|this kitchen|our place|the house|this
    place|our house|home|the ranch|the farm|the cabin] [am|is|are|live|lives|sit|sits|cook|
    lies|stands|is up|are up|live up] [up|here|at|around] [at] [about|around|roughly|an altitude
    of|an elevation of|nearly|some] {metres:number} meters [up|high|above sea level|elevation|
    of elevation|altitude|of altitude|in elevation|in altitude|above the sea] [<within>]`,
        `[<the>] [kitchen] (altitude|elevation) [here|of the kitchen|of this kitchen|at home|up here]
    [is|of|at|now] [about|around|roughly|exactly] {feet:number} [feet] [above sea level]
    [<within>]`,
        `[<the>] [kitchen] (altitude|elevation) [here|of the kitchen] [is|of|at] [about|around|
    roughly] {metres:number} meters [above sea level] [<within>]`,
        `(set|change|make) [<the>] [kitchen] (altitude|elevation) [of the kitchen] [to|at|is]
    {feet:number} [feet]`,
        "(set|change|make) [<the>] [kitchen] (altitude|elevation) [to|at] {metres:number} meters",
        "<we> [am|are] [up|live|sit|cook] at (an|a) (altitude|elevation) of {feet:number} [feet]",
        "(<we> are|<we> am|<we> live|we are) at sea level {feet=0}",
        "[<of-place>] <between> {low:number} [feet] (and|to) {high:number} feet [<high-up>]",
        `[<of-place>] <between> {low:number} [meters] (and|to) {high:number} meters {metres=0}
    [<high-up>]`,
        "[<of-place>] {low:number} [feet] to {high:number} feet [<high-up>]"
      ],
      spoken: [
        "{feet:number} feet",
        "(we are|it is) at {feet:number} feet",
        "the altitude is {feet:number} [feet]"
      ],
      bags: [
        {
          must: ["{feet:number} feet", "altitude|elevation|up|high|above sea level|at|here|kitchen"],
          may: `
        we|i|are|am|is|it|our|my|the|this|live|sit|sits|cook|place|house|about|around|exactly|
        of|in|roughly|nearly|just over|just under|here|altitude|elevation|kitchen|to|be|set|
        for|almost
      `
        }
      ],
      lists: {
        "of-place": `
      <we> (are|am|live|sit|cook) [up|here] [at]|
      (it|this|the kitchen|our kitchen|my kitchen|the house|our house|home) (is|sits|lies) [at]|
      [<the>] [kitchen] (altitude|elevation) [here] [is]
    `,
        between: "[somewhere|anywhere|about|at] between|(somewhere|anywhere) from",
        "high-up": "up|high|up here|here|above sea level|of altitude|of elevation|in altitude",
        within: `
      (give or take|within) [about|a] {off:number} [feet|meters] [or so]|
      or so|more or less|give or take
    `
      }
    };
  }
});

// src/language/intents/answer.ts
var answer2;
var init_answer = __esm({
  "src/language/intents/answer.ts"() {
    "use strict";
    answer2 = {
      cost: "clearing",
      when: ["asked"],
      slots: { value: "number" },
      example: "nine",
      answer: true
    };
  }
});

// src/language/values/open-slots.ts
function numberOfThing(words, at) {
  return numbersAt(words, at).find(({ value, next }) => {
    const small = Number.isInteger(value) && value > 0 && value < 100;
    return small && !COUNTED.has(words[next]?.word ?? "") && numbersAt(words, next).length === 0;
  });
}
function labelsAt(words, at) {
  let start = at;
  while (LABEL_ARTICLES.has(words[start]?.word ?? "")) start += 1;
  const found2 = [];
  let label = "";
  for (let next = start; next < Math.min(words.length, start + 5); next += 1) {
    const word = words[next]?.word ?? "";
    if (label !== "" && LABEL_JOINERS.has(word)) {
      label += ` ${word}`;
      continue;
    }
    if (NO_LABEL.has(word) || /^\d/.test(word)) break;
    if (numbersAt(words, next).length > 0) break;
    label += label ? ` ${word}` : word;
    found2.push({ value: label, next: next + 1 });
    const number = SCORE_NAMES.has(word) ? void 0 : numberOfThing(words, next + 1);
    if (number) found2.push({ value: `${label} ${number.value}`, next: number.next });
  }
  return found2;
}
function textBetween(said3, at, next) {
  const from = said3.words[at];
  const to = said3.words[next - 1];
  if (!from || !to) return "";
  const whole = said3.cut && next === said3.words.length;
  const before = /[^\s\p{L}\p{N}.,;:!?'"]*$/u.exec(said3.text.slice(0, from.start))?.[0] ?? "";
  const after = /^[^\s\p{L}\p{N}.,;:!?'"]*/u.exec(said3.text.slice(to.end))?.[0] ?? "";
  const end = whole ? void 0 : to.end + after.length;
  const text = said3.text.slice(from.start - before.length, end);
  return text.replace(/[\s.,;:!]+$/u, "");
}
function skipLinks(words, at) {
  let next = at;
  while (SCORE_LINKS.has(words[next]?.word ?? "")) next += 1;
  return next;
}
function scoreAt(words, at) {
  const start = skipLinks(words, at);
  const name = words[start]?.word ?? "";
  if (SCORE_NAMES.has(name)) {
    const number2 = numbersAt(words, skipLinks(words, start + 1)).find(({ value }) => value <= 10);
    return number2 && { value: [name, number2.value], next: skipOutOf(words, number2.next) };
  }
  const number = numbersAt(words, start).find(({ value }) => value <= 10);
  if (!number) return void 0;
  let next = skipOutOf(words, number.next);
  if (/^(for|on|in)$/.test(words[next]?.word ?? "")) next += 1;
  next = skipLinks(words, next);
  const behind = words[next]?.word ?? "";
  if (!SCORE_NAMES.has(behind)) return void 0;
  return { value: [behind, number.value], next: next + 1 };
}
function scoreNameAt(words, at) {
  const name = words[at]?.word ?? "";
  return SCORE_NAMES.has(name) ? [{ value: name, next: at + 1 }] : [];
}
function skipOutOf(words, at) {
  if (words[at]?.word !== "out" || words[at + 1]?.word !== "of") return at;
  return numbersAt(words, at + 2)[0]?.next ?? at;
}
function scoresAt(words, at) {
  const scores = {};
  let next = at;
  for (; ; ) {
    if (next > at && words[next]?.word === "and") next += 1;
    const score = scoreAt(words, next);
    if (!score) break;
    scores[score.value[0]] = score.value[1];
    next = score.next;
  }
  return Object.keys(scores).length > 0 ? [{ value: scores, next }] : [];
}
function sizesAt(words, at) {
  const hit = SIZES.find(([said3]) => said3.every((word, step) => words[at + step]?.word === word));
  return hit ? [{ value: hit[1], next: at + hit[0].length }] : [];
}
function askedAt(said3, at, end) {
  const { words } = said3;
  const head = ASK_HEADS.find(
    (known2) => known2.every((word, step) => words[at + step]?.word === word)
  );
  if (!head || end - at > 16) return void 0;
  const asked = words.slice(at, end).map((word) => word.word);
  if (asked.some((word) => ASK_REFUSED.has(word))) return void 0;
  const subject = asked.find((word) => ASKED_ABOUT.has(word));
  if (!subject && !JARS_ASKED.test(asked.join(" "))) return void 0;
  const what = textBetween(said3, at, end).toLowerCase().replace(/\?+$/, "");
  return subject ? { what, subject } : { what };
}
var NO_LABEL, LABEL_JOINERS, LABEL_ARTICLES, COUNTED, SCORE_NAMES, SCORE_LINKS, SIZES, ASK_HEADS, ASKED_ABOUT, ASK_REFUSED, JARS_ASKED;
var init_open_slots = __esm({
  "src/language/values/open-slots.ts"() {
    "use strict";
    init_word_set();
    init_spoken_numbers();
    NO_LABEL = wordSet(
      "i me you we us it they them he she is are was were be been am do does did have has had will",
      "would could should can may might must shall not no yes and or but if when what who why how",
      "where timer timers minute minutes hour hours second seconds more longer another extra for to",
      "on in at by until till ago now please that this these those there here then just so as",
      "because okay with from about than too also the a an my our your its time clock boil boiling",
      "done up off out left going go longer still yet get got again night yesterday tonight today",
      "afternoon evening"
    );
    LABEL_JOINERS = /* @__PURE__ */ new Set(["and", "of", "n"]);
    LABEL_ARTICLES = /* @__PURE__ */ new Set(["the", "my", "our", "a", "an", "some", "your", "those", "these"]);
    COUNTED = wordSet(
      "minutes minute hours hour seconds second days day weeks week months month pounds pound degrees",
      "degree cups cup pints pint quarts quart jars ounces psi percent more"
    );
    SCORE_NAMES = wordSet(
      "crunch crunchiness crispness flavor texture color salt saltiness sourness tartness heat",
      "spice spiciness sweetness sweet overall look looks appearance aroma smell firmness tang",
      "tanginess body bite aftertaste set acidity bitterness garlic dill brine crisp clarity zing",
      "smoothness sour tart salty tender tenderness juiciness thickness spread freshness crispiness"
    );
    SCORE_LINKS = /* @__PURE__ */ new Set([
      "is",
      "of",
      "a",
      "an",
      "at",
      "was",
      "gets",
      "got",
      "the",
      "its",
      "it",
      "its",
      "scores"
    ]);
    SIZES = [
      [["pint", "and", "a", "half"], "pint-and-a-half"],
      [["pints", "and", "a", "half"], "pint-and-a-half"],
      [["half", "pint"], "half-pint"],
      [["half", "pints"], "half-pint"],
      [["halfpint"], "half-pint"],
      [["quarter", "pint"], "quarter-pint"],
      [["quarter", "pints"], "quarter-pint"],
      [["half", "gallon"], "half-gallon"],
      [["half", "gallons"], "half-gallon"],
      [["twelve", "ounce"], "12-ounce"],
      [["12", "ounce"], "12-ounce"],
      [["eight", "ounce"], "half-pint"],
      [["8", "ounce"], "half-pint"],
      [["four", "ounce"], "quarter-pint"],
      [["4", "ounce"], "quarter-pint"],
      [["pint"], "pint"],
      [["pints"], "pint"],
      [["quart"], "quart"],
      [["quarts"], "quart"]
    ];
    ASK_HEADS = [
      "how much|how many|how big|how thick|how thin|how hot|how salty|how strong|how full|how high",
      "how deep|how fine|how small|how coarse|how long should i cut|how long do i cut|which vinegar",
      "which salt|what kind of|what sort of|what strength|what size|what spices|what headspace",
      "what is the|what is in|what is our|what are the|what goes in|what goes into|what do i put in",
      "what do we put in|what amount|what quantity|what vinegar|what salt|what do i need for",
      "what do i add|what do we need for|what proportion|what ratio|what ingredients|what else goes in",
      "what headspace|read me the|read the|read out the|read off the|tell me the|tell me how much",
      "tell me how many|list the|list|give me the|remind me how much|remind me how many",
      "remind me the|ingredients|ingredient|headspace|the ingredients|amount of|the headspace",
      "what does it take|what does the recipe|what does the brine|do i need any|do we need any",
      "is there any|does it take|go over the|run through the|show me the|show the|read back the"
    ].flatMap((line) => line.split("|")).map((head) => head.split(" "));
    ASKED_ABOUT = wordSet(
      "dill salt vinegar sugar water headspace brine juice lemon lime garlic pepper peppers pectin",
      "acid citric ingredients ingredient onions onion mustard celery turmeric spice spices cloves",
      "clove cinnamon ice calcium chloride seed seeds syrup strength quantities quantity amounts",
      "amount measurements proportions proportion ratio peppercorns flakes chili chile oil cabbage",
      "berries cucumbers beans beets tomatoes apples pears peaches cayenne bottled powder allspice",
      "room space recipe vinegar's horseradish leaves ginger honey butter thickness"
    );
    ASK_REFUSED = wordSet(
      "longer time was were did had ago yesterday last cost costs price you your he she her his",
      "they minutes hours left when boiling boil sealed should've year years worth pay paid sell",
      "next doing happen happened going think like love eat ate gave"
    );
    JARS_ASKED = /^how many (more )?(jars|pints|quarts|half pints|lids|pounds|cups)\b/;
  }
});

// src/language/values/kitchen-things.ts
var KITCHEN_THINGS, PICKERS, PICKED;
var init_kitchen_things = __esm({
  "src/language/values/kitchen-things.ts"() {
    "use strict";
    KITCHEN_THINGS = [
      "canner",
      "pressure canner",
      "water bath canner",
      "water bath",
      "waterbath",
      "bath",
      "pot",
      "big pot",
      "small pot",
      "stock pot",
      "canning pot",
      "kettle",
      "tea kettle",
      "water",
      "canner water",
      "bath water",
      "syrup",
      "sugar syrup",
      "brine",
      "pickling brine",
      "pickling liquid",
      "pickling syrup",
      "liquid",
      "vinegar",
      "vinegar mix",
      "vinegar syrup",
      "jam",
      "jelly",
      "juice",
      "sauce",
      "salsa",
      "relish",
      "preserves",
      "butter",
      "fruit",
      "berries",
      "mash",
      "slices",
      "cucumbers",
      "cukes",
      "cucumber slices",
      "pickles",
      "onions",
      "cabbage",
      "crock",
      "beans",
      "beets",
      "tomatoes",
      "carrots",
      "apples",
      "peaches",
      "pears",
      "corn",
      "seeds",
      "seed",
      "jars",
      "lids",
      "batch",
      "load",
      "pan",
      "saucepan",
      "skillet",
      "dehydrator",
      "blancher",
      "blanching water",
      "steamer",
      "double boiler",
      "milk",
      "room",
      "cellar",
      "fridge",
      "food",
      "pack",
      "center",
      "middle",
      "meat",
      "fish",
      "stock",
      "broth"
    ];
    PICKERS = [
      "first",
      "second",
      "third",
      "fourth",
      "last",
      "next",
      "other",
      "big",
      "small",
      "little",
      "left",
      "right",
      "back",
      "front",
      "new",
      "old",
      "large"
    ];
    PICKED = [
      "load",
      "canner",
      "batch",
      "pot",
      "burner",
      "timer",
      "lot",
      "kettle",
      "crock",
      "jars",
      "pan"
    ];
  }
});

// src/language/values/recipe-names.ts
var RECIPE_NAMES, VAGUE_NAMES, HEARD_AS;
var init_recipe_names = __esm({
  "src/language/values/recipe-names.ts"() {
    "use strict";
    RECIPE_NAMES = {
      "bread-and-butter-pickles": [
        "bread and butter pickles",
        "bread and butters",
        "bread and butter",
        "bread n butter pickles",
        "bread and butter chips",
        "butter pickles"
      ],
      "dilled-green-beans": [
        "dilly beans",
        "dilled green beans",
        "dilled beans",
        "dill beans",
        "dill green beans",
        "dilly green beans",
        "dillies",
        "dilly",
        "pickled green beans",
        "pickled beans",
        "pickled string beans",
        "beans with dill",
        "green beans with dill"
      ],
      "pickled-beets": [
        "pickled beets",
        "beet pickles",
        "pickled beet",
        "pickled beetroot",
        "beets in vinegar",
        "beets"
      ],
      "crushed-tomatoes": [
        "crushed tomatoes",
        "crushed tomato",
        "tomatoes crushed",
        "tomatoes to crush",
        "crushed canned tomatoes",
        "tomatoes",
        "canned crushed tomatoes"
      ],
      sauerkraut: ["sauerkraut", "kraut", "sour kraut", "fermented cabbage", "cabbage"],
      "berry-jam": [
        "berry jam",
        "jam",
        "berry preserves",
        "mixed berry jam",
        "strawberry jam",
        "raspberry jam",
        "blackberry jam",
        "blueberry jam",
        "berries into jam"
      ],
      "snap-beans": [
        "snap beans",
        "green beans in the pressure canner",
        "pressure canned green beans",
        "pressure canned beans",
        "plain green beans",
        "plain beans",
        "canned green beans",
        "green beans",
        "string beans",
        "beans in the pressure canner",
        "wax beans",
        "italian beans"
      ],
      "cucumber-seed": [
        "cucumber seed",
        "cucumber seeds",
        "cuke seed",
        "cuke seeds",
        "seed from the cucumbers",
        "seeds from the cucumbers",
        "cucumber seed saving"
      ],
      "quick-fresh-pack-dills": [
        "quick fresh pack dills",
        "fresh pack dills",
        "fresh pack dill pickles",
        "quick dills",
        "quick dill pickles",
        "dill pickles",
        "dills"
      ],
      "fermented-dills": [
        "fermented dills",
        "fermented dill pickles",
        "fermented pickles",
        "crock pickles",
        "crock dills",
        "brined dills",
        "sour dills",
        "barrel pickles",
        "dill pickles",
        "dills"
      ],
      "sweet-gherkins": ["sweet gherkins", "gherkins", "sweet gherkin pickles", "sweet baby pickles"],
      "quick-sweet-pickles": [
        "quick sweet pickles",
        "sweet pickles",
        "quick sweets",
        "sweet cucumber pickles"
      ],
      "pickle-relish": [
        "pickle relish",
        "relish",
        "cucumber relish",
        "sweet relish",
        "sweet pickle relish"
      ],
      "whole-tomatoes": [
        "whole tomatoes",
        "whole peeled tomatoes",
        "whole tomato",
        "tomatoes whole",
        "tomatoes"
      ],
      "tomato-juice": ["tomato juice", "juice from the tomatoes", "juiced tomatoes"],
      peaches: ["peaches", "canned peaches", "peach halves", "peach slices", "sliced peaches"],
      pears: ["pears", "canned pears", "pear halves"],
      "sliced-apples": ["sliced apples", "apple slices", "canned apples", "apples"],
      applesauce: ["applesauce", "apple sauce"],
      "apple-butter": ["apple butter"],
      "apple-jelly": ["apple jelly"],
      "grape-jelly": ["grape jelly"],
      "peach-jam": ["peach jam", "peach preserves"],
      "apricot-jam": ["apricot jam", "apricot preserves"],
      "chile-salsa": ["chile salsa", "chili salsa", "chilli salsa", "hot salsa", "salsa"],
      "choice-salsa": ["choice salsa", "salsa"],
      "cranberry-sauce": ["cranberry sauce", "cranberries", "whole cranberry sauce"],
      rhubarb: ["rhubarb", "stewed rhubarb"],
      "whole-berries": ["whole berries", "berries", "canned berries"],
      carrots: ["carrots", "canned carrots"],
      "whole-kernel-corn": ["whole kernel corn", "corn", "kernel corn", "sweet corn", "cut corn"],
      beets: [
        "plain beets",
        "plain canned beets",
        "pressure canned beets",
        "beets in the pressure canner",
        "canned beets",
        "beets"
      ],
      "dry-beans": ["dry beans", "dried beans", "kidney beans", "pinto beans", "shell beans"],
      asparagus: ["asparagus"],
      "meat-chunks": [
        "meat chunks",
        "chunks of meat",
        "meat",
        "canned meat",
        "venison",
        "beef chunks",
        "stew meat",
        "chunked meat"
      ],
      chicken: ["chicken", "canned chicken", "rabbit", "chicken or rabbit"],
      fish: ["fish", "trout", "salmon", "canned fish"],
      stock: ["stock", "broth", "meat stock", "chicken stock", "beef stock", "bone broth"],
      "tomato-seed": [
        "tomato seed",
        "tomato seeds",
        "seed from the tomatoes",
        "seeds from the tomatoes"
      ],
      "bean-seed": [
        "bean seed",
        "bean seeds",
        "seed beans",
        "seed from the beans",
        "seeds from the beans"
      ]
    };
    VAGUE_NAMES = {
      beans: ["dilled-green-beans", "snap-beans", "dry-beans"],
      pickles: [
        "bread-and-butter-pickles",
        "quick-fresh-pack-dills",
        "fermented-dills",
        "quick-sweet-pickles",
        "sweet-gherkins"
      ],
      cucumbers: ["bread-and-butter-pickles", "quick-fresh-pack-dills", "fermented-dills"],
      jelly: ["apple-jelly", "grape-jelly"],
      seed: ["cucumber-seed", "tomato-seed", "bean-seed"],
      seeds: ["cucumber-seed", "tomato-seed", "bean-seed"],
      juice: ["tomato-juice"],
      preserves: ["berry-jam", "peach-jam", "apricot-jam"]
    };
    HEARD_AS = {
      beats: "beets",
      beat: "beet",
      beads: "beets",
      beens: "beans",
      beings: "beans",
      means: "beans",
      bins: "beans",
      crowd: "kraut",
      krout: "kraut",
      crout: "kraut",
      pairs: "pears",
      pares: "pears",
      peers: "pears",
      dilli: "dilly",
      daily: "dilly",
      deli: "dilly",
      delhi: "dilly",
      silly: "dilly",
      billy: "dilly",
      dilley: "dilly",
      dillie: "dilly",
      deal: "dill",
      peachs: "peaches",
      tomatos: "tomatoes",
      jams: "jam",
      jamb: "jam",
      pickle: "pickled",
      relic: "relish",
      stalk: "stock",
      karats: "carrots",
      carats: "carrots"
    };
  }
});

// src/language/values/targets.ts
function simplify(name) {
  return name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, " ").trim();
}
function enter(names, said3, kind, id) {
  const name = simplify(said3);
  if (name === "") return void 0;
  let entry = names.byName.get(name);
  if (!entry) {
    entry = { name, key: soundKey(name), recipes: [], batches: [], timers: [] };
    names.byName.set(name, entry);
  }
  if (!entry[kind].includes(id)) entry[kind].push(id);
  return entry;
}
function namesOfRecipes(recipes2) {
  const known2 = recipeNames.get(recipes2);
  if (known2) return known2;
  const names = emptyNames();
  for (const [id, all] of Object.entries(RECIPE_NAMES)) {
    for (const name of all) enter(names, name, "recipes", id);
  }
  for (const recipe of recipes2) {
    for (const name of [recipe.title, recipe.id, ...recipe.names]) {
      enter(names, name, "recipes", recipe.id);
    }
  }
  for (const [name, ids] of Object.entries(VAGUE_NAMES)) {
    for (const id of ids) enter(names, name, "recipes", id);
  }
  for (const entry of names.byName.values()) {
    const alike = names.byKey.get(entry.key);
    if (alike) alike.push(entry);
    else names.byKey.set(entry.key, [entry]);
  }
  recipeNames.set(recipes2, names);
  return names;
}
function emptyNames() {
  return { byName: /* @__PURE__ */ new Map(), fuzzy: [], byKey: /* @__PURE__ */ new Map(), things: THINGS, running: 0 };
}
function namesOf(context) {
  const signature = JSON.stringify([context.running, context.timers]);
  if (last?.recipes === context.recipes && last.signature === signature) return last.names;
  const names = gatherNames(context);
  last = { recipes: context.recipes, signature, names };
  return names;
}
function gatherNames(context) {
  const recipes2 = namesOfRecipes(context.recipes);
  const names = {
    ...emptyNames(),
    byKey: recipes2.byKey,
    running: context.running.length + context.timers.length
  };
  const own2 = emptyNames();
  for (const batch of context.running) enterBatch(own2, recipes2, batch);
  for (const timer of context.timers) enter(own2, timer.label, "timers", timer.id);
  names.fuzzy = [...own2.byName.values()];
  names.byName = own2.byName;
  const layered = new Map(recipes2.byName);
  for (const [name, entry] of own2.byName) {
    const below = recipes2.byName.get(name);
    layered.set(name, below ? { ...entry, recipes: below.recipes } : entry);
  }
  names.byName = layered;
  return names;
}
function enterBatch(own2, recipes2, batch) {
  enter(own2, batch.id, "batches", batch.id);
  if (batch.title) enter(own2, batch.title, "batches", batch.id);
  if (batch.variety) enter(own2, batch.variety, "batches", batch.id);
  for (const stage of batch.stages ?? []) enter(own2, stage, "batches", batch.id);
  for (const entry of recipes2.byName.values()) {
    if (!entry.recipes.includes(batch.recipe)) continue;
    enter(own2, entry.name, "batches", batch.id);
    if (batch.variety) enter(own2, `${batch.variety} ${entry.name}`, "batches", batch.id);
  }
}
function joined(words, at, count) {
  let name = words[at]?.word ?? "";
  for (let step = 1; step < count; step += 1) name += ` ${words[at + step]?.word ?? ""}`;
  return name;
}
function exactAt(words, at, names) {
  for (let count = Math.min(LONGEST_NAME, words.length - at); count > 0; count -= 1) {
    const name = joined(words, at, count);
    const entry = names.byName.get(name);
    if (entry) return { value: entry, next: at + count };
    if (names.things.has(name)) return { value: name, next: at + count };
  }
  return void 0;
}
function allowance(name, rivals) {
  const byLength = name.length < 5 ? 0 : name.length < 9 ? 1 : 2;
  return rivals <= 3 ? byLength + (name.length >= 6 ? 1 : 0) : byLength;
}
function unheard(word) {
  return Object.hasOwn(HEARD_AS, word) ? HEARD_AS[word] ?? word : word;
}
function fuzzyAt(words, at, names, begun, plain) {
  for (let count = Math.min(4, words.length - at); count > 0; count -= 1) {
    const said3 = joined(words, at, count);
    if (allPlain(words, at, count, plain)) continue;
    if (said3.length < 3 || said3.length > 40) continue;
    const mended = said3.split(" ").map(unheard).join(" ");
    const entry = mended === said3 ? void 0 : names.byName.get(mended);
    if (entry && (count > 1 || begun || entry.batches.length > 0)) {
      return { value: entry, next: at + count };
    }
    if (said3.length < 4) continue;
    const near = nearest(said3, names.fuzzy, allowance(said3, names.running));
    if (near) return { value: near, next: at + count };
    const alike = names.byKey.get(soundKey(said3)) ?? [];
    const bySound = begun && soundKey(said3).length >= LONG_KEY;
    const limit = bySound ? said3.length : allowance(said3, 9) + (begun ? 1 : 0);
    const sounded = said3.length >= 5 ? nearest(said3, alike, limit) : void 0;
    if (sounded) return { value: sounded, next: at + count };
    const spelled = begun && said3.length >= 7 ? nearest(said3, names.byName.values(), 1) : void 0;
    if (spelled) return { value: spelled, next: at + count };
  }
  return void 0;
}
function allPlain(words, at, count, plain) {
  for (let step = 0; step < count; step += 1) {
    const word = words[at + step]?.word ?? "";
    if (!plain.has(word) && !/^\d/.test(word)) return false;
  }
  return true;
}
function nearest(said3, entries, limit) {
  let best2;
  let tied = false;
  let least = limit + 1;
  const key = soundKey(said3);
  for (const entry of entries) {
    if (entry.name[0] !== said3[0] && entry.key[0] !== key[0]) continue;
    const bonus = entry.key === key && said3.length >= LONG_NAME ? SAME_SOUND : 0;
    const distance = editDistance(said3, entry.name, limit + bonus) - bonus;
    if (distance > limit || distance > least) continue;
    tied = distance === least && best2 !== void 0 && !sameMeaning(best2, entry);
    if (distance === least && best2) continue;
    best2 = entry;
    least = distance;
  }
  return tied ? void 0 : best2;
}
function sameMeaning(a, b) {
  const ids = ({ recipes: recipes2, batches, timers }) => batches.length + timers.length > 0 ? [...batches, ...timers] : recipes2;
  return ids(a).join() === ids(b).join();
}
function targetFrom(found2, exact) {
  if (typeof found2 === "string") return { said: found2, meaning: NOTHING, exact };
  const { recipes: recipes2, batches, timers } = found2;
  return { said: found2.name, meaning: { recipes: recipes2, batches, timers }, exact };
}
function pickedAt(words, at) {
  const first2 = words[at]?.word ?? "";
  const second = words[at + 1]?.word ?? "";
  if (PICKER_WORDS.has(first2) && PICKED_WORDS.has(second)) {
    return { value: targetFrom(`${first2} ${second}`, true), next: at + 2 };
  }
  if (!PICKED_WORDS.has(first2)) return void 0;
  const behind = second === "number" ? at + 2 : at + 1;
  const number = smallWholeAt(words, behind);
  if (!number || number.value > 20) return void 0;
  return { value: targetFrom(`${first2} ${number.value}`, true), next: number.next };
}
function targetsAt(words, at, names, plain) {
  let start = at;
  while (ARTICLES.has(words[start]?.word ?? "")) start += 1;
  const picked = pickedAt(words, start);
  if (picked) return [picked];
  if (HEADS.has(words[start]?.word ?? "") && words[start + 1]?.word === "of") {
    start += 2;
    while (ARTICLES.has(words[start]?.word ?? "")) start += 1;
  }
  const exact = exactAt(words, start, names);
  const fuzzy = exact ? void 0 : fuzzyAt(words, start, names, false, plain);
  const found2 = exact ?? fuzzy;
  if (!found2) return [];
  const target = targetFrom(found2.value, exact !== void 0);
  const readings = [{ value: target, next: found2.next }];
  const extended = exact ? extendedAt(words, found2, names) : void 0;
  if (extended) readings.unshift(extended);
  for (const reading of [...readings]) {
    if (HEADS.has(words[reading.next]?.word ?? "")) {
      readings.unshift({ value: reading.value, next: reading.next + 1 });
    }
  }
  return readings;
}
function extendedAt(words, first2, names) {
  const second = exactAt(words, first2.next, names);
  if (!second || typeof first2.value === "string") return void 0;
  const name = typeof second.value === "string" ? second.value : second.value.name;
  const { recipes: recipes2, batches, timers } = first2.value;
  const said3 = `${first2.value.name} ${name}`;
  return { value: { said: said3, meaning: { recipes: recipes2, batches, timers }, exact: true }, next: second.next };
}
function meaningOf(said3, names) {
  return names.byName.get(simplify(said3)) ?? NOTHING;
}
var THINGS, PICKER_WORDS, PICKED_WORDS, ARTICLES, HEADS, LONGEST_NAME, LONG_KEY, LONG_NAME, recipeNames, last, SAME_SOUND, NOTHING;
var init_targets = __esm({
  "src/language/values/targets.ts"() {
    "use strict";
    init_sound();
    init_kitchen_things();
    init_recipe_names();
    init_spoken_numbers();
    THINGS = new Set(KITCHEN_THINGS);
    PICKER_WORDS = new Set(PICKERS);
    PICKED_WORDS = new Set(PICKED);
    ARTICLES = /* @__PURE__ */ new Set(["the", "my", "our", "those", "these", "that", "this", "your", "all"]);
    HEADS = /* @__PURE__ */ new Set([
      "batch",
      "lot",
      "timer",
      "pot",
      "ones",
      "one",
      "jars",
      "crock",
      "kettle",
      "pan"
    ]);
    LONGEST_NAME = 7;
    LONG_KEY = 4;
    LONG_NAME = 9;
    recipeNames = /* @__PURE__ */ new WeakMap();
    SAME_SOUND = 2;
    NOTHING = { recipes: [], batches: [], timers: [] };
  }
});

// src/language/values/lots.ts
function wordAt2(words, at) {
  return words[at]?.word ?? "";
}
function weightAt(words, at) {
  for (const number of numbersAt(words, at)) {
    const unit = wordAt2(words, number.next);
    if (Object.hasOwn(POUNDS_PER, unit)) {
      return { value: number.value * (POUNDS_PER[unit] ?? 1), next: number.next + 1 };
    }
  }
  if (/^(a|an)$/.test(wordAt2(words, at)) && wordAt2(words, at + 1) === "pound") {
    return { value: 1, next: at + 2 };
  }
  return void 0;
}
function producedAt(words, at) {
  const weight = weightAt(words, at);
  if (!weight) return [];
  const weightLb = Math.round(weight.value * 1e3) / 1e3;
  const of = wordAt2(words, weight.next) === "of" ? weight.next + 1 : weight.next;
  return labelsAt(words, of).map(({ next }) => ({ value: { weightLb }, next }));
}
function recipeIn(words, from, names, plain) {
  let best2;
  for (let at = from; at < words.length; at += 1) {
    for (let count = Math.min(7, words.length - at); count > 0; count -= 1) {
      const said3 = words.slice(at, at + count).map((word) => word.word).join(" ");
      const entry = names.byName.get(said3);
      if (!entry || entry.recipes.length === 0) continue;
      if (!best2 || count > best2.next - best2.from) {
        best2 = { from: at, next: at + count, recipes: entry.recipes, said: said3, exact: true };
      }
      break;
    }
  }
  if (best2 && (best2.recipes.length === 1 || best2.next - best2.from > 1)) {
    return longerMisheard(words, best2, names) ?? best2;
  }
  const misheard = misheardIn(words, from, names, plain);
  const longer = misheard && (!best2 || misheard.next - misheard.from > best2.next - best2.from);
  return longer ? misheard : best2;
}
function purposeIn(words, from, names, plain) {
  const place2 = words.findIndex(({ word }, at) => at > from && word === "for");
  if (place2 < 0) return void 0;
  const named = recipeIn(words, place2 + 1, names, plain);
  return named?.exact ? named : void 0;
}
function longerMisheard(words, best2, names) {
  const longer = [...names.byName.values()].filter(({ name, recipes: recipes2 }) => {
    return recipes2.length > 0 && name.endsWith(` ${best2.said}`);
  });
  for (let more = 1; more <= MOST_WORDS_MISHEARD && more <= best2.from; more += 1) {
    const from = best2.from - more;
    const before = words.slice(from, best2.from).map(({ word }) => word);
    if (before.join(" ").length < 5 || EMPTY.has(before[0] ?? "")) continue;
    const said3 = `${before.join(" ")} ${best2.said}`;
    const near = longer.filter(({ name: name2 }) => editDistance(said3, name2, 1) <= 1);
    const [entry] = near;
    if (!entry || near.length > 1) continue;
    const { recipes: recipes2, name } = entry;
    return { from, next: best2.next, recipes: recipes2, said: name, exact: false };
  }
  return void 0;
}
function misheardIn(words, from, names, plain) {
  for (let at = from; at < words.length; at += 1) {
    if (EMPTY.has(wordAt2(words, at))) continue;
    const near = fuzzyAt(words, at, names, true, plain);
    if (near && near.value.recipes.length > 0) {
      const { recipes: recipes2, name } = near.value;
      return { from: at, next: near.next, recipes: recipes2, said: name, exact: false };
    }
  }
  return void 0;
}
function lotAt(text, words, at, end, names, plain) {
  const within = words.slice(0, end);
  const named = purposeIn(within, at, names, plain) ?? recipeIn(within, at, names, plain);
  if (!named) return void 0;
  let weightLb;
  const loose = [];
  for (let next = at; next < end; ) {
    if (next === named.from) {
      next = named.next;
      continue;
    }
    const weight = weightLb === void 0 ? weightAt(within, next) : void 0;
    if (weight) {
      weightLb = Math.round(weight.value * 1e3) / 1e3;
      next = weight.next;
      continue;
    }
    const word = wordAt2(within, next);
    if (REFUSED.has(word) || word === "going" && wordAt2(within, next + 1) === "to") {
      return void 0;
    }
    if (word !== "going" && word.length > 4 && word.endsWith("ing")) return void 0;
    if (!EMPTY.has(word)) loose.push(next);
    next += 1;
  }
  const [first2] = loose;
  const last2 = loose.at(-1);
  const lot = { recipes: named.recipes, named: named.said, exact: named.exact };
  if (weightLb !== void 0) lot.weightLb = weightLb;
  if (first2 === void 0 || last2 === void 0) return lot;
  const chosen = narrowed(
    lot.recipes,
    loose.map((place2) => wordAt2(within, place2))
  );
  if (chosen) return { ...lot, recipes: [chosen] };
  if (loose.length > 3 || last2 - first2 + 1 !== loose.length) return void 0;
  return { ...lot, ...varietyOf(text, within, first2, last2, named) };
}
function narrowed(recipes2, loose) {
  if (recipes2.length < 2) return void 0;
  const told = recipes2.filter((id) => loose.some((word) => id.split("-").includes(word)));
  return told.length === 1 ? told[0] : void 0;
}
function varietyOf(text, words, first2, last2, named) {
  const beside = last2 > named.next || wordAt2(words, last2 + 1) === "for";
  const until = beside && PRODUCE.has(wordAt2(words, last2)) ? last2 - 1 : last2;
  const from = words[first2];
  const to = words[until];
  return until < first2 || !from || !to ? {} : { variety: text.slice(from.start, to.end) };
}
function titledRecipe(lot, context) {
  if (lot.recipes.length <= 1) return lot.recipes[0];
  const titled = lot.recipes.filter(
    (id) => id.replaceAll("-", " ") === lot.named || context.recipes.some(
      (recipe) => recipe.id === id && recipe.title.toLowerCase() === lot.named
    )
  );
  return titled.length === 1 ? titled[0] : void 0;
}
var POUNDS_PER, EMPTY, PRODUCE, REFUSED, MOST_WORDS_MISHEARD;
var init_lots = __esm({
  "src/language/values/lots.ts"() {
    "use strict";
    init_word_set();
    init_sound();
    init_open_slots();
    init_spoken_numbers();
    init_targets();
    POUNDS_PER = {
      pounds: 1,
      pound: 1,
      kilo: 2.20462262,
      kilos: 2.20462262,
      kilogram: 2.20462262,
      ounces: 1 / 16,
      ounce: 1 / 16,
      grams: 1 / 453.59237,
      gram: 1 / 453.59237
    };
    EMPTY = wordSet(
      "a an the some my our those these this that of with from using about around roughly it is at",
      "batch lot round load for and i we have got which weighs weighing variety today now please",
      "then another more first new fresh picked just there are here today's called worth total all",
      "in recipe next up out big little small couple crate row rows bushel basket lug going started",
      "again them it ones afternoon morning evening"
    );
    PRODUCE = wordSet(
      "bean beans beet beets cucumber cucumbers cuke cukes tomato tomatoes cabbage cabbages berry",
      "berries apple apples peach peaches pear pears carrot carrots corn chile chiles chili chilies",
      "pepper peppers onion onions rhubarb cranberries grapes apricots plums cherries strawberries",
      "blueberries raspberries blackberries asparagus chicken fish meat beef produce fruit vegetables"
    );
    REFUSED = wordSet(
      "not never if when what who why how would could might maybe tomorrow yesterday week month",
      "year last wish hope someday sometime should did was were had will because timer minutes",
      "minute later tonight until before after love hate eat ate sunday monday tuesday wednesday",
      "thursday friday saturday winter summer fall spring season time hour hours day days you your",
      "they he she mother grandmother neighbor tasted taste good better best sick tired lids open",
      "opened reminder market store buy need needs look looks bought sell sold done finished",
      "out boiling boil sealed but back up through into",
      "let us start begin want go do make making can to be like would tell said say says note",
      "remind jar jars pints pint quarts quart"
    );
    MOST_WORDS_MISHEARD = 3;
  }
});

// src/language/intents/begin.ts
var SEVERAL, finishBegin, begin;
var init_begin = __esm({
  "src/language/intents/begin.ts"() {
    "use strict";
    init_lots();
    SEVERAL = 0.3;
    finishBegin = (raw, context) => {
      const lot = raw.lot;
      if (!lot) return { slots: raw };
      const recipe = titledRecipe(lot, context);
      const slots = recipe ? { recipe } : { named: lot.named, choices: lot.recipes };
      if (lot.variety) slots.variety = lot.variety;
      const produce = raw.produce;
      const weightLb = lot.weightLb ?? produce?.weightLb;
      if (weightLb !== void 0) slots.weightLb = weightLb;
      return { slots, doubt: recipe ? 0 : SEVERAL };
    };
    begin = {
      cost: "changing",
      when: ["always"],
      slots: { recipe: "name", named: "name", choices: "names", variety: "name", weightLb: "number" },
      parts: ["lot", "produce", "target"],
      example: "start the dilly beans, six pounds of Provider",
      forgiving: true,
      unasked: true,
      finish: finishBegin,
      wordings: [
        `(time for|it is time for|up for|ready for|on to|we are on to|i am ready for|we are ready
    for|moving on to|let us move on to|now for|and now for) {lot}`,
        `[<let>|i am|we are] [start|begin|get going on|going to] (pickle|pickling) [some|the|our|my|
    a batch of|those|these|up] {recipe=pickled-beets} beets`,
        `[<let>] (dill|pickle) [some|the|our|my|a batch of|those|these] {recipe=dilled-green-beans}
    [green|dilly] beans`,
        `[<let>] {recipe=sauerkraut} (make|turn) [the|some|this|that|our] cabbage into (kraut|
    sauerkraut)`,
        `[<let>] (pressure can|pressure cook) [some|the|our|my] {recipe=snap-beans} [green|snap|
    string] beans`,
        `{lot} [<let>] (start|begin|go|to start|to begin|start up|get going|get started) [on|with]
    [it|them|that|those|these|that one|on it|on them|now]`,
        `{lot} [<let>] (do|make|can|put up|get|run|have|save|pickle|put by|start|begin) (it|that|
    them|those|these|that one|some|a batch|one) [going|started|up|of (them|it|those)]`,
        `(i have|i have got|we have|we have got|here are|there are|got|here is|there is) {lot} (to
    do|to can|to put up|to make|to pickle|to start|ready to start|ready|here|to get through)
    [so] <let> (start|begin|go|get going|get started|do it|do them|can them|make it|start those|
    start them)`,
        "(how about|let us have) {lot} (next|now|today|then|this time)",
        `[(<got>|here is|here are|with|i am using|we are using|let us use|let us take|take|use|for)]
    [about|all|roughly] [<the>|some] {produce} [here|ready|to use|to put up|to do|to can|
    picked|washed] [so|and|now|then] [<let>] (<start>|make|turn them into|turn it into|make them
    into|make it into) [on] {lot}`,
        "[<let>] (put|get) {lot} (up|by) [now|today]",
        "[<let>] (turn|make|put|use) [about] [<the>|some] {produce} (into|for|to make|as) {lot}",
        `(<got>|here is|here are) [about] {produce} (for|to make|to make into|to turn into|to go
    into|to put up as) {lot} [[so] <let> (start|begin|go|get going|get started)]`,
        "[<let>] <start> [up|in on|making|with|on|off] {lot}",
        "[<we>|i] [am|are|will be|would be] [now|just] <starting> {lot}",
        `[<let>] (start|begin|open|set up|create|run) [a|another|one|the first|a new|the next]
    (batch|lot|round|run|session) [of|with|for] {lot}`,
        "new batch [of] {lot}",
        `(today it is|next up is|next up|first up|first up is|today we are doing|today is|on today
    is|first batch is|up first|next batch is|up next) {lot}`,
        `(i have|i have got|we have|we have got|here are|there are|got) {lot} (to do|to can|to put
    up|to make|to pickle|to start|ready to start)`,
        "{lot} (is|are) (next|first|starting|up next|going in next)",
        `[<let>] (have a go at|get|put on|put together|throw together|get cracking on|crack on with|
    get a batch of|get going making|get stuck into|go ahead with|bring on) {lot} [going|
    started|on|under way|underway|on the go]`,
        "[<let>|i am|we are] (go|going) (with|for) {lot}",
        "i (am|will be) (here to|ready to) (make|can|do|start|put up) {lot}",
        "(i want|i would like|we want|give me) {lot} [today|started|going]",
        `[<let>] (start|start up|start on|start with|put on|begin|light|get going on|get started on|
    fire up|kick off|set going) [<the>|some|a|a pot of] [<kind>] <pot> [going|on|now|started|
    heating|next] [<for-what>]`,
        `[<let>] (get|put|set|have|bring) [<the>|some|a|a pot of] [<kind>] <pot> (going|on|started|
    heating|on to heat|to heat|cooking|on to cook|<onto-stove>) [now]`,
        `[<let>] (get|put|set|have|bring) [<the>|some|a pot of] <potful> (on|on to heat|on to cook|
    <onto-stove>) [now]`,
        "[<let>] (put on|start heating) [<the>|some|a pot of] ([<kind>] <pot>|<potful>)",
        `[i am|we are|i have|we have|i|we] [just] (starting|started|putting on|put on|heating|lit|
    heating up|lighting|beginning|begun|began|starting up) [<the>] [<kind>] <pot> [up|now]`,
        `[i am|we are|i have|we have|i|we] [just] (put|got|putting|getting|set|setting|have|moved)
    [<the>] [<kind>] <pot> [back] (on|going|heating|cooking|started|<onto-stove>) [now]`,
        `[i am|we are|i have|we have|i|we] [just] (put|got|putting|set|setting|have|moved) [<the>]
    <potful> [back] (on|<onto-stove>) [now]`,
        `[<the>] [<kind>] <pot> (is|are|goes|went|has gone|has been put|has been) [just] [now|back]
    (on|<onto-stove>|heating|heating up|on the heat|cooking|started|going|on now|under way|
    underway|going on|on to heat|warming up) [now]`,
        `[<the>] <potful> (is|are|goes|went|has gone|has been put) [just] [now|back] (on|
    <onto-stove>|on now|going on|on to heat|on to cook) [now]`,
        "[<the>] [<kind>] <pot> (heating|on|started|<onto-stove>) [now]",
        "[<the>] <potful> <onto-stove> [now]"
      ],
      spoken: ["start [the] {lot}", "let us make [the] {lot}", "start the <pot>", "the <pot> is on"],
      lists: {
        start: `
      fire up|get a start on|make a start on|get stuck into|get to|start in on|throw together|
      put together|knock out|get cracking on|whip together|start us on|get us started on|set
      about|begin on|begin making|start up with|go ahead with|move on to making|go on to make|
      start|begin|make|do|can|put up|get going on|get started on|get started with|start on|
      start with|kick off|set up|open|cook up|start up|get going with|process|fix|run|prepare|
      cook|set going|start making|start canning|launch|whip up|pickle|jump into|dive into|put
      by|preserve|get into|get on with|begin with|bottle|start off|save|ferment|try
    `,
        starting: `
      starting|beginning|making|doing|canning|putting up|starting on|starting with|going to
      make|going to do|going to start|going to can|going to put up|about to start|about to make|
      going to begin|cooking up|going with|saving|fermenting|setting up|kicking off|getting
      started on|running|pickling|getting going on|putting by
    `,
        kind: `
      (fresh|hot|spiced|pickling|sugar|light|heavy|medium|vinegar|salt|salted|pickle|canning|
      sweet|boiling|new|simple|apple|tomato|berry|honey)
    `,
        "for-what": "(for|of) [<the>] {target}",
        "onto-stove": "(on|onto|over|on to) [the|a] (stove|heat|burner|fire|range|flame|stovetop)",
        pot: `
      brine {named=brine}|syrup {named=syrup}|broth {named=broth}|juice {named=juice}|water
      {named=water}|liquid {named=liquid}|vinegar {named=vinegar}
    `,
        potful: `
      jam {named=jam}|jelly {named=jelly}|sauce {named=sauce}|salsa {named=salsa}|relish
      {named=relish}|butter {named=butter}|fruit {named=fruit}|berries {named=berries}|tomatoes
      {named=tomatoes}|apples {named=apples}|beets {named=beets}|stock {named=stock}|preserves
      {named=preserves}
    `
      }
    };
  }
});

// src/language/intents/boil-lost.ts
var boilLost;
var init_boil_lost = __esm({
  "src/language/intents/boil-lost.ts"() {
    "use strict";
    boilLost = {
      cost: "raising",
      report: true,
      when: ["stage:heat", "load:in-water"],
      slots: { target: "name", at: "instant" },
      example: "it stopped boiling",
      topical: true,
      wordings: [
        "(it|{target}) went (flat|still|quiet) [no more boil|there is no boil|no boil] [<when>]",
        `[(<it>|{target}|<we>)] [has|have|is|just|has just] (went|gone|fell|fallen|dropped|come|
    came|slipped|going|drifted|is|are|falling|dropping|coming) (off|out of|below|under|from)
    (the|a|its|it is|full|rolling|my) [<full>] (boil|boiling) [<when>]`,
        `[(<it>|{target}|<we>)] [has|have|just|has just|is] (went|fell|fallen|dropped|gone|dropping|
    falling|down) [back] [down] (below|under) (boiling|a boil|the boil|a rolling boil|the
    boiling point) [<when>]`,
        `[(<it>|{target}|<we>)] [has|have|just|has just] (stopped|quit|ceased) (boiling|bubbling|
    rolling) [<when>]`,
        "[(<it>|{target}|<we>)] [is|are] (no longer|no more) <boil-state> [<any-more>] [<when>]",
        "(<it>|{target}|<we>) (is|are) not <boil-state> (any more|any longer) [<when>]",
        "not <boil-state> (any more|any longer) [<when>]",
        "[(<it>|{target})] no longer (boils|boiling) [<when>]",
        `<we> [have|just|have just] (lost|lose|are losing|losing) [the|our|my|its|it is] [<full>]
    [<full>] (boil|rolling boil|boiling) [<when>]`,
        `[just] (lost|losing) [the|our|my] [<full>] [<full>] boil [{target}|in {target}|on {target}]
    [<when>]`,
        `(<it>|{target}) [has|have|just|has just|is] (lost|losing|lost it is|lose) [the|its|it is|
    their] [<full>] [<full>] boil [<when>]`,
        `[the|our|my] [<full>] boil [has|is|has just|just] (<gone>|lost|stopped|over|went out|went
    off|went away|went down|went|been lost|broken|faltered|fell off|dropped|fell|fell away|gave
    out|given out|let up|gone out|gone down|gone off|gone away|gone flat) [<when>]`,
        `[<the>] boiling [has|is|just|has just] (stopped|quit|died down|ended|gone|died|let up|
    slowed down|ceased|died away|fizzled|fizzled out) [<when>]`,
        `[(<it>|{target})] [has|just|has just|is] (went|gone|dropped|come|fell|fallen|died|dying|
    calmed|settled|dropping|down) [back] [down] to (a|just a|only a|nothing but a|barely a|
    bare) (simmer|bare simmer) [<when>]`,
        `(<it>|{target}|<we>) (is|are) (back|down|back down) to [just|only|barely|hardly] [a|a bare]
    (simmer|simmering) [<when>]`,
        "(<it>|{target}) (has|have) gone (flat|still|quiet) [<when>]",
        "no [more] boil [any more|any longer|now|in {target}] [<when>]",
        "there is no [longer a] boil [any more|now] [<when>]",
        `(<we>|{target}|<it>) (do|does) not have [a|the|its|our] [<full>] [<full>] boil (any more|
    any longer) [<when>]`,
        "[the|our] [<full>] boil was (lost|gone|interrupted|broken) [<when>]",
        "<it> (stopped|quit) [boiling|bubbling] on (me|us) [<when>]",
        "boil (lost|gone|broken|interrupted) [in {target}|on {target}|{target}] [<when>]",
        "off the boil [<when>]"
      ],
      spoken: [
        "it stopped boiling",
        "the {target} stopped boiling",
        "it went off the boil",
        "we lost the boil",
        "the boil stopped"
      ],
      bags: [
        {
          must: ["<boil-any>", "<boil-loss>"],
          may: `
        <said-of-it>|{target}|<when>|[for] [about] {at:lasting}|on (me|us)|its|their|i|
        completely|totally|somehow|entirely|down|away|back|altogether|went
      `
        }
      ],
      lists: {
        gone: `
      gone|lost|out|off|dead|dropped|dropped off|died|died down|died off|died away|dying|
      fallen|fallen off|faded|stopped|quit|down|broken|interrupted
    `,
        "any-more": "any more|any longer|now|at all|again",
        "boil-any": `
      [the|our|my|a|that|its|it is] [<full>] [<full>] (boil|boiling|bubbling|roll|rolling)
    `,
        "boil-loss": `
      (lost|losing|stopped|quit|died|dropped below|fell below|dropped under|off|no more|no
      longer|gone flat|gone out|gone|went flat|went out|went away|went off|quitting|stopping|
      ended|faded|gave out|dying|dead|broke|slipped below|petered out|fizzled|fizzled out|
      dropped off|fell off|fallen off|out of|down from|come off|came off|not any more|dropped
      out of|fell out of|ceased|let up)
    `,
        "boil-state": "boiling [<hard>]|rolling|(at|on) (a|the) [<full>] [<full>] (boil|roll)"
      }
    };
  }
});

// src/language/intents/boiling.ts
var boiling;
var init_boiling = __esm({
  "src/language/intents/boiling.ts"() {
    "use strict";
    boiling = {
      cost: "clearing",
      report: true,
      when: ["stage:heat", "load:in-water"],
      slots: { target: "name", at: "instant", covered: "flag" },
      example: "it's boiling and the lids are covered",
      topical: true,
      doubting: ["once"],
      wordings: [
        "<boil-report> [<when>|<lasting>] [[<and>] {covered=true} <covered>]",
        "<covered> {covered=true} [and] <boil-report> [<when>]",
        "<boil-report> [and] [everything is|all is|all] {covered=true} covered [<when>]",
        `(since|as of) {at:past} <boil-report>|{at:past} <boil-report>|(we have|there is) [got] lift
    off`
      ],
      spoken: [
        "it is boiling [now|and the lids are covered {covered=true}]",
        "the {target} (is|are) boiling",
        "(it is|we are) at a [full|rolling] boil",
        "(full|rolling) boil",
        "we have a [full|rolling] boil"
      ],
      bags: [
        {
          must: ["<boil-seen>"],
          may: `
        <said-of-it>|{target}|<when>|<lasting>|[and] {covered=true} <covered>|come|came|
        reached|hit|started|begun|began|gotten|up|back|hard|nicely|steady|steadily|strong|
        strongly|beautiful|lovely|big|goes|whole|thing|finally|good|nice|full|together
      `
        }
      ],
      lists: {
        be: "is|are|has|have|am|has been|have been|been|has got|have got",
        boil: `
      (a|the|its|full|that|another) [<full>] [<full>] (boil|boiling|rolling)|
      <full> [<full>] boil|boil|boiling|boiling point|the boiling point
    `,
        boiling: "boiling|a boiling|bubbling (hard|away|like mad)|rolling|at the boil|on the boil",
        arrive: `
      come to|came to|come up to|came up to|came back to|come back to|reached|hit|got to|gotten
      to|got up to|is at|are at|is up to|is up at|is on|is back to|is back at|is back on|are
      back to|are back at|made it to|gone to|risen to|rose to|is to|got back to|comes to|has|
      got|has just come to|returned to|is holding at|is in
    `,
        covered: `
      [<lids>] (are|is|all|still|are all|are still|are well|well|fully|nicely) covered [with
      water|by water|up] [too|as well|by <depth>|with <depth>|by <depth> of water|with <depth>
      of water]|
      [<lids>] covered [with water] [too|as well|by <depth>]|
      [<lids>] [are|is|all|are all|are well|are still|well|still] (under|underwater|under water|
      under the water|submerged|below the water|beneath the water)|
      [<got>] [still] [the] water [is|well|still|is well|is still] [comes|stands] [at least]
      [<depth>] (over|above) [<lids>|the lids]|
      [<got>] [at least] [a good] <depth> [of water] (over|above|on top of) [<lids>|them|the
      tops]|
      (plenty of|enough) water (over|above) [<lids>|them]|
      [the|there is] water (covers|is covering|covering|comes over|goes over) <lids> [by
      <depth>]|
      [<lids>] (are|is|sit) (under|below|beneath|by|with) <depth> [of water] [over them]|
      [<lids>] (are|is) all under [<depth> of] water|
      <lids> (are|is) (well|all|fully|completely) (under|submerged|covered over)
    `,
        depth: `
      (an|one|1|two|2|three|3|a couple of|a good|a full|half an) [good|full] (inch|inches)|
      (one|two|three|1|2|3) and a half inches|an inch and a half|an inch or (two|more)
    `,
        and: "and|with|plus|and the|while",
        "boil-seen": `
      boiling [<hard>]|
      [at|to|on|up to|back to|back at|into|back on] (a|the|our|that|its) [<full>] [<full>]
      (boil|roll)|
      [at|to|on|into] <full> [<full>] boil|(started|begun|began) to (boil|roll)|
      boil (started|is on|is up|is back|on|up|is going)|
      rolling [<hard>]|
      bubbling (hard|like mad|like crazy|away hard|good and hard)
    `,
        "boil-report": `
      there it (goes|is) <boil-now>|
      (the|our) (canner|pot|water) is (there|up to it) <boil-now>|
      [<boil-subject>] [<be>] [<still>] [<still>] <boiling> [<hard>] [<hard>] [again|now] [over
      here]|
      (<it>|{target}|everything) (boils|boil) [<hard>] [again|now]|
      [<boil-subject>] [<still>] [have|has|is|are] [<still>] <arrive> <boil> [again|now] [over
      here]|
      [<boil-subject>] [<be>] [<still>] (at|to|on|back at|back to|back on|up to|up at|going at|
      going at it at|holding at|into|in) <boil> [again|now|and holding]|
      [<boil-subject>] [<still>] [has|have] [just] (started|begun|began|commenced|starts|
      gotten) [up] (boiling|to boil|rolling|to roll|bubbling hard|boil|to bubble hard) [<hard>]
      [again|now]|
      (<boil-subject>|<we>) [has|have] [<still>] (came|come|got|went|rolled|comes|gone|gotten|
      made it) [right|back|all the way] [up] [to|into|on] <boil> [again|now]|
      <got> [<us>] [back] [<full>] <boil> [again|now] [going|on|on {target}|in {target}|here|at
      last]|
      <got> [<the>] {target} [back] [up] (boiling|at <boil>|to <boil>|rolling) [again|now|
      <hard>]|
      (<got>|<we> have) [it|them|that|everything|her|him|this] [back] [up] (boiling|at <boil>|
      to <boil>) [again|now|<hard>]|
      <full> [<full>] boil [going|on|reached|again|now|in {target}|on {target}|here|back]|
      [a|the|our] [<full>] [<full>] boil (is|has) [been] [<still>] (on|back|up|going|here|
      reached|back on|back up|going again|underway|started|come|come back|returned|back now|
      come up|begun|good|rolling)|
      [the] boil [has] (came|come|started|returned|back) [back] [on|up|again]|
      there (is|goes) (the|a|our|my) [<full>] [<full>] boil [at last|now]|
      [the] boiling [has] (started|begun|resumed)|
      [<it>|{target}] [is] (boiling|rolling) [<hard>] [in {target}]|
      [the] bubbles are rolling|<boil> (reached|achieved|on)
    `,
        "boil-subject": `
      <it>|{target}|we|everything|things|the whole (thing|pot|works)|both (of them|pots|
      canners|kettles)|
      [<the>] (water|pot|canner|kettle) (in|with|of) {target}
    `,
        "boil-now": `
      it is boiling|boiling|a boil|a full boil|a rolling boil|the boil|we are boiling|at a boil
    `,
        us: "us|me|ourselves|myself"
      }
    };
  }
});

// src/language/intents/correct-time.ts
var correctTime;
var init_correct_time = __esm({
  "src/language/intents/correct-time.ts"() {
    "use strict";
    correctTime = {
      cost: "changing",
      when: ["working"],
      slots: { at: "instant" },
      example: "that was five minutes ago",
      unasked: true,
      wordings: [
        `[<no>] (that|it|this) (was|happened|started|began|should be|should have been|should read|
    really was|was actually|was really|must have been|would have been|ought to be|really
    happened|actually happened|really started|actually started|was more like|was about|were)
    [really|actually|in fact|more like|about|around|closer to|back] [at|since] [about]
    {at:moment} [already|not now|in fact|actually]`,
        "[<no>] (make|call|set|change) (that|it|the time) [to|at|really] {at:moment} [not now]",
        `[<no>] (i mean|i meant|i meant to say|make that|rather|correction|sorry|or rather)
    {at:moment}`,
        `[<no>] (i|we) (put|got|took|started|lit|did|noticed|saw|opened|closed|loaded|turned|said|
    meant|added|filled|finished|should have said|forgot to say that was|forgot to say it was|
    set) (them|it|that|those|this|these) [in|out|up|on|off|down|going|over] [already|actually|
    really|at|back|more like] {at:moment} [already]`,
        `[<no>] (i|we) (actually|really) (put|got|took|started|lit|did|noticed|saw|opened|closed|
    loaded|turned|filled|finished|set) (them|it|that|those|this|these) [in|out|up|on|off|down|
    going] [already|at|back] {at:moment}`,
        `(they|those|these|it) (went|came|got|were|was) [in|out|on|off] [already|actually|really|at]
    {at:moment}`,
        `(that|it|this) (actually|really) (was|happened|started|began|went in|came out) [at|about|
    more like|around] {at:moment}`,
        `[<no>] (i|we) (was|were|am|are) late (saying|telling you|reporting) (that|it|so) [it|that]
    [was] {at:moment}`,
        `(fix|correct|change|adjust|move|amend) (that|the|that to|it|it to|the time on that) [time|
    start] [to|of that to|back to] {at:moment}`,
        "(correct|fix|change|set) the (time|start|start time) [of that] to {at:moment}",
        "correction [that|it] was {at:moment}|<no> {at:moment}|[<no>] not now {at:moment}",
        `[<no>] it (has been|has already been|is already|is) {at:lasting} [already|now|since that|
    since then]`,
        "(that|it|this) (was|happened) {at:lasting} (before|earlier|sooner|ago)",
        `(i should have (told you|said|mentioned)|i forgot to (tell you|say|mention)|i never (told
    you|said)|i meant to (tell you|say)) [that] (that|it|this) (was|happened|started|began) [at|
    about|around|back at] {at:moment}`,
        "{at:ago}"
      ],
      spoken: ["that was {at:ago}"],
      lists: {
        no: `
      whoops|no|actually|wait|sorry|correction|no wait|hold on|scratch that|oops|i mean|wait no|
      i was wrong|my mistake|hang on|to be exact|i meant|i meant to say|i should say|i should
      have said|let me correct that|to correct that|what i meant was|make that|not now|i forgot
      to say|i forgot to tell you|i forgot|truth is|come to think of it|on second thought|
      strike that|hold up|my bad|in fact
    `
      }
    };
  }
});

// src/language/intents/disposition.ts
var disposition;
var init_disposition = __esm({
  "src/language/intents/disposition.ts"() {
    "use strict";
    disposition = {
      cost: "changing",
      when: ["load:out", "asked:seals", "asked:disposition"],
      slots: { target: "name", what: "word", count: "count", jars: "numbers" },
      example: "put it in the fridge",
      unasked: true,
      wordings: [
        {
          set: { what: "refrigerate" },
          phrases: [
            `<am> (putting|sticking|placing|keeping|popping|moving|storing) <the-jars> (in|into) the
        (fridge|refrigerator|icebox|cold)`,
            "<am> (refrigerating|chilling) <the-jars>",
            `[<will>] (put|stick|place|move|pop|keep|throw|shove|set|get|chill|store|tuck|save)
        <the-jars> (in|into|to|inside) [the] (fridge|refrigerator|icebox|cooler|ice box|cold)`,
            "[<will>] (refrigerate|chill) <the-jars>",
            `<the-jars> (is|are|can|goes|go|should|will) [going|go|all go|be] (in|into|to) the
        (fridge|refrigerator|icebox)`,
            "(fridge|refrigerator) [it|them|that one|for <the-jars>|for now]",
            "(refrigerate|in the fridge|into the fridge|to the fridge) [with] [it|them|<the-jars>]",
            "<will> eat <the-jars> (first|soon|this week|now|fresh|tonight)"
          ]
        },
        {
          set: { what: "freeze" },
          phrases: [
            "<am> (putting|sticking|popping|moving) <the-jars> (in|into) the (freezer|deep freeze)",
            "<am> freezing <the-jars>|[<will>] (freeze) <the-jars>",
            `[<will>] (put|stick|move|pop|throw|place|get) <the-jars> (in|into|to) the (freezer|deep
        freeze|deep freezer|chest freezer)`,
            "<the-jars> (is|are|can|goes|go|will) [going|go] (in|into|to) the (freezer|deep freeze)",
            `(freeze|freezer|into the freezer|in the freezer|to the freezer) [it|them|for <the-jars>|
        for it|for them]`
          ]
        },
        {
          set: { what: "reprocess" },
          phrases: [
            "<am> (reprocessing|processing) <the-jars> [again]",
            `<am> (running|putting|sending) <the-jars> (through again|back through|back in the
        canner|through the canner again|back in)`,
            "[<will>] put <the-jars> through (again|a second time|the canner again|once more)",
            `[<will>] (reprocess|re process|process|recan|re can) <the-jars> [again|over|over again|
        with new lids|with a new lid|today|all over]`,
            `[<will>] (run|put|send|do) <the-jars> (through again|through the canner again|back
        through|back through the canner|back in the canner|back in|over again|through once more|
        again in the canner|through a second time|back into the canner|in the canner again|
        over|again)`,
            "[<will>] reprocess|reprocessing [<the-jars>]",
            "(<the-jars>) (goes|go|is going|are going) back (in|into|through) the canner",
            `[<will>] (give|try) <the-jars> (another go|another run|again|a second go|a second run|
        another process|another turn) [in the canner|through the canner]`,
            `[<will>] (put|get) [a] new (lid|lids) on <the-jars> and (reprocess|process [it|them]
        again|run [it|them] again|run [it|them] through again|redo [it|them])`,
            "[<will>] redo <the-jars>"
          ]
        },
        {
          set: { what: "discard" },
          phrases: [
            `<am> (throwing|tossing|chucking|pitching|dumping|putting) <the-jars-closed> (out|away|
        in the trash|in the garbage|in the bin|in the compost)`,
            `<am> (discarding|tossing|dumping|binning|trashing|chucking|throwing out|throwing away|
        getting rid of|pitching) <the-jars-closed>`,
            `[<will>] (throw|toss|chuck|pitch|fling|put|dump|tip|pour|get) <the-jars-closed> (out|
        away|in the trash|in the garbage|in the bin|in the compost|on the compost|down the
        drain|into the trash|in the rubbish|onto the compost)`,
            `[<will>] (discard|toss|dump|bin|trash|destroy|chuck|pitch|throw out|throw away|get rid
        of|toss out|dispose of|junk|chuck out|scrap) <the-jars-closed>`,
            `<the-jars-closed> (goes|go|has to go|have to go|is going|are going|should go) (out|in
        the trash|in the garbage|in the bin|to the compost|in the compost)`,
            "[<the-jars-closed> is] (discard|discarded|thrown out|trash|garbage)"
          ]
        },
        {
          set: { what: "undecided" },
          phrases: [
            `[<will>] (decide|figure it out|figure that out|think about it|think on it|worry about
        it|deal with it|deal with that|deal with them|see about that|sort it out|decide about
        it|decide on that|decide about that|sort that out) (later|later on|tomorrow|afterward|
        afterwards|in the morning|then)`,
            `[i|we] (have not|can not|do not|not) (decided|know|decide) [yet] [(about|on) (it|that|
        them|those|<the-jars-closed>)] [yet|now|right now]`,
            `(undecided|not sure yet|i am not sure yet|i do not know yet|i am undecided|ask me later|
        let me think about it|leave it undecided|not decided yet|no idea yet|we will see|i am
        still thinking|let me think|i need to think about it|i will think about it)`
          ]
        },
        {
          set: { what: "carried-on" },
          phrases: [
            `[<will>] (carry on|go on|keep going|continue|leave it|go ahead|proceed|keep it|use it|
        accept it|let it go|press on) (anyway|as it is|as is|regardless|all the same|as they
        are|just the same|even so)`,
            `(carried on|we carried on|i carried on|kept going|i kept going|we kept going|went on
        anyway|it is fine as it is|we went on|leave it as it is|we are carrying on|leave it be|
        let it be)`
          ]
        },
        {
          set: { what: "restarted" },
          phrases: [
            `[<will>] (start|begin|restart) (the time|the clock|the process|the timer|the processing|
        the processing time|timing|the whole time|it|it all|the count) (over|again|over again|
        from the beginning|from zero|from the top|from scratch|all over|all over again)`,
            "[<will>] restart [the] (time|clock|process|processing|processing time|timing|count)",
            "[<will>] (start|begin) over",
            `(restarted|i restarted it|we restarted|started over|we started over|i started the time
        over|restarting|starting over|starting the time over|i am starting over|we are starting
        over|restarted the time|i restarted the time|start from zero|back to zero)`
          ]
        }
      ],
      spoken: [
        {
          set: { what: "refrigerate" },
          phrases: ["put (it|them) in the fridge", "refrigerate (it|them)", "in the fridge"]
        },
        { set: { what: "freeze" }, phrases: ["freeze (it|them)"] },
        { set: { what: "reprocess" }, phrases: ["reprocess (it|them)", "process (it|them) again"] },
        { set: { what: "discard" }, phrases: ["throw (it|them) out"] },
        { set: { what: "carried-on" }, phrases: ["carry on as it is"] }
      ],
      bags: [
        {
          set: { what: "refrigerate" },
          must: [
            "(in|into|to|inside|for) [the] (fridge|refrigerator|icebox|cooler)|refrigerate|chill",
            "<jar-meant>"
          ],
          may: "<doing-with>|put|stick|pop|set|keep|placing|moving|goes|go|move|throw|tuck|shove|the"
        },
        {
          set: { what: "freeze" },
          must: ["(in|into|to) [the] [deep] (freezer|freeze)|freeze|freezing", "<jar-meant>"],
          may: "<doing-with>|put|stick|pop|set|keep|placing|moving|goes|go|move|throw|the"
        },
        {
          set: { what: "reprocess" },
          must: [
            `reprocess|reprocessing|redo|(run|put|send|process|can|do) <jar-meant>|processing|[a] new
        (lid|lids)`,
            `reprocess|reprocessing|redo|again|over|back in|back through|back in the canner|through
        again|back into the canner`
          ],
          may: `
        <doing-with>|<jar-meant>|through|the canner|in the canner|with|[a] new (lid|lids)|on|
        once more|into the canner|get|give|tomorrow|another run|another go
      `
        },
        {
          set: { what: "discard" },
          must: [
            `(in|into|to) [the] (trash|garbage|bin|compost|rubbish)|out|away|discard|discarding|
        trash|dump|toss|chuck|ditch|throw out|pitch`,
            "<jar-meant>"
          ],
          may: `
        <doing-with>|throw|throwing|toss|tossing|chuck|chucking|put|goes|go|going|pitch|the|
        gets
      `
        }
      ],
      lists: {
        "jar-meant": `
      (it|them|that|those|these|this|that one|this one|those ones|these ones|both|both of them|
      both of those|all of them|the lot|them both|them all|the rest|the jar|that jar|the jars|
      those jars|these jars|this jar|the other one|the others|the odd one|the extra|those two|
      these two)|
      <numbered>|
      the (failed|bad|unsealed|loose|broken|last|short|odd|extra) (one|ones|jar|jars)|
      {count} [<of-them>|jars|jar|pints|quarts|pint|quart]
    `,
        "doing-with": `
      (i|we|am|are|is|will|would|can|let us|going|to|just|should|have|has|be|had better|better|
      i think|guess|in|with|for|on|now|then|and|straight|right|get|so|out|one|ones|jar|jars|up|
      want|need|needs|has to|have to|needs to|need to|gets|goes)
    `,
        will: `
      i will|we will|let us|i am going to|we are going to|i would|we can|just|i want to|we want
      to|i would like to|i think i will|go ahead and|i guess i will|we should|i should|i had
      better|we had better|i have to|we have to|better|might as well|i might as well|let me|i
      plan to|i can|i am
    `,
        "the-jars": `
      <the-jars-closed>|what is left|the extra|the extra jar|the leftover|the odd jar|[the]
      [jar|jars|number|numbers] {jars}|my <numbered>|[<the>] {target}
    `,
        "the-jars-closed": `
      (those|these|the) [other|last] {count} [jars|pints|quarts|ones]|
      it|them|that|those|these|this|<numbered>|{count} [<of-them>|jars|jar|pints|quarts]|
      [the|that|those|these|this] (jar|jars|pint|pints|quart|quarts|one|ones)|
      the (failed|bad|unsealed|loose|other|broken|last|soft) (jar|jars|one|ones|lid|lids)|
      all of them|them all|both (jars|lids|pints|quarts|ones)|both of (those|these|the jars|
      those jars)|each of (them|those)|the (two|three|pair) of them|
      (whichever|any|the ones|the one|all|the jars|the jar) that (failed|did not seal|did not
      take)|
      both|both of them|the rest|the lot|them both|[jar|jars|number|numbers] {jars}|what is in
      (it|them|that jar|those jars|the jar)
    `,
        am: "i am|we are|i am going to be"
      }
    };
  }
});

// src/language/intents/done.ts
var done;
var init_done = __esm({
  "src/language/intents/done.ts"() {
    "use strict";
    done = {
      cost: "clearing",
      report: true,
      when: ["working"],
      slots: { target: "name", at: "instant" },
      parts: ["count"],
      example: "that's done",
      topical: true,
      doubting: ["once"],
      wordings: [
        "[all] done with (this|that) [one|step|part|bit|job|stage|lot]",
        "that [about|just about|pretty much] (does|did) it [for (that|those|the {target}|now)]",
        `(i|we) (have|got|have got) [<the>] [all the] {target=jars} jars (out|up and out|out of the
    canner|on the rack|on the towel)`,
        `[<the>] ({target}|<things>) (are|is) [all|now] in (the jars|jars|the crock|the brine|the
    pot|ice|the ice|the freezer|the dehydrator|the fridge)`,
        "[<the>] ({target}|<things>) [all] <did> and <did>",
        "<things> and <things> (are|is) [all] (<done>|<did>|ready)",
        `{target=jars} (pulled|i pulled|we pulled|i have pulled|we have pulled|just pulled|i just
    pulled|unloaded|i unloaded|lifted|i lifted|we lifted|i have lifted|pulling|i am pulling|
    lifting|i am lifting|removing|removed|hoisting|taking|taking up|hauling) [<the>|all the|
    all] (jars|pints|quarts|half pints|load|rack) [<when>]`,
        "that takes care of (that|it|them|those|the {target}|that one)",
        "(onward|on) [to] (the next|the next one|next)",
        "on with (it|the next|the next one)",
        `{target=jars} [<the>] [{number}] (jars|pints|quarts) (are|is) (coming|going) out [of the
    canner|of the water] [now]`,
        `[<it>|<we>|i|everything|all] [am|is|are|has|have|got|all|has all] [been|now|just|all|
    finally|pretty much] <done> [with it|with that|with this|with those|with them|here|now|too|
    as well] [<when>]`,
        `[<we>|i|just|i just|we just|i have|we have|have|i have just] (finished|done|completed|got
    done|got through|finished up|wrapped up|got finished|got it|made it) [with] [it|that|this|
    them|those|those ones|that one|that step|this step|the step|that part|that bit|the last one|
    that job|that lot|with them|with it|up|up with that|the last of it|the last of them|
    everything] [<when>]`,
        "next [one|step|please|thing|up|job|task|stage|bit|part]",
        "(moving|move) (on|right along|right on|ahead)",
        `(move|moving|go|going|let us move|let us go|on|let us get|get) [on] to (the next|the next
    one|the next step|the next thing|the next stage|the next part|next|the next job|the next
    bit)`,
        `(done|finished|ready|i am ready|we are ready|all ready|i am all ready) [and ready] (for|to
    do|to go to|to move on to|with) (the next|the next one|the next step|what is next|more|the
    next thing|next|the next stage|the next job|whatever is next)`,
        `[i am|we are|all|i am all|it is|it is all|that is|everything is|they are|they are all]
    (ready|set|done and ready) [to go] [now|here]`,
        `that is (that|it|it then|the last one|the last of it|the last of them|them all|all of it|
    all of them|the lot|everything|all done|all|a wrap|me done|the end of that|everything done|
    the last of those|one done|job done|behind us|off the list)`,
        `(check|check that off|tick|tick that off|mark it done|mark that done|mark this done|check
    that one off|cross that off|cross that off the list|cross it off|consider it done|mark it
    finished|mark that as done|mark it as done|mark that complete|job done|mission accomplished|
    there we go|step done|all finished|stage done|step finished|step complete|stage complete|we
    are there|finito|and done|done here|nothing left to do here)`,
        `(mark|check off|tick off|cross off) [<the>] ({target}|<doing>) [as] [done|complete|
    finished|off|off the list]`,
        `[<the>] ({target}|<things>) (is|are|has|have|got|all) [been|now|just|all|both|finally|all
    now] (<done>|ready|<did>|in place|ready to go|all ready|<did> and <did>|<did> <did> and
    <did>) [now|too|as well|up] [<when>]`,
        `(everything|all|they|it|that|that one|this one|every one|all of them|all of it|the lot|we|
    those) [is|are|has|have] [been|now|all|both|finally] (<did>|<did> and <did>|<did> and ready|
    <did> <did> and <did>|in place|ready to go) [now|up] [<when>]`,
        "[all] <did> [and <did>] [now|up] [<when>]",
        "[all] <did> and ready [to go]",
        `[<we>|i|just|i just|we just|i have|we have|have|i have just|i am|we are|am|all] [just|all|
    now] (finished|done|through|done with|finished with|through with|completed|got done|got done
    with|finished up|wrapped up|am done with|got through|all done with|got finished|over with)
    [with] [all|up] [<the>] (<doing>|<doing> [up|of] [<the>] ({target}|<things>|them|it|those)|
    <doing> and <doing>|{target}|<doing> and <doing> [<the>] ({target}|<things>)) [<when>]`,
        `[the] lids [are] [all] on [and] [the] bands [are] [all] on [and] [all] (done|finished|
    ready) [<when>]`,
        `(i am|we are|i believe i am|i am all) (through|finished|done) with (that|this) (bit|part|
    step|job|lot)`,
        `(that is|this is) me (finished|done|through) [with [<the>] ({target}|<things>|<doing>)]
    [<when>]`,
        `[<the>|all the|that is the|that is all the|that is] <doing> [of {target}] (is|are|has|has
    been) [been|now|all|finally] <done> [now] [<when>]`,
        "[the] <doing> [<the>] ({target}|<things>) is [all] <done> [<when>]",
        "that is [all] [<the>] (<doing>|{target}|<things>) [all] (<done>|<did>)",
        "[<the>] (<doing>|{target} <doing>) <done>",
        "[<the>] {target} <done>",
        `[i|we] [have] [just|all|now] [got] [all] (<did>) [all|up] [<the>] [all the] ({target}|
    <things>|them|it) [<when>]`,
        "[i|we] [have] [just] <did> and <did> [<the>] ({target}|<things>|them|it|everything) [<when>]",
        "[i|we] have [just] <did> (everything|all of it|all of them|it all|them all)",
        `(got|i got|we got|i have got|we have got|i have|we have) [all] [<the>] ({target}|<things>|
    everything|them|it|them all|it all|all of it|all of them) [all] (<did>|<done>|ready) [up|
    now] [<when>]`,
        "[<the>] (stage|step|job|task|prep|batch|process|timer) is [now|all] <done>",
        "all the ({target}|<things>) are (<done>|<did>|<did> and <did>)",
        "<done-jars-out>",
        "i have <did> (<things>|{target}) and <did> (<things>|{target}|them)",
        "[<the>] ({target}|<things>) <did>",
        {
          set: { target: "heat off" },
          phrases: [
            "[<the>] (heat|burner|stove|gas|fire|flame) [is] off [now]",
            "[i|we] [have] [just] (turned|shut|switched|killed|cut) off [<the>] <heat> [now]",
            "[i|we] [have] [just] (turned|shut|switched) [<the>] <heat> off [now]",
            "[i|we] [have] [just] (killed|cut) [<the>] <heat> [now]"
          ]
        }
      ],
      spoken: [
        "that is done",
        "the {target} (is|are) done",
        "finished with the {target}",
        { set: { target: "jars" }, phrases: ["the jars are out", "jars are out [of the canner]"] },
        { set: { target: "heat off" }, phrases: ["[the] heat is off"] },
        { set: { target: "canner" }, phrases: ["[the] canner is (ready|hot)"] }
      ],
      bags: [
        {
          must: ["<done>"],
          may: `
        <said-of-it>|i|am|with|step|part|bit|job|stage|now|too|well|task|{target}|<doing>|
        <things>|up|here|over|thing|pretty much|yes|got|everything|one|that one|for now|<when>|
        lot|finally
      `
        },
        {
          set: { target: "jars" },
          must: ["<jars-hot>|the (last|final) (jar|one)", "<out-of>|off the rack|on the towel"],
          may: `
        <took>|<said-of-it>|i|am|safely|taking|lifting|pulling|hauling|getting|fishing|
        bringing|came|coming|come|unloading|now|going|<when>|the last of|carefully|up|hoisting|
        hoisted|out
      `
        }
      ],
      lists: {
        done: `
      done|finished|all done|all finished|complete|completed|over with|taken care of|all set|
      through|all through|done with|all taken care of|good to go|seen to|dealt with|out of the
      way|done and dusted|squared away|over and done with|wrapped up
    `,
        did: `
      trimmed|sliced|washed|packed|filled|peeled|chopped|salted|drained|rinsed|mixed|weighed|
      sorted|snapped|topped|tailed|topped and tailed|stemmed|pitted|cored|blanched|skinned|
      shredded|pounded|tamped down|cooked|wiped|ladled|cleaned|scrubbed|cut|cut up|strained|
      measured|iced|chilled|mashed|crushed|labeled|labelled|scalded|roasted|heated|warmed|warm|
      skimmed|ground|diced|minced|squeezed|spread out|prepped|prepared|hulled|picked over|
      lidded|capped|marked|husked|shelled|soaked|sterilized|layered|pressed|weighed down|salted
      down|packed away|dissolved|hot|tightened|clean|all cut|cut and cored|scraped|cooled|cool|
      dry|dried|tender|slipped|quartered|halved|put away|shelved|stored|measured out|mixed up|
      stirred in|added|poured|debubbled|screwed on|fingertip tight|on ice|in the crock|
      submerged|checked
    `,
        things: `
      rims|bands|lids|jars|dill|garlic|peppers|onions|ice|salt|lemon juice|acid|vinegar|
      bubbles|headspace|rings|spices|sugar|brine|syrup|water|peels|skins|stems|ends|cores|pits|
      cucumbers|cukes|cabbage|berries|fruit|vegetables|slices|onions and peppers|jars and lids|
      labels|weights|crock|canner|kettle|tops|beans|pods
    `,
        took: `
      [i am|we are|i have|we have|i|we] [just|now] (taking|lifting|pulling|hauling|fishing|
      bringing|getting|removing|unloading|took|taken|lifted|pulled|hauled|removed|hoisting|
      hoisted|fetching|brought|fished|got)|
      take|lift|pull|bring|we will take|i will take|let us take|i will lift|i will pull|let us
      lift|let us pull|let us get|get|i will get|haul|fish|going to take
    `,
        "jars-hot": `
      [<the>] (last|final) (jar|one|of them|of the jars|pint|quart)|
      [<the>|all] (jars|pints|quarts|half pints|load|lot|rack)|
      <the> (first|second|third|last) load|everything|all of them|all {count:whole} [jars|
      pints|quarts]|the whole load|them|them all
    `,
        "out-of": `
      out|out of the canner|out of the water|out of the pot|out of there|out of the bath|out of
      the kettle|from the canner|up and out|out of the water bath|out onto the towel|out on the
      towel|out to cool|up out of the canner|off the rack|out of it|from the pot|from the water|
      out of the hot water
    `,
        "done-jars-out": `
      {target=jars} <took> <jars-hot> <out-of> [<when>]|
      {target=jars} <took> out <jars-hot> [<when>]|
      {target=jars} (unload|unloaded|unloading|i unloaded|i am unloading|we unloaded|emptied|i
      have unloaded|i emptied|empty|i will unload|let us unload) [<the>] (canner|pot|load|jars|
      water bath|rack|pressure canner) [<when>]|
      {target=jars} [<the>|all|all the|my|our] [{number}] (jars|pints|quarts|half pints|load)
      (is|are|came|have come|have been taken|are all|are now|are safely|have been lifted) [all|
      now|safely] (<out-of>|on the towel|on the rack|on the counter|on the towels|on a towel|
      cooling|on the cooling rack|resting|on the table|out cooling) [<when>]|
      {target=jars} (everything|all of them|they|they all|the whole load|the lot) (is|are|came)
      [all|now] (<out-of>|on the towel|on the rack|on the counter) [<when>]|
      {target} (is|are|came|have come|has come) [all|now] (out of the canner|out of the water
      bath|out of the water|out of the pot|out of the canner now|out) [<when>]|
      <took> {target} (out of the canner|out of the water bath|out of the water|out of the pot|
      out) [<when>]|
      {target=jars} jars [are] (out|out now|out of the canner|on the towel)
    `,
        heat: "(heat|burner|stove|gas|fire|flame|burners)"
      }
    };
  }
});

// src/language/intents/finish-time.ts
var finishTime;
var init_finish_time = __esm({
  "src/language/intents/finish-time.ts"() {
    "use strict";
    finishTime = {
      cost: "harmless",
      when: ["working"],
      slots: { target: "name" },
      example: "when do the jars come out",
      forgiving: true,
      topical: true,
      wordings: [
        `[<the>] {target} (finish|finishing|finished|done|ready|come out|coming out|out|be done|be
    ready) [is] (when|at what time|what time|at when)`,
        `<when-ask> (will|would|can|should) (i|we) [be able to|get to] (take|lift|pull|get|have|
    open|stop|turn off) [<the>|all the] ({target:open}|them|it|the jars|jars|the canner|the
    heat|the lid) [out|off|up|down|ready|done] [of the canner|of the water]`,
        `<when-ask> (do|does|will|can|should|must|may|would|shall|could) [<the>|i|we|all the|you|it|
    they|everything|that|this|those] [{target:open}] (come out|be done|finish|be ready|be
    finished|take out|pull|lift|end|be through|be out|get done|stop|take|take them out|take it
    out|be over|come off|expect to be done|get to stop|pull them|lift them out|be cool|be
    complete|come out of the canner|be done with|go to bed|be due|be done today|get out|come off
    the heat|take them off|pull out|come off the stove|be sealed|be checked|check the seals|
    open the canner|open the lid|be able to take|be up|stop boiling|stop processing|come up)
    [<the>|all the] [{target:open}] [out|off|now|today|up|at]`,
        `<when-ask> (do|does|will|can|should) [<the>] (jars|lids|load|canner|first load|next load|
    pints|quarts) (come|come out|be|get|finish) [out|done|ready|finished|of the canner|out of
    the canner|cool|off]`,
        `<when-ask> (is|are) [<the>|it|they|that|everything|we|this|i|all this|all that]
    [{target:open}] (done|ready|finished|out|due|over|coming out|due out|through|going to be
    done|going to be ready|going to be finished|due to come out|due to be done|going to finish|
    finishing|to come out|complete|supposed to be done|supposed to come out|supposed to be
    ready|supposed to finish|going to come out|up|expected to be done|expected|ending|to be
    done|scheduled to come out|set to finish|likely to be done|going to be through|off) [out|
    by|now|with|at]`,
        `tell me when (i|we) can (take|lift|pull|get|open|stop|turn off) [<the>|all the]
    ({target:open}|them|it|the jars|jars|the canner|the heat|the lid) [out|off|up|down]`,
        `(how late|by when) (will|do|does) (we|i|it|they|[<the>] {target:open}) (be done|finish|be
    ready|be finished|be at it|go|run|be)`,
        `(what is|tell me|give me|say|show me) [the|my|our] (finish time|finishing time|end time|
    time of finishing|done time|ending time|completion time|finish|eta|ready time|stop time)
    [(of|for|on) [<the>] {target:open}]`,
        "(finish time|end time|finishing time) [(of|for|on) [<the>] {target:open}]",
        "[<the>] {target} (finish time|end time|when)",
        `(tell me when|what time|when) (it|they|we|[<the>] {target:open}) (will be|is going to be|
    are going to be|should be|is supposed to be|would be) (done|ready|finished|out|over|
    through)`,
        `what time (is|are|will) [<the>] {target:open} [be] (done|ready|finished|due|out|over|coming
    out|end|finish|come out)`,
        "(what|which) hour will (it|they|we|[<the>] {target:open}) be (done|ready|finished)",
        `when can (i|we) (stop|go|sit down|quit|call it a day|leave|rest|turn off the heat|turn the
    heat off|turn it off|turn off the burner)`
      ],
      spoken: [
        "when will the {target:open} be done",
        "when will (it|they) be done",
        "when do the jars come out"
      ],
      bags: [
        {
          asking: true,
          must: [
            `<when-ask> (is|are|will|would|do|does|can|could|should|am|shall|must)|finish time|how
        soon`,
            "<finished-word>"
          ],
          may: `
        <asked-of-it>|[<the>] {target}|the jars|jars|canner|everything|load|out|up|off|expect|
        be|to|able|take|pull|lift|get|remove|them|timer|going|supposed|due|of the canner|about|
        think|soon|likely|done|with|by|lids|in|rest|at|heat|turn off|figure|reckon|suppose|
        guess|imagine|say
      `
        }
      ],
      lists: {
        "finished-word": `
      (done|finished|ready|out|over|through|finish|end|ends|come out|coming out|comes out|
      finishes|complete|take|pull|lift|due|up|finishing|stop|wrap up|get out|be able to)
    `,
        "when-ask": `
      when|what time|what oclock|at what time|about when|when exactly|roughly when|about what
      time|at what hour|what hour|around what time|around when|by when|by what time|when about|
      tell me what time
    `
      }
    };
  }
});

// src/language/intents/focus.ts
var focus;
var init_focus = __esm({
  "src/language/intents/focus.ts"() {
    "use strict";
    focus = {
      cost: "harmless",
      when: ["several-batches"],
      slots: { target: "name" },
      example: "switch to the beets",
      forgiving: true,
      wordings: [
        "[<let>] (take|bring|get|put) (me|us) [back|over] to [<the>] {target} [now]",
        "[<let>] (work on|do some work on|get to work on|tackle) [<the>] {target} [now|next]",
        "(show me|switch to|go to|pull up|bring up|focus on|open) [<the>] {target:open} (batch|lot)",
        `[<the>] {target} let us (look at|do|work on|talk about|get to) (those|that|them|it|this)
    [now]`,
        `[<let>] (go|switch|move|turn|jump|go on|go over|go back|get back|come back|change|hop|skip|
    switch over|switch back|move over|head|return|flip|shift|back|swap|go now|turn back|cut)
    [over|back|on] (to|to the) [<the>] {target} [now|please|for a minute|for a bit|batch]`,
        `[<let>] (talk about|focus on|look at|concentrate on|see to|show me|pull up|bring up|show|
    deal with|see about|attend to|tend to|turn our attention to|turn to|think about|check on|
    see|check in on|have a look at|take a look at|pay attention to|get back on) [<the>] {target}
    [now|next|for a minute|for a bit]`,
        "(back|over|on|now|and now|now back|now over) (to|for|on to) [<the>] {target} [now]",
        "(now|next|and now) [<the>] {target}|what about [<the>] {target}",
        `(this is|i am talking about|i mean|i meant|this is about|i am on|we are on|i am working on|
    we are working on|i am with|speaking of|regarding|as for|i am at|it is about|about) [<the>]
    {target} [now]`,
        "[<the>] {target} [now|next|please]"
      ],
      spoken: ["switch to the {target}", "go to the {target}"]
    };
  }
});

// src/language/intents/germination.ts
var germination;
var init_germination = __esm({
  "src/language/intents/germination.ts"() {
    "use strict";
    germination = {
      cost: "changing",
      when: ["always"],
      slots: { seed: "name", sprouted: "count", of: "count", days: "number" }
    };
  }
});

// src/language/intents/help.ts
var help;
var init_help = __esm({
  "src/language/intents/help.ts"() {
    "use strict";
    help = {
      cost: "harmless",
      when: ["always"],
      slots: {},
      example: "what can I say",
      forgiving: true,
      wordings: [
        `what (do|can|could|will|would) you (know how to do|help with|help me with|offer|handle|
    manage|take care of|answer|tell me|do for me|do for us)`,
        `(what|which) (words|commands|phrases|things|sentences) (will|do|can|would|could|should|
    might) (you|i|we) (take|understand|know|use|say|recognize|have|follow|accept|listen for|
    give you)`,
        `how (do|should|can|would) i (talk|speak|use|work|run|ask|start|begin|get help) [to|with|
    for] [you|this|this thing|it|a batch|things|for help|help] [please]`,
        `(show|tell|teach|give) me (how to (use you|use this|work this|talk to you|start|begin)|what
    to say|the basics|a hint|some hints|the list|the list of commands|a list|everything you can
    do|everything i can say|what you know|what you understand|some help|the options|my choices|
    the possibilities)`,
        "(tell|show) me what you (can|are able to|know how to) (do|help with|help me with) [for me]",
        `i do not know how to (work|use|run|talk to) (this|you|it|this thing) [help me|can you help
    me|can you help|please help]`,
        `(help|help me|help please|i need help|i need some help|need help|need some help|i need a
    hand|give me a hand|help me out|can you help|can you help me|could you help me|help me out
    here|i am lost|i am stuck|i am confused|a little help|some help|show help|show me the help|
    instructions|show the commands|list the commands|list commands|show commands|commands|
    options|i am not sure what to say|i do not know what to say|i do not know how this works|i
    do not know how to use this|i do not know what i can say|i do not understand how this works|
    how do i use this|how do i use you|how do i work this|how do i do this|how does this work|
    how do you work|how does this thing work|how do i talk to you|how do i talk to this|how
    should i talk to you|how do i start|how do i begin|how do i get started|how do i start a
    batch|what are my options|what are my choices|what are the commands|what are the options|
    what can you do|what can i say|what can i ask|what can i ask you|what can i tell you|what
    can we say|what do you do|what do you understand|what do you know|what else can you do|what
    else can i say|what all can you do|what all can i say|what words do you know|what words can
    i use|what commands are there|what commands do you know|what commands do you have|what
    should i say|what should i say to you|what am i able to say|what am i allowed to say|what do
    i say|what do i say to you|what sort of things can i say|what kind of things can i say|what
    kinds of things can i say|what sorts of things can i say|what things can i say|what things
    can you do|what are you able to do|what are you for|what are you good for|what is it you do|
    what is it you can do|what is this|how can you help|how can you help me|how can i talk to
    you|tell me what you can do|tell me what i can say|tell me how this works|show me what you
    can do|show me what i can say|explain how this works|explain yourself|teach me|teach me how
    to use this|show me how this works|show me how to use this|show me the commands|show me my
    options|read me the commands|what can you help with|what can you help me with|what might i
    say|which words can i use|give me some help|give me the commands|give me a list of commands|
    give me some examples|list what i can say|list what you can do|list my options|what may i
    say|what can i do here|what can i do with you|what can i do|what do you listen for|what do
    you respond to|what phrases do you know|what could i say|i could use some help|i could use a
    hand|lend me a hand|i need assistance|assistance|user guide|show the guide|what is it i can
    say|how do i talk to it|what is possible) [here|now|again|with this|to you|please]`
      ],
      spoken: ["help", "what can i say"],
      bags: [
        {
          asking: true,
          must: ["help|commands|options|instructions|(say|ask|tell) [to] [you]|use|work|works|choices"],
          may: `
        what|how|can|do|i|you|me|my|this|it|the|a|are|is|need|some|show|list|to|know|should|
        does|of|am|could|would|with|with you|here|thing|else|all|give|tell|understand|talk|for|
        things|kinds|sort|available|possible|be|say|please|will|supposed|we
      `
        }
      ]
    };
  }
});

// src/language/intents/hold.ts
var hold;
var init_hold = __esm({
  "src/language/intents/hold.ts"() {
    "use strict";
    hold = {
      cost: "changing",
      when: ["working"],
      slots: { target: "name" },
      example: "hold the beets",
      forgiving: true,
      topical: true,
      givesWay: ["repeat", "help", "what-now"],
      wordings: [
        `[<let>] (wait|hold|hold on|hold up|hang on|hang tight|hold everything|hold it|hold it there|
    pause|stand by|stop|stop there|hold off|hold that thought|pause it|pause that|wait up|halt|
    hold your horses|freeze everything|pause everything|pause here|pause there|stop for now|
    hold for now|time out|wait there|whoa|sit tight|stop right there|put it on hold|put
    everything on hold|put that on hold|stop everything|stay there|bear with me) [<a-moment>|
    for now|there|on|up|right there|everything]`,
        "<a-moment>",
        "(hold|hold on|hold it|hang on|wait|stop|stop there|<a-moment>) <quiet-reason>",
        "<quiet-reason> [so] (hold|hold on|hold it|hang on|wait|stop there|<a-moment>)",
        "[<let>] (give|allow) me <a-moment>",
        `(i need|need|i will need|we need|just need) [to take] (<a-moment>|a break|to stop|to step
    away|a pause|a breather|to pause|to step out|to stop for a bit|to step away for a minute|to
    take a break|to step away <a-moment>|to step out <a-moment>|to stop <a-moment>|to pause
    <a-moment>|to go|to get the door|to answer the phone|to answer the door|to catch up|to sit
    down|to rest|a rest) [<a-moment>]`,
        `[<let>] (take|have|i am taking|we are taking|i will take) a (break|breather|pause|rest|
    short break|little break|quick break) [here|for now|now|<a-moment>]`,
        `[<let>] (pause|hold|stop|suspend|put off) [<the>] {target} [<a-moment>|for now|there|for a
    while]`,
        "[<let>] (pause|hold|suspend) the (process|processing|clock|clocks|time) [<a-moment>|for now]",
        "[<let>] (put|leave) [<the>] {target} on hold [<a-moment>|for now]",
        "[<let>] (leave|park) [<the>] {target} for (now|a bit|a while|a minute|the moment)",
        `(i will|i have to|i am going to|let me) (step away|step out|be right back|be back|go get the
    door|go answer the door|get the phone|get the door|answer the phone|answer the door)
    [<a-moment>|now]`,
        `(be right back|back in <a-moment>|not just yet|i am not ready|i am not ready yet|not ready|
    not ready yet|we are not ready|we are not ready yet|i will be right back|stepping away|
    stepping out|stepping away <a-moment>|brb)`,
        "[<let>] hold off [on] [<the>] [{target}] [<a-moment>|for now]"
      ],
      spoken: ["hold the {target}", "hold everything"],
      bags: [
        {
          must: [
            `wait|hold|pause|stop|hang on|hold on|break|breather|stand by|freeze|hold up|sit tight|
        step away|second|minute|moment|sec`
          ],
          may: `
        <a-moment>|<let>|give me|take|need|on|up|for|a|the|here|there|now|everything|it|that|
        please|i|we|have|got to|to|get|answer|door|phone|right|things|where|is|are|you|let|me|
        us|just|will|[<the>] {target}|step|away|out|go|check|find|someone is at the door|the
        phone is ringing|put|on hold|quick|must
      `
        }
      ],
      lists: {
        "a-moment": `
      [just|for|for just|about] (a|one|half a|another) (moment|minute|second|sec|bit|while|
      little while|tick|mo|few minutes|little bit|couple of minutes|short while|spell|jiffy|
      few|couple minutes|few seconds|few moments|second here|minute here)|
      for {number} minutes
    `
      }
    };
  }
});

// src/language/intents/how-much.ts
var howMuch;
var init_how_much = __esm({
  "src/language/intents/how-much.ts"() {
    "use strict";
    howMuch = {
      cost: "harmless",
      when: ["working"],
      slots: { target: "name", what: "text", subject: "name" },
      example: "how much dill per jar",
      finish: ({ what, ...rest }) => ({ slots: { ...rest, ...what } }),
      wordings: ["{what:asked}"],
      spoken: ["{what:asked}"]
    };
  }
});

// src/language/intents/hush.ts
var hush;
var init_hush = __esm({
  "src/language/intents/hush.ts"() {
    "use strict";
    hush = {
      cost: "changing",
      when: ["always"],
      slots: { minutes: "number" },
      example: "hush for ten minutes",
      forgiving: true,
      wordings: [
        "[<want>] <stop-talking> [up|now|down|please] [for] {minutes:duration}",
        `[<want>] <stop-talking> [now|a while|for a while|for now|for a bit|for a minute|already|a
    bit|over there|there|will you|would you|a moment|for a moment|for the moment|a little while|
    for a little while]`,
        "[<want>] (leave|let) me (alone|be) for {minutes:duration}",
        `[<want>] (leave me alone|let me be|no more noise|turn the noise off|turn off the alarm|stop
    that noise|stop that racket|stop the noise|silence the alarm|stop ringing|stop the alarm|
    stop the bell|mute the alarm|quit ringing|turn that alarm off|quit beeping|quit that|turn
    that off|cut it out|cut the noise|turn that noise off|shut that off|stop that beeping|
    silence that)`,
        `[<want>] (give|get) me [some] {minutes:duration} (of|of some) (quiet|silence|peace|peace and
    quiet)`,
        "[i] [want|need] {minutes:duration} of (quiet|silence|peace|peace and quiet) [please]",
        "quiet time for {minutes:duration}|for {minutes:duration} <stop-talking>",
        "<quiet-reason> (hush|quiet|be quiet|shush)",
        "[<want>] <stop-talking> [now|for a bit|for a minute|a moment] <quiet-reason>",
        `[<want>] (do not (talk|speak|say (anything|a word))|no more talking) [for] [the next]
    [{minutes:duration}]`,
        "[<want>] no more talking until i (say so|tell you|say)",
        `[<want>] (not a (peep|word|sound)|no (talking|noise|chatter)) [out of you|from you] [for
    {minutes:duration}]`
      ],
      spoken: ["hush [for {minutes:duration}]", "be quiet"],
      bags: [
        {
          asking: true,
          must: [
            `quiet|hush|shush|silent|silence|mute|muted|stop talking|(do|not) not (talk|speak)|no
        talking|quit talking|pipe down|shut up|zip it|stop yakking|stop chattering|hold your
        tongue`
          ],
          may: `
        <want>|be|stay|go|keep|for|a|the|while|bit|minute|moment|some|now|please|you|your|
        voice|me|us|i|{minutes:duration}|little|yourself|in here|need|would|could|can|it|on|of|
        time|down|up|will|to|and
      `
        }
      ],
      lists: {
        "stop-talking": `
      hush|shush|shh|sh|quiet|be quiet|be silent|stay quiet|keep quiet|silence|mute|mute
      yourself|go quiet|quiet down|pipe down|stop talking|shut up|hush up|zip it|no more
      talking|stop the chatter|do not talk|do not speak|stop speaking|hold your tongue|keep it
      down|not a word|no talking|go silent|silent|simmer down|stop nagging|give it a rest|i need
      quiet|i need some quiet|can it|let me have some quiet|some quiet|peace and quiet|stop
      chattering|voice off|sound off|turn off your voice|turn your voice off|turn the voice off|
      turn off the sound|turn the sound off|stop beeping|be still|keep still|stay silent|do not
      say anything|say nothing|leave me in peace|quit talking|a little quiet|turn yourself off|
      stop yapping|keep silent|cut the chatter|pause the voice|i want quiet
    `
      }
    };
  }
});

// src/language/intents/jar-broken.ts
var jarBroken;
var init_jar_broken = __esm({
  "src/language/intents/jar-broken.ts"() {
    "use strict";
    jarBroken = {
      cost: "raising",
      report: true,
      when: ["stage:fill", "load:in-canner", "load:out", "asked:seals"],
      slots: { target: "name", count: "count", jars: "numbers" },
      example: "a jar broke",
      wordings: [
        "<numbered> [just|has|have|both] <broke>|<some-jars> [just|has|have] <broke>",
        `(a|one|one of the|another|one of our|one of my) {count=1} (jar|jars|pint|quart|pints|
    quarts|half pint|pint jar|quart jar) [just|has] <broke>`,
        `[<we>|i] [have|got|have got|had|there is|there are|found] {count} (broken|cracked|busted|
    shattered) (jar|jars|one|ones|pint|quart|pints|quarts) [in the canner|here|in the pot|in the
    water]`,
        `[<we>|i] [have|just|have just] (broke|broken|cracked|dropped|dropped and broke|dropped and
    smashed|smashed) {count} (jar|jars|of the jars|of them|pint|quart|pints|quarts|jar on the
    floor)`,
        `[<we>|i] [have|just|have just] (broke|broken|cracked|smashed|dropped) (jar|number|jar
    number) {jars}`,
        `[<we>|i] [have|just|have just] (lost|had) {count} [jar|jars|pint|quart] (to breakage|in the
    canner|break|crack|shatter|break on me|to a crack|break in the canner|breakage|crack in the
    canner)`,
        `[<we>|i] [have] [just] lost {count} (jar|jars|pint|quart|pints|quarts) [[it|they|that one]
    [just] <broke>]`,
        `[the] bottom (fell|came|dropped|broke|cracked|blew|popped|has come|has fallen|has gone|
    went) (out|off|right out|clean off|clean out) [of] {count} (jar|jars|of the jars|of them|of
    them jars|of those jars|pint|quart)`,
        `[the] bottom (fell|came|dropped|broke|cracked|blew|popped) (out|off|right out) [of] [jar|
    number|jar number] {jars}`,
        `there is {count=1} (glass in the water|broken glass in the canner|broken glass in the water|
    a jar broken in the canner|a broken jar in there)`,
        "{count=1} (jar broke|broken jar|jar is broken|cracked jar|jar cracked|jar breakage)",
        "{count} (broken|cracked|broke) [jar|jars]"
      ],
      spoken: ["a jar broke {count=1}"],
      bags: [
        {
          must: [
            "{count} [<of-them>|jars|jar|pint|quart|pints|quarts|glass]|<numbered>|[jar|number] {jars}",
            "<broke>|broken|busted|shattered|cracked|smashed"
          ],
          may: `
        <said-of-it>|i|there|jar|jars|in|canner|water|pot|on me|on us|had|found|lost|in there|
        up|of {target}|{target}
      `
        }
      ],
      lists: {
        broke: `
      broke|cracked|is broken|is cracked|has broken|has cracked|shattered|burst|has burst|bust|
      has bust|has gone and (split|cracked|broken|burst)|bust on me|has a crack|has a crack in
      it|blew|blew out|split|lost its bottom|exploded|went to pieces|broke in the canner|
      cracked in the canner|broke on me|cracked on me|broke in the pot|got broken|fell apart|
      are broken|are cracked|have broken|have cracked|broke its bottom|dropped its bottom|
      snapped|came apart
    `
      }
    };
  }
});

// src/language/intents/jars-filled.ts
var jarsFilled;
var init_jars_filled = __esm({
  "src/language/intents/jars-filled.ts"() {
    "use strict";
    jarsFilled = {
      cost: "changing",
      report: true,
      when: ["stage:fill"],
      slots: { target: "name", count: "count", size: "word" },
      example: "eight pints filled",
      wordings: [
        "<tally> {count:whole} <filled-state> [now|so far]",
        `[and|so] <tally> [all|about|exactly|a total of|all of|only|just|another] {count:whole}
    [full|filled|packed|whole|good|even] <jars-or-size> [<filled-state>|filled|full|packed|
    ready|in all|all told|all together|altogether|total|done|up|ready to go|ready for the
    canner|all filled|filled up|packed and ready|lidded|all packed|capped|put up|ready to load|
    now|so far|of {target}|from {target}|for {target}|out of it|out of that|out of {target}|
    filled with {target}|in this batch|in total|from this batch|out of this batch|from that|on
    the counter|full]`,
        `[<we>|i] [have|just|have just] (filled|packed|filled up|got filled|ladled|got|made|ended up
    with|filled and lidded|put up|come out with|came out with|wound up with|managed|topped off|
    finished filling|finished packing|done filling|canned|ended with|finished with|come up with|
    came up with) [about|exactly|a total of|only|just|all|another] {count:whole} [full]
    [<jars-or-size>] [of {target}|with {target}|in all|all told|altogether|total|now|so far|
    from that|up|from this batch|out of it|out of that|in total|full]`,
        `[<the>|all] {count:whole} <jars-or-size> (is|are|got|have been) [all|now|already]
    (<filled-state>|filled|full|packed|filled up|filled and lidded|ready to go in|packed and
    lidded|lidded|filled and wiped|ready for the canner|topped up)`,
        `[all] {count:whole} [full] <jars-or-size> [all] (<filled-state>|filled|full|packed|in all|
    all told|altogether|in total|ready for the canner|filled and lidded|packed and lidded|so
    far) [of {target}]`,
        "[all] {count:whole} (are|have been) [all|now|already] (filled|full|packed|filled up|lidded)",
        `[<we>|i] [have] [ended up|wound up|just finished|finished] (filling|packing) [about|
    exactly] {count:whole} <jars-or-size> [in all|all told|of {target}]`,
        "{count:whole} <jars-or-size> [of {target}]",
        "{count:whole} (filled|full|packed)",
        "{size} {count:whole} [of them] [all] (filled|full|packed)",
        "(filled|packed|full) {count:whole} <jars-or-size>",
        `<it> (filled|made|came out to|came to|gave us|gave me|yielded|comes to|fills|makes|comes out
    to|came out at|works out to|fit in|fit into|went into|filled up|took|turned into|packed
    into|worked out to) [about|exactly|just|only] {count:whole} [full|filled|packed|even]
    [<jars-or-size>] [full|in all|altogether|of {target}]`,
        `{target} (filled|made|came out to|came to|gave us|gave me|yielded|comes to|fills|makes|
    packed into|fit in|fit into|went into) [about|exactly|just] {count:whole} [full]
    [<jars-or-size>]`,
        "<the> (last|final) one is filled [and] that (makes|is) {count:whole}",
        `(total|the total|the count|jar count|the jar count|count) [is|of] {count:whole}
    [<jars-or-size>] [filled]`,
        `[i|we] (count|counted|have counted) {count:whole} [full|filled] [<jars-or-size>] [filled|
    full]`
      ],
      spoken: [
        "{count:whole} {size} filled",
        "{count:whole} jars filled",
        "[i] filled {count:whole} {size}",
        "that is {count:whole} {size}",
        "{count:whole} {size}"
      ],
      bags: [
        {
          must: ["{count:whole} [full|filled|good] <jars-or-size>"],
          may: `
        <tally>|<filled-word>|it|that|we|i|have|has|is|are|got|all|and|so|in all|in total|
        total|now|all told|altogether|so far|of {target}|from {target}|{target}|made|filled|
        packed|<the>|just|out of this batch|from this batch|out of it|out of that|from that|up|
        about|exactly|another
      `
        }
      ],
      lists: {
        "filled-state": "<filled-word> [and] [<filled-word>] [and] [<filled-word>]",
        "filled-word": `
      filled|full|packed|lidded|capped|ready|wiped|done|ready to go|topped up|sealed up and
      ready|ladled|loaded up|filled up|ready for the canner|waiting|up|good to go
    `,
        tally: `
      there is|here is|that is|that makes|makes|it makes|we have|i have|we have got|i have got|
      got|there are|here are|that gives us|that gives me|it gave us|it came to|that comes to|
      comes to|we got|i got|we ended up with|ended up with|we made|made|i made|we are at|i am
      at|it is|they are|all together|altogether|in all|we are up to|that makes it|that brings us
      to|that comes out to|came out to|it came out to|came to|it comes to|came out with|i come
      out with|that would be|that will be|all told|we are looking at|looks like|a total of|
      total of|that was|gives us|that fills
    `
      }
    };
  }
});

// src/language/intents/loaded.ts
var loaded;
var init_loaded = __esm({
  "src/language/intents/loaded.ts"() {
    "use strict";
    loaded = {
      cost: "changing",
      report: true,
      when: ["load:waiting"],
      slots: { target: "name", at: "instant", count: "count", size: "word" },
      example: "the jars are in the canner",
      wordings: [
        `[<the>|all <the>|all] [{count:whole}] (jars|pints|quarts|half pints) [are|is] [all|now]
    (loaded|loaded up|loaded in|in place|in the rack and down) [<when>]`,
        `[<all-in-canner>] (is|are|went|have gone|go|got|have been put|have been lowered|are now|are
    all|are all now|are down|are safely|has gone|have all gone|all went) [now|all|safely|
    already|lowered|loaded|down|back] (in|into|inside|down in|down into|in the water of|under
    water in) [the] [<the>] (canner|pot|water bath|bath|water|kettle|pressure canner|canning
    pot|water bath canner|hot water|big pot|rack) [now|and the lid is on|with the lid on|lid is
    on] [<when>]`,
        `[the|all the|all|all my|my|our] [{count:whole}] (jars|pints|quarts|half pints|load) (is|
    are|went|have gone|got) [all|now|already|safely|back] in [<when>] [<lid-on>]`,
        `(everything|the load|the rack|the first load|the second load|the next load|the last load)
    (is|went|has gone|has gone back) [now|all] in [<when>]`,
        `[<the>] (canner|pot|load|rack|{target}|water bath|pressure canner) [is|has been] [now|all|
    fully] (loaded|loaded up|full of jars|full|filled with jars|loaded and ready|all loaded)
    [<lid-on>] [<when>]`,
        `[<we>|i] [have|just|have just] (put|loaded|lowered|set|placed|dropped|got|lower|put in|
    loaded in|eased|slid) [<the>|all the|all|all of the] [{count:whole}] (jars|load|rack|pints|
    quarts|half pints|last jar|first load|second load|next load|last load) [down] (in|into|in
    the canner|into the canner|into the water|in the water|in the pot|into the pot|in the bath|
    into the bath|down|in the water bath|in the pressure canner|into the water bath|into the
    pressure canner|into the hot water) [now] [<lid-on>] [<when>]`,
        `[<we>|i] [have|just|have just] (loaded|filled|loaded up|finished loading|done loading|got
    loaded) [<the>] (canner|pot|water bath|rack|pressure canner|kettle) [up] [<lid-on>] [<when>]`,
        "[<we>|i] [am|are|have] (done|finished) loading [<the>|up] [canner|pot|jars] [<when>]",
        "[all] (loaded|loaded up|loaded in) [now|and ready] [<lid-on>] [<when>]",
        "(jars|all jars|pints|quarts|load) [is|are] in [the canner|the pot|the water|the bath]",
        "[the] load [{number}|one|two|three] is in [the canner|the pot] [<when>]",
        "[<the>] canner [has] [got] (its|it is|all its|all the|the|a full) (load|jars) [in it|in]",
        "[the] jars are (down|lowered|submerged) [in the canner] [<when>]",
        `[<we>|i] (have|got|have got) [<the>] [all the] jars in [the canner|the water|the pot]
    [<when>]`,
        `[<we>|i] [have|got|have got] [<the>] (canner|pot|rack|kettle|water bath|jars|load) [all]
    loaded [up] [<lid-on>] [<when>]`,
        `[<the>] rack (is|has been|has) (down|lowered|gone down|in|dropped) [in the water|in the
    canner] [with the jars] [<when>]`,
        "(<we>|i) [have|just] lowered the rack [of jars] [into the canner|in] [<when>]",
        `[<the>] {target} (is|are|went) (in|into) the (canner|water bath|pressure canner|pot|water|
    bath) [now] [<when>]`,
        "[<the>] (beets|beans|pickles|tomatoes) (is|are) in the canner",
        `(i|we) [have|just|have just] (put|got|set|lowered|loaded|placed) [all] [<the>] {target}
    [jars] [all] [down] (in|into) the (canner|water bath|pressure canner|bath) [now] [<when>]`
      ],
      spoken: ["the jars are in [the canner]", "the canner is loaded", "they are in the canner"],
      bags: [
        {
          must: ["<all-in-canner>|[{count:whole}] (jars|pints|quarts|half pints)|rack", "<loaded-in>"],
          may: `
        <said-of-it>|i|put|set|lowered|got|placed|safely|down|snug|nicely|<when>|<lid-on>|every
        one|last|first|second|load|going|went|up|is|all of|all the|ready
      `
        }
      ],
      lists: {
        "loaded-in": `
      (loaded|lowered|[down] in|in the canner|into the canner|in the water|into the water|in the
      pot|into the pot|in the bath|in the water bath|down in there|in there|in the rack|inside|
      aboard|down in the water|under the water)
    `,
        "lid-on": `
      [and|with] (the lid|lid|the lids|lids) [is|are] (on|down|closed|locked|locked on|in
      place)|
      and (covered|closed|locked|locked down|ready to go|ready)
    `,
        "all-in-canner": `
      [<the>|all|all of <the>|all the] [{count:whole}] (jars|pints|quarts|half pints|half pint
      jars|pint jars|quart jars|load)|
      everything|they|they all|all of them|the (first|second|third|next|last) load|the rack|the
      last of the jars|the whole load|it|the last jar|all
    `
      }
    };
  }
});

// src/language/intents/no.ts
var no;
var init_no = __esm({
  "src/language/intents/no.ts"() {
    "use strict";
    no = {
      cost: "raising",
      when: ["asked", "asked:disposition"],
      slots: {},
      example: "no it didn't",
      unasked: true,
      answer: true,
      wordings: [
        "<no-word> [<no-word>] [<no-tail>] [please|sir|maam|thanks|thank you]",
        "(heavens|goodness|gracious|good heavens|lord|dear) no",
        `(do not|do not do that|do not do it|please do not|better not|i would rather not|rather not|
    not yet|not now|not at all|not really|leave it|leave it be|leave it alone|leave that|keep
    it|keep it as it is|absolutely not|certainly not|of course not|no way|not a chance|no
    chance|not on your life|i do not want to|i do not want that|i do not think so|i think not|i
    think i will pass|it did not|it was not|it is not|they are not|they were not|they did not|i
    did not|we did not|i have not|we have not|i am not|we are not|it has not|they have not|they
    do not|it does not|i do not|we do not|forget it|never mind|nevermind|never mind that|stop do
    not|wait do not|hold on do not|that is not right no|no need|not necessary|by no means|under
    no circumstances|i am not sure|not sure|negatory|i said no|that is a no|it is a no|i would
    say no|i will pass|pass|skip it|i guess not|i suppose not|afraid not|i am afraid not|not
    quite|do nothing|let us not|i changed my mind|changed my mind|i have changed my mind|on
    second thought no|i would not|i will not|we will not|rather you did not|not this time|not
    today|wait no|keep going do not) [please|now|then|thanks|yet|thank you|after all|just yet]`
      ],
      spoken: ["no", "no it did not", "no they are not", "nope"],
      lists: {
        "no-word": `
      no|nope|nah|no no|negative|uh uh|naw|nay|no way|certainly not|absolutely not|definitely
      not|not at all|no siree|no sirree|no indeed|no mam|god no|never|of course not|nuh uh|not
      really
    `,
        "no-tail": `
      do not|do not do it|do not do that|leave it|it did not|it was not|it is not|they are not|
      they did not|not yet|not now|thanks|thank you|i do not|i did not|we did not|wait|stop|
      keep it|leave it be|it has not|they have not|i am not|i have not|we have not|not at all|
      way|not that|not that one|i do not think so|never mind|forget it|it does not|they do not|
      they were not|we are not|do not do anything|leave it alone|leave that alone|leave them|
      keep going|not really|i changed my mind|i have changed my mind|changed my mind|not this
      time|not today|keep them|that is not right|that is wrong|that is not it|it lost the boil|
      need|not quite|i would rather not|better not|hold off|it did not hold|sorry|let us not|do
      not toss it|do not abandon it|i do not want to|i do not want that|not any more
    `
      }
    };
  }
});

// src/language/intents/note.ts
var note;
var init_note = __esm({
  "src/language/intents/note.ts"() {
    "use strict";
    note = {
      cost: "changing",
      when: ["always"],
      slots: { text: "text" },
      example: "note that the garlic was old",
      wordings: [
        `[<want>] (put in|put|stick in|make|leave|write|jot|type in|keep|take down) [me] a (note|
    line|record|memo) [in (the log|the book|the record|there|here)] [that|saying|saying that|
    of|about|to say|to say that] {text}`,
        `[<want>] (note|make a note|take a note|jot down|write down|record|log|put down|jot|note
    down|put a note|add a note|leave a note|make note|take note|mark down|scribble down|get this
    down|take this down|put in the log|write in the log|put in the notes|add to the log|put it
    down|write it down|put on record|set down|put it in the log|write it in the log|note for the
    log|note for the record|put on the record|note in the log|keep a note|keep a record|note to
    the log|new note|add to the notes|write this down|jot this down|note this|log this|log a
    note|note this down|record this|record a note|make a record|add note|batch note|put this in
    the log|enter in the log|enter a note|make a note in the log|make a note for next time|add a
    note to the log|make a note of this|take a memo|memo|just a note|let the record show|let the
    log show|please note) [that|saying|saying that|of the fact that|down that|to say|to say
    that|says|which says|for next time|here that|of how|in the log that|for the record|for the
    log] {text}`,
        `(note to self|for the record|for the log|for the notes|side note|for my notes|for our notes|
    for next time|just so it is written down|on the record) {text}`,
        "{text:pinged}"
      ]
    };
  }
});

// src/language/intents/opened.ts
var opened;
var init_opened = __esm({
  "src/language/intents/opened.ts"() {
    "use strict";
    opened = {
      cost: "changing",
      report: true,
      when: ["always"],
      slots: { target: "name", count: "count", size: "word", spoiled: "flag" },
      example: "we opened a pint of the beets",
      doubting: ["used"],
      wordings: [
        `[<we>|i|i have|we have|just|i just|we just] [just] (opened|used|used up|ate|finished|
    finished off|opened up|are opening|am opening|finished up|cracked open) {count=1} (the|our|
    my) [last|first|only] <jars-or-size> of [<the>] {target:open} [for (supper|dinner|lunch|
    breakfast)|tonight|today|last night|this (morning|afternoon|evening)|from the pantry]`,
        `[<we>|i|i have|we have|just|i just|we just] [just] (opened|open|opening|cracked open|used|
    used up|ate|broke open|broke into|popped open|popped|finished|finished off|took|eaten|
    finished up|went through|opened up|am opening|are opening|am going to open|brought up|
    started|dipped into) [up] {count} <jars-or-size> of [<the>] {target:open} [for (supper|
    dinner|lunch|breakfast)|tonight|today|last night|this (morning|afternoon|evening)|from the
    pantry|from the shelf|off the shelf]`,
        `[<we>|i|i have|we have|just|i just|we just] [just] (opened|cracked open|used|used up|ate|
    broke open|popped open|finished|finished off|eaten|opened up|am opening|are opening) {count}
    [<jars-or-size>] [of] [{target}] [for (supper|dinner|lunch)|tonight|today|from the pantry|
    from the shelf]`,
        `[<we>|i|i have|we have|just] (opened|cracked open|used|opened up) {count} {target} (jar|
    jars|pint|pints|quart|quarts)`,
        `{count} <jars-or-size> of [<the>] {target:open} [is|are|got|was|were] (opened|open|used|
    eaten|used up|gone) [for (supper|dinner|lunch)|today]`,
        "take {count} <jars-or-size> of [<the>] {target:open} off the shelf",
        "<opening> {count} {spoiled=true} <gone-bad> <jars-or-size> of [<the>] {target:open} [<off>]",
        `<opening> {count} <jars-or-size> of [<the>] {target:open} [and|but|which|that] [it|they|
    one] [is|are|was|were|had|has|looked|had been|smelled|smells] {spoiled=true} <gone-bad>
    [<off>]`,
        `[<came-upon>] {count} {spoiled=true} <gone-bad> <jars-or-size> of [<the>] {target:open}
    [<off>]`,
        `[<came-upon>] {count} <jars-or-size> of [<the>] {target:open} [that|which] [is|are|was|
    were|has|have|had] [gone] {spoiled=true} <gone-bad> [<off>]`
      ],
      bags: [
        {
          must: ["{count} <jars-or-size>", "of [<the>] {target}", "<opened-it>"],
          may: `
        we|i|have|has|just|up|for (supper|dinner|lunch|breakfast)|tonight|today|now|and|
        another|last|from the (shelf|pantry|cellar|basement)|off the shelf|out of the pantry|
        is|are|got|was|were
      `
        }
      ],
      lists: {
        "opened-it": `
      (opened|open|opening|ate|used|cracked open|finished|finished off|eaten|used up|popped
      open|dug into|broke open|opened up|polished off|went through|had|cracked)
    `,
        opening: `
      [<we>|i|i have|we have|just|i just|we just] [just] (opened|opened up|cracked open|
      opening)
    `,
        "came-upon": "(there is|there was|i found|we found|i have|found)",
        "gone-bad": `
      (spoiled|spoilt|moldy|bulged|bulging|swollen|leaking|leaky|foaming|foamy|spurted|rotten)|
      (bad|gone bad|gone off|went bad|off|unsealed|come unsealed|came unsealed|open already)|
      (smelled bad|smells bad|smelled off|smells off|smelled wrong|not sealed|no longer sealed)
    `,
        off: "(on|from|off) the shelf|(in|from) the (pantry|cellar|basement)|today|tonight"
      }
    };
  }
});

// src/language/intents/overview.ts
var overview;
var init_overview = __esm({
  "src/language/intents/overview.ts"() {
    "use strict";
    overview = {
      cost: "harmless",
      when: ["always"],
      slots: {},
      example: "what's running",
      forgiving: true,
      wordings: [
        `where are we (at|at now|with everything|with things|on everything|at with everything|at with
    things|at on everything)`,
        `what all (do we have|have we got|have i got|do i have|is) [going|running|on|cooking] [on|
    now|right now|here]`,
        "(run|go) (through|over) (everything|all) [that is] (going|running|on) [on] [now]",
        `(run|walk|take|talk) (me|us) through (everything|it all|what is going|what is running|what
    is on|the whole thing|everything that is going|everything that is running|everything that is
    on|all of it) [on|here|now]`,
        `how (is|are) (everything|things|it|we|it all|things going|all of it|all of this|everything
    else|this|all that|the kitchen|everybody|the batches|all the batches|the whole kitchen|my
    batches|everyone) [all] [going|doing|coming along|looking|coming|getting on|getting along|
    shaping up|holding up|faring|progressing|running|standing] [so far|along|now|today|in there|
    over there|in the kitchen]`,
        `what (is|are|have we|do we have|have i|do i have|have you|all is|all have we) [got]
    [everything|all|we|all] [running|going|on|going on|cooking|on the go|on the stove|in
    progress|active|happening|in the works|in the kitchen|under way|underway|on the boil|
    working|open|in the canner|on the burners|on the heat|on right now|up] [now|right now|at the
    moment|in the kitchen|here|today|just now|on]`,
        `(what is the|give me the|give me a|give me an|tell me the|let me have a|let us have a|i want
    a|i need a|show me the|show me a|read me the|run me through the|show me an|how about a|can i
    get a|can i have a|may i have a|could i get a|read me a|read the) [full|quick|whole|brief|
    complete|short|general|kitchen] (status|overview|rundown|report|summary|state of play|state
    of things|lay of the land|situation|run down|status report|update|list|lay of the kitchen|
    big picture|state of the kitchen|recap|roundup|status update|picture|run through|whole
    picture|progress report|sitrep) [of everything|on everything|of the kitchen|please|for
    everything|of what is running|of all batches|of the batches|of where we are|of where we
    stand|now]`,
        `[full|quick|short|kitchen|brief] (status|overview|rundown|report|summary|status report|
    update|recap) [(of|on|for) (everything|it all|all of it|the kitchen|all the batches|all
    batches|the batches|things)]`,
        `(run|go|read|list) (down|over|through|off) (everything|it all|all of it|all the batches)
    [for me|with me|again]`,
        `(status|overview|rundown|report|summary|status report|update|sitrep|recap|progress report|
    full report|where do we stand|where do things stand|where does everything stand|where are we
    with everything|where are things|how do things stand|how do we stand|list everything|run it
    down for me|run it down|run everything down|bring me up to date|catch me up|fill me in|
    update me|bring me up to speed|what is where|what is everything doing|tell me everything|
    show me everything|how goes it|how is it all|what is the story|what is the state of things|
    list the batches|list all batches|list what is running|list the timers|what timers are
    running|what timers do i have|what timers are on|what timers have we got|what batches are
    running|what batches do we have|what batches have we got|how many batches are running|how
    many batches do we have|go over everything|read off everything|read everything off|what are
    we running|show me the kitchen|how many timers do i have|how many timers are running|show me
    all batches|show me all the batches|show all|tell me what is running|tell me what is going
    on|tell me what is on|tell me what we have on|tell me where we are|tell me where we stand|
    tell me how things stand|tell me how everything is going|tell me how everything is doing|
    tell me how we are doing|tell me how it is all going|tell me where everything is|tell me
    where everything stands|tell me where things stand|show me what is running|show me where we
    are|what is the situation|what is the state of the kitchen|what all is going|what all is
    running|what all have we got going|what all is on|what is all going on|list all timers|list
    all the timers|read me the timers) [now|today|right now|on everything]`,
        `(how far|how far along) (are we|is everything|are things|have we got|am i|are the batches|
    have we come) [with everything]`,
        `where (are|is|have) (we|everything|things|all the batches|everybody) [at|gotten to|got to|
    now|with everything|with it all|on everything|stand|standing] [now|right now]`
      ],
      spoken: ["what is running"],
      bags: [
        {
          asking: true,
          must: [
            `status|rundown|overview|summary|update|recap|report|(everything|things|all of it|it all|
        whole kitchen|whole works|whole thing|all this|everybody|all the batches)`,
            `status|rundown|overview|summary|recap|how|where|what|fill me in|catch me up|run me
        through|bring me up|give me|tell me|show me|read me`
          ],
          may: `
        <asked-of-it>|of|on|with|for|the|a|quick|full|kitchen|everything|things|going|doing|at|
        stand|is|are|stands|running|cooking|so far|to date|to speed|in|all|batches|going on|
        along|coming|progressing|holding up|looking|go|please|over|every|batch|pot|timer|
        timers|me|where|got
      `
        }
      ]
    };
  }
});

// src/language/intents/place.ts
var place;
var init_place = __esm({
  "src/language/intents/place.ts"() {
    "use strict";
    place = {
      cost: "changing",
      when: ["always"],
      slots: { target: "name", place: "name" },
      example: "I put the beets in the cellar",
      wordings: [
        "[<we>|i] [have] [just] <put-away> [<the>] {target:open} [away|down] <into-place>",
        "[<the>] {target:open} (is|are|stands|stand|went|live|lives) [now|down] <into-place>"
      ],
      lists: {
        "put-away": "put|moved|carried|stored|took|brought",
        "into-place": `
      (in|into|to|down in|down to|on) [<the>] (root cellar|cellar) {place=cellar}|
      (in|into|to|down in|down to) [<the>] basement {place=basement}|
      (in|into|to|on|over to) [<the>] pantry [shelf] {place=pantry}|
      (in|into|to|out in|out to) [<the>] garage {place=garage}|
      (in|into|to) [<the>] (closet|cupboard) {place=cupboard}|
      (in|into|to) [<the>] cold room {place=cold room}|
      (in|into|to) [<the>] store room {place=store room}|
      (in|into|to|out in|out to) [<the>] shed {place=shed}
    `
      }
    };
  }
});

// src/kitchen/time.ts
function formatter(zone) {
  let found2 = formatters.get(zone);
  if (!found2) {
    found2 = new Intl.DateTimeFormat("en-US", {
      timeZone: zone,
      hourCycle: "h23",
      year: "numeric",
      month: "numeric",
      day: "numeric",
      hour: "numeric",
      minute: "numeric",
      second: "numeric"
    });
    formatters.set(zone, found2);
  }
  return found2;
}
function offsetMs(instantMs, zone) {
  const quarter = Math.floor(instantMs / QUARTER_MS);
  const key = `${quarter} ${zone}`;
  const known2 = offsets.get(key);
  if (known2 !== void 0) return known2;
  const parts = {};
  for (const part of formatter(zone).formatToParts(quarter * QUARTER_MS)) {
    parts[part.type] = Number(part.value);
  }
  const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = parts;
  const asUtc = Date.UTC(year, month - 1, day, hour, minute, second);
  const offset = asUtc - quarter * QUARTER_MS;
  if (offsets.size > 5e3) offsets.clear();
  offsets.set(key, offset);
  return offset;
}
function localFields(instantMs, zone) {
  const shifted = new Date(instantMs + offsetMs(instantMs, zone));
  return {
    year: shifted.getUTCFullYear(),
    month: shifted.getUTCMonth() + 1,
    day: shifted.getUTCDate(),
    hour: shifted.getUTCHours(),
    minute: shifted.getUTCMinutes(),
    second: shifted.getUTCSeconds(),
    weekday: shifted.getUTCDay()
  };
}
function localIso(instantMs, zone) {
  return new Date(instantMs + offsetMs(instantMs, zone)).toISOString().slice(0, 19);
}
function instantOf(local, zone) {
  const { year, month, day, hour, minute, second } = local;
  const asUtc = Date.UTC(year, month - 1, day, hour, minute, second);
  const before = offsetMs(asUtc - DAY_MS, zone);
  const after = offsetMs(asUtc + DAY_MS, zone);
  const first2 = asUtc - before;
  if (offsetMs(first2, zone) === before) return first2;
  const second_ = asUtc - after;
  return offsetMs(second_, zone) === after ? second_ : first2;
}
var SECOND_MS, MINUTE_MS, HOUR_MS, DAY_MS, formatters, offsets, QUARTER_MS;
var init_time = __esm({
  "src/kitchen/time.ts"() {
    "use strict";
    SECOND_MS = 1e3;
    MINUTE_MS = 60 * SECOND_MS;
    HOUR_MS = 60 * MINUTE_MS;
    DAY_MS = 24 * HOUR_MS;
    formatters = /* @__PURE__ */ new Map();
    offsets = /* @__PURE__ */ new Map();
    QUARTER_MS = 15 * MINUTE_MS;
  }
});

// src/language/values/durations.ts
function unitAt(words, at) {
  const word = words[at]?.word ?? "";
  return Object.hasOwn(UNIT_MINUTES, word) ? UNIT_MINUTES[word] : void 0;
}
function saysAt(words, at, said3) {
  return said3.every((word, step) => words[at + step]?.word === word);
}
function oneAt(words, at) {
  for (const number of numbersAt(words, at)) {
    const skip = words[number.next]?.word === "more" ? 1 : 0;
    const unit2 = unitAt(words, number.next + skip);
    if (unit2) {
      return { value: number.value * unit2, next: number.next + skip + 1, unit: unit2 };
    }
  }
  for (const [said3, share] of SHARES) {
    if (!saysAt(words, at, said3)) continue;
    const next = at + said3.length;
    const unit2 = unitAt(words, next);
    if (unit2) return { value: share * unit2, next: next + 1, unit: unit2 };
  }
  const bare = words[at]?.word === "hour" || words[at]?.word === "minute";
  const unit = bare ? unitAt(words, at) : void 0;
  return unit ? { value: unit, next: at + 1, unit } : void 0;
}
function durationsAt(words, at) {
  const first2 = oneAt(words, at);
  if (!first2) return [];
  const found2 = [{ value: first2.value, next: first2.next }];
  for (const [said3, share] of TAILS) {
    if (saysAt(words, first2.next, said3) && !unitAt(words, first2.next + said3.length)) {
      const next = first2.next + said3.length;
      return [{ value: first2.value + share * first2.unit, next }, ...found2];
    }
  }
  const joined3 = words[first2.next]?.word === "and" ? first2.next + 1 : first2.next;
  const second = oneAt(words, joined3);
  if (second && second.unit < first2.unit) {
    found2.unshift({ value: first2.value + second.value, next: second.next });
  } else if (first2.unit === 60 && !second) {
    const loose = numbersAt(words, joined3).find((number) => number.value < 60);
    if (loose) found2.unshift({ value: first2.value + loose.value, next: loose.next });
  }
  return found2.map(({ value, next }) => ({ value: Math.round(value * 1e3) / 1e3, next }));
}
var UNIT_MINUTES, SHARES, TAILS;
var init_durations = __esm({
  "src/language/values/durations.ts"() {
    "use strict";
    init_spoken_numbers();
    UNIT_MINUTES = {
      second: 1 / 60,
      seconds: 1 / 60,
      minute: 1,
      minutes: 1,
      hour: 60,
      hours: 60,
      day: 1440,
      days: 1440,
      week: 10080,
      weeks: 10080
    };
    SHARES = [
      [["three", "quarters", "of", "an"], 0.75],
      [["3", "quarters", "of", "an"], 0.75],
      [["a", "quarter", "of", "an"], 0.25],
      [["quarter", "of", "an"], 0.25],
      [["a", "quarter"], 0.25],
      [["quarter"], 0.25],
      [["half", "an"], 0.5],
      [["half", "a"], 0.5],
      [["a", "half"], 0.5],
      [["half"], 0.5],
      [["a", "couple", "of"], 2],
      [["a", "couple"], 2],
      [["couple", "of"], 2],
      [["a", "few"], 3],
      [["a", "full"], 1],
      [["an"], 1],
      [["a"], 1],
      [["another"], 1]
    ];
    TAILS = [
      [["and", "a", "half"], 0.5],
      [["and", "a", "quarter"], 0.25],
      [["and", "three", "quarters"], 0.75]
    ];
  }
});

// src/language/values/clock-times.ts
function said(words, at) {
  return words[at]?.word ?? "";
}
function relativeAt(words, at) {
  let next = said(words, at) === "a" ? at + 1 : at;
  let minutes;
  const first2 = said(words, next);
  if (first2 === "quarter" || first2 === "half") {
    minutes = first2 === "half" ? 30 : 15;
    next += 1;
  } else {
    const number = smallWholeAt(words, next);
    if (!number || number.value > 59) return void 0;
    minutes = number.value;
    next = number.next;
    if (/^minutes?$/.test(said(words, next))) next += 1;
  }
  const way = said(words, next);
  const past = /^(past|after)$/.test(way);
  const before = /^(to|before|till|of)$/.test(way);
  if (!past && !before) return void 0;
  const hour = hourAt(words, next + 1);
  if (!hour) return void 0;
  const total = hour.value.hour * 60 + (past ? minutes : 720 - minutes);
  return {
    value: {
      hour: past ? hour.value.hour : Math.floor(total / 60) % 12 || 12,
      minute: past ? minutes : 60 - minutes,
      ...hour.value.half ? { half: hour.value.half } : {}
    },
    next: hour.next
  };
}
function hourAt(words, at) {
  const word = said(words, at);
  if (word === "noon" || word === "midday") {
    return { value: { hour: 12, minute: 0, half: "pm" }, next: at + 1 };
  }
  if (word === "midnight") return { value: { hour: 12, minute: 0, half: "am" }, next: at + 1 };
  const number = smallWholeAt(words, at);
  if (!number || number.value > 23 || number.value === 0 && word !== "0") return void 0;
  return { value: { hour: number.value, minute: 0 }, next: number.next };
}
function plainAt(words, at) {
  const figures = /^([01]?\d|2[0-3])[:.]([0-5]\d)$/.exec(said(words, at));
  if (figures) {
    return { value: { hour: Number(figures[1]), minute: Number(figures[2]) }, next: at + 1 };
  }
  const hour = hourAt(words, at);
  if (!hour || hour.value.half) return hour;
  const following = said(words, hour.next);
  if (following === "oh" || following === "o") {
    const unit = smallWholeAt(words, hour.next + 1);
    if (unit && unit.value < 10) {
      return { value: { hour: hour.value.hour, minute: unit.value }, next: unit.next };
    }
  }
  const minute = smallWholeAt(words, hour.next);
  if (minute && minute.value >= 10 && minute.value < 60 && hour.value.hour > 0) {
    return { value: { hour: hour.value.hour, minute: minute.value }, next: minute.next };
  }
  return hour;
}
function matchesAt(words, at, phrase) {
  return phrase.every((word, step) => said(words, at + step) === word);
}
function halfOfDayAt(words, at) {
  const hit = HALVES.find(([phrase]) => matchesAt(words, at, phrase));
  return hit ? { value: hit[1], next: at + hit[0].length } : void 0;
}
function clockAt(words, at) {
  const start = /^(about|around|exactly|roughly)$/.test(said(words, at)) ? at + 1 : at;
  const clock = relativeAt(words, start) ?? plainAt(words, start);
  if (!clock) return void 0;
  let { next } = clock;
  if (said(words, next) === "oclock") next += 1;
  if (said(words, next) === "sharp") next += 1;
  const half = halfOfDayAt(words, next);
  if (!half || clock.value.half) return { value: clock.value, next };
  return { value: { ...clock.value, half: half.value }, next: half.next };
}
function hoursOf(time) {
  if (time.hour > 12 || time.hour === 0) return [time.hour];
  const am = time.hour % 12;
  if (time.half === "am") return [am];
  if (time.half === "pm") return [am + 12];
  return [am, am + 12];
}
function onDay(day, days, hour, minute, zone) {
  const shifted = new Date(Date.UTC(day.year, day.month - 1, day.day) + days * DAY_MS);
  const fields = {
    year: shifted.getUTCFullYear(),
    month: shifted.getUTCMonth() + 1,
    day: shifted.getUTCDate(),
    hour,
    minute,
    second: 0
  };
  return instantOf(fields, zone);
}
function lastTimeOf(time, nowMs, zone) {
  const today = localFields(nowMs, zone);
  const all = [0, -1].flatMap(
    (days) => hoursOf(time).map((hour) => onDay(today, days, hour, time.minute, zone))
  );
  const past = all.filter((instant) => instant <= nowMs + AHEAD_MS);
  return Math.max(...past);
}
function pastMomentsAt(words, at, nowMs, zone) {
  let start = at;
  if (said(words, start) === "as" && said(words, start + 1) === "of") start += 2;
  while (/^(since|about|around|from|roughly|only|like|starting|beginning)$/.test(said(words, start))) {
    start += 1;
  }
  for (const duration of durationsAt(words, start)) {
    const after = said(words, duration.next);
    if (after === "ago" || after === "back" || after === "earlier") {
      return [{ value: nowMs - duration.value * MINUTE_MS, next: duration.next + 1 }];
    }
  }
  const prepositioned = said(words, start) === "at" || start > at;
  if (said(words, start) === "at") start += 1;
  const clock = clockAt(words, start);
  if (!clock) return [];
  const certain = prepositioned || isPlainlyClock(words, start, clock);
  if (!certain) return [];
  return [{ value: lastTimeOf(clock.value, nowMs, zone), next: clock.next }];
}
function isPlainlyClock(words, start, clock) {
  return clock.value.half !== void 0 || clock.next - start > 1 || /:/.test(said(words, start));
}
var HALVES, AHEAD_MS;
var init_clock_times = __esm({
  "src/language/values/clock-times.ts"() {
    "use strict";
    init_time();
    init_durations();
    init_spoken_numbers();
    HALVES = [
      [["am"], "am"],
      [["pm"], "pm"],
      [["a", "m"], "am"],
      [["p", "m"], "pm"],
      [["in", "the", "morning"], "am"],
      [["this", "morning"], "am"],
      [["in", "the", "afternoon"], "pm"],
      [["this", "afternoon"], "pm"],
      [["in", "the", "evening"], "pm"],
      [["this", "evening"], "pm"],
      [["at", "night"], "pm"],
      [["tonight"], "pm"]
    ];
    AHEAD_MS = 2 * MINUTE_MS;
  }
});

// src/language/values/future-times.ts
import * as chrono from "chrono-node/en";
function said2(words, at) {
  return words[at]?.word ?? "";
}
function chronoDay(slot, today) {
  const noon = Date.UTC(today.year, today.month - 1, today.day, 12);
  const key = `${noon} ${slot}`;
  if (readDays.has(key)) return readDays.get(key);
  const [result] = chrono.parse(
    slot,
    { instant: new Date(noon), timezone: 0 },
    { forwardDate: true }
  );
  const covers = result?.index === 0 && result.text.length === slot.length;
  const start = covers ? result.start : void 0;
  const day = start && {
    year: start.get("year"),
    month: start.get("month"),
    day: start.get("day")
  };
  if (readDays.size > MOST_READ) readDays.clear();
  readDays.set(key, day);
  return day;
}
function daysFrom(today, days) {
  const day = new Date(Date.UTC(today.year, today.month - 1, today.day) + days * DAY_MS);
  return { year: day.getUTCFullYear(), month: day.getUTCMonth() + 1, day: day.getUTCDate() };
}
function dayOfMonth(number, today) {
  const month = number > today.day ? today.month : today.month + 1;
  const day = new Date(Date.UTC(today.year, month - 1, number));
  return { year: day.getUTCFullYear(), month: day.getUTCMonth() + 1, day: day.getUTCDate() };
}
function monthDayAt(words, at) {
  const start = said2(words, at) === "the" ? at + 1 : at;
  const number = ordinalAt(words, start);
  if (number) {
    const of = said2(words, number.next) === "of" ? number.next + 1 : number.next;
    if (!MONTHS.test(said2(words, of))) return void 0;
    return { value: `${said2(words, of)} ${number.value}`, next: of + 1 };
  }
  if (!MONTHS.test(said2(words, start))) return void 0;
  const behind = said2(words, start + 1) === "the" ? start + 2 : start + 1;
  const day = ordinalAt(words, behind) ?? smallWholeAt(words, behind);
  if (!day || day.value < 1 || day.value > 31) return void 0;
  return { value: `${said2(words, start)} ${day.value}`, next: day.next };
}
function dayAt(words, at, today) {
  const start = /^(on|for|by|come)$/.test(said2(words, at)) ? at + 1 : at;
  const first2 = said2(words, start);
  if (first2 === "today" || first2 === "tonight")
    return { value: daysFrom(today, 0), next: start + 1 };
  if (first2 === "tomorrow") {
    const slot = chronoDay("tomorrow", today);
    return slot && { value: slot, next: start + 1 };
  }
  const spoken = [0, 1, 2, 3].map((step) => said2(words, start + step));
  const after = spoken[0] === "the" ? 1 : 0;
  if (spoken.slice(after, after + 3).join(" ") === "day after tomorrow") {
    return { value: daysFrom(today, 2), next: start + after + 3 };
  }
  const monthDay = monthDayAt(words, start);
  if (monthDay) {
    const value = chronoDay(monthDay.value, today);
    return value && { value, next: monthDay.next };
  }
  const ordinal = said2(words, start) === "the" ? ordinalAt(words, start + 1) : void 0;
  if (ordinal) return { value: dayOfMonth(ordinal.value, today), next: ordinal.next };
  return weekdayAt(words, start, today);
}
function weekdayAt(words, start, today) {
  if (said2(words, start) === "next" && said2(words, start + 1) === "week") {
    return { value: daysFrom(today, 7), next: start + 2 };
  }
  let next = start;
  let weeks = 0;
  if (said2(words, next) === "a" && said2(words, next + 1) === "week") {
    if (!/^(from|on)$/.test(said2(words, next + 2))) return void 0;
    weeks = 1;
    next += 3;
  }
  const modifier = said2(words, next);
  if (modifier === "next" || modifier === "this") next += 1;
  if (said2(words, next) === "coming") next += 1;
  const weekday = said2(words, next).replace(/s$/, "");
  if (!WEEKDAYS.test(weekday)) return void 0;
  const day = chronoDay(modifier === "next" ? `next ${weekday}` : weekday, today);
  if (!day) return void 0;
  const isToday = day.day === today.day && day.month === today.month && day.year === today.year;
  const moved = weeks * 7 + (isToday ? 7 : 0);
  const later2 = moved ? daysFrom({ ...today, ...day }, moved) : day;
  return { value: later2, next: next + 1 };
}
function partAt2(words, at) {
  let next = at;
  if (/^(in|at|this|on)$/.test(said2(words, next))) next += 1;
  if (said2(words, next) === "the") next += 1;
  const word = said2(words, next);
  if (!Object.hasOwn(PARTS, word)) return void 0;
  return { value: PARTS[word], next: next + 1 };
}
function isPlainly(words, at, clock) {
  if (clock.value.half !== void 0) return true;
  const all = words.slice(at, clock.next).map(({ word }) => word);
  return all.some((word) => /:|^(oclock|past|till|to|noon|midnight)$/.test(word));
}
function piecesAt(words, at, today) {
  const all = [];
  let pieces = { next: at };
  for (; ; ) {
    const { next } = pieces;
    const part = pieces.part ? void 0 : partAt2(words, next);
    const day = pieces.day ? void 0 : dayAt(words, next, today);
    const joined3 = /^(at|by|around|about|for)$/.test(said2(words, next));
    const bare = !joined3 && at === next && pieces.day === void 0 && pieces.part === void 0;
    const told = pieces.clock ? void 0 : clockAt(words, joined3 ? next + 1 : next);
    const clock = bare && told && !isPlainly(words, next, told) ? void 0 : told;
    if (day) {
      const tonight = said2(words, day.next - 1) === "tonight" ? PARTS.night : void 0;
      pieces = { ...pieces, day: day.value, next: day.next, ...tonight && { part: tonight } };
    } else if (part) pieces = { ...pieces, part: part.value, next: part.next };
    else if (clock) pieces = { ...pieces, clock: clock.value, next: clock.next };
    else return all.reverse();
    all.push(pieces);
  }
}
function hourFor(clock, part) {
  const half = clock.half ?? part?.half;
  const hours = hoursOf(half ? { ...clock, half } : clock);
  const [first2 = 0, second = first2] = hours;
  return clock.hour >= 7 && clock.hour < 12 ? first2 : second;
}
function instantFor(pieces, nowMs, zone) {
  const today = localFields(nowMs, zone);
  const clock = pieces.clock ?? { hour: pieces.part?.hour ?? DAY_HOUR, minute: 0 };
  if (pieces.day) {
    const fields = { ...today, ...pieces.day };
    const hour = hourFor(clock, pieces.part);
    const instant = onDay(fields, 0, hour, clock.minute, zone);
    if (instant > nowMs || clock.half || hour >= 12) return instant;
    return onDay(fields, 0, hour + 12, clock.minute, zone);
  }
  const half = clock.half ?? pieces.part?.half;
  const hours = hoursOf(half ? { ...clock, half } : clock);
  const all = [0, 1].flatMap(
    (days) => hours.map((hour) => onDay(today, days, hour, clock.minute, zone))
  );
  return Math.min(...all.filter((instant) => instant > nowMs));
}
function futureMomentsAt(words, at, nowMs, zone) {
  const relative = said2(words, at) === "in" ? at + 1 : at;
  const found2 = durationsAt(words, relative).flatMap((duration) => {
    const fromNow = said2(words, duration.next) === "from" && said2(words, duration.next + 1) === "now";
    if (relative === at && !fromNow) return [];
    const next = fromNow ? duration.next + 2 : duration.next;
    const value = afterMinutes(nowMs, duration.value, zone);
    const timed = duration.value % 1440 === 0 ? clockOnDay(words, next, value, nowMs, zone) : [];
    return [...timed, { value, next }];
  });
  if (found2.length > 0) return found2;
  const today = localFields(nowMs, zone);
  return piecesAt(words, at, today).map((pieces) => ({
    value: instantFor(pieces, nowMs, zone),
    next: pieces.next
  }));
}
function clockOnDay(words, at, dayMs, nowMs, zone) {
  const today = localFields(nowMs, zone);
  const { year, month, day } = localFields(dayMs, zone);
  return piecesAt(words, at, today).filter((pieces) => pieces.day === void 0).map((pieces) => ({
    value: instantFor({ ...pieces, day: { year, month, day } }, nowMs, zone),
    next: pieces.next
  }));
}
function afterMinutes(nowMs, minutes, zone) {
  const days = minutes / 1440;
  if (!Number.isInteger(days) || days === 0) return nowMs + minutes * MINUTE_MS;
  const now = localFields(nowMs, zone);
  return onDay(now, days, now.hour, now.minute, zone);
}
var WEEKDAYS, MONTHS, PARTS, DAY_HOUR, readDays, MOST_READ;
var init_future_times = __esm({
  "src/language/values/future-times.ts"() {
    "use strict";
    init_time();
    init_clock_times();
    init_durations();
    init_spoken_numbers();
    WEEKDAYS = /^(sun|mon|tues|wednes|thurs|fri|satur)days?$/;
    MONTHS = /^(january|february|march|april|may|june|july|august|september|october|november|december)$/;
    PARTS = {
      morning: { half: "am", hour: 9 },
      afternoon: { half: "pm", hour: 15 },
      evening: { half: "pm", hour: 19 },
      night: { half: "pm", hour: 20 }
    };
    DAY_HOUR = 9;
    readDays = /* @__PURE__ */ new Map();
    MOST_READ = 500;
  }
});

// src/language/values/day-wish.ts
function dayWishIn(text, context, plain) {
  let rest = text;
  const wish = { items: [], exact: true };
  const quiet = QUIET.exec(rest);
  if (quiet) {
    const hours = hoursIn(rest.slice(quiet.index + quiet[0].length));
    if (!hours) return void 0;
    wish.quiet = hours;
    rest = rest.slice(0, quiet.index);
  }
  const by = BY.exec(rest);
  if (by) {
    const { words } = wordsOf(rest.slice(by.index + by[0].length));
    const from = words[0]?.word === "before" ? 1 : 0;
    const moments = futureMomentsAt(words, from, context.nowMs, context.zone);
    const whole = moments.find((one) => one.next === words.length);
    const clock = from === 1 ? futureClock(words.slice(1), context) : void 0;
    const at = whole?.value ?? clock;
    if (at === void 0) return void 0;
    wish.finishBy = localIso(at, context.zone);
    rest = rest.slice(0, by.index);
  }
  const lots = lotsIn(rest, namesOf(context), plain);
  if (!lots) return void 0;
  for (const lot of lots) {
    const chosen = titledRecipe(lot, context);
    const recipe = chosen ?? lot.recipes[0];
    if (!recipe) return void 0;
    if (!lot.exact || !chosen) wish.exact = false;
    wish.items.push({
      recipe,
      ...lot.variety ? { variety: lot.variety } : {},
      ...lot.weightLb === void 0 ? {} : { weightLb: lot.weightLb }
    });
  }
  return wish;
}
function futureClock(words, context) {
  const at = wordsOf(`at ${words.map(({ word }) => word).join(" ")}`).words;
  const moments = futureMomentsAt(at, 0, context.nowMs, context.zone);
  return moments.find((one) => one.next === at.length)?.value;
}
function hoursIn(text) {
  const [, first2 = "", second = ""] = /^(.*)\b(?:to|and|until|till)\b(.*)$/i.exec(text) ?? [];
  const [from, to] = [clockText(first2, "pm"), clockText(second, "am")];
  return from && to && `${from}-${to}`;
}
function clockText(text, half) {
  const { words } = wordsOf(text);
  const clock = clockAt(words, 0);
  if (!clock || clock.next !== words.length) return void 0;
  const { hour, minute } = clock.value;
  const plain = hour > 12 || hour === 0;
  const of24 = plain ? hour : hour % 12 + ((clock.value.half ?? half) === "pm" ? 12 : 0);
  return [of24, minute].map((value) => String(value).padStart(2, "0")).join(":");
}
function lotsIn(text, names, plain) {
  const pieces = [];
  const joins = [];
  let from = 0;
  for (const match of text.matchAll(BETWEEN)) {
    pieces.push(text.slice(from, match.index));
    joins.push(match[0]);
    from = match.index + match[0].length;
  }
  pieces.push(text.slice(from));
  if (pieces.length > MOST_PIECES) return void 0;
  const best2 = [[]];
  for (let end = 1; end <= pieces.length; end++) {
    for (let start = end - 1; start >= Math.max(0, end - 3); start--) {
      const before = best2[start];
      if (!before) continue;
      const joined3 = pieces.slice(start, end).reduce((all2, piece, index) => {
        return index === 0 ? piece : `${all2}${joins[start + index - 1] ?? ""}${piece}`;
      }, "");
      const lot = oneLot(joined3, names, plain);
      if (!lot) continue;
      const found2 = [...before, ...lot];
      const known2 = best2[end];
      if (!known2 || rank(found2) > rank(known2)) best2[end] = found2;
    }
  }
  const all = best2[pieces.length];
  return all && all.length > 0 ? all : void 0;
}
function rank(lots) {
  return lots.reduce((sum, lot) => sum + (lot.exact ? 1 : -1) - (lot.variety ? 0.1 : 0), 0);
}
function oneLot(text, names, plain) {
  const { words } = wordsOf(text);
  if (words.length === 0) return [];
  const lot = lotAt(text, words, 0, words.length, names, plain);
  return lot && [lot];
}
var BY, QUIET, BETWEEN, MOST_PIECES;
var init_day_wish = __esm({
  "src/language/values/day-wish.ts"() {
    "use strict";
    init_time();
    init_words();
    init_clock_times();
    init_future_times();
    init_lots();
    init_targets();
    BY = /[\s,;]*\b(?:and |all |to |be )*(?:done|finished|ready|through|over)\s+(?=by\b|at\b|before\b)/i;
    QUIET = /[\s,;]*\b(?:and )?(?:quiet|no hands|leave me alone)\s+(?:from|between)\s+/i;
    BETWEEN = /\s*(?:,|;|\band\b|\bplus\b|\bthen\b)+\s*/gi;
    MOST_PIECES = 24;
  }
});

// src/language/intents/plan.ts
var finishPlan, plan;
var init_plan = __esm({
  "src/language/intents/plan.ts"() {
    "use strict";
    init_day_wish();
    finishPlan = ({ lots, ...rest }, context, plain) => {
      if (lots === void 0) return { slots: rest };
      const wish = dayWishIn(String(lots), context, plain);
      if (!wish) return void 0;
      const { exact, ...slots } = wish;
      return { slots: { ...rest, ...slots }, misheard: !exact };
    };
    plan = {
      cost: "changing",
      when: ["idle"],
      slots: {
        items: "lots",
        startAt: "instant",
        finishBy: "instant",
        quiet: "word",
        go: "flag",
        drop: "flag"
      },
      parts: ["lots"],
      example: "plan the day",
      finish: finishPlan,
      wordings: [
        "[<let>] (plan|plan out|work out|schedule) [<the>] (day|afternoon|morning|rest of the day)",
        "[<let>] (make|make me|work out) (a|the) plan [for <the> (day|afternoon|morning)]",
        "what is the plan [for <the> (day|afternoon|morning)]",
        `[<let>] (plan|plan out|work out|schedule) [<the>] [day|afternoon|morning] [for|with|of]
    {lots:text}`,
        "[<let>] (make|make me|work out) (a|the) plan (for|with|of) {lots:text}",
        {
          set: { go: true },
          phrases: [
            `[<let>] (start|begin|keep to|go with|follow|use|go ahead with) (the|that|this|our) [day]
        plan`,
            "[<let>] plan and (begin|start) {lots:text}"
          ]
        },
        {
          set: { drop: true },
          phrases: [
            `[<let>] (drop|cancel|forget|scrap|throw out|stop|leave) (the|that|this|our) [day|day's]
        plan`,
            "no more (plan|planning)"
          ]
        }
      ],
      spoken: ["plan the day", "what is the plan"]
    };
  }
});

// src/language/intents/prefer.ts
var prefer;
var init_prefer = __esm({
  "src/language/intents/prefer.ts"() {
    "use strict";
    prefer = {
      cost: "changing",
      when: ["always"],
      slots: { target: "name", over: "name", taster: "name" },
      example: "we liked the beets better than the beans",
      wordings: [
        "(<we>|i) (like|liked|love|enjoyed) [<the>] {target:open} (better|more|best) [<than-other>]",
        "(<we>|i) (prefer|preferred) [<the>] {target:open} [<to-other>]",
        "[<the>] {target:open} (is|was|are|were|tastes|tasted|taste) better [<than-other>]",
        `{taster:person} (likes|liked|loves|enjoyed) [<the>] {target:open} (better|more|best)
    [<than-other>]`,
        "{taster:person} (prefers|preferred) [<the>] {target:open} [<to-other>]"
      ],
      lists: {
        "than-other": "than [<the>] {over:open}",
        "to-other": "(to|over|than) [<the>] {over:open}"
      }
    };
  }
});

// src/language/intents/pressure.ts
var pressure;
var init_pressure = __esm({
  "src/language/intents/pressure.ts"() {
    "use strict";
    pressure = {
      cost: "clearing",
      report: true,
      when: ["load:in-steam"],
      slots: { target: "name", at: "instant", value: "number", unit: "word" },
      example: "eleven pounds on the gauge",
      finish: (raw, { pressureUnit = "psi" }) => ({
        slots: { ...raw, unit: raw.unit ?? pressureUnit }
      }),
      wordings: [
        `[<gauge-subject>] <at-value> {value:number} <pressure-unit> [<gauge-tail>] [<gauge-tail>]
    [<when>]`,
        `[<gauge-subject>] [<got>|<got> a steady|<got> about] {value:number} <pressure-unit>
    [<gauge-tail>] [<gauge-tail>] [<when>]`,
        `<got> (it|her|him|them|everything|the canner) [<still>] [holding|running|sitting|steady]
    <at-value> {value:number} <pressure-unit> [<gauge-tail>] [<when>]`,
        "<gauge-name> [<at-value>] {value:number} [<gauge-tail>] [<gauge-tail>] [<when>]",
        `[<gauge-subject>] (<got>|<at-value>) {value:number} (on|showing on|by) <gauge-name>
    [<gauge-tail>] [<when>]`,
        "{value:number} (on|showing on) <gauge-name> [<gauge-tail>] [<when>]",
        "{value:number} [and] (holding|holding steady) [on <gauge-name>] [<when>]",
        `[<we>|<it>] [am|is|are|have|has] [<got>] <at-value> (target|full|working|our|the) [<gauge>]
    [pressure] [of|at|which is] {value:number} [<pressure-unit>] [<when>]`,
        `(we have reached|reached|we are up to|we hit|up to|we have got|holding|at) [target|full]
    pressure [of|at] {value:number} [<pressure-unit>] [<when>]`
      ],
      spoken: [
        "{value:number} {unit=psi} pounds [of pressure|on the gauge]",
        "[it is|the gauge is|we are] at {value:number} {unit=psi} pounds",
        "the gauge (says|reads) {value:number} {unit=psi} [pounds]",
        { set: { value: 0, unit: "psi" }, phrases: ["[the] pressure is zero"] }
      ],
      bags: [
        {
          must: ["<at-value> {value:number} <pressure-unit>|{value:number} <pressure-unit>"],
          may: `
        <it>|<we>|<gauge-name>|<is>|<shows>|<still>|<gauge-tail>|<when>|<way>|<approx>|the
        canner|on the|canner|she|all|and|there|here
      `
        },
        {
          must: ["{value:number}", "<gauge-name>"],
          may: "<it>|<we>|<is>|<shows>|<still>|<gauge-tail>|<when>|<way>|<approx>|<at>|<climbed>|and"
        }
      ],
      lists: {
        gauge: "<gauge-name>|the canner|canner|<the> pressure canner",
        "pressure-unit": "{unit=psi} <psi>|{unit=kPa} <kpa>",
        "gauge-subject": `
      <gauge>|<it>|<we>|everything|<gauge-name> (on|of|in) {target}|
      {target} [<is>] [<still>] [holding|sitting|running|steady|holding steady|come|came|
      gotten|got]|
      <gauge-name> on the canner
    `,
        "gauge-tail": `
      on <gauge>|in {target}|in the canner|steady|even|holding|<still>|of pressure|pressure|
      showing|flat|and holding steady|and staying there|up|on the nose|on the dot|exactly|gauge
      pressure
    `
      }
    };
  }
});

// src/language/intents/pressure-lost.ts
var pressureLost;
var init_pressure_lost = __esm({
  "src/language/intents/pressure-lost.ts"() {
    "use strict";
    pressureLost = {
      cost: "raising",
      report: true,
      when: ["load:in-steam"],
      slots: { target: "name", at: "instant" },
      parts: ["value"],
      example: "the pressure dropped",
      doubting: ["should"],
      wordings: [
        `[<the>] (pressure|gauge|needle|dial|pressure gauge) <dropped> (off|away|down|low|too low|
    low on me|down on me|back|way down) [<when>]`,
        `[<the>] (pressure|gauge|needle|dial|pressure gauge) (dropped|fell|has dropped|has fallen|is
    dropping|is falling|sank|slipped|has slipped|drops|dipped|slid|went down|is sinking) [off|
    away|down|low] [on me|on us|again|too low|now|below target] [<when>]`,
        `[<the>] (pressure|gauge|needle|dial|{target}|it) <dropped> [back] [down] (below|under|less
    than) [the] [target|pressure|{value:number}|where it should be|where it needs to be|what we
    need|what it should be|where we need it] [<psi>|pressure|mark|line|target] [<when>]`,
        `[<the>] (pressure|gauge|needle) (dropped|fell|sank|slipped|dipped|has dropped|has fallen|
    has slipped|has dipped|slid|went down|dropped off|fell off) [down] to {value:number} [<psi>|
    <kpa>] [<when>]`,
        `<it> (dropped|fell|sank|slipped|has dropped|has fallen|dipped|has slipped) [down] to
    {value:number} (<psi>|<kpa>) [<when>]`,
        `<we> [have|just|have just|are] (lost|losing|lose) [the|our|all|some|all the] [steam]
    pressure [<when>]`,
        `[<we>|i] [have|are] [just] (lost|losing|lose) [the|our|all|our] pressure [in|on|at] [<the>]
    {target} [<when>]`,
        "(lost|losing|just lost) [the|our|all] pressure [<when>]",
        `(<it>|{target}) [has|just|has just|is] (lost|losing|lost it is|lost its) [its|it is|the|
    some|all] pressure [<when>]`,
        `[the] pressure (is|has) [been] (lost|gone|low|too low|gone down|dropping|falling|below
    target|off|under|not holding|going down|sinking|down|way down|slipping|gone low|fallen|
    dropped) [<when>]`,
        `(we are|it is|we are now|we have gone|it went|it has gone|it fell|it dropped|we dropped|we
    fell|we slipped|it slipped|we have dropped|it has dropped) (below|under) [the] (pressure|
    target|target pressure|{value:number} <psi>|pressure target) [<when>]`,
        "pressure (lost|drop|gone|down|dropped|fell) [<when>]",
        "no longer (at|up to|holding) pressure [any more] [<when>]",
        "not (at|up to|holding) pressure any more [<when>]",
        `(<it>|{target}|<we>) (is|are) not (at|holding|holding its|up to) pressure (any more|any
    longer) [<when>]`,
        `(<it>|{target}|<we>) (is|are) no longer (holding|holding its|holding the|keeping|at)
    pressure [any more|any longer|now] [<when>]`,
        "the pressure (will not|does not|would not|did not) hold [<when>]",
        "the pressure did not (hold|stay up|stay) [<when>]",
        `[<the>] (steam|steaming|venting|column of steam|plume of steam|plume) [has|have|just|has
    just|is|was] (stopped|quit|gone|died|died down|died away|lost|let up|ended|broken|gave out|
    petered out|faltered|dropped off) [coming|coming out] [on me|now] [<when>]`,
        `(<it>|{target}|<we>) [has|have|just|has just] (stopped|quit) (steaming|venting|blowing
    steam|letting off steam|putting out steam) [now] [<when>]`,
        "(no [more] steam|there is no [more] steam) [any more|any longer|now|coming out] [<when>]",
        "[<we>] [have|just|have just] (lost|losing) [the|our|all the] [column of] steam [<when>]",
        "[<the>] <weight> [has|have|just|has just] (stopped|quit) [<rocking>] [on me] [<when>]",
        "[<the>] <weight> is (no longer <rocking>|not <rocking> (any more|any longer)) [<when>]"
      ],
      spoken: ["the pressure dropped", "we lost pressure", "the pressure is down"],
      bags: [
        {
          must: ["<gauge-name>", "<falling>"],
          may: `
        <said-of-it>|i|on me|on us|<when>|again|fast|from|to|than|too|way|back|off|away|a lot|
        quick|{number} [<psi>]|target|the mark|where it should be|what it should be|what we
        need|a bit|where it needs to be|where we need it|below|under|in the canner|canner|all|
        some|some of|bit
      `
        }
      ],
      lists: {
        dropped: `
      dropped|fell|went|has dropped|has fallen|has gone|is dropping|is falling|has come|came|
      sank|has sunk|slipped|has slipped|is going|drops|is|dipped|has dipped|slid|has slid|got|
      has got
    `,
        falling: `
      (dropping|dropped|drops|falling|fell|falls|fallen|lost|losing|gone|sinking|sank|going
      down|slipping|slipped|sagging|sagged|went down|slid|sliding|tanked|tanking|dipped|
      dipping|too low|bled off|bleeding off|came down|come down|coming down|crashed|dwindling|
      not holding)|
      (is|has gone|went|gone|getting|got|gotten|are|now) (low|down|below target|under)|
      (below|under|less than) (target|the mark|{number}|where it should be|where it needs to be)
    `
      }
    };
  }
});

// src/language/intents/remind.ts
var remind;
var init_remind = __esm({
  "src/language/intents/remind.ts"() {
    "use strict";
    remind = {
      cost: "changing",
      when: ["always"],
      slots: { when: "instant", text: "text" },
      example: "remind me at six to check the crock",
      wordings: [
        "[<want>] <remind-me> {when:future} <remind-to> {text}",
        "[<want>] <remind-me> [<remind-to>] {text} {when:future}",
        "[<want>] <remind-me> <remind-to> {text}",
        "[<want>] <remind-me> {when:future} [that] {text}",
        "{when:future} <remind-me> <remind-to> {text}",
        `[<want>] (set|make|add|put in|create|leave) [me] (a|another) reminder [for] {when:future}
    <remind-to> {text}`,
        `[<want>] (set|make|add|put in|create|leave) [me] (a|another) reminder <remind-to> {text}
    {when:future}`,
        "[<want>] (set|make|add|put in|create) [me] (a|another) reminder <remind-to> {text}",
        "reminder [for] {when:future} [<remind-to>] {text}",
        "reminder [<remind-to>] {text} {when:future}",
        "do not let me forget [to|that|about] {text} {when:future}",
        "do not let me forget {when:future} [to|that] {text}",
        "do not let me forget [to|that|about] {text}"
      ],
      lists: {
        "remind-me": `
      remind me|remind us|remember to remind me|remember to tell me|nudge me|tell me|prod me|i
      need reminding|i need a reminder|i need to be reminded|give me a reminder|jog my memory|
      poke me|prompt me|i want a reminder|i would like a reminder|you remind me|i want to be
      reminded|ping me|make sure i remember|help me remember|be sure to remind me
    `,
        "remind-to": `
      to|that|about|that i need to|that i have to|i need to|that we need to|i should|i have to|
      of|so i|it is time to|that it is time to|saying|saying to|that i should|for|we need to|we
      have to|i want to|i must|regarding|i am to
    `
      }
    };
  }
});

// src/language/intents/repeat.ts
var repeat;
var init_repeat = __esm({
  "src/language/intents/repeat.ts"() {
    "use strict";
    repeat = {
      cost: "harmless",
      when: ["always"],
      slots: { slower: "flag", louder: "flag" },
      example: "say that again",
      forgiving: true,
      wordings: [
        `[sorry] i missed (what you said|the last bit|the last part|the last one|what you just said|
    your last|some of that|what that was)`,
        `[sorry] [i] (could|can|did|do) not [quite] (hear|catch|make out|get|understand|follow)
    (that|you|it|what you said|a word|a thing|the last bit|that one|that last bit|the last part|
    any of that) [over (<the>) (fan|noise|water|boil|racket|steam|din|radio|kettle|pot|canner)]`,
        "(what|how) (was|is) (that|the last one|it) [you said] [again|once more]",
        "once again [for me]",
        "what did you [just] (say|tell me|tell us|ask|ask me|want|announce) [again|just now]",
        "(run|say|give me|tell me) (that|it) (by|past) me (again|once more|one more time)",
        "let me (hear|have) (that|it|the last one) (again|once more|one more time)",
        `(would you mind|do you mind|could i trouble you [by|to]|mind) (repeating|saying|repeat|say)
    (yourself|that|it|that last bit|what you said) [again|once more|one more time]`,
        `(speak|talk) (up|louder|slower|more slowly|a bit louder|a little louder|a bit slower)
    [please]`,
        `(say|read|tell|speak|give|run|repeat|play|go over|go through|announce|state|read out|read
    off) [me|us|to me] (it|that|this|the last one|that last one|the last thing|the last bit|the
    last part|that part|that bit|that last bit|the instruction|the step|the instructions|the
    last step|that step|the whole thing|what you said|what you just said|your last|that one|the
    last instruction|the message|the last message|the prompt|the last prompt|that last part|
    this step|the current step|that last thing) [to me|for me|back|by me|me|out|over] (again|
    once more|one more time|over|back|over again|another time|a second time|one time more|
    louder|slower|slowly|more slowly|again slower|again louder|again slowly|again more slowly|a
    little louder|a bit louder|a bit slower|a little slower|up louder)`,
        `(say|read|speak|repeat) (that|it|this) [again] (louder|slower|{slower=true} more slowly|
    {slower=true} slowly|a little louder|a bit slower)`,
        `(repeat|say again|read again|come again|once more|one more time|again|pardon|pardon me|beg
    pardon|beg your pardon|i beg your pardon|sorry|say what|what|huh|eh|excuse me|play it again|
    run that by me again|run it by me again|say once more|louder|slower|more slowly|say it
    louder|say it slower|a little louder|a bit louder|a little slower|can not hear you|i can not
    hear you|i could not hear you|could not hear you|i did not hear you|i did not hear that|i
    did not catch that|did not catch that|i missed that|missed that|i missed it|missed it|i did
    not get that|did not get that|i did not hear|did not hear that|i did not quite catch that|i
    did not quite get that|i did not hear what you said|i could not hear that|could not hear
    that|i did not understand that|i did not follow that|i did not follow|what did you say|what
    was that|what did you just say|what was that again|what did you say again|what was it you
    said|what were you saying|what was that you said|what was the last thing|what was the last
    thing you said|what was that last thing|what was that last bit|what was that last part|what
    was that last one|what was the last step|what was the step again|what was it again|what is
    that again|what now again|how is that again|how was that|you said what|you were saying|what
    were you saying|one more time please|one more time louder|tell me again|tell me once more|
    tell me one more time|read me that again|remind me what you said|remind me what that was|
    let me hear that again|let me hear it again|i need to hear that again|i want to hear that
    again|hear that again|could i hear that again|can i hear that again|can i hear it again|may
    i hear that again|one more time for me|the last one again|last one again|that again|that one
    again|from the top|repeat after yourself|same again|say your last again|go over that again|
    go over it again|go through that again|give me that again|give it to me again|give me that
    one more time|give me that once more|back up and say that again|i forgot what you said|what
    was the question|what was the question again|repeat the question|say the question again|
    read that back|read that back to me|read it back|read it back to me|come back with that|
    louder please|i lost you|i lost that|i was not listening|i was not paying attention|say
    again please|please repeat|sorry what|sorry what was that|sorry i missed that|sorry i did
    not catch that|what what|wait what|wait what was that|wait what did you say|hang on what was
    that|hold on what was that) [again|please|for me|then|now|there|over the noise]`,
        `repeat (that|it|yourself|the last one|the last thing|the last step|the instruction|the
    instructions|what you said|the step|the question|this|please|the last bit|the last part|the
    message|the prompt|that last one|that last thing|that last part|that last bit|what you just
    said|the last instruction|that part|the current step|this step|the last prompt|the last
    message|the last announcement|your last|the last thing you said|the alarm) [again|for me|
    back|to me|please|louder|slower|once more|one more time|slowly|more slowly]`
      ],
      spoken: ["say (that|it) again"],
      bags: [
        {
          asking: true,
          must: [
            `say|said|repeat|hear|heard|catch|caught|missed|miss|come again|pardon|once more|again|
        one more time|what was that|get`,
            `again|repeat|repeating|once more|one more time|not|could not|did not|missed|miss|what|
        pardon|over|catch`
          ],
          may: `
        <asked-of-it>|that|it|me|last|bit|part|one|thing|was|were|did|could|you|i|please|quite|
        of|to|can|instruction|instructions|step|message|just|said|say|time|for|by|the|all|any|
        what|louder|slower|not|a little|a bit|slowly|what you said|over the (fan|noise|water|
        radio|steam|racket)|prompt|back|have|need|let|like|run|go|tell|give|read|hear|heard|
        sorry|would|mind|repeating|moment|line
      `
        }
      ]
    };
  }
});

// src/language/intents/resume.ts
var resume;
var init_resume = __esm({
  "src/language/intents/resume.ts"() {
    "use strict";
    resume = {
      cost: "changing",
      when: ["working"],
      slots: { target: "name" },
      example: "carry on with the beets",
      forgiving: true,
      topical: true,
      givesWay: ["focus"],
      wordings: [
        `[<let>] (resume|continue|carry on|go on|keep going|proceed|get going again|get going|get
    back to it|get on with it|keep on|pick up where we left off|pick it back up|press on|go
    again|start again|start up again|unpause|restart the prompts|back to work|get back to work|
    go back to work|keep at it|get moving|get moving again|move along|push on|get rolling again|
    pick it up again|carry on where we left off|go on from there|get back at it|go ahead and
    continue|continue on|continue where we left off|take up where we left off|go on with it|go
    back to it|get on) [with it|now|again|then|from here|from there|with everything|where we
    left off|with that]`,
        `[<let>] (resume|continue|continue with|carry on with|go on with|keep going with|keep going
    on|unpause|pick up|take up|get on with|get back to work on|restart|go ahead with|press on
    with|proceed with|take off hold|pick up with) [<the>] {target} [again|now]`,
        "[<let>] (get going|get started|start|go|get on|get moving) [with|on] [<the>] {target} again",
        "[<let>] (pick|take|start|get) [<the>] {target} (back up|up again|going again) [now]",
        "[<let>] (take|get) [<the>] {target} off hold",
        "[<let>] take (it|that|everything) off hold",
        `(i am|we are|i have come|all right i am|okay i am) (back|back now|ready again|back at it|
    here again|ready to go on|ready to continue|ready to carry on|ready to resume|back again|
    back in the kitchen|ready to go again|ready to keep going)`,
        `(back to it|back to work|break is over|break over|off we go|off we go again|on we go|
    onward|let us roll|ready to go on|ready again|ready to continue|back now|let us go|let us go
    on then|back at it|okay go|end of break|go on then|pause over)`
      ],
      spoken: ["carry on [with the {target}]", "resume [the {target}]"],
      bags: [
        {
          must: [
            `back|resume|continue|carry on|keep going|go on|proceed|ready|going again|unpause|press
        on|pick up|pick it up`
          ],
          may: `
        <let>|i am|we are|i|we|am|are|to|it|with|on|again|now|going|get|getting|work|where we
        left off|go|[<the>] {target}|from|here|there|everything|that|the|okay|keep|carry|move|
        all|set|start|up|and|rolling|cooking|moving|this|things|at it|now then|done waiting|
        break is over|you can
      `
        }
      ]
    };
  }
});

// src/language/intents/seal-failed.ts
var sealFailed;
var init_seal_failed = __esm({
  "src/language/intents/seal-failed.ts"() {
    "use strict";
    sealFailed = {
      cost: "raising",
      report: true,
      when: ["load:out", "asked:seals"],
      slots: { target: "name", count: "count", jars: "numbers", othersSealed: "flag" },
      parts: ["size"],
      example: "jar three didn't seal",
      doubting: ["when", "would"],
      wordings: [
        "<numbered> [just|still|both|has|have] <failed>",
        "{jars:jar-list} [just|still|both|have] <failed>",
        "<some-jars> [still|just|has|have] <failed>",
        "[the] (lid|lids) (on|of) <numbered> [still|just|has|have|both] <failed>",
        `(<numbered>|{jars:jar-list}|<some-jars>) [just|still|both|has|have] <failed> [and|but|
    though] {othersSealed=true} [all] (the others|the rest|the other ones|all the others|
    everything else|all others|the rest of them|all the rest|the other jars) [all] [did|have|
    are|has|is] [all] (sealed|did|fine|down|good|went down|seal|sealed up|sealed fine) [fine]`,
        `[the] (seal|lid) [on|of|for] [the] [jar|jars|number|lid] {jars} [has|just] (failed|broke|
    did not take|did not hold|is bad|is no good|never took|let go|has let go|gave out|is broken|
    gave way|came loose|did not seal|popped|popped up|came up|was bad|is gone|has gone|went|has
    popped|is off)`,
        "[the|a|one|<got>] (bad|failed|broken|no) seal [on|at] [jar|number|jars|lid|jar number] {jars}",
        `[<we>|i] [have|got|have got|had|found|there is|there are|there were] [a|the|one] {count}
    [<jars-or-size>|<of-them>|more|lids|lid] (that|which) [has|have] <failed>`,
        `(<we>|i|there is|there are|there were) [have|got|have got|had|found] {count} [bad|failed]
    (failed|failures|failure|bad seal|bad seals|unsealed|that failed|dud|duds|failed seals|
    failed seal|failed lids|unsealed jar|unsealed jars|failed jar|failed jars|jars unsealed|
    seal failure|seal failures|seals failed|lid up|lids up)`,
        `{count} (failed|failures|failure|bad seal|bad seals|unsealed|dud|duds|failed seal|failed
    seals|unsealed jars|unsealed jar|seal failure|seal failures|bad one|bad ones)`,
        `(no seal|failed seal|bad seal|failed|unsealed|did not seal|seal failed|seal failure) [on|
    is] [jar|jars|number|numbers|jar number|lid] {jars}`,
        "(the one|the jar) (that did not seal|that failed) is [jar|number|jar number] {jars}",
        "(the ones|the jars) (that did not seal|that failed) are [jars|numbers|number] {jars}",
        `[{othersSealed=true} all|everything|they all|every one|they] [of them|the jars|the lids]
    [are|have] (sealed|but) [except|but|apart from|except for|save for|all but|other than] [for|
    the] <not-sealed-tail>`,
        `{othersSealed=true} (all|everything|they all|every one|all of them|all the jars|all the
    lids|every jar|all of the jars|every lid|they have all|they are all) [have|are|is|has]
    (sealed|went down|down|sealed up|popped|good|pinged|popped down|gone down) (except|but|
    apart from|except for|save for|other than|but for|all but|minus) [for|the] <not-sealed-tail>`,
        `{othersSealed=true} (all but|everything but|every one but|all except|everything except|all
    jars but|all jars except|every jar but|every jar except) <not-sealed-tail> [have|has|are|
    is] (sealed|went down|down|sealed up|popped|good|popped down)`,
        "(jar|lid|number) {jars} (is|has) (not|no) [a] (sealed|seal|down|tight)",
        "{count} [of the|of them|of my|of our] [jars|lids|jar|lid] (is|are|has|have) not <sealed>",
        "one (lid|jar) [has|just|still] <failed>",
        "(a|a single) (lid|jar) [has|just|still] <failed>",
        "(we|i) (lost|have lost) (a|the|one) seal [on] [jar|number|jar number] {jars}",
        `[we have|i have|got|i found] [a] (dud|failed one) [at|on|is|it is] [jar|number|jar number]
    {jars}`
      ],
      spoken: [
        "(jar|jars|number) {jars} did not seal",
        "(jar|jars) {jars} failed",
        "{count:whole} did not seal",
        "{count:whole} failed"
      ],
      bags: [
        {
          must: [
            "{count} [<of-them>|lids|jars|lid|jar]|<numbered>|[on|number|jar|lid] [jar|number] {jars}",
            "<seal-failure>"
          ],
          may: `
        <said-of-it>|i|lid|lids|jar|jars|seal|on|number|found|there|still|that|which|with|
        never|too|looks like|had|out of {number}|of the {number}|of {target}|{target}
      `
        }
      ],
      lists: {
        failed: `
      [is|are|was|has|have|keeps|keep] [<still>] (popping|clicking|flexing|bouncing|springing|
      moving|springy|bouncy|poppy|domed|bulging|bulged|raised|humped|loose|flexing|wobbly|
      unsealed|unsuccessful|popped|pushed up|puffed up|pops|clicks|flexes|bounces|springs) [up|
      back|back up|up and down|down and up|up again|in and out] [when (i|you|we) (press|push|
      press on|push on|touch|press down on|tap|push down on) [it|them|the lid|the middle|the
      center]|on me]|
      (is|are|was) [<still>] not (sealed|sealing|down|tight|holding|sucked down|popped down)|
      [still] (is|are|has|have) not <sealed>|
      (do|does|did) not (seal|pop|ping|take|hold|go down|seal right|seal up|pull down|seal at
      all)|
      (would|will|could|can) not (seal|pop down|go down|take|hold)|
      never (did|would|quite) (seal|sealed|pop|take|ping|go down|hold|pop down)|
      never (sealed|popped|took|pinged|went down|held) [down|tight|on me|right]|
      (pops|clicks|flexes|moves|gives|bounces|springs back|still pops|still clicks|still flexes|
      pop|click|flex|goes up and down|springs up) when (i|you|we) (press|push|press on|push on|
      touch|press down on|tap) [it|them|the lid|the middle|the center]|
      failed|failed to seal|lost its seal|lost the seal|lost their seal|is still up|are still
      up|spring back|came unsealed|
      (still pop|still click|still flex|still pop up|still give) [when i press them]|
      (pop|click|flex|give|bounce) when i press them|
      [still] (pop|pops|flex|flexes|bounce|bounces|click|clicks) up and down [when i press (it|
      them)]|
      came up again|has no seal|had no seal|did not get a seal|has failed|have failed|failed the
      seal|failed the seal check|stayed up|stayed domed|has a bad seal|came loose|have no seal|
      is a bust|missed its seal|is a dud|is up|are up|came open|comes right off|lifts right off|
      has not popped|has let go|let go
    `,
        "seal-failure": `
      <failed>|
      (did|will|would|has|have|could|do|does|had|can) not (seal|sealed|take|taken|hold|held|go
      down|gone down|stay down|stay sealed|pop|popped|ping|pinged|get sealed|make it|suck down|
      pull down)|
      (bad seal|no seal|failed|unsealed|loose|popped up|came up|still up|up|popping|bad seals|
      no seals|duds|a dud|dud|failures|failure|not down|not sealed|never sealed|never popped|is
      up|never took|never went down|fail|did not|failing)
    `,
        "not-sealed-tail": `
      {count} [<of-them>|jar|jars|lid|lids]|<numbered>|[jar|jars|number|numbers] {jars}|for
      <numbered>
    `
      }
    };
  }
});

// src/language/intents/sealed.ts
var sealed;
var init_sealed = __esm({
  "src/language/intents/sealed.ts"() {
    "use strict";
    sealed = {
      cost: "clearing",
      report: true,
      when: ["load:out", "asked:seals"],
      slots: { target: "name", all: "flag", count: "count", jars: "numbers" },
      example: "they all sealed",
      wordings: [
        {
          set: { all: true },
          phrases: [
            `<all-jars> [have|has|are|is|got] [all|now|finally|really] <sealed> [now|up|nice and
        tight|well|beautifully|too]`,
            "<all-jars> [just|all|have|has|have all] <went-down> [now|tight|nice and tight]",
            "<other-jars> [have|has|are|is|got] [all] (<sealed>|<went-down>|fine|good|okay) [now]",
            `[they are|it is|we are] all (sealed|down|tight|sealed up|sealed tight|popped down|
        sucked down)`,
            `all [<of-them>|the seals|seals] (sealed|are good|good|are fine|are tight|took|held|look
        good|are holding|sealed up|are sealed)`,
            `(<the>|all the|all|every) (seals|seal) (is|are|took|held|look|looks) [all] [good|fine|
        tight|down|sound|solid|great|okay]`,
            `[i checked|i have checked|checked] [all|every|the] [jars|lids|jar|seals|them] [and]
        (they are|they have|everything is|everything|all|all are|they|every one|every one is|
        each one is) [all] sealed`,
            "[we have|i have|got|we got|there are|i got] (a|one) hundred percent [sealed|seal|seals]",
            `[we have|we got|got|i have|i got] (all|every) (seals|lids|jars|lid|jar) (down|sealed|
        tight)`,
            `(none|no jars|not one|no lids|not a single one|none of the lids|none of them|none of the
        jars|not a jar|no jar|nothing) [has|have] (failed|failed to seal|are unsealed|is
        unsealed|did not seal|came up|is loose|are loose)`,
            `(no failures|no failed seals|no bad seals|no duds|full seal|every lid is down|all down|
        all sealed)`,
            "the (whole|entire) (lot|batch|load) [has|is] (sealed|is sealed|sealed up)",
            "[the] (lids|jars) (have|are) [all] (sealed|popped|gone down|pinged|sealed up|down)"
          ]
        },
        `<some-jars> [have|has|are|is|got|of them have|of them are|more have] [all|now] <sealed>
    [now|so far|already]`,
        "<some-jars> [just|have|has|more] <went-down> [now|so far]",
        "{count} (good|sound|solid) (seals|seal)",
        `(<we>|i) (have|got|have got|count|counted) {count:whole} [jars|lids|pints|quarts] [that are|
    that have|that] <sealed> [so far|now]`,
        `(<we>|i) (have|got|have got|count) {count:whole} (sealed|good seals|good ones|down) [so far|
    now|already]`,
        `[that is|that makes|makes] {count:whole} [jars|of them|lids|pints|quarts] (sealed|sealed so
    far|sealed now|down)`,
        "<numbered> [have|has|are|is|got] [all|both|now|just] (<sealed>|<went-down>|fine) [now|too]",
        "the seal on <numbered> (is|took|has) [good|fine|tight|taken|held]",
        "{jars:jar-list} [have|are] [all|both|now|just] (<sealed>|<went-down>) [now|too]",
        "sealed {count:whole} [<of-them>|jars|so far]",
        "seals on {jars} [are good|took]"
      ],
      spoken: [
        { set: { all: true }, phrases: ["all sealed", "they are all sealed", "everything sealed"] },
        "{count:whole} sealed",
        "(jar|jars|number) {jars} sealed"
      ],
      bags: [
        {
          set: { all: true },
          must: [
            "<all-jars>|<other-jars>|[the] (whole|entire) (batch|lot|load|bunch)|all",
            "<sealed>|<went-down>"
          ],
          may: `
        <said-of-it>|i|checked|<other-jars>|<all-jars>|{number} (for|of|out of) {number}|lids|
        jars|good|fine|nice|tight|well|perfectly|jar|lid|down|up|up tight|great|single|last|
        nicely|too|of {target}|{target}
      `
        },
        {
          must: ["<some-jars>|<numbered>", "<sealed>|<went-down>|good seals"],
          may: `
        <said-of-it>|i|so far|good|fine|nice|tight|well|too|both|now|lids|jars|nicely|counted|
        of {target}|{target}
      `
        }
      ],
      lists: {
        "all-jars": `
      all|all of them|all of the jars|all the jars|all of the lids|all the lids|everything|
      everyone|everybody|they|they all|they have all|the lot|the whole lot|the jars|the lids|
      the jars all|the lids all|both|both of (them|those|these|the jars)|both (jars|lids|pints|
      quarts)|
      [every|each] (single|last|and every|blessed) [last] (one|lid|jar|seal|pint|quart) [of
      (them|these|those|mine|ours|the lot|the jars|the lids|my jars|our jars|the pints|the
      quarts)]|
      (every|each) (lid|jar|pint|quart|one) [of (them|these|those|mine|ours|the lot|the jars|
      the lids|my jars|our jars|the pints|the quarts)]|
      all (of them|of the jars|the jars|of these|of those|our jars|my jars) have|
      the whole batch|the whole load|the entire batch|the whole canner|the whole bunch|all our
      jars|all my jars|all of it|all jars|all lids|the pints|the quarts|all the pints|all the
      quarts|all {count} [<of-them>|jars|lids|pints|quarts]|all (of|the) {count} [jars|lids|
      pints|quarts]|the (beets|beans|pickles|tomatoes) all|all the (beets|beans|pickles|
      tomatoes)
    `,
        "other-jars": `
      all the others|the others|the rest|all the rest|the other ones|everything else|all the
      other jars|the other jars|all of the others|all the other ones|the remaining jars|the
      remaining ones|the others all|the rest all|the rest of the jars|every other one|all
      others|all the remaining jars|the rest of the lids|[all] [the] rest of them|all the other
      lids
    `,
        "went-down": `
      went down|
      [have|has] (popped|pinged|sealed|sucked|pulled|gone|snapped) [down] [in|tight|nice and
      tight]|
      took|sealed up|sealed fine|took a seal|got a good seal|made a seal|sealed perfectly|
      sealed properly|sealed solid|went ping|went down tight|sealed beautifully|took the seal
    `
      }
    };
  }
});

// src/language/intents/seed-saved.ts
var seedSaved;
var init_seed_saved = __esm({
  "src/language/intents/seed-saved.ts"() {
    "use strict";
    seedSaved = {
      cost: "changing",
      when: ["always"],
      slots: {
        crop: "name",
        variety: "name",
        isolation: "text",
        fermentDays: "number",
        dryWeightG: "number",
        storage: "text",
        batch: "name"
      }
    };
  }
});

// src/language/intents/set-aside.ts
var setAside;
var init_set_aside = __esm({
  "src/language/intents/set-aside.ts"() {
    "use strict";
    setAside = {
      cost: "changing",
      report: true,
      when: ["stage:fill"],
      slots: { target: "name", count: "count", jars: "numbers" },
      example: "one jar set aside",
      doubting: ["would"],
      wordings: [
        `[<we>|i|i will|i am|we will|let us] [have|just|am|are|have just] (set|put|setting|putting|
    kept|keeping|keep|leave|left|leaving|hold|held) {count} [jar|jars|pint|quart|half pint|
    <of-them>|pints|quarts] [aside|to one side|to the side|out|back|by|off to the side|out of
    the load|over|out of the canner] [for (supper|dinner|lunch|tonight|later|the fridge|
    eating)]`,
        `[<we>|i|i will|i am] [have|just|am] (set|put|setting|putting|kept|held|leave|left) (jar|
    jars|number|numbers|jar number) {jars} (aside|to one side|to the side|out|back|off to the
    side) [<not-full>]`,
        `[<we>|i|i will|i am] [have|just|am] (set|put|setting|putting) aside (jar|jars|number|
    numbers|jar number) {jars} [<not-full>]`,
        `[<we>|i|i will|i am] [have|just|am] (set|put|setting|putting|kept|held) {count=1} (it|that|
    that one|the last one|the last jar|the partial jar|the part filled jar|the half full one|
    the partial|the partial one|the short jar|the odd one|the odd jar|the leftover|the extra|
    the half full jar|the extra one|the extra jar|the part jar|this one|the short one) (aside|
    to one side|to the side|out|back|off to the side|out of the load)`,
        `<set-aside-one> [so] [it|that|that one|i] [is|goes|went|set it|put it|am setting it|i will
    set it|i set it|i put it|has been] [set] (aside|in the fridge|to the fridge|into the fridge|
    to one side)`,
        `[<the>] [last] {count=1} (jar|one|last one|last jar) was not [quite|all the way] full [so]
    [i] [have|just] (set|put) it (aside|to one side|in the fridge)`,
        `[<the>|a] {count=1} (half full|part full|partial|part filled) (jar|one) [so] (i am|i have|
    i) [just] (leaving|left|leave|setting|set|putting|put) it (out|aside|to one side)`,
        `[<the>] {count=1} (last jar|last one) is (only|just|not) [half|part|partly|quite] full [and|
    so] [i am|i will|i have|i] (setting|set|put|putting) it (aside|to one side|in the fridge)`,
        `[<the>] {count=1} (last jar|last one|partial jar|part filled jar|odd jar|short jar|partial)
    (is|goes|gets|went) [set] (aside|in the fridge|to the fridge|into the fridge|to one side)`,
        `{count} [jar|jars|pint|pints|quart|quarts] (set aside|left over|to set aside|aside|is set
    aside|are set aside|left out|goes in the fridge|for the fridge|only part full|part filled|
    partly filled|half full|is only half full|is not full|is only part full|is part full|is
    partly full)`,
        `[the] {count=1} last (jar|one) is (only|just|not|part|partly|only partly|only part|half)
    [half|part|partly] (full|filled|a full jar)`,
        `[i have|we have|there is|i have got|we have got] {count} (partial|part filled|half full|
    partly filled|half filled|part full|short|leftover|extra) [jar|jars|one|pint|left|left over]`,
        `[i have|we have|there is|there are|i have got] {count} [jar|jars|pint|half pint] (left over|
    too many|that is not full|that is only half full|that will not fit|that does not fit|extra|
    that would not fit|over|more than fits|more than will fit)`,
        "setting (one|{count}) aside"
      ],
      spoken: ["{count:whole} jar set aside", "set {count:whole} jar aside"],
      bags: [
        {
          must: ["{count} [<of-them>|jars|jar|pint|quart|pints|quarts]", "<left-aside>"],
          may: `
        <said-of-it>|i|put|set|keeping|kept|leaving|left|holding|held|setting|putting|only|not|
        full|half|to|for|will|let us|let me|partial|short|jar|did not fill
      `
        }
      ],
      lists: {
        "left-aside": `
      (aside|to the side|to one side|left over|leftover|extra|out of the load|half full|part
      full|not full|only half|back|for the fridge|off to the side|that will not fit|that does
      not fit|will not fit|does not fit|too many|partly full|partly filled|short)
    `,
        "not-full": `
      [because|since|as] (it is|they are) (not [quite] full|only half full|only part full|too
      low)
    `,
        "set-aside-one": `
      {count=1} (the|my|our) (last|partial|odd|short|part filled|half full) (jar|one) [is]
      [only] [half full|part full|not full|short|did not fill|does not fill]|
      {count} [jar|jars|pint] (is|was|came up|came out|ended up) [only] (half full|part full|
      short|not full|partly full|half filled)
    `
      }
    };
  }
});

// src/language/intents/taste.ts
var finishTaste, taste;
var init_taste = __esm({
  "src/language/intents/taste.ts"() {
    "use strict";
    finishTaste = ({ scores, scoreName, score, ...rest }) => {
      const named = typeof scoreName === "string" ? { [scoreName]: score } : {};
      return { slots: { ...rest, ...named, ...scores } };
    };
    taste = {
      cost: "changing",
      when: ["always"],
      slots: { target: "name", taster: "name" },
      parts: ["scores", "scoreName", "score"],
      example: "crunch four",
      forgiving: true,
      unasked: true,
      finish: finishTaste,
      wordings: [
        `<taste-lead> {target:open} [today] [gets|is|got|and it is|comes out at|i would say|i give
    it|scores|i say] {scores}`,
        "{target:open} <taste-word> [score|scores|is|gets] {scores}",
        `<taste-lead> [today] {target:open} [out] [gets|is|got|scores|we give it|they are|it is]
    {scores}`,
        "<taste-lead> {scores} (for|on) {target:open}",
        "{scores} (for|on) {target:open}",
        `[<taste-lead>] [the] {scoreName:score-name} (on|for|of|in) [<the>] {target:open} (is|gets|
    was|rates|got|are|scores) [a|at|about] {score:number}`,
        "[i|we] [would] (give|gave|rate|rated|score|scored) {target:open} [a|at|as] {scores}",
        `(for|on) [<the>] {target:open} [i|we] [would] [say|give|gave|rate|rated|score|scored]
    {scores}`,
        "[the|its|their] {scores}",
        `{target:open} (get|gets|got|scored|score|scores|rate|rates|is|are|has|have|earn|earns) [a]
    {scores}`,
        "{target:open} {scores}|<taste-lead> {scores}",
        `{taster:person} [would] (gives|gave|give|rates|rated|scores|scored|says|said|tasted|tried)
    [<the>] {target:open} [is|are|was|gets|got|a|at|as|and (gives|gave) it|and (says|said) [it
    is]] {scores}`,
        "<taste-lead> {target:open} (for|by|with) {taster:person} {scores}",
        "(for|from|by) {taster:person} [<the>] {target:open} [is|are|gets|got] {scores}",
        "{taster:person} <taste-word> [of] [<the>] {target:open} [is|are|gets|got] {scores}"
      ],
      lists: {
        "taste-lead": `
      taste|tasted|tasting|i tasted|we tasted|taste test|tasting notes|tasting notes for|taste
      of|taste score for|taste scores for|score for|scores for|taste test of|taste test for|the
      taste of|tasting of|taste notes|tasting note for|rate|score|rating for|trying|tried|i
      tried|we tried|taste for|taste rating for|record taste for|sampled|i sampled|record a
      taste of|opinion on|for
    `,
        "taste-word": "taste|tasting|taste test|tasted"
      }
    };
  }
});

// src/language/intents/temperature.ts
var temperature;
var init_temperature = __esm({
  "src/language/intents/temperature.ts"() {
    "use strict";
    temperature = {
      cost: "clearing",
      report: true,
      when: ["temperature-wanted"],
      slots: { target: "name", at: "instant", value: "number", unit: "word", boiling: "flag" },
      example: "it's at one eighty two degrees",
      topical: true,
      finish: (raw, { temperatureUnit = "F" }) => ({
        slots: { ...raw, unit: raw.unit ?? temperatureUnit }
      }),
      wordings: [
        "<it> [<at-value>|<fell-to>] {value:temperature} [<degrees>] [<temp-tail>]",
        `<temp-subject> [<at-value>|<fell-to>] {value:temperature} [<degrees>] [{unit=F}
    <fahrenheit>] [<temp-tail>] [<temp-tail>] [<when>]`,
        `[<temp-subject>|<it>|<we>] [<at-value>|<fell-to>|<got>] [a reading of|a temperature of|a
    temp of|a] {value:number} <temp-unit> [<temp-tail>] [<temp-tail>] [<when>]`,
        "(<it>|<we>) (<at-value>|<fell-to>) {value:temperature} [<temp-tail>] [<temp-tail>] [<when>]",
        "<got> [a] {value:temperature} [<degrees>] (in|on|for|at) ({target}|<thermometer>)",
        "<got> a (reading|temperature|temp) of {value:number} [<temp-unit>] [<temp-tail>]",
        "{value:temperature} (on|by|according to) <thermometer>",
        "(temperature|temp|reading) [of|in] [<the>] {target} [<at-value>] {value:number} [<temp-unit>]",
        `<the> (temperature|temp) (of|in) {target} [<at-value>|<fell-to>] {value:number}
    [<temp-unit>] [<when>]`,
        "[<the>] {target} [temperature|temp] {value:number} <temp-unit>",
        `(measured|i measured|i get|getting|i am getting|i read|read|took a reading of|i see|i am
    reading|we are reading|we are getting|i am seeing) {value:number} [<temp-unit>]
    [<temp-tail>]`,
        `[<temp-subject>|<it>|<we>] [<at-value>|<got>] {value:temperature} [<temp-unit>] <at-boil>
    {boiling=true}`,
        `[<the> water|{target}|<it>|<we>] [<is>] [<still>] (boils|boiling|boil|boiled) (at|by)
    [<approx>] {value:temperature} [<temp-unit>] {boiling=true} [now]`,
        `[<it>|{target}|<we>] [<is>] [at] (a|the) [<full>] [<full>] boil (at|is at|is) [<approx>]
    {value:temperature} [<temp-unit>] {boiling=true}`,
        `[<it>|{target}|<we>] [<is>] (at|on) (a|the) [<full>] [<full>] boil [and] [at|reads]
    {value:number} <temp-unit> {boiling=true}`
      ],
      spoken: [
        "[it is at] {value:temperature} degrees",
        "the {target} is at {value:temperature} degrees"
      ],
      bags: [
        {
          must: ["[<at-value>|<fell-to>] {value:number} <temp-unit>"],
          may: `
        <temp-subject>|<it>|<we>|<is>|<shows>|<still>|<temp-tail>|<when>|<way>|<approx>|
        {target}|there|here|and|the|in the canner|over|all
      `
        },
        {
          must: ["[<at-value>|<fell-to>] {value:temperature}", "<temp-subject>"],
          may: "<is>|<shows>|<still>|<temp-tail>|<when>|<way>|<approx>|in|of|there|here|and|the"
        }
      ],
      lists: {
        thermometer: `
      <the> thermometer|thermometer|<the> temperature|temperature|<the> temp|temp|<the> probe|
      probe|<the> reading|reading|the water temperature|the water temp|<the> candy thermometer
    `,
        degrees: "degrees|degree|degrees even",
        fahrenheit: "fahrenheit|f|farenheit",
        celsius: "celsius|centigrade|c|celcius",
        "temp-subject": `
      <thermometer>|{target}|<thermometer> (in|on|for) {target}|
      {target} (in|on) [<the>] (canner|pot|kettle|crock|bath|pan|big pot|water bath)|
      {target} (temperature|temp|thermometer)|
      <the> (temperature|temp|reading) (of|in|on|for) {target}|
      the water in {target}
    `,
        "temp-unit": `
      <degrees> [{unit=F} <fahrenheit>|{unit=C} <celsius>]|
      {unit=F} <fahrenheit>|{unit=C} <celsius>
    `,
        "at-boil": `
      [<still>] (at|on) (a|the) [<full>] [<full>] boil [now|here]|
      [and] [<still>] boiling [<hard>] [now|here]
    `,
        "temp-tail": `
      now|even|steady|on <thermometer>|by <thermometer>|on the dot|holding|exactly|flat|
      already|(in|for|on) {target}|and (rising|climbing|falling|dropping)
    `,
        "fell-to": `
      [has|have|is|are] [<still>] (fell|dropped|fallen|cooled|warmed|cooling|warming|heated|
      heating|falling|dropping|come down|came down|cooled down|warmed up|heated up|cooled off|
      brought|gone down|going down) [back] [up|down|all the way down] to [<approx>]|
      (is|are) [<still>] down to [<approx>]
    `
      }
    };
  }
});

// src/language/intents/time-left.ts
var timeLeft;
var init_time_left = __esm({
  "src/language/intents/time-left.ts"() {
    "use strict";
    timeLeft = {
      cost: "harmless",
      when: ["working", "timer"],
      slots: { target: "name" },
      example: "how long have the beets got",
      forgiving: true,
      topical: true,
      wordings: [
        `(have|has|do|does|did) ([<the>] {target:open}|they|it|we) [got|have] (long|much longer|much
    time) [left|to go|yet|still] [now]`,
        `how (is|are) [<the>] [{target:timer}] (timer|timers|clock|countdown) (doing|coming|coming
    along|getting on|looking|going) [for time|on time]`,
        `how (is|are) [<the>] {target} (for time|on time|doing for time|doing on time|coming on time|
    fixed for time)`,
        `<how-long> (have|has|do|does|did|is|are|will|would|must) [<the>] {target:open} [got|have|
    left|to go|need|take|be|still|has|remaining|stay|have left|have to go|have got|got left|got
    to go|still need|run|still have|need to go|still have to go|need yet|got yet|in for|going to
    be|going to take|still got to go|left to go|cook|process] [left|to go|yet|still|now|in
    there|longer|more]`,
        `<how-long> (until|till|before|to) [<the>] {target:open} (is|are|comes|come|be|can come|goes
    off|go off|finishes|finish|ends|is due|are due|rings|has|can be) [done|ready|out|finished|
    up|over|to come out|through|off|lifted] [out|now|off]`,
        `<how-long> (until|till|before) (it|that|they|this|those|i|we|everything) (is|are|comes|
    come|am|can|goes|finish|finishes|ends|rings|take|can take|get|have) [come|take|done|ready|
    out|finished|up|over|the jars|them|it|off|to take] [out|now|the jars out|off]`,
        `<how-long> (until|till|before) [<the>] ({target:open}|timer|clock|bell|alarm|time|process)
    (goes off|rings|runs out|is up|ends|sounds|dings|beeps|goes|finishes)`,
        `<how-long> (until|till|before|to) (the end|it ends|the end of the process|i take the jars
    out|the jars come out|we take them out|the bell|done|ready|finished|it rings)`,
        `<how-long> [is|has|have] [left|to go|more|remaining|it|that|this|they|now|longer|still]
    [got|left|to go|now|have|is left|remains|remaining] [(on|for|in|with|of|till) [<the>]
    {target:open}] [timer|now]`,
        `<how-long> (do|have|does|has|will|is|are|must|did) (we|i|it|that|they|this|those|these|you|
    everything) [got|have|left|to go|need|take|be|still|got left|have left|have to go|got to go|
    have to wait|need to go|still have|to wait|still need|going to be|going to take|run|still
    have to go|got to wait|to run] [left|to go|yet|still|now|longer|more] [(on|for|with|in)
    [<the>] {target:open}]`,
        "<how-long> (for|on|in|with|about) [<the>] {target:open} [now|still|left|yet|timer]",
        `(is there|have we got|do we have|have i got|do i have) [still] (much|any|a lot of|plenty of|
    more|very much) time left [(on|for|with) [<the>] {target:open}]`,
        `(what|how much) time (is|has|have) [left|remaining] [<the>|on] [<the>] [{target:open}] [got]
    [left|remaining]`,
        `[what is|tell me|give me|check] [the|my] (time left|remaining time|time remaining|minutes
    left|countdown|time to go|minutes remaining|time still to go) [(on|for|in|with) [<the>]
    {target:open}] [timer]`,
        "what is [still] (left|remaining|still left) (on|for|in) [<the>] {target:open} [timer]",
        `what (does|do|is) [<the>] {target:open} [timer] (have left|say|got left|have to go|have|at|
    have remaining|on|down to)`,
        `(how is the time|how are we for time|how are we doing for time|how are we doing on time|how
    is the time doing|how am i doing for time|how is the clock|what does the clock say|what does
    the timer say|where is the timer|where is the timer at|time check|what is on the clock|
    check the timer|check the timers|check the clock|what are the timers|what are the timers at|
    what is the timer at|what is the timer on) [on|for|with] [[<the>] {target:open}]`,
        `(are we|is it) (almost|nearly|close to|getting close to) (done|there|time|finished|over)
    [on|with|for] [[<the>] {target:open}]`,
        "(is|are) [<the>] {target} (almost|nearly|close to) (done|ready|finished|out)",
        `[<the>] {target} (how long|how much longer|time left|how many minutes|how much time) [left|
    to go]`,
        `(tell me|let me know) how (long|much longer|much time) [is left|we have|is left on it|it
    has|it has left|they have|they have left|there is|to go|it has got|they have got] [on|for]
    [[<the>] {target:open}] [has|have] [left|got]`,
        "when (is|are) [<the>] {target:open} timer (going off|going to go off|up|done|over|due)",
        `(when|how soon) (does|will|do) [<the>] {target:open} timer (go off|ring|end|finish|run out|
    be done|be up)`
      ],
      spoken: [
        "(how long|how much longer) [for the {target:open}]",
        "how much time is left",
        "how long have the {target:open} got"
      ],
      bags: [
        {
          asking: true,
          must: ["<how-long>|time left|[the] time (on|for|with)|minutes left|hours left|left on"],
          may: `
        <asked-of-it>|<the> timer|[<the>] {target}|left|to go|longer|more|yet|still|until|till|
        till|go|before|done|ready|finished|out|off|over|up|come out|the jars|jars|wait|need|
        needs|take|takes|cook|process|boil|remaining|time|on|in|for|with|got|get|the clock|
        clock|is up|goes off|rings|check|what|keep|going|canner|finish|end|ends|everything|be|i
        am|we are|looking at|talking
      `
        }
      ],
      lists: {
        "how-long": `
      how long|how much longer|how much time|how many minutes|how many more minutes|how much
      more time|how long still|how much time still|how many hours|about how long|how much more|
      how many minutes more|for how long|how long left|how much time left|how many minutes left|
      how long to go|how soon|roughly how long|what time left|how many more hours|how many
      seconds|how far|how much time remaining|how much time is left|how long is left|how many
      minutes are left|how many minutes remain|how much time remains|how long remains|how much
      is left
    `
      }
    };
  }
});

// src/language/intents/timer-add.ts
var timerAdd;
var init_timer_add = __esm({
  "src/language/intents/timer-add.ts"() {
    "use strict";
    timerAdd = {
      cost: "changing",
      when: ["timer"],
      slots: { target: "name", minutes: "number" },
      example: "add five minutes",
      forgiving: true,
      wordings: [
        `[<want>] (put|stick|throw|give|set|slap|pop|chuck) [on] (another|an extra|an additional|a
    further) {minutes:length} [more|extra|longer|additional] [on|onto|to|for|on to] [<the>]
    {target:timer} [timer]`,
        "{minutes:length} [more|extra] (on|to|onto|for) the (timer|clock)",
        "another {minutes:more} (on|to|onto|for) [<the>] {target:timer} [timer]",
        `(i|we) (need|want|could use|will need) [another] ({minutes:length} (more|extra|longer)|
    {minutes:more}) (on|for|onto) (the (timer|clock)|(that|this) (timer|one|clock)|[<the>]
    {target:timer} [timer])`,
        "[another|an extra|an additional] {minutes:length} [more|extra] (on|to|onto) the (timer|clock)",
        `[<want>] (put|add|stick|throw) [on] [another|an extra|an additional] {minutes:length} [more|
    extra] (on|to|onto) the (timer|clock)`,
        `[<want>] (add|tack|bump|tag) [on] [another|an extra|an additional|a further]
    {minutes:length} [more|extra|longer|additional] [on|onto|to|for|on to] [<the>]
    {target:timer} [timer]`,
        `[<want>] (put|add|stick|throw|tack|set|slap|tag|pop) [on] [another|an extra|an additional|a
    further] {minutes:more} [more|extra] (on|onto|to|for|on to) [<the>] {target:timer} [timer]`,
        `[<want>] (put|add|stick|throw|tack|give it|give me|give that|give them|give us|set) [on]
    [another|an extra|an additional|a further] {minutes:more} [more|extra|longer] [on|to] [it|
    that|the timer|the clock|this]`,
        `[<want>] add [an extra|another] {minutes:length} [more|extra] [to (it|that|the timer|the
    clock|this one|this)|on to it|on]`,
        `[<want>] give [<the>] {target:timer} [timer] (another|an extra|an additional|a further)
    {minutes:length} [more|longer|extra]`,
        "[<want>] give [<the>] {target:timer} [timer] {minutes:more} [more|longer|extra]",
        "[<want>] give (it|that|this|them) (another|an extra) {minutes:length} [more|longer]",
        `[an extra|another|a further] {minutes:more} [more|extra|longer] [on|for|to] [[<the>]
    {target:timer}] [timer]`,
        `(another|an extra|a further|an additional|extra) {minutes:length} [more] [(on|for|to)
    [<the>] ({target:timer}|timer)] [timer]`,
        "[<the>] {target:timer} [timer] needs (another|an extra) {minutes:length} [more|longer]",
        "[<the>] {target:timer} [timer] needs {minutes:more} [more|longer]",
        "(it|that|they|i|we) (needs|need|wants|want) (another|an extra) {minutes:length} [more|longer]",
        "(it|that|they|i|we) (needs|need|wants|want) {minutes:more} [more|longer]",
        `[<want>] (extend|lengthen|increase|bump|prolong|stretch|push|push back|bump up|push out)
    [<the>] [{target:timer}] [timer] (by|for|another|an extra) [another|an extra]
    {minutes:length} [more]`,
        "[<want>] (extend|lengthen|bump) (it|that) (by|for|another) [another] {minutes:length}",
        "[<want>] make [<the>] [{target:timer}] [timer] {minutes:length} longer",
        `[<want>] (leave|let) [<the>] {target:timer} (go|run|cook|for|on|in) [for|on|another]
    [another] {minutes:more} [longer|more]`,
        `[<want>] (let|leave|run) [<the>] {target:timer} [go|run|timer] [for] (another|an extra)
    {minutes:length}`,
        `[<want>] (let|leave) (it|that|them) [go|run|cook|have] [for] (another|an extra)
    {minutes:length}`,
        "{minutes:length} (more|longer|extra) [(on|for|to) [<the>] ({target:timer}|timer)] [timer]"
      ],
      spoken: ["add {minutes:length} [to the {target:known-timer} timer]", "{minutes:more}"],
      bags: [
        {
          asking: true,
          must: ["[another|an extra|an additional] {minutes:length} [more|longer|extra]", "<lengthen>"],
          may: `
        <want>|on|to|for|it|that|them|the|a|up|by|i|we|timer|clock|more|longer|extra|out|onto|
        of|is|this|(on|to|for|onto) [<the>] {target:timer} [timer]|{target} [timer]|get|on
        there|go|needs|need|(bump|push|extend|stretch|give|let|leave) [<the>] {target:timer}
        [timer] [up|out|go|run|have]
      `
        }
      ],
      lists: {
        lengthen: `
      (more|another|extra|add|tack|bump|extend|longer|lengthen|stretch|increase|push|
      additional|prolong|tag)|
      (bump|push|extend|stretch|lengthen) [<the>] {target:timer} [timer] [up|out|by|back]
    `
      }
    };
  }
});

// src/language/intents/timer-cancel.ts
var timerCancel;
var init_timer_cancel = __esm({
  "src/language/intents/timer-cancel.ts"() {
    "use strict";
    timerCancel = {
      cost: "changing",
      when: ["timer"],
      slots: { target: "name" },
      example: "cancel the timer",
      forgiving: true,
      wordings: [
        "[<want>] (kill|cancel|stop|delete|clear|drop|end) [<the>] {target:known-timer}",
        "(i am|we are) done with [<the>] [{target:timer}] timer",
        "[<the>] {target:timer} timer is (done with|no longer needed|not needed)",
        "(stop|quit|no more) timing [<the>] {target:timer}",
        "(stop|quit) timing",
        "[<want>] <kill> [<the>|that|this] timer [now|off|please] [<timer-for> [<the>] {target:timer}]",
        "[<want>] <kill> [<the>|that] {target:timer} (timer|countdown|alarm) [off]",
        "[<want>] (turn|shut|switch|call|take) [<the>|that] [{target:timer}] timer off",
        `[<want>] (kill|cancel|delete|clear|stop) [<the>] (timer|countdown|alarm|clock) (for|on|
    named|called) [<the>] {target:timer}`,
        "[<want>] <kill> [<the>|all the|all|all of the] (timers|timer|countdown|countdowns)",
        "[i|we] (do not|no longer) need [<the>] [{target:timer}] timer [any more|any longer|now]",
        "no [more] (need for) [<the>] [{target:timer}] timer",
        "never mind [about] [<the>] [{target:timer}] timer",
        `[<the>] [{target:timer}] timer (can go|is not needed|off|is off|is not needed any more|can
    stop)`,
        "no more [{target:timer}] timer|[<the>] {target:timer} timer cancel"
      ],
      spoken: ["(cancel|stop) the [{target:known-timer}] timer"],
      bags: [
        {
          asking: true,
          must: ["timer|countdown|alarm", "<kill>|do not need|no longer need|never mind|no more|off"],
          may: `
        <want>|the|that|my|this|for|on|a|i|we|any more|any longer|now|all|one|it|<the>|up|of|
        can|timers|[<the>] {target:timer} timer|(for|on) [<the>] {target:timer}|please|go|
        running|is|just
      `
        }
      ],
      lists: {
        kill: `
      kill|cancel|stop|delete|clear|forget|turn off|drop|remove|end|shut off|get rid of|quit|
      scratch|dump|never mind|ditch|lose|switch off|take off|forget about|drop off|call off|
      scrap|kill off|dismiss|abort|nix|knock off|erase|wipe|can|halt|disable|discard|toss|take
      away|take down
    `
      }
    };
  }
});

// src/language/intents/timer-set.ts
var timerSet;
var init_timer_set = __esm({
  "src/language/intents/timer-set.ts"() {
    "use strict";
    timerSet = {
      cost: "changing",
      when: ["always"],
      slots: { minutes: "number", label: "name" },
      example: "set a timer for ten minutes",
      forgiving: true,
      wordings: [
        "[<want>] time (me|us|it|this|that|them) [for] {minutes:duration}",
        `[<want>] <set-timer> [a|the|another|my|an|a new] timer <timer-for> [<the>] {label:thing}
    {minutes:duration}`,
        "[<want>] (set|start|run|do) {minutes:duration} (for|on) [<the>] {label:thing}",
        "[<want>] (set|put) [<the>] {label:thing} (for|at|on) {minutes:duration}",
        "[<want>] (put|set) (me) (down|up) for {minutes:duration} [<timer-for> {label:thing}]",
        "[a|another|new] timer {minutes:duration} {label:thing}",
        "[a|another|new] timer {label:thing} {minutes:duration}",
        `[<want>] <set-timer> [a|the|another|my|an|a new|us a|me a] timer (for|of|at|on|to)
    {minutes:duration} [<timer-for> {label:thing}]`,
        `[<want>] <set-timer> [a|the|another|my|an|a new] timer <timer-for> [<the>] {label:thing}
    (for|of|at|to) {minutes:duration}`,
        `[<want>] <set-timer> [a|another|an|the|my|a new] {minutes:duration} timer [<timer-for>
    {label:thing}]`,
        "[<want>] <set-timer> [a|another|an|the|my|a new] {minutes:duration} {label:thing} timer",
        `[<want>] <set-timer> [a|another|an|the|my|a new] {label:thing} timer (for|of|at|to)
    {minutes:duration}`,
        "[<want>] <set-timer> [a|the] timer {minutes:duration} [<timer-for> {label:thing}]",
        "[<want>] <set-timer> [a|the] {label:thing} timer {minutes:duration}",
        "[a|another|new] timer [for|of|on] {minutes:duration} [<timer-for> {label:thing}]",
        "[a|another|new] timer <timer-for> [<the>] {label:thing} [for|of|at] {minutes:duration}",
        "[a|an|another|the|new] {minutes:duration} timer [<timer-for> {label:thing}]",
        "[a] {minutes:duration} {label:thing} timer",
        "[a|the|new] {label:thing} timer [for|of|at|to|is] {minutes:duration}",
        "[<want>] time [<the>] {label:thing} for {minutes:duration}",
        "[<want>] time {minutes:duration} [<timer-for> {label:thing}]",
        "(give|allow) (me|us|the|<the>) {minutes:duration} [<timer-for> {label:thing}]",
        "(give|allow) [<the>] {label:thing} {minutes:duration}",
        `[<want>] (ding|ring|beep|wake|call|buzz|alert|holler at|tell|shout at|nudge|ping|poke|yell
    at|warn|chime|sound|notify|give me a shout|give me a holler|sing out|let me know|call out|
    call me|shout|yell|speak up) [me|us|a bell|the bell|an alarm] (in|after) {minutes:duration}
    [<timer-for> {label:thing}]`,
        `[<want>] (count|count down|countdown|start a countdown of|start counting|do a countdown of|
    start a countdown for|begin a countdown of|run a countdown of) [down|off|me down] [for|
    from] {minutes:duration} [<timer-for> {label:thing}]`,
        "[<want>] (set|put) [an|the] alarm (for|in) {minutes:duration} [<timer-for> {label:thing}]",
        "{minutes:duration} (for|on) {label:thing}",
        "{minutes:duration} on the (clock|timer) [<timer-for> {label:thing}]",
        `[<want>] (give|set|put|get|start|throw|i need|need) [me|us] {minutes:duration} (on|in) (a|
    the|my|another) (timer|clock|countdown) [<timer-for> {label:thing}]`,
        `[<want>] (put|set) {minutes:duration} on [<the>] [{label:thing}|a timer|the timer|the clock|
    a clock|timer|clock] [timer] [<timer-for> {label:thing}]`,
        "{label:thing} {minutes:duration} timer",
        "[<want>] (set|start|put) {minutes:duration} [<timer-for> {label:thing}]",
        "[<want>] (start|begin) (timing|a timer) [for] {minutes:duration} [<timer-for> {label:thing}]",
        "[<want>] (keep|keep an eye on the) time for {minutes:duration} [<timer-for> {label:thing}]",
        "[<want>] keep track of {minutes:duration} [<timer-for> {label:thing}]"
      ],
      spoken: [
        "[set a] timer for {minutes:length}",
        "[set a] {label:thing} timer for {minutes:length}",
        "[set a] timer for the {label:thing} for {minutes:length}"
      ],
      bags: [
        {
          asking: true,
          must: [
            "{minutes:duration}",
            "timer|clock|alarm|countdown|count down|time|count|ring|beep|ding|buzz|wake me"
          ],
          may: `
        <want>|set|start|put|give|get|make|run|begin|need|want|like|for|on|in|a|an|the|me|us|i|
        we|to|at|up|of|another|new|kitchen|egg {label=egg}|have|going|when|it is up|that is|
        started|can|could|(for|called|named|labeled) [<the>] {label:thing}|go|off|after|from
        now|count|down|that lasts|add|is|just|do|create|time|throw|set it|let us|will|would|
        you|with|could|can|may|should|called
      `
        }
      ],
      lists: {
        "set-timer": `
      set|start|put|make|give me|run|begin|add|get|put on|set up|i need|i want|need|create|i
      would like|set me|start me|give us|can i have|can i get|can we get|can we have|could i
      have|may i have|set us|i could use|let us have|let us set|let us start|start up|set off|
      get me|kick off|have|throw on|set going|start running|start off|fire up|do|i am going to
      need|we need|turn on|put up
    `
      }
    };
  }
});

// src/language/intents/undo.ts
var undo;
var init_undo = __esm({
  "src/language/intents/undo.ts"() {
    "use strict";
    undo = {
      cost: "changing",
      when: ["always"],
      slots: {},
      example: "undo that",
      givesWay: ["correct-time"],
      wordings: [
        `(forget|ignore|disregard|scratch|never mind) (what i|what i have|that thing i|the last thing
    i) [just] (told you|said|told|told to you|reported)`,
        `(that is wrong|that was wrong|no|oops|whoops|sorry|wait|mistake|my mistake|that is not
    right|no wait|no sorry|i was wrong|i misspoke) (take it back|take that back|undo it|undo
    that|undo|scratch that|cancel that|strike that|forget that|go back|delete that|erase that|
    ignore that|back up|forget it)`,
        `(forget|ignore|disregard|never mind) (i said that|i said anything|i said it|what i said|
    what i just said|that one|i said so|i ever said that)`,
        `(take|put|turn|roll|bring|walk) (that|it|this|that last one|the last one|that one|the last
    thing|that last thing|that last bit) back`,
        `[<let>] (take back|undo|reverse|cancel|scratch|strike|erase|delete|forget|disregard|ignore|
    unsay|withdraw|retract|scrub|remove|revoke|roll back|back out|belay|void|rescind|wipe out|
    wipe|nix|backtrack|unrecord|never mind) (that|it|this|the last|the last one|the last thing|
    my last|that last one|that last thing|that last bit|the last thing i said|what i said|what i
    just said|that last command|that one|the last entry|the last command|the last report|my last
    report|that entry|the last bit|that report|that last report|the last step|my last command|
    that last step|what i said last|my last words|that last|the previous one|the last note|that
    note|that last note|the previous command|that from the record|that from the log|that last
    entry|that command)`,
        `(undo|oops|whoops|my mistake|my bad|that was a mistake|that was wrong|that is wrong|that is
    not right|that was not right|that is not what i meant|that is not what i said|i did not mean
    that|i did not mean to say that|i misspoke|i made a mistake|i was mistaken|mistake|wrong|i
    take that back|i take it back|i was wrong|that was an error|it was a mistake|belay that|go
    back one|step back|go back a step|back up one|back up a step|back up|go back|go one back|
    never happened|that did not happen|that never happened|i did not say that|you misheard me|
    you misheard|you heard me wrong|you heard wrong|you got that wrong|you got it wrong|you
    misunderstood|you misunderstood me|i spoke too soon|spoke too soon|false alarm|correction|i
    said that wrong|i said it wrong|strike that from the record|as you were|i did not mean it|i
    did not say done|i pressed that by accident|i hit that by accident|that was by accident|
    that was an accident|by mistake|pressed by mistake|i hit the wrong key|wrong key|wrong
    button|wrong one|wrong batch|that was premature|one step back|that was the wrong one|that
    was the wrong batch|not that|that was not me|not that one|i jumped the gun|jumped the gun|
    that was not for you|not for you|i was not talking to you|i was not talking to you then)
    [please|sorry|oops|undo that|undo it|undo|there|please undo|take that back|scratch that]`
      ],
      spoken: ["undo that"],
      bags: [
        {
          asking: true,
          must: [
            `undo|take back|take (that|it|this) back|scratch|cancel|strike|erase|reverse|delete|back
        up|go back|mistake|wrong|ignore|disregard|forget|(did not|do not) mean|misspoke|forget`,
            "that|it|last|this|what|one|mistake"
          ],
          may: `
        i|you|was|is|a|the|my|thing|one|said|say|just|what|command|report|entry|part|bit|to|
        please|me|no|let us|want to|last|an error|oops|whoops|by|made|that|it|not|right|wait|
        sorry|step|from the log|heard|got|wrong|actually|all|undo|back
      `
        }
      ]
    };
  }
});

// src/language/intents/unhush.ts
var unhush;
var init_unhush = __esm({
  "src/language/intents/unhush.ts"() {
    "use strict";
    unhush = {
      cost: "harmless",
      when: ["always"],
      slots: {},
      example: "you can talk again",
      forgiving: true,
      wordings: [
        `[<want>] (speak|talk|start talking|start speaking|go back to talking|resume talking|be
    heard) (up again|again|to me again|up now|up|now|to me|out loud again|out loud)`,
        "you do not (need|have) to be (quiet|silent) (any more|any longer|now)",
        `you (can|may|could) [go ahead and] (speak|talk|start talking|make noise|pipe up|come back
    on|come back|speak up|talk to me|be loud|start speaking) [again|now|up again|up now|up|once
    more|to me again]`,
        `[<want>] (unmute|un mute|unhush|un hush|unsilence|end the quiet|stop hushing|come off mute|
    voice on|sound on|voice back on|sound back on|turn your voice on|turn the voice on|turn the
    sound on|turn the sound back on|turn your voice back on|turn the voice back on|turn on your
    voice|turn on the sound|stop being quiet|end quiet|no more quiet|no longer quiet|come out of
    hush|start talking again|start speaking again|switch the voice on|switch the voice back on|
    switch the sound on|bring your voice back|bring back the voice|turn the volume back on|turn
    yourself back on|make noise again|use your voice again|use your voice) [yourself|now|again]`,
        `(quiet time is over|hush is over|the quiet is over|quiet is over|end hush|hush off|mute off|
    quiet over|hush over|cancel the hush|cancel hush|enough quiet|that is enough quiet|enough
    silence|mute is off|cancel the mute|cancel mute|lift the hush|end of quiet|end the hush|
    undo the hush|stop the hush|i can hear you again|let me hear you again|let me hear you|i
    want to hear you again|talk to me)`
      ],
      spoken: ["talk to me", "you can talk again"],
      bags: [
        {
          asking: true,
          must: [
            "talk|talking|speak|speaking|voice|sound|unmute|volume|chatting|chat",
            "again|now|back|on|up|can|may|start|unmute|resume"
          ],
          may: `
        you|your|the|to|me|us|it|is|okay|all right|fine|safe|go ahead|and|please|free|turn|
        come|start|i|want|need|hear|let|ready|for you|quiet|over|of|being|stop|time|would|could
      `
        }
      ]
    };
  }
});

// src/language/intents/unknown.ts
var unknown;
var init_unknown = __esm({
  "src/language/intents/unknown.ts"() {
    "use strict";
    unknown = {
      cost: "harmless",
      when: ["always"],
      slots: {}
    };
  }
});

// src/language/intents/venting.ts
var venting;
var init_venting = __esm({
  "src/language/intents/venting.ts"() {
    "use strict";
    venting = {
      cost: "clearing",
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
        "(<we>|i) (have|got|see|have got) [the] (canner|vent) (venting|steaming) [<steady>]"
      ],
      spoken: ["steam is coming out", "it is venting", "a full column of steam"],
      bags: [
        {
          must: ["steam|venting|steaming", "<steaming>|<from-vent>|venting|steaming"],
          may: `
        <said-of-it>|<steady>|<from-vent>|<when>|<lasting>|good|nice|strong|solid|full|plume|
        column|stream|jet|of|canner|vent|out|started|begun|to|can see|i see|i|lots of|plenty of|
        a lot of
      `
        }
      ],
      lists: {
        steaming: `
      (coming|pouring|blowing|rushing|shooting|streaming|venting|flowing|going|escaping|
      puffing|spouting|hissing|billowing|pumping|jetting|rolling|come|exhausting|issuing|
      gushing|spewing) [out|up|off|through]
    `,
        "from-vent": `
      [out|up|through|off] (of|from|out|through) [of] [the|that] (vent|petcock|vent pipe|
      canner|pipe|vent port|port|steam vent|lid|top|valve|vent hole|spout) [pipe]|
      at the (vent|petcock|vent pipe|vent port)
    `
      }
    };
  }
});

// src/language/intents/water-low.ts
var waterLow;
var init_water_low = __esm({
  "src/language/intents/water-low.ts"() {
    "use strict";
    waterLow = {
      cost: "raising",
      report: true,
      when: ["load:in-water"],
      slots: { target: "name", at: "instant" },
      example: "the water is below the lids",
      wordings: [
        `[<the>|{target}] water [level] [<in-pot>] [is|has|has gotten|has got|has gone|is getting|
    looks|seems|getting|gets|has become|has been] [<bit>] [<bit>] (low|down|short|too low|
    getting low|going down|boiled down|boiled away|running low|running out|down a lot|dropped|
    down too far|dropping|lower than it was|lower than it should be|low on me|sinking|boiling
    away|boiling off|boiling down|running down|disappearing|shallow|falling|going) [<in-pot>]
    [<when>]`,
        `[<the>] water [level] [<in-pot>] [is|has|has gone|went|dropped|fell|has dropped|has fallen|
    is down|has boiled|boiled|came|sank|has come|is getting|has sunk|got|has got] [<bit>] [down|
    now|lower] (below|under|beneath|past|down past|down to|than) [<the>|the top of the|the tops
    of the|the level of the] (lids|jars|tops|lid|tops of the jars|jar tops|rims|necks|lid tops|
    jar lids) [<when>]`,
        `(<we>|{target}|<it>|i) (am|is|are|has|have) [<bit>] [<bit>] [getting|running|gone|gotten]
    [<bit>] ((low|short|down|shy|dry) (of|on|in)|out of) water [level] [<in-pot>] [<when>]`,
        "[<bit>] (running|getting) [<bit>] (low|short|dry|down) [of|on] [water] [<in-pot>] [<when>]",
        `<lids> (is|are) [now|all|no longer|not] [starting to be|starting to|beginning to] (showing|
    show|uncovered|exposed|sticking out|poking out|peeking out|above the water|above water|not
    covered|poking up|sticking up|sticking out of the water|poking out of the water|poking
    through|no longer covered|visible above the water|above the waterline) [any more|of the
    water|now] [<when>]`,
        `[<the>|all the] (lids|lid|tops|jar tops|lid tops|tops of the jars) (is|are) [now|all] (out
    of the water|coming out of the water|bare|dry|high and dry|out of water|out) [now] [<when>]`,
        `<lids> (is|are) (no longer|not) (covered|under water|under the water|under) [any more|any
    longer|now|with water] [<when>]`,
        `(i|we|you) (can|could) see (the|all the|some of the|some) (lids|jar tops|tops of the jars|
    tops|lids above the water|lids out of the water|tops of the lids|jars sticking out|jar lids)
    [<when>]`,
        `(some of the|a few of the|a couple of|one of the|two|some|a few|one|the tops of the) (lids|
    jars|lid|jar|jar tops) (is|are) (showing|uncovered|exposed|sticking out|poking out|out of
    the water|above the water|not covered|no longer covered|bare) [<when>]`,
        "there is not enough water [in there] [left] to cover [<the>] (jars|lids|tops) [any more|now]",
        `[<the>] (tops of [the] (jars|lids)|jar tops|lids|jars) (is|are) [now|all|starting to be]
    (showing|sticking up|poking up|standing) (above|out of|over) the (water|waterline) [now]
    [<when>]`,
        "the lids have come (out of the water|uncovered|up out of the water) [<when>]",
        `[<the>] jars (are|is) (not|no longer) [all|quite|fully] (covered|under|under water|under the
    water|covered with water|covered by water) [any more|any longer|now] [<when>]`,
        `[<the>] water [level] was [<bit>] [<bit>] (low|down|short) [(so|and|but) i|i] [have|just|
    have just] (topped (it|it back|the canner|the pot|up)|added|filled|poured) [in|it|up|some|
    more|a little|boiling|hot|water|off|back|again] [boiling|hot|water|up|more] [water] [<when>]`,
        `i [have|just|have just] (topped it up|topped it off|topped up|topped off|added some|added
    more|added boiling water|topped it up with boiling water) [because|since|as] [<the>] water
    [level] was [<bit>] [<bit>] (low|down|short) [<when>]`,
        `(there is not|not|there is hardly) enough water [<in-pot>] [over <the> (lids|jars)|left]
    [any more] [<when>]`,
        "[the] water does not cover <the> (lids|jars) [any more] [<when>]",
        "low [on] water [<in-pot>] [<when>]|low (in|on) [<the>] water [<when>]",
        "[<the>] water (is|has) (not|no longer) (covering|over) <the> (lids|jars) [any more] [<when>]",
        `[<the>] {target} (is|has) [almost|nearly|about] (boiled dry|boiling dry|out of water|dry|
    boiled down|going dry|run dry|gone dry) [<when>]`,
        "the water needs topping up [<when>]",
        "[<the>] {target} (needs|could use|wants) [more|some|some more|a bit more] water [<when>]"
      ],
      spoken: ["the water is low", "the water is below the lids"],
      bags: [
        {
          must: ["water|the water level|water level", "<lowish>"],
          may: `
        <said-of-it>|<bit>|<in-pot>|<when>|level|<the> (lids|jars|tops|jar tops|lid tops|rims)|
        in|add|more|need to|needs|i|of|top it up|top up|some|to|getting|running|gone|than it
        should be|{target}
      `
        }
      ],
      lists: {
        lowish: `
      (low|lower|down|below|dropping|dropped|short|under|sinking|running out|boiled down|boiled
      away|boiling away|shallow|going down|gone down|fallen|falling|fell|running low|getting
      low|too low|boiled off|shy|run down)
    `,
        "in-pot": `
      (in|inside|down in) [<the>] (canner|pot|water bath|bath|kettle|pressure canner)|
      (in|inside|down in) {target}|in there|in here
    `,
        bit: `
      (really|a bit|a little|very|too|awfully|pretty|now|quite|kind of|rather|getting|sort of|a
      tad|a touch|somewhat|way|looking|fairly|starting to get|starting to run|dangerously|
      getting a bit|getting a little|getting pretty|starting to look|on the)
    `
      }
    };
  }
});

// src/language/intents/weight-rocking.ts
var weightRocking;
var init_weight_rocking = __esm({
  "src/language/intents/weight-rocking.ts"() {
    "use strict";
    weightRocking = {
      cost: "clearing",
      report: true,
      when: ["load:in-steam"],
      slots: { target: "name", at: "instant" },
      example: "the weight is rocking",
      wordings: [
        `[<the>] <weight> [is|are|has|have|has been] [<still>] [started|begun|began|begins|starts]
    [to] [now] [<still>] <rocking> [<steady>] [<steady>] [<when>|<lasting>]`,
        `[<the>] <weight> [has|have|just|is|has just] (started|started up|got going|took off|came
    alive|come alive|going|moving|got moving|woke up|kicked in|come on) [<steady>] [<steady>]
    [<when>]`,
        `<it> (is|has|has started|started|has begun|just started|began|starts) [<still>] [to]
    <rocking> [<steady>] [<steady>] [<when>|<lasting>]`,
        "<rocking> [<steady>] [<steady>]",
        `(<we>|i|<got>) [have|got|have got|hear|see|can hear] [a|the|<the>] [<full>] [weight]
    (rocking|jiggling|weight rocking|jiggle|rock|weight jiggling|rattle|rocking weight|jiggler
    going|weight going|weight dancing|weight rattling) [<steady>] [<when>]`,
        "(there goes|here goes|there is) the <weight> [<rocking>] [<steady>]",
        "[<the>] <weight> is at a [<full>] (rock|jiggle|rattle|wobble) [<steady>]"
      ],
      spoken: ["the weight is (rocking|jiggling)"],
      bags: [
        {
          must: ["<weight>", "<rocking>"],
          may: "<said-of-it>|<steady>|<when>|<lasting>|i|can|hear|see|started|begun|began|to|a|going"
        }
      ]
    };
  }
});

// src/language/intents/what-next.ts
var whatNext;
var init_what_next = __esm({
  "src/language/intents/what-next.ts"() {
    "use strict";
    whatNext = {
      cost: "harmless",
      when: ["always"],
      slots: {},
      parts: ["target"],
      example: "what's next",
      forgiving: true,
      givesWay: ["done"],
      wordings: [
        "what is my next (move|task|job|thing|chore|step|duty|thing to do)",
        "what have (i|we) (to do|got to do) (next|after this|after that|then)",
        "[and] then what (do|should|will|would|can) (i|we) [do|be doing]",
        `what (will|would|is going to|should|does) (come|be|happen|follow) (next|after that|after
    this|then|afterwards)`,
        `what (stage|step|job|task) (follows|comes after this|comes after that|do we do next|do i do
    next|are we on next)`,
        `(what do|what will|what should) (i|we) (start|work on|tackle|do|move to|go to|get to|be on|
    begin) (next|after this|after that|then)`,
        `what (do|will|should|are) (we|i) [do|doing|be doing] (after|once|when) [<the>] ({target}|
    jars) [are done|is done|is finished|are finished|are out|come out]`,
        `what (comes|happens|is|goes) (after|following) [<the>] ({target}|jars|process|boil|step|
    stage|processing|venting|cooling|<doing>) [are done|is done|is finished|are finished|are
    out|come out]`,
        `[and|so] what (is|comes|happens|do i do|do we do|goes|follows|will i do|am i doing|are we
    doing|should i do|is there|is coming|will happen|else is coming|is due|shall we do|is the
    plan|is to come|will we do|is up|is on) (after that|after this|next|then|afterward|
    afterwards|after|following that|following this|later|coming|after this one|after that one|
    coming up|coming next|up next|due next|next up|the next step|next on the list|following|on
    deck|after the next one|once that is done|once this is done|when this is done|when that is
    done|after i finish|when i finish this|after these|after it|from here|from there|from now)`,
        `what is (next|the next step|the next thing|the next stage|the next job|up next|coming up|
    coming|coming next|coming after this|the step after this|the step after|the following step|
    ahead|on deck|my next job|my next step|my next task|due next|our next step|the next task|
    next up|next on the list|next after this|next after that|the next one|the next thing to do|
    after the process|to follow|later)`,
        "what (comes|happens) (next|after that|after this|then|now|after)",
        "(and|so) (then|then what|next|after that|what then|after this|what next|what after that)",
        `(what then|then what|what next|what after that|what after this|after that what|and then|
    what follows|what comes next|coming up|after that|after this|what follows that|what follows
    this|what to do next|what is after)`,
        `what (will|should|do|would|must|can) (i|we) (do|be doing|need to do|have to do|start|get to|
    get ready|have) (next|after this|after that|then|afterwards|when this is done|once this is
    done|when that is done|later)`,
        `(tell|give|show|read) me (what is next|the next step|what comes next|what comes after|what
    comes after this|what happens next|what is coming|what is coming up|what to do next|what i
    do next|the next thing|what is after this|what is after that|what we do next|what follows|
    my next job|the step after this)`,
        `(which|what) (step|stage|job|task|batch|load|one) (is|comes|goes) (next|after this|after
    that|up next)`,
        `(what|which) is the next (batch|load|one|task|step) [after this|after that|in line|in the
    queue]`,
        "(what is|read me|tell me) the (step|stage|one|thing) after (this|that|this one|that one)",
        `(next what|look ahead|what is in store|where do we go from here|where do i go from here|
    what do we have coming up|what have we got coming|what have we got next|what do we have
    next|what have we got coming up|what have i got next|what do i have next|preview the next
    step)`
      ],
      spoken: ["what is next", "what comes next"],
      bags: [
        {
          asking: true,
          must: [
            "what|which|tell me",
            `next|after this|after that|then|coming|coming up|follows|after this one|after that one|
        afterward|afterwards|following|to come`
          ],
          may: `
        <asked-of-it>|step|stage|job|task|thing|happens|happen|comes|come|up|one|the|on the
        list|is|got|start|on|else|plan|for|to do|to|do|doing|in line|on deck|next|ahead
      `
        }
      ]
    };
  }
});

// src/language/intents/what-now.ts
var whatNow;
var init_what_now = __esm({
  "src/language/intents/what-now.ts"() {
    "use strict";
    whatNow = {
      cost: "harmless",
      when: ["always"],
      slots: {},
      example: "what now",
      forgiving: true,
      givesWay: ["done", "resume"],
      wordings: [
        `what is it (you want me to do|i am (to do|meant to do|supposed to do)|i (should|need to) do)
    [now|next then]`,
        `i [have] lost (my place|track) [what (am i (meant|supposed|to) [to] (be doing|do|be at)|do i
    do|should i be doing|was i doing)] [now]`,
        `what is (to do|to be done|there to do|for me to do|there for me to do|left to do|left for me
    to do) [now|right now|here]`,
        `(is there|have you got) (anything|something) (for me|i can do|i should do|to do|i can be
    doing) [to do] [now|right now]`,
        `what (are|should|do) my hands (supposed to be doing|supposed to do|be doing|doing|do|need to
    do|to be doing|be on)`,
        `what (can|should|do) i (be getting on with|get on with|get started on|be getting ready|do in
    the meantime|do meanwhile|do while i wait)`,
        `[and|so] what (now|do i do|do i do now|should i do|should i do now|should i be doing|am i
    doing|am i doing now|do we do|do we do now|should we do|should we be doing|am i supposed to
    do|am i supposed to be doing|am i to do|needs doing|needs doing now|needs to be done|needs
    me|needs me now|needs my hands|are my hands for|is my job|is my job now|is needed|is needed
    now|do you need|do you need me to do|do you want me to do|are we doing|are we doing now|are
    we on|is it now|must i do|shall i do|would you like me to do|can i do|can i do now|can i be
    doing|is to be done|should i be working on|needs attention|needs my attention|are we
    supposed to do|do i need to do|do i need to be doing|have i got to do|have i to do|is for me
    to do|is on my plate|am i meant to do|am i meant to be doing|is the current step|is the
    current stage|step are we on|step am i on|stage are we on|stage am i on|step is this|do i
    need to do now|do you want now|do i have to do|is there to do|are you waiting on|are you
    waiting for|do you need from me|is waiting on me|is waiting for me|do my hands do|wants
    doing|is up|is up now|to do|task am i on|should i be on) [now|right now|at the moment|here|
    just now|at this point|this minute|today|at present]`,
        `where (was i|were we|am i|did we leave off|did i leave off|did we stop) [now|at|in this|in
    the recipe|in all this|then]`,
        "where are we [now|right now|in this|in the recipe|in all this]",
        "what (step|stage) (are we|am i) (on|at|in) [now]",
        "what is (the|this|my) (current|present) (step|stage|job|task)",
        "(what is|which is) (the|my) (job|step|task|current step) [now|right now]",
        `(tell|give|show|remind) me what (to do|i should do|i should be doing|i do|needs doing|i need
    to do|we are doing|i am doing|i am supposed to do|i am supposed to be doing|now|i have to
    do|my job is) [now|right now]`,
        `[give|tell|read] me (my job|the current step|the step i am on|something to do|my orders|my
    instructions|my task)`,
        "(what am i|what are we) (on|at|up to) [now]",
        `(remind me where we are|remind me where i am|current step|my job|what should my hands be
    doing|anything for me to do|is there anything for me to do|anything for me|anything i should
    be doing|is there anything i should do|is there anything i should be doing|do you need me|
    am i needed|anything i need to do|is there anything i need to do|anything to do|do you need
    anything from me|do i need to do anything|do i need to do anything now|anything need doing|
    tell me the current step|anything for my hands)`,
        "what (exactly) (should|do) i do now|now what|what is going on with my hands"
      ],
      spoken: ["what now", "what do i do now"],
      bags: [
        {
          asking: true,
          must: [
            "what|anything|something|which|where|tell me what",
            `(i|we|me|my|us|hands) [be|should|need|have|supposed]|step|stage|needs doing|needs my|
        needs me|current`
          ],
          may: `
        <asked-of-it>|now|right now|do|doing|to|should|supposed|be|need|needs|job|task|step|
        stage|on|at|for|is|the|here|current|hands|working|attention|doing|at the moment|moment|
        there|next step|must|plate|waiting|present|this minute|minute|getting|with|busy|of|in|
        thing|something
      `
        }
      ]
    };
  }
});

// src/language/intents/yes.ts
var yes;
var init_yes = __esm({
  "src/language/intents/yes.ts"() {
    "use strict";
    yes = {
      cost: "clearing",
      when: ["asked"],
      slots: {},
      example: "yes it did",
      unasked: true,
      answer: true,
      givesWay: ["begin", "resume"],
      wordings: [
        "<yes-word> [<yes-word>] [<yes-tail>] [please|sir|maam|indeed]",
        "(that is right|that is correct|right|i am sure|it did|it is|it was|it has) <yes-word>",
        "i (surely|certainly|sure|most certainly|do indeed) [do|did|am|have|will]",
        `(do it|go ahead|please do|go for it|do that|do so|make it so|by all means|of course|that is
    right|that is correct|that is the one|that is it exactly|that is true|you bet|you got it|
    you bet you|i am sure|i am certain|quite sure|i am positive|certainly|go right ahead|yes go
    ahead|all good yes|it did|it was|it is|they are|they were|they did|i did|we did|i have|we
    have|i am|we are|it has|they have|it held|it did hold|it held fine|they do|it does|i do|we
    do|you can|you may|confirmed|confirm|i confirm|affirmative|sounds right|that sounds right|
    that will do it|exactly right|exactly|precisely|definitely|absolutely|most definitely|sure
    is|sure did|sure was|sure are|why not|fine do it|okay do it|all right do it|go on and do it|
    yes i am sure|it kept boiling|it stayed on the boil|it never stopped|it boiled throughout|
    it boiled the whole time|it boiled all the way|without a break|the whole time|all the way
    through|throughout|i would say so|i think so|i believe so|i suppose so|i guess so|looks that
    way|it looks that way|so it is|so it did|i would|i will|we will|i want to|i do want to|of
    course it did|of course it is|of course i am|one hundred percent|hundred percent|no doubt|
    without a doubt|without question|for sure|that it is|that it did|that it was|that i am|that
    they are|that they did|you heard me|you heard right|you heard me right|i mean it|just do it|
    please go ahead|go ahead and do it|go ahead please) [please|sure|now|then|thanks]`
      ],
      spoken: ["yes", "yeah", "yes it (did|is)", "yes they are", "that is right"],
      lists: {
        "yes-word": `
      yes|yeah|yep|yup|yea|yah|sure|aye|uh huh|mm hmm|mhm|affirmative|certainly|absolutely|
      definitely|of course|correct|indeed|ya|yessir|yes siree|yes indeed|yes mam|you betcha|yep
      yep|true|sure thing|you bet|yes yes|roger yes|surely|positive|sure do|by all means|
      totally|exactly|oui|yup yup|confirmed
    `,
        "yes-tail": `
      that is right yes|yes|right|do it|go ahead|please|please do|that is right|that is correct|
      do that|it is|it did|it was|they are|they did|they have|i am|i am sure|we did|i did|i do|
      go for it|of course|i have|it has|we have|we are|it held|all of them|throughout|it does|
      they do|they were|i would|i want to|let us|let us do it|let us do that|do so|that is fine|
      that is good|that will do|i will|we do|ma am|thanks|thank you|go on|that is it|that one|
      absolutely|definitely|enough|do go ahead|you can|you may|to that|the whole time|it held
      throughout|all the way|all the time|toss it|the lids are covered|that is what i said|that
      is what i meant|that is the one|i mean it|we will|i want that|it stayed boiling|it kept
      boiling|it boiled throughout|a full boil throughout|full boil throughout|they all are|
      they all did|they still are|it still is|that is so
    `
      }
    };
  }
});

// src/language/intents/all.ts
function meanings() {
  return Object.entries(MEANINGS);
}
var MEANINGS;
var init_all = __esm({
  "src/language/intents/all.ts"() {
    "use strict";
    init_abandon();
    init_acknowledge();
    init_altitude();
    init_answer();
    init_begin();
    init_boil_lost();
    init_boiling();
    init_correct_time();
    init_disposition();
    init_done();
    init_finish_time();
    init_focus();
    init_germination();
    init_help();
    init_hold();
    init_how_much();
    init_hush();
    init_jar_broken();
    init_jars_filled();
    init_loaded();
    init_no();
    init_note();
    init_opened();
    init_overview();
    init_place();
    init_plan();
    init_prefer();
    init_pressure();
    init_pressure_lost();
    init_remind();
    init_repeat();
    init_resume();
    init_seal_failed();
    init_sealed();
    init_seed_saved();
    init_set_aside();
    init_taste();
    init_temperature();
    init_time_left();
    init_timer_add();
    init_timer_cancel();
    init_timer_set();
    init_undo();
    init_unhush();
    init_unknown();
    init_venting();
    init_water_low();
    init_weight_rocking();
    init_what_next();
    init_what_now();
    init_yes();
    MEANINGS = {
      "what-now": whatNow,
      "what-next": whatNext,
      "time-left": timeLeft,
      "finish-time": finishTime,
      overview,
      "how-much": howMuch,
      repeat,
      help,
      undo,
      yes,
      no,
      acknowledge,
      boiling,
      "boil-lost": boilLost,
      pressure,
      "pressure-lost": pressureLost,
      "weight-rocking": weightRocking,
      venting,
      loaded,
      "water-low": waterLow,
      temperature,
      "jars-filled": jarsFilled,
      sealed,
      "seal-failed": sealFailed,
      "jar-broken": jarBroken,
      "set-aside": setAside,
      opened,
      taste,
      done,
      altitude,
      plan,
      begin,
      hold,
      resume,
      abandon,
      focus,
      disposition,
      "timer-set": timerSet,
      "timer-add": timerAdd,
      "timer-cancel": timerCancel,
      remind,
      note,
      "correct-time": correctTime,
      hush,
      unhush,
      place,
      prefer,
      answer: answer2,
      "seed-saved": seedSaved,
      germination,
      unknown
    };
  }
});

// src/language/guards.ts
function beginsAsking(words) {
  const first2 = words.find((word) => !BEFORE_ASKING.has(word)) ?? "";
  return ASKING.has(first2);
}
function isNoReport(said3, intent) {
  const { report, unasked, doubting } = MEANINGS[intent];
  if (said3.asked && unasked) return !isRequest(said3);
  if (!report) return false;
  if (said3.asked) return true;
  if (said3.words.some(({ word }) => DOUBT.has(word) && !doubting?.includes(word))) return true;
  const text = said3.words.map(({ word }) => word).join(" ");
  if (HEARSAY.test(text)) return true;
  if (intent !== "temperature" && /\bin here\b/.test(text)) return true;
  const first2 = said3.words.findIndex(({ word }) => !BEFORE_ASKING.has(word));
  const [one, other] = said3.words.slice(Math.max(first2, 0));
  if (one !== void 0 && /^(after|before|till)$/.test(one.word)) return true;
  if (one === void 0 || !ASKING.has(one.word)) return false;
  return !MAY_STATE.has(one.word) || SUBJECTS.has(other?.word ?? "");
}
function isRequest(said3) {
  return /^(can|could|would|will|shall|may|how|why|please)$/.test(said3.words[0]?.word ?? "");
}
var ASKING, DOUBT, SUBJECTS, MAY_STATE, BEFORE_ASKING, HEARSAY, TELLING;
var init_guards = __esm({
  "src/language/guards.ts"() {
    "use strict";
    init_word_set();
    init_all();
    ASKING = wordSet(
      "is are was were do does did has have can could will would should shall might may am why who",
      "whose"
    );
    DOUBT = wordSet(
      "if whether unless until wish hope hoping hopefully might should would could almost nearly",
      "maybe perhaps probably suppose supposing imagine pretend when once tomorrow yesterday used",
      "soon wonder wondering waiting guess supposed"
    );
    SUBJECTS = wordSet(
      "it that this they these those we you i the my our he she all any everything both each every",
      "a an your his her their there jars lids jar lid some one number"
    );
    MAY_STATE = wordSet("have has were will");
    BEFORE_ASKING = wordSet(
      "so and okay well now hey um uh er oh but then right hmm wait hi hello"
    );
    HEARSAY = new RegExp(
      "\\b(he|she|they|somebody|someone|everybody|people|book|recipe|guide|mom|dad|grandma) (say|says|said|told|tell|tells|thinks|thought|swears|claims|reckons|figures)\\b"
    );
    TELLING = /* @__PURE__ */ new Set([
      ...DOUBT,
      ...ASKING,
      ...wordSet(
        "not no never none nothing without but except instead than because so that who he she his her",
        "they their him them mom dad mother father grandma yesterday last ago week month year years",
        "weeks day days night ever always usually sometimes used was were had did said told thought",
        "think know like love want need hate before after while boil boils boiling boiled seal seals",
        "sealed pressure done finished"
      )
    ]);
  }
});

// src/language/grammar/passing-over.ts
function skipsFrom(words, at, table) {
  const found2 = table.get(words[at] ?? "") ?? [];
  return found2.filter((phrase) => phrase.every((word, step) => words[at + step] === word)).map((phrase) => at + phrase.length);
}
function skipsOf(words, book, strangers) {
  const skips = [];
  for (let at = words.length; at >= 0; at -= 1) {
    const reached = [{ at, cost: 0 }];
    for (const next of skipsFrom(words, at, book.fillers)) {
      for (const place2 of skips[next] ?? []) {
        if (reached.some((known2) => known2.at === place2.at)) continue;
        reached.push({ at: place2.at, cost: place2.cost + FILLER_COST });
      }
    }
    if (strangers && at < words.length && !TELLING.has(words[at] ?? "")) {
      reached.push({ at: at + 1, cost: STRANGER_COST });
    }
    skips[at] = reached;
  }
  return skips;
}
function startsFrom(from, run, book, asides) {
  const starts = /* @__PURE__ */ new Map([[from, { cost: 0, hedged: false }]]);
  for (let at = from; at < run.words.length; at += 1) {
    const here = starts.get(at);
    if (!here) continue;
    const reach = (next, more, hedged = here.hedged) => {
      const cost = here.cost + more;
      if (cost < (starts.get(next)?.cost ?? Number.POSITIVE_INFINITY)) {
        starts.set(next, { cost, hedged });
      }
    };
    for (const place2 of run.skips[at] ?? []) reach(place2.at, place2.cost);
    for (const next of skipsFrom(run.words, at, book.openers)) reach(next, FILLER_COST);
    for (const next of skipsFrom(run.words, at, book.hedges)) reach(next, HEDGE_COST, true);
    if (asides) {
      for (const { next, cost } of book.aside.match(run, at)) reach(next, cost + ASIDE_COST);
    }
  }
  return starts;
}
function tailsOf(run, book, asides) {
  const end = run.words.length;
  const tails = [];
  tails[end] = 0;
  for (let at = end - 1; at >= 0; at -= 1) {
    let least;
    const reach = (next, more) => {
      const rest = tails[next];
      if (rest !== void 0 && (least === void 0 || rest + more < least)) least = rest + more;
    };
    for (const place2 of run.skips[at] ?? []) if (place2.at > at) reach(place2.at, place2.cost);
    if (asides) {
      for (const { next, cost } of book.aside.match(run, at)) {
        if (next > at) reach(next, cost + ASIDE_COST);
      }
    }
    tails[at] = least;
  }
  return tails;
}
var FILLER_COST, ASIDE_COST, HEDGE_COST, STRANGER_COST, MOST_STRANGE;
var init_passing_over = __esm({
  "src/language/grammar/passing-over.ts"() {
    "use strict";
    init_guards();
    FILLER_COST = 0.05;
    ASIDE_COST = 0.1;
    HEDGE_COST = 2;
    STRANGER_COST = 3;
    MOST_STRANGE = 2 * STRANGER_COST;
  }
});

// src/language/fillers.ts
function phrasesIn(text) {
  return text.split("|").map((phrase) => phrase.trim().replace(/\s+/g, " "));
}
var FILLERS, OPENERS, HEDGES, ASIDES;
var init_fillers = __esm({
  "src/language/fillers.ts"() {
    "use strict";
    FILLERS = phrasesIn(`
  um|uh|er|erm|ah|aw|whew|phew|ooh|yay|ha|welp|heck|dang|dang it|rats|whoa|hallelujah|at long
  last|i will be darned|well i will be|oh|hmm|mm|well|so|please|kindly|just|now|then|actually|
  really|finally|right|okay|hey|all right|here|there|nicely|already|anyway|honestly|basically|
  look|listen|you know|i mean|for me|for us|over here|over there|at last|at this point|as of
  now|right now|by now|at the moment|by the way|good news|bad news|guess what|if you would|if
  you could|if you please|if you will|if you do not mind|if you can|when you can|thank you|
  thanks|thank goodness|thank heavens|dear|my love|then love|please love|thanks love|now love|
  mum|bother|oh bother|right then|righto|now then|lord|good lord|mercy|mercy me|my goodness|
  goodness me|bless me|dear me|oh dear me|i declare|i tell a lie|gone and|went and|gone ahead
  and|went ahead and|surely|do you think|would you believe it|would you believe|believe it or
  not|sure enough|lo and behold|friend|hon|honey|sweetie|darling|buddy|bud|pal|mate|partner|
  dude|kiddo|my dear|sir|maam|folks|everyone|brine bell|quickly|real quick|will you|would you|i
  am afraid|i see|i can see|darn it|darn|drat|shoot|oh no|oh dear|oh good|oh boy|boy|man|gosh|
  goodness|great|good|wow|hooray|sorry|and|also|today|again|officially|as well|looks like|it
  looks like|it looks as though|it looks as if|seems like|it seems like|it seems|i am pleased to
  say|happy to say|happy to report|for the record|let me tell you|i have to say|heads up|
  attention|update|quick update|news flash|fyi
`);
    OPENERS = phrasesIn(`
  can you|could you|would you|will you|can you please|could you please|would you please|would
  you mind|do you mind|i would like you to|i want you to|i need you to|i would appreciate it if
  you would|go ahead and|do me a favor and|be so kind as to|be a dear and|oops|whoops|yes|yeah|
  yep|yup|no|nope|nah|but|see|okay so|hello|hi|you can|you could|we could|say|it is time to|
  sure|first|next|correction|wait|hold on|hang on|we need to|i need to|maybe you could|perhaps
  you could|how about you|why do not you|you had better|you may|you should
`);
    HEDGES = phrasesIn(`
  i think|i think that|i believe|i guess|i would say|i reckon|i am pretty sure|i am fairly sure|
  i am quite sure|i am certain|fairly sure|i am guessing|i figure|i suspect|pretty sure|i am
  sure|as far as i can tell|as far as i can see|from what i can see|apparently|i do believe|
  looks to me like
`);
    ASIDES = `
    (there|here) (we|it|she|he|they|you) (go|goes|are|is)|
    (there|here) it comes|
    that is (it|that|all|good|great|better|more like it|right|a relief|good news|all there is)|
    that is (for sure|a fact|my girl|the stuff|the way|the ticket|how it goes|all for now)|
    (oh|uh|ah) (my|boy|wow|yes|no|oh|goodness|gosh|dear|good|great|shoot|well|man|lord|
    heavens)|
    (my|oh my) (goodness|gosh|word|oh my|stars|lord|heavens)|
    (good|great|very good|nice|lovely|perfect|wonderful|excellent|fantastic|awesome|super)|
    (about|just) time|(it is|it was) about time [too]|and about time [too]|at (long last|last|
    least)|
    [that|it|this] (took|has taken) (forever|long enough|a while|ages|some time|its time)|
    [that|it] took it is time|sorry about (that|it|this|the noise|the delay)|(i am|so|very)
    sorry|
    (thank|thanks) (you|to you|so much|a lot|a bunch|a million|again|very much)|
    thank (goodness|heavens|god|the lord|you so much|you very much)|
    (by the way|you know|you see|mind you|i tell you|i swear|i promise|believe me)|
    (look|would you look) at that|
    (what do you know|would not you know it|how about that|well i never|well well)|
    (here is|this is|that is) (the|an|a) (update|news|latest|report)|
    (just|i am just|just so you know|so you know) (letting you know|saying|telling you)|
    (for your|just for your) information|
    (ladies and gentlemen|everybody|everyone|folks|all)|
    (hey|hi|hello|okay|listen|excuse me|pardon me) [there|brine bell|you]|
    i am (back|here|at the stove|listening|so happy|so glad|so pleased|happy|glad|sorry)|
    (we are|i am) (good|all good|fine|okay|in business|cooking with gas|ready|all set)|
    (we are|i am) (getting|moving|rolling) (there|along|now)|
    (i have got|i have|got) (it|this|that) [now]|(let me|let us) see [here|now]|
    (all right|okay|right) (then|now|so|here we go|everyone)|
    (here|off) we go|
    [that is] (the end|one down|one more down|another one down)|
    (what a|such a) (day|relief|mess|racket|job|pain|shame|pity|bother|nuisance)|
    (too bad|darn it|dang it|darn|dang|shoot|drat|rats|bummer|phew|whew|finally|hallelujah)|
    (no problem|no worries|no trouble|not to worry|never fear)|
    (my|the) (hands are|hands are all) (full|wet|sticky|messy|busy|dirty|covered)|
    (would|will|could|can|if) you [please|would|will|could|do not mind]|
    (please|pretty please|when you get a chance|when you have a moment|if it is no trouble)|
    for (now|me|us|sure|real|once|today|good measure|you|the moment|the record|the log)|
    (i|we) (do not|did not) (need|want) (it|that|them) (any more|any longer|now)|
    (i|we) can not believe it|
    (and|so) (that is that|there you have it|there you are|there it is|there you go)|
    (in|from) (the|my|our) kitchen|
    as (expected|usual|planned|you can see|promised|you asked|i said|always)|
    (nice|easy) and (easy|steady|slow)|(i have|i) changed my mind|
    i forgot (to say|to tell you|to mention it|to mention|about that)|
    (one more|last|another) thing|(next|first|last|second) thing|
    everything is (ready|fine|good|okay|under control)|
    (it is|it is all|all) under control|(it|this) is (hot|loud|noisy) in here|(today is|it is)
    the day|
    (i am|we are) (tired|beat|worn out|done in|bushed) [now|today]|
    (looking|looks|sounds|sounding|smells|smelling) (good|great|fine|nice|lovely|right|okay)|
    (it|that|they) (looks|look|sounds|sound|smells|smell) (good|great|fine|nice|lovely|
    wonderful)
`;
  }
});

// src/language/intents/shared-lists.ts
var SHARED_LISTS;
var init_shared_lists = __esm({
  "src/language/intents/shared-lists.ts"() {
    "use strict";
    SHARED_LISTS = {
      it: `
    that part|that bit|that step|this step|this part|that job|that task|the last step|the step|
    that stage|this stage|this bit|the last bit|the last part|that whole part|it|that|this|
    they|these|those|she|he|that one|this one|mine
  `,
      the: "the|my|our|those|these|that|this|your|all the|all my|all our",
      we: "we|i",
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
    lively|fast|mighty|furious|heavy|gentle
  `,
      hard: `
    hard|away|well|good|fine|steadily|strongly|properly|vigorously|nicely|great|fully|full on|
    full tilt|like mad|like crazy|at a full roll|merrily|happily
  `,
      still: `
    still|now|already|finally|again|just|back|really|certainly|definitely|at last|once more|all
  `,
      lids: `
    <the> (lids|jars|tops|lid|jar tops)|lids|jars|they|everything|the jars and lids|all of them
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
    <the> gauge|gauge|<the> needle|<the> dial|<the> dial gauge|<the> pressure gauge|needle|
    dial|<the> pressure|pressure|the canner gauge
  `,
      "at-value": `
    [<is>] [<still>] [<still>] <shows> [<still>] [<at>] [<approx>]|
    [<is>] [<still>] <climbed> [<still>] [<way>] <to> [<approx>]|
    <is> [<still>] [<still>] [<way>] [<at>] [<approx>]|
    [<still>] [<way>] <at> [<approx>]
  `,
      is: "is|are|am|has|have|has been|have been",
      shows: `
    (reads|says|shows|reading|saying|showing|read|holding|holds|sitting|sits|standing|stands|
    registers|registering|measuring|measures|indicates|indicating|hit|hits|hitting|reached|
    reaching|reaches|touching|touched|making|made|running|runs|steady|stuck|pointing|points|
    settled|resting|rests|steadied|parked|hovering|staying|stays|clocking|topping out|leveled
    off|levelled off|crossed|passed|just hit|just reached|steadied out|holding steady|holding
    even|pegged|hanging|hangs|just made|seeing|getting|giving|gives|gave)
  `,
      climbed: `
    (come|came|comes|coming|climbed|climbing|climbs|got|gotten|gets|gone|went|risen|rose|crept|
    creeping|made it|worked its way|crawled|shot|built|brought it|worked up|settled in|settled
    down|gotten itself)
  `,
      at: "at|on|to|up to|up at|back at|back to|back up to|in at|it is|it is at|of",
      to: "to|at|up to|back to|back up to|all the way to|up at|on",
      way: "up|back|back up|right|all the way|all the way up|down",
      approx: `
    about|around|exactly|just over|just under|roughly|a steady|a solid|a good|a hair over|a hair
    under|a little over|a little under|a bit over|a touch over|near|a full|close to
  `,
      weight: `
    [little|old] (weight|weights|jiggler|regulator|rocker|pressure regulator|weighted gauge|
    counterweight|petcock|rocker weight|pressure weight|wobbler|jiggle top|jiggler weight|
    rocking weight)
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
    {size}|{size} jars|jars|jar|{size} jar|jars of {size}|of them|regular jars|(jars|jar) {size}
  `,
      "quiet-reason": `
    (the baby is (sleeping|asleep|crying)|[the] phone is ringing|there is somebody at the door|
    somebody at the door|i am on the (phone|telephone)|somebody is (here|at the door)|someone is
    (here|at the door)|i have company|i have a headache)
  `,
      want: `
    i want you to|i need you to|i would like you to|i want|i would like|i need|let us|go ahead
    and|we need|you can|i would like to|i want to|let me|you should|we want|i need to|do|you had
    better|we should|i will|time to
  `,
      "timer-for": `
    for|on|to|named|called|labeled|labelled|until|of|marked|for my|call it|till i|to check|
    label it|name it|with the label|about|with the name
  `
    };
  }
});

// src/language/grammar/bags.ts
function together(before, more) {
  if (more.length === 0) return before;
  for (const { slot, value } of more) {
    const known2 = before.find((one) => one.slot === slot);
    if (known2 && JSON.stringify(known2.value) !== JSON.stringify(value)) return void 0;
  }
  return [...before, ...more];
}
function piecesAt2(must, may, run, at) {
  const pieces = [];
  must.forEach((phrase, index) => {
    for (const match of phrase.match(run, at)) {
      const same = pieces.find((one) => one.match.next === match.next);
      const captures = same && together(same.match.captures, match.captures);
      if (same && captures) {
        same.has |= 1 << index;
        same.match = { ...same.match, captures };
      } else if (match.next > at) pieces.push({ has: 1 << index, match });
    }
  });
  for (const match of may.match(run, at)) if (match.next > at) pieces.push({ has: 0, match });
  return pieces;
}
function walk({ must, may }, run, book) {
  const end = run.words.length;
  const places = [];
  const reach = (at, path) => {
    places[at] ??= [];
    const here = places[at];
    const index = here.findIndex((known2) => known2.has === path.has);
    if (index < 0) here.push(path);
    else if (path.cost < here[index].cost) here[index] = path;
  };
  for (const [at, { cost, hedged }] of startsFrom(0, run, book, false)) {
    if (!hedged) reach(at, { has: 0, captures: [], cost });
  }
  for (let at = 0; at < end; at += 1) {
    const here = places[at];
    if (!here) continue;
    const pieces = piecesAt2(must, may, run, at);
    for (const path of here) {
      for (const { has, match } of pieces) {
        const captures = together(path.captures, match.captures);
        const cost = path.cost + match.cost + 1;
        if (captures) reach(match.next, { has: path.has | has, captures, cost });
      }
    }
  }
  const tails = tailsOf(run, book, false);
  const all = (1 << must.length) - 1;
  let best2;
  for (let at = 0; at <= end; at += 1) {
    const tail = tails[at];
    if (tail === void 0) continue;
    for (const path of places[at] ?? []) {
      if (path.has !== all) continue;
      if (!best2 || path.cost + tail < best2.cost) best2 = { ...path, cost: path.cost + tail };
    }
  }
  return best2;
}
var MOST_WORDS, BagReader;
var init_bags = __esm({
  "src/language/grammar/bags.ts"() {
    "use strict";
    init_guards();
    init_all();
    init_passing_over();
    MOST_WORDS = 20;
    BagReader = class {
      constructor(grammar) {
        this.grammar = grammar;
      }
      grammar;
      opened;
      get bags() {
        this.opened ??= meanings().flatMap(
          ([intent, { bags = [] }]) => bags.map((bag) => ({
            intent,
            bag,
            must: bag.must.map((source) => this.grammar.phrase(source)),
            may: this.grammar.phrase(bag.may)
          }))
        );
        return this.opened;
      }
      /** The cheapest command the words make up; the first of equals. */
      read(run, book, refused) {
        if (run.words.length > MOST_WORDS) return void 0;
        const asks = beginsAsking(run.words);
        let best2;
        for (const open of this.bags) {
          const { intent } = open;
          const { set, asking } = open.bag;
          if (asks && !asking || refused(intent)) continue;
          if (!open.must.every((phrase) => phrase.couldMatch(run.has))) continue;
          const path = walk(open, run, book);
          if (!path || best2 && best2.cost <= path.cost) continue;
          const slots = { ...set };
          for (const { slot, value } of path.captures) slots[slot] = value;
          best2 = { joined: { intent, slots, hedged: false }, cost: path.cost };
        }
        return best2?.joined;
      }
    };
  }
});

// src/language/grammar/pattern.ts
function isSpace(code) {
  return code === 32 || code === 10;
}
function isLetter(code) {
  return code >= 97 && code <= 122 || code >= 48 && code <= 57 || code === 45 || code === 39;
}
function slotOf(inner) {
  const fixed = /^(\w+)=(.+)$/.exec(inner);
  if (fixed) {
    const text = fixed[2] ?? "";
    const value = text === "true" ? true : /^\d+$/.test(text) ? Number(text) : text;
    return { is: "fixed", slot: fixed[1] ?? "", value };
  }
  const [slot = "", kind = slot] = inner.split(":");
  return { is: "slot", slot, kind };
}
function plainWordsOf(source) {
  let word = "";
  let choice;
  let depth = 0;
  let opened2 = -1;
  for (let at = 0; at < source.length; at += 1) {
    const character = source[at];
    if (Object.hasOwn(CLOSING, character)) {
      opened2 = depth === 0 && character === "(" ? at + 1 : -1;
      depth += 1;
    } else if (character === ")" || character === "]" || character === ">" || character === "}") {
      depth -= 1;
      if (opened2 >= 0) {
        const words = oneOfEach(source.slice(opened2, at));
        if (words && (!choice || words.length < choice.length)) choice = words;
      }
      opened2 = -1;
    } else if (depth === 0) {
      if (character === "|") return void 0;
      const end = wordEnd(source, at);
      if (end - at > word.length) word = source.slice(at, end);
      if (end > at) at = end - 1;
    }
  }
  return word ? [word] : choice;
}
function alternatives(source) {
  const sides = [];
  let depth = 0;
  let from = 0;
  for (let at = 0; at < source.length; at += 1) {
    const character = source[at];
    if (Object.hasOwn(CLOSING, character)) depth += 1;
    else if (/[)\]>}]/.test(character)) depth -= 1;
    else if (character === "|" && depth === 0) {
      sides.push(source.slice(from, at));
      from = at + 1;
    }
  }
  return [...sides, source.slice(from)];
}
function wordEnd(text, at) {
  let end = at;
  while (isLetter(text.charCodeAt(end))) end += 1;
  return end;
}
function oneOfEach(text) {
  const words = text.split("|").map((side) => {
    let longest = "";
    for (let at = 0; at < side.length; at += 1) {
      const end = wordEnd(side, at);
      if (end - at > longest.length) longest = side.slice(at, end);
      at = Math.max(at, end - 1);
    }
    return longest;
  });
  return words.includes("") ? void 0 : words;
}
function parsePattern(source) {
  return new PatternReader(source).read();
}
var CLOSING, NOTHING2, PatternReader;
var init_pattern = __esm({
  "src/language/grammar/pattern.ts"() {
    "use strict";
    CLOSING = { "(": ")", "[": "]", "<": ">", "{": "}" };
    NOTHING2 = { is: "sequence", parts: [] };
    PatternReader = class {
      constructor(source) {
        this.source = source;
      }
      source;
      at = 0;
      read() {
        const pattern = this.choice("");
        if (this.at < this.source.length) throw this.unpaired();
        return pattern;
      }
      unpaired() {
        return new Error(`phrase "${this.source}": brackets do not pair`);
      }
      choice(closing) {
        const of = [];
        let parts = [];
        for (; ; ) {
          while (isSpace(this.source.charCodeAt(this.at))) this.at += 1;
          const character = this.source[this.at] ?? "";
          if (character === "" && closing !== "") throw this.unpaired();
          if (character === "|" || character === closing) {
            of.push(parts.length === 1 ? parts[0] : { is: "sequence", parts });
            if (character === "|") parts = [];
            else {
              if (character !== "") this.at += 1;
              return of.length === 1 ? of[0] : { is: "choice", of };
            }
            this.at += 1;
          } else parts.push(this.piece(character));
        }
      }
      piece(character) {
        const start = this.at;
        if (isLetter(character.charCodeAt(0))) {
          while (isLetter(this.source.charCodeAt(this.at))) this.at += 1;
          return { is: "word", word: this.source.slice(start, this.at) };
        }
        this.at += 1;
        if (character === "(") return this.choice(")");
        if (character === "[") return { is: "choice", of: [this.choice("]"), NOTHING2] };
        const end = this.source.indexOf(CLOSING[character] ?? "\0", start);
        if (character !== "<" && character !== "{" || end < 0) {
          const hint = character === ")" || character === "]" ? "brackets do not pair" : "see pattern.ts";
          throw new Error(
            `phrase "${this.source}": cannot read "${this.source.slice(start)}"; ${hint}`
          );
        }
        this.at = end + 1;
        const inner = this.source.slice(start + 1, end);
        return character === "<" ? { is: "list", name: inner } : slotOf(inner);
      }
    };
  }
});

// src/language/grammar/pattern-facts.ts
var LENGTH_WORDS, ANY_FIGURE, NUMBER_WORDS, SLOT_NEEDS, PatternFacts;
var init_pattern_facts = __esm({
  "src/language/grammar/pattern-facts.ts"() {
    "use strict";
    init_pattern();
    LENGTH_WORDS = "second seconds minute minutes hour hours day days week weeks".split(" ");
    ANY_FIGURE = "0";
    NUMBER_WORDS = [
      "0 zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen",
      "sixteen seventeen eighteen nineteen twenty thirty forty fourty fifty sixty seventy eighty",
      "ninety hundred thousand dozen couple pair half quarter quarters"
    ].flatMap((line) => line.split(" "));
    SLOT_NEEDS = {
      duration: LENGTH_WORDS,
      length: LENGTH_WORDS,
      more: LENGTH_WORDS,
      lasting: LENGTH_WORDS,
      ago: LENGTH_WORDS,
      number: NUMBER_WORDS,
      temperature: NUMBER_WORDS,
      whole: NUMBER_WORDS,
      jars: NUMBER_WORDS,
      "jar-list": NUMBER_WORDS,
      produce: "pound pounds kilo kilos kilogram ounce ounces gram grams".split(" "),
      scores: NUMBER_WORDS,
      count: [...NUMBER_WORDS, "a", "an", "another"],
      size: "pint pints quart quarts halfpint half quarter gallon gallons ounce".split(" "),
      pinged: "pinged popped ping".split(" ")
    };
    PatternFacts = class {
      constructor(lists2) {
        this.lists = lists2;
      }
      lists;
      parsed = /* @__PURE__ */ new Map();
      wanted = /* @__PURE__ */ new Map();
      begun = /* @__PURE__ */ new Map();
      being = [];
      /** A list's pattern. @throws Error when no list has the name. */
      list(name) {
        const known2 = this.parsed.get(name);
        if (known2) return known2;
        const source = Object.hasOwn(this.lists, name) ? this.lists[name] : void 0;
        if (!source) throw new Error(`no list is named <${name}>; lists are in intents/`);
        const pattern = parsePattern(source);
        this.parsed.set(name, pattern);
        return pattern;
      }
      /** Looks into a list, which may not hold itself. @throws Error when it does. */
      within(name, look) {
        if (this.being.includes(name)) throw new Error(`list <${name}> names itself`);
        this.being.push(name);
        const found2 = look(this.list(name));
        this.being.pop();
        return found2;
      }
      /** The words a pattern begins with; undefined where a slot can be first, or it can be empty. */
      begins(pattern) {
        if (this.canBeEmpty(pattern)) return void 0;
        if (pattern.is === "list") {
          const { words, open } = this.listFirsts(pattern.name);
          return open ? void 0 : words;
        }
        const into = /* @__PURE__ */ new Set();
        return this.collectFirsts(pattern, into) ? void 0 : into;
      }
      collectFirsts(pattern, into) {
        switch (pattern.is) {
          case "word":
            into.add(pattern.word);
            return false;
          case "slot":
            return true;
          case "fixed":
            return false;
          case "list": {
            const { words, open } = this.listFirsts(pattern.name);
            for (const word of words) into.add(word);
            return open;
          }
          case "choice": {
            let open = false;
            for (const one of pattern.of) open = this.collectFirsts(one, into) || open;
            return open;
          }
          case "sequence":
            for (const part of pattern.parts) {
              if (this.collectFirsts(part, into)) return true;
              if (!this.canBeEmpty(part)) return false;
            }
            return false;
        }
      }
      listFirsts(name) {
        let known2 = this.begun.get(name);
        if (!known2) {
          const words = /* @__PURE__ */ new Set();
          const open = this.within(name, (pattern) => this.collectFirsts(pattern, words));
          known2 = { words, open };
          this.begun.set(name, known2);
        }
        return known2;
      }
      canBeEmpty(pattern) {
        switch (pattern.is) {
          case "word":
          case "slot":
            return false;
          case "fixed":
            return true;
          case "list":
            return this.canBeEmpty(this.list(pattern.name));
          case "choice":
            return pattern.of.some((one) => this.canBeEmpty(one));
          case "sequence":
            return pattern.parts.every((part) => this.canBeEmpty(part));
        }
      }
      /** The fewest words of which one has to be said. */
      needs(pattern) {
        const words = this.needed(pattern);
        return words && new Set(words);
      }
      /** For each piece that cannot be left out, the words of which one has to be said. */
      required(pattern) {
        const parts = pattern.is === "sequence" ? pattern.parts : [pattern];
        return parts.flatMap((part) => {
          if (part.is === "sequence") return this.required(part);
          return this.needs(part) ?? [];
        });
      }
      needed(pattern) {
        switch (pattern.is) {
          case "word":
            return [pattern.word];
          case "slot":
            return SLOT_NEEDS[pattern.kind];
          case "fixed":
            return void 0;
          case "list":
            return this.listNeeds(pattern.name);
          case "sequence": {
            let least;
            for (const part of pattern.parts) {
              const words = this.needed(part);
              if (words && (!least || words.length < least.length)) least = words;
            }
            return least;
          }
          case "choice":
            return this.neededOfAny(pattern.of);
        }
      }
      /** A choice needs what any of its options needs; the last is empty where all may be left out. */
      neededOfAny(of) {
        const all = [];
        for (let index = of.length - 1; index >= 0; index -= 1) {
          const words = this.needed(of[index]);
          if (!words) return void 0;
          for (const word of words) all.push(word);
        }
        return all;
      }
      listNeeds(name) {
        if (!this.wanted.has(name)) {
          this.wanted.set(
            name,
            this.within(name, (pattern) => this.needed(pattern))
          );
        }
        return this.wanted.get(name);
      }
    };
  }
});

// src/language/grammar/matcher.ts
function saysOneOf(said3, words) {
  for (const word of said3) if (words.has(word)) return true;
  return false;
}
function later(matches, cost) {
  return cost === 0 ? matches : matches.map((match) => ({ ...match, cost: match.cost + cost }));
}
function merge(into, more) {
  if (more.length === 0) return into;
  if (into.length === 0) return more;
  const merged2 = [...into];
  for (const match of more) {
    const index = merged2.findIndex((known2) => known2.next === match.next);
    if (index < 0) merged2.push(match);
    else if (match.cost < merged2[index].cost) merged2[index] = match;
  }
  return merged2;
}
function wordMatcher(word) {
  return (run, at) => {
    if (run.words[at] === word || run.alts[at] === word) {
      return [{ next: at + 1, captures: NO_CAPTURES, cost: 0 }];
    }
    const places = run.skips[at];
    for (let index = 1; index < places.length; index += 1) {
      const place2 = places[index];
      if (run.words[place2.at] === word || run.alts[place2.at] === word) {
        return [{ next: place2.at + 1, captures: NO_CAPTURES, cost: place2.cost }];
      }
    }
    return NONE;
  };
}
function slotMatcher(slot, kind) {
  return (run, at) => {
    let found2 = NONE;
    for (const place2 of run.skips[at]) {
      const matches = run.read(kind, place2.at).map(({ value, next, cost }) => ({
        next,
        captures: [{ slot, value }],
        cost: cost + place2.cost
      }));
      found2 = merge(found2, matches);
    }
    return found2;
  };
}
function sequenceMatcher(parts) {
  return (run, at) => {
    let here = [{ next: at, captures: NO_CAPTURES, cost: 0 }];
    for (const part of parts) {
      let after = NONE;
      for (const before of here) {
        const found2 = part(run, before.next);
        if (found2.length > 0) after = merge(after, joinAll(before, found2));
      }
      if (after.length === 0) return NONE;
      here = after;
    }
    return here;
  };
}
function joinAll(before, found2) {
  if (before.cost === 0 && before.captures.length === 0) return found2;
  return found2.map((match) => joinMatches(before, match));
}
function joinMatches(before, after) {
  const captures = before.captures.length === 0 ? after.captures : after.captures.length === 0 ? before.captures : [...before.captures, ...after.captures];
  return { next: after.next, captures, cost: before.cost + after.cost };
}
var NO_CAPTURES, NONE, Option, NO_OPTIONS, Phrase, Grammar;
var init_matcher = __esm({
  "src/language/grammar/matcher.ts"() {
    "use strict";
    init_pattern();
    init_pattern_facts();
    NO_CAPTURES = [];
    NONE = [];
    Option = class {
      constructor(grammar, pattern) {
        this.grammar = grammar;
        this.pattern = pattern;
      }
      grammar;
      pattern;
      compiled;
      /** Null where it can begin with a slot or be empty. */
      begins;
      needs;
      mayBegin(run, at) {
        if (this.begins === void 0) {
          this.begins = this.grammar.facts.begins(this.pattern) ?? null;
          this.needs = this.begins ? void 0 : this.grammar.facts.needs(this.pattern);
        }
        if (this.begins === null) return !this.needs || saysOneOf(run.has, this.needs);
        for (const place2 of run.skips[at]) {
          if (this.begins.has(run.words[place2.at] ?? "")) return true;
          const alt = run.alts[place2.at];
          if (alt !== void 0 && this.begins.has(alt)) return true;
        }
        return false;
      }
      match(run, at) {
        this.compiled ??= this.grammar.compile(this.pattern);
        return this.compiled(run, at);
      }
    };
    NO_OPTIONS = [];
    Phrase = class {
      constructor(grammar, source) {
        this.grammar = grammar;
        this.source = source;
        const words = plainWordsOf(source);
        this.needs = words ? new Set(words) : grammar.facts.needs(this.read.pattern);
      }
      grammar;
      source;
      whole;
      required;
      /** Words of which one has to be said. */
      needs;
      /** Most phrases are never read further than for a word they need. */
      get read() {
        if (!this.whole) {
          const pattern = parsePattern(this.source);
          this.whole = { pattern, option: new Option(this.grammar, pattern) };
        }
        return this.whole;
      }
      /** False where a piece it cannot do without is not among these words. */
      couldMatch(said3) {
        this.required ??= this.grammar.facts.required(this.read.pattern);
        for (const one of this.required) if (!saysOneOf(said3, one)) return false;
        return true;
      }
      /** False where the phrase cannot begin here. */
      mayBegin(run, at) {
        return this.read.option.mayBegin(run, at);
      }
      /** All ways to read the words from this place on. */
      match(run, at) {
        return this.read.option.match(run, at);
      }
    };
    Grammar = class {
      lists = /* @__PURE__ */ new Map();
      facts;
      constructor(lists2) {
        this.facts = new PatternFacts(lists2);
      }
      phrase(source) {
        return new Phrase(this, source);
      }
      list(name) {
        let matcher = this.lists.get(name);
        if (!matcher) {
          matcher = this.remembered(name, this.compile(this.facts.list(name)));
          this.lists.set(name, matcher);
        }
        return matcher;
      }
      compile(pattern) {
        switch (pattern.is) {
          case "word":
            return wordMatcher(pattern.word);
          case "slot":
            return slotMatcher(pattern.slot, pattern.kind);
          case "fixed": {
            const captures = [{ slot: pattern.slot, value: pattern.value }];
            return (_run, at) => [{ next: at, captures, cost: 0 }];
          }
          case "list": {
            const { name } = pattern;
            let list;
            return (run, at) => {
              list ??= this.list(name);
              return list(run, at);
            };
          }
          case "choice":
            return this.compileChoice(pattern.of);
          case "sequence":
            return sequenceMatcher(pattern.parts.map((part) => this.compile(part)));
        }
      }
      /** Choices are looked up by the words they can begin with, and compiled when first tried. */
      compileChoice(of) {
        const byWord = /* @__PURE__ */ new Map();
        const others = [];
        for (const pattern of of) {
          const option = new Option(this, pattern);
          const first2 = pattern.is === "sequence" ? pattern.parts[0] : pattern;
          if (first2?.is !== "word") others.push(option);
          else {
            const known2 = byWord.get(first2.word);
            if (known2) known2.push(option);
            else byWord.set(first2.word, [option]);
          }
        }
        return (run, at) => {
          let found2 = NONE;
          if (byWord.size > 0) {
            for (const place2 of run.skips[at]) {
              const alt = run.alts[place2.at];
              for (const option of byWord.get(run.words[place2.at] ?? "") ?? NO_OPTIONS) {
                found2 = merge(found2, later(option.match(run, place2.at), place2.cost));
              }
              for (const option of alt && byWord.get(alt) || NO_OPTIONS) {
                found2 = merge(found2, later(option.match(run, place2.at), place2.cost));
              }
            }
          }
          for (const option of others) {
            if (option.mayBegin(run, at)) found2 = merge(found2, option.match(run, at));
          }
          return found2;
        };
      }
      remembered(name, matcher) {
        return (run, at) => {
          let here = run.lists[at];
          if (!here) {
            here = /* @__PURE__ */ new Map();
            run.lists[at] = here;
          }
          const known2 = here.get(name);
          if (known2) return known2;
          const found2 = matcher(run, at);
          here.set(name, found2);
          return found2;
        };
      }
    };
  }
});

// src/language/grammar/phrase-book.ts
function skipTable(phrases2) {
  const table = /* @__PURE__ */ new Map();
  for (const phrase of phrases2) {
    const words = phrase.split(" ");
    const known2 = table.get(words[0] ?? "");
    if (known2) known2.push(words);
    else table.set(words[0] ?? "", [words]);
  }
  return table;
}
function phrases() {
  const all = meanings();
  const said3 = [
    ...all.flatMap(([intent, { wordings = [] }]) => wordings.map((one) => ({ intent, one }))),
    ...all.flatMap(([intent, { spoken = [] }]) => spoken.map((one) => ({ intent, one })))
  ];
  return said3.flatMap(({ intent, one }) => {
    const { set, phrases: phrases2 } = typeof one === "string" ? { set: {}, phrases: [one] } : one;
    return phrases2.flatMap(alternatives).map((source) => ({ intent, set, source }));
  });
}
function lists() {
  const own2 = meanings().map(([, { lists: lists2 }]) => lists2);
  return Object.assign({ aside: ASIDES }, SHARED_LISTS, ...own2);
}
function* sources() {
  for (const { source } of phrases()) yield source;
  yield* Object.values(lists());
  yield* FILLERS;
  yield* OPENERS;
  yield* HEDGES;
}
function plainWords() {
  let words;
  return {
    has(word) {
      if (!words) {
        words = /* @__PURE__ */ new Set();
        for (const source of sources()) {
          const bare = source.replace(/<[^>]*>|\{[^}]*\}/g, " ");
          for (const found2 of bare.match(/[a-z0-9'-]+/g) ?? []) words.add(found2);
        }
      }
      return words.has(word);
    }
  };
}
function makeBook() {
  const grammar = new Grammar(lists());
  const byNeed = /* @__PURE__ */ new Map();
  const needless = [];
  phrases().forEach(({ intent, set, source }, order) => {
    const phrase = grammar.phrase(source);
    const one = { intent, set, phrase, order, open: OPEN_SLOT.test(source) };
    if (!phrase.needs) needless.push(one);
    for (const word of phrase.needs ?? []) {
      const known2 = byNeed.get(word);
      if (known2) known2.push(one);
      else byNeed.set(word, [one]);
    }
  });
  return {
    byNeed,
    needless,
    fillers: skipTable(FILLERS),
    openers: skipTable(OPENERS),
    hedges: skipTable(HEDGES),
    aside: grammar.phrase("<aside>"),
    bags: new BagReader(grammar),
    plain: plainWords()
  };
}
function phraseBook() {
  made ??= makeBook();
  return made;
}
function candidates(book, run) {
  const before = known.get(run.has);
  if (before) return before;
  const found2 = new Set(book.needless);
  for (const word of run.has) {
    for (const phrase of book.byNeed.get(word) ?? []) found2.add(phrase);
  }
  const able = [...found2].filter(({ phrase }) => phrase.couldMatch(run.has));
  known.set(run.has, able);
  return able;
}
var OPEN_SLOT, made, known;
var init_phrase_book = __esm({
  "src/language/grammar/phrase-book.ts"() {
    "use strict";
    init_fillers();
    init_all();
    init_shared_lists();
    init_bags();
    init_matcher();
    init_pattern();
    OPEN_SLOT = /\{(?:\w+:)?(?:text|asked|thing|person|open|timer|pinged|lot|label|produce)\}/;
    known = /* @__PURE__ */ new WeakMap();
  }
});

// src/language/readings.ts
function beats(one, other) {
  if (!other) return true;
  return one.cost < other.cost || one.cost === other.cost && one.of.order < other.of.order;
}
function matchesAt2(run, book, start) {
  let places = matched.get(run);
  if (!places) {
    places = [];
    matched.set(run, places);
  }
  const before = places[start];
  if (before) return before;
  const found2 = [];
  for (const of of candidates(book, run)) {
    if (!of.phrase.mayBegin(run, start)) continue;
    for (const match of of.phrase.match(run, start)) {
      if (match.next !== start) found2.push({ of, match });
    }
  }
  places[start] = found2;
  return found2;
}
function* readingsFrom(starts, run, book) {
  for (const [start, passed] of starts) {
    if (start >= run.words.length) continue;
    for (const { of, match } of matchesAt2(run, book, start)) {
      yield { of, match, cost: passed.cost + match.cost, hedged: passed.hedged };
    }
  }
}
function leavesMore(starts, tails, run, book) {
  if (starts.size > startsFrom(0, run, book, false).size) return true;
  return tailsOf(run, book, false).some(
    (tail, at) => tail === void 0 && tails[at] !== void 0
  );
}
function wholeReading(run, book, leave, refused) {
  const tails = tailsOf(run, book, leave.asides);
  const starts = startsFrom(0, run, book, leave.asides);
  if (leave.asides && !leavesMore(starts, tails, run, book)) return void 0;
  let best2;
  for (const reading of readingsFrom(starts, run, book)) {
    const tail = tails[reading.match.next];
    if (tail === void 0) continue;
    const whole = { ...reading, cost: reading.cost + tail };
    const strange = whole.cost >= MOST_STRANGE || !MEANINGS[whole.of.intent].forgiving;
    if (leave.strangers && strange) continue;
    if (beats(whole, best2) && !refused(whole.of.intent)) best2 = whole;
  }
  return best2;
}
function clauseReadings(starts, run, book) {
  const byEnd = /* @__PURE__ */ new Map();
  for (const reading of readingsFrom(starts, run, book)) {
    let here = byEnd.get(reading.match.next);
    if (!here) {
      here = /* @__PURE__ */ new Map();
      byEnd.set(reading.match.next, here);
    }
    if (beats(reading, here.get(reading.of.intent))) here.set(reading.of.intent, reading);
  }
  return byEnd;
}
var matched;
var init_readings = __esm({
  "src/language/readings.ts"() {
    "use strict";
    init_passing_over();
    init_phrase_book();
    init_all();
    matched = /* @__PURE__ */ new WeakMap();
  }
});

// src/language/clauses.ts
function slotsOf(reading) {
  const slots = { ...reading.of.set };
  for (const { slot, value } of reading.match.captures) slots[slot] = value;
  return slots;
}
function givesWay(one, other) {
  const { givesWay: to } = MEANINGS[one];
  return to === "all" || to?.includes(other) === true;
}
function merged(one, other) {
  const all = { ...one };
  for (const [slot, value] of Object.entries(other)) {
    if (all[slot] === void 0) all[slot] = value;
    else if (JSON.stringify(all[slot]) !== JSON.stringify(value)) return void 0;
  }
  return all;
}
function aboutTopic(first2, second) {
  if (first2.of.intent !== "focus" || !MEANINGS[second.of.intent].topical) {
    return void 0;
  }
  const topic = slotsOf(first2).target;
  const slots = slotsOf(second);
  return topic && slots.target === void 0 ? { ...slots, target: topic } : void 0;
}
function joined2(first2, second) {
  const [a, b] = [first2.of.intent, second.of.intent];
  const hedged = first2.hedged || second.hedged;
  if (a === b) {
    const slots = merged(slotsOf(first2), slotsOf(second));
    return slots && { intent: a, slots, hedged };
  }
  const about = aboutTopic(first2, second);
  if (about) return { intent: b, slots: about, hedged };
  if (givesWay(a, b)) return { intent: b, slots: slotsOf(second), hedged };
  if (givesWay(b, a)) return { intent: a, slots: slotsOf(first2), hedged };
  return void 0;
}
function joinedReading(run, book, refused) {
  if (run.words.length > MOST_WORDS2) return void 0;
  const tails = tailsOf(run, book, true);
  const firsts = clauseReadings(startsFrom(0, run, book, true), run, book);
  let best2;
  for (const [at, heads] of firsts) {
    if (at >= run.words.length) continue;
    for (const [end, seconds] of clauseReadings(startsFrom(at, run, book, true), run, book)) {
      const tail = tails[end];
      if (tail === void 0) continue;
      for (const first2 of heads.values()) {
        if (first2.of.open) continue;
        for (const second of seconds.values()) {
          const cost = first2.cost + second.cost + tail + CLAUSE_COST;
          if (best2 && best2.cost <= cost) continue;
          const found2 = joined2(first2, second);
          if (found2 && !refused(found2.intent)) best2 = { joined: found2, cost };
        }
      }
    }
  }
  return best2?.joined;
}
var MOST_WORDS2, CLAUSE_COST;
var init_clauses = __esm({
  "src/language/clauses.ts"() {
    "use strict";
    init_passing_over();
    init_all();
    init_readings();
    MOST_WORDS2 = 24;
    CLAUSE_COST = 0.5;
  }
});

// src/language/run-together.ts
function expanded(words, at) {
  const here = words[at];
  const { word, start, end } = here;
  if (word === "were" && (at === 0 || BEFORE.has(words[at - 1]?.word ?? ""))) {
    return [
      { word: "we", start, end },
      { word: "are", start, end }
    ];
  }
  const single = word.endsWith("s") ? word.slice(0, -1) : "";
  if (!SINGLE.has(single)) return [here];
  return [
    { word: single, start, end },
    { word: "is", alt: "has", start, end }
  ];
}
function takenApart(said3) {
  const words = said3.words.flatMap((_, at) => expanded(said3.words, at));
  return words.length === said3.words.length ? void 0 : { ...said3, words };
}
var SINGLE, BEFORE;
var init_run_together = __esm({
  "src/language/run-together.ts"() {
    "use strict";
    init_word_set();
    SINGLE = wordSet(
      "water brine syrup jam jelly juice pressure gauge needle dial thermometer temp temperature",
      "weight jiggler rocker steam boil canner pot kettle altitude elevation everything everyone",
      "step stage vinegar sauce sauerkraut kraut batch load rack vent petcock timer one lid",
      "crock stove burner heat process tray kitchen salsa relish applesauce headspace that"
    );
    BEFORE = wordSet("okay right and now so hey yes yeah yep uh um oh well finally hello there");
  }
});

// src/language/second-thoughts.ts
function longestNumber(words, at) {
  return numbersAt(words, at).toSorted((a, b) => b.next - a.next)[0];
}
function secondNumber(words, no2) {
  let at = no2 + 1;
  while (AFTER_NO.has(words[at]?.word ?? "")) at += 1;
  return longestNumber(words, at) && at;
}
function repeats(words, from, to, again) {
  for (let at = from; at < to; at += 1) {
    if (words[at]?.word !== words[again + at - from]?.word) return false;
  }
  return true;
}
function firstNumber(words, no2, second) {
  const behindSecond = longestNumber(words, second)?.next ?? second;
  for (let at = 0; at < no2; at += 1) {
    const first2 = longestNumber(words, at);
    if (!first2 || first2.next > no2 || no2 - first2.next > MOST_REPEATED) continue;
    if (repeats(words, first2.next, no2, behindSecond)) return at;
  }
  return void 0;
}
function withoutFirstThoughts(said3) {
  const { words } = said3;
  const no2 = words.findIndex(({ word }, at) => word === "no" && at > 0);
  if (no2 < 0) return said3;
  const second = secondNumber(words, no2);
  const first2 = second === void 0 ? void 0 : firstNumber(words, no2, second);
  if (first2 === void 0 || second === void 0) return said3;
  return { ...said3, words: [...words.slice(0, first2), ...words.slice(second)] };
}
var AFTER_NO, MOST_REPEATED;
var init_second_thoughts = __esm({
  "src/language/second-thoughts.ts"() {
    "use strict";
    init_word_set();
    init_spoken_numbers();
    AFTER_NO = wordSet("wait sorry actually rather make it that i mean meant hang on hold");
    MOST_REPEATED = 3;
  }
});

// src/language/values/finish-slots.ts
function isTarget(value) {
  return typeof value === "object" && value !== null && "said" in value && "meaning" in value;
}
function isMisheard(raw) {
  return Object.values(raw).some(
    (value) => typeof value === "object" && value !== null && "exact" in value && !value.exact
  );
}
function declared(intent, raw) {
  const { slots } = MEANINGS[intent];
  return Object.fromEntries(Object.entries(raw).filter(([slot]) => Object.hasOwn(slots, slot)));
}
function finishSlots(intent, raw, confidence, said3, context) {
  const { finish } = MEANINGS[intent];
  const finished = finish ? finish(raw, context, phraseBook().plain) : { slots: declared(intent, raw) };
  if (!finished) return void 0;
  const slots = {};
  let refersTo;
  for (const [slot, value] of Object.entries(finished.slots)) {
    if (value === void 0) continue;
    if (isTarget(value)) {
      slots[slot] = value.said;
      refersTo = value.exact ? meaningOf(value.said, namesOf(context)) : value.meaning;
      const { batches, timers, recipes: recipes2 } = refersTo;
      if (batches.length + timers.length + recipes2.length === 0) refersTo = value.meaning;
    } else slots[slot] = value;
  }
  const doubt = Math.max(finished.doubt ?? 0, finished.misheard || isMisheard(raw) ? MISHEARD : 0);
  const rounded = Math.max(0.3, Math.round((confidence - doubt) * 100) / 100);
  const command = { intent, slots, confidence: rounded, text: said3.text };
  const meant = refersTo && refersTo.batches.length + refersTo.timers.length + refersTo.recipes.length;
  return meant ? { ...command, refersTo } : command;
}
var MISHEARD;
var init_finish_slots = __esm({
  "src/language/values/finish-slots.ts"() {
    "use strict";
    init_phrase_book();
    init_all();
    init_targets();
    MISHEARD = 0.15;
  }
});

// src/language/values/lid-marks.ts
function markedJars(text, running) {
  const batches = new Map(running.map(({ id, mark }) => [mark?.toLowerCase(), id]));
  const found2 = /* @__PURE__ */ new Set();
  const plain = text.replace(MARK, (whole, letters, number) => {
    const batch2 = batches.get(letters.toLowerCase());
    if (batch2 === void 0 || ARTICLE.test(whole)) return whole;
    const first2 = found2.size === 0;
    found2.add(batch2);
    return first2 ? `jar ${number}` : number;
  });
  const [batch] = found2;
  return batch !== void 0 && found2.size === 1 ? { text: plain, batch } : void 0;
}
var MARK, ARTICLE;
var init_lid_marks = __esm({
  "src/language/values/lid-marks.ts"() {
    "use strict";
    MARK = /(?<![\p{L}\p{N}])(?:(?:jars?|lids?|numbers?) +)?([a-z]{1,20})[ -]?(\d{1,3})(?!\w)/giu;
    ARTICLE = /^a[ -]/;
  }
});

// src/language/values/slots.ts
function sure(readings) {
  return readings.map(({ value, next }) => ({ value, next, cost: 0 }));
}
function isMore(said3, at, next) {
  const word = (place2) => said3.words[place2]?.word ?? "";
  return /^(more|longer|extra)$/.test(word(next)) || hasMore(said3, at, next);
}
function hasMore(said3, at, next) {
  return said3.words.slice(at, next).some(({ word }) => /^(more|another|extra)$/.test(word));
}
function isTimerOnly({ meaning }) {
  return meaning.timers.length > 0 && meaning.batches.length + meaning.recipes.length === 0;
}
function isCount(value) {
  return Number.isInteger(value) && Number(value) >= 0 && Number(value) <= MOST_JARS;
}
function countReader(said3) {
  return (at) => {
    const numbers = numbersAt(said3.words, at).filter(({ value }) => isCount(value)).map(({ value, next }) => ({ value, next, cost: 0 }));
    if (numbers.length > 0) return numbers;
    const word = said3.words[at]?.word ?? "";
    return /^(a|an|another)$/.test(word) ? [{ value: 1, next: at + 1, cost: 0 }] : [];
  };
}
function targetReaders(said3, names, plain) {
  const known2 = /* @__PURE__ */ new Map();
  const closed = (at) => {
    const before = known2.get(at);
    if (before) return before;
    const found2 = closedAt(at);
    known2.set(at, found2);
    return found2;
  };
  const closedAt = (at) => targetsAt(said3.words, at, names, plain).map(({ value, next }) => ({
    value,
    next,
    cost: (value.exact ? 0 : FUZZY_COST) + (isTimerOnly(value) ? TIMER_COST : 0) + (/^(timer|one)$/.test(said3.words[next - 1]?.word ?? "") ? TIMER_COST : 0)
  }));
  const label = (at) => labelsAt(said3.words, at).map(({ value, next }) => ({
    value,
    next,
    cost: OPEN_WORD_COST * (next - at)
  }));
  const open = (at) => {
    const named = label(at).map((match) => {
      const meaning = { recipes: [], batches: [], timers: [] };
      const target = { said: String(match.value), meaning, exact: true };
      return { ...match, value: target };
    });
    return [...closed(at), ...named];
  };
  const knownTimer = (at) => closed(at).filter(({ value }) => isTimerOnly(value)).map((match) => ({ ...match, cost: match.cost - TIMER_COST }));
  const person = (at) => {
    return label(at).filter(({ value }) => {
      const words = String(value).split(" ");
      return words.length <= MOST_NAME_WORDS && !words.some((word) => NOBODY.has(word));
    });
  };
  const others = { timer: open, thing: label, person, "known-timer": knownTimer };
  return { target: closed, open, ...others };
}
function timeReaders(said3, context) {
  const { words } = said3;
  const { nowMs, zone } = context;
  const iso = (instant) => localIso(instant, zone);
  const past = (at) => pastMomentsAt(words, at, nowMs, zone).map(({ value, next }) => ({
    value: iso(value),
    next,
    cost: 0
  }));
  const lasting = (at) => durationsAt(words, at).map(({ value, next }) => ({
    value: iso(nowMs - value * MINUTE_MS),
    next,
    cost: 0
  }));
  const clock = (at) => {
    const found2 = clockAt(words, at);
    const plain = found2 && (found2.next - at > 1 || found2.value.half !== void 0);
    const figures = /:/.test(words[at]?.word ?? "");
    if (!found2 || !(plain || figures)) return [];
    return [{ value: iso(lastTimeOf(found2.value, nowMs, zone)), next: found2.next, cost: 0 }];
  };
  return {
    past,
    lasting,
    ago: (at) => past(at).filter(({ next }) => words[next - 1]?.word === "ago"),
    moment: (at) => [...past(at), ...clock(at)],
    future: (at) => futureMomentsAt(words, at, nowMs, zone).map(({ value, next }) => ({
      value: iso(value),
      next,
      cost: 0
    })),
    length: (at) => sure(durationsAt(words, at)),
    duration: (at) => sure(durationsAt(words, at).filter(({ next }) => !hasMore(said3, at, next))),
    more: (at) => sure(durationsAt(words, at).filter(({ next }) => isMore(said3, at, next)))
  };
}
function textReaders(said3, names, plain) {
  const { words } = said3;
  const end = words.length;
  return {
    text: (at) => {
      const found2 = [];
      for (let next = at + 1; next <= end; next += 1) {
        if (next > at + 1 && POLITE.has(words[next - 1]?.word ?? "")) continue;
        const value = textBetween(said3, at, next);
        found2.push({ value, next, cost: TEXT_WORD_COST * (next - at) });
      }
      return found2;
    },
    pinged: (at) => {
      const all = words.slice(at).map(({ word }) => word).join(" ");
      return PING.test(all) ? [{ value: textBetween(said3, at, end), next: end, cost: 0 }] : [];
    },
    asked: (at) => {
      const asked = at === end ? void 0 : askedAt(said3, at, end);
      return asked ? [{ value: asked, next: end, cost: OPEN_WORD_COST }] : [];
    },
    lot: (at) => {
      const found2 = [];
      for (let next = end; next > at; next -= 1) {
        const near = next > end - 3 || BEHIND_LOT.has(words[next]?.word ?? "");
        if (!near) continue;
        const lot = lotAt(said3.text, words, at, next, names, plain);
        if (lot) found2.push({ value: lot, next, cost: lot.exact ? 0.1 : FUZZY_COST });
      }
      return found2;
    }
  };
}
function numberReaders(said3) {
  const { words } = said3;
  const below = (at) => MINUS.has(words[at]?.word ?? "");
  const numbers = (at) => {
    if (below(at - 1)) return [];
    const found2 = numbersAt(words, below(at) ? at + 1 : at);
    return sure(below(at) ? found2.map((one) => ({ ...one, value: -one.value })) : found2);
  };
  return {
    number: numbers,
    count: countReader(said3),
    whole: (at) => numbers(at).filter(({ value }) => isCount(value)),
    temperature: (at) => numbers(at).filter(({ value }) => {
      const degrees = Number(value);
      return degrees >= THERMOMETER.from && degrees <= THERMOMETER.to;
    }),
    jars: (at) => sure(jarListAt(words, at)),
    "jar-list": (at) => sure(jarListAt(words, at).filter(({ value }) => value.length > 1)),
    produce: (at) => sure(producedAt(words, at)),
    "score-name": (at) => sure(scoreNameAt(words, at)),
    size: (at) => sure(sizesAt(words, at)),
    scores: (at) => sure(scoresAt(words, at))
  };
}
function slotReader(said3, context, names, plain) {
  const makers = [
    () => targetReaders(said3, names, plain),
    () => numberReaders(said3),
    () => timeReaders(said3, context),
    () => textReaders(said3, names, plain)
  ];
  const made2 = [];
  const readerOf = (kind) => {
    for (const [index, make] of makers.entries()) {
      made2[index] ??= make();
      const reader = made2[index][kind];
      if (reader) return reader;
    }
    throw new Error(`no slot is of the kind "${kind}"; see slots.ts`);
  };
  const known2 = /* @__PURE__ */ new Map();
  return (kind, at) => {
    let places = known2.get(kind);
    if (!places) {
      places = [];
      known2.set(kind, places);
    }
    const before = places[at];
    if (before) return before;
    const found2 = at < said3.words.length ? readerOf(kind)(at) : [];
    places[at] = found2;
    return found2;
  };
}
var OPEN_WORD_COST, TEXT_WORD_COST, TIMER_COST, FUZZY_COST, THERMOMETER, MOST_JARS, NOBODY, MOST_NAME_WORDS, BEHIND_LOT, POLITE, PING, MINUS, SLOT_KINDS;
var init_slots = __esm({
  "src/language/values/slots.ts"() {
    "use strict";
    init_time();
    init_word_set();
    init_clock_times();
    init_durations();
    init_future_times();
    init_lots();
    init_open_slots();
    init_spoken_numbers();
    init_targets();
    OPEN_WORD_COST = 0.3;
    TEXT_WORD_COST = 0.04;
    TIMER_COST = 0.2;
    FUZZY_COST = 0.5;
    THERMOMETER = { from: 60, to: 450 };
    MOST_JARS = 200;
    NOBODY = new Set(
      [
        "i we you he she they it this that these those who one ones all most some both none nobody",
        "everyone everybody anyone anybody someone somebody people folks guests kids would have and"
      ].flatMap((line) => line.split(" "))
    );
    MOST_NAME_WORDS = 3;
    BEHIND_LOT = wordSet("let so i we time to start begin go do is are");
    POLITE = wordSet("please thanks okay kindly");
    PING = new RegExp(
      "^(a|another|one|one more|that is another) (lid|one|jar)( more)? (has |have )?(just )?(pinged|popped|pinged down|went ping)( down)?$"
    );
    MINUS = wordSet("minus negative");
    SLOT_KINDS = [
      "target known-timer open timer thing person past lasting ago moment future duration length",
      "more text pinged asked lot number count whole temperature jars jar-list size scores",
      "score-name produce"
    ].join(" ").split(" ");
  }
});

// src/language/understand.ts
var understand_exports = {};
__export(understand_exports, {
  understand: () => understand
});
function unknown2(text) {
  return { intent: "unknown", slots: {}, confidence: 0, text };
}
function hasOf(words, alts) {
  const has = new Set(words);
  for (const alt of alts) if (alt) has.add(alt);
  if (words.some((word) => /^\d/.test(word))) has.add(ANY_FIGURE);
  return [...has];
}
function runOf(said3, context, book) {
  const words = said3.words.map(({ word }) => word);
  const alts = said3.words.map(({ alt }) => alt);
  return {
    words,
    alts,
    has: hasOf(words, alts),
    skips: skipsOf(words, book, false),
    read: slotReader(said3, context, namesOf(context), book.plain),
    lists: []
  };
}
function found(run, book, refused) {
  for (const asides of [false, true]) {
    const whole = wholeReading(run, book, { asides, strangers: false }, refused);
    if (!whole) continue;
    const doubt = (asides ? DOUBTS.asides : 0) + (whole.hedged ? DOUBTS.hedged : 0);
    return { intent: whole.of.intent, slots: slotsOf(whole), hedged: whole.hedged, doubt };
  }
  const joined3 = joinedReading(run, book, refused);
  return joined3 && { ...joined3, doubt: DOUBTS.joined + (joined3.hedged ? DOUBTS.hedged : 0) };
}
function gathered(run, book, refused) {
  const bag = book.bags.read(run, book, refused);
  return bag && { ...bag, doubt: DOUBTS.gathered };
}
function lenient(run, book, refused) {
  if (run.words.length < FEWEST_WITH_STRANGER) return void 0;
  const skips = skipsOf(run.words, book, true);
  const loose = { ...run, lists: [], skips };
  const whole = wholeReading(loose, book, { asides: false, strangers: true }, refused);
  if (!whole || MEANINGS[whole.of.intent].unasked && beginsAsking(run.words)) return void 0;
  return {
    intent: whole.of.intent,
    slots: slotsOf(whole),
    hedged: whole.hedged,
    doubt: DOUBTS.stranger + (whole.hedged ? DOUBTS.hedged : 0)
  };
}
function understand(text, context) {
  const plain = understoodPlainly(text, context);
  const marked = plain.intent === "unknown" ? markedJars(text, context.running) : void 0;
  if (!marked) return plain;
  const again = understoodPlainly(marked.text, context);
  if (!("jars" in MEANINGS[again.intent].slots) || "target" in again.slots) return plain;
  const refersTo = { recipes: [], batches: [marked.batch], timers: [] };
  return {
    ...again,
    slots: { ...again.slots, target: marked.batch },
    text,
    refersTo
  };
}
function understoodPlainly(text, context) {
  const book = phraseBook();
  const said3 = withoutFirstThoughts(wordsOf(text));
  if (said3.words.length === 0) return unknown2(text);
  const answer3 = context.question ? answerTo(said3, context.question) : void 0;
  if (answer3) return answer3;
  const refused = (intent) => isNoReport(said3, intent);
  const finish = (from, within) => from && finishSlots(from.intent, from.slots, 1 - from.doubt, within, context);
  const run = runOf(said3, context, book);
  if (said3.cut) {
    const kept = wholeReading(run, book, { asides: false, strangers: false }, refused);
    const open = kept && Object.hasOwn(MEANINGS[kept.of.intent].slots, "text");
    return open && finishSlots(kept.of.intent, slotsOf(kept), 1, said3, context) || unknown2(text);
  }
  const plain = finish(found(run, book, refused), said3);
  if (plain) return plain;
  const apart = takenApart(said3);
  const loose = apart && runOf(apart, context, book);
  const taken = loose && (found(loose, book, refused) ?? gathered(loose, book, refused));
  return (taken && finish({ ...taken, doubt: taken.doubt + DOUBTS.apart }, apart)) ?? finish(gathered(run, book, refused), said3) ?? finish(lenient(run, book, refused), said3) ?? bareAnswer(said3) ?? unknown2(text);
}
var DOUBTS, FEWEST_WITH_STRANGER;
var init_understand = __esm({
  "src/language/understand.ts"() {
    "use strict";
    init_answers();
    init_clauses();
    init_passing_over();
    init_pattern_facts();
    init_phrase_book();
    init_guards();
    init_all();
    init_readings();
    init_run_together();
    init_second_thoughts();
    init_finish_slots();
    init_lid_marks();
    init_slots();
    init_targets();
    init_words();
    DOUBTS = {
      /** Said with "I think" or the like. */
      hedged: 0.25,
      /** Put together from two clauses. */
      joined: 0.1,
      /** The words were in no known order. */
      gathered: 0.15,
      /** A word was passed over that nobody expected. */
      stranger: 0.35,
      /** Words were taken apart that had been run together. */
      apart: 0.05,
      /** Side remarks were passed over. */
      asides: 0.05
    };
    FEWEST_WITH_STRANGER = 4;
  }
});

// tests/language/chatter.ts
var chatter_exports = {};
__export(chatter_exports, {
  CHATTER: () => CHATTER
});
var CHATTER;
var init_chatter = __esm({
  "tests/language/chatter.ts"() {
    "use strict";
    CHATTER = [
      "is it boiling yet",
      "after that's taken care of",
      "is eleven pounds right",
      "under pressure",
      "she says it's boiling",
      "it's just simmering now",
      "it's not boiling",
      "it's only simmering",
      "tell me when it boils",
      "i wish it would boil",
      "it should be boiling soon",
      "if it's boiling turn it down",
      "did the jars seal",
      "are they all sealed",
      "i hope they all seal",
      "do you think they sealed",
      "has the pressure come up",
      "is it at eleven pounds yet",
      "we need eleven pounds",
      "don't let it boil over",
      "it hasn't boiled yet",
      "it's not boiling yet",
      "when it's boiling put the jars in",
      "last year every jar sealed",
      "my mother's jars always sealed",
      "yesterday it boiled for an hour",
      "the kids are done with supper",
      "are you done",
      "are the beets done",
      "we're almost done",
      "the beans aren't done",
      "i'll be done in a minute",
      "let me know when the beans are done",
      "the dishes are done",
      "i've got eleven pounds of tomatoes in the sink",
      "that dog weighs eleven pounds",
      "i'm boiling in here",
      "my blood is boiling",
      "i think it's about to boil",
      "nearly boiling",
      "the pressure at work is getting to me",
      "under a lot of pressure lately",
      "my lips are sealed",
      "the deal is sealed",
      "signed and sealed",
      "it sure is hot in here",
      "what's for supper",
      "did you feed the dog",
      "that smells good",
      "could you hand me that towel",
      "the radio says rain tomorrow",
      "where did i put the tongs",
      "never mind the weather",
      "once it boils i'll cover it",
      "maybe it's boiling",
      "it was boiling an hour ago but i turned it off",
      "it used to boil faster",
      "it won't seal if the rim is dirty",
      "water boils at two hundred degrees up here",
      "bring it to a boil",
      "we should bring it to a boil",
      "wait for it to boil",
      "hasn't sealed yet",
      "i heard the lids pop last night",
      "have the jars been washed",
      "the beets need to be peeled",
      "we'll take the jars out later",
      "should i take the jars out",
      "don't take the jars out",
      "has it boiled yet",
      "is the canner boiling",
      "i wonder if it's boiling",
      "it ought to be boiling by now",
      "why isn't it boiling",
      "call me when it's boiling",
      "it'll boil soon",
      "make sure it keeps boiling",
      "keep it boiling",
      "don't lose the boil",
      "if we lose the boil we start over",
      "what happens if it stops boiling",
      "did it go off the boil",
      "has everything sealed",
      "i bet they all sealed",
      "do the lids seal themselves",
      "last week two of them didn't seal",
      "when they're all sealed we can label them",
      "i want them all sealed by tonight",
      "they never all seal",
      "hopefully none failed",
      "let's hope they seal",
      "what should the pressure be",
      "keep it at eleven pounds",
      "get it up to eleven pounds",
      "we had eleven pounds last time",
      "it's supposed to be at eleven pounds",
      "is the pressure holding",
      "grandma never used a gauge",
      "we should be done by supper",
      "not done yet",
      "i'm not finished",
      "when i'm done i'll tell you",
      "if you're done come help me",
      "i was done with that job years ago",
      "the laundry's done",
      "the movie's finished",
      "school is done for the summer",
      "i could eat a horse",
      "turn the music up",
      "who's at the door",
      "watch your fingers",
      "careful that's hot",
      "those are pretty jars",
      "i love dilly beans",
      "the beans were great last year",
      "we should make more jam next year",
      "dad used to make sauerkraut in the cellar",
      "the tomatoes are ripe",
      "how was your day",
      "it's nine o'clock already",
      "there's eleven pounds of flour in the pantry",
      "is that jar sealed",
      "can you check if it's boiling",
      "wouldn't it be nice if they all sealed",
      "it was sealed with a kiss",
      "i thought it was boiling",
      "i said it might boil",
      "she told me it was boiling",
      "he says the jars are sealed",
      "the potatoes are boiling over at mom's",
      "add another five to ten",
      "will it boil soon",
      "it's about to boil",
      "almost at a boil",
      "just shy of a boil",
      "not boiling yet",
      "getting close to a boil",
      "as soon as it boils i'll tell you",
      "i'll bring it to a boil",
      "let's get this boiling",
      "why did it stop boiling",
      "make sure it doesn't go off the boil",
      "if it goes off the boil tell me",
      "i hope it's boiling",
      "remember when it stopped boiling on us",
      "the kettle at church never boils",
      "it boils at two hundred and one up here",
      "we want all of them sealed",
      "how do i know they sealed",
      "they should all be sealed by morning",
      "were they all sealed",
      "i'd be happy if they all sealed",
      "all of them sealed last year",
      "nine out of ten usually seal",
      "none of them has sealed yet",
      "the envelope is sealed",
      "the road was sealed last week",
      "would eleven pounds be enough",
      "we'll need eleven pounds up here",
      "it takes a while to get to eleven pounds",
      "should it be at eleven pounds",
      "i lost eleven pounds this spring",
      "the baby weighs eleven pounds",
      "blood pressure is one twenty over eighty",
      "is it done",
      "are we done yet",
      "almost finished",
      "i'll finish the beans later",
      "let me finish this",
      "when are you going to be finished with that sink",
      "have you finished your homework",
      "i'm so done with this heat",
      "he's done it again",
      "well done steak for me",
      "she finished school in june",
      "the dryer's done",
      "you never know with beans",
      "it's hot as blazes",
      "open a window would you",
      "there's a spider in the sink",
      "grab me a beer",
      "i can't find the funnel",
      "we picked three rows this morning",
      "these cucumbers are huge",
      "thirty jars is a lot",
      "who took my good knife",
      "the game starts at seven",
      "it's been a long day",
      "that was twenty years ago",
      "is it boiling?",
      "it's boiling?",
      "all packed?",
      "eleven pounds?",
      "everything sealed?",
      "done?",
      "jars are out?",
      "what if it stops boiling",
      "it hasn't come to a boil",
      "they haven't sealed",
      "nothing has sealed yet",
      "none of the lids went down",
      "I wish they would all seal",
      "we might lose the boil",
      "I'd say when it's boiling",
      "it boiled over last summer",
      "do the beans need trimming",
      "the sink is full",
      "my jar of pens broke yesterday",
      "let's hope nothing breaks",
      "keep the lids covered",
      "cover the lids",
      "somebody broke a jar last year"
    ];
  }
});

// tests/language/commands.ts
var commands_exports = {};
__export(commands_exports, {
  COMMANDS: () => COMMANDS
});
var COMMANDS;
var init_commands = __esm({
  "tests/language/commands.ts"() {
    "use strict";
    COMMANDS = [
      ["abandon the beets", "abandon", { target: "beets" }],
      ["scrap this batch", "abandon", {}],
      ["call the whole thing off", "abandon", {}],
      ["i'm giving up on the jam", "abandon", { target: "jam" }],
      ["throw out the whole batch", "abandon", {}],
      ["cancel this batch", "abandon", {}],
      ["we're abandoning the beans", "abandon", { target: "beans" }],
      ["dump the batch", "abandon", {}],
      ["forget this batch", "abandon", {}],
      ["stop the jam for good", "abandon", { target: "jam" }],
      ["let's scrap the beans", "abandon", { target: "beans" }],
      ["give up on this batch", "abandon", {}],
      ["throw this batch away", "abandon", {}],
      ["abandon this batch", "abandon", {}],
      ["abandon the pickled beets", "abandon", { target: "pickled beets" }],
      ["got it", "acknowledge", {}],
      ["okay thanks", "acknowledge", {}],
      ["i hear you", "acknowledge", {}],
      ["understood", "acknowledge", {}],
      ["will do", "acknowledge", {}],
      ["ok", "acknowledge", {}],
      ["thank you very much", "acknowledge", {}],
      ["roger", "acknowledge", {}],
      ["okay got it thanks", "acknowledge", {}],
      ["right", "acknowledge", {}],
      ["good to know", "acknowledge", {}],
      ["alrighty", "acknowledge", {}],
      ["all right then", "acknowledge", {}],
      ["thanks", "acknowledge", {}],
      ["okay", "acknowledge", {}],
      ["gotcha", "acknowledge", {}],
      ["i heard you", "acknowledge", {}],
      ["noted", "acknowledge", {}],
      ["we're at six thousand two hundred feet", "altitude", { feet: 6200 }],
      ["the altitude here is 6,200 feet", "altitude", { feet: 6200 }],
      ["our elevation's fifty four hundred feet", "altitude", { feet: 5400 }],
      ["the kitchen sits at seven thousand feet", "altitude", { feet: 7e3 }],
      ["altitude six two hundred", "altitude", { feet: 6200 }],
      ["we live at eighteen hundred and ninety meters", "altitude", { feet: 6201 }],
      ["altitude is sixty two hundred feet", "altitude", { feet: 6200 }],
      ["we are up at 5,280 feet", "altitude", { feet: 5280 }],
      ["i'm at four thousand feet", "altitude", { feet: 4e3 }],
      ["our kitchen's at eight thousand two hundred and fifty feet", "altitude", { feet: 8250 }],
      ["elevation nineteen hundred meters", "altitude", { feet: 6234 }],
      ["we're at about 6200 feet", "altitude", { feet: 6200 }],
      ["set the altitude to seven thousand one hundred feet", "altitude", { feet: 7100 }],
      ["six thousand two hundred feet", "altitude", { feet: 6200 }],
      ["we're up at six thousand feet", "altitude", { feet: 6e3 }],
      ["my altitude is 7,200 feet", "altitude", { feet: 7200 }],
      ["let's begin with some pickled beets", "begin", { recipe: "pickled-beets" }],
      ["we're making sauerkraut today", "begin", { recipe: "sauerkraut" }],
      [
        "i want to put up twelve pounds of crushed tomatoes",
        "begin",
        { recipe: "crushed-tomatoes", weightLb: 12 }
      ],
      ["can we start a batch of bread and butters", "begin", { recipe: "bread-and-butter-pickles" }],
      [
        "new batch dilly beans dragon tongue eight pounds",
        "begin",
        { recipe: "dilled-green-beans", variety: "dragon tongue", weightLb: 8 }
      ],
      [
        "start another batch of dilly beans with the blue lake",
        "begin",
        { recipe: "dilled-green-beans", variety: "blue lake" }
      ],
      ["time to make jam", "begin", { recipe: "berry-jam" }],
      ["i'm going to can green beans in the pressure canner", "begin", { recipe: "snap-beans" }],
      ["set up kraut please, ten pounds", "begin", { recipe: "sauerkraut", weightLb: 10 }],
      ["let's save some cucumber seed", "begin", { recipe: "cucumber-seed" }],
      ["begin apple butter", "begin", { recipe: "apple-butter" }],
      ["let's get the peach jam going", "begin", { recipe: "peach-jam" }],
      ["could we do some whole tomatoes next", "begin", { recipe: "whole-tomatoes" }],
      ["start the pickled beats", "begin", { recipe: "pickled-beets" }],
      ["start sour crowd", "begin", { recipe: "sauerkraut" }],
      ["okay i'm ready to start the dilled green beans", "begin", { recipe: "dilled-green-beans" }],
      ["hey could you start up a batch of pickled beets for me", "begin", { recipe: "pickled-beets" }],
      [
        "we're gonna do sauerkraut, twenty pounds of it",
        "begin",
        { recipe: "sauerkraut", weightLb: 20 }
      ],
      [
        "okay next up is crushed tomatoes fourteen pounds",
        "begin",
        { recipe: "crushed-tomatoes", weightLb: 14 }
      ],
      [
        "provider dilly beans eight pounds let's start",
        "begin",
        { recipe: "dilled-green-beans", weightLb: 8 }
      ],
      ["make me some bread and butter pickles", "begin", { recipe: "bread-and-butter-pickles" }],
      [
        "begin a batch of snap beans, nine pounds of blue lake",
        "begin",
        { recipe: "snap-beans", weightLb: 9, variety: "blue lake" }
      ],
      ["i think we'll do the berry jam now", "begin", { recipe: "berry-jam" }],
      ["let me start the applesauce", "begin", { recipe: "applesauce" }],
      ["put up some peaches", "begin", { recipe: "peaches" }],
      [
        "start dilly beans with six and a half pounds of dragon tongue",
        "begin",
        { recipe: "dilled-green-beans", weightLb: 6.5, variety: "dragon tongue" }
      ],
      ["start a two kilo batch of kraut", "begin", { recipe: "sauerkraut" }],
      ["open a batch of cucumber seed", "begin", { recipe: "cucumber-seed" }],
      ["i'd like to get going on the dilly beans", "begin", { recipe: "dilled-green-beans" }],
      ["start bred and butter pickles", "begin", { recipe: "bread-and-butter-pickles" }],
      ["start the delhi beans", "begin", { recipe: "dilled-green-beans" }],
      ["let's crack on with the pickled beets", "begin", { recipe: "pickled-beets" }],
      ["i want to make some dilly beans", "begin", { recipe: "dilled-green-beans" }],
      ["put on a batch of berry jam", "begin", { recipe: "berry-jam" }],
      ["fire up a batch of crushed tomatoes", "begin", { recipe: "crushed-tomatoes" }],
      ["we'll start with the sauerkraut", "begin", { recipe: "sauerkraut" }],
      [
        "do a batch of pickled beets from the chioggia, ten pounds",
        "begin",
        { recipe: "pickled-beets", variety: "chioggia", weightLb: 10 }
      ],
      ["start canning the green beans", "begin", { recipe: "snap-beans" }],
      ["how about we do the bread and butters", "begin", { recipe: "bread-and-butter-pickles" }],
      ["start on the dilly beans", "begin", { recipe: "dilled-green-beans" }],
      ["let's make sauerkraut", "begin", { recipe: "sauerkraut" }],
      ["i want to can tomatoes, the crushed kind", "begin", { recipe: "crushed-tomatoes" }],
      ["time for the bread and butter pickles", "begin", { recipe: "bread-and-butter-pickles" }],
      ["begin pickled beets", "begin", { recipe: "pickled-beets" }],
      ["let's pickle some beets", "begin", { recipe: "pickled-beets" }],
      ["let's dill some beans", "begin", { recipe: "dilled-green-beans" }],
      ["new batch of kraut please", "begin", { recipe: "sauerkraut" }],
      ["i'm starting the jam", "begin", { recipe: "berry-jam" }],
      ["we'd like to put up salsa, the chile one", "begin", { recipe: "chile-salsa" }],
      ["start the apple jelly", "begin", { recipe: "apple-jelly" }],
      ["start tomato juice twenty pounds", "begin", { recipe: "tomato-juice", weightLb: 20 }],
      ["the boil stopped", "boil-lost", {}],
      ["we've lost the boil", "boil-lost", {}],
      ["it isn't boiling anymore", "boil-lost", {}],
      ["it's stopped boiling", "boil-lost", {}],
      ["it dropped below a boil", "boil-lost", {}],
      ["canner's gone off the boil", "boil-lost", { target: "canner" }],
      ["it's no longer boiling", "boil-lost", {}],
      ["the canner quit boiling three minutes ago", "boil-lost", { at: "2027-08-14T13:57:00" }],
      ["boil's died down", "boil-lost", {}],
      ["it has gone back to a simmer", "boil-lost", {}],
      ["the boil's been lost", "boil-lost", {}],
      ["shoot, lost the boil", "boil-lost", {}],
      ["the pot's not boiling any more", "boil-lost", {}],
      ["it quit boiling on me", "boil-lost", {}],
      ["the boil went away about a minute ago", "boil-lost", { at: "2027-08-14T13:59:00" }],
      ["it fell off the boil", "boil-lost", {}],
      ["it went down to a simmer", "boil-lost", {}],
      ["the canner lost its boil", "boil-lost", { target: "canner" }],
      ["we dropped off the boil", "boil-lost", {}],
      ["the boil is gone", "boil-lost", {}],
      ["it stopped boiling", "boil-lost", {}],
      ["the boil has stopped", "boil-lost", {}],
      ["it's off the boil", "boil-lost", {}],
      ["we lost our boil", "boil-lost", {}],
      ["boil's gone flat", "boil-lost", {}],
      ["the pot's stopped boiling", "boil-lost", {}],
      ["it's boiling", "boiling", {}],
      ["the canner is boiling", "boiling", { target: "canner" }],
      ["we have a full rolling boil", "boiling", {}],
      ["canner's at a boil", "boiling", { target: "canner" }],
      ["it's been boiling for three minutes", "boiling", { at: "2027-08-14T13:57:00" }],
      ["it started boiling five minutes ago", "boiling", { at: "2027-08-14T13:55:00" }],
      ["boiling since a quarter to two", "boiling", { at: "2027-08-14T13:45:00" }],
      ["it's boiling and the lids are covered", "boiling", { covered: true }],
      ["we're at a rolling boil with two inches over the lids", "boiling", { covered: true }],
      ["there's the boil", "boiling", {}],
      ["the water has come up to a good hard boil", "boiling", {}],
      ["brine's boiling", "boiling", { target: "brine" }],
      ["it just reached a full boil", "boiling", {}],
      ["the boil is back", "boiling", {}],
      ["it's boiling again", "boiling", {}],
      ["full boil, lids well under water", "boiling", { covered: true }],
      ["the syrup has started to boil", "boiling", { target: "syrup" }],
      ["the pot's bubbling hard", "boiling", {}],
      ["okay we've hit a boil", "boiling", {}],
      ["the canner just came up to a full boil", "boiling", { target: "canner" }],
      ["she's at a rolling boil", "boiling", {}],
      ["water's boiling hard", "boiling", {}],
      ["it's at a good rolling boil with the lids covered", "boiling", { covered: true }],
      ["boiling now", "boiling", {}],
      ["we've been boiling since one fifty", "boiling", { at: "2027-08-14T13:50:00" }],
      ["it came to a boil about four minutes ago", "boiling", { at: "2027-08-14T13:56:00" }],
      ["the brine has come to a boil", "boiling", { target: "brine" }],
      ["rolling boil, lids are covered by two inches", "boiling", { covered: true }],
      ["it's rolling", "boiling", {}],
      ["the big pot's boiling", "boiling", { target: "big pot" }],
      ["full rolling boil in the canner", "boiling", {}],
      ["got a boil", "boiling", {}],
      ["we're boiling", "boiling", {}],
      ["okay it's up to a boil now", "boiling", {}],
      ["pot's come to a full boil", "boiling", {}],
      ["full boil as of ten to two", "boiling", { at: "2027-08-14T13:50:00" }],
      ["we have a good boil and there's an inch of water over the lids", "boiling", { covered: true }],
      ["a full rolling boil has been going for six minutes", "boiling", { at: "2027-08-14T13:54:00" }],
      ["the jam is boiling hard", "boiling", { target: "jam" }],
      ["it boils", "boiling", {}],
      ["the boil's on", "boiling", {}],
      ["there it goes, it's boiling", "boiling", {}],
      ["we've got a boil", "boiling", {}],
      ["the pot is at a rolling boil", "boiling", {}],
      ["it's boiling hard now", "boiling", {}],
      ["it has started to boil", "boiling", {}],
      ["came to a boil at one fifty", "boiling", { at: "2027-08-14T13:50:00" }],
      ["it's been at a boil since half past one", "boiling", { at: "2027-08-14T13:30:00" }],
      ["the canner reached a boil a minute ago", "boiling", { at: "2027-08-14T13:59:00" }],
      ["full boil and the jars are covered", "boiling", { covered: true }],
      ["it's at full boil, water's over the lids", "boiling", { covered: true }],
      ["that was ten minutes ago", "correct-time", { at: "2027-08-14T13:50:00" }],
      ["it was actually at ten to two", "correct-time", { at: "2027-08-14T13:50:00" }],
      ["i put them in at quarter past one", "correct-time", { at: "2027-08-14T13:15:00" }],
      ["make that twenty minutes ago", "correct-time", { at: "2027-08-14T13:40:00" }],
      ["that happened half an hour ago", "correct-time", { at: "2027-08-14T13:30:00" }],
      ["no, that was at one thirty", "correct-time", { at: "2027-08-14T13:30:00" }],
      ["sorry, it was really five minutes ago", "correct-time", { at: "2027-08-14T13:55:00" }],
      ["that was a quarter past one", "correct-time", { at: "2027-08-14T13:15:00" }],
      ["it started fifteen minutes ago", "correct-time", { at: "2027-08-14T13:45:00" }],
      ["that was more like twenty minutes ago", "correct-time", { at: "2027-08-14T13:40:00" }],
      ["no it was two minutes ago", "correct-time", { at: "2027-08-14T13:58:00" }],
      ["that was five minutes ago actually", "correct-time", { at: "2027-08-14T13:55:00" }],
      ["i meant at one forty five", "correct-time", { at: "2027-08-14T13:45:00" }],
      ["that was half an hour ago", "correct-time", { at: "2027-08-14T13:30:00" }],
      ["actually it was at twenty to two", "correct-time", { at: "2027-08-14T13:40:00" }],
      ["that was at noon", "correct-time", { at: "2027-08-14T12:00:00" }],
      ["that actually happened ten minutes ago", "correct-time", { at: "2027-08-14T13:50:00" }],
      ["put it in the fridge", "disposition", { what: "refrigerate" }],
      ["i'll reprocess them", "disposition", { what: "reprocess" }],
      ["throw that jar out", "disposition", { what: "discard" }],
      ["jar six goes in the refrigerator", "disposition", { what: "refrigerate", jars: [6] }],
      ["freeze that one", "disposition", { what: "freeze" }],
      ["i'll stick both in the freezer", "disposition", { what: "freeze" }],
      ["we'll run them through again", "disposition", { what: "reprocess" }],
      ["i'm tossing it", "disposition", { what: "discard" }],
      ["i'll decide later", "disposition", { what: "undecided" }],
      ["carry on anyway", "disposition", { what: "carried-on" }],
      ["it goes in the fridge", "disposition", { what: "refrigerate" }],
      ["stick number three in the fridge", "disposition", { what: "refrigerate", jars: [3] }],
      ["put them back in the canner", "disposition", { what: "reprocess" }],
      ["reprocess both of them", "disposition", { what: "reprocess" }],
      ["let's freeze them", "disposition", { what: "freeze" }],
      ["that one's going in the trash", "disposition", { what: "discard" }],
      ["get rid of it", "disposition", { what: "discard" }],
      ["toss jar four", "disposition", { what: "discard", jars: [4] }],
      ["we're keeping it in the refrigerator", "disposition", { what: "refrigerate" }],
      ["into the fridge with it", "disposition", { what: "refrigerate" }],
      ["i'm going to reprocess jar two", "disposition", { what: "reprocess", jars: [2] }],
      ["bin it", "disposition", { what: "discard" }],
      ["throw it out", "disposition", { what: "discard" }],
      ["refrigerate it", "disposition", { what: "refrigerate" }],
      ["that one goes in the fridge", "disposition", { what: "refrigerate" }],
      ["i'll put those two in the fridge", "disposition", { what: "refrigerate" }],
      ["process them again", "disposition", { what: "reprocess" }],
      ["freeze it", "disposition", { what: "freeze" }],
      ["chuck jar six", "disposition", { what: "discard", jars: [6] }],
      ["that step's done", "done", {}],
      ["okay done with that", "done", {}],
      ["i've finished slicing the cucumbers", "done", {}],
      ["the beans are trimmed", "done", {}],
      ["all the jars are packed", "done", {}],
      ["i'm finished", "done", {}],
      ["ready for the next step", "done", {}],
      ["jars are coming out now", "done", {}],
      ["i've just pulled the jars out of the canner", "done", {}],
      ["lifting the jars out", "done", {}],
      ["the beets are peeled and sliced", "done", {}],
      ["salting's done", "done", {}],
      ["everything is washed", "done", {}],
      ["onward to the next one", "done", {}],
      ["we've finished packing", "done", {}],
      ["that takes care of that", "done", {}],
      ["done and dusted", "done", {}],
      ["alright the slicing is done", "done", {}],
      ["finished with the peeling", "done", {}],
      ["i'm done trimming the beans", "done", {}],
      ["got all the jars filled", "done", {}],
      ["okay that's everything", "done", {}],
      ["we're done here", "done", {}],
      ["they're all peeled", "done", {}],
      ["step complete", "done", {}],
      ["beets are cooked", "done", {}],
      ["take them out of the canner", "done", {}],
      ["i pulled the jars", "done", {}],
      ["all the jars are out on the towel", "done", {}],
      ["the jars are out", "done", {}],
      ["cucumbers are drained and rinsed", "done", {}],
      ["finished the brine", "done", {}],
      ["packed and ready", "done", {}],
      ["the jam's done", "done", { target: "jam" }],
      ["i took them out at ten to two", "done", { target: "jars", at: "2027-08-14T13:50:00" }],
      ["all right that's it", "done", {}],
      ["finished up the slicing", "done", {}],
      ["i have washed the jars", "done", {}],
      ["beans trimmed and washed", "done", {}],
      ["pulling the jars out now", "done", {}],
      ["that part is done", "done", {}],
      ["i'm through slicing", "done", {}],
      ["onions are sliced", "done", {}],
      ["ok next step", "done", {}],
      ["done with this one", "done", {}],
      ["all done here", "done", {}],
      ["okay, done", "done", {}],
      ["that does it", "done", {}],
      ["finished", "done", {}],
      ["ready", "done", {}],
      ["i finished that", "done", {}],
      ["that's ready", "done", {}],
      ["okay that's taken care of", "done", {}],
      ["got the jars out", "done", {}],
      ["jars are out of the canner", "done", {}],
      ["i have the jars out", "done", {}],
      ["lift the jars out", "done", {}],
      ["the slicing's finished", "done", {}],
      ["beans are in the jars", "done", {}],
      ["when will the beets be ready", "finish-time", { target: "beets" }],
      ["what time will the jars be done", "finish-time", {}],
      ["when are the beans finished", "finish-time", { target: "beans" }],
      ["when can i take the jars out", "finish-time", {}],
      ["when's the kraut done", "finish-time", { target: "kraut" }],
      ["at what time does the canner finish", "finish-time", { target: "canner" }],
      ["when will it be over", "finish-time", {}],
      ["what time are we going to be done", "finish-time", {}],
      ["when are we done", "finish-time", {}],
      ["when does the canner come off", "finish-time", { target: "canner" }],
      ["what time do the dilly beans finish", "finish-time", { target: "dilly beans" }],
      ["when should the beets be out", "finish-time", { target: "beets" }],
      ["when will i be able to take them out", "finish-time", {}],
      ["when's the jam going to be done", "finish-time", { target: "jam" }],
      ["what time will the canner be finished", "finish-time", { target: "canner" }],
      ["when do the beans come out", "finish-time", { target: "beans" }],
      ["when does it finish", "finish-time", {}],
      ["what time does the process end", "finish-time", {}],
      ["when is the canner done", "finish-time", { target: "canner" }],
      ["when are the beets going to come out", "finish-time", { target: "beets" }],
      ["switch to the jam", "focus", { target: "jam" }],
      ["let's talk about the beets", "focus", { target: "beets" }],
      ["back to the beans", "focus", { target: "beans" }],
      ["let's look at the kraut", "focus", { target: "kraut" }],
      ["show me the dragon tongue batch", "focus", { target: "dragon tongue" }],
      ["let's go back to the beets", "focus", { target: "beets" }],
      ["now the jam", "focus", { target: "jam" }],
      ["over to the beans", "focus", { target: "beans" }],
      ["let's see the pickles", "focus", { target: "pickles" }],
      ["switch over to the beets", "focus", { target: "beets" }],
      ["go back to the jam", "focus", { target: "jam" }],
      ["let's work on the beets", "focus", {}],
      ["the jam please", "focus", { target: "jam" }],
      ["help", "help", {}],
      ["what can i say", "help", {}],
      ["i need some help", "help", {}],
      ["how does this work", "help", {}],
      ["what are the commands", "help", {}],
      ["help me out", "help", {}],
      ["what do i say", "help", {}],
      ["how do i use this", "help", {}],
      ["what kinds of things can i say", "help", {}],
      ["what are my options", "help", {}],
      ["what do you know how to do", "help", {}],
      ["what can i tell you", "help", {}],
      ["help me", "help", {}],
      ["hold on", "hold", {}],
      ["hang on a second", "hold", {}],
      ["pause please", "hold", {}],
      ["give me a minute", "hold", {}],
      ["pause the beets", "hold", { target: "beets" }],
      ["i need to step away for a moment", "hold", {}],
      ["just a sec", "hold", {}],
      ["one moment please", "hold", {}],
      ["hold that thought", "hold", {}],
      ["stop for a bit", "hold", {}],
      ["put the beans on hold", "hold", { target: "beans" }],
      ["i have to answer the door", "hold", {}],
      ["hold up", "hold", {}],
      ["can we pause for a second", "hold", {}],
      ["wait", "hold", {}],
      ["hang on", "hold", {}],
      ["give me a second", "hold", {}],
      ["hold the jam", "hold", { target: "jam" }],
      ["pause everything", "hold", {}],
      ["how much dill per jar", "how-much", {}],
      ["what headspace", "how-much", {}],
      ["how much vinegar do i need", "how-much", {}],
      ["read me the ingredients", "how-much", {}],
      ["how many cloves of garlic go in each jar", "how-much", {}],
      ["how much salt goes in", "how-much", {}],
      ["what's the headspace", "how-much", {}],
      ["what goes in the brine", "how-much", {}],
      ["how much sugar for the syrup", "how-much", {}],
      ["how much vinegar", "how-much", {}],
      ["how many pints will it make", "how-much", {}],
      ["how much dill goes in a jar", "how-much", {}],
      ["how many pounds of beans do i need", "how-much", {}],
      ["be quiet", "hush", {}],
      ["quiet for ten minutes", "hush", { minutes: 10 }],
      ["stop talking for half an hour", "hush", { minutes: 30 }],
      ["shush please", "hush", {}],
      ["please be quiet for a while", "hush", {}],
      ["mute yourself", "hush", {}],
      ["shut up for a minute", "hush", { minutes: 1 }],
      ["quiet please", "hush", {}],
      ["give me ten minutes of quiet", "hush", { minutes: 10 }],
      ["stop talking", "hush", {}],
      ["quiet", "hush", {}],
      ["hush now", "hush", {}],
      ["hush for a quarter of an hour", "hush", { minutes: 15 }],
      ["silence for two minutes", "hush", { minutes: 2 }],
      ["pipe down", "hush", {}],
      ["a jar broke", "jar-broken", { count: 1 }],
      ["jar four cracked", "jar-broken", { jars: [4] }],
      ["the bottom fell out of one jar", "jar-broken", { count: 1 }],
      ["one of the jars cracked", "jar-broken", { count: 1 }],
      ["we lost a jar", "jar-broken", { count: 1 }],
      ["two jars broke", "jar-broken", { count: 2 }],
      ["jar three broke", "jar-broken", { jars: [3] }],
      ["a jar cracked in the canner", "jar-broken", { count: 1 }],
      ["that makes nine pints", "jars-filled", { count: 9, size: "pint" }],
      ["i filled seven quarts", "jars-filled", { count: 7, size: "quart" }],
      ["got eight jars", "jars-filled", { count: 8 }],
      ["nine pints are full", "jars-filled", { count: 9, size: "pint" }],
      ["six half pints of jam", "jars-filled", { count: 6, size: "half-pint" }],
      ["we ended up with eleven pints", "jars-filled", { count: 11, size: "pint" }],
      ["there's ten jars filled", "jars-filled", { count: 10 }],
      ["all nine jars filled", "jars-filled", { count: 9 }],
      ["it came to five quarts", "jars-filled", { count: 5, size: "quart" }],
      ["seven pints packed and ready", "jars-filled", { count: 7, size: "pint" }],
      ["filled eight pints", "jars-filled", { count: 8, size: "pint" }],
      ["i've got nine pints", "jars-filled", { count: 9, size: "pint" }],
      ["we filled seven quart jars", "jars-filled", { count: 7, size: "quart" }],
      ["that came to eleven half pints", "jars-filled", { count: 11, size: "half-pint" }],
      ["there are six pints filled and ready", "jars-filled", { count: 6, size: "pint" }],
      ["ten pint jars in all", "jars-filled", { count: 10, size: "pint" }],
      ["that's five filled", "jars-filled", { count: 5 }],
      ["it made seven pints", "jars-filled", { count: 7, size: "pint" }],
      ["the beans filled nine pints", "jars-filled", { count: 9, size: "pint" }],
      ["nine jars filled", "jars-filled", { count: 9 }],
      ["we got eight pints out of it", "jars-filled", { count: 8, size: "pint" }],
      ["that's all nine pints filled", "jars-filled", { count: 9, size: "pint" }],
      ["seven quarts filled", "jars-filled", { count: 7, size: "quart" }],
      ["filled nine", "jars-filled", { count: 9 }],
      ["nine pints", "jars-filled", { count: 9, size: "pint" }],
      ["that makes seven quarts", "jars-filled", { count: 7, size: "quart" }],
      ["i've filled nine pints", "jars-filled", { count: 9, size: "pint" }],
      ["we have eight jars full", "jars-filled", { count: 8 }],
      ["five half pints filled", "jars-filled", { count: 5, size: "half-pint" }],
      ["the jars are in the canner", "loaded", {}],
      ["canner's loaded", "loaded", {}],
      ["all the jars went in", "loaded", {}],
      ["i just put the jars in", "loaded", {}],
      ["jars are in", "loaded", {}],
      ["i've loaded the canner", "loaded", {}],
      ["the load is in the canner", "loaded", {}],
      ["jars are loaded", "loaded", {}],
      ["all the jars are in the pot", "loaded", {}],
      ["i've put the jars in the canner", "loaded", {}],
      ["canner's full", "loaded", {}],
      ["no", "no", {}],
      ["nope", "no", {}],
      ["no thanks", "no", {}],
      ["no leave it", "no", {}],
      ["absolutely not", "no", {}],
      ["don't do that", "no", {}],
      ["no it didn't", "no", {}],
      ["nah", "no", {}],
      ["no way", "no", {}],
      ["please don't", "no", {}],
      ["no not yet", "no", {}],
      ["no stop", "no", {}],
      ["don't", "no", {}],
      ["make a note that the blue lake were stringy", "note", { text: "the blue lake were stringy" }],
      ["note the vinegar was a new bottle", "note", { text: "the vinegar was a new bottle" }],
      ["write down that we ran out of garlic", "note", { text: "we ran out of garlic" }],
      [
        "for the record, the beets were on the small side",
        "note",
        { text: "the beets were on the small side" }
      ],
      ["take a note: less sugar next time", "note", { text: "less sugar next time" }],
      ["jot down used pint and a half of vinegar", "note", { text: "used pint and a half of vinegar" }],
      ["put down that the brine came up short", "note", { text: "the brine came up short" }],
      ["log that i used cider vinegar", "note", { text: "i used cider vinegar" }],
      ["note to self buy more dill", "note", { text: "buy more dill" }],
      [
        "please write down that the crate had a few soft ones",
        "note",
        { text: "the crate had a few soft ones" }
      ],
      ["add a note saying the garlic was old", "note", { text: "the garlic was old" }],
      ["make a note the lids are from a new box", "note", { text: "the lids are from a new box" }],
      ["note that jar four is a bit short", "note", { text: "jar four is a bit short" }],
      [
        "note the beans were picked this morning",
        "note",
        { text: "the beans were picked this morning" }
      ],
      ["make a note that we used white vinegar", "note", { text: "we used white vinegar" }],
      ["write this down the brine was cloudy", "note", { text: "the brine was cloudy" }],
      [
        "i opened two pints of dilly beans",
        "opened",
        { count: 2, size: "pint", target: "dilly beans" }
      ],
      ["opened a quart of tomatoes", "opened", { count: 1, size: "quart", target: "tomatoes" }],
      [
        "we ate a pint of the pickled beets",
        "opened",
        { count: 1, size: "pint", target: "pickled beets" }
      ],
      ["just used up the last jar of kraut", "opened", { count: 1, target: "kraut" }],
      ["we opened one pint of provider beans for dinner", "opened", { count: 1, size: "pint" }],
      [
        "opened one half pint of berry jam",
        "opened",
        { count: 1, size: "half-pint", target: "berry jam" }
      ],
      ["just opened a jar of dilly beans", "opened", { count: 1, target: "dilly beans" }],
      [
        "we went through three quarts of tomatoes",
        "opened",
        { count: 3, size: "quart", target: "tomatoes" }
      ],
      ["we've opened two pints of kraut", "opened", { count: 2, size: "pint", target: "kraut" }],
      ["we ate a jar of pickles", "opened", { count: 1 }],
      ["opened two quarts of beans", "opened", { count: 2, size: "quart", target: "beans" }],
      ["i'm opening a pint of beets", "opened", { count: 1, size: "pint", target: "beets" }],
      ["give me an overview", "overview", {}],
      ["what's running", "overview", {}],
      ["what all do we have going", "overview", {}],
      ["how are things", "overview", {}],
      ["status report", "overview", {}],
      ["where do we stand", "overview", {}],
      ["what have we got on the stove", "overview", {}],
      ["run me through everything that's going", "overview", {}],
      ["what's going on", "overview", {}],
      ["how's it all going", "overview", {}],
      ["tell me where everything stands", "overview", {}],
      ["what have i got going right now", "overview", {}],
      ["give me the status of everything", "overview", {}],
      ["how's everything looking", "overview", {}],
      ["what's cooking", "overview", {}],
      ["where are we at", "overview", {}],
      ["catch me up", "overview", {}],
      ["how's everything", "overview", {}],
      ["what's everything doing", "overview", {}],
      ["what's on the stove", "overview", {}],
      ["where does everything stand", "overview", {}],
      ["what have we got going", "overview", {}],
      ["give me a rundown", "overview", {}],
      ["gauge says eleven", "pressure", { value: 11, unit: "psi" }],
      ["we're at eleven pounds", "pressure", { value: 11, unit: "psi" }],
      ["pressure's twelve and a half", "pressure", { value: 12.5, unit: "psi" }],
      ["eleven psi", "pressure", { value: 11, unit: "psi" }],
      ["the dial reads thirteen pounds", "pressure", { value: 13, unit: "psi" }],
      ["it's holding at fourteen pounds", "pressure", { value: 14, unit: "psi" }],
      ["seventy six kilopascals", "pressure", { value: 76, unit: "kPa" }],
      ["up to 11 pounds now", "pressure", { value: 11, unit: "psi" }],
      ["canner is showing fifteen pounds of pressure", "pressure", { value: 15, unit: "psi" }],
      ["the needle's at eleven and a quarter", "pressure", { value: 11.25, unit: "psi" }],
      ["pressure is at eleven", "pressure", { value: 11, unit: "psi" }],
      ["we've got twelve pounds on the gauge", "pressure", { value: 12, unit: "psi" }],
      ["now it's at ten and three quarter pounds", "pressure", { value: 10.75, unit: "psi" }],
      ["it's come up to eleven pounds", "pressure", { value: 11, unit: "psi" }],
      ["thirteen point five psi", "pressure", { value: 13.5, unit: "psi" }],
      ["gauge is reading 77 kpa", "pressure", { value: 77, unit: "kPa" }],
      ["steady at eleven pounds", "pressure", { value: 11, unit: "psi" }],
      ["canner's at twelve pounds", "pressure", { value: 12, unit: "psi" }],
      ["reading eleven pounds", "pressure", { value: 11, unit: "psi" }],
      ["gauge at fourteen", "pressure", { value: 14, unit: "psi" }],
      ["eleven and a half pounds of pressure", "pressure", { value: 11.5, unit: "psi" }],
      ["pressure reads eleven", "pressure", { value: 11, unit: "psi" }],
      ["gauge shows eleven and a half", "pressure", { value: 11.5, unit: "psi" }],
      ["the gauge is at twelve", "pressure", { value: 12, unit: "psi" }],
      ["it's at eleven pounds", "pressure", { value: 11, unit: "psi" }],
      ["pressure twelve pounds", "pressure", { value: 12, unit: "psi" }],
      ["the gauge reads seventy five kilopascals", "pressure", { value: 75, unit: "kPa" }],
      ["up to pressure eleven pounds", "pressure", { value: 11, unit: "psi" }],
      ["dial says nine and a half", "pressure", { value: 9.5, unit: "psi" }],
      ["the pressure dropped", "pressure-lost", {}],
      ["we lost pressure", "pressure-lost", {}],
      ["it fell below eleven pounds", "pressure-lost", {}],
      ["pressure's gone", "pressure-lost", {}],
      ["lost pressure", "pressure-lost", {}],
      ["gauge dropped below ten", "pressure-lost", {}],
      ["the pressure's fallen", "pressure-lost", {}],
      ["pressure fell", "pressure-lost", {}],
      ["pressure's dropping", "pressure-lost", {}],
      [
        "remind me tomorrow at eight to check the seals",
        "remind",
        { when: "2027-08-15T08:00:00", text: "check the seals" }
      ],
      [
        "remind me in three weeks to taste the kraut",
        "remind",
        { when: "2027-09-04T14:00:00", text: "taste the kraut" }
      ],
      [
        "remind me to skim the crock tomorrow morning at seven",
        "remind",
        { when: "2027-08-15T07:00:00", text: "skim the crock" }
      ],
      [
        "set a reminder for monday at noon to label the jars",
        "remind",
        { when: "2027-08-16T12:00:00", text: "label the jars" }
      ],
      [
        "remind me at half past four to turn the oven on",
        "remind",
        { when: "2027-08-14T16:30:00", text: "turn the oven on" }
      ],
      [
        "in twenty minutes remind me to stir the jam",
        "remind",
        { when: "2027-08-14T14:20:00", text: "stir the jam" }
      ],
      [
        "remind me on the first of november at ten to open the dills",
        "remind",
        { when: "2027-11-01T10:00:00", text: "open the dills" }
      ],
      [
        "don't let me forget to take the bands off tomorrow at nine",
        "remind",
        { when: "2027-08-15T09:00:00", text: "take the bands off" }
      ],
      [
        "remind me at six tonight to feed the chickens",
        "remind",
        { when: "2027-08-14T18:00:00", text: "feed the chickens" }
      ],
      [
        "remind me next saturday at ten in the morning to check the crock",
        "remind",
        { when: "2027-08-21T10:00:00", text: "check the crock" }
      ],
      [
        "remind me in an hour to turn the fan off",
        "remind",
        { when: "2027-08-14T15:00:00", text: "turn the fan off" }
      ],
      [
        "remind me to buy lids on tuesday at nine",
        "remind",
        { when: "2027-08-17T09:00:00", text: "buy lids" }
      ],
      [
        "can you remind me tomorrow at seven thirty in the morning to check the seals",
        "remind",
        { when: "2027-08-15T07:30:00", text: "check the seals" }
      ],
      ["remind me in two weeks at noon to taste the beans", "remind", { text: "taste the beans" }],
      [
        "remind me at noon tomorrow to check the lids",
        "remind",
        { when: "2027-08-15T12:00:00", text: "check the lids" }
      ],
      [
        "remind me in forty five minutes to check on the kraut",
        "remind",
        { when: "2027-08-14T14:45:00", text: "check on the kraut" }
      ],
      [
        "remind me monday at eight thirty to label everything",
        "remind",
        { when: "2027-08-16T08:30:00", text: "label everything" }
      ],
      [
        "remind me at five to start supper",
        "remind",
        { when: "2027-08-14T17:00:00", text: "start supper" }
      ],
      [
        "remind me in ten minutes to check the water",
        "remind",
        { when: "2027-08-14T14:10:00", text: "check the water" }
      ],
      [
        "remind me tomorrow morning at nine to check the seals",
        "remind",
        { when: "2027-08-15T09:00:00", text: "check the seals" }
      ],
      [
        "remind me at nine tonight to turn off the fan",
        "remind",
        { when: "2027-08-14T21:00:00", text: "turn off the fan" }
      ],
      [
        "remind me on wednesday at six in the evening to taste the pickles",
        "remind",
        { when: "2027-08-18T18:00:00", text: "taste the pickles" }
      ],
      ["what did you say", "repeat", {}],
      ["could you repeat that please", "repeat", {}],
      ["once more please", "repeat", {}],
      ["come again", "repeat", {}],
      ["tell me that again", "repeat", {}],
      ["sorry i missed that", "repeat", {}],
      ["say that one more time", "repeat", {}],
      ["repeat the last thing", "repeat", {}],
      ["what was that again", "repeat", {}],
      ["i didn't hear you", "repeat", {}],
      ["pardon", "repeat", {}],
      ["can you say it one more time", "repeat", {}],
      ["what", "repeat", {}],
      ["would you say that again", "repeat", {}],
      ["i couldn't hear that over the fan", "repeat", {}],
      ["again please", "repeat", {}],
      ["tell me once more", "repeat", {}],
      ["please say that again", "repeat", {}],
      ["you said what", "repeat", {}],
      ["i missed what you said", "repeat", {}],
      ["okay continue", "resume", {}],
      ["carry on", "resume", {}],
      ["i'm back", "resume", {}],
      ["resume the beets", "resume", { target: "beets" }],
      ["keep going", "resume", {}],
      ["pick up where we left off", "resume", {}],
      ["all right let's keep going", "resume", {}],
      ["okay i'm ready to go on", "resume", {}],
      ["take the beans off hold", "resume", { target: "beans" }],
      ["let's pick it back up", "resume", {}],
      ["carry on with the beets", "resume", { target: "beets" }],
      ["let's carry on", "resume", {}],
      ["ready to continue", "resume", {}],
      ["go on", "resume", {}],
      ["continue", "resume", {}],
      ["okay let's go", "resume", {}],
      ["resume", "resume", {}],
      ["continue with the beans", "resume", { target: "beans" }],
      ["jar three didn't seal", "seal-failed", { jars: [3] }],
      ["two of them didn't seal", "seal-failed", { count: 2 }],
      ["numbers two and five failed", "seal-failed", { jars: [2, 5] }],
      ["the lid on jar seven is still up", "seal-failed", { jars: [7] }],
      ["one jar failed", "seal-failed", { count: 1 }],
      ["jar eight never sealed", "seal-failed", { jars: [8] }],
      ["i've got one that didn't seal", "seal-failed", { count: 1 }],
      ["lid four pops when i press it", "seal-failed", { jars: [4] }],
      ["three jars failed to seal", "seal-failed", { count: 3 }],
      ["a lid didn't go down", "seal-failed", { count: 1 }],
      ["number three hasn't sealed", "seal-failed", { jars: [3] }],
      ["lid number two popped back up", "seal-failed", { jars: [2] }],
      ["jars three and eight did not seal", "seal-failed", { jars: [3, 8] }],
      ["two lids never went down", "seal-failed", { count: 2 }],
      ["one of the jars didn't take", "seal-failed", { count: 1 }],
      ["all but number seven sealed", "seal-failed", { jars: [7] }],
      ["one didn't seal", "seal-failed", { count: 1 }],
      ["we have two failures", "seal-failed", { count: 2 }],
      ["number five's lid is loose", "seal-failed", { jars: [5] }],
      ["jar nine failed", "seal-failed", { jars: [9] }],
      ["number one didn't go down", "seal-failed", { jars: [1] }],
      ["two jars aren't sealed", "seal-failed", { count: 2 }],
      ["there's one that never popped", "seal-failed", { count: 1 }],
      ["everything but jar two sealed", "seal-failed", { jars: [2] }],
      ["six didn't seal", "seal-failed", {}],
      ["jar two is not sealed", "seal-failed", { jars: [2] }],
      ["number nine's still up", "seal-failed", { jars: [9] }],
      ["jars four and six failed", "seal-failed", { jars: [4, 6] }],
      ["the lid on number two didn't go down", "seal-failed", { jars: [2] }],
      ["jar five pops when you press it", "seal-failed", { jars: [5] }],
      ["they all sealed", "sealed", { all: true }],
      ["all the lids went down", "sealed", { all: true }],
      ["every last one sealed", "sealed", { all: true }],
      ["all nine sealed", "sealed", { all: true }],
      ["all the others sealed", "sealed", { all: true }],
      ["the rest are sealed", "sealed", { all: true }],
      ["eight of them sealed", "sealed", { count: 8 }],
      ["jars one and two sealed", "sealed", { jars: [1, 2] }],
      ["seven sealed", "sealed", { count: 7 }],
      ["number four sealed", "sealed", { jars: [4] }],
      ["every jar is sealed tight", "sealed", { all: true }],
      ["all of them sealed", "sealed", { all: true }],
      ["looks like they all sealed", "sealed", { all: true }],
      ["every lid is down", "sealed", { all: true }],
      ["all the jars have sealed", "sealed", { all: true }],
      ["everything else sealed", "sealed", { all: true }],
      ["the others all sealed fine", "sealed", { all: true }],
      ["six of the nine sealed", "sealed", { count: 6 }],
      ["eight sealed", "sealed", { count: 8 }],
      ["jars two, four and five are sealed", "sealed", { jars: [2, 4, 5] }],
      ["jar number one sealed", "sealed", { jars: [1] }],
      ["they're all sealed", "sealed", { all: true }],
      ["all seven jars sealed", "sealed", { all: true }],
      ["the rest all sealed", "sealed", { all: true }],
      ["everything went down", "sealed", { all: true }],
      ["all sealed", "sealed", { all: true }],
      ["they've all gone down", "sealed", { all: true }],
      ["every one of them sealed", "sealed", { all: true }],
      ["all jars sealed", "sealed", { all: true }],
      ["all the lids are down", "sealed", { all: true }],
      ["nine sealed", "sealed", { count: 9 }],
      ["jars one two and three sealed", "sealed", { jars: [1, 2, 3] }],
      ["i set one aside", "set-aside", { count: 1 }],
      ["one jar's only half full", "set-aside", { count: 1 }],
      ["i'm setting the last one aside", "set-aside", { count: 1 }],
      ["set two jars aside", "set-aside", { count: 2 }],
      ["i'm setting one jar aside", "set-aside", { count: 1 }],
      ["i've set one jar aside", "set-aside", { count: 1 }],
      [
        "taste the dragon tongue crunch four flavor three",
        "taste",
        { target: "dragon tongue", crunch: 4, flavor: 3 }
      ],
      [
        "tasted the dilly beans, crunch is five and flavor is four",
        "taste",
        { target: "dilly beans", crunch: 5, flavor: 4 }
      ],
      [
        "pickled beets get flavor four, texture three",
        "taste",
        { target: "pickled beets", flavor: 4, texture: 3 }
      ],
      [
        "kraut taste test sourness two crunch four",
        "taste",
        { target: "kraut", sourness: 2, crunch: 4 }
      ],
      [
        "for the pickled beets flavor five and texture four",
        "taste",
        { flavor: 5, texture: 4, target: "pickled beets" }
      ],
      ["taste the kraut: sour three, crunch four", "taste", { crunch: 4, target: "kraut" }],
      [
        "i give the dilly beans a four for crunch and three for flavor",
        "taste",
        { crunch: 4, flavor: 3, target: "dilly beans" }
      ],
      [
        "taste for the beets flavor four crunch two",
        "taste",
        { target: "beets", flavor: 4, crunch: 2 }
      ],
      [
        "the dilly beans are a five on crunch and a four on flavor",
        "taste",
        { target: "dilly beans", crunch: 5, flavor: 4 }
      ],
      ["it's one eighty two", "temperature", { value: 182 }],
      ["thermometer reads one hundred eighty degrees", "temperature", { value: 180, unit: "F" }],
      ["the bath is at one eighty three", "temperature", { value: 183 }],
      ["water's one forty", "temperature", { value: 140, target: "water" }],
      ["jam is at two hundred and nine", "temperature", { value: 209, target: "jam" }],
      ["eighty five degrees celsius", "temperature", { value: 85, unit: "C" }],
      ["the brine is down to seventy degrees", "temperature", { value: 70, target: "brine" }],
      ["i've got 181 on the thermometer", "temperature", { value: 181 }],
      ["temperature is one seventy nine", "temperature", { value: 179 }],
      ["syrup hit 220 degrees", "temperature", { value: 220, target: "syrup" }],
      ["the jam just hit two eighteen", "temperature", { value: 218, target: "jam" }],
      ["180 degrees", "temperature", { value: 180 }],
      ["it's a hundred and eighty one", "temperature", { value: 181 }],
      ["water bath reads one eighty four", "temperature", { value: 184 }],
      ["i'm getting one eighty on the thermometer", "temperature", { value: 180 }],
      ["brine's at a hundred and forty degrees", "temperature", { value: 140, target: "brine" }],
      ["ninety celsius", "temperature", { value: 90, unit: "C" }],
      ["it reads one eighty one", "temperature", { value: 181 }],
      ["syrup is two hundred and twenty degrees", "temperature", { value: 220, target: "syrup" }],
      ["the thermometer says one eighty six", "temperature", { value: 186 }],
      ["jam's at two nineteen", "temperature", { value: 219, target: "jam" }],
      ["the water is one hundred forty degrees", "temperature", { value: 140, target: "water" }],
      ["brine is one eighty", "temperature", { value: 180, target: "brine" }],
      ["it's a hundred eighty two degrees fahrenheit", "temperature", { value: 182, unit: "F" }],
      ["eighty three celsius in the bath", "temperature", { value: 83, unit: "C" }],
      ["temp's one eighty four", "temperature", { value: 184 }],
      ["reading one eighty five", "temperature", { value: 185 }],
      ["how much longer on the beans", "time-left", { target: "beans" }],
      ["how long till the jars come out", "time-left", {}],
      ["how many minutes are left", "time-left", {}],
      ["how much time do the beets have", "time-left", { target: "beets" }],
      ["how long before the jam is done", "time-left", { target: "jam" }],
      ["what's left on the rice timer", "time-left", { target: "rice" }],
      ["how long do we have to wait", "time-left", {}],
      ["time left on the canner", "time-left", { target: "canner" }],
      ["how long does the syrup still need", "time-left", { target: "syrup" }],
      ["how much time left on the beets", "time-left", { target: "beets" }],
      ["how long now", "time-left", {}],
      ["how are the beets for time", "time-left", { target: "beets" }],
      ["how many more minutes on the canner", "time-left", { target: "canner" }],
      ["how much longer do the jars have to go", "time-left", {}],
      ["how long has the jam got left", "time-left", { target: "jam" }],
      ["how long till it's done", "time-left", {}],
      ["how much longer", "time-left", {}],
      ["how many minutes has the canner got left", "time-left", { target: "canner" }],
      ["what's the time left on the beans", "time-left", { target: "beans" }],
      ["how long are the beets going to be", "time-left", { target: "beets" }],
      ["how long have the jars got", "time-left", {}],
      ["how many minutes to go", "time-left", {}],
      ["time remaining on the beets", "time-left", { target: "beets" }],
      ["how long do the beans need", "time-left", { target: "beans" }],
      ["how long until the kraut is ready", "time-left", { target: "kraut" }],
      ["how much time is left on the jam", "time-left", { target: "jam" }],
      ["are the beans almost done", "time-left", {}],
      ["add five minutes to the rice timer", "timer-add", { minutes: 5, target: "rice" }],
      ["set a timer for 2 hours for crock 2", "timer-set", { minutes: 120, label: "crock 2" }],
      ["crock two timer for ten minutes", "timer-set", { minutes: 10, label: "crock 2" }],
      ["five more minutes for the eggs", "timer-add", { minutes: 5, target: "eggs" }],
      ["give the bread another ten minutes", "timer-add", { minutes: 10, target: "bread" }],
      ["two more minutes please", "timer-add", { minutes: 2 }],
      ["extend the rice by a minute and a half", "timer-add", { minutes: 1.5, target: "rice" }],
      ["let it have another three minutes", "timer-add", { minutes: 3 }],
      ["can you put another two minutes on the eggs", "timer-add", { minutes: 2, target: "eggs" }],
      ["rice needs four more minutes", "timer-add", { minutes: 4, target: "rice" }],
      ["add ten minutes", "timer-add", { minutes: 10 }],
      ["make the rice timer five minutes longer", "timer-add", { minutes: 5, target: "rice" }],
      ["another quarter of an hour on the bread", "timer-add", { minutes: 15, target: "bread" }],
      ["five more minutes on the timer", "timer-add", { minutes: 5 }],
      ["three more minutes", "timer-add", { minutes: 3 }],
      ["two minutes more on the rice", "timer-add", { minutes: 2, target: "rice" }],
      ["give the rice five more minutes", "timer-add", { minutes: 5, target: "rice" }],
      ["add a minute to the eggs", "timer-add", { minutes: 1, target: "eggs" }],
      ["cancel the egg timer", "timer-cancel", { target: "egg" }],
      ["stop the timer", "timer-cancel", {}],
      ["turn off the rice timer", "timer-cancel", { target: "rice" }],
      ["forget the timer for the bread", "timer-cancel", { target: "bread" }],
      ["i don't need the rice timer anymore", "timer-cancel", { target: "rice" }],
      ["get rid of that timer", "timer-cancel", {}],
      ["cancel timer", "timer-cancel", {}],
      ["the rice timer can go", "timer-cancel", { target: "rice" }],
      ["delete the egg timer", "timer-cancel", { target: "egg" }],
      ["never mind the rice timer", "timer-cancel", { target: "rice" }],
      ["stop timing the rice", "timer-cancel", { target: "rice" }],
      ["kill that timer", "timer-cancel", {}],
      ["stop the rice timer", "timer-cancel", { target: "rice" }],
      ["cancel the rice", "timer-cancel", { target: "rice" }],
      ["clear the timer", "timer-cancel", {}],
      ["drop the rice timer", "timer-cancel", { target: "rice" }],
      ["turn the rice timer off", "timer-cancel", { target: "rice" }],
      ["set a timer for ten minutes", "timer-set", { minutes: 10 }],
      ["set an eight minute timer for the eggs", "timer-set", { minutes: 8, label: "eggs" }],
      ["start a rice timer for twenty minutes", "timer-set", { minutes: 20, label: "rice" }],
      ["timer for an hour and a half", "timer-set", { minutes: 90 }],
      [
        "could you time the bread for two and a half hours",
        "timer-set",
        { minutes: 150, label: "bread" }
      ],
      ["give me five minutes on the potatoes", "timer-set", { minutes: 5, label: "potatoes" }],
      ["call me in a quarter of an hour", "timer-set", { minutes: 15 }],
      ["forty five second timer", "timer-set", { minutes: 0.75 }],
      [
        "put ten minutes on the clock for the corn bread",
        "timer-set",
        { minutes: 10, label: "corn bread" }
      ],
      ["i need a timer for ninety minutes", "timer-set", { minutes: 90 }],
      ["start a timer, seven minutes", "timer-set", { minutes: 7 }],
      ["timer, twenty five minutes, potatoes", "timer-set", { minutes: 25 }],
      ["set the timer to half an hour for the bread", "timer-set", { minutes: 30, label: "bread" }],
      ["ten minute timer please", "timer-set", { minutes: 10 }],
      ["tell me in five minutes", "timer-set", { minutes: 5 }],
      ["time the pasta for eleven minutes", "timer-set", { minutes: 11, label: "pasta" }],
      ["an hour and twenty minutes on the roast", "timer-set", { minutes: 80, label: "roast" }],
      ["wake me in two hours", "timer-set", { minutes: 120 }],
      ["start a timer called tea for four minutes", "timer-set", { minutes: 4, label: "tea" }],
      ["let me know in three quarters of an hour", "timer-set", { minutes: 45 }],
      ["timer ten minutes", "timer-set", { minutes: 10 }],
      ["set a fifteen minute timer", "timer-set", { minutes: 15 }],
      [
        "can you give me a two minute timer for the garlic",
        "timer-set",
        { minutes: 2, label: "garlic" }
      ],
      ["please set a timer for one hour for the stock", "timer-set", { minutes: 60, label: "stock" }],
      ["twelve minute timer", "timer-set", { minutes: 12 }],
      ["time me ten minutes", "timer-set", { minutes: 10 }],
      ["start a timer for the eggs, six minutes", "timer-set", { minutes: 6, label: "eggs" }],
      ["rice timer eighteen minutes", "timer-set", { minutes: 18, label: "rice" }],
      ["set twenty minutes for the rice", "timer-set", { minutes: 20, label: "rice" }],
      ["timer for two and a half minutes", "timer-set", { minutes: 2.5 }],
      ["set a timer for a quarter of an hour", "timer-set", { minutes: 15 }],
      ["undo that", "undo", {}],
      ["scratch that", "undo", {}],
      ["oops that was a mistake", "undo", {}],
      ["no take it back", "undo", {}],
      ["strike that last one", "undo", {}],
      ["i didn't mean that", "undo", {}],
      ["forget i said that", "undo", {}],
      ["no wait undo that", "undo", {}],
      ["that's wrong, take it back", "undo", {}],
      ["delete that last entry", "undo", {}],
      ["cancel that", "undo", {}],
      ["oops undo", "undo", {}],
      ["i take that back", "undo", {}],
      ["undo", "undo", {}],
      ["undo the last one", "undo", {}],
      ["no, scratch that", "undo", {}],
      ["never happened", "undo", {}],
      ["you can talk again", "unhush", {}],
      ["unmute", "unhush", {}],
      ["start talking again please", "unhush", {}],
      ["speak to me again", "unhush", {}],
      ["voice back on", "unhush", {}],
      ["okay you can speak now", "unhush", {}],
      ["turn the sound back on", "unhush", {}],
      ["you may talk again", "unhush", {}],
      ["you can speak up again now", "unhush", {}],
      ["okay talk again", "unhush", {}],
      ["speak again", "unhush", {}],
      ["stop hushing", "unhush", {}],
      ["it's venting", "venting", {}],
      ["steam's coming out of the vent", "venting", {}],
      ["we've got a steady stream of steam", "venting", {}],
      ["steam's coming out steady", "venting", {}],
      ["we're venting", "venting", {}],
      ["vent's steaming", "venting", {}],
      ["steam is coming out of the vent steadily", "venting", {}],
      ["water's getting low", "water-low", {}],
      ["the lids are showing", "water-low", {}],
      ["the water's down below the lids", "water-low", {}],
      ["the water's too low", "water-low", {}],
      ["i can see the lids", "water-low", {}],
      ["water's below the lids", "water-low", {}],
      ["water's low", "water-low", {}],
      ["lids are uncovered", "water-low", {}],
      ["the weight's rocking", "weight-rocking", {}],
      ["the jiggler started jiggling", "weight-rocking", {}],
      ["the weight is dancing steadily", "weight-rocking", {}],
      ["weight started rocking", "weight-rocking", {}],
      ["jiggler's going", "weight-rocking", {}],
      ["weight's jiggling", "weight-rocking", {}],
      ["what comes next", "what-next", {}],
      ["and after that", "what-next", {}],
      ["what's the next step", "what-next", {}],
      ["what will i be doing after this", "what-next", {}],
      ["what's coming up", "what-next", {}],
      ["then what", "what-next", {}],
      ["what happens after this", "what-next", {}],
      ["what's up next", "what-next", {}],
      ["and then what", "what-next", {}],
      ["what do we do after the beans", "what-next", {}],
      ["tell me what's next", "what-next", {}],
      ["what's the next thing", "what-next", {}],
      ["what do i do when this is done", "what-next", {}],
      ["what follows", "what-next", {}],
      ["what's the step after this", "what-next", {}],
      ["what will come next", "what-next", {}],
      ["what happens next", "what-next", {}],
      ["what do i do next", "what-next", {}],
      ["what should i do now", "what-now", {}],
      ["what do i do", "what-now", {}],
      ["so what am i supposed to be doing", "what-now", {}],
      ["what's my job right now", "what-now", {}],
      ["where were we", "what-now", {}],
      ["what needs doing", "what-now", {}],
      ["now what", "what-now", {}],
      ["what do you need me to do", "what-now", {}],
      ["what's on my plate right now", "what-now", {}],
      ["remind me what i'm supposed to be doing", "what-now", {}],
      ["what am i doing", "what-now", {}],
      ["and now what do i do", "what-now", {}],
      ["what are my hands supposed to be doing", "what-now", {}],
      ["what should i be doing", "what-now", {}],
      ["what do you want me to do now", "what-now", {}],
      ["tell me what to do", "what-now", {}],
      ["what's to do", "what-now", {}],
      ["what am i supposed to do now", "what-now", {}],
      ["yes", "yes", {}],
      ["yes please", "yes", {}],
      ["sure go ahead", "yes", {}],
      ["yep that's right", "yes", {}],
      ["absolutely", "yes", {}],
      ["of course", "yes", {}],
      ["yes do it", "yes", {}],
      ["go ahead", "yes", {}],
      ["yup", "yes", {}],
      ["yes that's correct", "yes", {}],
      ["yes it did", "yes", {}],
      ["sure", "yes", {}],
      ["yes it is", "yes", {}],
      ["yeah", "yes", {}],
      ["yes go ahead", "yes", {}],
      ["do it", "yes", {}],
      ["sure thing", "yes", {}],
      ["start a batch of sauerkraut", "begin", { recipe: "sauerkraut" }],
      ["i'm gonna make bread and butters", "begin", { recipe: "bread-and-butter-pickles" }],
      ["can we do snap beans", "begin", { recipe: "snap-beans" }],
      ["let's put up pickled beets, six pounds", "begin", { recipe: "pickled-beets", weightLb: 6 }],
      ["let's do another load of dilly beans", "begin", { recipe: "dilled-green-beans" }],
      ["i'd love to make some apple butter", "begin", { recipe: "apple-butter" }],
      ["okay finished with that one", "done", {}],
      ["that one's finished too", "done", {}],
      ["right, that's done", "done", {}],
      ["beets are peeled", "done", {}],
      ["jars are washed and hot", "done", {}],
      ["just took the jars out", "done", {}],
      ["the jars are on the counter", "done", {}],
      ["what was that you said", "repeat", {}],
      ["say again", "repeat", {}],
      ["repeat yourself", "repeat", {}],
      ["what's my next move", "what-next", {}],
      ["what should i do next", "what-next", {}],
      ["what do i do after that", "what-next", {}],
      ["what now then", "what-now", {}],
      ["what's needed now", "what-now", {}],
      ["what should i do", "what-now", {}],
      ["how long on the jam", "time-left", { target: "jam" }],
      ["how much longer have the jars got", "time-left", {}],
      ["how many minutes left on the rice", "time-left", { target: "rice" }],
      ["how long does the canner have to go", "time-left", { target: "canner" }],
      ["when will the jam be finished", "finish-time", { target: "jam" }],
      ["what time do the jars come out", "finish-time", {}],
      ["when are the jars due out", "finish-time", {}],
      ["when will everything be done", "finish-time", {}],
      ["how are we doing", "overview", {}],
      ["what's the status", "overview", {}],
      ["how are all the batches doing", "overview", {}],
      ["tell me what's running", "overview", {}],
      ["it's at a boil", "boiling", {}],
      ["it's come back to a boil", "boiling", {}],
      ["we have boil", "boiling", {}],
      ["the water's at a full boil", "boiling", { target: "water" }],
      ["it began to boil three minutes ago", "boiling", { at: "2027-08-14T13:57:00" }],
      ["it's been boiling since twenty to two", "boiling", { at: "2027-08-14T13:40:00" }],
      ["boiling hard, lids covered", "boiling", { covered: true }],
      ["it's boiling with the lids under water", "boiling", { covered: true }],
      ["the boil dropped off", "boil-lost", {}],
      ["it went flat, no more boil", "boil-lost", {}],
      ["it's stopped bubbling", "boil-lost", {}],
      ["the canner has gone off the boil", "boil-lost", { target: "canner" }],
      ["i lost the boil", "boil-lost", {}],
      ["twelve pounds on the dial", "pressure", { value: 12, unit: "psi" }],
      ["we've reached eleven pounds", "pressure", { value: 11, unit: "psi" }],
      ["needle's on thirteen", "pressure", { value: 13, unit: "psi" }],
      ["seventy five kilopascals on the gauge", "pressure", { value: 75, unit: "kPa" }],
      ["eleven and a half psi", "pressure", { value: 11.5, unit: "psi" }],
      ["syrup is up to two fifteen", "temperature", { value: 215, target: "syrup" }],
      ["the brine's at one ninety", "temperature", { value: 190, target: "brine" }],
      ["it's holding at one eighty two degrees", "temperature", { value: 182 }],
      ["thermometer's at one eighty one", "temperature", { value: 181 }],
      ["ninety five degrees celsius", "temperature", { value: 95, unit: "C" }],
      ["nine pints filled", "jars-filled", { count: 9, size: "pint" }],
      ["i've got six quarts filled", "jars-filled", { count: 6, size: "quart" }],
      ["that gives us eight pints", "jars-filled", { count: 8, size: "pint" }],
      ["twelve half pints in all", "jars-filled", { count: 12, size: "half-pint" }],
      ["all nine of them sealed", "sealed", { all: true }],
      ["the whole lot sealed", "sealed", { all: true }],
      ["seven of the jars sealed", "sealed", { count: 7 }],
      ["jars two and six sealed", "sealed", { jars: [2, 6] }],
      ["all the rest sealed", "sealed", { all: true }],
      ["number seven failed to seal", "seal-failed", { jars: [7] }],
      ["lid three didn't go down", "seal-failed", { jars: [3] }],
      ["three of them never sealed", "seal-failed", { count: 3 }],
      ["jar six came unsealed", "seal-failed", { jars: [6] }],
      ["put that one in the fridge", "disposition", { what: "refrigerate" }],
      ["i'll run it through again", "disposition", { what: "reprocess" }],
      ["toss it out", "disposition", { what: "discard" }],
      ["let's put them in the freezer", "disposition", { what: "freeze" }],
      ["we are at sixty two hundred feet", "altitude", { feet: 6200 }],
      ["elevation's six thousand feet", "altitude", { feet: 6e3 }],
      ["set a ten minute timer", "timer-set", { minutes: 10 }],
      ["start a five minute timer for the eggs", "timer-set", { minutes: 5, label: "eggs" }],
      ["put a timer on for half an hour", "timer-set", { minutes: 30 }],
      ["timer for the bread thirty five minutes", "timer-set", { minutes: 35, label: "bread" }],
      ["add two minutes to the rice", "timer-add", { minutes: 2, target: "rice" }],
      ["another five minutes on the rice", "timer-add", { minutes: 5, target: "rice" }],
      ["give it two more minutes", "timer-add", { minutes: 2 }],
      ["cancel the timer for the rice", "timer-cancel", { target: "rice" }],
      ["forget the rice timer", "timer-cancel", { target: "rice" }],
      [
        "remind me tomorrow at noon to turn the crock",
        "remind",
        { when: "2027-08-15T12:00:00", text: "turn the crock" }
      ],
      [
        "remind me at quarter to six to call home",
        "remind",
        { when: "2027-08-14T17:45:00", text: "call home" }
      ],
      [
        "remind me to check the lids in an hour and a half",
        "remind",
        { when: "2027-08-14T15:30:00", text: "check the lids" }
      ],
      ["note that we're low on lids", "note", { text: "we're low on lids" }],
      ["put in a note that the vinegar was cider", "note", { text: "the vinegar was cider" }],
      ["just a minute", "hold", {}],
      ["hold on a minute", "hold", {}],
      ["hold everything", "hold", {}],
      ["let's take a break", "hold", {}],
      ["okay let's continue", "resume", {}],
      ["back to work", "resume", {}],
      ["go ahead and carry on", "resume", {}],
      ["undo that last one", "undo", {}],
      ["that was wrong", "undo", {}],
      ["oh no take that back", "undo", {}],
      ["it was ten minutes ago", "correct-time", { at: "2027-08-14T13:50:00" }],
      ["actually that was at half past one", "correct-time", { at: "2027-08-14T13:30:00" }],
      ["that was about five minutes ago", "correct-time", { at: "2027-08-14T13:55:00" }],
      ["okay thank you", "acknowledge", {}],
      ["right you are", "acknowledge", {}],
      ["fine", "acknowledge", {}],
      ["be quiet for twenty minutes", "hush", { minutes: 20 }],
      ["shh", "hush", {}],
      ["mute for an hour", "hush", { minutes: 60 }],
      ["you can speak again", "unhush", {}],
      ["okay you can talk now", "unhush", {}],
      ["turn your voice back on", "unhush", {}],
      ["ditch this batch", "abandon", {}],
      ["forget about the beets", "abandon", { target: "beets" }],
      ["get rid of this batch", "abandon", {}],
      ["yes sir", "yes", {}],
      ["yep go for it", "yes", {}],
      ["no please don't", "no", {}],
      ["nope leave it", "no", {}],
      ["how do you work", "help", {}],
      ["tell me what i can say", "help", {}],
      ["take me to the beets", "focus", { target: "beets" }],
      ["talk about the jam", "focus", { target: "jam" }],
      ["opened a pint of dilly beans", "opened", { count: 1, size: "pint", target: "dilly beans" }],
      ["dilly beans crunch five flavor four", "taste", { crunch: 5, flavor: 4, target: "dilly beans" }],
      ["pressure went down", "pressure-lost", {}],
      ["the weight is rattling", "weight-rocking", {}],
      ["good steam coming out", "venting", {}],
      ["jars went into the canner", "loaded", {}],
      ["the water needs topping up", "water-low", {}],
      ["jar two is cracked", "jar-broken", { jars: [2] }],
      ["i put one aside", "set-aside", { count: 1 }],
      ["how much salt per jar", "how-much", {}]
    ];
  }
});

// tests/language/sample.ts
var sample_exports = {};
__export(sample_exports, {
  SAMPLE: () => SAMPLE
});
var SAMPLE;
var init_sample = __esm({
  "tests/language/sample.ts"() {
    "use strict";
    SAMPLE = [
      ["start the pickled beets", "begin", { recipe: "pickled-beets" }],
      ["i'd like to make dilled beans", "begin", { recipe: "dilled-green-beans" }],
      ["that's finished", "done", {}],
      ["next", "done", {}],
      ["say it again", "repeat", {}],
      ["what now", "what-now", {}],
      ["what's after that", "what-next", {}],
      ["how long have the beets got", "time-left", { target: "beets" }],
      ["when do the jars come out", "finish-time", {}],
      ["how is everything going", "overview", {}],
      ["it's come to a boil", "boiling", {}],
      ["rolling boil since two minutes ago", "boiling", { at: "2027-08-14T13:58:00" }],
      ["it went off the boil", "boil-lost", {}],
      ["ten and a half pounds on the gauge", "pressure", { value: 10.5, unit: "psi" }],
      ["syrup's at two twenty", "temperature", { value: 220, target: "syrup" }],
      ["that's eight pints filled", "jars-filled", { count: 8, size: "pint" }],
      ["everything sealed", "sealed", { all: true }],
      ["lid on number six never went down", "seal-failed", { jars: [6] }],
      ["timer for twelve minutes please", "timer-set", { minutes: 12 }],
      ["put three more minutes on the rice", "timer-add", { minutes: 3, target: "rice" }],
      ["kill the rice timer", "timer-cancel", { target: "rice" }],
      ["remind me sunday morning at nine to wipe the jars", "remind", { when: "2027-08-15T09:00:00" }],
      ["note that the dill had gone to seed", "note", { text: "the dill had gone to seed" }],
      ["wait a moment", "hold", {}],
      ["let's go on", "resume", {}],
      ["take that back", "undo", {}],
      ["actually that was a quarter of an hour ago", "correct-time", { at: "2027-08-14T13:45:00" }],
      ["all right", "acknowledge", {}],
      ["hush for five minutes", "hush", { minutes: 5 }],
      ["okay speak up again", "unhush", {}],
      ["toss this batch", "abandon", {}],
      ["yeah do it", "yes", {}],
      ["no don't", "no", {}],
      ["what can you do", "help", {}],
      ["go to the beans", "focus", { target: "beans" }],
      ["will you be home for supper", "unknown", {}],
      ["was it boiling before", "unknown", {}],
      ["let me know if it boils", "unknown", {}]
    ];
  }
});

// .b.ts
var root = process.argv[2];
var { understand: understand2 } = await Promise.resolve().then(() => (init_understand(), understand_exports));
var { CHATTER: CHATTER2 } = await Promise.resolve().then(() => (init_chatter(), chatter_exports));
var { COMMANDS: COMMANDS2 } = await Promise.resolve().then(() => (init_commands(), commands_exports));
var { SAMPLE: SAMPLE2 } = await Promise.resolve().then(() => (init_sample(), sample_exports));
var recipes = [];
var ctx = () => ({ nowMs: 18182736e5, zone: "America/Denver", recipes, running: [
  { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" },
  { id: "b-2", recipe: "pickled-beets" },
  { id: "b-3", recipe: "dilled-green-beans", variety: "Dragon Tongue" }
], timers: [{ id: "t-1", label: "rice" }] });
var texts = [...SAMPLE2, ...COMMANDS2].map(([t]) => t).concat(CHATTER2);
var c0 = process.cpuUsage();
understand2("it's boiling", ctx());
var c = process.cpuUsage(c0);
var first = (c.user + c.system) / 1e3;
for (const t of texts) understand2(t, ctx());
var best = [];
for (let r = 0; r < 12; r++) {
  c0 = process.cpuUsage();
  for (const t of texts) understand2(t, ctx());
  c = process.cpuUsage(c0);
  best.push((c.user + c.system) / 1e3);
}
best.sort((a, b) => a - b);
console.log("first", first.toFixed(0), "ms cpu; best round", best[0].toFixed(0), "median", best[6].toFixed(0), "->", Math.round(texts.length / best[0] * 1e3), "/s");
