/**
 * The corrected sample department, cut into what every library has once, what each department has (its site, machines, chemistry,
 * packaging, procedures) and what each line of instruments brings (devices, their documents, their procedures, the sets built of them).
 */
export interface Template {
  /** Relative to the library's folder. */
  readonly path: string;
  readonly kind: string;
  readonly id: string;
  readonly text: string;
}

export interface Templates {
  readonly once: readonly Template[];
  readonly department: readonly Template[];
  readonly line: readonly Template[];
}

/** Files that stay one however many departments there are: their ids are everyday words that also stand in sentences. */
const sharedIds = new Set(['tap', 'instrument-milk']);

const lineKinds = new Set(['device', 'set', 'question', 'response', 'quiz', 'sign-off', 'waiver']);

/** Makers of instruments; every other maker's documents belong to a department's machines and supplies. */
export const instrumentMakers: Readonly<Record<string, readonly string[]>> = {
  Brindlewick: ['BW'],
  Cassivane: ['CV'],
  Duskwell: ['DW'],
  Fennoway: ['FN'],
  Lintrel: ['LN'],
  Oxbarrow: ['OX'],
  Pellamont: ['PM'],
  Quillmark: ['QM', 'Q'],
  Skerrow: ['SK'],
  Tarnwick: ['TW'],
  Yarrowby: ['YB'],
};

export function templatesOf(files: ReadonlyMap<string, string>): Templates {
  const all = [...files].map(([path, text]) => templateOf(path, text));
  const once: Template[] = [];
  const department: Template[] = [];
  const line: Template[] = [];
  for (const template of all.sort(byUse)) {
    if (template.kind === 'library' || sharedIds.has(template.id)) once.push(template);
    else (isOfLine(template) ? line : department).push(template);
  }
  return { once, department, line };
}

function templateOf(path: string, text: string): Template {
  const kind = fieldIn(text, 'kind');
  const id = fieldIn(text, 'id');
  // Named by its id, as all others are, so that each department can have its own.
  return { path: kind === 'site' ? `sites/${id}.ifu.yaml` : path, kind, id, text: withSite(kind, id, text) };
}

/** The sample has one department, so that its packaging and chemistry need not say whose they are. */
function withSite(kind: string, id: string, text: string): string {
  const isOwned = (kind === 'packaging' || kind === 'chemistry') && !sharedIds.has(id);
  return isOwned ? text.replace(/^id: .*$/m, `$&\nsite: ${sampleSite}`) : text;
}

const sampleSite = 'lanternfield';

/** What others name comes first, so that a library cut off at any size has few names that lead nowhere. */
const order = ['library', 'site', 'document', 'device', 'set'];

function byUse(a: Template, b: Template): number {
  return rank(a) - rank(b) || (a.path < b.path ? -1 : 1);
}

function rank({ kind }: Template): number {
  const at = order.indexOf(kind);
  return at < 0 ? order.length : at;
}

function isOfLine({ kind, id, text }: Template): boolean {
  if (lineKinds.has(kind)) return true;
  if (kind === 'document') return fieldIn(text, 'maker') in instrumentMakers && !id.startsWith('SK-CASE');
  if (kind === 'procedure') return /^PR(2\d|3\d)-/.test(id);
  return id === 'T5-knee-system-rev-D';
}

function fieldIn(text: string, key: string): string {
  return new RegExp(`^${key}: *(.*?) *$`, 'm').exec(text)?.[1] ?? '';
}
