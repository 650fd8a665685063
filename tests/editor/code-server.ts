import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import path from 'node:path';
import { promisify } from 'node:util';
import { until } from './wait.ts';

/**
 * Starts VS Code as a web page (code-server) on this machine's own address, with folders of its own for everything it keeps.
 * Knows processes and settings files; must not know anything about the page that it serves or about our extension.
 */

const run = promisify(execFile);
const repository = path.resolve(import.meta.dirname, '../..');
const entry = path.join(repository, '.cache/editors/code-server/node_modules/code-server/out/node/entry.js');

export type WorkspaceTrust = 'every folder is trusted' | 'no folder is trusted';

export interface CodeServerOptions {
  /** Where the server keeps its settings, extensions and home; made if it is not there. */
  readonly home: string;
  /** Packaged extensions (`.vsix`) to install before the start. */
  readonly extensions: readonly string[];
  readonly trust: WorkspaceTrust;
  /** User settings on top of the quiet ones here. VS Code as a web page reads them at its start only. */
  readonly settings: Settings;
}

export type Settings = Readonly<Record<string, unknown>>;

export interface RunningProcess {
  readonly pid: number;
  readonly command: string;
  /** Resident memory in bytes. */
  readonly memory: number;
}

const quietSettings: Settings = {
  'telemetry.telemetryLevel': 'off',
  'update.mode': 'none',
  'extensions.autoCheckUpdates': false,
  'extensions.autoUpdate': false,
  'extensions.ignoreRecommendations': true,
  'workbench.enableExperiments': false,
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.editor.empty.hint': 'hidden',
  'chat.commandCenter.enabled': false,
  'git.enabled': false,
  'security.workspace.trust.startupPrompt': 'never',
  'security.workspace.trust.banner': 'never',
  'window.autoDetectColorScheme': false,
  'window.autoDetectHighContrast': false,
};

/** A running code-server; `stop` ends it with all that it started. */
export class CodeServer {
  readonly #process: ChildProcess;
  readonly #home: string;
  readonly #output: string[];
  readonly address: string;

  private constructor(process: ChildProcess, options: CodeServerOptions, address: string, output: string[]) {
    this.#process = process;
    this.#home = options.home;
    this.#output = output;
    this.address = address;
  }

  static async start(options: CodeServerOptions): Promise<CodeServer> {
    if (!existsSync(entry)) {
      throw new Error('code-server is not installed: run .ci/install-editors first');
    }
    writeSettings(options.home, { ...quietSettings, ...options.settings });
    for (const extension of options.extensions) {
      await installExtension(options.home, extension);
    }
    const port = await freePort();
    const output: string[] = [];
    const child = spawn(process.execPath, [entry, ...serverArguments(options, port)], {
      detached: true,
      env: environment(options.home),
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    for (const stream of [child.stdout, child.stderr]) {
      stream.on('data', (chunk: Buffer) => output.push(chunk.toString()));
    }
    const server = new CodeServer(child, options, `http://127.0.0.1:${port}`, output);
    await server.#waitUntilItAnswers();
    return server;
  }

  /** All that code-server printed. */
  get output(): string {
    return this.#output.join('');
  }

  /** Every process that code-server started, itself among them. */
  processes(): RunningProcess[] {
    return this.#process.pid === undefined ? [] : processesBelow(this.#process.pid);
  }

  /** What the extension host and its extensions wrote to their logs, newest start last. */
  logs(): string {
    const folder = path.join(this.#home, 'data/logs');
    if (!existsSync(folder)) {
      return '';
    }
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.log'));
    return files.map((file) => `--- ${file}\n${readFileSync(path.join(folder, file), 'utf8')}`).join('\n');
  }

  async stop(): Promise<void> {
    const running = this.processes();
    for (const { pid } of running) {
      end(pid);
    }
    await until('code-server to end', () => (running.some(({ pid }) => isRunning(pid)) ? undefined : true), {
      describe: () => running.map(({ command }) => command).join('\n'),
    });
  }

  async #waitUntilItAnswers(): Promise<void> {
    await until(
      'code-server to answer',
      async () => {
        if (this.#process.exitCode !== null) {
          throw new Error(`code-server ended with code ${this.#process.exitCode}:\n${this.output}`);
        }
        const answer = await fetch(`${this.address}/healthz`).catch(() => undefined);
        return answer?.ok === true ? true : undefined;
      },
      { describe: () => this.output },
    );
  }
}

function serverArguments(options: CodeServerOptions, port: number): string[] {
  return [
    `--bind-addr=127.0.0.1:${port}`,
    '--auth=none',
    '--disable-telemetry',
    '--disable-update-check',
    '--disable-getting-started-override',
    ...(options.trust === 'every folder is trusted' ? ['--disable-workspace-trust'] : []),
    ...folderArguments(options.home),
  ];
}

function folderArguments(home: string): string[] {
  return [
    `--config=${path.join(home, 'config.yaml')}`,
    `--user-data-dir=${path.join(home, 'data')}`,
    `--extensions-dir=${path.join(home, 'extensions')}`,
  ];
}

/** The test runner's own Node.js settings and any editor's variables are kept away from the server. */
function environment(home: string): NodeJS.ProcessEnv {
  const kept: NodeJS.ProcessEnv = { HOME: home, EXTENSIONS_GALLERY: '{"serviceUrl":"","itemUrl":""}' };
  for (const name of ['PATH', 'LANG', 'TZ']) {
    const value = process.env[name];
    if (value !== undefined) {
      kept[name] = value;
    }
  }
  return kept;
}

async function installExtension(home: string, extension: string): Promise<void> {
  if (!existsSync(extension)) {
    throw new Error(`There is no packaged extension at ${extension}: run npm run build and npm run package first`);
  }
  const printed = await run(
    process.execPath,
    [entry, `--install-extension=${path.resolve(extension)}`, ...folderArguments(home)],
    { env: environment(home) },
  );
  if (!printed.stdout.includes('was successfully installed')) {
    throw new Error(`${extension} was not installed:\n${printed.stdout}\n${printed.stderr}`);
  }
}

function writeSettings(home: string, settings: Settings): void {
  const folder = path.join(home, 'data/User');
  mkdirSync(folder, { recursive: true });
  writeFileSync(path.join(folder, 'settings.json'), `${JSON.stringify(settings, undefined, 2)}\n`);
  writeFileSync(path.join(home, 'config.yaml'), '');
}

async function freePort(): Promise<number> {
  const listener = createServer();
  await new Promise<void>((resolve, reject) => {
    listener.once('error', reject);
    listener.listen(0, '127.0.0.1', resolve);
  });
  const address = listener.address();
  await new Promise((resolve) => listener.close(resolve));
  if (address === null || typeof address === 'string') {
    throw new Error('no free port');
  }
  return address.port;
}

function processesBelow(root: number): RunningProcess[] {
  const parents = new Map<number, number>();
  for (const name of readdirSync('/proc').filter((entryName) => /^\d+$/.test(entryName))) {
    const parent = parentOf(Number(name));
    if (parent !== undefined) {
      parents.set(Number(name), parent);
    }
  }
  const found: RunningProcess[] = [];
  for (const pid of parents.keys()) {
    let ancestor: number | undefined = pid;
    while (ancestor !== undefined && ancestor !== root) {
      ancestor = parents.get(ancestor);
    }
    const details = ancestor === root ? describeProcess(pid) : undefined;
    if (details !== undefined) {
      found.push(details);
    }
  }
  return found;
}

/** A process that has ended but was not yet collected by its parent counts as ended. */
function parentOf(pid: number): number | undefined {
  const [state, parent] = readProcessFile(pid, 'stat')?.split(') ').at(-1)?.split(' ') ?? [];
  return state === undefined || state === 'Z' ? undefined : Number(parent);
}

function describeProcess(pid: number): RunningProcess | undefined {
  const command = readProcessFile(pid, 'cmdline')?.replaceAll('\0', ' ').trim();
  const pages = readProcessFile(pid, 'statm')?.split(' ')[1];
  return command === undefined ? undefined : { pid, command, memory: Number(pages ?? 0) * 4096 };
}

function readProcessFile(pid: number, name: string): string | undefined {
  try {
    return readFileSync(`/proc/${pid}/${name}`, 'utf8');
  } catch {
    return undefined;
  }
}

function isRunning(pid: number): boolean {
  return parentOf(pid) !== undefined;
}

function end(pid: number): void {
  try {
    process.kill(pid, 'SIGKILL');
  } catch {
    // It ended by itself between the listing and now.
  }
}
