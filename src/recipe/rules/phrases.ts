/*
 * Phrases that rules look for, written as they are said: `turn* ~2 jars? ~2 over` is any form of
 * turn, up to two words, a jar or jars, up to two words, and over.
 */

function patternOf(phrase: string): string {
  return phrase
    .replace(/ ~(\d) /g, "(?: [\\w'-]+){0,$1} ")
    .replaceAll("*", "\\w*")
    .replace(/\((?!\?)/g, "(?:");
}

/** Any of the phrases, as whole words in a sentence in lower case. */
export function phrases(...written: string[]): RegExp {
  return new RegExp(`\\b(?:${written.map(patternOf).join("|")})\\b`);
}

/** Either of several patterns. */
export function either(...patterns: RegExp[]): RegExp {
  return new RegExp(patterns.map(({ source }) => source).join("|"));
}

/** Something needed (`salt`, `vent(ing)?`) that is left out, lessened or called needless. */
export function without(needed: string): RegExp {
  const it = `(${needed})`;
  return phrases(
    `(skip|omit|forget|drop|leave out|leave off|ignore)* ~2 ${it}`,
    `(cut|halve|thin|dilute|weaken|reduce)* ~2 ${it}`,
    `(leave|left|leaving|cut|water) ~2 ${it} (out|off|down|in 0\\.5|away|altogether)`,
    `(no need|needn't|no sense|no point|no use|no reason) ~3 ${it}`,
    `(don't|doesn't|do not|does not|never|not) (\\w+ )?(need|bother)* ~3 ${it}`,
    `(rinse|wash)* (the )?${it} off`,
    `(needs? no|(hardly|barely|scarcely) needs?) (\\w+ )?${it}`,
    `without (the |any )?${it}`,
    `(less|(only )?0\\.\\d+( of)? the|0\\.5 as much) ${it}`,
    `${it} ~2 (is|are) (\\w+ )?(waste|not needed|unneeded|unnecessary|needless|optional|nonsense)`,
    `${it} ~2 (is|are) for worriers`,
  );
}
