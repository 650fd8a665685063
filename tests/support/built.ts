import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type BuildOptions, build, type Metafile } from 'esbuild';

export const root = new URL('../..', import.meta.url).pathname;

/** One file that is handed out, as the build describes it. */
export interface Bundle {
  readonly name: string;
  readonly out: string;
}

interface Bundling {
  readonly bundles: readonly Bundle[];
  optionsOf(bundle: Bundle): BuildOptions;
  writeBundle(bundle: Bundle, folder: string): Promise<void>;
}

export async function bundling(): Promise<Bundling> {
  return (await import(pathToFileURL(join(root, 'server/build/bundle.mjs')).href)) as Bundling;
}

/** The text of a bundle and of what belongs to it, and what it was made of. */
export async function bundleText(bundle: Bundle): Promise<{ readonly text: string; readonly made: Metafile }> {
  const { optionsOf } = await bundling();
  const { outputFiles, metafile } = await build({ ...optionsOf(bundle), write: false, metafile: true });
  return { text: outputFiles.map(({ text }) => text).join('\n'), made: metafile };
}

/** The programs as they are handed out, in a folder of their own, so that tests that run beside each other do not meet. */
export class Built {
  readonly folder = mkdtempSync(join(root, 'node_modules', '.built-'));
  readonly cli = join(this.folder, 'traywright.cjs');
  readonly server = join(this.folder, 'server.cjs');

  static async of(...names: readonly string[]): Promise<Built> {
    const built = new Built();
    const { bundles, writeBundle } = await bundling();
    for (const bundle of bundles.filter(({ name }) => names.includes(name))) await writeBundle(bundle, built.folder);
    return built;
  }

  remove(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}
