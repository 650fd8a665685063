// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, Rec, Text } from '../node.ts';

/** Something the page says never to do. It survives merging and no procedure can lift it. */
export interface Prohibition extends Rec {
  /** The method, agent or act that is forbidden. */
  readonly what?: Text;
  /** The number that goes with it, with its unit. */
  readonly value?: Text;
  /** The situation in which this applies. Without it, it always applies. */
  readonly when?: Text;
  /** The words of the page, where they help a reader. */
  readonly as_written?: Text;
  /** Whether the page says must, should or may. */
  readonly strength?: Text<'must' | 'should' | 'may'>;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}
