import type { IsoDate } from '../base/brand.ts';
import type { Severity } from '../base/problem.ts';
import type { LibraryView } from '../library/view.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { neverWaivable } from '../rules/support/never-waivable.ts';
import type { Excuse, Finding } from './finding.ts';
import { fingerprintOf } from './finding.ts';

export type Waiver = EntityOf['waiver'];

/** Faults of waivers themselves. They can't be waived: hiding must stay visible. */
export const waiverRules = [
  {
    id: 'waiver-unknown-rule',
    severity: 'error',
    why: 'A waiver for a finding that does not exist does nothing, while its writer believes it does.',
  },
  {
    id: 'waiver-refused',
    severity: 'error',
    why: 'A file that cannot be read as it was meant hides everything in it, and nobody can carry the risk of that.',
  },
  {
    id: 'waiver-unused',
    severity: 'warning',
    why: 'A waiver that nothing needs any more lies in wait for the day when the fault comes back unseen.',
  },
] as const satisfies readonly { id: string; severity: Severity; why: string }[];

const ownRules: ReadonlySet<string> = new Set(['internal', ...waiverRules.map(({ id }) => id)]);

/** True for what no waiver and no baseline may keep back: prohibitions, faults of hiding itself, and ours. */
export function isNeverHidden(rule: string): boolean {
  return neverWaivable.has(rule) || ownRules.has(rule) || rule.startsWith('setting-');
}

export interface WaivedFindings {
  readonly kept: readonly Finding[];
  /** Carried by somebody for a time. Counted in every summary. */
  readonly waived: readonly Finding[];
}

/**
 * Takes out what a waiver in force covers. `rules`: names of the rules, since how a file is written can't be waived. Only waivers of rules
 * that found something are looked up, so only their changes matter.
 */
export function withoutWaived(
  findings: readonly Finding[],
  view: LibraryView,
  rules: ReadonlySet<string>,
): WaivedFindings {
  const kept: Finding[] = [];
  const waived: Finding[] = [];
  for (const finding of findings) {
    const mayBe = rules.has(finding.rule) && !isNeverHidden(finding.rule);
    const waiver = mayBe ? waiverOf(finding, view) : undefined;
    if (waiver === undefined) kept.push(finding);
    else waived.push({ ...finding, excuse: excuseOf(waiver) });
  }
  return { kept, waived };
}

function waiverOf(finding: Finding, view: LibraryView): Waiver | undefined {
  const waivers = view.users('rule', finding.rule, 'waiver');
  return waivers.find((waiver) => isInForce(waiver, view.today) && covers(waiver, finding));
}

function excuseOf({ reason, owner, expires }: Waiver): Excuse {
  return {
    reason: reason?.text ?? '',
    ...(owner !== undefined && { owner: owner.text }),
    ...(expires !== undefined && { until: expires.text }),
  };
}

/** Has a reason, somebody who carries the risk, and an end that has not passed: it holds through its last day. */
export function isInForce({ reason, owner, expires }: Waiver, today: IsoDate): boolean {
  return isGiven(reason) && isGiven(owner) && expires !== undefined && expires.text.slice(0, 10) >= today;
}

function isGiven(text: { readonly text: string } | undefined): boolean {
  return text !== undefined && text.text.trim() !== '';
}

/** All that a waiver names must agree: finding, file, value. */
export function covers(waiver: Waiver, finding: NamedFinding): boolean {
  return isFor(waiver, finding) && isWithin(waiver, finding.entity);
}

type NamedFinding = Pick<Finding, 'rule' | 'entity' | 'path'>;

/** The same, whatever files the waiver names. */
export function isFor({ rule, fingerprint, field }: Waiver, finding: NamedFinding): boolean {
  if (rule === undefined && fingerprint === undefined) return false;
  if (rule !== undefined && rule.text !== finding.rule) return false;
  if (fingerprint !== undefined && fingerprint.text.trim() !== fingerprintOf(finding).trim()) return false;
  return isAt(field?.text, finding.path);
}

/** `all`, or no scope, means every file. Entities are `kind/id`; a scope names ids. */
function isWithin({ scope }: Waiver, entity: string): boolean {
  const names = scope?.items ?? [];
  const id = entity.slice(entity.indexOf('/') + 1);
  return names.length === 0 || names.some(({ text }) => text === everything || text === id || text === entity);
}

/** The value itself or something inside it. */
function isAt(field: string | undefined, path: string): boolean {
  if (field === undefined || field === path) return true;
  return path.startsWith(`${field}.`) || path.startsWith(`${field}[`);
}

/** The word for every file. */
export const everything = 'all';

/** The name of the rule that a waiver is for; a fingerprint begins with it. */
export function ruleOf({ rule, fingerprint }: Waiver): string | undefined {
  return rule?.text ?? fingerprint?.text.trim().split(' ')[0];
}
