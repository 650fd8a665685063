import type { MapTree, Tree } from '../syntax/tree.ts';
import { valueUnder } from '../syntax/value-under.ts';
import { lineEndAt } from './writing/writing-scan.ts';

/**
 * The list of packagings of the sterilization cycle at a place of a device's file, where neither the cycle nor the device names any: what the
 * page names is asked, from the words of pages and the packagings of the library, by their names.
 */
export function packagingsToName(root: MapTree, text: string, offset: number): string | undefined {
  const sterilization = valueUnder(root, 'sterilization');
  const options = sterilization?.node === 'map' ? valueUnder(sterilization, 'any_of') : undefined;
  if (options?.node !== 'list' || isGiven(root)) return undefined;
  const at = options.items.findIndex(({ span }) => span.start <= offset && offset <= lineEndAt(text, span.end));
  const option = options.items[at];
  return option === undefined || option.node !== 'map' || isGiven(option)
    ? undefined
    : `sterilization.any_of.${at}.packaging.allowed`;
}

function isGiven(tree: MapTree): boolean {
  const packaging: Tree | undefined = valueUnder(tree, 'packaging');
  return packaging !== undefined && packaging.node !== 'empty';
}
