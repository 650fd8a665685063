/** What one file may cost. Counts are generous for any real rule file and small for any machine. */
export interface ReadLimits {
  /** UTF-16 units of the whole file. */
  readonly fileLength: number;
  /** Lists and maps inside each other. */
  readonly depth: number;
  /** Keys in the whole file. */
  readonly keys: number;
  /** UTF-16 units of one value. */
  readonly textLength: number;
  /** UTF-16 units of one key. */
  readonly keyLength: number;
  /** Problems listed; the rest are counted. */
  readonly problems: number;
}

export const defaultLimits: ReadLimits = {
  fileLength: 1_000_000,
  depth: 64,
  keys: 50_000,
  textLength: 50_000,
  keyLength: 200,
  problems: 100,
};
