import {
  commands,
  type Disposable,
  Position,
  type QuickPickItem,
  Range,
  Uri,
  WorkspaceEdit,
  window,
  workspace,
} from 'vscode';
import { listIn, recordIn, textIn } from './answers.ts';
import { ruleFiles } from './rule-files.ts';
import type { ServerConnection } from './server-connection.ts';
import { cursorLeavesTour, tourStepDone } from './tour.ts';

/** Asks for a new rule file question by question, makes it and opens it. Escape at any question ends it, and nothing is made. */
export function registerNewFile(server: ServerConnection): Disposable {
  return commands.registerCommand('traywright.newFile', (kind: unknown) => newFile(server, textIn(kind)));
}

async function newFile(server: ServerConnection, given: string): Promise<void> {
  await cursorLeavesTour();
  const kind = given === '' ? await askKind(server) : given;
  if (kind === undefined) return;
  const near = nearText(server);
  const asked = recordIn(await server.ask('traywright/newFileQuestions', { kind, near }));
  const answers: Record<string, readonly string[]> = {};
  const questions = listIn(asked.questions).map(recordIn);
  for (const [index, question] of questions.entries()) {
    const isId = question.key === 'id';
    const step = `${index + 1} of ${questions.length}`;
    const key = textIn(question.key);
    const answer = isId
      ? await askId(server, kind, answers, step)
      : await ask(question, step, knownFor(key, questions, answers));
    if (answer === undefined) return;
    if (answer.length > 0) answers[key] = answer;
  }
  const made = recordIn(await server.ask('traywright/newFile', { kind, near, answers }));
  await open(made, textIn(asked.folder), answers.id?.[0] ?? kind);
}

async function askKind(server: ServerConnection): Promise<string | undefined> {
  const kinds = listIn(await server.ask('traywright/kinds', {})).map(recordIn);
  const items = kinds.map(({ kind, title, about }) => ({
    label: textIn(title),
    description: textIn(kind),
    detail: textIn(about),
  }));
  const chosen = await window.showQuickPick(items, {
    title: 'New Rule File',
    placeHolder: 'What does it describe?',
    matchOnDetail: true,
    ignoreFocusOut: true,
  });
  return chosen?.description;
}

type Question = Readonly<Record<string, unknown>>;

/** What an earlier choice says about a question, such as the revision of the chosen document. */
function knownFor(
  key: string,
  questions: readonly Question[],
  answers: Readonly<Record<string, readonly string[]>>,
): string {
  for (const { key: earlier, choices } of questions) {
    const given = answers[textIn(earlier)]?.[0];
    const chosen = listIn(choices)
      .map(recordIn)
      .find(({ label }) => label === given);
    const known = textIn(recordIn(chosen?.fills)[key]);
    if (known !== '') return known;
  }
  return '';
}

/** An empty answer passes the question over. `known` stands there already: Enter takes it. */
async function ask(question: Question, step: string, known: string): Promise<readonly string[] | undefined> {
  const choices = listIn(question.choices).map(recordIn);
  const title = `${textIn(question.title)} (${step})`;
  const items: QuickPickItem[] = choices.map(({ label, detail }) => ({
    label: textIn(label),
    description: textIn(detail),
  }));
  if (items.length === 0) return askText(question, title, known);
  if (question.takes === 'many') {
    const many = await window.showQuickPick(items, {
      title,
      placeHolder: `${textIn(question.about)} Choose any number, then press Enter.`,
      canPickMany: true,
      matchOnDescription: true,
      ignoreFocusOut: true,
    });
    return many?.map(({ label }) => label);
  }
  return question.free === true ? askFree(question, title, items, known) : askOne(question, title, items);
}

async function askText(question: Question, title: string, known: string): Promise<readonly string[] | undefined> {
  const typical = textIn(question.typical);
  const several = question.takes === 'many' ? ' Several: put a comma between them.' : '';
  const text = await window.showInputBox({
    title,
    prompt: `${textIn(question.about)}${several} Leave it empty to pass it over.`,
    ...(known !== '' && { value: known }),
    ...(typical !== '' && { placeHolder: `Such as ${typical}` }),
    ignoreFocusOut: true,
  });
  if (text === undefined) return undefined;
  const parts = question.takes === 'many' ? text.split(',') : [text];
  return parts.map((part) => part.trim()).filter((part) => part !== '');
}

/** Stands first, so that a hasty Enter leaves a question open instead of answering it. */
const passOver: QuickPickItem = { label: 'Leave it open', description: 'pass over this question' };

async function askOne(
  question: Question,
  title: string,
  items: readonly QuickPickItem[],
): Promise<readonly string[] | undefined> {
  const options = { title, placeHolder: textIn(question.about), matchOnDescription: true, ignoreFocusOut: true };
  const chosen = await window.showQuickPick([passOver, ...items], options);
  return chosen === undefined ? undefined : chosen === passOver ? [] : [chosen.label];
}

/** A list in which anything else may be typed too. */
function askFree(
  question: Question,
  title: string,
  items: readonly QuickPickItem[],
  known: string,
): Promise<readonly string[] | undefined> {
  return new Promise((resolve) => {
    const pick = window.createQuickPick();
    const show = (value: string): void => {
      const { shown, active } = offeredFor(value.trim(), items);
      pick.items = shown;
      pick.activeItems = [active];
    };
    pick.title = title;
    pick.placeholder = `${textIn(question.about)} Choose one, or type another.`;
    pick.matchOnDescription = true;
    pick.ignoreFocusOut = true;
    pick.value = known;
    show(known);
    pick.onDidChangeValue(show);
    pick.onDidAccept(() => {
      const chosen = pick.activeItems[0] ?? offeredFor(pick.value.trim(), items).active;
      resolve(chosen.label === passOver.label ? [] : [asTyped.get(chosen) ?? chosen.label]);
      pick.hide();
    });
    pick.onDidHide(() => {
      resolve(undefined);
      pick.dispose();
    });
    pick.show();
  });
}

/** What an entry that takes the typed words would answer. */
const asTyped = new WeakMap<QuickPickItem, string>();

/** Of what is known, that which begins so is meant before the few letters by themselves, which stay on offer below. */
function offeredFor(
  typed: string,
  items: readonly QuickPickItem[],
): { readonly shown: readonly QuickPickItem[]; readonly active: QuickPickItem } {
  if (typed === '') return { shown: [passOver, ...items], active: passOver };
  const exact = items.find(({ label }) => label === typed);
  if (exact !== undefined) return { shown: items, active: exact };
  const own = { label: `Take "${typed}" as typed`, description: 'not among those known', alwaysShow: true };
  asTyped.set(own, typed);
  const begins = items.find(({ label }) => label.toLowerCase().startsWith(typed.toLowerCase()));
  return { shown: [...items, own], active: begins ?? own };
}

async function askId(
  server: ServerConnection,
  kind: string,
  answers: Readonly<Record<string, readonly string[]>>,
  step: string,
): Promise<readonly string[] | undefined> {
  const near = nearText(server);
  const { proposed } = recordIn(await server.ask('traywright/newFile', { kind, near, answers }));
  const id = await window.showInputBox({
    title: `Id (${step})`,
    prompt: 'Short name by which other files refer to it: letters, digits, dot, underscore, colon and hyphen.',
    value: textIn(proposed),
    ignoreFocusOut: true,
    validateInput: async (text) => {
      if (!/^[A-Za-z0-9][A-Za-z0-9._:-]{0,63}$/.test(text))
        return 'Letters, digits, dot, underscore, colon and hyphen; a letter or digit first.';
      const { taken } = recordIn(
        await server.ask('traywright/newFile', { kind, near, answers: { ...answers, id: [text] } }),
      );
      return taken === true ? `There is one with the id "${text}" already.` : undefined;
    },
  });
  return id === undefined ? undefined : [id];
}

/** Any file of the library, as the server knows it. */
function nearText(server: ServerConnection): string | undefined {
  const near = nearUri();
  return near === undefined ? undefined : server.uriText(near);
}

function nearUri(): Uri | undefined {
  return window.activeTextEditor?.document.languageId === 'traywright-rules'
    ? window.activeTextEditor.document.uri
    : undefined;
}

/** Made below the folder of the library, as one step that can be undone; without an open folder it is a document without a name. */
async function open(made: Readonly<Record<string, unknown>>, folder: string, id: string): Promise<void> {
  const text = textIn(made.text);
  const begin = new Position(Number.isInteger(made.begin) ? Number(made.begin) : 0, 0);
  const selection = new Range(begin, begin);
  const root = await libraryRoot();
  if (root === undefined) {
    const loose = await workspace.openTextDocument({ language: 'traywright-rules', content: text });
    await window.showTextDocument(loose, { selection });
    return;
  }
  const name = `${id.replaceAll(':', '-')}.ifu.yaml`;
  const uri = Uri.joinPath(root, ...folder.split('/').filter((part) => part !== ''), name);
  const edit = new WorkspaceEdit();
  edit.createFile(uri, { overwrite: false, contents: new TextEncoder().encode(text) });
  if (await workspace.applyEdit(edit)) {
    await window.showTextDocument(uri, { selection });
    await tourStepDone('write');
  } else
    void window.showErrorMessage(`Traywright: the file ${name} was not made. There may be one of this name already.`);
}

async function libraryRoot(): Promise<Uri | undefined> {
  const near = nearUri();
  const found = (await ruleFiles()).filter(({ path }) => path.endsWith('/library.ifu.yaml'));
  const roots = found.map((uri) => Uri.joinPath(uri, '..')).sort((a, b) => b.path.length - a.path.length);
  const around = near === undefined ? undefined : roots.find((root) => near.path.startsWith(`${root.path}/`));
  return around ?? roots.at(-1) ?? workspace.workspaceFolders?.[0]?.uri;
}
