import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, delimiter, dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { unfinishedName } from './atomic-write.ts';

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome'];
const longestMs = 60_000;

/** The first Chromium on the search path, or undefined: printing works without one, as HTML. */
export function findChromium(env: Readonly<Record<string, string | undefined>>): string | undefined {
  for (const folder of (env.PATH ?? '').split(delimiter)) {
    for (const name of folder === '' ? [] : names) if (existsSync(join(folder, name))) return join(folder, name);
  }
  return undefined;
}

/**
 * Prints a page to a PDF beside it, with bookmarks of its headings. The browser is started directly, with an empty profile that is thrown
 * away, with every host name unknown to it: it can load nothing but the page. Paths are absolute.
 */
export function printPdf(
  browser: string,
  page: string,
  target: string,
): { readonly why: string } | { readonly written: string } {
  const profile = mkdtempSync(join(tmpdir(), 'traywright-print-'));
  // The browser writes as it goes; the name is given only to what is whole.
  const beside = join(dirname(target), unfinishedName(basename(target)));
  try {
    const done = spawnSync(browser, argumentsFor(profile, page, beside), {
      timeout: longestMs,
      stdio: 'ignore',
      shell: false,
    });
    const isThere = statSync(beside, { throwIfNoEntry: false })?.isFile() === true;
    if (done.status !== 0 || !isThere) return { why: 'the browser did not print the page.' };
    renameSync(beside, target);
    return { written: target };
  } catch {
    return { why: 'the PDF could not be written.' };
  } finally {
    rmSync(beside, { force: true });
    rmSync(profile, { recursive: true, force: true });
  }
}

/** Prints a page that lies in no folder of the reader's. */
export function printPdfOf(browser: string, html: string, target: string): ReturnType<typeof printPdf> {
  const folder = mkdtempSync(join(tmpdir(), 'traywright-page-'));
  try {
    const page = join(folder, 'page.html');
    writeFileSync(page, html, { mode: 0o600 });
    return printPdf(browser, page, target);
  } catch {
    return { why: 'the page could not be put where the browser reads it.' };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function argumentsFor(profile: string, page: string, target: string): readonly string[] {
  // A browser that runs as root refuses its own sandbox; the page has no script and loads nothing.
  const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  return [
    ...['--headless', '--disable-gpu', '--no-first-run', '--disable-extensions', '--disable-sync', ...asRoot],
    ...['--disable-background-networking', '--host-resolver-rules=MAP * ~NOTFOUND', `--user-data-dir=${profile}`],
    ...['--no-pdf-header-footer', '--generate-pdf-document-outline', `--print-to-pdf=${target}`],
    pathToFileURL(page).href,
  ];
}
