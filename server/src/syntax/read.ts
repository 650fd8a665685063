import { Parser } from 'yaml';
import { span } from '../base/span.ts';
import { composeToken } from './compose.ts';
import { defaultLimits, type ReadLimits } from './limits.ts';
import { LineEnds } from './line-ends.ts';
import { mend } from './mend.ts';
import { reportNames } from './names.ts';
import { severityOf } from './problem-rules.ts';
import { ProblemSink } from './problem-sink.ts';
import { readQuickly } from './quick/quick-read.ts';
import { readAround } from './quick/read-around.ts';
import type { Blank, Reading, ReadResult } from './reading.ts';
import { readStream } from './stream.ts';

/**
 * Reads the text of one rule file. Never throws: whatever is wrong becomes a problem with a place, and the rest is still read.
 * `text` is decoded, its byte order mark stripped (one that is left is tolerated).
 */
export function readTree(text: string, limits: ReadLimits = defaultLimits): ReadResult {
  const tree = readQuickly(text, limits);
  if (tree !== undefined) return { tree, problems: [], unreadable: false };
  return readAround(text, limits, readThoroughly) ?? readThoroughly(text, limits);
}

/** The same by way of `yaml`, which reads any text and finds the place of every fault, and takes some twenty times as long. */
export function readThoroughly(text: string, limits: ReadLimits = defaultLimits): ReadResult {
  if (text.length > limits.fileLength) return refused('file-too-large', tooLarge(text, limits));
  try {
    return text.includes('\r\n') ? readCrlf(text, limits) : read(text, limits);
  } catch (error) {
    const tooDeep = error instanceof RangeError;
    if (tooDeep)
      return refused(
        'nested-too-deep',
        'So many brackets or dashes stand inside each other here that the file cannot be read.',
      );
    const reason = error instanceof Error ? error.message : String(error);
    return refused(
      'reader-failed',
      `The reader failed on this file (${reason.slice(0, 200)}). Other files are still checked.`,
    );
  }
}

function tooLarge(text: string, limits: ReadLimits): string {
  return `This file has ${text.length} characters; rule files of more than ${limits.fileLength} are not read. Split it, one thing in a file.`;
}

function refused(rule: 'file-too-large' | 'nested-too-deep' | 'reader-failed', message: string): ReadResult {
  return {
    tree: undefined,
    problems: [{ rule, message, span: span(0, 0), severity: severityOf(rule) }],
    unreadable: true,
  };
}

function readCrlf(source: string, limits: ReadLimits): ReadResult {
  const ends = new LineEnds(source);
  const { tree, problems, unreadable } = read(ends.text, limits);
  return {
    tree: tree === undefined ? undefined : ends.moveTree(tree),
    problems: problems.map((problem) => ends.moveProblem(problem)),
    unreadable,
  };
}

/** Above this length a damaged file is read once only. */
const LONGEST_TO_READ_AGAIN = 200_000;

function read(text: string, limits: ReadLimits): ReadResult {
  const before = new ProblemSink(text);
  let mended = mend(text, before);
  before.expectEchoesOnLines();
  let result = readOnce(text, mended, limits, before.copy());
  for (let again = 0; again < 4 && result.blanks.length > 0 && text.length <= LONGEST_TO_READ_AGAIN; again++) {
    mended = blanked(mended, result.blanks, before);
    result = readOnce(text, mended, limits, before.copy());
  }
  for (const blank of result.blanks) blank.report(result.sink);
  const { tree } = result;
  return { tree, problems: result.sink.finish(limits.problems), unreadable: tree === undefined || tree.node !== 'map' };
}

function readOnce(text: string, mended: string, limits: ReadLimits, sink: ProblemSink) {
  const reading: Reading = {
    text: mended,
    source: text,
    limits,
    sink,
    textRanges: [],
    anchors: [],
    aliases: [],
    blanks: [],
    keysLeft: limits.keys,
    depth: 0,
    compose: (token, within) => composeToken(reading, token, within),
  };
  const tree = readStream(reading, new Parser().parse(mended));
  reportNames(reading);
  sink.withdrawInside('tab-after-sign', reading.textRanges);
  return { tree, sink, blanks: reading.blanks };
}

function blanked(text: string, blanks: readonly Blank[], sink: ProblemSink): string {
  const parts: string[] = [];
  let done = 0;
  for (const blank of [...blanks].sort((a, b) => a.at - b.at)) {
    if (blank.at < done) continue;
    parts.push(text.slice(done, blank.at), ' ');
    done = blank.at + 1;
    blank.report(sink);
  }
  parts.push(text.slice(done));
  return parts.join('');
}
