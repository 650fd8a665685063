/** The faults of form that inspect.ts reports, for the catalogue and `explain`. All are settled by the educator who writes the file. */
export const schemaProblemRules = [
  {
    id: 'kind-missing',
    severity: 'error',
    why: 'Without its kind, nobody can tell what the file describes or check it.',
  },
  { id: 'kind-unknown', severity: 'error', why: 'A kind that does not exist can not be checked.' },
  {
    id: 'unknown-field',
    severity: 'error',
    why: 'A misspelled field is read by nobody: the demand in it would be lost silently.',
  },
  { id: 'field-missing', severity: 'error', why: 'The other fields can not be judged without it.' },
  {
    id: 'requirement-says-nothing',
    severity: 'error',
    why: 'A demand without a number, and without saying that the document is silent, looks encoded but is not.',
  },
  {
    id: 'wrong-form',
    severity: 'error',
    why: 'YAML has read something else than what was meant, and the value would be lost.',
  },
  {
    id: 'unknown-word',
    severity: 'error',
    why: 'Only words of the closed list are understood; another spelling would not be judged.',
  },
  {
    id: 'words-run-together',
    severity: 'error',
    why: 'Items of a list are kept apart by commas or lines; without them two items are one, which nobody looks for.',
  },
  {
    id: 'empty-value',
    severity: 'error',
    why: 'An empty line looks like an answer; silence of the document is written "silent: true".',
  },
  {
    id: 'still-to-write',
    severity: 'error',
    why: 'A line that a new file left open has not been written yet, and nobody can rely on the file until it is.',
  },
  { id: 'does-not-fit', severity: 'error', why: 'The file does not have the form that its kind needs.' },
] as const;
