import type { IsoDate } from '../base/brand.ts';
import type { LibraryView } from '../library/view.ts';
import type { AnyEntity } from '../model/entity.ts';
import { rootOfEntity } from '../model/entity.ts';
import type { Place } from '../model/node.ts';
import type { AnyRule, Report, RuleContext } from '../rules/rule.ts';
import type { Finding } from './finding.ts';
import { findingOf, findingOfProblem } from './finding.ts';

/** All that these rules find in one entity. */
export function runRules(
  rules: readonly AnyRule[],
  entity: AnyEntity,
  view: LibraryView,
  today: IsoDate,
): readonly Finding[] {
  const { kind } = rootOfEntity(entity);
  const run = new RulesOnEntity(entity, view, today);
  for (const rule of rules) if (rule.kinds.includes(kind)) run.run(rule);
  return run.found.map(({ finding }) => finding);
}

/** What a rule found, and where; without a place where the rule itself failed. */
export interface Found {
  readonly finding: Finding;
  readonly at?: Place;
}

/** One entity under rules that take its kind, a rule at a time. A rule that fails becomes one finding that names it; the others still run. */
export class RulesOnEntity {
  readonly found: Found[] = [];
  readonly #entity: AnyEntity;
  readonly #context: RuleContext;
  #running: AnyRule | undefined;

  constructor(entity: AnyEntity, view: LibraryView, today: IsoDate) {
    this.#entity = entity;
    // One for all rules: an entity has more than a hundred.
    this.#context = { today, view, report: (report) => this.#take(report) };
  }

  run(rule: AnyRule): void {
    this.#running = rule;
    try {
      refuseLater(rule.check(this.#entity, this.#context));
    } catch (thrown) {
      this.found.push({ finding: internalFinding(rule, this.#entity, thrown) });
    }
  }

  #take(report: Report): void {
    if (this.#running !== undefined) this.found.push({ finding: findingOf(this.#running, report), at: report.at });
  }
}

/** A rule reports before it returns. What it reports later belongs to no file any more, and what it fails with would be told by nobody. */
function refuseLater(returned: unknown): void {
  if (!(returned instanceof Promise)) return;
  returned.catch(() => undefined);
  throw new Error('it did not answer at once');
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
