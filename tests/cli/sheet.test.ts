import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cli, folderWith, libraryText } from '../support/cli.ts';
import { builtWorkbookPart } from '../support/workbook.ts';

const workbookPart = builtWorkbookPart();

const device =
  '\ufeff# Curved.\r\nkind: device\r\nid: "007"\r\nname: Scissors   # as printed\r\ncovers: [1-2, "03"]\r\n';
const files = {
  'library.ifu.yaml': libraryText,
  'devices/scissors.ifu.yaml': device,
  'sets/minor.ifu.yaml': 'kind: set\nid: MINOR\nname: =Minor\nmembers:\n  - {device: "007", qty: 2}\n',
};

const run = (cwd: string, ...words: string[]) => cli(['sheet', ...words], { cwd, workbookPart });

describe('sheet export and import', () => {
  it.each(['all.xlsx', 'tables'])('to %s and back changes nothing', async (out) => {
    const cwd = folderWith(files);
    const written = await run(cwd, 'export', '--out', out);
    expect(written).toMatchObject({ code: 0, err: '' });
    expect(written.out).toContain('Set contents: 1 row\n');
    const given = out === 'tables' ? ['tables/devices.csv', 'tables/sets.csv', 'tables/set-contents.csv'] : [out];
    const back = await run(cwd, 'import', ...given, '--write');
    expect(back).toMatchObject({ code: 0, err: '', out: 'No cell differs from the library.\n' });
    expect(readFileSync(join(cwd, 'devices/scissors.ifu.yaml'), 'utf8')).toBe(device);
  });

  it('takes the folder of an export as it takes its files', async () => {
    const cwd = folderWith({ ...files, 'none/a.txt': 'x' });
    await run(cwd, 'export', '--out', 't');
    const csv = join(cwd, 't/devices.csv');
    writeFileSync(csv, readFileSync(csv, 'utf8').replace('"Scissors"', '"Shears"'));
    const shown = await run(cwd, 'import', 't');
    expect(shown.out).toContain('1 cell differs');
    expect(shown.out).toContain('devices.csv, row 2, "Name" (007): "Scissors" becomes "Shears"');
    expect((await run(cwd, 'import', 'none')).err).toBe('traywright: the folder "none" holds no CSV files.\n');
  });

  it('completes an export that was interrupted, and writes over nothing else', async () => {
    const cwd = folderWith(files);
    await run(cwd, 'export', '--out', 't');
    const [sets, contents] = [join(cwd, 't/sets.csv'), join(cwd, 't/set-contents.csv')];
    const text = readFileSync(contents, 'utf8');
    rmSync(contents);
    expect(await run(cwd, 'export', '--out', 't')).toMatchObject({ code: 0, err: '' });
    expect(readFileSync(contents, 'utf8')).toBe(text);
    writeFileSync(sets, 'mine');
    expect(await run(cwd, 'export', '--out', 't')).toMatchObject({
      code: 2,
      err: expect.stringContaining('exists already'),
    });
    expect(readFileSync(sets, 'utf8')).toBe('mine');
  });

  it('shows what an edited cell changes, and writes only when told to', async () => {
    const cwd = folderWith(files);
    await run(cwd, 'export', '--out', 't', '--separator', 'semicolon');
    const csv = join(cwd, 't/devices.csv');
    const text = readFileSync(csv, 'utf8');
    expect(text).toContain(`"'007";"Scissors";"";"'1-2; 03"`);
    writeFileSync(csv, text.replace('"Scissors"', '"Scissors, curved"'));
    const shown = await run(cwd, 'import', 't/devices.csv');
    expect(shown.code).toBe(1);
    expect(shown.out).toContain('devices.csv, row 2, "Name" (007): "Scissors" becomes "Scissors, curved"');
    expect(shown.out).toContain('The library as it is compared with t/devices.csv');
    expect(shown.err).toBe('traywright: nothing was written. Say --write to change 1 file.\n');
    expect(readFileSync(join(cwd, 'devices/scissors.ifu.yaml'), 'utf8')).toBe(device);
    const written = await run(cwd, 'import', 't/devices.csv', '--write');
    expect(written).toMatchObject({ code: 0, err: 'traywright: changed 1 file.\n' });
    expect(readFileSync(join(cwd, 'devices/scissors.ifu.yaml'), 'utf8')).toBe(
      device.replace('Scissors ', '"Scissors, curved" '),
    );
    expect((await run(cwd, 'import', 't/devices.csv', '--write')).out).toBe('No cell differs from the library.\n');
  });

  it('names no option of another command where a change waits for a decision', async () => {
    const cwd = folderWith(files);
    await run(cwd, 'export', '--out', 't');
    const csv = join(cwd, 't/set-contents.csv');
    writeFileSync(csv, readFileSync(csv, 'utf8').replace('"2"', '"3"'));
    const { out } = await run(cwd, 'import', 't');
    expect(out).toContain('waits for a decision. Once the files are changed, "traywright compare" begins the record');
    expect(out).not.toContain('--write-sign-off');
  });

  it('writes nothing while there is a mistake, and says all of them', async () => {
    const cwd = folderWith(files);
    writeFileSync(join(cwd, 'a.csv'), 'Device id,Name,Pieces in stock\n007,New,many\nnone,x,1\n');
    const { code, out, err } = await run(cwd, 'import', 'a.csv', '--write');
    expect(code).toBe(2);
    expect(out).toContain('a.csv, row 2, "Pieces in stock"');
    expect(out).toContain('a.csv, row 3: the library has no device "none".');
    expect(err).toBe('traywright: the sheet has mistakes, so nothing was written.\n');
    expect(readFileSync(join(cwd, 'devices/scissors.ifu.yaml'), 'utf8')).toBe(device);
  });

  it('never writes over a file, and says what it cannot read', async () => {
    const cwd = folderWith({ ...files, 'there.xlsx': 'mine', 'latin.csv': new Uint8Array([0x53, 0x65, 0x74, 0xe4]) });
    expect((await run(cwd, 'export', '--out', 'there.xlsx')).code).toBe(2);
    expect(readFileSync(join(cwd, 'there.xlsx'), 'utf8')).toBe('mine');
    expect((await run(cwd, 'import', 'none.csv')).err).toBe('traywright: "none.csv" is not there.\n');
    expect((await run(cwd, 'import', 'latin.csv')).err).toContain('"latin.csv" was not taken in: ');
    expect((await run(cwd, 'import')).code).toBe(2);
    expect((await run(folderWith({}), 'export', '--out', 'x.xlsx')).code).toBe(4);
  });
});
