import { kinds } from '../src/schema/kinds.ts';
import type { SchemaPart } from '../src/schema/shape.ts';
import { entityTypes } from './entity-types.ts';
import { ruleLists } from './rule-list.ts';
import { snippets } from './snippets.ts';
import type { Sources } from './sources.ts';
import { validators } from './validators.ts';

/** Path (from the repository's root) to content of every file made from the schemas. Deterministic. */
export function generatedFiles({ schemas, ruleFiles }: Sources): Map<string, string> {
  return new Map([
    ...under('server/src/rules', ruleLists(ruleFiles)),
    ...under('server/src/model', entityTypes(schemas)),
    ['server/src/schema/schemas.generated.ts', schemaImports(schemas)],
    ['server/src/schema/validators.generated.js', validators(schemas)],
    ['server/src/schema/validators.generated.d.ts', validatorTypes()],
    ['client/snippets/rule-files.generated.json', snippets(schemas)],
  ]);
}

function under(folder: string, files: ReadonlyMap<string, string>): readonly (readonly [string, string])[] {
  return [...files].map(([path, text]) => [`${folder}/${path}`, text]);
}

export const banner = '// Generated from schemas/ by `npm run generate`. Do not edit.\n';

function validatorTypes(): string {
  const lines = kinds.map((kind) => `  readonly '${kind}': Validator;`);
  return `${banner}export interface Validator {\n  (data: unknown): boolean;\n  errors?: { instancePath: string; message?: string }[] | null;\n}\nexport declare const validators: {\n${lines.join('\n')}\n};\n`;
}

function schemaImports(schemas: ReadonlyMap<string, SchemaPart>): string {
  const names = [...schemas.keys()].sort();
  const variable = (name: string) => name.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
  const imports = names.map(
    (name) => `import ${variable(name)} from '../../../schemas/${name}.schema.json' with { type: 'json' };`,
  );
  const rows = names.map((name) => `  ['${name}', ${variable(name)} as SchemaPart],`);
  return `${banner}${imports.join('\n')}\nimport type { SchemaPart, SchemaSource } from './shape.ts';\n\n/** By name without \`.schema.json\`. Bundles hold the same as text and parse each at first use. */\nexport const schemas: SchemaSource = new Map<string, SchemaPart>([\n${rows.join('\n')}\n]);\n`;
}
