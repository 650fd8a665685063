import type { Statement } from '../../model/entities/statement.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { sayingOf } from '../../model/saying.ts';
import type { RouteOption, SetRoute } from '../../route/model.ts';
import { routeOfDevice, routeOfSet } from '../../route/route.ts';
import { allDevicesOf } from '../../rules/support/applies.ts';
import { daysBetween } from '../../rules/support/days.ts';
import { isInForce, registeredOf } from '../../rules/support/documents.ts';
import type { Printing } from '../amounts.ts';
import type { OpenFinding } from '../card/draft.ts';
import { decidedFit } from '../card/source.ts';
import { nameOf, screenName } from '../names.ts';
import type { Paper } from '../paper.ts';
import type { Part } from '../paper-part.ts';
import type { Line, Piece } from '../piece.ts';
import { joined, lineIf, originOf, said, told } from '../piece.ts';
import { citationOf, quoteOf } from '../sayings.ts';
import { line } from '../words/line.ts';
import { cautionParts } from './cautions.ts';
import type { Looked } from './look-up.ts';

type Device = EntityOf['device'];

/** A finding with its words. */
export interface TellingFinding extends OpenFinding {
  readonly message: string;
}

/** The surveyor's minute: which document, what it says, what we do, who looked last, what is open, as of `day`. */
export function deviceAnswer(
  device: Device,
  looked: Looked,
  printing: Printing,
  day: string,
  findings: readonly TellingFinding[],
): Paper {
  const id = device.id?.text ?? '';
  return {
    title: `${device.name?.text ?? id} (${id})`,
    language: 'en',
    facts: { 'page-kind': 'answer', 'page-about': `device/${id}`, 'page-day': day },
    parts: [
      { is: 'heading', level: 1, line: line`${nameOf(device, id)}` },
      { is: 'text', line: identityLine(device, looked, day) },
      ...scanParts(looked),
      ...answerParts(device, printing, day, findings),
      ...cautionParts(printing.view),
    ],
  };
}

/** The answer itself, without a title and without cautions. */
export function answerParts(
  device: Device,
  printing: Printing,
  day: string,
  findings: readonly TellingFinding[],
): readonly Part[] {
  return [
    ...documentParts(device, printing, day),
    ...quoteParts(device),
    ...routeParts(device, printing),
    ...practiceParts(device, printing),
    ...reviewParts(device, day),
    ...openParts(device, printing, day, findings),
  ];
}

function identityLine(device: Device, { asked }: Looked, day: string): Line {
  const covers = joined(
    (device.covers?.items ?? []).map((range) => [said(range)]),
    ', ',
  );
  return joined(
    [
      ...lineIf(device.maker, (maker): Line => ['made by ', said(maker)]),
      covers.length === 0 ? [] : ['catalogue numbers ', ...covers],
      ...lineIf(device.class, (level): Line => ['class ', said(level)]),
      ['asked for: ', told('asked', asked)],
      ['as of ', told('print', day)],
    ],
    '; ',
  );
}

function scanParts({ production }: Looked): readonly Part[] {
  if (production === undefined) return [];
  const { lot, serial, made, expires } = production;
  const read = [
    lot === undefined ? '' : `lot ${lot}`,
    serial === undefined ? '' : `serial ${serial}`,
    made === undefined ? '' : `made ${made.date}`,
    expires === undefined ? '' : `expires ${expires.date}`,
  ].filter((part) => part !== '');
  return read.length === 0
    ? []
    : [{ is: 'small', line: ['Read from the label: ', told('asked', read.join(', ')), '.'] }];
}

function documentParts(device: Device, { view }: Printing, day: string): readonly Part[] {
  const rows: Line[][] = [];
  const files: Piece[] = [];
  for (const source of device.sources?.items ?? []) {
    const registered = registeredOf(source, view);
    const state =
      registered === undefined
        ? 'not in the register'
        : isInForce(registered, view.today)
          ? 'in force'
          : (registered.status?.text ?? 'not in force');
    rows.push([
      joined(
        [...lineIf(source.doc, (doc): Line => [said(doc)]), ...lineIf(source.rev, (rev): Line => ['rev. ', said(rev)])],
        ' ',
      ),
      registered?.title === undefined ? [] : [said(registered.title)],
      [state],
      datesOf(registered),
    ]);
    if (registered?.file !== undefined) files.push(said(registered.file));
  }
  const none: Part = {
    is: 'verdict',
    line: ['No instruction is on file.'],
    under: [['Looked at on ', told('print', day), '.']],
  };
  return [
    { is: 'heading', level: 2, line: ['Current document'] },
    rows.length === 0
      ? none
      : { is: 'table', head: ['Document', 'Title', 'State here', 'Dates'], rows, narrow: [0, 2] },
    ...files.map((file): Part => ({ is: 'small', line: ['kept as ', file] })),
  ];
}

function datesOf(document: EntityOf['document'] | undefined): Line {
  if (document === undefined) return [];
  const { issued, effective, received } = document;
  return joined(
    [
      ...lineIf(issued, (date): Line => ['issued ', said(date)]),
      ...lineIf(effective, (date): Line => ['in force from ', said(date)]),
      ...lineIf(received, (date): Line => ['received ', said(date)]),
    ],
    ', ',
  );
}

/** Every quoted sentence in the order of its pages. */
function quoteParts(device: Device): readonly Part[] {
  const statements = [...(device.statements?.rows.values() ?? [])].map(({ value }) => value);
  const revisions = new Set(statements.map(({ doc, rev }) => `${doc?.text} ${rev?.text}`));
  const rows = statements.map((statement) => statementRow(statement, revisions.size));
  if (rows.length === 0) return [{ is: 'text', line: ['No sentence of the instruction is quoted.'] }];
  return [
    { is: 'heading', level: 2, line: ['What it says'] },
    { is: 'table', head: ['Section', 'Sentence', 'Where'], rows, narrow: [0, 2] },
  ];
}

/** Where every sentence is of one revision, which stands above, its page is enough. */
function statementRow(statement: Statement, revisions: number): Line[] {
  const saying = sayingOf(statement, statement.at);
  const section = statement.section === undefined ? [] : [said(statement.section)];
  const where =
    revisions > 1 ? citationOf(saying) : lineIf(statement.page, (page): Line => ['page ', said(page)]).flat();
  return [section, [quoteOf(saying)], where];
}

/** Each set that holds it, and how the department processes that set. */
function routeParts(device: Device, printing: Printing): readonly Part[] {
  const { view } = printing;
  const id = device.id?.text ?? '';
  const rows: Line[][] = [];
  for (const set of view.users('device', id, 'set')) {
    const route = view.ask(routeOfSet, set.id?.text ?? '');
    if (route !== undefined)
      rows.push([[nameOf(set, set.id?.text ?? '')], ...wayCells(route.status, decidedFit(set, route), printing)]);
  }
  const alone = view.ask(routeOfDevice, id);
  if (alone !== undefined)
    rows.push([['by itself'], ...wayCells(alone.status, alone.status === 'none' ? undefined : alone.chosen, printing)]);
  return [
    { is: 'heading', level: 2, line: ['How it is processed here'] },
    { is: 'table', head: ['Set', 'Route', 'Packaging', 'Machine and cycle'], rows },
  ];
}

const statusWords = {
  route: 'consistent with the encoded instruction',
  provisional: 'only if an open question is answered so',
  none: 'no route here',
} as const;

function wayCells(status: SetRoute['status'], chosen: RouteOption | undefined, { view }: Printing): readonly Line[] {
  const found = chosen === undefined ? undefined : view.sterilizerCycle(chosen.cycle);
  if (chosen === undefined || found === undefined) return [[statusWords[status]], [], []];
  const packaging = view.get('packaging', chosen.packaging);
  const pack: Piece = packaging === undefined ? chosen.packaging : nameOf(packaging, chosen.packaging);
  return [
    [statusWords[status]],
    [pack, ...(chosen.namedCase === undefined ? [] : [' with ', caseName(chosen.namedCase, view)])],
    [nameOf(found.machine, chosen.machine), ', ', screenName(found.cycle, chosen.cycle)],
  ];
}

function caseName(id: string, view: Printing['view']): Piece {
  const box = view.get('device', id) ?? view.get('packaging', id);
  return box === undefined ? id : nameOf(box, id);
}

/** That we follow it: written procedures and training, each with its date. */
function practiceParts(device: Device, { view }: Printing): readonly Part[] {
  const id = device.id?.text ?? '';
  const procedures = view
    .all('procedure')
    .filter((procedure) => allDevicesOf(procedure, view).some((one) => one === device))
    .map(
      (procedure): Line => [
        nameOf(procedure, procedure.id?.text ?? ''),
        ...lineIf(procedure.review?.on, (on): Line => [', reviewed ', said(on)]).flat(),
      ],
    );
  const trainings = view
    .all('training')
    .filter(({ about, doc }) => about?.items.some(({ text }) => text === id) || hasDocument(device, doc?.text))
    .map((training): Line => trainingLine(training));
  return [
    { is: 'heading', level: 2, line: ['That it is followed'] },
    procedures.length === 0
      ? { is: 'text', line: ['No written procedure names it.'] }
      : { is: 'text', line: ['Procedures: ', ...joined(procedures, '; '), '.'] },
    trainings.length === 0
      ? { is: 'text', line: ['No training on it is recorded.'] }
      : { is: 'text', line: ['Training: ', ...joined(trainings, '; '), '.'] },
  ];
}

function hasDocument(device: Device, doc: string | undefined): boolean {
  return doc !== undefined && device.sources?.items.some((source) => source.doc?.text === doc) === true;
}

/** Counts only: names of people belong elsewhere. */
function trainingLine(training: EntityOf['training']): Line {
  const counts = (training.readers?.items ?? []).map(({ role, done, of }): Line => {
    const share = done === undefined || of === undefined ? [] : [' ', said(done), ' of ', said(of)];
    return role === undefined ? share : [said(role), ...share];
  });
  const topic = training.topic ?? training.id;
  return [
    topic === undefined ? '' : said(topic),
    ...lineIf(training.on, (on): Line => [', ', said(on)]).flat(),
    ...(counts.length === 0 ? [] : [': ', ...joined(counts, ', ')]),
  ];
}

function reviewParts({ review }: Device, day: string): readonly Part[] {
  if (review === undefined) return [{ is: 'text', line: ['Nobody has signed this encoding: no review is recorded.'] }];
  const { encoded_by, approved_by, second_reader, on, due } = review;
  const facts = [
    ...lineIf(encoded_by, (role): Line => ['encoded by ', said(role)]),
    ...lineIf(second_reader, (role): Line => ['read a second time by ', said(role)]),
    ...lineIf(approved_by, (role): Line => ['checked by ', said(role)]),
    ...lineIf(on, (date): Line => ['on ', said(date)]),
    ...lineIf(due, (date): Line => [date.text < day ? 'OVERDUE since ' : 'due again ', said(date)]),
  ];
  return [
    { is: 'heading', level: 2, line: ['Last review'] },
    { is: 'text', line: joined(facts, ', ') },
  ];
}

/** The ugly part, always printed: findings, questions without answer, waivers. */
function openParts(
  device: Device,
  { view }: Printing,
  day: string,
  findings: readonly TellingFinding[],
): readonly Part[] {
  const id = device.id?.text ?? '';
  const own = findings.filter(({ entity }) => entity === `device/${id}`);
  const questions = view
    .all('question')
    .filter(
      ({ about, closed, answered_by }) => about?.text === id && closed === undefined && answered_by === undefined,
    );
  const waivers = view.all('waiver').filter(({ scope }) => scope?.items.some(({ text }) => text.endsWith(id)));
  const items: Line[] = [
    ...own.map(findingLine),
    ...questions.map((question) => questionLine(question, day)),
    ...waivers.map(
      ({ id: name, reason }): Line => [
        'waiver ',
        name === undefined ? '' : said(name),
        reason === undefined ? '' : ': ',
        ...(reason === undefined ? [] : [said(reason)]),
      ],
    ),
  ];
  return [
    { is: 'heading', level: 2, line: ['Open items'] },
    items.length === 0
      ? { is: 'text', line: ['No finding, question or waiver is open on its file on ', told('print', day), '.'] }
      : { is: 'list', items },
  ];
}

/** `error: S1 dries for 20 min. [cycle-dry-short]` */
export function findingLine({ severity, message, rule }: TellingFinding): Line {
  return [`${severity}: `, told('check', message), ' [', told('check', rule), ']'];
}

export function questionLine(question: EntityOf['question'], day: string): Line {
  const { asked_on: on, text, id } = question;
  const age =
    on === undefined
      ? undefined
      : { text: String(daysBetween(on.text, day)), from: [originOf(on.at)], how: 'computed' as const };
  return [
    'question to the maker, open',
    ...(age === undefined ? [', not asked yet'] : [' for ', age, ' days']),
    ': ',
    text !== undefined ? said(text) : id === undefined ? '' : said(id),
  ];
}
