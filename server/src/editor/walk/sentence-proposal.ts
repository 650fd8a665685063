import type { Edit } from '../../base/problem.ts';
import type { FileRecord } from '../../library/file-record.ts';
import { plainName } from '../../model/plain-words.ts';
import type { Told } from '../../panel/sentences.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { fileForm } from '../../syntax/edits.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import type { Sentence } from '../reading/open-sentences.ts';
import { asOtherWay } from '../reading/quote-other-way.ts';
import type { FieldsFromQuote } from '../reading/quote-to-fields.ts';
import { told as toldFields } from '../reading/told-fields.ts';
import type { Question, WalkChoice } from '../words/walk-choice.ts';
import { asking, caution, ends, leaveOpen } from '../words/walk-choice.ts';
import { asValue } from '../writing/bare.ts';
import { wordIn } from '../writing/marked.ts';
import { andMore } from './field-questions.ts';
import { leftOut, leftOutWords } from './left-out.ts';
import { editsOf, holesOf } from './sentence-holes.ts';
import { leftUnclear, noted } from './sentence-notes.ts';

interface Proposed {
  readonly reading: QuoteReading;
  readonly told: Told;
  readonly found: FieldsFromQuote;
}

/**
 * The fields that the words of a sentence make, to be taken with one key. What they do not hold stands beneath them, with the choice that
 * takes them and goes on with the same sentence.
 */
export function proposal(record: FileRecord, tree: MapTree, sentence: Sentence, proposed: Proposed): Question {
  const { reading, told, found } = proposed;
  const first = {
    label: found.label ?? (record.kind === undefined ? '' : toldFields(record.kind, found.fields, told.words)),
    detail: isFurtherStage(found, tree) ? 'a further stage that is done as well as those before' : '',
    does: 'fields',
    edits: [...editsOf(found, told.words, fileForm(record.text).lineEnd), ...notedWhere(record, sentence, found)],
  } as const;
  const remains = remainsOf(found, reading);
  const more = {
    ...first,
    label: 'Take it, then a further field …',
    detail: remains === '' ? 'it says more than this' : remains,
    told: andMore('field'),
  };
  const others = holesOf(found).flatMap((hole) =>
    (hole.choices ?? []).filter((word) => word !== wordIn(hole, told.words)),
  );
  const some = [...new Set(others)].slice(0, 3).map(plainName);
  return {
    asks: caution,
    choices: [
      first,
      ...(remains === '' ? [leaveOpen(), more] : [more, leaveOpen()]),
      ...(some.length === 0 ? [] : [asking('Another word …', { ...told, next: 'bounds' }, some.join(', '))]),
      asking('Another field …', { ...told, next: 'field' }, 'instead of this'),
      ...otherWay(record, tree, found, told),
      asking('Nothing to encode here …', { ...told, next: 'reason' }, 'then the reason'),
      ...unclearChoice(record, tree, sentence, found),
      ...ends,
    ],
  };
}

/** Fields without a place for their sentence: the sentence itself says where it went. */
function notedWhere(record: FileRecord, sentence: Sentence, { fields }: FieldsFromQuote): readonly Edit[] {
  const src = asValue(sentence.id);
  const isCited = fields.some(({ path, value }) => path.endsWith('src') || citedIn(value).includes(src));
  const [first] = fields;
  return isCited || first === undefined
    ? []
    : (noted(record, sentence, `in words under ${first.path.replace('[]', '')}`) ?? []);
}

function citedIn(value: string): readonly string[] {
  return [...value.matchAll(/src: (?:\[([^\]]*)\]|([^,{}[\]]+))/g)].flatMap(([, list, one = '']) =>
    list === undefined ? [one] : list.split(', '),
  );
}

/** A new stage beside those that are there: the first choice does it as well, this one asks whether it is done instead of them. */
function otherWay(record: FileRecord, tree: MapTree, found: FieldsFromQuote, told: Told): readonly WalkChoice[] {
  return stagesInstead(record, tree, found) === undefined
    ? []
    : [asking('Another way of cleaning …', { ...told, next: 'instead' }, 'instead of the stages that are there')];
}

function stagesInstead(record: FileRecord, tree: MapTree, found: FieldsFromQuote): FieldsFromQuote | undefined {
  return record.kind === undefined ? undefined : asOtherWay({ record, kind: record.kind, tree }, found);
}

/** What is written changes which steps may be left out: it is told before it is done. */
export function insteadOfStages(
  record: FileRecord,
  tree: MapTree,
  found: FieldsFromQuote | undefined,
  told: Told,
): Question | undefined {
  const other = found === undefined ? undefined : stagesInstead(record, tree, found);
  if (other === undefined) return undefined;
  const { next: _answered, ...before } = told;
  return {
    asks: 'Another way of cleaning: whoever does this stage need not do those that are there. Does the page say so?',
    choices: [
      asking('No: it is done as well', before, 'back to what was proposed'),
      {
        label: 'Yes: one of the ways is enough',
        detail: 'the stages that are there become one way, this one the other',
        does: 'fields',
        edits: editsOf(other, told.words, fileForm(record.text).lineEnd),
      },
      ...ends,
    ],
  };
}

function unclearChoice(
  record: FileRecord,
  tree: MapTree,
  sentence: Sentence,
  { first }: FieldsFromQuote,
): readonly WalkChoice[] {
  const edits = leftUnclear(record, tree, sentence, first);
  return edits === undefined
    ? []
    : [{ label: 'The page leaves it unclear', detail: 'ask the maker', does: 'fields', edits }];
}

/** Numbers and words of the sentence that no proposed field holds, and what else to mind. */
function remainsOf(found: FieldsFromQuote, reading: QuoteReading): string {
  const { told, words } = leftOut(found, reading);
  return leftOutWords({ told: told.map((one) => `left: ${one}`), words }).join('; ');
}

function isFurtherStage({ insertions }: FieldsFromQuote, tree: MapTree): boolean {
  const cleaning = valueUnder(tree, 'cleaning');
  const stages = cleaning?.node === 'map' ? valueUnder(cleaning, 'all_of') : undefined;
  const isNew = insertions.some(({ pieces: [first] }) => typeof first === 'string' && first.includes('- stage: '));
  return stages?.node === 'list' && isNew;
}
