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

/** Figures, dates and spans of up to this many letters are not broken into lines. */
const WHOLE_CELL = 18;
/** Words of more letters than this may be broken anywhere: no column is made for them. */
const LONG_WORD = /[^\s-]{19,}/g;

type Cell = string | number | Markup;

/** What a cell holds, with long words marked as such. */
function content(cell: Cell): Value {
  if (typeof cell !== "string") return cell;
  const short = cell.split(LONG_WORD);
  if (short.length === 1) return cell;
  const long = cell.match(LONG_WORD) ?? [];
  return short.map((text, at) => {
    const word = long[at];
    return html`${text}${word !== undefined && html`<span class="long">${word}</span>`}`;
  });
}

function whole(cell: Cell): Markup | null {
  const short = typeof cell !== "object" && /^\d.*$/s.test(String(cell));
  return short && String(cell).length <= WHOLE_CELL ? raw(' class="whole"') : null;
}

/**
 * A table with a caption, row heads in the first column, and cells already markup or text. A narrow
 * screen shows each row as a list, so the roles are written down and each cell knows its head.
 */
export function table(
  caption: string,
  heads: readonly string[],
  rows: readonly (readonly Cell[])[],
): Markup {
  const head = heads.map((one) => html`<th scope="col" role="columnheader">${one}</th>`);
  const body = rows.map((row) => {
    const cells = row.map((one, at) => {
      if (at > 0) {
        return html`<td role="cell" data-head="${heads[at]}"${whole(one)}>${content(one)}</td>`;
      }
      return html`<th scope="row" role="rowheader"${whole(one)}>${content(one)}</th>`;
    });
    return html`<tr role="row">${cells}</tr>\n`;
  });
  return html`<table role="table"><caption>${caption}</caption>
<thead role="rowgroup"><tr role="row">${head}</tr></thead>
<tbody role="rowgroup">
${body}</tbody></table>
`;
}
