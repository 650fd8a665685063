import { asks, fails, meets, type NumberRow, note } from './direction-row.ts';

/*
 * The direction table: what it means for a device when our value is the same as, more than or less than the number on the page.
 * "Stricter" is not "more": each parameter has its own row. It is data, to be read and corrected by people who know the trade; the
 * code that applies it is in value.ts, and what is no number stands in categories.ts. Reasons are read after the title of the row: "Exposure: shorter than the page demands".
 */

const c8 = 'expert procedure, parameter table';
const practice = 'practice';

const aboveRange = 'above the highest value the page gives; both ends of a range bind';
const belowRange = 'below the lowest value the page gives';
const openAbove = 'more than the least the page demands, and the page gives no highest value';
const underLimit = 'under the limit';
const askAbove = 'the page gives a bare number; whether more is acceptable is for the maker to say';
const askBelow = 'the page gives a bare number; whether less is acceptable is for the maker to say';
const bareMinimum = 'more than a bare number, which the site counts as a minimum';
const aboutMore = 'more than "approximately", which is no limit';
const aboutLess = 'less than "approximately", which is no limit; ask how much less is acceptable';
const aboutMoreAsk = 'more than "approximately", which is no limit; ask how much more is acceptable';
const silentAsk = 'the document is silent; silence is neither permission nor a demand of nothing';
const silentNote = 'the document is silent; the department fills this in and says that it is its own choice';
const noLimit = 'the document gives no limit; other limits still bind';

/** A least amount: more is right, less is not. */
const atLeast = {
  belowLowest: fails(belowRange),
  aboveLowest: meets(openAbove),
  aboveHighest: fails(aboveRange),
  belowHighest: meets(underLimit),
  aboveBare: asks(askAbove),
  aboveBareMinimum: note(bareMinimum),
  belowBare: fails('less than the number the page gives'),
  aboveAbout: note(aboutMore),
  belowAbout: asks(aboutLess),
  silent: asks(silentAsk),
  source: c8,
} as const;

/** A window: both directions can harm. */
const window = {
  ...atLeast,
  aboveBareMinimum: asks(askAbove),
  belowBare: asks(askBelow),
  aboveAbout: asks(aboutMoreAsk),
} as const;

/** A limit from above: less is right, more is not. */
const atMost = {
  ...atLeast,
  aboveHighest: fails('over the limit'),
  aboveBare: fails('over the number the page gives'),
  aboveBareMinimum: fails('over the number the page gives'),
  belowBare: meets('under the number the page gives'),
  aboveAbout: asks(aboutMoreAsk),
  belowAbout: note('less than "approximately", which is no limit'),
  silent: note(noLimit),
} as const;

export const numberRows: readonly NumberRow[] = [
  {
    ...atLeast,
    parameter: 'steam-temperature',
    title: 'Sterilization temperature',
    belowLowest: fails('cooler than the page demands; a longer time does not buy it back'),
    aboveLowest: note('hotter than the least the page demands; the heat limit is judged by itself'),
    aboveBare: asks(
      'the page gives one temperature and ours is hotter: a different cycle, not the same one but better',
    ),
    aboveBareMinimum: asks(
      'the page gives one temperature and ours is hotter: a different cycle, not the same one but better',
    ),
    belowBare: fails('cooler than the page gives; a longer time does not buy it back'),
    aboveAbout: asks(aboutMoreAsk),
  },
  {
    ...window,
    parameter: 'control-band',
    title: 'Control band',
    belowLowest: fails('the band lets the temperature fall below what the page demands'),
    aboveLowest: meets('the band stays above the least the page demands'),
    aboveHighest: fails('the band lets the temperature rise above what the page allows'),
    aboveExactly: meets('the band starts at the setpoint'),
    belowHighest: meets('the band stays under the highest value the page gives'),
    aboveBare: meets('the band starts at the setpoint'),
    aboveBareMinimum: meets('the band starts at the setpoint'),
    belowBare: fails('the band lets the temperature fall below the setpoint'),
  },
  {
    ...atMost,
    parameter: 'heat-limit',
    title: 'Heat limit',
    aboveHighest: fails('hotter than the item may ever get, at any stage'),
    belowHighest: meets('cooler than the item may get'),
  },
  {
    ...atLeast,
    parameter: 'exposure',
    title: 'Exposure',
    belowLowest: fails('shorter than the page demands'),
    aboveHighest: fails('longer than the page allows; more is not safer'),
    farAboveLowest: {
      ...note('far longer than the least the page demands: wear, colour and adhesives suffer'),
      times: 2,
    },
    aboveBare: asks('longer than the bare number on the page: kills more, but nobody showed that the item stands it'),
    belowBare: fails('shorter than the page gives'),
  },
  { ...atLeast, parameter: 'pulses', title: 'Air removal', source: practice, silent: note(silentNote) },
  {
    ...atLeast,
    parameter: 'steam-dry',
    title: 'Drying time',
    belowLowest: fails('shorter than the page demands; a load that looks dry is no evidence', 'manufacturer'),
    aboveLowest: meets('longer than the least the page demands'),
    aboveBareMinimum: meets(bareMinimum),
    belowBare: fails('shorter than the page gives; a load that looks dry is no evidence', 'manufacturer'),
    silent: asks(
      'the document is silent on drying; the default of the sterilizer is not its demand, and a product test supports but does not replace an answer',
    ),
  },
  {
    ...atLeast,
    parameter: 'packaging-dry',
    title: 'Drying time for the packaging',
    belowLowest: fails('shorter than the packaging demands, even if the device alone would be content', 'vendor'),
    aboveLowest: meets('longer than the least the packaging demands'),
    aboveBareMinimum: meets(bareMinimum),
    belowBare: fails('shorter than the packaging demands, even if the device alone would be content', 'vendor'),
    silent: asks('the packaging’s instruction is silent on drying', 'vendor'),
  },
  {
    ...atLeast,
    parameter: 'cool-down',
    title: 'Cooling',
    aboveBare: meets('longer than the page gives'),
    aboveBareMinimum: meets('longer than the page gives'),
    silent: note(silentNote),
  },
  {
    ...window,
    parameter: 'wash-temperature',
    title: 'Wash temperature',
    belowLowest: fails('cooler than the window'),
    aboveLowest: meets('inside the window; the heat limit is judged by itself'),
    aboveHighest: fails('hotter than the window'),
    aboveBareMinimum: note(
      'hotter than the bare number on the page; the heat limit and the detergent’s window are judged by themselves',
    ),
    belowBare: fails('cooler than the page gives'),
    silent: note(silentNote),
  },
  {
    ...atMost,
    parameter: 'first-rinse-temperature',
    title: 'First rinse',
    aboveHighest: fails('hot water fixes protein before it is washed off'),
    aboveBare: fails('hot water fixes protein before it is washed off'),
    aboveBareMinimum: fails('hot water fixes protein before it is washed off'),
    belowBare: meets('cooler than the page gives'),
  },
  {
    ...atMost,
    parameter: 'drying-temperature',
    title: 'Drying temperature',
    aboveHighest: fails('hotter than the page allows; cabinets and drying air are forgotten sources of heat'),
    source: practice,
  },
  {
    ...atMost,
    parameter: 'delay',
    title: 'Delay before cleaning',
    aboveHighest: fails('longer than the page allows: dried soil was not part of what was shown', 'manager'),
  },
  {
    ...atLeast,
    parameter: 'cleaning-amount',
    title: 'Time, volume or count',
    belowLowest: fails('less than the page demands; cleaning is a dose'),
    aboveBareMinimum: meets(bareMinimum),
    belowBare: fails('less than the page gives; cleaning is a dose'),
    silent: note(silentNote),
  },
  {
    ...window,
    parameter: 'pressure',
    title: 'Pressure',
    belowBare: fails('less than the page gives'),
    silent: note(noLimit),
  },
  {
    ...window,
    parameter: 'soak',
    title: 'Soak',
    aboveLowest: note('longer than the least, and the page gives no longest time: longer is not safer'),
    aboveHighest: fails('longer than the page allows: seals swell and pits form'),
    aboveBareMinimum: note(bareMinimum),
    belowBare: fails('shorter than the page gives'),
    belowHighest: meets('shorter than the longest time the page allows'),
    silent: note(silentNote),
  },
  {
    ...window,
    parameter: 'ultrasonic',
    title: 'Ultrasonic cleaning',
    aboveLowest: note('more than the least, and the page gives no highest value'),
    aboveBareMinimum: note(bareMinimum),
    belowBare: fails('less than the page gives'),
    silent: note(silentNote),
  },
  {
    ...window,
    parameter: 'ph',
    title: 'pH',
    belowLowest: fails('more acid than the page allows'),
    aboveLowest: meets('inside what the page allows'),
    aboveHighest: fails('more alkaline than the page allows'),
    belowHighest: meets('inside what the page allows'),
  },
  {
    ...atLeast,
    parameter: 'thermal-disinfection',
    title: 'Thermal disinfection',
    belowLowest: fails('less heat or time than demanded'),
    aboveLowest: meets('at least what is demanded; the heat limit is judged by itself'),
    aboveBare: meets('same or longer; the heat limit is judged by itself'),
    aboveBareMinimum: meets('same or longer; the heat limit is judged by itself'),
    belowBare: fails('less heat or time than the page gives'),
    silent: note(silentNote),
  },
  {
    ...atMost,
    parameter: 'boiling',
    title: 'Boiling here',
    aboveHighest: fails('water boils here before it gets that hot: the hold is never reached', 'engineering'),
    belowHighest: meets('water stays below boiling here'),
    source: 'physics',
  },
  {
    ...atMost,
    parameter: 'water-grade',
    title: 'Water',
    aboveHighest: fails('the water holds more of this than allowed', 'engineering'),
    belowHighest: meets('as pure as asked, or purer'),
    belowLowest: fails('below the range asked', 'engineering'),
    silent: note(silentNote),
  },
  {
    ...window,
    parameter: 'ethylene-oxide',
    title: 'Ethylene oxide cycle',
    aboveLowest: note('more than the least, and the page gives no highest value'),
    aboveBare: fails('another value is another cycle, unless the page gives a range', 'manufacturer'),
    aboveBareMinimum: fails('another value is another cycle, unless the page gives a range', 'manufacturer'),
    belowBare: fails('less than the page gives'),
  },
  {
    ...atLeast,
    parameter: 'aeration',
    title: 'Aeration',
    belowLowest: fails('shorter than demanded: residues burn tissue'),
    aboveBare: meets('longer than the page gives'),
    aboveBareMinimum: meets('longer than the page gives'),
    belowBare: fails('shorter than the page gives: residues burn tissue'),
  },
  {
    ...window,
    parameter: 'aeration-temperature',
    title: 'Aeration temperature',
    aboveLowest: meets('inside what the page allows'),
    aboveBare: fails('hotter aeration only where the page states it'),
    aboveBareMinimum: fails('hotter aeration only where the page states it'),
    belowBare: fails('cooler than the page gives: the time was stated for that temperature'),
  },
  { ...atMost, parameter: 'mass', title: 'Mass', aboveHighest: fails('heavier than allowed') },
  {
    ...atMost,
    parameter: 'levels',
    title: 'Levels',
    aboveHighest: fails('more levels than allowed'),
    source: practice,
  },
  { ...atMost, parameter: 'load', title: 'Load', aboveHighest: fails('more than the load the cycle is made for') },
  {
    ...window,
    parameter: 'lumen',
    title: 'Lumen',
    belowLowest: fails('narrower or shorter than what was covered'),
    aboveLowest: meets('inside what is covered'),
    aboveHighest: fails('longer, wider or more than what was covered'),
    belowHighest: meets('inside what is covered'),
    belowBare: asks(askBelow),
    silent: asks('the document is silent on lumens'),
    source: practice,
  },
  {
    ...window,
    parameter: 'brush',
    title: 'Brush',
    belowLowest: fails('smaller or shorter than the page demands'),
    aboveLowest: meets('inside what the page allows'),
    belowBare: fails('smaller or shorter than the page gives'),
    silent: note(silentNote),
    source: practice,
  },
  {
    ...atLeast,
    parameter: 'connector',
    title: 'Connectors',
    belowLowest: fails('the rack has too few for one device: spray does not enter a narrow bore'),
    aboveLowest: meets('enough for the devices'),
    source: practice,
  },
  {
    ...atMost,
    parameter: 'use-count',
    title: 'Uses',
    aboveHighest: fails('end of life is a safety limit'),
    silent: note(noLimit),
  },
];

/** Words that are no number, for every row. */
export const wordCells = {
  notApplicable: meets('does not apply to this item'),
  otherSituation: meets('demanded only in the situation the page names'),
  ambiguous: asks('the page cannot be carried out as written'),
  conflict: asks('two current documents differ'),
  answered: asks('the maker has answered; the value it confirms is still to be entered', 'educator'),
  defersToDepartment: note('the page leaves this to the department'),
  defersToChemistry: note('the page leaves this to the detergent’s own instruction'),
  defersToStandard: note('the page leaves this to a standard'),
  unreadable: asks('the number in the file cannot be read', 'educator'),
  reversed: asks('the two ends of the range are the wrong way round', 'educator'),
  noBound: asks('the file gives no value', 'educator'),
  bareAsk: asks('the page gives a bare number, and the site asks the maker about every one'),
  aboutSame: note('the same as the "approximately" on the page'),
  same: meets('as the page demands'),
  optional: note('the page only suggests it'),
  givenMissing: asks('our side of it is not in the files', 'educator'),
} as const;
