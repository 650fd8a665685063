import type { IsoDate } from '../base/brand.ts';
import { exportsOf } from '../library/exports.ts';
import type { FileRecord } from '../library/file-record.ts';
import { entityKey } from '../library/keys.ts';
import type { Library } from '../library/library.ts';
import { LibraryView, QueryAnswers } from '../library/view.ts';
import type { AnyEntity } from '../model/entity.ts';
import { rootOfEntity } from '../model/entity.ts';

/**
 * A copy of a library in which files can be exchanged and put back. Faults of transcription are known to rules only and play no part here:
 * both sides of a comparison are taken as encoded.
 */
export class Trials {
  readonly #library: Library;
  readonly #today: IsoDate;

  constructor(library: Library, today: IsoDate) {
    this.#today = today;
    this.#library = library.emptyCopy();
    for (const file of library.files()) {
      const record = library.record(file);
      if (record !== undefined) this.#library.put(record);
    }
  }

  /** A fresh view: nothing that was worked out before an exchange is used after it. */
  view(): LibraryView {
    return new LibraryView(this.#library, new Set(), new QueryAnswers(this.#today));
  }

  /** What `work` says of the library with these entities exchanged, added (no `old`) or taken away (no `now`). */
  with<Answer>(exchanges: readonly Exchange[], work: (view: LibraryView) => Answer): Answer {
    const undo = exchanges.map((exchange) => this.#exchange(exchange));
    try {
      return work(this.view());
    } finally {
      for (const back of undo.reverse()) back();
    }
  }

  #exchange({ old, now }: Exchange): () => void {
    const record = old === undefined ? undefined : this.#recordOf(old);
    if (record !== undefined && now !== undefined) {
      this.#library.put({ ...record, entity: now, exports: exportsOf(now), ...idOf(now) });
      return () => this.#library.put(record);
    }
    if (record !== undefined) {
      this.#library.delete(record.file);
      return () => this.#library.put(record);
    }
    if (now === undefined) return () => undefined;
    const { file } = rootOfEntity(now);
    const shadowed = this.#library.record(file);
    this.#library.put({ file, text: '', problems: [], entity: now, exports: exportsOf(now), ...idOf(now) });
    return () => (shadowed === undefined ? this.#library.delete(file) : this.#library.put(shadowed));
  }

  #recordOf(entity: AnyEntity): FileRecord | undefined {
    const { kind, id } = rootOfEntity(entity);
    return this.#library.exporters(entityKey(kind, id))[0];
  }
}

export interface Exchange {
  readonly old?: AnyEntity | undefined;
  readonly now?: AnyEntity | undefined;
}

function idOf(entity: AnyEntity): Pick<FileRecord, 'kind' | 'id'> {
  const { kind, id } = rootOfEntity(entity);
  return { kind, id };
}
