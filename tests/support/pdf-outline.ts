import '../../server/src/host/pdf/surroundings.ts';
import type { PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/* What a reader of PDFs shows beside the pages: bookmarks, links, and the lines of each page. */

export interface Bookmark {
  readonly title: string;
  /** Counted from 1. */
  readonly sheet: number;
}

function opened(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  return getDocument({ data: bytes, verbosity: 0, isEvalSupported: false, useSystemFonts: false }).promise;
}

/** All bookmarks, outermost first, in the order of the pages. */
export async function bookmarksOf(bytes: Uint8Array): Promise<readonly Bookmark[]> {
  const document = await opened(bytes);
  const found: Bookmark[] = [];
  const walk = async (nodes: Awaited<ReturnType<PDFDocumentProxy['getOutline']>>): Promise<void> => {
    for (const { title, dest, items } of nodes ?? []) {
      found.push({ title: wordsOf(title), sheet: await sheetOf(document, dest) });
      await walk(items);
    }
  };
  await walk(await document.getOutline());
  return found;
}

/** The sheets that links on a sheet lead to. */
export async function linksOf(bytes: Uint8Array, sheet: number): Promise<readonly number[]> {
  const document = await opened(bytes);
  const links: { readonly subtype: string; readonly dest?: string }[] = await (
    await document.getPage(sheet)
  ).getAnnotations();
  return Promise.all(
    links.filter(({ subtype }) => subtype === 'Link').map(({ dest }) => sheetOf(document, dest ?? null)),
  );
}

function wordsOf(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

async function sheetOf(document: PDFDocumentProxy, dest: unknown): Promise<number> {
  const place: unknown = typeof dest === 'string' ? await document.getDestination(dest) : dest;
  const [page] = Array.isArray(place) ? (place as readonly unknown[]) : [];
  return (await document.getPageIndex(page as Parameters<PDFDocumentProxy['getPageIndex']>[0])) + 1;
}

/** The lines of each page from top to bottom. */
export async function pageTextsOf(bytes: Uint8Array): Promise<readonly (readonly string[])[]> {
  const document = await opened(bytes);
  const pages: (readonly string[])[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const { items } = await (await document.getPage(number)).getTextContent();
    const lines = new Map<number, { readonly left: number; readonly text: string }[]>();
    for (const item of items) {
      if (!('str' in item) || item.str === '') continue;
      const [left, height] = [Number(item.transform[4]), Math.round(Number(item.transform[5]))];
      lines.set(height, [...(lines.get(height) ?? []), { left, text: item.str }]);
    }
    const sorted = [...lines].sort(([a], [b]) => b - a).map(([, parts]) => parts.sort((a, b) => a.left - b.left));
    pages.push(sorted.map((parts) => wordsOf(parts.map(({ text }) => text).join(''))));
  }
  return pages;
}
