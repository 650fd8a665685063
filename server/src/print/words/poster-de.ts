import { told } from '../piece.ts';
import { line } from './line.ts';
import type { PosterWords } from './poster-words.ts';

/** Texts of the wall posters in German. */
export const posterDe: PosterWords = {
  posters: {
    indicators: {
      title: 'Wohin der Indikator kommt',
      claim: 'Er liegt, wo der Dampf zuletzt hinkommt, und das hängt von der Verpackung ab.',
    },
    aim: {
      title: 'Wohin das Thermometer zielt',
      claim: 'Messen, wo der Dampf austritt. Blankes Metall und Folie zeigen zu wenig an.',
    },
    'dry-before-steam': {
      title: 'Trocken in den Dampf',
      claim: 'Die Trocknung ist für das Wasser bemessen, das der Dampf hinterlässt, nicht für mitgebrachtes.',
    },
    'immediate-use': {
      title: 'Sofort gebraucht?',
      claim: 'Sofortgebrauch ist ein Zyklus, den die Anweisung anbietet, nach vollständiger Reinigung. Sonst nichts.',
    },
    'same-for-all': {
      title: 'Dieselbe Reinigung für alle',
      claim: 'Jedes Teil wird aufbereitet, als trüge es alles. Längeres Einlegen schadet und bringt nichts.',
    },
    'bound-words': {
      title: 'Die kleinen Wörter lesen',
      claim: 'Das Wort vor der Zahl sagt, welche Seite erlaubt ist.',
    },
    units: { title: 'Temperatur und Druck hier', claim: 'Was das Manometer bei Sattdampf in unserer Höhe zeigt.' },
  },
  exceptions: 'Ausnahmen',
  noExceptions: 'Die Regeldateien kennen keine Ausnahme.',
  sources: 'Quellen',
  noSource: 'keine Quelle genannt; erst fragen',
  stamp: (stamp) => `Kennung ${stamp}`,
  printed: (day) => `gedruckt ${day}, gültig bis zur Änderung`,
  packagings: (names) => line`${names}`,
  unstated: 'niemand sagt es: fragen',
  dry: {
    water: (material, from, to, water) =>
      line`${told('formula', '1 kg')} ${material}, von ${from} auf ${to} erwärmt: etwa ${water} Wasser`,
    carried: 'Jeder mitgebrachte Löffel kommt dazu, und damit wurde keine Trockenzeit geprüft.',
    doThis: [
      'Durch Lumen schauen, unter Gelenke, in die Ecken des Siebs.',
      'Feuchte gefunden? Erst trocknen, dann packen.',
      'Nicht darauf bauen, dass die Hitze den Rest erledigt.',
    ],
    materials: { steel: 'Stahl', aluminium: 'Aluminium' },
  },
  urgent: {
    steps: [
      {
        ask: 'Bietet die Anweisung einen Zyklus für den Sofortgebrauch an?',
        else: 'NEIN: Ersatz nehmen oder wie üblich aufbereiten. Schweigen ist keine Erlaubnis.',
      },
      { ask: 'Ist es kein Implantat?', else: 'HALT: der schriftliche Plan für Notfälle entscheidet. Anrufen.' },
      { ask: 'Ist es vollständig gereinigt, in jedem Schritt?', else: 'Erst reinigen. Eile lässt keinen Schritt aus.' },
      { ask: 'Liegt es in einem Behälter, der dafür gedacht ist?', else: 'In einen legen. Keine offene Schale.' },
      { ask: 'Ist es aufgeschrieben: Teil, Grund, Zyklus, wer?', else: 'Aufschreiben, bevor es geht.' },
    ],
    afterwards: 'Sofort zu diesem Patienten. Es wird nie gelagert.',
    offeredBy: (names) => line`In unseren Dateien angeboten für: ${names}. Für nichts sonst.`,
    offeredByNone: 'Keine Anweisung in unseren Dateien bietet es an.',
  },
  same: {
    steps: [
      'Kein Schild für ein Virus. Kein längeres Bad für Sporen. Dieselben Schritte, jedes Mal.',
      'Länger in der Lösung, als die Seite erlaubt, ist Schaden und keine Sicherheit.',
    ],
    exception: 'EINE Ausnahme: Verdacht auf eine Prionenkrankheit. Anhalten, feucht halten, absondern und anrufen',
    call: (role, phone) => line`${role}${phone === undefined ? '' : line` ${phone}`}`,
    soak: (device, limit, quote) => line`${device}: einlegen ${limit} (${quote})`,
  },
  bounds: {
    head: ['Auf der Seite steht', 'Das heißt', 'Der Irrtum, der schadet'],
    rows: [
      { words: 'mindestens, oder länger', means: 'so viel oder mehr', wrong: 'zu früh aufhören' },
      { words: 'höchstens, bis zu, nicht überschreiten', means: 'so viel oder weniger', wrong: 'es als Ziel nehmen' },
      { words: 'zwischen, von bis', means: 'innerhalb beider Enden', wrong: 'ein Ende vergessen' },
      {
        words: 'genau, oder eine bloße Zahl',
        means: 'dieser Wert; vor jeder Änderung fragen',
        wrong: 'mehr für sicherer halten',
      },
      { words: 'etwa, ungefähr', means: 'keine Grenze; nach einer fragen', wrong: 'daran messen' },
    ],
    example: 'In unseren Dateien',
  },
  units: {
    head: ['°C', '°F', 'Manometer, kPa', 'Manometer, psi'],
    boils: 'Wasser siedet',
    source: 'Dampftafeln nach der Industrieformulierung IAPWS-IF97; Luftdruck nach der Datei des Hauses.',
    altitude: (altitude, atmosphere) => line`In ${altitude} Höhe drückt die Luft mit ${atmosphere}.`,
  },
  cautions: [
    'Die Anweisung ist das gültige Dokument des Herstellers; dies ist ein Verzeichnis dazu. Wo beide abweichen, gilt das Dokument, und die Abweichung wird gemeldet.',
    'Gibt keine Ladung frei und sieht nicht, was im Zyklus geschah.',
    'Ein Ausdruck ist überholt, sobald seine Kennung es ist.',
  ],
  cautionInfrared: 'Was ein Infrarot-Thermometer zeigt, hängt von der Oberfläche ab.',
  cautionAltitude:
    'Zahlen, die von der Höhe abhängen, gelten nur für dieses Haus und rechtfertigen keinen anderen Zyklus.',
};
