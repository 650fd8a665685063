import type { IsoDate } from '../base/brand.ts';
import type { LibraryView, SuppliedQuery } from '../library/view.ts';
import { type OpenFault, openFaults } from '../route/trust.ts';
import type { AnyRule, Report } from '../rules/rule.ts';
import { findingOf } from './finding.ts';
import { settled } from './settings.ts';

/**
 * Which faults of transcription are open on a device: errors of the rules on source and transcription that the library's settings do not
 * hold back. Routes ask this through route/trust.ts, which knows no rules.
 */
export function openFaultsBy(rules: readonly AnyRule[], today: IsoDate): SuppliedQuery {
  const transcription = rules.filter(
    ({ stage, severity, kinds }) => stage === 'source' && severity === 'error' && kinds.includes('device'),
  );
  return {
    name: openFaults.name,
    work: (view, id): readonly OpenFault[] => {
      const device = view.get('device', id);
      return device === undefined ? [] : transcription.flatMap((rule) => faultsBy(rule, device, view, today));
    },
  };
}

/** A rule that fails on the file is reported where the file itself is checked. */
function faultsBy(
  rule: AnyRule,
  device: Parameters<AnyRule['check']>[0],
  view: LibraryView,
  today: IsoDate,
): readonly OpenFault[] {
  const reports: Report[] = [];
  try {
    rule.check(device, { today, view, report: (report) => reports.push(report) });
  } catch {
    return [];
  }
  const open = reports.filter((report) => {
    const { kept } = settled([findingOf(rule, report)], view);
    return kept.some(({ severity }) => severity === 'error');
  });
  return open.map(({ at, message }) => ({ words: message, at }));
}
