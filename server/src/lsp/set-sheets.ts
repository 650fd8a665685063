import type { Connection } from 'vscode-languageserver';
import { setSheet } from '../editor/set-sheet/set-sheet.ts';
import type { SetSheet } from '../editor/set-sheet/sheet-model.ts';
import { entityKey } from '../library/keys.ts';
import { isOfKind } from '../model/entity.ts';
import { Followed } from './followed.ts';
import { fieldIn, textsIn } from './params.ts';
import { rangeOf } from './places.ts';
import type { Reports } from './reports.ts';
import { addressOf } from './uris.ts';
import type { Home, Workbench } from './workbench.ts';

/** Told when the answer about the set that was asked for last is another one. */
export const sheetNotification = 'traywright/setSheetChanged';

/** What is shown: which file's set, and what is imagined about it. */
interface Watched {
  readonly uri: string;
  readonly keys: ReadonlySet<string>;
}

/** The set sheet of one panel: answered when asked for, told again when it changes. */
export class SetSheets {
  readonly #workbench: Workbench;
  readonly #reports: Reports;
  readonly #followed: Followed;

  constructor(connection: Connection, workbench: Workbench, reports: Reports) {
    this.#workbench = workbench;
    this.#reports = reports;
    this.#followed = new Followed(workbench, (sheet) => void connection.sendNotification(sheetNotification, { sheet }));
  }

  /** Of the set in the file `uri`, or of the set with the id `set`; `keys` are the changes imagined. Null when there is no such set. */
  async sheet(params: unknown): Promise<unknown> {
    await this.#workbench.settled();
    const uri = this.#uriFor(params);
    if (uri === undefined) return null;
    const keys = new Set(textsIn(fieldIn(params, 'keys')).slice(0, 200));
    return this.#followed.begin(() => this.#made({ uri, keys }));
  }

  /** The panel was closed: nothing is worked out for it any more. */
  close(): void {
    this.#followed.end();
  }

  touched(): void {
    this.#followed.touched();
  }

  /** Every set in view, for choosing one. */
  async sets(): Promise<readonly { id: string; name: string; uri: string }[]> {
    await this.#workbench.settled();
    const sets: { id: string; name: string; uri: string }[] = [];
    for (const library of this.#workbench.libraries.all()) {
      for (const set of library.engine.view().all('set')) {
        const file = set.at.root?.file;
        if (file === undefined || set.id === undefined) continue;
        const uri = this.#workbench.folders.addressOfReal(library.uriOf(file));
        sets.push({ id: set.id.text, name: set.name?.text ?? '', uri });
      }
    }
    return sets;
  }

  #uriFor(params: unknown): string | undefined {
    const [uri, set] = [fieldIn(params, 'uri'), fieldIn(params, 'set')];
    if (typeof uri === 'string') return uri;
    if (typeof set !== 'string') return undefined;
    for (const library of this.#workbench.libraries.all()) {
      const [record] = library.engine.library.exporters(entityKey('set', set));
      if (record !== undefined) return this.#workbench.folders.addressOfReal(library.uriOf(record.file));
    }
    return undefined;
  }

  #made({ uri, keys }: Watched): unknown {
    const address = addressOf(uri);
    const home = this.#workbench.homeOf(address);
    const entity = home?.engine.library.record(home.file)?.entity;
    if (home === undefined || entity === undefined || !isOfKind(entity, 'set')) return null;
    const sheet = setSheet(home.engine, entity.id?.text ?? '', keys);
    return sheet === undefined ? null : { ...sheet, uri, places: this.#places(sheet, home, address) };
  }

  #places({ places }: SetSheet, home: Home, address: string): readonly unknown[] {
    return places.map(({ file, span }) => {
      const record = home.engine.library.record(file);
      const uri = this.#reports.uriOf(this.#workbench.addressIn(home, file, address));
      return record === undefined ? null : { uri, range: rangeOf(record, span) };
    });
  }
}
