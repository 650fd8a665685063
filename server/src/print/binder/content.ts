import type { Coverage } from '../../check/coverage.ts';

/** A finding as the binder prints it: nothing is left out because it is ugly. */
export interface BinderFinding {
  readonly rule: string;
  readonly severity: 'error' | 'warning' | 'advice';
  readonly entity: string;
  readonly message: string;
  /** `devices/x.ifu.yaml:12`. */
  readonly place: string;
  readonly settledBy: string;
}

/** Where the binder came from, so that it can be made again to the byte. */
export interface BinderOrigin {
  /** `YYYY-MM-DD`: everything is looked at as of this day. */
  readonly day: string;
  readonly version: string;
  readonly commit: string | undefined;
  /** `changed-since`: files differ from the commit, so the commit alone does not give this binder back. */
  readonly state: 'as-recorded' | 'changed-since' | 'not-recorded';
  readonly files: number;
}

export interface BinderContent {
  readonly origin: BinderOrigin;
  readonly findings: readonly BinderFinding[];
  /** Findings that the library's settings keep back, by rule. */
  readonly heldBack: ReadonlyMap<string, number>;
  readonly coverage: Coverage;
}
