import type { EntityOf } from '../../model/entities.generated.ts';
import { asking, failing, rankOf } from '../../route/ranks.ts';
import { blocksJudgement } from '../../route/trust.ts';
import { demanded, type Printing, term, terms } from '../amounts.ts';
import type { Line } from '../piece.ts';
import { amountAs, joined, lineIf, originOf, said } from '../piece.ts';
import type { SignKind } from '../words/card-words.ts';
import { termIn } from '../words/words.ts';
import type { Band, Block } from './card.ts';
import { block } from './card.ts';
import { stageLines } from './cleaning-stages.ts';
import type { CardMember, CardSource } from './source.ts';

type Device = EntityOf['device'];

/** First band: what is taken apart and how each member is cleaned, one block a member. */
export function cleaningBand(source: CardSource): Band {
  const { members, printing } = source;
  return {
    kind: 'decontamination',
    figures: [],
    blocks: members.map((member) => memberBlock(member, source, printing)),
  };
}

function memberBlock(member: CardMember, { set }: CardSource, printing: Printing): Block {
  const title = memberTitle(member, set);
  const { device, cleaning } = member;
  const { cleaning: words } = printing.words.card;
  const unknown = member.member.unknown.find(blocksJudgement);
  if (unknown !== undefined)
    return block([words.unknown([termIn(printing.words, unknown.because)])], { title, weight: 'stop' });
  if (device === undefined || cleaning === undefined) return block([], { title });
  if (rankOf(cleaning.outcome) === failing)
    return block([[words.noWay]], { title, weight: 'stop', signs: signsOf(device) });
  const lines = [...apart(device, printing), ...stageLines(member, printing), ...drying(device, printing)];
  const asks = rankOf(cleaning.outcome) === asking ? [[words.askFirst]] : [];
  return block([...asks, ...lines], { title, signs: signsOf(device), weight: asks.length > 0 ? 'stop' : 'plain' });
}

/** `Take-apart scissors × 4`. The count of a case that no line names is not written anywhere, so it is left out. */
export function memberTitle({ member, device }: CardMember, set: EntityOf['set']): Line {
  const name = device?.name ?? device?.id;
  const shown = name === undefined ? member.name : said(name);
  const lines = (set.members?.items ?? []).filter(
    (line) => line.device?.text === member.device && line.qty !== undefined,
  );
  const counts = lines.flatMap(({ qty }) => (qty === undefined ? [] : [qty]));
  const [only] = counts;
  if (only === undefined) return [shown];
  if (counts.length === 1) return [shown, ' × ', amountAs(only, String(only.value))];
  const from = counts.map(({ at }) => originOf(at));
  return [shown, ' × ', { text: String(member.quantity), from, how: 'sum' }];
}

function apart({ disassembly }: Device, printing: Printing): readonly Line[] {
  const { cleaning } = printing.words.card;
  if (disassembly === undefined) return [];
  const steps = joined(
    (disassembly.steps?.items ?? []).flatMap(({ do: what }) => (what === undefined ? [] : [[term(what, printing)]])),
    '; ',
  );
  return [
    steps.length === 0 ? [] : cleaning.takeApart(steps),
    ...lineIf(disassembly.open, (open) => cleaning.open(terms(open, printing))),
    ...lineIf(disassembly.leave_together, (parts) => cleaning.leaveTogether(terms(parts, printing))),
  ];
}

function drying({ drying: asked }: Device, printing: Printing): readonly Line[] {
  const { cleaning } = printing.words.card;
  if (asked === undefined || asked.silent?.on === true || asked.not_applicable !== undefined) return [];
  const pressure = demanded(asked.air?.pressure, printing);
  // The line with the pressure of the air names the air itself.
  const methods = (asked.method?.items ?? []).filter(({ text }) => text !== 'air' || pressure.length === 0);
  const how = joined(
    [
      joined(
        methods.map((method) => [term(method, printing)]),
        ', ',
      ),
      pressure.length === 0 ? [] : cleaning.air(pressure),
      demanded(asked.temp, printing),
      demanded(asked.time, printing),
      ...lineIf(asked.endpoint, (endpoint) => cleaning.until(said(endpoint))),
    ],
    ', ',
  );
  return asked.use?.text === 'required' || how.length > 0 ? [cleaning.dry(how)] : [];
}

/** What must not happen to it while it is cleaned; each sign carries its words. */
export function signsOf(device: Device): readonly SignKind[] {
  const signs: SignKind[] = [];
  const forbids = (what: string): boolean => device.not?.items.some((one) => one.what?.text === what) === true;
  if (device.immersion?.use?.text === 'forbidden' || forbids('immersion')) signs.push('no-immersion');
  if (device.immersion?.extent?.text === 'tip-only') signs.push('tip-only');
  if (device.ultrasonic?.use?.text === 'forbidden' || forbids('ultrasonic')) signs.push('no-ultrasonic');
  if (device.mechanical?.use?.text === 'forbidden' || forbids('mechanical')) signs.push('no-washer');
  if (device.lubrication?.use?.text === 'forbidden' || forbids('lubricant')) signs.push('no-lubricant');
  if (device.drying?.wet_forbidden?.on === true) signs.push('no-wet');
  return signs;
}
