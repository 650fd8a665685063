import { type Disposable, StatusBarAlignment, window } from 'vscode';

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

/** How many files and findings there are, at the foot of the window. A click shows the findings. */
export class StatusItem implements Disposable {
  readonly #item = window.createStatusBarItem('traywright.status', StatusBarAlignment.Left, 10);

  constructor() {
    this.#item.name = 'Traywright';
    this.#item.command = 'workbench.actions.view.problems';
    this.showWaiting();
  }

  showWaiting(): void {
    this.#item.text = '$(sync~spin) Traywright';
    this.#item.tooltip = 'Traywright is reading the rule files';
    this.#item.accessibilityInformation = { label: 'Traywright is reading the rule files' };
    this.#item.hide();
  }

  show({ files, errors, warnings, advice }: Status): void {
    if (files === 0) {
      this.#item.hide();
      return;
    }
    const findings = errors + warnings + advice;
    this.#item.text = `$(checklist) ${counted(files, 'file')}, ${counted(findings, 'finding')}`;
    const parts = `${counted(errors, 'error')}, ${counted(warnings, 'warning')}, ${advice} advice`;
    this.#item.tooltip = `Traywright: ${parts}\nThe manufacturer's current document is the instruction; this is an index to it.`;
    this.#item.accessibilityInformation = { label: `Traywright: ${counted(files, 'file')}, ${parts}` };
    this.#item.show();
  }

  dispose(): void {
    this.#item.dispose();
  }
}

function counted(count: number, one: string): string {
  return `${count} ${count === 1 ? one : `${one}s`}`;
}
