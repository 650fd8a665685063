import type { Span } from '../base/span.ts';
import { blindCopy, compareReadings } from '../editor/double-reading.ts';
import type { FileRecord } from '../library/file-record.ts';
import { entityKey } from '../library/keys.ts';
import { rootOfEntity } from '../model/entity.ts';
import type { DocumentAt, DocumentPlaces } from './document-places.ts';
import { treeOf } from './document-places.ts';
import { fieldIn } from './params.ts';
import { rangeOf } from './places.ts';

/** Two readings of one document: the blank copy for the second reader, and the comparison. */
export class Readings {
  readonly #places: DocumentPlaces;

  constructor(places: DocumentPlaces) {
    this.#places = places;
  }

  /** Of the file `uri`: its quotes without its values. Null where there are no quotes. */
  async blind(params: unknown): Promise<string | null> {
    const at = await this.#document(params);
    const tree = at === undefined ? undefined : treeOf(at.record);
    if (at?.record.entity === undefined || tree === undefined) return null;
    return blindCopy(at.record, tree, at.record.entity) ?? null;
  }

  /** Of the file `uri`, the second reading, with the library's own file of the same kind and id. Null where there is none. */
  async compared(params: unknown): Promise<unknown> {
    const second = await this.#document(params);
    const first = second === undefined ? undefined : this.#firstReading(second);
    if (second?.record.entity === undefined || first?.record.entity === undefined) return null;
    const rows = compareReadings(first.record.entity, second.record.entity);
    return {
      first: first.uri,
      second: second.address,
      rows: rows.map(({ firstAt, secondAt, ...row }) => ({
        ...row,
        firstAt: rangeIn(first.record, firstAt),
        secondAt: rangeIn(second.record, secondAt),
      })),
    };
  }

  async #document(params: unknown): Promise<DocumentAt | undefined> {
    const uri = fieldIn(params, 'uri');
    return typeof uri === 'string' ? this.#places.document(uri) : undefined;
  }

  #firstReading({ record, home }: DocumentAt): { readonly record: FileRecord; readonly uri: string } | undefined {
    if (record.entity === undefined) return undefined;
    const { kind, id } = rootOfEntity(record.entity);
    const { libraries, folders } = this.#places.workbench;
    for (const library of libraries.all()) {
      const found = library.engine.library
        .exporters(entityKey(kind, id))
        .find(({ file }) => library !== home.library || file !== home.file);
      if (found?.entity !== undefined) return { record: found, uri: folders.addressOfReal(library.uriOf(found.file)) };
    }
    return undefined;
  }
}

function rangeIn(record: FileRecord, span: Span | undefined): unknown {
  return span === undefined ? null : rangeOf(record, span);
}
