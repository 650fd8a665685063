import type { Reading } from './reading.ts';
import type { ScalarTree } from './tree.ts';
import { shown } from './words.ts';

/** Above this many keys in one map a Map is faster than looking back. */
const LOOK_BACK = 8;

/**
 * The keys of one map. Reports a key that is there already: the same text (quoted or not), the same text in another Unicode form, or
 * the same but for capital letters.
 */
export class KeyRegister {
  readonly #reading: Reading;
  readonly #keys: ScalarTree[] = [];
  readonly #folded: string[] = [];
  #byFolded: Map<string, ScalarTree> | undefined;

  constructor(reading: Reading) {
    this.#reading = reading;
  }

  add(key: ScalarTree): void {
    const folded = foldKey(key.text);
    const earlier = this.#find(folded);
    if (earlier !== undefined) this.#reportTwin(key, earlier);
    else this.#remember(folded, key);
  }

  #find(folded: string): ScalarTree | undefined {
    if (this.#byFolded !== undefined) return this.#byFolded.get(folded);
    const at = this.#folded.indexOf(folded);
    return at < 0 ? undefined : this.#keys[at];
  }

  #remember(folded: string, key: ScalarTree): void {
    if (this.#byFolded !== undefined) {
      this.#byFolded.set(folded, key);
      return;
    }
    this.#folded.push(folded);
    this.#keys.push(key);
    if (this.#keys.length <= LOOK_BACK) return;
    this.#byFolded = new Map();
    for (const [at, known] of this.#keys.entries()) this.#byFolded.set(this.#folded[at] ?? '', known);
  }

  #reportTwin(key: ScalarTree, earlier: ScalarTree): void {
    const related = [{ span: earlier.span, note: 'written here first' }];
    if (key.text === earlier.text) {
      const message = `The key ${shown(key.text)} is written twice here. Keep one of the two.`;
      this.#reading.sink.report('duplicate-key', key.span, message, { related });
    } else if (key.text.normalize('NFC') === earlier.text.normalize('NFC')) {
      const message = `Two keys here print as ${shown(key.text)} but are stored with different characters. Keep one of the two.`;
      this.#reading.sink.report('look-alike-key', key.span, message, { related });
    } else {
      const message = `${shown(key.text)} and ${shown(earlier.text)} differ only in capital letters. If they are one key, keep one of the two.`;
      this.#reading.sink.report('twin-key', key.span, message, { related });
    }
  }
}

/** Nearly every key is small letters already; then it is its own folded form. */
function foldKey(text: string): string {
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code > 127) return text.normalize('NFC').toLowerCase();
    if (code >= 65 && code <= 90) return text.toLowerCase().normalize('NFC');
  }
  return text;
}
