import type { EntityOf } from '../../model/entities.generated.ts';
import { clashesOf } from '../../route/clash.ts';
import type { UnknownReason } from '../../route/model.ts';
import type { Derivation } from '../../route/route.ts';
import { deriveSet } from '../../route/route.ts';
import { hasTimes, inHours, longestLead, secondsBetween } from '../../rules/support/lead-time.ts';
import { amount, type Printing } from '../amounts.ts';
import { nameOf } from '../names.ts';
import type { Paper } from '../paper.ts';
import type { Part } from '../paper-part.ts';
import type { Line, Piece } from '../piece.ts';
import { originOf, said, told } from '../piece.ts';
import { clashLine } from '../sayings.ts';
import { cautionParts } from './cautions.ts';
import { lookUp } from './look-up.ts';
import type { ShortestTime } from './shortest-time.ts';
import { shortestTime, totalOf, totalValue } from './shortest-time.ts';

type LoanSet = EntityOf['set'];

/** Times as `2025-03-04T07:30`, or days. */
export interface Arrival {
  readonly received: string;
  readonly neededBy: string;
}

/** What came of looking at one tray. `asks`: what the vendor or the maker has to send; `ours`: what we have to do. */
export interface Tray {
  readonly set: LoanSet;
  readonly asks: readonly Line[];
  readonly ours: readonly Line[];
  readonly notes: readonly Line[];
}

/** The receiving sheet: go or hold, tray by tray, with what is missing; then the letter. */
export function receivingSheet(sets: readonly LoanSet[], arrival: Arrival, printing: Printing): Paper {
  const trays = sets.map((set) => lookAtTray(set, arrival, printing));
  const letter = letterParts(trays, arrival);
  return {
    title: `Receiving sheet, needed by ${arrival.neededBy}`,
    language: 'en',
    facts: { 'page-kind': 'receive' },
    parts: [
      { is: 'heading', level: 1, line: ['Receiving sheet'] },
      { is: 'text', line: ['Received ', time(arrival.received), ', needed ', time(arrival.neededBy), '.'] },
      ...trays.flatMap(trayParts),
      {
        is: 'small',
        line: [
          'GO means: its instructions and a route are on file, so that work can begin. It says nothing about what was done to the tray elsewhere: it is cleaned here from the beginning.',
        ],
      },
      ...cautionParts(printing.view),
      ...letter,
    ],
  };
}

/** `2025-03-04 07:30` */
function time(written: string): Piece {
  return told('asked', written.replace('T', ' '));
}

export function isHeld({ asks, ours }: Tray): boolean {
  return asks.length > 0 || ours.length > 0;
}

export function lookAtTray(set: LoanSet, arrival: Arrival, printing: Printing): Tray {
  const derivation = deriveSet(printing.view, set);
  const time = timeFor(set, derivation, arrival, printing);
  return {
    set,
    asks: [...missingInstructions(set, derivation, printing), ...time.asks],
    ours: [...ownFaults(derivation), ...missingFacts(set, printing), ...routeFaults(derivation), ...time.ours],
    notes: [...time.notes, ...receiptNotes(derivation)],
  };
}

/** Members about which nothing can be said, with the number on the tray where there is one. */
function missingInstructions(set: LoanSet, { subject }: Derivation, printing: Printing): readonly Line[] {
  const lines: Line[] = [];
  for (const { name, unknown } of subject.members)
    for (const { words, because } of unknown)
      if (isForVendor(because)) lines.push([`${name}: ${words.replace(/\.$/, '')}.`]);
  for (const member of set.members?.items ?? []) {
    if (member.device !== undefined || member.catalogue === undefined) continue;
    const { devices } = lookUp(printing.view, member.catalogue.text, 2000);
    const [first] = devices;
    if (first !== undefined)
      lines.push([
        said(member.catalogue),
        ': it belongs to ',
        nameOf(first, first.id?.text ?? ''),
        '; name that device on the line.',
      ]);
    else lines.push([said(member.catalogue), ': the instruction for this number is missing.']);
  }
  if ((set.members?.items.length ?? 0) === 0)
    lines.push(['There is no count sheet: send the list of contents with catalogue numbers.']);
  return lines;
}

/** A fault of our own files is no question to a vendor. */
function isForVendor(because: UnknownReason['because']): boolean {
  return because === 'no-file' || because === 'no-document' || because === 'conflict' || because === 'unmapped';
}

/** What our own files lack or have wrong about members. */
function ownFaults({ subject }: Derivation): readonly Line[] {
  return subject.members.flatMap(({ name, unknown }) =>
    unknown.flatMap(({ words, because }): Line[] =>
      isForVendor(because) ? [] : [[`${name}: `, told('check', words.replace(/\.$/, '')), '.']],
    ),
  );
}

/** What is weighed and counted at the bench. */
function missingFacts(set: LoanSet, printing: Printing): readonly Line[] {
  const lines: Line[] = [];
  const limit = printing.view.get('packaging', set.packaging?.text ?? '')?.mass_max;
  const { mass, levels, packaging } = set;
  if (mass === undefined) lines.push(['Not weighed: weigh it.']);
  else if (limit !== undefined && limit.problem === undefined && mass.value > limit.value)
    lines.push([
      'Too heavy: ',
      amount(mass, printing),
      ', and its packaging takes at most ',
      amount(limit, printing),
      '. Split it.',
    ]);
  if (levels === undefined) lines.push(['Levels not counted: count them.']);
  if (packaging === undefined) lines.push(['No packaging is chosen.']);
  return lines;
}

function routeFaults(derivation: Derivation): readonly Line[] {
  const { route } = derivation;
  if (route.status === 'route') return [];
  if (route.status === 'provisional') return [['Its route rests on an open question: see "traywright route".']];
  const clashes = clashesOf(derivation).map(clashLine);
  return clashes.length > 0 ? clashes : [['No route here.']];
}

interface TimeFacts {
  readonly asks: readonly Line[];
  readonly ours: readonly Line[];
  readonly notes: readonly Line[];
}

/** Hours between arrival and surgery against what is asked for, and against the stated times of the work itself. */
function timeFor(set: LoanSet, derivation: Derivation, { received, neededBy }: Arrival, printing: Printing): TimeFacts {
  const left = secondsBetween({ text: received }, { text: neededBy });
  if (Number.isNaN(left)) return { asks: [], ours: [['The times can’t be read.']], notes: [] };
  if (left < 0) return { asks: [], ours: [['It comes after it is needed. Check both times.']], notes: [] };
  const about = hasTimes({ text: received }, { text: neededBy }) ? inHours(left) : `at most ${inHours(left)}`;
  const lead = longestLead(set, printing.view);
  const floor = floorOf(derivation, printing);
  const notes: Line[] = [[told('asked', about), ' until it is needed.']];
  if (floor !== undefined)
    notes.push([
      'The stated times of the work alone add up to ',
      totalValue(floor),
      '; steps without a stated time and waiting come on top.',
    ]);
  const short = lead !== undefined && left < lead.quantity.value;
  const asks: Line[] = short
    ? [
        [
          told('asked', about),
          ` are left, and ${lead.whose} `,
          amount(lead.quantity, printing),
          ': ',
          { text: inHours(lead.quantity.value - left), from: [originOf(lead.quantity.at)], how: 'computed' },
          ' short. Deliver earlier, or the case moves.',
        ],
      ]
    : [];
  const ours: Line[] = floor !== undefined && floor.seconds > left ? [['The work alone takes longer than that.']] : [];
  return { asks, ours, notes };
}

/** Members are worked on beside each other: the longest of them, then the one cycle of the pack. */
function floorOf({ route, subject, department }: Derivation, printing: Printing): ShortestTime | undefined {
  const found = route.chosen === undefined ? undefined : printing.view.sterilizerCycle(route.chosen.cycle);
  if (found === undefined) return undefined;
  let longest: ShortestTime | undefined;
  for (const { device: id, cleaning } of route.members) {
    const device = subject.members.find((one) => one.id === id)?.device;
    if (device === undefined || cleaning === undefined) continue;
    const time = shortestTime({ device, cleaning, cycle: found.cycle, setting: department.setting }, printing);
    if (longest === undefined || time.seconds > longest.seconds) longest = time;
  }
  return longest === undefined ? undefined : totalOf([...longest.steps, ...coolingSteps(printing)]);
}

function coolingSteps(printing: Printing): ShortestTime['steps'] {
  const time = printing.view.site()?.policies?.cool_time?.at_least;
  if (time === undefined || time.problem !== undefined) return [];
  const value = amount(time, printing);
  return [{ what: ['cooling'], time: value, seconds: time.value, from: value.from }];
}

/** How the makers say that it arrives. */
function receiptNotes({ subject }: Derivation): readonly Line[] {
  const lines: Line[] = [];
  for (const { device } of subject.members) {
    const receipt = device?.receipt;
    if (device === undefined || receipt === undefined) continue;
    const name: Piece = nameOf(device, device.id?.text ?? '');
    if (receipt.arrives !== undefined) lines.push([name, ' arrives ', said(receipt.arrives), '.']);
    if (receipt.initial_cleaning?.use?.text === 'required')
      lines.push([name, ' must be cleaned before its first use.']);
    if (receipt.implant_inventory !== undefined) lines.push([name, ': ', said(receipt.implant_inventory)]);
  }
  return lines;
}

function trayParts(tray: Tray): readonly Part[] {
  const { set, asks, ours, notes } = tray;
  const name = nameOf(set, set.id?.text ?? '');
  const [first] = [...asks, ...ours];
  const verdict: Part =
    first === undefined
      ? { is: 'verdict', line: ['GO: ', name], under: [['Nothing is missing on file.']] }
      : { is: 'verdict', line: ['HOLD: ', name], under: [first] };
  const rest = [...asks, ...ours].slice(1);
  return [verdict, ...(rest.length === 0 ? [] : [{ is: 'list', items: rest } as const]), { is: 'list', items: notes }];
}

/** One letter for everything that only the vendor can bring. Names are filled in by hand. */
function letterParts(trays: readonly Tray[], { neededBy, received }: Arrival): readonly Part[] {
  const held = trays.filter(({ asks }) => asks.length > 0);
  if (held.length === 0) return [];
  return [
    { is: 'new-page' },
    { is: 'heading', level: 2, line: ['Letter to the vendor'] },
    { is: 'blank', label: 'To (vendor)' },
    { is: 'blank', label: 'From (role, telephone)' },
    {
      is: 'text',
      line: [
        'The following trays reached us on ',
        time(received),
        ' for a case on ',
        time(neededBy),
        ". We can't begin to process them, because:",
      ],
    },
    ...held.flatMap(({ set, asks }): readonly Part[] => [
      { is: 'heading', level: 3, line: [nameOf(set, set.id?.text ?? '')] },
      { is: 'list', items: asks },
    ]),
    {
      is: 'text',
      line: [
        'Please send the current instruction for use with its number and revision for every item named, and tell us by when. Without it the trays stay where they are, and the surgeon will be told.',
      ],
    },
    { is: 'blank', label: 'Date, signature (role)' },
  ];
}
