import { readFileSync } from 'node:fs';
import path from 'node:path';
import { fileId } from '../../server/src/base/brand.ts';
import { lineToWrite, newFileText } from '../../server/src/editor/items/new-file.ts';
import { nextSentence, sameSentence } from '../../server/src/editor/walk/sentence-walk.ts';
import type { WalkChoice } from '../../server/src/editor/words/walk-choice.ts';
import { readRuleFile } from '../../server/src/library/file-record.ts';
import type { Node } from '../../server/src/model/node.ts';
import { childrenOf, fieldOf, isRequirement } from '../../server/src/model/walk.ts';
import { applyEdits } from '../../server/src/syntax/edits.ts';
import { readTree } from '../../server/src/syntax/read.ts';
import type { MapTree } from '../../server/src/syntax/tree.ts';

/** A person with a keyboard who encodes an instruction: what stands in the file, what was shown, and how often a key was pressed. */
export interface Encoded {
  readonly text: string;
  readonly actions: number;
  /** What was asked and taken, in order. */
  readonly log: readonly {
    readonly quote: string;
    readonly label: string;
    readonly before: string;
    readonly after: string;
  }[];
  readonly words: string;
}

export function instruction(name: string): string {
  return readFileSync(path.join(import.meta.dirname, '../unit/editor/instructions', name), 'utf8');
}

/** A new device file as its questions leave it, with the pages pasted where the cursor stands. */
export function withPages(pages: string): string {
  const answers = {
    doc: ['IN-1'],
    rev: ['A'],
    maker: ['Ringfield'],
    name: ['Punch'],
    covers: ['IN-5'],
    class: ['critical'],
    traits: ['lumen', 'multi-part'],
  };
  const lines = newFileText('device', 'invented-device', answers).split('\n');
  const at = lineToWrite(lines.join('\n')) ?? 0;
  return lines.with(at, pages).join('\n');
}

/** `chooses`: which choice is taken where the first is not meant; undefined takes the first, as Enter does. */
export function encode(
  start: string,
  chooses: (quote: string, labels: readonly string[]) => string | undefined,
): Encoded {
  let text = start;
  let actions = 0;
  let after = '';
  let told: WalkChoice['told'];
  const log: Encoded['log'][number][] = [];
  for (let guard = 0; guard < 500; guard++) {
    const tree = treeIn(text);
    const record = readRuleFile(fileId('devices/invented.ifu.yaml'), text);
    const step = told === undefined ? nextSentence(record, tree, after) : sameSentence(record, tree, after, told);
    if (step.is === 'done') return { text, actions, log, words: step.words };
    const wanted = chooses(
      step.quote,
      step.choices.map(({ label }) => label),
    );
    const chosen = step.choices.find(({ label }) => label === wanted) ?? step.choices[0];
    if (chosen === undefined) throw new Error('nothing to choose');
    // Enter, or the arrow down to it and Enter.
    actions += 1 + step.choices.indexOf(chosen);
    const applied = applyEdits(text, chosen.edits);
    if (!('text' in applied)) throw new Error(applied.refused);
    log.push({ quote: step.quote, label: chosen.label, before: text, after: applied.text });
    text = applied.text;
    told = chosen.told;
    after = step.statement;
    if (chosen.does === 'stop') return { text, actions, log, words: '' };
  }
  throw new Error('it does not come to an end');
}

function treeIn(text: string): MapTree | undefined {
  const { tree } = readTree(text);
  return tree?.node === 'map' ? tree : undefined;
}

/** What each sentence became: `manual rinse temp` and `at_most 40 °C`, under the words of the sentence. */
export function saidBy(text: string): ReadonlyMap<string, readonly string[]> {
  const { entity } = readRuleFile(fileId('devices/invented.ifu.yaml'), text);
  const quotes = new Map(
    [...text.matchAll(/^ {2}(s\d+): .*quote: (".*")(?:, not_needed.*)?\}$/gm)].map(([, id = '', quote = '']) => [
      id,
      String(JSON.parse(quote)),
    ]),
  );
  const said = new Map<string, string[]>();
  const walk = (node: Node, names: readonly string[], around: readonly string[]): void => {
    const src = node.node === 'record' ? fieldOf(node, 'src') : undefined;
    const cited = src?.node === 'citation' ? src.statements.map((one) => one.text) : around;
    const own = nameOf(node, names);
    if (isRequirement(node)) {
      const { span } = node.at;
      const says = text
        .slice(span.start, span.end)
        .replace(/, (?:src: \w+|as_written: ".*?")/g, '')
        .replace(/[{}[\],]/g, '')
        .replace(':', '');
      for (const id of cited)
        said.set(quotes.get(id) ?? id, [...(said.get(quotes.get(id) ?? id) ?? []), `${own.join(' ')} = ${says}`]);
    }
    for (const child of childrenOf(node)) walk(child, own, cited);
  };
  if (entity !== undefined) walk(entity, [], []);
  return said;
}

/** Numbers of items and words of structure are left out; a stage and a step are called by what they are. */
function nameOf(node: Node, names: readonly string[]): readonly string[] {
  const key = String(node.at.key);
  if (node.node === 'record')
    for (const name of ['stage', 'do', 'id']) {
      const field = fieldOf(node, name);
      if (names.length > 0 && field !== undefined && 'text' in field)
        return [...names.filter((one) => one !== 'cleaning'), String(field.text)];
    }
  const isStructure =
    /^\d*$|^(?:all_of|any_of|steps)$/.test(key) ||
    node.node === 'list' ||
    (names.length === 0 && node.at.parent === undefined);
  return isStructure && key !== 'cleaning' ? names : [...names, key];
}

/** What a person says each sentence with a number means: rows of sentence, field and value. */
export function expectedOf(name: string): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const row of instruction(name).trim().split('\n').slice(1)) {
    const [, quoted, bare = '', field = '', says = ''] = /^(?:"([^"]+)"|([^,]+)),([^,]+),(.+)$/.exec(row) ?? [];
    const words = quoted ?? bare;
    found.set(words, [...(found.get(words) ?? []), `${field} = ${says}`]);
  }
  return found;
}
