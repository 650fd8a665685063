import type { Outcome, Parameter } from '../../judge/outcome.ts';
import type { Mark } from '../../panel/set-sheet.ts';
import type { Repair, RouteOption, RouteStatus } from '../../route/model.ts';

/** Words and signs of the set sheet. Nothing here says more than "consistent with the encoded instructions". */
export const statusWords: Readonly<Record<RouteStatus, string>> = {
  route: 'A route that is consistent with the encoded instructions',
  provisional: 'A provisional route only: something is open',
  none: 'No route for the set as built',
};

export const statusMark: Readonly<Record<RouteStatus, Mark>> = { route: 'fits', provisional: 'asks', none: 'fails' };

export const markOf: Readonly<Record<Outcome, Mark>> = {
  meets: 'fits',
  'meets-with-note': 'note',
  'needs-answer': 'asks',
  fails: 'fails',
};

export const effectWords: Readonly<Record<Repair['effect'], string>> = {
  route: 'gives a route',
  provisional: 'gives a provisional route',
  part: 'settles a part',
  unverified: 'not worked out here',
};

export const effectMark: Readonly<Record<Repair['effect'], Mark>> = {
  route: 'fits',
  provisional: 'asks',
  part: 'note',
  unverified: 'note',
};

/** `steam-dry` as people say it. */
export function parameterWords(parameter: Parameter): string {
  return spokenParameters[parameter] ?? parameter.replaceAll('-', ' ');
}

const spokenParameters: Partial<Readonly<Record<Parameter, string>>> = {
  'steam-temperature': 'temperature',
  'steam-dry': 'drying time',
  'packaging-dry': 'drying time',
  'heat-limit': 'highest temperature',
  'ethylene-oxide': 'gas cycle',
};

/** `in Kestrelow container with Skerrow bracket case`. */
export function packWords(
  { packaging, namedCase }: Pick<RouteOption, 'packaging' | 'namedCase'>,
  called: (who: string) => string,
): string {
  const pack = packaging === '' ? 'unwrapped' : `in ${called(`packaging/${packaging}`)}`;
  return namedCase === undefined ? pack : `${pack} with ${called(`packaging/${namedCase}`)}`;
}

/** Printed under every sheet. */
export const sheetCautions: readonly string[] = [
  'The manufacturer’s current document is the instruction; this is an index to it. Where they differ, follow the document and report the difference.',
  '“Consistent with the encoded instruction” is the strongest statement made here: it proposes, people decide, and no load is judged.',
  'Silence in a document is shown as silence. Figures that depend on altitude hold for this site only.',
  'Suspected prion disease, implants in an emergency, recalls: stop and call infection prevention.',
];
