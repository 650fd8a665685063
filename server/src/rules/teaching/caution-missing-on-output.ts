import { defineRule } from '../rule.ts';
import { cautionsMissing } from '../support/cautions.ts';
import { listed } from '../support/lists.ts';

const message = {
  missing: (what: string) => `This goes on paper without saying ${what}. Add it under "cautions".`,
  text: (texts: string) => `To add: ${texts}`,
};

export const rule = defineRule({
  id: 'caution-missing-on-output',
  stage: 'teaching',
  severity: 'error',
  settledBy: 'educator',
  why: 'A paper that hangs on a wall is read without everything that stands around it here.',
  source: 'logic',
  kinds: ['poster'],
  check(poster, { report }) {
    const missing = cautionsMissing(poster);
    if (missing.length === 0) return;
    report({
      at: (poster.cautions ?? poster.id ?? poster).at,
      message: message.missing(listed(missing.map(({ about }) => about))),
      does: message.text(missing.map(({ text }) => `“${text}”`).join(' ')),
    });
  },
  examples: {
    bad: [
      `
kind: poster
id: set-card-template
template: set-card
includes: [route, levels]
cautions: []
^^^^^^^^ This goes on paper without saying that the manufacturer’s document is the instruction, that it releases no load and that a print is out of date with its stamp. Add it under "cautions".
`,
      `
kind: poster
id: aim
topic: cooling
text: Container at the vents.
cautions:
^^^^^^^^ This goes on paper without saying that infrared readings depend on the surface. Add it under "cautions".
  - The manufacturer's current document is the instruction.
  - Not a load-release system.
  - Printed output is uncontrolled after its stamp goes out of date.
`,
    ],
    good: [
      `
kind: poster
id: dry
text: Look for moisture before you close the pack.
cautions:
  - When they differ, follow the document of the manufacturer.
  - This releases no load.
  - Uncontrolled when printed.
`,
      `
kind: poster
id: aim
topic: cooling
text: Container at the vents.
cautions:
  - The manufacturer's current document is the instruction.
  - Not a load-release system.
  - Printed output is uncontrolled after its stamp goes out of date.
  - Infrared readings depend on the surface.
`,
    ],
  },
});
