import type { LibraryView } from '../library/view.ts';
import { nodesIn } from '../model/walk.ts';

/** How much of what the department puts into its sets has been encoded at all. Ids are in code-unit order. */
export interface Coverage {
  /** Device families that sets name. */
  readonly named: number;
  /** Those of them with a device file that can be read. */
  readonly encoded: number;
  /** Named, but without a device file. */
  readonly missing: readonly string[];
  /** Named, with a device file that can't be read. */
  readonly unreadable: readonly string[];
}

/** "No finding" means little for a library that holds few of its devices; so this is printed beside it. */
export function coverageOf(view: LibraryView): Coverage {
  const missing: string[] = [];
  const unreadable: string[] = [];
  const named = [...familiesInSets(view)].sort();
  for (const family of named) {
    if (view.get('device', family) !== undefined) continue;
    (view.exists('device', family) ? unreadable : missing).push(family);
  }
  return { named: named.length, encoded: named.length - missing.length - unreadable.length, missing, unreadable };
}

function familiesInSets(view: LibraryView): ReadonlySet<string> {
  const families = new Set<string>();
  for (const set of view.all('set')) {
    for (const node of nodesIn(set)) {
      if (node.node !== 'text' || node.refers?.includes('device') !== true) continue;
      if (node.open === true && !view.exists('device', node.text)) continue;
      families.add(node.text);
    }
  }
  return families;
}
