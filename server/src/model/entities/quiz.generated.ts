// Generated from schemas/ by `npm run generate`. Do not edit.
import type { DateValue, List, Quantity, Rec, Text } from '../node.ts';
import type { Review } from './review.generated.ts';

/** A question for teaching, tied to the value it asks for. */
export interface Quiz extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'quiz'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** The question as printed. */
  readonly text?: Text;
  /** What kind of question it is. */
  readonly template?: Text<'value' | 'who-governs' | 'may-i' | 'spot-the-error' | 'where' | 'sequence' | 'bound-words' | 'stop-point' | 'calculation'>;
  /** Set, device or procedure it is about. */
  readonly about?: Text;
  /** Path of the value that is the answer. */
  readonly path?: Text;
  /** The right answer. */
  readonly key?: Text;
  /** How far a worked-out number may be off. */
  readonly tolerance?: Text;
  /** Lowest and highest value that is also right. */
  readonly range?: List<Text>;
  /** Answers offered that are wrong. */
  readonly distractors?: List<Text>;
  /** Reason printed with the key. */
  readonly why?: Text;
  /** Document, revision and page printed with the key. */
  readonly src?: Text;
  /** Stage of the work it is about. */
  readonly stage?: Text<'point-of-use' | 'transport' | 'receipt' | 'quarantine' | 'disassembly' | 'manual' | 'ultrasonic' | 'mechanical' | 'rinse' | 'disinfection' | 'drying' | 'inspection' | 'lubrication' | 'assembly' | 'packaging' | 'loading' | 'steam' | 'low-temperature' | 'sterilization' | 'aeration' | 'cooling' | 'release' | 'storage' | 'use'>;
  /** Roles it is for. */
  readonly audience?: List<Text>;
  /** How many facts must be joined. */
  readonly difficulty?: Quantity;
  /** Content stamp of the value when the question was made. */
  readonly stamp?: Text;
  /** Day on which it was made. */
  readonly made_on?: DateValue;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}
