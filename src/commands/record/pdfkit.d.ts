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
    registerFont(name: string, file: Uint8Array): this;
    font(name: string): this;
    fontSize(size: number): this;
    fillColor(color: string): this;
    lineWidth(points: number): this;
    rect(x: number, y: number, width: number, height: number): this;
    fill(color: string): this;
    stroke(color: string): this;
    text(
      text: string,
      x: number,
      y: number,
      options: { lineBreak: boolean; baseline: "alphabetic" },
    ): this;
    end(): void;
  }
}
