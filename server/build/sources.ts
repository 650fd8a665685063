import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { SchemaPart } from '../src/schema/shape.ts';

/** What the generated files are made from. */
export interface Sources {
  /** By name without `.schema.json`. */
  readonly schemas: ReadonlyMap<string, SchemaPart>;
  /** `source/quote-number-mismatch.ts`, relative to server/src/rules. */
  readonly ruleFiles: readonly string[];
}

/** Reads them from the repository at `root`. */
export function readSources(root: string): Sources {
  const schemaFolder = join(root, 'schemas');
  const names = readdirSync(schemaFolder)
    .filter((name) => name.endsWith('.schema.json'))
    .sort();
  const schemas = new Map<string, SchemaPart>();
  for (const name of names)
    schemas.set(name.replace('.schema.json', ''), JSON.parse(readFileSync(join(schemaFolder, name), 'utf8')));
  return { schemas, ruleFiles: ruleFiles(join(root, 'server/src/rules')) };
}

function ruleFiles(folder: string): readonly string[] {
  const stages = readdirSync(folder, { withFileTypes: true }).filter(
    (entry) => entry.isDirectory() && entry.name !== 'support',
  );
  return stages.flatMap((stage) =>
    readdirSync(join(folder, stage.name))
      .filter((name) => name.endsWith('.ts') && !name.endsWith('.generated.ts'))
      .map((name) => `${stage.name}/${name}`),
  );
}
