import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import path from 'node:path';
import { unzipSync } from 'fflate';

/**
 * VS Code as a page without a server behind it: the files of code-server's own VS Code, and nothing but files. What code-server put in there,
 * that a remote machine is always there, is taken out on the way.
 */

const repository = path.resolve(import.meta.dirname, '../../..');
const code = path.join(repository, '.cache/editors/code-server/node_modules/code-server/lib/vscode');
const workbench = 'out/vs/code/browser/workbench/workbench';

export interface StaticEditor {
  readonly address: string;
  stop(): Promise<void>;
}

/** A file of an extension, by its path below; undefined where there is none. */
export type ExtensionFiles = (below: string) => Uint8Array | undefined;

export interface StaticOptions {
  /** By the name under which they are handed out. */
  readonly extensions: Readonly<Record<string, ExtensionFiles>>;
  /** The folder whose files the virtual folder holds. */
  readonly folder: string;
  readonly settings: Readonly<Record<string, unknown>>;
}

interface Answer {
  readonly type: string;
  readonly body: string | Uint8Array;
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.cjs': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
};

export async function startStaticEditor(options: StaticOptions): Promise<StaticEditor> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://127.0.0.1');
    const answer = answerTo(decodeURIComponent(pathname), options, request.headers.host ?? '');
    if (answer === undefined) response.writeHead(404).end();
    else response.writeHead(200, { 'content-type': answer.type }).end(answer.body);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('no free port');
  return {
    address: `http://127.0.0.1:${address.port}`,
    stop: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}

function answerTo(asked: string, options: StaticOptions, host: string): Answer | undefined {
  if (asked === '/') return { type: 'text/html', body: startPage(options, host) };
  if (asked === '/folder.json') return { type: 'application/json', body: JSON.stringify(filesOf(options.folder)) };
  if (asked === `/code/${workbench}.js`) return { type: 'text/javascript', body: withoutRemote() };
  const [, first = '', name = '', ...rest] = asked.split('/');
  const files = first === 'code' ? inFolder(code) : first === 'extensions' ? options.extensions[name] : undefined;
  const below = first === 'code' ? [name, ...rest] : rest;
  const body = files?.(below.join('/'));
  return body === undefined ? undefined : { type: types[path.extname(asked)] ?? 'application/octet-stream', body };
}

/** The extension in a package that VS Code installs. */
export function inPackage(vsix: string): ExtensionFiles {
  const packed = unzipSync(readFileSync(vsix));
  return (below) => packed[`extension/${below}`];
}

export function inFolder(folder: string): ExtensionFiles {
  return (below) => {
    const file = path.join(folder, below);
    return file.startsWith(`${folder}/`) && existsSync(file) && statSync(file).isFile()
      ? readFileSync(file)
      : undefined;
  };
}

/** Where code-server goes its own way: the machine that is always there, and where the user's own files lie. */
const ownWays: readonly (readonly [text: string, instead: string])[] = [
  ['remoteAuthority:location.host', 'remoteAuthority:undefined'],
  ['this.userDataPath).with({scheme:K.vscodeRemote})', 'this.userDataPath).with({scheme:K.vscodeUserData})'],
];

function withoutRemote(): string {
  let text = readFileSync(path.join(code, `${workbench}.js`), 'utf8');
  for (const [way, instead] of ownWays) {
    if (!text.includes(way)) throw new Error(`this code-server has no "${way}": see how it starts its workbench`);
    text = text.replace(way, instead);
  }
  return text;
}

function startPage({ extensions, folder, settings }: StaticOptions, host: string): string {
  const configuration = {
    folderUri: { scheme: 'virtual', authority: '', path: `/${path.basename(folder)}` },
    additionalBuiltinExtensions: Object.keys(extensions).map((name) => ({
      scheme: 'http',
      authority: host,
      path: `/extensions/${name}`,
    })),
    configurationDefaults: settings,
    userDataPath: '/',
    isEnabledFileDownloads: false,
    isEnabledFileUploads: false,
    isEnabledCoderGettingStarted: false,
    productConfiguration: {
      enableTelemetry: false,
      webviewContentExternalBaseUrlTemplate: `http://${host}/code/out/vs/workbench/contrib/webview/browser/pre/`,
    },
  };
  const put: Readonly<Record<string, string>> = {
    WORKBENCH_WEB_CONFIGURATION: JSON.stringify(configuration).replaceAll('&', '&amp;').replaceAll('"', '&quot;'),
    WORKBENCH_AUTH_SESSION: '',
    WORKBENCH_WEB_BASE_URL: '/code',
    WORKBENCH_NLS_FALLBACK_URL: '/code/out/nls.messages.js',
    WORKBENCH_NLS_URL: '/code/out/nls.messages.js',
    VS_BASE: '/code',
    BASE: '/code',
  };
  const page = readFileSync(path.join(code, `${workbench}.html`), 'utf8');
  return page.replaceAll(/\{\{(\w+)\}\}/g, (_, name: string) => put[name] ?? '');
}

function filesOf(folder: string): Readonly<Record<string, string>> {
  const files: Record<string, string> = {};
  for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' })) {
    if (name.endsWith('.ifu.yaml'))
      files[`/${path.basename(folder)}/${name}`] = readFileSync(path.join(folder, name), 'utf8');
  }
  return files;
}
