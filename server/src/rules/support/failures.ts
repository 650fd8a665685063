import type { Judgement } from '../../judge/outcome.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Saying } from '../../model/saying.ts';
import type { Report } from '../rule.ts';
import { deviceName, deviceNames } from './device-names.ts';
import { listed } from './lists.ts';

/** A device whose instruction is not followed, with the judgement that says so. */
export interface Failure {
  readonly device: EntityOf['device'];
  readonly judgement: Judgement;
}

const mostQuotes = 4;

/** `"scissors" (1-15 min) and "clamp" (at most 10 min)`. */
export function whoAsks(failures: readonly Failure[]): string {
  const names = deviceNames(failures.map(({ device }) => device));
  return listed(failures.map(({ judgement }, at) => `"${names[at]}" (${judgement.required})`));
}

/** `"scissors", "clamp" and 3 more`. */
export function named(devices: readonly EntityOf['device'][]): string {
  return listed(deviceNames(devices).map((name) => `"${name}"`));
}

/** Quotes, gap and places of all of them, as parts of one report. */
export function evidenceOf(failures: readonly Failure[]): Pick<Report, 'says' | 'gap' | 'related'> {
  const gap = failures.map(({ judgement }) => judgement.gap).find((one) => one !== undefined);
  return {
    says: quotesOf(failures.map(({ judgement }) => judgement.says)),
    related: failures.map(({ device, judgement }) => ({
      at: judgement.demandAt,
      note: `what the instruction of "${deviceName(device)}" asks for`,
    })),
    ...(gap !== undefined && { gap }),
  };
}

/** Each quote once, as many as a reader will read. */
export function quotesOf(sayings: readonly (readonly Saying[])[]): readonly Saying[] {
  const seen = new Map<string, Saying>();
  for (const saying of sayings.flat()) seen.set(`${saying.doc} ${saying.quote}`, saying);
  return [...seen.values()].slice(0, mostQuotes);
}
