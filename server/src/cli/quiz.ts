import { resolve } from 'node:path';
import { outputFolder } from '../host/output-folder.ts';
import { printingOf } from '../print/amounts.ts';
import type { Quiz } from '../print/quiz/build.ts';
import { quizOf } from '../print/quiz/build.ts';
import { practicalChecklist } from '../print/quiz/checklist.ts';
import { quizCsv } from '../print/quiz/csv.ts';
import { groundOf } from '../print/quiz/ground.ts';
import { quizQti } from '../print/quiz/qti.ts';
import type { QuizStage } from '../print/quiz/question.ts';
import { Random } from '../print/quiz/random.ts';
import { quizSheet } from '../print/quiz/sheet.ts';
import { wordsOf } from '../print/words/languages.ts';
import type { Arguments } from './arguments.ts';
import { cannotFollow } from './cannot-follow.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { openFindings } from './open-findings.ts';
import { printedOn, writePaper } from './paper-output.ts';
import { libraryAt } from './route-library.ts';

const usualCount = 12;
const mostQuestions = 200;

/** `quiz`: questions from the live library, with their key. */
export function run(io: CommandIo, given: Arguments): ExitCode {
  const count = Number(given.values.get('count') ?? usualCount);
  if (!Number.isInteger(count) || count < 1 || count > mostQuestions)
    return cannotFollow(io, `--count needs a whole number from 1 to ${mostQuestions}.`);
  const format = given.values.get('format') ?? 'text';
  const target = given.values.get('out');
  if (format === 'qti' && target === undefined)
    return cannotFollow(io, 'a package of files needs a folder: --out DIR.');
  const open = libraryAt(given.operands[0] ?? given.values.get('library') ?? '.', io, given);
  if (open === undefined) return exit.nothing;
  const day = printedOn(io, given);
  const seed = given.values.get('seed') ?? day;
  const stage = given.values.get('stage') as QuizStage | undefined;
  const printing = printingOf(open.engine.view(), wordsOf('en'));
  const findings = openFindings(open);
  const quiz = quizOf(printing, findings, { seed, count, ...(stage && { stage }) });
  if (format === 'csv') io.stdout.write(quizCsv(quiz));
  else if (format === 'qti') return writePackage(io, quiz, resolve(io.cwd, target ?? '.'));
  else {
    const checklist = practicalChecklist(groundOf(printing, findings), new Random(seed), count);
    writePaper(quizSheet(quiz, checklist, printing, day), io, given);
  }
  return quiz.questions.length === 0 ? exit.findings : exit.ok;
}

function writePackage(io: CommandIo, quiz: Quiz, path: string): ExitCode {
  const folder = outputFolder(path);
  if ('why' in folder) return cannotFollow(io, folder.why);
  let code: ExitCode = exit.ok;
  for (const [name, text] of quizQti(quiz)) {
    const written = folder.write(name, text, (old) => old.includes('imsglobal.org/xsd/'));
    if ('why' in written) code = cannotFollow(io, written.why);
  }
  io.stdout.write(`${quiz.questions.length} questions, stamp ${quiz.stamp}.\n`);
  return code;
}
