import type { Judgement } from '../../judge/outcome.ts';
import type { LibraryView, SterilizerCycle } from '../../library/view.ts';
import { asking, failing } from '../../route/ranks.ts';
import { fitOf } from '../../route/sterilizing.ts';
import { nameOf, nameOfWho, screenName } from '../names.ts';
import type { Line } from '../piece.ts';
import { judged, plain } from '../piece.ts';
import { citationOf } from '../sayings.ts';
import type { Ground, GroundSet } from './ground.ts';
import { askFirst, type Draft } from './question.ts';

const yes: Line = ['Yes: every page allows it, and the cycle is qualified.'];
const no: Line = ['No: a page, or the state of the cycle, does not allow it.'];

/** May this set, packed as it is, run on another of our cycles? All three answers are judged, so that two are wrong for certain. */
export function mayIDrafts(ground: Ground): readonly Draft[] {
  return ground.sets.flatMap((one) => draftsOf(one, ground));
}

function draftsOf({ set, derivation, fit }: GroundSet, ground: Ground): readonly Draft[] {
  const { subject, sterilizing, department } = derivation;
  const drafts: Draft[] = [];
  for (const cell of sterilizing.table.asFiled) {
    const means = department.sterilizing[cell.cycle];
    const isOther = means !== undefined && means.id !== fit.cycle;
    if (!isOther || means.cycle.context?.text === 'iuss') continue;
    const judged = fitOf(subject, sterilizing, cell, department);
    if (judged === undefined) continue;
    const judgements = [...judged.common, ...judged.members.flatMap((member) => member.judgements)];
    const rank = cell.rank;
    const right = rank === failing ? no : rank === asking ? askFirst : yes;
    const decisive = judgements.filter(({ outcome }) => outcome === (rank === failing ? 'fails' : 'needs-answer'));
    const [first] = decisive;
    if (rank >= asking && first === undefined) continue;
    drafts.push({
      key: `may-i set/${set.id?.text} ${means.id}`,
      template: 'may-i',
      stage: 'sterilizing',
      text: [
        'May ',
        nameOf(set, set.id?.text ?? ''),
        ', packed as it is, run in cycle ',
        screenName(means.cycle, means.id),
        ' of ',
        nameOf(means.machine, ''),
        '?',
      ],
      right,
      wrong: [yes, no, askFirst].filter((line) => plain(line) !== plain(right)),
      asking: 'not-offered',
      why:
        first === undefined
          ? ['Each of its pages, and the packaging, allows what this cycle gives.']
          : reasonOf(first, means.cycle, ground.printing.view),
      citation: first?.says[0] === undefined ? [] : citationOf(first.says[0]),
      difficulty: Math.min(4, 1 + derivation.route.members.length),
    });
  }
  return drafts;
}

function reasonOf(
  { reason, required, given, demandedBy, demandAt, factAt }: Judgement,
  cycle: SterilizerCycle,
  view: LibraryView,
): Line {
  const gives = given === '' ? 'nothing of the kind' : given;
  return [
    nameOfWho(demandedBy, view),
    judged(` asks for ${required}; the cycle gives ${gives}. ${reason}`, [
      demandAt,
      factAt,
      cycle.temp?.at,
      cycle.band?.at,
    ]),
  ];
}
