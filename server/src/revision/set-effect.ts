import { numberRows } from '../judge/directions.ts';
import type { Judgement } from '../judge/outcome.ts';
import type { CardCycle } from '../route/model.ts';
import { failing, rankOf } from '../route/ranks.ts';
import { statusRank } from '../route/repair-trial.ts';
import type { EffectHere } from './change.ts';
import type { Standing } from './standing.ts';

/** What a change does to one set. */
export interface SetEffect {
  /** `set/LAP-CHOLE-B`; a device where it is in no set. */
  readonly of: string;
  readonly effect: EffectHere;
  /** One sentence with names and numbers; empty where nothing is to be said. */
  readonly words: string;
}

/** Two standings of one set, really derived, compared. */
export function effectOnSet(before: Standing, after: Standing): SetEffect {
  const broken = brokenWords(before, after);
  if (broken !== undefined) return { of: before.id, effect: 'route-breaks', words: broken };
  const opened = openedWords(before, after);
  if (opened !== undefined) return { of: before.id, effect: 'route-opens', words: opened };
  const differs = differences(before, after);
  if (differs !== '') return { of: before.id, effect: 'card-changes', words: differs };
  const lost = [...before.ways].filter((way) => !after.ways.has(way));
  const words = lost.length === 0 ? '' : `no longer possible, and not used: ${lost.join(', ')}`;
  return { of: before.id, effect: lost.length === 0 ? 'nothing-visible' : 'unused-only', words };
}

/** A way in use that fails now, or a set that fell from a route to a question or to none. */
function brokenWords(before: Standing, after: Standing): string | undefined {
  const parts: string[] = [];
  if (before.used?.holds === true && (after.used === undefined || !after.used.holds)) {
    const fails = (after.used?.judgements ?? []).filter(({ outcome }) => outcome === 'fails');
    const why = [...fails.map(reasonOf), ...(after.used?.why ? [after.used.why] : [])];
    parts.push(`${before.used.words} no longer holds${why.length === 0 ? '' : `: ${unique(why)}`}`);
    const others = [...after.ways].filter((way) => way !== before.used?.words).slice(0, 3);
    parts.push(others.length === 0 ? 'no other way here' : `other ways here: ${others.join(', ')}`);
  }
  const wash = brokenWash(before.washer, after.washer);
  if (wash !== undefined) parts.push(wash);
  if (statusRank(after.status) < statusRank(before.status)) parts.push(statusWords(before, after));
  return parts.length === 0 ? undefined : parts.join('; ');
}

function brokenWash(was: CardCycle | undefined, is: CardCycle | undefined): string | undefined {
  if (was === undefined || is === undefined || !was.known || rankOf(was.outcome) === failing) return undefined;
  if (!is.known) return `${is.id} no longer holds: no washer here has this cycle`;
  if (rankOf(is.outcome) < failing) return undefined;
  return `${is.id} no longer holds: ${unique(is.judgements.filter((one) => one.outcome === 'fails').map(reasonOf))}`;
}

const names = { route: 'a route', provisional: 'a provisional route', none: 'no route' } as const;

function statusWords(before: Standing, after: Standing): string {
  const asked =
    after.status === 'provisional'
      ? (after.used?.judgements ?? []).filter(({ outcome }) => outcome === 'needs-answer')
      : [];
  const why = asked.length === 0 ? '' : ` (${unique(asked.map(reasonOf))})`;
  return `${names[before.status]} before, ${names[after.status]} after${why}`;
}

function openedWords(before: Standing, after: Standing): string | undefined {
  if (statusRank(after.status) > statusRank(before.status)) return statusWords(before, after);
  const fresh = [...after.ways].filter((way) => !before.ways.has(way));
  const gone = [...before.ways].some((way) => !after.ways.has(way));
  return fresh.length === 0 || gone ? undefined : `now possible: ${fresh.slice(0, 4).join(', ')}`;
}

/** What is asked or given on the way in use, where it differs. */
function differences(before: Standing, after: Standing): string {
  const fresh = [...after.lines].filter((line) => !before.lines.has(line));
  const gone = [...before.lines].filter((line) => !after.lines.has(line));
  const used =
    before.used?.words === after.used?.words
      ? []
      : [`${before.used?.words ?? 'nothing'} before, ${after.used?.words ?? 'nothing'} after`];
  const told = fresh.map(lineWords);
  const untold = fresh.length === 0 ? gone.map((line) => `no longer: ${lineWords(line)}`) : [];
  return unique([...used, ...told, ...untold]);
}

function lineWords(line: string): string {
  const [who = '', parameter = '', required = '', given = ''] = line.split('|');
  return `${titleOf(parameter)}: ${who.slice(who.indexOf('/') + 1)} asks ${required}${given === '' ? '' : `, here ${given}`}`;
}

const titles = new Map<string, string>(numberRows.map(({ parameter, title }) => [parameter, title]));

/** As the direction table calls it. */
function titleOf(parameter: string): string {
  const title = parameter.replaceAll('-', ' ');
  return titles.get(parameter) ?? `${title.charAt(0).toUpperCase()}${title.slice(1)}`;
}

function reasonOf({ demandedBy, parameter, required, given, gap }: Judgement): string {
  const ours = given === '' ? '' : `, here ${given}`;
  return `${titleOf(parameter)}: ${demandedBy.slice(demandedBy.indexOf('/') + 1)} asks ${required}${ours}${gap === undefined ? '' : ` (${gap})`}`;
}

/** Why judgements do not meet, each once. */
export function reasonsOf(judgements: readonly Judgement[]): string {
  return unique(judgements.map(reasonOf));
}

function unique(words: readonly string[]): string {
  const all = [...new Set(words)];
  const more = all.length - 4;
  return `${all.slice(0, 4).join('; ')}${more > 0 ? `; and ${more} more` : ''}`;
}
