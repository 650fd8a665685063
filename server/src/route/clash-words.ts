import type { Judgement } from '../judge/outcome.ts';
import { methodWords } from '../model/method-names.ts';
import type { Saying } from '../model/saying.ts';
import type { Atom } from './model.ts';

/** `QM-31, rev E, p. 5`; empty when nothing is cited. */
export function citationWords(says: readonly Saying[]): string {
  const [first] = says;
  if (first === undefined) return '';
  return [first.doc, first.rev === '' ? '' : `rev ${first.rev}`, first.page === '' ? '' : `p. ${first.page}`]
    .filter((part) => part !== '')
    .join(', ');
}

/** Judgements of one requirement that failed together, and with which cycle or machine. */
export interface Met {
  readonly failing: readonly Judgement[];
  readonly where: string;
}

/** One requirement or fact as a sentence without its end, with its citation. `offers`: methods the page offers, where ours is none of them. */
export function atomWords(
  { failing, where }: Met,
  offers: readonly string[],
  called: ReadonlyMap<string, string>,
): string {
  const citation = citationWords(failing.flatMap(({ says }) => says));
  const [first] = failing;
  const parts = failing
    .map((judgement) => demandWords(judgement, where, offers))
    .filter((part, index, all) => all.indexOf(part) === index);
  return `${first === undefined ? '' : whoWords(first, called)}${parts.join('; ')}${citation === '' ? '' : ` (${citation})`}`;
}

/** Who demands it, where the words of the demand do not begin with another name. */
function whoWords({ demandedBy, parameter }: Judgement, called: ReadonlyMap<string, string>): string {
  const [kind = '', who = ''] = [
    demandedBy.slice(0, demandedBy.indexOf('/')),
    demandedBy.slice(demandedBy.indexOf('/') + 1),
  ];
  if (parameter === 'evidence' || kind === 'chemistry') return '';
  return kind === 'site' ? 'The limit of the site: ' : `${kind === 'device' ? (called.get(who) ?? who) : who}: `;
}

function demandWords(judgement: Judgement, where: string, offers: readonly string[]): string {
  const { parameter, required, given } = judgement;
  switch (parameter) {
    case 'prohibition':
      return `forbids it (${required.replace(/^no (\S+)$/, (_, word: string) => `no ${methodWords(word)}`)})`;
    case 'modality':
      return `offers only ${offers.length === 0 ? methodWords(required) : offers.map(methodWords).join(' or ')}`;
    case 'identity':
    case 'context':
    case 'immediate-use':
      return `${title(judgement)}: ${required}, ${because(judgement)}`;
    case 'evidence':
      return `${where}, ${given}: ${because(judgement)}`;
    case 'chemistry':
      return `${given}: ${because(judgement)}`;
    case 'container-cycle':
      return `made for ${required}`;
    default:
      // What the cycle lacks or has is a word of the title, and the cycle itself is what is given.
      if (given === where) return `${title(judgement)}, ${where}: ${because(judgement)}`;
      return `${title(judgement)} ${required}${given === '' ? '' : `; ${where} gives ${given}`}${judgement.gap === undefined ? '' : `, ${judgement.gap}`}`;
  }
}

/** `drying time` of `Drying time: shorter than the page demands.` */
function title({ reason }: Judgement): string {
  const end = reason.indexOf(':');
  const word = end < 0 ? reason : reason.slice(0, end);
  return /^[A-Z][a-z]/.test(word) ? `${word.charAt(0).toLowerCase()}${word.slice(1)}` : word;
}

function because({ reason }: Judgement): string {
  return reason
    .slice(reason.indexOf(':') + 1)
    .replace(/\.$/, '')
    .trim();
}

/** What a clash is about, and whether it follows another of the same: those are told one after the other, and what they share once. */
export interface ClashTold {
  readonly subject: string;
  readonly about: 'sterilization' | 'cleaning';
  readonly place: 'first' | 'further';
}

/** The whole explanation of a clash. */
export function clashWords(told: ClashTold, atoms: readonly Atom[]): string {
  const start = told.place === 'first' ? failureWords(told) : 'Also in the way:';
  const facts = atoms.map(({ words }, index) => `(${index + 1}) ${words}.`);
  const end =
    atoms.length === 1
      ? 'Without this, a route appears as far as this goes.'
      : 'With any one of these gone, a route appears as far as this goes.';
  return [start, ...facts, end].join(' ');
}

function failureWords({ subject, about }: ClashTold): string {
  return about === 'sterilization'
    ? `No packaging and cycle here processes ${subject} as built.`
    : `No way of cleaning here meets the page of ${subject}.`;
}
