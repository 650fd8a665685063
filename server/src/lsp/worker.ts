import { BrowserMessageReader, BrowserMessageWriter, createConnection } from 'vscode-languageserver/browser';
import { todayByClock } from '../host/clock.ts';
import { allRules } from '../rules/all.generated.ts';
import { MemoryDisk } from './memory-disk.ts';
import { serve } from './server.ts';

/** The server inside a web worker, for an editor that runs in a browser: no disk of its own, the client sends what the folders hold. */

/** Name of the message by which the client sends files. */
const filesNotification = 'traywright/files';

type Port = ConstructorParameters<typeof BrowserMessageReader>[0];

const port = globalThis as unknown as Port;
const connection = createConnection(new BrowserMessageReader(port), new BrowserMessageWriter(port));
const disk = new MemoryDisk();
const workbench = serve(connection, { disk, rules: allRules, today: todayByClock });
connection.onNotification(filesNotification, (params: unknown) => workbench.diskChanged(disk.take(params)));
