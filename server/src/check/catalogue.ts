import type { Severity } from '../base/problem.ts';
import { fileRules } from '../library/loaded-file.ts';
import type { AnyRule, Examples, RuleAbout } from '../rules/rule.ts';
import { schemaProblemRules } from '../schema/problem-rules.ts';
import { syntaxRules } from '../syntax/problem-rules.ts';
import { settingRules } from './settings.ts';
import { waiverRules } from './waivers.ts';

/** Anything that a finding can be named after, with what there is to say about it. */
export interface CatalogueEntry extends RuleAbout {
  readonly examples: Examples;
  /** False for faults of reading, which come before every rule. */
  readonly isRule: boolean;
}

const noExamples: Examples = { bad: [], good: [] };

const ownFaults = [
  {
    id: 'internal',
    severity: 'error',
    why: 'A rule of Traywright failed on the file: our fault, not the file’s, and it must not pass unseen.',
  },
] as const;

const faultsOfReading = [
  ...fileRules,
  ...syntaxRules,
  ...schemaProblemRules,
  ...settingRules,
  ...waiverRules,
  ...ownFaults,
];

/** Every fault of reading, then every rule, each once. */
export function catalogueOf(rules: readonly AnyRule[]): readonly CatalogueEntry[] {
  const byId = new Map<string, CatalogueEntry>();
  for (const entry of [...faultsOfReading.map(readingEntry), ...rules.map(judgingEntry)])
    if (!byId.has(entry.id)) byId.set(entry.id, entry);
  return [...byId.values()];
}

/** The names of everything that can be found. */
export function knownIn(rules: readonly AnyRule[]): ReadonlySet<string> {
  return new Set([...faultsOfReading, ...rules].map(({ id }) => id));
}

/** The examples stay with the rule: most who ask for entries never look at them, and the command line would have to read them. */
function judgingEntry(rule: AnyRule): CatalogueEntry {
  const { id, stage, severity, settledBy, why, source, fix } = rule;
  return {
    id,
    stage,
    severity,
    settledBy,
    why,
    source,
    ...(fix !== undefined && { fix }),
    isRule: true,
    get examples() {
      return rule.examples;
    },
  };
}

function readingEntry(fault: { id: string; severity: Severity; why: string }): CatalogueEntry {
  const { id, severity, why } = fault;
  return {
    id,
    severity,
    why,
    stage: 'file',
    settledBy: 'educator',
    source: 'logic',
    examples: noExamples,
    isRule: false,
  };
}
