import { type CST, Parser } from 'yaml';
import type { Problem } from '../base/problem.ts';
import { span } from '../base/span.ts';
import { composeToken } from './compose.ts';
import { defaultLimits, type ReadLimits } from './limits.ts';
import { mend } from './mend.ts';
import { reportNames } from './names.ts';
import { severityOf } from './problem-rules.ts';
import { ProblemSink } from './problem-sink.ts';
import type { Reading } from './reading.ts';
import { readStream } from './stream.ts';
import type { Tree } from './tree.ts';

export interface ReadResult {
  /** As much as could be read; undefined when there is nothing at all. Spans are offsets into the text given. */
  readonly tree: Tree | undefined;
  /** In order of place. One for each root cause. */
  readonly problems: readonly Problem[];
  /** True when the file as a whole is no map of keys, so that nothing further can be said about its content. */
  readonly unreadable: boolean;
}

/**
 * Reads the text of one rule file. Never throws: whatever is wrong becomes a problem with a place, and the rest is still read.
 * `text` is decoded, its byte order mark stripped (one that is left is tolerated).
 */
export function readTree(text: string, limits: ReadLimits = defaultLimits): ReadResult {
  if (text.length > limits.fileLength) return refused('file-too-large', tooLarge(text, limits));
  try {
    return read(text, limits);
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

function read(text: string, limits: ReadLimits): ReadResult {
  const sink = new ProblemSink(text);
  const mended = mend(text, sink);
  const reading: Reading = {
    text: mended,
    source: text,
    limits,
    sink,
    textRanges: [],
    anchors: [],
    aliases: [],
    keysLeft: limits.keys,
    depth: 0,
    compose: (token, within) => composeToken(reading, token, within),
  };
  const tree = readStream(reading, tokensOf(mended));
  reportNames(reading);
  sink.withdrawInside('tab-after-sign', reading.textRanges);
  const unreadable = tree === undefined || tree.node !== 'map';
  return { tree, problems: sink.finish(limits.problems), unreadable };
}

function tokensOf(text: string): CST.Token[] {
  return [...new Parser().parse(text)];
}
