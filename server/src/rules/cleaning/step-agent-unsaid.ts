import { defineRule } from '../rule.ts';
import { stepInWords, stepsOf } from '../support/steps.ts';

const message = {
  unsaid: (dose: string) => `A dose is given (${dose}), but not of what. Name the agent.`,
};

export const rule = defineRule({
  id: 'step-agent-unsaid',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'Whoever stands at the sink takes what is at hand, and only one agent was shown to clean here.',
  source: 'logic',
  kinds: ['procedure'],
  check(procedure, { report }) {
    for (const step of stepsOf(procedure)) {
      const { dose, chemistry, agent } = step;
      if (dose === undefined || chemistry !== undefined || agent !== undefined) continue;
      report({ at: dose.at, message: message.unsaid(dose.text), does: stepInWords(step) });
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: forceps
steps:
  - {stage: manual, do: brush, dose: 4 mL/L, temp: 35 C, tool: nylon-brush}
                                     ^^^^^^ A dose is given (4 mL/L), but not of what. Name the agent.
`,
      `
kind: procedure
id: tips
steps:
  - {stage: ultrasonic, do: sonicate, dose: 5 mL/L, bath: fresh, time: 5 min}
                                            ^^^^^^ A dose is given (5 mL/L), but not of what. Name the agent.
  - {stage: manual, do: wipe, chemistry: C1, dose: 4 mL/L}
`,
    ],
    good: [
      `
kind: procedure
id: forceps
steps:
  - {stage: manual, do: brush, chemistry: C1, dose: 4 mL/L, temp: 35 C}
`,
      `
kind: procedure
id: tubes
steps:
  - {stage: point-of-use, do: spray, agent: keep-moist, dose: 2 mL/L}
  - {stage: manual, do: rinse, water: tap}
`,
    ],
  },
});
