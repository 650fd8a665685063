import { window } from 'vscode';
import { counted } from './words.ts';

/**
 * Answers to questions that were closed before their end, by Escape or because something else opened in their place: nobody types them twice.
 * They are kept until the window is closed, each under what was being made.
 */
export class KeptAnswers<T> {
  readonly #kept = new Map<string, T>();

  /** What was given before, where the person goes on with it, else `none`; undefined: closed again. */
  async before(key: string, none: T, count: (answers: T) => number): Promise<T | undefined> {
    const answers = this.#kept.get(key);
    if (answers === undefined) return none;
    const goOn = { label: `Go on behind the ${counted(count(answers), 'answer')} given before` };
    const anew = { label: 'Begin anew' };
    const chosen = await window.showQuickPick([goOn, anew], {
      title: 'These questions were begun before',
      placeHolder: 'They were closed before the last one.',
      ignoreFocusOut: true,
    });
    if (chosen === undefined) return undefined;
    this.#kept.delete(key);
    return chosen === goOn ? answers : none;
  }

  /** `goOn` asks again; it is offered until the message goes. */
  keep(key: string, answers: T, count: number, goOn: () => Promise<void>): void {
    if (count === 0) return;
    this.#kept.set(key, answers);
    const button = 'Go On';
    const words = `Traywright: nothing was put in. Your ${counted(count, 'answer')} ${count === 1 ? 'is' : 'are'} kept.`;
    void window.showInformationMessage(words, button).then(async (chosen) => {
      if (chosen === button) await goOn();
    });
  }
}
