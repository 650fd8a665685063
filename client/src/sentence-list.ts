import { type Disposable, QuickInputButtons, type QuickPick, window } from 'vscode';
import { type ChoiceItem, firstRows, laterRows, listing } from './choice-rows.ts';
import type { ServerChoice, ServerSentence } from './server-sentences.ts';

/** What was chosen; undefined: the list was closed, by Escape or because something else opened in its place. */
export type Chosen = ServerChoice | 'back' | undefined;

/**
 * One list for all sentences. It stays open while a choice is put in and the next sentence is looked up: a hasty Enter is lost then; in the text
 * it would write something.
 */
export class SentenceList {
  readonly #pick: QuickPick<ChoiceItem> = window.createQuickPick<ChoiceItem>();
  #rows: Disposable | undefined;
  #waiting: ((chosen: Chosen) => void) | undefined;
  #isShown = false;

  constructor() {
    this.#pick.ignoreFocusOut = true;
    this.#pick.onDidTriggerButton(() => this.#give('back'));
    this.#pick.onDidAccept(() => {
      const [active] = this.#pick.activeItems;
      if (active !== undefined) this.#give(active.choice);
    });
    this.#pick.onDidHide(() => {
      this.#isShown = false;
      this.#give(undefined);
    });
  }

  /** Closed by the person, or by what opened in its place. */
  get isClosed(): boolean {
    return !this.#isShown;
  }

  ask({ title, quote, asks, choices }: ServerSentence, above: 'nothing above' | 'a question above'): Promise<Chosen> {
    const rows = choices.flatMap((choice, at) => (at === 0 ? firstRows(choice, quote) : laterRows(choice)));
    const pick = this.#pick;
    this.#rows?.dispose();
    pick.value = '';
    this.#rows = listing(pick, rows);
    pick.activeItems = rows.slice(0, 1);
    pick.title = `${title} · Escape stops`;
    pick.placeholder = asks;
    pick.buttons = above === 'a question above' ? [QuickInputButtons.Back] : [];
    pick.busy = false;
    pick.enabled = true;
    return new Promise((resolve) => {
      this.#waiting = resolve;
      this.#isShown = true;
      pick.show();
    });
  }

  close(): void {
    this.#rows?.dispose();
    this.#pick.dispose();
  }

  #give(chosen: Chosen): void {
    const give = this.#waiting;
    if (give === undefined) return;
    this.#waiting = undefined;
    this.#pick.busy = true;
    this.#pick.enabled = false;
    give(chosen);
  }
}
