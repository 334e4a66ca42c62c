/**
 * A coil spring seen from its side, closing true to scale: its wire does not get shorter, the gaps do.
 * Units: SI for the spring; drawing units otherwise.
 */
import type { Coil } from '../mill.ts';

interface CoilSpringProps {
  readonly x: number;
  readonly y: number;
  /** Drawing units for a metre. */
  readonly scale: number;
  readonly coil: Coil;
  /** Length now, m. */
  readonly length: number;
}

const END_TURNS = 2; // one flat turn at each end that does not give

/** The coils that face the reader, as slanting rods of the wire's thickness with round ends. */
export function CoilSpring({ x, y, scale, coil, length }: CoilSpringProps) {
  const wire = coil.wire * scale;
  const reach = (coil.meanDiameter / 2) * scale;
  const turns = Math.round(coil.activeTurns + END_TURNS);
  const pitch = (length * scale - wire) / (turns - 0.5);
  const rods = Array.from({ length: turns }, (_, turn) => x + wire / 2 + (turn + 0.25) * pitch);
  const half = wire / 2;
  return (
    <g>
      {rods.map((middle, turn) => (
        <path
          key={`rod${turn}`}
          class="outline shade-fill"
          d={`M${middle - pitch / 4 - half} ${y - reach}a${half} ${half} 0 0 1 ${wire} 0L${middle + pitch / 4 + half} ${y + reach}a${half} ${half} 0 0 1 ${-wire} 0Z`}
        />
      ))}
    </g>
  );
}
