import { readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isFromPage, isToPage, type Sheet } from '../../../client/page/sheet.ts';
import { isServerSheet } from '../../../client/src/server-sheet.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { setSheet } from '../../../server/src/editor/set-sheet/set-sheet.ts';
import type { SetSheet } from '../../../server/src/editor/set-sheet/sheet-model.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { testDay } from '../../support/examples.ts';
import { readSample } from '../../support/samples.ts';

/** Every message between server, client and page of the set sheet is looked at before it is used; nothing else passes. */

const engine = new Engine({ rules: allRules, today: testDay });
for (const [file, text] of readSample('lanternfield')) engine.set(file, text);
const sets = [...engine.view().ids('set')];

function sheetOf(id: string): SetSheet {
  const made = setSheet(engine, id, new Set());
  if (made === undefined) throw new Error(id);
  return made;
}

/** As it comes out of a message: without fields that are not there. */
function sent<T>(value: T): T {
  return JSON.parse(JSON.stringify(value)) as T;
}

function forPage(id: string): Sheet {
  const { places, ...rest } = sent(sheetOf(id));
  return { ...rest, places: places.map(({ file }) => file) };
}

const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 3 } };

describe('the sheet of every set of the sample', () => {
  it.each(sets)('of %s passes, to the client and to the page', (id) => {
    const { places, ...rest } = sent(sheetOf(id));
    const named = places.map(() => ({ uri: 'file:///x.ifu.yaml', range }));
    expect(isServerSheet({ ...rest, uri: 'file:///x.ifu.yaml', places: [...named, null] })).toBe(true);
    expect(isToPage({ is: 'sheet', number: 1, sheet: forPage(id) })).toBe(true);
  });

  it('passes no longer with any one value of another type', () => {
    const whole = forPage(sets[0] ?? '');
    const kept: string[] = [];
    for (const steps of leaves(whole)) {
      const damaged = withChanged(whole, steps);
      if (isToPage({ is: 'sheet', number: 1, sheet: damaged })) kept.push(steps.join('.'));
    }
    expect(kept).toEqual([]);
  });

  it('passes no longer with a field more', () => {
    const more = { ...forPage(sets[0] ?? ''), html: '<b>' };
    expect(isToPage({ is: 'sheet', number: 1, sheet: more })).toBe(false);
    expect(isToPage(JSON.parse('{"is":"nothing","text":"x","__proto__":{"polluted":1}}'))).toBe(false);
  });
});

describe('what the page says', () => {
  it('is one of three things', () => {
    expect(isFromPage({ is: 'ready' })).toBe(true);
    expect(isFromPage({ is: 'go', number: 3, place: 0 })).toBe(true);
    expect(isFromPage({ is: 'imagine', number: 3, keys: ['leave-out/x'] })).toBe(true);
  });

  it.each([
    null,
    [],
    'ready',
    { is: 'run', command: 'workbench.action.terminal.new' },
    { is: 'go', number: 3, place: -1 },
    { is: 'go', number: 3, place: 0.5 },
    { is: 'go', number: 3, place: 0, uri: 'file:///etc/passwd' },
    { is: 'imagine', number: 3, keys: 'leave-out/x' },
    { is: 'imagine', number: 3, keys: [{}] },
    { is: 'imagine', number: 3, keys: ['x'.repeat(20_001)] },
    { is: 'imagine', number: 3, keys: Array.from({ length: 5_001 }, () => '') },
  ])('is not %j', (message) => {
    expect(isFromPage(message)).toBe(false);
  });

  it('is never anything drawn at random', () => {
    fc.assert(fc.property(fc.anything(), (value) => !isFromPage(value) && !isToPage(value) && !isServerSheet(value)));
  });
});

describe('the page', () => {
  const read = (file: string) => readFileSync(path.resolve(import.meta.dirname, '../../../client', file), 'utf8');
  const sources = ['main', 'blocks', 'choices', 'elements'].map((name) => read(`page/${name}.ts`)).join('\n');

  it('[X06] puts texts in as text only', () => {
    expect(sources).not.toMatch(
      /innerHTML|outerHTML|insertAdjacentHTML|document\.write|\beval\b|new Function|\.href\b/,
    );
  });

  it('[X06] can load nothing but its own script and style, and holds no content before it is told', () => {
    const page = read('src/sheet-page.ts');
    expect(page).toContain("default-src 'none'");
    expect(page).not.toMatch(/unsafe-inline|unsafe-eval|https:/);
    expect(page).toContain('<main></main>');
    expect(read('src/set-sheet.ts')).not.toContain('retainContextWhenHidden');
  });
});

type Steps = readonly (string | number)[];

/** The way to every value of a message that holds no others. */
function leaves(value: unknown, steps: Steps = []): readonly Steps[] {
  if (typeof value !== 'object' || value === null) return [steps];
  return Object.entries(value).flatMap(([key, held]) => leaves(held, [...steps, key]));
}

function withChanged(value: unknown, [step, ...rest]: Steps): unknown {
  if (step === undefined) return { another: 'type' };
  if (Array.isArray(value)) return value.with(Number(step), withChanged(value[Number(step)], rest));
  const record = value as Readonly<Record<string, unknown>>;
  return { ...record, [step]: withChanged(record[step], rest) };
}
