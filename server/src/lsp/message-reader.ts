import type { DataCallback, Disposable, Message } from 'vscode-languageserver/node';
import { AbstractMessageReader } from 'vscode-languageserver/node';

/** No message of an editor comes near this; a longer one is a broken or hostile length. */
const longestMessage = 64 * 1024 * 1024;
const longestHeader = 4096;

/** Told of a message that could not be read, so that the sender gets an answer. */
export type BrokenMessage = (why: string) => void;

/**
 * Reads framed messages from a byte stream and keeps going whatever comes: a bad length, bytes that are no UTF-8 and texts that are no JSON
 * cost one message, never the connection.
 */
export class CarefulMessageReader extends AbstractMessageReader {
  readonly #input: NodeJS.ReadableStream;
  readonly #broken: BrokenMessage;
  #buffer: Buffer = Buffer.alloc(0);
  readonly #chunks: Buffer[] = [];
  #waitingFor = 0;
  #have = 0;

  constructor(input: NodeJS.ReadableStream, broken: BrokenMessage) {
    super();
    this.#input = input;
    this.#broken = broken;
  }

  listen(callback: DataCallback): Disposable {
    const take = (chunk: Buffer): void => this.#take(chunk, callback);
    this.#input.on('data', take);
    this.#input.on('error', (error) => this.fireError(error));
    this.#input.on('close', () => this.fireClose());
    return { dispose: () => void this.#input.off('data', take) };
  }

  /** Chunks are joined only when there is enough of them for the message that is awaited. */
  #take(chunk: Buffer, callback: DataCallback): void {
    this.#chunks.push(chunk);
    this.#have += chunk.length;
    if (this.#have < this.#waitingFor) return;
    this.#buffer = Buffer.concat(this.#chunks);
    this.#chunks.length = 0;
    while (this.#readOne(callback));
    this.#chunks.push(this.#buffer);
    this.#have = this.#buffer.length;
  }

  /** False when more bytes are needed. */
  #readOne(callback: DataCallback): boolean {
    const end = this.#buffer.indexOf('\r\n\r\n');
    if (end < 0) return this.#dropEndlessHeader();
    const length = lengthIn(this.#buffer.toString('latin1', Math.max(0, end - longestHeader), end));
    const start = end + 4;
    if (length === undefined) {
      this.#broken('the message has no usable Content-Length');
      this.#buffer = this.#buffer.subarray(start);
      return true;
    }
    if (this.#buffer.length < start + length) {
      this.#waitingFor = start + length;
      return false;
    }
    const body = this.#buffer.subarray(start, start + length);
    this.#buffer = this.#buffer.subarray(start + length);
    this.#waitingFor = 0;
    const message = this.#messageIn(body);
    if (message !== undefined) callback(message);
    return true;
  }

  #dropEndlessHeader(): boolean {
    this.#waitingFor = 0;
    if (this.#buffer.length <= longestHeader) return false;
    this.#broken('the message has no header');
    this.#buffer = this.#buffer.subarray(this.#buffer.length - 3);
    return false;
  }

  #messageIn(body: Buffer): Message | undefined {
    try {
      const message: unknown = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(body));
      if (typeof message === 'object' && message !== null && !Array.isArray(message)) return message as Message;
      this.#broken('the message is no JSON object');
    } catch {
      this.#broken('the message is not JSON in UTF-8');
    }
    return undefined;
  }
}

/** The length that a header gives; undefined when there is none, or one that can't be. Junk before the header is passed over. */
function lengthIn(header: string): number | undefined {
  const digits = /content-length: {0,4}(\d{1,9})\r?$/im.exec(
    header.slice(header.toLowerCase().lastIndexOf('content-length:')),
  )?.[1];
  const length = digits === undefined ? Number.NaN : Number(digits);
  return length >= 0 && length <= longestMessage ? length : undefined;
}
