import type { KeptFile, KeptPage } from '../../library/kept-file.ts';
import { keptPath, plainChecksum } from '../../library/kept-file.ts';
import type { LibraryView } from '../../library/view.ts';
import type { Source } from '../../model/entities/source.generated.ts';
import type { SearchPage, SearchQuote } from '../../quantity/prose/page-search.ts';
import { runsOver, searchPage, searchQuote, standsOn } from '../../quantity/prose/page-search.ts';
import type { Kind } from '../../schema/kinds.ts';
import { type RegisteredDocument, registeredOf } from './documents.ts';

/** Kinds that quote documents. */
export const quotingKinds = [
  'device',
  'packaging',
  'chemistry',
  'washer',
  'ultrasonic',
  'sterilizer',
  'monitor',
  'procedure',
  'response',
] as const satisfies readonly Kind[];

export type ReadFile = Extract<KeptFile, { state: 'read' }>;

/** A registered document whose file the library keeps, with what that holds. */
export interface KeptDocument {
  readonly document: RegisteredDocument;
  readonly file: KeptFile;
  /** The name of the file, without its folder. */
  readonly name: string;
}

/** The file of the document that a source names; undefined where it names none, or nobody has looked. */
export function keptDocumentOf(source: Source, view: LibraryView): KeptDocument | undefined {
  const document = registeredOf(source, view);
  return document === undefined ? undefined : fileOf(document, view);
}

export function fileOf(document: RegisteredDocument, view: LibraryView): KeptDocument | undefined {
  const path = document.file === undefined ? undefined : keptPath(document.file);
  const file = path === undefined ? undefined : view.keptFile(path);
  if (path === undefined || file === undefined) return undefined;
  return { document, file, name: path.slice(path.lastIndexOf('/') + 1) };
}

/** True when the stored checksum is that of another file. */
export function hasChanged({ document, file }: KeptDocument): boolean {
  const stored = document.checksum?.text;
  if (stored === undefined || file.state === 'missing' || file.sha256 === undefined) return false;
  return plainChecksum(stored) !== file.sha256;
}

export function isScan({ pages }: ReadFile): boolean {
  return pages.every(({ text }) => text === '');
}

/** Pages are made ready once; they never change. */
const ready = new WeakMap<KeptPage, SearchPage>();

export function readyPage(page: KeptPage): SearchPage {
  const known = ready.get(page);
  if (known !== undefined) return known;
  const made = searchPage(page.text);
  ready.set(page, made);
  return made;
}

/** Indices of the pages that a page number can mean: as the file counts them, or as they are printed. */
export function pagesNumbered(number: number, { pages }: ReadFile): readonly number[] {
  const found: number[] = [];
  for (const [index, { label }] of pages.entries())
    if (index + 1 === number || label === String(number)) found.push(index);
  return found;
}

export type QuotePlace =
  | { readonly stands: 'there' }
  /** On other pages only; indices. */
  | { readonly stands: 'elsewhere'; readonly pages: readonly number[] }
  /** The page named is a picture, and no other page holds the quote. */
  | { readonly stands: 'unknown' }
  | { readonly stands: 'nowhere' };

/** Where a quote stands in a file. Without a page number any page will do. */
export function placeOf(quote: string, page: number | undefined, file: ReadFile): QuotePlace {
  const wanted = searchQuote(quote);
  const named = page === undefined ? file.pages.map((_, index) => index) : pagesNumbered(page, file);
  if (named.some((index) => standsFrom(index, wanted, file))) return { stands: 'there' };
  const others = file.pages.flatMap((one, index) => (standsOn(readyPage(one), wanted) ? [index] : []));
  if (others.length > 0) return { stands: 'elsewhere', pages: others };
  return { stands: named.some((index) => file.pages[index]?.text === '') ? 'unknown' : 'nowhere' };
}

function standsFrom(index: number, quote: SearchQuote, { pages }: ReadFile): boolean {
  const [page, next] = [pages[index], pages[index + 1]];
  if (page === undefined) return false;
  if (standsOn(readyPage(page), quote)) return true;
  return next !== undefined && runsOver(readyPage(page), readyPage(next), quote);
}
