import type { Row } from './rows.ts';

/** Second set of rows that the reader was not tuned on, written after the tuning of the first tables. */
export const lateEnglish: readonly Row[] = [
  [
    'Steam sterilize in a pre-vacuum cycle at 275 °F for 3 minutes, followed by a drying phase of no less than 16 minutes.',
    'temp stated 135 C | exposure stated 3 min | dry at_least 16 min',
    'right',
  ],
  [
    'Steam sterilize in a pre-vacuum cycle at 275 °F for 3 minutes, followed by a drying phase of no less than 16 minutes.',
    'temp stated 135 C | exposure stated 3 min | dry at_most 16 min',
    'quote-bound-changed',
  ],
  [
    'Steam sterilize in a pre-vacuum cycle at 275 °F for 3 minutes, followed by a drying phase of no less than 16 minutes.',
    'temp stated 135 C | exposure at_least 3 min | dry at_least 16 min',
    'bare-number-promoted',
  ],
  [
    'Set the ultrasonic bath to 35-45 kHz and run it for 10 min; the bath must stay below 40 °C.',
    'frequency between 35 kHz..45 kHz | sonicate stated 10 min | temp at_most 40 C',
    'right',
  ],
  [
    'Set the ultrasonic bath to 35-45 kHz and run it for 10 min; the bath must stay below 40 °C.',
    'frequency between 35 kHz..54 kHz | sonicate stated 10 min | temp at_most 40 C',
    'quote-number-mismatch',
  ],
  [
    'Each lumen is flushed four times using 60 mL of sterile water.',
    'times exactly 4 times | volume stated 60 mL',
    'right',
  ],
  [
    'Each lumen is flushed four times using 60 mL of sterile water.',
    'times exactly 4 times',
    'quote-number-not-encoded',
  ],
  ['Reprocessing must begin no later than 2 hours after use.', 'max_delay at_most 120 min', 'right'],
  ['Reprocessing must begin no later than 2 hours after use.', 'max_delay at_least 2 h', 'quote-bound-changed'],
  [
    'Compressed air (max. 2 bar) may be used to dry lumens for 30 seconds.',
    'pressure at_most 2 bar | dry stated 30 s',
    'right',
  ],
  [
    'Compressed air (max. 2 bar) may be used to dry lumens for 30 seconds.',
    'pressure stated 2 bar | dry stated 30 s',
    'quote-bound-changed',
  ],
  ['The pH of the solution in use should lie between 6 and 8.5.', 'ph between 6..8.5', 'right'],
  ['The pH of the solution in use should lie between 6 and 8.5.', 'ph between 6..85', 'decimal-or-footnote-suspect'],
  ['Aluminium parts must not be washed with alkaline detergent of pH greater than 8.5.', 'ph at_most 8.5', 'right'],
  ['The device must be neither soaked nor immersed.', 'use immersion allowed', 'quote-negation-lost'],
  ['It is forbidden to lubricate the joint.', 'use lubrication required', 'quote-negation-lost'],
  [
    'Sterilization by ethylene oxide has not been tested and is therefore excluded.',
    'use eo allowed',
    'quote-negation-lost',
  ],
  ['Ethylene oxide may be used instead of steam.', 'use eo allowed', 'right'],
  ['There is no need to lubricate this instrument.', 'use lubrication allowed', 'right'],
  [
    'Wrap the tray twice and steam sterilize; do not use a pouch.',
    'times exactly 2 times | use steam required',
    'right',
  ],
  [
    'Wrap the tray twice and steam sterilize; do not use a pouch.',
    'times exactly 2 times | use pouch allowed',
    'quote-negation-lost',
  ],
  [
    'Hand cleaning is to be completed first; afterwards the parts go through the washer.',
    'all_of manual mechanical',
    'right',
  ],
  [
    'Hand cleaning is to be completed first; afterwards the parts go through the washer.',
    'any_of manual mechanical',
    'quote-and-or-changed',
  ],
  ['You may choose ultrasonic cleaning or a washer-disinfector.', 'any_of ultrasonic mechanical', 'right'],
  [
    'You may choose ultrasonic cleaning or a washer-disinfector.',
    'all_of ultrasonic mechanical',
    'quote-and-or-changed',
  ],
  ['Dry for roughly half an hour.', 'dry about 30 min', 'right'],
  ['Dry for roughly half an hour.', 'dry at_least 30 min', 'approximate-used-as-limit'],
  [
    'The overall process time, including 4 min exposure and 30 min drying, is 58 min.',
    'total_time stated 58 min | exposure stated 4 min | dry stated 30 min',
    'right',
  ],
  ['Run time 58 min.', 'exposure at_least 58 min', 'exposure-vs-total-time'],
  ['Sterility was shown in half cycles of 1.5 min.', 'exposure stated 1.5 min', 'half-cycle-encoded'],
  ['Maximum load 22 lb (12 kg).', 'mass at_most 22 lb', 'unit-pair-mismatch'],
  ['Autoclave at 250 °F (121 °C) for 30 min³.', 'temp stated 121 C | exposure stated 30 min', 'right'],
  ['Autoclave at 250 °F (121 °C) for 30 min³.', 'temp stated 112 C | exposure stated 30 min', 'quote-number-mismatch'],
  ['Time: min 4.', 'exposure at_least 4 min', 'min-token-ambiguous'],
  [
    'Plateau 134 °C ± 2 °C (273 °F ± 35.6 °F), 4 min.',
    'temp stated 134 C tol 2 K | exposure stated 4 min',
    'delta-converted-as-absolute',
  ],
  ['Plateau 134 °C ± 2 °C (273 °F ± 3.6 °F), 4 min.', 'temp between 132 C..136 C | exposure stated 4 min', 'right'],
];
export const lateGerman: readonly Row[] = [
  ['Die Spülung erfolgt fünfmal mit jeweils 20 ml.', 'times exactly 5 times | volume stated 20 mL', 'right'],
  [
    'Das Bad darf nicht wärmer als 40 °C sein und ist spätestens nach 8 Stunden zu wechseln.',
    'temp at_most 40 C | change at_most 8 h',
    'right',
  ],
  [
    'Das Bad darf nicht wärmer als 40 °C sein und ist spätestens nach 8 Stunden zu wechseln.',
    'temp at_least 40 C | change at_most 8 h',
    'quote-bound-changed',
  ],
  [
    'Sterilisation: 121 °C, 20 Minuten; Trocknung wenigstens 30 Minuten.',
    'temp stated 121 C | exposure stated 20 min | dry at_least 30 min',
    'right',
  ],
  [
    'Sterilisation: 121 °C, 20 Minuten; Trocknung wenigstens 30 Minuten.',
    'temp stated 121 C | exposure stated 30 min | dry at_least 30 min',
    'quote-bound-changed quote-number-not-encoded',
  ],
  ['Eine Heißluftsterilisation ist ausgeschlossen.', 'use dry-heat allowed', 'quote-negation-lost'],
  ['Auf eine manuelle Vorreinigung kann nicht verzichtet werden.', 'use manual required', 'right'],
  ['Erst manuell bürsten, dann im Ultraschallbad behandeln.', 'any_of manual ultrasonic', 'quote-and-or-changed'],
  ['Je nach Ausstattung maschinell oder von Hand reinigen.', 'any_of mechanical manual', 'right'],
  ['Leitfähigkeit unter 5 µS/cm, Temperatur rund 60 °C.', 'conductivity at_most 5 µS/cm | temp about 60 C', 'right'],
  [
    'Leitfähigkeit unter 5 µS/cm, Temperatur rund 60 °C.',
    'conductivity at_most 5 µS/cm | temp at_most 60 C',
    'approximate-used-as-limit',
  ],
  ['Druck 1,5 bis 2,0 bar für 10 s.', 'pressure between 1.5 bar..2 bar | flush stated 10 s', 'right'],
];
export const lateFrench: readonly Row[] = [
  [
    'Le bain à ultrasons ne doit pas fonctionner plus de 15 minutes à 45 °C.',
    'sonicate at_most 15 min | temp stated 45 C | use ultrasonic allowed',
    'right',
  ],
  [
    'Le bain à ultrasons ne doit pas fonctionner plus de 15 minutes à 45 °C.',
    'sonicate at_least 15 min | temp stated 45 C',
    'quote-bound-changed',
  ],
  ['Sécher à l’air filtré (2 bar au plus) pendant 30 secondes.', 'pressure at_most 2 bar | dry stated 30 s', 'right'],
  [
    'Sécher à l’air filtré (2 bar au plus) pendant 30 secondes.',
    'pressure stated 2 bar | dry stated 30 s',
    'quote-bound-changed',
  ],
  ['Il est interdit d’empiler les plateaux.', 'use stacking allowed', 'quote-negation-lost'],
  ['La stérilisation à l’oxyde d’éthylène ne convient pas.', 'use eo allowed', 'quote-negation-lost'],
  ['Brosser, rincer puis sécher.', 'all_of brush rinse dry', 'right'],
  ['Brosser, rincer puis sécher.', 'any_of rinse dry', 'quote-and-or-changed'],
  ['Un volume de 1,5 L d’eau à 30 °C.', 'volume stated 15 L | temp stated 30 C', 'decimal-or-footnote-suspect'],
  ['Attendre une heure au minimum avant utilisation.', 'cool at_least 60 min', 'right'],
  [
    'Conserver entre 15 °C et 25 °C, humidité inférieure à 60 %.',
    'temp between 15 C..25 C | humidity at_most 60 %',
    'right',
  ],
  [
    'Conserver entre 15 °C et 25 °C, humidité inférieure à 60 %.',
    'temp between 15 C..25 C | humidity stated 60 %',
    'quote-bound-changed',
  ],
];
