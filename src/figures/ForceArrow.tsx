/**
 * A level arrow whose length is a force, a torque or a stress on a scale of its own; nothing for nothing.
 * Units: drawing units.
 */
import { ArrowHead } from './dimension.tsx';

interface ForceArrowProps {
  /** Where its tail stands. */
  readonly x: number;
  readonly y: number;
  /** Positive to the right, negative to the left. */
  readonly length: number;
  readonly ink: 'ink' | 'hand' | 'steel';
  readonly head?: number;
}

/** An arrow from its tail, as long as what it stands for; its head shrinks where it is shorter than the head. */
export function ForceArrow({ x, y, length, ink, head = 11 }: ForceArrowProps) {
  const size = Math.min(head, Math.abs(length));
  const tip = x + length;
  const neck = tip - Math.sign(length) * size * 0.8;
  return (
    <g>
      <path class={ink === 'ink' ? 'outline' : `${ink}-line`} d={`M${x} ${y}H${neck}`} />
      <ArrowHead x={tip} y={y} angle={length < 0 ? 180 : 0} ink={ink} size={size} />
    </g>
  );
}
