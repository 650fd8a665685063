import type { Judgement } from '../judge/outcome.ts';
import { citationWords } from '../route/clash-words.ts';
import type { RouteExplanation } from '../route/explanation.ts';
import type { CardCycle, GoverningRow, MemberRoute, Repair, SetRoute, SterilizationFit } from '../route/model.ts';
import type { Block } from './blocks.ts';
import { routeCautions } from './route-cautions.ts';

const statusWords = {
  route: 'has a route that is consistent with the encoded instructions',
  provisional: 'has a provisional route only',
  none: 'has no route',
} as const;

/** All about the route of one set, or of one device alone. */
export function routePage(explanation: RouteExplanation): readonly Block[] {
  const { route } = explanation;
  return [
    {
      is: 'heading',
      level: 1,
      text: `${route.of === 'set' ? 'Set' : 'Device'} ${route.id} ${statusWords[route.status]}`,
    },
    ...chosenBlocks(route),
    ...unknownBlocks(route),
    ...clashBlocks(explanation),
    ...openBlocks(route),
    ...cleaningBlocks(route),
    ...cardBlocks(route),
    ...governingBlocks(explanation.governing),
    ...nearMissBlocks(explanation),
    ...repairBlocks(explanation),
    ...cautionBlocks(),
  ];
}

export function cautionBlocks(): readonly Block[] {
  return routeCautions.map((text) => ({ is: 'faint', text }));
}

function chosenBlocks({ chosen, packagingChange, alternatives, machines, status }: SetRoute): readonly Block[] {
  if (chosen === undefined) return [];
  const lead = status === 'none' ? 'Sterilization alone would go' : 'Derived:';
  const blocks: Block[] = [
    { is: 'text', text: `${lead} ${packWords(chosen)} on ${chosen.cycle} (${chosen.machine}).` },
  ];
  if (packagingChange !== undefined)
    blocks.push({ is: 'text', text: `The file names ${packagingChange.from}; as packed there it fails.` });
  blocks.push({ is: 'text', text: `Chosen by: ${chosen.choice.map(({ words }) => words).join('; ')}.` });
  if (machines.length === 1)
    blocks.push({ is: 'text', text: `Only ${machines[0]} can do it: one fault stops the set.` });
  if (alternatives.length > 0) {
    const rows = alternatives
      .slice(0, 8)
      .map((option) => [packWords(option), option.cycle, outcomeWords[option.outcome]]);
    blocks.push(
      { is: 'heading', level: 2, text: 'Further ways' },
      { is: 'table', head: ['Packed', 'Cycle', 'Outcome'], rows },
    );
  }
  return blocks;
}

const outcomeWords = {
  meets: 'meets',
  'meets-with-note': 'meets, with a note',
  'needs-answer': 'needs an answer',
  fails: 'fails',
} as const;

function packWords({ packaging, namedCase }: { readonly packaging: string; readonly namedCase?: string }): string {
  return `${packaging === '' ? 'unwrapped' : `in ${packaging}`}${namedCase === undefined ? '' : ` with ${namedCase}`}`;
}

function unknownBlocks({ members }: SetRoute): readonly Block[] {
  const items = members.flatMap(({ device, unknown }) => unknown.map(({ words }) => `${device}: ${words}`));
  return items.length === 0
    ? []
    : [
        { is: 'heading', level: 2, text: 'Not known, or not to be relied on' },
        { is: 'list', items },
      ];
}

function clashBlocks({ clashes }: RouteExplanation): readonly Block[] {
  if (clashes.length === 0) return [];
  const blocks: Block[] = [
    { is: 'heading', level: 2, text: clashes.length === 1 ? 'Smallest clash' : 'Smallest clashes' },
  ];
  for (const { words, atoms, alsoDemanded } of clashes) {
    blocks.push({ is: 'text', text: words });
    const quotes = atoms.flatMap(({ says }) => says.slice(0, 1)).filter(({ quote }) => quote !== '');
    if (quotes.length > 0)
      blocks.push({ is: 'list', items: quotes.map((one) => `“${one.quote}” (${citationWords([one])})`) });
    if (alsoDemanded.length > 0)
      blocks.push({ is: 'text', text: `The same is demanded by: ${alsoDemanded.map((one) => one.words).join('; ')}.` });
  }
  return blocks;
}

function openBlocks({ chosen, status }: SetRoute): readonly Block[] {
  if (chosen === undefined || status === 'none') return [];
  return [
    ...judgementBlocks('Open questions', chosen, 'needs-answer'),
    ...judgementBlocks('Notes', chosen, 'meets-with-note'),
  ];
}

function judgementBlocks(title: string, fit: SterilizationFit, outcome: Judgement['outcome']): readonly Block[] {
  const all = [...fit.common, ...fit.members.flatMap(({ judgements }) => judgements)].filter(
    (one) => one.outcome === outcome,
  );
  return all.length === 0
    ? []
    : [
        { is: 'heading', level: 2, text: title },
        { is: 'list', items: [...new Set(all.map(judgementWords))] },
      ];
}

/** Who demands what, what we give, why, and where it stands. */
export function judgementWords({ demandedBy, required, given, reason, gap, says }: Judgement): string {
  const citation = citationWords(says);
  const ours = given === '' ? 'nothing known here' : `here ${given}`;
  return `${demandedBy}: ${required}; ${ours}${gap === undefined ? '' : ` (${gap})`}. ${reason}${citation === '' ? '' : ` [${citation}]`}`;
}

function cleaningBlocks({ members, washing }: SetRoute): readonly Block[] {
  const rows = members.flatMap((member) => (member.cleaning === undefined ? [] : [cleaningRow(member)]));
  if (rows.length === 0) return [];
  const baskets = washing.baskets.map(({ cycle, machine, devices }) => `${cycle} (${machine}): ${devices.join(', ')}`);
  return [
    { is: 'heading', level: 2, text: 'Cleaning, each member apart' },
    { is: 'table', head: ['Member', 'Way', 'Stages', 'Outcome'], rows },
    ...(baskets.length === 0 ? [] : [{ is: 'text', text: `Washer baskets: ${baskets.join('; ')}.` } as const]),
  ];
}

function cleaningRow({ device, cleaning }: MemberRoute): readonly string[] {
  const stages =
    cleaning?.stages.map(({ stage, machine, means }) =>
      [stage, means || machine].filter((word) => word !== '').join(' '),
    ) ?? [];
  return [device, cleaning?.alternative ?? '', stages.join(', then '), outcomeWords[cleaning?.outcome ?? 'meets']];
}

function cardBlocks({ card }: SetRoute): readonly Block[] {
  const cycles = [card.cycle, card.washerCycle].filter((one) => one !== undefined);
  const items = cycles.flatMap((cycle) => cardItems(cycle));
  return items.length === 0
    ? []
    : [
        { is: 'heading', level: 2, text: 'What the set’s file says' },
        { is: 'list', items },
      ];
}

function cardItems(cycle: CardCycle): readonly string[] {
  if (!cycle.known) return [`${cycle.id}: no machine here has a cycle of this name.`];
  const failing = cycle.judgements.filter(({ outcome }) => outcome === 'fails');
  const derived = cycle.derived
    ? 'it is among the derived routes'
    : 'it is not among the derived routes without open question';
  const reasons = [...new Set(failing.map(judgementWords))];
  return [`${cycle.id}: as filed it ${outcomeWords[cycle.outcome]}; ${derived}.`, ...reasons];
}

function governingBlocks(governing: readonly GoverningRow[]): readonly Block[] {
  if (governing.length === 0) return [];
  const rows = governing.map((row) => [
    row.parameter,
    row.required,
    row.governedBy.map(governorWords).join(', '),
    row.gives,
    row.slack,
    row.ifLeft,
  ]);
  return [
    { is: 'heading', level: 2, text: 'Who governs' },
    { is: 'table', head: ['Parameter', 'Required', 'Governed by', 'Given', 'Slack', 'Without the governor'], rows },
  ];
}

function governorWords({ who, says }: GoverningRow['governedBy'][number]): string {
  const citation = citationWords(says);
  return `${who.slice(who.indexOf('/') + 1)}${citation === '' ? '' : ` (${citation})`}`;
}

function nearMissBlocks({ nearMisses }: RouteExplanation): readonly Block[] {
  if (nearMisses.length === 0) return [];
  const rows = nearMisses.map(({ who, parameter, required, cycles }) => [
    who.slice(who.indexOf('/') + 1),
    parameter,
    required,
    cycles.map(({ cycle, given, gap }) => `${cycle} ${given}${gap === '' ? '' : ` (${gap})`}`).join('; '),
  ]);
  return [
    { is: 'heading', level: 2, text: 'By how much cycles miss' },
    { is: 'table', head: ['Who', 'What', 'Required', 'Cycles'], rows },
  ];
}

function repairBlocks({ repairs, notOffered }: RouteExplanation): readonly Block[] {
  const blocks: Block[] = [];
  if (repairs.length > 0)
    blocks.push({ is: 'heading', level: 2, text: 'Ways out' }, { is: 'list', items: repairs.map(repairWords) });
  if (notOffered.length > 0) {
    blocks.push(
      { is: 'heading', level: 2, text: 'Not offered' },
      { is: 'list', items: notOffered.map(({ what, why }) => `${what}: ${why}.`) },
    );
  }
  return blocks;
}

const effectWords: Readonly<Record<Repair['effect'], string>> = {
  route: 'gives a route',
  provisional: 'gives a provisional route',
  part: 'settles a part',
  unverified: 'not worked out here',
};

function repairWords({ words, effect, owner, lead, verified, leaves }: Repair): string {
  const left = leaves.length === 0 ? '' : ` Left to do: ${leaves.join('; ')}.`;
  return `${words} (${effectWords[effect]}; ${owner}, ${lead}) Worked out: ${verified.join('; ')}.${left}`;
}
