import type { EntityOf } from '../../model/entities.generated.ts';
import type { Text } from '../../model/node.ts';
import { indicatorGeometry } from '../../physics/indicator-places.ts';
import type { SterilePackage } from '../../physics/package-entries.ts';
import { ventInCentre } from '../../physics/package-entries.ts';
import type { Decision } from '../../rules/support/packages.ts';
import { indicatorPlaces } from '../../rules/support/packages.ts';
import { type Printing, term, terms } from '../amounts.ts';
import { nameOf } from '../names.ts';
import type { Line, Piece, Value } from '../piece.ts';
import { amountAs, joined, lineIf, originOf, said } from '../piece.ts';
import { termIn } from '../words/words.ts';
import type { Band, Block, Drawing, PackKind } from './card.ts';
import { block } from './card.ts';
import { memberTitle } from './cleaning.ts';
import { citationLine } from './foot.ts';
import { placeOf } from './places.ts';
import type { CardSource } from './source.ts';

/** Third band: how each member lies, in what it is packed, and where the indicators go in this pack. */
export function packingBand(source: CardSource): Band {
  const drawing = indicatorDrawing(source);
  return {
    kind: 'packing',
    figures: [],
    blocks: [...packingBlocks(source), ...indicatorBlocks(source)],
    ...(drawing && { drawing }),
  };
}

/** The packaging of the printed way; else of the set's file. */
export function packagingOf({ set, way, printing }: CardSource): EntityOf['packaging'] | undefined {
  return way === undefined ? printing.view.get('packaging', set.packaging?.text ?? '') : way.packaging;
}

function packingBlocks(source: CardSource): readonly Block[] {
  const { set, printing } = source;
  const { packing } = printing.words.card;
  const packaging = packagingOf(source);
  const inCase = namedCase(source);
  const name = packaging === undefined ? [] : packing.packaging(withId(packaging));
  const packed = joined([name, inCase, set.double?.on === true ? [packing.twice] : []], ', ');
  const blocks = [
    block(configurations(source)),
    block([
      packed,
      ...changed(source),
      ...lineIf(filterOf(source), (filter) => packing.filter(term(filter, printing))),
      ...lineIf(packaging?.accessories, (list) => packing.accessories(terms(list, printing))),
      ...lineIf(set.label, (label) => packing.label(said(label))),
    ]),
  ];
  return blocks.filter(({ lines }) => lines.length > 0);
}

function withId(packaging: EntityOf['packaging']): Value {
  const name = packaging.name ?? packaging.id;
  return name === undefined ? { text: '', from: [] } : said(name);
}

function namedCase({ set, way, printing }: CardSource): Line {
  const id = way === undefined ? set.case?.text : way.fit.namedCase;
  if (id === undefined) return [];
  const entity = printing.view.get('packaging', id) ?? printing.view.get('device', id);
  const written = set.case?.text === id ? said(set.case) : id;
  return printing.words.card.packing.inCase(entity === undefined ? written : nameOf(entity, id));
}

/** The filter of the set, else the one the container's maker names, where it names one only. */
function filterOf(source: CardSource): Text | undefined {
  const packaging = packagingOf(source);
  // What the set's file says of a filter is meant for the container it names; a wrap in its place has none.
  if (packKind(packaging) !== 'container') return undefined;
  const named = packaging?.filter?.items ?? [];
  return source.set.filter ?? (named.length === 1 ? named[0] : undefined);
}

function hasMoved({ set, way }: CardSource): boolean {
  return way?.packaging !== undefined && set.packaging !== undefined && set.packaging.text !== way.fit.packaging;
}

function changed(source: CardSource): readonly Line[] {
  const { set, way, printing } = source;
  if (!hasMoved(source) || set.packaging === undefined || way?.packaging === undefined) return [];
  return [printing.words.card.packing.otherPackaging(said(set.packaging), withId(way.packaging))];
}

/** How each member lies: by its page, and by the line of the set. */
function configurations({ set, members, printing }: CardSource): readonly Line[] {
  const lines: Line[] = [];
  for (const member of members) {
    const words = new Map<string, Text>();
    const { device } = member;
    for (const { what } of [
      ...(device?.packaging?.configuration?.items ?? []),
      ...(device?.configuration?.items ?? []),
    ])
      if (what !== undefined) words.set(what.text, what);
    for (const line of set.members?.items ?? []) {
      if (line.device?.text !== member.member.device) continue;
      for (const text of line.instructions?.items ?? []) if (!words.has(text.text)) words.set(text.text, text);
    }
    if (words.size === 0) continue;
    const how = joined(
      [...words.values()].map((text) => [term(text, printing)]),
      ', ',
    );
    lines.push([...memberTitle(member, set), ': ', ...printing.words.card.packing.configuration(how)]);
  }
  return lines;
}

function indicatorBlocks(source: CardSource): readonly Block[] {
  const { set, printing } = source;
  const { packing } = printing.words.card;
  const packaging = packagingOf(source);
  const decision = packaging === undefined ? undefined : indicatorPlaces(packaging, printing.view.site());
  const lines: Line[] = [];
  if (set.indicators !== undefined) {
    // The number was counted for the packaging that the set's file names; in another one the places alone hold.
    const count = hasMoved(source) ? undefined : amountAs(set.indicators, String(set.indicators.value));
    lines.push(packing.indicators(count, monitorName(set.indicator, printing), placesLine(decision, printing)));
  }
  if (decision === undefined) lines.push([source.way === undefined ? packing.placesUnstated : packing.placesComputed]);
  else if (decision.says.length > 0) lines.push(packing.placesBy(citationLine(decision.says[0], printing)));
  lines.push(...lineIf(set.external_indicator, (text) => packing.external(monitorName(text, printing))));
  return [block(lines)];
}

function monitorName(text: Text | undefined, { view }: Printing): Piece {
  if (text === undefined) return '';
  const monitor = view.get('monitor', text.text);
  return monitor === undefined ? said(text) : nameOf(monitor, text.text);
}

function placesLine(decision: Decision | undefined, printing: Printing): Line {
  if (decision === undefined) return ['?'];
  const from = [originOf(decision.at)];
  return joined(
    decision.words.map((word) => [{ text: termIn(printing.words, word), from }]),
    ', ',
  );
}

const kinds: Readonly<Record<string, PackKind>> = {
  wrap: 'wrap',
  case: 'wrap',
  'rigid-container': 'container',
  'iuss-container': 'container',
  pouch: 'pouch',
};

export function packKind(packaging: EntityOf['packaging'] | undefined): PackKind | undefined {
  return packaging?.type === undefined ? undefined : kinds[packaging.type.text];
}

/** The places of this pack and this many levels; nothing is drawn for a place whose name has no geometry. */
export function indicatorDrawing(source: CardSource): Drawing | undefined {
  const { set, printing } = source;
  const packaging = packagingOf(source);
  const pack = packKind(packaging);
  if (packaging === undefined || pack === undefined) return undefined;
  const levels = Math.max(1, Math.min(6, Math.round(set.levels?.value ?? 1)));
  const stated = indicatorPlaces(packaging, printing.view.site());
  const name = stated?.words[0] ?? computedPlace(pack, levels);
  const places = placeOf(name);
  if (places === undefined) return undefined;
  const levelsFrom = set.levels === undefined ? [] : [originOf(set.levels.at)];
  return { shows: 'indicators', pack, by: stated === undefined ? 'computed' : 'stated', places, levels, levelsFrom };
}

/** Where nobody says: the places farthest from where the sterilant enters a pack of this kind, by geometry. Proportions only. */
function computedPlace(pack: PackKind, levels: number): string | undefined {
  const size = { lengthMm: 500, widthMm: 250, heightMm: 60 * levels };
  const shape: SterilePackage = {
    size,
    levels,
    porousFaces:
      pack === 'wrap' ? ['bottom', 'top', 'left', 'right', 'front', 'back'] : pack === 'pouch' ? ['top'] : [],
    vents: pack === 'container' ? [ventInCentre(size, 'top', 60)] : [],
  };
  const geometry = indicatorGeometry(shape);
  return geometry.ok ? geometry.value.name : undefined;
}
