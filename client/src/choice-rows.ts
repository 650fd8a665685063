import type { QuickPickItem } from 'vscode';
import type { ServerChoice } from './server-sentences.ts';

/** Choices about a sentence as rows of a list whose lines are cut off where they are too long. */

export interface ChoiceItem extends QuickPickItem {
  readonly choice: ServerChoice;
}

/** Longer words have a line of their own below the choice. */
const mostBeside = 60;

/** As many signs as a line of a choice shows, and of the words below it. */
export const mostInLine = 80;
const mostBelow = 84;

/**
 * What is proposed is seen whole, over as many lines as it needs; whichever is chosen, all of it is taken. The sentence stands below it where
 * there is room, and is marked in the text in any case.
 */
export function firstRows(choice: ServerChoice, quote: string): readonly ChoiceItem[] {
  const words = quote === '' ? choice.detail : `“${quote}” ${choice.detail}`.trim();
  const [first = '', ...more] = inLines(choice.label, mostInLine);
  if (more.length > 0) return rowsOf(choice, [first, ...more]);
  const [below = '', cut] = inLines(words, mostBelow);
  return rowsOf(choice, below === '' ? [first] : [first, cut === undefined ? below : `${below} …`]);
}

export function laterRows(choice: ServerChoice, byEscape: string): readonly ChoiceItem[] {
  const { label, does } = choice;
  const words = does === 'stop' ? `${choice.detail}; ${byEscape}` : choice.detail;
  if (words.length > mostBeside) return rowsOf(choice, [label, ...inLines(words, mostInLine)]);
  return [words === '' ? { label, choice } : { label, description: words, choice }];
}

/** Two lines make a row. */
function rowsOf(choice: ServerChoice, lines: readonly string[]): readonly ChoiceItem[] {
  const rows: ChoiceItem[] = [];
  for (let at = 0; at < lines.length; at += 2) {
    const [label = '', detail] = lines.slice(at, at + 2);
    rows.push({ label: at === 0 ? label : `… ${label}`, choice, ...(detail !== undefined && { detail }) });
  }
  return rows;
}

/** Cut between words, and rather behind a comma or a stroke where the line is long enough without the rest. */
export function inLines(text: string, most: number): readonly string[] {
  if (text === '') return [];
  if (text.length <= most) return [text];
  const head = text.slice(0, most + 1);
  const behindParts = Math.max(head.lastIndexOf(', ') + 1, head.lastIndexOf(' | ') + 2);
  const between = head.lastIndexOf(' ');
  const at = behindParts > most / 2 ? behindParts : between > 0 ? between : most;
  return [text.slice(0, at).trim(), ...inLines(text.slice(at).trim(), most)];
}
