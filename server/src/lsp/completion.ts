import type { CompletionItem, CompletionList, TextDocumentPositionParams, TextEdit } from 'vscode-languageserver';
import { CompletionItemKind, InsertTextFormat, InsertTextMode, MarkupKind } from 'vscode-languageserver';
import { completionsAt } from '../editor/completion/completion.ts';
import type { NamedRule } from '../editor/completion/completion-ids.ts';
import type { Offer } from '../editor/writing/offer.ts';
import { asPlain, asSnippet, hasHoles } from '../editor/writing/offer.ts';
import { asMarkdown, asPlainText } from '../editor/writing/text-blocks.ts';
import { markAboveWriting } from '../editor/writing/to-do.ts';
import { fileForm } from '../syntax/edits.ts';
import { namedListsAt } from './added-items.ts';
import type { ClientAbilities } from './client-abilities.ts';
import type { DocumentPlaces, PlaceAt } from './document-places.ts';
import { rangeOf } from './places.ts';
import { textEditsOf } from './workspace-edit.ts';

const kinds: Readonly<Record<Offer['of'], CompletionItemKind>> = {
  field: CompletionItemKind.Field,
  word: CompletionItemKind.EnumMember,
  id: CompletionItemKind.Reference,
  statement: CompletionItemKind.Text,
  value: CompletionItemKind.Unit,
  date: CompletionItemKind.Value,
  file: CompletionItemKind.File,
};

/** Signs behind which something is always offered. */
export const completionTriggers = [' ', ':', '-', '[', '{', ','];

const longestDetail = 160;

/** What may be written at a place, in the editor's form. */
export async function completionList(
  params: TextDocumentPositionParams,
  places: DocumentPlaces,
  rules: readonly NamedRule[],
  abilities: ClientAbilities,
): Promise<CompletionList | null> {
  const at = await places.placeInText(params);
  if (at === undefined) return null;
  const { offers, more } = completionsAt(at.record, at.offset, at.home.engine.view(), rules);
  const lineEnd = fileForm(at.record.text).lineEnd;
  const also = textEditsOf(at.record, markAboveWriting(at.record.text, at.offset));
  const items = offers.map((offer, index) => itemOf(offer, index, { at, lineEnd, abilities, also }));
  return { isIncomplete: more, items: [...askingItems(at, places, abilities), ...items] };
}

/** Behind a dash where nothing stands yet: the item can be asked for part by part. */
function askingItems(at: PlaceAt, places: DocumentPlaces, { addCommand }: ClientAbilities): readonly CompletionItem[] {
  const start = at.record.text.lastIndexOf('\n', at.offset - 1) + 1;
  if (addCommand === undefined || !/^\s*- *$/.test(at.record.text.slice(start, at.offset))) return [];
  const [list] = namedListsAt(at, at.offset);
  if (list === undefined || !list.waits) return [];
  return [
    {
      label: `${list.title}…`,
      kind: CompletionItemKind.Event,
      // Before every number.
      sortText: '!',
      ...detailOf('asks part by part', { completionWords: true }),
      insertTextFormat: InsertTextFormat.PlainText,
      textEdit: { range: rangeOf(at.record, { start: at.offset, end: at.offset }), newText: '' },
      command: { title: list.title, command: addCommand, arguments: [places.uriOf(at, at.home.file), list.path] },
    },
  ];
}

interface Form {
  readonly at: PlaceAt;
  readonly lineEnd: string;
  readonly abilities: ClientAbilities;
  /** What goes with each, elsewhere in the text. */
  readonly also: readonly TextEdit[];
}

function itemOf(offer: Offer, index: number, { at, lineEnd, abilities, also }: Form): CompletionItem {
  const { label, detail, about, of, pieces, span, filter, goesOn } = offer;
  const snippet = abilities.snippets && hasHoles(pieces);
  const markdown = abilities.markdownCompletion;
  return {
    label,
    kind: kinds[of],
    sortText: String(index).padStart(4, '0'),
    ...detailOf(detail, abilities),
    ...(about.length > 0 && {
      documentation: {
        kind: markdown ? MarkupKind.Markdown : MarkupKind.PlainText,
        value: markdown ? asMarkdown(about) : asPlainText(about),
      },
    }),
    ...(filter !== undefined && { filterText: filter }),
    insertTextFormat: snippet ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
    insertTextMode: InsertTextMode.asIs,
    textEdit: {
      range: rangeOf(at.record, span),
      newText: snippet ? asSnippet(pieces, lineEnd) : asPlain(pieces, lineEnd),
    },
    ...(also.length > 0 && { additionalTextEdits: [...also] }),
    ...(goesOn === true &&
      abilities.asksAgain !== undefined && { command: { title: 'Offer more', command: abilities.asksAgain } }),
  };
}

/** Where the editor shows words beside every entry, so that choices can be compared; else beside the one in focus. */
function detailOf(
  detail: string,
  { completionWords }: Pick<ClientAbilities, 'completionWords'>,
): Pick<CompletionItem, 'detail' | 'labelDetails'> {
  if (detail === '') return {};
  const words = detail.length > longestDetail ? `${detail.slice(0, longestDetail)}…` : detail;
  return completionWords ? { labelDetails: { description: words } } : { detail: words };
}
