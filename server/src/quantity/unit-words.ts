/**
 * Words for units in quoted sentences. Only the prose reader uses them: a rule file is written with the spellings of `unit-list.ts`.
 */

/** Language of a word, as a two-letter code. */
export type WordLanguage = 'de' | 'fr';

export interface UnitWord {
  readonly text: string;
  readonly language: WordLanguage;
  /** Canonical name of the unit meant; two names when the word does not say which. */
  readonly units: readonly string[];
}

function words(language: WordLanguage, unit: string | readonly string[], ...texts: readonly string[]): UnitWord[] {
  const units = typeof unit === 'string' ? [unit] : unit;
  return texts.map((text) => ({ text, language, units }));
}

export const unitWords: readonly UnitWord[] = [
  ...words('de', 's', 'Sekunde', 'Sekunden', 'Sek.', 'Sek'),
  ...words('de', 'min', 'Minute', 'Minuten', 'Min.', 'Min'),
  ...words('de', 'h', 'Stunde', 'Stunden', 'Std.', 'Std'),
  ...words('de', 'd', 'Tag', 'Tage', 'Tagen'),
  ...words('de', 'weeks', 'Woche', 'Wochen'),
  ...words('de', 'months', 'Monat', 'Monate', 'Monaten'),
  ...words('de', 'years', 'Jahr', 'Jahre', 'Jahren'),
  ...words('de', '°C', 'Grad Celsius', 'Grad C', 'Grad'),
  ...words('de', '°F', 'Grad Fahrenheit'),
  ...words('de', '°dH', 'Grad deutscher Härte', 'Grad dH'),
  ...words('de', 'L', 'Liter', 'Litern'),
  ...words('de', 'mL', 'Milliliter', 'Millilitern'),
  ...words('de', 'g', 'Gramm'),
  ...words('de', 'kg', 'Kilogramm'),
  ...words('de', 'mm', 'Millimeter', 'Millimetern'),
  ...words('de', 'cm', 'Zentimeter', 'Zentimetern'),
  ...words('de', '%', 'Prozent'),
  ...words('de', '% v/v', 'Vol.-%', 'Vol.%', 'Volumenprozent'),
  ...words('de', 'cycles', 'Zyklus', 'Zyklen'),
  ...words('de', 'times', 'mal', 'Mal', '-mal'),
  ...words('de', 'drops', 'Tropfen'),
  ...words('de', 'pieces', 'Stück'),
  ...words('fr', 's', 'seconde', 'secondes'),
  ...words('fr', 'min', 'minute', 'minutes', 'mn'),
  ...words('fr', 'h', 'heure', 'heures'),
  ...words('fr', 'd', 'jour', 'jours'),
  ...words('fr', 'weeks', 'semaine', 'semaines'),
  ...words('fr', 'months', 'mois'),
  ...words('fr', 'years', 'an', 'ans', 'années'),
  ...words('fr', '°C', 'degrés Celsius', 'degré Celsius', 'degrés C', 'degrés'),
  ...words('fr', '°F', 'degrés Fahrenheit'),
  ...words('fr', '°fH', 'degrés français'),
  ...words('fr', 'L', 'litre', 'litres'),
  ...words('fr', 'mL', 'millilitre', 'millilitres'),
  ...words('fr', 'g', 'gramme', 'grammes'),
  ...words('fr', 'kg', 'kilogramme', 'kilogrammes'),
  ...words('fr', 'mm', 'millimètre', 'millimètres'),
  ...words('fr', 'cm', 'centimètre', 'centimètres'),
  ...words('fr', '%', 'pour cent', 'pourcent'),
  ...words('fr', 'times', 'fois'),
  ...words('fr', 'cycles', 'cycle', 'cycles'),
  ...words('fr', 'drops', 'goutte', 'gouttes'),
];
