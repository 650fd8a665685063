/**
 * Loaded before the reader of PDFs: stand-ins for what it would otherwise look for in a browser or a drawing package. Only text is read, so
 * nothing is ever drawn with them.
 */
const stage = globalThis as Record<string, unknown>;
for (const name of ['DOMMatrix', 'ImageData', 'Path2D']) stage[name] ??= class {};
