import type { Phrase } from './wording.ts';

/*
 * Words that the rules on packaging, release and sterilization look for, kept apart from the rules. An educator may read and lengthen
 * these lists; how they are read is told in wording.ts.
 */

/** Ways to say that one cycle kills as much as another. */
export const lethalityWords: readonly Phrase[] = [
  ['f0'],
  ['fo', 'value'],
  ['lethality'],
  ['same', 'kill'],
  ['equal', 'kill'],
  ['equivalent', 'cycle'],
  ['equivalent', 'exposure'],
  ['equivalent', 'time'],
  ['log', 'reduction'],
  ['letalit*'],
];

/** The heat dose of thermal disinfection: a department may accept it, by a policy with a source. */
export const a0Words: readonly Phrase[] = [['a0']];

/** A page that tells with what it was tested. */
export const testedWith: readonly Phrase[] = [
  ['validated', 'with'],
  ['validated', 'using'],
  ['validated', 'in'],
  ['tested', 'with'],
  ['tested', 'using'],
  ['tested', 'in'],
  ['was', 'validated'],
  ['were', 'validated'],
  ['validiert', 'mit'],
  ['validiert', 'in'],
  ['geprüft', 'mit'],
  ['validé', 'avec'],
  ['testé', 'avec'],
];

/** A page that allows nothing else. */
export const onlyWords: readonly Phrase[] = [
  ['only'],
  ['exclusively'],
  ['must'],
  ['do', 'not', 'use'],
  ['nur'],
  ['ausschließlich'],
  ['uniquement'],
  ['exclusivement'],
];

/** Releases that wait for the biological result. */
export const biologicalRelease: readonly Phrase[] = [['biological*'], ['bi'], ['spore', 'test'], ['bio', 'result']];

/** Releases that do not wait. */
export const earlyRelease: readonly Phrase[] = [
  ['before', 'result'],
  ['before', 'biological'],
  ['without', 'waiting'],
  ['without', 'result'],
  ['without', 'biological'],
  ['not', 'wait'],
  ['print', 'out'],
  ['printout'],
  ['print', 'only'],
  ['parametric*'],
  ['chemical', 'indicator', 'only'],
];

/** Words that take dryness of steam for saturation. */
export const saturationWords: readonly Phrase[] = [['saturat*'], ['sättigung*']];

/** A page that asks for packaging with a property, whoever makes it. */
export const clearedWords: readonly Phrase[] = [
  ['cleared', 'for'],
  ['cleared'],
  ['ce', 'marked'],
  ['legally', 'marketed'],
  ['suitable', 'for', 'the', 'cycle'],
  ['zugelassen*'],
  ['zyklus', 'geeignet*'],
  ['autorisé*'],
];
