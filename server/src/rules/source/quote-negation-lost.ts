import type { Fix } from '../../base/problem.ts';
import { sayingOf } from '../../model/saying.ts';
import { fieldOf } from '../../model/walk.ts';
import { longestQuote } from '../../quantity/prose/prose.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { placeInQuote } from '../support/quote-place.ts';
import { fieldName, negatedWords, quoteReport } from '../support/quote-report.ts';
import type { Transcribed } from '../support/transcription.ts';
import { faultsNamed, readStatement, transcribedKinds } from '../support/transcription.ts';
import type { TranscriptionFault } from '../support/transcription-fault.ts';

const message = {
  lost: (field: string, use: string, negation: string) =>
    `The page says "${negation}", but "${field}" is encoded as ${use}.`,
  copied: (words: string) =>
    `"${words}" reads as if a "not" was lost when the sentence was copied. Look at the page again.`,
};

export const rule = defineRule({
  id: 'quote-negation-lost',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'One dropped word turns the instruction round.',
  source: 'logic',
  fix: 'Changes the word to "forbidden".',
  kinds: transcribedKinds,
  check(entity, { report }) {
    reportCopies(entity, report);
    for (const fault of faultsNamed(entity, 'quote-negation-lost')) {
      const { field } = fault;
      if (field?.claim.claim !== 'use') continue;
      const isWord = field.at.key === 'use' || field.at.key === 'required';
      report({
        at: isWord && field.record.at.parent !== undefined ? field.record.at : field.at,
        span: field.at.span,
        message: message.lost(nameOf(fault), wordsFor(fault), negatedWords(fault)),
        ...quoteReport(fault),
        does: `${nameOf(fault)}: ${wordsFor(fault)}`,
        fixes: fixesFor(fault),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: crystal-knife
statements:
  s7: {doc: CK-2, rev: "5", page: 5, quote: "Let the knife dry in filtered air; do wipe."}
                                                                                ^^^^^^^ "do wipe" reads as if a "not" was lost when the sentence was copied. Look at the page again.
drying: {use: required, method: [air], src: s7}
`,
      `
kind: device
id: camera-head
statements:
  s1: {doc: CH-8, rev: G, page: 3, quote: "Do not clean ultrasonically."}
ultrasonic: {use: allowed, src: s1}
                  ^^^^^^^ The page says "Do not clean ultrasonically", but "ultrasonic" is encoded as allowed.
`,
      `
kind: device
id: camera-head
statements:
  s1: {doc: CH-8, rev: G, page: 3, quote: "Immersion is never permitted."}
  s2: {doc: CH-8, rev: G, page: 4, quote: "Sterilize in a pre-vacuum cycle, not in a gravity cycle, 4 minutes."}
immersion: {use: required, src: s1}
                 ^^^^^^^^ The page says "Immersion is never permitted", but "immersion" is encoded as required.
sterilization:
  any_of:
    - {id: gr, modality: steam-gravity, exposure: {stated: 4 min}, src: s2}
                         ^^^^^^^^^^^^^ The page says "not in a gravity cycle", but "steam-gravity" is encoded as allowed.
`,
      `
kind: device
id: camera-head
statements:
  s1: {doc: CH-8, rev: G, page: 3, quote: "Clean by hand. Automated cleaning is not suitable."}
cleaning:
  any_of:
    - {stage: manual, src: s1}
    - {stage: mechanical, src: s1}
              ^^^^^^^^^^ The page says "Automated cleaning is not suitable", but "mechanical" is encoded as allowed.
`,
    ],
    good: [
      `
kind: device
id: camera-head
statements:
  s1: {doc: CH-8, rev: G, page: 3, quote: "Do not clean ultrasonically for more than 10 minutes."}
  s2: {doc: CH-8, rev: G, page: 3, quote: "Keep moist with water; do not use saline."}
  s3: {doc: CH-8, rev: G, page: 3, quote: "Wipe off soil and do not let it dry on the housing."}
ultrasonic: {use: allowed, time: {at_most: 10 min}, src: s1}
point_of_use:
  keep_moist: {use: required, agents: [water], src: s2}
  wipe: {use: required, src: s3}
  avoid:
    - {what: saline, src: s2}
`,
      `
kind: device
id: pale-probe
statements:
  s1: {doc: PP-4, rev: A, page: 3, quote: "Immerse the probe except the connector."}
  s2: {doc: PP-4, rev: A, page: 3, quote: "Do not lubricate."}
immersion: {use: allowed, keep_dry: [connector], src: s1}
lubrication: {use: forbidden, src: s2}
`,
      `
kind: device
id: pale-clip
statements:
  s1: {doc: PC-2, rev: A, page: 3, quote: "Lubricate the joint with a water-soluble lubricant; do not use silicone oil."}
lubrication: {use: required, src: s1}
`,
      `
kind: device
id: pale-knife
statements:
  s1: {doc: PK-2, rev: A, page: 3, quote: "Let the knife dry in filtered air; do not wipe. To do so, lay it down."}
drying: {use: required, method: [air], src: s1}
`,
    ],
  },
});

/** Nobody writes `do wipe` where `wipe` says it: behind `do` stood a `not`. */
function reportCopies(entity: Transcribed, report: RuleContext['report']): void {
  for (const id of entity.statements?.rows.keys() ?? []) {
    const read = readStatement(entity, id);
    if (read === undefined || read.reading.language !== 'en') continue;
    for (const { index, 0: found, 1: action = '' } of read.quote.text.slice(0, longestQuote).matchAll(bareDo)) {
      if (!actions.has(action.toLowerCase())) continue;
      const words = `${found.slice(-3)}${action}`;
      const end = index + found.length + action.length;
      report({
        at: placeInQuote(read.quote, { start: end - words.length, end }),
        severity: 'warning',
        message: message.copied(words),
        says: [sayingOf(read.statement, read.statement.at)],
      });
    }
  }
}

/** At the beginning of a demand: `if you do use` is another thing. */
const bareDo = /(?:^|[.;:,(] ?|\b(?:and|but|or) )do (?=([a-z]+)\b)/gi;

const actions: ReadonlySet<string> = new Set([
  ...['wipe', 'soak', 'rinse', 'flush', 'brush', 'immerse', 'submerge', 'dry', 'clean', 'sonicate', 'disinfect', 'mix'],
  ...['lubricate', 'sterilise', 'sterilize', 'stack', 'wrap', 'use', 'reuse', 'exceed', 'touch', 'leave', 'allow'],
  ...['disassemble', 'store'],
]);

/** `ultrasonic`: the field that holds the word, or the stage or method itself. */
function nameOf({ field }: TranscriptionFault): string {
  if (field === undefined) return '';
  if (field.at.key !== 'use' && field.at.key !== 'required') return fieldOfWord(field.at.key, field.record);
  const stage = fieldOf(field.record, 'stage');
  return stage?.node === 'text' ? stage.text : fieldName(field.record.at);
}

function fieldOfWord(key: string | number, record: NonNullable<TranscriptionFault['field']>['record']): string {
  const word = fieldOf(record, String(key));
  return word?.node === 'text' ? word.text : String(key).replaceAll('_', ' ');
}

function wordsFor({ field }: TranscriptionFault): string {
  return field?.claim.claim === 'use' ? field.claim.use : '';
}

function fixesFor({ field }: TranscriptionFault): readonly Fix[] {
  if (field?.at.key !== 'use') return [];
  return [{ title: 'Change to "forbidden"', edits: [{ span: field.at.span, text: 'forbidden' }] }];
}
