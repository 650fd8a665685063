import { isHighestIfBare } from '../judge/value.ts';
import { called, calledWho } from '../library/called.ts';
import type { LibraryView } from '../library/view.ts';
import type { AnyEntity } from '../model/entity.ts';
import { isOfKind, rootOfEntity } from '../model/entity.ts';
import { spokenMethod } from '../model/method-names.ts';
import type { Requirement } from '../model/node.ts';
import { pathOf } from '../model/node.ts';
import { nodesIn, requirementsIn } from '../model/walk.ts';
import { parameterOf } from '../revision/parameter-of.ts';
import { governingOfSet } from '../route/explanation.ts';
import { routeOfSet } from '../route/route.ts';
import { indexCaution } from './words/cautions.ts';

/** A few words shown behind a place, without being part of the text. */
export interface InlayHint {
  readonly at: number;
  readonly text: string;
  readonly about: string;
}

/** Beside the cycle of a set's card who governs it; behind a number without a bound word how this site judges it; what a code stands for. */
export function inlayHintsOf(entity: AnyEntity, view: LibraryView): readonly InlayHint[] {
  const hints = isOfKind(entity, 'set') ? [...cycleHint(entity, view)] : [];
  for (const requirement of requirementsIn(entity)) {
    const hint = statedHint(requirement, view);
    if (hint !== undefined) hints.push(hint);
  }
  return [...hints, ...methodHints(entity)];
}

const methodKeys: ReadonlySet<string | number> = new Set(['modality', 'modalities', 'what', 'methods']);

/** Methods whose word is a code that nobody says aloud. */
function methodHints(entity: AnyEntity): readonly InlayHint[] {
  return nodesIn(entity).flatMap((node) => {
    const name = node.node === 'text' ? spokenMethod(node.text) : undefined;
    const key = typeof node.at.key === 'number' ? node.at.parent?.key : node.at.key;
    if (name === undefined || key === undefined || !methodKeys.has(key)) return [];
    return [{ at: node.at.span.end, text: name, about: 'What the word of the file stands for.' }];
  });
}

function cycleHint(entity: AnyEntity, view: LibraryView): readonly InlayHint[] {
  if (!isOfKind(entity, 'set') || entity.cycle === undefined) return [];
  const rows = view.ask(governingOfSet, rootOfEntity(entity).id);
  const named = rows.filter(({ parameter }) => ['Drying time', 'Exposure', 'Temperature'].includes(parameter));
  const words = named.map(({ parameter, required, governedBy }) => {
    const owners = governedBy.map(({ who }) => calledWho(who, view));
    return `${parameter} ${required}: ${owners.slice(0, 2).join(' and ')}${owners.length > 2 ? ` and ${owners.length - 2} more` : ''}`;
  });
  const [first] = words.toReversed();
  if (first === undefined) return [];
  const change = view.ask(routeOfSet, rootOfEntity(entity).id)?.packagingChange;
  const packed = change === undefined ? '' : `if packed in ${called('packaging', change.to, view)}, `;
  return [
    { at: entity.cycle.at.span.end, text: `${packed}governed by ${first}`, about: [...words, indexCaution].join('\n') },
  ];
}

const policyWords: Readonly<Record<string, string>> = {
  'treat-as-exact': 'judged as exactly this',
  'treat-as-minimum': 'judged as a minimum',
  setpoint: 'judged as a setpoint',
  'needs-answer': 'needs an answer',
};

/** How a bare number counts: as the most where it is a limit, else in the site’s own words. Where the site has none, nothing is shown. */
function statedHint({ stated, at, dimension }: Requirement, view: LibraryView): InlayHint | undefined {
  if (stated === undefined) return undefined;
  const parameter = parameterOf(pathOf(at), dimension);
  if (parameter !== undefined && isHighestIfBare(parameter))
    return {
      at: stated.at.span.end,
      text: 'judged as a maximum',
      about:
        'The page gives this limit without a bound word. More than a limit is never right, whatever the site says of bare numbers.',
    };
  const policies = view.site()?.policies;
  const key = policyKey(String(at.key), dimension);
  const policy = key === undefined ? undefined : policies?.[key]?.text;
  const words = policy === undefined ? undefined : policyWords[policy];
  if (words === undefined) return undefined;
  const about =
    'The page gives this number without a bound word. The site’s policy says how it is judged; a reply of the manufacturer settles it.';
  return { at: stated.at.span.end, text: words, about };
}

function policyKey(
  field: string,
  dimension: Requirement['dimension'],
): 'stated_exposure' | 'stated_temp' | 'stated_dry' | 'stated_time' | 'stated_volume' | 'stated_count' | undefined {
  if (field === 'exposure') return 'stated_exposure';
  if (field === 'dry') return 'stated_dry';
  switch (dimension) {
    case 'temperature':
      return 'stated_temp';
    case 'time':
      return 'stated_time';
    case 'volume':
      return 'stated_volume';
    case 'count':
      return 'stated_count';
    default:
      return undefined;
  }
}
