import type { MakerLetter, SetRoute, StatusChange, WhatIf } from '../route/model.ts';
import type { Block } from './blocks.ts';
import { cautionBlocks } from './route-page.ts';
import { counted } from './words.ts';

/** One line a set, and how many of each kind. */
export function routesPage(routes: readonly SetRoute[]): readonly Block[] {
  const rows = routes.map(({ id, status, chosen, packagingChange }) => [
    id,
    status,
    chosen === undefined || status === 'none' ? '' : `${chosen.packaging} on ${chosen.cycle}`,
    packagingChange === undefined || status === 'none' ? '' : `instead of ${packagingChange.from}`,
  ]);
  return [
    { is: 'heading', level: 1, text: 'Routes of all sets' },
    { is: 'table', head: ['Set', 'Status', 'Route', 'Packaging'], rows },
    { is: 'text', text: `${statusCounts(routes)}.` },
    ...cautionBlocks(),
  ];
}

export function statusCounts(routes: readonly SetRoute[]): string {
  const count = (status: SetRoute['status']) => routes.filter((route) => route.status === status).length;
  return `${counted(routes.length, 'set')}: ${count('route')} with a route, ${count('provisional')} provisional, ${count('none')} without`;
}

export function questionsPage(letters: readonly MakerLetter[]): readonly Block[] {
  if (letters.length === 0) return [{ is: 'text', text: 'No set waits for an answer.' }, ...cautionBlocks()];
  const blocks: Block[] = [{ is: 'heading', level: 1, text: 'Questions that would free sets, one letter each' }];
  for (const { maker, questions, unlocks } of letters) {
    blocks.push({
      is: 'heading',
      level: 2,
      text: `${maker}: ${unlocks.length === 0 ? 'frees no set by itself' : `frees ${unlocks.join(', ')}`}`,
    });
    blocks.push({
      is: 'list',
      items: questions.map(({ words, says, openIn }) => `${words}${quoteOf(says)} Open in: ${openIn.join(', ')}.`),
    });
  }
  return [...blocks, ...cautionBlocks()];
}

function quoteOf(says: readonly { readonly quote: string }[]): string {
  const quote = says[0]?.quote ?? '';
  return quote === '' ? '' : ` The page says: “${quote}”`;
}

export function whatIfPage(change: readonly string[], result: WhatIf): readonly Block[] {
  const parts: readonly (readonly [string, readonly StatusChange[]])[] = [
    ['Sets gained', result.gained],
    ['Sets lost', result.lost],
    ['Devices gained, judged alone', result.devicesGained],
    ['Devices lost, judged alone', result.devicesLost],
    ['Otherwise different', result.changed],
  ];
  const blocks: Block[] = [
    { is: 'heading', level: 1, text: 'What if' },
    { is: 'list', items: change },
    { is: 'text', text: 'No file was touched.' },
  ];
  for (const [title, changes] of parts) {
    if (changes.length === 0) continue;
    blocks.push(
      { is: 'heading', level: 2, text: title },
      { is: 'list', items: changes.map(({ id, words }) => `${id}: ${words}.`) },
    );
  }
  if (parts.every(([, changes]) => changes.length === 0)) blocks.push({ is: 'text', text: 'Nothing would change.' });
  return [...blocks, ...cautionBlocks()];
}
