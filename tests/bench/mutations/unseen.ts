import type { Outcome } from './trial.ts';

/*
 * Why a mistake passed unseen, looked at one by one, with the instruction and the rest of the library beside it. Data: one row for each that
 * was looked at. What has no row was not looked at yet, and counts as open.
 */

/** In one word; what each means stands in `unseenWords`. */
export type UnseenWord = 'lawful' | 'twice' | 'undue' | 'paper' | 'alone' | 'reading' | 'open';

export const unseenWords: ReadonlyMap<UnseenWord, string> = new Map([
  ['lawful', 'what stands there now meets every instruction and every policy of the department as well'],
  ['twice', 'the same is said a second time in the library, and that still holds'],
  ['undue', 'the day on which it matters has not come'],
  ['paper', 'only the document itself shows it'],
  ['alone', 'the department’s own record of a machine or a habit, of which nothing else in the library speaks'],
  ['reading', 'the sentence can be read either way'],
  ['open', 'a rule could see it, and none does yet'],
]);

/** Those after which nothing in the library is wrong, or not yet. */
export const harmless: ReadonlySet<UnseenWord> = new Set<UnseenWord>(['lawful', 'twice', 'undue']);

interface Row {
  readonly kind: string;
  /** Begins the file name and path of the mistake, such as `washers/W2.ifu.yaml, cycles[1]`; without one all of the kind are meant. */
  readonly at?: string;
  readonly word: UnseenWord;
}

function row(kind: string, word: UnseenWord, ...places: readonly string[]): readonly Row[] {
  return places.length === 0 ? [{ kind, word }] : places.map((at) => ({ kind, at, word }));
}

const rows: readonly Row[] = [
  ...row('page-wrong', 'paper'),
  ...row('training-not-had', 'undue'),
  ...row('prohibitions-left-out', 'twice', 'devices/oxbarrow-aluminium-case.ifu.yaml, not'),
  ...row('unit-wrong', 'lawful', 'devices/tarnwick-power-handpiece.ifu.yaml, sterilization.any_of[1].dry'),
  ...row(
    'limit-left-out',
    'twice',
    'packaging/FK-container.ifu.yaml, dry',
    'devices/quillmark-ringed-forceps.ifu.yaml, limits.ph',
    'devices/tarnwick-power-handpiece.ifu.yaml, limits.ph',
    'devices/nebelkant-capsule-forceps.ifu.yaml, cleaning.all_of[1].detergent.ph',
  ),
  ...row('relation-mixed-up', 'reading'),
  ...row('statement-neighbour', 'reading', 'devices/nebelkant-lens-injector.ifu.yaml, cleaning.all_of[0].src'),
  ...row('source-left-out', 'twice', 'devices/nebelkant-lid-weight.ifu.yaml, cleaning.any_of[0].src'),
  ...row('date-years-back', 'lawful', 'water/tap.ifu.yaml, last_result'),
  ...row('sign-off-left-out', 'twice', 'sign-offs/SO-FN-KS-D.ifu.yaml, training'),
  ...row('set-cycle-lesser', 'lawful', 'sets/ROBOT-F-FORCEPS.ifu.yaml, cycle'),
  ...row(
    'set-washer-cycle-other',
    'lawful',
    'sets/ORTHO-E-SUCTION.ifu.yaml, washer_cycle',
    'sets/ROBOT-F-FORCEPS.ifu.yaml, washer_cycle',
    'sets/MINOR-A.ifu.yaml, washer_cycle',
    'sets/EYE-D-FORCEPS.ifu.yaml, washer_cycle',
  ),
  ...row('set-washer-cycle-other', 'reading', 'sets/CATARACT-A.ifu.yaml, washer_cycle'),
  ...row('set-member-other', 'lawful', 'sets/TIPS-C.ifu.yaml, members[0]'),
  ...row(
    'set-member-detail',
    'twice',
    'sets/LAP-CHOLE-B.ifu.yaml, members',
    'sets/ORTHO-E-SUCTION.ifu.yaml, members[0]',
  ),
  ...row('set-line-left-out', 'lawful', 'sets/LID-H.ifu.yaml, product_test'),
  ...row('set-line-left-out', 'twice', 'sets/PHACO-B.ifu.yaml, washer_cycle'),
  ...row(
    'water-lesser',
    'lawful',
    'procedures/P06-lens-injector.ifu.yaml, steps[3].water',
    'procedures/PR31-pressure-probe.ifu.yaml, steps[1].water',
    'procedures/P03-capsule-forceps.ifu.yaml, steps[0].water',
  ),
  ...row('washer-phase-less', 'alone'),
  ...row('washer-phase-hotter', 'alone'),
  ...row('washer-phase-left-out', 'alone'),
  ...row('sterilizer-cycle-less', 'alone', 'sterilizers/ST1.ifu.yaml, cycles[2].dry'),
  ...row('step-left-out', 'alone', 'procedures/PR44-wet-packs.ifu.yaml, steps'),
  ...row('steps-swapped', 'lawful', 'procedures/P06-lens-injector.ifu.yaml, steps[6]'),
  ...row(
    'step-detail-left-out',
    'lawful',
    'procedures/PR29-wristed-grasper.ifu.yaml, steps[7].endpoint',
    'procedures/PR30-bone-clamp.ifu.yaml, steps[2].time',
    'procedures/P06-lens-injector.ifu.yaml, steps[6].magnification',
    'procedures/PR45-contracted-eo.ifu.yaml, steps[0].method',
  ),
  ...row('step-detail-left-out', 'twice', 'procedures/PR32-camera-head.ifu.yaml, steps[1].dose'),
  ...row('step-detail-left-out', 'alone', 'procedures/PR4-cool-down.ifu.yaml, steps[0].surface'),
  ...row('step-number-less', 'lawful', 'procedures/PR24-takeapart-scissors.ifu.yaml, steps[2].time'),
  ...row('step-number-more', 'lawful', 'procedures/P02-camera-end-of-case.ifu.yaml, steps[1].time'),
  ...row('sheet-drifted', 'alone'),
  ...row('indent-wrong', 'lawful', 'devices/oxbarrow-aluminium-case.ifu.yaml, sterilization.any_of'),
];

export function wordFor({ kind, file, path }: Outcome): UnseenWord {
  const place = `${file}, ${path}`;
  const found = rows.find((one) => one.kind === kind && (one.at === undefined || place.startsWith(one.at)));
  return found?.word ?? 'open';
}
