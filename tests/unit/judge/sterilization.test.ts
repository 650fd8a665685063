import { describe, expect, test } from 'vitest';
import { worstOf } from '../../../server/src/judge/outcome.ts';
import { judgePackaging } from '../../../server/src/judge/packaging.ts';
import { routineSetting } from '../../../server/src/judge/setting.ts';
import { judgeSterilization, optionsOf } from '../../../server/src/judge/sterilization.ts';
import { entityOf } from '../../support/entities.ts';
import { cycleOf, device, packagings, setting, shown, site, sterilized, today } from './department.ts';

const { P1, P3, P4, P5 } = packagings;

const forceps = device(
  'quillmark-ringed-forceps',
  `
limits: {temp: {at_most: 140 C}}
sterilization:
  any_of:
    - {id: pv, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap, rigid-container]}}
    - {id: gr, modality: steam-gravity, context: terminal, temp: {stated: 121 C}, exposure: {at_least: 30 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}}
`,
);
const tube = device(
  'quillmark-suction-tube',
  `
lumens: [{id: shaft, bore: 3.0 mm, length: 180 mm}]
sterilization: {any_of: [{id: pv, modality: steam-prevac, temp: {between: [132 C, 135 C]}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap, rigid-container]}, src: s5}]}
statements:
  s5: {doc: QM-31, rev: E, page: 5, quote: "Pre-vacuum, 132-135 °C, at least 4 minutes."}
  s6: {doc: QM-31, rev: E, page: 5, quote: "Do not use gravity displacement."}
not: [{what: steam-gravity, src: s6}]
`,
);
const handpiece = device(
  'tarnwick-power-handpiece',
  `
limits: {temp: {at_most: 135 C}}
sterilization:
  any_of:
    - {id: pv, modality: steam-prevac, temp: {stated: 132 C}, exposure: {stated: 4 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap, rigid-container]}}
    - {id: iuss, modality: steam-prevac, context: iuss, temp: {stated: 132 C}, exposure: {stated: 4 min}, dry: {exactly: 0 min}, packaging: {relation: restricted_to, allowed: [iuss-container]}}
`,
);
const tip = device(
  'brindlewick-irrigating-tip',
  `
traits: [intraocular, lumen]
lumens: [{id: needle, bore: 0.9 mm, length: 40 mm}]
sterilization: {any_of: [{id: pv, modality: steam-prevac, temp: {stated: 134 C}, exposure: {between: [3 min, 18 min]}, dry: {at_least: 15 min}, packaging: {relation: restricted_to, allowed: [wrap]}}]}
`,
);
const grasper = device(
  'skerrow-wristed-grasper',
  `
lumens: [{id: shaft, bore: 5 mm, length: 420 mm}]
limits: {temp: {at_most: 140 C}}
packaging: {relation: restricted_to, allowed: [case-SK-9]}
sterilization: {any_of: [{id: pv, modality: steam-prevac, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 50 min}, packaging: {relation: restricted_to, allowed: [double-wrap]}}]}
`,
);
const camera = device(
  'cassivane-camera-head',
  `
traits: [camera, cable]
not: [{what: steam}]
sterilization: {any_of: [{id: vh, modality: vh2o2, listed: ["S3:surface"], packaging: {relation: requires_class, allowed: [pouch]}}]}
`,
);
const probe = device(
  'lintrel-pressure-probe',
  `
limits: {temp: {at_most: 60 C}}
not: [{what: steam}, {what: vh2o2}]
sterilization: {any_of: [{id: eo, modality: eo, temp: {stated: 55 C}, exposure: {stated: 60 min}, aeration: {time: {at_least: 12 h}, temp: {at_most: 55 C}}, packaging: {relation: requires_class, allowed: [pouch]}}]}
`,
);

describe('the demonstration department', () => {
  test('the plain forceps in their wrap and cycle', () => {
    expect(sterilized(forceps, 'S1-pv132-4-20', P1)).toEqual([]);
    expect(sterilized(forceps, 'S2-gr121-30-30', P1, 1)).toEqual([]);
  });
  test('stated 132 °C against a cycle of 134 °C needs an answer, it does not fail', () => {
    expect(sterilized(forceps, 'S2-pv134-4-30', P1)).toEqual(['needs-answer steam-temperature']);
  });
  test('gravity does not stand in for pre-vacuum, nor pre-vacuum for gravity', () => {
    expect(sterilized(forceps, 'S2-gr121-30-30', P1, 0)).toEqual(['fails modality']);
    expect(sterilized(forceps, 'S1-pv132-4-30', P1, 1)).toEqual(['fails modality']);
    expect(sterilized(tube, 'S2-gr121-30-30', P1)).toEqual(['fails modality', 'fails prohibition']);
  });
  test('ten minutes for all: more than twice is noted, a bare number is asked about', () => {
    expect(sterilized(forceps, 'S1-pv132-10-30', P1)).toEqual(['meets-with-note exposure']);
    expect(sterilized(handpiece, 'S1-pv132-10-30', P1)).toEqual(['needs-answer exposure']);
  });
  test('dry too short fails with the gap in numbers', () => {
    const [option] = optionsOf(handpiece);
    if (option === undefined) throw new Error('no option');
    const judged = judgeSterilization({
      device: handpiece,
      option,
      ...cycleOf('S1-pv132-4-20'),
      packed: { packaging: P1 },
      setting,
    });
    expect(judged.find((one) => one.parameter === 'steam-dry')).toMatchObject({
      outcome: 'fails',
      required: 'at least 30 min',
      given: '20 min',
      gap: '10 min short',
    });
  });
  test('the irrigating tip: wrap only, one temperature', () => {
    expect(sterilized(tip, 'S2-pv134-4-30', P1)).toEqual([]);
    expect(sterilized(tip, 'S2-pv134-4-30', P3)).toEqual(['fails packaging']);
    expect(sterilized(tip, 'S1-pv132-4-30', P1)).toEqual(['fails steam-temperature']);
  });
  test('the grasper: its own case, a long dry, and a cycle that is not qualified', () => {
    expect(
      sterilized(grasper, 'S2-pv134-4-50', packagings.P2, 0, {
        packed: { packaging: packagings.P2, namedCase: 'case-SK-9' },
      }),
    ).toEqual(['fails evidence']);
    expect(sterilized(grasper, 'S1-pv132-4-30', P3)).toEqual([
      'fails packaging',
      'fails packaging',
      'fails steam-dry',
      'fails steam-temperature',
    ]);
  });
  test('peroxide is judged by the name of machine and cycle', () => {
    expect(sterilized(camera, 'S3:surface', P5)).toEqual([]);
    expect(sterilized(camera, 'S3:lumen', P5)).toEqual(['fails peroxide-cycle']);
    expect(sterilized(camera, 'S1-pv132-4-20', P5)).toEqual(['fails modality', 'fails prohibition']);
  });
  test('no gas here: every cycle of the department fails for the probe', () => {
    for (const id of ['S1-pv132-4-20', 'S2-gr121-30-30', 'S3:surface'])
      expect(sterilized(probe, id)).toContain('fails modality');
  });
  test('immediate use only where the page offers it, never by leaving out the drying', () => {
    expect(sterilized(forceps, 'S2-iuss132-4')).toEqual(['fails immediate-use']);
    expect(sterilized(handpiece, 'S2-iuss132-4', undefined, 1)).toEqual([]);
    expect(sterilized(handpiece, 'S1-pv132-4-30', P1, 1)).toEqual(['fails context']);
  });
});

test('every judgement carries who demands, what, why, by whose word and where', () => {
  const [option] = optionsOf(tube);
  if (option === undefined) throw new Error('no option');
  for (const one of judgeSterilization({ device: tube, option, ...cycleOf('S2-gr121-30-30'), setting })) {
    expect(one.demandedBy).toBe('device/quillmark-suction-tube');
    expect(one.reason).toMatch(/\.$/);
    expect(one.demandAt.span.end).toBeGreaterThan(0);
    if (one.parameter === 'prohibition')
      expect(one.says[0]).toMatchObject({
        quote: 'Do not use gravity displacement.',
        doc: 'QM-31',
        rev: 'E',
        page: '5',
      });
  }
});

describe('gates', () => {
  const only = (option: string, rest = '') => device('d', `${rest}\nsterilization: {any_of: [{id: o, ${option}}]}`);
  const steam = 'modality: steam-prevac, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}';

  test('an option for suspected prion disease is not for routine use, unless national rules make it so', () => {
    const tse = only(`${steam}, when: prion-suspected`);
    expect(sterilized(tse, 'S1-pv132-4-20')).toEqual(['fails identity']);
    const suspected = { ...setting, situations: new Set(['prion-suspected']) };
    expect(sterilized(tse, 'S1-pv132-4-20', undefined, 0, { setting: suspected })).toEqual([]);
    const national = entityOf('site', 'national', 'policies: {tse_routine: true, tse_routine_src: circular 1}');
    expect(sterilized(tse, 'S1-pv132-4-20', undefined, 0, { setting: routineSetting(today, national) })).toEqual([]);
  });
  test('flush-pulse and pre-vacuum are a question both ways', () => {
    const sfpp = only(steam.replace('steam-prevac', 'steam-sfpp'));
    expect(sterilized(sfpp, 'S1-pv132-4-20')).toEqual(['needs-answer modality']);
  });
  test('heat above the limit of the device fails, by the band as well as by the setpoint', () => {
    expect(sterilized(only(steam, 'limits: {temp: {at_most: 134 C}}'), 'S1-pv132-4-20')).toEqual(['fails heat-limit']);
    expect(sterilized(only(steam, 'not: [{what: temp-above, value: 134 C}]'), 'S1-pv132-4-20')).toEqual([
      'fails heat-limit',
    ]);
    expect(sterilized(only(steam, 'limits: {temp: {at_most: 135 C}}'), 'S1-pv132-4-20')).toEqual([]);
    expect(sterilized(only(`${steam}, max_temp: {at_most: 133 C}`), 'S1-pv132-4-20')).toEqual(['fails heat-limit']);
  });
  test('a control band that falls below the setpoint fails', () => {
    const machine = entityOf(
      'sterilizer',
      'B',
      'cycles: [{id: b, modality: steam-prevac, temp: 132 C, band: {minus: 2 K, plus: 1 K}, exposure: 4 min, dry: 20 min, qualified: 2025-01-01}]',
    );
    const cycle = machine.cycles?.items[0];
    expect(sterilized(only(steam), 'S1-pv132-4-20', undefined, 0, { machine, cycle })).toEqual(['fails control-band']);
  });
  test('an option that leaves out drying, time or temperature is a question', () => {
    expect(sterilized(only('modality: steam-prevac'), 'S1-pv132-4-20')).toEqual([
      'needs-answer identity',
      'needs-answer identity',
      'needs-answer identity',
    ]);
    expect(
      sterilized(
        only(`${steam.replace('{at_least: 20 min}', '{silent: true, checked: 2025-01-01}')}`),
        'S1-pv132-4-20',
      ),
    ).toEqual(['needs-answer steam-dry']);
  });
  test('what is out of scope is refused', () => {
    expect(sterilized(only(steam, 'traits: [flexible-endoscope]'), 'S1-pv132-4-20')).toEqual(['fails identity']);
  });
  test('a half cycle is never run, another market is a question', () => {
    expect(sterilized(only(`${steam}, evidence: true`), 'S1-pv132-4-20')).toEqual(['fails identity']);
    expect(sterilized(only(steam, 'market: [EU]'), 'S1-pv132-4-20')).toEqual(['needs-answer identity']);
  });
  test('a cycle that the page gives for other markets is none for ours; one for ours is judged as any other', () => {
    expect(sterilized(only(`${steam}, market: [EU]`), 'S1-pv132-4-20')).toEqual(['fails identity']);
    expect(sterilized(only(`${steam}, market: [US, CA]`), 'S1-pv132-4-20')).toEqual([]);
  });
  test('pressure never is a demand', () => {
    expect(sterilized(only(`${steam}, pressure: {at_least: 15 psi}`), 'S1-pv132-4-20')).toEqual([
      'meets-with-note pressure',
    ]);
  });
  test('evidence: dates in the future, changes after, withdrawn, only proposed', () => {
    const outcomeOf = (cycle: string, rest = '') => {
      const machine = entityOf(
        'sterilizer',
        'E',
        `${rest}\ncycles: [{id: e, modality: steam-prevac, temp: 132 C, exposure: 4 min, dry: 20 min, ${cycle}}]`,
      );
      return sterilized(only(steam), 'S1-pv132-4-20', undefined, 0, { machine, cycle: machine.cycles?.items[0] });
    };
    expect(outcomeOf('qualified: 2025-01-01')).toEqual([]);
    expect(outcomeOf('qualified: 2026-01-01')).toEqual(['fails evidence']);
    expect(outcomeOf('qualified: 2025-01-01, changed: 2025-02-01')).toEqual(['fails evidence']);
    expect(outcomeOf('qualified: 2024-01-01, qualified_until: 2025-01-01')).toEqual(['fails evidence']);
    expect(outcomeOf('qualified: 2025-01-01, withdrawn_on: 2025-02-01')).toEqual(['fails evidence']);
    expect(outcomeOf('qualified: 2025-01-01', 'proposed: true')).toEqual(['fails evidence']);
    expect(outcomeOf('qualified: null', 'qualified: 2025-01-01')).toEqual(['needs-answer evidence']);
  });
  test('gas: values are exact, aeration may be longer but not hotter', () => {
    const machine = entityOf(
      'sterilizer',
      'G',
      'cycles: [{id: g, modality: eo, temp: 55 C, exposure: 60 min, aeration: {time: 12 h, temp: 55 C}, qualified: 2025-01-01}, {id: h, modality: eo, temp: 60 C, exposure: 60 min, aeration: {time: 8 h, temp: 60 C}, qualified: 2025-01-01}]',
    );
    const [good, bad] = machine.cycles?.items ?? [];
    expect(sterilized(probe, 'S3:surface', undefined, 0, { machine, cycle: good })).toEqual([]);
    expect(sterilized(probe, 'S3:surface', undefined, 0, { machine, cycle: bad })).toEqual([
      'fails aeration',
      'fails aeration-temperature',
      'fails ethylene-oxide',
    ]);
  });
  test('peroxide lumens: bore, length and their number in a load', () => {
    const scope = (lumen: string) =>
      device(
        'd',
        `lumens: [${lumen}]\nsterilization: {any_of: [{id: o, modality: vh2o2, listed: ["S3:lumen", "S3:surface"]}]}`,
      );
    expect(sterilized(scope('{id: l, bore: 1.2 mm, length: 250 mm}'), 'S3:lumen')).toEqual([]);
    expect(sterilized(scope('{id: l, bore: 0.8 mm, length: 420 mm}'), 'S3:lumen')).toEqual([
      'fails lumen',
      'fails lumen',
    ]);
    expect(sterilized(scope('{id: l}'), 'S3:lumen')).toEqual(['needs-answer lumen', 'needs-answer lumen']);
    expect(sterilized(scope('{id: l, bore: 1.2 mm, length: 250 mm}'), 'S3:surface')).toEqual([
      'needs-answer peroxide-cycle',
    ]);
  });
});

describe('what the words on packaging mean', () => {
  const named = (relation: string) =>
    device(
      'd',
      `traits: [hinged]\nsterilization: {any_of: [{id: o, modality: steam-prevac, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {${relation}allowed: [double-wrap]}}]}`,
    );
  test.each([
    ['relation: restricted_to, ', ['fails packaging']],
    ['relation: requires_class, ', ['fails packaging']],
    ['relation: validated_with, ', ['needs-answer packaging']],
    ['', ['needs-answer packaging']],
  ])('%s in a container', (relation, expected) => {
    expect(sterilized(named(relation), 'S1-pv132-4-30', P3)).toEqual(expected);
    expect(sterilized(named(relation), 'S1-pv132-4-30', P1)).toEqual([]);
  });
  test('a container whose maker covers such devices is noted where the page only tells what it was tested with', () => {
    const covering = entityOf(
      'packaging',
      'P9',
      'type: rigid-container\ncovers_classes: [hinged]\nvalidated: [{modality: steam-prevac}]',
    );
    expect(sterilized(named('relation: validated_with, '), 'S1-pv132-4-30', covering)).toEqual([
      'meets-with-note packaging',
    ]);
    expect(sterilized(named('relation: restricted_to, '), 'S1-pv132-4-30', covering)).toEqual(['fails packaging']);
  });
  test('nothing said is a question', () => {
    const silent = device(
      'd',
      'sterilization: {any_of: [{id: o, modality: steam-prevac, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}}]}',
    );
    expect(sterilized(silent, 'S1-pv132-4-30', P1)).toEqual(['needs-answer packaging']);
  });
});

describe('the packaging is a device with an instruction of its own', () => {
  const packed = (packaging: (typeof packagings)[keyof typeof packagings], id: string) =>
    shown(judgePackaging({ packaging, ...cycleOf(id), setting }));
  test('container: dry of 30 min governs; gravity and immediate use are not covered', () => {
    expect(packed(P3, 'S1-pv132-4-20')).toEqual(['fails packaging-dry']);
    expect(packed(P3, 'S1-pv132-4-30')).toEqual([]);
    expect(packed(P3, 'S2-gr121-30-30')).toEqual(['fails container-cycle']);
    expect(packed(P3, 'S2-iuss132-4')).toEqual(['fails container-cycle']);
  });
  test('paper pouch in peroxide, polyolefin pouch in steam', () => {
    expect(packed(P4, 'S3:surface')).toEqual(['fails container-cycle']);
    expect(packed(P5, 'S1-pv132-4-20')).toEqual(['fails container-cycle']);
    expect(packed(P5, 'S3:surface')).toEqual([]);
  });
  test('of several entries the one that fits best is taken whole', () => {
    const two = entityOf(
      'packaging',
      'P8',
      'type: rigid-container\nvalidated: [{modality: steam-prevac, temp: {stated: 134 C}, dry: {at_least: 10 min}}, {modality: steam-prevac, temp: {stated: 132 C}, dry: {at_least: 25 min}}]',
    );
    expect(worstOf(judgePackaging({ packaging: two, ...cycleOf('S1-pv132-4-30'), setting }))).toBe('meets');
    expect(shown(judgePackaging({ packaging: two, ...cycleOf('S1-pv132-4-20'), setting }))).toEqual([
      'fails packaging-dry',
    ]);
  });
  test('device 134 °C 18 min, container made for 132 °C 4 min: no cycle serves both', () => {
    const container = entityOf(
      'packaging',
      'P7',
      'type: rigid-container\nvalidated: [{modality: steam-prevac, temp: {exactly: 132 C}, exposure: {exactly: 4 min}}]',
    );
    const asks134 = device(
      'd',
      'sterilization: {any_of: [{id: o, modality: steam-prevac, temp: {exactly: 134 C}, exposure: {exactly: 18 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [rigid-container]}}]}',
    );
    for (const [temp, exposure] of [
      ['132 C', '4 min'],
      ['134 C', '18 min'],
      ['134 C', '4 min'],
      ['132 C', '18 min'],
    ]) {
      const machine = entityOf(
        'sterilizer',
        'X',
        `cycles: [{id: x, modality: steam-prevac, temp: ${temp}, exposure: ${exposure}, dry: 30 min, qualified: 2025-01-01}]`,
      );
      const cycle = machine.cycles?.items[0];
      if (cycle === undefined) throw new Error('no cycle');
      const both = [
        ...sterilized(asks134, 'S1-pv132-4-20', container, 0, { machine, cycle }),
        ...shown(judgePackaging({ packaging: container, machine, cycle, setting })),
      ];
      expect(both.some((line) => line.startsWith('fails'))).toBe(true);
    }
  });
});

test('without a site, a bare number is never convenient', () => {
  expect(sterilized(forceps, 'S1-pv132-4-20', P1, 0, { setting: routineSetting(today) })).toEqual([]);
  expect(sterilized(handpiece, 'S1-pv132-10-30', P1, 0, { setting: routineSetting(today) })).toEqual([
    'needs-answer exposure',
  ]);
  expect(site.policies?.stated_exposure?.text).toBe('treat-as-exact');
});
