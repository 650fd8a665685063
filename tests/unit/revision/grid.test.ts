import { describe, expect, it } from 'vitest';
import { changeNames, comparedTexts } from '../../support/revisions.ts';

/** A device with these lines put in; statements as given. */
function device(lines: string, quotes: Readonly<Record<string, string>> = {}, page = 4): string {
  const statements = Object.entries({ s1: 'Unscrew the handle.', ...quotes }).map(
    ([id, quote]) => `  ${id}: {doc: PF-1, rev: A, page: ${page}, quote: ${JSON.stringify(quote)}}`,
  );
  return `kind: device\nid: pale-forceps\ncovers: ["P-1"]\nstatements:\n${statements.join('\n')}\n${lines.trim()}\n`;
}

interface Row {
  readonly what: string;
  readonly old: string;
  readonly now: string;
  readonly there: readonly string[];
  readonly back: readonly string[];
}

const dry = 'sterilization.any_of[pv].dry';

function option(fields: string): string {
  return `sterilization:\n  any_of:\n    - {id: pv, modality: steam-prevac, context: terminal, ${fields}}`;
}

function steps(...names: readonly string[]): string {
  return `disassembly:\n  steps:\n${names.map((name) => `    - {do: ${name}}`).join('\n')}`;
}

/** Each kind of change, and the same change backwards. */
const grid: readonly Row[] = [
  {
    what: 'a higher least',
    old: option('dry: {at_least: 20 min}'),
    now: option('dry: {at_least: 30 min}'),
    there: [`stricter ${dry}`],
    back: [`looser ${dry}`],
  },
  {
    what: 'a narrower range',
    old: 'limits: {ph: {between: [6, 10]}}',
    now: 'limits: {ph: {between: [7, 9]}}',
    there: ['stricter limits.ph'],
    back: ['looser limits.ph'],
  },
  {
    what: 'a lower limit',
    old: 'limits: {temp: {at_most: 140 C}}',
    now: 'limits: {temp: {at_most: 137 C}}',
    there: ['stricter limits.temp'],
    back: ['looser limits.temp'],
  },
  {
    what: 'a range that moved',
    old: 'limits: {ph: {between: [6, 9]}}',
    now: 'limits: {ph: {between: [7, 10]}}',
    there: ['different limits.ph'],
    back: ['different limits.ph'],
  },
  {
    what: 'a least that became a most',
    old: option('dry: {at_least: 20 min}'),
    now: option('dry: {at_most: 20 min}'),
    there: [`different ${dry}`],
    back: [`different ${dry}`],
  },
  {
    what: 'a bare number that got its bound word',
    old: option('dry: {stated: 20 min}'),
    now: option('dry: {at_least: 20 min}'),
    there: [`clarification ${dry}`],
    back: [`stricter ${dry}`],
  },
  {
    what: 'an unclear page made clear',
    old: option('dry: {ambiguous: "dry well"}'),
    now: option('dry: {at_least: 20 min}'),
    there: [`clarification ${dry}`],
    back: [`different ${dry}`],
  },
  {
    what: 'a value that fell silent',
    old: option('dry: {at_least: 20 min}'),
    now: option('dry: {silent: true}'),
    there: [`became-silent ${dry}`],
    back: [`became-stated ${dry}`],
  },
  {
    what: 'a value that went missing',
    old: option('dry: {at_least: 20 min}, exposure: {stated: 4 min}'),
    now: option('exposure: {stated: 4 min}'),
    there: [`became-silent ${dry}`],
    back: [`became-stated ${dry}`],
  },
  {
    what: 'a section that fell silent',
    old: 'lubrication: {required: true, agent: instrument-milk}',
    now: 'lubrication: {silent: true}',
    there: ['became-silent lubrication'],
    back: ['became-stated lubrication'],
  },
  {
    what: 'a demand left to the department',
    old: option('dry: {at_least: 20 min}'),
    now: option('dry: {defers_to: department}'),
    there: [`became-silent ${dry}`],
    back: [`became-stated ${dry}`],
  },
  {
    what: 'a demand that no longer applies',
    old: option('dry: {at_least: 20 min}'),
    now: option('dry: {not_applicable: never wet}'),
    there: [`looser ${dry}`],
    back: [`stricter ${dry}`],
  },
  {
    what: 'must that became should',
    old: option('dry: {at_least: 20 min}'),
    now: option('dry: {at_least: 20 min, strength: should}'),
    there: [`looser ${dry}`],
    back: [`stricter ${dry}`],
  },
  {
    what: 'a demand for one situation only',
    old: option('dry: {at_least: 20 min}'),
    now: option('dry: {at_least: 20 min, when: wrapped}'),
    there: [`looser ${dry}`],
    back: [`stricter ${dry}`],
  },
  {
    what: 'a new prohibition',
    old: '',
    now: 'not:\n  - {what: vh2o2}',
    there: ['new-prohibition not[vh2o2]'],
    back: ['prohibition-removed not[vh2o2]'],
  },
  {
    what: 'one more prohibition',
    old: 'not:\n  - {what: eo}',
    now: 'not:\n  - {what: eo}\n  - {what: vh2o2}',
    there: ['new-prohibition not[vh2o2]'],
    back: ['prohibition-removed not[vh2o2]'],
  },
  {
    what: 'another thing forbidden',
    old: 'not:\n  - {what: eo}',
    now: 'not:\n  - {what: vh2o2}',
    there: ['new-prohibition not[vh2o2]', 'prohibition-removed not[eo]'],
    back: ['new-prohibition not[eo]', 'prohibition-removed not[vh2o2]'],
  },
  {
    what: 'a prohibition from a lower number on',
    old: 'not:\n  - {what: temp-above, value: 140 C}',
    now: 'not:\n  - {what: temp-above, value: 137 C}',
    there: ['stricter not[temp-above]'],
    back: ['looser not[temp-above]'],
  },
  {
    what: 'a prohibition for one situation only',
    old: 'not:\n  - {what: eo}',
    now: 'not:\n  - {what: eo, when: wrapped}',
    there: ['looser not[eo]'],
    back: ['stricter not[eo]'],
  },
  {
    what: 'a stage that is forbidden',
    old: 'ultrasonic: {use: allowed}',
    now: 'ultrasonic: {use: forbidden}',
    there: ['new-prohibition ultrasonic'],
    back: ['prohibition-removed ultrasonic'],
  },
  {
    what: 'silence that became a prohibition',
    old: 'ultrasonic: {silent: true}',
    now: 'ultrasonic: {use: forbidden}',
    there: ['new-prohibition ultrasonic'],
    back: ['prohibition-removed ultrasonic'],
  },
  {
    what: 'a stage that is required',
    old: 'ultrasonic: {use: allowed}',
    now: 'ultrasonic: {use: required}',
    there: ['stricter ultrasonic.use'],
    back: ['looser ultrasonic.use'],
  },
  {
    what: 'an option more',
    old: option('dry: {at_least: 20 min}'),
    now: `${option('dry: {at_least: 20 min}')}\n    - {id: gr, modality: steam-gravity, dry: {at_least: 30 min}}`,
    there: ['option-added sterilization.any_of[gr]'],
    back: ['option-removed sterilization.any_of[gr]'],
  },
  {
    what: 'a step more',
    old: steps('unscrew'),
    now: steps('unscrew', 'pull'),
    there: ['step-added disassembly.steps[pull]'],
    back: ['step-removed disassembly.steps[pull]'],
  },
  {
    what: 'steps in another order',
    old: steps('unscrew', 'pull', 'turn'),
    now: steps('pull', 'turn', 'unscrew'),
    there: ['step-reordered disassembly.steps'],
    back: ['step-reordered disassembly.steps'],
  },
  {
    what: '"and" that became "or"',
    old: 'cleaning:\n  all_of:\n    - {stage: manual}\n    - {stage: mechanical}',
    now: 'cleaning:\n  any_of:\n    - {stage: manual}\n    - {stage: mechanical}',
    there: ['different cleaning'],
    back: ['different cleaning'],
  },
  {
    what: 'another catalogue number',
    old: 'applies_from: "100"',
    now: 'applies_from: "200"',
    there: ['scope applies_from'],
    back: ['scope applies_from'],
  },
  {
    what: 'another market',
    old: 'market: [US]',
    now: 'market: [US, EU]',
    there: ['scope market'],
    back: ['scope market'],
  },
  {
    what: 'a class of detergent fewer',
    old: 'cleaning: {stage: manual, detergent: {class: [enzymatic, neutral]}}',
    now: 'cleaning: {stage: manual, detergent: {class: [neutral]}}',
    there: ['stricter cleaning.detergent.class'],
    back: ['looser cleaning.detergent.class'],
  },
  {
    what: 'one more thing to look for',
    old: 'inspection: {criteria: [cracks]}',
    now: 'inspection: {criteria: [cracks, rust]}',
    there: ['stricter inspection.criteria'],
    back: ['looser inspection.criteria'],
  },
  {
    what: 'a way for one situation only',
    old: option('dry: {at_least: 20 min}'),
    now: option('dry: {at_least: 20 min}, when: prion-suspected'),
    there: ['stricter sterilization.any_of[pv].when'],
    back: ['looser sterilization.any_of[pv].when'],
  },
  {
    what: 'another situation',
    old: option('when: wrapped'),
    now: option('when: prion-suspected'),
    there: ['different sterilization.any_of[pv].when'],
    back: ['different sterilization.any_of[pv].when'],
  },
  {
    what: 'another tool',
    old: 'cleaning: {stage: manual, brush: {material: nylon}}',
    now: 'cleaning: {stage: manual, brush: {material: steel}}',
    there: ['different cleaning.brush.material'],
    back: ['different cleaning.brush.material'],
  },
  {
    what: 'another name',
    old: 'name: Forceps',
    now: 'name: Pale forceps',
    there: ['editorial name'],
    back: ['editorial name'],
  },
  {
    what: 'a number in the name',
    old: 'name: Forceps 12 cm',
    now: 'name: Forceps 14 cm',
    there: ['different name'],
    back: ['different name'],
  },
  {
    what: 'a note',
    old: '',
    now: 'notes: [ask about the hinge]',
    there: ['editorial notes'],
    back: ['editorial notes'],
  },
];

describe('each kind of change, and its mirror', () => {
  it.each(grid)('$what', ({ old, now, there, back }) => {
    expect(changeNames(comparedTexts(device(old), device(now)))).toEqual(there);
    expect(changeNames(comparedTexts(device(now), device(old)))).toEqual(back);
  });
});

describe('passages', () => {
  const names = (old: string, now: string) => changeNames(comparedTexts(old, now));

  it('a page number is a re-citation, however many passages moved', () => {
    const quotes = { s2: 'Pull the insert.', s3: 'Rinse well.' };
    expect(names(device('', quotes, 4), device('', quotes, 5))).toEqual(['re-citation statements']);
  });

  it('ids and order of passages mean nothing', () => {
    const body = (id: string) => `lubrication: {required: true, src: ${id}}`;
    const [first, second] = ['Lubricate the hinge before packing.', 'Rinse for one minute.'];
    expect(names(device(body('s2'), { s2: first, s3: second }), device(body('s9'), { s7: second, s9: first }))).toEqual(
      [],
    );
  });

  it('the same value said by another passage is a re-citation', () => {
    const quotes = { s2: 'Lubricate the hinge.', s3: 'Use instrument milk on the hinge.' };
    expect(
      names(
        device('lubrication: {required: true, src: s2}', quotes),
        device('lubrication: {required: true, src: s3}', quotes),
      ),
    ).toEqual(['re-citation lubrication.src']);
  });

  it('other words alone are editorial', () => {
    expect(
      names(device('', { s2: 'Rinse the device with care.' }), device('', { s2: 'Rinse the device carefully.' })),
    ).toEqual(['editorial statements.s2']);
  });

  it.each([
    ['a number', 'Rinse for 2 minutes.', 'Rinse for 3 minutes.', 'different'],
    ['a negation', 'Use an ultrasonic bath.', 'Do not use an ultrasonic bath.', 'different'],
    ['a bound word', 'Rinse for at least 2 minutes.', 'Rinse for at most 2 minutes.', 'different'],
    [
      'an and/or',
      'Clean manually and in a washer-disinfector.',
      'Clean manually or in a washer-disinfector.',
      'different',
    ],
    ['a unit', 'Rinse for 2 minutes.', 'Rinse for 120 seconds.', 'correction'],
  ])('%s that changed in a quote is never wording only', (_, old, now, type) => {
    expect(names(device('', { s2: old }), device('', { s2: now }))).toEqual([`${type} statements.s2`]);
  });

  it('a number that the changed values do not account for is told besides', () => {
    const quote = (dry: number, exposure: number) =>
      `Pre-vacuum steam, ${exposure} minutes, dry at least ${dry} minutes.`;
    const body = (dry: number) => option(`dry: {at_least: ${dry} min}, exposure: {stated: 4 min}, src: s2`);
    expect(names(device(body(20), { s2: quote(20, 4) }), device(body(30), { s2: quote(30, 4) }))).toEqual([
      `stricter ${dry}`,
    ]);
    expect(names(device(body(20), { s2: quote(20, 4) }), device(body(30), { s2: quote(30, 8) }))).toEqual([
      'different statements.s2',
      `stricter ${dry}`,
    ]);
  });

  it('a passage that is gone is told, whether or not a value went with it', () => {
    const quotes = { s2: 'Test the insulation before each use.' };
    const alone = comparedTexts(device('', quotes), device(''));
    expect(changeNames(alone)).toEqual(['became-silent statements.s2']);
    expect(alone.lost.map(({ id, reportedBy }) => [id, reportedBy])).toEqual([['s2', [alone.changes[0]?.fingerprint]]]);
    const withValue = comparedTexts(
      device('lubrication: {required: true, src: s2}', quotes),
      device('lubrication: {silent: true}'),
    );
    expect(changeNames(withValue)).toEqual(['became-silent lubrication']);
    expect(withValue.lost).toHaveLength(1);
  });

  it('a wrongly converted unit that was put right is a correction', () => {
    const quote = (celsius: number) => `Steam at 270 °F (${celsius} °C).`;
    const body = (celsius: number) => option(`temp: {stated: ${celsius} C}, src: s2`);
    expect(names(device(body(134), { s2: quote(134) }), device(body(132), { s2: quote(132) }))).toEqual([
      'correction sterilization.any_of[pv].temp',
    ]);
  });

  it('a new passage that no value follows is told', () => {
    expect(names(device(''), device('', { s2: 'Store below 30 °C.' }))).toEqual(['became-stated statements.s2']);
  });
});

describe('what means nothing', () => {
  it.each([
    ['another unit', option('dry: {at_least: 20 min}'), option('dry: {at_least: 1200 s}')],
    ['the other scale', 'limits: {temp: {at_most: 132 C}}', 'limits: {temp: {at_most: 270 F}}'],
    ['two bounds for a range', 'limits: {ph: {between: [6, 9]}}', 'limits: {ph: {at_least: 6, at_most: 9}}'],
    [
      'the order of options',
      `${option('dry: {at_least: 20 min}')}\n    - {id: gr, modality: steam-gravity}`,
      'sterilization:\n  any_of:\n    - {id: gr, modality: steam-gravity}\n    - {id: pv, context: terminal, modality: steam-prevac, dry: {at_least: 20 min}}',
    ],
    ['layout', 'limits: {ph: {between: [6, 9]}}', 'limits:\n  ph:\n    between:\n      - 6\n      - 9.0'],
    ['the order of words', 'traits: [hinged, lumen]', 'traits: [lumen, hinged]'],
    [
      'a prohibition in the other scale',
      'not:\n  - {what: temp-above, value: 140 C}',
      'not:\n  - {what: temp-above, value: 284 F}',
    ],
  ])('%s', (_, old, now) => {
    expect(changeNames(comparedTexts(device(old), device(now)))).toEqual([]);
  });
});

describe('names', () => {
  it('an option with another id is a renaming, not one lost and one gained', () => {
    const now = option('dry: {at_least: 20 min}').replace('id: pv', 'id: pv132');
    expect(changeNames(comparedTexts(device(option('dry: {at_least: 20 min}')), device(now)))).toEqual([
      'editorial sterilization.any_of[pv132].id',
    ]);
  });

  it('fingerprints outlive layout and unit spelling, and tell values apart', () => {
    const of = (old: string, now: string) =>
      comparedTexts(device(option(old)), device(option(now))).changes[0]?.fingerprint;
    const first = of('dry: {at_least: 20 min}', 'dry: {at_least: 30 min}');
    expect(of('dry: {at_least: 1200 s}', 'dry: {at_least: 1800 s}')).toBe(first);
    expect(of('dry: {at_least: 20 min}', 'dry: {at_least: 31 min}')).not.toBe(first);
  });
});
