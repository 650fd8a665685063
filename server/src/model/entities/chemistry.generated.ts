// Generated from schemas/ by `npm run generate`. Do not edit.
import type { Citation, DateValue, Flag, List, Quantity, Rec, Requirement, Table, Text } from '../node.ts';
import type { Review } from './review.generated.ts';
import type { Source } from './source.generated.ts';
import type { Statement } from './statement.generated.ts';
import type { UseStatement } from './use-statement.generated.ts';

/** A detergent, neutraliser, lubricant or other agent the department uses. */
export interface Chemistry extends Rec {
  /** Says what this file describes. It stands first in the file. */
  readonly kind?: Text<'chemistry'>;
  /** Short name by which other files refer to this one. It stands second in the file. */
  readonly id?: Text;
  /** Name by which the department knows it. */
  readonly name?: Text;
  /** Who makes it. */
  readonly maker?: Text;
  /** Site that uses it, where there are several and not all do. */
  readonly site?: Text;
  /** What kind of product it is. */
  readonly class?: Text<'neutral' | 'enzymatic' | 'neutral-enzymatic' | 'mild-alkaline' | 'alkaline' | 'strong-alkaline' | 'acid' | 'neutraliser' | 'lubricant' | 'rinse-aid' | 'rust-remover' | 'disinfectant' | 'alcohol' | 'keep-moist' | 'mild' | 'low-foaming'>;
  /** pH of the diluted solution. */
  readonly ph_in_use?: Requirement;
  /** pH of the product in the drum. */
  readonly ph_concentrate?: Requirement;
  /** pH where the label does not say whether in use or concentrate. */
  readonly ph?: Quantity;
  /** Temperatures at which it works. */
  readonly temp?: Requirement;
  /** How long it must, or may, act. */
  readonly time?: Requirement;
  /** Dose of the label. */
  readonly dose?: Quantity;
  /** Doses the label accepts. */
  readonly dose_range?: Requirement;
  /** How it is measured at the sink. */
  readonly dosing_aid?: Text;
  /** Methods on the label. Anything not listed is not covered. */
  readonly methods?: List<Text<'manual' | 'ultrasonic' | 'mechanical' | 'disinfection' | 'point-of-use' | 'lubrication'>>;
  /** How much it foams. */
  readonly foam?: Text<'low' | 'high'>;
  /** Yes when it contains enzymes. */
  readonly enzymatic?: Flag;
  /** Ingredients that matter for materials. */
  readonly ingredients?: List<Text>;
  /** Step that must go with it. */
  readonly couples?: Text;
  /** Whether it must be rinsed off. */
  readonly rinse?: UseStatement;
  /** When the solution is changed. */
  readonly solution_change?: Text;
  /** Day from which it can no longer be bought. */
  readonly discontinued_on?: DateValue;
  /** Product the maker offers instead. */
  readonly replaced_by?: Text;
  /** Materials the label names as suitable. */
  readonly suitable_materials?: List<Text>;
  /** Materials the label names as unsuitable. */
  readonly unsuitable_materials?: List<Text>;
  /** Yes when it is not bought yet and only tried out here. */
  readonly proposed?: Flag;
  /** The statement behind what this file says as a whole. */
  readonly src?: Citation;
  /** The documents this file is taken from. */
  readonly sources?: List<Source>;
  /** The passages of the documents that the values cite, each under a short id. */
  readonly statements?: Table<Statement>;
  /** Who encoded this file, who checked it, and when it is due again. */
  readonly review?: Review;
  /** Anything a reader should know. Never judged. */
  readonly notes?: List<Text>;
}
