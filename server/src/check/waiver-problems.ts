import type { IsoDate } from '../base/brand.ts';
import { nearest } from '../base/nearest.ts';
import type { Problem } from '../base/problem.ts';
import type { LibraryView, Query } from '../library/view.ts';
import type { AnyEntity } from '../model/entity.ts';
import { rootOfEntity } from '../model/entity.ts';
import type { Place, Text } from '../model/node.ts';
import type { AnyRule } from '../rules/rule.ts';
import { isKind, kinds } from '../schema/kinds.ts';
import type { Finding } from './finding.ts';
import { runRules } from './run-rules.ts';
import { settled } from './settings.ts';
import type { Waiver } from './waivers.ts';
import { everything, isFor, isInForce, isNeverHidden, ruleOf } from './waivers.ts';

/** What one library can say about a waiver. */
export interface WaiverCheck {
  readonly rules: readonly AnyRule[];
  /** Names of everything that can be found. */
  readonly known: ReadonlySet<string>;
  readonly today: IsoDate;
  readonly findings: FindingsOfEntity;
}

/** What the rules find in one entity (`kind/id`) under the library's settings, before any waiver. */
export type FindingsOfEntity = Query<string, readonly Finding[]>;

/** A question that any reader can ask: what it read is remembered, so a waiver is judged again when its finding comes or goes. */
export function findingsOfEntityBy(rules: readonly AnyRule[], today: IsoDate): FindingsOfEntity {
  return {
    name: 'findings-of-entity',
    work: (view, name) => {
      const entity = entityNamed(name, view);
      return entity === undefined ? [] : settled(runRules(rules, entity, view, today), view).kept;
    },
  };
}

function entityNamed(name: string, view: LibraryView): AnyEntity | undefined {
  const cut = name.indexOf('/');
  const kind = name.slice(0, cut);
  return isKind(kind) ? view.get(kind, name.slice(cut + 1)) : undefined;
}

/** What is wrong with a waiver besides its form: the finding does not exist, can't be waived, or is not there. */
export function waiverProblems(waiver: Waiver, view: LibraryView, check: WaiverCheck): readonly Problem[] {
  const name = ruleOf(waiver);
  const at = (waiver.rule ?? waiver.fingerprint ?? waiver.id ?? waiver).at;
  if (name === undefined) return [];
  if (!check.known.has(name)) return [unknownRule(name, waiver, at, check.known)];
  const rule = check.rules.find(({ id }) => id === name);
  if (rule === undefined) return [refused(name, at)];
  if (isNeverHidden(name) || !isInForce(waiver, check.today)) return [];
  return unusedParts(waiver, rule, view, check).map((part) => unused(name, part, at));
}

/** Names of the scope that cover nothing; undefined stands for the whole. */
function unusedParts(
  waiver: Waiver,
  rule: AnyRule,
  view: LibraryView,
  check: WaiverCheck,
): readonly (Text | undefined)[] {
  const names = waiver.scope?.items ?? [];
  if (names.length === 0 || names.some(({ text }) => text === everything)) {
    return coversAnything(waiver, rule, view, check) ? [] : [undefined];
  }
  const idle = names.filter((name) => !coversIn(name.text, waiver, rule, view, check));
  return idle.length === names.length ? [undefined] : idle;
}

function coversIn(name: string, waiver: Waiver, rule: AnyRule, view: LibraryView, check: WaiverCheck): boolean {
  const entities = name.includes('/') ? [name] : rule.kinds.map((kind) => `${kind}/${name}`);
  return entities.some((entity) => view.ask(check.findings, entity).some((finding) => isFor(waiver, finding)));
}

/** A waiver for every file reads every file of the rule's kinds: its writer asked for no less. */
function coversAnything(waiver: Waiver, rule: AnyRule, view: LibraryView, check: WaiverCheck): boolean {
  for (const kind of kinds) {
    if (!rule.kinds.includes(kind)) continue;
    for (const entity of view.all(kind)) {
      const found = runRules([rule], entity, view, check.today);
      if (!found.some((finding) => isFor(waiver, finding))) continue;
      const { id } = rootOfEntity(entity);
      if (view.ask(check.findings, `${kind}/${id}`).some((finding) => isFor(waiver, finding))) return true;
    }
  }
  return false;
}

function unknownRule(name: string, waiver: Waiver, at: Place, known: ReadonlySet<string>): Problem {
  const near = nearest(name, known);
  const hint = near === undefined ? 'The command "traywright rules" lists all names.' : `Did you mean "${near}"?`;
  return {
    rule: 'waiver-unknown-rule',
    message: `There is no finding named "${name.slice(0, 60)}", so this waiver covers nothing. ${hint}`,
    span: at.span,
    severity: 'error',
    ...(near !== undefined &&
      waiver.rule !== undefined && {
        fixes: [{ title: `Change to "${near}"`, edits: [{ span: at.span, text: near }] }],
      }),
  };
}

function refused(name: string, at: Place): Problem {
  return {
    rule: 'waiver-refused',
    message: `"${name}" is about how a file is written, and can't be waived. Put the file right.`,
    span: at.span,
    severity: 'error',
  };
}

function unused(name: string, part: Text | undefined, at: Place): Problem {
  const where = part === undefined ? 'what this waiver names' : `"${part.text}"`;
  return {
    rule: 'waiver-unused',
    message: `Nothing is found by "${name}" in ${where}${part === undefined ? '' : ' any more'}. Take ${part === undefined ? 'the waiver' : 'the name'} out, so that the fault is seen should it come back.`,
    span: (part?.at ?? at).span,
    severity: 'warning',
  };
}
