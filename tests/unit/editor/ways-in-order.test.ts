import { describe, expect, it } from 'vitest';
import { encode, withPages } from '../../support/encoding.ts';

/** Steps by hand, in the bath and in the machine, by Enter alone: their order, and which of them make one way. */

const pages = [
  [
    'in English',
    '4 Manual cleaning\n4.1 Rinse under cold running water for 1 minute.\n4.2 Brush with a soft brush for at least 5 strokes.\n4.3 Treat the parts in an ultrasonic bath for 10 minutes.\n4.4 Rinse with purified water for 2 minutes.\n\n5 Automated cleaning\nManual steps 4.1 to 4.2 are required before automated cleaning.\nWash: 55 °C, 10 minutes.\n',
  ],
  [
    'in German',
    '4 Manuelle Reinigung\n4.1 Unter kaltem fließendem Wasser 1 Minute spülen.\n4.2 Mit weicher Bürste mindestens 5 Mal bürsten.\n4.3 Die Teile 10 Minuten im Ultraschallbad behandeln.\n4.4 Mit gereinigtem Wasser 2 Minuten spülen.\n\n5 Maschinelle Reinigung\nDie manuellen Schritte 4.1 bis 4.2 sind vor der maschinellen Reinigung erforderlich.\nReinigung: 55 °C, 10 Minuten.\n',
  ],
  [
    'in French',
    '4 Nettoyage manuel\n4.1 Rincer sous l’eau courante froide pendant 1 minute.\n4.2 Brosser avec une brosse douce au moins 5 fois.\n4.3 Traiter les pièces dans un bain à ultrasons pendant 10 minutes.\n4.4 Rincer à l’eau purifiée pendant 2 minutes.\n\n5 Nettoyage en machine\nLes étapes manuelles 4.1 à 4.2 sont nécessaires avant le nettoyage en machine.\nLavage : 55 °C, 10 minutes.\n',
  ],
  [
    'where the machine is named first',
    '4 Manual cleaning\n4.1 Rinse under cold running water for 1 minute.\n4.2 Brush with a soft brush for at least 5 strokes.\n4.3 Treat the parts in an ultrasonic bath for 10 minutes.\n4.4 Rinse with purified water for 2 minutes.\n\n5 Automated cleaning\nAutomated processing is preferred.\nPre-clean according to 4.1 to 4.2.\nWash: 55 °C, 10 minutes.\n',
  ],
] as const;

/** Which sentence each stage and step of cleaning comes from. */
function order(page: string): readonly string[] {
  const { text } = encode(withPages(page), () => undefined);
  const cleaning = /^cleaning:\n((?: .*\n)*)/m.exec(text)?.[1] ?? '';
  return cleaning.split('\n').flatMap((line) => {
    const [, name] = /- \{?(?:stage: (\w+)|all_of:)/.exec(line) ?? [];
    const [, step, src] = /- \{do: (\w+).* src: (\w+)\}$/.exec(line) ?? [];
    if (step !== undefined) return [`    ${step} ${src ?? ''}`];
    return /- \{?(?:stage|all_of)/.test(line) ? [name === undefined ? 'way' : `  ${name}`] : [];
  });
}

describe('the ways of cleaning are those of the page', () => {
  it.each(pages)('%s', (_language, page) => {
    expect(order(page)).toEqual([
      'way',
      '  manual',
      '    rinse s1',
      '    brush s2',
      '  ultrasonic',
      '  manual',
      '    rinse s4',
      'way',
      '  manual',
      '    rinse s1',
      '    brush s2',
      '  mechanical',
    ]);
  });
});
