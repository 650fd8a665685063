import type { Threshold } from '../../model/entities/site.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Table } from '../../model/node.ts';
import { amount, type Printing } from '../amounts.ts';
import type { Part } from '../paper-part.ts';
import type { Line } from '../piece.ts';
import { joined, lineIf, said, saidAs } from '../piece.ts';

/** Every registered revision, those that no longer hold too. */
export function documentRegister({ view }: Printing): readonly Part[] {
  const rows = view.all('document').map((document): Line[] => {
    const { doc, rev, title, maker, status, issued, received, effective, review } = document;
    return [
      joined(
        [...lineIf(doc, (text): Line => [said(text)]), ...lineIf(rev, (text): Line => ['rev. ', said(text)])],
        ' ',
      ),
      title === undefined ? [] : [said(title)],
      maker === undefined ? [] : [said(maker)],
      [status === undefined ? 'current' : said(status)],
      joined(
        [
          ...lineIf(issued, (date): Line => ['issued ', said(date)]),
          ...lineIf(received, (date): Line => ['received ', said(date)]),
          ...lineIf(effective, (date): Line => ['from ', said(date)]),
        ],
        ', ',
      ),
      lineIf(review?.due, (date): Line => [said(date)]).flat(),
    ];
  });
  return [
    { is: 'heading', level: 2, line: ['Documents'] },
    { is: 'table', head: ['Document', 'Title', 'Maker', 'State', 'Dates', 'Review due'], rows },
  ];
}

export function responseRegister({ view }: Printing): readonly Part[] {
  const rows = view.all('response').map((response: EntityOf['response']): Line[] => {
    const { id, from, maker, about, date, permits, denies, status, expires } = response;
    return [
      lineIf(id, (text): Line => [said(text)]).flat(),
      joined([...lineIf(maker, (text): Line => [said(text)]), ...lineIf(from, (text): Line => [said(text)])], ', '),
      lineIf(about, (text): Line => [said(text)]).flat(),
      joined(
        [
          ...lineIf(permits, (text): Line => ['permits: ', said(text)]),
          ...lineIf(denies, (text): Line => ['denies: ', said(text)]),
        ],
        '; ',
      ),
      lineIf(status, (text): Line => [said(text)]).flat(),
      joined(
        [...lineIf(date, (day): Line => [said(day)]), ...lineIf(expires, (day): Line => ['runs out ', said(day)])],
        ', ',
      ),
    ];
  });
  return [
    { is: 'heading', level: 2, line: ['Answers of makers'] },
    rows.length === 0
      ? { is: 'text', line: ['None on file.'] }
      : { is: 'table', head: ['Answer', 'From', 'About', 'Says', 'State', 'Dates'], rows },
  ];
}

/** Numbers that the department has adopted, each with where it comes from; one without a source says so. */
export function thresholdParts(printing: Printing): readonly Part[] {
  return printing.view
    .all('site')
    .flatMap((site): readonly Part[] => [
      { is: 'heading', level: 2, line: [site.name === undefined ? 'Site' : said(site.name)] },
      ...tableOf('Limits', site.thresholds, printing),
      ...tableOf('Taken for plausible', site.plausible, printing),
      ...tableOf('How often', site.review_periods, printing),
    ]);
}

function tableOf(title: string, table: Table<Threshold> | undefined, printing: Printing): readonly Part[] {
  if (table === undefined) return [];
  const rows = [...table.rows.values()].map(({ key, value }): Line[] => [
    [saidAs(key, key.text.replaceAll('_', ' '))],
    numberOf(value, printing),
    joined(
      [
        ...lineIf(value.src, (src): Line => [said(src)]),
        ...lineIf(value.edition, (text): Line => ['edition ', said(text)]),
        ...lineIf(value.clause, (text): Line => [said(text)]),
      ],
      ', ',
    ),
  ]);
  return [
    { is: 'heading', level: 3, line: [title] },
    {
      is: 'table',
      head: ['What', 'Adopted', 'Source'],
      rows: rows.map((row) => ((row[2]?.length ?? 0) === 0 ? [row[0] ?? [], row[1] ?? [], ['NO SOURCE']] : row)),
    },
  ];
}

function numberOf({ at_least, at_most, between, exactly }: Threshold, printing: Printing): Line {
  const { bounds } = printing.words;
  const [low, high] = between?.items ?? [];
  return joined(
    [
      ...lineIf(at_least, (one) => bounds.atLeast(amount(one, printing))),
      ...lineIf(at_most, (one) => bounds.atMost(amount(one, printing))),
      ...(low === undefined || high === undefined
        ? []
        : [bounds.between(amount(low, printing), amount(high, printing))]),
      ...lineIf(exactly, (one) => bounds.exactly(amount(one, printing))),
    ],
    ', ',
  );
}
