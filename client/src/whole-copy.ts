/** What copying needs of a file system. An address is whatever that file system calls a place. */
export interface CopySystem<Address> {
  child(folder: Address, name: string): Address;
  list(folder: Address): Promise<readonly (readonly [name: string, is: 'file' | 'folder' | 'other'])[]>;
  makeFolder(folder: Address): Promise<void>;
  copyFile(from: Address, to: Address): Promise<void>;
  rename(from: Address, to: Address): Promise<void>;
  remove(folder: Address): Promise<void>;
}

export interface WholeCopy<Address> {
  readonly from: Address;
  readonly to: Address;
  /** Beside `to`, not there yet: where the copy grows. */
  readonly unfinished: Address;
  /** The file of the uppermost folder that makes it what it is. It is copied when all else is there. */
  readonly last: string;
}

/**
 * Copies a folder so that `to` is there as a whole or not at all, even when the copying is cut off in the middle. File by file: the two
 * may lie on different computers.
 */
export async function copyWhole<Address>(system: CopySystem<Address>, copy: WholeCopy<Address>): Promise<void> {
  const { from, to, unfinished, last } = copy;
  try {
    await copyFolder(system, from, unfinished, last);
    await system.copyFile(system.child(from, last), system.child(unfinished, last));
    await system.rename(unfinished, to);
  } catch (reason) {
    await system.remove(unfinished).catch(() => undefined);
    throw reason;
  }
}

async function copyFolder<Address>(
  system: CopySystem<Address>,
  from: Address,
  to: Address,
  leftOut?: string,
): Promise<void> {
  await system.makeFolder(to);
  for (const [name, is] of await system.list(from)) {
    const [source, target] = [system.child(from, name), system.child(to, name)];
    if (is === 'folder') await copyFolder(system, source, target);
    else if (is === 'file' && name !== leftOut) await system.copyFile(source, target);
  }
}
