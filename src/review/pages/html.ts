/** HTML as text: everything that came from a person or a file is escaped on its way in. */

const ENTITIES: Record<string, string> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text for an element or an attribute in double quotes; control characters become spaces. */
export function escaped(text: string | number): string {
  return String(text)
    .replace(/[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069]+/gu, " ")
    .replace(/[&<>"']/g, (one) => ENTITIES[one] ?? one);
}

/** Pieces of markup that are known to be safe, as `html` makes them. */
export type Markup = { readonly markup: string };

export function raw(markup: string): Markup {
  return { markup };
}

type Value = string | number | Markup | readonly Markup[] | null | undefined | false;

function shown(value: Value): string {
  if (value === null || value === undefined || value === false) return "";
  if (typeof value === "string" || typeof value === "number") return escaped(value);
  if ("markup" in value) return value.markup;
  return value.map((one) => one.markup).join("");
}

/** A template whose values are escaped unless they are markup already. */
export function html(parts: TemplateStringsArray, ...values: Value[]): Markup {
  let markup = parts[0] ?? "";
  values.forEach((value, index) => {
    markup += shown(value) + (parts[index + 1] ?? "");
  });
  return { markup };
}

/** Cells of up to this many letters are not broken into lines. */
const WHOLE_CELL = 18;

function whole(cell: string | number | Markup): Markup | null {
  const short = typeof cell !== "object" && String(cell).length <= WHOLE_CELL;
  return short ? raw(' class="whole"') : null;
}

/** A table with a caption, row heads in the first column, and cells already markup or text. */
export function table(
  caption: string,
  heads: readonly string[],
  rows: readonly (readonly (string | number | Markup)[])[],
): Markup {
  const head = heads.map((one) => html`<th scope="col">${one}</th>`);
  const body = rows.map((row) => {
    const [first = "", ...rest] = row;
    const cells = rest.map((one) => html`<td${whole(one)}>${one}</td>`);
    return html`<tr><th scope="row"${whole(first)}>${first}</th>${cells}</tr>\n`;
  });
  return html`<div class="wide" role="region" tabindex="0" aria-label="${caption}">
<table><caption>${caption}</caption>
<thead><tr>${head}</tr></thead>
<tbody>
${body}</tbody></table></div>
`;
}
