/**
 * The one shape that says "this moves": a blue grip with three ridges, 44 px to the finger, with arrow keys.
 * It only carries attributes; whoever listens (live/elements/drag.ts) turns a movement into the input's new value.
 * Units: `value`, `min`, `max`, `perUnit` in SI (perUnit = change of the input per unit of the drawing, or per
 * radian when `drag` is "turn").
 */

interface HandleProps {
  readonly x: number;
  readonly y: number;
  /** The input that it sets. */
  readonly input: string;
  readonly label: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  /** The value in words, with its unit. */
  readonly text: string;
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
export function Handle(props: HandleProps) {
  const { x, y, drag, angle = drag === 'y' ? 90 : 0 } = props;
  return (
    <g
      key={`handle-${props.input}`}
      class="handle"
      transform={`translate(${x} ${y})`}
      role="slider"
      tabindex={0}
      aria-label={props.label}
      aria-valuemin={props.min}
      aria-valuemax={props.max}
      aria-valuenow={props.value}
      aria-valuetext={props.text}
      data-input={props.input}
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
