import { sayingOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { readStatement, transcribedKinds } from '../support/transcription.ts';

const message = {
  picture: (id: string) =>
    `Statement ${id} is a picture, and nobody has confirmed in words what it means. Ask the maker and note the answer under "pictogram_confirmed".`,
};

export const rule = defineRule({
  id: 'pictogram-without-text',
  stage: 'source',
  severity: 'advice',
  settledBy: 'manufacturer',
  why: 'A crossed-out basin is read differently by different people.',
  source: 'practice',
  kinds: transcribedKinds,
  check(entity, { report }) {
    for (const [id, { value: statement }] of entity.statements?.rows ?? []) {
      const { quote } = statement;
      if (quote === undefined || statement.pictogram_confirmed !== undefined || !quote.text.startsWith('[')) continue;
      const isPicture = readStatement(entity, id)?.reading.flags.some(({ flag }) => flag === 'pictogram') === true;
      if (!isPicture) continue;
      report({ at: quote.at, message: message.picture(id), says: [sayingOf(statement, statement.at)] });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: power-handpiece
statements:
  s10: {doc: PH-2, rev: C, page: 1, quote: "[pictogram: crossed basin]"}
                                           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^ Statement s10 is a picture, and nobody has confirmed in words what it means. Ask the maker and note the answer under "pictogram_confirmed".
immersion: {use: forbidden, src: s10}
`,
      `
kind: packaging
id: P9-pouch
statements:
  s1:
    doc: PO-3
    rev: A
    figure: "2"
    quote: "[symbol: crossed sun]"
           ^^^^^^^^^^^^^^^^^^^^^^^ Statement s1 is a picture, and nobody has confirmed in words what it means. Ask the maker and note the answer under "pictogram_confirmed".
`,
    ],
    good: [
      `
kind: device
id: power-handpiece
statements:
  s10: {doc: PH-2, rev: C, page: 1, quote: "[pictogram: crossed basin]", pictogram_confirmed: "answer r-handpiece-basin: do not immerse"}
immersion: {use: forbidden, src: s10}
`,
      `
kind: device
id: power-handpiece
statements:
  s10: {doc: PH-2, rev: C, page: 1, quote: "Do not immerse (see the crossed basin on the label)."}
immersion: {use: forbidden, src: s10}
`,
    ],
  },
});
