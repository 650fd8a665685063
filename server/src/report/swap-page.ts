import type { Substitution, SwapAnswer, SwapRow } from '../revision/substitution.ts';
import type { Block } from './blocks.ts';
import { compareCautions } from './compare-words.ts';

const answerWords: Readonly<Record<SwapAnswer | 'none', string>> = {
  ok: 'ok',
  ask: 'ask the maker',
  no: 'no',
  none: 'not used',
};

/** The matrix of one swap: worst first, with why. */
export function swapPage({ swap, sets, families, cards }: Substitution): readonly Block[] {
  const { kind, from, to } = swap;
  return [
    { is: 'heading', level: 1, text: `${kind} ${to} in place of ${from}` },
    {
      is: 'text',
      text: `Imagined only: ${from} is gone, and everything of the department that named it names ${to}. What makers name stays as their pages have it.`,
    },
    ...tableOf('Sets as they are used', sets),
    ...tableOf('Device families', families),
    { is: 'text', text: cards.length === 0 ? 'No card names it.' : `Cards to print again: ${cards.join(', ')}.` },
    ...compareCautions.slice(0, 2).map((text) => ({ is: 'faint', text }) as const),
  ];
}

const order: readonly SwapAnswer[] = ['no', 'ask', 'ok'];

function tableOf(title: string, rows: readonly SwapRow[]): readonly Block[] {
  if (rows.length === 0) return [];
  const sorted = rows.toSorted((a, b) => order.indexOf(a.after) - order.indexOf(b.after));
  const count = (answer: SwapAnswer) => rows.filter(({ after }) => after === answer).length;
  return [
    { is: 'heading', level: 2, text: `${title}: ${count('ok')} ok, ${count('ask')} to ask, ${count('no')} no` },
    {
      is: 'table',
      head: ['What', 'Where', 'Before', 'After', 'Why'],
      rows: sorted.map(({ of, where, before, after, words }) => [
        of.slice(of.indexOf('/') + 1),
        where,
        answerWords[before],
        answerWords[after],
        words,
      ]),
    },
  ];
}
