import { Ajv } from 'ajv';
import standaloneCode from 'ajv/dist/standalone/index.js';
import { kinds } from '../src/schema/kinds.ts';
import type { SchemaPart } from '../src/schema/shape.ts';
import { bareSchemas } from './bare-schemas.ts';

/** One validator function a kind, as standalone code that needs no schema compiler at run time. */
export function validators(schemas: ReadonlyMap<string, SchemaPart>): string {
  const ajv = new Ajv({
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
  // No schema uses what the drafts after 7 brought beside `$defs`; what they need at each reference would be paid for in vain.
  for (const [name, schema] of bareSchemas(schemas)) {
    const { $schema: _, ...rest } = schema as Record<string, unknown>;
    ajv.addSchema({ ...rest, $id: `${name}.schema.json` });
  }
  const names = Object.fromEntries(kinds.map((kind) => [validatorName(kind), `${kind}.schema.json`]));
  const table = kinds.map((kind) => `'${kind}': ${validatorName(kind)}`).join(', ');
  return `// Generated from schemas/ by \`npm run generate\`. Do not edit.\n${withoutUnused(standaloneCode(ajv, names))}\nexport const validators = { ${table} };\n`;
}

/**
 * Of a fault only its place is told, and no keyword looks at the data around its own: what would be made and handed on for that at each
 * reference is left out. It was a third of the code.
 */
function withoutUnused(code: string): string {
  return code
    .replaceAll(/,schemaPath:"(?:[^"\\]|\\.)*",keyword:"\w+",params:\{(?:[^{}"]|"(?:[^"\\]|\\.)*")*\}/g, '')
    .replaceAll('{instancePath="", parentData, parentDataProperty, rootData=data}={}', 'instancePath=""')
    .replaceAll(/\{instancePath:([^;]*?),parentData:\w+,parentDataProperty:[^;]*?,rootData\}/g, '$1');
}

function validatorName(kind: string): string {
  return `validate_${kind.replaceAll('-', '_')}`;
}
