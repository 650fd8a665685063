import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { promisify } from 'node:util';
import { until } from '../wait.ts';

/**
 * Drives Neovim without a screen, with its own language client attached to a server over stdio (client.lua is the inside
 * part). Knows the protocol's words; must not know what our server checks.
 */

const run = promisify(execFile);

export interface NeovimOptions {
  /** The folder of the library; it is not copied. */
  readonly folder: string;
  /** The server's command and its arguments, which must make it speak over stdin and stdout. */
  readonly command: readonly string[];
  readonly languageId: string;
}

/** Zero-based, in UTF-16 units, as the protocol counts. */
export interface Position {
  readonly line: number;
  readonly character: number;
}

export interface Range {
  readonly start: Position;
  readonly end: Position;
}

export interface Diagnostic {
  readonly range: Range;
  readonly severity: number;
  readonly message: string;
  readonly code?: string | number;
  readonly source?: string;
  readonly relatedInformation?: readonly { readonly location: Location; readonly message: string }[];
}

export interface Location {
  readonly uri: string;
  readonly range: Range;
}

export interface ShownDiagnostic {
  readonly file: string;
  readonly line: number;
  /** In bytes of the line, as Neovim counts. */
  readonly column: number;
  readonly severity: number;
  readonly message: string;
}

/** Diagnostics by path below the folder, with forward slashes. */
export type DiagnosticsByFile = Readonly<Record<string, readonly Diagnostic[]>>;

export class Neovim {
  readonly #process: ChildProcess;
  readonly #socket: string;
  readonly #home: string;
  readonly #folder: string;
  readonly #output: string[] = [];

  private constructor(process: ChildProcess, socket: string, home: string, folder: string) {
    this.#process = process;
    this.#socket = socket;
    this.#home = home;
    this.#folder = folder;
    for (const stream of [process.stdout, process.stderr]) {
      stream?.on('data', (chunk: Buffer) => this.#output.push(chunk.toString()));
    }
  }

  /** Starts Neovim in the folder and the server with it. The server is asked only once a file is open. */
  static async start(options: NeovimOptions): Promise<Neovim> {
    const home = mkdtempSync(path.join(tmpdir(), 'neovim-'));
    const socket = path.join(home, 'socket');
    const script = path.join(import.meta.dirname, 'client.lua');
    const startArguments = ['--headless', '-u', 'NONE', '-i', 'NONE', '-n', '--listen', socket, '-S', script];
    const child = spawn('nvim', startArguments, {
      cwd: options.folder,
      env: { ...process.env, HOME: home, XDG_CACHE_HOME: home, XDG_STATE_HOME: home, XDG_DATA_HOME: home },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    const neovim = new Neovim(child, socket, home, options.folder);
    try {
      await neovim.#begin(options);
    } catch (error) {
      await neovim.stop();
      throw error;
    }
    return neovim;
  }

  /** Opens a file by its path below the folder and attaches the server to it. */
  async open(file: string): Promise<void> {
    await this.#ask('open', path.join(this.#folder, file));
  }

  /** All that the server published so far, and which it has not taken back. */
  async diagnostics(): Promise<DiagnosticsByFile> {
    const sent = (await this.#ask('sent')) as { uri: string; diagnostics: Diagnostic[] }[];
    const standing = sent.filter(({ diagnostics }) => diagnostics.length > 0);
    return Object.fromEntries(standing.map(({ uri, diagnostics }) => [this.#fileOf(uri), diagnostics]));
  }

  /** Asks for the diagnostics until they fit, and gives them. `what` says what was waited for. */
  async diagnosticsWhen(what: string, satisfied: (found: DiagnosticsByFile) => boolean): Promise<DiagnosticsByFile> {
    let found: DiagnosticsByFile = {};
    return until(
      what,
      async () => {
        found = await this.diagnostics();
        return satisfied(found) ? found : undefined;
      },
      { describe: async () => `${JSON.stringify(found, undefined, 1)}\n${await this.#whatHappened()}` },
    );
  }

  /** What Neovim itself shows to its user. */
  async shown(): Promise<ShownDiagnostic[]> {
    const shown = (await this.#ask('shown')) as (ShownDiagnostic & { uri: string })[];
    return shown.map(({ uri, line, column, severity, message }) => ({
      file: this.#fileOf(uri),
      line,
      column,
      severity,
      message,
    }));
  }

  /** Messages that the server asked to show to the user. */
  async messages(): Promise<{ type: number; message: string }[]> {
    return (await this.#ask('said')) as { type: number; message: string }[];
  }

  /** Replaces a range of the open file, which tells the server at once. */
  async change(range: Range, newText: string): Promise<void> {
    const { start, end } = range;
    await this.#ask('change', { ...start, endLine: end.line, endCharacter: end.character, newText });
  }

  async undo(): Promise<void> {
    await this.#ask('undo');
  }

  async save(): Promise<void> {
    await this.#ask('save');
  }

  async lines(): Promise<string[]> {
    return (await this.#ask('lines')) as string[];
  }

  /** The texts of all loaded files by path below the folder. */
  async buffers(): Promise<Record<string, string>> {
    const buffers = (await this.#ask('buffers')) as { uri: string; text: string }[];
    return Object.fromEntries(buffers.map(({ uri, text }) => [this.#fileOf(uri), text]));
  }

  /** Any request of the protocol for the open file; what the server refuses is thrown with its words. */
  async request(method: string, params: Readonly<Record<string, unknown>>): Promise<unknown> {
    const answer = (await this.#ask('request', { method, params, within: 20_000 })) as {
      result?: unknown;
      error?: { message: string };
    };
    if (answer.error !== undefined) {
      throw new Error(`${method}: ${answer.error.message}\n${await this.#whatHappened()}`);
    }
    return answer.result ?? undefined;
  }

  /** The hover's text, or undefined when there is none. */
  async hover(position: Position): Promise<string | undefined> {
    const hover = (await this.request('textDocument/hover', { position })) as { contents: unknown } | undefined;
    return hover === undefined ? undefined : wordsOf(hover.contents);
  }

  async completion(position: Position): Promise<{ label: string; [field: string]: unknown }[]> {
    const offered = await this.request('textDocument/completion', { position });
    const items = Array.isArray(offered) ? offered : ((offered as { items?: unknown } | undefined)?.items ?? []);
    return items as { label: string }[];
  }

  async definition(position: Position): Promise<{ file: string; range: Range }[]> {
    const found = (await this.request('textDocument/definition', { position })) ?? [];
    const places = (Array.isArray(found) ? found : [found]) as (Location | { targetUri: string; targetRange: Range })[];
    return places.map((place) =>
      'uri' in place
        ? { file: this.#fileOf(place.uri), range: place.range }
        : { file: this.#fileOf(place.targetUri), range: place.targetRange },
    );
  }

  /** Renames and applies the edits to Neovim's buffers; gives them as the server sent them. */
  async rename(position: Position, newName: string): Promise<unknown> {
    const edit = await this.request('textDocument/rename', { position, newName });
    if (edit !== undefined) {
      await this.#ask('apply', edit);
    }
    return edit;
  }

  async codeActions(range: Range, diagnostics: readonly Diagnostic[]): Promise<{ title: string; edit?: unknown }[]> {
    const offered = await this.request('textDocument/codeAction', { range, context: { diagnostics } });
    return (offered ?? []) as { title: string; edit?: unknown }[];
  }

  /** Applies the edit of a code action or of anything else to Neovim's buffers. */
  async apply(edit: unknown): Promise<void> {
    await this.#ask('apply', edit);
  }

  async stop(): Promise<void> {
    if (this.#process.exitCode === null) {
      // Asked to leave, so that it ends its server in the protocol's way; a Neovim that cannot answer is ended.
      await run('nvim', ['--server', this.#socket, '--remote-send', '<C-\\><C-N>:qall!<CR>']).catch(() => undefined);
      await until('Neovim to end', () => this.#process.exitCode ?? undefined, { within: 8_000 }).catch(() =>
        this.#process.kill('SIGKILL'),
      );
    }
    rmSync(this.#home, { recursive: true, force: true, maxRetries: 5 });
  }

  async #begin(options: NeovimOptions): Promise<void> {
    await until('Neovim to listen', () => (existsSync(this.#socket) ? true : undefined), {
      describe: () => this.#output.join(''),
    });
    const { command, folder, languageId } = options;
    const started = await this.#ask('start', { command, root: folder, languageId });
    if (started !== true) {
      throw new Error(`Neovim could not start ${command.join(' ')}:\n${this.#output.join('')}`);
    }
    await until(
      'the server to be ready',
      async () => {
        const { ready, exited } = await this.#state();
        if (exited !== null) {
          throw new Error(`The server ended at its start.\n${await this.#whatHappened()}`);
        }
        return ready ? true : undefined;
      },
      { describe: () => this.#whatHappened() },
    );
  }

  async #state(): Promise<{ ready: boolean; exited: unknown }> {
    return (await this.#ask('state')) as { ready: boolean; exited: unknown };
  }

  async #whatHappened(): Promise<string> {
    const { ready, exited } = await this.#state();
    const log = path.join(this.#home, 'nvim/lsp.log');
    const lines = existsSync(log) ? readFileSync(log, 'utf8').slice(-3_000) : '';
    return `ready: ${ready}, ended: ${JSON.stringify(exited)}\n${this.#output.join('')}\n${lines}`;
  }

  /** Calls a function of client.lua inside Neovim. */
  async #ask(name: string, argument: unknown = ''): Promise<unknown> {
    const question = path.join(this.#home, 'question.json');
    const answer = path.join(this.#home, 'answer.json');
    writeFileSync(question, JSON.stringify(argument));
    rmSync(answer, { force: true });
    // Through files, since Neovim shortens what it prints and a command line has a longest length.
    const expression = `luaeval('Driver.call(_A[1], _A[2], _A[3])', ['${name}', '${question}', '${answer}'])`;
    const printed = await run('nvim', ['--server', this.#socket, '--remote-expr', expression]);
    if (!existsSync(answer)) {
      throw new Error(`Neovim's ${name} did not answer: ${printed.stdout}${printed.stderr}\n${this.#output.join('')}`);
    }
    return JSON.parse(readFileSync(answer, 'utf8'));
  }

  #fileOf(uri: string): string {
    const root = `${pathToFileURL(this.#folder).href}/`;
    return decodeURIComponent(uri.startsWith(root) ? uri.slice(root.length) : uri);
  }
}

/** The three forms in which the protocol allows a hover's words. */
function wordsOf(contents: unknown): string {
  if (typeof contents === 'string') {
    return contents;
  }
  if (Array.isArray(contents)) {
    return contents.map(wordsOf).join('\n\n');
  }
  return (contents as { value: string }).value;
}
