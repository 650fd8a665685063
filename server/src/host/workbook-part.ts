import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { WorkbookPart } from './workbook/workbook.ts';

/** Loads the part that knows workbooks from its file (absolute); undefined where that is not there. */
export function loadWorkbookPart(path: string | undefined): WorkbookPart | undefined {
  return path !== undefined && existsSync(path) ? (createRequire(path)(path) as WorkbookPart) : undefined;
}
