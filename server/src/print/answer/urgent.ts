import type { EntityOf } from '../../model/entities.generated.ts';
import { sayingsOf } from '../../model/saying.ts';
import { departmentOf } from '../../route/equipment.ts';
import { allDevicesOf, hasTrait, membersOf } from '../../rules/support/applies.ts';
import type { Printing } from '../amounts.ts';
import type { ImmediateUse } from '../immediate-use.ts';
import { immediateUseOfDevice, immediateUseOfSet } from '../immediate-use.ts';
import { nameOf, screenName } from '../names.ts';
import type { Paper } from '../paper.ts';
import type { Part } from '../paper-part.ts';
import type { Line } from '../piece.ts';
import { joined, judged, plain, said, told } from '../piece.ts';
import { quotePart } from '../sayings.ts';
import { line } from '../words/line.ts';
import { cautionParts } from './cautions.ts';
import type { ShortestTime } from './shortest-time.ts';
import { shortestTime, totalValue } from './shortest-time.ts';

type Device = EntityOf['device'];

/** The caller on the phone has ten seconds: no or yes first, then what it takes, then a way round. */
export function urgentAnswer(
  asked: { readonly device: Device } | { readonly set: EntityOf['set'] },
  printing: Printing,
): Paper {
  const { view } = printing;
  const devices = 'device' in asked ? [asked.device] : membersOf(asked.set, view);
  const use = 'device' in asked ? immediateUseOfDevice(view, asked.device) : immediateUseOfSet(view, asked.set);
  const entity = 'device' in asked ? asked.device : asked.set;
  const id = entity.id?.text ?? '';
  const implant = devices.find((device) => hasTrait(device, 'implant'));
  return {
    title: `Immediate use: ${entity.name?.text ?? id}`,
    language: 'en',
    facts: { 'page-kind': 'urgent', 'page-about': id },
    parts: [
      { is: 'heading', level: 1, line: ['Immediate use: ', nameOf(entity, id)] },
      ...(implant === undefined ? verdictParts(use, devices, printing) : [implantPart()]),
      ...spareParts(asked, printing),
      ...procedureParts(devices, printing),
      ...cautionParts(view, [
        'Immediate use is for an item that is needed now, for this patient, and never for stock or convenience.',
      ]),
    ],
  };
}

function implantPart(): Part {
  return {
    is: 'verdict',
    line: ['NO: an implant.'],
    under: [
      [
        'In an emergency the written plan of the hospital decides, not this page: call infection prevention and the surgeon in charge.',
      ],
    ],
  };
}

function verdictParts(use: ImmediateUse, devices: readonly Device[], printing: Printing): readonly Part[] {
  switch (use.answer) {
    case 'not-listed':
      return [
        {
          is: 'verdict',
          line: ['NO: not listed.'],
          under: [lackingLine(use, devices), ['Silence is no permission. Use a spare, or process it as usual.']],
        },
        ...devices.flatMap(prohibitions),
      ];
    case 'not-here':
      return [
        { is: 'verdict', line: ['NO: listed, but nothing here fits.'], under: reasonLines(use) },
        ...devices.flatMap(offers),
      ];
    case 'ask':
      return [
        { is: 'verdict', line: ['ASK FIRST: it rests on an open question.'], under: reasonLines(use) },
        ...devices.flatMap(offers),
      ];
    case 'yes':
      return yesParts(use, devices, printing);
  }
}

function lackingLine({ lacking }: ImmediateUse, devices: readonly Device[]): Line {
  const names = lacking.map((id): Line => {
    const device = devices.find((one) => one.id?.text === id);
    return [device === undefined ? id : nameOf(device, id)];
  });
  if (names.length === 0) return ['Nothing about it is known here.'];
  return ['Its instruction offers no immediate-use cycle: ', ...joined(names, ', '), '.'];
}

/** What fails or is asked, in the words of the judgement. */
function reasonLines({ route }: ImmediateUse): readonly Line[] {
  const fit = route.chosen ?? route.failing[0];
  const judgements = fit === undefined ? [] : [...fit.common, ...fit.members.flatMap((member) => member.judgements)];
  const cleaning = route.members.flatMap(({ cleaning: way }) => way?.stages.flatMap((stage) => stage.judgements) ?? []);
  const open = [...judgements, ...cleaning].filter(({ outcome }) => outcome === 'fails' || outcome === 'needs-answer');
  const lines = route.members.flatMap((member) =>
    member.unknown.map((reason): Line => [`${member.name}: `, told('check', reason.words), '.']),
  );
  for (const { reason, required, given, demandAt, factAt } of open) {
    const words = `${reason} Asked for: ${required}; here: ${given === '' ? 'nothing' : given}.`;
    lines.push([judged(words, [demandAt, factAt])]);
  }
  const different = new Map(lines.map((one) => [plain(one), one]));
  return [...different.values()].slice(0, 4);
}

function prohibitions(device: Device): readonly Part[] {
  return (device.not?.items ?? [])
    .filter(({ what }) => what?.text === 'iuss')
    .flatMap(({ src }) => sayingsOf(device, src).map(quotePart));
}

function offers(device: Device): readonly Part[] {
  return (device.sterilization?.any_of?.items ?? [])
    .filter(({ context }) => context?.text === 'iuss')
    .flatMap(({ src }) => sayingsOf(device, src).map(quotePart));
}

function yesParts(use: ImmediateUse, devices: readonly Device[], printing: Printing): readonly Part[] {
  const { cycle, machine, packaging } = use;
  if (cycle === undefined || machine === undefined) return [];
  const times = devices.flatMap((device) => timeOf(device, use, printing) ?? []);
  const longest = times.toSorted((a, b) => b.seconds - a.seconds)[0];
  const where: Line = packaging === undefined ? [] : [', in ', nameOf(packaging, '')];
  return [
    {
      is: 'verdict',
      line: line`YES: cycle ${screenName(cycle, '')} on ${nameOf(machine, '')}${where}.`,
      under: [
        ['Full cleaning first: urgency leaves out no step.'],
        longest === undefined
          ? ['How long it takes cannot be added up from the files.']
          : line`At least ${totalValue(longest)} by the times that are stated; the steps without a stated time come on top.`,
        ...ownWords(devices, printing),
      ],
    },
    ...devices.flatMap(offers),
    ...(longest === undefined ? [] : timeParts(longest)),
  ];
}

function timeOf(device: Device, { route, cycle }: ImmediateUse, printing: Printing): ShortestTime | undefined {
  const member = route.members.find((one) => one.device === device.id?.text);
  const { setting } = printing.view.ask(departmentOf, '');
  return member?.cleaning === undefined || cycle === undefined
    ? undefined
    : shortestTime({ device, cleaning: member.cleaning, cycle, setting }, printing);
}

export function timeParts(time: ShortestTime): readonly Part[] {
  const rows = time.steps.map(({ what, time: value }): Line[] => [
    [...what],
    value === undefined ? ['no time is stated'] : [value],
  ]);
  return [
    { is: 'heading', level: 2, line: ['Where the time goes'] },
    {
      is: 'table',
      head: ['Step', 'Shortest time stated'],
      rows: [...rows, [['all stated times'], [totalValue(time)]]],
    },
    { is: 'small', line: ['A floor, not a promise: only times that a page or a machine states are added up.'] },
  ];
}

/** Other sets that hold the same, with how many of them there are. */
function spareParts(
  asked: { readonly device: Device } | { readonly set: EntityOf['set'] },
  { view }: Printing,
): readonly Part[] {
  const sets =
    'device' in asked
      ? view.users('device', asked.device.id?.text ?? '', 'set')
      : view.all('set').filter((set) => set === asked.set || set.spare_of?.text === asked.set.id?.text);
  const items = sets.map((set): Line => {
    const count: Line =
      set.stock === undefined ? [': how many there are is not written'] : [': ', said(set.stock), ' in stock'];
    return [nameOf(set, set.id?.text ?? ''), ...count];
  });
  return [
    { is: 'heading', level: 2, line: ['A spare instead'] },
    items.length === 0 ? { is: 'text', line: ['No set that holds it is on file.'] } : { is: 'list', items },
    { is: 'small', line: ['Whether one stands ready on the shelf, only the store knows.'] },
  ];
}

/** What the department itself says of the time, from experience. */
function ownWords(devices: readonly Device[], printing: Printing): readonly Line[] {
  return proceduresFor(devices, printing).flatMap(({ note }) =>
    note === undefined ? [] : [['The department says: ', said(note)]],
  );
}

function proceduresFor(devices: readonly Device[], { view }: Printing): readonly EntityOf['procedure'][] {
  return view
    .all('procedure')
    .filter(
      (one) => one.context?.text === 'iuss' && allDevicesOf(one, view).some((device) => devices.includes(device)),
    );
}

/** The department's own procedure for it, and what has to be recorded. */
function procedureParts(devices: readonly Device[], printing: Printing): readonly Part[] {
  return proceduresFor(devices, printing).flatMap((procedure): readonly Part[] => {
    const record = joined(
      (procedure.record?.items ?? []).map((item): Line => [said(item)]),
      ', ',
    );
    return [
      { is: 'heading', level: 2, line: ['Procedure: ', nameOf(procedure, procedure.id?.text ?? '')] },
      ...(record.length === 0 ? [] : [{ is: 'text', line: ['Record: ', ...record] } as const]),
    ];
  });
}
