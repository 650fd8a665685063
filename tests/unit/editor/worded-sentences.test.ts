import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import type { FieldsFromQuote } from '../../../server/src/editor/reading/quote-to-fields.ts';
import { quoteToFields } from '../../../server/src/editor/reading/quote-to-fields.ts';
import { wordsUnsaid } from '../../../server/src/editor/reading/quote-unsaid.ts';
import { asPlain } from '../../../server/src/editor/writing/offer.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { readQuote } from '../../../server/src/quantity/prose/read-quote.ts';
import { readTree } from '../../../server/src/syntax/read.ts';

/** Sentences that say in words what a field holds, with the heading above them and what the file gets; nothing where they stay open. */
const rows: readonly (readonly [string, string, string])[] = [
  [
    'Sterilization',
    'For immediate use only: pre-vacuum steam 132 °C, 4 minutes.',
    'sterilization:\n  any_of:\n    - {id: pv132, modality: steam-prevac, context: iuss, temp: {stated: 132 °C}, exposure: {stated: 4 min}, src: s5}',
  ],
  [
    'Immediate-use sterilization',
    'Pre-vacuum steam 132 °C, 4 minutes.',
    'sterilization:\n  any_of:\n    - {id: pv132, modality: steam-prevac, context: iuss, temp: {stated: 132 °C}, exposure: {stated: 4 min}, src: s5}',
  ],
  [
    'Sterilization',
    'Pre-vacuum steam 132 °C, 4 minutes. Do not process for immediate use.',
    'sterilization:\n  any_of:\n    - {id: pv132, modality: steam-prevac, temp: {stated: 132 °C}, exposure: {stated: 4 min}, src: s5}',
  ],
  [
    'Manual cleaning',
    'Brush the channel with a brush of 3 mm diameter, at least six passes.',
    'manual:\n  steps:\n    - {do: brush, brush: {diameter: {stated: 3 mm}}, times: {at_least: 6 strokes}, src: s5}',
  ],
  [
    'Storage',
    'Store protected from dust, moisture and sunlight at 10 to 30 °C.',
    'storage:\n  temp: {between: [10 °C, 30 °C], src: s5}\n  place: "protected from dust, moisture and sunlight"\n  src: s5',
  ],
  ['', 'Maximum temperature during reprocessing: 138 °C.', 'limits:\n  temp: {at_most: 138 °C, src: s5}'],
  [
    'Automated cleaning',
    'Maximum temperature during reprocessing: 138 °C.',
    'mechanical:\n  wash: {temp: {at_most: 138 °C, src: s5}}',
  ],
  ['Storage', 'Maximum temperature: 30 °C.', 'storage:\n  temp: {at_most: 30 °C, src: s5}'],
  ['Inspection', 'Let the parts cool to room temperature before inspection.', ''],
  ['INSPECTION AND CARE', 'Let the parts cool to room temperature before inspection.', ''],
  ['Inspection', 'Inspect the parts visually before packing.', 'inspection:\n  visual: true\n  src: s5'],
  ['', 'Delivered non-sterile.', 'receipt:\n  arrives: non-sterile\n  src: s5'],
  ['', 'The cannula is supplied sterile.', 'receipt:\n  arrives: sterile\n  src: s5'],
  [
    'Point of use',
    'Flush with the sterile water supplied.',
    'point_of_use:\n  steps:\n    - {do: flush, water: {grade: sterile}, src: s5}',
  ],
  [
    'Warnings',
    'Never use bleach, aldehydes or abrasive cleaners.',
    'not:\n  - {what: hypochlorite, as_written: bleach, src: s5}\n  - {what: aldehyde, as_written: aldehydes, src: s5}\n  - {what: abrasive, as_written: abrasive cleaners, src: s5}',
  ],
  [
    'Warnings',
    'Steel wool and wire brushes must not be used.',
    'not:\n  - {what: abrasive, as_written: Steel wool, src: s5}\n  - {what: metal-brush, as_written: wire brushes, src: s5}',
  ],
  ['Point of use', 'Do not use saline.', 'point_of_use:\n  avoid:\n    - {what: saline, as_written: saline, src: s5}'],
  ['Warnings', 'Do not use strong acids or phenols.', ''],
  ['Warnings', 'Do not use alcohol on the lens.', ''],
  ['Warnings', 'Do not use bleach above 40 °C.', ''],
  [
    'Warnings',
    'Keine Stahlwolle und keine Scheuermittel verwenden.',
    'not:\n  - {what: abrasive, as_written: Stahlwolle, src: s5}\n  - {what: abrasive, as_written: Scheuermittel, src: s5}',
  ],
  ['Manual cleaning', 'Do not mix with instruments of other metals.', 'not:\n  - {what: mixed-metals, src: s5}'],
  [
    'Ultrasonic cleaning',
    'Do not mix with instruments of other metals.',
    'ultrasonic:\n  single_metal: true\n  src: s5',
  ],
  [
    'Warnings',
    'Discard earlier if the tip is bent or the grip is cracked.',
    'inspection:\n  reject_if:\n    - the tip is bent\n    - the grip is cracked\n  action: discard\n  src: s5',
  ],
  [
    'Inspection',
    'Discard an instrument that is cracked or bent.',
    'inspection:\n  reject_if:\n    - cracked\n    - bent\n  action: discard\n  src: s5',
  ],
  [
    'Inspection',
    'If the tip or the shaft is bent, discard the instrument.',
    'inspection:\n  reject_if:\n    - the tip or the shaft is bent\n  action: discard\n  src: s5',
  ],
  [
    'Inspection',
    'Return the instrument for repair when the ratchet is loose.',
    'inspection:\n  reject_if:\n    - the ratchet is loose\n  action: repair\n  src: s5',
  ],
  ['Packaging', 'Discard the pouch if the seal is damaged.', ''],
  ['Inspection', 'If soil is visible, repeat the cleaning.', ''],
  [
    'Taking apart',
    '3.2 Press the button and pull the insert out of the shaft.',
    'disassembly:\n  steps:\n    - {do: Press the button and pull the insert out of the shaft, src: s5}',
  ],
  [
    'After sterilization',
    'Store dry, protected from sunlight.',
    'storage:\n  place: "dry, protected from sunlight"\n  src: s5',
  ],
  ['Materials', 'Handle: PEEK.', 'materials:\n  - peek'],
  ['Cleaning by machine', 'Keep the jaws open.', 'mechanical:\n  orientation: jaws open\n  src: s5'],
  [
    'Packaging',
    'Leave the ratchet on the first tooth or open.',
    'packaging:\n  configuration:\n    - {what: the ratchet on the first tooth or open, src: s5}',
  ],
  [
    'Inspection',
    'Check that the jaws close fully and that the ratchet holds.',
    'inspection:\n  function_test: {required: true, src: s5}',
  ],
  ['Warnings', 'Do not soak the handle in saline.', 'not:\n  - {what: saline, as_written: saline, src: s5}'],
  ['Warnings', 'Process the device before its first use.', 'receipt:\n  initial_cleaning: {use: required, src: s5}'],
  [
    'Inspection',
    'Inspect for corrosion, cracks and loose screws.',
    'inspection:\n  visual: true\n  criteria:\n    - corrosion\n    - cracks\n    - loose screws\n  src: s5',
  ],
  ['Inspection', 'Look through the lumen against light.', 'inspection:\n  lumen_inspection: {required: true, src: s5}'],
  [
    'Inspection',
    'Test the insulation before each use.',
    'inspection:\n  insulation_test: {required: true, each_use: true, src: s5}',
  ],
  ['Inspection', 'Check the ratchet for smooth movement.', 'inspection:\n  function_test: {required: true, src: s5}'],
  [
    'Automated cleaning',
    'Connect the lumen to the irrigation nozzle of the washer-disinfector.',
    'mechanical:\n  connector: irrigation nozzle\n  src: s5',
  ],
  ['Automated cleaning', 'Place the parts in a wire basket.', 'mechanical:\n  rack: wire basket\n  src: s5'],
  ['Manual cleaning', 'Connect the lumen to a syringe.', ''],
  [
    'Automated cleaning',
    'Neutralise and rinse.',
    'mechanical:\n  rinse: {use: required, src: s5}\n  neutralise: {use: required, src: s5}',
  ],
  [
    'Packaging',
    'Double peel pouch or two layers of wrap only.',
    'packaging:\n  relation: restricted_to\n  allowed:\n    - double-pouch\n    - double-wrap\n  src: s5',
  ],
  [
    'Packaging',
    'Pack in a double wrap or a rigid container.',
    'packaging:\n  allowed:\n    - double-wrap\n    - rigid-container\n  src: s5',
  ],
  ['Storage', 'Store dry and free of dust.', 'storage:\n  place: dry and free of dust\n  src: s5'],
  [
    'Storage',
    'Store dry and free of dust, up to 6 months in wrap, 12 months in pouches.',
    'storage:\n  time: {at_most: 6 months, src: s5}\n  place: dry and free of dust\n  src: s5',
  ],
  [
    'Storage',
    'Store dry and dust-free at 5 to 40 °C.',
    'storage:\n  temp: {between: [5 °C, 40 °C], src: s5}\n  place: dry and dust-free\n  src: s5',
  ],
  ['Storage', 'Store at 5 to 40 °C.', 'storage:\n  temp: {between: [5 °C, 40 °C], src: s5}'],
  ['Sterilization', 'Packs may be kept for 6 months.', ''],
  [
    'Point of use',
    'Suction at least 30 ml of water through the cannula.',
    'point_of_use:\n  flush_now: {at_least: 30 mL, src: s5}',
  ],
  ['Sterilization', 'Temperature Time at temperature Drying', ''],
  [
    'Disinfection',
    'Chemical disinfection is not a substitute for sterilization.',
    'disinfection:\n  not_a_substitute: true\n  src: s5',
  ],
  [
    'Automated cleaning',
    'Dry with hot air at 90 °C for 15 minutes.',
    'mechanical:\n  dry: {temp: {stated: 90 °C, src: s5}, time: {stated: 15 min, src: s5}}',
  ],
  ['Sterilization', 'Drying time: 30 minutes for wrapped sets, 20 minutes for pouches.', ''],
  [
    'Limitations',
    'Do not exceed 60 minutes between use and cleaning.',
    'point_of_use:\n  max_delay: {at_most: 60 min, src: s5}',
  ],
  [
    'Cleaning: ultrasonic',
    'Degas the bath for 5 minutes before use.',
    'ultrasonic:\n  degas: {stated: 5 min, src: s5}',
  ],
  ['Preparation', 'Open all stopcocks.', 'disassembly:\n  open:\n    - all stopcocks\n  src: s5'],
  [
    'Preparation',
    'Unscrew the cap and withdraw the inner tube before cleaning.',
    'disassembly:\n  assembled_for: {cleaning: false, src: s5}',
  ],
  [
    'Point of use',
    'Cover with a moist towel; do not allow to dry out.',
    'point_of_use:\n  keep_moist: {use: required, src: s5}',
  ],
  [
    'Point of use',
    'Remove gross soil with a damp wipe within 15 minutes.',
    'point_of_use:\n  wipe: {use: required, src: s5}',
  ],
  ['Sterilization', 'Hydrogen peroxide plasma is not recommended.', ''],
  ['Sterilization', 'Flash sterilization of the assembled device is not allowed.', ''],
  ['Storage', 'Protect from temperatures above 30 °C.', ''],
  [
    'Warnings',
    'Avoid contact with solutions that contain iodine or quaternary ammonium compounds.',
    'not:\n  - {what: iodine, as_written: iodine, src: s5}',
  ],
  [
    'Inspection',
    'Do not use a device whose insulation is cracked or has pinholes.',
    'inspection:\n  reject_if:\n    - insulation is cracked\n    - has pinholes\n  src: s5',
  ],
  [
    'Automated cleaning',
    'Load the parts and connect the shaft to the injector rack.',
    'mechanical:\n  rack: injector rack\n  src: s5',
  ],
  [
    'Manual cleaning',
    'Sonicate for 15 minutes at 38 kHz in fresh solution below 45 °C.',
    'ultrasonic:\n  time: {stated: 15 min, src: s5}\n  frequency: {stated: 38 kHz, src: s5}\n  temp: {at_most: 45 °C, src: s5}',
  ],
  [
    'Automated cleaning',
    'Wash at 55 °C for 5 min with an alkaline detergent.',
    'mechanical:\n  wash: {temp: {stated: 55 °C, src: s5}, time: {stated: 5 min, src: s5}}\n  detergent: {class: [alkaline], src: s5}',
  ],
  [
    'Assembly and packaging',
    'Use a double pouch or two layers of SMS wrap, or a rigid container whose maker lists lumens of this size.',
    'packaging:\n  allowed:\n    - double-pouch\n    - double-wrap\n  note: "a rigid container whose maker lists lumens of this size"\n  src: s5',
  ],
  [
    'Packaging',
    'Pack in a pouch or a rigid container only.',
    'packaging:\n  relation: restricted_to\n  allowed:\n    - pouch\n    - rigid-container\n  src: s5',
  ],
  [
    'Storage and life',
    'Shelf life 6 months in wrap, 12 months in pouches.',
    'storage:\n  time: {at_most: 6 months, src: s5}',
  ],
  [
    'Storage',
    'Wrapped packs have a shelf life of 9 months when stored below 25 °C.',
    'storage:\n  time: {at_most: 9 months, src: s5}\n  temp: {at_most: 25 °C, src: s5}',
  ],
  ['', 'Manual pre-cleaning (always required, also before automated cleaning)', 'manual:\n  needed: always\n  src: s5'],
  ['', 'Remove coarse soil before automated cleaning.', ''],
  [
    'Point of use',
    'Keep the device moist and start cleaning within 60 minutes of use.',
    'point_of_use:\n  max_delay: {at_most: 60 min, src: s5}\n  keep_moist: {use: required, src: s5}',
  ],
  ['Storage', 'Shelf life: 12 months.', 'storage:\n  time: {at_most: 12 months, src: s5}'],
  ['Storage', 'Shelf life at least 6 months.', 'storage:\n  time: {at_least: 6 months, src: s5}'],
  [
    'Disassembly',
    'The cap is replaced after 20 uses.',
    'parts:\n  - {id: cap, name: cap, uses: {stated: 20 uses}, src: s5}',
  ],
  ['Service life', 'The device is replaced after 20 uses.', 'limits:\n  uses: {stated: 20 uses, src: s5}'],
  ['', 'Lumen 330 mm long, 2.0 mm inner diameter.', 'lumens:\n  - {id: lumen, bore: 2.0 mm, length: 330 mm, src: s5}'],
  ['', 'Lumens up to 330 mm long.', ''],
  [
    '',
    'Brush the lumen with a brush 330 mm long.',
    'manual:\n  steps:\n    - {do: brush, brush: {length: {stated: 330 mm}}, src: s5}',
  ],
  [
    '',
    'Materials: stainless steel, PEEK insulation, silicone seal.',
    'materials:\n  - stainless\n  - peek\n  - silicone',
  ],
  [
    'Disassembly',
    'Press the release button and pull the insert out of the sheath.',
    'disassembly:\n  steps:\n    - {do: Press the release button and pull the insert out of the sheath, src: s5}',
  ],
  ['Disassembly', 'Remove gross soil from the sheath.', ''],
  [
    'Manual cleaning',
    'Soak in a mild alkaline or enzymatic detergent, prepared as its label says, for 5 minutes at 30-40 °C.',
    'manual:\n  steps:\n    - {do: soak, time: {stated: 5 min}, temp: {between: [30 °C, 40 °C]}, detergent: {class: [mild-alkaline, enzymatic]}, src: s5}',
  ],
  [
    'Manual cleaning',
    'Brush the lumen with a soft nylon brush of 2.2 mm diameter, a minimum of 5 strokes.',
    'manual:\n  steps:\n    - {do: brush, brush: {diameter: {stated: 2.2 mm}, material: nylon, soft: true}, times: {at_least: 5 strokes}, src: s5}',
  ],
  [
    'Automated cleaning',
    'Drying up to 110 °C max. 20 min -',
    'mechanical:\n  dry: {temp: {at_most: 110 °C, src: s5}, time: {at_most: 20 min, src: s5}}',
  ],
  [
    'Automated cleaning',
    'Rinse - 1 min deionised water',
    'mechanical:\n  rinse: {time: {stated: 1 min, src: s5}, water: {grade: critical, src: s5}}',
  ],
  [
    'Automated cleaning',
    'Place the parts in the washer-disinfector, sheath connected to the irrigation nozzle, jaws open.',
    'mechanical:\n  orientation: "sheath connected to the irrigation nozzle, jaws open"\n  src: s5',
  ],
  [
    'Inspection',
    'Check the insulation for cracks; test it with a suitable tester before each use.',
    'inspection:\n  insulation_test: {required: true, each_use: true, src: s5}',
  ],
  ['Sterilization', 'Vaporized hydrogen peroxide has not been tested for this device.', ''],
];

function from(quote: string, section = '', more = ''): { readonly made: string; readonly found: FieldsFromQuote } {
  const above = section === '' ? '' : `section: ${JSON.stringify(section)}, `;
  const text = `kind: device\nid: pale\nstatements:\n${more}  s5: {doc: D, rev: A, page: 5, ${above}quote: ${JSON.stringify(quote)}}\n`;
  const { tree } = readTree(text);
  const found =
    tree?.node === 'map'
      ? quoteToFields(readRuleFile(fileId('x.ifu.yaml'), text), tree, text.indexOf('s5'))
      : undefined;
  if (found === undefined) throw new Error('nothing');
  const made = found.insertions.map(({ pieces }) => asPlain(pieces, '\n')).join('');
  return { made: made.trimEnd(), found };
}

describe('what a sentence says in words', () => {
  it.each(rows)('[%s] %s', (section, quote, made) => {
    expect(from(quote, section).made).toBe(made);
  });

  it('an agent without a word of the list is told', () => {
    expect(from('Never use bleach or phenols.', 'Warnings').found.left).toEqual(['no word of the list for: "phenols"']);
  });

  it('a time for each packaging is told with where it belongs', () => {
    const { left } = from('Store for 6 months in wrap, 12 months in pouches.', 'Storage').found;
    expect(left).toEqual([
      '6 months alone is proposed (the shortest: it holds for every packaging named here)',
      '12 months (a time for each packaging belongs into the file of that packaging)',
    ]);
  });

  it('alternatives among the numbers of one group are told', () => {
    expect(from('Thermal disinfection: A0 of at least 3000 or 5 minutes at 93 °C.', 'Washer').found.left).toEqual([
      '"or" stands between "3000" and "5 minutes": the fields ask for both',
    ]);
    expect(from('Dry for 20 minutes or longer at 60 °C.').found.left).toEqual([]);
  });

  it('the heading of a table says what the numbers of its rows are', () => {
    const head = '  s3: {doc: D, rev: A, page: 5, quote: "Temperature Time at temperature Drying"}\n';
    const row = 'Pre-vacuum steam 134 °C 3 min (18 min permitted) 25 min';
    expect(from(row, '', head).made).toContain('exposure: {stated: 3 min}, dry: {stated: 25 min}');
    expect(from(row).made).not.toContain('25 min');
    expect(from('Pre-vacuum steam 134 °C 3 min', '', head).made).not.toContain('dry');
  });

  it('several cycles of one form are items of their own', () => {
    expect(from('Pre-vacuum steam 121 °C for 20 min or 134 °C for 3 min.').made).toBe(
      'sterilization:\n  any_of:\n    - {id: pv121, modality: steam-prevac, temp: {stated: 121 °C}, exposure: {stated: 20 min}, src: s5}\n    - {id: pv134, modality: steam-prevac, temp: {stated: 134 °C}, exposure: {stated: 3 min}, src: s5}',
    );
    expect(from('Pre-vacuum steam 121 °C for 20 min or 134 °C for 3 min, dry for 20 min.').made).not.toContain('pv134');
  });

  it.each([
    ['Rinse below 40 °C.', '"below 40 °C" stands as at most 40 °C: 40 °C itself is not allowed by the page'],
    [
      'Rinse for more than 2 min.',
      '"more than 2 min" stands as at least 2 min: 2 min itself is not allowed by the page',
    ],
    ['Rinse at no more than 40 °C.', undefined],
    ['Rinse at up to 40 °C for at least 2 min.', undefined],
  ])('a bound that leaves its own value out is told: %s', (quote, told) => {
    expect(from(quote, 'Manual cleaning').found.left).toEqual(told === undefined ? [] : [told]);
  });

  it.each([
    ['Pre-rinse cold, 2 min.', ['“cold”']],
    ['Rinse under running water for 2 min.', ['“running water”']],
    ['Wash at 55 °C with an alkaline detergent.', []],
    ['Lubricate with a steam-permeable, water-soluble instrument milk.', ['“steam-permeable”', '“water-soluble”']],
  ])('words that no field holds are told: %s', (quote, unsaid) => {
    expect(wordsUnsaid(readQuote(quote, undefined), from(quote, 'Automated cleaning').found.fields)).toEqual(unsaid);
  });
});
