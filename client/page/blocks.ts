import type {
  BarRow,
  Bars,
  Cell,
  ListBlock,
  SheetBlock,
  SheetItem,
  Stretch,
  TableBlock,
} from '../../server/src/panel/set-sheet.ts';
import { type Drawing, linked, make, signOf, wordOf } from './elements.ts';

export function drawBlock(block: SheetBlock, drawing: Drawing): HTMLElement {
  switch (block.is) {
    case 'text':
      return make('p', '', block.text);
    case 'table':
      return drawTable(block, drawing);
    case 'list':
      return drawList(block, drawing);
    case 'bars':
      return make('div', '', ...block.bars.map((bars) => drawBars(bars, drawing)));
  }
}

/** Roles are named outright: a narrow page sets cells below each other, and a browser then forgets that it is a table. */
function drawTable({ head, rows }: TableBlock, drawing: Drawing): HTMLElement {
  const names = head.map((name) => {
    const cell = withRole('columnheader', make('th', '', name));
    cell.scope = 'col';
    return cell;
  });
  const body = rows.map((row) =>
    withRole(
      'row',
      make('tr', '', ...row.map((cells, index) => withRole(roleIn(index), drawCell(cells, head[index], drawing)))),
    ),
  );
  const first = withRole('rowgroup', make('thead', '', withRole('row', make('tr', '', ...names))));
  return withRole('table', make('table', 'cells', first, withRole('rowgroup', make('tbody', '', ...body))));
}

/** The first column names the row. */
function roleIn(column: number): string {
  return column === 0 ? 'rowheader' : 'cell';
}

function withRole<Element extends HTMLElement>(role: string, element: Element): Element {
  element.setAttribute('role', role);
  return element;
}

/** The column's name stands in each cell too, for when a narrow page sets cells below each other. */
function drawCell(cells: readonly Cell[], column: string | undefined, drawing: Drawing): HTMLElement {
  const parts = cells.map((cell) =>
    make('div', 'marked', ...(cell.mark === undefined ? [] : [signOf(cell.mark)]), linked(cell, drawing)),
  );
  if (cells.every(({ text }) => text === '')) return make('td', 'empty');
  const cell = make('td', '', ...parts);
  cell.dataset.column = column ?? '';
  return cell;
}

function drawList({ ordered, items }: ListBlock, drawing: Drawing): HTMLElement {
  return make(ordered ? 'ol' : 'ul', '', ...items.map((item) => drawItem(item, drawing)));
}

function drawItem(item: SheetItem, drawing: Drawing): HTMLElement {
  const words = [...(item.mark === undefined ? [] : [signOf(item.mark)]), linked(item, drawing)];
  const line = make('li', '', make('div', 'marked', ...words));
  if (item.quote !== undefined) {
    const from = item.from === undefined ? [] : [make('footer', '', item.from)];
    line.append(make('blockquote', '', make('p', '', `“${item.quote}”`), ...from));
  }
  for (const detail of item.details) line.append(make('p', 'detail', detail));
  return line;
}

/** Each row says in words what its drawing shows; the drawing itself is hidden from a screen reader. */
function drawBars(bars: Bars, drawing: Drawing): HTMLElement {
  const title = linked({ text: bars.title, ...(bars.place !== undefined && { place: bars.place }) }, drawing);
  const caption = make('figcaption', '', title, make('span', '', ` · required: ${bars.required}`));
  return make('figure', '', caption, make('ul', 'bars', ...bars.rows.map((row) => drawBar(row, bars.band))));
}

function drawBar({ name, given, gap, mark, stretch }: BarRow, band: Stretch | undefined): HTMLElement {
  const track = make('div', 'track');
  track.setAttribute('aria-hidden', 'true');
  if (band !== undefined) track.append(stretched('band', band));
  if (stretch !== undefined) track.append(stretched(`given ${mark}`, stretch));
  const words = `${given === '' ? 'nothing known' : given}${gap === '' ? '' : `, ${gap}`} (${wordOf(mark)})`;
  const sign = signOf(mark);
  sign.querySelector('.spoken')?.remove();
  return make('li', '', make('span', 'name', `${name} `), track, make('span', 'said', sign, words));
}

function stretched(looks: string, { from, to }: Stretch): HTMLElement {
  const element = make('div', looks);
  element.style.left = `${from * 100}%`;
  element.style.width = `${Math.max(0, to - from) * 100}%`;
  return element;
}
