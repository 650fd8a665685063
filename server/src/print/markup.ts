import type { Brand } from '../base/brand.ts';
import { escapedForHtml } from '../base/printable.ts';
import type { Line } from './piece.ts';

/** HTML or SVG that only the functions of this file make: everything that is not markup has been escaped. */
export type Markup = Brand<string, 'Markup'>;

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Elements that have no content and no end. */
const voidElements: ReadonlySet<string> = new Set(['meta', 'br', 'hr', 'img']);

/** An element with its attributes; texts among the children are escaped. Names come from code, never from a file. */
export function element(name: string, attributes: Attributes, ...children: readonly (Markup | Markup[])[]): Markup {
  const start = `<${name}${attributesText(attributes)}>`;
  return (voidElements.has(name) ? start : `${start}${children.flat().join('')}</${name}>`) as Markup;
}

function attributesText(attributes: Attributes): string {
  let text = '';
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined) text += ` ${name}="${escapedForHtml(String(value))}"`;
  }
  return text;
}

/** Words of people and files: text, never markup. */
export function text(words: string): Markup {
  return escapedForHtml(words) as Markup;
}

/** A line in which every value keeps its origin: `data-from` lists the fields, separated by spaces. */
export function lineMarkup(line: Line): Markup {
  return line.map(pieceMarkup).join('') as Markup;
}

function pieceMarkup(piece: Line[number]): Markup {
  if (typeof piece === 'string') return text(piece);
  if ('told' in piece) return element('span', { 'data-told': piece.told }, text(piece.text));
  const { from, how } = piece;
  return element(
    'span',
    {
      class: isShort(piece.text) ? 'v n' : 'v',
      'data-from': from.length === 0 ? undefined : from.join(' '),
      'data-how': how,
    },
    text(piece.text),
  );
}

/** `50 mL` and `PV134-4-50` stay on one line of the paper: a number never stands apart from its unit, and a name is not cut. */
function isShort(words: string): boolean {
  return words.length <= 16 && (/^\d/.test(words) || !words.includes(' '));
}

export function together(...parts: readonly Markup[]): Markup {
  return parts.filter((part) => part !== '').join('\n') as Markup;
}

export const nothing = '' as Markup;

/** What a whole file is made of. `style` and `facts` come from code and stamps. */
export interface Sheet {
  readonly language: string;
  readonly title: string;
  readonly style: string;
  /** Facts that a program can read back from the file's head, such as the stamp. */
  readonly facts: Readonly<Record<string, string>>;
  readonly body: Markup;
  readonly bodyClass: string;
}

/** A complete page: self-contained, without script, and forbidden to load anything. */
export function sheetHtml({ language, title, style, facts, body, bodyClass }: Sheet): string {
  const metas = Object.entries(facts).map(([name, content]) => element('meta', { name, content }));
  return `<!DOCTYPE html>
<html lang="${escapedForHtml(language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:">
${metas.join('\n')}
<title>${text(title)}</title>
<style>
${style}
</style>
</head>
<body class="${escapedForHtml(bodyClass)}">
${body}
</body>
</html>
`;
}
