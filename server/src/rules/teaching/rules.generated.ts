// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as answerKeyDrift } from './answer-key-drift.ts';
import { rule as cardStale } from './card-stale.ts';
import { rule as cautionMissingOnOutput } from './caution-missing-on-output.ts';
import { rule as changeWithoutTraining } from './change-without-training.ts';
import { rule as competencyOverdue } from './competency-overdue.ts';
import { rule as posterOvergeneralises } from './poster-overgeneralises.ts';
import { rule as questionManyTrue } from './question-many-true.ts';
import { rule as stepWithoutWhy } from './step-without-why.ts';

export const teachingRules: readonly AnyRule[] = [
  answerKeyDrift,
  cardStale,
  cautionMissingOnOutput,
  changeWithoutTraining,
  competencyOverdue,
  posterOvergeneralises,
  questionManyTrue,
  stepWithoutWhy,
];
