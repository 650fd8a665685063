import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Editor, packagedExtension, screenshot, startEditor } from './harness.ts';
import { acceptCompletion, closeCompletions, completions, goTo, lineWith, text, undo } from './text.ts';
import { until } from './wait.ts';
import {
  chooseByName,
  focusText,
  notifications,
  openFile,
  quickInputQuestion,
  quickList,
  runCommand,
  useTheme,
} from './window.ts';

/** Lists of a rule file in real VS Code, by keyboard alone: Enter, and the questions for a further item. */

let editor: Editor;

beforeAll(async () => {
  editor = await startEditor({
    name: 'lists',
    folder: path.join(import.meta.dirname, '../../samples/lanternfield-corrected'),
    extensions: [packagedExtension],
    settings: { 'workbench.colorTheme': 'Default Light Modern' },
  });
});
afterAll(() => editor?.close());

/** Goes to the end of a line by the End key, which means the end of the line also where it is drawn as several. */
async function endOf(line: number): Promise<void> {
  await goTo(editor, line, 1);
  await editor.page.keyboard.press('End');
}

/** The lines of the file from this one on. */
async function linesFrom(line: number, count: number): Promise<readonly string[]> {
  return (await text(editor)).split(/\r?\n/).slice(line - 1, line - 1 + count);
}

async function cursorAt(line: number, column: number): Promise<void> {
  await editor.page.locator(`[id="status.editor.selection"] >> text=/^Ln ${line}, Col ${column}$/`).waitFor();
}

/** Takes back what was typed. */
async function backTo(before: string): Promise<void> {
  await until('the text from before', async () => {
    if ((await text(editor)) === before) return true;
    await undo(editor);
    return undefined;
  });
}

/** Waits until the question at the top of the window is about this. */
async function asked(about: string): Promise<void> {
  let title = '';
  await until(
    `the question "${about}"`,
    async () => {
      title = (await editor.page.locator('.quick-input-widget .quick-input-title').allInnerTexts()).join();
      return title.includes(about) ? true : undefined;
    },
    { describe: () => title },
  );
}

async function lens(words: string): Promise<void> {
  let shown: readonly string[] = [];
  await until(
    `the line "${words}"`,
    async () => {
      shown = await editor.page.locator('.editor-group-container.active .codelens-decoration').allInnerTexts();
      return shown.some((one) => one.replaceAll('\u00a0', ' ').includes(words)) ? true : undefined;
    },
    { describe: async () => `${shown.join(' / ')} in ${await screenshot(editor, 'no-lens')}` },
  );
}

async function answer(about: string, typed: string): Promise<void> {
  await asked(about);
  await editor.page.keyboard.type(typed);
  await until('what was typed', async () =>
    (await editor.page.locator('.quick-input-widget input').first().inputValue()) === typed ? true : undefined,
  );
  await editor.page.keyboard.press('Enter');
}

/** The file of a sterilizer with Enter pressed behind its last cycle; `before`: its text as it was. */
async function enteredBehindLastCycle(): Promise<{ readonly before: string; readonly line: number }> {
  await openFile(editor, 'sterilizers/S1.ifu.yaml');
  const before = await text(editor);
  const line = await lineWith(editor, 'S1-gr121-30-30');
  await endOf(line);
  await editor.page.keyboard.press('Enter');
  await cursorAt(line + 1, 5);
  return { before, line };
}

describe('Enter', () => {
  it('behind an item that is drawn as several lines begins the next one; again, one level out', async () => {
    const { before, line } = await enteredBehindLastCycle();
    expect((await linesFrom(line, 3))[1]).toBe('  - ');
    await goTo(editor, line + 1, 5);
    await closeCompletions(editor);
    await editor.page.keyboard.press('Enter');
    await cursorAt(line + 1, 1);
    expect((await linesFrom(line, 3))[1]).toBe('');
    await backTo(before);
  });

  it('before the brace that closes an item leaves the brace where it is', async () => {
    await openFile(editor, 'washers/W1.ifu.yaml');
    const before = await text(editor);
    const line = await lineWith(editor, '{phase: dry, temp: 95 C');
    const [own = ''] = await linesFrom(line, 1);
    await endOf(line);
    await editor.page.keyboard.press('ArrowLeft');
    await editor.page.keyboard.press('Enter');
    await cursorAt(line + 1, 9);
    expect(await linesFrom(line, 2)).toEqual([own, '      - ']);
    await backTo(before);
  });

  it('behind the last phase goes on with a phase, then with the cycle, then with the next cycle', async () => {
    await openFile(editor, 'washers/W1.ifu.yaml');
    const before = await text(editor);
    const line = await lineWith(editor, '{phase: dry, temp: 95 C');
    await endOf(line);
    await editor.page.keyboard.press('Enter');
    await cursorAt(line + 1, 9);
    await editor.page.keyboard.press('Escape');
    await editor.page.keyboard.press('Enter');
    await cursorAt(line + 1, 5);
    await editor.page.keyboard.press('Enter');
    await cursorAt(line + 1, 5);
    await until('the dash of the next cycle', async () =>
      (await linesFrom(line, 2))[1] === '  - ' ? true : undefined,
    );
    await screenshot(editor, 'enter-next-cycle');
    await backTo(before);
  });
});

describe('adding by questions', () => {
  it('is the first thing offered behind a dash', async () => {
    const { before, line } = await enteredBehindLastCycle();
    const offered = await completions(editor);
    expect(offered[0]?.label).toBe('Add a further cycle…');
    await screenshot(editor, 'add-behind-dash');
    await acceptCompletion(editor, 'Add a further cycle…');
    await answer('Name on the screen', 'PV134-18-40');
    await answer('Method', 'steam-prevac');
    for (const part of [
      'Terminal',
      'Temperature',
      'Below',
      'Above',
      'Exposure',
      'Drying',
      'Highest load',
      'Qualified',
    ]) {
      await asked(part);
      await editor.page.keyboard.press('Enter');
    }
    await until('the question for more', async () =>
      (await quickInputQuestion(editor)).includes('anything else') ? true : undefined,
    );
    await editor.page.keyboard.press('Enter');
    await asked('Id');
    await editor.page.keyboard.press('Enter');
    const added = '  - {id: S1-PV134-18-40, name_on_screen: PV134-18-40, modality: steam-prevac}';
    await until(
      'the cycle in place of the dash',
      async () => ((await linesFrom(line, 2))[1] === added ? true : undefined),
      {
        describe: () => text(editor),
      },
    );
    await backTo(before);
  });

  it('a cycle of a washer, by keyboard', async () => {
    await openFile(editor, 'washers/W1.ifu.yaml');
    const before = await text(editor);
    await goTo(editor, await lineWith(editor, 'id: W1-gentle'), 9);
    await runCommand(editor, 'Traywright: Add a Cycle, Step, Part or Other Item');
    await until('the list of lists', async () =>
      (await quickInputQuestion(editor)).includes('What do you want to add') ? true : undefined,
    );
    await screenshot(editor, 'add-which-list');
    expect((await quickList(editor))[0]?.label).toBe('Add a further cycle');
    await editor.page.keyboard.press('Enter');
    await asked('Doses');
    await editor.page.keyboard.type('C2');
    await editor.page.keyboard.press('ArrowDown');
    await editor.page.keyboard.press('Space');
    await screenshot(editor, 'add-doses');
    await editor.page.keyboard.press('Enter');
    await answer('Water of the last rinse', 'RO-1');
    await asked('Last cleaning test');
    await editor.page.keyboard.press('Enter');
    await answer('A0', '3000');
    for (const [number, [phase, temp, time]] of [
      ['prewash', '20 C', '3 min'],
      ['thermal', '93 C', '5 min'],
    ].entries()) {
      await answer(`Phase ${number + 1}, Phase`, phase ?? '');
      await asked(`Phase ${number + 1}, Temperature`);
      if (number === 1) {
        await editor.page.keyboard.type('93');
        await editor.page.locator('.quick-input-message', { hasText: 'has no unit' }).waitFor();
        await screenshot(editor, 'add-no-unit');
        await editor.page.keyboard.type(' C');
        await editor.page.locator('.quick-input-message', { hasText: 'has no unit' }).waitFor({ state: 'hidden' });
        await editor.page.keyboard.press('Enter');
      } else await answer('Temperature', temp ?? '');
      await answer('Time', time ?? '');
    }
    await asked('Phase 3, Phase');
    await editor.page.keyboard.press('Enter');
    await until('the question for more', async () =>
      (await quickInputQuestion(editor)).includes('anything else') ? true : undefined,
    );
    await screenshot(editor, 'add-anything-else');
    await editor.page.keyboard.press('Enter');
    await answer('Id', 'W1-hot');
    const added = [
      '  - id: W1-hot',
      '    doses: [C2]',
      '    final_water: RO-1',
      '    a0: 3000',
      '    phases:',
      '      - {phase: prewash, temp: 20 C, time: 3 min}',
      '      - {phase: thermal, temp: 93 C, time: 5 min}',
    ].join('\n');
    await until('the cycle', async () => ((await text(editor)).includes(added) ? true : undefined), {
      describe: () => text(editor),
    });
    await screenshot(editor, 'add-made');
    await undo(editor);
    expect(await text(editor)).toBe(before);
  });

  it('Escape at any question puts nothing in', async () => {
    const before = await text(editor);
    await runCommand(editor, 'Traywright: Add a Cycle, Step, Part or Other Item');
    await chooseByName(editor, 'further cycle', ({ label }) => label === 'Add a further cycle');
    await asked('Doses');
    await editor.page.keyboard.press('Escape');
    await focusText(editor);
    expect(await text(editor)).toBe(before);
  });

  it('what was answered before something else opened is kept, and gone on with', async () => {
    await openFile(editor, 'washers/W1.ifu.yaml');
    const before = await text(editor);
    await runCommand(editor, 'Traywright: Add a Cycle, Step, Part or Other Item');
    await chooseByName(editor, 'further cycle', ({ label }) => label === 'Add a further cycle');
    await asked('Doses (1 of ');
    await editor.page.keyboard.press('Enter');
    await answer('Water of the last rinse', 'RO-1');
    await asked('Last cleaning test (3 of ');
    await editor.page.keyboard.press('F1');
    await until('the list of commands', async () =>
      (await editor.page.locator('.quick-input-widget input').first().inputValue()).startsWith('>') ? true : undefined,
    );
    await editor.page.keyboard.press('Escape');
    const told = await until('the words about what is kept', async () =>
      (await notifications(editor)).find(({ message }) => message.includes('2 answers are kept')),
    );
    expect(told.buttons).toEqual(['Go On']);
    await screenshot(editor, 'answers-kept');
    await focusText(editor);
    await runCommand(editor, 'Traywright: Add a Cycle, Step, Part or Other Item');
    await chooseByName(editor, 'further cycle', ({ label }) => label === 'Add a further cycle');
    await chooseByName(editor, 'Go on', ({ label }) => label === 'Go on behind the 2 answers given before');
    await asked('Last cleaning test (3 of ');
    await editor.page.keyboard.press('Escape');
    await focusText(editor);
    expect(await text(editor)).toBe(before);
  });

  it('is offered above the list, and by the light bulb', async () => {
    await openFile(editor, 'sterilizers/S1.ifu.yaml');
    await goTo(editor, await lineWith(editor, 'cycles:'), 1);
    await lens('Add a further cycle…');
    await goTo(editor, await lineWith(editor, 'S1-pv132-10-30'), 10);
    await editor.page.keyboard.press('Control+.');
    const entry = editor.page.locator('.action-widget .monaco-list-row', { hasText: 'Add a further cycle…' });
    await entry.waitFor();
    await screenshot(editor, 'add-light-bulb');
    await editor.page.keyboard.press('Escape');
    await useTheme(editor, 'dark');
    await openFile(editor, 'devices/duskwell-lap-scissors-takeapart.ifu.yaml');
    await goTo(editor, 5, 1);
    await lens('Add a further part…');
    await screenshot(editor, 'add-lenses-dark');
  });
});

describe('what a sentence may become', () => {
  const quote =
    'Wash with an alkaline detergent at 55 °C for 10 minutes, rinse with demineralised water for 2 minutes, disinfect at 90 °C for 5 minutes with demineralised water, then dry at most at 110 °C for 20 minutes.';
  const before = [
    'kind: device',
    'id: pale-clamp',
    'statements:',
    `  s1: {doc: D, rev: A, page: 1, section: Automated cleaning, quote: "${quote}"}`,
    '  s2: {doc: D, rev: A, page: 1, quote: "x", not_needed: [x]}',
    'cleaning:',
    '  all_of:',
    '    - {stage: manual, src: s2}',
    '',
  ].join('\n');

  async function chosenRow(): Promise<number> {
    const row = editor.page.locator('.quick-input-list .monaco-list-row.focused').first();
    return Number(await row.getAttribute('data-index', { timeout: 1_000 }).catch(() => '-1'));
  }

  async function rowChosen(wanted: number): Promise<void> {
    await until(`row ${wanted}`, async () => ((await chosenRow()) === wanted ? true : undefined), {
      describe: async () => `row ${await chosenRow()}`,
    });
  }

  it('stands in rows of which the keys pass over none, pressed slowly or quickly, and another way is asked once more', async () => {
    writeFileSync(path.join(editor.folder, 'devices/pale-clamp.ifu.yaml'), before);
    await openFile(editor, 'devices/pale-clamp.ifu.yaml');
    await runCommand(editor, 'Traywright: Turn All Sentences into Fields');
    await asked('Sentence 1 of 2');
    const rows = await quickList(editor);
    // The proposal is longer than two lines.
    expect(rows[1]?.label).toMatch(/^… /);
    await screenshot(editor, 'long-proposal');
    for (let row = 1; row < 5; row++) {
      await editor.page.keyboard.press('ArrowDown');
      await rowChosen(row);
    }
    for (let row = 4; row > 0; row--) await editor.page.keyboard.press('ArrowUp');
    await rowChosen(0);
    for (let row = 0; row < 4; row++) await editor.page.keyboard.press('ArrowDown');
    await rowChosen(4);
    await chooseByName(editor, 'another way', ({ label }) => label === 'Another way of cleaning …');
    await until('the question once more', async () =>
      (await quickInputQuestion(editor)).includes('Does the page say so?') ? true : undefined,
    );
    expect((await quickList(editor)).map(({ label }) => label)).toEqual([
      'No: it is done as well',
      'Yes: one of the ways is enough',
      'Stop here',
    ]);
    await editor.page.keyboard.press('Enter');
    await until('the proposal again', async () =>
      (await quickList(editor))[0]?.label.startsWith('Mechanical washing: main wash') ? true : undefined,
    );
    // The row that goes on takes the same.
    await editor.page.keyboard.press('ArrowDown');
    await rowChosen(1);
    await editor.page.keyboard.press('Enter');
    await asked('All sentences are gone through');
    await editor.page.keyboard.press('Escape');
    await editor.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    expect(await text(editor)).toContain('    - {stage: manual, src: s2}\n    - stage: mechanical\n      wash: {temp:');
  });
});
