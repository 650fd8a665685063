import { givenOf } from '../../judge/given.ts';
import { factOf, judgeDemand } from '../../judge/judgement.ts';
import type { Judgement } from '../../judge/outcome.ts';
import { thresholdOf } from '../../judge/policies.ts';
import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { asPacked } from './cycle-uses.ts';
import { partsOf } from './entity-parts.ts';
import { settingFor } from './judging.ts';
import { demandOf } from './limits-of.ts';
import { siteLimit } from './site-limits.ts';
import { nameIn } from './use-reports.ts';

type InstrumentSet = EntityOf['set'];

/** Sheets and bags that carry the set by their own strength. */
const soft: ReadonlySet<string> = new Set(['wrap', 'pouch']);

/** The limits of mass that the set exceeds, each once: of the site, of packaging, of the cycle, of what members' pages say. */
export function limitsExceeded(set: InstrumentSet, view: LibraryView): readonly Judgement[] {
  const use = asPacked(set, view);
  const all = [...(use?.common ?? []), ...(use?.members.flatMap(({ judgements }) => judgements) ?? [])];
  const exceeded = new Map<Judgement['demandAt'], Judgement>();
  for (const judgement of [...all, ...bySite(set, view)]) {
    const isNew = !exceeded.has(judgement.demandAt);
    if (isNew && judgement.parameter === 'mass' && judgement.outcome === 'fails')
      exceeded.set(judgement.demandAt, judgement);
  }
  return [...exceeded.values()];
}

/** The limit of the site holds for a set that names no packaging, too. */
function bySite(set: InstrumentSet, view: LibraryView): readonly Judgement[] {
  const setting = settingFor(set, view);
  const requirement = thresholdOf(setting, 'set_mass', 'mass');
  const given = givenOf(set.mass);
  if (requirement === undefined || setting.site === undefined || given === undefined) return [];
  return [judgeDemand({ by: setting.site, parameter: 'mass', requirement }, factOf(set.mass, given), setting)];
}

/** The limit of a wrap or a pouch. */
export function isSoftPackaging({ demandedBy }: Judgement, view: LibraryView): boolean {
  if (!demandedBy.startsWith('packaging/')) return false;
  return soft.has(view.get('packaging', nameIn(demandedBy))?.type?.text ?? '');
}

/** The limit itself; infinite where it is none that can be compared. */
export function limitInKg({ demandedBy, demandAt }: Judgement, view: LibraryView): number {
  const id = nameIn(demandedBy);
  const [kind] = demandedBy.split('/');
  if (kind === 'packaging') return view.get('packaging', id)?.mass_max?.value ?? Number.POSITIVE_INFINITY;
  if (kind === 'site') return siteLimit(view.get('site', id), 'set_mass')?.value ?? Number.POSITIVE_INFINITY;
  const device = kind === 'device' ? view.get('device', id) : undefined;
  const parts = device === undefined ? [] : partsOf(device).requirements;
  const requirement = parts.find((one) => one.requirement.at === demandAt)?.requirement;
  return demandOf(requirement)?.high ?? Number.POSITIVE_INFINITY;
}
