import { fitToRoom, type LogLine, logLine, waitOnLine } from './cooling-fit.ts';
import { type RoomFromSteps, roomFromEqualSteps } from './cooling-room.ts';
import { type Answer, answer, outOfRange, type RangeReason, refuse } from './physics.ts';

/*
 * How long a hot load still needs, from readings of its surface, by Newton's law: T(t) = room + (start - room) e^(-k t). A dense
 * core lags its surface, so an estimate from the surface is hopeful: it may lengthen a stated minimum, never shorten it.
 */

export interface CoolingReading {
  readonly timeMin: number;
  readonly temperatureC: number;
}

/** The room's temperature as measured, or unknown: then three readings in equal steps of time give it. */
export type Room =
  | { readonly kind: 'measured'; readonly temperatureC: number; readonly uncertaintyK: number }
  | { readonly kind: 'unknown' };

export interface CoolingQuestion {
  /** In order of time. */
  readonly readings: readonly CoolingReading[];
  readonly room: Room;
  readonly releaseC: number;
  /** How far each reading may be off, either way. */
  readonly readingUncertaintyK: number;
}

/** Minutes from the last reading until the release temperature. Show the interval, not the single minute. */
export interface CoolingWait {
  readonly waitMin: number;
  readonly earliestMin: number;
  /** Undefined when readings as uncertain as these cannot rule out that it never gets there. */
  readonly latestMin: number | undefined;
  readonly roomC: number;
  /** k of Newton's law. */
  readonly ratePerMin: number;
}

export type CoolingReason =
  | RangeReason
  | 'too-few-readings'
  | 'times-not-in-order'
  | 'not-cooling'
  | 'reading-not-above-room'
  | 'release-not-above-room'
  | 'needs-three-equal-steps'
  | 'room-not-found';

/** The minimum to keep, with what decided it. `measureAgain` when the estimate has no upper end. */
export interface CoolingMinimum {
  readonly minimumMin: number;
  readonly decidedBy: 'stated' | 'estimate';
  readonly measureAgain: boolean;
}

/** The wait to `releaseC`, fitted to all readings, with the interval that their uncertainty leaves. */
export function waitToRelease(question: CoolingQuestion): Answer<CoolingWait, CoolingReason> {
  const bad = checkReadings(question);
  if (bad) return bad;
  const { readings, room, releaseC, readingUncertaintyK } = question;
  if (room.kind === 'unknown') {
    const found = roomFromEqualSteps(readings, releaseC, readingUncertaintyK);
    return found.ok ? fromSteps(found.value, releaseC) : found;
  }
  if (releaseC <= room.temperatureC) return releaseBelowRoom();
  const nearest = Math.min(...readings.map((reading) => reading.temperatureC)) - readingUncertaintyK;
  if (nearest <= room.temperatureC + room.uncertaintyK)
    return refuse(
      'reading-not-above-room',
      'A reading is not above the room temperature by more than its uncertainty.',
    );
  const line = logLine(readings, room.temperatureC, () => 0);
  if (line.ratePerMin <= 0) return refuse('not-cooling', 'These readings do not fall.');
  return answer(measuredRoomWait(question, room.temperatureC, room.uncertaintyK, line));
}

/** Temperature (°C) after `minutes` of cooling from `startC` in a room at `roomC` at `ratePerMin`. */
export function temperatureAfterC(startC: number, roomC: number, ratePerMin: number, minutes: number): number {
  return roomC + (startC - roomC) * Math.exp(-ratePerMin * minutes);
}

/**
 * The minimum to keep from the start of cooling: the stated one, or the estimate where that is longer. `elapsedMin` is from
 * the start of cooling to the last reading.
 */
export function minimumWithEstimate(statedMin: number, elapsedMin: number, wait: CoolingWait): CoolingMinimum {
  const estimated = elapsedMin + (wait.latestMin ?? wait.waitMin);
  const measureAgain = wait.latestMin === undefined;
  if (estimated > statedMin) return { minimumMin: estimated, decidedBy: 'estimate', measureAgain };
  return { minimumMin: statedMin, decidedBy: 'stated', measureAgain };
}

function measuredRoomWait(
  question: CoolingQuestion,
  roomC: number,
  roomUncertaintyK: number,
  line: LogLine,
): CoolingWait {
  const { readings, releaseC, readingUncertaintyK } = question;
  let earliestMin = Number.POSITIVE_INFINITY;
  let latestMin: number | undefined = 0;
  // The wait bends little between the ends of the room's uncertainty; five points along it are enough to catch its extremes.
  for (const along of roomUncertaintyK === 0 ? [0] : [-1, -0.5, 0, 0.5, 1]) {
    const span = fitToRoom(readings, roomC + along * roomUncertaintyK, releaseC, readingUncertaintyK);
    earliestMin = Math.min(earliestMin, span.earliestMin);
    latestMin =
      span.latestMin === undefined || latestMin === undefined ? undefined : Math.max(latestMin, span.latestMin);
  }
  return { waitMin: waitOnLine(line, roomC, releaseC), earliestMin, latestMin, roomC, ratePerMin: line.ratePerMin };
}

function fromSteps(found: RoomFromSteps, releaseC: number): Answer<CoolingWait, CoolingReason> {
  return releaseC <= found.roomC ? releaseBelowRoom() : answer(found);
}

function releaseBelowRoom(): Answer<never, CoolingReason> {
  return refuse(
    'release-not-above-room',
    'The release temperature is not above the room temperature: it is never reached.',
  );
}

function checkReadings(question: CoolingQuestion): Answer<never, CoolingReason> | undefined {
  const { readings, room, releaseC, readingUncertaintyK } = question;
  const celsius = { low: -50, high: 400, unit: ' °C' };
  const bad = outOfRange(
    { name: 'release temperature', value: releaseC, ...celsius },
    { name: 'uncertainty of a reading', value: readingUncertaintyK, low: 0, high: 50, unit: ' K' },
    ...readings.map((reading) => ({ name: 'reading', value: reading.temperatureC, ...celsius })),
    ...readings.map((reading) => ({ name: 'time', value: reading.timeMin, low: -1e6, high: 1e6, unit: ' min' })),
    ...(room.kind === 'measured'
      ? [
          { name: 'room temperature', value: room.temperatureC, ...celsius },
          { name: 'uncertainty of the room', value: room.uncertaintyK, low: 0, high: 50, unit: ' K' },
        ]
      : []),
  );
  if (bad) return bad;
  if (readings.length < 2) return refuse('too-few-readings', 'An estimate needs two readings or more.');
  const rising = readings.every((reading, index) => reading.timeMin > (readings[index - 1]?.timeMin ?? -Infinity));
  return rising ? undefined : refuse('times-not-in-order', 'Each reading must be later than the one before it.');
}
