/**
 * The grip at the end of the arm with which the reader turns a nut, or both.
 * Units: SI in the state; drawing units otherwise; the handle's `perUnit` in turns per radian.
 */
import { Handle } from '../../figures/Handle.tsx';
import { turned } from '../../figures/turned.ts';
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
    <Handle
      {...turned(nut, nut.reach, turns)}
      model={countingTurns}
      state={state}
      input={input}
      label={label}
      drag="turn"
      perUnit={1 / (2 * Math.PI)}
      centreX={nut.x}
      centreY={nut.y}
      angle={360 * turns}
    />
  );
}
