/**
 * How well the worksheet's dial repeats at one setting.
 * Units: SI only (m, N·m).
 * Source: as many releases as common practice asks for, no source; the default, assumptions.ts; pooled
 * variance, definition; floor q/√12 of reading to a step q, JCGM 100:2008 (GUM) F.2.2.1, from memory.
 */
import { dialRepeatability } from '../../assumptions.ts';
import { mean, sum } from '../../summary.ts';
import type { WorksheetRig } from '../inputs.ts';
import { knownInputs } from '../known-inputs.ts';
import type { Outcome } from '../outcome.ts';
import { ready, whenReady } from '../outcome.ts';

/** Standard deviation of the dial at one setting, and where it comes from. */
export interface Repeatability {
  readonly repeatability: number; // m
  readonly repeatabilityFrom: 'measured' | 'repeats' | 'default';
}

/** What can be repeated: the dial at one torque of one series; the lists have one entry for each reading. */
export interface RepeatedReadings {
  readonly torques: readonly number[]; // N·m
  readonly series: readonly number[];
  readonly elongations: readonly number[]; // m
}

const neededSpares = 4; // as five releases at one setting give

/**
 * The s0 in m that the zero is found with: as given, else from rows at the same torque where they
 * are enough, never below q/√12; else the usual one, never below the step q to which the dial is read
 * (the graduation, where no step is given).
 */
export function worksheetRepeatability(
  rig: WorksheetRig,
  readings: RepeatedReadings,
): Outcome<Repeatability> {
  const step = knownInputs({ readTo: ['rig.readTo', rig.readTo ?? rig.graduation] });
  const given = knownInputs({ deviation: ['rig.repeatability', rig.repeatability] });
  if (rig.repeatability !== undefined)
    return whenReady({ step, given }, ({ step: { readTo }, given: { deviation } }) =>
      ready({ repeatability: Math.max(deviation, floorOf(readTo)), repeatabilityFrom: 'measured' }),
    );
  return whenReady({ step }, ({ step: { readTo } }): Outcome<Repeatability> => {
    const floor = floorOf(readTo);
    const pooled = pooledDeviation(readings);
    if (pooled !== undefined)
      return ready({ repeatability: Math.max(pooled, floor), repeatabilityFrom: 'repeats' });
    return ready({
      repeatability: Math.max(dialRepeatability, readTo),
      repeatabilityFrom: 'default',
    });
  });
}

/** Standard deviation of reading to a step, m. */
function floorOf(readTo: number): number {
  return readTo / Math.sqrt(12);
}

/** At no torque the band hangs as it will, which tells nothing of the dial. */
function pooledDeviation({ torques, series, elongations }: RepeatedReadings) {
  const levels = new Map<string, number[]>();
  for (const [place, torque] of torques.entries()) {
    const level = `${series[place]} ${torque}`;
    const known = levels.get(level) ?? [];
    known.push(elongations[place] as number);
    if (torque > 0) levels.set(level, known);
  }
  const sets = [...levels.values()];
  const spares = sum(sets.map(({ length }) => length - 1));
  if (spares < neededSpares) return undefined;
  return Math.sqrt(sum(sets.map(squaredDeviations)) / spares);
}

function squaredDeviations(values: readonly number[]): number {
  const centre = mean(values);
  return sum(values.map((value) => (value - centre) ** 2));
}
