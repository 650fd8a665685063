import type { ListTree, MapTree } from '../../../server/src/syntax/tree.ts';
import type { Mistake, MistakeKind } from './mistake.ts';
import { removed, replaced, rewritten, swappedWithNext, withoutKey } from './mistake.ts';
import { writtenNumber } from './numbers.ts';
import type { Department, Site } from './rule-files.ts';
import { entryOf, isBelow, textAt, valueAt } from './rule-files.ts';

/** Slips of who writes down what the department does: sets, machines, procedures. */

function scalarOfSet(site: Site, key: string): string | undefined {
  const own = site.of.kind === 'set' && site.key === key && site.above === undefined;
  return own && site.value.node === 'scalar' ? site.value.text : undefined;
}

function otherId(key: string, kind: string): MistakeKind['mistakes'] {
  return (site, department) => {
    const own = scalarOfSet(site, key);
    if (own === undefined) return [];
    return department
      .ids(kind)
      .filter((id) => id !== own)
      .map((id) => replaced(site, id));
  };
}

const minutes = (cycle: MapTree | undefined, key: string): number => Number.parseFloat(textAt(cycle, key) ?? '0');

/** Another cycle that dries, holds or removes air less than the one that was worked out. */
function lesserCycle(site: Site, department: Department): readonly Mistake[] {
  const own = scalarOfSet(site, 'cycle');
  const cycles = department.cycles('sterilizer');
  const right = cycles.find((cycle) => textAt(cycle, 'id') === own);
  if (own === undefined || right === undefined) return [];
  const lesser = cycles.filter(
    (cycle) =>
      textAt(cycle, 'modality') !== textAt(right, 'modality') ||
      minutes(cycle, 'dry') < minutes(right, 'dry') ||
      minutes(cycle, 'exposure') < minutes(right, 'exposure'),
  );
  return lesser.flatMap((cycle) => textAt(cycle, 'id') ?? []).map((id) => replaced(site, id));
}

function otherWasherCycle(site: Site, department: Department): readonly Mistake[] {
  const own = scalarOfSet(site, 'washer_cycle');
  if (own === undefined) return [];
  const ids = department.cycles('washer').flatMap((cycle) => textAt(cycle, 'id') ?? []);
  return ids.filter((id) => id !== own && id.split('-')[0] === own.split('-')[0]).map((id) => replaced(site, id));
}

function fewerIndicators(site: Site): readonly Mistake[] {
  const count = scalarOfSet(site, 'indicators');
  return count === undefined ? [] : [String(Number(count) - 1)].map((fewer) => replaced(site, fewer));
}

function heavier(site: Site): readonly Mistake[] {
  const mass = scalarOfSet(site, 'mass');
  return mass === undefined ? [] : ['12.6 kg', '14 kg'].map((kilograms) => replaced(site, kilograms));
}

function memberDetailDropped(site: Site): readonly Mistake[] {
  if (site.of.kind !== 'set' || site.key !== 'members' || site.value.node !== 'map') return [];
  const { value } = site;
  return ['instructions', 'tests'].flatMap((key) => withoutKey(site, value, key));
}

function otherMember(site: Site, department: Department): readonly Mistake[] {
  if (site.of.kind !== 'set' || site.key !== 'device' || site.value.node !== 'scalar') return [];
  const own = site.value.text;
  return department
    .ids('device')
    .filter((id) => id !== own)
    .map((id) => replaced(site, id));
}

function setLineDropped(site: Site): readonly Mistake[] {
  if (site.of.kind !== 'set' || site.above !== undefined) return [];
  const needed = [
    'indicator',
    'external_indicator',
    'biological',
    'release',
    'product_test',
    'mass',
    'washer_cycle',
    'cycle',
    'packaging',
    'indicators',
    'case',
  ];
  return needed.includes(site.key) ? removed(site) : [];
}

function otherDetergent(site: Site, department: Department): readonly Mistake[] {
  if (site.key !== 'doses' || site.of.kind !== 'washer' || site.value.node !== 'scalar') return [];
  const own = site.value.text;
  return department
    .ids('chemistry')
    .filter((id) => id !== own)
    .map((id) => replaced(site, id));
}

const purity: Readonly<Record<string, number>> = { utility: 0, critical: 1, purified: 1, sterile: 2 };

/** Water of a lower grade. */
function lesserWater(site: Site, department: Department): readonly Mistake[] {
  if (!['final_water', 'water'].includes(site.key) || site.value.node !== 'scalar') return [];
  if (!['washer', 'procedure'].includes(site.of.kind)) return [];
  const grade = (id: string): number => purity[textAt(department.file('water', id)?.tree, 'grade') ?? ''] ?? 0;
  const own = site.value.text;
  return department
    .ids('water')
    .filter((id) => grade(id) < grade(own))
    .map((id) => replaced(site, id));
}

function shorterPhase(site: Site): readonly Mistake[] {
  if (site.of.kind !== 'washer' || !isBelow(site, 'phases') || !['time', 'temp'].includes(site.key)) return [];
  const written = writtenNumber(site);
  if (written === undefined) return [];
  const number = Number(written.number);
  const less = site.key === 'time' ? Math.max(0.5, Math.floor(number / 2)) : number - 20;
  return less > 0 && less !== number ? [replaced(site, `${less}${written.rest}`)] : [];
}

function hotterPhase(site: Site): readonly Mistake[] {
  if (site.of.kind !== 'washer' || !isBelow(site, 'phases') || site.key !== 'temp') return [];
  const written = writtenNumber(site);
  return written === undefined ? [] : [replaced(site, `${Number(written.number) + 30}${written.rest}`)];
}

function phaseDropped(site: Site): readonly Mistake[] {
  return site.of.kind === 'washer' && site.key === 'phases' && site.holder.node === 'list' ? removed(site) : [];
}

function shorterSterilizerCycle(site: Site): readonly Mistake[] {
  if (site.of.kind !== 'sterilizer' || !isBelow(site, 'cycles') || !['dry', 'exposure'].includes(site.key)) return [];
  const written = writtenNumber(site);
  return written === undefined
    ? []
    : [replaced(site, `${Math.max(1, Math.floor(Number(written.number) / 2))}${written.rest}`)];
}

function qualificationDropped(site: Site): readonly Mistake[] {
  const testing = ['qualified', 'last_cleaning_test', 'last_test', 'air_removal_test'];
  const machine = ['sterilizer', 'washer', 'ultrasonic'].includes(site.of.kind);
  return machine && testing.includes(site.key) && site.holder.node === 'map' ? removed(site) : [];
}

function stepDropped(site: Site): readonly Mistake[] {
  return site.of.kind === 'procedure' && site.key === 'steps' && site.holder.node === 'list' ? removed(site) : [];
}

function stepsSwapped(site: Site): readonly Mistake[] {
  if (site.of.kind !== 'procedure' || site.key !== 'steps' || site.holder.node !== 'list') return [];
  const next = (site.holder as ListTree).items[site.index + 1];
  return textAt(site.value, 'stage') === textAt(next, 'stage') ? [] : swappedWithNext(site);
}

function stepDetailDropped(site: Site): readonly Mistake[] {
  if (site.of.kind !== 'procedure' || site.above?.key !== 'steps' || entryOf(site) === undefined) return [];
  return ['stage', 'do', 'note'].includes(site.key) ? [] : removed(site);
}

function stepChemistry(site: Site, department: Department): readonly Mistake[] {
  if (site.of.kind !== 'procedure' || site.key !== 'chemistry' || site.value.node !== 'scalar') return [];
  const own = site.value.text;
  return department
    .ids('chemistry')
    .filter((id) => id !== own)
    .map((id) => replaced(site, id));
}

function stepNumberLess(site: Site): readonly Mistake[] {
  if (site.of.kind !== 'procedure' || !isBelow(site, 'steps')) return [];
  const lower = ['volume', 'times', 'time', 'strokes', 'magnification'];
  const written = lower.includes(site.key) ? writtenNumber(site) : undefined;
  if (written === undefined || isCarrying(site)) return [];
  return [replaced(site, `${Math.max(1, Math.floor(Number(written.number) / 4))}${written.rest}`)];
}

/** A shorter way is no mistake. */
function isCarrying(site: Site): boolean {
  return textAt(site.above?.value, 'stage') === 'transport';
}

function stepNumberMore(site: Site): readonly Mistake[] {
  if (site.of.kind !== 'procedure' || !isBelow(site, 'steps')) return [];
  const upper = ['temp', 'pressure', 'release_temp'];
  const written =
    upper.includes(site.key) || (isCarrying(site) && site.key === 'time') ? writtenNumber(site) : undefined;
  return written === undefined ? [] : [replaced(site, `${Number(written.number) * 3}${written.rest}`)];
}

function lessTraining(site: Site): readonly Mistake[] {
  if (site.of.kind !== 'training') return [];
  return site.key === 'readers' && site.holder.node === 'map' ? [rewritten(site, '[]')] : [];
}

function trainingNotHad(site: Site): readonly Mistake[] {
  return site.of.kind === 'training' && site.key === 'done' ? [replaced(site, '0')] : [];
}

function sheetDrifted(site: Site): readonly Mistake[] {
  if (site.of.kind === 'quiz' && site.key === 'key' && site.value.node === 'scalar') {
    const other = valueAt(site.of.tree, 'distractors');
    return other?.node === 'list' && other.items[0]?.node === 'scalar' ? [replaced(site, other.items[0].text)] : [];
  }
  if (site.of.kind !== 'poster') return [];
  if (site.key === 'cautions' || site.key === 'exceptions' || site.key === 'by_packaging') return removed(site);
  return [];
}

function placeMixedUp(site: Site): readonly Mistake[] {
  if (!['packaging', 'procedure', 'poster'].includes(site.of.kind) || site.value.node !== 'scalar') return [];
  const words = /^(aim|cool_aim)$/.test(site.key)
    ? ['vents', 'fold-closure', 'porous-side']
    : /^indicator(_places)?$/.test(site.key)
      ? ['geometric-centre-per-level', 'two-opposed-corners-per-level', 'inside-visible']
      : [];
  const own = site.value.text;
  return words.includes(own) ? words.filter((word) => word !== own).map((word) => replaced(site, word)) : [];
}

function kind(id: string, what: string, mistakes: MistakeKind['mistakes']): MistakeKind {
  return { id, what, leaves: 'readable', mistakes };
}

export const departmentSlips: readonly MistakeKind[] = [
  kind('set-packaging-other', 'a set in another packaging', otherId('packaging', 'packaging')),
  kind('set-cycle-lesser', 'a set on a cycle that dries or holds less, or removes air otherwise', lesserCycle),
  kind('set-washer-cycle-other', 'a set on another cycle of its washer', otherWasherCycle),
  kind('set-indicator-less', 'one indicator too few', fewerIndicators),
  kind('set-indicator-other', 'another indicator inside the set', otherId('indicator', 'monitor')),
  kind('set-too-heavy', 'a set above its limit of mass', heavier),
  kind('set-member-other', 'another family in the place of a member', otherMember),
  kind('set-member-detail', 'how a member lies, or its test, left out', memberDetailDropped),
  kind('set-line-left-out', 'a line of a set left out that it needs', setLineDropped),
  kind('washer-detergent-other', 'another detergent in a washer cycle', otherDetergent),
  kind('water-lesser', 'water of a lower grade', lesserWater),
  kind('washer-phase-less', 'a phase of a washer shortened or cooled', shorterPhase),
  kind('washer-phase-hotter', 'a phase of a washer 30 degrees hotter', hotterPhase),
  kind('washer-phase-left-out', 'a phase of a washer left out', phaseDropped),
  kind('sterilizer-cycle-less', 'exposure or drying of a cycle cut by half', shorterSterilizerCycle),
  kind('machine-test-left-out', 'the date of a qualification or a test of a machine left out', qualificationDropped),
  kind('step-left-out', 'a step of a procedure left out', stepDropped),
  kind('steps-swapped', 'two steps of a procedure in the wrong order', stepsSwapped),
  kind('step-detail-left-out', 'a detail of a step left out', stepDetailDropped),
  kind('step-chemistry-other', 'another detergent in a step', stepChemistry),
  kind('step-number-less', 'a time, volume or count of a step cut to a quarter', stepNumberLess),
  kind('step-number-more', 'a temperature, pressure or carrying time of a step three times as high', stepNumberMore),
  kind('training-without-readers', 'a training for nobody', lessTraining),
  {
    ...kind('training-not-had', 'a training that nobody has had yet', trainingNotHad),
    unnoticeable: 'until the day on which it is due, nobody is late',
  },
  kind('sheet-drifted', 'a quiz with the wrong key, a poster with a part left out', sheetDrifted),
  kind(
    'place-mixed-up',
    'the place of an indicator or the aim of a cooling reading of another packaging',
    placeMixedUp,
  ),
];
