import type { Query } from '../../library/view.ts';
import { partsOf } from './entity-parts.ts';

/** What of a device says which A0 it needs: its class, empty where its file gives none, and whether its page asks for one. */
interface A0Asked {
  readonly class: string;
  readonly asks: boolean;
}

export const a0AskedBy: Query<string, A0Asked> = {
  name: 'what of a device says which A0 it needs',
  work(view, id) {
    const device = view.get('device', id);
    if (device === undefined) return { class: '', asks: false };
    const asks = partsOf(device).requirements.some(({ requirement }) => requirement.dimension === 'a0');
    return { class: device.class?.text ?? '', asks };
  },
  brief: {
    inWords: (asked) => JSON.stringify(asked),
    fromWords: (words) => JSON.parse(words) as A0Asked,
  },
};
