import type { IsoDate } from '../base/brand.ts';
import type { Library } from '../library/library.ts';
import type { LibraryView } from '../library/view.ts';
import { fieldAt, stampOf } from '../model/content.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import type { AnyEntity } from '../model/entity.ts';
import { isOfKind, rootOfEntity } from '../model/entity.ts';
import type { Rec } from '../model/node.ts';
import type { Kind } from '../schema/kinds.ts';
import {
  type Change,
  type ChangeClass,
  changeClasses,
  type EffectHere,
  type EntityComparison,
  effectsHere,
  type LostStatement,
} from './change.ts';
import { byClass } from './compare.ts';
import { type ChangeEffect, Effects, everywhere, type MachinesFor, type Together } from './effect.ts';
import { type Impact, impactOf } from './impact.ts';
import { compareLibraries, type Extent, type RevisionPair } from './libraries.ts';
import type { SetEffect } from './set-effect.ts';
import { checkSignOffs, type SignOffCheck } from './sign-off.ts';
import { type Exchange, Trials } from './trials.ts';

/** One change with all that is known about it. */
export interface ReviewedChange extends Change {
  /** Undefined where there is no department to derive for. */
  readonly here?: ChangeEffect;
  readonly impact?: Impact;
}

/** The one model that every surface shows. Worst first. */
export interface RevisionReview {
  readonly revisions: readonly RevisionPair[];
  readonly changes: readonly ReviewedChange[];
  /** Passages that were dropped: shown before anything else. */
  readonly lost: readonly LostStatement[];
  readonly counts: Readonly<Partial<Record<ChangeClass, number>>>;
  readonly effects: Readonly<Partial<Record<EffectHere, number>>>;
  /** What all changes together do to each set. */
  readonly routes: readonly SetEffect[];
  /** Sets that hang on one machine before or after. */
  readonly machines: readonly MachinesFor[];
  /** Places at which only the record of reading differs. */
  readonly recordKeeping: number;
  readonly signOffs: SignOffCheck;
  /** Content stamps of both sides, by entity. */
  readonly stamps: readonly EntityStamps[];
}

export interface EntityStamps {
  readonly entity: string;
  readonly before: string;
  readonly after: string;
}

export interface ReviewInput {
  readonly before: readonly AnyEntity[];
  readonly after: readonly AnyEntity[];
  readonly extent: Extent;
  /** The department for which effects are derived, in the state before; none where two files stand alone. */
  readonly library?: Library | undefined;
  readonly today: IsoDate;
}

export function reviewOf({ before, after, extent, library, today }: ReviewInput): RevisionReview {
  const trials = library === undefined ? undefined : new Trials(library, today);
  const view = trials?.view();
  const policies = (view?.site() ?? ofKind(before, 'site')[0])?.policies;
  const kept = view?.all('sign-off') ?? [];
  const { entities, revisions } = compareLibraries(before, after, extent, policies);
  const effects = trials === undefined ? undefined : new Effects(trials);
  const alone = entities.flatMap((one) => one.changes.map((change) => reviewed(change, one, effects, view)));
  const { routes, machines } =
    effects === undefined ? { routes: [], machines: [] } : allTogether(effects, entities, extent);
  const changes = blamed(alone, routes).sort(worstFirst);
  return {
    revisions,
    changes,
    lost: entities.flatMap(({ lost }) => lost),
    counts: counted(
      changes.map((change) => change.class),
      changeClasses,
    ),
    effects: counted(
      changes.flatMap(({ here }) => here?.effect ?? []),
      effectsHere,
    ),
    routes,
    machines,
    recordKeeping: entities.reduce((sum, { recordKeeping }) => sum + recordKeeping.length, 0),
    signOffs: checkSignOffs(changes, entities, ofKind([...before, ...after, ...kept], 'sign-off'), today),
    stamps: entities.map((one) => ({ entity: one.entity, before: stampFor(one.before), after: stampFor(one.after) })),
  };
}

function ofKind<K extends Kind>(entities: readonly AnyEntity[], kind: K): readonly EntityOf[K][] {
  const found = new Set<EntityOf[K]>();
  for (const entity of entities) if (isOfKind(entity, kind)) found.add(entity);
  return [...found];
}

function stampFor(entity: Rec | undefined): string {
  return entity === undefined ? '' : stampOf(entity);
}

function reviewed(
  change: Change,
  of: EntityComparison,
  effects: Effects | undefined,
  view: LibraryView | undefined,
): ReviewedChange {
  const entity = of.before ?? of.after;
  if (effects === undefined || view === undefined || entity === undefined) return change;
  const here = effects.of(change, of);
  const impact = impactOf(change, here, entity, view);
  return { ...change, here, ...(impact && { impact }) };
}

function allTogether(effects: Effects, entities: readonly EntityComparison[], extent: Extent): Together {
  const exchanges = entities.map((one) => exchangeOf(one, extent));
  const touched = new Set(
    entities.flatMap(({ before, after }) => {
      const entity = before ?? after;
      return entity === undefined ? [] : effects.touchedBy(entity);
    }),
  );
  const isDepartment = entities.some((one) => isDepartments(one.before ?? one.after));
  return effects.together(
    exchanges,
    [...new Set([...touched, ...(isDepartment ? effects.familiesInNoSet() : [])])].sort(),
  );
}

function isDepartments(entity: Rec | undefined): boolean {
  return entity !== undefined && everywhere.has(rootOfEntity(entity).kind);
}

/**
 * The new content. A part that is compared brings a revision that is not in force yet: it is looked at as if it were, so its values are
 * taken and its sources stay those in force.
 */
function exchangeOf({ before, after }: EntityComparison, extent: Extent): Exchange {
  const [old, now] = [before as AnyEntity | undefined, after as AnyEntity | undefined];
  const sources = before === undefined ? undefined : fieldAt(before, 'sources');
  if (extent === 'whole' || now === undefined || sources === undefined) return { old, now };
  return { old, now: { ...now, sources } as AnyEntity };
}

/** A set that breaks by several changes together, though by none alone, is laid at the door of each that touches it. */
function blamed(changes: readonly ReviewedChange[], routes: readonly SetEffect[]): ReviewedChange[] {
  const alone = new Set<string>();
  for (const { here } of changes)
    for (const { of, effect } of here?.on ?? []) if (effect === 'route-breaks') alone.add(of);
  const joint = routes.filter(({ of, effect }) => effect === 'route-breaks' && !alone.has(of));
  if (joint.length === 0) return [...changes];
  return changes.map((change) => {
    const hit = joint.filter(
      ({ of }) => change.here?.on.some((one) => one.of === of && one.effect !== 'unused-only') === true,
    );
    if (change.here === undefined || hit.length === 0) return change;
    const words = hit
      .map(({ of, words: why }) => `together with other changes, ${of.slice(of.indexOf('/') + 1)}: ${why}`)
      .join('. ');
    return { ...change, here: { ...change.here, effect: 'route-breaks', words } };
  });
}

function worstFirst(a: ReviewedChange, b: ReviewedChange): number {
  return rankOf(a) - rankOf(b) || byClass(a, b);
}

function rankOf({ here }: ReviewedChange): number {
  return here === undefined ? 0 : effectsHere.indexOf(here.effect);
}

function counted<Word extends string>(found: readonly Word[], order: readonly Word[]): Partial<Record<Word, number>> {
  const counts: Partial<Record<Word, number>> = {};
  for (const word of order) {
    const number = found.filter((one) => one === word).length;
    if (number > 0) counts[word] = number;
  }
  return counts;
}
