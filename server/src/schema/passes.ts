import type { ScalarTree, Tree } from '../syntax/tree.ts';
import type { Kind } from './kinds.ts';
import { plainTypeOf } from './limits.ts';
import { validators } from './validators.generated.js';

/** Undefined when the compiled schema of `kind` takes the tree, else its reason in the schema library's words. */
export function passesSchema(tree: Tree, kind: Kind): string | undefined {
  const validator = validators[kind];
  if (validator(plainOf(tree))) return undefined;
  const first = validator.errors?.[0];
  return `${first?.instancePath ?? ''} ${first?.message ?? 'is refused'}`.trim();
}

/** The tree as plain data, as a YAML 1.2 reader would give it, except that objects have no prototype. */
export function plainOf(tree: Tree): unknown {
  switch (tree.node) {
    case 'empty':
      return null;
    case 'scalar':
      return plainScalar(tree);
    case 'list':
      return tree.items.map(plainOf);
    case 'map': {
      const plain = new Plain();
      for (const { key, value } of tree.entries) if (plain[key.text] === undefined) plain[key.text] = plainOf(value);
      return plain;
    }
  }
}

/** An object that inherits nothing: its keys are those of a file. Made by a class, it costs a fraction of what `Object.create(null)` does. */
class Plain {
  [key: string]: unknown;
}
Object.setPrototypeOf(Plain.prototype, null);
Reflect.deleteProperty(Plain.prototype, 'constructor');

function plainScalar(scalar: ScalarTree): unknown {
  switch (plainTypeOf(scalar)) {
    case 'string':
      return scalar.text;
    case 'number':
      return Number(scalar.text);
    case 'boolean':
      return scalar.text === 'true';
    case 'null':
      return null;
  }
}
