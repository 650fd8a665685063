import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Citation, Place } from '../../model/node.ts';
import { sayingOf } from '../../model/saying.ts';
import { fieldOf } from '../../model/walk.ts';
import type { StageWord } from '../../quantity/prose/meaning.ts';
import { readQuote } from '../../quantity/prose/read-quote.ts';
import { defineRule } from '../rule.ts';
import { modalityName, modalityWords } from '../support/modality-words.ts';
import type { Transcribed } from '../support/transcription.ts';
import { readStatement } from '../support/transcription.ts';
import type { QuotedStatement } from '../support/transcription-fault.ts';
import { isMentioned } from '../support/wording.ts';

type Read = Omit<QuotedStatement, 'cited'>;

const message = {
  other: (cited: string, subject: string, speaking: string) =>
    `${cited} says nothing of ${subject}, but ${speaking} does. Look at which passage this rests on.`,
};

export const rule = defineRule({
  id: 'citation-of-other-subject',
  stage: 'source',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A field that cites the sentence beside its own is checked against the wrong words at every revision.',
  source: 'logic',
  kinds: ['device', 'packaging'],
  check(entity, { report }) {
    const all = [...(entity.statements?.rows.keys() ?? [])].flatMap((id) => readStatement(entity, id) ?? []);
    for (const { src, at, subject, speaks } of subjectsOf(entity)) {
      const cited = src.statements.flatMap(({ text }) => readStatement(entity, text) ?? []);
      if (cited.length === 0 || cited.some(speaks) || cited.flatMap(headingOf).some(speaks)) continue;
      const speaking = all.find(speaks);
      if (speaking === undefined) continue;
      report({
        at,
        message: message.other(cited.map(({ id }) => id).join(' and '), subject, speaking.id),
        says: cited.map(({ statement }) => sayingOf(statement, statement.at)),
        related: [{ at: speaking.statement.at, note: `speaks of ${subject}` }],
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: scissors
statements:
  s5: {doc: DW-1, rev: D, page: 3, quote: "Pack and sterilize the parts disassembled."}
  s6: {doc: DW-1, rev: D, page: 4, quote: "Pre-clean manually, then clean in a washer-disinfector."}
cleaning:
  all_of:
    - {stage: manual, needed: before-machine, src: s5}
                                                   ^^ s5 says nothing of cleaning by hand, but s6 does. Look at which passage this rests on.
    - {stage: mechanical, src: s6}
`,
      `
kind: packaging
id: pouch
type: pouch
validated:
  - {modality: steam-prevac, context: terminal, src: s1}
  - {modality: steam-gravity, context: terminal, src: s2}
                                                      ^^ s2 says nothing of steam with air removal by gravity, but s1 does. Look at which passage this rests on.
statements:
  s1: {doc: PC-4, rev: "2", page: 1, quote: "For pre-vacuum steam and gravity steam."}
  s2: {doc: PC-4, rev: "2", page: 1, quote: "Contents of at most 0.5 kg."}
mass_max: 0.5 kg
mass_src: s2
`,
    ],
    good: [
      `
kind: device
id: scissors
statements:
  s6: {doc: DW-1, rev: D, page: 4, quote: "Pre-clean manually, then clean in a washer-disinfector."}
  s7: {doc: DW-1, rev: D, page: 5, quote: "Dry all parts; blow out the shaft with medical air."}
cleaning:
  all_of:
    - {stage: manual, needed: before-machine, src: s6}
    - {stage: mechanical, src: s6}
drying: {use: required, method: [air], src: s7}
`,
      `
kind: device
id: tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Brush the tube 3 times."}
  s2: {doc: ST-2, rev: A, page: 4, quote: "See the label."}
cleaning: {stage: manual, src: s1}
drying: {use: required, src: s2}
`,
      `
kind: device
id: hook
statements:
  s1: {doc: HK-2, rev: A, page: 3, quote: "Inspect it under a lamp."}
  s2: {doc: HK-2, rev: A, page: 4, quote: "Discard it if the tip is bent."}
  s3: {doc: HK-2, rev: A, page: 5, section: Automated washing, quote: "Connect the shaft to the nozzle."}
  s4: {doc: HK-2, rev: A, page: 5, quote: "Use the washer."}
inspection: {reject_if: [the tip is bent], src: s2}
mechanical: {connector: nozzle, src: s3}
`,
    ],
  },
});

/** What stands under a heading need not name its subject again. */
function headingOf(read: Read): readonly Read[] {
  const { section } = read.statement;
  return section === undefined
    ? []
    : [{ ...read, quote: section, reading: readQuote(section.text.toLowerCase(), read.reading.language) }];
}

/** Something whose sentence can be known by a word, and what it cites itself. */
interface Subject {
  readonly src: Citation;
  readonly at: Place;
  readonly subject: string;
  readonly speaks: (read: Read) => boolean;
}

function subjectsOf(entity: AnyEntity & Transcribed): readonly Subject[] {
  if (isOfKind(entity, 'packaging')) return (entity.validated?.items ?? []).flatMap(methodOf);
  if (!isOfKind(entity, 'device')) return [];
  const stages = entity.cleaning === undefined ? [] : stagesUnder(entity.cleaning);
  return [...stages, ...fieldsOf(entity)];
}

interface OfMethod {
  readonly modality?: { readonly text: string };
  readonly src?: Citation;
}

function methodOf({ modality, src }: OfMethod): readonly Subject[] {
  const words = modalityWords.get(modality?.text ?? '');
  if (modality === undefined || src === undefined || words === undefined) return [];
  const speaks = ({ quote }: Read): boolean => [...modalityWords.values()].some((one) => isMentioned(quote.text, one));
  return [{ src, at: src.at, subject: modalityName(modality.text), speaks }];
}

const stageSubjects: ReadonlyMap<string, { readonly subject: string; readonly words: readonly StageWord[] }> = new Map([
  [
    'manual',
    { subject: 'cleaning by hand', words: ['manual', 'brush', 'flush', 'wipe', 'soak', 'rinse', 'immersion'] },
  ],
  ['ultrasonic', { subject: 'ultrasonic cleaning', words: ['ultrasonic'] }],
  ['mechanical', { subject: 'machine washing', words: ['mechanical', 'disinfection'] }],
]);

function stagesUnder(node: CleaningNode): readonly Subject[] {
  const inner = [...(node.all_of?.items ?? []), ...(node.any_of?.items ?? [])].flatMap(stagesUnder);
  const { src, stage } = node;
  const row = stageSubjects.get(stage?.text ?? '');
  return src === undefined || row === undefined ? inner : [subjectOf(src, row), ...inner];
}

/** Looking and testing in other words, and what takes a device out of use. */
const ofInspection =
  /\b(?:check|look|examine|test|discard|reject|scrap|replace|worn|bent|crack|damage|corro|prüf|verschlei|beschädig|aussonder|examin|vérifi|endommag|remplac)/i;

interface SubjectWords {
  readonly subject: string;
  readonly words: readonly StageWord[];
  readonly also?: RegExp;
}

const fieldSubjects: ReadonlyMap<string, SubjectWords> = new Map<string, SubjectWords>([
  ['ultrasonic', { subject: 'ultrasonic cleaning', words: ['ultrasonic'] }],
  ['mechanical', { subject: 'machine washing', words: ['mechanical'] }],
  ['drying', { subject: 'drying', words: ['dry'] }],
  ['inspection', { subject: 'inspection', words: ['inspection'], also: ofInspection }],
]);

function fieldsOf(device: EntityOf['device']): readonly Subject[] {
  const subjects: Subject[] = [];
  for (const [key, row] of fieldSubjects) {
    const field = fieldOf(device, key);
    const src = field?.node === 'record' ? fieldOf(field, 'src') : undefined;
    if (src?.node === 'citation') subjects.push(subjectOf(src, row));
  }
  return subjects;
}

function subjectOf(src: Citation, { subject, words, also }: SubjectWords): Subject {
  return {
    src,
    at: src.at,
    subject,
    speaks: ({ reading, quote }) =>
      reading.stages.some(({ stage }) => words.includes(stage)) || also?.test(quote.text) === true,
  };
}
