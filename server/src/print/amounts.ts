import { unitNamed } from '../judge/unit-named.ts';
import type { LibraryView } from '../library/view.ts';
import type { List, Quantity, Requirement, Text } from '../model/node.ts';
import { formatIn, formatQuantity } from '../quantity/format.ts';
import type { Line, Value } from './piece.ts';
import { amountAs, joined, said, saidAs } from './piece.ts';
import { termIn, type Words } from './words/words.ts';

/** What a paper is printed with: the library, the language and the unit of temperature of the machines' screens. */
export interface Printing {
  readonly view: LibraryView;
  readonly words: Words;
  readonly temperature: 'C' | 'F';
}

export function printingOf(view: LibraryView, words: Words): Printing {
  return { view, words, temperature: view.site()?.units?.temp?.text ?? 'C' };
}

/** A quantity in the spelling of the paper's language; temperatures in the one unit that the screens show. */
export function amount(quantity: Quantity, { words, temperature }: Printing): Value {
  if (quantity.problem !== undefined) return said(quantity);
  const shown =
    quantity.dimension === 'temperature' && quantity.unit !== `°${temperature}`
      ? formatIn(quantity.value, unitNamed('temperature', `°${temperature}`))
      : formatQuantity(quantity);
  return amountAs(quantity, decimals(shown, words));
}

/** `8.3 kg`, `3 times`: with the decimal mark and the counting words of the language. */
export function decimals(text: string, { decimalMark, units }: Words): string {
  const marked = decimalMark === '.' ? text : text.replace('.', decimalMark);
  const gap = marked.indexOf(' ');
  const unit = gap === -1 ? undefined : units.get(marked.slice(gap + 1));
  return unit === undefined ? marked : `${marked.slice(0, gap)} ${unit}`;
}

/** What a page demands, with its bound word; empty where it demands nothing (silent, not applicable, left to others). */
export function demanded(requirement: Requirement | undefined, printing: Printing): Line {
  if (requirement === undefined) return [];
  if (requirement.specific !== undefined) return demanded(requirement.specific, printing);
  const { bounds } = printing.words;
  if (requirement.conflict !== undefined) return bounds.conflict();
  if (requirement.ambiguous !== undefined) return bounds.ask(said(requirement.ambiguous));
  return joined(boundLines(requirement, printing), ', ');
}

function boundLines(requirement: Requirement, printing: Printing): readonly Line[] {
  const { bounds } = printing.words;
  const { at_least, at_most, between, exactly, stated, about } = requirement;
  const lines: Line[] = [];
  if (at_least !== undefined) lines.push(bounds.atLeast(amount(at_least, printing)));
  if (at_most !== undefined) lines.push(bounds.atMost(amount(at_most, printing)));
  const [low, high] = between?.items ?? [];
  if (low !== undefined && high !== undefined)
    lines.push(bounds.between(amount(low, printing), amount(high, printing)));
  if (exactly !== undefined) lines.push(bounds.exactly(amount(exactly, printing)));
  if (stated !== undefined) lines.push([amount(stated, printing)]);
  if (about !== undefined) lines.push(bounds.about(amount(about, printing)));
  return lines;
}

/** A closed word of the rule files in the paper's language. */
export function term(text: Text, { words }: Printing): Value {
  return saidAs(text, termIn(words, text.text));
}

/** Several of them, with commas. */
export function terms(list: List<Text> | undefined, printing: Printing): Line {
  return joined(
    (list?.items ?? []).map((text) => [term(text, printing)]),
    ', ',
  );
}
