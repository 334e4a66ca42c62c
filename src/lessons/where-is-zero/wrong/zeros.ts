/**
 * The three zeros of the figure `wrong-zeros`: set on the slack band, true, set later.
 * Units: SI.
 * Source: the model beside it.
 */
import type { State } from '../state.ts';
import { bandAt } from '../toe/curl.ts';

/** One zero: where it is, and what the last reading means from there. */
export interface ComparedZero {
  readonly key: 'slack' | 'truth' | 'set';
  readonly ink: 'ink' | 'steel' | 'hand';
  readonly torque: number; // N·m, where the curve has that level
  readonly dial: number; // m, from a straight band without tension
  readonly believed: number; // Pa, at the top
  readonly error: number; // Pa
}

/** All three, in the order in which they are drawn. */
export function zerosOf({ values }: State): readonly ComparedZero[] {
  const { side, setAt, drag, topStress } = values;
  return [
    {
      key: 'slack',
      ink: 'ink',
      torque: drag,
      dial: bandAt(0, side).dial,
      believed: values.slackTopStress,
      error: values.slackError,
    },
    { key: 'truth', ink: 'steel', torque: drag, dial: 0, believed: topStress, error: 0 },
    {
      key: 'set',
      ink: 'hand',
      torque: setAt,
      dial: bandAt(setAt, side).dial,
      believed: values.setTopStress,
      error: values.setError,
    },
  ];
}
