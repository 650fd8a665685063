import type { CancellationToken, InitializeError } from 'vscode-languageserver';
import { ErrorCodes, LSPErrorCodes, ResponseError } from 'vscode-languageserver';
import type { Lull } from './lull.ts';

/** Where a connection stands in its life: requests out of turn get an answer that says so. */
export class Session {
  readonly #lull: Lull;
  #stage: 'before-initialize' | 'running' | 'shut-down' = 'before-initialize';

  constructor(lull: Lull) {
    this.#lull = lull;
  }

  get isRunning(): boolean {
    return this.#stage === 'running';
  }

  /** An error when the client greets a second time. */
  start(): ResponseError<InitializeError> | undefined {
    if (this.#stage !== 'before-initialize') {
      return new ResponseError(ErrorCodes.InvalidRequest, 'the server was initialized before', { retry: false });
    }
    this.#stage = 'running';
    return undefined;
  }

  end(): void {
    this.#stage = 'shut-down';
  }

  /** A handler of a request that is refused out of turn. Other work stands back until it is answered. */
  request<Given extends readonly unknown[], Answer>(
    handler: (...given: Given) => Answer | Promise<Answer>,
  ): (...given: Given) => Promise<Answer | ResponseError<never>> {
    return async (...given) => {
      const refused = this.#outOfTurn();
      if (refused !== undefined) return refused;
      this.#lull.asked();
      try {
        return await handler(...given);
      } finally {
        this.#lull.answered();
      }
    };
  }

  /** A handler of a request for how a text is shown: answered at once, but behind what the writer waits for, and not when it was taken back. */
  shownRequest<Params, Answer>(
    handler: (params: Params) => Promise<Answer>,
    textTaken: (params: Params) => Promise<void>,
  ): (params: Params, token: CancellationToken) => Promise<Answer | ResponseError<never>> {
    return this.#later(handler, async (params) => {
      await textTaken(params);
      await this.#lull.owesNothing();
    });
  }

  /**
   * A handler of a request for what stands beside a text, which a client goes on showing while somebody types: it is answered in the next
   * lull, behind what the writer waits for, and not at all when it was taken back by then.
   */
  besideRequest<Params, Answer>(
    handler: (params: Params) => Answer | Promise<Answer>,
  ): (params: Params, token: CancellationToken) => Promise<Answer | ResponseError<never>> {
    return this.#later(handler, () => this.#lull.come());
  }

  #later<Params, Answer>(
    handler: (params: Params) => Answer | Promise<Answer>,
    itsTime: (params: Params) => Promise<void>,
  ): (params: Params, token: CancellationToken) => Promise<Answer | ResponseError<never>> {
    return async (params, token) => {
      const refused = this.#outOfTurn();
      if (refused !== undefined) return refused;
      this.#lull.noted();
      await itsTime(params);
      return token.isCancellationRequested ? takenBack() : await handler(params);
    };
  }

  /** A handler of a request that stays open until there is news. */
  standingRequest<Given extends readonly unknown[], Answer>(
    handler: (...given: Given) => Answer,
  ): (...given: Given) => Answer | ResponseError<never> {
    return (...given) => this.#outOfTurn() ?? handler(...given);
  }

  /** The answer to a request that nobody handles. */
  unknown(method: string): ResponseError<never> {
    return (
      this.#outOfTurn() ?? new ResponseError(ErrorCodes.MethodNotFound, `there is no request "${method.slice(0, 100)}"`)
    );
  }

  #outOfTurn(): ResponseError<never> | undefined {
    switch (this.#stage) {
      case 'before-initialize':
        return new ResponseError(ErrorCodes.ServerNotInitialized, 'the server waits for "initialize"');
      case 'shut-down':
        return new ResponseError(ErrorCodes.InvalidRequest, 'the server is shutting down');
      case 'running':
        return undefined;
    }
  }

  /** A handler of a notification that is dropped out of turn. */
  notification<Given extends readonly unknown[]>(handler: (...given: Given) => void): (...given: Given) => void {
    return (...given) => {
      if (this.#stage === 'running') handler(...given);
    };
  }
}

/**
 * Without "retriggerRequest": a client takes a question back in order to ask it anew about a newer text. Told not to trigger again, it would
 * drop that too, and go on showing what held before the last keystroke.
 */
export function takenBack(): ResponseError<never> {
  return new ResponseError(LSPErrorCodes.RequestCancelled, 'taken back');
}
