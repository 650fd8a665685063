import { told } from '../piece.ts';
import { line } from './line.ts';
import type { PosterWords } from './poster-words.ts';

/** Texts of the wall posters in English. */
export const posterEn: PosterWords = {
  posters: {
    indicators: {
      title: 'Where the indicator goes',
      claim: 'It lies where steam arrives last, and that depends on the packaging.',
    },
    aim: {
      title: 'Where to point the thermometer',
      claim: 'Measure where vapour leaves the pack. Bare metal and film read too cold.',
    },
    'dry-before-steam': {
      title: 'Dry before steam',
      claim: 'The drying phase is sized for the water that steam leaves, not for water that was carried in.',
    },
    'immediate-use': {
      title: 'Needed now?',
      claim: 'Immediate use is a cycle that the instruction offers, after full cleaning. Nothing else.',
    },
    'same-for-all': {
      title: 'The same cleaning for every patient',
      claim: 'Every item is processed as if it carried everything. Extra soaking harms it and adds nothing.',
    },
    'bound-words': { title: 'Read the small words', claim: 'The word before the number says which side is allowed.' },
    units: {
      title: 'Temperature and pressure here',
      claim: 'What the gauge shows with saturated steam at our altitude.',
    },
  },
  exceptions: 'Exceptions',
  noExceptions: 'The rule files hold no exception.',
  sources: 'Sources',
  noSource: 'no source is written; ask before you rely on it',
  stamp: (stamp) => `stamp ${stamp}`,
  printed: (day) => `printed ${day}, valid until changed`,
  packagings: (names) => line`${names}`,
  unstated: 'nobody says: ask',
  dry: {
    water: (material, from, to, water) =>
      line`${told('formula', '1 kg')} of ${material}, heated from ${from} to ${to}: about ${water} of water`,
    carried: 'Every spoon that was carried in comes on top, and no dry time was tested with it.',
    doThis: [
      'Look through lumens, under hinges, in the corners of the tray.',
      'Found moisture? Dry it first, then pack.',
      'Do not count on the heat to finish it.',
    ],
    materials: { steel: 'steel', aluminium: 'aluminium' },
  },
  urgent: {
    steps: [
      {
        ask: 'Does its instruction offer an immediate-use cycle?',
        else: 'NO: use a spare, or process it as usual. Silence is no permission.',
      },
      { ask: 'Is it no implant?', else: 'STOP: the written plan for emergencies decides. Call.' },
      { ask: 'Is it fully cleaned, by every step?', else: 'Clean it first. Urgency leaves out no step.' },
      { ask: 'Is it in a container that is meant for this?', else: 'Put it into one. No open pan.' },
      { ask: 'Is it recorded: item, reason, cycle, who?', else: 'Record it before it leaves.' },
    ],
    afterwards: 'Straight to this patient. It is never stored.',
    offeredBy: (names) => line`Offered in our files for: ${names}. For nothing else.`,
    offeredByNone: 'No instruction in our files offers it.',
  },
  same: {
    steps: [
      'No label for a virus. No extra soak for a spore. The same steps, every time.',
      'Longer in the solution than the page allows is damage, not safety.',
    ],
    exception: 'ONE exception: suspected prion disease. Stop, keep moist, set apart, and call',
    call: (role, phone) => line`${role}${phone === undefined ? '' : line` ${phone}`}`,
    soak: (device, limit, quote) => line`${device}: soak ${limit} (${quote})`,
  },
  bounds: {
    head: ['The page says', 'It means', 'The slip that harms'],
    rows: [
      { words: 'at least, minimum, or longer', means: 'this much or more', wrong: 'stopping early' },
      { words: 'at most, up to, maximum, do not exceed', means: 'this much or less', wrong: 'taking it as a goal' },
      { words: 'between, to', means: 'inside both ends', wrong: 'forgetting one end' },
      {
        words: 'exactly, or a bare number',
        means: 'this value; ask before you change it',
        wrong: 'taking more for safer',
      },
      { words: 'about, approximately', means: 'no limit; ask for one', wrong: 'measuring against it' },
    ],
    example: 'In our files',
  },
  units: {
    head: ['°C', '°F', 'gauge, kPa', 'gauge, psi'],
    boils: 'water boils',
    source: 'Steam tables by the industrial formulation IAPWS-IF97; air pressure by the site file.',
    altitude: (altitude, atmosphere) => line`At ${altitude} the air presses with ${atmosphere}.`,
  },
  cautions: [
    'The manufacturer’s current document is the instruction; this is an index to it. Where they differ, follow the document and report the difference.',
    'Not a load-release system; it does not see what happened in the cycle.',
    'Printed output is uncontrolled after its stamp goes out of date.',
  ],
  cautionInfrared: 'Infrared readings depend on the surface.',
  cautionAltitude: 'Altitude-dependent figures apply to this site only, and justify no other cycle.',
};
