/**
 * The one shape that says "this moves": a blue grip with three ridges, 44 px to the finger, with arrow keys.
 * It only carries attributes; whoever listens (live/elements/drag.ts) turns a movement into the input's new value.
 * Units: `perUnit` in SI (perUnit = change of the input per unit of the drawing, or per
 * radian when `drag` is "turn").
 */

import {
  type Model,
  numberAt,
  type QuantityInputOf,
  quantitySpec,
} from '../models/define-model.ts';
import type { FigureState } from './figure.ts';
import { teller } from './teller.ts';

interface HandleProps<M extends Model> {
  readonly x: number;
  readonly y: number;
  readonly model: M;
  readonly state: FigureState<M>;
  /** The input that it sets. */
  readonly input: QuantityInputOf<M>;
  readonly label: string;
  /** The value in words, with its unit, where its kind does not say it well. */
  readonly text?: string;
  readonly drag: 'x' | 'y' | 'turn';
  readonly perUnit: number;
  /** Centre of the turn, for `drag="turn"`. */
  readonly centreX?: number;
  readonly centreY?: number;
  /** Direction of the ridges: across the way it moves. */
  readonly angle?: number;
}

const REACH = 22;

/** A draggable, focusable grip at (x, y). */
export function Handle<M extends Model>(props: HandleProps<M>) {
  const { model, state, input, x, y, drag, angle = drag === 'y' ? 90 : 0 } = props;
  const { text = teller(model)(state, input) } = props;
  const { min, max } = quantitySpec(model, input);
  return (
    <g
      key={`handle-${input}`}
      class="handle"
      transform={`translate(${x} ${y})`}
      role="slider"
      tabindex={0}
      aria-label={props.label}
      aria-valuemin={min}
      aria-valuemax={max}
      aria-valuenow={numberAt(state.values, input)}
      aria-valuetext={text}
      data-input={input}
      data-drag={drag}
      data-per-unit={props.perUnit}
      data-centre-x={props.centreX}
      data-centre-y={props.centreY}
    >
      <circle class="reach" r={REACH} />
      <g transform={`rotate(${angle})`}>
        <path class="grip" d="M-9 -13H9L15 0L9 13H-9L-15 0Z" />
        <path class="ridge" d="M-4 -7V7M0 -7V7M4 -7V7" />
      </g>
    </g>
  );
}
