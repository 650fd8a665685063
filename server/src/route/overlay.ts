import type { FileId, IsoDate } from '../base/brand.ts';
import { exportsOf } from '../library/exports.ts';
import { type FileRecord, readRuleFile } from '../library/file-record.ts';
import { entityKey } from '../library/keys.ts';
import type { Library } from '../library/library.ts';
import type { AnyEntity } from '../model/entity.ts';
import { isOfKind } from '../model/entity.ts';
import type { Text } from '../model/node.ts';
import { qualifiedToday } from './altered.ts';

/** Changes to a library that are only imagined. Texts are rule files; nothing is read from or written to a disk. */
export interface Overlay {
  /** Each stands in place of the entity of the same kind and id, or is added. */
  readonly with?: readonly OverlayFile[];
  /** Files of a machine whose cycles are added to those of the machine of the same id, or stand in place of cycles of the same id. */
  readonly cycles?: readonly OverlayFile[];
  /** `packaging/P3`, `washer/W1`, `cycle/S1-pv132-4-20`, `washer-cycle/W1-std`, `member/SET/DEVICE`. */
  readonly without?: readonly string[];
  /** Sets packed in something else than their files name. */
  readonly packed?: readonly { readonly set: string; readonly packaging: string }[];
  /** Ids of sterilizer cycles as they would be after a qualification on that day. */
  readonly qualified?: { readonly cycles: readonly string[]; readonly on: IsoDate };
}

export interface OverlayFile {
  readonly file: FileId;
  readonly text: string;
}

/** What could not be done, in plain words. */
export interface Overlaid {
  readonly library: Library;
  readonly problems: readonly string[];
}

/** A copy of the library with the changes made. The original is untouched. */
export function overlaid(library: Library, overlay: Overlay): Overlaid {
  const copy = library.emptyCopy();
  const problems: string[] = [];
  for (const file of library.files()) {
    const record = library.record(file);
    if (record !== undefined) copy.put(record);
  }
  for (const file of overlay.with ?? []) putInstead(copy, file, problems);
  for (const file of overlay.cycles ?? []) addCycles(copy, file, problems);
  for (const name of overlay.without ?? [])
    if (!takeAway(copy, name)) problems.push(`There is no "${name}" to leave out.`);
  for (const { set, packaging } of overlay.packed ?? [])
    if (!edit(copy, entityKey('set', set), (entity) => packedIn(entity, packaging)))
      problems.push(`There is no set "${set}" to pack in "${packaging}".`);
  const { cycles, on } = overlay.qualified ?? { cycles: [], on: undefined };
  for (const id of cycles)
    if (on === undefined || !edit(copy, entityKey('cycle', id), (entity) => withQualifiedCycle(entity, id, on)))
      problems.push(`There is no cycle "${id}" to qualify.`);
  return { library: copy, problems };
}

function putInstead(library: Library, { file, text }: OverlayFile, problems: string[]): void {
  const record = readRuleFile(file, text);
  problems.push(...faultsOf(record));
  if (record.kind === undefined || record.id === undefined) return;
  for (const old of library.exporters(entityKey(record.kind, record.id))) library.delete(old.file);
  library.put(record);
}

function faultsOf({ file, problems, entity }: FileRecord): readonly string[] {
  const errors = problems.filter(({ severity }) => severity === 'error').map(({ message }) => `${file}: ${message}`);
  return entity === undefined && errors.length === 0 ? [`${file}: not a rule file that can be read.`] : errors;
}

function addCycles(library: Library, { file, text }: OverlayFile, problems: string[]): void {
  const record = readRuleFile(file, text);
  problems.push(...faultsOf(record));
  const { entity, kind, id } = record;
  if (entity === undefined || kind === undefined || id === undefined) return;
  const [old] = library.exporters(entityKey(kind, id));
  const merged = old?.entity === undefined ? undefined : withCycles(old.entity, entity);
  if (old === undefined || merged === undefined)
    problems.push(`${file}: there is no machine "${id}" to add cycles to.`);
  else library.put({ ...old, entity: merged, exports: exportsOf(merged) });
}

function withCycles(old: AnyEntity, added: AnyEntity): AnyEntity | undefined {
  if (isOfKind(old, 'sterilizer') && isOfKind(added, 'sterilizer')) return { ...old, ...joined(old, added) };
  if (isOfKind(old, 'washer') && isOfKind(added, 'washer')) return { ...old, ...joined(old, added) };
  return undefined;
}

interface HasCycles<Cycle> {
  readonly cycles?: { readonly node: 'list'; readonly at: AnyEntity['at']; readonly items: readonly Cycle[] };
}

function joined<Cycle extends { readonly id?: { readonly text: string } }>(
  old: HasCycles<Cycle>,
  added: HasCycles<Cycle>,
): HasCycles<Cycle> {
  const fresh = added.cycles?.items ?? [];
  const kept = (old.cycles?.items ?? []).filter(({ id }) => !fresh.some((one) => one.id?.text === id?.text));
  const list = old.cycles ?? added.cycles;
  return list === undefined ? {} : { cycles: { ...list, items: [...kept, ...fresh] } };
}

function takeAway(library: Library, name: string): boolean {
  const [kind = '', id = '', part = ''] = splitName(name);
  if (kind === 'member') return edit(library, entityKey('set', id), (entity) => withoutMember(entity, part));
  if (kind === 'cycle' || kind === 'washer-cycle')
    return edit(library, entityKey(kind, id), (entity) => withoutCycle(entity, id));
  const records = library.exporters(entityKey(kind, id));
  for (const record of records) library.delete(record.file);
  return records.length > 0;
}

/** Ids may hold no `/`; the first part is the kind. */
function splitName(name: string): readonly string[] {
  return name.split('/', 3);
}

function edit(
  library: Library,
  key: ReturnType<typeof entityKey>,
  change: (entity: AnyEntity) => AnyEntity | undefined,
): boolean {
  const [record] = library.exporters(key);
  const changed = record?.entity === undefined ? undefined : change(record.entity);
  if (record === undefined || changed === undefined) return false;
  library.put({ ...record, entity: changed, exports: exportsOf(changed) });
  return true;
}

function withoutCycle(entity: AnyEntity, id: string): AnyEntity | undefined {
  if (isOfKind(entity, 'sterilizer') && entity.cycles !== undefined) {
    return {
      ...entity,
      cycles: { ...entity.cycles, items: entity.cycles.items.filter((cycle) => cycle.id?.text !== id) },
    };
  }
  if (isOfKind(entity, 'washer') && entity.cycles !== undefined) {
    return {
      ...entity,
      cycles: { ...entity.cycles, items: entity.cycles.items.filter((cycle) => cycle.id?.text !== id) },
    };
  }
  return undefined;
}

function withoutMember(entity: AnyEntity, device: string): AnyEntity | undefined {
  if (!isOfKind(entity, 'set') || entity.members === undefined) return undefined;
  const items = entity.members.items.filter((member) => member.device?.text !== device);
  return items.length === entity.members.items.length
    ? undefined
    : { ...entity, members: { ...entity.members, items } };
}

function packedIn(entity: AnyEntity, packaging: string): AnyEntity | undefined {
  if (!isOfKind(entity, 'set')) return undefined;
  const word: Text = { node: 'text', at: entity.packaging?.at ?? entity.at, text: packaging };
  return { ...entity, packaging: word };
}

function withQualifiedCycle(entity: AnyEntity, id: string, on: IsoDate): AnyEntity | undefined {
  if (!isOfKind(entity, 'sterilizer') || entity.cycles === undefined) return undefined;
  const items = entity.cycles.items.map((cycle) => (cycle.id?.text === id ? qualifiedToday(cycle, on) : cycle));
  return { ...entity, cycles: { ...entity.cycles, items } };
}
