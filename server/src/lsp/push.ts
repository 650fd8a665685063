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
  readonly #sentVersions = new Map<string, number | undefined>();
  /** What waits to be sent: documents with a new text; other open documents; everything else. */
  readonly #edited = new Set<string>();
  readonly #open = new Set<string>();
  readonly #others = new Set<string>();
  #sendingEdited = false;
  #sendingOthers = false;
  /** Version of each open document, to go with its findings. */
  readonly versions = new Map<string, number>();

  constructor(connection: Connection, workbench: Workbench, reports: Reports) {
    this.#connection = connection;
    this.#workbench = workbench;
    this.#reports = reports;
  }

  touched(addresses: ReadonlySet<string>): void {
    for (const address of addresses) this.#queueFor(address).add(address);
    if (!this.#sendingEdited) void this.#sendEdited();
    if (!this.#sendingOthers) void this.#sendOthers();
  }

  closed(address: string): void {
    this.versions.delete(address);
    this.#sentVersions.delete(address);
  }

  #queueFor(address: string): Set<string> {
    if (!this.#workbench.isOpen(address)) return this.#others;
    return this.versions.get(address) === this.#sentVersions.get(address) ? this.#open : this.#edited;
  }

  /** At once. A file that changes again meanwhile simply waits again: there is never more than one check of it under way. */
  async #sendEdited(): Promise<void> {
    this.#sendingEdited = true;
    const slices = new Slices();
    try {
      for (const address of this.#edited) {
        this.#edited.delete(address);
        this.#send(address);
        await slices.pause();
      }
    } finally {
      this.#sendingEdited = false;
    }
  }

  /** What an edit means for other files: when there is time, and first for those that somebody has open. */
  async #sendOthers(): Promise<void> {
    const { lull } = this.#workbench;
    const slices = new Slices(() => lull.come());
    this.#sendingOthers = true;
    try {
      await lull.come();
      for (let next = this.#nextOther(); next !== undefined; next = this.#nextOther()) {
        await this.#reports.prepare(next, slices);
        this.#send(next);
        await slices.pause();
      }
    } finally {
      this.#sendingOthers = false;
    }
  }

  #nextOther(): string | undefined {
    const queue = this.#open.size > 0 ? this.#open : this.#others;
    const [next] = queue;
    if (next !== undefined) queue.delete(next);
    return next;
  }

  #send(address: string): void {
    const { resultId, items } = this.#reports.of(address);
    const open = this.#workbench.isOpen(address);
    if (open) this.#sentVersions.set(address, this.versions.get(address));
    const before = this.#sent.get(address);
    if (before === resultId || (before === undefined && items.length === 0 && !open)) return;
    this.#sent.set(address, resultId);
    if (items.length === 0 && !open) this.#sent.delete(address);
    const version = this.versions.get(address);
    const uri = this.#reports.uriOf(address);
    void this.#connection.sendDiagnostics({ uri, diagnostics: [...items], ...(version !== undefined && { version }) });
  }
}
