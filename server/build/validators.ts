import Ajv2020 from 'ajv/dist/2020.js';
import standaloneCode from 'ajv/dist/standalone/index.js';
import { kinds } from '../src/schema/kinds.ts';
import type { SchemaPart } from '../src/schema/shape.ts';
import { bareSchemas } from './bare-schemas.ts';

/** One validator function a kind, as standalone code that needs no schema compiler at run time. */
export function validators(schemas: ReadonlyMap<string, SchemaPart>): string {
  const ajv = new Ajv2020({
    code: { source: true, esm: true, lines: false },
    allErrors: false,
    inlineRefs: false,
    strict: true,
    strictRequired: false,
    allowUnionTypes: true,
    messages: false,
    // Lengths in code units: counting characters would need a module at run time.
    unicode: false,
    // It would print that `unicode` is old. Strict mode throws, so that nothing else is lost.
    logger: false,
  });
  for (const [name, schema] of bareSchemas(schemas))
    ajv.addSchema({ ...(schema as object), $id: `${name}.schema.json` });
  const names = Object.fromEntries(kinds.map((kind) => [validatorName(kind), `${kind}.schema.json`]));
  const table = kinds.map((kind) => `'${kind}': ${validatorName(kind)}`).join(', ');
  return `// Generated from schemas/ by \`npm run generate\`. Do not edit.\n${standaloneCode(ajv, names)}\nexport const validators = { ${table} };\n`;
}

function validatorName(kind: string): string {
  return `validate_${kind.replaceAll('-', '_')}`;
}
