import type { LibraryView } from '../library/view.ts';
import type { AnyEntity } from '../model/entity.ts';
import { rootOfEntity } from '../model/entity.ts';
import type { Rec } from '../model/node.ts';
import type { Kind } from '../schema/kinds.ts';
import { withEdit } from './apply.ts';
import { type Change, type EffectHere, type EntityComparison, effectsHere } from './change.ts';
import { effectOnSet, type SetEffect } from './set-effect.ts';
import { governorChanges, type Standing, standingOfDevice, standingOfSet } from './standing.ts';
import type { Exchange, Trials } from './trials.ts';

/** What one change does here, with every set that it touches. */
export interface ChangeEffect {
  readonly effect: EffectHere;
  /** Of the sets that this effect is about: whether any has a route before or after. */
  readonly routes: 'some' | 'none' | 'not-asked';
  /** One sentence: why this effect. */
  readonly words: string;
  /** Sets (or the device alone, where it is in none) on which it does anything, worst first. */
  readonly on: readonly SetEffect[];
  /** Rows of the governing tables that differ, by set. */
  readonly governors: readonly { readonly set: string; readonly words: string }[];
}

/** Machines able to do it, where one side has fewer than two: one fault then stops the set. */
export interface MachinesFor {
  readonly of: string;
  readonly before: readonly string[];
  readonly after: readonly string[];
}

export interface Together {
  readonly routes: readonly SetEffect[];
  readonly machines: readonly MachinesFor[];
}

/** Nobody packs it here, so nothing that is used breaks. */
function ofFamily(effect: SetEffect): SetEffect {
  if (effect.effect === 'route-opens') return effect;
  return { ...effect, effect: 'unused-only', words: `in no set here; alone: ${effect.words}` };
}

/** Sets whose routes a file of each kind can touch: a set's own, those that name a device, or all. */
export const everywhere: ReadonlySet<Kind> = new Set<Kind>([
  'packaging',
  'chemistry',
  'washer',
  'ultrasonic',
  'sterilizer',
  'water',
  'site',
  'response',
]);

/** Sections of a device or packaging that a card shows whether or not a route rests on them. */
const onCards: ReadonlySet<string> = new Set([
  'point_of_use',
  'transport',
  'receipt',
  'disassembly',
  'cleaning',
  'manual',
  'ultrasonic',
  'mechanical',
  'disinfection',
  'drying',
  'inspection',
  'lubrication',
  'packaging',
  'sterilization',
  'cooling',
  'storage',
  'limits',
  'cool_aim',
  'indicator_places',
  'filter',
]);

/** Derives what single changes do. Standings before are worked out once a set. */
export class Effects {
  readonly #trials: Trials;
  readonly #before: LibraryView;
  readonly #standings = new Map<string, Standing | undefined>();

  constructor(trials: Trials) {
    this.#trials = trials;
    this.#before = trials.view();
  }

  /** Ids of what to look at: `set/...`, or `device/...` of a device in no set. */
  touchedBy(entity: Rec): readonly string[] {
    const { kind, id } = rootOfEntity(entity);
    if (kind === 'set') return [`set/${id}`];
    if (everywhere.has(kind)) return [...this.#before.ids('set')].sort().map((set) => `set/${set}`);
    if (kind !== 'device') return [];
    const sets = this.#before.users('device', id, 'set').map((set) => `set/${rootOfEntity(set).id}`);
    return sets.length > 0 ? sets : [`device/${id}`];
  }

  /** The effect of one change, made alone. */
  of(change: Change, { before, after }: EntityComparison): ChangeEffect {
    const entity = before ?? after;
    const exchange = exchangeFor(change, before, after);
    if (entity === undefined || exchange === undefined) return silentEffect(change);
    const touched = this.touchedBy(entity);
    // Before anything is exchanged: the view before looks at the same library.
    const olds = touched.map((id) => this.standing(id));
    const effects: SetEffect[] = [];
    const governors: { set: string; words: string }[] = [];
    const withRoute = new Set<string>();
    this.#trials.with([exchange], (view) => {
      for (const [at, id] of touched.entries()) {
        const [old, now] = [olds[at], standingIn(view, id)];
        if (old === undefined || now === undefined) continue;
        if (hasRoute(old, now)) withRoute.add(id);
        const effect = onPaper(change, rootOfEntity(entity), old, effectOnSet(old, now));
        if (effect.effect !== 'nothing-visible') effects.push(effect);
        if (effect.effect === 'route-breaks' || effect.effect === 'card-changes')
          governors.push(...governorChanges(old, now).map((words) => ({ set: id, words })));
      }
    });
    return gathered(effects, governors, { touched, withRoute }, change);
  }

  /** Device families that are in no set: what a machine or an agent would win or lose for them shows in no set. */
  familiesInNoSet(): readonly string[] {
    const ids = [...this.#before.ids('device')].filter((id) => this.#before.users('device', id, 'set').length === 0);
    return ids.sort().map((id) => `device/${id}`);
  }

  /** What all changes together do to each set. */
  together(exchanges: readonly Exchange[], ids: readonly string[]): Together {
    const olds = ids.map((id) => this.standing(id));
    return this.#trials.with(exchanges, (view) => {
      const routes: SetEffect[] = [];
      const machines: MachinesFor[] = [];
      for (const [at, id] of ids.entries()) {
        const [old, now] = [olds[at], standingIn(view, id)];
        if (old === undefined || now === undefined) continue;
        const effect = effectOnSet(old, now);
        if (effect.effect !== 'nothing-visible') routes.push(id.startsWith('set/') ? effect : ofFamily(effect));
        const [before, after] = [old.derivation.route.machines, now.derivation.route.machines];
        if ((before.length < 2 || after.length < 2) && before.join() !== after.join())
          machines.push({ of: id, before, after });
      }
      return { routes: routes.sort(worstFirst), machines };
    });
  }

  standing(id: string): Standing | undefined {
    if (!this.#standings.has(id)) this.#standings.set(id, standingIn(this.#before, id));
    return this.#standings.get(id);
  }
}

function standingIn(view: LibraryView, name: string): Standing | undefined {
  const id = name.slice(name.indexOf('/') + 1);
  return name.startsWith('set/') ? standingOfSet(view, id) : standingOfDevice(view, id);
}

function hasRoute(before: Standing, after: Standing): boolean {
  return before.status !== 'none' || after.status !== 'none';
}

/** A change inside a file is made alone; a file that came or went is exchanged as a whole. */
function exchangeFor(change: Change, before: Rec | undefined, after: Rec | undefined): Exchange | undefined {
  if (before === undefined || after === undefined)
    return { old: before as AnyEntity | undefined, now: after as AnyEntity | undefined };
  if (change.edit === undefined) return undefined;
  return { old: before as AnyEntity, now: withEdit(before, change.edit) as AnyEntity };
}

/** Routes do not notice it; then it still shows on the card, unless it lies in an option that nobody here uses. */
function onPaper(
  { path }: Change,
  { kind, id }: { readonly kind: Kind; readonly id: string },
  before: Standing,
  found: SetEffect,
): SetEffect {
  if (found.effect !== 'nothing-visible' || (kind !== 'device' && kind !== 'packaging')) return found;
  const option = /\b(?:any_of|options|validated)\[([^\]]*)\]/.exec(path)?.[1];
  if (option !== undefined && !before.options.has(`${id} ${option}`))
    return { ...found, effect: 'unused-only', words: `"${option}" is not used here` };
  const section = /^[a-z_]{1,40}/.exec(path)?.[0] ?? '';
  if (section === 'not') return { ...found, effect: 'unused-only', words: 'nothing that is used here is meant' };
  return onCards.has(section)
    ? { ...found, effect: 'card-changes', words: cardWords[before.status === 'none' ? 'none' : 'some'] }
    : found;
}

const cardWords = {
  some: 'the route holds; the words of the card change',
  none: 'the words of the card change',
} as const;

function silentEffect(change: Change): ChangeEffect {
  const isWording = change.class === 'editorial' || change.class === 're-citation';
  const words = isWording
    ? 'nothing that is demanded differs'
    : 'no encoded value follows it, so nothing could be derived';
  return { effect: 'nothing-visible', routes: 'not-asked', words, on: [], governors: [] };
}

function gathered(
  effects: readonly SetEffect[],
  governors: ChangeEffect['governors'],
  { touched, withRoute }: { readonly touched: readonly string[]; readonly withRoute: ReadonlySet<string> },
  change: Change,
): ChangeEffect {
  const on = [...effects].sort(worstFirst);
  const [worst] = on;
  const isDeviceAlone = touched.length === 1 && touched[0]?.startsWith('device/') === true;
  if (isDeviceAlone) {
    const words = `in no set here${worst === undefined || worst.words === '' ? '' : `; alone: ${worst.words}`}`;
    return { effect: 'unused-only', routes: 'not-asked', words, on, governors: [] };
  }
  if (worst === undefined) {
    const routes = touched.length === 0 ? 'not-asked' : withRoute.size > 0 ? 'some' : 'none';
    return { effect: 'nothing-visible', routes, words: plainWords(change, routes), on, governors };
  }
  const same = on.filter(({ effect }) => effect === worst.effect);
  const named = same
    .slice(0, 3)
    .map(({ of, words }) => `${of.slice(of.indexOf('/') + 1)}${words === '' ? '' : `: ${words}`}`);
  const more = same.length > 3 ? `; and ${same.length - 3} more sets` : '';
  const routes = same.some(({ of }) => withRoute.has(of)) ? 'some' : 'none';
  return { effect: worst.effect, routes, words: `${named.join('. ')}${more}`, on, governors };
}

function plainWords({ entity }: Change, routes: ChangeEffect['routes']): string {
  if (entity.startsWith('procedure/')) return 'no route rests on a procedure';
  return routes === 'none' ? 'nothing visible changes' : 'every route stays as it was';
}

function worstFirst(a: SetEffect, b: SetEffect): number {
  return effectsHere.indexOf(a.effect) - effectsHere.indexOf(b.effect) || (a.of < b.of ? -1 : a.of > b.of ? 1 : 0);
}
