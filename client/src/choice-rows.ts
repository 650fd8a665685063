import type { Disposable, QuickPick, QuickPickItem } from 'vscode';
import type { ServerChoice } from './server-sentences.ts';
import { rankedBy } from './typed-words.ts';

/** Choices about a sentence as rows of a list whose lines are cut off where they are too long. */

export interface ChoiceItem extends QuickPickItem {
  readonly choice: ServerChoice;
  /** The row above it goes on here. */
  readonly goesOn?: true;
}

/** As many signs as a line of a choice shows, also where many of them are wide, and as its label and the words beside it have together. */
export const mostInLine = 76;
const mostBeside = 74;

/** So wide a blank that what stands behind it is cut off: a screen reader speaks it. */
const unseen = '\u2003'.repeat(80);

/**
 * What is proposed is seen whole, in two lines of one row or, where it is very long, in further rows of the same choice. The sentence stands
 * below it as far as the line goes: it is marked in the text too.
 */
export function firstRows(choice: ServerChoice, quote: string): readonly ChoiceItem[] {
  const { label, detail } = choice;
  const [first = '', ...more] = inLines(label, mostInLine);
  if (more.length > 0)
    return rowsOf(choice, { label: first }, [...inLines(more.join(' '), mostInLine), ...inLines(detail, mostInLine)]);
  const said = quote === '' ? '' : `“${quote}”`;
  const isBeside = detail !== '' && label.length + detail.length <= mostBeside;
  const [line, ...rest] = inLines(isBeside ? said : `${detail} ${said}`.trim(), mostInLine);
  const shown = line === undefined ? [] : [rest.length === 0 ? line : `${line} …${unseen}${rest.join(' ')}`];
  return rowsOf(choice, isBeside ? { label, description: detail } : { label }, shown);
}

export function laterRows(choice: ServerChoice): readonly ChoiceItem[] {
  const { label, does } = choice;
  const words = does === 'stop' ? `${choice.detail}; Escape does the same` : choice.detail;
  const [first = '', ...more] = inLines(label, mostInLine);
  if (more.length > 0)
    return rowsOf(choice, { label: first }, [...inLines(more.join(' '), mostInLine), ...inLines(words, mostInLine)]);
  if (words === '') return [{ label, choice }];
  return label.length + words.length <= mostBeside
    ? [{ label, description: words, choice }]
    : rowsOf(choice, { label }, inLines(words, mostInLine));
}

/**
 * The row of a choice, and where two lines do not hold it the rows that go on with it. Each is a row like any other and takes the same choice:
 * the keys go from one to the next, so that who presses them quickly comes to where he sees himself come. A screen reader speaks the row that
 * is chosen and no other, so that the whole text stands in the first: behind so wide a blank that what is shown in the rows below is cut off.
 */
function rowsOf(choice: ServerChoice, head: QuickPickItem, lines: readonly string[]): readonly ChoiceItem[] {
  const [detail, ...rest] = lines;
  const spoken = rest.length === 0 ? detail : `${detail ?? ''}${unseen}${rest.join(' ')}`;
  const rows: ChoiceItem[] = [{ ...head, choice, ...(spoken !== undefined && { detail: spoken }) }];
  for (let at = 0; at < rest.length; at += 2) {
    const [label = '', below] = rest.slice(at, at + 2);
    rows.push({ label: `… ${label}`, choice, goesOn: true, ...(below !== undefined && { detail: below }) });
  }
  return rows;
}

/**
 * Shows the rows. While something is typed each choice is one row, found by any of its words; the editor would rank the rows that go on with
 * another by themselves, and look for the typed words as they follow each other only.
 */
export function listing(pick: QuickPick<ChoiceItem>, rows: readonly ChoiceItem[]): Disposable {
  const heads = rows.filter(({ goesOn }) => goesOn !== true);
  const single = heads.map((row) => ({ ...row, alwaysShow: true }));
  // Our order stands where the editor lets it; else it puts those first whose label begins with what is typed.
  Object.assign(pick, { sortByLabel: false });
  pick.items = rows;
  return pick.onDidChangeValue((value) => {
    const found = value.trim() === '' ? rows : rankedBy(value, single);
    pick.items = found;
    pick.activeItems = found.slice(0, 1);
  });
}

/** Cut between words, and rather behind a comma or a stroke where the line is long enough without the rest. */
export function inLines(text: string, most: number): readonly string[] {
  if (text === '') return [];
  if (text.length <= most) return [text];
  const head = text.slice(0, most + 1);
  const behindParts = Math.max(head.lastIndexOf(', ') + 1, head.lastIndexOf('; ') + 1, head.lastIndexOf(' | ') + 2);
  const between = head.lastIndexOf(' ');
  const at = behindParts > most / 2 ? behindParts : between > 0 ? between : most;
  return [text.slice(0, at).trim(), ...inLines(text.slice(at).trim(), most)];
}
