/** An element of an XML document, in document order. */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
}

const token = /<\?xml [^<>]*\?>|<(\/?)([A-Za-z]+)((?: [A-Za-z]+="[^"<]*")*)(\/?)>|([^<]+)/y;

/** Reads the small part of XML that reports use, and throws where the text is not well-formed. */
export function readXml(text: string): readonly XmlElement[] {
  const elements: XmlElement[] = [];
  const open: string[] = [];
  token.lastIndex = 0;
  while (token.lastIndex < text.length) {
    const at = token.lastIndex;
    const parts = token.exec(text);
    if (parts === null) throw new Error(`not well-formed at ${at}: ${text.slice(at, at + 60)}`);
    const [, end, name, attributes = '', alone, words] = parts;
    if (words !== undefined) unescaped(words);
    if (name === undefined) continue;
    if (end === '/') {
      if (open.pop() !== name) throw new Error(`</${name}> at ${at} ends nothing`);
      continue;
    }
    elements.push({ name, attributes: attributesIn(attributes) });
    if (alone !== '/') open.push(name);
  }
  if (open.length > 0) throw new Error(`not ended: ${open.join(', ')}`);
  return elements;
}

function attributesIn(text: string): Readonly<Record<string, string>> {
  return Object.fromEntries(
    [...text.matchAll(/ ([A-Za-z]+)="([^"]*)"/g)].map(([, name, value]) => [name, unescaped(value ?? '')]),
  );
}

const named: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

function unescaped(text: string): string {
  return text.replace(/&(?:([a-z]+);)?/g, (whole, name: string | undefined) => {
    const character = name === undefined ? undefined : named[name];
    if (character === undefined) throw new Error(`not an entity: ${whole}`);
    return character;
  });
}
