import { either, type Is, isCount, isText, listOf, recordOf } from '../page/forms.ts';
import { type Sheet, sheetFields } from '../page/sheet.ts';

/** Where a cell leads, as the server says it. */
export interface SheetPlace {
  readonly uri: string;
  readonly range: {
    readonly start: { readonly line: number; readonly character: number };
    readonly end: { readonly line: number; readonly character: number };
  };
}

/** The sheet as the server sends it: for the file `uri`, with places that can be opened. */
export interface ServerSheet extends Omit<Sheet, 'places'> {
  readonly uri: string;
  readonly places: readonly (SheetPlace | null)[];
}

const isPosition = recordOf<SheetPlace['range']['start']>({ line: isCount, character: isCount });
const isPlace = recordOf<SheetPlace>({
  uri: isText,
  range: recordOf<SheetPlace['range']>({ start: isPosition, end: isPosition }),
});
const isNull: Is<null> = (value): value is null => value === null;

export const isServerSheet: Is<ServerSheet> = recordOf<ServerSheet>({
  ...sheetFields,
  uri: isText,
  places: listOf(either(isPlace, isNull)),
});
