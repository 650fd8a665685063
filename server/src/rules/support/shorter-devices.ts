import type { LibraryView, Query } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Quantity } from '../../model/node.ts';
import type { ReadQuantity } from '../../model/scalars.ts';
import { amountOf } from '../../model/scalars.ts';
import { listOfIds, yesOrNo } from './brief.ts';
import { isOutOfScope } from './cleaning-ways.ts';
import { settingFor } from './judging.ts';
import { longerThanShown } from './longer-exposures.ts';

/** Every device for whose steam options the exposure is longer than shown. Whoever asks rests on which they are, not on every device. */
export function devicesShownShorter(exposure: Quantity, view: LibraryView): readonly EntityOf['device'][] {
  return view.ask(idsShownShorter, JSON.stringify(amountOf(exposure))).flatMap((id) => view.claimants('device', id));
}

export const idsShownShorter: Query<string, readonly string[]> = {
  name: 'devices for which an exposure is longer than shown',
  work: (view, exposure) => [...view.ids('device')].filter((id) => view.ask(isShownShorter, `${id}\n${exposure}`)),
  brief: listOfIds,
};

export const isShownShorter: Query<string, boolean> = {
  name: 'whether an exposure is longer than shown for a device',
  work(view, argument) {
    const [id = '', amount = '{}'] = argument.split('\n');
    const devices = view
      .claimants('device', id)
      .filter((device) => device.sterilization?.any_of !== undefined && !isOutOfScope(device));
    return devices.some((device) => {
      const exposure: Quantity = { node: 'quantity', at: device.at, ...(JSON.parse(amount) as ReadQuantity) };
      return longerThanShown([device], exposure, settingFor({}, view)).length > 0;
    });
  },
  brief: yesOrNo,
};
