import { type Answer, answer, type Refusal, refuse } from './physics.ts';

/*
 * The room's temperature from three readings in equal steps of time: room = (T1 T3 - T2²) / (T1 + T3 - 2 T2). Only cooling.ts uses this.
 */

interface TimedReading {
  readonly timeMin: number;
  readonly temperatureC: number;
}

/** Same meaning as in the wait of cooling.ts. */
export interface RoomFromSteps {
  readonly roomC: number;
  readonly ratePerMin: number;
  readonly waitMin: number;
  readonly earliestMin: number;
  readonly latestMin: number | undefined;
}

type RoomReason = 'needs-three-equal-steps' | 'not-cooling' | 'room-not-found';

interface Exact {
  readonly roomC: number;
  readonly ratePerMin: number;
  /** Undefined when the release temperature is not above the room found. */
  readonly waitMin: number | undefined;
}

/** Steps that differ by less than this share count as equal: a minute hand is read no better. */
const EQUAL_STEPS = 0.01;

/**
 * Room, rate and wait by three readings. `waitMin` is without meaning when `releaseC` is not above `roomC`; the caller refuses
 * then. The interval tries each reading off by `uncertaintyK` either way, all eight ways.
 */
export function roomFromEqualSteps(
  readings: readonly TimedReading[],
  releaseC: number,
  uncertaintyK: number,
): Answer<RoomFromSteps, RoomReason> {
  const [first, second, third] = readings;
  if (readings.length !== 3 || first === undefined || second === undefined || third === undefined) return needsThree();
  const stepMin = second.timeMin - first.timeMin;
  if (Math.abs(third.timeMin - second.timeMin - stepMin) > EQUAL_STEPS * stepMin) return needsThree();
  const solve = (e1: number, e2: number, e3: number): Exact | Refusal<RoomReason> =>
    exact(first.temperatureC + e1, second.temperatureC + e2, third.temperatureC + e3, stepMin, releaseC);
  const middle = solve(0, 0, 0);
  if ('ok' in middle) return middle;
  const waitMin = middle.waitMin ?? 0;
  let earliestMin = waitMin;
  let latestMin = middle.waitMin;
  for (const e1 of [-uncertaintyK, uncertaintyK])
    for (const e2 of [-uncertaintyK, uncertaintyK])
      for (const e3 of [-uncertaintyK, uncertaintyK]) {
        const corner = solve(e1, e2, e3);
        const wait = 'ok' in corner ? undefined : corner.waitMin;
        if (wait !== undefined) earliestMin = Math.min(earliestMin, wait);
        latestMin = wait === undefined || latestMin === undefined ? undefined : Math.max(latestMin, wait);
      }
  return answer({ roomC: middle.roomC, ratePerMin: middle.ratePerMin, waitMin, earliestMin, latestMin });
}

function exact(t1: number, t2: number, t3: number, stepMin: number, releaseC: number): Exact | Refusal<RoomReason> {
  if (!(t1 > t2 && t2 > t3)) return refuse('not-cooling', 'These readings do not fall.');
  const slowing = t1 - t2 - (t2 - t3);
  if (slowing <= 1e-9)
    return refuse('room-not-found', 'The cooling does not slow down, so the room temperature cannot be told.');
  const roomC = t3 - (t2 - t3) ** 2 / slowing;
  const ratePerMin = Math.log((t1 - t2) / (t2 - t3)) / stepMin;
  if (releaseC <= roomC) return { roomC, ratePerMin, waitMin: undefined };
  return { roomC, ratePerMin, waitMin: Math.max(0, Math.log((t3 - roomC) / (releaseC - roomC)) / ratePerMin) };
}

function needsThree(): Refusal<RoomReason> {
  return refuse(
    'needs-three-equal-steps',
    'Without a room temperature, three readings in equal steps of time are needed.',
  );
}
