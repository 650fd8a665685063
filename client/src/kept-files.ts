import { commands, type Disposable, DocumentLink, extensions, Uri, window, workspace } from 'vscode';
import { listIn, recordIn, textIn } from './answers.ts';

/** A file that the library keeps beside its rule files, such as the PDF of a document, opened at a page as well as this editor can. */
const openKept = 'traywright.openKept';

export function registerKeptFiles(): Disposable {
  return commands.registerCommand(openKept, (address: unknown) => open(Uri.parse(textIn(address))));
}

/** A link to a PDF, led past the editor's text view, which can't show one. */
export function asKeptLink(link: DocumentLink): DocumentLink {
  if (link.target === undefined || !isPdf(link.target)) return link;
  const given = encodeURIComponent(JSON.stringify([link.target.toString()]));
  const led = new DocumentLink(link.range, Uri.parse(`command:${openKept}?${given}`));
  if (link.tooltip !== undefined) led.tooltip = link.tooltip;
  return led;
}

async function open(uri: Uri): Promise<void> {
  if (!isPdf(uri)) return;
  if (pdfIsShownHere()) {
    await commands.executeCommand('vscode.open', uri);
    return;
  }
  const file = uri.with({ fragment: '' });
  const show = 'Show the File';
  const there = await exists(file);
  const where = `${workspace.asRelativePath(file)}${pageWords(uri)}`;
  const words = there
    ? `This is in ${where}. VS Code can’t show PDFs by itself: open the file in your PDF program and go to that page, or install an extension that shows PDFs.`
    : `This is in ${where}, but that file is not in the library.`;
  const chosen = await window.showInformationMessage(words, ...(there ? [show] : []));
  if (chosen === show) await commands.executeCommand('revealInExplorer', file);
}

function isPdf({ path }: Uri): boolean {
  return /\.pdf$/i.test(path);
}

function pageWords({ fragment }: Uri): string {
  const page = /^page=(\d{1,5})$/.exec(fragment)?.[1];
  return page === undefined ? '' : `, page ${page}`;
}

/** Whether some extension brings a view of PDFs. */
function pdfIsShownHere(): boolean {
  return extensions.all.some(({ packageJSON }) =>
    listIn(recordIn(recordIn(packageJSON).contributes).customEditors).some((editor) =>
      listIn(recordIn(editor).selector).some((one) => /\.pdf$/i.test(textIn(recordIn(one).filenamePattern))),
    ),
  );
}

async function exists(file: Uri): Promise<boolean> {
  try {
    await workspace.fs.stat(file);
    return true;
  } catch {
    return false;
  }
}
