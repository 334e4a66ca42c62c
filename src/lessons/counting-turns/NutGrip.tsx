/**
 * The grip at the end of the arm with which the reader turns a nut, or both.
 * Units: SI in the state; drawing units otherwise.
 */
import { TurnGrip } from '../../figures/TurnGrip.tsx';
import type { NUT_INPUTS } from './inputs.ts';
import { countingTurns } from './model.ts';
import type { State } from './state.ts';

interface NutGripProps {
  readonly state: State;
  /** Where the nut is, and how long its arm. */
  readonly nut: { readonly x: number; readonly y: number; readonly reach: number };
  readonly turns: number;
  readonly input: 'turnsBoth' | (typeof NUT_INPUTS)[keyof typeof NUT_INPUTS];
  readonly label: string;
}

/** The grip after so many turns. */
export function NutGrip({ state, nut, turns, input, label }: NutGripProps) {
  return (
    <TurnGrip
      model={countingTurns}
      state={state}
      input={input}
      label={label}
      arm={nut}
      turns={turns}
    />
  );
}
