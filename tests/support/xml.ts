/** An element of an XML document, in document order. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  /** The words directly in it. */
  readonly words: string;
}

interface OpenElement extends XmlElement {
  readonly children: XmlElement[];
  words: string;
}

const token = /<\?xml [^<>]*\?>|<(\/?)([A-Za-z][A-Za-z0-9-]*)((?: [A-Za-z][A-Za-z:-]*="[^"<]*")*)(\/?)>|([^<]+)/y;

/** Reads the small part of XML that reports and packages use, and throws where the text is not well-formed. */
export function readXml(text: string): readonly XmlElement[] {
  const elements: OpenElement[] = [];
  const open: OpenElement[] = [];
  token.lastIndex = 0;
  while (token.lastIndex < text.length) {
    const at = token.lastIndex;
    const parts = token.exec(text);
    if (parts === null) throw new Error(`not well-formed at ${at}: ${text.slice(at, at + 60)}`);
    const [, end, name, attributes = '', alone, words] = parts;
    const around = open.at(-1);
    if (words !== undefined && around !== undefined) around.words += unescaped(words);
    if (name === undefined) continue;
    if (end === '/') {
      if (open.pop()?.name !== name) throw new Error(`</${name}> at ${at} ends nothing`);
      continue;
    }
    const element = { name, attributes: attributesIn(attributes), children: [], words: '' };
    elements.push(element);
    around?.children.push(element);
    if (alone !== '/') open.push(element);
  }
  if (open.length > 0) throw new Error(`not ended: ${open.map(({ name }) => name).join(', ')}`);
  return elements;
}

function attributesIn(text: string): Readonly<Record<string, string>> {
  return Object.fromEntries(
    [...text.matchAll(/ ([A-Za-z][A-Za-z:-]*)="([^"]*)"/g)].map(([, name, value]) => [name, unescaped(value ?? '')]),
  );
}

const named: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", '#39': "'" };

function unescaped(text: string): string {
  return text.replace(/&(?:([a-z]+|#39);)?/g, (whole, name: string | undefined) => {
    const character = name === undefined ? undefined : named[name];
    if (character === undefined) throw new Error(`not an entity: ${whole}`);
    return character;
  });
}
