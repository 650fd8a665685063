import { readFileSync } from 'node:fs';
import { afterNewLine } from '../../server/src/editor/writing/new-line.ts';
import { applyEdits } from '../../server/src/syntax/edits.ts';

/** Pressing Enter in a rule file, as VS Code and as an editor without rules of its own do it: then the server is asked. */

interface EnterRule {
  readonly beforeText: string;
  readonly afterText: string;
  readonly action: { readonly indent: 'none' | 'indent'; readonly appendText?: string };
}

const configuration = new URL('../../client/language-configuration.json', import.meta.url);
const { onEnterRules } = JSON.parse(readFileSync(configuration, 'utf8')) as { onEnterRules: readonly EnterRule[] };

export type With = 'rules of VS Code' | 'the server alone';

export interface Typing {
  readonly text: string;
  readonly cursor: number;
}

export function enter({ text, cursor }: Typing, by: With): Typing {
  const start = text.lastIndexOf('\n', cursor - 1) + 1;
  const before = text.slice(start, cursor);
  const end = text.indexOf('\n', cursor) < 0 ? text.length : text.indexOf('\n', cursor);
  const after = text.slice(cursor, end);
  const indent = /^ */.exec(before)?.[0] ?? '';
  const rule =
    by === 'the server alone'
      ? undefined
      : onEnterRules.find(
          ({ beforeText, afterText }) => new RegExp(beforeText).test(before) && new RegExp(afterText).test(after),
        );
  const added = `${indent}${rule?.action.indent === 'indent' ? '  ' : ''}${rule?.action.appendText ?? ''}`;
  // What an editor put in by itself and nobody wrote behind is taken away again when the cursor leaves the line.
  const left = before.trim() === '' ? '' : before;
  return asTheServerHasIt({
    text: `${text.slice(0, start)}${left}\n${added}${text.slice(cursor)}`,
    cursor: start + left.length + 1 + added.length,
  });
}

function asTheServerHasIt({ text, cursor }: Typing): Typing {
  const edits = afterNewLine(text, cursor);
  const applied = applyEdits(text, edits);
  // What is put in before the cursor, and what is taken away there, moves it.
  const up = edits.filter(({ span }) => span.start <= cursor);
  const isBehind = up.at(-1)?.span.start === cursor && up.at(-1)?.text === '';
  const moving = isBehind ? up.slice(0, -1) : up;
  const last = moving.at(-1);
  if (!('text' in applied) || last === undefined) return { text, cursor };
  const earlier = moving.slice(0, -1).map(({ span, text: added }) => added.length - (span.end - span.start));
  const shift = earlier.reduce((sum, one) => sum + one, 0);
  return { text: applied.text, cursor: last.span.start + last.text.length + shift };
}

/** The line with the cursor, up to it. */
export function lineAtCursor({ text, cursor }: Typing): string {
  return text.slice(text.lastIndexOf('\n', cursor - 1) + 1, cursor);
}
