import {
  type CancellationToken,
  commands,
  type DataTransfer,
  type Disposable,
  DocumentDropOrPasteEditKind,
  DocumentPasteEdit,
  type DocumentPasteEditProvider,
  languages,
  type Range,
  type TextDocument,
  window,
} from 'vscode';
import { listIn, recordIn, textIn } from './answers.ts';
import type { ServerConnection } from './server-connection.ts';

const kind = DocumentDropOrPasteEditKind.Text.append('cleaned');

interface Change {
  readonly label: string;
  readonly description: string;
}

/** Pasted text as it was meant. The list under the pasted text offers it as it was copied; a command shows each change. */
export function registerPaste(server: ServerConnection): readonly Disposable[] {
  const provider = new CleaningPaste(server);
  const selector = { language: 'traywright-rules' };
  return [
    languages.registerDocumentPasteEditProvider(selector, provider, {
      providedPasteEditKinds: [kind],
      pasteMimeTypes: ['text/plain'],
    }),
    commands.registerCommand('traywright.showPasteChanges', () => provider.show()),
  ];
}

class CleaningPaste implements DocumentPasteEditProvider {
  readonly #server: ServerConnection;
  #last: readonly Change[] = [];

  constructor(server: ServerConnection) {
    this.#server = server;
  }

  async provideDocumentPasteEdits(
    document: TextDocument,
    ranges: readonly Range[],
    data: DataTransfer,
    _context: unknown,
    token: CancellationToken,
  ): Promise<DocumentPasteEdit[] | undefined> {
    const text = await data.get('text/plain')?.asString();
    if (text === undefined || token.isCancellationRequested) return undefined;
    const [range, ...more] = ranges;
    const isOne = range !== undefined && more.length === 0;
    const place = isOne ? { uri: document.uri.toString(), range: plainRange(range) } : {};
    const answer = recordIn(await this.#server.ask('traywright/cleanPaste', { text, ...place }));
    const changes = listIn(answer.changes).map(changeIn);
    if (changes.length === 0 || token.isCancellationRequested) return undefined;
    this.#last = changes;
    const shown = changes.map(({ label }) => label).slice(0, 4);
    const title = `Insert cleaned text (${shown.join(', ')}${changes.length > 4 ? ', …' : ''})`;
    window.setStatusBarMessage(`Pasted text cleaned: ${changes.map(({ label }) => label).join(', ')}`, 15_000);
    return [new DocumentPasteEdit(textIn(answer.text), title, kind)];
  }

  async show(): Promise<void> {
    if (this.#last.length === 0) {
      void window.showInformationMessage('Traywright: nothing has been changed in pasted text.');
      return;
    }
    await window.showQuickPick([...this.#last], { title: 'What the last paste changed', matchOnDescription: true });
  }
}

/** As the protocol has it: the editor's own form of a range is a list. */
function plainRange({ start, end }: Range) {
  return {
    start: { line: start.line, character: start.character },
    end: { line: end.line, character: end.character },
  };
}

function changeIn(value: unknown): Change {
  const { from, to, why, count } = recordIn(value);
  const after = textIn(to) === '' ? 'nothing' : textIn(to) === ' ' ? 'a space' : textIn(to);
  return { label: `${textIn(from)} → ${after}`, description: `${textIn(why)}, ${Number(count)} ×` };
}
