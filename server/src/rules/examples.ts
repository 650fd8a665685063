import type { FileId } from '../base/brand.ts';
import { fileId } from '../base/brand.ts';
import type { Span } from '../base/span.ts';

/** One file of a marked example: its text without the marks, and what the rule must say about it. */
export interface MarkedFile {
  readonly file: FileId;
  readonly text: string;
  readonly marks: readonly Mark[];
}

export interface Mark {
  readonly span: Span;
  readonly message: string;
}

const fileLine = /^=== (\S{1,120})$/;
const markLine = /^( {0,200})(\^{1,200})(?: (.{1,2000}))?$/;

/**
 * Reads a marked example. `=== name.ifu.yaml` begins a further file (the first needs no such line). A line of only blanks and carets,
 * then a message, marks the characters above the carets in the nearest line above that is not itself a mark.
 */
export function readMarked(example: string): readonly MarkedFile[] {
  const files: { file: FileId; lines: string[]; marks: Mark[] }[] = [];
  for (const line of example.replace(/^\n/, '').split('\n')) {
    const name = fileLine.exec(line)?.[1];
    if (name !== undefined || files.length === 0)
      files.push({ file: fileId(name ?? 'example.ifu.yaml'), lines: [], marks: [] });
    const current = files[files.length - 1];
    if (name !== undefined || current === undefined) continue;
    const mark = markLine.exec(line);
    if (mark === null) current.lines.push(line);
    else current.marks.push(markOf(current.lines, mark));
  }
  return files.map(({ file, lines, marks }) => ({ file, text: lines.join('\n'), marks }));
}

function markOf(linesAbove: readonly string[], mark: RegExpExecArray): Mark {
  const above = linesAbove.slice(0, -1).reduce((length, line) => length + line.length + 1, 0);
  const start = above + (mark[1] ?? '').length;
  return { span: { start, end: start + (mark[2] ?? '').length }, message: mark[3] ?? '' };
}
