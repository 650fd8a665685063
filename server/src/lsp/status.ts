import type { Connection } from 'vscode-languageserver';
import type { Reports } from './reports.ts';
import { Slices } from './turns.ts';
import type { Workbench } from './workbench.ts';

/** What the client shows at the foot of its window. */
export interface Status {
  readonly files: number;
  readonly errors: number;
  readonly warnings: number;
  readonly advice: number;
}

export const statusNotification = 'traywright/status';

/** Tells the client how many files are in view and what was found in them, after each check: also that there was one. */
export class StatusReporter {
  readonly #connection: Connection;
  readonly #workbench: Workbench;
  readonly #reports: Reports;
  readonly #waiting = new Set<string>();
  #running = false;

  constructor(connection: Connection, workbench: Workbench, reports: Reports) {
    this.#connection = connection;
    this.#workbench = workbench;
    this.#reports = reports;
  }

  /** A library that is still being read is counted when it is whole. */
  touched(addresses: ReadonlySet<string>): void {
    for (const address of addresses) this.#waiting.add(address);
    if (!this.#running && !this.#workbench.isReading) void this.#run();
  }

  /** Behind everything else: the numbers may come a moment later than the findings. */
  async #run(): Promise<void> {
    this.#running = true;
    const { lull } = this.#workbench;
    const slices = new Slices(() => lull.come());
    await lull.come();
    for (const address of this.#waiting) {
      this.#waiting.delete(address);
      await this.#reports.prepare(address, slices);
      this.#reports.of(address);
      await slices.pause();
    }
    this.#running = false;
    this.#tell();
  }

  #tell(): void {
    const { error, warning, advice } = this.#reports.counts();
    const status: Status = { files: this.#workbench.countOfFiles(), errors: error, warnings: warning, advice };
    void this.#connection.sendNotification(statusNotification, status);
  }
}
