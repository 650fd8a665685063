import { mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { asLines, foundByCommandLine } from './command-line.ts';
import { type Editor, packagedExtension, screenshot, startEditor } from './harness.ts';
import { type Problem, problemsWhen, showProblems } from './problems.ts';
import { hoverAt, openHover, replaceWords, save, typeAt, undo } from './text.ts';
import { until } from './wait.ts';
import {
  chooseByName,
  commandsFor,
  focusText,
  notifications,
  openFile,
  runCommand,
  statusBar,
  useTheme,
} from './window.ts';

/** The packaged extension in real VS Code, with a library of five files, two of them with a mistake. */

const folder = path.join(import.meta.dirname, 'fixtures/small-library');
let editor: Editor;

beforeAll(async () => {
  editor = await startEditor({
    name: 'vscode',
    folder,
    extensions: [packagedExtension],
    settings: { 'workbench.colorTheme': 'Default Light Modern' },
  });
});
afterAll(() => editor?.close());

const unknownField = {
  file: 'devices/grey-scissors.ifu.yaml',
  line: 6,
  column: 1,
  severity: 'error',
  code: 'unknown-field',
  source: 'Traywright',
};
const unknownId = {
  file: 'sets/tray-a.ifu.yaml',
  line: 6,
  column: 14,
  severity: 'error',
  code: 'unknown-id',
  source: 'Traywright',
};

describe('opening a library', () => {
  it('lists the findings of files that nobody opened: those of the command line, in its words', async () => {
    const expected = asLines(foundByCommandLine(folder));
    const listed = await problemsWhen(editor, 'all findings', (found) => found.length === expected.length);
    expect(asLines(listed)).toEqual(expected);
    expect(listed).toEqual(
      expect.arrayContaining([expect.objectContaining(unknownField), expect.objectContaining(unknownId)]),
    );
    await screenshot(editor, 'problems-light');
  });

  it('asks nothing and announces nothing', async () => {
    expect(await notifications(editor)).toEqual([]);
  });

  it('counts files and findings at the foot of the window', async () => {
    await until(
      'the numbers',
      async () => (await statusBar(editor)).find((item) => item.includes('Traywright: 5 files')),
      {
        describe: async () => (await statusBar(editor)).join('\n'),
      },
    );
  });

  it('offers its commands under one name', async () => {
    expect(await commandsFor(editor, 'Traywright: ')).toEqual(
      expect.arrayContaining([
        'Traywright: Explain a Finding',
        'Traywright: Restart the Checker',
        'Traywright: Show Log',
      ]),
    );
  });
});

describe('reading a file', () => {
  it('shows the quote, the page and both units over a number', async () => {
    await openFile(editor, 'devices/pale-forceps.ifu.yaml');
    const said = await hoverAt(editor, 11, '140 C', 'page 2');
    expect(said).toContain('140 °C (284 °F)');
    expect(said).toContain('“Do not exceed 140 °C.”');
    expect(said).toContain('PG-12, revision C, page 2');
    expect(said).toContain("manufacturer's current document is the instruction");
  });

  it('finds the sentence for a value whose citation stands around it', async () => {
    await openHover(editor, 17, '4 min', 'page 4');
    await screenshot(editor, 'hover-light');
    await editor.page.keyboard.press('Escape');
    await useTheme(editor, 'dark');
    await openHover(editor, 17, '4 min', 'page 4');
    await screenshot(editor, 'hover-dark');
    await editor.page.keyboard.press('Escape');
    await hoverAt(editor, 17, '4 min', 'at least 4 minutes');
  });

  it('explains a field', async () => {
    await hoverAt(editor, 11, 'limits', 'Limits that hold at every stage');
  });
});

describe('explaining a finding', () => {
  it('opens a page, from the link behind the message', async () => {
    await showProblems(editor);
    await editor.page.locator('.markers-panel-container .monaco-list').focus();
    await editor.page.keyboard.press('Home');
    const link = editor.page
      .locator('.markers-panel-container .monaco-list-row a', { hasText: /^[a-z]+(-[a-z]+)+$/ })
      .first();
    const rule = (await link.textContent()) ?? '';
    await link.click();
    await editor.page.locator('.tab.active', { hasText: `${rule}.md` }).waitFor();
    await shownPage().locator('h1', { hasText: rule }).waitFor();
    await screenshot(editor, 'explanation');
  });

  it('opens the same page on command: what is found is offered by its message', async () => {
    await runCommand(editor, 'Traywright: Explain a Finding');
    await chooseByName(editor, 'unknown-field', ({ description }) => description === 'unknown-field');
    await shownPage().locator('h1', { hasText: 'unknown-field' }).waitFor();
  });
});

describe('editing', () => {
  it('takes a finding away, and brings it back', async () => {
    await openFile(editor, 'devices/grey-scissors.ifu.yaml');
    await replaceWords(editor, 6, 'clas', 'class');
    await problemsWhen(editor, 'one finding less', (found) => found.every(({ code }) => code !== 'unknown-field'));
    await undo(editor);
    await problemsWhen(editor, 'the finding again', (found) => found.some(({ code }) => code === 'unknown-field'));
    await screenshot(editor, 'problems-dark');
  });

  it('is followed by other files, opened or not', async () => {
    await openFile(editor, 'devices/pale-forceps.ifu.yaml');
    await replaceWords(editor, 2, 'pale-forceps', 'pale-forcep');
    await problemsWhen(editor, 'the set to follow', (found) =>
      idFindings(found).some(({ message }) => message.includes('"pale-forceps"')),
    );
    await undo(editor);
    await problemsWhen(editor, 'the set to follow back', (found) =>
      idFindings(found).every(({ message }) => message.includes('"pale-forcep".')),
    );
  });

  it('shows a finding within a moment of the keystroke', async () => {
    await openFile(editor, 'documents/pg-12.ifu.yaml');
    await showProblems(editor);
    const times: number[] = [];
    for (let round = 0; round < 10; round++) {
      await typeAt(editor, 4, 4, 'x');
      times.push(await millisecondsUntil('error'));
      await focusText(editor);
      await editor.page.keyboard.press('Backspace');
      await millisecondsUntil('none');
    }
    times.sort((a, b) => a - b);
    process.stdout.write(
      `keystroke to squiggle in VS Code: median ${times[5]?.toFixed(0)} ms, slowest ${times[9]?.toFixed(0)} ms\n`,
    );
    expect(times[5]).toBeLessThan(2_000);
  });
});

describe('the disk', () => {
  const wrong = 'kind: set\nid: tray-b\nmembers:\n  - {device: nobody-knows-it, qty: 1}\n';
  const listed = (found: readonly Problem[]) => [
    ...new Set(found.filter(({ message }) => message.includes('nobody-knows-it')).map(({ file }) => file)),
  ];

  it('is followed: a file that comes, is renamed, and goes with its folder', async () => {
    mkdirSync(path.join(editor.folder, 'more'));
    writeFileSync(path.join(editor.folder, 'more/tray-b.ifu.yaml'), wrong);
    await problemsWhen(editor, 'the new file', (found) => listed(found).join() === 'more/tray-b.ifu.yaml');
    renameSync(path.join(editor.folder, 'more/tray-b.ifu.yaml'), path.join(editor.folder, 'more/tray-c.ifu.yaml'));
    await problemsWhen(editor, 'the new name', (found) => listed(found).join() === 'more/tray-c.ifu.yaml');
    rmSync(path.join(editor.folder, 'more'), { recursive: true });
    await problemsWhen(editor, 'the folder to be gone', (found) => listed(found).length === 0);
  });
});

describe('[R13] when the checker is killed', () => {
  it('is started again, says so once, and nothing is lost', async () => {
    await openFile(editor, 'devices/grey-scissors.ifu.yaml');
    await replaceWords(editor, 6, 'clas', 'claz');
    const checker = editor.server.processes().find(({ command }) => command.includes('server.cjs'));
    expect(checker).toBeDefined();
    if (checker !== undefined) process.kill(checker.pid, 'SIGKILL');
    await until('another checker', () => {
      const now = editor.server.processes().find(({ command }) => command.includes('server.cjs'));
      return now !== undefined && now.pid !== checker?.pid ? true : undefined;
    });
    await problemsWhen(editor, 'the unsaved text to be checked', (found) =>
      found.some(({ message }) => message.includes('"claz"')),
    );
    const said = await notifications(editor);
    expect(said.map(({ message }) => message)).toEqual([
      expect.stringContaining('was started again. Nothing was lost.'),
    ]);
    await undo(editor);
    await save(editor);
  });
});

/** The page in the foremost editor, as drawn. */
function shownPage() {
  return editor.page.frameLocator('iframe.webview.ready:visible').frameLocator('#active-frame');
}

function idFindings(found: readonly Problem[]): Problem[] {
  return found.filter(({ code }) => code === 'unknown-id');
}

/** Time on the page's own clock from now until the text is underlined, or no longer is. */
function millisecondsUntil(wanted: 'error' | 'none'): Promise<number> {
  return editor.page.evaluate(
    `new Promise((resolve) => {
      const start = performance.now();
      const look = () => {
        const marks = document.querySelectorAll('.editor-group-container.active .squiggly-error').length;
        if ((marks > 0) === ${wanted === 'error'}) resolve(performance.now() - start);
        else requestAnimationFrame(look);
      };
      look();
    })`,
  );
}
