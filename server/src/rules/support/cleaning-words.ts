import type { Phrase } from './wording.ts';

/*
 * Words by which procedures name fluids, acts and tools of cleaning. An educator may read and lengthen these lists; how they are read
 * is told in wording.ts.
 */

/** Fluids that attack steel while it waits. */
export const harshFluids: readonly Phrase[] = [
  ['saline'],
  ['sodium', 'chloride'],
  ['nacl'],
  ['ringer'],
  ['ringers'],
  ['hypochlorite'],
  ['bleach'],
  ['chlorine'],
  ['iodine'],
  ['povidone'],
  ['kochsalz*'],
];

export const rinsing: readonly Phrase[] = [['rinse*'], ['final', 'rinse'], ['flush*'], ['wipe', 'again'], ['swish']];

export const soaking: readonly Phrase[] = [['soak*'], ['immers*'], ['submerg*']];

export const flushing: readonly Phrase[] = [['flush*'], ['irrigat*']];

export const actuating: readonly Phrase[] = [['actuat*'], ['open', 'close'], ['move'], ['rotate'], ['trigger']];

/** Tools and powders that scratch. */
export const abrasives: readonly Phrase[] = [
  ['wire'],
  ['steel', 'wool'],
  ['steel', 'brush'],
  ['stainless', 'brush'],
  ['metal', 'brush'],
  ['brass', 'brush'],
  ['scour*'],
  ['abrasive*'],
  ['cleaning', 'powder'],
  ['pumice'],
  ['sandpaper'],
];

/** Materials of bristles that scratch. */
export const hardBristles: readonly Phrase[] = [['steel'], ['stainless'], ['metal'], ['brass'], ['bronze'], ['wire']];

export const replacing: readonly Phrase[] = [
  ['replac*'],
  ['renew'],
  ['change'],
  ['new'],
  ['fit'],
  ['discard'],
  ['throw', 'away'],
];

export const lubricating: readonly Phrase[] = [['lubricat*'], ['oil'], ['oiling'], ['grease']];

/** Lubricants whose film keeps steam away. */
export const filmLubricants: readonly Phrase[] = [
  ['silicone*'],
  ['oil'],
  ['oils'],
  ['paraffin*'],
  ['grease'],
  ['petrolat*'],
  ['vaseline'],
];

/** Tests that show what the inside of a channel looks like. */
export const insideTests: readonly Phrase[] = [
  ['lumen', 'inspection'],
  ['borescope'],
  ['endoscop*'],
  ['residue'],
  ['residual'],
  ['protein'],
  ['atp'],
  ['haemoglobin'],
  ['hemoglobin'],
];

export const closedWords: readonly Phrase[] = [
  ['closed'],
  ['sealed'],
  ['lid'],
  ['lidded'],
  ['locked'],
  ['container', 'system'],
];
export const openWords: readonly Phrase[] = [['open'], ['uncovered'], ['towel'], ['drape']];
export const leakProofWords: readonly Phrase[] = [
  ['rigid'],
  ['leak*'],
  ['solid'],
  ['box'],
  ['bin'],
  ['liquid', 'proof'],
  ['fluid', 'proof'],
];
export const markedWords: readonly Phrase[] = [['label*'], ['marked'], ['biohazard'], ['tagged']];

/** What a procedure for suspected prion disease has to settle. */
export const telling: readonly Phrase[] = [['notify'], ['notif*'], ['call'], ['inform'], ['alert'], ['report']];
export const keepingMoist: readonly Phrase[] = [
  ['keep', 'moist'],
  ['moist'],
  ['keep', 'wet'],
  ['damp'],
  ['keep', 'damp'],
  ['do', 'not', 'dry'],
  ['gel'],
];
export const holdingApart: readonly Phrase[] = [['quarantine'], ['hold'], ['isolate'], ['set', 'apart'], ['segregate']];
export const deciding: readonly Phrase[] = [['decide*'], ['decision'], ['risk', 'assess*']];
export const discarding: readonly Phrase[] = [['discard*'], ['incinerat*'], ['destroy*'], ['dispos*']];
