import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { kinds } from '../../../server/src/schema/kinds.ts';

const file = new URL('../../../client/snippets/rule-files.generated.json', import.meta.url);
const snippets: Readonly<Record<string, { prefix: string; body: string | readonly string[] }>> = JSON.parse(
  readFileSync(file, 'utf8'),
);

/** As it stands when it has just come in: words that are proposed, the first of each choice, nothing elsewhere. */
function asItComesIn(body: string | readonly string[]): string {
  const text = typeof body === 'string' ? body : body.join('\n');
  return text
    .replace(/\$\{\d+\|([^,|]*)[^|]*\|\}/g, '$1')
    .replace(/\$\{\d+:([^}]*)\}/g, '$1')
    .replace(/\$\{\d+\}|\$\d+/g, '');
}

/** What the writer has still to do. */
const toDos: ReadonlySet<string> = new Set(['empty-value', 'requirement-says-nothing', 'field-missing']);

function faultsOf(text: string): readonly string[] {
  return readRuleFile(fileId('x.ifu.yaml'), text).problems.flatMap(({ rule, message }) =>
    toDos.has(rule) ? [] : [`${rule}: ${message}`],
  );
}

describe.each(Object.entries(snippets))('%s', (_name, { prefix, body }) => {
  it('comes in as what can be read', () => {
    const text = asItComesIn(body);
    if (kinds.some((kind) => kind === prefix)) {
      expect(readRuleFile(fileId('x.ifu.yaml'), text).kind, text).toBe(prefix);
      expect(faultsOf(text), text).toEqual([]);
    } else {
      const numbered = text.replaceAll(/(?:number|lowest|highest) with unit/g, '4 min');
      const device = `kind: device\nid: pale\nstatements:\n  s1: {quote: "x"}\nlimits:\n  age: ${numbered}\n`;
      expect(faultsOf(device), device).toEqual([]);
      expect(device).toContain('4 min');
    }
  });
});
