import { parseAllDocuments, Schema } from 'yaml';

const textOnly = new Schema({ schema: 'failsafe', resolveKnownTags: false });

/** What the YAML library makes of a text, every value as text; undefined when it finds a fault, or more or less than one document. */
export function byLibrary(text: string): unknown {
  const documents = parseAllDocuments(text, { uniqueKeys: false, schema: textOnly, prettyErrors: false });
  if (!Array.isArray(documents) || documents.length !== 1) return undefined;
  const [document] = documents;
  if (document === undefined || document.errors.length > 0 || document.warnings.length > 0) return undefined;
  return document.toJS();
}

/** An empty place is '' to the library when all values are text; in our trees it is null. */
export function withEmpty(value: unknown): unknown {
  if (value === '' || value === null) return null;
  if (Array.isArray(value)) return value.map(withEmpty);
  if (typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, withEmpty(inner)]));
}
