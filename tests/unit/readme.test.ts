import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseDocument } from 'yaml';
import { parse } from '../../server/src/cli/arguments.ts';
import { commands } from '../../server/src/cli/commands.ts';

const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

/** Every command line of the program in a code block. */
const lines = [...readme.matchAll(/dist\/traywright\.cjs ([^\n#"]+)/g)].map(([, words]) =>
  (words ?? '').trim().split(/\s+/),
);

describe('the README', () => {
  it.each(lines)('shows a command line that can be followed: %s %s %s', (...words) => {
    const [name, ...rest] = words.filter((word) => word !== undefined);
    if (name === '--help') return;
    const command = commands.find((known) => known.name === name);
    expect(command?.name).toBe(name);
    expect(parse(rest, command?.options ?? [])).toHaveProperty('given');
  });

  it('names the library in the samples for build servers: beside it lie the demo departments', () => {
    const samples = [...readme.matchAll(/(?<!`)node traywright\/dist\/traywright\.cjs ([^\n]+)/g)].map(
      ([, words]) => words,
    );
    expect(samples).toHaveLength(3);
    for (const words of samples) expect(words).toMatch(/^check library /);
  });

  it('names every command', () => {
    for (const { name } of commands) expect(readme).toContain(`\`${name}`);
  });

  it('shows YAML that reads well', () => {
    const blocks = [...readme.matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, text]) => text ?? '');
    expect(blocks.length).toBeGreaterThan(3);
    for (const block of blocks) expect(parseDocument(block).errors).toEqual([]);
  });
});
