import { answerKey } from '../../library/keys.ts';
import { briefQueries } from '../../rules/support/brief-queries.ts';
import type { Engine } from '../engine.ts';
import type { AnswersAgain } from './affected.ts';
import { hashOf } from './key-hash.ts';
import type { KnownLibrary } from './known-library.ts';

/** Answers of which few words say all: taken from what is known where nothing they rest on changed, else worked out anew and compared. */
export function sameAnswers({ answers }: KnownLibrary, engine: Engine): AnswersAgain {
  const queries = new Map(briefQueries.map((query) => [query.name, query]));
  return {
    rest: (perhapsOther) => {
      engine.restAnswers((query, argument) => {
        for (const place of answers.named(hashOf(answerKey(query, argument)))) {
          const brief = perhapsOther.has(place) ? undefined : answers.brief(place);
          if (brief?.query === query && brief.argument === argument) return brief.words;
        }
        return undefined;
      });
    },
    stays: (place) => {
      const brief = answers.brief(place);
      const query = queries.get(brief?.query ?? '');
      if (brief === undefined || query === undefined) return false;
      return query.brief?.inWords(engine.view().ask(query, brief.argument)) === brief.words;
    },
  };
}
