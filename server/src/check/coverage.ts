import type { LibraryView } from '../library/view.ts';
import type { EntityOf } from '../model/entities.generated.ts';
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

/** Device families that one set names; `perhaps`: where a name of something else may stand as well. */
export interface FamiliesOfSet {
  readonly named: readonly string[];
  readonly perhaps: readonly string[];
}

/** What there is of a device family. */
export type Encoding = 'encoded' | 'unreadable' | 'missing';

/** "No finding" means little for a library that holds few of its devices; so this is printed beside it. */
export function coverageOf(view: LibraryView): Coverage {
  return coverageBy(view.all('set').map(familiesIn), (family) => {
    if (view.get('device', family) !== undefined) return 'encoded';
    return view.exists('device', family) ? 'unreadable' : 'missing';
  });
}

/** The same, from what is known of each set and device. */
export function coverageBy(sets: Iterable<FamiliesOfSet>, encodingOf: (family: string) => Encoding): Coverage {
  const families = new Set<string>();
  for (const { named, perhaps } of sets) {
    for (const family of named) families.add(family);
    for (const family of perhaps) if (encodingOf(family) !== 'missing') families.add(family);
  }
  const missing: string[] = [];
  const unreadable: string[] = [];
  for (const family of [...families].sort()) {
    const encoding = encodingOf(family);
    if (encoding === 'missing') missing.push(family);
    if (encoding === 'unreadable') unreadable.push(family);
  }
  return { named: families.size, encoded: families.size - missing.length - unreadable.length, missing, unreadable };
}

export function familiesIn(set: EntityOf['set']): FamiliesOfSet {
  const named = new Set<string>();
  const perhaps = new Set<string>();
  for (const node of nodesIn(set)) {
    if (node.node !== 'text' || node.refers?.includes('device') !== true) continue;
    (node.open === true ? perhaps : named).add(node.text);
  }
  return { named: [...named], perhaps: [...perhaps] };
}
