/** What the server says to an editor that goes through the sentences of an instruction: texts without markup, and what each choice does. */

/** The next sentence, with what can be done with it; the first choice is what its words say. */
export interface SentenceContent {
  readonly is: 'sentence';
  /** Id of the statement; empty when the choice is about the pasted text as a whole. */
  readonly statement: string;
  readonly title: string;
  readonly quote: string;
  /** What is asked, with what to mind. */
  readonly asks: string;
}

/** Nothing is left to be asked. */
export interface SentencesDone {
  readonly is: 'done';
  /** How many sentences became what; empty where there are none. */
  readonly counts: string;
  readonly words: string;
}

/** What is still to be done when all sentences have been gone through. */
export interface FurtherPiece {
  readonly label: string;
  readonly detail: string;
  readonly file?: FurtherFile;
}

/** A file of its own: its kind and what is known of it already. */
export interface FurtherFile {
  readonly kind: string;
  readonly known: Readonly<Record<string, readonly string[]>>;
}

/** What has been told of a sentence so far; an editor gives it back as it came. */
export interface Told {
  /** Way of cleaning that the sentence is about, or how several belong together; empty: none of them. */
  readonly way?: string;
  /** The word chosen in each place with a choice, by its position; empty: the first. Of pasted pages: where their marks stand, or where each begins. */
  readonly words: readonly string[];
  /** What is to be asked next instead of the sentence as a whole. */
  readonly next?: 'bounds' | 'reason' | 'field' | 'more' | 'instead' | 'page';
  /** The field that somebody chose for it. */
  readonly field?: string;
  /** What somebody typed into that field. */
  readonly text?: string;
}

/** An item that is asked for: the list it goes into, and what the sentence says of it, by field. */
export interface AddedItem {
  readonly list: string;
  readonly known: Readonly<Record<string, string>>;
}

export interface SentenceChoice {
  readonly label: string;
  readonly detail: string;
  readonly does: 'fields' | 'nothing' | 'open' | 'ask' | 'stop';
  /** Only where it asks on about the same sentence. */
  readonly told?: Told;
  /** Asks for a further item of a list, part by part, and comes back to the sentence. */
  readonly adds?: AddedItem;
  /** A file that the library has not yet, asked for when the choice has been put in. */
  readonly file?: FurtherFile;
  /** Asks for words first, which go into `told` as its text: what is asked for. */
  readonly types?: string;
}
