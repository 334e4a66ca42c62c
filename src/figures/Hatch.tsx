/** Section hatching at 45 degrees (convention of ISO 128) inside a rectangle, clipped to it. Drawing units. */

interface HatchProps {
  /** Unique on the page: the clip's id. */
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const SPACING = 7;

/** Thin parallel lines at 45 degrees. */
export function Hatch({ id, x, y, width, height }: HatchProps) {
  const count = Math.ceil((width + height) / SPACING);
  const lines = Array.from({ length: count }, (_, place) => {
    const start = x + (place + 0.5) * SPACING;
    return `M${start} ${y}L${start - height} ${y + height}`;
  });
  return (
    <g>
      <clipPath id={id}>
        <rect x={x} y={y} width={width} height={height} />
      </clipPath>
      <path class="thin" clip-path={`url(#${id})`} d={lines.join('')} />
    </g>
  );
}
