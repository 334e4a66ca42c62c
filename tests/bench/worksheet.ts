import { evaluateWorksheet, type Worksheet } from '../../src/core/worksheet.ts';
import { millC } from '../core/worksheet/fixtures/mills.ts';

const runs = 30;

/** The same loading taken in so many readings: between those of the mill, with a dial that repeats to 2 µm. */
function takenIn(count: number, { readings, ...mill }: Worksheet): Worksheet {
  const last = readings.length - 1;
  const between = (i: number, name: 'torque' | 'dial') => {
    const place = Math.min(last - 1, Math.floor((i / (count - 1)) * last));
    const [low, high] = [readings[place]?.[name] ?? 0, readings[place + 1]?.[name] ?? 0];
    return low + ((i / (count - 1)) * last - place) * (high - low);
  };
  const taken = Array.from({ length: count }, (_, i) => ({
    torque: between(i, 'torque'),
    dial: between(i, 'dial') + 2e-6 * Math.sin(12.9898 * i),
    wholeTurns: undefined,
    turns: undefined,
  }));
  return { ...mill, readings: taken };
}

function timed(worksheet: Worksheet): string {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    evaluateWorksheet(worksheet);
    return performance.now() - start;
  }).sort((a, b) => a - b);
  const [best, median] = [times[0], times[runs / 2]].map((time) => (time as number).toFixed(1));
  return `worksheet, ${worksheet.readings.length} readings: ${median} ms (best ${best} ms)`;
}

/** How long a worksheet of few and of many readings takes, as the best and the median of some runs. */
export function worksheetEvaluation(): string[] {
  return [timed(millC), timed(takenIn(200, millC))];
}
