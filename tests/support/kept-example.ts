import type { FileId } from '../../server/src/base/brand.ts';
import type { Engine } from '../../server/src/check/engine.ts';
import type { KeptFile, UnreadReason } from '../../server/src/library/kept-file.ts';
import { cleanPaste } from '../../server/src/quantity/prose/clean-paste.ts';

/** Puts one file of a marked example into an engine: a rule file, or a document that the library keeps. */
export function takeExample(engine: Engine, file: FileId, text: string): void {
  if (file.endsWith('.ifu.yaml')) engine.set(file, text);
  else engine.keep(file, keptExample(text));
}

/**
 * A document as an example writes it: its text, a line `--- next page` between pages; `(missing)`, `(broken)` or `(locked)` in place of text
 * for what can't be read; a line `sha256: ...` where the checksum matters.
 */
function keptExample(text: string): KeptFile {
  const sha256 = /^sha256: ([0-9a-f]{64})$/m.exec(text)?.[1];
  const said = text.replace(/^sha256: .{0,100}\n?/m, '').trim();
  if (said === '(missing)') return { state: 'missing' };
  if (said === '(broken)' || said === '(locked)')
    return { state: 'unread', why: said.slice(1, -1) as UnreadReason, ...(sha256 !== undefined && { sha256 }) };
  const pages = said.split(/^--- next page$/m).map((page) => ({ text: cleanPaste(page).text.trim() }));
  return { state: 'read', sha256: sha256 ?? '0'.repeat(64), pages };
}
