/** Looking at a value that came as a message before it is used: each form says exactly what is allowed, and nothing else passes. */
export type Is<T> = (value: unknown) => value is T;

const longestText = 20_000;
const longestList = 5_000;

export function isText(value: unknown): value is string {
  return typeof value === 'string' && value.length <= longestText;
}

export function isCount(value: unknown): value is number {
  return typeof value === 'number' && Number.isInteger(value) && value >= 0;
}

/** A share: from 0 to 1. */
export function isShare(value: unknown): value is number {
  return typeof value === 'number' && value >= 0 && value <= 1;
}

export function isFlag(value: unknown): value is boolean {
  return typeof value === 'boolean';
}

export function word<const Words extends readonly string[]>(...words: Words): Is<Words[number]> {
  return (value): value is Words[number] => typeof value === 'string' && words.includes(value);
}

export function listOf<T>(is: Is<T>): Is<readonly T[]> {
  return (value): value is readonly T[] => Array.isArray(value) && value.length <= longestList && value.every(is);
}

export function maybe<T>(is: Is<T>): Is<T | undefined> {
  return (value): value is T | undefined => value === undefined || is(value);
}

export function either<A, B>(one: Is<A>, other: Is<B>): Is<A | B> {
  return (value): value is A | B => one(value) || other(value);
}

type Fields<T> = { readonly [Key in keyof T]-?: Is<T[Key]> };

/** A record with these fields and no others. */
export function recordOf<T extends object>(fields: Fields<T>): Is<T> {
  const known = Object.entries<Is<unknown>>(fields);
  return (value): value is T => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
    const given = value as Readonly<Record<string, unknown>>;
    if (Object.keys(given).some((key) => !Object.hasOwn(fields, key))) return false;
    return known.every(([key, is]) => is(Object.hasOwn(given, key) ? given[key] : undefined));
  };
}
