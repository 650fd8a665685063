import type { Line, Value } from '../piece.ts';
import type { BandKind, SignKind } from '../words/card-words.ts';

/** A work card as data: what stands where, before any layout. */
export interface Card {
  readonly set: string;
  readonly name: Value;
  readonly stamp: string;
  /** The day of printing, `YYYY-MM-DD`. */
  readonly day: string;
  /** Label and what stands beside it. */
  readonly facts: readonly Fact[];
  readonly bands: readonly Band[];
  /** The few facts that govern, each with document and page. */
  readonly why: readonly Line[];
  readonly call: readonly Line[];
  /** What the library itself says about all of its papers. */
  readonly notes: readonly Line[];
  /** Why it may not go to the bench; empty for a card that may. */
  readonly draft: readonly string[];
}

export interface Fact {
  readonly label: string;
  readonly line: Line;
}

export interface Band {
  readonly kind: BandKind;
  readonly blocks: readonly Block[];
  readonly drawing?: Drawing;
  /** Large figures, as on the machine's screen. */
  readonly figures: readonly Fact[];
}

export interface Block {
  readonly title?: Line;
  readonly signs: readonly SignKind[];
  readonly lines: readonly Line[];
  /** `stop`: framed and first. `less`: smaller, so that one route alone has full weight. */
  readonly weight: 'plain' | 'stop' | 'less';
}

/** What a drawing shows of one pack: where the indicators lie, or where the thermometer points. */
export type Drawing =
  | {
      readonly shows: 'indicators';
      readonly pack: PackKind;
      /** `stated`: by the packaging's document or the site; `computed`: by geometry, because nobody says. */
      readonly by: 'stated' | 'computed';
      readonly places: IndicatorPlace;
      readonly levels: number;
      readonly levelsFrom: readonly string[];
    }
  | { readonly shows: 'aim'; readonly pack: PackKind; readonly aim: CoolAim };

export type PackKind = 'wrap' | 'container' | 'pouch';
export type IndicatorPlace = 'centre' | 'opposed-corners' | 'side-corners' | 'one-corner' | 'visible';
export type CoolAim = 'fold' | 'vents' | 'porous';

export function block(lines: readonly Line[], more: Partial<Omit<Block, 'lines'>> = {}): Block {
  return { signs: [], weight: 'plain', lines: lines.filter((line) => line.length > 0), ...more };
}
