import { describe, expect, it } from 'vitest';
import { badText, cli, findingsIn, folderWith, libraryText, namesIn } from '../../support/cli.ts';

const library = { 'library.ifu.yaml': libraryText, 'bad.ifu.yaml': badText };

/** Texts that every reader of YAML takes without a word, and takes for something else: what is said, and at which line and column. */
const shapes: readonly (readonly [name: string, text: string, rule: string, at: string, message: string])[] = [
  ['[L06] text that becomes a list', 'name: [do not soak]', 'wrong-form', '3:7', 'should be plain text, but a list'],
  ['[L07] text that becomes a group', 'name: {x}', 'brace-without-value', '3:8', 'put the whole text in quotes'],
  ['[L08] items without a comma', 'record: [item cycle]', 'words-run-together', '3:10', 'Make 2 of it: a comma'],
  ['[L08] ids without a comma', 'applies_to: [hook pin]', 'unknown-id', '3:14', 'no device "hook pin"'],
  ['[L08] items on one line', 'record:\n  - item cycle', 'words-run-together', '4:5', 'a line and a dash for each'],
  ['[L10] a value that is not there', 'quantum:\nname:', 'empty-value', '4:6', '"name" is empty'],
  ['[L11] a key one level too far left', 'steps:\n- stage: manual\ndo: brush', 'unknown-field', '5:1', 'no field "do"'],
];

describe('shapes that mean something else', () => {
  it.each(shapes)('%s: %j', async (_name, text, rule, at, message) => {
    const cwd = folderWith({ ...library, 'x.ifu.yaml': `kind: procedure\nid: p9\n${text}\n` });
    const { out } = await cli(['check', '--format', 'json'], { cwd });
    const said = findingsIn(out).filter((finding) => finding.at.file === 'x.ifu.yaml' && finding.rule === rule);
    expect(said.map((finding) => `${finding.at.line}:${finding.at.column}`)).toEqual([at]);
    expect(said[0]?.message).toContain(message);
    expect(namesIn(out)).toContain('bad.ifu.yaml unknown-field');
  });

  it('[L12] a file in braces without spaces is told what it lacks, and nothing else', async () => {
    const { out } = await cli(['check', '--format', 'json'], {
      cwd: folderWith({ ...library, 'x.ifu.yaml': '{a:1}\n' }),
    });
    expect(namesIn(out)).toEqual(['bad.ifu.yaml unknown-field', 'x.ifu.yaml colon-without-space']);
  });

  it('[L08] words that are usual only together, or in quotes, are one item', async () => {
    const text = 'kind: procedure\nid: p9\nrecord: [item, "item cycle", cycle number, load item]\n';
    const { out } = await cli(['check', '--format', 'json'], { cwd: folderWith({ ...library, 'x.ifu.yaml': text }) });
    expect(namesIn(out)).toEqual(['bad.ifu.yaml unknown-field']);
  });
});
