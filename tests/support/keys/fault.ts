import type { QuizTemplate } from '../../../server/src/print/quiz/question.ts';
import type { Asked, Fault } from './asked.ts';
import { valueFault, whoFault } from './numbers.ts';
import { boundFault, errorFault } from './pages.ts';
import { placeFault } from './places.ts';
import { stopFault } from './stops.ts';
import { sumFault } from './sums.ts';
import { mayIFault, sequenceFault } from './ways.ts';

/** A template without a second way to its key does not compile. */
const faults: Readonly<Record<QuizTemplate, (asked: Asked) => Fault>> = {
  value: valueFault,
  'who-governs': whoFault,
  'may-i': mayIFault,
  'spot-the-error': errorFault,
  where: placeFault,
  sequence: sequenceFault,
  'bound-words': boundFault,
  'stop-point': stopFault,
  calculation: sumFault,
};

/** Why the key, or one of the wrong answers, does not hold when it is derived a second time; undefined when all do. */
export function keyFault(asked: Asked): Fault {
  return faults[asked.draft.template](asked);
}
