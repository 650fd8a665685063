import { describe, expect, it } from 'vitest';
import { type FileId, fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { completionsAt } from '../../../server/src/editor/completion/completion.ts';
import { asPlain, type Offer } from '../../../server/src/editor/writing/offer.ts';
import { wantedAt } from '../../../server/src/editor/writing/writing-shape.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { inspect } from '../../../server/src/schema/inspect.ts';
import { type Kind, kinds } from '../../../server/src/schema/kinds.ts';
import { shapeOf } from '../../../server/src/schema/shapes.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import type { Tree } from '../../../server/src/syntax/tree.ts';
import { testDay } from '../../support/examples.ts';
import { readSample } from '../../support/samples.ts';
import { filled, sampleEngine } from '../../support/writing.ts';
import { type Context, contextsOf, sayingOf, treeAt, withAt } from '../../support/writing-contexts.ts';

const rules = [{ id: 'unknown-id', why: 'Nobody describes it.' }];

/**
 * `npm run fuzz`: each offer at each place of a schema in each way of writing. Else each at each place, and each in each way of writing with each
 * form of value.
 */
const isThorough = Number(process.env.FUZZ_TIMES ?? '1') > 1;

/** What an accepted offer leaves to be done, each a finding at an empty place. */
const toDos: ReadonlySet<string> = new Set(['empty-value', 'requirement-says-nothing', 'field-missing']);

/** A file as it is, before anything is written in it. */
interface Original {
  readonly file: FileId;
  readonly kind: string;
  readonly tree: Tree;
  readonly problems: ReadonlyMap<string, number>;
}

function problemsOf(text: string): { readonly tree: Tree | undefined; readonly problems: ReadonlyMap<string, number> } {
  const { tree, problems } = readTree(text);
  const counts = new Map<string, number>();
  const ofForm = tree?.node === 'map' ? inspect(tree) : [];
  for (const { rule } of [...problems, ...ofForm]) counts.set(rule, (counts.get(rule) ?? 0) + 1);
  return { tree, problems: counts };
}

/** What is wrong after the offer was taken: a new fault, another place changed, or something else read than what was offered. */
function faultsAfter(context: Context, offer: Offer, original: Original): readonly string[] {
  const { text } = context;
  const after = text.slice(0, offer.span.start) + offer.pieces.map(filled).join('') + text.slice(offer.span.end);
  const { tree, problems } = problemsOf(after);
  if (tree === undefined) return ['the file cannot be read'];
  const added = [...problems].flatMap(([rule, number]) =>
    number > (original.problems.get(rule) ?? 0) && !toDos.has(rule) ? [rule] : [],
  );
  const steps = context.asks === 'value' ? context.steps : [...context.steps, context.index ?? offer.label];
  const written = treeAt(tree, steps);
  if (written === undefined) return [...added, 'what was offered is not there'];
  const without = withAt(tree, steps, context.asks === 'value' ? treeAt(original.tree, steps) : undefined);
  if (sayingOf(without) !== sayingOf(original.tree)) added.push('something else changed');
  if (context.asks !== 'key' && !isMeant(written, offer)) added.push(`it reads ${sayingOf(written)}`);
  return added;
}

/** The word itself, alone or in a list or as a key; where the label only describes, its form. */
function isMeant(written: Tree, { label, of }: Offer): boolean {
  if (label === '{ }') return written.node === 'map' || written.node === 'list';
  if (label === 'new line of the list') return written.node === 'list';
  if (of === 'value') return sayingOf(written).includes(label.replace('number in', '7'));
  if (written.node === 'scalar') return written.text === label;
  if (written.node === 'map') return written.entries.some(({ key }) => key.text === label);
  return written.node === 'list' && written.items.some((item) => isMeant(item, { label, of } as Offer));
}

/** The places and offers that were met, so that the same is not tried again in the short trial. */
class Met {
  readonly #seen = new Set<string>();
  readonly #shapes = new Map<unknown, number>();
  readonly #shapeAt = new Map<string, number>();

  isNewPlace(kind: string, { path, asks, form, text, cursor }: Context): boolean {
    const place = `${kind} ${path} ${asks}`;
    if (isThorough) return this.#isNew(`${place} ${form}`);
    const shape = this.#shapeOf(place, text, cursor);
    const isNew = this.#isNew(place);
    return this.#isNew(`${shape} ${form}`) || isNew;
  }

  isNewOffer(kind: string, { path, asks, form }: Context, { label, of }: Offer): boolean {
    const what = of === 'id' || of === 'statement' ? of : label;
    const place = `${kind} ${path} ${asks}`;
    if (isThorough) return this.#isNew(`${place} ${form} ${what}`);
    const isNew = this.#isNew(`${place} ${what}`);
    return this.#isNew(`${this.#shapeAt.get(place)} ${form} ${what}`) || isNew;
  }

  /** Of one shape of the schema, wherever it stands. */
  #shapeOf(place: string, text: string, cursor: number): number {
    const known = this.#shapeAt.get(place);
    if (known !== undefined) return known;
    const shape = wantedAt(text, cursor)?.shape;
    const number = this.#shapes.get(shape) ?? this.#shapes.size;
    this.#shapes.set(shape, number);
    this.#shapeAt.set(place, number);
    return number;
  }

  #isNew(key: string): boolean {
    const isNew = !this.#seen.has(key);
    this.#seen.add(key);
    return isNew;
  }
}

function around(text: string, cursor: number): string {
  const shown = `${text.slice(0, cursor)}‸${text.slice(cursor)}`;
  const from = shown.lastIndexOf('\n', Math.max(0, cursor - 80)) + 1;
  return shown.slice(from, shown.indexOf('\n', cursor + 60));
}

describe('every offer, at every place of the samples', () => {
  it('is read as what was meant, changes nothing else and adds no fault but an empty place', () => {
    const met = new Met();
    const faults: string[] = [];
    let taken = 0;
    for (const sample of ['lanternfield-corrected', 'saltmere-eye-clinic-corrected']) {
      const view = sampleEngine(sample).view();
      for (const [file, text] of readSample(sample)) {
        const { tree, problems } = problemsOf(text);
        const { kind = '' } = readRuleFile(file, text);
        if (tree === undefined) throw new Error(`${file} cannot be read`);
        for (const context of contextsOf(text)) {
          // Another kind changes what everything behind it means.
          if (context.path === 'kind' || !met.isNewPlace(kind, context)) continue;
          const record = readRuleFile(file, context.text);
          for (const offer of completionsAt(record, context.cursor, view, rules).offers) {
            if (!met.isNewOffer(kind, context, offer)) continue;
            taken++;
            const found = faultsAfter(context, offer, { file, kind, tree, problems });
            if (found.length > 0)
              faults.push(
                `${file}, ${context.form}: ${offer.label}: ${found.join(', ')}\n${around(context.text, context.cursor)}`,
              );
          }
        }
      }
    }
    expect(faults.slice(0, 20)).toEqual([]);
    expect(taken).toBeGreaterThan(8_000);
  }, 3_600_000);
});

/** What a key without its value leaves to be done, said by a rule: that a flush, an air or a list of procedures has nothing in it yet. */
const toDosOfRules: ReadonlySet<string> = new Set([
  ...toDos,
  'unit-missing-or-implausible',
  'flush-undefined',
  'air-pressure-over-limit',
  'prion-branch-missing',
]);

describe('every key, taken and left empty', () => {
  it('gives no error by any rule but what says that something is still to be written', () => {
    const met = new Met();
    const errors: string[] = [];
    let taken = 0;
    for (const sample of ['lanternfield-corrected', 'saltmere-eye-clinic-corrected']) {
      const engine = new Engine({ rules: allRules, today: testDay });
      for (const [file, text] of readSample(sample)) engine.set(file, text);
      for (const [file, text] of readSample(sample)) {
        const { kind = '' } = readRuleFile(file, text);
        for (const context of contextsOf(text)) {
          if (context.asks !== 'key' || !/below all|behind a last comma/.test(context.form)) continue;
          if (!met.isNewPlace(kind, context)) continue;
          const record = readRuleFile(file, context.text);
          for (const offer of completionsAt(record, context.cursor, engine.view(), rules).offers) {
            if (!met.isNewOffer(kind, context, offer)) continue;
            taken++;
            const { start, end } = offer.span;
            engine.set(file, context.text.slice(0, start) + asPlain(offer.pieces, '\n') + context.text.slice(end));
            for (const { rule, severity, message } of engine.findings(file))
              if (severity === 'error' && !toDosOfRules.has(rule))
                errors.push(`${file}, ${context.path} ${offer.label}: ${rule}: ${message}`);
            engine.set(file, text);
          }
        }
      }
    }
    expect(errors).toEqual([]);
    expect(taken).toBeGreaterThan(1_000);
  }, 3_600_000);
});

/** The text after an offer was taken, with the place where the writer goes on, if there is one. */
function goneOn(text: string, offer: Offer): { readonly text: string; readonly cursor?: number } {
  const { start, end } = offer.span;
  const rest = offer.pieces.findIndex((piece) => typeof piece !== 'string' && piece.hole === 'rest');
  const before = offer.pieces.slice(0, Math.max(0, rest)).map(filled).join('');
  const after = text.slice(0, start) + offer.pieces.map(filled).join('') + text.slice(end);
  return rest < 0 ? { text: after } : { text: after, cursor: start + before.length };
}

function fieldsOf(kind: Kind): ReadonlyMap<string, unknown> {
  const shape = shapeOf(kind);
  return shape.form === 'record' ? shape.fields : new Map();
}

describe('a file written by completion alone', () => {
  it.each([...kinds])(
    '%s: every field that can be reached, from one to the next, is read as what was meant',
    (kind) => {
      const view = sampleEngine().view();
      const seen = new Set<unknown>();
      const faults: string[] = [];
      let taken = 0;
      const write = (text: string, cursor: number, depth: number): void => {
        const wanted = wantedAt(text, cursor);
        const style = wanted?.slot.path.at(-1)?.frame.style;
        const place = `${style} ${wanted?.as} ${wanted?.field?.key}`;
        if (seen.has(wanted?.shape) && seen.has(place) && depth > 1) return;
        seen.add(wanted?.shape).add(place);
        const before = problemsOf(text).problems;
        for (const offer of completionsAt(readRuleFile(fileId('here.ifu.yaml'), text), cursor, view, rules).offers) {
          const next = goneOn(text, offer);
          taken++;
          for (const [rule, number] of problemsOf(next.text).problems)
            if (!toDos.has(rule) && number > (before.get(rule) ?? 0))
              faults.push(
                `${offer.label}: ${rule}\n${around(text, cursor)}\n${around(next.text, next.cursor ?? cursor)}`,
              );
          if (next.cursor !== undefined && depth < 6) write(next.text, next.cursor, depth + 1);
        }
      };
      const start = `kind: ${kind}\nid: pale\n${fieldsOf(kind).has('statements') ? 'statements:\n  s1: {quote: "x"}\n' : ''}`;
      write(start, start.length, 0);
      expect(faults.slice(0, 10)).toEqual([]);
      // Each field of the kind but those that the file begins with.
      expect(taken).toBeGreaterThanOrEqual(fieldsOf(kind).size - 3);
    },
    3_600_000,
  );
});
