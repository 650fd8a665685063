import type {
  BarRow,
  Bars,
  BarsBlock,
  Cell,
  Choice,
  Choices,
  ListBlock,
  Mark,
  SheetBlock,
  SheetContent,
  SheetItem,
  SheetSection,
  Stretch,
  TableBlock,
  TextBlock,
} from '../../server/src/panel/set-sheet.ts';
import { either, type Is, isCount, isFlag, isShare, isText, listOf, maybe, recordOf, word } from './forms.ts';

/** The set sheet as the page draws it, and the form of every message between the two. Nothing here knows what the texts mean. */
export interface Sheet extends SheetContent {
  /** Where cells lead, as shown to people; what opens is the client's to know. */
  readonly places: readonly string[];
}

const isMark: Is<Mark> = word('fits', 'note', 'asks', 'fails');
const isTexts = listOf(isText);
const isStretch = recordOf<Stretch>({ from: isShare, to: isShare });
const cell = { text: isText, mark: maybe(isMark), place: maybe(isCount) };
const isItem = recordOf<SheetItem>({ ...cell, quote: maybe(isText), from: maybe(isText), details: isTexts });
const isBarRow = recordOf<BarRow>({
  name: isText,
  given: isText,
  gap: isText,
  mark: isMark,
  stretch: maybe(isStretch),
});
const isBars = recordOf<Bars>({
  title: isText,
  required: isText,
  place: maybe(isCount),
  band: maybe(isStretch),
  rows: listOf(isBarRow),
});
const isBlock: Is<SheetBlock> = either(
  either(
    recordOf<TextBlock>({ is: word('text'), text: isText }),
    recordOf<TableBlock>({
      is: word('table'),
      head: isTexts,
      rows: listOf(listOf(listOf(recordOf<Cell>(cell)))),
    }),
  ),
  either(
    recordOf<ListBlock>({ is: word('list'), ordered: isFlag, items: listOf(isItem) }),
    recordOf<BarsBlock>({ is: word('bars'), bars: listOf(isBars) }),
  ),
);
const isChoices = recordOf<Choices>({
  title: isText,
  takes: word('one', 'many'),
  options: listOf(recordOf<Choice>({ key: isText, label: isText, about: isText, on: isFlag })),
});

/** All but the places, which server and page see in different forms. */
export const sheetFields = {
  set: isText,
  name: isText,
  place: maybe(isCount),
  mark: isMark,
  status: isText,
  imagined: isTexts,
  problems: isTexts,
  choices: listOf(isChoices),
  sections: listOf(recordOf<SheetSection>({ title: isText, blocks: listOf(isBlock) })),
  cautions: isTexts,
};

const isSheet = recordOf<Sheet>({ ...sheetFields, places: isTexts });

/** What the client says to the page. `number` names the sheet, so that an answer to an older one can be told. */
export type ToPage =
  | { readonly is: 'sheet'; readonly number: number; readonly sheet: Sheet }
  | { readonly is: 'nothing'; readonly text: string };

export const isToPage: Is<ToPage> = either(
  recordOf<Extract<ToPage, { is: 'sheet' }>>({ is: word('sheet'), number: isCount, sheet: isSheet }),
  recordOf<Extract<ToPage, { is: 'nothing' }>>({ is: word('nothing'), text: isText }),
);

/** What the page says to the client: it is there; a place is asked for; these changes are to be imagined. */
export type FromPage =
  | { readonly is: 'ready' }
  | { readonly is: 'go'; readonly number: number; readonly place: number }
  | { readonly is: 'imagine'; readonly number: number; readonly keys: readonly string[] };

export const isFromPage: Is<FromPage> = either(
  recordOf<Extract<FromPage, { is: 'ready' }>>({ is: word('ready') }),
  either(
    recordOf<Extract<FromPage, { is: 'go' }>>({ is: word('go'), number: isCount, place: isCount }),
    recordOf<Extract<FromPage, { is: 'imagine' }>>({ is: word('imagine'), number: isCount, keys: isTexts }),
  ),
);
