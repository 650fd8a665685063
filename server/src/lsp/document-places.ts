import type { TextDocumentIdentifier, TextDocumentPositionParams } from 'vscode-languageserver';
import type { FileId } from '../base/brand.ts';
import type { FileRecord } from '../library/file-record.ts';
import { readTree } from '../syntax/read.ts';
import type { MapTree } from '../syntax/tree.ts';
import type { OpenLibrary } from './open-library.ts';
import { offsetOf } from './places.ts';
import type { Reports } from './reports.ts';
import { addressOf } from './uris.ts';
import type { Home, Workbench } from './workbench.ts';

/** A document of the editor with its newest text taken in. */
export interface DocumentAt {
  readonly address: string;
  readonly home: Home;
  readonly record: FileRecord;
}

/** A place in it. */
export interface PlaceAt extends DocumentAt {
  readonly offset: number;
}

/** Finds documents and places for questions of the editor, and the editor's names of other files. */
export class DocumentPlaces {
  readonly workbench: Workbench;
  readonly #reports: Reports;

  constructor(workbench: Workbench, reports: Reports) {
    this.workbench = workbench;
    this.#reports = reports;
  }

  /** With all that is known of other files. */
  async document(uri: string): Promise<DocumentAt | undefined> {
    await this.workbench.settled();
    return this.#at(addressOf(uri));
  }

  /** As soon as its text is there, for answers that rest on nothing else, or that are wanted at once. */
  async text(uri: string): Promise<DocumentAt | undefined> {
    const address = addressOf(uri);
    await this.workbench.textTaken(address);
    return this.#at(address);
  }

  /** Resolves with the newest text taken in, for what is asked about a text as it stands. */
  async taken({ textDocument }: { readonly textDocument: TextDocumentIdentifier }): Promise<void> {
    await this.workbench.textTaken(addressOf(textDocument.uri));
  }

  #at(address: string): DocumentAt | undefined {
    const home = this.workbench.homeOf(address);
    const record = home?.engine.library.record(home.file);
    return home === undefined || record === undefined ? undefined : { address, home, record };
  }

  async place(params: TextDocumentPositionParams): Promise<PlaceAt | undefined> {
    return placeIn(await this.document(params.textDocument.uri), params);
  }

  async placeInText(params: TextDocumentPositionParams): Promise<PlaceAt | undefined> {
    return placeIn(await this.text(params.textDocument.uri), params);
  }

  /** The editor's URI of another file of the same library. */
  uriOf({ home, address }: DocumentAt, file: FileId): string {
    return this.#reports.uriOf(this.workbench.addressIn(home, file, address));
  }

  /** The same of a file of a library, whatever is open. */
  uriIn(library: OpenLibrary, file: FileId): string {
    return this.#reports.uriOf(this.workbench.folders.addressOfReal(library.uriOf(file)));
  }
}

function placeIn(document: DocumentAt | undefined, { position }: TextDocumentPositionParams): PlaceAt | undefined {
  const offset = document === undefined ? undefined : offsetOf(document.record, position);
  return document === undefined || offset === undefined ? undefined : { ...document, offset };
}

const trees = new WeakMap<FileRecord, MapTree>();

/** The tree of a file that somebody looks at; other files keep none. */
export function treeOf(record: FileRecord): MapTree | undefined {
  const known = trees.get(record);
  if (known !== undefined) return known;
  const { tree } = readTree(record.text);
  if (tree?.node !== 'map') return undefined;
  trees.set(record, tree);
  return tree;
}
