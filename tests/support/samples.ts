import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import type { FileId } from '../../server/src/base/brand.ts';
import { fileId } from '../../server/src/base/brand.ts';

/** Both demo departments, as seeded and corrected. */
export const departments = [
  'lanternfield',
  'lanternfield-corrected',
  'saltmere-eye-clinic',
  'saltmere-eye-clinic-corrected',
] as const;

export type DepartmentName = (typeof departments)[number];

const samples = new URL('../../samples/', import.meta.url).pathname;

/** Every rule file of one sample library, by its path inside the library, in code-unit order. */
export function readSample(name: string): ReadonlyMap<FileId, string> {
  const folder = join(samples, name);
  const texts = new Map<FileId, string>();
  for (const path of rulePaths(folder).sort()) texts.set(fileId(relative(folder, path)), readFileSync(path, 'utf8'));
  return texts;
}

function rulePaths(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ifu.yaml'))
    .map((entry) => join(entry.parentPath, entry.name));
}
