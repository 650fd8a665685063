import type { Connection, WorkDoneProgressServerReporter } from 'vscode-languageserver';

/** A library of fewer files is read before anyone would look. */
const worthShowing = 500;

/** Shows how far the reading of a large library has come, where the client shows such things. */
export class ReadingProgress {
  readonly #connection: Connection;
  #shown: WorkDoneProgressServerReporter | undefined;
  #asked = false;
  #percent = 0;

  constructor(connection: Connection) {
    this.#connection = connection;
  }

  readonly step = (read: number, of: number): void => {
    if (of < worthShowing) return;
    if (read >= of) this.#end();
    else if (!this.#asked) void this.#begin();
    else this.#show(Math.floor((100 * read) / of), `${read} of ${of} rule files`);
  };

  async #begin(): Promise<void> {
    this.#asked = true;
    try {
      const shown = await this.#connection.window.createWorkDoneProgress();
      if (!this.#asked) return;
      shown.begin('Traywright: reading the library', 0);
      this.#shown = shown;
    } catch {
      this.#asked = false;
    }
  }

  #show(percent: number, words: string): void {
    if (percent === this.#percent) return;
    this.#percent = percent;
    this.#shown?.report(percent, words);
  }

  #end(): void {
    this.#shown?.done();
    this.#shown = undefined;
    this.#asked = false;
  }
}
