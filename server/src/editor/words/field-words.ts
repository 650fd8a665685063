import type { Field, Shape } from '../../schema/shape.ts';

const mostExamples = 4;

/** What a field is about: `12 C` is typical of it, `pale-forceps` only an example. */
export function examplesLine({ examples, shape }: Field): string {
  const given = (examples.length > 0 ? examples : shape.examples).slice(0, mostExamples);
  return given.length === 0 ? '' : `${isMeasured(shape) ? 'Typical' : 'For example'}: ${given.join(' · ')}`;
}

function isMeasured(shape: Shape): boolean {
  switch (shape.form) {
    case 'quantity':
    case 'words':
      return true;
    case 'record':
      return shape.dimension !== undefined;
    case 'list':
      return isMeasured(shape.item);
    default:
      return false;
  }
}

/** No document is bound to put it there. */
export function whereLine(where: string | undefined): string {
  return where === undefined ? '' : `Where instructions usually put it (common practice): ${where}`;
}
