import type { Text } from '../model/node.ts';
import { type CaseOf, judgeCase } from './judgement.ts';
import { judgeLumens, lumensOf } from './lumens.ts';
import type { Judgement } from './outcome.ts';
import type { SterilizationQuestion } from './sterilization-question.ts';

/** Peroxide is judged by name: the page must list this sterilizer and this cycle, and the cycle must cover the lumens. */
export function judgePeroxide(question: SterilizationQuestion): readonly Judgement[] {
  const { device, option, machine, cycle, setting, quantity } = question;
  if (option.modality?.text !== 'vh2o2') return option.listed === undefined ? [] : [listed(question)];
  const lumens = lumensOf(device, quantity ?? 1);
  if (lumens.length === 0) return [listed(question)];
  if (cycle.lumens !== undefined) return [listed(question), ...judgeLumens(machine, cycle.lumens, lumens, setting)];
  const facts = {
    by: machine,
    required: 'lumens that the cycle covers',
    at: cycle.id?.at ?? cycle.at,
    factAt: device.lumens?.at,
  };
  return [listed(question), judgeCase('peroxide-cycle', 'lumens-unknown', facts)];
}

function listed(question: SterilizationQuestion): Judgement {
  const { device, option, cycle, machine } = question;
  const names = option.listed?.items ?? [];
  return judgeCase('peroxide-cycle', whichListed(question, option.listed?.items), {
    by: device,
    required: names.length === 0 ? 'a listed sterilizer and cycle' : names.map((one) => one.text).join(' or '),
    given: cycle.id?.text ?? machine.id?.text,
    at: option.listed?.at ?? option.at,
    factAt: cycle.id?.at,
    src: option.src,
  });
}

function whichListed(
  { machine, cycle }: SterilizationQuestion,
  names: readonly Text[] | undefined,
): CaseOf<'peroxide-cycle'> {
  if (names === undefined) return 'not-encoded';
  const written = new Set(names.map((one) => one.text));
  if (isListed(written, machine, cycle)) return 'listed';
  const machineNames = [machine.id?.text, machine.name?.text];
  return machineNames.some((name) => name !== undefined && written.has(name)) ? 'machine-only' : 'not-listed';
}

interface Named {
  readonly id?: Text;
  readonly name?: Text;
}

/** By the id of the cycle, or by the names of machine and cycle. */
export function isListed(
  written: ReadonlySet<string>,
  machine: Named,
  cycle: { readonly id?: Text; readonly name_on_screen?: Text },
): boolean {
  const cycleNames = [cycle.id?.text, cycle.name_on_screen?.text].filter((name) => name !== undefined);
  if (cycle.id !== undefined && written.has(cycle.id.text)) return true;
  for (const machineName of [machine.id?.text, machine.name?.text]) {
    for (const name of cycleNames)
      if (written.has(`${machineName}:${name}`) || written.has(`${machineName}: ${name}`)) return true;
  }
  return false;
}
