import type { CoolAim, IndicatorPlace } from './card.ts';

/*
 * Names of places that packaging files use, and what is drawn for them. A place whose name is not here is printed in words and not drawn.
 */

const placeKinds: ReadonlyMap<string, IndicatorPlace> = new Map([
  ['geometric-centre-per-level', 'centre'],
  ['geometric-center-per-level', 'centre'],
  ['centre', 'centre'],
  ['two-opposed-corners-per-level', 'opposed-corners'],
  ['two-corners-of-one-side-per-level', 'side-corners'],
  ['one-corner-per-level', 'one-corner'],
  ['inside-visible', 'visible'],
]);

const aimKinds: ReadonlyMap<string, CoolAim> = new Map([
  ['fold-closure', 'fold'],
  ['vents', 'vents'],
  ['porous-side', 'porous'],
  ['paper-side', 'porous'],
]);

export function placeOf(name: string | undefined): IndicatorPlace | undefined {
  return name === undefined ? undefined : placeKinds.get(name);
}

export function coolAimOf(name: string | undefined): CoolAim | undefined {
  return name === undefined ? undefined : aimKinds.get(name);
}
