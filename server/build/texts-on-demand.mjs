// What most checks never read stands beside the command line and is read when it is asked for, since every character of a program is
// paid for at each start: the schemas (a check of one file asks for two or three) and the examples of rules in one file of texts, the
// compiled schemas, which are asked where the walk is in doubt, as a part of the program. It was half of the program.
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join, resolve } from 'node:path';
import { transform } from 'esbuild';

const root = resolve(import.meta.dirname, '../..');
const textsName = 'traywright.texts';
const formsName = 'traywright-forms.cjs';
const namespace = 'texts-on-demand';
const ruleFile = /[\\/]server[\\/]src[\\/]rules[\\/][^\\/]+[\\/][^\\/]+\.ts$/;
/** As the formatter leaves it. */
const examplesOfRule = /^ {2}examples: (\{\n[\s\S]*?^ {2}\}),$/m;

export const textsOnDemand = {
  name: namespace,
  setup({ onResolve, onLoad, onEnd }) {
    const { texts, places } = allTexts();
    let forms = '';
    const inNamespace = { filter: /./, namespace };
    onResolve({ filter: new RegExp(`^${namespace}$`) }, ({ path }) => ({ path, namespace }));
    onLoad(inNamespace, () => ({ contents: readerOf(texts, places), loader: 'js', resolveDir: root }));
    onLoad({ filter: /[\\/]schemas\.generated\.ts$/ }, () => ({ contents: schemas, loader: 'js' }));
    onLoad({ filter: /[\\/]validators\.generated\.js$/ }, async ({ path }) => {
      forms = (await transform(readFileSync(path, 'utf8'), { minify: true, format: 'cjs', charset: 'ascii' })).code;
      return { contents: validators, loader: 'js' };
    });
    onLoad({ filter: ruleFile }, ({ path }) => ({ contents: withoutExamples(path), loader: 'ts' }));
    onEnd(({ outputFiles }) => {
      outputFiles?.push({ path: textsName, text: texts }, { path: formsName, text: forms });
    });
  },
};

/** All texts, behind a name that no others have, and where each of them stands. The same for every bundle. */
function allTexts() {
  const places = {};
  let body = '';
  const add = (name, text) => {
    places[name] = [32 + body.length, text.length];
    body += text;
  };
  const folder = resolve(root, 'schemas');
  for (const name of readdirSync(folder).sort())
    add(name.replace('.schema.json', ''), ascii(JSON.parse(readFileSync(join(folder, name), 'utf8'))));
  const rules = resolve(root, 'server/src/rules');
  for (const name of readdirSync(rules, { recursive: true }).sort()) {
    const path = join(rules, name);
    const examples = ruleFile.test(path) ? examplesOfRule.exec(readFileSync(path, 'utf8'))?.[1] : undefined;
    if (examples !== undefined) add(ruleOf(path), ascii(new Function(`return ${examples}`)()));
  }
  const name = createHash('sha256').update(body).digest('hex').slice(0, 32);
  return { texts: name + body, places };
}

function ruleOf(path) {
  return `rule ${basename(path, '.ts')}`;
}

function withoutExamples(path) {
  const text = readFileSync(path, 'utf8');
  if (!examplesOfRule.test(text)) return text;
  return `import { textOnDemand } from '${namespace}';\n${text.replace(
    examplesOfRule,
    `  get examples() { return textOnDemand('${ruleOf(path)}'); },`,
  )}`;
}

/** As JSON, one byte a character. */
function ascii(value) {
  return JSON.stringify(value).replace(/[^ -~]/g, (one) => `\\u${one.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

function readerOf(texts, places) {
  return `import { closeSync, openSync, readSync } from 'node:fs';
const places = ${JSON.stringify(places)};
function read(handle, [start, length]) {
  const bytes = Buffer.allocUnsafe(length);
  return bytes.latin1Slice(0, readSync(handle, bytes, 0, length, start));
}
export function textOnDemand(name) {
  const place = Object.hasOwn(places, name) ? places[name] : undefined;
  if (place === undefined) return undefined;
  const handle = openSync(__dirname + '/${textsName}');
  try {
    if (read(handle, [0, 32]) !== '${texts.slice(0, 32)}') throw new Error('${textsName} belongs to another build of Traywright');
    return JSON.parse(read(handle, place));
  } finally {
    closeSync(handle);
  }
}`;
}

const schemas = `import { textOnDemand } from '${namespace}';
const made = new Map();
export const schemas = {
  get(name) {
    if (!made.has(name)) made.set(name, textOnDemand(name));
    return made.get(name);
  },
};`;

const validators = `export const validators = new Proxy({}, { get: (_, kind) => require(__dirname + '/${formsName}').validators[kind] });`;
