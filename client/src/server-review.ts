import type { Review } from '../../server/src/panel/review.ts';
import { either, type Is, isCount, isText, listOf, recordOf, word } from '../page/forms.ts';
import { isReview } from '../page/review.ts';
import type { SheetPlace } from './server-sheet.ts';

/** Where one side of a change stands: in the old or new text of a file. */
export interface ReviewPlace {
  readonly side: 'old' | 'now';
  readonly entity: string;
  readonly range: SheetPlace['range'];
}

/** Both texts of one thing: the old one by its name in the review, the new one as the editor calls it. */
export interface ReviewFile {
  readonly entity: string;
  readonly old: string | null;
  readonly now: string | null;
}

/** A review as the server sends it. */
export interface ServerReview {
  readonly number: number;
  readonly about: string;
  readonly sheet: Review;
  readonly places: readonly (ReviewPlace | null)[];
  readonly files: readonly ReviewFile[];
}

const isNull: Is<null> = (value): value is null => value === null;
const isPosition = recordOf<SheetPlace['range']['start']>({ line: isCount, character: isCount });
const isPlace = recordOf<ReviewPlace>({
  side: word('old', 'now'),
  entity: isText,
  range: recordOf<SheetPlace['range']>({ start: isPosition, end: isPosition }),
});
const isFile = recordOf<ReviewFile>({ entity: isText, old: either(isText, isNull), now: either(isText, isNull) });

export const isServerReview: Is<ServerReview> = recordOf<ServerReview>({
  number: isCount,
  about: isText,
  sheet: isReview,
  places: listOf(either(isPlace, isNull)),
  files: listOf(isFile),
});

export interface RecordFile {
  readonly uri: string;
  readonly text: string;
}

const isRecordText: Is<string> = (value): value is string => typeof value === 'string' && value.length <= 4_000_000;

export const isRecordFiles: Is<{ readonly files: readonly RecordFile[] }> = recordOf({
  files: listOf(recordOf<RecordFile>({ uri: isText, text: isRecordText })),
});
