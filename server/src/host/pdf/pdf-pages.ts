import './surroundings.ts';
import type { PDFDocumentProxy, PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { WorkerMessageHandler } from 'pdfjs-dist/legacy/build/pdf.worker.mjs';
import type { KeptPage, UnreadReason } from '../../library/kept-file.ts';
import { keptFileLimits } from '../../library/kept-file.ts';
import { cleanPaste } from '../../quantity/prose/clean-paste.ts';

/** Where the reader looks for its second half: otherwise it would load it from a file. */
(globalThis as Record<string, unknown>).pdfjsWorker = { WorkerMessageHandler };

export type PdfPages = { readonly pages: readonly KeptPage[] } | { readonly why: UnreadReason };

/**
 * The text of each page of a PDF. Nothing in it is run, drawn, fetched or filled in: scripts, fonts, forms and images are left alone. Takes
 * the bytes over. Never throws.
 */
export async function pagesOf(bytes: Uint8Array): Promise<PdfPages> {
  if (!beginsAsPdf(bytes)) return { why: 'no-pdf' };
  try {
    const document = await getDocument({
      data: bytes,
      verbosity: 0,
      isEvalSupported: false,
      enableXfa: false,
      useWasm: false,
      useWorkerFetch: false,
      useSystemFonts: false,
      disableFontFace: true,
      disableAutoFetch: true,
      isOffscreenCanvasSupported: false,
      isImageDecoderSupported: false,
      maxImageSize: 0,
    }).promise;
    return await textOf(document);
  } catch (thrown) {
    return { why: thrown instanceof Error && thrown.name === 'PasswordException' ? 'locked' : 'broken' };
  }
}

/** Some producers put a few bytes before the mark; readers allow a thousand. */
function beginsAsPdf(bytes: Uint8Array): boolean {
  return Buffer.from(bytes.subarray(0, 1_029)).includes('%PDF-');
}

async function textOf(document: PDFDocumentProxy): Promise<PdfPages> {
  if (document.numPages > keptFileLimits.pages) return { why: 'too-many-pages' };
  const labels = await document.getPageLabels().catch(() => null);
  const pages: KeptPage[] = [];
  let characters = 0;
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const text = cleanPaste(await pageText(page)).text.trim();
    characters += text.length;
    if (characters > keptFileLimits.characters) return { why: 'too-large' };
    const label = labels?.[number - 1];
    pages.push({ text, ...(label && label !== String(number) && { label }) });
    page.cleanup();
  }
  return { pages };
}

/** In the order in which the document has it, which is the order in which it would be pasted. */
async function pageText(page: PDFPageProxy): Promise<string> {
  const { items } = await page.getTextContent({ disableNormalization: true });
  let text = '';
  for (const item of items) if ('str' in item) text += item.hasEOL ? `${item.str}\n` : item.str;
  return text;
}
