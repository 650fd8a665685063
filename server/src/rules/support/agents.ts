import type { Agent, AgentQuestion, CleaningMethod } from '../../judge/agents.ts';
import { waysThrough } from '../../judge/demands.ts';
import type { Judgement } from '../../judge/outcome.ts';
import type { Setting } from '../../judge/setting.ts';
import type { LibraryView, WasherCycle } from '../../library/view.ts';
import type { Detergent } from '../../model/entities/detergent.generated.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Text } from '../../model/node.ts';

type Device = EntityOf['device'];

export function agentNamed(word: Text, view: LibraryView): Agent {
  return { word, chemistry: view.get('chemistry', word.text) };
}

/** The agent a step uses; undefined when it names none. */
export function agentOfStep(step: ProcedureStep, view: LibraryView): Agent | undefined {
  const word = step.chemistry ?? step.agent;
  return word === undefined ? undefined : agentNamed(word, view);
}

/** Everything a washer cycle doses, each once: what the cycle names, what its phases name, what the machine doses always. */
export function agentsOfCycle(machine: EntityOf['washer'], cycle: WasherCycle, view: LibraryView): readonly Agent[] {
  const words = [
    ...((cycle.doses ?? machine.doses)?.items ?? []),
    ...(cycle.phases?.items.map((phase) => phase.chemistry) ?? []),
  ];
  const agents = new Map<string, Agent>();
  for (const word of words)
    if (word !== undefined && !agents.has(word.text)) agents.set(word.text, agentNamed(word, view));
  return [...agents.values()];
}

/** The way of cleaning that a stage stands for; undefined for stages that are none. */
export function methodOf(stage: { readonly text: string } | undefined): CleaningMethod | undefined {
  switch (stage?.text) {
    case 'manual':
    case 'rinse':
      return 'manual';
    case 'ultrasonic':
    case 'mechanical':
    case 'disinfection':
      return stage.text;
    default:
      return undefined;
  }
}

/** What the page asks of the detergent at one place; silence and "does not apply" ask nothing. */
export function detergentsOf(voice: CleaningNode): readonly Detergent[] {
  const asked = [
    voice.detergent,
    ...(voice.steps?.items.map((step) => step.detergent) ?? []),
    voice.wash?.detergent,
    voice.enzyme_wash?.detergent,
  ];
  return asked
    .filter((one) => one !== undefined && one.not_applicable === undefined && one.silent?.on !== true)
    .filter((one) => one !== undefined);
}

/**
 * The judgements of one agent that fail in every way of cleaning by this method, those of the first way. Where the page gives no way by
 * this method, only its limits count.
 */
export function agentFailures(
  device: Device,
  agent: Agent,
  method: CleaningMethod,
  setting: Setting,
  judge: (question: AgentQuestion) => readonly Judgement[],
): readonly Judgement[] {
  const ways = waysThrough(device, method, setting).map((way) =>
    way.flatMap(({ voices }) => voices.flatMap(detergentsOf)),
  );
  let first: readonly Judgement[] | undefined;
  for (const detergents of ways.length === 0 ? [[]] : ways) {
    const failing = judge({ device, detergents, agent, method, setting }).filter(({ outcome }) => outcome === 'fails');
    if (failing.length === 0) return [];
    first ??= failing;
  }
  return first ?? [];
}
