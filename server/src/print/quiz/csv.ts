import { plain } from '../piece.ts';
import type { Quiz } from './build.ts';

/** The sheet as a table for learning systems: one row a question, the key as a letter. */
export function quizCsv({ stamp, questions }: Quiz): string {
  const head = [
    'number',
    'template',
    'stage',
    'difficulty',
    'question',
    'a',
    'b',
    'c',
    'd',
    'e',
    'key',
    'why',
    'source',
    'stamp',
  ];
  const rows = questions.map(({ template, stage, difficulty, text, choices, why, citation }, index) => {
    const letters = 'abcde';
    const cells = [...letters].map((_, at) => plain(choices[at]?.line ?? []));
    const key = letters.charAt(choices.findIndex(({ right }) => right));
    return [
      String(index + 1),
      template,
      stage,
      String(difficulty),
      plain(text),
      ...cells,
      key,
      plain(why),
      plain(citation),
      stamp,
    ];
  });
  return `${[head, ...rows].map((row) => row.map(cell).join(',')).join('\r\n')}\r\n`;
}

/**
 * A quoted cell. Spreadsheets take a cell that begins with one of these as a formula, so it gets an apostrophe; one that begins with an
 * apostrophe gets a second one, so that taking the first away always gives the text back.
 */
export function cell(text: string): string {
  const harmless = /^[=+\-@'\t\r]/.test(text) ? `'${text}` : text;
  return `"${harmless.replaceAll('"', '""')}"`;
}
