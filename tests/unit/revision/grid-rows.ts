/** A device with these lines put in; statements as given. */
export function device(lines: string, quotes: Readonly<Record<string, string>> = {}, page = 4): string {
  const statements = Object.entries({ s1: 'Unscrew the handle.', ...quotes }).map(
    ([id, quote]) => `  ${id}: {doc: PF-1, rev: A, page: ${page}, quote: ${JSON.stringify(quote)}}`,
  );
  return `kind: device\nid: pale-forceps\ncovers: ["P-1"]\nstatements:\n${statements.join('\n')}\n${lines.trim()}\n`;
}

export interface Row {
  readonly what: string;
  readonly old: string;
  readonly now: string;
  readonly there: readonly string[];
  readonly back: readonly string[];
}

export const dry = 'sterilization.any_of[pv].dry';

export function option(fields: string): string {
  return `sterilization:\n  any_of:\n    - {id: pv, modality: steam-prevac, context: terminal, ${fields}}`;
}

export function steps(...names: readonly string[]): string {
  return `disassembly:\n  steps:\n${names.map((name) => `    - {do: ${name}}`).join('\n')}`;
}

/** Each kind of change, and the same change backwards. */
export const grid: readonly Row[] = [
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

/** Changes of passages, which need the quotes on both sides. */
const quoteAt = (celsius: number) => ({ s2: `Steam at 270 °F (${celsius} °C).` });
const tempAt = (celsius: number) => option(`temp: {stated: ${celsius} C}, src: s2`);
const milk = { s2: 'Lubricate the hinge.', s3: 'Use instrument milk on the hinge.' };
export const passages: readonly Row[] = [
  {
    what: 'another page',
    old: device('', { s2: 'Pull the insert.' }, 4),
    now: device('', { s2: 'Pull the insert.' }, 5),
    there: ['re-citation statements'],
    back: ['re-citation statements'],
  },
  {
    what: 'another passage for the same value',
    old: device('lubrication: {required: true, src: s2}', milk),
    now: device('lubrication: {required: true, src: s3}', milk),
    there: ['re-citation lubrication.src'],
    back: ['re-citation lubrication.src'],
  },
  {
    what: 'other words',
    old: device('', { s2: 'Rinse the device with care.' }),
    now: device('', { s2: 'Rinse the device carefully.' }),
    there: ['editorial statements.s2'],
    back: ['editorial statements.s2'],
  },
  {
    what: 'a unit that was converted wrongly, put right',
    old: device(tempAt(134), quoteAt(134)),
    now: device(tempAt(132), quoteAt(132)),
    there: ['correction sterilization.any_of[pv].temp'],
    // Away from a pair that agrees is no correction.
    back: ['different sterilization.any_of[pv].temp'],
  },
  {
    what: 'a passage that no value follows',
    old: device(''),
    now: device('', { s2: 'Store below 30 °C.' }),
    there: ['became-stated statements.s2'],
    back: ['became-silent statements.s2'],
  },
];
