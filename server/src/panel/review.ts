/** How much a change weighs here. Each has a sign and a word of its own on the page. */
export type ReviewMark = 'breaks' | 'changes' | 'opens' | 'quiet' | 'unknown';

/** A comparison for a view in which a person decides: plain words throughout, places as numbers. */
export interface Review {
  readonly old: string;
  readonly now: string;
  readonly counts: string;
  /** Document, revisions, dates, the maker's reason; for which department effects were derived. */
  readonly head: readonly string[];
  readonly lost: readonly LostPassage[];
  readonly together: readonly string[];
  readonly changes: readonly ReviewRow[];
  /** What follows from all of it: cards to print, sets on hold. */
  readonly totals: readonly ReviewTotal[];
  readonly notices: readonly string[];
  readonly cautions: readonly string[];
}

export interface LostPassage {
  readonly quote: string;
  readonly from: string;
  /** Fingerprints of the changes that tell of it. */
  readonly see: readonly string[];
}

export interface ReviewRow {
  readonly fingerprint: string;
  readonly title: string;
  readonly where: string;
  readonly mark: ReviewMark;
  readonly effect: string;
  readonly effectWords: string;
  readonly because: string;
  readonly action: string;
  /** `decide`: a person must; `look`: wording only, to be looked at; `settled`: on record already. */
  readonly needs: 'decide' | 'look' | 'settled';
  readonly state: string;
  readonly old: ReviewSide;
  readonly now: ReviewSide;
  readonly reach: readonly string[];
}

export interface ReviewSide {
  /** Empty where nothing stands there. */
  readonly words: string;
  readonly quotes: readonly ReviewQuote[];
  /** In the list of places. */
  readonly place?: number;
}

export interface ReviewQuote {
  readonly text: string;
  /** Document, revision and page. */
  readonly from: string;
}

export interface ReviewTotal {
  readonly label: string;
  readonly ids: readonly string[];
}
