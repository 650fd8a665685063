declare const brand: unique symbol;

/** A string or number that only the function which checked it may make. */
export type Brand<Value, Name extends string> = Value & { readonly [brand]: Name };

/** Path of a rule file relative to its library's root, `/` between parts, NFC. Never absolute. */
export type FileId = Brand<string, 'FileId'>;

/** The `id` of an entity, as written. Unique within its kind. */
export type EntityId = Brand<string, 'EntityId'>;

/** Name of a rule: kebab-case, names the fault. */
export type RuleId = Brand<string, 'RuleId'>;

/** An ISO 8601 calendar date, `YYYY-MM-DD`, that exists. */
export type IsoDate = Brand<string, 'IsoDate'>;

export function fileId(path: string): FileId {
  return path as FileId;
}

export function entityId(text: string): EntityId {
  return text as EntityId;
}

export function ruleId(text: string): RuleId {
  return text as RuleId;
}
