import { parseDocument } from 'yaml';
import type { FileId } from '../../../server/src/base/brand.ts';
import type { Judgement } from '../../../server/src/judge/outcome.ts';
import { Library } from '../../../server/src/library/library.ts';
import { LibraryView, QueryAnswers } from '../../../server/src/library/view.ts';
import { plain } from '../../../server/src/print/piece.ts';
import { naiveOutcome } from '../naive-routes.ts';
import { type Asked, amountIn, type CardWay, type Fault, originsOf } from './asked.ts';

/* How long a set must dry or be exposed: by letting the cycle of its card run with other numbers, and judging it anew. */

const parameters: Readonly<Record<string, ReadonlySet<string>>> = {
  dry: new Set(['steam-dry', 'packaging-dry']),
  exposure: new Set(['exposure']),
};

interface Trial {
  readonly asked: Asked;
  readonly set: string;
  readonly field: string;
  readonly way: CardWay;
}

function trialOf(asked: Asked): Trial {
  const [, set = '', field = ''] = /set\/(\S+) (\S+)$/.exec(asked.draft.key) ?? [];
  const way = asked.cards.get(set);
  if (way === undefined) throw new Error(`no card of ${set}`);
  return { asked, set, field, way };
}

/** False when the cycle, run with this number, fails; `without`: as if this one asked nothing of it. */
function stands({ asked, set, field, way }: Trial, seconds: number, without?: string): boolean {
  const view = withNumber(asked, way.cycle, field, seconds);
  const found = view.get('set', set);
  const inForce = ({ demandedBy, parameter }: Judgement): boolean =>
    demandedBy !== without || parameters[field]?.has(parameter) !== true;
  return found !== undefined && naiveOutcome(view, found, way, inForce) !== 'fails';
}

/** The same library, one number of one cycle changed. */
function withNumber({ texts, view }: Asked, cycle: string, field: string, seconds: number): LibraryView {
  const library = libraryOf(texts);
  for (const [file, text] of texts) {
    if (!text.includes('kind: sterilizer') || !text.includes(cycle)) continue;
    const document = parseDocument(text);
    const cycles = document.toJS().cycles as readonly { readonly id: string }[];
    const index = cycles.findIndex(({ id }) => id === cycle);
    if (index === -1) continue;
    document.setIn(['cycles', index, field], `${seconds} s`);
    library.set(file, String(document));
    const changed = new LibraryView(library, new Set(), new QueryAnswers(view.today));
    changedBack.set(library, [file, text]);
    return changed;
  }
  throw new Error(`no cycle ${cycle}`);
}

const libraries = new WeakMap<ReadonlyMap<FileId, string>, Library>();
const changedBack = new WeakMap<Library, readonly [FileId, string]>();

/** Read once; what the last trial changed is put back. */
function libraryOf(texts: ReadonlyMap<FileId, string>): Library {
  const known = libraries.get(texts);
  const library = known ?? new Library();
  if (known === undefined) for (const [file, text] of texts) library.set(file, text);
  const back = changedBack.get(library);
  if (back !== undefined) library.set(...back);
  libraries.set(texts, library);
  return library;
}

/** The key does not fail, a second less does, and each wrong answer does. */
export function valueFault(asked: Asked): Fault {
  const trial = trialOf(asked);
  const { right, wrong } = asked.draft;
  const least = amountIn(plain(right));
  if (!stands(trial, least)) return `${plain(right)} fails`;
  if (stands(trial, least - 1)) return `less than ${plain(right)} would do`;
  const open = wrong.find((line) => stands(trial, amountIn(plain(line))));
  return open === undefined ? undefined : `${plain(open)} would do as well`;
}

/** Who alone keeps the number up: without that demand less would do, without any other it would not. */
export function whoFault(asked: Asked): Fault {
  const trial = trialOf(asked);
  const { right, wrong } = asked.draft;
  const least = leastOf(trial);
  if (least === undefined) return 'no number stands';
  const decides = (line: Asked['draft']['right']): boolean =>
    originsOf(line).some((origin) => stands(trial, least - 1, origin.slice(0, origin.indexOf('#'))));
  if (!decides(right)) return `${plain(right)} does not decide`;
  const other = wrong.find(decides);
  return other === undefined ? undefined : `${plain(other)} decides as well`;
}

/** The least number that stands, of all that any file writes for this field. */
function leastOf(trial: Trial): number | undefined {
  const numbers = new Set<number>();
  for (const text of trial.asked.texts.values())
    for (const [, written = ''] of text.matchAll(new RegExp(`\\b${trial.field}"?: ?([^\\n]*)`, 'g')))
      for (const [amount] of written.matchAll(/[\d.]+ ?(?:min|s|h)\b/g)) numbers.add(amountIn(amount));
  return [...numbers].sort((a, b) => a - b).find((number) => stands(trial, number));
}
