/** What is used of fontkit, which brings no types of its own. */
declare module "fontkit" {
  export type Font = {
    unitsPerEm: number;
    hasGlyphForCodePoint(code: number): boolean;
    layout(text: string): { advanceWidth: number };
  };
  export function create(bytes: Uint8Array): Font;
}
