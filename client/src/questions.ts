import { type InputBox, QuickInputButtons, type QuickPick, type QuickPickItem, window } from 'vscode';
import type { AskedQuestion } from '../../server/src/panel/questions.ts';

/**
 * Asking a person at the top of the window: a text, one of a list, or several. An empty answer passes a question over; Escape ends all questions.
 */

export interface Question extends Omit<AskedQuestion, 'is' | 'choices'> {
  readonly choices: readonly QuickPickItem[];
  /** There is a question before this one to go back to. */
  readonly back?: boolean;
  /** What is wrong with an answer that is typed. */
  check?(answer: string): Promise<string | undefined>;
}

/** What the person gave; undefined: no more questions. */
export type Answer = readonly string[] | 'back' | undefined;

export function ask(question: Question): Promise<Answer> {
  if (question.choices.length === 0 && question.takes !== 'one') return askText(question);
  if (question.takes === 'many') return askMany(question);
  return question.free ? askFree(question) : askOne(question);
}

/** Resolves once: with what is given, or with undefined when the question is closed. */
function shown(
  input: InputBox | QuickPick<QuickPickItem>,
  { title, back }: Question,
  listen: (give: (answer: Answer) => void) => void,
): Promise<Answer> {
  return new Promise((resolve) => {
    const give = (answer: Answer): void => {
      resolve(answer);
      input.hide();
    };
    input.title = `${title} · Escape closes`;
    input.ignoreFocusOut = true;
    if (back === true) input.buttons = [QuickInputButtons.Back];
    input.onDidTriggerButton(() => give('back'));
    listen(give);
    input.onDidHide(() => {
      resolve(undefined);
      input.dispose();
    });
    input.show();
  });
}

function askText(question: Question): Promise<Answer> {
  const { asks, value, typical, pass, check } = question;
  const input = window.createInputBox();
  // Not as words that stand in the box: those come up again as a box of their own over the title, wherever the pointer rests.
  const parts = [
    asks,
    typical === '' ? '' : `Such as ${typical}.`,
    pass === '' ? '' : 'Leave it empty to pass it over.',
  ];
  input.prompt = parts.filter((part) => part !== '').join(' ');
  input.value = value;
  let latest = 0;
  const look = async (): Promise<string | undefined> => {
    latest++;
    const own = latest;
    const text = input.value.trim();
    const words = text === '' ? undefined : await check?.(text);
    if (own === latest) input.validationMessage = words;
    return words;
  };
  input.onDidChangeValue(look);
  return shown(input, question, (give) =>
    input.onDidAccept(async () => {
      const text = input.value.trim();
      if (text === '' && pass === '') input.validationMessage = 'An answer is needed here.';
      else if ((await look()) === undefined) give(text === '' ? [] : [text]);
    }),
  );
}

const leavesOpen = 'Leave it open';

/** Stands first, so that a hasty Enter leaves a question open instead of answering it. */
function passing({ pass }: Question): readonly QuickPickItem[] {
  return pass === '' ? [] : [{ label: pass, description: pass === leavesOpen ? 'pass over this question' : '' }];
}

function askOne(question: Question): Promise<Answer> {
  const pass = passing(question);
  const pick = window.createQuickPick();
  pick.items = [...pass, ...question.choices];
  pick.placeholder = question.asks;
  pick.matchOnDescription = true;
  pick.matchOnDetail = true;
  return shown(pick, question, (give) =>
    pick.onDidAccept(() => {
      const [chosen] = pick.selectedItems;
      if (chosen !== undefined) give(pass.includes(chosen) ? [] : [chosen.label]);
    }),
  );
}

function askMany(question: Question): Promise<Answer> {
  const pick = window.createQuickPick();
  pick.items = question.choices;
  pick.canSelectMany = true;
  // How to choose stands in the title: words in the box end where it counts what is chosen.
  pick.placeholder = question.asks;
  pick.matchOnDescription = true;
  const title = `${question.title} (space bar chooses, Enter goes on)`;
  return shown(pick, { ...question, title }, (give) =>
    pick.onDidAccept(() => give(pick.selectedItems.map(({ label }) => label))),
  );
}

/** A list in which anything else may be typed too. */
function askFree(question: Question): Promise<Answer> {
  const pick = window.createQuickPick();
  const pass = passing(question);
  const show = (value: string): void => {
    const { items, active } = offeredFor(value.trim(), question.choices, pass);
    pick.items = items;
    pick.activeItems = active === undefined ? [] : [active];
  };
  pick.placeholder = `${question.asks} Choose one, or type another.`;
  pick.matchOnDescription = true;
  pick.value = question.value;
  show(question.value);
  pick.onDidChangeValue(show);
  return shown(pick, question, (give) =>
    pick.onDidAccept(async () => {
      const chosen = pick.activeItems[0] ?? offeredFor(pick.value.trim(), question.choices, pass).active;
      if (chosen === undefined) return;
      const answer = asTyped.get(chosen) ?? chosen.label;
      const words = pass.includes(chosen) ? undefined : await question.check?.(answer);
      if (words === undefined) give(pass.includes(chosen) ? [] : [answer]);
      else pick.items = [{ label: words, description: 'change what is typed', alwaysShow: true }];
    }),
  );
}

/** What an entry that takes the typed words would answer. */
const asTyped = new WeakMap<QuickPickItem, string>();

/** Of what is known, that which begins so is meant before the few letters by themselves, which stay on offer below. */
function offeredFor(
  typed: string,
  items: readonly QuickPickItem[],
  pass: readonly QuickPickItem[],
): { readonly items: readonly QuickPickItem[]; readonly active: QuickPickItem | undefined } {
  if (typed === '') return { items: [...pass, ...items], active: pass[0] ?? items[0] };
  const exact = items.find(({ label, description }) => label === typed || description === typed);
  if (exact !== undefined) return { items, active: exact };
  const own = { label: `Take "${typed}" as typed`, description: 'not among those known', alwaysShow: true };
  asTyped.set(own, typed);
  const begins = items.find(({ label }) => label.toLowerCase().startsWith(typed.toLowerCase()));
  return { items: [...items, own], active: begins ?? own };
}
