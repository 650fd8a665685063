import { isCollection, parseDocument, visit } from 'yaml';

/** The device of the sample that says most. */
export const longDevice = 'brindlewick-irrigating-tip';

/** A rule file as people write it who give every word a line of its own, with remarks between, until it has that many lines. */
export function longFile(text: string, lines: number): string {
  const document = parseDocument(text);
  visit(document, {
    Node(_, node) {
      if (isCollection(node)) node.flow = false;
    },
  });
  const written = document.toString({ lineWidth: 0 }).split('\n');
  const heads = written.flatMap((line, index) => (/^ {2}s\d+:$|^[a-z_]+:$/.test(line) ? [index] : []));
  const remarks = new Map<number, number>();
  for (let more = lines - written.length, at = 0; more > 0 && heads.length > 0; more--, at++) {
    const head = heads[at % heads.length] ?? 0;
    remarks.set(head, (remarks.get(head) ?? 0) + 1);
  }
  return written.flatMap((line, index) => [...remarksFor(line, remarks.get(index) ?? 0), line]).join('\n');
}

function remarksFor(line: string, count: number): readonly string[] {
  const indent = /^ */.exec(line)?.[0] ?? '';
  return Array.from({ length: count }, (_, index) => `${indent}# Read against the printed copy, time ${index + 1}.`);
}
