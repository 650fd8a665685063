import { type Answer, answer, outOfRange, type RangeReason, refuse } from './physics.ts';

/*
 * Where a sterilant enters a package, as plain shapes. x runs along the length, y along the width, z up from the bottom, in mm; one
 * lower corner is 0, 0, 0.
 */

export interface Size {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface Point {
  readonly xMm: number;
  readonly yMm: number;
  readonly zMm: number;
}

/** Ends are at x 0 (`left`) and x = length (`right`), sides at y 0 (`front`) and y = width (`back`). */
export type Face = 'bottom' | 'top' | 'left' | 'right' | 'front' | 'back';

export const FACES: readonly Face[] = ['bottom', 'top', 'left', 'right', 'front', 'back'];

/** A round opening in one face; `centre` lies on that face. */
export interface Vent {
  readonly face: Face;
  readonly centre: Point;
  readonly radiusMm: number;
}

/** A package as its maker describes it. Levels lie one above another and share the height equally. */
export interface SterilePackage {
  readonly size: Size;
  readonly levels: number;
  /** Faces of porous material, open over their whole area. */
  readonly porousFaces: readonly Face[];
  readonly vents: readonly Vent[];
}

/** Shortest straight way in mm from a place inside to one entry. */
export type DistanceToEntry = (place: Point) => number;

export type PackageReason = RangeReason | 'no-entry' | 'too-many-vents' | 'vent-not-on-face';

/** A vent in the middle of a face. */
export function ventInCentre(size: Size, face: Face, radiusMm: number): Vent {
  const centre = { xMm: size.lengthMm / 2, yMm: size.widthMm / 2, zMm: size.heightMm / 2 };
  const { axis, atMm } = planeOf(face, size);
  return { face, centre: { ...centre, [axis]: atMm }, radiusMm };
}

/** The entries of a package as distances, or why it cannot be worked out. */
export function entriesOf(pack: SterilePackage): Answer<readonly DistanceToEntry[], PackageReason> {
  const bad = checkPackage(pack);
  if (bad) return bad;
  const porous = new Set(pack.porousFaces);
  const faces = FACES.filter((face) => porous.has(face)).map((face) => faceDistance(face, pack.size));
  return answer([...faces, ...pack.vents.map((vent) => ventDistance(vent, pack.size))]);
}

function checkPackage(pack: SterilePackage): Answer<never, PackageReason> | undefined {
  const { lengthMm, widthMm, heightMm } = pack.size;
  const side = { low: 1, high: 10_000, unit: ' mm' };
  const bad = outOfRange(
    { name: 'length', value: lengthMm, ...side },
    { name: 'width', value: widthMm, ...side },
    { name: 'height', value: heightMm, ...side },
    { name: 'number of levels', value: pack.levels, low: 1, high: 20, unit: '' },
    ...pack.vents.map((vent) => ({
      name: 'radius of a vent',
      value: vent.radiusMm,
      low: 0,
      high: 10_000,
      unit: ' mm',
    })),
  );
  if (bad) return bad;
  if (!Number.isInteger(pack.levels)) return refuse('not-a-number', 'The number of levels must be a whole number.');
  if (pack.porousFaces.length + pack.vents.length === 0)
    return refuse(
      'no-entry',
      'The package names no porous face and no vent, so nothing shows where the sterilant enters.',
    );
  if (pack.vents.length > 100)
    return refuse('too-many-vents', 'More than 100 vents: describe the face as porous instead.');
  if (pack.vents.every((vent) => liesOnFace(vent, pack.size))) return undefined;
  return refuse('vent-not-on-face', 'A vent does not lie on the face that it is said to be in.');
}

type Axis = 'xMm' | 'yMm' | 'zMm';

function planeOf(face: Face, size: Size): { readonly axis: Axis; readonly atMm: number } {
  switch (face) {
    case 'bottom':
      return { axis: 'zMm', atMm: 0 };
    case 'top':
      return { axis: 'zMm', atMm: size.heightMm };
    case 'left':
      return { axis: 'xMm', atMm: 0 };
    case 'right':
      return { axis: 'xMm', atMm: size.lengthMm };
    case 'front':
      return { axis: 'yMm', atMm: 0 };
    case 'back':
      return { axis: 'yMm', atMm: size.widthMm };
  }
}

function liesOnFace({ face, centre }: Vent, size: Size): boolean {
  const { axis, atMm } = planeOf(face, size);
  const inside = (value: number, end: number): boolean => value >= 0 && value <= end;
  return (
    Math.abs(centre[axis] - atMm) <= 1e-6 &&
    inside(centre.xMm, size.lengthMm) &&
    inside(centre.yMm, size.widthMm) &&
    inside(centre.zMm, size.heightMm)
  );
}

/** From a place inside, the nearest point of a whole face is straight across. */
function faceDistance(face: Face, size: Size): DistanceToEntry {
  const { axis, atMm } = planeOf(face, size);
  return (place) => Math.abs(place[axis] - atMm);
}

function ventDistance({ face, centre, radiusMm }: Vent, size: Size): DistanceToEntry {
  const { axis } = planeOf(face, size);
  return (place) => {
    const across = Math.abs(place[axis] - centre[axis]);
    let besideSquared = 0;
    for (const other of ['xMm', 'yMm', 'zMm'] as const)
      if (other !== axis) besideSquared += (place[other] - centre[other]) ** 2;
    const beside = Math.max(0, Math.sqrt(besideSquared) - radiusMm);
    return Math.sqrt(across * across + beside * beside);
  };
}
