import { describe, expect, it } from 'vitest';
import { cli, folderWith, libraryText } from '../support/cli.ts';

/** The codes are the worked examples of GS1 and HIBC in the handbook, as in tests/unit/quantity/identifiers.test.ts. */
const files = {
  'library.ifu.yaml': libraryText,
  'clamp.ifu.yaml':
    'kind: device\nid: clamp\nname: Curved clamp\ncovers: [CL-1]\nidentifiers: ["51022222233336", "+A123BJC5D6E71G"]\nmanual: {use: required}\n',
};

describe('a scanned label stands where a catalogue number does', () => {
  it.each(['CL-1', '51022222233336', '(01)51022222233336(11)141231(21)1234', '+A123BJC5D6E71G'])('%s', async (code) => {
    const cwd = folderWith(files);
    expect((await cli(['answer', code], { cwd })).out).toContain('Curved clamp');
    expect((await cli(['urgent', code], { cwd })).out).toContain('Curved clamp');
  });

  it('says what is wrong with one that was not read well', async () => {
    const { out } = await cli(['answer', '(01)51022222233335'], { cwd: folderWith(files) });
    expect(out).toContain('scan it again');
  });
});
