import { sayingsOf } from '../../model/saying.ts';
import { offersImmediateUse } from '../../rules/support/iuss.ts';
import type { Printing } from '../amounts.ts';
import { citationLine } from '../card/foot.ts';
import { nameOf } from '../names.ts';
import type { Line } from '../piece.ts';
import { joined } from '../piece.ts';
import type { PosterBody } from './poster.ts';

/** The path of an urgent item, and the only items whose instruction offers it. */
export function immediateUse(printing: Printing): PosterBody {
  const { view, words } = printing;
  const { urgent } = words.poster;
  const devices = view.all('device').filter(offersImmediateUse);
  const names = joined(
    devices.map((device): Line => [nameOf(device, device.id?.text ?? '')]),
    ', ',
  );
  const sources = devices.flatMap((device) =>
    (device.sterilization?.any_of?.items ?? [])
      .filter(({ context }) => context?.text === 'iuss')
      .flatMap(({ src }) =>
        sayingsOf(device, src)
          .slice(0, 1)
          .map((saying) => citationLine(saying, printing)),
      ),
  );
  return {
    path: urgent.steps,
    loud: [urgent.afterwards],
    exceptions: [devices.length === 0 ? [urgent.offeredByNone] : urgent.offeredBy(names)],
    sources,
  };
}
