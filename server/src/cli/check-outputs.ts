import { normalize, resolve } from 'node:path';
import { printable } from '../base/printable.ts';
import { catalogueOf } from '../check/catalogue.ts';
import { writeOutputFile } from '../host/output-file.ts';
import { annotations } from '../report/annotations.ts';
import { checkMarkdown } from '../report/check-markdown.ts';
import { plainPalette } from '../report/colour.ts';
import { jsonReport } from '../report/json.ts';
import { junitReport } from '../report/junit.ts';
import type { CheckReport } from '../report/model.ts';
import { sarifReport } from '../report/sarif.ts';
import { textReport } from '../report/text.ts';
import { allRules } from '../rules/all.generated.ts';
import type { Arguments } from './arguments.ts';
import { paletteFor } from './colours.ts';
import { failsFrom } from './exit-code.ts';
import type { CommandIo } from './io.ts';
import { version } from './version.ts';

/** The forms of a check, in the order of the help page. */
export const checkFormats = ['text', 'json', 'sarif', 'junit', 'annotations', 'markdown'] as const;

type CheckFormat = (typeof checkFormats)[number];

export interface Output {
  readonly format: CheckFormat;
  readonly file: string;
}

/** `sarif=report.sarif`, or why it can't be followed. */
export function outputIn(text: string): Output | { readonly mistake: string } {
  const at = text.indexOf('=');
  const format = checkFormats.find((known) => known === text.slice(0, at));
  const file = text.slice(at + 1);
  if (format === undefined || file === '')
    return {
      mistake: `--output is a form and a file, such as sarif=report.sarif, not "${text}". Forms are: ${checkFormats.join(', ')}.`,
    };
  return { format, file };
}

/** By convention the name of standard output. A file of that name is `./-`. */
const standardOutput = '-';

/** What goes to standard output: what `--format` or an `--output` to it says. */
export function formatIn({ values, lists }: Arguments): CheckFormat {
  const outputs = (lists.get('output') ?? []).map(outputIn);
  const [toIt] = outputs.flatMap((one) => ('format' in one && one.file === standardOutput ? [one.format] : []));
  return checkFormats.find((known) => known === values.get('format')) ?? toIt ?? 'text';
}

/** The first `--output` that can't be followed. Said before anything is read. */
export function outputFault({ lists, values, switches }: Arguments): string | undefined {
  const files = new Set<string>();
  let toIt = values.get('format');
  for (const text of lists.get('output') ?? []) {
    const output = outputIn(text);
    if ('mistake' in output) return output.mistake;
    if (output.file === standardOutput) {
      if (switches.has('watch')) return `--watch prints text on the output; give "${text}" a file instead of "-".`;
      if (toIt !== undefined)
        return `The output takes one form, not both ${toIt} and ${output.format}: give one of them a file instead of "-".`;
      toIt = output.format;
      continue;
    }
    if (/\p{Cc}/u.test(output.file))
      return `--output names a file with a character that no one can read: "${output.file}".`;
    if (files.has(normalize(output.file))) return `--output names the file "${output.file}" twice.`;
    files.add(normalize(output.file));
  }
  return undefined;
}

/** The report on standard output. */
export function rendered(format: CheckFormat, report: CheckReport, io: CommandIo, given: Arguments): string {
  if (format !== 'text') return inForm(format, report, given);
  const columns = Math.max(40, Math.min(io.stdout.columns ?? 120, 160));
  const detail = given.switches.has('quiet') ? 'brief' : 'full';
  return textReport(report, { palette: paletteFor(io, given), columns, detail });
}

/** The report in a form that is the same on every machine. */
function inForm(format: CheckFormat, report: CheckReport, given: Arguments): string {
  switch (format) {
    case 'text':
      return textReport(report, { palette: plainPalette, columns: 120, detail: 'full' });
    case 'json':
      return jsonReport(report);
    case 'sarif':
      return sarifReport(report, { version, catalogue: catalogueOf(allRules) });
    case 'junit':
      return junitReport(report, failsFrom(report, given));
    case 'annotations':
      return annotations(report);
    case 'markdown':
      return checkMarkdown(report, plainPalette);
  }
}

/** Writes each `--output`; one that can't be written is said, and the others are written all the same. */
export function writeOutputs(report: CheckReport, io: CommandIo, given: Arguments): 'written' | 'not-written' {
  let all: 'written' | 'not-written' = 'written';
  for (const text of given.lists.get('output') ?? []) {
    const output = outputIn(text);
    if ('file' in output && output.file === standardOutput) continue;
    const fault = 'mistake' in output ? output.mistake : writeOne(output, report, io, given);
    if (fault === undefined) continue;
    io.stderr.write(`traywright: ${printable(fault)}\n`);
    all = 'not-written';
  }
  return all;
}

function writeOne({ format, file }: Output, report: CheckReport, io: CommandIo, given: Arguments): string | undefined {
  const written = writeOutputFile(resolve(io.cwd, file), inForm(format, report, given));
  return 'why' in written ? written.why : undefined;
}
