import type { FileId, IsoDate } from '../base/brand.ts';
import { fileId } from '../base/brand.ts';
import { Engine } from '../check/engine.ts';
import type { AnyRule } from '../rules/rule.ts';

/** A document that lies in no library: not yet saved, of another computer, or of a folder without a library. Checked by itself. */
export class LooseDocument {
  readonly engine: Engine;
  readonly file: FileId;

  constructor(uri: string, rules: readonly AnyRule[], today: IsoDate) {
    this.engine = new Engine({ rules, today });
    this.file = fileId(nameOf(uri));
  }

  open(text: string): void {
    this.engine.set(this.file, text);
  }
}

function nameOf(uri: string): string {
  const path = uri.split(/[?#]/)[0] ?? '';
  return path.slice(path.lastIndexOf('/') + 1, path.length).slice(-255) || 'document';
}
