import { cpSync, mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Neovim } from './driver.ts';

/** Neovim with the bundled server on a copy of the small library. */
export interface NeovimOnLibrary {
  readonly neovim: Neovim;
  readonly folder: string;
  close(): Promise<void>;
}

export async function startOnSmallLibrary(): Promise<NeovimOnLibrary> {
  const server = path.resolve(import.meta.dirname, '../../../dist/server.cjs');
  const folder = realpathSync(mkdtempSync(path.join(tmpdir(), 'library-')));
  cpSync(path.join(import.meta.dirname, '../fixtures/small-library'), folder, { recursive: true });
  const neovim = await Neovim.start({
    folder,
    command: [process.execPath, server, '--stdio'],
    languageId: 'traywright-rules',
  });
  return {
    neovim,
    folder,
    close: async () => {
      await neovim.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
