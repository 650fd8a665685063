import { type Disposable, StatusBarAlignment, window } from 'vscode';
import { counted } from './words.ts';

export const statusNotification = 'traywright/status';

/** What the server says about everything in view. */
export interface Status {
  readonly files: number;
  readonly errors: number;
  readonly warnings: number;
  readonly advice: number;
}

export function isStatus(value: unknown): value is Status {
  if (typeof value !== 'object' || value === null) return false;
  const numbers = value as Readonly<Record<string, unknown>>;
  return ['files', 'errors', 'warnings', 'advice'].every((name) => typeof numbers[name] === 'number');
}

/** How often the age of the last check is told anew, in milliseconds. */
const tick = 5_000;

/** How many files and findings there are, and how long ago they were checked, at the foot of the window. A click shows the findings. */
export class StatusItem implements Disposable {
  readonly #item = window.createStatusBarItem('traywright.status', StatusBarAlignment.Left, 10);
  readonly #clock: ReturnType<typeof setInterval>;
  #last: { readonly status: Status; readonly at: number } | undefined;

  constructor() {
    this.#item.name = 'Traywright';
    this.#item.command = 'workbench.actions.view.problems';
    this.#clock = setInterval(() => this.#draw(), tick);
    this.showWaiting();
  }

  showWaiting(): void {
    this.#last = undefined;
    this.#item.text = '$(sync~spin) Traywright';
    this.#item.tooltip = 'Traywright is reading the rule files';
    this.#item.accessibilityInformation = { label: 'Traywright is reading the rule files' };
    this.#item.hide();
  }

  show(status: Status): void {
    this.#last = { status, at: Date.now() };
    if (status.files === 0) {
      this.#item.hide();
      return;
    }
    const { files, errors, warnings, advice } = status;
    const parts = `${counted(errors, 'error')}, ${counted(warnings, 'warning')}, ${advice} advice`;
    const gaps =
      errors + warnings + advice > 0
        ? ''
        : '\nNo finding in a library with gaps means little: the library view counts the families that are encoded.';
    this.#item.tooltip = `Traywright: ${parts}${gaps}\nThe manufacturer's current document is the instruction; this is an index to it.`;
    // Without the age: a screen reader would speak of it again and again.
    this.#item.accessibilityInformation = { label: `Traywright: ${counted(files, 'file')}, ${parts}` };
    this.#draw();
    this.#item.show();
  }

  dispose(): void {
    clearInterval(this.#clock);
    this.#item.dispose();
  }

  #draw(): void {
    if (this.#last === undefined) return;
    const { status, at } = this.#last;
    const findings = status.errors + status.warnings + status.advice;
    const text = `$(checklist) ${counted(status.files, 'file')}, ${counted(findings, 'finding')}, ${agoWords(Date.now() - at)}`;
    if (this.#item.text !== text) this.#item.text = text;
  }
}

/** `2 s ago`, `5 min ago`, `3 h ago`. */
export function agoWords(milliseconds: number): string {
  const seconds = Math.max(0, Math.round(milliseconds / 1000));
  if (seconds < 60) return `${seconds} s ago`;
  return seconds < 3600 ? `${Math.floor(seconds / 60)} min ago` : `${Math.floor(seconds / 3600)} h ago`;
}
