import { describe, expect, test } from 'vitest';
import { type CleaningStage, cleaningAlternatives, type StageDemand } from '../../../server/src/judge/demands.ts';
import { judgeManual } from '../../../server/src/judge/manual.ts';
import type { Judgement } from '../../../server/src/judge/outcome.ts';
import { judgeUltrasonic } from '../../../server/src/judge/ultrasonic.ts';
import { washA0 } from '../../../server/src/judge/wash-thermal.ts';
import { judgeWash } from '../../../server/src/judge/washing.ts';
import type { EntityOf } from '../../../server/src/model/entities.generated.ts';
import { entityOf } from '../../support/entities.ts';
import { device, setting, shown, stock, U1, washCycleOf } from './department.ts';

function stageOf(one: EntityOf['device'], stage: CleaningStage, alternative = 0): StageDemand {
  const found = cleaningAlternatives(one, setting).alternatives[alternative]?.stages.find(
    (each) => each.stage === stage,
  );
  if (found === undefined) throw new Error(`no ${stage}`);
  return found;
}

function washed(one: EntityOf['device'], cycleId: string, quantity = 1): readonly Judgement[] {
  return judgeWash({
    device: one,
    demand: stageOf(one, 'mechanical'),
    ...washCycleOf(cycleId),
    stock,
    quantity,
    setting,
  });
}

describe('alternatives of cleaning', () => {
  const ways = (text: string) => cleaningAlternatives(device('d', text), setting);
  const named = (text: string) =>
    ways(text).alternatives.map((way) => `${way.id}: ${way.stages.map((stage) => stage.stage).join(' ')}`);

  test('all of them in order; any one of them completely', () => {
    expect(named('cleaning: {all_of: [{stage: manual}, {stage: mechanical}]}')).toEqual([
      'cleaning: manual mechanical',
    ]);
    expect(named('cleaning: {any_of: [{id: a, stage: manual}, {id: b, stage: mechanical}]}')).toEqual([
      'a: manual',
      'b: mechanical',
    ]);
    expect(
      named(
        'cleaning: {all_of: [{stage: manual}, {any_of: [{id: a, stage: ultrasonic}, {id: b, stage: mechanical}]}]}',
      ),
    ).toEqual(['a: manual ultrasonic', 'b: manual mechanical']);
    expect(
      named('cleaning: {any_of: [{id: a, all_of: [{stage: manual}, {stage: mechanical}]}, {id: m, stage: manual}]}'),
    ).toEqual(['a: manual mechanical', 'm: manual']);
  });
  test('preference is kept, conditions that do not hold drop out', () => {
    const [first, second] = ways(
      'cleaning: {prefer: b, any_of: [{id: a, stage: manual}, {id: b, stage: mechanical}]}',
    ).alternatives;
    expect([first?.preferred, second?.preferred]).toEqual([false, true]);
    expect(
      named('cleaning: {any_of: [{id: a, stage: manual, when: machine-unavailable}, {id: b, stage: mechanical}]}'),
    ).toEqual(['b: mechanical']);
    expect(named('cleaning: {all_of: [{stage: manual}, {stage: ultrasonic, when: dried-soil}]}')).toEqual([
      'cleaning: manual',
    ]);
  });
  test('the section of the device joins the branch', () => {
    const one = device(
      'd',
      'cleaning: {all_of: [{stage: mechanical, detergent: {ph: {between: [6, 8]}}}]}\nmechanical: {connector: luer}',
    );
    expect(stageOf(one, 'mechanical').voices.length).toBe(2);
  });
  test('without an order, what is described is demanded; what is merely allowed is a way of its own only alone', () => {
    expect(named('manual: {soak: {at_least: 1 min}}\nmechanical: {use: required}')).toEqual([
      'cleaning: manual mechanical',
    ]);
    expect(named('manual: {use: allowed}\nmechanical: {use: allowed}')).toEqual([
      'manual: manual',
      'mechanical: mechanical',
    ]);
    expect(named('manual: {needed: instead-of-machine}\nmechanical: {use: required}')).toEqual([
      'mechanical: mechanical',
      'manual: manual',
    ]);
    expect(
      named('manual: {soak: {at_least: 1 min}}\nmechanical: {use: forbidden}\nultrasonic: {silent: true}'),
    ).toEqual(['cleaning: manual']);
    expect(named('traits: [hinged]')).toEqual([]);
  });
  test('a page that multiplies into thousands of ways is cut off and says so', () => {
    const either = (index: number) =>
      `{any_of: [{id: a${index}, stage: manual}, {id: b${index}, stage: ultrasonic}, {id: c${index}, stage: mechanical}]}`;
    const many = ways(`cleaning: {all_of: [${Array.from({ length: 12 }, (_, index) => either(index)).join(', ')}]}`);
    expect(many.tooMany).toBe(true);
    expect(many.alternatives.length).toBe(64);
  });
});

const scissors = device(
  'duskwell-lap-scissors',
  `
materials: [stainless-martensitic, peek]
lumens: [{id: shaft, bore: 4.0 mm, length: 340 mm, port: luer}]
limits: {temp: {at_most: 140 C}}
cleaning: {all_of: [{stage: manual}, {stage: mechanical, connector: luer, detergent: {ph: {between: [7, 10.8]}}}]}
`,
);
const bipolar = device(
  'yarrowby-bipolar-forceps',
  'drying: {temp: {at_most: 100 C}}\ncleaning: {any_of: [{id: m, stage: mechanical, detergent: {ph: {between: [7, 10.8]}}}]}',
);
const tip = device(
  'brindlewick-irrigating-tip',
  `
lumens: [{id: needle, bore: 0.9 mm, length: 40 mm}]
not: [{what: lubricant}, {what: ultrasonic}, {what: enzymatic}]
rinse: {final: {grade: critical}}
cleaning: {any_of: [{id: both, stage: mechanical, detergent: {ph: {between: [6, 8]}}, a0: {at_least: 600}}]}
`,
);

describe('washing in the demonstration department', () => {
  test('the scissors fit the standard cycle; four of them fit the rack', () => {
    expect(shown(washed(scissors, 'W1-std', 4))).toEqual([]);
  });
  test('more connections than the rack has: several loads; none at all: no', () => {
    expect(shown(washed(scissors, 'W1-std', 9))).toEqual(['meets-with-note connector']);
    expect(shown(washed(scissors, 'W2-std'))).toEqual([
      'fails boiling',
      'fails connector',
      'fails evidence',
      'fails first-rinse-temperature',
      'fails ph',
    ]);
  });
  test('drying air hotter than the device may get', () => {
    expect(shown(washed(bipolar, 'W2-std'))).toContain('fails drying-temperature');
    expect(shown(washed(bipolar, 'W1-std'))).toEqual([]);
    const limited = device('d', 'limits: {temp: {at_most: 90 C}}\nmechanical: {use: required}');
    const hot = washed(limited, 'W1-std').find((one) => one.parameter === 'heat-limit');
    expect(hot).toMatchObject({ outcome: 'fails', gap: '5 K too high' });
    expect(hot?.reason).toContain('phase dry');
  });
  test('the tip: alkaline and lubricated in one cycle, discontinued detergent and too little A0 in the other, none in the mended one', () => {
    expect(shown(washed(tip, 'W1-std'))).toEqual(['fails ph', 'fails prohibition']);
    expect(shown(washed(tip, 'W1-gentle'))).toEqual([
      'fails chemistry',
      'fails thermal-disinfection',
      'fails thermal-disinfection',
    ]);
    expect(shown(washed(tip, 'W1-mended'))).toEqual([]);
  });
  test('final water is compared value by value', () => {
    expect(shown(washed(tip, 'W2-std'))).toContain('fails water-grade');
  });
  test('forbidden, silent, required', () => {
    const use = (text: string) => {
      const one = device('d', text);
      const demand: StageDemand = { stage: 'mechanical', voices: [one.mechanical ?? { node: 'record', at: one.at }] };
      return shown(judgeWash({ device: one, demand, ...washCycleOf('W1-std'), stock, setting }));
    };
    expect(use('mechanical: {use: forbidden}')).toEqual(['fails machine-step']);
    expect(use('not: [{what: mechanical}]\nmechanical: {use: allowed}')).toEqual(['fails prohibition']);
    expect(use('mechanical: {silent: true, checked: 2025-01-01}')).toEqual(['needs-answer machine-step']);
    expect(use('mechanical: {use: required}')).toEqual([]);
  });
  test('phases: missing, short, cool, and one that must follow', () => {
    const phases = (text: string) => shown(washed(device('d', `mechanical: {use: required, ${text}}`), 'W1-std'));
    expect(phases('phases: [prewash, wash, neutralise, thermal, dry]')).toEqual(['fails machine-step']);
    expect(phases('wash: {temp: {at_least: 55 C}, time: {at_least: 5 min}}')).toEqual([]);
    expect(phases('wash: {temp: {at_least: 65 C}, time: {at_least: 6 min}}')).toEqual([
      'fails cleaning-amount',
      'fails wash-temperature',
    ]);
    expect(phases('wash: {couples: neutralise}')).toEqual(['fails machine-step']);
    expect(phases('prewash: {temp: {at_most: 15 C}}')).toEqual(['fails first-rinse-temperature']);
    expect(phases('dry: {temp: {at_most: 90 C}}')).toEqual(['fails drying-temperature']);
  });
  test('A0 stands in for a pair only where page or site accepts it', () => {
    const pair = (text: string) =>
      device(
        'd',
        `mechanical: {use: required}\ndisinfection: {temp: {at_least: 80 C}, time: {at_least: 10 min}${text}}`,
      );
    expect(shown(washed(pair(''), 'W1-std'))).toEqual(['fails thermal-disinfection']);
    expect(shown(washed(pair(', a0: {at_least: 600}'), 'W1-std'))).toEqual(['meets-with-note machine-step']);
    const capped = device(
      'd',
      'mechanical: {use: required}\ndisinfection: {temp: {between: [78 C, 85 C]}, time: {at_least: 10 min}, a0: {at_least: 600}}',
    );
    expect(shown(washed(capped, 'W1-std'))).toEqual(['fails thermal-disinfection', 'fails thermal-disinfection']);
    const accepting = { ...setting, site: entityOf('site', 's', 'policies: {accept_a0: true, accept_a0_src: P-14}') };
    const judged = judgeWash({
      device: pair(''),
      demand: stageOf(pair(''), 'mechanical'),
      ...washCycleOf('W1-std'),
      stock,
      setting: accepting,
    });
    expect(shown(judged)).toEqual(['meets-with-note machine-step']);
  });
  test('pairs of the page are alternatives', () => {
    const options = (text: string) =>
      shown(washed(device('d', `mechanical: {use: required}\ndisinfection: {options: [${text}]}`), 'W1-std'));
    expect(
      options('{temp: {at_least: 80 C}, time: {at_least: 10 min}}, {temp: {at_least: 90 C}, time: {at_least: 1 min}}'),
    ).toEqual([]);
    expect(options('{temp: {at_least: 93 C}, time: {at_least: 10 min}}')).toEqual([
      'fails thermal-disinfection',
      'fails thermal-disinfection',
    ]);
  });
});

test('detergent classes do not stand in for one another', () => {
  const asks = (classes: string, cycle: string) =>
    shown(washed(device('d', `mechanical: {use: required, detergent: {class: [${classes}]}}`), cycle));
  expect(asks('mild-alkaline', 'W1-std')).toEqual([]);
  expect(asks('neutral', 'W1-std')).toEqual(['fails chemistry']);
  expect(asks('neutral, mild-alkaline', 'W1-std')).toEqual([]);
  expect(asks('mild', 'W1-std')).toEqual(['needs-answer chemistry']);
  expect(asks('mild-alkaline', 'W1-mended')).toEqual(['fails chemistry']);
});

test('a detergent whose file says that it holds no enzymes answers a page that excludes them', () => {
  const one = device('d', 'mechanical: {use: required, detergent: {without: [enzymatic]}}');
  const asks = (enzymes: string) => {
    const plain = entityOf('chemistry', 'C2', `class: mild-alkaline\nmethods: [mechanical]${enzymes}`);
    return shown(
      judgeWash({
        device: one,
        demand: stageOf(one, 'mechanical'),
        ...washCycleOf('W1-std'),
        stock: { ...stock, chemistry: (id) => (id === 'C2' ? plain : stock.chemistry(id)) },
        setting,
      }),
    );
  };
  expect(asks('')).toEqual(['needs-answer chemistry']);
  expect(asks('\nenzymatic: false')).toEqual([]);
  expect(asks('\nenzymatic: true')).toEqual(['fails chemistry']);
});

test('alkaline detergent on anodised aluminium fails by pH, by the label, and by what the site knows (contradiction pattern 12)', () => {
  const text = 'materials: [aluminium-anodised]\nmechanical: {use: required}';
  expect(shown(washed(device('d', `limits: {ph: {between: [6, 8.5]}}\n${text}`), 'W2-std'))).toContain('fails ph');
  const knowing = {
    ...setting,
    site: entityOf(
      'site',
      's',
      'material_conflicts: [{material: aluminium-anodised, agent: strong-alkaline, src: P-20}]',
    ),
  };
  const one = device('d', text);
  expect(
    shown(
      judgeWash({ device: one, demand: stageOf(one, 'mechanical'), ...washCycleOf('W2-std'), stock, setting: knowing }),
    ),
  ).toContain('fails chemistry');
});

test('boiling here: 95 °C is not reached at 1,610 m, and is at sea level', () => {
  const one = device('d', 'mechanical: {use: required}');
  expect(shown(washed(one, 'W2-std'))).toContain('fails boiling');
  const sea = { ...setting, site: entityOf('site', 's', 'altitude: 0 m') };
  expect(
    shown(
      judgeWash({ device: one, demand: stageOf(one, 'mechanical'), ...washCycleOf('W2-std'), stock, setting: sea }),
    ),
  ).not.toContain('fails boiling');
});

test('A0 of the cycles: 82 °C for 2 min is about 190, 90 °C for 1 min is 600, 90 °C for 5 min is 3000, drying is not counted', () => {
  expect(washA0(washCycleOf('W1-gentle'))).toBeCloseTo(190.19, 1);
  expect(washA0(washCycleOf('W1-mended'))).toBeCloseTo(600, 6);
  expect(washA0(washCycleOf('W1-std'))).toBeCloseTo(3000, 6);
});

describe('ultrasonic', () => {
  const bathed = (text: string, more = {}) => {
    const one = device('d', text);
    return shown(
      judgeUltrasonic({
        device: one,
        demand: { stage: 'ultrasonic', voices: [one.ultrasonic ?? { node: 'record', at: one.at }] },
        machine: U1,
        stock,
        setting,
        ...more,
      }),
    );
  };
  test('frequency, time and temperature have both ends', () => {
    expect(
      bathed(
        'ultrasonic: {use: required, frequency: {between: [35 kHz, 45 kHz]}, time: {exactly: 15 min}, temp: {at_most: 45 C}}',
      ),
    ).toEqual([]);
    expect(
      bathed('ultrasonic: {frequency: {between: [80 kHz, 132 kHz]}, time: {at_most: 10 min}, temp: {at_most: 35 C}}'),
    ).toEqual(['fails ultrasonic', 'fails ultrasonic', 'fails ultrasonic']);
  });
  test('forbidden anywhere is forbidden; silence is a question; irrigation needs a connection', () => {
    expect(bathed('ultrasonic: {use: forbidden}')).toEqual(['fails machine-step']);
    expect(bathed('not: [{what: ultrasonic}]\nultrasonic: {use: allowed}')).toEqual(['fails prohibition']);
    expect(bathed('immersion: {use: forbidden}\nultrasonic: {use: allowed}')).toEqual(['fails immersion']);
    expect(bathed('ultrasonic: {silent: true, checked: 2025-01-01}')).toEqual(['needs-answer machine-step']);
    expect(bathed('ultrasonic: {use: required, irrigated: true}')).toEqual(['fails machine-step']);
    expect(bathed('not: [{what: enzymatic}]\nultrasonic: {use: allowed}')).toEqual(['fails prohibition']);
  });
});

describe('by hand', () => {
  const byHand = (text: string, steps: string, rest = '') => {
    const one = device('d', text);
    const procedure = entityOf('procedure', 'p', `${rest}\nsteps: [${steps}]`);
    return shown(judgeManual({ device: one, demand: stageOf(one, 'manual'), procedure, stock, setting }));
  };
  const soak = (time: string) => `{stage: manual, do: soak, chemistry: C1, time: ${time}, temp: 35 C}`;

  test('soak: within, over the most, under the least', () => {
    const page = 'manual: {soak: {between: [1 min, 15 min]}}';
    expect(byHand(page, soak('5 min'))).toEqual([]);
    expect(byHand(page, soak('60 min'))).toEqual(['fails soak']);
    expect(byHand(page, '{stage: manual, do: rinse}')).toEqual(['fails manual-step']);
  });
  test('flush is a dose at each port; a forgotten port is a fault', () => {
    const page =
      'lumens: [{id: P1}, {id: P2}, {id: P3}]\nmanual: {steps: [{do: flush, lumen: P1, volume: {at_least: 50 mL}, times: {at_least: 3 times}}, {do: flush, lumen: P3, time: {at_least: 90 s}}]}';
    expect(
      byHand(
        page,
        '{stage: manual, do: flush, lumen: P1, volume: 50 mL, times: 3 times}, {stage: manual, do: flush, port: P3, time: 90 s}',
      ),
    ).toEqual([]);
    expect(byHand(page, '{stage: manual, do: flush, lumen: P1, volume: 40 mL}')).toEqual([
      'fails cleaning-amount',
      'fails cleaning-amount',
      'fails manual-step',
    ]);
    expect(
      byHand(page, '{stage: manual, do: flush, per_port: true, volume: 60 mL, times: 3 times, time: 20 s}'),
    ).toEqual(['fails cleaning-amount']);
  });
  test('the first water is not hot (contradiction pattern 11)', () => {
    expect(
      byHand('manual: {first_rinse: {temp: {at_most: 43 C}}}', '{stage: manual, do: rinse, order: first, temp: 50 C}'),
    ).toEqual(['fails first-rinse-temperature', 'fails first-rinse-temperature']);
    expect(
      byHand('manual: {first_rinse: {temp: {at_most: 43 C}}}', '{stage: manual, do: rinse, order: first, temp: 20 C}'),
    ).toEqual([]);
  });
  test('a brush touches the wall and reaches the end (contradiction pattern 14)', () => {
    const page = 'lumens: [{id: l, bore: 3 mm, length: 180 mm}]\nmanual: {brush: {required: true, lumen: l}}';
    const brush = (diameter: string, length: string) =>
      byHand(page, `{stage: manual, do: brush, lumen: l, brush: {diameter: ${diameter}, length: ${length}}}`);
    expect(brush('3.2 mm', '300 mm')).toEqual([]);
    expect(brush('5 mm', '300 mm')).toEqual(['fails brush']);
    expect(brush('2 mm', '300 mm')).toEqual(['fails brush']);
    expect(brush('3.2 mm', '100 mm')).toEqual(['fails brush']);
  });
  test('detergent: window of its own label, enzymes that are forbidden, a device that may not go under', () => {
    expect(
      byHand(
        'manual: {soak: {at_least: 1 min, at_most: 9 min}}',
        '{stage: manual, do: soak, chemistry: C1, time: 5 min, temp: 60 C}',
      ),
    ).toContain('fails wash-temperature');
    expect(byHand('not: [{what: enzymatic}]\nmanual: {soak: {at_most: 9 min}}', soak('5 min'))).toEqual([
      'fails prohibition',
    ]);
    expect(byHand('immersion: {use: forbidden}\nmanual: {soak: {at_most: 9 min}}', soak('5 min'))).toEqual([
      'fails immersion',
    ]);
  });
  test('a value that the procedure sets for all comes before that of the step', () => {
    expect(byHand('manual: {soak: {between: [1 min, 15 min]}}', soak('5 min'), 'overrides: {soak: 60 min}')).toEqual([
      'fails soak',
    ]);
  });
});
