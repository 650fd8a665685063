import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { generateLibrary } from '../../bench/generate-library.ts';
import { Seeded } from '../../bench/seeded.ts';
import { templatesOf } from '../../bench/templates.ts';
import { Built, root } from '../../support/built.ts';
import { readSample } from '../../support/samples.ts';
import { type DiskEvent, ServedLibrary } from '../../support/served-library.ts';
import { branch, runs } from './runs.ts';

const sample = join(root, 'samples/lanternfield');
let built: Built;
beforeAll(async () => {
  built = await Built.of('server');
}, 120_000);
afterAll(() => built.remove());

let folder: string;
let seeded: Seeded;
const servers: ServedLibrary[] = [];
beforeEach(() => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), 'traywright-storm-')));
  cpSync(sample, folder, { recursive: true });
  seeded = new Seeded(20250303);
});
afterEach(async () => {
  for (const server of servers.splice(0)) await server.kill();
  rmSync(folder, { recursive: true, force: true });
});

async function served(): Promise<ServedLibrary> {
  const server = await ServedLibrary.start(built.server, folder);
  servers.push(server);
  return server;
}

function rulePaths(): readonly string[] {
  const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  return paths.filter((path) => path.endsWith('.ifu.yaml')).sort();
}

function textOf(path: string): string {
  return readFileSync(join(folder, path), 'utf8');
}

/** Everything below the folder, to the byte. */
function bytesOnDisk(): ReadonlyMap<string, string> {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return new Map(files.map(({ parentPath, name }) => join(parentPath, name)).map((path) => [path, latin1(path)]));
}

function latin1(path: string): string {
  return readFileSync(path, 'latin1');
}

const pieces = ['4 min', '\n', '  ', ': ', '{', '"', 'at_least: ', '- ', 'x', '7', 's1', '°C', ''];

/** One change at a place by chance: the range as the protocol writes it, and the text after it. */
function randomEdit(text: string) {
  const from = seeded.below(text.length + 1);
  const to = Math.min(text.length, from + seeded.below(4));
  const piece = seeded.pick(pieces);
  const range = { start: positionAt(text, from), end: positionAt(text, to) };
  return { change: { range, text: piece }, after: text.slice(0, from) + piece + text.slice(to) };
}

function positionAt(text: string, offset: number): { line: number; character: number } {
  const before = text.slice(0, offset);
  return { line: before.split('\n').length - 1, character: offset - (before.lastIndexOf('\n') + 1) };
}

/** Documents open in one server, with what is typed in them. */
class Desk {
  readonly server: ServedLibrary;
  readonly texts = new Map<string, string>();

  constructor(server: ServedLibrary) {
    this.server = server;
  }

  async open(paths: readonly string[]): Promise<void> {
    for (const path of paths) {
      this.texts.set(path, textOf(path));
      await this.server.open(path, textOf(path));
    }
  }

  async type(path: string): Promise<void> {
    const { change, after } = randomEdit(this.texts.get(path) ?? '');
    this.texts.set(path, after);
    await this.server.edit(path, change);
  }

  async putBack(path: string): Promise<void> {
    this.texts.set(path, textOf(path));
    await this.server.edit(path, { text: textOf(path) });
  }
}

/** A server that was begun with this state says the same: nothing of what happened before is left in the other. */
async function saysWhatANewOneSays({ server, texts }: Desk): Promise<void> {
  const fresh = await served();
  for (const [path, text] of texts) await fresh.open(path, text);
  expect(await server.everything()).toEqual(await fresh.everything());
}

describe('two hundred edits a second', () => {
  /** Two seconds, a minute in the long trial. */
  const seconds = Math.min(60, runs(2));

  it('each with its question, in several documents: none is lost, and the last state is what is told', async () => {
    const desk = new Desk(await served());
    const paths = rulePaths().filter((_, index) => index % 15 === 3);
    await desk.open(paths);
    await desk.server.everything();
    const begin = performance.now();
    let [sent, answered] = [0, 0];
    while (sent < seconds * 200) {
      for (const due = Math.floor((performance.now() - begin) / 5); sent < due; sent++) {
        const path = seeded.pick(paths);
        if (sent % 100 === 99) await desk.putBack(path);
        else await desk.type(path);
        void desk.server.pull(path).then((items) => (answered += items === undefined ? 0 : 1));
      }
      await pause(2);
    }
    expect(desk.server.child.exitCode).toBeNull();
    await saysWhatANewOneSays(desk);
    expect(answered).toBeGreaterThan(0);
  }, 3_600_000);
});

describe('a branch switch', () => {
  it('[R09] files that change, come and go by the hundred while somebody types, and back again, leave what was there', async () => {
    placeLibrary(branch.files);
    const desk = new Desk(await served());
    const paths = rulePaths().filter((path) => path !== 'library.ifu.yaml');
    const open = paths.filter((_, index) => index % Math.floor(branch.files / 5) === 3);
    await desk.open(open);
    const before = await desk.server.everything();
    const thereAndBack = async (there: () => Promise<void>) => {
      const others = paths.filter((_, index) => index % branch.everyOther === 0);
      const texts = new Map(others.map((path) => [path, textOf(path)]));
      const events = switched(others);
      await desk.server.onDisk(events);
      for (let key = 0; key < 20; key++) await desk.type(seeded.pick(open));
      await there();
      for (const [path, text] of texts) writeFileSync(join(folder, path), text);
      for (const { path, type } of events) if (type === 1) rmSync(join(folder, path));
      await desk.server.onDisk(events.map(({ path, type }): DiskEvent => ({ path, type: backwards[type] })));
      for (const path of open) await desk.putBack(path);
      expect(await desk.server.everything()).toEqual(before);
      return { events: events.length, heap: await desk.server.heap() };
    };
    const first = await thereAndBack(() => saysWhatANewOneSays(desk));
    const second = await thereAndBack(async () => void (await desk.server.everything()));
    process.stdout.write(
      `${first.events} changes in ${branch.files} files, twice there and back: live objects ${first.heap}, ${second.heap} bytes\n`,
    );
    expect(second.heap / first.heap).toBeLessThan(1.1);
  }, 3_600_000);

  /** What came goes, what went comes. */
  const backwards = { 1: 3, 2: 2, 3: 1 } as const;

  function placeLibrary(files: number): void {
    for (const name of readdirSync(folder)) rmSync(join(folder, name), { recursive: true });
    for (const [path, text] of generateLibrary(templatesOf(readSample('lanternfield-corrected')), files)) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), text);
    }
  }

  /** Every third file goes, every third is another, and beside it one comes. */
  function switched(paths: readonly string[]): readonly DiskEvent[] {
    return paths.flatMap((path, index): readonly DiskEvent[] => {
      if (index % 3 === 0) {
        rmSync(join(folder, path));
        return [{ path, type: 3 }];
      }
      const text = textOf(path);
      writeFileSync(join(folder, path), text.replace(/\d+ min/g, '1 min'));
      if (index % 3 === 1) return [{ path, type: 2 }];
      const other = path.replace('.ifu.yaml', '-new.ifu.yaml');
      writeFileSync(join(folder, other), text.replace(/^id: (.*)$/m, 'id: $1-new'));
      return [
        { path, type: 2 },
        { path: other, type: 1 },
      ];
    });
  }
});

describe('an hour of work in the server', () => {
  /** A person types five keys a second at the most. In the long trial the two halves together are an hour of that. */
  const keys = Math.min(9_000, runs(200));

  it('typing, looking, saving and closing leave memory where it was', async () => {
    const desk = new Desk(await served());
    const paths = rulePaths();
    await desk.server.everything();
    await work(desk, paths, keys);
    const before = await desk.server.heap();
    await work(desk, paths, keys);
    const after = await desk.server.heap();
    process.stdout.write(`live objects after ${keys} and ${2 * keys} keys: ${before}, ${after} bytes\n`);
    expect(after / before).toBeLessThan(1.15);
    expect(desk.server.child.exitCode).toBeNull();
  }, 3_600_000);

  async function work(desk: Desk, paths: readonly string[], count: number): Promise<void> {
    const { server } = desk;
    for (let key = 0; key < count; ) {
      const path = seeded.pick(paths);
      await desk.open([path]);
      for (let typed = 0; typed < 25 && key < count; typed++, key++) {
        await desk.type(path);
        await server.pull(path);
        if (typed % 5 === 0) await look(server, path);
      }
      await desk.putBack(path);
      await server.onDisk([{ path, type: 2 }]);
      await server.close(path);
    }
    await server.everything();
  }

  async function look(server: ServedLibrary, path: string): Promise<void> {
    const textDocument = { uri: server.uri(path) };
    const position = { line: seeded.below(30), character: seeded.below(20) };
    for (const method of ['completion', 'hover', 'documentSymbol', 'codeLens'])
      await server.connection.sendRequest(`textDocument/${method}`, { textDocument, position });
  }
});

describe('a server that is ended at any moment (kill -9)', () => {
  it('leaves every file as it was, and the next one says the same', async () => {
    const first = await served();
    const before = await first.everything();
    const files = bytesOnDisk();
    for (let round = 0; round < runs(5); round++) {
      const desk = new Desk(await served());
      const paths = rulePaths().filter((_, index) => index % 9 === round % 9);
      const working = (async () => {
        await desk.open(paths);
        void desk.server.everything().catch(() => undefined);
        for (let key = 0; key < 400 && desk.server.child.exitCode === null; key++) {
          await desk.type(seeded.pick(paths));
          await pause(1);
        }
      })().catch(() => undefined);
      await pause((round * 137) % 700);
      await desk.server.kill();
      await working;
    }
    expect(bytesOnDisk()).toEqual(files);
    const next = await served();
    expect(await next.everything()).toEqual(before);
  }, 3_600_000);
});
