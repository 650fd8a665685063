import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Editor, packagedExtension, screenshot, startEditor } from './harness.ts';
import { problemsWhen } from './problems.ts';
import { acceptCompletion, closeCompletions, completions, goTo, goToWords, lineWith, text, undo } from './text.ts';
import { until } from './wait.ts';
import {
  answerQuickInput,
  chooseByName,
  fillQuickInput,
  focusText,
  notifications,
  openFile,
  quickInputQuestion,
  quickList,
  runCommand,
} from './window.ts';

/** Writing a rule file in real VS Code, by keyboard alone. */

const folder = path.join(import.meta.dirname, 'fixtures/small-library');
const pages = readFileSync(path.join(import.meta.dirname, '../unit/editor/instructions/ringfield-punch.txt'), 'utf8');
const sentences = 33;
const passedOver = 23;
let editor: Editor;

beforeAll(async () => {
  editor = await startEditor({
    name: 'writing',
    folder,
    extensions: [packagedExtension],
    settings: { 'workbench.colorTheme': 'Default Light Modern' },
  });
});
afterAll(() => editor?.close());

/** Begins a new line behind this one, as a person does. */
async function newLineAfter(line: number): Promise<void> {
  await endOfLine(line);
  await editor.page.keyboard.press('Enter');
}

async function endOfLine(line: number): Promise<void> {
  await goTo(editor, line, 1);
  await editor.page.keyboard.press('End');
}

async function cursorAt(line: number, column: number): Promise<void> {
  await editor.page.locator(`[id="status.editor.selection"] >> text=/^Ln ${line}, Col ${column}$/`).waitFor();
}

/** Waits until the question at the top of the window is about this, and gives it. */
async function asked(about: string): Promise<string> {
  let question = '';
  return until(
    `the question "${about}"`,
    async () => {
      question = await quickInputQuestion(editor);
      return question.includes(about) ? question : undefined;
    },
    { describe: () => question },
  );
}

describe('completion', () => {
  it('offers the keys in the order of the work, then the bound words, then units', async () => {
    await openFile(editor, 'devices/pale-forceps.ifu.yaml');
    const line = await lineWith(editor, 'src: s2');
    await newLineAfter(line);
    await editor.page.keyboard.type('pul');
    expect((await completions(editor)).map(({ label }) => label)).toContain('pulses');
    await screenshot(editor, 'completion-keys');
    await acceptCompletion(editor, 'pulses');
    const words = await completions(editor);
    expect(words.map(({ label }) => label).slice(0, 3)).toEqual(['stated', 'at_least', 'at_most']);
    expect(words[1]?.spoken).toContain('smallest value the page allows');
    await screenshot(editor, 'completion-bound-words');
    await acceptCompletion(editor, 'at_least');
    await editor.page.keyboard.type('3');
    await editor.page.keyboard.press('Escape');
    expect(await text(editor)).toMatch(/\n {6}src: s2\n {6}pulses: \{at_least: 3 /);
  });

  it('offers devices that exist, in the line of a set', async () => {
    await openFile(editor, 'sets/tray-a.ifu.yaml');
    const line = await lineWith(editor, 'grey-scissors');
    await newLineAfter(line);
    await until(
      'the next dash',
      async () =>
        (await text(editor)).endsWith('  - ') || (await text(editor)).includes('\n  - \n') ? true : undefined,
      {
        describe: () => text(editor),
      },
    );
    await goTo(editor, line + 1, 5);
    await editor.page.keyboard.type('{dev');
    await completions(editor);
    await acceptCompletion(editor, 'device');
    const ids = (await completions(editor)).map(({ label }) => label);
    expect(ids).toEqual(['grey-scissors', 'pale-forceps']);
    await closeCompletions(editor);
  });
});

describe('a quote', () => {
  it('becomes fields; the bound word is a choice', async () => {
    await openFile(editor, 'devices/grey-scissors.ifu.yaml');
    await newLineAfter(7);
    await editor.page.keyboard.insertText('statements:');
    await until('the key', async () => ((await text(editor)).includes('\nstatements:') ? true : undefined));
    await endOfLine(8);
    await editor.page.keyboard.press('Enter');
    await cursorAt(9, 3);
    await editor.page.keyboard.insertText('s1: {doc: PG-12, rev: C, page: 2, quote: "Do not exceed 137 °C."}');
    await goToWords(editor, 9, 's1');
    await runCommand(editor, 'Traywright: Turn the Quote into Fields');
    await until('the fields', async () => ((await text(editor)).includes('137 °C, src: s1}') ? true : undefined), {
      describe: () => text(editor),
    });
    expect(await text(editor)).toContain('limits:\n  temp: {at_most: 137 °C, src: s1}');
    await screenshot(editor, 'quote-to-fields');
    await undo(editor);
    expect(await text(editor)).not.toContain('limits:');
  });

  it('pasted from a PDF is cleaned, and the changes can be looked at', async () => {
    await goToWords(editor, 9, 'Do not');
    const copied = '\ufb01lter at 132\u00a0\u00baC for 3\u201318 min ';
    await editor.page.evaluate(`navigator.clipboard.writeText(${JSON.stringify(copied)})`);
    await editor.page.keyboard.press('Control+V');
    // The line is drawn as several where the window is narrow.
    await editor.page
      .locator('.editor-group-container.active .view-lines', {
        hasText: /filter\sat\s132\s°C\sfor\s3–18\smin\s*Do\snot/,
      })
      .waitFor();
    await runCommand(editor, 'Traywright: Show What the Last Paste Changed');
    await until('the changes', async () => {
      const shown = (await quickList(editor)).map(({ label, description }) => `${label} ${description}`);
      return shown.join('\n').includes('ﬁ → fi letters printed as one sign, 1 ×') ? true : undefined;
    });
    await screenshot(editor, 'paste-changes');
    await editor.page.keyboard.press('Escape');
  });
});

describe('renaming', () => {
  it('changes the id in every file', async () => {
    await openFile(editor, 'devices/pale-forceps.ifu.yaml');
    await goToWords(editor, 2, 'pale-forceps');
    await editor.page.keyboard.press('F2');
    const box = editor.page.locator('.rename-box input');
    await box.waitFor();
    await box.fill('light-forceps');
    await editor.page.keyboard.press('Enter');
    await until('the new name', async () => ((await text(editor)).includes('id: light-forceps') ? true : undefined));
    await openFile(editor, 'sets/tray-a.ifu.yaml');
    expect(await text(editor)).toContain('device: light-forceps');
    await screenshot(editor, 'renamed');
  });
});

describe('a new file', () => {
  it('is made by answering questions; what is mandatory is open and found', async () => {
    await focusText(editor);
    await runCommand(editor, 'Traywright: New Rule File');
    await asked('What does it describe');
    await screenshot(editor, 'new-file-kinds');
    await chooseByName(editor, 'device', ({ label }) => label === 'Device');
    await asked('Device, question 1 of 8: its document');
    await fillQuickInput(editor, 'pg');
    await until('the known document chosen already, and the words as typed below it', async () => {
      const chosen = await editor.page.locator('.quick-input-list .monaco-list-row.focused').allInnerTexts();
      const labels = (await quickList(editor)).map(({ label }) => label);
      return chosen.join().includes('PG-12') && labels.at(-1) === 'Take "pg" as typed' ? true : undefined;
    });
    await editor.page.keyboard.press('Enter');
    await asked('its revision');
    await editor.page.keyboard.press('Enter');
    await asked('its maker');
    await answerQuickInput(editor, 'Pale Grove');
    await asked('its name');
    await answerQuickInput(editor, 'Suction tube');
    await asked('its catalogue numbers');
    await answerQuickInput(editor, 'PG-1401, PG-1402');
    await asked('its class');
    await chooseByName(editor, 'critical', ({ label }) => label === 'critical');
    await asked('its traits');
    await editor.page.keyboard.type('lumen');
    await editor.page.keyboard.press('ArrowDown');
    await editor.page.keyboard.press('Space');
    await screenshot(editor, 'new-file-traits');
    await editor.page.keyboard.press('Enter');
    await asked('its id');
    await editor.page.keyboard.press('Enter');
    await editor.page.locator('.tab.active', { hasText: 'pale-grove-suction-tube.ifu.yaml' }).waitFor();
    const file = path.join(editor.folder, 'devices/pale-grove-suction-tube.ifu.yaml');
    const made = await until('the file', () => {
      const written = readFileSync(file, 'utf8');
      return written.includes('storage:') ? written : undefined;
    });
    expect(made).toContain('maker: Pale Grove');
    expect(made).toContain('  - {doc: PG-12, rev: C, role: device-specific}');
    expect(made).toContain('statements: # to do: The text of the instruction');
    expect(made).toContain('covers: [PG-1401, PG-1402]');
    expect(made).toContain('traits: [lumen]');
    await problemsWhen(editor, 'its open lines', (found) =>
      ['channels with bore', 'the stages of cleaning', 'the complete cycles'].every((stage) =>
        found.some(
          ({ file: where, message }) =>
            where.endsWith('suction-tube.ifu.yaml') && message.startsWith(`Still to write: ${stage}`),
        ),
      ),
    );
    await screenshot(editor, 'new-file');
    const waits = made.split('\n').findIndex((line) => line.startsWith('statements: # to do'));
    await editor.page.locator(`[id="status.editor.selection"] >> text=/^Ln ${waits + 2}, Col 1$/`).waitFor();
  });

  it('two pasted pages become fields, sentence by sentence, with a key for each', async () => {
    await focusText(editor);
    await editor.page.evaluate(`navigator.clipboard.writeText(${JSON.stringify(pages)})`);
    await editor.page.keyboard.press('Control+V');
    await editor.page
      .locator('.view-lines', { hasText: /write\sto\sthe\smaker/ })
      .first()
      .waitFor();
    const told = await until('the words about what comes next', async () =>
      (await notifications(editor)).find(({ message }) => message.includes('wait to become fields')),
    );
    expect(told).toMatchObject({ severity: 'info', buttons: ['Turn Them into Fields'] });
    expect(told.message).toContain(`${sentences} pasted sentences`);
    await screenshot(editor, 'pasted-waiting');
    await focusText(editor);
    await runCommand(editor, 'Notifications: Accept Notification Primary Action');
    await asked('Pasted text');
    await editor.page.keyboard.press('Enter');
    let keys = 1;
    for (let number = 1; number <= sentences; number++) {
      const asks = await asked(`Sentence ${number} of ${sentences} `);
      if (number === 10) {
        expect(asks).toContain('MANUAL CLEANING');
        const [row] = await quickList(editor);
        expect(row?.label).toBe('Manual cleaning: rinse, temperature at most 40 °C, time at least 2 min,');
        expect(row?.spoken).toContain('water from the tap');
        await screenshot(editor, 'all-sentences');
        // Escape stops, and leaves the sentence as it was: it comes first when somebody goes on.
        await editor.page.keyboard.press('Escape');
        await editor.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
        await runCommand(editor, 'Traywright: Turn All Sentences into Fields');
        await asked('Sentence 10 of');
      }
      // One is passed over: it stays open, and is told at the end.
      if (number === passedOver) await chooseByName(editor, 'leave it', ({ label }) => label === 'Leave it open');
      else await editor.page.keyboard.press('Enter');
      keys++;
    }
    await asked('All sentences are gone through');
    const end = (await quickList(editor)).map(({ spoken }) => spoken);
    expect(end[0]).toContain('33 sentences: 27 became fields, 5 say nothing to encode, 1 left open (s23)');
    expect(end.slice(1).map((row) => row.replace(/[:,].*/s, ''))).toEqual([
      'Go to the first sentence left open',
      'Still to write',
      'Still to write',
      'Say who encoded it',
    ]);
    await screenshot(editor, 'sentences-done');
    await editor.page.keyboard.press('Escape');
    await editor.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    expect(keys).toBe(34);
    const encoded = await text(editor);
    expect(encoded).toContain(
      '        - {do: rinse, temp: {at_most: 40 °C, as_written: "104 °F (40 °C)"}, time: {at_least: 2 min}, water: {grade: utility}, src: s10}',
    );
    expect(encoded).toContain('    - {id: gr121, modality: steam-gravity,');
    await undo(editor);
    const before = await text(editor);
    expect(before).not.toContain('not_needed: [{text: "Questions');
    expect(before).toContain('storage:\n  time: {at_most: 180 d, src: s32}');
  });

  it('a sentence that was passed over is answered by a field found by typing', async () => {
    await focusText(editor);
    await runCommand(editor, 'Traywright: Turn All Sentences into Fields');
    await asked(`Sentence ${passedOver} of ${sentences} `);
    await chooseByName(editor, 'Another field', ({ label }) => label === 'Another field …');
    await chooseByName(editor, 'Look for', ({ label }) => label === 'Inspection and test: Look for');
    await screenshot(editor, 'field-by-choice');
    await chooseByName(editor, 'Inspection and test: look', ({ label }) =>
      label.startsWith('Inspection and test: look for: '),
    );
    await chooseByName(editor, 'Go on', ({ label }) => label === 'Go on to the next sentence');
    await asked('Sentence 33 of');
    await chooseByName(editor, 'Stop', ({ label }) => label === 'Stop here');
    const written = await text(editor);
    expect(written).toMatch(/inspection:\n(?: {2}.*\n)* {2}criteria:\n {4}- .+\n/);
    expect(written).toContain('src: [s24, s23]');
  });

  it('of what is still to be written, the light bulb says that the document says nothing about it', async () => {
    const open = (await text(editor)).split('\n').filter((line) => /^drying: # to do/.test(line));
    expect(open).toHaveLength(1);
    await goTo(editor, await lineWith(editor, 'drying: # to do'), 1);
    await editor.page.keyboard.press('Control+.');
    const entry = editor.page.locator('.action-widget .monaco-list-row', { hasText: 'The document says nothing' });
    await entry.and(editor.page.locator('.focused')).waitFor();
    await screenshot(editor, 'document-says-nothing');
    await editor.page.keyboard.press('Enter');
    await until('the words that it is silent', async () =>
      /\ndrying: \{silent: true, checked: \d{4}-\d\d-\d\d\}\n/.test(await text(editor)) ? true : undefined,
    );
  });
});

describe('copied pages', () => {
  const copied = readFileSync(path.join(import.meta.dirname, 'fixtures/copied-page.txt'), 'utf8');

  it('become a device and its document: what their head says is taken with one key', async () => {
    await focusText(editor);
    await runCommand(editor, 'View: Close All Editors');
    await editor.page.evaluate(`navigator.clipboard.writeText(${JSON.stringify(copied)})`);
    await runCommand(editor, 'Traywright: New Rule File');
    await asked('What does it describe');
    await chooseByName(editor, 'copied', ({ label }) => label.includes('that you have copied'));
    await asked('Device: compare with the head of the page');
    expect((await quickList(editor)).map(({ label }) => label)).toEqual([
      'It is as on the page: take it',
      'Document: PG-77',
      'Revision: 4',
      'Maker: Pale Grove Instruments',
      'Name: Biopsy punch',
      'Catalogue numbers: PG-7701, PG-7702',
    ]);
    await screenshot(editor, 'copied-pages');
    await editor.page.keyboard.press('Enter');
    await asked('Device, question 1 of 3: its class');
    await editor.page.keyboard.press('Enter');
    await asked('its traits');
    await editor.page.keyboard.press('Enter');
    await asked('its id');
    await editor.page.keyboard.press('Enter');
    await asked('Pasted text');
    await editor.page.keyboard.press('Enter');
    await asked('Document: compare with the head of the page');
    await chooseByName(editor, 'Pages', ({ label }) => label === 'Pages: 1');
    await asked('Document: its pages');
    await fillQuickInput(editor, '2026-02-03');
    await editor.page
      .locator('.quick-input-message', { hasText: '"2026-02-03" is a day. A whole number belongs here' })
      .waitFor();
    await answerQuickInput(editor, '2');
    await asked('Document: compare with the head of the page');
    await editor.page.keyboard.press('Enter');
    await asked('its market');
    await editor.page.keyboard.press('Enter');
    await asked('its status');
    await chooseByName(editor, 'current', ({ label }) => label === 'current');
    await asked('its id');
    await editor.page.keyboard.press('Enter');
    await asked('Sentence 1 of');
    const made = path.join(editor.folder, 'documents/PG-77-4.ifu.yaml');
    const document = await until('the file of the document', () =>
      existsSync(made) ? readFileSync(made, 'utf8') : undefined,
    );
    expect(document).toContain('title: Reprocessing of biopsy punches\n');
    expect(document).toContain('issued: 2026-02-03\n');
    expect(document).toContain('pages: 2\n');
    await editor.page.keyboard.press('Escape');
    await editor.page.locator('.quick-input-widget').waitFor({ state: 'hidden' });
    expect(await text(editor)).toContain('page: 1, section: CLEANING, quote: "Rinse it with cold water."');
  });
});
