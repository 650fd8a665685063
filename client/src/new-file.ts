import { commands, type Disposable, Position, Range, Uri, WorkspaceEdit, window, workspace } from 'vscode';
import { listIn, recordIn, textIn, textsIn } from './answers.ts';
import { KeptAnswers } from './kept-answers.ts';
import { type Answer, ask } from './questions.ts';
import { ruleFiles } from './rule-files.ts';
import type { ServerConnection } from './server-connection.ts';
import { cursorLeavesTour, tourStepDone } from './tour.ts';

/**
 * Asks for a new rule file question by question, makes it and opens it. Escape at any question ends it, and nothing is made; what was answered is
 * kept for the next time. Who asks for it may say the kind, and what is known of it already.
 */
export function registerNewFile(server: ServerConnection): Disposable {
  return commands.registerCommand('traywright.newFile', (kind: unknown, known: unknown) =>
    newFile(server, textIn(kind), recordIn(known)),
  );
}

async function newFile(server: ServerConnection, wanted: string, told: Asked): Promise<void> {
  await cursorLeavesTour();
  const chosen = await kindFor(server, wanted);
  if (chosen === undefined) return;
  const { kind, title } = chosen;
  const near = nearText(server);
  const asked = recordIn(await server.ask('traywright/newFileQuestions', { kind, near }));
  const questions = listIn(asked.questions).map(recordIn);
  const before = await kept.before(kind, [], ({ length }) => length);
  if (before === undefined) return;
  const given = [...before];
  while (given.length < questions.length) {
    const question = questions[given.length] ?? {};
    const step = `${title}, question ${given.length + 1} of ${questions.length}: its `;
    const key = textIn(question.key);
    const answers = answersIn(given, questions);
    const known = textsIn(told[key]).join(', ') || knownFor(key, questions, answers);
    const back = given.length > 0;
    const answer =
      key === 'id' ? await askId(server, kind, answers, step) : await askFor(question, { step, known, back });
    if (answer === undefined) {
      kept.keep(kind, given, given.length, () => newFile(server, kind, told));
      return;
    }
    if (answer === 'back') given.pop();
    else given.push(answer);
  }
  const answers = answersIn(given, questions);
  const made = recordIn(await server.ask('traywright/newFile', { kind, near, answers }));
  await open(made, textIn(asked.folder), answers.id?.[0] ?? kind);
}

/** By the number of the question; one that was passed over has none. */
type Given = readonly (readonly string[])[];

const kept = new KeptAnswers<Given>();

function answersIn(given: Given, questions: readonly Asked[]): Readonly<Record<string, readonly string[]>> {
  const all = given.map((answer, at) => [textIn(questions[at]?.key), answer] as const);
  return Object.fromEntries(all.filter(([, answer]) => answer.length > 0));
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
  const chosen = await window.showQuickPick(items, {
    title: 'New Rule File',
    placeHolder: 'What does it describe?',
    matchOnDetail: true,
    ignoreFocusOut: true,
  });
  return chosen === undefined ? undefined : { kind: chosen.description, title: chosen.label };
}

type Asked = Readonly<Record<string, unknown>>;

/** What an earlier choice says about a question, such as the revision of the chosen document. */
function knownFor(
  key: string,
  questions: readonly Asked[],
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

interface AskedAs {
  readonly step: string;
  /** Stands there already: Enter takes it. */
  readonly known: string;
  readonly back: boolean;
}

async function askFor(question: Asked, { step, known, back }: AskedAs): Promise<Answer> {
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

async function askId(
  server: ServerConnection,
  kind: string,
  answers: Readonly<Record<string, readonly string[]>>,
  step: string,
): Promise<Answer> {
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
