import { kinds } from '../src/schema/kinds.ts';
import type { RecordShape, SchemaPart, Shape } from '../src/schema/shape.ts';
import { ShapeReader, typeName } from '../src/schema/shape.ts';

/** TypeScript types of every kind's entity, with spans: the schemas' fields as nodes of model/node.ts. */
export function entityTypes(schemas: ReadonlyMap<string, SchemaPart>): string {
  const writer = new TypeWriter();
  const reader = new ShapeReader(schemas);
  for (const kind of kinds) writer.record(reader.kind(kind), typeName(kind));
  const rows = kinds.map((kind) => `  readonly '${kind}': ${typeName(kind)};`);
  return `// Generated from schemas/ by \`npm run generate\`. Do not edit.
import type { Citation, DateValue, Flag, List, Quantity, Rec, Requirement, Table, Text } from './node.ts';

${writer.text()}
/** Kind of rule file to the type of its entity. */
export interface EntityOf {
${rows.join('\n')}
}
`;
}

class TypeWriter {
  readonly #names = new Map<RecordShape, string>();
  readonly #taken = new Set<string>([
    'Requirement',
    'Text',
    'Flag',
    'Citation',
    'List',
    'Table',
    'Rec',
    'Quantity',
    'DateValue',
  ]);
  readonly #blocks: string[] = [];

  record(shape: RecordShape, wanted: string): string {
    if (shape.name === 'Requirement') return 'Requirement';
    const known = this.#names.get(shape);
    if (known !== undefined) return known;
    const name = this.#free(wanted);
    this.#names.set(shape, name);
    const lines = [...shape.fields.values()].map((field) => {
      const type = this.#type(field.shape, `${name}${typeName(field.key)}`);
      const note = field.description === '' ? '' : `  /** ${field.description.replaceAll('*/', '')} */\n`;
      return `${note}  readonly ${/^\w+$/.test(field.key) ? field.key : `'${field.key}'`}?: ${type};`;
    });
    this.#blocks.push(
      `/** ${shape.description || shape.title} */\nexport interface ${name} extends Rec {\n${lines.join('\n')}\n}\n`,
    );
    return name;
  }

  text(): string {
    return this.#blocks.join('\n');
  }

  #type(shape: Shape, wanted: string): string {
    switch (shape.form) {
      case 'record':
        return this.record(shape, shape.name || wanted);
      case 'list':
        return `List<${this.#type(shape.item, wanted)}>`;
      case 'table':
        return `Table<${this.#type(shape.value, wanted)}>`;
      case 'words':
        return `Text<${[...shape.words.keys()].map((word) => `'${word}'`).join(' | ')}>`;
      case 'quantity':
        return 'Quantity';
      case 'flag':
        return 'Flag';
      case 'date':
      case 'datetime':
        return 'DateValue';
      case 'citation':
        return 'Citation';
      default:
        return 'Text';
    }
  }

  #free(wanted: string): string {
    let name = wanted;
    for (let n = 2; this.#taken.has(name); n++) name = `${wanted}${n}`;
    this.#taken.add(name);
    return name;
  }
}
