import {
  commands,
  type Disposable,
  type ExtensionContext,
  Selection,
  Uri,
  ViewColumn,
  window,
  workspace,
} from 'vscode';
import { textIn } from './answers.ts';

/** The tour is on the demo department: the file that its places name, and where the tour goes on after the demo was opened. */
const goesOnIn = 'traywright.tourGoesOnIn';

/**
 * When a button of the tour was pressed by keyboard, VS Code gives the cursor back to its step as soon as the key is let go and the step has
 * been moved into sight: what a step opens would lose the cursor again. So it opens after that. Milliseconds.
 */
const untilCursorIsFree = 600;

export function registerTour(context: ExtensionContext): readonly Disposable[] {
  const openTour = async () => {
    await commands.executeCommand('workbench.action.openWalkthrough', `${context.extension.id}#traywright.tour`);
    // What a step opens would take the place of a tab that is only looked at, and there would be no coming back to it.
    await commands.executeCommand('workbench.action.keepEditor');
  };
  void goOn(context, openTour);
  return [
    commands.registerCommand('traywright.openTour', openTour),
    tourCommand('traywright.tourDemo', () => commands.executeCommand('traywright.openDemo', 'in the tour')),
    tourCommand('traywright.tourProblems', () => commands.executeCommand('workbench.actions.view.problems')),
    tourCommand('traywright.tourPlace', (file, words) => showPlace(textIn(file), textIn(words))),
    tourCommand('traywright.tourSheet', (file, set) => showSheet(textIn(file), textIn(set))),
    commands.registerCommand('traywright.tourNewFile', () => commands.executeCommand('traywright.newFile')),
  ];
}

function tourCommand(name: string, show: (...given: readonly unknown[]) => Thenable<unknown>): Disposable {
  return commands.registerCommand(name, async (...given: readonly unknown[]) => {
    await new Promise((resolve) => setTimeout(resolve, untilCursorIsFree));
    await show(...given);
  });
}

/**
 * Before questions that follow each other: when one closes, VS Code gives the cursor back to where it was, and a tour takes it away again
 * from the next question, so that what is typed there is lost. So the cursor leaves the tour first, for the side bar.
 */
export async function cursorLeavesTour(): Promise<void> {
  const tab = window.tabGroups.activeTabGroup.activeTab;
  // A walkthrough is a tab that no extension is told the kind of.
  if (tab === undefined || tab.input !== undefined) return;
  await new Promise((resolve) => setTimeout(resolve, untilCursorIsFree));
  await commands.executeCommand('workbench.action.focusSideBar');
}

/** The window is about to be opened anew with this folder: the tour is shown again there. */
export async function tourAfterwards(context: ExtensionContext, folder: Uri): Promise<void> {
  await context.globalState.update(goesOnIn, folder.toString());
}

async function goOn({ globalState }: ExtensionContext, openTour: () => Thenable<unknown>): Promise<void> {
  const folder = workspace.workspaceFolders?.[0]?.uri;
  if (folder === undefined || globalState.get(goesOnIn) !== folder.toString()) return;
  await globalState.update(goesOnIn, undefined);
  await openTour();
  await tourStepDone('demo');
}

/** Marks a step that ends later than its command begins. */
export async function tourStepDone(step: 'demo' | 'write'): Promise<void> {
  await commands.executeCommand('setContext', `traywright.tourDone.${step}`, true);
}

/** The first place where these words stand in a file of the demo, marked, so that typing goes over them. */
async function showPlace(file: string, words: string): Promise<void> {
  const uri = await demoFile(file);
  if (uri === undefined) return;
  const document = await workspace.openTextDocument(uri);
  const start = Math.max(0, document.getText().indexOf(words));
  const selection = new Selection(document.positionAt(start), document.positionAt(start + words.length));
  const editor = await window.showTextDocument(document, { viewColumn: ViewColumn.One, selection });
  editor.revealRange(selection);
}

async function showSheet(file: string, set: string): Promise<void> {
  if ((await demoFile(file)) !== undefined) await commands.executeCommand('traywright.openSetSheet', set);
}

async function demoFile(file: string): Promise<Uri | undefined> {
  for (const { uri } of workspace.workspaceFolders ?? []) {
    const wanted = Uri.joinPath(uri, file);
    try {
      await workspace.fs.stat(wanted);
      return wanted;
    } catch {
      // Another folder may have it.
    }
  }
  const open = 'Open a Copy of the Demo';
  const chosen = await window.showInformationMessage(
    'This step of the tour needs the demo department. Do the first step of the tour: it opens a copy.',
    open,
  );
  if (chosen === open) await commands.executeCommand('traywright.openDemo', 'in the tour');
  return undefined;
}
