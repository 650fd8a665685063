import { briefQueries } from '../../rules/support/brief-queries.ts';
import type { Engine } from '../engine.ts';
import type { AnswersAgain } from './affected.ts';
import type { BriefAnswer, LibraryState } from './library-state.ts';

/** Answers of which few words say all: taken from the state where nothing they rest on changed, else worked out anew and compared. */
export function sameAnswers({ answers }: LibraryState, engine: Engine): AnswersAgain {
  const queries = new Map(briefQueries.map((query) => [query.name, query]));
  const byPlace = new Map<number, BriefAnswer>();
  return {
    rest: (perhapsOther) => {
      const words = new Map<string, string>();
      for (const one of answers.brief) {
        const [place, query, argument] = one;
        if (perhapsOther.has(place)) byPlace.set(place, one);
        else words.set(`${query} ${argument}`, one[3]);
      }
      engine.restAnswers((query, argument) => words.get(`${query} ${argument}`));
    },
    stays: (place) => {
      const [, name = '', argument = '', words] = byPlace.get(place) ?? [];
      const query = queries.get(name);
      return query !== undefined && query.brief?.inWords(engine.view().ask(query, argument)) === words;
    },
  };
}
