import { daysBetween } from '../../rules/support/days.ts';
import type { Printing } from '../amounts.ts';
import { questionLine } from '../answer/device-answer.ts';
import type { Part } from '../paper-part.ts';
import type { Line, Piece } from '../piece.ts';
import { told } from '../piece.ts';
import type { BinderContent, BinderFinding } from './content.ts';

/** What is current, overdue, missing and open, in numbers; and what is kept back. */
export function statusParts(
  { findings, coverage, heldBack, origin }: BinderContent,
  printing: Printing,
): readonly Part[] {
  const count = (severity: string): Piece =>
    told('tally', String(findings.filter((one) => one.severity === severity).length));
  const kept = [...heldBack.values()].reduce((sum, one) => sum + one, 0);
  const rows: Line[][] = [
    [['device families in sets, encoded'], [told('tally', `${coverage.encoded} of ${coverage.named}`)]],
    [['errors open'], [count('error')]],
    [['warnings open'], [count('warning')]],
    [['advice open'], [count('advice')]],
    [['findings kept back by settings or waivers'], [told('tally', String(kept))]],
    ...reviewRows(printing, origin.day),
  ];
  const questions = printing.view
    .all('question')
    .filter(({ closed, answered_by }) => closed === undefined && answered_by === undefined);
  return [
    { is: 'table', head: ['What', 'How many'], rows },
    ...(coverage.missing.length === 0
      ? []
      : [
          {
            is: 'text',
            line: ['Families without a device file: ', told('tally', coverage.missing.join(', ')), '.'],
          } as const,
        ]),
    { is: 'heading', level: 2, line: ['Questions that wait for an answer'] },
    questions.length === 0
      ? { is: 'text', line: ['None.'] }
      : { is: 'list', items: questions.map((question) => questionLine(question, origin.day)) },
    ...(kept === 0
      ? []
      : [
          {
            is: 'list',
            items: [...heldBack].map(
              ([rule, many]): Line => ['kept back: ', told('check', rule), ', ', told('tally', String(many))],
            ),
          } as const,
        ]),
  ];
}

/** Files whose review is due, by kind. */
function reviewRows({ view }: Printing, day: string): readonly Line[][] {
  return (['document', 'device', 'packaging', 'procedure', 'chemistry'] as const).map((kind): Line[] => {
    const all = view.all(kind);
    const overdue = all.filter(({ review }) => review?.due !== undefined && daysBetween(review.due.text, day) > 0);
    const without = all.filter(({ review }) => review?.due === undefined).length;
    return [
      [`${kind} files, reviews`],
      [
        told('tally', `${all.length - overdue.length - without} current`),
        ', ',
        told('tally', `${overdue.length} overdue`),
        ', ',
        told('tally', `${without} without a day`),
      ],
    ];
  });
}

/** All of them, errors first, then in the order of files. */
export function findingParts(findings: readonly BinderFinding[]): readonly Part[] {
  if (findings.length === 0)
    return [
      {
        is: 'text',
        line: ['No finding is open. That means as much as the coverage in section ', told('print', '1'), '.'],
      },
    ];
  const order = ['error', 'warning', 'advice'];
  const sorted = findings.toSorted((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));
  const rows = sorted.map(({ severity, message, rule, place, settledBy }): Line[] => [
    [severity],
    [told('check', message), ' [', told('check', rule), '] ', told('check', place)],
    [settledBy],
  ]);
  return [{ is: 'table', head: ['Weight', 'Finding, its name and place', 'Settled by'], rows, narrow: [0] }];
}
