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

const neededSpares = 4; // as five releases at one setting give

/**
 * The s0 in m that the zero is found with: as given, else from rows at the same torque where they
 * are enough, never below q/√12; else the usual one, never below the step q to which the dial is read
 * (the graduation, where no step is given).
 */
export function worksheetRepeatability(
  rig: WorksheetRig,
  torques: readonly number[],
  elongations: readonly number[],
): Outcome<Repeatability> {
  const step = knownInputs({ readTo: ['rig.readTo', rig.readTo ?? rig.graduation] });
  const given = knownInputs({ deviation: ['rig.repeatability', rig.repeatability] });
  if (rig.repeatability !== undefined)
    return whenReady({ step, given }, ({ step: { readTo }, given: { deviation } }) =>
      ready({ repeatability: Math.max(deviation, floorOf(readTo)), repeatabilityFrom: 'measured' }),
    );
  return whenReady({ step }, ({ step: { readTo } }): Outcome<Repeatability> => {
    const floor = floorOf(readTo);
    const pooled = pooledDeviation(torques, elongations);
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

function pooledDeviation(torques: readonly number[], elongations: readonly number[]) {
  const levels = [...new Set(torques)];
  const spares = torques.length - levels.length;
  if (spares < neededSpares) return undefined;
  const squares = levels.map((level) =>
    squaredDeviations(elongations.filter((_, place) => torques[place] === level)),
  );
  return Math.sqrt(sum(squares) / spares);
}

function squaredDeviations(values: readonly number[]): number {
  const centre = mean(values);
  return sum(values.map((value) => (value - centre) ** 2));
}
