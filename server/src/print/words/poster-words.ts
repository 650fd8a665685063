import type { Line, Piece } from '../piece.ts';

export type PosterId =
  | 'indicators'
  | 'aim'
  | 'dry-before-steam'
  | 'immediate-use'
  | 'same-for-all'
  | 'bound-words'
  | 'units';

export interface PosterText {
  readonly title: string;
  readonly claim: string;
}

/** Every text of the wall posters. */
export interface PosterWords {
  readonly posters: Readonly<Record<PosterId, PosterText>>;
  readonly exceptions: string;
  readonly noExceptions: string;
  readonly sources: string;
  readonly noSource: string;
  stamp(stamp: string): string;
  printed(day: string): string;
  packagings(names: Line): Line;
  readonly unstated: string;
  readonly dry: {
    /** A kilogram of this, heated from there to there. */
    water(material: string, from: Piece, to: Piece, water: Piece): Line;
    readonly carried: string;
    readonly doThis: readonly string[];
    readonly materials: Readonly<Record<'steel' | 'aluminium', string>>;
  };
  readonly urgent: {
    readonly steps: readonly { readonly ask: string; readonly else: string }[];
    readonly afterwards: string;
    offeredBy(names: Line): Line;
    readonly offeredByNone: string;
  };
  readonly same: {
    readonly steps: readonly string[];
    readonly exception: string;
    call(role: Piece, phone: Piece | undefined): Line;
    soak(device: Piece, limit: Line, quote: Line): Line;
  };
  readonly bounds: {
    readonly head: readonly string[];
    readonly rows: readonly { readonly words: string; readonly means: string; readonly wrong: string }[];
    readonly example: string;
  };
  readonly units: {
    readonly head: readonly string[];
    readonly boils: string;
    readonly source: string;
    altitude(altitude: Piece, atmosphere: Piece): Line;
  };
  readonly cautions: readonly string[];
  readonly cautionInfrared: string;
  readonly cautionAltitude: string;
}
