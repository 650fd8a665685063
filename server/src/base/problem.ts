import type { Span } from './span.ts';

/** One replacement of text: the bytes in `span` become `text`. Nothing outside the span is touched. */
export interface Edit {
  readonly span: Span;
  readonly text: string;
}

/** A change offered to the writer, in words. `edits` never overlap and never invent a number. */
export interface Fix {
  readonly title: string;
  readonly edits: readonly Edit[];
  /** It mends nothing but notes why the finding does not count, so a person chooses it for one finding at a time. */
  readonly setsAside?: true;
}

/** Something wrong in one file that can be said without knowing any other file: a mistake of the writer, as a value. */
export interface Problem {
  /** Names the fault, kebab-case: `unknown-key`, `number-loses-zero`, ... */
  readonly rule: string;
  readonly message: string;
  readonly span: Span;
  readonly severity: Severity;
  readonly fixes?: readonly Fix[];
  readonly related?: readonly { readonly span: Span; readonly note: string }[];
}

/** error fails a check; warning is counted and needs an owner; advice never fails. */
export type Severity = 'error' | 'warning' | 'advice';
