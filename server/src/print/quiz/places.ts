import type { EntityOf } from '../../model/entities.generated.ts';
import { isSameSpot } from '../../rules/support/indicator-counts.ts';
import type { Decision } from '../../rules/support/packages.ts';
import { coolAim, indicatorPlaces } from '../../rules/support/packages.ts';
import { nameOf } from '../names.ts';
import type { Line } from '../piece.ts';
import { originOf } from '../piece.ts';
import { citationOf } from '../sayings.ts';
import { termIn } from '../words/words.ts';
import type { Ground } from './ground.ts';
import type { Draft, QuizStage } from './question.ts';

type Decide = (packaging: EntityOf['packaging'], site: EntityOf['site'] | undefined) => Decision | undefined;

/** Where the indicator goes, and where the thermometer points; the wrong places are those of other packagings. */
export function placeDrafts(ground: Ground): readonly Draft[] {
  return [
    ...draftsBy(indicatorPlaces, 'packing', 'Where do the indicators go in ', ground),
    ...draftsBy(coolAim, 'cooling', 'Where do you point the thermometer on ', ground),
  ];
}

function draftsBy(decide: Decide, stage: QuizStage, ask: string, { printing }: Ground): readonly Draft[] {
  const { view, words } = printing;
  const decided = view.all('packaging').flatMap((packaging) => {
    const decision = decide(packaging, view.site());
    return decision === undefined ? [] : [{ packaging, decision }];
  });
  const lineOf = ({ words: names, at }: Decision): Line => [
    { text: names.map((name) => termIn(words, name)).join(', '), from: [originOf(at)] },
  ];
  return decided.map(({ packaging, decision }): Draft => {
    const [saying] = decision.says;
    return {
      key: `where ${stage} packaging/${packaging.id?.text}`,
      template: 'where',
      stage,
      text: [ask, nameOf(packaging, ''), '?'],
      right: lineOf(decision),
      wrong: decided.filter((other) => !isSamePlace(other.decision, decision)).map((other) => lineOf(other.decision)),
      asking: 'wrong',
      why: ['So it says, by ', decision.who, '.'],
      citation: saying === undefined ? [] : citationOf(saying),
      difficulty: 1,
    };
  });
}

/** A place that any word of the other names too is no wrong answer. */
function isSamePlace(one: Decision, other: Decision): boolean {
  return one.words.some((word) => other.words.some((name) => isSameSpot(word, name)));
}
