/*
 * A strict reader of printed pages for tests that look into them, written apart from the code that makes them: every element is closed in
 * order, every attribute quoted, every entity one of five. It throws at the first fault. Whether pages are valid HTML is asked of a
 * validator, in a test of its own.
 */

export interface HtmlElement {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: (HtmlElement | string)[];
  readonly parent?: HtmlElement;
}

const voids = new Set(['meta', 'br', 'hr', 'img']);
const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

export function readHtml(html: string): HtmlElement {
  const start = '<!DOCTYPE html>\n';
  if (!html.startsWith(start)) throw new Error('no doctype');
  const root: HtmlElement = { name: '', attributes: new Map(), children: [] };
  let open: HtmlElement = root;
  let at = start.length;
  while (at < html.length) {
    if (html[at] !== '<') {
      const end = html.indexOf('<', at);
      const stop = end === -1 ? html.length : end;
      const raw = html.slice(at, stop);
      open.children.push(open.name === 'style' ? raw : decoded(raw));
      at = stop;
    } else if (html.startsWith('</', at)) {
      const end = html.indexOf('>', at);
      if (html.slice(at + 2, end) !== open.name) throw new Error(`</${html.slice(at + 2, end)}> closes <${open.name}>`);
      open = open.parent ?? root;
      at = end + 1;
    } else {
      const tag = /^<([a-z][a-z0-9]*)((?: [A-Za-z][A-Za-z0-9:-]*="[^"<]*")*)>/.exec(html.slice(at, at + 20_000));
      if (tag === null) throw new Error(`not a tag: ${html.slice(at, at + 80)}`);
      const element: HtmlElement = {
        name: tag[1] ?? '',
        attributes: attributesOf(tag[2] ?? ''),
        children: [],
        parent: open,
      };
      open.children.push(element);
      if (!voids.has(element.name)) open = element;
      at += tag[0].length;
    }
  }
  if (open !== root) throw new Error(`<${open.name}> stays open`);
  return root;
}

function attributesOf(text: string): ReadonlyMap<string, string> {
  const attributes = new Map<string, string>();
  for (const [, name = '', value = ''] of text.matchAll(/ ([A-Za-z][A-Za-z0-9:-]*)="([^"]*)"/g)) {
    if (attributes.has(name)) throw new Error(`attribute ${name} twice`);
    attributes.set(name, decoded(value));
  }
  return attributes;
}

function decoded(text: string): string {
  return text.replace(/&([^;]{0,8};)?/g, (all, name: string | undefined) => {
    const known = name === undefined ? undefined : entities[name.slice(0, -1)];
    if (known === undefined) throw new Error(`not an entity: ${all}`);
    return known;
  });
}

/** Every element below, outermost first. */
export function* elementsIn(element: HtmlElement): Generator<HtmlElement> {
  for (const child of element.children) {
    if (typeof child === 'string') continue;
    yield child;
    yield* elementsIn(child);
  }
}

/** Every text with the element it stands in. */
export function* textsIn(element: HtmlElement): Generator<{ readonly text: string; readonly in: HtmlElement }> {
  for (const child of element.children) {
    if (typeof child === 'string') yield { text: child, in: element };
    else if (child.name !== 'style') yield* textsIn(child);
  }
}

export function textOf(element: HtmlElement): string {
  return [...textsIn(element)].map(({ text }) => text).join('');
}

/** The nearest element around (or at) it that satisfies. */
export function closest(element: HtmlElement, test: (one: HtmlElement) => boolean): HtmlElement | undefined {
  let at: HtmlElement | undefined = element;
  while (at !== undefined && !test(at)) at = at.parent;
  return at;
}

export function byClass(element: HtmlElement, name: string): readonly HtmlElement[] {
  return [...elementsIn(element)].filter((one) => one.attributes.get('class')?.split(' ').includes(name));
}

/** Faults that a printed page may never have: script, handlers, anything from elsewhere, ids twice. */
export function pageFaults(root: HtmlElement): readonly string[] {
  const faults: string[] = [];
  const ids = new Set<string>();
  for (const { name, attributes } of elementsIn(root)) {
    if (['script', 'iframe', 'object', 'embed', 'link', 'form', 'base'].includes(name)) faults.push(`<${name}>`);
    for (const [key, value] of attributes) {
      if (key.startsWith('on')) faults.push(`${key} on <${name}>`);
      if (
        ['src', 'href', 'action', 'data', 'style'].includes(key) &&
        !value.startsWith('#') &&
        !value.startsWith('data:image/')
      )
        faults.push(`${key}="${value}"`);
      if (key === 'id' && ids.has(value)) faults.push(`id ${value} twice`);
      if (key === 'id') ids.add(value);
    }
  }
  const csp = [...elementsIn(root)].some(
    ({ name, attributes }) => name === 'meta' && attributes.get('content')?.startsWith("default-src 'none'"),
  );
  if (!csp) faults.push('no content security policy');
  return faults;
}
