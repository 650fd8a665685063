import type { Connection } from 'vscode-languageserver';
import type { Reports } from './reports.ts';
import { Slices } from './turns.ts';
import type { Workbench } from './workbench.ts';

/** Sends findings to a client that does not ask for them: changed ones only, open documents first, empty ones for what is gone. */
export class Push {
  readonly #connection: Connection;
  readonly #workbench: Workbench;
  readonly #reports: Reports;
  readonly #sent = new Map<string, string>();
  readonly #waiting = new Set<string>();
  #running = false;
  /** Version of each open document, to go with its findings. */
  readonly versions = new Map<string, number>();

  constructor(connection: Connection, workbench: Workbench, reports: Reports) {
    this.#connection = connection;
    this.#workbench = workbench;
    this.#reports = reports;
  }

  touched(addresses: ReadonlySet<string>): void {
    for (const address of addresses) this.#waiting.add(address);
    if (!this.#running) void this.#run();
  }

  closed(address: string): void {
    this.versions.delete(address);
  }

  /** One pass at a time. A file that changes again meanwhile simply waits again: there is never more than one check of it under way. */
  async #run(): Promise<void> {
    this.#running = true;
    const slices = new Slices();
    try {
      for (let next = this.#next(); next !== undefined; next = this.#next()) {
        this.#waiting.delete(next);
        this.#send(next);
        await slices.pause();
      }
    } finally {
      this.#running = false;
    }
  }

  #next(): string | undefined {
    let first: string | undefined;
    for (const address of this.#waiting) {
      if (this.#workbench.isOpen(address)) return address;
      first ??= address;
    }
    return first;
  }

  #send(address: string): void {
    const { resultId, items } = this.#reports.of(address);
    const open = this.#workbench.isOpen(address);
    const before = this.#sent.get(address);
    if (before === resultId || (before === undefined && items.length === 0 && !open)) return;
    this.#sent.set(address, resultId);
    if (items.length === 0 && !open) this.#sent.delete(address);
    const version = this.versions.get(address);
    const uri = this.#reports.uriOf(address);
    void this.#connection.sendDiagnostics({ uri, diagnostics: [...items], ...(version !== undefined && { version }) });
  }
}
