import type { Printing } from '../amounts.ts';
import { cautionParts } from '../answer/cautions.ts';
import { answerParts } from '../answer/device-answer.ts';
import { nameOf } from '../names.ts';
import type { Paper } from '../paper.ts';
import type { Part } from '../paper-part.ts';
import type { Line } from '../piece.ts';
import { plain, said, told } from '../piece.ts';
import type { BinderContent, BinderOrigin } from './content.ts';
import { equipmentParts } from './equipment.ts';
import { findingParts, statusParts } from './findings.ts';
import { procedureParts, signOffParts, trainingParts, waiverParts } from './people.ts';
import { documentRegister, responseRegister, thresholdParts } from './registers.ts';
import { setParts } from './sets.ts';

interface Section {
  readonly title: string;
  readonly parts: readonly Part[];
}

/**
 * The audit binder: twelve sections, a contents page, and its own open items. `sheets`: where each section begins, counted from 1, which
 * only a printed one can tell.
 */
export function binder(content: BinderContent, printing: Printing, sheets: readonly number[] = []): Paper {
  const sections = sectionsOf(content, printing);
  const { origin } = content;
  const library = printing.view.all('library')[0];
  const name: Line = library === undefined ? ['Library'] : [nameOf(library, '')];
  return {
    title: `Binder of ${origin.day}`,
    language: 'en',
    facts: { 'page-kind': 'binder', 'page-day': origin.day, 'binder-commit': origin.commit ?? '' },
    parts: [
      { is: 'heading', level: 1, line: ['Binder: ', ...name] },
      {
        is: 'text',
        line: [
          'As of ',
          told('print', origin.day),
          '. It shows its own open items: sections ',
          told('print', '1'),
          ' and ',
          told('print', '10'),
          '.',
        ],
      },
      {
        is: 'contents',
        items: sections.map(({ title }, index) => ({ line: [title], anchor: anchorOf(index), sheet: sheets[index] })),
      },
      ...cautionParts(printing.view),
      ...sections.flatMap(({ title, parts }, index): readonly Part[] => [
        { is: 'new-page' },
        { is: 'heading', level: 1, line: [told('print', `${index + 1}. `), title], anchor: anchorOf(index) },
        ...parts,
      ]),
    ],
  };
}

/** The sheet on which each section begins, from the texts of all sheets; undefined where one is not found. */
export function sheetsOfSections({ parts }: Paper, texts: readonly string[]): readonly number[] | undefined {
  const titles = parts.flatMap((part) =>
    part.is === 'heading' && part.anchor?.startsWith('section-') === true ? [plain(part.line)] : [],
  );
  const sheets: number[] = [];
  for (const title of titles) {
    const after = sheets.at(-1) ?? 1;
    const index = texts.findIndex(
      (text, at) => at >= after && text.slice(0, title.length + headLength).includes(title),
    );
    if (index === -1) return undefined;
    sheets.push(index + 1);
  }
  return sheets;
}

/** The number of a sheet may be read before its heading. */
const headLength = 20;

function anchorOf(index: number): string {
  return `section-${index + 1}`;
}

function sectionsOf(content: BinderContent, printing: Printing): readonly Section[] {
  const { findings, origin } = content;
  return [
    { title: 'Status of the library', parts: statusParts(content, printing) },
    { title: 'Documents and answers of makers', parts: [...documentRegister(printing), ...responseRegister(printing)] },
    { title: 'Devices, a minute each', parts: deviceParts(content, printing) },
    { title: 'Sets: route and who governs', parts: setParts(printing) },
    { title: 'Equipment and qualification', parts: equipmentParts(printing) },
    { title: 'Procedures', parts: procedureParts(findings, printing) },
    { title: 'Waivers', parts: waiverParts(printing, origin.day) },
    { title: 'Decisions on revisions', parts: signOffParts(printing) },
    { title: 'Training and competency, counts only', parts: trainingParts(printing, origin.day) },
    { title: 'All findings', parts: findingParts(findings) },
    { title: 'Adopted numbers and their sources', parts: thresholdParts(printing) },
    { title: 'How to make this binder again', parts: originParts(origin) },
  ];
}

function deviceParts({ findings, origin }: BinderContent, printing: Printing): readonly Part[] {
  return printing.view.all('device').flatMap((device): readonly Part[] => [
    {
      is: 'heading',
      level: 2,
      line: [nameOf(device, ''), ...(device.id === undefined ? [] : [' (', said(device.id), ')'])],
    },
    ...answerParts(device, printing, origin.day, findings).map(lower),
  ]);
}

/** A part of a page of its own, one step further down. */
function lower(part: Part): Part {
  return part.is === 'heading' ? { ...part, level: 3 } : part;
}

function originParts({ day, version, commit, state, files }: BinderOrigin): readonly Part[] {
  const recorded: Line =
    commit === undefined
      ? ['The library has no recorded history, so this binder can be made again only from the same files.']
      : [
          'Recorded state ',
          told('history', commit),
          state === 'changed-since'
            ? ', but files differ from it: this binder cannot be made again from that state alone.'
            : '.',
        ];
  return [
    {
      is: 'list',
      items: [
        recorded,
        ['Day: ', told('print', day), '.'],
        ['Program: Traywright ', told('print', version), '.'],
        ['Rule files read: ', told('tally', String(files)), '.'],
      ],
    },
    {
      is: 'text',
      line: [
        'The same state, day and program give the same file, byte for byte: traywright binder --day ',
        told('print', day),
        ...(commit === undefined ? [] : [' --from ', told('history', commit)]),
        ' --out DIR',
      ],
    },
  ];
}
