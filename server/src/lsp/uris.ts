/** Characters that stand for themselves in the URIs of editors; every other one is percent-encoded, the colon of a drive too. */
const plain = /[^A-Za-z0-9\-._~/]/gu;
const longestUri = 8192;

/**
 * The absolute path, `/` between parts, that a `file:` URI names: `/a/b`, `c:/a/b`, `//host/share/b`. Undefined for every other scheme
 * and for anything odd (dots as parts, NUL, queries, bad encoding): such a URI never leads to the disk.
 */
export function pathOfUri(uri: string): string | undefined {
  if (uri.length > longestUri || !/^file:\/\//i.test(uri) || /[?#\\]/.test(uri)) return undefined;
  const rest = decoded(uri.slice('file://'.length));
  if (rest === undefined || rest.includes('\0') || rest.includes('\\')) return undefined;
  const path = rest.startsWith('/') ? withSmallDrive(rest) : `//${rest}`;
  const parts = path.replace(/^\/{1,2}/, '').split('/');
  return parts.some((part) => part === '.' || part === '..')
    ? undefined
    : path.length > 1
      ? path.replace(/\/$/, '')
      : path;
}

function decoded(text: string): string | undefined {
  try {
    return decodeURIComponent(text);
  } catch {
    return undefined;
  }
}

/** `/C:/x` and `/c:/x` are one file: `c:/x`. */
function withSmallDrive(path: string): string {
  const drive = /^\/([A-Za-z]):(?=\/|$)/.exec(path)?.[1];
  return drive === undefined ? path : `${drive.toLowerCase()}:${path.slice(3)}`;
}

/** The `file:` URI of an absolute path, spelled as VS Code spells it. */
export function uriOfPath(path: string): string {
  const slashed = path.replaceAll('\\', '/');
  const encoded = slashed.replace(plain, (character) => encode(character));
  if (slashed.startsWith('//')) return `file:${encoded}`;
  return slashed.startsWith('/') ? `file://${encoded}` : `file:///${encoded}`;
}

function encode(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  if (code >= 0xd800 && code <= 0xdfff) return '%EF%BF%BD';
  if (code >= 0x80) return encodeURIComponent(character);
  return `%${code.toString(16).toUpperCase().padStart(2, '0')}`;
}

/** One spelling for each file, whatever the client's: by it files are known here. URIs that are no file stay as they are. */
export function addressOf(uri: string): string {
  const path = pathOfUri(uri);
  return path === undefined ? uri : uriOfPath(path);
}

/** True for the folder itself and everything below it. Both are paths as `pathOfUri` gives them. */
export function isWithin(folder: string, path: string): boolean {
  return path === folder || path.startsWith(folder.endsWith('/') ? folder : `${folder}/`);
}
