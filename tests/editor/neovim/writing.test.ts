import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Neovim } from './driver.ts';
import { startOnSmallLibrary } from './small-library.ts';

/** Writing with Neovim's own client: completion, a new name across files, fixes and fields from a quote. */

let neovim: Neovim;
let close: () => Promise<void>;

beforeAll(async () => {
  ({ neovim, close } = await startOnSmallLibrary());
});
afterAll(() => close?.());

describe('writing in Neovim', () => {
  it('is offered bound words, ids and statements', async () => {
    await neovim.open('devices/pale-forceps.ifu.yaml');
    const lines = await neovim.lines();
    const line = lines.findIndex((text) => text.includes('limits:'));
    const at = lines[line]?.indexOf('at_most') ?? 0;
    const words = await neovim.completion({ line, character: at });
    expect(words.length).toBeGreaterThan(0);
    const src = lines[line]?.lastIndexOf('s1') ?? 0;
    const statements = await neovim.completion({ line, character: src + 2 });
    expect(statements.find(({ label }) => label === 's1')?.detail).toContain('Do not exceed 140 °C.');
    await neovim.open('sets/tray-a.ifu.yaml');
    const set = await neovim.lines();
    const member = set.findIndex((text) => text.includes('device:'));
    const devices = await neovim.completion({ line: member, character: (set[member]?.indexOf('device: ') ?? 0) + 8 });
    expect(devices.map(({ label }) => label)).toContain('pale-forceps');
  });

  it('gives a device another name in every file, those that nobody opened too', async () => {
    await neovim.open('devices/pale-forceps.ifu.yaml');
    await neovim.rename({ line: 1, character: 6 }, 'light-forceps');
    const buffers = await neovim.buffers();
    expect(buffers['devices/pale-forceps.ifu.yaml']).toContain('id: light-forceps');
    expect(buffers['sets/tray-a.ifu.yaml']).toContain('device: light-forceps');
    await expect(neovim.rename({ line: 1, character: 6 }, 'grey-scissors')).rejects.toThrow(
      'There is a device "grey-scissors" already',
    );
  });

  it('takes a fix, and turns a quote into fields', async () => {
    await neovim.open('devices/grey-scissors.ifu.yaml');
    const place = { line: 5, character: 1 };
    const actions = await neovim.codeActions({ start: place, end: place }, []);
    const fix = actions.find(({ title }) => title === 'Change to "class"');
    await neovim.apply(fix?.edit);
    expect((await neovim.lines())[5]).toMatch(/^class:/);
    await neovim.open('devices/pale-forceps.ifu.yaml');
    const lines = await neovim.lines();
    const line = lines.findIndex((text) => text.includes('quote: ') && text.includes('minutes'));
    const quote = { line, character: 4 };
    const fields = (await neovim.codeActions({ start: quote, end: quote }, [])).find(({ title }) =>
      title.startsWith('Turn the quote into fields'),
    );
    await neovim.apply(fields?.edit);
    expect((await neovim.lines()).join('\n')).toMatch(/- \{id: pv132-2, .*exposure: \{at_least: 4 min\}/);
    expect(await neovim.messages()).toEqual([]);
  });
});
