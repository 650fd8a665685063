import type { MistakeKind } from './mistake.ts';
import type { Outcome, Trial } from './trial.ts';
import { harmless, unseenWords, wordFor } from './unseen.ts';

/** Found mistakes and all mistakes. */
export interface Share {
  readonly found: number;
  readonly of: number;
}

export function shareOf(outcomes: readonly Outcome[]): Share {
  return { found: outcomes.filter(({ rules }) => rules.length > 0).length, of: outcomes.length };
}

/** The page server/docs/mutation-trial.md. */
export function page(trial: Trial, groups: ReadonlyMap<string, readonly MistakeKind[]>): string {
  const kinds = [...groups.values()].flat();
  const noticeable = trial.outcomes.filter(
    ({ kind }) => kinds.find(({ id }) => id === kind)?.unnoticeable === undefined,
  );
  return `# Mutation trial

Written by \`npm run mutations\` (seed ${trial.seed}). Single mistakes of a tired person are made one by one in the two corrected sample
departments; after each the whole library is checked, and the mistake taken back. A mistake counts as found when anything at all is said.
The kinds and places are chosen without regard to what any rule looks for.

- Mistakes made: ${trial.outcomes.length}, of ${kinds.length} kinds
- Found: ${words(shareOf(trial.outcomes))}
- Without the kinds that nothing in a library contradicts: ${words(shareOf(noticeable))}
${[...groups].map(([group, own]) => `  - ${group}: ${words(shareOf(outcomesOf(own, noticeable)))}`).join('\n')}
- Without those after which nothing is wrong (lawful, twice, undue, see below): ${words(shareOf(harmful(trial.outcomes)))}
- Findings on the untouched libraries: ${trial.untouched}

## By kind

| Kind | Mistake | Found | Of | Rules, with how often each spoke |
|---|---|---|---|---|
${kinds.map((kind) => kindRow(kind, trial.outcomes)).join('\n')}

## Passed unseen

Each was looked at, with the instruction beside it. The word behind it says why nothing was said:

${wordCounts(trial.outcomes)}

${missesOf(trial.outcomes, kinds)}

## Rules that spoke

${ruleCounts(trial.outcomes)
  .map(([rule, count]) => `- ${rule}: ${count}`)
  .join('\n')}
`;
}

function outcomesOf(kinds: readonly MistakeKind[], outcomes: readonly Outcome[]): readonly Outcome[] {
  return outcomes.filter(({ kind }) => kinds.some(({ id }) => id === kind));
}

/** What was found, and what passed and makes something wrong. */
export function harmful(outcomes: readonly Outcome[]): readonly Outcome[] {
  return outcomes.filter((outcome) => outcome.rules.length > 0 || !harmless.has(wordFor(outcome)));
}

function wordCounts(outcomes: readonly Outcome[]): string {
  const missed = outcomes.filter(({ rules }) => rules.length === 0).map(wordFor);
  const lines = [...unseenWords].map(
    ([word, meaning]) => `- *${word}* (${missed.filter((one) => one === word).length}): ${meaning}`,
  );
  return lines.join('\n');
}

function words({ found, of }: Share): string {
  return `${found} of ${of} (${((100 * found) / Math.max(1, of)).toFixed(1)} %)`;
}

function kindRow(kind: MistakeKind, outcomes: readonly Outcome[]): string {
  const own = outcomes.filter((outcome) => outcome.kind === kind.id);
  const { found, of } = shareOf(own);
  const rules = ruleCounts(own).slice(0, 5);
  return `| ${kind.id} | ${kind.what} | ${found} | ${of} | ${rules.map(([rule, count]) => `${rule} ${count}`).join(', ')} |`;
}

function ruleCounts(outcomes: readonly Outcome[]): readonly (readonly [string, number])[] {
  const counts = new Map<string, number>();
  for (const { rules } of outcomes) for (const rule of rules) counts.set(rule, (counts.get(rule) ?? 0) + 1);
  return [...counts].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1));
}

function missesOf(outcomes: readonly Outcome[], kinds: readonly MistakeKind[]): string {
  const parts: string[] = [];
  for (const kind of kinds) {
    const missed = outcomes.filter((outcome) => outcome.kind === kind.id && outcome.rules.length === 0);
    if (missed.length === 0) continue;
    const why = kind.unnoticeable === undefined ? '' : ` Can't be noticed: ${kind.unnoticeable}.`;
    const lines = missed.map((outcome) => {
      const { library, file, path, was, becomes } = outcome;
      return `- ${library}/${file}, ${path}: \`${was}\` → \`${becomes}\` (*${wordFor(outcome)}*)`;
    });
    parts.push(`**${kind.id}**: ${kind.what}.${why}\n\n${lines.join('\n')}`);
  }
  return parts.length === 0 ? 'None.' : parts.join('\n\n');
}
