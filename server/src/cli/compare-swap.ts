import { markdownOfBlocks, textOfBlocks } from '../report/blocks.ts';
import { compareCautions } from '../report/compare-words.ts';
import { jsonText } from '../report/json.ts';
import { swapPage } from '../report/swap-page.ts';
import { type Substitution, type Swap, substitutionOf } from '../revision/substitution.ts';
import { Trials } from '../revision/trials.ts';
import type { Arguments } from './arguments.ts';
import { cannotFollow } from './cannot-follow.ts';
import { paletteFor } from './colours.ts';
import type { CommandIo, ExitCode } from './io.ts';
import { exit } from './io.ts';
import { libraryAt } from './route-library.ts';

const kinds: readonly Swap['kind'][] = ['chemistry', 'packaging', 'washer', 'sterilizer', 'ultrasonic'];

/** `compare --swap KIND/OLD=NEW [LIBRARY]`: one thing of the department in place of another. */
export function runSwap(io: CommandIo, given: Arguments, fails: 'on-no' | 'never'): ExitCode {
  const swap = swapIn(given.values.get('swap') ?? '');
  if (swap === undefined)
    return cannotFollow(io, `--swap needs KIND/OLD=NEW, with one of the kinds: ${kinds.join(', ')}.`);
  const format = given.values.get('format') ?? 'text';
  if (format === 'html') return cannotFollow(io, '--swap has no form html; text, markdown and json it has.');
  const open = libraryAt(given.operands[0] ?? given.values.get('library') ?? '.', io, given);
  if (open === undefined) return exit.nothing;
  const answer = substitutionOf(swap, new Trials(open.engine.library, open.engine.view().today));
  if (answer === undefined)
    return cannotFollow(io, `this library does not hold both ${swap.kind} "${swap.from}" and "${swap.to}".`);
  io.stdout.write(rendered(answer, format, io, given));
  return fails === 'on-no' && [...answer.sets, ...answer.families].some(isLoss) ? exit.findings : exit.ok;
}

function swapIn(text: string): Swap | undefined {
  const slash = text.indexOf('/');
  const equals = text.indexOf('=', slash);
  const kind = kinds.find((one) => one === text.slice(0, slash));
  if (kind === undefined || equals < 0) return undefined;
  const [from, to] = [text.slice(slash + 1, equals), text.slice(equals + 1)];
  return from === '' || to === '' || from === to ? undefined : { kind, from, to };
}

function isLoss({ before, after }: Substitution['sets'][number]): boolean {
  return after === 'no' && before !== 'no';
}

function rendered(answer: Substitution, format: string, io: CommandIo, given: Arguments): string {
  if (format === 'json')
    return `${jsonText({ format: 'traywright-swap', version: 1, ...answer, cautions: compareCautions })}\n`;
  const blocks = swapPage(answer);
  return format === 'markdown' ? markdownOfBlocks(blocks) : textOfBlocks(blocks, paletteFor(io, given));
}
