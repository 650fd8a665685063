import { kinds } from '../src/schema/kinds.ts';
import type { RecordShape, SchemaPart, Shape } from '../src/schema/shape.ts';
import { ShapeReader, typeName } from '../src/schema/shape.ts';
import { homesOf } from './entity-homes.ts';

const banner = '// Generated from schemas/ by `npm run generate`. Do not edit.\n';

/** Types of model/node.ts that fields are made of. */
const nodeTypes = ['Citation', 'DateValue', 'Flag', 'List', 'Quantity', 'Rec', 'Requirement', 'Table', 'Text'];

/**
 * TypeScript types of every kind's entity, with spans: the schemas' fields as nodes of model/node.ts. Path below server/src/model to text:
 * a file for each kind, for each stage of the work of a device and for each record that several of these use, and one that names the kinds.
 */
export function entityTypes(schemas: ReadonlyMap<string, SchemaPart>): ReadonlyMap<string, string> {
  const reader = new ShapeReader(schemas);
  const roots = new Map(kinds.map((kind) => [kind, reader.kind(kind)]));
  const writer = new TypeWriter();
  for (const [kind, shape] of roots) writer.record(shape, typeName(kind));
  const homes = homesOf(roots, (shape) => writer.nameOf(shape));
  const homeOfType = new Map(
    [...homes].flatMap(([home, shapes]) => shapes.map((shape) => [writer.nameOf(shape), home])),
  );
  const files = new Map<string, string>();
  for (const [home, shapes] of homes) files.set(`entities/${home}.generated.ts`, writer.file(shapes, homeOfType));
  return files.set('entities.generated.ts', kindsFile());
}

function kindsFile(): string {
  const imports = kinds.map((kind) => importLine([typeName(kind)], `./entities/${kind}.generated.ts`));
  const rows = kinds.map((kind) => `  readonly '${kind}': ${typeName(kind)};`);
  return `${banner}${imports.sort().join('\n')}

/** Kind of rule file to the type of its entity. */
export interface EntityOf {
${rows.join('\n')}
}
`;
}

function importLine(names: readonly string[], from: string): string {
  return `import type { ${[...names].sort().join(', ')} } from '${from}';`;
}

interface Block {
  readonly text: string;
  /** Names of the types that the text uses. */
  readonly uses: ReadonlySet<string>;
}

class TypeWriter {
  readonly #names = new Map<RecordShape, string>();
  readonly #taken = new Set<string>(nodeTypes);
  readonly #blocks = new Map<RecordShape, Block>();

  nameOf(shape: RecordShape): string {
    return this.#names.get(shape) ?? '';
  }

  record(shape: RecordShape, wanted: string): string {
    if (shape.name === 'Requirement') return 'Requirement';
    const known = this.#names.get(shape);
    if (known !== undefined) return known;
    const name = this.#free(wanted);
    this.#names.set(shape, name);
    const uses = new Set<string>(['Rec']);
    const lines = [...shape.fields.values()].map((field) => {
      const type = this.#type(field.shape, `${name}${typeName(field.key)}`, uses);
      const note = field.description === '' ? '' : `  /** ${field.description.replaceAll('*/', '')} */\n`;
      return `${note}  readonly ${/^\w+$/.test(field.key) ? field.key : `'${field.key}'`}?: ${type};`;
    });
    const about = `/** ${shape.description || shape.title} */`;
    this.#blocks.set(shape, {
      text: `${about}\nexport interface ${name} extends Rec {\n${lines.join('\n')}\n}\n`,
      uses,
    });
    return name;
  }

  /** One file: these records, and imports of what they use. `homes` says in which file each type is. */
  file(shapes: readonly RecordShape[], homes: ReadonlyMap<string, string>): string {
    const own = new Set(shapes.map((shape) => this.nameOf(shape)));
    const blocks = shapes.flatMap((shape) => this.#blocks.get(shape) ?? []);
    const used = new Set(blocks.flatMap(({ uses }) => [...uses]));
    const byHome = new Map<string, string[]>();
    for (const name of used) {
      const home = homes.get(name);
      if (home !== undefined && !own.has(name)) byHome.set(home, [...(byHome.get(home) ?? []), name]);
    }
    const others = [...byHome].map(([home, names]) => importLine(names, `./${home}.generated.ts`)).sort();
    const imports = [
      importLine(
        [...used].filter((name) => nodeTypes.includes(name)),
        '../node.ts',
      ),
      ...others,
    ];
    return `${banner}${imports.join('\n')}\n\n${blocks.map(({ text }) => text).join('\n')}`;
  }

  #type(shape: Shape, wanted: string, uses: Set<string>): string {
    const used = (name: string): string => {
      uses.add(name);
      return name;
    };
    switch (shape.form) {
      case 'record':
        return used(this.record(shape, shape.name || wanted));
      case 'list':
        return `${used('List')}<${this.#type(shape.item, wanted, uses)}>`;
      case 'table':
        return `${used('Table')}<${this.#type(shape.value, wanted, uses)}>`;
      case 'words':
        return `${used('Text')}<${[...shape.words.keys()].map((word) => `'${word}'`).join(' | ')}>`;
      case 'quantity':
        return used('Quantity');
      case 'flag':
        return used('Flag');
      case 'date':
      case 'datetime':
        return used('DateValue');
      case 'citation':
        return used('Citation');
      default:
        return used('Text');
    }
  }

  #free(wanted: string): string {
    let name = wanted;
    for (let n = 2; this.#taken.has(name); n++) name = `${wanted}${n}`;
    this.#taken.add(name);
    return name;
  }
}
