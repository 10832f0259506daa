/** What is used of pdfkit, which brings no types of its own. Lengths are points, 72 to the inch. */
declare module "pdfkit" {
  export default class PDFDocument {
    constructor(options: {
      size: [number, number];
      margin: number;
      autoFirstPage: boolean;
      info: { Title: string; Creator: string; CreationDate: Date };
    });
    on(event: "data", take: (chunk: Uint8Array) => void): this;
    on(event: "end", take: () => void): this;
    addPage(): this;
    font(name: string): this;
    fontSize(size: number): this;
    widthOfString(text: string): number;
    text(text: string, x: number, y: number, options: { lineBreak: boolean }): this;
    end(): void;
  }
}
