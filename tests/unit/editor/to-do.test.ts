import { describe, expect, it } from 'vitest';
import { filledMarkAbove, markAboveWriting, withoutFilledMarks } from '../../../server/src/editor/writing/to-do.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';

/** `‸` is the place. */
function textAfter(marked: string, edits: (text: string, offset: number) => Parameters<typeof applyEdits>[1]): string {
  const text = marked.replace('‸', '');
  const applied = applyEdits(text, edits(text, marked.indexOf('‸')));
  return 'text' in applied ? applied.text : applied.refused;
}

describe('what was still to be written says so no longer', () => {
  const open = 'kind: device\ncleaning: # to do: Stages.\nstorage: # to do: Storage.\n';

  it.each([
    ['  time: 2 min\n', 'kind: device\ncleaning:\n  time: 2 min\nstorage: # to do: Storage.\n'],
    ['- {id: a}\n', 'kind: device\ncleaning:\n- {id: a}\nstorage: # to do: Storage.\n'],
    ['# looked for\n', 'kind: device\ncleaning: # to do: Stages.\n# looked for\nstorage: # to do: Storage.\n'],
    ['\n', 'kind: device\ncleaning: # to do: Stages.\n\nstorage: # to do: Storage.\n'],
  ])('where an edit puts %s below it', (added, wanted) => {
    const put = textAfter(`${open.replace('storage', '‸storage')}`, (text, offset) =>
      withoutFilledMarks(text, [{ span: { start: offset, end: offset }, text: added }]),
    );
    expect(put).toBe(wanted);
  });

  it('an edit that takes the mark itself is left alone', () => {
    const start = open.indexOf('cleaning');
    const edits = [{ span: { start, end: open.indexOf('\nstorage') }, text: 'cleaning:\n  all_of: []' }];
    expect(withoutFilledMarks(open, edits)).toEqual(edits);
  });

  it('with the next line that somebody writes below it, and not before something stands there', () => {
    const first = 'cleaning: # to do: Stages.\n  ‸\nstorage: # to do: Storage.\n';
    expect(textAfter(first, filledMarkAbove)).toBe(first.replace('‸', ''));
    const second = 'cleaning: # to do: Stages.\n  time: 2 min\n  ‸\nstorage: # to do: Storage.\n';
    expect(textAfter(second, filledMarkAbove)).toBe('cleaning:\n  time: 2 min\n  \nstorage: # to do: Storage.\n');
  });

  it('with what is accepted below it, but not with a field beside it', () => {
    expect(textAfter('cleaning: # to do: Stages.\n  ‸\n', markAboveWriting)).toBe('cleaning:\n  \n');
    const beside = 'cleaning: # to do: Stages.\n‸\n';
    expect(textAfter(beside, markAboveWriting)).toBe(beside.replace('‸', ''));
    const further = 'cleaning: # to do: Stages.\nname: x\n  ‸\n';
    expect(textAfter(further, markAboveWriting)).toBe(further.replace('‸', ''));
  });
});
