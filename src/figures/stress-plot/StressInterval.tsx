/**
 * A stress with its interval, as a bar with ends and a point, upright or level.
 * Units: drawing units.
 */

interface StressIntervalProps {
  /** Where the bar stands: its x when upright, its y when level. */
  readonly at: number;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  readonly ink: 'ink' | 'steel';
  readonly level?: boolean;
}

const HALF_END = 7;

/** The bar from `low` to `high` with its point at `middle`, along the axis of stress. */
export function StressInterval({ at, low, middle, high, ink, level = false }: StressIntervalProps) {
  const line = ink === 'steel' ? 'steel-line' : 'outline';
  const [from, to] = [at - HALF_END, at + HALF_END];
  const bar = level
    ? `M${low} ${at}H${high}M${low} ${from}V${to}M${high} ${from}V${to}`
    : `M${at} ${low}V${high}M${from} ${low}H${to}M${from} ${high}H${to}`;
  return (
    <g>
      <path class={line} d={bar} />
      <circle class={`${ink}-fill`} cx={level ? middle : at} cy={level ? at : middle} r={5} />
    </g>
  );
}
