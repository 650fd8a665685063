/*
 * The straight line through ln(temperature - room) against time, and what uncertain readings leave open. Only cooling.ts uses this.
 */

interface TimedReading {
  readonly timeMin: number;
  readonly temperatureC: number;
}

/** Least-squares line of ln(T - room); through both points when there are two. */
export interface LogLine {
  readonly ratePerMin: number;
  readonly meanTimeMin: number;
  readonly meanLog: number;
  readonly lastTimeMin: number;
}

export interface WaitSpan {
  readonly earliestMin: number;
  readonly latestMin: number | undefined;
}

/** The line for readings that are each off by `errorK(index)`. Every reading must stay above the room. */
export function logLine(readings: readonly TimedReading[], roomC: number, errorK: (index: number) => number): LogLine {
  const count = readings.length;
  const logs = readings.map((reading, index) => Math.log(reading.temperatureC + errorK(index) - roomC));
  let meanTimeMin = 0;
  for (const reading of readings) meanTimeMin += reading.timeMin / count;
  let meanLog = 0;
  for (const log of logs) meanLog += log / count;
  let along = 0;
  let spread = 0;
  for (const [index, reading] of readings.entries()) {
    along += (reading.timeMin - meanTimeMin) * ((logs[index] ?? 0) - meanLog);
    spread += (reading.timeMin - meanTimeMin) ** 2;
  }
  return { ratePerMin: -along / spread, meanTimeMin, meanLog, lastTimeMin: readings[count - 1]?.timeMin ?? 0 };
}

/** Minutes from the last reading until the line meets the release temperature; 0 when it already has. */
export function waitOnLine(line: LogLine, roomC: number, releaseC: number): number {
  const at = line.meanTimeMin + (line.meanLog - Math.log(releaseC - roomC)) / line.ratePerMin;
  return Math.max(0, at - line.lastTimeMin);
}

/**
 * Shortest and longest wait when each reading may be off by `uncertaintyK` either way. The wait is a quotient of two sums of the logs,
 * so its extremes lie where all readings up to some moment are off one way and all later ones the other way: each is tried.
 */
export function fitToRoom(
  readings: readonly TimedReading[],
  roomC: number,
  releaseC: number,
  uncertaintyK: number,
): WaitSpan {
  if (releaseC <= roomC) return { earliestMin: Number.POSITIVE_INFINITY, latestMin: undefined };
  let earliestMin = Number.POSITIVE_INFINITY;
  let latestMin: number | undefined = 0;
  for (let turn = 0; turn <= readings.length; turn++) {
    for (const early of [uncertaintyK, -uncertaintyK]) {
      const line = logLine(readings, roomC, (index) => (index < turn ? early : -early));
      if (line.ratePerMin <= 0) {
        latestMin = undefined;
        continue;
      }
      const wait = waitOnLine(line, roomC, releaseC);
      earliestMin = Math.min(earliestMin, wait);
      if (latestMin !== undefined) latestMin = Math.max(latestMin, wait);
    }
  }
  return { earliestMin, latestMin };
}
