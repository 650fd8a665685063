import { isSteam } from '../../judge/vocabulary.ts';
import { clashesOf } from '../../route/clash.ts';
import { amount, type Printing, term } from '../amounts.ts';
import { immediateUseOfSet } from '../immediate-use.ts';
import { nameOf, screenName } from '../names.ts';
import type { Line, Piece } from '../piece.ts';
import { lineIf, originOf, said } from '../piece.ts';
import type { Band, Block, Fact } from './card.ts';
import { block } from './card.ts';
import { memberTitle } from './cleaning.ts';
import { citationLine } from './foot.ts';
import type { CardSource, CardWay } from './source.ts';

/** Fourth band: one machine, one cycle, its numbers; everything else smaller. Without a route: what stands against it. */
export function sterilizingBand(source: CardSource): Band {
  const { way } = source;
  if (way === undefined) return { kind: 'sterilizing', figures: [], blocks: [stopBlock(source)] };
  return {
    kind: 'sterilizing',
    figures: figuresOf(way, source.printing),
    blocks: [block(beside(source, way)), block(lesserWays(source, way), { weight: 'less' })],
  };
}

function figuresOf({ machine, cycle, fit }: CardWay, printing: Printing): readonly Fact[] {
  const { sterilizing } = printing.words.card;
  const figures: Fact[] = [
    { label: sterilizing.machine, line: [nameOf(machine, fit.machine)] },
    { label: sterilizing.cycle, line: [screenName(cycle, fit.cycle)] },
  ];
  const { temp, exposure, dry, modality } = cycle;
  if (temp !== undefined) figures.push({ label: sterilizing.temperature, line: [amount(temp, printing)] });
  if (exposure !== undefined) figures.push({ label: sterilizing.exposure, line: [amount(exposure, printing)] });
  if (dry !== undefined && isSteam((modality ?? machine.modality)?.text))
    figures.push({ label: sterilizing.dry, line: [amount(dry, printing)] });
  return figures;
}

function beside({ set, printing }: CardSource, { cycle, fit, machine }: CardWay): readonly Line[] {
  const { sterilizing } = printing.words.card;
  const hasMoved = set.cycle !== undefined && set.cycle.text !== fit.cycle;
  return [
    ...lineIf(
      cycle.modality ?? machine.modality,
      (modality): Line => [`${sterilizing.method}: `, term(modality, printing)],
    ),
    ...lineIf(set.shelf_position, (position) => sterilizing.shelf(said(position))),
    ...lineIf(cycle.load_max, (limit) => sterilizing.load(amount(limit, printing))),
    ...lineIf(cycle.item_mass_max, (limit) => sterilizing.item(amount(limit, printing))),
    ...lineIf(cycle.aeration?.time, (time) => sterilizing.aeration([amount(time, printing)])),
    ...(hasMoved && set.cycle !== undefined ? [sterilizing.otherCycle(said(set.cycle))] : []),
    immediateLine({ set, printing }),
  ];
}

function immediateLine({ set, printing }: Pick<CardSource, 'set' | 'printing'>): Line {
  const { sterilizing } = printing.words.card;
  const use = immediateUseOfSet(printing.view, set);
  const says: Line =
    use.answer === 'yes' && use.cycle !== undefined
      ? sterilizing.immediateYes(screenName(use.cycle, ''))
      : [sterilizing.immediateNo];
  return [`${sterilizing.immediateUse}: `, ...says];
}

/** One route has full weight: this one is small, and asks first. */
function lesserWays({ second, printing }: CardSource, { fit, machine }: CardWay): readonly Line[] {
  const { sterilizing } = printing.words.card;
  const other = second === undefined ? undefined : printing.view.sterilizerCycle(second.cycle);
  if (second === undefined || other === undefined) return [sterilizing.onlyOne(nameOf(machine, fit.machine))];
  const packaging = second.packaging === fit.packaging ? undefined : printing.view.get('packaging', second.packaging);
  const packed: Line = packaging === undefined ? [] : sterilizing.packedIn(nameOf(packaging, second.packaging));
  return [sterilizing.second(nameOf(other.machine, second.machine), screenName(other.cycle, second.cycle), packed)];
}

/** What stands against a common way, each with its own words; then members that only need to go apart. */
function stopBlock(source: CardSource): Block {
  const { derivation, printing } = source;
  const { sterilizing } = printing.words.card;
  const lines: Line[] = [[sterilizing.noRoute]];
  const seen = new Set<string>();
  for (const { atoms } of clashesOf(derivation)) {
    for (const { who, says, key } of atoms) {
      const [saying] = says;
      if (saying === undefined || saying.quote === '' || seen.has(key)) continue;
      seen.add(key);
      const quote: Piece = { text: saying.quote, from: [`${originOf(saying.at)}.quote`] };
      lines.push(sterilizing.demand(nameBehind(who, source), quote, citationLine(saying, printing)));
    }
  }
  return block(lines, { title: [sterilizing.stop], weight: 'stop' });
}

/** `device/pale-forceps` as people call it. */
function nameBehind(who: string, { printing, members, set }: CardSource): Piece {
  const id = who.slice(who.indexOf('/') + 1);
  const member = members.find((one) => one.member.device === id);
  if (member !== undefined) return memberTitle(member, set)[0] ?? id;
  const packaging = printing.view.get('packaging', id);
  return packaging === undefined ? id : nameOf(packaging, id);
}
