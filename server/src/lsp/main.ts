import type { Connection } from 'vscode-languageserver/node';
import { createConnection, ErrorCodes } from 'vscode-languageserver/node';
import { todayByClock } from '../host/clock.ts';
import { allRules } from '../rules/all.generated.ts';
import { CarefulMessageReader } from './message-reader.ts';
import { WholeMessageWriter } from './message-writer.ts';
import { nodeDisk } from './node-disk.ts';
import { serve } from './server.ts';

/** Over standard input and output when asked to (`--stdio`), else by whatever way the editor that started us has named. */
function connect(): Connection {
  if (!process.argv.includes('--stdio')) return createConnection();
  const writer = new WholeMessageWriter(process.stdout);
  const answerBroken = (why: string): void => {
    const error = { code: ErrorCodes.ParseError, message: why };
    writer.write({ jsonrpc: '2.0', id: null, error } as Parameters<typeof writer.write>[0]).catch(() => undefined);
  };
  process.stdin.on('close', () => process.exit(0));
  process.stdout.on('error', () => process.exit(1));
  return createConnection(new CarefulMessageReader(process.stdin, answerBroken), writer);
}

/** A fault of ours is written down and the server goes on: the other files are still checked. */
function noteFault(reason: unknown): void {
  process.stderr.write(`traywright: ${reason instanceof Error ? (reason.stack ?? reason.message) : String(reason)}\n`);
}

process.on('unhandledRejection', noteFault);
process.on('uncaughtException', noteFault);
serve(connect(), { disk: nodeDisk, rules: allRules, today: todayByClock });
