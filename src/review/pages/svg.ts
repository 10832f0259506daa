/** Elements of inline drawings. Attribute values and texts are escaped. */
import { escaped, type Markup, raw } from "./html.ts";

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

/** A share of the width, 0 to 1, as drawings that fit any screen are measured in. */
export function share(part: number): string {
  return `${Math.round(part * 10_000) / 100}%`;
}

/** Something drawn around a place, in its own pixels. */
export function placed(at: number, ...children: Child[]): Markup {
  return element("svg", { x: share(at), overflow: "visible" }, ...children);
}

/** Words shown when pointing at an element. */
export function hint(words: string): Markup {
  return element("title", {}, words);
}
