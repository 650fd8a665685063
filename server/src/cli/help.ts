import type { OptionSpec } from './arguments.ts';
import type { Command } from './command.ts';
import { wrapped } from './wrap.ts';

const width = 92;

export function generalHelp(commands: readonly Command[]): string {
  const widest = Math.max(...commands.map(({ name }) => name.length));
  const rows = commands.map(({ name, summary }) => `  ${name.padEnd(widest)}  ${summary}`);
  return [
    'Traywright checks a department’s encoded instructions for use against each other and against its own',
    'machines, packaging and sets. It reads files and prints; it never uses the network and runs nothing.',
    '',
    'Usage: traywright COMMAND [OPTIONS]',
    '',
    ...rows,
    '',
    '  --help      This page; "traywright COMMAND --help" explains a command.',
    '  --version   The version.',
    '',
  ].join('\n');
}

export function commandHelp(command: Command): string {
  const lines = [command.summary, '', `Usage: traywright ${command.name} [OPTIONS] ${command.operands}`.trimEnd(), ''];
  for (const option of command.options) lines.push(...optionLines(option));
  for (const paragraph of command.help) lines.push('', ...wrapped(paragraph, width));
  return `${lines.join('\n')}\n`;
}

function optionLines(option: OptionSpec): readonly string[] {
  const values = option.values?.join('|') ?? (option.form === 'date' ? 'YYYY-MM-DD' : (option.value ?? ''));
  const names = `${option.short === undefined ? '' : `-${option.short}, `}--${option.name}${values === '' ? '' : ` ${values}`}`;
  return [`  ${names}`, ...wrapped(option.help, width - 6).map((line) => `      ${line}`)];
}
