import type { Inspection, Test } from '../../model/entities/device-inspection.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { demanded, type Printing, term, terms } from '../amounts.ts';
import type { Line } from '../piece.ts';
import { joined, said } from '../piece.ts';
import { termIn } from '../words/words.ts';
import type { Band, Block } from './card.ts';
import { block } from './card.ts';
import { memberTitle } from './cleaning.ts';
import type { CardMember, CardSource } from './source.ts';

const testKeys = [
  ...(['insulation_test', 'continuity_test', 'leak_test', 'function_test', 'light_test', 'cut_test'] as const),
  ...(['torque_test', 'battery_test', 'lumen_inspection', 'residue_test'] as const),
] satisfies readonly (keyof Inspection)[];

/** Second band: tests first, by test; then what to look for and to count, by member. */
export function inspectionBand(source: CardSource): Band {
  const { members, printing } = source;
  const tests = testKeys.flatMap((key) => testLines(key, source));
  const perMember = members.flatMap((member) => memberBlock(member, source));
  const { inspection } = printing.words.card;
  const blocks: Block[] = [];
  if (tests.length > 0) blocks.push(block(tests));
  blocks.push(...perMember);
  if (blocks.length === 0) blocks.push(block([[inspection.nothing]]));
  return { kind: 'inspection', figures: [], blocks };
}

/** One test with all members that need it, grouped by how far it goes. */
function testLines(key: (typeof testKeys)[number], { members, set, printing }: CardSource): readonly Line[] {
  const { inspection } = printing.words.card;
  const groups = new Map<string, { readonly test: Test; readonly titles: Line[] }>();
  for (const member of members) {
    const test = member.device?.inspection?.[key];
    if (!isNeeded(test, key, member, set)) continue;
    const group = test?.extent?.text ?? '';
    const known = groups.get(group);
    const title = memberTitle(member, set);
    if (known !== undefined) known.titles.push(title);
    else if (test !== undefined) groups.set(group, { test, titles: [title] });
  }
  return [...groups.values()].map(({ test, titles }) =>
    inspection.test(
      sentence(termIn(printing.words, key)),
      test.extent === undefined ? undefined : term(test.extent, printing),
      joined(titles, ', '),
    ),
  );
}

/** The page requires it, or the set's own file asks for it on this line. */
function isNeeded(test: Test | undefined, key: string, { member }: CardMember, set: EntityOf['set']): test is Test {
  if (test === undefined) return false;
  const asked = set.members?.items.some(
    (line) =>
      line.device?.text === member.device && line.tests?.items.some(({ text }) => text.replaceAll('-', '_') === key),
  );
  return test.required?.on === true || asked === true;
}

function memberBlock(member: CardMember, { set, printing }: CardSource): readonly Block[] {
  const { device } = member;
  if (device === undefined) return [];
  const { inspection } = printing.words.card;
  const criteria = terms(device.inspection?.criteria, printing);
  const magnification = demanded(device.inspection?.magnification, printing);
  const uses = demanded(device.limits?.uses, printing);
  const counter = device.limits?.counted_by;
  const phrases: readonly Line[] = [
    criteria.length === 0 ? [] : inspection.look(criteria),
    magnification.length === 0 ? [] : inspection.magnification(magnification),
    uses.length === 0 ? [] : inspection.uses(uses, counter === undefined ? undefined : said(counter)),
    ...lubrication(device, printing),
  ];
  const line = joined(phrases, '; ');
  return line.length === 0 ? [] : [block([[...memberTitle(member, set), ': ', ...line]])];
}

function lubrication({ lubrication: asked }: EntityOf['device'], printing: Printing): readonly Line[] {
  const { inspection } = printing.words.card;
  if (asked?.required?.on !== true && asked?.use?.text !== 'required') return [];
  const details = joined(
    [
      demanded(asked.drops, printing),
      ...(asked.where === undefined ? [] : [[said(asked.where)]]),
      runFor(demanded(asked.run, printing), printing),
      asked.remove_excess?.on === true ? [inspection.removeExcess] : [],
    ],
    ', ',
  );
  const agent = asked.agent === undefined ? terms(asked.allowed, printing) : [term(asked.agent, printing)];
  return [inspection.lubricate(agent, details)];
}

function runFor(time: Line, { words }: Printing): Line {
  return time.length === 0 ? [] : words.card.inspection.run(time);
}

function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
