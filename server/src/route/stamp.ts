import { nameOfText } from '../base/mix.ts';
import type { LibraryView, Query } from '../library/view.ts';
import { contentWithout, fieldAt } from '../model/content.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import type { Rec } from '../model/node.ts';
import { governingOfSet } from './explanation.ts';
import type { CleaningFit, GoverningRow, SetRoute } from './model.ts';
import { routeOfSet } from './route.ts';

/** As many digits as people will compare by eye. */
const digits = 6;

/**
 * The content stamp of a set's card: the same for everything that would print the same card, another as soon as a line of it changes.
 * Undefined when no file holds the set. No date has a part in it, except through what is qualified or in force on it.
 */
export const cardStamp: Query<string, string | undefined> = {
  name: 'card-stamp',
  work: (view, id) => {
    const set = view.get('set', id);
    const route = view.ask(routeOfSet, id);
    if (set === undefined || route === undefined) return undefined;
    return nameOfText(cardContent(view, set, route)).slice(0, digits);
  },
};

/** All that stands on the card, as one text. */
function cardContent(view: LibraryView, set: EntityOf['set'], route: SetRoute): string {
  return [
    partsOf(set, onCardOfSet),
    routeContent(route),
    ...view.ask(governingOfSet, route.id).map(rowContent),
    ...route.members.map(({ device, quantity, cleaning }) => `${device} ${quantity} ${cleaningContent(cleaning)}`),
    ...route.members.map(({ device }) => partsOf(view.get('device', device), onCardOfDevice)),
    ...packagingsOf(set, route).map((id) => `${id} ${partsOf(view.get('packaging', id), onCardOfPackaging)}`),
    ...cyclesOf(set, route).map((id) => `${id} ${partsOf(view.sterilizerCycle(id)?.cycle, onCardOfCycle)}`),
    partsOf(view.site()?.policies, onCardOfPolicies),
  ].join('\n');
}

function routeContent({ chosen, alternatives, machines, washing }: SetRoute): string {
  const ways = [chosen, alternatives[0]].map((way) =>
    way === undefined ? '' : `${way.packaging} ${way.namedCase ?? ''} ${way.machine} ${way.cycle}`,
  );
  const baskets = washing.baskets.map(({ cycle, devices }) => `${cycle}: ${devices.join(' ')}`);
  return [...ways, machines.join(' '), ...baskets].join('; ');
}

function rowContent({ parameter, required, governedBy, gives }: GoverningRow): string {
  return `${parameter}: ${required}; ${governedBy.map(({ who }) => who).join(' ')}; ${gives}`;
}

function cleaningContent(cleaning: CleaningFit | undefined): string {
  if (cleaning === undefined) return '';
  return [cleaning.alternative, ...cleaning.stages.map(({ stage, means }) => `${stage} ${means}`)].join(' ');
}

function packagingsOf(set: EntityOf['set'], { chosen }: SetRoute): readonly string[] {
  return distinct([set.packaging?.text, set.case?.text, chosen?.packaging, chosen?.namedCase]);
}

function cyclesOf(set: EntityOf['set'], { chosen }: SetRoute): readonly string[] {
  return distinct([set.cycle?.text, chosen?.cycle]);
}

function distinct(names: readonly (string | undefined)[]): readonly string[] {
  return [...new Set(names.filter((name) => name !== undefined))];
}

/** The named fields of a record. Where a sentence stands on the page is no part of the card's work. */
function partsOf(record: Rec | undefined, keys: readonly string[]): string {
  if (record === undefined) return '';
  const parts: string[] = [];
  for (const key of keys) {
    const node = fieldAt(record, key);
    if (node !== undefined) parts.push(`${key}:${contentWithout(node, offCard)}`);
  }
  return parts.join(' ');
}

const offCard: ReadonlySet<string> = new Set(['src', 'note', 'checked', 'as_written', 'reason', 'uses_counter']);

/*
 * What a card prints, kind by kind. The mass is left out where it is only weighed anew: the limit stands in the governing table. Dates,
 * reviews, stock and notes are no part of a card.
 */
const onCardOfSet = [
  ...[
    'name',
    'owner',
    'members',
    'case',
    'packaging',
    'double',
    'filter',
    'bottom',
    'valve',
    'accessories',
    'contents',
  ],
  ...['inner', 'levels', 'cycle', 'washer_cycle', 'sonicate', 'context', 'indicators', 'indicator', 'indicator_places'],
  ...['external_indicator', 'label', 'shelf_position', 'rack', 'biological', 'release', 'emergency_release', 'traits'],
];
const onCardOfDevice = [
  ...['name', 'traits', 'parts', 'lumens', 'limits', 'point_of_use', 'disassembly', 'cleaning', 'manual', 'ultrasonic'],
  ...['mechanical', 'rinse', 'disinfection', 'drying', 'immersion', 'inspection', 'lubrication', 'packaging'],
  ...['configuration', 'cooling', 'storage', 'not'],
];
const onCardOfPackaging = [
  ...['name', 'type', 'mass_max', 'mass_of', 'levels_max', 'filter', 'accessories', 'not_accessories', 'double'],
  ...['stacking', 'indicator_places', 'cool_aim', 'storage', 'event_related', 'dry'],
];
const onCardOfCycle = ['name_on_screen', 'modality', 'context', 'temp', 'exposure', 'dry', 'load_max', 'item_mass_max'];
const onCardOfPolicies = ['release_temp', 'cool_time', 'shelf_life', 'shelf_life_max'];
