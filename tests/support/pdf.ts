/** A page of an invented PDF: its lines of text, each set on its own line, or none for a page that is only a picture. */
export interface PdfPage {
  readonly lines: readonly string[];
  /** A stream compressed by deflate in place of lines: what it would draw. */
  readonly deflated?: Buffer;
}

export interface PdfExtras {
  /** Numbering of the pages, as a dictionary: `/St 11 /S /D`. */
  readonly labels?: string;
  /** Further entries of the catalog, such as an action at opening. */
  readonly catalog?: string;
  /** Further entries of the trailer. */
  readonly trailer?: string;
}

/** A small, complete PDF (1.4, one built-in font, nothing compressed): the same bytes for the same pages. */
export function pdfOf(pages: readonly PdfPage[], extras: PdfExtras = {}): Uint8Array<ArrayBuffer> {
  const labels = extras.labels === undefined ? '' : `/PageLabels << /Nums [0 << ${extras.labels} >>] >>`;
  const kids = pages.map((_, index) => `${4 + index * 2} 0 R`).join(' ');
  const objects = [
    `<< /Type /Catalog /Pages 2 0 R ${labels} ${extras.catalog ?? ''} >>`,
    `<< /Type /Pages /Kids [${kids}] /Count ${pages.length} >>`,
    '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>',
    ...pages.flatMap((page, index) => pageObjects(page, index)),
  ];
  return assembled(objects, extras.trailer ?? '');
}

function pageObjects({ lines, deflated }: PdfPage, index: number): readonly string[] {
  const content =
    deflated?.toString('latin1') ?? (lines.length === 0 ? '0.5 g 100 100 300 400 re f' : contentOf(lines));
  const filter = deflated === undefined ? '' : '/Filter /FlateDecode';
  return [
    `<< /Type /Page /Parent 2 0 R /MediaBox [0 0 595 842] /Resources << /Font << /F1 3 0 R >> >> /Contents ${5 + index * 2} 0 R >>`,
    `<< /Length ${content.length} ${filter} >>\nstream\n${content}\nendstream`,
  ];
}

function contentOf(lines: readonly string[]): string {
  const shown = lines.map((line) => `(${line.replace(/[\\()]/g, '\\$&')}) Tj T*`);
  return `BT /F1 11 Tf 14 TL 60 780 Td\n${shown.join('\n')}\nET`;
}

/** Each character one byte: the font's encoding is that of Latin letters. */
function assembled(objects: readonly string[], trailer: string): Uint8Array<ArrayBuffer> {
  let text = '%PDF-1.4\n';
  const offsets: number[] = [];
  for (const [index, object] of objects.entries()) {
    offsets.push(text.length);
    text += `${index + 1} 0 obj\n${object}\nendobj\n`;
  }
  const rows = offsets.map((offset) => `${String(offset).padStart(10, '0')} 00000 n \n`);
  const table = `xref\n0 ${objects.length + 1}\n0000000000 65535 f \n${rows.join('')}`;
  text += `${table}trailer\n<< /Size ${objects.length + 1} /Root 1 0 R ${trailer} >>\nstartxref\n${text.length}\n%%EOF\n`;
  return new Uint8Array(Buffer.from(text, 'latin1'));
}
