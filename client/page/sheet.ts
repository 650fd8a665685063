import { either, type Is, isCount, isFlag, isShare, isText, listOf, maybe, recordOf, word } from './forms.ts';

/**
 * The set sheet as the page draws it, and the form of every message between the two. The server's own model is server/src/editor/
 * sheet-model.ts; a test holds the two together. Nothing here knows what the texts mean.
 */
export type Mark = 'fits' | 'note' | 'asks' | 'fails';

export interface Sheet {
  readonly set: string;
  readonly name: string;
  readonly place?: number;
  readonly mark: Mark;
  readonly status: string;
  readonly imagined: readonly string[];
  readonly problems: readonly string[];
  readonly choices: readonly Choices[];
  readonly sections: readonly Section[];
  readonly cautions: readonly string[];
  /** Where cells lead, as shown to people; what opens is the client's to know. */
  readonly places: readonly string[];
}

export interface Choices {
  readonly title: string;
  readonly takes: 'one' | 'many';
  readonly options: readonly Choice[];
}

export interface Choice {
  readonly key: string;
  readonly label: string;
  readonly about: string;
  readonly on: boolean;
}

export interface Section {
  readonly title: string;
  readonly blocks: readonly Block[];
}

export interface TextBlock {
  readonly is: 'text';
  readonly text: string;
}

export interface TableBlock {
  readonly is: 'table';
  readonly head: readonly string[];
  readonly rows: readonly (readonly (readonly Cell[])[])[];
}

export interface ListBlock {
  readonly is: 'list';
  readonly ordered: boolean;
  readonly items: readonly Item[];
}

export interface BarsBlock {
  readonly is: 'bars';
  readonly bars: readonly Bars[];
}

export type Block = TextBlock | TableBlock | ListBlock | BarsBlock;

export interface Cell {
  readonly text: string;
  readonly mark?: Mark;
  readonly place?: number;
}

export interface Item extends Cell {
  readonly quote?: string;
  readonly from?: string;
  readonly details: readonly string[];
}

export interface Bars {
  readonly title: string;
  readonly required: string;
  readonly place?: number;
  readonly band?: Stretch;
  readonly rows: readonly BarRow[];
}

export interface BarRow {
  readonly name: string;
  readonly given: string;
  readonly gap: string;
  readonly mark: Mark;
  readonly stretch?: Stretch;
}

export interface Stretch {
  readonly from: number;
  readonly to: number;
}

const isMark: Is<Mark> = word('fits', 'note', 'asks', 'fails');
const isTexts = listOf(isText);
const isStretch = recordOf<Stretch>({ from: isShare, to: isShare });
const cell = { text: isText, mark: maybe(isMark), place: maybe(isCount) };
const isItem = recordOf<Item>({ ...cell, quote: maybe(isText), from: maybe(isText), details: isTexts });
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
const isBlock: Is<Block> = either(
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
  sections: listOf(recordOf<Section>({ title: isText, blocks: listOf(isBlock) })),
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
