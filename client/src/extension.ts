/**
 * client/: the VS Code extension: starts the language server and shows what it says. No domain knowledge: nothing here knows a kind, a
 * rule or a unit. No network, no telemetry, nothing run from a workspace, no notification unless something is broken, or was asked for, or has been pasted that waits for its next step.
 */
import { type Disposable, type ExtensionContext, window } from 'vscode';
import { registerAddItem } from './add-item.ts';
import { registerAllSentences } from './all-sentences.ts';
import { registerDemo } from './demo.ts';
import { registerDoubleReading } from './double-reading.ts';
import { registerKeptFiles } from './kept-files.ts';
import { registerLibraryView } from './library-view.ts';
import { registerNewFile } from './new-file.ts';
import { registerPaste } from './paste.ts';
import { registerQuoteToFields } from './quote-to-fields.ts';
import { registerReview } from './review.ts';
import { registerRulePages } from './rule-pages.ts';
import { type Launch, ServerConnection } from './server-connection.ts';
import { registerSetSheet } from './set-sheet.ts';
import { registerStartLibrary } from './start-library.ts';
import { StatusItem } from './status-item.ts';
import { registerTour } from './tour.ts';
import { registerUses } from './uses.ts';
import { registerWaitingSentences } from './waiting-sentences.ts';

let server: ServerConnection | undefined;

/** Starts everything; node.ts and browser.ts say how the server is reached. */
export async function begin(context: ExtensionContext, launch: Launch): Promise<void> {
  const log = window.createOutputChannel('Traywright', { log: true });
  const status = new StatusItem();
  const started = new ServerConnection(launch, log, status);
  server = started;
  context.subscriptions.push(
    log,
    status,
    ...registerRulePages(started),
    ...started.commands(),
    ...registerWriting(started),
    ...registerViews(context, started),
    ...(launch.beside?.(started) ?? []),
  );
  await started.start();
}

function registerWriting(started: ServerConnection): readonly Disposable[] {
  return [
    registerAddItem(started),
    registerAllSentences(started),
    registerQuoteToFields(started),
    registerNewFile(started),
    registerUses(started),
    registerWaitingSentences(started),
    ...registerPaste(started),
  ];
}

function registerViews(context: ExtensionContext, started: ServerConnection): readonly Disposable[] {
  return [
    ...registerLibraryView(started),
    ...registerSetSheet(context, started),
    ...registerReview(context, started),
    ...registerDoubleReading(started),
    registerDemo(context),
    ...registerTour(context),
    registerStartLibrary(started),
    registerKeptFiles(),
  ];
}

export async function end(): Promise<void> {
  await server?.stop();
}
