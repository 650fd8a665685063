import { outOfScopeTraits } from '../judge/vocabulary.ts';
import type { LibraryView, Query } from '../library/view.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import type { Place } from '../model/node.ts';
import { requirementsIn } from '../model/walk.ts';
import type { UnknownReason } from './model.ts';

type Device = EntityOf['device'];

/** A fault of transcription that is still open on a device: what is encoded may not be what the page says. */
export interface OpenFault {
  readonly words: string;
  readonly at: Place;
}

/** Open faults of transcription of one device. Only rules know them: the answer is supplied by check/; without it there are none. */
export const openFaults: Query<string, readonly OpenFault[]> = {
  name: 'open-faults-of-transcription',
  work: () => [],
};

/** Why a device can't be judged, or can be judged only with reserve. */
export const doubtsAbout: Query<string, readonly UnknownReason[]> = {
  name: 'doubts-about-device',
  work: (view, id) => {
    const device = view.get('device', id);
    return device === undefined
      ? []
      : [...scope(device), ...documents(view, device), ...conflicts(device), ...faults(view, id)];
  },
};

/** Reasons that leave nothing to judge. With any other, what is encoded is judged, and the route stays provisional. */
export function blocksJudgement({ because }: UnknownReason): boolean {
  return because === 'no-file' || because === 'unreadable' || because === 'unmapped' || because === 'out-of-scope';
}

function scope(device: Device): readonly UnknownReason[] {
  const trait = device.traits?.items.find((one) => outOfScopeTraits.has(one.text));
  if (trait === undefined) return [];
  return [
    { because: 'out-of-scope', words: `items of the kind "${trait.text}" are outside this library`, at: trait.at },
  ];
}

/** The instruction must be on file and in force. A device that names no document at all has none. */
function documents(view: LibraryView, device: Device): readonly UnknownReason[] {
  const sources = device.sources?.items ?? [];
  for (const { doc, rev } of sources) {
    const revisions = doc === undefined ? [] : view.revisions(doc.text);
    if (revisions.some((one) => isCurrent(one, view.today) && (rev === undefined || one.rev?.text === rev.text)))
      return [];
  }
  const words =
    sources.length === 0 ? 'no instruction for use is on file' : 'the revision it was taken from is not in force here';
  return [{ because: 'no-document', words, at: device.sources?.at ?? device.id?.at ?? device.at }];
}

function isCurrent({ status, effective }: EntityOf['document'], today: string): boolean {
  return (status === undefined || status.text === 'current') && (effective === undefined || effective.text <= today);
}

function conflicts(device: Device): readonly UnknownReason[] {
  for (const requirement of requirementsIn(device)) {
    if (requirement.conflict === undefined) continue;
    return [{ because: 'conflict', words: 'two current documents differ', at: requirement.at }];
  }
  return [];
}

function faults(view: LibraryView, id: string): readonly UnknownReason[] {
  return view.ask(openFaults, id).map(({ words, at }) => ({ because: 'untrusted', words, at }));
}
