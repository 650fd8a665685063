import { nameOrId } from '../../library/called.ts';
import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { Place, Text } from '../../model/node.ts';
import type { Saying } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { quotesOf } from '../support/failures.ts';
import { offersImmediateUse } from '../support/iuss.ts';
import { listed } from '../support/lists.ts';
import type { Decision } from '../support/packages.ts';
import { coolAim, indicatorPlaces } from '../support/packages.ts';
import { prions, universals } from '../support/word-lists.ts';
import { isMentioned } from '../support/wording.ts';

type Poster = EntityOf['poster'];

const message = {
  general: (word: string, exceptions: string) =>
    `“${word}” allows no exception, but this library holds some: ${exceptions}. Name them on the poster, or say what it is for.`,
  note: (name: string) => `what holds for "${name}"`,
};

export const rule = defineRule({
  id: 'poster-overgeneralises',
  stage: 'teaching',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A slogan outlives the case it was made for, and is followed where it is wrong.',
  source: 'practice',
  kinds: ['poster'],
  check(poster, { view, report }) {
    const said = universalIn(poster);
    if (said === undefined) return;
    const named = new Set(poster.exceptions?.items.map(({ text }) => text));
    for (const { packaging } of poster.by_packaging?.items ?? [])
      if (packaging !== undefined) named.add(packaging.text);
    const exceptions = exceptionsTo(said.text.text, poster, view).filter(({ id }) => !named.has(id));
    if (exceptions.length === 0) return;
    report({
      at: said.text.at,
      message: message.general(said.word, listed(exceptions.map(({ name, words }) => `${name} (${words})`))),
      says: quotesOf(exceptions.map(({ says }) => says)),
      related: exceptions.map(({ name, at }) => ({ at, note: message.note(name) })),
    });
  },
  examples: {
    bad: [
      `
=== posters/indicators.ifu.yaml
kind: poster
id: indicators
topic: indicators
text: "Every tray: centre"
      ^^^^^^^^^^^^^^^^^^^^ “every” allows no exception, but this library holds some: P3-rigid-container (two opposed corners per level). Name them on the poster, or say what it is for.
=== packaging/P3.ifu.yaml
kind: packaging
id: P3-rigid-container
type: rigid-container
indicator_places: [two-opposed-corners-per-level]
indicator_src: s5
statements:
  s5: {doc: KL-3, rev: C, page: 14, quote: "Place indicators in two opposed corners of each level."}
`,
      `
=== posters/urgent.ifu.yaml
kind: poster
id: urgent
topic: iuss
text: Never immediate use.
      ^^^^^^^^^^^^^^^^^^^^ “never” allows no exception, but this library holds some: power-handpiece (its page offers immediate use). Name them on the poster, or say what it is for.
=== devices/handpiece.ifu.yaml
kind: device
id: power-handpiece
sterilization:
  any_of:
    - {id: i, modality: steam-prevac, context: iuss}
`,
    ],
    good: [
      `
=== posters/indicators.ifu.yaml
kind: poster
id: indicators
topic: indicators
text: "Every tray: centre"
exceptions: [P3-rigid-container]
=== packaging/P3.ifu.yaml
kind: packaging
id: P3-rigid-container
type: rigid-container
indicator_places: [two-opposed-corners-per-level]
`,
      `
=== posters/cooling.ifu.yaml
kind: poster
id: cooling
topic: cooling
text: Always at the vents.
=== packaging/P3.ifu.yaml
kind: packaging
id: P3-rigid-container
type: rigid-container
cool_aim: vents
`,
    ],
  },
});

function universalIn({
  text,
  claim,
  title,
  exceptions_text,
}: Poster): { readonly text: Text; readonly word: string } | undefined {
  if (exceptions_text !== undefined && exceptions_text.text.trim() !== '') return undefined;
  for (const one of [text, claim, title]) {
    const word = one === undefined ? undefined : universals.find((phrase) => isMentioned(one.text, [phrase]));
    if (one !== undefined && word !== undefined) return { text: one, word: word.join(' ') };
  }
  return undefined;
}

interface Exception {
  readonly id: string;
  readonly name: string;
  readonly words: string;
  readonly at: Place;
  readonly says: readonly Saying[];
}

/** What the library knows about the topic that the sentence does not cover. Of other topics nothing is known. */
function exceptionsTo(sentence: string, { topic }: Poster, view: LibraryView): readonly Exception[] {
  switch (topic?.text) {
    case 'indicators':
      return ofPackaging(sentence, view, indicatorPlaces);
    case 'cooling':
      return ofPackaging(sentence, view, coolAim);
    case 'iuss':
      return isMentioned(sentence, [['never'], ['no']])
        ? view.all('device').filter(offersImmediateUse).map(offered)
        : [];
    case 'same-for-all':
      return view.all('procedure').flatMap(prionBranch);
    default:
      return [];
  }
}

function ofPackaging(
  sentence: string,
  view: LibraryView,
  decide: (packaging: EntityOf['packaging'], site: EntityOf['site'] | undefined) => Decision | undefined,
): readonly Exception[] {
  const site = view.site();
  return view.all('packaging').flatMap((packaging) => {
    const decision = decide(packaging, site);
    if (decision === undefined || decision.words.some((word) => isCovered(sentence, word))) return [];
    return [
      {
        id: rootOfEntity(packaging).id,
        name: nameOrId(packaging),
        words: decision.words.map((word) => word.replaceAll('-', ' ')).join(' or '),
        at: decision.at,
        says: decision.says,
      },
    ];
  });
}

/** `geometric-centre-per-level` is covered by a sentence that says centre. */
function isCovered(sentence: string, word: string): boolean {
  const parts = word.split('-').filter((part) => !smallWords.has(part));
  return isMentioned(
    sentence,
    parts.map((part) => [part === 'centre' || part === 'center' ? 'cent*' : part]),
  );
}

const smallWords: ReadonlySet<string> = new Set(['per', 'level', 'two', 'side', 'inside', 'of', 'the']);

function offered(device: EntityOf['device']): Exception {
  const { id } = rootOfEntity(device);
  return {
    id,
    name: nameOrId(device),
    words: 'its page offers immediate use',
    at: (device.sterilization ?? device).at,
    says: [],
  };
}

function prionBranch(procedure: EntityOf['procedure']): readonly Exception[] {
  const { when } = procedure;
  if (when === undefined || !isMentioned(when.text, prions)) return [];
  const { id } = rootOfEntity(procedure);
  return [{ id, name: nameOrId(procedure), words: 'suspected prion disease', at: when.at, says: [] }];
}
