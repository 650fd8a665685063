import { fileId } from '../../../server/src/base/brand.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import type { AnyEntity } from '../../../server/src/model/entity.ts';
import type { Node } from '../../../server/src/model/node.ts';
import { pathOf } from '../../../server/src/model/node.ts';
import { childrenOf } from '../../../server/src/model/walk.ts';

/** One scalar of a rule file and what it could say instead. */
export interface LeafEdit {
  readonly path: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly sort: 'amount' | 'flag' | 'date' | 'quote-words' | 'quote-number';
}

export function readEntity(text: string): AnyEntity {
  const { entity } = readRuleFile(fileId('one.ifu.yaml'), text);
  if (entity === undefined) throw new Error('not a rule file');
  return entity;
}

/** Every edit of one amount, flag, date or quote of the file that leaves it readable. */
export function leafEdits(text: string): readonly LeafEdit[] {
  const edits: LeafEdit[] = [];
  collect(readEntity(text), text, edits);
  return edits;
}

function collect(node: Node, text: string, edits: LeafEdit[]): void {
  for (const child of childrenOf(node)) collect(child, text, edits);
  const { start, end } = node.at.span;
  const written = text.slice(start, end);
  const push = (sort: LeafEdit['sort'], other: string | undefined) => {
    if (other !== undefined && other !== written) edits.push({ path: pathOf(node.at), start, end, text: other, sort });
  };
  switch (node.node) {
    case 'quantity':
      push('amount', bumped(written));
      return;
    case 'flag':
      push('flag', node.on ? 'false' : 'true');
      return;
    case 'date':
      push(
        'date',
        /^\d{4}-\d{2}-\d{2}$/.test(written) ? `${Number(written.slice(0, 4)) + 1}${written.slice(4)}` : undefined,
      );
      return;
    case 'text':
      if (node.at.key !== 'quote' || !written.endsWith('."')) return;
      push('quote-words', `${written.slice(0, -2)}, as usual."`);
      push('quote-number', bumped(written));
      return;
    default:
  }
}

/** The first whole number made larger by one. */
function bumped(written: string): string | undefined {
  const digits = /\d+/.exec(written);
  if (digits === null) return undefined;
  return `${written.slice(0, digits.index)}${Number(digits[0]) + 1}${written.slice(digits.index + digits[0].length)}`;
}

export function edited(text: string, edits: readonly LeafEdit[]): string {
  let out = text;
  for (const { start, end, text: now } of [...edits].sort((a, b) => b.start - a.start))
    out = out.slice(0, start) + now + out.slice(end);
  return out;
}

/** The same file with its top-level fields in another order and comments between them. `kind` and `id` stay in front. */
export function reordered(text: string, order: readonly number[]): string {
  const blocks = text.split(/^(?=[a-z_]+:)/m).filter((block) => !block.startsWith('#'));
  const [first = '', second = '', ...rest] = blocks;
  const shuffled = rest
    .map((block, at) => ({ block, rank: order[at % order.length] ?? 0, at }))
    .sort((a, b) => a.rank - b.rank || a.at - b.at)
    .map(({ block }) => `# a remark\n\n${block.trimEnd()}\n`);
  return [first, second, ...shuffled].join('');
}

/** Minutes in flow values written as seconds. Quotes and texts keep their words. */
export function inSeconds(text: string): string {
  return text.replace(
    /((?:at_least|at_most|stated|exactly|about|time|exposure|dry): )(\d+) min(?=[,}\n])/g,
    (_, key: string, number: string) => `${key}${Number(number) * 60} s`,
  );
}
