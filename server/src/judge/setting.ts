import type { Policies } from '../model/entities/site.generated.ts';
import type { EntityOf } from '../model/entities.generated.ts';

/** What holds around every judgement of one run. Nothing here is looked up: the caller brings it. */
export interface Setting {
  /** The department. Without one nothing is adopted: bare numbers are asked about and there are no limits of the site. */
  readonly site?: EntityOf['site'];
  /** Today, `YYYY-MM-DD`. */
  readonly today: string;
  /** Situations that hold, such as `prion-suspected`. None for routine work. */
  readonly situations: ReadonlySet<string>;
  /** Answers of manufacturers known to the library. */
  readonly responses: Responses;
}

/** By the id of what they are about. */
export type Responses = (id: string) => readonly EntityOf['response'][];

/** What the department keeps, by id; undefined when nothing is known under the id. */
export interface Stock {
  readonly chemistry: (id: string) => EntityOf['chemistry'] | undefined;
  readonly water: (id: string) => EntityOf['water'] | undefined;
}

export function routineSetting(today: string, site?: EntityOf['site'], responses: Responses = () => []): Setting {
  return { today, situations: new Set(), responses, ...(site && { site }) };
}

export function policiesOf(setting: Setting): Policies | undefined {
  return setting.site?.policies;
}

/** True when a condition (`when: prion-suspected`) holds, or when there is none. */
export function holds(setting: Setting, condition: { readonly text: string } | undefined): boolean {
  if (condition === undefined || setting.situations.has(condition.text)) return true;
  return condition.text === 'prion-suspected' && setting.site?.policies?.tse_routine?.on === true;
}

const situations = new WeakMap<Setting, string>();

/** A name of all on which `holds` depends. */
export function situationsIn(setting: Setting): string {
  const known = situations.get(setting);
  if (known !== undefined) return known;
  const all = [...setting.situations, ...(setting.site?.policies?.tse_routine?.on === true ? ['prion-suspected'] : [])];
  const name = [...new Set(all)].sort().join('\n');
  situations.set(setting, name);
  return name;
}
