/** Which earlier versions of a sheet stay: all of the last hour, then the newest of each hour of a day and each day of a month. */
import { KEPT } from './limits.ts';

const HOUR = 3_600_000; // ms
const DAY = 24 * HOUR;

/** The hour that a time lies in, counted from 1970. */
export const hourOf = (time: number): number => Math.floor(time / HOUR);
const dayOf = (time: number) => Math.floor(time / DAY);

/** Of the times of all versions, ms since 1970, those that stay at a time `now`. */
export function timesToKeep(times: readonly number[], now: number): readonly number[] {
  const newestOf = new Map<string, number>();
  for (const time of times) {
    const [hours, days] = [hourOf(now) - hourOf(time), dayOf(now) - dayOf(time)];
    const keys = [
      ...(now - time < HOUR ? [`moment ${time}`] : []),
      ...(hours <= KEPT.hourlyVersions ? [`hour ${hours}`] : []),
      ...(days <= KEPT.dailyVersions ? [`day ${days}`] : []),
    ];
    for (const key of keys) newestOf.set(key, Math.max(time, newestOf.get(key) ?? 0));
  }
  return [...new Set(newestOf.values())].sort((a, b) => b - a);
}
