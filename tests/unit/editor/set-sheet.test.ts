import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { setSheet } from '../../../server/src/editor/set-sheet/set-sheet.ts';
import type { SetSheet } from '../../../server/src/editor/set-sheet/sheet-model.ts';
import type { Bars, Cell, SheetBlock, SheetItem } from '../../../server/src/panel/set-sheet.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { testDay } from '../../support/examples.ts';
import { readSample } from '../../support/samples.ts';

const engine = checkedSample();

function checkedSample(): Engine {
  const made = new Engine({ rules: allRules, today: testDay });
  for (const [path, text] of readSample('lanternfield')) made.set(path, text);
  return made;
}

function sheet(id: string, ...keys: readonly string[]): SetSheet {
  const made = setSheet(engine, id, new Set(keys));
  if (made === undefined) throw new Error(id);
  return made;
}

function blocks({ sections }: SetSheet, title: string): readonly SheetBlock[] {
  return sections.find((section) => section.title === title)?.blocks ?? [];
}

function items(made: SetSheet, title: string): readonly SheetItem[] {
  return blocks(made, title).flatMap((block) => (block.is === 'list' ? block.items : []));
}

function rows(made: SetSheet, title: string): readonly (readonly (readonly Cell[])[])[] {
  return blocks(made, title).flatMap((block) => (block.is === 'table' ? block.rows : []));
}

function bars(made: SetSheet): readonly Bars[] {
  return blocks(made, 'By how much cycles miss').flatMap((block) => (block.is === 'bars' ? block.bars : []));
}

/** The text at the place that a cell leads to. */
function leadsTo(made: SetSheet, place: number | undefined): string {
  const at = made.places[place ?? -1];
  const record = at === undefined ? undefined : engine.library.record(at.file);
  return record === undefined || at === undefined
    ? 'nowhere'
    : `${at.file}: ${record.text.slice(at.span.start, at.span.end)}`;
}

describe('the sheet of LAP-CHOLE-B', () => {
  const made = sheet('LAP-CHOLE-B');

  it('says that there is no route, and shows the smallest clash with both sentences', () => {
    expect(made).toMatchObject({ set: 'LAP-CHOLE-B', mark: 'fails', status: 'No route for the set as built' });
    const clash = items(made, 'Smallest clash');
    expect(clash.map(({ quote }) => quote)).toEqual(['Do not use steam.', 'Do not use hydrogen peroxide.']);
    expect(leadsTo(made, clash[0]?.place)).toMatch(/^devices\/cassivane-camera-head.ifu.yaml: s\d+$/);
    expect(leadsTo(made, clash[1]?.place)).toMatch(/^devices\/yarrowby-bipolar-forceps.ifu.yaml: s\d+$/);
  });

  it('names who governs, what we give, and where each stands', () => {
    const drying = rows(made, 'Who governs').find(([what]) => what?.[0]?.text === 'Drying time');
    expect(drying?.map((cells) => cells.map(({ text }) => text))).toEqual([
      ['Drying time'],
      ['at least 30 min'],
      [
        'Kestrelow container (KL-3, rev C, p. 11)',
        'Take-apart scissors (DW-REP-077, rev D, p. 8)',
        'Bipolar forceps (YB-66, rev B, p. 8)',
      ],
      ['20 min'],
      ['10 min outside'],
      [''],
    ]);
    const [, required, who, gives] = drying ?? [];
    expect(leadsTo(made, required?.[0]?.place)).toMatch(/^packaging\/P3-rigid-container.ifu.yaml: /);
    expect(leadsTo(made, who?.[1]?.place)).toMatch(/^devices\/duskwell-lap-scissors-takeapart.ifu.yaml: s\d+$/);
    expect(leadsTo(made, gives?.[0]?.place)).toBe('sterilizers/S1.ifu.yaml: 20 min');
  });

  it('draws how far each cycle is from what is required, on one scale', () => {
    const drying = bars(made).find(({ title }) => title === 'Kestrelow container: drying time');
    expect(drying?.required).toBe('at least 30 min');
    const row = (name: string) => drying?.rows.find((one) => one.name === name);
    expect(row('S1-pv132-4-20')).toMatchObject({ given: '20 min', gap: '10 min short', mark: 'fails' });
    expect(row('S1-pv132-4-20')?.stretch?.to).toBeLessThan(drying?.band?.from ?? 0);
    expect(row('S1-pv132-4-30')?.stretch?.from).toBe(drying?.band?.from);
    expect(drying?.band?.to).toBe(1);
    for (const { stretch } of drying?.rows ?? []) {
      expect(stretch?.from).toBeGreaterThanOrEqual(0);
      expect(stretch?.to).toBeLessThanOrEqual(1);
    }
  });

  it('offers ways out with who can do it, and what nobody should do', () => {
    const [first] = items(made, 'Ways out');
    expect(first?.text).toMatch(/^Take Camera head out of the set/);
    expect(first?.details[0]).toMatch(/who: .+; how soon: same day/);
    expect(items(made, 'Not offered').length).toBeGreaterThan(3);
  });
});

describe('what is only imagined', () => {
  it('leaves a member out: the status is another, the files are the same', () => {
    const before = engine.library.files().map((file) => engine.library.record(file));
    const made = sheet('LAP-CHOLE-B', 'leave-out/cassivane-camera-head');
    expect(made).toMatchObject({ mark: 'asks', imagined: ['leave out Camera head'], problems: [] });
    expect(items(made, 'Smallest clash')).toEqual([]);
    expect(made.choices[0]?.options.filter(({ on }) => on).map(({ label }) => label)).toEqual(['Camera head']);
    expect(engine.library.files().map((file) => engine.library.record(file))).toEqual(before);
    expect(sheet('LAP-CHOLE-B').mark).toBe('fails');
  });

  it('swaps the packaging', () => {
    const made = sheet('EYE-D', 'pack-in/P1-wrap-light');
    expect(made.imagined).toEqual(['pack in Pindlecote light wrap']);
    const packed = rows(made, 'Route').find(([step]) => step?.[0]?.text === 'Pack');
    expect(packed?.[1]?.[0]?.text).toContain('Pindlecote light wrap');
    expect(rows(made, 'Route').some(([step]) => step?.[0]?.text === 'Instead of')).toBe(false);
  });

  it('qualifies a cycle as of today: the grasper’s steam is settled, its ultrasonics are not', () => {
    const clash = (made: SetSheet) => items(made, 'Smallest clashes').concat(items(made, 'Smallest clash'));
    const about = (made: SetSheet) =>
      clash(made)
        .map(({ text }) => text)
        .join('\n');
    expect(about(sheet('ROBOT-F'))).toMatch(/grasper: drying time|not qualified/);
    const made = sheet('ROBOT-F', 'qualify/S2-pv134-4-50');
    expect(made.imagined).toEqual(['qualify S2-pv134-4-50']);
    expect(about(made)).not.toMatch(/not qualified/);
    expect(about(made)).toMatch(/grasper: machine step/);
  });

  it('passes over what the set does not offer', () => {
    const made = sheet('LAP-CHOLE-B', 'leave-out/nobody', 'pack-in/P3-rigid-container', 'qualify/S1-pv132-4-20', '');
    expect(made).toEqual(sheet('LAP-CHOLE-B'));
  });
});

describe('a sheet', () => {
  it.each([...engine.view().ids('set')])('of %s uses no word of praise, and every cell leads somewhere', (id) => {
    const made = sheet(id);
    const shown = JSON.stringify({ ...made, places: [] });
    expect(shown).not.toMatch(/\b(sterile|safe|compliant|validated|approved|released)\b/i);
    for (const place of JSON.stringify(made.sections).matchAll(/"place":(\d+)/g))
      expect(made.places[Number(place[1])], `place ${place[1]}`).toBeDefined();
    expect(made.cautions[0]).toContain('manufacturer’s current document is the instruction');
  });

  it('is there for what can be read only', () => {
    expect(setSheet(engine, 'NOBODY', new Set())).toBeUndefined();
  });

  it('holds a hostile value as it is: text', () => {
    const mine = checkedSample();
    const name = '</script><script>alert(1)</script> [x](command:x) " onmouseover=1 $' + '{7*7} \u2028';
    mine.set(
      fileId('sets/x.ifu.yaml'),
      `kind: set\nid: X06\nname: ${JSON.stringify(name)}\nmembers: [{device: nobody, qty: 1}]\n`,
    );
    expect(setSheet(mine, 'X06', new Set())?.name).toBe(name);
  });
});

describe('the words of the sheet', () => {
  it.each([...engine.view().ids('set')])('of %s name methods as people do', (id) => {
    const { sections } = sheet(id);
    const words = JSON.stringify(sections).match(
      /[^"]*(?:steam-prevac|steam-gravity|vh2o2|double-wrap|double-pouch)[^"]*/g,
    );
    expect(words).toBeNull();
  });
});
