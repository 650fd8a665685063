import type { IsoDate } from '../base/brand.ts';
import type { LibraryView } from '../library/view.ts';
import type { AnyEntity } from '../model/entity.ts';
import { rootOfEntity } from '../model/entity.ts';
import type { AnyRule } from '../rules/rule.ts';
import type { Kind } from '../schema/kinds.ts';
import type { Finding } from './finding.ts';
import { findingOf, findingOfProblem } from './finding.ts';

/** All that these rules find in one entity. A rule that fails becomes one finding that names it; the others still run. */
export function runRules(
  rules: readonly AnyRule[],
  entity: AnyEntity,
  view: LibraryView,
  today: IsoDate,
): readonly Finding[] {
  const findings: Finding[] = [];
  for (const rule of rulesFor(rootOfEntity(entity).kind, rules)) {
    try {
      rule.check(entity, { today, view, report: (report) => findings.push(findingOf(rule, report)) });
    } catch (thrown) {
      findings.push(internalFinding(rule, entity, thrown));
    }
  }
  return findings;
}

const byKind = new WeakMap<readonly AnyRule[], Map<Kind, readonly AnyRule[]>>();

/** Those of the rules that take entities of the kind, in the same order; worked out once a list. */
function rulesFor(kind: Kind, rules: readonly AnyRule[]): readonly AnyRule[] {
  const kinds = byKind.get(rules) ?? new Map<Kind, readonly AnyRule[]>();
  byKind.set(rules, kinds);
  const taking = kinds.get(kind) ?? rules.filter((rule) => rule.kinds.includes(kind));
  kinds.set(kind, taking);
  return taking;
}

/** A fault of ours, not of the writer: named, so that it can be reported. */
function internalFinding(rule: AnyRule, entity: AnyEntity, thrown: unknown): Finding {
  const { file, kind, id } = rootOfEntity(entity);
  const why = thrown instanceof Error ? thrown.message : String(thrown);
  const problem = {
    rule: 'internal',
    message: `The rule "${rule.id}" failed on this file and could not judge it (${why}). This is a fault of Traywright, not of the file.`,
    span: { start: 0, end: Math.min(entity.at.span.end, 1) },
    severity: 'error',
  } as const;
  return { ...findingOfProblem(problem, file, `${kind}/${id}`), path: rule.id };
}
