/** What a printed card says about itself in its head. */
export interface CardMark {
  readonly set: string;
  readonly stamp: string;
  readonly day: string;
}

/** The marks stand in the first lines; the rest of a page is never looked through. */
const headLength = 4000;

/** The mark of a page that this program printed as a card; undefined for any other text. */
export function cardMark(html: string): CardMark | undefined {
  const head = html.slice(0, headLength);
  const [set, stamp, day] = ['card-set', 'card-stamp', 'card-day'].map((name) => contentOf(head, name));
  return set === undefined || stamp === undefined || day === undefined ? undefined : { set, stamp, day };
}

function contentOf(head: string, name: string): string | undefined {
  const start = `<meta name="${name}" content="`;
  const at = head.indexOf(start);
  const end = at === -1 ? -1 : head.indexOf('"', at + start.length);
  return end === -1 ? undefined : unescaped(head.slice(at + start.length, end));
}

function unescaped(text: string): string {
  return text
    .replaceAll('&#39;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll('&gt;', '>')
    .replaceAll('&lt;', '<')
    .replaceAll('&amp;', '&');
}
