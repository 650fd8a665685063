import type { Row } from './rows.ts';

/** German sentences: decimal comma, thousands point, verbs at the end, compounds, `bis` and `bis zu`. */
export const germanRows: readonly Row[] = [
  ['134 °C, 3,5 min.', 'temp stated 134 C | exposure stated 35 min', 'decimal-or-footnote-suspect'],
  ['134 °C, 3,5 min.', 'temp stated 134 C | exposure stated 3.5 min', 'right'],
  ['Dosierung 1.200 mg/L bei 40 °C.', 'concentration stated 1200 mg/L | temp stated 40 C', 'right'],
  [
    'Dosierung 1.200 mg/L bei 40 °C.',
    'concentration stated 1.2 mg/L | temp stated 40 C',
    'decimal-or-footnote-suspect',
  ],
  [
    'Mindestens 4 Min. bei 134 °C, jedoch nicht länger als 18 Minuten.',
    'exposure between 4 min..18 min | temp stated 134 C',
    'right',
  ],
  [
    'Mindestens 4 Min. bei 134 °C, jedoch nicht länger als 18 Minuten.',
    'exposure at_least 4 min | exposure stated 18 min | temp stated 134 C',
    'quote-bound-changed',
  ],
  ['Eine Temperatur von 140 °C darf nicht überschritten werden.', 'temp at_most 140 C', 'right'],
  ['Eine Temperatur von 140 °C darf nicht überschritten werden.', 'temp at_least 140 C', 'quote-bound-changed'],
  ['Die Wassertemperatur von 55 °C nicht unterschreiten.', 'temp at_least 55 C', 'right'],
  ['Bis zu 10 Minuten im Ultraschallbad reinigen.', 'sonicate at_most 10 min | use ultrasonic allowed', 'right'],
  ['Bis zu 10 Minuten im Ultraschallbad reinigen.', 'sonicate at_least 10 min', 'quote-bound-changed'],
  ['3 bis 18 Minuten bei 134 °C halten.', 'exposure between 3 min..18 min | temp stated 134 C', 'right'],
  ['3 bis 18 Minuten bei 134 °C halten.', 'exposure at_least 3 min | temp stated 134 C', 'quote-bound-changed'],
  ['Nicht im Ultraschallbad reinigen.', 'use ultrasonic allowed', 'quote-negation-lost'],
  [
    'Nicht länger als 15 Minuten im Ultraschallbad reinigen.',
    'sonicate at_most 15 min | use ultrasonic allowed',
    'right',
  ],
  ['Ultraschallreinigung ist nicht erforderlich.', 'use ultrasonic allowed', 'right'],
  ['Das Instrument ist für die maschinelle Reinigung ungeeignet.', 'use mechanical allowed', 'quote-negation-lost'],
  [
    'Manuell vorreinigen, anschließend im Reinigungs- und Desinfektionsgerät aufbereiten.',
    'all_of manual mechanical',
    'right',
  ],
  [
    'Manuell vorreinigen, anschließend im Reinigungs- und Desinfektionsgerät aufbereiten.',
    'any_of manual mechanical',
    'quote-and-or-changed',
  ],
  ['Manuelle oder maschinelle Reinigung.', 'all_of manual mechanical', 'quote-and-or-changed'],
  ['Ca. 30 Minuten trocknen.', 'dry at_least 30 min', 'approximate-used-as-limit'],
  [
    'Etwa 30 Minuten trocknen, danach mindestens 15 Minuten abkühlen.',
    'dry about 30 min | cool at_least 15 min',
    'right',
  ],
  ['Mindesttrocknungszeit 20 Minuten, Haltezeit 5 Minuten.', 'dry at_least 20 min | exposure stated 5 min', 'right'],
  [
    'Mindesttrocknungszeit 20 Minuten, Haltezeit 5 Minuten.',
    'dry at_least 20 min | exposure at_least 5 min',
    'bare-number-promoted',
  ],
  ['Gesamtzykluszeit 60 Minuten.', 'exposure stated 60 min', 'exposure-vs-total-time'],
  ['Dreimal mit je 50 ml Wasser spülen.', 'times exactly 3 times | volume stated 50 mL', 'right'],
  ['Dreimal mit je 50 ml Wasser spülen.', 'times at_least 3 times | volume stated 50 mL', 'bare-number-promoted'],
  ['Spülen min. 1 mit VE-Wasser.', 'rinse at_least 1 min', 'min-token-ambiguous'],
  ['pH-Wert 7,5 bis 9,5 in der Anwendungslösung.', 'ph between 7.5..9.5', 'right'],
  ['pH-Wert 7,5 bis 9,5 in der Anwendungslösung.', 'ph between 75..95', 'decimal-or-footnote-suspect'],
  ['Im Halbzyklus von 2 Minuten wurde die Wirksamkeit gezeigt.', 'exposure stated 2 min', 'half-cycle-encoded'],
  [
    'Haltezeit 4 Minuten, Temperatur 132 °C, Trocknung 30 Minuten.',
    'exposure stated 4 min | temp stated 132 C',
    'quote-number-not-encoded',
  ],
];
