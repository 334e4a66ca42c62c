/**
 * The ticks of an axis with their numbers, under a level one and left of an upright one.
 * Units: SI in the ticks and scales; drawing units otherwise.
 */
import type { Scale, Tick } from './scale.ts';

const SHORT = 5;

interface LevelTicksProps {
  readonly ticks: readonly Tick[];
  readonly x: Scale;
  /** Where the axis lies. */
  readonly y: number;
  /** From the axis to the line on which the numbers stand; none without it. */
  readonly drop?: number | undefined;
}

/** Ticks below a level axis. */
export function LevelTicks({ ticks, x, y, drop }: LevelTicksProps) {
  return (
    <g>
      {ticks.map(({ value, text }) => (
        <g key={text}>
          <path class="axis" d={`M${x(value)} ${y}v${SHORT}`} />
          {drop !== undefined && (
            <text class="note" x={x(value)} y={y + drop} text-anchor="middle">
              {text}
            </text>
          )}
        </g>
      ))}
    </g>
  );
}

interface UprightTicksProps {
  readonly ticks: readonly Tick[];
  readonly y: Scale;
  /** Where the axis stands. */
  readonly x: number;
  /** From the axis to the end of the numbers. */
  readonly gap?: number;
}

/** Ticks left of an upright axis. */
export function UprightTicks({ ticks, y, x, gap = 8 }: UprightTicksProps) {
  return (
    <g>
      {ticks.map(({ value, text }) => (
        <g key={text}>
          <path class="axis" d={`M${x - SHORT} ${y(value)}H${x}`} />
          <text class="note" x={x - gap} y={y(value) + 5} text-anchor="end">
            {text}
          </text>
        </g>
      ))}
    </g>
  );
}
