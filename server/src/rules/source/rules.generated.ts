// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as alternativesMixed } from './alternatives-mixed.ts';
import { rule as ambiguousWithoutQuestion } from './ambiguous-without-question.ts';
import { rule as approximateUsedAsLimit } from './approximate-used-as-limit.ts';
import { rule as bareNumberPromoted } from './bare-number-promoted.ts';
import { rule as citationOfOtherSubject } from './citation-of-other-subject.ts';
import { rule as decimalOrFootnoteSuspect } from './decimal-or-footnote-suspect.ts';
import { rule as deltaConvertedAsAbsolute } from './delta-converted-as-absolute.ts';
import { rule as encodedFromSecondarySource } from './encoded-from-secondary-source.ts';
import { rule as encoderIsApprover } from './encoder-is-approver.ts';
import { rule as exposureVsTotalTime } from './exposure-vs-total-time.ts';
import { rule as halfCycleEncoded } from './half-cycle-encoded.ts';
import { rule as minTokenAmbiguous } from './min-token-ambiguous.ts';
import { rule as passageNotEncoded } from './passage-not-encoded.ts';
import { rule as passageWithoutWords } from './passage-without-words.ts';
import { rule as pictogramWithoutText } from './pictogram-without-text.ts';
import { rule as prohibitionInPart } from './prohibition-in-part.ts';
import { rule as prohibitionNotInQuote } from './prohibition-not-in-quote.ts';
import { rule as quoteAndOrChanged } from './quote-and-or-changed.ts';
import { rule as quoteBoundChanged } from './quote-bound-changed.ts';
import { rule as quoteModalityChanged } from './quote-modality-changed.ts';
import { rule as quoteNegationLost } from './quote-negation-lost.ts';
import { rule as quoteNotOnPage } from './quote-not-on-page.ts';
import { rule as quoteNumberMismatch } from './quote-number-mismatch.ts';
import { rule as quoteNumberNotEncoded } from './quote-number-not-encoded.ts';
import { rule as quotePackagingChanged } from './quote-packaging-changed.ts';
import { rule as quoteRelationChanged } from './quote-relation-changed.ts';
import { rule as quoteStageLeftOut } from './quote-stage-left-out.ts';
import { rule as quoteStepLeftOut } from './quote-step-left-out.ts';
import { rule as rangeReversed } from './range-reversed.ts';
import { rule as silentFieldFilled } from './silent-field-filled.ts';
import { rule as sourceMissing } from './source-missing.ts';
import { rule as stageUndeclared } from './stage-undeclared.ts';
import { rule as stepDetailUneven } from './step-detail-uneven.ts';
import { rule as unitMissingOrImplausible } from './unit-missing-or-implausible.ts';
import { rule as unitPairMismatch } from './unit-pair-mismatch.ts';

export const sourceRules: readonly AnyRule[] = [
  alternativesMixed,
  ambiguousWithoutQuestion,
  approximateUsedAsLimit,
  bareNumberPromoted,
  citationOfOtherSubject,
  decimalOrFootnoteSuspect,
  deltaConvertedAsAbsolute,
  encodedFromSecondarySource,
  encoderIsApprover,
  exposureVsTotalTime,
  halfCycleEncoded,
  minTokenAmbiguous,
  passageNotEncoded,
  passageWithoutWords,
  pictogramWithoutText,
  prohibitionInPart,
  prohibitionNotInQuote,
  quoteAndOrChanged,
  quoteBoundChanged,
  quoteModalityChanged,
  quoteNegationLost,
  quoteNotOnPage,
  quoteNumberMismatch,
  quoteNumberNotEncoded,
  quotePackagingChanged,
  quoteRelationChanged,
  quoteStageLeftOut,
  quoteStepLeftOut,
  rangeReversed,
  silentFieldFilled,
  sourceMissing,
  stageUndeclared,
  stepDetailUneven,
  unitMissingOrImplausible,
  unitPairMismatch,
];
