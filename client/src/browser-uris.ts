import { Uri } from 'vscode';

/** Schemes that name no place in a folder: the server gets them as they are. */
const apart: ReadonlySet<string> = new Set(['file', 'untitled', 'traywright-rule', 'http', 'https', 'command']);

/** Stands where the editor's URI has no authority. */
const none = '-';

/**
 * The server knows files by `file:` URIs. In a browser folders are of other schemes; each becomes a folder of its own, named after scheme
 * and authority: `vscode-vfs://github/owner/x` is `file:///vscode-vfs/github/owner/x` to the server.
 */
export function toServer(uri: Uri): string {
  if (apart.has(uri.scheme)) return uri.toString();
  const authority = uri.authority === '' ? none : encodeURIComponent(uri.authority);
  return uri.with({ scheme: 'file', authority: '', path: `/${uri.scheme}/${authority}${uri.path}` }).toString();
}

export function fromServer(text: string): Uri {
  const uri = Uri.parse(text);
  const [, scheme, authority, path] = /^\/([a-z][a-z0-9+.-]*)\/([^/]+)(\/.*)$/s.exec(uri.path) ?? [];
  if (uri.scheme !== 'file' || scheme === undefined || authority === undefined || path === undefined) return uri;
  return uri.with({ scheme, authority: authority === none ? '' : decodeURIComponent(authority), path });
}
