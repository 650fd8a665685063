import type {
  CallHierarchyIncomingCall,
  CallHierarchyItem,
  CallHierarchyOutgoingCall,
  CallHierarchyPrepareParams,
  Location,
  PrepareRenameResult,
  ReferenceParams,
  RenameParams,
  TextDocumentPositionParams,
  WorkspaceEdit,
} from 'vscode-languageserver';
import { LSPErrorCodes, ResponseError, SymbolKind } from 'vscode-languageserver';
import type { FileId } from '../base/brand.ts';
import type { Span } from '../base/span.ts';
import type { NamedThing } from '../editor/naming/named-thing.ts';
import { namedThingAt } from '../editor/naming/named-thing.ts';
import type { Includer } from '../editor/naming/references.ts';
import { includedBy, includersOf, referencesTo } from '../editor/naming/references.ts';
import { firstText } from '../editor/naming/target-words.ts';
import { rename, renameableAt } from '../editor/rename.ts';
import { rootOfEntity } from '../model/entity.ts';
import type { DocumentAt, PlaceAt } from './document-places.ts';
import { rangeOf } from './places.ts';
import type { EditForm } from './workspace-edit.ts';
import { workspaceEdit } from './workspace-edit.ts';

/** Answers about ids: where they are used, giving them another name, what includes what. */
export class Naming {
  readonly #form: EditForm;

  constructor(form: EditForm) {
    this.#form = form;
  }

  async references(params: ReferenceParams): Promise<Location[] | null> {
    const at = await this.#form.places.place(params);
    const thing = at === undefined ? undefined : thingAt(at);
    if (at === undefined || thing === undefined) return null;
    const { engine } = at.home;
    const wanted = params.context.includeDeclaration ? 'with-definition' : 'uses-only';
    return referencesTo(thing, engine.library, engine.view(), wanted).flatMap(({ file, span }) =>
      this.#location(at, file, span),
    );
  }

  async prepareRename(params: TextDocumentPositionParams): Promise<PrepareRenameResult | null> {
    const at = await this.#form.places.place(params);
    if (at === undefined) return null;
    const found = renameableAt(at.home.engine.library, at.home.file, at.offset, at.home.engine.view());
    return found === undefined ? null : { range: rangeOf(at.record, found.span), placeholder: found.name };
  }

  async rename(params: RenameParams): Promise<WorkspaceEdit | ResponseError<never> | null> {
    const at = await this.#form.places.place(params);
    if (at === undefined) return null;
    const { library } = at.home.engine;
    const view = at.home.engine.view();
    const found = renameableAt(library, at.home.file, at.offset, view);
    if (found === undefined) return new ResponseError(LSPErrorCodes.RequestFailed, 'Nothing with an id stands here.');
    const renamed = rename(found.thing, String(params.newName).trim(), library, view);
    if ('refused' in renamed) return new ResponseError(LSPErrorCodes.RequestFailed, renamed.refused);
    return workspaceEdit(at, renamed.edits, this.#form);
  }

  async prepareCalls(params: CallHierarchyPrepareParams): Promise<CallHierarchyItem[] | null> {
    const at = await this.#form.places.place(params);
    const thing = at === undefined ? undefined : thingAt(at);
    return at === undefined || thing === undefined ? null : this.#item(at, thing);
  }

  /** What includes this. */
  async incoming(item: CallHierarchyItem): Promise<CallHierarchyIncomingCall[] | null> {
    const found = await this.#thingOf(item);
    if (found === undefined) return null;
    const { engine } = found.at.home;
    return includersOf(found.thing, engine.library, engine.view()).flatMap((includer) =>
      this.#item(found.at, includer.thing).map((from) => ({ from, fromRanges: this.#ranges(found.at, includer) })),
    );
  }

  /** What this includes. */
  async outgoing(item: CallHierarchyItem): Promise<CallHierarchyOutgoingCall[] | null> {
    const found = await this.#thingOf(item);
    if (found === undefined) return null;
    return includedBy(found.thing.entity, found.at.home.engine.view()).flatMap((included) =>
      this.#item(found.at, included.thing).map((to) => ({ to, fromRanges: this.#ranges(found.at, included) })),
    );
  }

  async #thingOf({ uri, selectionRange }: CallHierarchyItem): Promise<{ at: PlaceAt; thing: NamedThing } | undefined> {
    const at = await this.#form.places.place({ textDocument: { uri }, position: selectionRange.start });
    const thing = at === undefined ? undefined : thingAt(at);
    return at === undefined || thing === undefined ? undefined : { at, thing };
  }

  #item(at: DocumentAt, { entity, sort, id, at: span }: NamedThing): CallHierarchyItem[] {
    const { file } = rootOfEntity(entity);
    const record = at.home.engine.library.record(file);
    if (record === undefined) return [];
    return [
      {
        name: id,
        detail: [sort, firstText(entity, ['name', 'title'])].filter((text) => text !== '').join(': '),
        kind: SymbolKind.Object,
        uri: this.#form.places.uriOf(at, file),
        range: rangeOf(record, span),
        selectionRange: rangeOf(record, span),
      },
    ];
  }

  #ranges(at: DocumentAt, { places }: Includer): Location['range'][] {
    return places.flatMap(({ file, span }) => this.#location(at, file, span).map(({ range }) => range));
  }

  #location(at: DocumentAt, file: FileId, span: Span): Location[] {
    const record = at.home.engine.library.record(file);
    return record === undefined ? [] : [{ uri: this.#form.places.uriOf(at, file), range: rangeOf(record, span) }];
  }
}

function thingAt({ record, offset, home }: PlaceAt): NamedThing | undefined {
  return record.entity === undefined ? undefined : namedThingAt(record.entity, offset, home.engine.view());
}
