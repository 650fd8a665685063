import type { EntityOf } from '../../model/entities.generated.ts';
import { defineRule } from '../rule.ts';
import { hasTrait } from '../support/applies.ts';
import { isOutOfScope } from '../support/cleaning-ways.ts';
import { listed } from '../support/lists.ts';

const message = {
  unstated: (stages: string) =>
    `It is not said whether this item is together or apart for ${stages}. Enter what the page says, or ask.`,
};

const stages = ['cleaning', 'packaging', 'sterilization'] as const;

export const rule = defineRule({
  id: 'assembly-state-unstated',
  stage: 'cleaning',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Many instruments are shown to come clean and sterile only when they are apart.',
  source: 'practice',
  kinds: ['device'],
  check(device, { report }) {
    if (isOutOfScope(device) || !comesApart(device)) return;
    const { disassembly } = device;
    if (disassembly === undefined || !hasSteps(disassembly) || disassembly.ask !== undefined) return;
    const stated = disassembly.assembled_for;
    const missing = stages.filter((stage) => stated?.[stage] === undefined);
    if (missing.length === 0) return;
    report({
      at: stated?.at ?? disassembly.at,
      message: message.unstated(listed(missing)),
      related: [{ at: disassembly.at, note: 'how it is taken apart' }],
    });
  },
  examples: {
    bad: [
      `
kind: device
id: takeapart-scissors
traits: [multi-part]
disassembly: {steps: [{do: unscrew the shaft}], assembled_for: {}}
                                                ^^^^^^^^^^^^^ It is not said whether this item is together or apart for cleaning, packaging and sterilization. Enter what the page says, or ask.
`,
      `
kind: device
id: rongeur
parts: [{id: handle, detachable: true}]
disassembly:
  steps:
    - {do: pull off the handle, part: handle}
  assembled_for: {cleaning: false}
  ^^^^^^^^^^^^^ It is not said whether this item is together or apart for packaging and sterilization. Enter what the page says, or ask.
`,
    ],
    good: [
      `
kind: device
id: takeapart-scissors
traits: [multi-part]
disassembly:
  steps: [{do: unscrew the shaft}]
  assembled_for: {cleaning: false, packaging: false, sterilization: false}
`,
      `
kind: device
id: power-drill
traits: [multi-part, powered]
disassembly: {not_applicable: not taken apart by the user}
`,
    ],
  },
});

function comesApart(device: EntityOf['device']): boolean {
  return hasTrait(device, 'multi-part') || device.parts?.items.some((part) => part.detachable?.on === true) === true;
}

/** Without steps the whole stage is missing, which is another finding. */
function hasSteps(stated: NonNullable<EntityOf['device']['disassembly']>): boolean {
  return (stated.steps?.items.length ?? 0) > 0;
}
