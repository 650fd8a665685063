import { expect, test } from 'vitest';
import { printDirections } from '../../../server/src/judge/print-directions.ts';

test('the direction table, as people read it', async () => {
  await expect(printDirections()).toMatchFileSnapshot('golden/directions.txt');
});
