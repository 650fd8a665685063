import type { MapTree, Tree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import type { FieldPlace } from '../reading/field-places.ts';

/** What a field is also called, so that whoever types one of these words into the list finds it. */

const also: readonly (readonly [RegExp, string])[] = [
  [/^inspection\.lumen_inspection/, 'look through the lumen, borescope'],
  [/^inspection\.function_test/, 'movement, operation'],
  [/^inspection\.reject_if/, 'discard, worn, damaged'],
  [/^lumens/, 'channel, cannulation, bore, inner diameter, length'],
  [/^parts/, 'component, cap, seal, insert, replaced after'],
  [/^storage\.time/, 'shelf life, expiry, keep for'],
  [/^storage\.place/, 'store dry, dust-free'],
  [/^limits\.until/, 'end of life, service life, lifetime, wear'],
  [/^limits\.uses/, 'end of life, lifetime, number of cycles, reprocessing cycles'],
  [/^point_of_use\.max_delay/, 'start cleaning within, soil drying on'],
  [/^point_of_use\.wipe/, 'gross soil'],
  [/^receipt\.initial/, 'before first use, new instruments'],
  [/^disassembly\.(?:steps|assembled_for)/, 'take apart, remove parts'],
  [/^packaging\.allowed/, 'pouch, wrap, container, sterile barrier'],
  [/^packaging\.max_mass/, 'weight'],
  [/^mechanical\.orientation/, 'load, place in the rack, jaws open'],
  [/^mechanical\.connector/, 'irrigation, nozzle, adapter'],
  [/^mechanical\.thermal/, 'disinfection, A0'],
  [/\bdetergent\b/, 'cleaning agent, enzymatic, alkaline'],
  [/\bwater\b|\bfinal_rinse\b/, 'deionised, demineralised, tap water'],
  [/^not\[\]/, 'forbidden, prohibited, do not'],
  [/^lubrication/, 'oil, instrument milk'],
  [/^sterilization/, 'autoclave, steam, cycle'],
  [/^reuse/, 'service life'],
];

/** What the field holds, how it is written in the file and in a proposal, and what else it is called. */
export function foundBy({ path, about }: FieldPlace): string {
  const words = path.replaceAll('[]', '').replaceAll('.*', '').replaceAll('.', ', ').replaceAll('_', ' ');
  const others = also.filter(([of]) => of.test(path)).map(([, names]) => names);
  return `${about} (${[words, ...others].join('; ')})`;
}

/** Fields that name the sentence already, each by its path without the marks of lists. */
export function fieldsCiting(root: MapTree, id: string): ReadonlySet<string> {
  const found = new Set<string>();
  const walk = (tree: Tree, path: string): void => {
    if (tree.node === 'list') for (const item of tree.items) walk(item, path);
    if (tree.node !== 'map') return;
    const src = valueUnder(tree, 'src');
    const cited = src?.node === 'list' ? src.items : src === undefined ? [] : [src];
    const isCiting = cited.some((one) => one.node === 'scalar' && one.text === id);
    if (isCiting) found.add(path);
    const stage = valueUnder(tree, 'stage');
    const at = stage?.node === 'scalar' ? stage.text : path;
    for (const { key, value } of tree.entries) {
      const inner = /^(?:all_of|any_of)$/.test(key.text) && path === 'cleaning' ? path : `${at}.${key.text}`;
      if (isCiting) found.add(inner);
      walk(value, inner);
    }
  };
  for (const { key, value } of root.entries) if (key.text !== 'statements') walk(value, key.text);
  return found;
}
