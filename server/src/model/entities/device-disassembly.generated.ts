// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Rec, Text } from '../node.ts';

/** How the device is taken apart and when it is put together again. */
export interface Disassembly extends Rec {
  /** The steps in order. */
  readonly steps?: List<DisassemblyStep>;
  /** Parts that must stay together. */
  readonly keep_together?: Text;
  /** Parts that must not be taken apart. */
  readonly leave_together?: List<Text>;
  /** Jaws, valves and stopcocks to open. */
  readonly open?: List<Text>;
  /** Whether it is together or apart at each stage. */
  readonly assembled_for?: AssembledFor;
  /** Yes when a reader looked and the document says nothing here. Silence neither permits nor forbids. */
  readonly silent?: Flag;
  /** Day on which a reader looked for this in the document. */
  readonly checked?: DateValue;
  /** What the page says when nobody could do it the same way twice. */
  readonly ambiguous?: Text;
  /** Id of the question put to the manufacturer about this. */
  readonly ask?: Text;
  /** Why this does not apply to the item. */
  readonly not_applicable?: Text;
  /** Whom the page leaves this to: the department, the detergent maker or a standard. */
  readonly defers_to?: Text<'department' | 'chemistry' | 'standard'>;
  /** The standard named by the page, with its edition. */
  readonly edition?: Text;
  /** The words of the page, where they help a reader. */
  readonly as_written?: Text;
  /** Whether the page says must, should or may. */
  readonly strength?: Text<'must' | 'should' | 'may'>;
  /** The situation in which this applies. Without it, it always applies. */
  readonly when?: Text;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** One step of taking apart or putting together. */
export interface DisassemblyStep extends Rec {
  /** What is done. */
  readonly do?: Text;
  /** Part that is taken off. */
  readonly part?: Text;
  /** Tool that is needed. */
  readonly tool?: Text;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}

/** Whether the device is together (true) or apart (false) at each stage. */
export interface AssembledFor extends Rec {
  /** true when it is cleaned assembled, false when apart. */
  readonly cleaning?: Flag;
  /** true when it is packed assembled, false when apart. */
  readonly packaging?: Flag;
  /** true when it is sterilized assembled, false when apart. */
  readonly sterilization?: Flag;
  /** The statement, or statements, that say this. */
  readonly src?: Citation;
  /** Anything a reader should know. It is never judged. */
  readonly note?: Text;
}
