import { Remembered } from '../base/remembered.ts';
import type { Span } from '../base/span.ts';
import type { Dimension, PressureReference, QuantityFault, QuantityValue } from '../quantity/quantity.ts';
import type { ScalarTree } from '../syntax/tree.ts';
import type { DateValue, Flag, Place, Quantity, Text } from './node.ts';
import type { Spot } from './places.ts';
import { Standing } from './places.ts';

/**
 * Values of one scalar as they come from a file. Each is its own place, so that a library keeps one object of it and not two: most of what
 * it keeps is such values.
 */
abstract class Scalar extends Standing {
  constructor(tree: ScalarTree, { keyAt, key, parent }: Spot) {
    super(tree.span, keyAt, key, parent);
  }

  get at(): Place {
    return this;
  }

  /** A short value is underlined whole. */
  get focus(): Span {
    return this.span;
  }
}

/** Ids, dates and words of lists stand in many places: each is one string wherever it is held. */
function shared(text: string): string {
  return text.length > longestShared ? text : texts.of(text);
}

const texts = new Remembered(50_000, (text: string) => text);

/** What is longer is a piece of its file's text and takes no room of its own. */
const longestShared = 12;

/** The characters as they stand in the file. */
export class PlainText extends Scalar implements Text {
  readonly text: string;

  constructor(tree: ScalarTree, spot: Spot) {
    super(tree, spot);
    this.text = shared(tree.text);
  }

  get node(): 'text' {
    return 'text';
  }
}

export class RewrittenText extends PlainText implements Text {
  get rewritten(): true {
    return true;
  }
}

/** The id of something else. */
export class Reference extends PlainText implements Text {
  readonly refers: readonly string[];

  constructor(tree: ScalarTree, spot: Spot, refers: readonly string[]) {
    super(tree, spot);
    this.refers = refers;
  }
}

/** Names something or is a word of its own. */
export class OpenReference extends Reference implements Text {
  get open(): true {
    return true;
  }
}

export class FlagScalar extends Scalar implements Flag {
  readonly on: boolean;

  constructor(tree: ScalarTree, spot: Spot) {
    super(tree, spot);
    this.on = tree.text === 'true';
  }

  get node(): 'flag' {
    return 'flag';
  }
}

export class DateScalar extends Scalar implements DateValue {
  readonly text: string;

  constructor(tree: ScalarTree, spot: Spot) {
    super(tree, spot);
    this.text = shared(tree.text);
  }

  get node(): 'date' {
    return 'date';
  }
}

/** What a text says as a quantity: one object for all places that write it alike. */
export interface ReadQuantity extends QuantityValue {
  readonly text: string;
  readonly problem?: QuantityFault;
}

export class QuantityScalar extends Scalar implements Quantity {
  readonly #read: ReadQuantity;

  constructor(tree: ScalarTree, spot: Spot, read: ReadQuantity) {
    super(tree, spot);
    this.#read = read;
  }

  get node(): 'quantity' {
    return 'quantity';
  }

  get text(): string {
    return this.#read.text;
  }

  get dimension(): Dimension {
    return this.#read.dimension;
  }

  get value(): number {
    return this.#read.value;
  }

  get amount(): number {
    return this.#read.amount;
  }

  get unit(): string {
    return this.#read.unit;
  }

  get decimals(): number {
    return this.#read.decimals;
  }

  get reference(): PressureReference | undefined {
    return this.#read.reference;
  }

  get problem(): QuantityFault | undefined {
    return this.#read.problem;
  }
}

/** The amount without its place. A copy by `{ ...quantity }` has none of its numbers. */
export function amountOf({ text, dimension, value, amount, unit, decimals, reference }: Quantity): ReadQuantity {
  return { text, dimension, value, amount, unit, decimals, ...(reference && { reference }) };
}
