import { strFromU8, strToU8, type UnzipFileInfo, unzipSync, zipSync } from 'fflate';
import { faultOfPart } from './look-over.ts';

/** Largest workbook that is opened, in bytes; most parts; most bytes that its parts may unpack to, and how many times their packed size. */
export const archiveLimits = {
  bytes: 16_000_000,
  entries: 1_000,
  unpacked: 64_000_000,
  ratio: 200,
  small: 1_000_000,
} as const;

export type Archive = { readonly bytes: Uint8Array<ArrayBuffer> } | { readonly why: string };

/** Parts that hold cells, their texts and formats, and how they hang together. Nothing else is unpacked: no macros, no links, no pictures. */
const wanted =
  /^(?:\[Content_Types\]\.xml|_rels\/\.rels|xl\/workbook\.xml|xl\/_rels\/workbook\.xml\.rels|xl\/sharedStrings\.xml|xl\/styles\.xml|xl\/worksheets\/sheet\d{1,4}\.xml)$/;

/** The same workbook with nothing in it but cells, within limits that its own claims about sizes can't lift. */
export function harmlessArchive(bytes: Uint8Array): Archive {
  if (bytes.length > archiveLimits.bytes) return { why: 'it is larger than 16 MB' };
  const tally = new Tally();
  try {
    const parts = unzipSync(bytes, { filter: (info) => tally.takes(info) });
    if (tally.why !== undefined) return { why: tally.why };
    return packed(parts);
  } catch {
    return { why: tally.why ?? 'it is no workbook, or it is damaged' };
  }
}

class Tally {
  why: string | undefined;
  #entries = 0;
  #unpacked = 0;

  /** Decided by what the archive says; what unpacks to more than it says is cut off there and is then broken. */
  takes({ name, size, originalSize }: UnzipFileInfo): boolean {
    this.#entries++;
    if (this.#entries > archiveLimits.entries) this.why ??= `it has more than ${archiveLimits.entries} parts`;
    if (this.why !== undefined || !wanted.test(name)) return false;
    this.#unpacked += originalSize;
    const isSwollen = originalSize > archiveLimits.small && originalSize > size * archiveLimits.ratio;
    if (this.#unpacked > archiveLimits.unpacked || isSwollen) this.why ??= 'it unpacks to far more than it seems';
    return this.why === undefined;
  }
}

/** Without compression: whoever reads it next has nothing left to unpack. */
function packed(parts: Readonly<Record<string, Uint8Array>>): Archive {
  const kept: Record<string, Uint8Array> = {};
  for (const [name, part] of Object.entries(parts)) {
    const text = strFromU8(part);
    const why = faultOfPart(name, text);
    if (why !== undefined) return { why };
    kept[name] = strToU8(text.replace(/<(?:\w{1,20}:)?dimension\b[^>]{0,500}>/g, ''));
  }
  if (kept['xl/workbook.xml'] === undefined) return { why: 'it is no workbook' };
  return { bytes: new Uint8Array(zipSync(kept, { level: 0 })) };
}
