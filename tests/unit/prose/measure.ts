import type { Language } from '../../../server/src/quantity/prose/token.ts';
import { judgePair, truthOf } from './judge-pair.ts';
import type { Row } from './rows.ts';

export interface Score {
  /** Faults found that are real, found that are not, and missed. */
  hits: number;
  extra: number;
  missed: number;
}

export interface Measurement {
  readonly all: Score;
  readonly byFault: ReadonlyMap<string, Score>;
  /** Rows that came out otherwise than their truth, for reading. */
  readonly wrong: readonly string[];
}

/** A share of 1 where there is nothing to find or nothing found. */
export function precision(score: Score): number {
  return score.hits + score.extra === 0 ? 1 : score.hits / (score.hits + score.extra);
}

export function recall(score: Score): number {
  return score.hits + score.missed === 0 ? 1 : score.hits / (score.hits + score.missed);
}

export function measure(groups: readonly (readonly [Language, readonly Row[]])[]): Measurement {
  const all: Score = { hits: 0, extra: 0, missed: 0 };
  const byFault = new Map<string, Score>();
  const wrong: string[] = [];
  for (const [language, rows] of groups) {
    for (const row of rows) {
      const truth = [...truthOf(row)];
      const found = [...judgePair(row, language)];
      if (truth.join() !== found.join())
        wrong.push(`${row[0]}\n   ${row[1]}\n   truth ${truth.join()}; found ${found.join()}`);
      countRow(truth, found, all, byFault);
    }
  }
  return { all, byFault, wrong };
}

function countRow(truth: string[], found: readonly string[], all: Score, byFault: Map<string, Score>): void {
  for (const fault of found) {
    const at = truth.indexOf(fault);
    if (at >= 0) truth.splice(at, 1);
    add(fault, at >= 0 ? 'hits' : 'extra', all, byFault);
  }
  for (const fault of truth) add(fault, 'missed', all, byFault);
}

function add(fault: string, what: keyof Score, all: Score, byFault: Map<string, Score>): void {
  const score = byFault.get(fault) ?? { hits: 0, extra: 0, missed: 0 };
  score[what]++;
  all[what]++;
  byFault.set(fault, score);
}
