import { Session } from 'node:inspector';

/** How often each function of the server was called while `work` ran, by its file, name and place: the same whatever the machine is doing. */
export function callsDuring(work: () => void): ReadonlyMap<string, number> {
  const session = new Session();
  session.connect();
  try {
    session.post('Profiler.enable');
    session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: false });
    work();
    return callsIn(session);
  } finally {
    session.disconnect();
  }
}

function callsIn(session: Session): ReadonlyMap<string, number> {
  const calls = new Map<string, number>();
  // The inspector of one's own thread answers before `post` returns.
  session.post('Profiler.takePreciseCoverage', (error, { result }) => {
    if (error !== null) throw error;
    for (const { url, functions } of result) {
      const [, file] = url.split('/server/src/');
      if (file === undefined) continue;
      for (const { functionName, ranges } of functions) {
        const [whole] = ranges;
        if (whole !== undefined) calls.set(`${file} ${functionName} ${whole.startOffset}`, whole.count);
      }
    }
  });
  return calls;
}
