/**
 * The block that carries the movable wheel's axle along the beam's slot, seen from the side.
 * Units: drawing units.
 */
interface SlidingBlockProps {
  /** The axle's place. */
  readonly x: number;
  readonly axis: number;
  /** Depth of the beam it slides on; the block is drawn in proportion. */
  readonly beam: number;
}

/** Block and axle. */
export function SlidingBlock({ x, axis, beam }: SlidingBlockProps) {
  const half = beam * 1.3;
  return (
    <g transform={`translate(${x} ${axis})`}>
      <rect
        class="outline paper-fill"
        x={-half}
        y={-beam * 0.8}
        width={2 * half}
        height={beam * 1.6}
      />
      <circle class="outline" r={beam * 0.5} />
    </g>
  );
}
