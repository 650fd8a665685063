import type { Impact } from '../revision/impact.ts';
import type { ReviewedChange, RevisionReview } from '../revision/review.ts';
import type { Block } from './blocks.ts';
import {
  actionWords,
  type CompareHead,
  classWords,
  compareCautions,
  countWords,
  decisionOf,
  decisionWords,
  effectOf,
  placeWords,
  quoteWords,
  valueWords,
} from './compare-words.ts';

/** Everything about a comparison, worst first: dropped passages before all else. */
export function comparePage(review: RevisionReview, head: CompareHead): readonly Block[] {
  return [
    { is: 'heading', level: 1, text: `${head.old} compared with ${head.now}` },
    ...revisionBlocks(review),
    { is: 'text', text: `${sentence(countWords(review))} ${head.department}` },
    ...lostBlocks(review),
    ...togetherBlocks(review),
    ...review.changes.flatMap((change, at) => changeBlocks(review, change, at + 1)),
    ...signOffBlocks(review, head),
    ...noticeBlocks(review, head),
    ...compareCautions.map((text) => ({ is: 'faint', text }) as const),
  ];
}

function sentence(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

export function revisionBlocks({ revisions }: RevisionReview): readonly Block[] {
  return revisions.map(({ doc, from, to, title, issued, effective, reason }) => {
    const dates = [issued && `issued ${issued}`, effective && `effective ${effective}`].filter((part) => part !== '');
    const why = reason === '' ? 'The maker gives no reason.' : `The maker’s reason: ${reason}`;
    return {
      is: 'text',
      text: `${doc} ${title}: revision ${from} to ${to}${dates.length === 0 ? '' : `, ${dates.join(', ')}`}. ${why}`,
    };
  });
}

export function lostBlocks({ lost, changes }: RevisionReview): readonly Block[] {
  if (lost.length === 0) return [];
  const items = lost.map(({ entity, saying, reportedBy }) => {
    const told = changes
      .filter(({ fingerprint }) => reportedBy.includes(fingerprint))
      .map((one) => `${classWords[one.class]}: ${one.path}`);
    return `“${saying.quote}” (${saying.doc} rev ${saying.rev}, p. ${saying.page}; ${entity}) ${told.length === 0 ? '' : `See ${told.join('; ')}.`}`;
  });
  return [
    { is: 'heading', level: 2, text: 'Passages that are gone from the new side' },
    { is: 'list', items },
  ];
}

export function togetherBlocks(review: RevisionReview): readonly Block[] {
  const items = togetherWords(review);
  if (items.length === 0) return [];
  return [
    { is: 'heading', level: 2, text: 'All changes together' },
    { is: 'list', items },
  ];
}

/** Sets that break or gain, and sets that hang on one machine before or after. */
export function togetherWords({ routes, machines }: RevisionReview): readonly string[] {
  const told = routes.filter(({ effect }) => effect === 'route-breaks' || effect === 'route-opens');
  return [
    ...told.map(
      ({ of, effect, words }) =>
        `${of.replace(/^set\//, '')}: ${effect === 'route-breaks' ? 'route breaks' : 'new route opens'}. ${words}`,
    ),
    ...machines.map(
      ({ of, before, after }) =>
        `${of.replace(/^set\//, '')}: ${machineWords(before)} before, ${machineWords(after)} after.`,
    ),
  ];
}

function machineWords(machines: readonly string[]): string {
  if (machines.length === 0) return 'no machine can do it';
  return machines.length === 1 ? `only ${machines[0]} can do it` : `${machines.join(' and ')} can do it`;
}

function changeBlocks(review: RevisionReview, change: ReviewedChange, number: number): readonly Block[] {
  const { before, after, here, because, impact } = change;
  const items = [
    valueWords(change),
    `Here: ${effectOf(change)}${here === undefined ? '' : `. ${here.words}`}`,
    ...(because === undefined ? [] : [`Why this class: ${because}`]),
    ...quoteWords(before).map((words) => `Old: ${words}`),
    ...quoteWords(after).map((words) => `New: ${words}`),
    ...(here?.governors ?? []).map(({ set, words }) => `Who governs in ${set.slice(4)}: ${words}`),
    ...(impact === undefined ? [] : impactWords(impact)),
    `To do: ${actionWords[change.action]}. Decision: ${decisionWords[decisionOf(review, change)]}. [${change.fingerprint}]`,
  ];
  return [
    { is: 'heading', level: 2, text: `${number}. ${classWords[change.class]}: ${placeWords(change)}` },
    { is: 'list', items },
  ];
}

const reached: readonly (readonly [keyof Impact, string])[] = [
  ['sets', 'Sets'],
  ['cards', 'Cards to print again'],
  ['procedures', 'Procedures'],
  ['posters', 'Posters'],
  ['questions', 'Open questions'],
  ['responses', 'Answers of makers'],
  ['quizzes', 'Quiz items'],
  ['training', 'Training'],
  ['roles', 'Roles to train'],
  ['waivers', 'Waivers'],
  ['equipment', 'Machines, chemistry and packaging in use'],
];

export function impactWords(impact: Impact): readonly string[] {
  const items: string[] = [];
  for (const [key, title] of reached) {
    const ids = impact[key];
    if (Array.isArray(ids) && ids.length > 0) items.push(`${title}: ${ids.join(', ')}`);
  }
  const packs = impact.stock.map(
    ({ set, packs: count, usesAMonth }) =>
      `${set} ${count === undefined ? 'number not on file' : count}${usesAMonth === undefined ? '' : ` (used ${usesAMonth} times a month)`}`,
  );
  if (packs.length > 0 && impact.shelfChoice === 'needed')
    items.push(
      `Packs on the shelf and in circulation: ${packs.join(', ')}. Choose: use as processed, reprocess, or quarantine.`,
    );
  return items;
}

const withOption = 'Option --write-sign-off writes the record to complete.';

function signOffBlocks({ signOffs }: RevisionReview, { recording = withOption }: CompareHead): readonly Block[] {
  const items = [
    ...signOffs.unused.map(
      ({ record, fingerprint, field }) =>
        `${record} decides on ${field || 'a change'} [${fingerprint}], which this comparison does not have.`,
    ),
    ...signOffs.lacking.map((words) => `Sign-off ${words}.`),
  ];
  const open = signOffs.undecided;
  const text =
    open === 0
      ? 'Every change that needs a decision has one.'
      : `${open} ${open === 1 ? 'change waits' : 'changes wait'} for a decision. ${recording}`;
  const needsAny = signOffs.decisions.some(({ state }) => state !== 'none-needed');
  if (!needsAny && items.length === 0) return [];
  const blocks: Block[] = [{ is: 'heading', level: 2, text: 'Decisions' }];
  if (needsAny) blocks.push({ is: 'text', text });
  if (items.length > 0) blocks.push({ is: 'list', items });
  return blocks;
}

/** Where nobody is named who has to learn of a change, "no role" must not be read as "nobody needs to". */
export function untaughtWords({ changes }: RevisionReview): readonly string[] {
  const untaught = changes.flatMap(({ entity, impact }) => (impact?.roles.length === 0 ? [entity] : []));
  return [...new Set(untaught)]
    .sort()
    .map((entity) => `No training record says which roles have to learn what changed in ${entity.replace('/', ' ')}.`);
}

export function noticeBlocks(review: RevisionReview, { notices }: CompareHead): readonly Block[] {
  const { recordKeeping } = review;
  const items = [...notices, ...untaughtWords(review)];
  if (recordKeeping > 0)
    items.push(
      `In ${recordKeeping} places only the record of reading differs (who looked, and when, or the revision it was taken from): no change of what is demanded.`,
    );
  return items.length === 0 ? [] : [{ is: 'list', items }];
}
