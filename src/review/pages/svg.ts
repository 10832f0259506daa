/** Elements of inline drawings. Attribute values and texts are escaped. */
import { escaped, html, type Markup, raw } from "./html.ts";

type Child = Markup | readonly Markup[] | string | null;

function inner(child: Child): string {
  if (child === null) return "";
  if (typeof child === "string") return escaped(child);
  return "markup" in child ? child.markup : child.map((one) => one.markup).join("");
}

/** One element; numbers are written to a tenth. */
export function element(
  tag: string,
  attributes: Readonly<Record<string, string | number>>,
  ...children: Child[]
): Markup {
  const written = Object.entries(attributes).map(([name, value]) => {
    const text = typeof value === "number" ? String(Math.round(value * 10) / 10) : value;
    return ` ${name}="${escaped(text)}"`;
  });
  const content = children.map(inner).join("");
  const tail = content === "" ? "/>" : `>${content}</${tag}>`;
  return raw(`<${tag}${written.join("")}${tail}`);
}

/** Text at a place, which marks its `start`, `middle` or `end`. */
export function svgText(
  x: number,
  y: number,
  words: string,
  anchor: "start" | "middle" | "end",
  soft = false,
): Markup {
  const look: Record<string, string> = soft ? { class: "soft" } : {};
  return element("text", { ...look, x, y, "text-anchor": anchor }, words);
}

/** Words shown when pointing at an element, and read out for it. */
export function hint(words: string): Markup {
  return element("title", {}, words);
}

/** A whole drawing, which scrolls where the window is too narrow for it to be readable. */
export function drawing(label: string, width: number, height: number, ...parts: Child[]): Markup {
  const box = `0 0 ${width} ${height}`;
  const svg = element("svg", { viewBox: box, role: "img", "aria-label": label }, ...parts);
  return html`<div class="wide" role="region" tabindex="0" aria-label="${`Drawing: ${label}`}">
${svg}</div>
`;
}
