import type { Seeded } from '../bench/seeded.ts';
import {
  colons,
  comments,
  keys,
  lineEnds,
  oddKeys,
  oddPlains,
  oddQuoteds,
  pieces,
  plains,
  quoteds,
} from './odd-pieces.ts';

/** A document near the edge of ordinary rule files; the same for the same numbers drawn. `real`: files to start from in half of the cases. */
export function oddDocument(seeded: Seeded, real: readonly string[]): string {
  const text = seeded.next() < 0.5 ? mutated(seeded, window(seeded, seeded.pick(real))) : written(seeded);
  return seeded.next() < 0.08 ? text.replaceAll('\n', '\r\n') : text;
}

/** Some lines of a file, so that a document is read fast; whole files now and then. */
function window(seeded: Seeded, text: string): string {
  if (seeded.next() < 0.05) return text;
  const lines = text.split('\n');
  const from = seeded.next() < 0.5 ? 0 : seeded.below(lines.length);
  return lines.slice(from, from + 1 + seeded.below(12)).join('\n');
}

function mutated(seeded: Seeded, text: string): string {
  let out = text;
  for (let left = seeded.below(4); left > 0; left--) out = mutatedOnce(seeded, out);
  return out;
}

function mutatedOnce(seeded: Seeded, text: string): string {
  const at = seeded.below(text.length + 1);
  switch (seeded.below(5)) {
    case 0:
      return text.slice(0, at) + text.slice(at + 1 + seeded.below(4));
    case 1:
      return text.slice(0, at) + seeded.pick(pieces) + text.slice(at);
    case 2:
      return text.slice(0, at) + seeded.pick(pieces) + text.slice(at + 1 + seeded.below(3));
    case 3: {
      const start = text.lastIndexOf('\n', at) + 1;
      return text[start] === ' ' && seeded.next() < 0.5
        ? text.slice(0, start) + text.slice(start + 1)
        : `${text.slice(0, start)}${' '.repeat(1 + seeded.below(2))}${text.slice(start)}`;
    }
    default: {
      const from = seeded.below(text.length + 1);
      return text.slice(0, at) + text.slice(from, from + seeded.below(20)) + text.slice(at);
    }
  }
}

/** How often something odd is written where something ordinary would do. */
const ODD = 0.012;

function written(seeded: Seeded): string {
  const head =
    seeded.next() < 0.1
      ? seeded.pick(['# head\n', '\n', '---\n', '\ufeff', ' ', '\n  # x\n\n', '%YAML 1.2\n---\n'])
      : '';
  const body = lines(seeded, seeded.next() < 0.05 ? seeded.below(4) : 0, 3);
  return seeded.next() < 0.1 ? `${head}${body.trimEnd()}` : `${head}${body}`;
}

function lines(seeded: Seeded, column: number, depth: number): string {
  let out = '';
  const isList = depth < 3 && seeded.next() < 0.4;
  const first = seeded.below(keys.length);
  for (let left = 1 + seeded.below(4); left > 0; left--) {
    const own = seeded.next() < ODD ? Math.max(0, column + seeded.below(5) - 2) : column;
    out += `${' '.repeat(own)}${isList ? item(seeded, column, depth) : entry(seeded, first + left, column, depth)}`;
  }
  return out;
}

function item(seeded: Seeded, column: number, depth: number): string {
  const gap = seeded.next() < 0.9 ? ' ' : seeded.pick(['', '  ', '   ', '\t']);
  if (seeded.next() < 0.5) return `-${gap}${value(seeded)}${end(seeded)}`;
  const inner = lines(seeded, column + 1 + gap.length, depth - 1);
  return seeded.next() < 0.9 ? `-${gap}${inner.trimStart()}` : `-${end(seeded)}${inner}`;
}

function entry(seeded: Seeded, number: number, column: number, depth: number): string {
  const key = `${keyed(seeded, number)}${odd(seeded, [':'], colons)}`;
  const kind = seeded.next();
  if (kind < 0.65 || depth === 0) return `${key} ${value(seeded)}${end(seeded)}`;
  if (kind < 0.7) return `${key}${end(seeded)}`;
  if (kind < 0.78) return `${key} ${block(seeded, column)}`;
  const step = seeded.next() < 0.8 ? 2 : seeded.below(4);
  return `${key}${end(seeded)}${lines(seeded, column + step, depth - 1)}`;
}

function block(seeded: Seeded, column: number): string {
  const indent = ' '.repeat(column + (seeded.next() < 0.9 ? 2 : seeded.below(4)));
  let out = `${seeded.pick(['|', '>', '|-', '>-', '|', '>', '|+', '|2', '> # c', '|-'])}\n`;
  for (let left = 1 + seeded.below(4); left > 0; left--) {
    const shift = seeded.next() < 0.85 ? indent : seeded.pick(['', ' ', `${indent} `, `${indent}  `]);
    out +=
      seeded.next() < 0.2
        ? seeded.pick(['\n', `${indent}\n`, ' \n', `${indent} \n`])
        : `${shift}${blockLine(seeded)}\n`;
  }
  return out;
}

function blockLine(seeded: Seeded): string {
  return seeded.pick([...plains, ...plains, 'a   b', 'a | b', 'x ', '# c', '- a', 'a: b', '"', 'a\tb', '[', '°C']);
}

function value(seeded: Seeded): string {
  const kind = seeded.next();
  if (kind < 0.45) return odd(seeded, plains, oddPlains);
  if (kind < 0.7) return odd(seeded, quoteds, oddQuoteds);
  return brackets(seeded, 3);
}

function brackets(seeded: Seeded, depth: number): string {
  const isMap = seeded.next() < 0.6;
  const parts: string[] = [];
  const first = seeded.below(keys.length);
  for (let left = seeded.below(4); left > 0; left--) {
    const inner = depth > 0 && seeded.next() < 0.25 ? brackets(seeded, depth - 1) : flat(seeded);
    parts.push(
      isMap ? `${keyed(seeded, first + left)}${odd(seeded, [': '], [':', ' : ', ':  ', '', ' '])}${inner}` : inner,
    );
  }
  const comma = odd(seeded, [', ', ',', ' , '], [',,', ' ', ',\n  ', '\n ', ', # c\n  ']);
  const [open, close] = isMap ? ['{', '}'] : ['[', ']'];
  const pad = seeded.next() < 0.1 ? ' ' : '';
  return `${open}${pad}${parts.join(comma)}${odd(seeded, [pad], [',', ', ', '\n', ' #'])}${odd(seeded, [close], ['', ']', '}', `${close}x`, `${close}:`])}`;
}

function flat(seeded: Seeded): string {
  return seeded.next() < 0.6 ? odd(seeded, plains, oddPlains) : odd(seeded, quoteds, oddQuoteds);
}

function end(seeded: Seeded): string {
  const space = seeded.next() < 0.05 ? ' '.repeat(1 + seeded.below(3)) : '';
  const comment = seeded.next() < 0.05 ? seeded.pick(comments) : '';
  return `${space}${comment}${odd(seeded, ['\n'], lineEnds)}`;
}

/** Another key for each number; twice the same key is one of the odd things. */
function keyed(seeded: Seeded, number: number): string {
  if (seeded.next() < ODD) return seeded.pick([...keys, ...oddKeys]);
  return keys[number % keys.length] ?? '';
}

function odd(seeded: Seeded, usual: readonly string[], unusual: readonly string[]): string {
  return seeded.next() < ODD ? seeded.pick(unusual) : seeded.pick(usual);
}
