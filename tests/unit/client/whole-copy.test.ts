import { describe, expect, it } from 'vitest';
import { type CopySystem, copyWhole } from '../../../client/src/whole-copy.ts';

const demo: Readonly<Record<string, string>> = {
  '/demo/devices/a.ifu.yaml': 'a',
  '/demo/library.ifu.yaml': 'library',
  '/demo/sets/deep/b.ifu.yaml': 'b',
  '/demo/site.ifu.yaml': 'site',
};

const copy = { from: '/demo', to: '/mine/demo', unfinished: '/mine/demo (unfinished copy)', last: 'library.ifu.yaml' };

/** Files in memory. After `steps` changes nothing more happens, as when the editor is killed or the disk is full. */
function memory(steps: number, afterwards: 'killed' | 'failing') {
  const files = new Map(Object.entries(demo));
  let left = steps;
  const step = (change: () => void): Promise<void> => {
    if (left-- > 0) return Promise.resolve(change());
    return Promise.reject(new Error('the disk is full'));
  };
  const below = (folder: string) => [...files.keys()].filter((file) => file.startsWith(`${folder}/`));
  const system: CopySystem<string> = {
    child: (folder, name) => `${folder}/${name}`,
    list: async (folder) => {
      const names = new Map<string, 'file' | 'folder'>();
      for (const file of below(folder)) {
        const [name = '', deeper] = file.slice(folder.length + 1).split('/');
        names.set(name, deeper === undefined ? 'file' : 'folder');
      }
      return [...names];
    },
    makeFolder: () => step(() => undefined),
    copyFile: (from, to) => step(() => void files.set(to, files.get(from) ?? 'nothing')),
    rename: (from, to) =>
      step(() => {
        for (const file of below(from)) {
          files.set(to + file.slice(from.length), files.get(file) ?? '');
          files.delete(file);
        }
      }),
    remove: async (folder) => {
      if (afterwards === 'failing') for (const file of below(folder)) files.delete(file);
      else throw new Error('nobody is there any more');
    },
  };
  return { files, system, below };
}

/** Changes of a copy that nothing disturbs. */
const whole = 9;

describe('copying a folder as a whole', () => {
  it('brings everything, and leaves nothing beside it', async () => {
    const { files, system, below } = memory(whole, 'killed');
    await copyWhole(system, copy);
    for (const [file, text] of Object.entries(demo)) expect(files.get(file.replace('/demo', copy.to))).toBe(text);
    expect(files.size).toBe(2 * Object.keys(demo).length);
    expect(below(copy.unfinished)).toEqual([]);
  });

  it.each(Array.from({ length: whole }, (_, step) => step))(
    'cut off after %i changes: nothing looks like the library',
    async (steps) => {
      const { system, below } = memory(steps, 'killed');
      await expect(copyWhole(system, copy)).rejects.toThrow('the disk is full');
      expect(below(copy.to)).toEqual([]);
      const begun = below(copy.unfinished);
      if (begun.some((file) => file.endsWith('/library.ifu.yaml'))) expect(begun).toHaveLength(4);
    },
  );

  it.each(Array.from({ length: whole }, (_, step) => step))(
    'failing after %i changes: what was begun is taken away',
    async (steps) => {
      const { files, system } = memory(steps, 'failing');
      await expect(copyWhole(system, copy)).rejects.toThrow('the disk is full');
      expect(Object.fromEntries(files)).toEqual(demo);
    },
  );
});
