import { nearest } from '../base/nearest.ts';
import type { Problem, Severity } from '../base/problem.ts';
import type { LibraryView } from '../library/view.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { rootOfEntity } from '../model/entity.ts';
import type { Place } from '../model/node.ts';
import { rowOf } from '../model/walk.ts';
import { neverWaivable } from '../rules/support/never-waivable.ts';
import type { Finding } from './finding.ts';

/** Faults of the settings themselves. Like `internal`, they can't be ignored: hiding must stay visible. */
export const settingRules = [
  {
    id: 'setting-unknown',
    severity: 'error',
    why: 'A setting for a finding that does not exist does nothing, while its writer believes it does.',
  },
  {
    id: 'setting-without-reason',
    severity: 'error',
    why: 'A finding that is ignored without a reason is forgotten, not settled.',
  },
  {
    id: 'setting-refused',
    severity: 'error',
    why: 'What a manufacturer forbids stays forbidden: no setting of a department can put it out of sight.',
  },
] as const satisfies readonly { id: string; severity: Severity; why: string }[];

const always: ReadonlySet<string> = new Set(['internal', ...settingRules.map(({ id }) => id)]);

export interface Settled {
  readonly kept: Finding[];
  /** Switched off by the library's settings. Counted in every summary. */
  readonly heldBack: readonly Finding[];
}

/** Applies the library's own rule settings: another severity, or ignored with a reason. */
export function settled(findings: readonly Finding[], view: LibraryView): Settled {
  const rules = settingsOf(view)?.rules;
  if (rules === undefined) return { kept: [...findings], heldBack: [] };
  const kept: Finding[] = [];
  const heldBack: Finding[] = [];
  for (const finding of findings) {
    const setting = always.has(finding.rule) ? undefined : rowOf(rules, finding.rule);
    const severity = setting?.severity?.text;
    if (severity === undefined) kept.push(finding);
    else if (severity !== 'ignored') kept.push({ ...finding, severity });
    else if (hasReason(setting) && !neverWaivable.has(finding.rule))
      heldBack.push({ ...finding, excuse: { reason: setting?.reason?.text ?? '' } });
    else kept.push(finding);
  }
  return { kept, heldBack };
}

/** The library file of the root: one in a folder further down has no say. */
function settingsOf(view: LibraryView): EntityOf['library'] | undefined {
  return view.all('library').find((library) => !rootOfEntity(library).file.includes('/'));
}

function hasReason(setting: { readonly reason?: { readonly text: string } } | undefined): boolean {
  return (setting?.reason?.text.trim() ?? '') !== '';
}

/** What is wrong with the settings of a library file. `known`: names of everything that can be found. */
export function settingProblems(library: EntityOf['library'], known: ReadonlySet<string>): readonly Problem[] {
  const problems: Problem[] = [];
  for (const [rule, { key, value }] of library.rules?.rows ?? []) {
    if (!known.has(rule)) problems.push(unknownRule(rule, key.at, nearest(rule, known)));
    else if (value.severity?.text === 'ignored' && neverWaivable.has(rule))
      problems.push(refused(rule, value.severity.at));
    else if (value.severity?.text === 'ignored' && !hasReason(value))
      problems.push(reasonMissing(rule, value.severity.at));
  }
  return problems;
}

function unknownRule(rule: string, at: Place, suggestion: string | undefined): Problem {
  const hint =
    suggestion === undefined ? 'The command "traywright rules" lists all names.' : `Did you mean "${suggestion}"?`;
  return {
    rule: 'setting-unknown',
    message: `There is no finding named "${rule.slice(0, 60)}", so this setting does nothing. ${hint}`,
    span: at.span,
    severity: 'error',
    ...(suggestion !== undefined && {
      fixes: [{ title: `Change to "${suggestion}"`, edits: [{ span: at.span, text: suggestion }] }],
    }),
  };
}

function refused(rule: string, at: Place): Problem {
  return {
    rule: 'setting-refused',
    message: `"${rule}" can't be ignored by anyone in the department, so it is shown all the same. It must be settled.`,
    span: at.span,
    severity: 'error',
  };
}

function reasonMissing(rule: string, at: Place): Problem {
  return {
    rule: 'setting-without-reason',
    message: `"${rule}" is ignored without a reason, so it is shown all the same. Add "reason:" and say why.`,
    span: at.span,
    severity: 'error',
  };
}
