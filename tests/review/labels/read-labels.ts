/** Reads labels back from a PDF: what another program finds in it, and where. */
import { getDocumentProxy } from "unpdf";

/** A piece of text with its size and where its baseline begins, points from the page's left top. */
export type ReadText = { text: string; size: number; x: number; y: number; width: number };

export type ReadPage = { width: number; height: number; texts: ReadText[] };

type Item = { str: string; transform: number[]; width: number };

/** What stands on each page. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPage[]> {
  const document = await getDocumentProxy(new Uint8Array(bytes));
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const content = await page.getTextContent();
    const texts = (content.items as Partial<Item>[]).flatMap((item) => {
      const { str = "", transform = [], width = 0 } = item;
      if (str.trim() === "") return [];
      const [, , , size = 0, x = 0, y = 0] = transform;
      return [{ text: str.trim(), size, x: x - left, y: top - y, width }];
    });
    pages.push({ width: right - left, height: top - bottom, texts });
  }
  return pages;
}
