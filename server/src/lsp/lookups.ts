import type {
  Definition,
  DefinitionLink,
  DocumentSymbol,
  Hover,
  SymbolInformation,
  TextDocumentPositionParams,
} from 'vscode-languageserver';
import { MarkupKind, SymbolKind } from 'vscode-languageserver';
import { hoverAt } from '../editor/hover.ts';
import { definitionsAt } from '../editor/naming/definition.ts';
import type { OutlineItem } from '../editor/naming/symbols.ts';
import { outlineOf } from '../editor/naming/symbols.ts';
import { asMarkdown, asPlainText } from '../editor/writing/text-blocks.ts';
import type { FileRecord } from '../library/file-record.ts';
import { shapeOf } from '../schema/shapes.ts';
import type { ClientAbilities } from './client-abilities.ts';
import type { DocumentPlaces } from './document-places.ts';
import { treeOf } from './document-places.ts';
import { rangeOf } from './places.ts';

/** Answers about one place of a document: hover, where an id leads, the outline. */
export class Lookups {
  readonly #places: DocumentPlaces;
  readonly #abilities: ClientAbilities;

  constructor(places: DocumentPlaces, abilities: ClientAbilities) {
    this.#places = places;
    this.#abilities = abilities;
  }

  async hover(params: TextDocumentPositionParams): Promise<Hover | null> {
    const at = await this.#places.placeInText(params);
    if (at === undefined) return null;
    const tree = treeOf(at.record);
    const hover = tree === undefined ? undefined : hoverAt(at.record, tree, at.offset, at.home.engine.view());
    if (hover === undefined) return null;
    const markdown = this.#abilities.markdownHover;
    const value = markdown ? asMarkdown(hover.blocks) : asPlainText(hover.blocks);
    const kind = markdown ? MarkupKind.Markdown : MarkupKind.PlainText;
    return { contents: { kind, value }, range: rangeOf(at.record, hover.span) };
  }

  async definition(params: TextDocumentPositionParams): Promise<Definition | DefinitionLink[] | null> {
    const at = await this.#places.place(params);
    if (at?.record.entity === undefined) return null;
    const links: DefinitionLink[] = [];
    for (const { from, file, span, whole } of definitionsAt(at.record.entity, at.offset, at.home.engine.view())) {
      const record = at.home.engine.library.record(file);
      if (record === undefined) continue;
      const targetUri = this.#places.uriOf(at, file);
      const targetSelectionRange = rangeOf(record, span);
      const targetRange = {
        ...rangeOf(record, { start: Math.min(whole.start, span.start), end: Math.max(whole.end, span.end) }),
      };
      links.push({ originSelectionRange: rangeOf(at.record, from), targetUri, targetRange, targetSelectionRange });
    }
    if (this.#abilities.definitionLinks) return links;
    return links.map(({ targetUri, targetSelectionRange }) => ({ uri: targetUri, range: targetSelectionRange }));
  }

  async symbols(uri: string): Promise<DocumentSymbol[] | SymbolInformation[]> {
    const record = (await this.#places.text(uri))?.record;
    const tree = record === undefined ? undefined : treeOf(record);
    if (record === undefined || tree === undefined) return [];
    const outline = outlineOf(tree, record.kind === undefined ? undefined : shapeOf(record.kind));
    if (this.#abilities.outlineTree) return outline.map((item) => symbolOf(item, record));
    return outline.map(({ name, of, whole }) => ({
      name,
      kind: symbolKinds[of],
      location: { uri, range: rangeOf(record, whole) },
    }));
  }
}

const symbolKinds: Readonly<Record<OutlineItem['of'], SymbolKind>> = {
  group: SymbolKind.Object,
  list: SymbolKind.Array,
  value: SymbolKind.Field,
};

function symbolOf({ name, detail, of, whole, nameAt, inside }: OutlineItem, record: FileRecord): DocumentSymbol {
  return {
    name,
    detail,
    kind: symbolKinds[of],
    range: rangeOf(record, { start: Math.min(whole.start, nameAt.start), end: Math.max(whole.end, nameAt.end) }),
    selectionRange: rangeOf(record, nameAt),
    children: inside.map((item) => symbolOf(item, record)),
  };
}
