import {
  commands,
  type Disposable,
  env,
  Position,
  type QuickPickItem,
  Range,
  Uri,
  WorkspaceEdit,
  window,
  workspace,
} from 'vscode';
import { listIn, recordIn, textIn, textsIn } from './answers.ts';
import { KeptAnswers } from './kept-answers.ts';
import { sentencesCommand } from './names.ts';
import { type Answer, ask } from './questions.ts';
import { ruleFiles } from './rule-files.ts';
import type { ServerConnection } from './server-connection.ts';
import { cursorLeavesTour, tourStepDone } from './tour.ts';

/**
 * Asks for a new rule file question by question, makes it and opens it. Escape at any question ends it, and nothing is made; what was answered is
 * kept for the next time. Who asks for it may say the kind, and what is known of it already: that is shown first, all at once.
 */
export function registerNewFile(server: ServerConnection): Disposable {
  return commands.registerCommand('traywright.newFile', (kind: unknown, known: unknown) =>
    newFile(server, textIn(kind), { known: answersFrom(known), shows: 'the file' }),
  );
}

/** A file that a piece of other work needs: it is made, and the cursor stays where that work is. */
export function newFileBeside(server: ServerConnection, kind: string, known: Answers): Promise<boolean> {
  return newFile(server, kind, { known, shows: 'nothing' });
}

export type Answers = Readonly<Record<string, readonly string[]>>;

interface Told {
  readonly known: Answers;
  /** Text of the instruction that the file begins with, as it was copied. */
  readonly pages?: string;
  readonly shows: 'the file' | 'nothing';
}

export function answersFrom(value: unknown): Answers {
  const all = Object.entries(recordIn(value)).map(([key, answers]) => [key, textsIn(answers)] as const);
  return Object.fromEntries(all.filter(([, answers]) => answers.length > 0));
}

/** Whether it was made. */
async function newFile(server: ServerConnection, wanted: string, told: Told): Promise<boolean> {
  await cursorLeavesTour();
  const chosen = await kindFor(server, wanted);
  if (chosen === undefined) return false;
  if (chosen.kind === copied) return fromCopied(server);
  const { kind, title } = chosen;
  const near = nearText(server);
  const asked = recordIn(
    await server.ask('traywright/newFileQuestions', { kind, near, told: Object.keys(told.known) }),
  );
  const all = listIn(asked.questions).map(recordIn);
  const before = await kept.before(kind, nothingGiven, ({ given }) => given.length);
  if (before === undefined) return false;
  const known =
    before === nothingGiven ? await confirmed(server, { kind, title, questions: all }, told.known) : before.known;
  if (known === undefined) return false;
  const questions = all.filter(({ key }) => known[textIn(key)] === undefined);
  const given = [...before.given];
  while (given.length < questions.length) {
    const question = questions[given.length] ?? {};
    const step = `${title}, question ${given.length + 1} of ${questions.length}: its `;
    const key = textIn(question.key);
    const answers = { ...known, ...answersIn(given, questions) };
    const filled = told.known[key]?.join(', ') || knownFor(key, all, answers);
    const back = given.length > 0;
    const answer =
      key === 'id'
        ? await askId(server, kind, answers, step)
        : await askFor(server, kind, question, { step, known: filled, back });
    if (answer === undefined) {
      kept.keep(kind, { known, given }, given.length, async () => {
        await newFile(server, kind, told);
      });
      return false;
    }
    if (answer === 'back') given.pop();
    else given.push(answer);
  }
  const answers = { ...known, ...answersIn(given, questions) };
  const { pages } = told;
  const made = recordIn(await server.ask('traywright/newFile', { kind, near, answers, pages }));
  return open(made, textIn(asked.folder), answers.id?.[0] ?? kind, told.shows);
}

/** By the number of the question; one that was passed over has none. */
type Given = readonly (readonly string[])[];

interface Begun {
  /** What was known, as it was looked at. */
  readonly known: Answers;
  readonly given: Given;
}

const nothingGiven: Begun = { known: {}, given: [] };
const kept = new KeptAnswers<Begun>();

function answersIn(given: Given, questions: readonly Asked[]): Answers {
  const all = given.map((answer, at) => [textIn(questions[at]?.key), answer] as const);
  return Object.fromEntries(all.filter(([, answer]) => answer.length > 0));
}

interface Form {
  readonly kind: string;
  readonly title: string;
  readonly questions: readonly Asked[];
}

const fewestToConfirm = 3;

/** All that is known, to be looked at and taken with one key; each can be changed by itself. Undefined: the questions are closed. */
async function confirmed(
  server: ServerConnection,
  { kind, title, questions }: Form,
  known: Answers,
): Promise<Answers | undefined> {
  const about = questions.filter(({ key }) => known[textIn(key)] !== undefined);
  if (about.length < fewestToConfirm) return {};
  let answers = Object.fromEntries(about.map(({ key }) => [textIn(key), known[textIn(key)] ?? []]));
  for (;;) {
    const take: QuickPickItem = {
      label: 'It is as on the page: take it',
      detail: 'What the page does not say is asked next.',
    };
    const rows = about.map((question) => {
      const answer = answers[textIn(question.key)] ?? [];
      const words = answer.length === 0 ? 'left open' : answer.join(', ');
      return { label: `${textIn(question.title)}: ${words}`, description: 'change it', question };
    });
    const chosen = await window.showQuickPick<QuickPickItem & { readonly question?: Asked }>([take, ...rows], {
      title: `${title}: compare with the head of the page · Escape closes`,
      placeHolder: 'Enter takes all of it. To change a line, choose it.',
      ignoreFocusOut: true,
    });
    if (chosen?.question === undefined) return chosen === undefined ? undefined : answers;
    const { question } = chosen;
    const key = textIn(question.key);
    const answer = await askFor(server, kind, question, {
      step: `${title}: its `,
      known: answers[key]?.join(', ') ?? '',
      back: true,
    });
    if (answer === undefined) return undefined;
    if (answer !== 'back') answers = { ...answers, [key]: answer };
  }
}

/** Stands for a device whose instruction was copied. */
const copied = 'copied pages';

async function fromCopied(server: ServerConnection): Promise<boolean> {
  const text = await env.clipboard.readText();
  const { device, text: pages } = recordIn(await server.ask('traywright/copiedPages', { text }));
  if (textIn(pages) === '') {
    void window.showInformationMessage(
      'Traywright: no text of an instruction was copied. Select it in the PDF, copy it, and choose this again.',
    );
    return false;
  }
  const made = await newFile(server, 'device', { known: answersFrom(device), pages: textIn(pages), shows: 'the file' });
  if (made) await commands.executeCommand(sentencesCommand);
  return made;
}

/** Asked for where it is not given. */
async function kindFor(
  server: ServerConnection,
  given: string,
): Promise<{ readonly kind: string; readonly title: string } | undefined> {
  const kinds = listIn(await server.ask('traywright/kinds', {})).map(recordIn);
  const known = kinds.find(({ kind }) => kind === given);
  if (known !== undefined) return { kind: given, title: textIn(known.title) };
  const items = kinds.map(({ kind, title, about }) => ({
    label: textIn(title),
    description: textIn(kind),
    detail: textIn(about),
  }));
  const fromPages = {
    label: 'Device, from the pages of its instruction that you have copied',
    description: '',
    detail: 'What their head says is filled in, then their sentences come one by one.',
  };
  const chosen = await window.showQuickPick([fromPages, ...items], {
    title: 'New Rule File · Escape closes',
    placeHolder: 'What does it describe?',
    matchOnDetail: true,
    ignoreFocusOut: true,
  });
  if (chosen === fromPages) return { kind: copied, title: '' };
  return chosen === undefined ? undefined : { kind: chosen.description, title: chosen.label };
}

type Asked = Readonly<Record<string, unknown>>;

/** What an earlier choice says about a question, such as the revision of the chosen document. */
function knownFor(key: string, questions: readonly Asked[], answers: Answers): string {
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

interface AskedAs {
  readonly step: string;
  /** Stands there already: Enter takes it. */
  readonly known: string;
  readonly back: boolean;
}

async function askFor(
  server: ServerConnection,
  kind: string,
  question: Asked,
  { step, known, back }: AskedAs,
): Promise<Answer> {
  const takesMany = question.takes === 'many';
  const choices = listIn(question.choices)
    .map(recordIn)
    .map(({ label, detail }) => ({ label: textIn(label), description: textIn(detail) }));
  const isList = takesMany && choices.length === 0;
  const answer = await ask({
    title: `${step}${lowered(textIn(question.title))}`,
    asks: `${textIn(question.about)}${isList ? ' Several: put a comma between them.' : ''}`,
    takes: choices.length === 0 ? 'text' : takesMany ? 'many' : 'one',
    value: known,
    typical: textIn(question.typical),
    choices,
    free: question.free === true,
    pass: 'Leave it open',
    back,
    check: async (text) => {
      const parts = isList ? text.split(',') : [givenBy(question, text)];
      const key = textIn(question.key);
      const faults = parts.map((part) => server.ask('traywright/newFileFault', { kind, key, text: part.trim() }));
      return (await Promise.all(faults)).map((fault) => textIn(recordIn(fault).words)).find((words) => words !== '');
    },
  });
  if (answer === undefined || answer === 'back') return answer;
  if (!isList) return answer.map((label) => givenBy(question, label));
  return answer.flatMap((text) => text.split(',').map((part) => part.trim())).filter((part) => part !== '');
}

/** The id of what was chosen by its name. */
function givenBy({ choices }: Asked, label: string): string {
  const chosen = listIn(choices)
    .map(recordIn)
    .find((one) => one.label === label);
  return textIn(chosen?.gives) || label;
}

/** Not a word that is written in capitals. */
function lowered(title: string): string {
  return /^\p{Lu}\p{Ll}/u.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
}

async function askId(server: ServerConnection, kind: string, answers: Answers, step: string): Promise<Answer> {
  const near = nearText(server);
  const { proposed } = recordIn(await server.ask('traywright/newFile', { kind, near, answers }));
  return ask({
    title: `${step}id`,
    asks: 'Short name by which other files refer to it: letters, digits, dot, underscore, colon and hyphen.',
    takes: 'text',
    value: textIn(proposed),
    typical: '',
    choices: [],
    free: true,
    pass: '',
    back: true,
    check: async (text) => {
      if (!/^[A-Za-z0-9][A-Za-z0-9._:-]{0,63}$/.test(text))
        return 'Letters, digits, dot, underscore, colon and hyphen; a letter or digit first.';
      const { taken } = recordIn(
        await server.ask('traywright/newFile', { kind, near, answers: { ...answers, id: [text] } }),
      );
      return taken === true ? `There is one with the id "${text}" already.` : undefined;
    },
  });
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
async function open(
  made: Readonly<Record<string, unknown>>,
  folder: string,
  id: string,
  shows: Told['shows'],
): Promise<boolean> {
  const text = textIn(made.text);
  const begin = new Position(Number.isInteger(made.begin) ? Number(made.begin) : 0, 0);
  const selection = new Range(begin, begin);
  const root = await libraryRoot();
  if (root === undefined) {
    const loose = await workspace.openTextDocument({ language: 'traywright-rules', content: text });
    await window.showTextDocument(loose, { selection });
    return true;
  }
  const name = `${id.replaceAll(':', '-')}.ifu.yaml`;
  const uri = Uri.joinPath(root, ...folder.split('/').filter((part) => part !== ''), name);
  const edit = new WorkspaceEdit();
  edit.createFile(uri, { overwrite: false, contents: new TextEncoder().encode(text) });
  if (!(await workspace.applyEdit(edit))) {
    void window.showErrorMessage(`Traywright: the file ${name} was not made. There may be one of this name already.`);
    return false;
  }
  if (shows === 'nothing') window.setStatusBarMessage(`Made ${workspace.asRelativePath(uri)}.`, shownFor);
  else await window.showTextDocument(uri, { selection });
  await tourStepDone('write');
  return true;
}

const shownFor = 15_000;

async function libraryRoot(): Promise<Uri | undefined> {
  const near = nearUri();
  const found = (await ruleFiles()).filter(({ path }) => path.endsWith('/library.ifu.yaml'));
  const roots = found.map((uri) => Uri.joinPath(uri, '..')).sort((a, b) => b.path.length - a.path.length);
  const around = near === undefined ? undefined : roots.find((root) => near.path.startsWith(`${root.path}/`));
  return around ?? roots.at(-1) ?? workspace.workspaceFolders?.[0]?.uri;
}
