import type { EntityOf } from '../../model/entities.generated.ts';
import type { Decision } from '../../rules/support/packages.ts';
import { coolAim, indicatorPlaces } from '../../rules/support/packages.ts';
import type { Printing } from '../amounts.ts';
import { citationLine } from '../card/foot.ts';
import { packKind } from '../card/packing.ts';
import { coolAimOf, placeOf } from '../card/places.ts';
import { aimDrawing } from '../drawings/aim.ts';
import { indicatorDrawing } from '../drawings/indicators.ts';
import { type Markup, nothing } from '../markup.ts';
import { nameOf } from '../names.ts';
import type { Line } from '../piece.ts';
import { joined, originOf } from '../piece.ts';
import { termIn } from '../words/words.ts';
import type { PosterBody } from './poster.ts';

type Packaging = EntityOf['packaging'];

interface Group {
  readonly packagings: Packaging[];
  readonly decision: Decision;
}

/** One drawing for each kind of pack and place; packagings that nobody decided are the exceptions. */
export function indicators(printing: Printing): PosterBody {
  return byDecision(printing, indicatorPlaces, (packaging, decision) => {
    const pack = packKind(packaging);
    const places = placeOf(decision.words[0]);
    return pack === undefined || places === undefined
      ? nothing
      : indicatorDrawing(
          { shows: 'indicators', pack, by: 'stated', places, levels: 1, levelsFrom: [] },
          printing.words,
        );
  });
}

export function aim(printing: Printing): PosterBody {
  const { cautions, cautionInfrared } = printing.words.poster;
  const body = byDecision(printing, coolAim, (packaging, decision) => {
    const pack = packKind(packaging);
    const target = coolAimOf(decision.words[0]);
    return pack === undefined || target === undefined
      ? nothing
      : aimDrawing({ shows: 'aim', pack, aim: target }, printing.words);
  });
  return { ...body, cautions: [...cautions, cautionInfrared] };
}

function byDecision(
  printing: Printing,
  decide: (packaging: Packaging, site: EntityOf['site'] | undefined) => Decision | undefined,
  draw: (packaging: Packaging, decision: Decision) => Markup,
): PosterBody {
  const { view, words } = printing;
  const groups = new Map<string, Group>();
  const undecided: Line[] = [];
  for (const packaging of view.all('packaging')) {
    const decision = decide(packaging, view.site());
    if (decision === undefined) undecided.push([nameOf(packaging, ''), `: ${words.poster.unstated}`]);
    else addTo(groups, `${packKind(packaging)} ${decision.words.join(' ')}`, packaging, decision);
  }
  const figures = [...groups.values()].map(({ packagings, decision }) => ({
    drawing: draw(packagings[0] as Packaging, decision),
    caption: captionOf(packagings, decision, printing),
  }));
  const sources = [...groups.values()].flatMap(({ packagings, decision }) =>
    sourceLines(packagings, decision, printing),
  );
  return { figures, exceptions: undecided, sources };
}

function addTo(groups: Map<string, Group>, key: string, packaging: Packaging, decision: Decision): void {
  const group = groups.get(key);
  if (group === undefined) groups.set(key, { packagings: [packaging], decision });
  else group.packagings.push(packaging);
}

function captionOf(packagings: readonly Packaging[], decision: Decision, { words }: Printing): Line {
  const names = joined(
    packagings.map((packaging): Line => [nameOf(packaging, '')]),
    ', ',
  );
  const from = [originOf(decision.at)];
  return [
    ...words.poster.packagings(names),
    ': ',
    { text: decision.words.map((word) => termIn(words, word)).join(', '), from },
  ];
}

function sourceLines(packagings: readonly Packaging[], { says, who }: Decision, printing: Printing): readonly Line[] {
  const [saying] = says;
  const cited = saying === undefined ? [] : citationLine(saying, printing);
  const [packaging] = packagings;
  return packaging === undefined ? [] : [[nameOf(packaging, ''), ': ', ...(cited.length > 0 ? cited : [who])]];
}
