import type { Connection } from 'vscode-languageserver';
import { CodeLensRefreshRequest } from 'vscode-languageserver';
import type { ClientAbilities } from './client-abilities.ts';

/** Lenses and hints of one file rest on others: when those change, the client is asked to ask again, at most once in this time. */
const notOftener = 1_000;

export class Beside {
  readonly #connection: Connection;
  readonly #abilities: ClientAbilities;
  #due = false;

  constructor(connection: Connection, abilities: ClientAbilities) {
    this.#connection = connection;
    this.#abilities = abilities;
  }

  /** Of a change that concerns the edited file alone, the client knows by itself. */
  touched(addresses: ReadonlySet<string>): void {
    if (this.#due || addresses.size < 2) return;
    this.#due = true;
    setTimeout(() => {
      this.#due = false;
      if (this.#abilities.refreshesLenses)
        this.#connection.sendRequest(CodeLensRefreshRequest.type).catch(() => undefined);
      if (this.#abilities.refreshesHints) this.#connection.languages.inlayHint.refresh().catch(() => undefined);
    }, notOftener).unref?.();
  }
}
