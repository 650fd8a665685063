import { performance } from 'node:perf_hooks';
import type { IsoDate } from '../../server/src/base/brand.ts';
import { fileId } from '../../server/src/base/brand.ts';
import { Library } from '../../server/src/library/library.ts';
import { LibraryView, QueryAnswers } from '../../server/src/library/view.ts';
import { explanationOfSet } from '../../server/src/route/explanation.ts';
import { routeOfSet } from '../../server/src/route/route.ts';
import { Seeded } from './seeded.ts';

/*
 * How long routes take: one set of 60 families over 40 cycles, and 1,000 sets of a large library. Run: node server/build/run.mjs
 * tests/bench/route.bench.ts
 */

const seeded = new Seeded(20250303);
const today = '2025-03-03' as IsoDate;
const dryTimes = [20, 30, 40, 50];

function device(index: number): string {
  const at = [132, 134][index % 2] ?? 132;
  const lumens =
    index % 3 === 0
      ? `lumens: [{id: bore, bore: ${2 + (index % 3)} mm, length: ${150 + index} mm, ends: open-both}]\n`
      : '';
  return `kind: device
id: d${index}
maker: Maker ${index % 40}
class: critical
sources: [{doc: D-1, rev: A}]
${lumens}limits: {temp: {at_most: 140 C}, ph: {between: [6, 10.8], of: in-use}}
cleaning:
  all_of:
    - {stage: manual}
    - {stage: mechanical, detergent: {ph: {between: [6, 10.8], of: in-use}}}
sterilization:
  any_of:
    - {id: a, modality: steam-prevac, context: terminal, temp: {between: [132 C, 138 C]}, exposure: {at_least: 4 min}, dry: {at_least: ${seeded.pick(dryTimes)} min}, packaging: {relation: requires_class, allowed: [wrap, rigid-container]}}
    - {id: b, modality: steam-prevac, context: terminal, temp: {stated: ${at} C}, exposure: {at_least: 3 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}}
    - {id: c, modality: steam-gravity, context: terminal, temp: {stated: 121 C}, exposure: {at_least: 30 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}}
`;
}

function sterilizer(index: number, cycles: number): string {
  const lines = Array.from({ length: cycles }, (_, cycle) => {
    const prevac = (cycle + index) % 5 !== 0;
    const heat = prevac ? ((cycle >> 1) % 2 === 0 ? 132 : 134) : 121;
    return `  - {id: S${index}-${cycle}, modality: ${prevac ? 'steam-prevac' : 'steam-gravity'}, context: terminal, temp: ${heat} C, band: {minus: 0 K, plus: 3 K}, exposure: ${prevac ? 4 : 30} min, dry: ${dryTimes[cycle % 4]} min, load_max: 90 kg, qualified: 2025-01-15}`;
  });
  return `kind: sterilizer\nid: S${index}\ncycles:\n${lines.join('\n')}\n`;
}

const fixed: readonly string[] = [
  'kind: site\nid: here\nthresholds: {set_mass: {at_most: 11.3 kg, src: policy}}\npolicies: {stated_exposure: treat-as-exact, stated_temp: setpoint, stated_dry: treat-as-minimum}\n',
  'kind: document\nid: DOC\ndoc: D-1\nrev: A\nstatus: current\n',
  'kind: chemistry\nid: C1\nclass: neutral\nph_in_use: {between: [6.8, 7.4], of: in-use}\nmethods: [mechanical, manual]\nfoam: low\n',
  'kind: washer\nid: W1\ncycles:\n  - {id: W1-std, doses: [C1], last_cleaning_test: 2025-03-01, phases: [{phase: wash, temp: 60 C, time: 5 min}, {phase: thermal, temp: 90 C, time: 5 min}, {phase: dry, temp: 95 C, time: 15 min}]}\n',
  ...['wrap', 'wrap', 'rigid-container', 'rigid-container', 'pouch', 'wrap'].map(
    (type, index) =>
      `kind: packaging\nid: P${index}\ntype: ${type}\ncellulosic: false\nvalidated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]\nmass_max: ${type === 'pouch' ? 1 : 11.3} kg\nmass_of: gross\n`,
  ),
];

function set(id: string, members: readonly number[]): string {
  return `kind: set\nid: ${id}\nmembers: [${members.map((one) => `{device: d${one}, qty: 2}`).join(', ')}]\npackaging: P${seeded.below(3)}\nlevels: 1\nmass: 8 kg\ncycle: S0-0\n`;
}

function viewOf(texts: readonly string[]): LibraryView {
  const library = new Library();
  for (const [index, text] of texts.entries()) library.set(fileId(`f${index}.ifu.yaml`), text);
  for (const file of library.files()) {
    const faults = library.record(file)?.problems ?? [];
    if (faults.length > 0) throw new Error(`${library.record(file)?.text}\n${faults[0]?.message}`);
  }
  return new LibraryView(library, new Set(), new QueryAnswers(today));
}

function range(count: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => index);
}

function timed<Result>(what: string, work: () => Result): Result {
  const [start, used] = [performance.now(), process.cpuUsage()];
  const result = work();
  const { user, system } = process.cpuUsage(used);
  process.stdout.write(
    `${what}: ${(performance.now() - start).toFixed(1)} ms, of processor time ${((user + system) / 1000).toFixed(1)} ms\n`,
  );
  return result;
}

function bigSets(): void {
  const texts = [...fixed, ...range(4).map((index) => sterilizer(index, 10)), ...range(120).map(device)];
  const view = viewOf([
    ...texts,
    ...range(20).map((index) =>
      set(
        `BIG${index}`,
        range(60).map((one) => (one + index * 3) % 120),
      ),
    ),
  ]);
  timed('set of 60 families over 40 cycles, nothing known before', () => view.ask(routeOfSet, 'BIG0'));
  for (const index of range(19))
    timed(`the same with other members (${index + 1})`, () => view.ask(routeOfSet, `BIG${index + 1}`));
  timed('everything about the first one: governing table, clashes, repairs, near misses', () =>
    view.ask(explanationOfSet, 'BIG0'),
  );
}

function manySets(): void {
  const devices = 400;
  const sets = range(1_000).map((index) =>
    set(`SET${index}`, [...new Set(range(6 + seeded.below(10)).map(() => seeded.below(devices)))]),
  );
  const view = viewOf([
    ...fixed,
    ...range(3).map((index) => sterilizer(index, 4)),
    ...range(devices).map(device),
    ...sets,
  ]);
  const counts = new Map<string, number>();
  timed('1,000 sets of 6 to 15 families over 12 cycles and 6 packagings', () => {
    for (const index of range(1_000)) {
      const status = view.ask(routeOfSet, `SET${index}`)?.status ?? '';
      counts.set(status, (counts.get(status) ?? 0) + 1);
    }
  });
  process.stdout.write(`${[...counts].map(([status, count]) => `${status} ${count}`).join(', ')}\n`);
}

bigSets();
manySets();
