import { commands, type Disposable, Uri, window, workspace } from 'vscode';
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

function askForRule(): Thenable<string | undefined> {
  return window.showInputBox({
    title: 'Explain a finding',
    prompt: 'Name of the finding, as it stands behind its message',
  });
}
