import type { Printing } from '../amounts.ts';
import { findingLine } from '../answer/device-answer.ts';
import { nameOf } from '../names.ts';
import type { Part } from '../paper-part.ts';
import type { Line } from '../piece.ts';
import { joined, lineIf, originOf, said } from '../piece.ts';
import type { BinderFinding } from './content.ts';

/** Each procedure with its review and everything that is found about it. */
export function procedureParts(findings: readonly BinderFinding[], { view }: Printing): readonly Part[] {
  return view.all('procedure').flatMap((procedure): readonly Part[] => {
    const own = findings.filter(({ entity }) => entity === `procedure/${procedure.id?.text ?? ''}`);
    const { review, owner } = procedure;
    const facts = joined(
      [
        ...lineIf(owner, (role): Line => ['owner ', said(role)]),
        ...lineIf(review?.on, (day): Line => ['reviewed ', said(day)]),
        ...lineIf(review?.due, (day): Line => ['due again ', said(day)]),
      ],
      ', ',
    );
    return [
      { is: 'heading', level: 2, line: [nameOf(procedure, '')] },
      { is: 'text', line: facts.length === 0 ? ['No owner and no review are written.'] : facts },
      own.length === 0 ? { is: 'text', line: ['No finding.'] } : { is: 'list', items: own.map(findingLine) },
    ];
  });
}

/** Reason, owner and end of each; one that has run out, or never ends, is called so. */
export function waiverParts({ view }: Printing, day: string): readonly Part[] {
  const rows = view.all('waiver').map((waiver): Line[] => {
    const { rule, scope, reason, owner, approved_by, on, expires } = waiver;
    const end: Line = expires === undefined ? ['NO END'] : [expires.text < day ? 'RUN OUT ' : '', said(expires)];
    return [
      lineIf(rule, (text): Line => [said(text)]).flat(),
      joined(
        (scope?.items ?? []).map((text): Line => [said(text)]),
        ', ',
      ),
      lineIf(reason, (text): Line => [said(text)]).flat(),
      joined(
        [
          ...lineIf(owner, (text): Line => [said(text)]),
          ...lineIf(approved_by, (text): Line => ['agreed by ', said(text)]),
          ...lineIf(on, (text): Line => [said(text)]),
        ],
        ', ',
      ),
      end,
    ];
  });
  return rows.length === 0
    ? [{ is: 'text', line: ['None.'] }]
    : [{ is: 'table', head: ['Finding', 'Where', 'Reason', 'Who', 'Until'], rows }];
}

export function signOffParts({ view }: Printing): readonly Part[] {
  const rows = view.all('sign-off').map((record): Line[] => {
    const { doc, from_rev, to_rev, changes, reviewer, second_reader, manager, on } = record;
    return [
      joined(
        [
          ...lineIf(doc, (text): Line => [said(text)]),
          ...lineIf(from_rev, (text): Line => [said(text)]),
          ...lineIf(to_rev, (text): Line => ['to ', said(text)]),
        ],
        ' ',
      ),
      changes === undefined
        ? []
        : [
            { text: String(changes.items.length), from: changes.items.map(({ at }) => originOf(at)), how: 'count' },
            ' changes decided',
          ],
      joined(
        [
          ...lineIf(reviewer, (text): Line => [said(text)]),
          ...lineIf(second_reader, (text): Line => [said(text)]),
          ...lineIf(manager, (text): Line => [said(text)]),
        ],
        ', ',
      ),
      lineIf(on, (day): Line => [said(day)]).flat(),
    ];
  });
  return rows.length === 0
    ? [{ is: 'text', line: ['None on file.'] }]
    : [{ is: 'table', head: ['Revision', 'Decided', 'Roles', 'Day'], rows }];
}

/** Counts by topic and role. Who was trained is kept elsewhere. */
export function trainingParts({ view }: Printing, day: string): readonly Part[] {
  const rows = view
    .all('training')
    .flatMap((training) =>
      (training.readers?.items ?? [{ role: undefined, due: undefined, done: undefined, of: undefined }]).map(
        ({ role, due, done, of }): readonly Line[] => [
          [nameOf({ ...(training.topic && { name: training.topic }), ...(training.id && { id: training.id }) }, '')],
          lineIf(role, (text): Line => [said(text)]).flat(),
          done === undefined || of === undefined ? ['not counted'] : [said(done), ' of ', said(of)],
          due === undefined ? [] : [due.text < day ? 'OVERDUE ' : '', said(due)],
        ],
      ),
    );
  return rows.length === 0
    ? [{ is: 'text', line: ['None on file.'] }]
    : [{ is: 'table', head: ['Topic', 'Role', 'Done', 'Due'], rows }];
}
