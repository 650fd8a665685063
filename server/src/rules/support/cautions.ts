import type { EntityOf } from '../../model/entities.generated.ts';
import type { Phrase } from './wording.ts';
import { isMentioned } from './wording.ts';

/*
 * Cautions without which no paper leaves the department. Data: the words to print, and how a caution that somebody worded otherwise is
 * known again.
 */

export interface Caution {
  /** What it is about, in a few words. */
  readonly about: string;
  readonly text: string;
  readonly knownBy: readonly Phrase[];
}

const always: readonly Caution[] = [
  {
    about: 'that the manufacturer’s document is the instruction',
    text: "The manufacturer's current document is the instruction; this is an index to it. When they differ, follow the document and report the difference.",
    knownBy: [
      ['document', 'is', 'instruction'],
      ['follow', 'document'],
      ['document', 'binds'],
      ['instruction', 'binds'],
    ],
  },
  {
    about: 'that it releases no load',
    text: 'Not a load-release system; it does not see what happened in the cycle.',
    knownBy: [
      ['load', 'release'],
      ['release', 'load'],
      ['releases', 'no', 'load'],
      ['no', 'release'],
    ],
  },
  {
    about: 'that a print is out of date with its stamp',
    text: 'Printed output is uncontrolled after its stamp goes out of date.',
    knownBy: [['uncontrolled'], ['out', 'of', 'date'], ['stamp']],
  },
];

const byTopic: ReadonlyMap<string, readonly Caution[]> = new Map([
  [
    'cooling',
    [
      {
        about: 'that infrared readings depend on the surface',
        text: 'Infrared readings depend on the surface.',
        knownBy: [['infrared'], ['surface']],
      },
    ],
  ],
  [
    'units',
    [
      {
        about: 'that pressures and boiling points hold at this altitude only',
        text: 'Altitude-dependent figures apply to this site only.',
        knownBy: [['altitude'], ['this', 'site', 'only'], ['height']],
      },
    ],
  ],
]);

/** The cautions a poster or template needs and does not carry. */
export function cautionsMissing({ cautions, topic }: EntityOf['poster']): readonly Caution[] {
  const texts = cautions?.items.map(({ text }) => text) ?? [];
  const needed = [...always, ...(byTopic.get(topic?.text ?? '') ?? [])];
  return needed.filter(({ knownBy }) => !texts.some((text) => isMentioned(text, knownBy)));
}
