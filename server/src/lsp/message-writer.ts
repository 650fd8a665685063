import type { Message } from 'vscode-languageserver/node';
import { AbstractMessageWriter } from 'vscode-languageserver/node';

/**
 * Writes each message as one piece. In two, header and body, the reader is woken for the header alone, and the body waits until the header
 * is gone.
 */
export class WholeMessageWriter extends AbstractMessageWriter {
  readonly #output: NodeJS.WritableStream;
  #failures = 0;

  constructor(output: NodeJS.WritableStream) {
    super();
    this.#output = output;
    output.on('error', (error: Error) => this.fireError(error));
    output.on('close', () => this.fireClose());
  }

  async write(message: Message): Promise<void> {
    const body = JSON.stringify(message);
    try {
      await this.#send(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
    } catch (error) {
      this.#failures++;
      this.fireError(error, message, this.#failures);
      throw error;
    }
  }

  end(): void {
    this.#output.end();
  }

  #send(text: string): Promise<void> {
    return new Promise((resolve, reject) => {
      this.#output.write(text, 'utf8', (error) => (error ? reject(error) : resolve()));
    });
  }
}
