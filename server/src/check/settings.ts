import type { LibraryView } from '../library/view.ts';
import { rowOf } from '../model/walk.ts';
import type { Finding } from './finding.ts';

/** Applies the library's own rule settings: another severity, or off with a reason. */
export function settled(findings: readonly Finding[], view: LibraryView): Finding[] {
  const rules = view.all('library')[0]?.rules;
  if (rules === undefined) return [...findings];
  const kept: Finding[] = [];
  for (const finding of findings) {
    const severity = rowOf(rules, finding.rule)?.severity?.text;
    if (severity === 'off') continue;
    kept.push(severity === undefined ? finding : { ...finding, severity });
  }
  return kept;
}
