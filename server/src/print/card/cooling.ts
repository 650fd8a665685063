import { isSteam } from '../../judge/vocabulary.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { hasTrait } from '../../rules/support/applies.ts';
import { coolAim } from '../../rules/support/packages.ts';
import { amount, demanded, type Printing } from '../amounts.ts';
import { nameOf } from '../names.ts';
import type { Line, Piece } from '../piece.ts';
import { lineIf, originOf, said } from '../piece.ts';
import type { SignKind } from '../words/card-words.ts';
import { termIn } from '../words/words.ts';
import type { Band, Drawing } from './card.ts';
import { block } from './card.ts';
import { memberTitle } from './cleaning.ts';
import { packagingOf, packKind } from './packing.ts';
import { coolAimOf } from './places.ts';
import type { CardSource } from './source.ts';

/** Fifth band: how long and to which temperature it cools, where the thermometer points, what holds it back, how it is stored. */
export function coolingBand(source: CardSource): Band {
  const drawing = isHot(source) ? aimDrawing(source) : undefined;
  const { cooling } = source.printing.words.card;
  const hot = isHot(source)
    ? [...waits(source), ...aimLines(source)]
    : source.way === undefined
      ? []
      : [[cooling.noHeat]];
  return {
    kind: 'cooling',
    figures: [],
    blocks: [block([...hot, ...release(source)], { signs: signs(source) }), block([...storage(source)])],
    ...(drawing && { drawing }),
  };
}

/** Only what comes out of heat has to cool. */
export function isHot({ way }: CardSource): boolean {
  const modality = (way?.cycle.modality ?? way?.machine.modality)?.text;
  return isSteam(modality) || modality === 'dry-heat';
}

function waits({ members, set, printing }: CardSource): readonly Line[] {
  const { cooling } = printing.words.card;
  const policies = printing.view.site()?.policies;
  const time = demanded(policies?.cool_time, printing);
  const release = demanded(policies?.release_temp, printing);
  const lines: Line[] = [];
  if (time.length > 0) lines.push(cooling.leave(time));
  if (release.length > 0) lines.push(cooling.until(release));
  for (const member of members) {
    const asked = member.device?.cooling;
    if (asked === undefined) continue;
    const name: Piece = memberTitle(member, set)[0] ?? member.member.name;
    const own = demanded(asked.time, printing);
    const below = demanded(asked.temp, printing);
    if (own.length > 0) lines.push(cooling.deviceWait(name, own));
    if (below.length > 0) lines.push(cooling.deviceWait(name, below));
    lines.push(...lineIf(asked.method, (method) => cooling.method(name, said(method))));
  }
  return lines;
}

function signs(source: CardSource): readonly SignKind[] {
  if (!isHot(source)) return [];
  const found: SignKind[] = ['no-touch', 'no-stack'];
  const has = (field: 'no_quench' | 'no_fan') =>
    source.members.some(({ device }) => device?.cooling?.[field]?.on === true);
  if (has('no_quench')) found.push('no-quench');
  if (has('no_fan')) found.push('no-fan');
  return found;
}

function aimLines(source: CardSource): readonly Line[] {
  const { printing } = source;
  const { cooling } = printing.words.card;
  const packaging = packagingOf(source);
  if (packaging === undefined) return [];
  const decision = coolAim(packaging, printing.view.site());
  if (decision === undefined) return [[cooling.aimUnstated]];
  const from = [originOf(decision.at)];
  const aims = decision.words.map((word): Piece => ({ text: termIn(printing.words, word), from }));
  return aims.map((aim) => [`${cooling.aimTitle}: `, ...cooling.aim(aim)]);
}

/** Implants, and sets whose file says so, wait for the biological result. */
function release({ set, members, printing }: CardSource): readonly Line[] {
  const { cooling } = printing.words.card;
  const isImplant =
    hasTrait(set, 'implant') || members.some(({ device }) => device !== undefined && hasTrait(device, 'implant'));
  if (!isImplant && set.release?.text !== 'biological-result') return [[cooling.wetPack]];
  const monitor = set.biological === undefined ? undefined : printing.view.get('monitor', set.biological.text);
  const name =
    monitor === undefined ? set.biological && said(set.biological) : nameOf(monitor, set.biological?.text ?? '');
  return [cooling.biological(name), [cooling.wetPack]];
}

function storage(source: CardSource): readonly Line[] {
  const { printing } = source;
  const { cooling } = printing.words.card;
  const policies = printing.view.site()?.policies;
  const limits = [demanded(packagingOf(source)?.storage, printing), ...deviceStorage(source, printing)];
  const lines = limits.filter((limit) => limit.length > 0).map((limit) => cooling.store(limit));
  const most = policies?.shelf_life_max;
  if (lines.length === 0 && most !== undefined)
    lines.push(cooling.store(printing.words.bounds.atMost(amount(most, printing))));
  const isEvent =
    policies?.shelf_life?.text.startsWith('event-related') === true || packagingOf(source)?.event_related?.on === true;
  return isEvent ? [...lines, [cooling.eventRelated]] : lines;
}

function deviceStorage({ members }: CardSource, printing: Printing): readonly Line[] {
  return members.flatMap(({ device }) => [demanded(device?.storage?.time, printing)]);
}

export function aimDrawing(source: CardSource): Drawing | undefined {
  const packaging: EntityOf['packaging'] | undefined = packagingOf(source);
  const pack = packKind(packaging);
  const decision = packaging === undefined ? undefined : coolAim(packaging, source.printing.view.site());
  const aim = coolAimOf(decision?.words[0]);
  return pack === undefined || aim === undefined ? undefined : { shows: 'aim', pack, aim };
}
