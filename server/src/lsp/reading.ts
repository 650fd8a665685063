import type {
  CodeLens,
  DocumentLink,
  FoldingRange,
  InlayHint,
  InlayHintParams,
  SelectionRange,
  SelectionRangeParams,
  SemanticTokens,
  WorkspaceSymbol,
} from 'vscode-languageserver';
import { FoldingRangeKind, SemanticTokensBuilder, SymbolKind } from 'vscode-languageserver';
import { inlayHintsOf } from '../editor/inlay-hints.ts';
import { lensesOf } from '../editor/lenses.ts';
import { fileLinksOf } from '../editor/naming/document-links.ts';
import { symbolsFor } from '../editor/naming/library-symbols.ts';
import type { WordMark } from '../editor/word-marks.ts';
import { wordMarksOf } from '../editor/word-marks.ts';
import { workLensesOf } from '../editor/work-lenses.ts';
import { foldsOf, selectionsAt } from '../editor/writing/structure.ts';
import { shapeOf } from '../schema/shapes.ts';
import type { ClientAbilities } from './client-abilities.ts';
import type { DocumentAt, DocumentPlaces } from './document-places.ts';
import { treeOf } from './document-places.ts';
import { linesOf, offsetOf, rangeOf } from './places.ts';
import { uriOfPath } from './uris.ts';

/** Kinds of words as the protocol names them, so that every theme has colours for them. */
export const tokenTypes = ['keyword', 'number', 'type', 'variable', 'enumMember'];
export const tokenModifiers = ['declaration'];

const tokenOf: Readonly<Record<WordMark['as'], readonly [number, number]>> = {
  'bound-word': [0, 0],
  number: [1, 0],
  unit: [2, 0],
  id: [3, 0],
  'own-id': [3, 1],
  'closed-word': [4, 0],
};

/** Answers that help reading a file: folds, kinds of words, hints, lenses, links; and finding files by what is printed on things. */
export class Reading {
  readonly #places: DocumentPlaces;
  readonly #abilities: ClientAbilities;

  constructor(places: DocumentPlaces, abilities: ClientAbilities) {
    this.#places = places;
    this.#abilities = abilities;
  }

  async folds(uri: string): Promise<FoldingRange[] | null> {
    const record = (await this.#places.text(uri))?.record;
    const tree = record === undefined ? undefined : treeOf(record);
    if (record === undefined || tree === undefined) return null;
    return foldsOf(record.text, tree).map(({ from, to, of }) => ({
      startLine: from,
      endLine: to,
      ...(of === 'comment' && { kind: FoldingRangeKind.Comment }),
    }));
  }

  async selections({ textDocument, positions }: SelectionRangeParams): Promise<SelectionRange[] | null> {
    const record = (await this.#places.text(textDocument.uri))?.record;
    const tree = record === undefined ? undefined : treeOf(record);
    if (record === undefined || tree === undefined) return null;
    return positions.map((position) => {
      const spans = selectionsAt(tree, offsetOf(record, position) ?? 0);
      let around: SelectionRange | undefined;
      for (const span of spans.toReversed())
        around = { range: rangeOf(record, span), ...(around !== undefined && { parent: around }) };
      return around ?? { range: { start: position, end: position } };
    });
  }

  async tokens(uri: string): Promise<SemanticTokens> {
    const builder = new SemanticTokensBuilder();
    const record = (await this.#places.text(uri))?.record;
    const tree = record === undefined ? undefined : treeOf(record);
    if (record?.entity === undefined || record.kind === undefined || tree === undefined) return builder.build();
    const lines = linesOf(record);
    for (const { span, as } of wordMarksOf(record.entity, tree, shapeOf(record.kind))) {
      const start = lines.position(span.start);
      const end = lines.position(span.end);
      const [type, modifiers] = tokenOf[as];
      if (start.line === end.line)
        builder.push(start.line, start.character, end.character - start.character, type, modifiers);
    }
    return builder.build();
  }

  async hints({ textDocument, range }: InlayHintParams): Promise<InlayHint[] | null> {
    const at = await this.#places.document(textDocument.uri);
    if (at?.record.entity === undefined) return null;
    const { record } = at;
    const from = offsetOf(record, range.start) ?? 0;
    const to = offsetOf(record, range.end) ?? record.text.length;
    return inlayHintsOf(at.record.entity, at.home.engine.view())
      .filter((hint) => from <= hint.at && hint.at <= to)
      .map((hint) => ({
        position: linesOf(record).position(hint.at),
        label: hint.text,
        tooltip: hint.about,
        paddingLeft: true,
      }));
  }

  async lenses(uri: string): Promise<CodeLens[] | null> {
    const at = await this.#places.document(uri);
    if (at === undefined) return null;
    const { usesCommand } = this.#abilities;
    const own = at.record.entity === undefined ? [] : lensesOf(at.record.entity, at.home.engine.view());
    const about = own.map((lens): CodeLens => {
      const range = rangeOf(at.record, lens.at);
      const leads = lens.leadsToUses === true && usesCommand !== undefined;
      const command = leads
        ? { command: usesCommand, arguments: [this.#places.uriOf(at, at.home.file), range.start] }
        : { command: '' };
      return { range, command: { title: lens.text, ...command } };
    });
    return [...about, ...this.#workLenses(at)];
  }

  /** Only where the client has the command that they lead to. */
  #workLenses(at: DocumentAt): readonly CodeLens[] {
    const { sentencesCommand, addCommand } = this.#abilities;
    const uri = this.#places.uriOf(at, at.home.file);
    return workLensesOf(at.record, treeOf(at.record)).flatMap(({ at: span, text: title, leads }) => {
      const command = leads === 'sentences' ? sentencesCommand : addCommand;
      const given = leads === 'sentences' ? [uri] : [uri, leads.adds];
      return command === undefined
        ? []
        : [{ range: rangeOf(at.record, span), command: { title, command, arguments: given } }];
    });
  }

  /** Only within the library, and only in a library on this disk. */
  async links(uri: string): Promise<DocumentLink[] | null> {
    const at = await this.#places.document(uri);
    const library = at?.home.library;
    if (at?.record.entity === undefined || library === undefined) return null;
    return fileLinksOf(at.record.entity, at.home.engine.view()).map(({ at: span, path, page }) => {
      const target = `${this.#places.workbench.folders.addressOfReal(uriOfPath(`${library.root}/${path}`))}${page === undefined ? '' : `#page=${page}`}`;
      const tooltip = page === undefined ? `Open ${path}` : `Open ${path} at page ${page}`;
      return { range: rangeOf(at.record, span), target, tooltip };
    });
  }

  async librarySymbols(query: string): Promise<WorkspaceSymbol[]> {
    const { workbench } = this.#places;
    await workbench.settled();
    const found: WorkspaceSymbol[] = [];
    for (const library of workbench.libraries.all()) {
      for (const { name, detail, file, span } of symbolsFor(query, library.engine.library)) {
        const record = library.engine.library.record(file);
        if (record === undefined) continue;
        const uri = workbench.folders.addressOfReal(library.uriOf(file));
        found.push({
          name,
          containerName: detail,
          kind: SymbolKind.Object,
          location: { uri, range: rangeOf(record, span) },
        });
      }
    }
    return found;
  }
}
