import type { FileId } from '../../server/src/base/brand.ts';
import { fileId } from '../../server/src/base/brand.ts';
import type { FileRecord } from '../../server/src/library/file-record.ts';
import { readRuleFile } from '../../server/src/library/file-record.ts';
import { Library } from '../../server/src/library/library.ts';
import { Seeded } from '../bench/seeded.ts';

/** A rule file as plain data; values are written as JSON, which is YAML too. */
export type RuleFile = { readonly kind: string; readonly id: string } & Record<string, unknown>;

/** A small department with one set, the same for the same seed. */
export interface RandomDepartment {
  readonly files: readonly RuleFile[];
}

const modalities = [
  'steam-prevac',
  'steam-prevac',
  'steam-prevac',
  'steam-prevac',
  'steam-prevac',
  'steam-gravity',
  'vh2o2',
] as const;

/** How many different devices, machines, ... there are to draw from, so that most files have been read before. */
const variants = 60;

export function randomDepartment(seed: number): RandomDepartment {
  const seeded = new Seeded(seed);
  const drawn = (): Seeded => new Seeded(1 + seeded.below(variants));
  const devices = range(1 + seeded.below(4)).map((index) => device(drawn(), `d${index}`));
  const machines = range(1 + seeded.below(2)).map((index) => sterilizer(drawn(), `S${index}`));
  const packagings = range(1 + seeded.below(3)).map((index) => packaging(drawn(), `P${index}`));
  const chemistry = range(1 + seeded.below(2)).map((index) => detergent(drawn(), `C${index}`));
  const washers = range(1 + seeded.below(2)).map((index) => washer(drawn(), `W${index}`));
  return {
    files: [
      site(drawn()),
      document,
      ...devices,
      ...machines,
      ...packagings,
      ...chemistry,
      ...washers,
      set(seeded, devices, packagings),
    ],
  };
}

const document: RuleFile = { kind: 'document', id: 'DOC', doc: 'D-1', rev: 'A', status: 'current' };

function site(seeded: Seeded): RuleFile {
  const thresholds = maybe(seeded, 0.4, { thresholds: { set_mass: { at_most: '8 kg', src: 'policy' } } });
  const policies = {
    stated_dry: seeded.pick(['treat-as-minimum', 'treat-as-exact']),
    stated_exposure: 'treat-as-exact',
  };
  return { kind: 'site', id: 'here', policies, ...thresholds };
}

function sterilizer(seeded: Seeded, id: string): RuleFile {
  const cycles = range(2 + seeded.below(3)).map((index) => {
    const modality = seeded.pick(modalities);
    const steam = modality.startsWith('steam') && {
      temp: seeded.pick(['132 C', '132 C', '134 C', '121 C']),
      exposure: seeded.pick(['4 min', '4 min', '10 min', '30 min']),
      dry: seeded.pick(['20 min', '30 min', '40 min']),
    };
    const qualified = maybe(seeded, 0.9, { qualified: '2025-01-15' });
    return {
      id: `${id}-c${index}`,
      modality,
      context: 'terminal',
      ...steam,
      ...maybe(seeded, 0.3, { band: { minus: '0 K', plus: '3 K' } }),
      ...maybe(seeded, 0.3, { load_max: '9 kg' }),
      ...qualified,
    };
  });
  return { kind: 'sterilizer', id, cycles };
}

function packaging(seeded: Seeded, id: string): RuleFile {
  const type = seeded.pick(['wrap', 'rigid-container', 'pouch']);
  const validated = [...new Set(range(1 + seeded.below(3)).map(() => seeded.pick(modalities)))].map((modality) => ({
    modality,
    context: 'terminal',
    ...(modality.startsWith('steam') &&
      maybe(seeded, 0.3, { dry: { at_least: seeded.pick(['20 min', '30 min', '40 min']) } })),
  }));
  const lumens = maybe(seeded, 0.2, { lumens: { bore: { at_least: '2 mm' }, length: { at_most: '400 mm' } } });
  return {
    kind: 'packaging',
    id,
    type,
    cellulosic: seeded.next() < 0.2,
    validated,
    mass_max: seeded.pick(['6 kg', '10 kg', '10 kg']),
    mass_of: 'gross',
    ...lumens,
  };
}

function detergent(seeded: Seeded, id: string): RuleFile {
  const gone = maybe(seeded, 0.2, { discontinued_on: '2025-02-01' });
  return {
    kind: 'chemistry',
    id,
    class: seeded.pick(['neutral', 'mild-alkaline']),
    ph_in_use: {
      between: seeded.pick([
        ['6.8', '7.4'],
        ['10.2', '10.6'],
      ]),
      of: 'in-use',
    },
    methods: ['mechanical', 'manual'],
    foam: 'low',
    ...gone,
  };
}

function washer(seeded: Seeded, id: string): RuleFile {
  const cycles = range(1 + seeded.below(2)).map((index) => ({
    id: `${id}-c${index}`,
    ...maybe(seeded, 0.9, { doses: [seeded.pick(['C0', 'C1'])] }),
    ...maybe(seeded, 0.8, { last_cleaning_test: '2025-03-01' }),
    phases: [
      { phase: 'wash', temp: seeded.pick(['45 C', '60 C']), time: '5 min' },
      { phase: 'thermal', temp: seeded.pick(['80 C', '90 C']), time: '5 min' },
      { phase: 'dry', temp: seeded.pick(['85 C', '115 C']), time: '15 min' },
    ],
  }));
  return { kind: 'washer', id, rack: { ports: seeded.pick([[], ['luer', 'luer'], ['luer', 'luer', 'luer']]) }, cycles };
}

function device(seeded: Seeded, id: string): RuleFile {
  const lumens = maybe(seeded, 0.4, {
    lumens: [
      { id: 'bore', bore: seeded.pick(['1 mm', '3 mm']), length: seeded.pick(['200 mm', '420 mm']), ends: 'open-both' },
    ],
  });
  const limits = maybe(seeded, 0.5, {
    limits: {
      ...maybe(seeded, 0.6, { temp: { at_most: seeded.pick(['133 C', '140 C', '140 C', '140 C']) } }),
      ...maybe(seeded, 0.5, {
        ph: {
          between: seeded.pick([
            ['6', '8'],
            ['6', '11'],
          ]),
          of: 'in-use',
        },
      }),
    },
  });
  const not = maybe(seeded, 0.15, { not: [{ what: seeded.pick(['steam', 'steam-gravity', 'vh2o2', 'vh2o2']) }] });
  const usual = {
    id: 'usual',
    modality: 'steam-prevac',
    context: 'terminal',
    temp: { stated: '132 C' },
    exposure: { at_least: '4 min' },
    dry: { at_least: '20 min' },
    packaging: { relation: 'requires_class', allowed: ['wrap', 'rigid-container', 'pouch'] },
  };
  const others = range(seeded.below(3)).map((index) => option(seeded, `o${index}`));
  const any_of = others.length === 0 || seeded.next() < 0.5 ? [usual, ...others] : others;
  return {
    kind: 'device',
    id,
    maker: `M-${id}`,
    class: 'critical',
    sources: [{ doc: 'D-1', rev: 'A' }],
    ...lumens,
    ...limits,
    ...not,
    cleaning: cleaning(seeded),
    sterilization: { any_of },
  };
}

function cleaning(seeded: Seeded): unknown {
  const manual = { stage: 'manual' };
  const mechanical = {
    stage: 'mechanical',
    ...maybe(seeded, 0.4, {
      detergent: {
        ph: {
          between: seeded.pick([
            ['6', '8'],
            ['7', '10.8'],
          ]),
          of: 'in-use',
        },
      },
    }),
    ...maybe(seeded, 0.2, { connector: 'luer' }),
  };
  const shape = seeded.below(6);
  if (shape === 0) return { all_of: [manual, mechanical] };
  if (shape === 1)
    return {
      any_of: [
        { id: 'hand', ...manual },
        { id: 'machine', ...mechanical },
      ],
    };
  return shape === 2 ? { all_of: [mechanical] } : { all_of: [manual] };
}

function option(seeded: Seeded, id: string): unknown {
  const modality = seeded.pick(modalities);
  const words = ['wrap', 'rigid-container', 'pouch'];
  const allowed = words.filter(() => seeded.next() < 0.75);
  const packing = {
    packaging: {
      relation: seeded.pick(['restricted_to', 'requires_class', 'validated_with']),
      allowed: allowed.length > 0 ? allowed : ['wrap'],
      ...maybe(seeded, 0.2, { max_mass: { at_most: '6 kg' } }),
    },
  };
  if (modality === 'vh2o2')
    return {
      id,
      modality,
      context: 'terminal',
      listed: seeded.pick([['S0-c0'], ['S0-c0', 'S0-c1', 'S1-c0']]),
      ...packing,
    };
  const temp = seeded.pick([
    { stated: '132 C' },
    { stated: '132 C' },
    { stated: '134 C' },
    { at_least: '121 C' },
    { between: ['132 C', '137 C'] },
  ]);
  const exposure = seeded.pick([
    { at_least: '4 min' },
    { at_least: '3 min' },
    { stated: '4 min' },
    { between: ['3 min', '18 min'] },
    { at_least: '10 min' },
  ]);
  return {
    id,
    modality,
    context: 'terminal',
    temp,
    exposure,
    dry: seeded.pick([
      { at_least: '20 min' },
      { at_least: '30 min' },
      { stated: '20 min' },
      { at_least: '40 min' },
      { silent: true },
    ]),
    ...packing,
  };
}

function set(seeded: Seeded, devices: readonly RuleFile[], packagings: readonly RuleFile[]): RuleFile {
  const members = devices
    .filter((_, index) => index === 0 || seeded.next() < 0.6)
    .map(({ id }) => ({ device: id, qty: 1 + seeded.below(3) }));
  return {
    kind: 'set',
    id: 'SET',
    members,
    ...maybe(seeded, 0.8, { packaging: seeded.pick(packagings).id }),
    mass: seeded.pick(['2 kg', '4 kg', '5.5 kg', '7 kg', '9.5 kg']),
    levels: 1,
    cycle: 'S0-c0',
  };
}

function range(count: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => index);
}

function maybe<Fields extends object>(seeded: Seeded, chance: number, fields: Fields): Fields | Record<string, never> {
  return seeded.next() < chance ? fields : {};
}

const records = new Map<string, FileRecord>();

/** The library of these files. Files alike are read once; `name` decides the order in which the library lists them. */
export function libraryOf(
  files: readonly RuleFile[],
  name: (file: RuleFile) => string = ({ kind, id }) => `${kind}-${id}`,
): Library {
  const library = new Library();
  for (const file of files) library.put(recordOf(fileId(`${name(file)}.ifu.yaml`), textOf(file)));
  return library;
}

export function textOf({ kind, id, ...fields }: RuleFile): string {
  const lines = Object.entries(fields).map(([key, value]) => `${key}: ${JSON.stringify(value)}`);
  return [`kind: ${kind}`, `id: ${id}`, ...lines, ''].join('\n');
}

function recordOf(file: FileId, text: string): FileRecord {
  const key = `${file}\n${text}`;
  const known = records.get(key);
  if (known !== undefined) return known;
  const record = readRuleFile(file, text);
  const faults = record.problems.filter(({ severity }) => severity === 'error');
  if (faults.length > 0) throw new Error(`${text}\n${faults.map(({ message }) => message).join('\n')}`);
  if (records.size > 20_000) records.clear();
  records.set(key, record);
  return record;
}
