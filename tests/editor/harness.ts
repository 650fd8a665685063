import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type BrowserContext, chromium, type Page } from 'playwright-core';
import { CodeServer, type Settings, type WorkspaceTrust } from './code-server.ts';

/**
 * Drives real VS Code: code-server in headless Chromium, with our packaged extension and a copy of a folder. This file starts
 * and ends it and takes pictures; window.ts, text.ts and problems.ts act and read as a person does. Must not know what our
 * extension does: no finding, rule or view of ours is named in this folder outside `*.test.ts`.
 */

const repository = path.resolve(import.meta.dirname, '../..');
const artefacts = path.join(repository, 'tests/artefacts');

export interface EditorOptions {
  /** Stands before the name of each picture. */
  readonly name: string;
  /** The folder to open. The editor works on a copy, so that a test never changes the original. */
  readonly folder: string;
  readonly extensions: readonly string[];
  readonly trust?: WorkspaceTrust;
  readonly settings?: Settings;
}

/** VS Code as it is seen, whatever is behind it. */
export interface EditorWindow {
  readonly name: string;
  readonly page: Page;
  /** The copy that is open. */
  readonly folder: string;
}

export interface Editor extends EditorWindow {
  readonly server: CodeServer;
  close(): Promise<void>;
}

/** The package that `npm run package` writes. */
export const packagedExtension = path.join(repository, 'dist/traywright.vsix');

export const browserFlags = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Starts code-server and Chromium, opens a copy of the folder and waits until the window can be used. */
export async function startEditor(options: EditorOptions): Promise<Editor> {
  const home = mkdtempSync(path.join(tmpdir(), 'editor-'));
  const folder = path.join(home, 'open', path.basename(options.folder));
  cpSync(options.folder, folder, { recursive: true, verbatimSymlinks: true });
  const server = await CodeServer.start({
    home: path.join(home, 'server'),
    extensions: options.extensions,
    trust: options.trust ?? 'every folder is trusted',
    settings: options.settings ?? {},
  });
  const { browser, page } = await startBrowser(path.join(home, 'browser'), server.address);
  const editor: Editor = { name: options.name, page, server, folder, close: () => close(browser, server, home) };
  try {
    await openFolder(editor, folder);
  } catch (error) {
    await editor.close();
    throw error;
  }
  return editor;
}

/** Opens another folder, or the same one anew, in the same window. */
export async function openFolder(editor: Editor, folder: string): Promise<void> {
  await attempt(editor, `open ${path.basename(folder)}`, async () => {
    await editor.page.goto(`${editor.server.address}/?folder=${encodeURIComponent(folder)}`);
    await waitForWorkbench(editor);
  });
}

/** The window is drawn, the folder is listed and the extension host has answered. */
export async function waitForWorkbench(editor: EditorWindow): Promise<void> {
  const { page } = editor;
  await page.locator('.monaco-workbench .explorer-folders-view .monaco-list').first().waitFor();
  await page.locator('[id="status.host"]').waitFor();
  await page.locator('[id="status.problems"]').waitFor();
}

/** Saves what the window shows as tests/artefacts/<editor>-<name>.png and gives the file's path. */
export async function screenshot(editor: EditorWindow, name: string): Promise<string> {
  mkdirSync(artefacts, { recursive: true });
  const file = path.join(artefacts, `${editor.name}-${name.replaceAll(/[^\w.-]+/g, '-').slice(0, 80)}.png`);
  await editor.page.screenshot({ path: file, animations: 'disabled' });
  return file;
}

/** Does one thing a person does; when it fails, the message says what was tried and names a picture of the window. */
export async function attempt<T>(editor: EditorWindow, what: string, action: () => Promise<T>): Promise<T> {
  try {
    return await action();
  } catch (error) {
    if (error instanceof FailedAttempt) {
      throw error;
    }
    const picture = await screenshot(editor, `failed-${what}`).catch(() => 'no picture could be taken');
    throw new FailedAttempt(`Could not ${what} (see ${picture}): ${error instanceof Error ? error.message : error}`, {
      cause: error,
    });
  }
}

class FailedAttempt extends Error {}

export function findChromium(): string {
  const program = '/usr/bin/chromium';
  if (!existsSync(program)) throw new Error('Chromium is not installed: run .ci/install-editors first');
  return program;
}

/** Chromium with a window of the size that all pictures have. */
export async function startBrowser(
  userData: string,
  address: string,
): Promise<{ browser: BrowserContext; page: Page }> {
  const browser = await chromium.launchPersistentContext(userData, {
    executablePath: findChromium(),
    args: browserFlags,
    viewport: { width: 1280, height: 800 },
    locale: 'en-US',
    permissions: ['clipboard-read', 'clipboard-write'],
    baseURL: address,
  });
  browser.setDefaultTimeout(30_000);
  browser.on('dialog', (dialog) => void dialog.accept());
  return { browser, page: browser.pages()[0] ?? (await browser.newPage()) };
}

async function close(browser: BrowserContext, server: CodeServer, home: string): Promise<void> {
  await browser.close();
  await server.stop();
  rmSync(home, { recursive: true, force: true, maxRetries: 5 });
}
