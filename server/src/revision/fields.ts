/*
 * What the names of fields mean for a comparison. Data, to be read and corrected by people who know the trade. A name that stands nowhere
 * here is compared as a value of which no direction is known: a difference is then "different", never "editorial".
 */

/** Who read or measured it and when: no part of what is demanded. That a date is out of date is for the check to find. */
export const recordKeepingFields: ReadonlySet<string> = new Set([
  'review',
  'checked',
  'second_reader',
  'changed',
  'mass_measured',
  'packaging_changed',
  'measured',
  'last_result',
  'adopted_on',
  'printed',
  'made_on',
]);

/** Never judged, or shown to people only. */
export const wordingFields: ReadonlySet<string> = new Set([
  'name',
  'name_on_screen',
  'title',
  'note',
  'notes',
  'reason',
  'why',
  'ask',
  'contact',
  'section',
  'figure',
  'maker',
  'clause',
  'file',
  'checksum',
  'change_reason',
]);

/** Wording that a person reads as the page's own: held to the guard against lost numbers and negations. */
export const quotedFields: ReadonlySet<string> = new Set([
  'quote',
  'as_written',
  'name',
  'title',
  'section',
  'change_reason',
]);

/** For what a file holds: other numbers are other instruments. */
export const scopeFields: ReadonlySet<string> = new Set([
  'covers',
  'excludes',
  'market',
  'identifiers',
  'applies_from',
  'applies_to',
  'serial_from',
  'serial_to',
  'applies_to_traits',
  'applies_to_sets',
  'applies_to_all',
  'applies_to_packaging',
  'scope',
  'exceptions',
  'traits',
  'materials',
  'lang',
  'class-of-device',
  'lumens',
  'parts',
  'members',
  'contents',
  'inner',
  'effective',
  'jurisdiction',
]);

/** Lists of complete alternatives: one more is one more way. */
export const optionLists: ReadonlySet<string> = new Set([
  'any_of',
  'options',
  'cycles',
  'validated',
  'routes',
  'racks',
  'on_delay_exceeded',
  'by_packaging',
]);

/** Lists of which every member is carried out. */
export const stepLists: ReadonlySet<string> = new Set(['all_of', 'steps', 'initial_steps']);

/** Of these the order means something. Under `all_of` it does unless the page says otherwise. */
export const orderedLists: ReadonlySet<string> = new Set([
  'all_of',
  'steps',
  'initial_steps',
  'phases',
  'disconnect',
  'conforms_order',
  'between',
]);

export const prohibitionLists: ReadonlySet<string> = new Set(['not', 'avoid', 'never']);

/** Any one of these will do: more words, more ways. */
export const acceptingLists: ReadonlySet<string> = new Set([
  'allowed',
  'class',
  'named',
  'agents',
  'method',
  'methods',
  'covers_classes',
  'listed',
  'filter',
  'suitable_materials',
  'accessories',
  'ports',
]);

/** Every one of these is demanded: more words, fewer ways. */
export const demandingLists: ReadonlySet<string> = new Set([
  'criteria',
  'without',
  'reject_if',
  'open',
  'disconnect',
  'tests',
  'keep_dry',
  'conforms_to',
  'tools',
  'unsuitable_materials',
  'not_accessories',
  'leave_together',
  'instructions',
  'configuration',
]);

/** `true` asks for something. */
export const demandingFlags: ReadonlySet<string> = new Set([
  'required',
  'each_use',
  'soft',
  'submerged',
  'upright',
  'no_stacking',
  'no_stack',
  'count',
  'weigh',
  'fresh',
  'irrigated',
  'single_metal',
  'fresh_bath',
  'low_foaming',
  'visual',
  'before_packaging',
  'remove_excess',
  'no_textile_liner',
  'no_silicone_mat',
  'wet_forbidden',
  'no_quench',
  'no_fan',
  'no_touch',
  'single_use',
  'not_a_substitute',
  'check_dry',
  'function_test',
]);

/** Plain amounts that are limits: less is stricter, or more is. */
export const highestAmounts: ReadonlySet<string> = new Set([
  'mass_max',
  'levels_max',
  'load_max',
  'item_mass_max',
  'time_max',
  'shelf_life_max',
]);

/** Words in order, from the one that leaves most ways to the one that leaves fewest. */
export const rankedWords: Readonly<Record<string, readonly string[]>> = {
  use: ['silent', 'allowed', 'recommended', 'required'],
  strength: ['may', 'should', 'must'],
};

/** Prohibitions with a number: whether a lower number forbids more. */
export const lowerForbidsMore: Readonly<Record<string, boolean>> = {
  'temp-above': true,
  'ph-above': true,
  'pressure-above': true,
  'ph-below': false,
};
