/**
 * The grip at the end of an arm that the reader turns, clockwise from the top.
 * Units: drawing units; turns; `perTurn` in the unit of the input.
 */
import type { Model, QuantityInputOf } from '../models/define-model.ts';
import type { FigureState } from './figure.ts';
import { Handle } from './Handle.tsx';
import { turned } from './turned.ts';

interface TurnGripProps<M extends Model> {
  readonly model: M;
  readonly state: FigureState<M>;
  /** What the grip sets, and how much of it a turn is. */
  readonly input: QuantityInputOf<M>;
  readonly perTurn?: number;
  readonly label: string;
  /** What the arm turns about, and its length. */
  readonly arm: { readonly x: number; readonly y: number; readonly reach: number };
  readonly turns: number;
}

/** The grip after so many turns. */
export function TurnGrip<M extends Model>(props: TurnGripProps<M>) {
  const { model, state, input, perTurn = 1, label, arm, turns } = props;
  return (
    <Handle
      {...turned(arm, arm.reach, turns)}
      model={model}
      state={state}
      input={input}
      label={label}
      drag="turn"
      perUnit={perTurn / (2 * Math.PI)}
      centreX={arm.x}
      centreY={arm.y}
      angle={360 * turns}
    />
  );
}
