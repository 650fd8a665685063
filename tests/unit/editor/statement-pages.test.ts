import { describe, expect, it } from 'vitest';
import { movedToPages } from '../../../server/src/editor/statement-pages.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { readTree } from '../../../server/src/syntax/read.ts';

const text = `kind: device
statements:
  s1: {doc: D, rev: A, page: 1, section: Care, quote: "Wipe it."}
  s2: {doc: D, rev: A, page: , section: Wash, quote: "Rinse it."}
  s3: {doc: D, rev: A, section: Wash, quote: "Dry it."}
  s4: {doc: D, rev: A, page: 3, section: Store, quote: "Store it."}
  s5:
    doc: D
    page: 3
    quote: "Read it."
`;

/** What is offered from the first of these words to the last. */
function offered(from: string, to = from) {
  const { tree } = readTree(text);
  if (tree?.node !== 'map') throw new Error('no file');
  return movedToPages(text, tree, { start: text.indexOf(from), end: text.indexOf(to) });
}

function pagesAfter(from: string, to: string, title: string): readonly string[] {
  const edits = offered(from, to).find((one) => one.title === title)?.edits ?? [];
  const applied = applyEdits(text, edits);
  if (!('text' in applied)) throw new Error(applied.refused);
  const { tree, problems } = readTree(applied.text);
  expect(problems).toEqual([]);
  expect(tree?.node).toBe('map');
  return applied.text
    .split(/\n {2}s\d: ?/)
    .slice(1)
    .map((one) => /page: ?(\d*)/.exec(one)?.[1] ?? 'none');
}

describe('statements on another page', () => {
  it('of a selection go there together', () => {
    expect(offered('s1', 's3').map(({ title }) => title)).toEqual([
      'Move these 3 statements to page 1',
      'Move these 3 statements to page 3',
      'Move these 3 statements to page 4',
    ]);
    expect(pagesAfter('s1', 's4', 'Move these 4 statements to page 4')).toEqual(['4', '4', '4', '4', '3']);
    expect(pagesAfter('s4', 'Read', 'Move these 2 statements to page 1')).toEqual(['1', '', 'none', '1', '1']);
  });

  it('are those of the section around the cursor, where it has several', () => {
    expect(offered('Rinse').map(({ title }) => title)).toEqual([
      'Move the 2 statements of “Wash” to page 1',
      'Move the 2 statements of “Wash” to page 3',
      'Move the 2 statements of “Wash” to page 4',
    ]);
    expect(pagesAfter('Rinse', 'Rinse', 'Move the 2 statements of “Wash” to page 3')).toEqual([
      '1',
      '3',
      '3',
      '3',
      '3',
    ]);
  });

  it('are none elsewhere', () => {
    expect(offered('kind')).toEqual([]);
  });
});
