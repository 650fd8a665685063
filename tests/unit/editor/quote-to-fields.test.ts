import { describe, expect, it } from 'vitest';
import type { FileId } from '../../../server/src/base/brand.ts';
import { fileId } from '../../../server/src/base/brand.ts';
import { elsewhere } from '../../../server/src/editor/reading/home.ts';
import { homesOf } from '../../../server/src/editor/reading/quote-homes.ts';
import type { FieldsFromQuote } from '../../../server/src/editor/reading/quote-to-fields.ts';
import { quoteToFields } from '../../../server/src/editor/reading/quote-to-fields.ts';
import { asPlain, asSnippet } from '../../../server/src/editor/writing/offer.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import type { Node } from '../../../server/src/model/node.ts';
import { childrenOf, fieldOf, isRequirement } from '../../../server/src/model/walk.ts';
import type { Kind } from '../../../server/src/schema/kinds.ts';
import type { Shape } from '../../../server/src/schema/shape.ts';
import { shapeOf } from '../../../server/src/schema/shapes.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import { readSample } from '../../support/samples.ts';

function fields(text: string, at: number): FieldsFromQuote | undefined {
  const { tree } = readTree(text);
  if (tree?.node !== 'map') throw new Error('no map');
  return quoteToFields(readRuleFile(fileId('x.ifu.yaml'), text), tree, at);
}

function withFields(text: string, found: FieldsFromQuote, form: typeof asPlain = asPlain): string {
  let after = text;
  for (const { span, pieces } of found.insertions.toReversed())
    after = after.slice(0, span.start) + form(pieces, '\n') + after.slice(span.end);
  return after;
}

const device = (quote: string, more = ''): string =>
  `kind: device\nid: pale\nstatements:\n  s5: {doc: D, rev: A, page: 5, quote: "${quote}"}\n${more}`;

/** The lines that came in. */
function madeFrom(quote: string, more = '', form: typeof asPlain = asPlain): string {
  const text = device(quote, more);
  const found = fields(text, text.indexOf('s5'));
  if (found === undefined) throw new Error('nothing');
  const after = withFields(text, found, form);
  return after
    .split('\n')
    .filter((line) => !text.split('\n').includes(line))
    .join('\n');
}

describe('a quote becomes fields', () => {
  it('a whole cycle as one option, the value given twice as written', () => {
    expect(
      madeFrom('Pre-vacuum, 270 °F (132 °C), 4 minutes or longer, minimum dry time 30 minutes, double wrapped.'),
    ).toBe(
      'sterilization:\n  any_of:\n    - {id: pv132, modality: steam-prevac, temp: {stated: 132 °C, as_written: "270 °F (132 °C)"}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s5}',
    );
  });

  it('the bound word is a choice: first what the quote says, else that it says nothing', () => {
    expect(madeFrom('Do not exceed 140 °C.', '', asSnippet)).toBe(
      `limits:\n  temp: {\${1|at_most,stated,at_least,exactly,about|}: 140 °C, src: s5\\}`,
    );
    expect(madeFrom('Steam, gravity: 121 °C for 30 minutes.', '', asSnippet)).toContain(
      `exposure: {\${2|stated,at_least,at_most,exactly,about|}: 30 min\\}`,
    );
  });

  it('each time goes to the field whose word stands in its own clause', () => {
    expect(madeFrom('Pre-vacuum steam at 132 °C for at least 4 minutes, then dry for at least 20 minutes.')).toContain(
      'exposure: {at_least: 4 min}, dry: {at_least: 20 min}',
    );
    expect(madeFrom('Dry for 30 minutes after pre-vacuum steam, 4 minutes at 132 °C.')).toContain(
      'dry: {stated: 30 min}',
    );
  });

  it('a word between two numbers belongs to the one behind it, unless a comma parts them', () => {
    expect(madeFrom('Pre-vacuum steam at 134 °C for 3 minutes with a drying time of 20 minutes.')).toContain(
      'exposure: {stated: 3 min}, dry: {stated: 20 min}',
    );
    expect(madeFrom('Pre-vacuum steam at 134 °C, 20 minutes drying, 4 minutes exposure.')).toContain(
      'dry: {stated: 20 min}, exposure: {stated: 4 min}',
    );
  });

  it('a number too high for a pH is none', () => {
    expect(madeFrom('Prepare by hand a neutral pH detergent solution at 30 to 40 °C.')).not.toContain('ph:');
  });

  it('a range keeps both ends', () => {
    expect(madeFrom('Use detergents with a pH between 7 and 10.8.')).toBe(
      'limits:\n  ph: {between: [7, 10.8], src: s5}',
    );
    expect(madeFrom('Pre-vacuum steam: 134 °C, 3 to 18 minutes.')).toContain('exposure: {between: [3 min, 18 min]}');
  });

  it('a step by hand, into the steps that are there', () => {
    const quote = 'Flush the shaft with at least 50 mL of water through the luer port, 3 times.';
    expect(madeFrom(quote)).toBe(
      'manual:\n  steps:\n    - {do: flush, volume: {at_least: 50 mL}, times: {stated: 3 times}, src: s5}',
    );
    expect(madeFrom(quote, 'manual:\n  steps:\n    - {do: brush}\n')).toContain('    - {do: flush, volume');
  });

  it('what is not said is left empty, what has no place is named, what is there stays', () => {
    const steam = device('Steam at 132 °C for 4 minutes.');
    expect(
      withFields(
        steam,
        fields(steam, steam.indexOf('s5')) ?? {
          statement: '',
          insertions: [],
          made: [],
          left: [],
          fields: [],
          there: [],
          first: undefined,
        },
      ),
    ).toContain('modality: , temp');
    const odd = device('Weighs about 120 lux.');
    expect(fields(odd, odd.indexOf('s5'))?.insertions).toEqual([]);
    const twice = device('Do not exceed 140 °C.', 'limits: {temp: {at_most: 130 C}}\n');
    expect(fields(twice, twice.indexOf('s5'))?.left).toEqual(['“Limits: Highest temperature” is there already']);
  });

  it('a heat limit of one step is not the heat limit of the device', () => {
    expect(
      madeFrom('Clean in an ultrasonic bath for 10 minutes at 40 kHz; the temperature must not exceed 45 °C (113 °F).'),
    ).toBe(
      'ultrasonic:\n  time: {stated: 10 min, src: s5}\n  frequency: {stated: 40 kHz, src: s5}\n  temp: {at_most: 45 °C, as_written: "45 °C (113 °F)", src: s5}',
    );
  });

  it('two numbers of one group come in as one group', () => {
    const wash = 'wash: {temp: {stated: 55 °C, src: s5}, time: {at_least: 5 min, src: s5}}';
    const quote = 'In the washer-disinfector wash at 55 °C for at least 5 minutes.';
    expect(madeFrom(quote)).toBe(`mechanical:\n  ${wash}`);
    expect(madeFrom(quote, 'mechanical:\n  use: allowed\n')).toBe(`  ${wash}`);
  });

  it('a number belongs to the step that is named last before it', () => {
    expect(madeFrom('Rinse for at least 1 minute and flush the lumen three times with 60 mL.')).toBe(
      'manual:\n  steps:\n    - {do: flush, times: {stated: 3 times}, volume: {stated: 60 mL}, src: s5}\nrinse:\n  time: {at_least: 1 min, src: s5}',
    );
  });

  it('what belongs to a stage goes under cleaning where the file has its stages there, or has left it open', () => {
    const quote = 'Flush the lumen three times with 60 mL.';
    const step = '{do: flush, times: {stated: 3 times}, volume: {stated: 60 mL}, src: s5}';
    const stage = `- stage: manual\n      steps:\n        - ${step}`;
    expect(madeFrom(quote, 'cleaning: # to do\n')).toBe(`cleaning:\n  all_of:\n    ${stage}`);
    expect(madeFrom(quote, 'cleaning:\n  all_of:\n    - stage: mechanical\n')).toBe(`    ${stage}`);
    const manual = 'cleaning:\n  all_of:\n    - stage: manual\n      src: s1\n    - stage: mechanical\n';
    expect(madeFrom(quote, manual)).toBe(`      steps:\n        - ${step}`);
    expect(madeFrom(quote, `${manual}manual:\n  needed: before-machine\n`)).toBe(`  steps:\n    - ${step}`);
  });

  it('of two stages of one sort the one that cites the sentence is meant; else the reader is asked', () => {
    const two = (src: string) =>
      `cleaning:\n  any_of:\n    - {id: a, stage: manual, src: s1}\n    - {id: b, stage: manual, src: ${src}}\n`;
    const quote = 'Soak for 5 minutes in the detergent.';
    expect(madeFrom(quote, two('s5'))).toContain(
      '{id: b, stage: manual, src: s5, steps: [{do: soak, time: {stated: 5 min}, src: s5}]}',
    );
    const text = device(quote, two('s2'));
    const found = fields(text, text.indexOf('s5'));
    expect(found?.insertions).toEqual([]);
    expect(found?.left.join()).toContain(
      '2 stages under cleaning are manual: put steps: {do: soak, time: {stated: 5 min}',
    );
  });

  it('thermal disinfection in the washer is a phase of the washer; by itself it is disinfection', () => {
    const phase = 'thermal: {temp: {stated: 90 °C, src: s5}, time: {stated: 5 min, src: s5}}';
    expect(madeFrom('Thermal disinfection in the washer-disinfector at 90 °C for 5 minutes.')).toBe(
      `mechanical:\n  ${phase}`,
    );
    expect(madeFrom('In the washer-disinfector, disinfect thermally at 90 °C for 5 minutes.')).toBe(
      `mechanical:\n  ${phase}`,
    );
    expect(madeFrom('In the washer wash at 55 °C for at least 10 minutes and disinfect at 90 °C for 5 minutes.')).toBe(
      `mechanical:\n  wash: {temp: {stated: 55 °C, src: s5}, time: {at_least: 10 min, src: s5}}\n  ${phase}`,
    );
    expect(madeFrom('Dry in the washer at up to 100 °C for 20 minutes.')).toBe(
      'mechanical:\n  dry: {temp: {at_most: 100 °C, src: s5}, time: {stated: 20 min, src: s5}}',
    );
    expect(madeFrom('Disinfect at 90 °C for 5 minutes.')).toContain('disinfection:\n  temp: {stated: 90 °C');
  });

  it('a port for flushing in a washer makes no step by hand', () => {
    expect(madeFrom('In the washer-disinfector connect the tube to a flushing port and wash at 55 °C.')).toBe(
      'mechanical:\n  wash: {temp: {stated: 55 °C, src: s5}}',
    );
    expect(madeFrom('Sterilize with the jaw open, wrapped in two layers.')).toBe(
      'packaging:\n  layers: {stated: 2 layers, src: s5}',
    );
  });

  it('the brush, the pulses, the cycles of a life and the air of drying have their places', () => {
    expect(
      madeFrom('Brush the lumen with a brush of 5 mm diameter and at least 400 mm length, for at least 10 strokes.'),
    ).toContain(
      '{do: brush, brush: {diameter: {stated: 5 mm}, length: {at_least: 400 mm}}, times: {at_least: 10 strokes}, src: s5}',
    );
    expect(madeFrom('Pre-vacuum steam: 3 pulses, 132 °C for at least 4 minutes.')).toContain('pulses: {stated: 3');
    expect(madeFrom('The instrument withstands 100 reprocessing cycles.')).toBe(
      'limits:\n  uses: {stated: 100 cycles, src: s5}',
    );
    expect(madeFrom('Blow the lumen dry with medical air at no more than 2 bar (29 psi).')).toBe(
      'drying:\n  air: {pressure: {at_most: 2 bar, as_written: "2 bar (29 psi)", src: s5}, grade: medical, src: s5}',
    );
  });

  it('as written takes a bracket only with its partner', () => {
    expect(madeFrom('Flush with at least 50 mL of cold water (below 40 °C / 104 °F).')).toContain(
      'as_written: "40 °C / 104 °F"}',
    );
  });

  it('what is forbidden beside a step does not forbid the step', () => {
    expect(madeFrom('Lubricate the joint with a water-soluble lubricant; do not use silicone oil.')).toBe(
      'lubrication: {use: required, agent: water-soluble, where: the joint, src: s5}',
    );
  });

  it('a limit at the end of a list of what is forbidden is a highest value', () => {
    expect(madeFrom('Do not use bleach, hydrogen peroxide or detergents with a pH above 10.5.')).toBe(
      'limits:\n  ph: {at_most: 10.5, src: s5}',
    );
  });

  it('says so where nothing can be made', () => {
    const text = device('Take the grasper apart.');
    expect(fields(text, text.indexOf('s5'))?.left.join()).toContain('nothing in this quote becomes a field by itself');
  });

  it('a sentence without numbers says whether something is done', () => {
    expect(madeFrom('Do not clean ultrasonically.')).toBe('ultrasonic: {use: forbidden, src: s5}');
    expect(madeFrom('Do not soak.')).toBe('immersion: {use: forbidden, src: s5}');
    expect(madeFrom('Never immerse or soak the handle.')).toBe('immersion: {use: forbidden, src: s5}');
    expect(madeFrom('Do not clean ultrasonically or in a washer.')).toBe(
      'ultrasonic: {use: forbidden, src: s5}\nmechanical: {use: forbidden, src: s5}',
    );
    expect(madeFrom('Soak in an enzymatic solution.')).toBe(
      'manual:\n  steps:\n    - {do: soak, detergent: {class: [enzymatic]}, src: s5}',
    );
    expect(madeFrom('Inspect for cracks and chips.')).toBe(
      'inspection:\n  visual: true\n  criteria:\n    - cracks\n    - chips\n  src: s5',
    );
    expect(madeFrom('Disassemble before cleaning.')).toBe('disassembly:\n  assembled_for: {cleaning: false, src: s5}');
  });

  it('what is forbidden is no stage of the way of cleaning, even where that line is open', () => {
    const forbidden = 'ultrasonic: {use: forbidden, src: s5}';
    expect(madeFrom('Do not clean ultrasonically.', 'cleaning: # to do: The stages.\n')).toBe(forbidden);
    const staged = 'cleaning:\n  all_of:\n    - {stage: manual, src: s5}\n';
    expect(madeFrom('Do not clean ultrasonically.', staged)).toBe(forbidden);
  });

  it('a word that only describes a thing is no step', () => {
    expect(madeFrom('Store for up to 180 days in a dry place.')).toBe('storage:\n  time: {at_most: 180 d, src: s5}');
    expect(madeFrom('Store at no more than 25 °C in a dry, dark room.')).toBe(
      'storage:\n  temp: {at_most: 25 °C, src: s5}',
    );
    expect(madeFrom('Store in a dry place.')).toBe('storage:\n  place: in a dry place\n  src: s5');
    expect(madeFrom('Open the flush port before cleaning.')).toBe('disassembly:\n  open:\n    - flush port\n  src: s5');
    expect(madeFrom('Suction water through the cannula before soil dries.')).toBe('');
    expect(madeFrom('Do not allow blood to dry on the device.')).toBe(
      'point_of_use:\n  keep_moist: {use: required, src: s5}',
    );
    expect(madeFrom('Flush for at least 30 seconds, then dry for 20 minutes.')).toContain('do: flush');
  });

  it('and with what: the water or the air that the page names; another water is left to the reader', () => {
    expect(madeFrom('Rinse with critical water.', '', asSnippet)).toBe(
      `rinse: {use: \${1|required,allowed,recommended,forbidden|}, water: {grade: \${2|critical,sterile,purified,softened,utility|}\\}, src: s5\\}`,
    );
    expect(madeFrom('Rinse with demineralised water.')).toBe(
      'rinse: {use: required, water: {grade: critical}, src: s5}',
    );
    expect(madeFrom('Rinse with distilled water.')).toBe('rinse: {use: required, water: {grade: }, src: s5}');
    expect(madeFrom('Dry with filtered air.')).toBe(
      'drying: {use: required, method: [air], air: {grade: filtered}, src: s5}',
    );
    expect(madeFrom('Dry with a lint-free cloth.')).toBe('drying: {use: required, method: [cloth], src: s5}');
    expect(madeFrom('Final rinse with critical water.')).toBe('rinse:\n  final: {grade: critical, src: s5}');
    expect(madeFrom('Final rinse in the washer with critical water.')).toBe(
      'mechanical:\n  final_rinse: {grade: critical, src: s5}',
    );
    expect(madeFrom('Lubricate after rinsing and drying.')).toBe('lubrication: {use: required, src: s5}');
  });

  it.each([
    // section, sentence, what comes in
    [
      'Manual cleaning',
      'Rinse under tap water for 2 minutes.',
      'manual:\n  steps:\n    - {do: rinse, time: {stated: 2 min}, water: {grade: utility}, src: s5}',
    ],
    ['Manual cleaning', 'Wipe with a cloth.', 'manual:\n  steps:\n    - {do: wipe, src: s5}'],
    ['', 'Rinse for 2 minutes.', 'rinse:\n  time: {stated: 2 min, src: s5}'],
    [
      'Automated cleaning',
      'Prewash: cold water, at least 2 minutes.',
      'mechanical:\n  prewash: {time: {at_least: 2 min, src: s5}}',
    ],
    [
      'Automated cleaning',
      'Final rinse with critical water for at least 2 minutes.',
      'mechanical:\n  final_rinse: {time: {at_least: 2 min, src: s5}, grade: critical, src: s5}',
    ],
    ['Automated cleaning', 'Dry with air.', 'mechanical:\n  dry: {use: required, src: s5}'],
    ['Ultrasonic cleaning', 'Then rinse for 1 minute.', 'ultrasonic:\n  rinse: {time: {stated: 1 min, src: s5}}'],
    ['Point of use', 'Keep the device moist.', 'point_of_use:\n  keep_moist: {use: required, src: s5}'],
    [
      'Point of use',
      'Transport moist in a closed container.',
      'point_of_use:\n  keep_moist: {use: required, src: s5}\ntransport:\n  container: closed container\n  src: s5',
    ],
    [
      'Warnings',
      'Remove the obturator from the cannula before any cleaning step.',
      'disassembly:\n  assembled_for: {cleaning: false, src: s5}',
    ],
    ['Warnings', 'Remove dried soil from the lumen before cleaning.', ''],
    ['Disassembly', 'Remove both seals before cleaning.', 'disassembly:\n  assembled_for: {cleaning: false, src: s5}'],
    [
      'Storage',
      'Keep dry, at 15 to 30 °C.',
      'storage:\n  temp: {between: [15 °C, 30 °C], src: s5}\n  place: dry\n  src: s5',
    ],
    ['Sterilization', 'Do not sterilize with ethylene oxide.', 'not:\n  - {what: eo, src: s5}'],
    ['Sterilization', 'Sterilization with ethylene oxide was not tested.', ''],
    ['Sterilization', 'Gravity displacement: not permitted.', 'not:\n  - {what: steam-gravity, src: s5}'],
    ['Sterilization', 'Gravity displacement: not permitted for lumens.', ''],
    ['', 'Not suitable for sterilization with hydrogen peroxide plasma.', 'not:\n  - {what: vh2o2, src: s5}'],
    [
      'Warnings',
      'Do not exceed 284 °F (140 °C).',
      'limits:\n  temp: {at_most: 140 °C, as_written: "284 °F (140 °C)", src: s5}',
    ],
    [
      'Drying',
      'Blow dry with medical air at 1.5 bar for 20 s.',
      'drying:\n  air: {pressure: {stated: 1.5 bar, src: s5}, time: {stated: 20 s, src: s5}, grade: medical, src: s5}',
    ],
    [
      'Manual cleaning',
      'Soak for 5 minutes, then brush for 1 minute.',
      'manual:\n  steps:\n    - {do: soak, time: {stated: 5 min}, src: s5}\n    - {do: brush, time: {stated: 1 min}, src: s5}',
    ],
  ])('under the heading "%s": %s', (section, quote, made) => {
    const text = device(quote).replace('quote:', `section: ${JSON.stringify(section)}, quote:`);
    const found = fields(text, text.indexOf('s5'));
    const after = (found === undefined ? text : withFields(text, found)).split('\n');
    expect(after.filter((line) => !text.split('\n').includes(line)).join('\n')).toBe(made);
  });

  it('an open line gives way to what it waited for', () => {
    const text = device('Do not exceed 140 °C.', 'limits: # to do: limits\nstorage: # to do\n');
    const found = fields(text, text.indexOf('s5'));
    expect(found === undefined ? '' : withFields(text, found)).toContain(
      'limits:\n  temp: {at_most: 140 °C, src: s5}\nstorage: # to do\n',
    );
  });

  it('elsewhere: nothing', () => {
    expect(fields(device('Rinse.'), 3)).toBeUndefined();
  });
});

describe('the table of homes', () => {
  it('names fields that exist and measure what it says', () => {
    for (const [kind, groups] of Object.entries(homesOf)) {
      for (const { path, fields: homes } of groups) {
        for (const { field, dimension } of homes.filter((home) => home.field !== elsewhere)) {
          const shape = shapeAt(
            shapeOf(kind as Kind),
            `${path.replaceAll('[]', '.*')}.${field}`.split('.').filter((key) => key !== ''),
          );
          expect(shape?.form === 'record' ? shape.dimension : undefined, `${kind} ${path} ${field}`).toBe(dimension);
        }
      }
    }
  });
});

function shapeAt(root: Shape, keys: readonly string[]): Shape | undefined {
  let shape: Shape | undefined = root;
  for (const key of keys) {
    if (key === '*') shape = shape?.form === 'list' ? shape.item : undefined;
    else shape = shape?.form === 'record' ? shape.fields.get(key)?.shape : undefined;
  }
  return shape;
}

/** Numbers of requirements by statement and field, as people have encoded them: `s5 exposure` to `4 min`. */
function encoded(path: FileId, text: string): ReadonlyMap<string, ReadonlySet<number>> {
  const { entity } = readRuleFile(path, text);
  const found = new Map<string, Set<number>>();
  const walk = (node: Node, around: readonly string[]): void => {
    const src = node.node === 'record' ? fieldOf(node, 'src') : undefined;
    const cited = src?.node === 'citation' ? src.statements.map((one) => one.text) : around;
    if (isRequirement(node)) {
      const values = [
        node.at_least,
        node.at_most,
        node.exactly,
        node.stated,
        node.about,
        ...(node.between?.items ?? []),
      ];
      for (const id of cited) {
        const key = `${id} ${node.at.key}`;
        for (const value of values)
          if (value !== undefined) found.set(key, (found.get(key) ?? new Set()).add(value.value));
      }
    }
    for (const child of childrenOf(node)) walk(child, cited);
  };
  if (entity !== undefined) walk(entity, []);
  return found;
}

describe('beside what people have encoded', () => {
  it('puts no number into another field', () => {
    let same = 0;
    const others: string[] = [];
    for (const sample of ['lanternfield-corrected', 'saltmere-eye-clinic-corrected']) {
      for (const [path, text] of readSample(sample)) {
        const people = encoded(path, text);
        for (const { index } of text.matchAll(/^ {2}s\d+: \{/gm)) {
          const found = fields(text, index + 3);
          if (found === undefined) continue;
          const made = encoded(
            path,
            withFields(bare(text), fields(bare(text), bare(text).indexOf(`  ${found.statement}: `) + 3) ?? found),
          );
          for (const [key, values] of made) {
            const theirs = people.get(key);
            if (!key.startsWith(`${found.statement} `) || theirs === undefined) continue;
            for (const value of values) {
              if (theirs.has(value)) same++;
              else others.push(`${path} ${key}: ${value}, not ${[...theirs]}`);
            }
          }
        }
      }
    }
    expect(others).toEqual([]);
    expect(same).toBeGreaterThan(60);
  });
});

/** The file with nothing but its statements. */
function bare(text: string): string {
  const lines = text.split('\n');
  const from = lines.findIndex((line) => line.startsWith('statements:'));
  const to = lines.findIndex((line, at) => at > from && !line.startsWith(' '));
  return [...lines.filter((line) => /^(kind|id): /.test(line)), ...lines.slice(from, to < 0 ? undefined : to), ''].join(
    '\n',
  );
}

describe('every statement of the samples', () => {
  it('gives fields that are read as meant, with no fault but an empty place', () => {
    let made = 0;
    for (const [path, text] of [...readSample('lanternfield'), ...readSample('lanternfield-corrected')]) {
      const before = readRuleFile(path, text).problems.length;
      for (const { index } of text.matchAll(/^ {2}s\d+: \{/gm)) {
        const found = fields(text, index + 3);
        if (found === undefined) continue;
        const after = withFields(text, found);
        made += found.made.length;
        const faults = readRuleFile(path, after).problems.filter(({ rule }) => rule !== 'empty-value');
        expect(
          faults.length,
          `${path} ${found.statement}\n${after.slice(Math.max(0, (found.insertions[0]?.span.start ?? 0) - 20), (found.insertions[0]?.span.start ?? 0) + 300)}\n${JSON.stringify(faults)}`,
        ).toBeLessThanOrEqual(before);
      }
    }
    expect(made).toBeGreaterThan(50);
  });
});
