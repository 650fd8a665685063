import type { InitializeError } from 'vscode-languageserver';
import { ErrorCodes, ResponseError } from 'vscode-languageserver';

/** Where a connection stands in its life: requests out of turn get an answer that says so. */
export class Session {
  #stage: 'before-initialize' | 'running' | 'shut-down' = 'before-initialize';

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

  /** A handler of a request that is refused out of turn. */
  request<Given extends readonly unknown[], Answer>(
    handler: (...given: Given) => Answer,
  ): (...given: Given) => Answer | ResponseError<never> {
    return (...given) => {
      if (this.#stage === 'before-initialize')
        return new ResponseError(ErrorCodes.ServerNotInitialized, 'the server waits for "initialize"');
      if (this.#stage === 'shut-down')
        return new ResponseError(ErrorCodes.InvalidRequest, 'the server is shutting down');
      return handler(...given);
    };
  }

  /** A handler of a notification that is dropped out of turn. */
  notification<Given extends readonly unknown[]>(handler: (...given: Given) => void): (...given: Given) => void {
    return (...given) => {
      if (this.#stage === 'running') handler(...given);
    };
  }
}
