import type { LibraryView } from '../../library/view.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { AskedChoice } from '../../panel/questions.ts';
import { mandatoryStages } from '../../rules/support/mandatory-stages.ts';
import type { Kind } from '../../schema/kinds.ts';
import type { Field, RecordShape, Shape } from '../../schema/shape.ts';
import { shapeOf } from '../../schema/shapes.ts';
import { idAsked, knownIds } from '../completion/completion-ids.ts';
import { firstText } from '../naming/target-words.ts';
import { asValue } from '../writing/bare.ts';
import { toDoLine } from '../writing/to-do.ts';
import { faultOf, wordAsked } from './item-questions.ts';

/** One question of the guide for a new file. */
export interface NewFileQuestion {
  /** The field that the answer goes into. */
  readonly key: string;
  readonly title: string;
  readonly about: string;
  readonly typical: string;
  /** `many`: as many answers as there are. */
  readonly takes: 'one' | 'many';
  readonly choices: readonly Choice[];
  /** An answer that is not among the choices is fine. */
  readonly free: boolean;
}

export interface Choice extends AskedChoice {
  /** What is known of later questions once this is chosen, by their field: it stands there to be accepted or changed. */
  readonly fills?: Readonly<Record<string, string>>;
}

/** Answers by field. A question that was passed over has none. */
export type Answers = Readonly<Record<string, readonly string[]>>;

/** What is asked, in the order in which a person knows it, and what is left open as a visible to-do. */
export interface Guide {
  readonly asks: readonly string[];
  readonly leavesOpen: readonly string[];
}

const guides: Readonly<Record<Kind, Guide>> = {
  library: { asks: ['name', 'site', 'language'], leavesOpen: [] },
  site: { asks: ['name'], leavesOpen: ['altitude'] },
  document: { asks: ['doc', 'rev', 'title', 'maker', 'lang', 'market', 'status', 'issued', 'pages'], leavesOpen: [] },
  device: { asks: ['doc', 'rev', 'maker', 'name', 'covers', 'class', 'traits'], leavesOpen: [] },
  response: { asks: ['about', 'maker', 'answers'], leavesOpen: ['date', 'quote', 'status'] },
  question: { asks: ['about', 'maker', 'doc', 'rev', 'text'], leavesOpen: [] },
  washer: { asks: ['name', 'maker', 'site'], leavesOpen: ['cycles'] },
  ultrasonic: { asks: ['name', 'maker', 'site'], leavesOpen: ['frequency', 'temp'] },
  sterilizer: { asks: ['name', 'maker', 'site', 'modality'], leavesOpen: ['cycles'] },
  chemistry: { asks: ['doc', 'rev', 'name', 'maker', 'class'], leavesOpen: ['ph_in_use', 'temp', 'methods'] },
  water: { asks: ['name', 'site', 'grade'], leavesOpen: ['conductivity', 'last_result'] },
  packaging: { asks: ['doc', 'rev', 'name', 'maker', 'type'], leavesOpen: ['validated'] },
  monitor: { asks: ['doc', 'rev', 'name', 'maker', 'type', 'modality'], leavesOpen: [] },
  set: { asks: ['name', 'site', 'owner', 'packaging'], leavesOpen: ['members', 'levels', 'mass', 'cycle'] },
  procedure: { asks: ['name', 'topics', 'owner'], leavesOpen: ['steps'] },
  poster: { asks: ['title', 'topic'], leavesOpen: ['text'] },
  training: { asks: ['topic', 'about'], leavesOpen: ['change', 'readers'] },
  quiz: { asks: ['about', 'text'], leavesOpen: ['key', 'why'] },
  waiver: { asks: ['rule', 'scope', 'reason', 'owner'], leavesOpen: ['expires'] },
  'sign-off': { asks: ['doc', 'from_rev', 'to_rev', 'reviewer'], leavesOpen: ['changes'] },
};

/** All fields that the guides name, so that a test can hold them against the schemas. */
export function guideOf(kind: Kind): Guide {
  return guides[kind];
}

/**
 * The questions for a kind; the id comes last, since it is made of the other answers. `told`: fields that are known already; they are asked
 * for too, so that a person sees them.
 */
export function newFileQuestions(
  kind: Kind,
  view: LibraryView,
  told: readonly string[] = [],
): readonly NewFileQuestion[] {
  const shape = shapeOf(kind);
  const { asks } = guides[kind];
  const also = told.filter((key) => key !== 'id' && !asks.includes(key));
  const asked = [...asks, ...also].flatMap((key) => questionFor(key, shape, view));
  return [...asked, ...questionFor('id', shape, view)];
}

/** What is wrong with an answer to one of the questions, in plain words. */
export function answerFault(kind: Kind, key: string, text: string): string | undefined {
  const field = shapeOf(kind).fields.get(key);
  if (field === undefined) return undefined;
  const shape = field.shape.form === 'list' ? field.shape.item : field.shape;
  return faultOf(shape)?.(text);
}

function questionFor(key: string, shape: RecordShape, view: LibraryView): readonly NewFileQuestion[] {
  const field = shape.fields.get(key) ?? sourceField(key, shape);
  if (field === undefined) return [];
  const item = field.shape.form === 'list' ? field.shape.item : field.shape;
  const around = { entity: undefined, view, rules: [] };
  const ids =
    item.form === 'reference'
      ? item.refers.flatMap((refers) => knownIds(refers, around).map((known) => idAsked(refers, known, view)))
      : [];
  const words = item.form === 'words' ? [...item.words] : [...(field.suggestions ?? item.suggestions ?? [])];
  return [
    {
      key,
      title: field.title || key,
      about: field.description,
      typical: typicalOf(field),
      takes: field.shape.form === 'list' ? 'many' : 'one',
      choices: [
        ...words.map(wordAsked),
        ...ids.map((choice) => ({ ...choice, ...(key === 'doc' && filledBy(choice.label, view)) })),
      ],
      free: item.form !== 'words',
    },
  ];
}

/** Revision and maker of a document that is known: of the one in force, else of the last. */
function filledBy(number: string, view: LibraryView): Pick<Choice, 'fills'> {
  const revisions = view.all('document').filter(({ doc }) => doc?.text === number);
  const document = revisions.find(({ status }) => status?.text === 'current') ?? revisions.at(-1);
  if (document === undefined) return {};
  const fills = { rev: firstText(document, ['rev']), maker: firstText(document, ['maker']) };
  return { fills: Object.fromEntries(Object.entries(fills).filter(([, text]) => text !== '')) };
}

/** Examples as a person types them at a question: the brackets and quotation marks of a file are no part of an answer. */
function typicalOf({ shape, examples }: Field): string {
  if (shape.form !== 'list') return examples.slice(0, 2).join(', ');
  return withoutBrackets(examples[0] ?? '').replaceAll(/["']/g, '');
}

function withoutBrackets(text: string): string {
  return text.replace(/^\s*\[/, '').replace(/\]\s*$/, '');
}

/** Document and revision of files that quote: they stand in `sources`. */
function sourceField(key: string, shape: RecordShape): Field | undefined {
  const sources = shape.fields.get('sources')?.shape;
  const source = sources?.form === 'list' && sources.item.form === 'record' ? sources.item : undefined;
  return key === 'doc' || key === 'rev' ? source?.fields.get(key) : undefined;
}

/** `Duskwell` and `Take-apart scissors` to `duskwell-take-apart-scissors`; empty when nothing was answered. */
export function proposedId(kind: Kind, answers: Answers): string {
  const parts = kind === 'document' ? [answers.doc, answers.rev] : [answers.maker, answers.name ?? answers.title];
  const words = parts.flatMap((part) => part ?? []).join('-');
  const plain = words.normalize('NFD').replace(/\p{Mn}/gu, '');
  const id = wholeWords(plain.replace(/[^A-Za-z0-9]+/g, '-').replace(/^-|-$/g, ''));
  return kind === 'document' ? id : id.toLowerCase();
}

const longestId = 64;

/** As many of the words as an id may hold: a word cut in two reads as a slip of somebody's hand. */
function wholeWords(id: string): string {
  if (id.length <= longestId) return id;
  const end = id.lastIndexOf('-', longestId);
  return id.slice(0, end > 0 ? end : longestId);
}

/**
 * The text of a new file. What was answered stands in the order of the work; what the kind or the traits demand and nobody has answered is an
 * empty line, which is a finding until it is filled: nothing is assumed in its place. `pages`: text of the instruction, as it was copied.
 */
export function newFileText(kind: Kind, id: string, answers: Answers, pages = ''): string {
  const shape = shapeOf(kind);
  const lines = [`kind: ${kind}`, `id: ${asValue(id)}`];
  const open = new Set([...shape.required, ...guides[kind].leavesOpen, ...stagesFor(kind, answers)]);
  for (const [key, field] of shape.fields) {
    if (key === 'kind' || key === 'id') continue;
    const given = answers[key]?.filter((answer) => answer.trim() !== '') ?? [];
    if (given.length > 0) lines.push(lineFor(key, field, given));
    else if (key === 'sources') lines.push(...sourceLines(answers));
    else if (key === 'statements')
      lines.push(...(pages === '' ? statementLines(answers, shape) : ['statements:', pages]));
    else if (open.has(key)) lines.push(toDoLine(key, field.description || field.title));
  }
  return `${lines.join('\n')}\n`;
}

function lineFor(key: string, { shape }: Field, given: readonly string[]): string {
  const isList = shape.form === 'list';
  const values = given.map((one) => (isList ? asValue(bareItem(one)) : asWritten(one.trim(), shape)));
  return isList ? `${key}: [${values.join(', ')}]` : `${key}: ${values[0] ?? ''}`;
}

/** Numbers and days stand without quotation marks where the field takes them: between them they would be text. */
function asWritten(text: string, { form }: Shape): string {
  const isNumber = form === 'quantity' && /^[1-9][0-9]*$/.test(text);
  const isDay = form === 'date' && /^[0-9]{4}-[0-9]{2}(?:-[0-9]{2})?$/.test(text);
  return isNumber || isDay ? text : asValue(text);
}

/** Brackets and quotation marks that someone typed as in a file: the list gets its own. */
function bareItem(text: string): string {
  return withoutBrackets(text).trim().replace(/^["']/, '').replace(/["']$/, '');
}

/** Stages that a device of this class with these traits must have. */
function stagesFor(kind: Kind, answers: Answers): readonly string[] {
  if (kind !== 'device') return [];
  const traits = new Set<string>(answers.traits ?? []);
  const [given] = answers.class ?? [];
  const kept = mandatoryStages.filter(({ traits: needs, classes }) => {
    const byTrait = needs === undefined || needs.some((trait) => traits.has(trait));
    return byTrait && (classes === undefined || classes.some((one) => one === (given ?? 'critical')));
  });
  return [...kept.map(({ field }) => field), ...(traits.has('lumen') || traits.has('cannulated') ? ['lumens'] : [])];
}

function sourceLines(answers: Answers): readonly string[] {
  const cited = citedDocument(answers);
  return cited === undefined ? [] : ['sources:', `  - {${cited}, role: device-specific}`];
}

function statementLines(answers: Answers, shape: RecordShape): readonly string[] {
  return citedDocument(answers) === undefined || !shape.fields.has('sources')
    ? []
    : [toDoLine('statements', paste), ''];
}

const paste =
  'The text of the instruction: paste it into the line below, then choose "Turn All Sentences into Fields".';

/** The line, from 0, where writing begins: the empty one that waits for the text of the instruction. */
export function lineToWrite(text: string): number | undefined {
  const at = text.split('\n').indexOf(toDoLine('statements', paste));
  return at < 0 ? undefined : at + 1;
}

function citedDocument({ doc, rev }: Answers): string | undefined {
  const number = doc?.[0]?.trim() ?? '';
  const revision = rev?.[0]?.trim() ?? '';
  if (number === '') return undefined;
  return `doc: ${asValue(number)}${revision === '' ? '' : `, rev: ${asValue(revision)}`}`;
}

/** Where files of the kind lie: in the folder of most of them, else in one named after it. */
export function folderFor(kind: Kind, view: LibraryView): string {
  if (kind === 'library') return '';
  const counts = new Map<string, number>();
  for (const entity of view.all(kind)) {
    const { file } = rootOfEntity(entity);
    const folder = file.includes('/') ? file.slice(0, file.lastIndexOf('/')) : '';
    counts.set(folder, (counts.get(folder) ?? 0) + 1);
  }
  const [most] = [...counts].sort((a, b) => b[1] - a[1]);
  if (most !== undefined) return most[0];
  return kind === 'site'
    ? ''
    : kind === 'chemistry' || kind === 'water' || kind === 'packaging' || kind === 'training'
      ? kind
      : `${kind}s`;
}
