import type { FileId } from '../../base/brand.ts';
import type { Span } from '../../base/span.ts';
import type { SheetContent } from '../../panel/set-sheet.ts';

/** The set sheet: what a panel beside the text shows about one set, with the places that its cells lead to. */
export interface SetSheet extends SheetContent {
  readonly places: readonly SheetPlace[];
}

export interface SheetPlace {
  readonly file: FileId;
  readonly span: Span;
}
