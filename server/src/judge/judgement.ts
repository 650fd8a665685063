import type { EntityOf } from '../model/entities.generated.ts';
import type { AnyEntity } from '../model/entity.ts';
import type { Citation, Place, Quantity, Requirement, Table } from '../model/node.ts';
import { pathOf, rootOf } from '../model/node.ts';
import { type Saying, sayingOf } from '../model/saying.ts';
import { rowOf } from '../model/walk.ts';
import { requirementWords } from './bounds.ts';
import { categoryRows } from './categories.ts';
import type { Cell } from './direction-row.ts';
import type { Given } from './given.ts';
import type { Judgement, Parameter } from './outcome.ts';
import { isAnswered, settlingSide } from './responses.ts';
import { holds, policiesOf, type Setting } from './setting.ts';
import { judgeValue, rowFor } from './value.ts';

/** Who demands something: a device, a packaging, a chemical, a machine, or the site. */
export type Demander = AnyEntity;

/** One number that is demanded. */
export interface Demand {
  readonly by: Demander;
  readonly parameter: Parameter;
  /** What is measured, where the title of the row is not plain enough: `Flush volume, shaft`. */
  readonly what?: string;
  readonly requirement: Requirement;
  /** Citation of the record around it, for a requirement that has none of its own. */
  readonly src?: Citation | undefined;
}

/** What it is compared with, and where that stands. */
export interface Fact {
  readonly given: Given | undefined;
  readonly at?: Place | undefined;
}

export function factOf(quantity: Quantity | undefined, given: Given | undefined): Fact {
  return quantity === undefined ? { given } : { given, at: quantity.at };
}

/** One number judged by the direction table. */
export function judgeDemand(demand: Demand, fact: Fact, setting: Setting): Judgement {
  const { by, parameter, requirement } = demand;
  const answer = judgeValue({
    parameter,
    requirement,
    given: fact.given,
    policies: policiesOf(setting),
    situations: situationsFor(requirement, setting),
    settled: settlingSide(setting, by, requirement),
    answered: needsAnswerOf(requirement) && isAnswered(setting, by, requirement),
  });
  const { given } = fact;
  return {
    outcome: answer.outcome,
    parameter,
    demandedBy: nameOfDemander(by),
    required: requirementWords(requirement),
    given: given?.words ?? '',
    givenRange: given && { low: given.low, high: given.high },
    reason: `${demand.what ?? rowFor(parameter).title}: ${answer.because}.`,
    settledBy: answer.settledBy,
    says: saysOf(by, requirement.specific?.src ?? requirement.src ?? demand.src),
    demandAt: requirement.at,
    gap: answer.gap,
    factAt: fact.at,
  };
}

function needsAnswerOf(requirement: Requirement): boolean {
  return requirement.conflict !== undefined || requirement.ambiguous !== undefined;
}

function situationsFor(requirement: Requirement, setting: Setting): ReadonlySet<string> {
  const { when } = requirement;
  return when !== undefined && holds(setting, when) ? new Set([when.text]) : setting.situations;
}

/** The parameters that are judged by case instead of by number. */
export type CategoryParameter = keyof typeof categoryRows;
export type CaseOf<P extends CategoryParameter> = keyof (typeof categoryRows)[P]['cases'] & string;

/** What is known about one case of a category. */
export interface CaseFacts {
  readonly by: Demander;
  readonly what?: string | undefined;
  readonly required: string;
  readonly given?: string | undefined;
  readonly gap?: string;
  readonly at: Place;
  readonly factAt?: Place | undefined;
  readonly src?: Citation | undefined;
}

/** Whether the table lets this case fail. */
export function isFailing<P extends CategoryParameter>(parameter: P, which: CaseOf<P>): boolean {
  return cellOf(parameter, which).outcome === 'fails';
}

function cellOf<P extends CategoryParameter>(parameter: P, which: CaseOf<P>): Cell {
  return (categoryRows[parameter].cases as Readonly<Record<string, Cell>>)[which] as Cell;
}

/** One case of a parameter that is no number, with the answer from the table. */
export function judgeCase<P extends CategoryParameter>(parameter: P, which: CaseOf<P>, facts: CaseFacts): Judgement {
  const row = categoryRows[parameter];
  const cell = cellOf(parameter, which);
  return {
    outcome: cell.outcome,
    parameter: row.parameter,
    demandedBy: nameOfDemander(facts.by),
    required: facts.required,
    given: facts.given ?? '',
    reason: `${facts.what ?? row.title}: ${cell.because}.`,
    settledBy: cell.settledBy,
    says: saysOf(facts.by, facts.src),
    demandAt: facts.at,
    gap: facts.gap,
    factAt: facts.factAt,
  };
}

const names = new WeakMap<Demander, string>();

/** `device/pale-forceps`. */
export function nameOfDemander(by: Demander): string {
  const known = names.get(by);
  if (known !== undefined) return known;
  const { kind, id } = rootOf(by.at);
  const name = `${kind}/${id}`;
  names.set(by, name);
  return name;
}

const said = new WeakMap<Citation, readonly Saying[]>();
const nothing: readonly Saying[] = [];

/** The quotes behind a citation, from the statements of whoever demands. */
export function saysOf(by: Demander, citation: Citation | undefined): readonly Saying[] {
  if (citation === undefined) return nothing;
  const known = said.get(citation);
  if (known !== undefined) return known;
  const statements = 'statements' in by ? (by.statements as Table<Statement> | undefined) : undefined;
  const sayings: Saying[] = [];
  for (const id of citation.statements) {
    const statement = rowOf(statements, id.text);
    if (statement !== undefined) sayings.push(sayingOf(statement, statement.at));
  }
  const { inline } = citation;
  if (inline !== undefined)
    sayings.push(sayingOf({ ...inline, ...(inline.text && { quote: inline.text }) }, citation.at));
  said.set(citation, sayings);
  return sayings;
}

type Statement =
  NonNullable<EntityOf['device']['statements']>['rows'] extends ReadonlyMap<string, { value: infer Value }>
    ? Value
    : never;

/** Path of a demand, for lists that name it. */
export function demandPath(judgement: Judgement): string {
  return pathOf(judgement.demandAt);
}
