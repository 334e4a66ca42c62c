/**
 * The zeros of a series, one after the other as the reader asks for them, each with the stress that it means at the top.
 * Units: SI.
 * Source: the model beside it.
 */
import type { State } from '../state.ts';

/** One zero; those that are computed have an interval of 95 %. */
export interface PlacedZero {
  readonly key: 'eye' | 'classroom' | 'full' | 'truth';
  readonly name: string;
  readonly ink: 'hand' | 'ink' | 'steel';
  readonly zero: number; // m
  readonly reach?: number; // m, half of the interval
  readonly ends?: readonly [number, number]; // m
  readonly stress: number; // Pa
  readonly stressReach?: number; // Pa
}

const mine = ({ eyeZero, eyeStress }: State['values']): PlacedZero => ({
  key: 'eye',
  name: 'your zero',
  ink: 'hand',
  zero: eyeZero,
  stress: eyeStress,
});

function byClassroom(values: State['values']): PlacedZero {
  const { classroomZero: zero, classroomReach: reach } = values;
  return {
    key: 'classroom',
    name: 'classroom rule',
    ink: 'ink',
    zero,
    reach,
    ends: [zero - reach, zero + reach],
    stress: values.classroomStress,
    stressReach: values.classroomStressReach,
  };
}

function byAll({ fullZero, fullLow, fullHigh, fullStress, fullStressReach }: State['values']) {
  return {
    key: 'full',
    name: 'all readings',
    ink: 'steel',
    zero: fullZero,
    reach: (fullHigh - fullLow) / 2,
    ends: [fullLow, fullHigh],
    stress: fullStress,
    stressReach: fullStressReach,
  } as const satisfies PlacedZero;
}

const truth = ({ trueZero, topStress }: State['values']): PlacedZero => ({
  key: 'truth',
  name: 'the truth',
  ink: 'ink',
  zero: trueZero,
  stress: topStress,
});

/** Those that are shown. */
export function placedZeros({ values }: State): readonly PlacedZero[] {
  if (values.way === 'eye') return [mine(values)];
  if (values.way === 'classroom') return [mine(values), byClassroom(values)];
  return [mine(values), byClassroom(values), byAll(values), truth(values)];
}
