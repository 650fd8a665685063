import { fileId } from '../../server/src/base/brand.ts';
import { catalogueOf } from '../../server/src/check/catalogue.ts';
import { Engine } from '../../server/src/check/engine.ts';
import { completionsAt } from '../../server/src/editor/completion/completion.ts';
import type { Offer, Piece } from '../../server/src/editor/writing/offer.ts';
import type { FileRecord } from '../../server/src/library/file-record.ts';
import { allRules } from '../../server/src/rules/all.generated.ts';
import { testDay } from './examples.ts';
import { readSample } from './samples.ts';

/** A library in which one file is being written; `‸` in its text is the cursor. */
export interface Desk {
  readonly engine: Engine;
  readonly record: FileRecord;
  readonly cursor: number;
}

export function deskWith(marked: string, files: Readonly<Record<string, string>> = {}, name = 'here.ifu.yaml'): Desk {
  const engine = new Engine({ rules: [], today: testDay });
  for (const [path, text] of Object.entries(files)) engine.set(fileId(path), text);
  return put(engine, marked, name);
}

/** The corrected demonstration department with one more file. */
export function sampleDesk(marked: string, name = 'here.ifu.yaml'): Desk {
  return put(sampleEngine(), marked, name);
}

export function sampleEngine(sample = 'lanternfield-corrected'): Engine {
  const engine = new Engine({ rules: [], today: testDay });
  for (const [path, text] of readSample(sample)) engine.set(path, text);
  return engine;
}

function put(engine: Engine, marked: string, name: string): Desk {
  const cursor = marked.indexOf('‸');
  if (cursor < 0) throw new Error('no cursor in the text');
  engine.set(fileId(name), marked.replace('‸', ''));
  const record = engine.library.record(fileId(name));
  if (record === undefined) throw new Error('the file is not there');
  return { engine, record, cursor };
}

const rules = catalogueOf(allRules).map(({ id, why }) => ({ id, why }));

export function offersAt({ engine, record, cursor }: Desk): readonly Offer[] {
  return completionsAt(record, cursor, engine.view(), rules).offers;
}

/** The text after an offer was accepted and its holes were filled: numbers with 7, words with `words`. */
export function accepted({ record }: Desk, offer: Offer, fill: (piece: Piece) => string = filled): string {
  const { start, end } = offer.span;
  return `${record.text.slice(0, start)}${offer.pieces.map(fill).join('')}${record.text.slice(end)}`;
}

export function filled(piece: Piece): string {
  if (typeof piece === 'string') return piece;
  if (piece.choices !== undefined) return piece.choices[0] ?? '';
  return piece.hole === 'number' ? '7' : piece.hole === 'words' ? 's1' : '';
}

/** The text after the offer of this name was accepted, holes shown as `…`. */
export function withOffer(desk: Desk, label: string): string {
  const offer = offersAt(desk).find((one) => one.label === label);
  if (offer === undefined) throw new Error(`"${label}" is not offered: ${labels(desk).join(', ')}`);
  return accepted(desk, offer, (piece) => (typeof piece === 'string' ? piece : (piece.choices?.[0] ?? '…')));
}

export function labels(desk: Desk): readonly string[] {
  return offersAt(desk).map(({ label }) => label);
}
