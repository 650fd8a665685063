import type { Row } from './rows.ts';

/** Second batch of German sentences. */
export const moreGermanRows: readonly Row[] = [
  ['Die Temperatur darf 140 °C nicht übersteigen.', 'temp at_most 140 C', 'right'],
  ['Temperaturen über 60 °C vermeiden.', 'temp at_most 60 C', 'right'],
  ['Temperaturen über 60 °C vermeiden.', 'temp at_least 60 C', 'quote-bound-changed'],
  ['Nicht über 45 °C vorspülen, da Eiweiß sonst koaguliert.', 'temp at_most 45 C', 'right'],
  ['Mit mind. 50 ml durchspülen, höchstens 2 bar.', 'volume at_least 50 mL | pressure at_most 2 bar', 'right'],
  [
    'Mit mind. 50 ml durchspülen, höchstens 2 bar.',
    'volume stated 50 mL | pressure at_most 2 bar',
    'quote-bound-changed',
  ],
  [
    '134 °C (273 °F), Haltezeit min. 3 Min., Trocknung 20 Min.',
    'temp stated 134 C | exposure at_least 3 min | dry stated 20 min',
    'right',
  ],
  ['134 °C (270 °F), Haltezeit 3 Min.', 'temp stated 134 C | exposure stated 3 min', 'unit-pair-mismatch'],
  ['Dampfsterilisation von 132 bis 137 °C.', 'temp between 132 C..137 C', 'right'],
  ['Zwischen 5 und 10 Minuten beschallen.', 'sonicate between 5 min..10 min', 'right'],
  ['Zwischen 5 und 10 Minuten beschallen.', 'sonicate at_most 10 min', 'quote-bound-changed'],
  ['5 oder 10 Minuten beschallen.', 'sonicate between 5 min..10 min', 'quote-bound-changed'],
  ['Niemals in Kochsalzlösung einlegen.', 'use soak allowed', 'quote-negation-lost'],
  ['Die maschinelle Reinigung ist nicht zulässig.', 'use mechanical allowed', 'quote-negation-lost'],
  ['Von Hand reinigen; Ultraschall ist zu vermeiden.', 'use manual required', 'right'],
  ['Alle Teile außer dem Motor können eingetaucht werden.', 'use immersion allowed', 'quote-negation-lost'],
  [
    'Sowohl manuelle als auch maschinelle Reinigung ist erforderlich.',
    'any_of manual mechanical',
    'quote-and-or-changed',
  ],
  ['Alternativ zur manuellen Reinigung kann ein RDG verwendet werden.', 'any_of manual mechanical', 'right'],
  ['Zweimal spülen, danach trocknen.', 'times exactly 2 times | all_of rinse dry', 'right'],
  ['Haltezeit genau 5 Minuten bei 134 °C ± 3 K.', 'exposure exactly 5 min | temp stated 134 C tol 3 K', 'right'],
  [
    'Zykluszeit ca. 50 Minuten bei einer Haltezeit von 5 Minuten.',
    'total_time about 50 min | exposure stated 5 min',
    'right',
  ],
  [
    'Siehe Abb. 3 und DIN EN ISO 17664-1: 5 Minuten bei 134 °C.',
    'exposure stated 3 min | temp stated 134 C',
    'quote-number-mismatch',
  ],
  ['Die Trocknungszeit von 20 Minuten muss eingehalten werden.', 'dry at_least 20 min', 'bare-number-promoted'],
  ['Maximalgewicht 10 kg.', 'mass at_most 10 kg', 'right'],
];

/** Second batch of French sentences. */
export const moreFrenchRows: readonly Row[] = [
  ["L'exposition ne doit pas excéder 18 minutes.", 'exposure at_most 18 min', 'right'],
  ['Éviter les températures supérieures à 60 °C.', 'temp at_most 60 C', 'right'],
  ['Éviter les températures supérieures à 60 °C.', 'temp at_least 60 C', 'quote-bound-changed'],
  [
    'Rincer à l’eau froide (moins de 43 °C) pendant 2 minutes minimum.',
    'temp at_most 43 C | rinse at_least 2 min',
    'right',
  ],
  [
    'Rincer à l’eau froide (moins de 43 °C) pendant 2 minutes minimum.',
    'temp at_most 43 C | rinse stated 2 min',
    'quote-bound-changed',
  ],
  [
    'Vapeur à 134 °C (273 °F) pendant 18 min, séchage de 20 min au moins.',
    'temp stated 134 C | exposure stated 18 min | dry at_least 20 min',
    'right',
  ],
  [
    'Vapeur à 134 °C (273 °F) pendant 18 min, séchage de 20 min au moins.',
    'temp stated 134 C | exposure at_least 18 min | dry at_least 20 min',
    'bare-number-promoted',
  ],
  ['Ne pas tremper plus de 30 minutes.', 'soak at_most 30 min | use soak allowed', 'right'],
  ['Durée maximale de trempage : 30 minutes.', 'soak at_most 30 min', 'right'],
  ['Durée maximale de trempage : 30 minutes.', 'soak at_least 30 min', 'quote-bound-changed'],
  ["L'instrument ne doit jamais être immergé.", 'use immersion allowed', 'quote-negation-lost'],
  ['Nettoyage en machine déconseillé.', 'use mechanical allowed', 'quote-negation-lost'],
  ['Sécher sans huile, puis emballer.', 'use lubrication allowed', 'quote-negation-lost'],
  ['Toutes les pièces, sauf le moteur, peuvent être immergées.', 'use immersion allowed', 'quote-negation-lost'],
  ['Après le nettoyage manuel, nettoyer aux ultrasons.', 'any_of manual ultrasonic', 'quote-and-or-changed'],
  ['Le nettoyage manuel ainsi que le passage en laveur sont requis.', 'all_of manual mechanical', 'right'],
  ['À défaut de laveur, nettoyer manuellement.', 'any_of mechanical manual', 'right'],
  ['Utiliser de 2 à 5 mL/L de détergent, pH 6,5 à 8.', 'dose between 2 mL/L..5 mL/L | ph between 6.5..8', 'right'],
  ['Deux rinçages de 1 minute chacun.', 'rinse at_least 1 min', 'bare-number-promoted'],
  ['Exactement 3 rinçages de 30 secondes.', 'rinse stated 0.5 min', 'right'],
  ['Refroidir pendant au moins 45 minutes ; ne pas toucher.', 'cool at_least 45 min', 'right'],
  ['Réaliser 5 passages et rincer 2 minutes.', 'rinse stated 5 min', 'quote-number-mismatch'],
  ['Temps d’exposition : 4 min (cycle total 50 min).', 'exposure stated 4 min | total_time stated 50 min', 'right'],
  ['Température de 134 °C ±3 °C (273 °F ±37,4 °F).', 'temp stated 134 C tol 3 K', 'delta-converted-as-absolute'],
];
