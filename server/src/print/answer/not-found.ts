import { nearest } from '../../base/nearest.ts';
import type { LibraryView } from '../../library/view.ts';
import { coversNumber } from '../../quantity/covers.ts';
import type { Paper } from '../paper.ts';
import type { Part } from '../paper-part.ts';
import { said, told } from '../piece.ts';
import { cautionParts } from './cautions.ts';
import { faultWords, type Looked } from './look-up.ts';

/** Nothing is known of what was asked for: what is missing, and what lies near. */
export function notFound(looked: Looked, view: LibraryView): Paper {
  const { asked, number, fault } = looked;
  const parts: Part[] = [{ is: 'verdict', line: ['No device file covers "', told('asked', asked), '".'], under: [] }];
  if (fault !== undefined)
    parts.push({ is: 'text', line: ["The scan can't be read: ", told('asked', faultWords(fault)), '.'] });
  else if (number !== asked.trim())
    parts.push({ is: 'text', line: ['Looked for the identifier ', told('asked', number), '.'] });
  const documents = view
    .all('document')
    .filter(({ covers, excludes }) =>
      coversNumber(covers?.items.map(({ text }) => text) ?? [], excludes?.items.map(({ text }) => text) ?? [], number),
    );
  for (const { doc, rev } of documents) {
    if (doc === undefined) continue;
    parts.push({
      is: 'text',
      line: [
        'The document ',
        said(doc),
        ...(rev === undefined ? [] : [' rev. ', said(rev)]),
        ' covers it, but nothing has been encoded from it.',
      ],
    });
  }
  const near = nearest(number, knownNumbers(view));
  if (near !== undefined) parts.push({ is: 'text', line: [`Did you mean "${near}"?`] });
  parts.push({
    is: 'text',
    line: [
      'Without an instruction nothing can be said: do not process it on a guess. Ask the maker for the document, then have it encoded.',
    ],
  });
  return {
    title: `No answer for ${asked}`,
    language: 'en',
    facts: { 'page-kind': 'answer' },
    parts: [...parts, ...cautionParts(view)],
  };
}

function knownNumbers(view: LibraryView): readonly string[] {
  return view
    .all('device')
    .flatMap(({ id, covers }) => [id?.text ?? '', ...(covers?.items.map(({ text }) => text) ?? [])]);
}
