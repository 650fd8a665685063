import {
  commands,
  type Diagnostic,
  type Disposable,
  languages,
  type QuickPickItem,
  Uri,
  window,
  workspace,
} from 'vscode';
import { ruleScheme } from './names.ts';
import type { ServerConnection } from './server-connection.ts';

/** The pages, and the command that opens one. */
export function registerRulePages(server: ServerConnection): readonly Disposable[] {
  const pages = workspace.registerTextDocumentContentProvider(ruleScheme, {
    provideTextDocumentContent: async (uri) => {
      const rule = uri.path.replace(/^\//, '').replace(/\.md$/, '');
      return (await server.explanationOf(rule)) ?? `There is no explanation of "${rule}".\n`;
    },
  });
  return [pages, commands.registerCommand('traywright.explainRule', (rule: unknown) => openRulePage(rule))];
}

async function openRulePage(given: unknown): Promise<void> {
  const rule = typeof given === 'string' ? given : await askForRule();
  if (rule === undefined || !/^[a-z0-9-]{1,80}$/.test(rule)) return;
  await commands.executeCommand('vscode.open', Uri.from({ scheme: ruleScheme, path: `/${rule}.md` }));
}

interface Found extends QuickPickItem {
  readonly rule: string;
}

/** By its name, for one that is not found at present. */
const byName: QuickPickItem = { label: 'Another one', description: 'by its name' };

/** Of those that there are: at the cursor first, then in the same file, then anywhere. */
async function askForRule(): Promise<string | undefined> {
  const found = foundNow();
  if (found.length === 0) return askForName();
  const chosen = await window.showQuickPick<QuickPickItem>([...found, byName], {
    title: 'Explain a finding',
    placeHolder: 'Which one? Those at the cursor and in this file stand first.',
    matchOnDescription: true,
  });
  if (chosen === byName) return askForName();
  return found.find((one) => one === chosen)?.rule;
}

function foundNow(): readonly Found[] {
  const { document, selection } = window.activeTextEditor ?? {};
  const here = document === undefined ? [] : languages.getDiagnostics(document.uri);
  const atCursor = here.filter(({ range }) => selection !== undefined && range.intersection(selection) !== undefined);
  const everywhere = languages.getDiagnostics().flatMap(([, all]) => all);
  const found = new Map<string, Found>();
  for (const one of [...atCursor, ...here, ...everywhere]) {
    const rule = ruleOf(one);
    if (rule !== undefined && !found.has(rule))
      found.set(rule, { rule, label: one.message.split('\n')[0] ?? '', description: rule });
  }
  return [...found.values()];
}

function ruleOf({ source, code }: Diagnostic): string | undefined {
  if (source?.toLowerCase() !== 'traywright' || code === undefined) return undefined;
  return String(typeof code === 'object' ? code.value : code);
}

function askForName(): Thenable<string | undefined> {
  return window.showInputBox({
    title: 'Explain a finding',
    prompt: 'Name of the finding, as it stands behind its message',
  });
}
